//! The OpenAPI document. The route table is the document: what is served is described, and nothing else is.

pub mod check_operation;
pub mod examples;
mod links;
mod whole;

use examples::ExampleSet;
use serde_json::Value;
use std::sync::LazyLock;

/// The document as it is served and printed: the committed one, which a test holds against the code. Served as it lies in
/// the binary, it takes no memory of its own.
pub const fn text() -> &'static str {
    include_str!("../../../openapi/openapi.json")
}

/// The document as the code describes it, with the examples given.
pub fn text_with(examples: &ExampleSet) -> String {
    let document = whole::document(super::described_routes().into_openapi(), examples);
    let mut document = serde_json::to_value(&document).unwrap_or_default();
    if let Some(schemas) = document.pointer_mut("/components/schemas") {
        drop_absent_defaults(schemas);
    }
    let mut text = serde_json::to_string_pretty(&document).unwrap_or_default();
    text.push('\n');
    text
}

/// Takes out defaults of null: the schema derive writes them for optional members, and null is not what absence means here.
fn drop_absent_defaults(schema: &mut Value) {
    match schema {
        Value::Object(members) => {
            if members.get("default").is_some_and(Value::is_null) {
                members.shift_remove("default");
            }
            members.values_mut().for_each(drop_absent_defaults);
        }
        Value::Array(items) => items.iter_mut().for_each(drop_absent_defaults),
        _ => {}
    }
}

/// The paths that the document describes.
pub fn paths() -> &'static [String] {
    static PATHS: LazyLock<Vec<String>> = LazyLock::new(|| {
        let described = super::described_routes().into_openapi();
        described.paths.paths.into_keys().collect()
    });
    &PATHS
}
