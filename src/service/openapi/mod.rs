//! The OpenAPI document. The route table is the document: what is served is described, and nothing else is.

pub mod check_operation;
pub mod examples;
mod links;
mod roles;
mod whole;

use super::register::CHECKS;
use examples::ExampleSet;
use serde_json::Value;

pub use super::published::text;

/// The document as the code describes it, with the examples given.
pub fn text_with(examples: &ExampleSet) -> String {
    let document = whole::document(super::described_routes().into_openapi(), examples);
    let mut document = serde_json::to_value(&document).unwrap_or_default();
    if let Some(schemas) = document.pointer_mut("/components/schemas") {
        refuse_null(schemas);
        if let Value::Object(schemas) = schemas {
            roles::assign(schemas, CHECKS.iter().map(|check| (check.schemas)().request));
        }
    }
    let mut text = serde_json::to_string_pretty(&document).unwrap_or_default();
    text.push('\n');
    text
}

/// Says in every schema what absence means here: a member that may be left out is never null, and null is no default. The
/// schema derive writes both for every optional member. A member that may be null is always there.
fn refuse_null(schema: &mut Value) {
    match schema {
        Value::Object(members) => {
            if members.get("default").is_some_and(Value::is_null) {
                members.shift_remove("default");
            }
            let required = members.get("required").cloned().unwrap_or_default();
            let is_required =
                |name| required.as_array().is_some_and(|names| names.iter().any(|known| known == name));
            if let Some(Value::Object(properties)) = members.get_mut("properties") {
                properties
                    .iter_mut()
                    .filter(|(name, _)| !is_required(name.as_str()))
                    .for_each(|(_, member)| without_null(member));
            }
            members.values_mut().for_each(refuse_null);
        }
        Value::Array(items) => items.iter_mut().for_each(refuse_null),
        _ => {}
    }
}

/// Takes null out of what a schema allows.
fn without_null(schema: &mut Value) {
    let Value::Object(members) = schema else { return };
    if let Some(Value::Array(types)) = members.get_mut("type") {
        types.retain(|name| name != "null");
        if let [one] = types.as_slice() {
            let one = one.clone();
            members.insert("type".to_owned(), one);
        }
    }
    if let Some(Value::Array(branches)) = members.get_mut("oneOf") {
        branches.retain(|branch| branch["type"] != "null");
        if let [Value::Object(one)] = branches.as_mut_slice() {
            let mut one = std::mem::take(one);
            members.shift_remove("oneOf");
            one.append(members);
            *members = one;
        }
    }
}
