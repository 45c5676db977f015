//! The OpenAPI document. The route table is the document: what is served is described, and nothing else is.

pub mod check_operation;
pub mod examples;
mod links;
mod roles;
mod whole;

use super::register::CHECKS;
use examples::ExampleSet;
use serde_json::{Value, json};
use utoipa::openapi::schema::{AdditionalProperties, ObjectBuilder, Schema, Type};

pub use super::published::text;

/// The schema of a text.
pub(super) fn described_text(description: impl Into<String>) -> ObjectBuilder {
    ObjectBuilder::new().schema_type(Type::String).description(Some(description))
}

/// The schema of a name out of a closed set.
pub(super) fn one_of_names(names: impl IntoIterator<Item = &'static str>) -> ObjectBuilder {
    ObjectBuilder::new().schema_type(Type::String).enum_values(Some(names))
}

/// The schema of an object that has no other members than are declared.
pub(super) fn closed_object() -> ObjectBuilder {
    ObjectBuilder::new().additional_properties(Some(AdditionalProperties::<Schema>::FreeForm(false)))
}

/// Declares the body of an answer that is no JSON: its type, its name among the schemas, and what it is.
macro_rules! text_body {
    ($body:ident, $name:literal, $description:literal) => {
        #[doc = $description]
        #[derive(Clone, Copy, Debug)]
        pub struct $body;

        impl utoipa::PartialSchema for $body {
            fn schema() -> utoipa::openapi::RefOr<utoipa::openapi::Schema> {
                crate::service::openapi::described_text($description).build().into()
            }
        }

        impl utoipa::ToSchema for $body {
            fn name() -> std::borrow::Cow<'static, str> {
                $name.into()
            }
        }
    };
}
pub(super) use text_body;

/// The document as the code describes it, with the examples given.
pub fn text_with(examples: &ExampleSet) -> String {
    let document = whole::document(super::described_routes().into_openapi(), examples);
    let mut document = serde_json::to_value(&document).unwrap_or_default();
    if let Some(schemas) = document.pointer_mut("/components/schemas") {
        refuse_null(schemas);
    }
    roles::assign(&mut document, CHECKS.iter().map(|check| (check.schemas)().request));
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
            let required = required.as_array().map_or(&[][..], Vec::as_slice);
            if let Some(Value::Object(properties)) = members.get_mut("properties") {
                for (_, member) in properties.iter_mut().filter(|(name, _)| !required.contains(&json!(name)))
                {
                    without_null(member);
                }
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
        if let [one] = types.as_mut_slice() {
            let one = one.take();
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
