//! The role of every member of a request: what it means that the member is not there.
//!
//! A list holds *things*: what is not in it is not there. What every request carries, and names that the caller gives, are
//! *choices* or have a *default*. Everything else is a *property*, unknown when it is not said, unless the member says that it
//! is another (`x-role` in its schema): a *relief*, which is not claimed when it is not said, or a thing that is one object.

use serde_json::{Map, Value};
use std::collections::BTreeSet;

/// The member of a schema that says the role.
const ROLE: &str = "x-role";

/// Members that have the same role wherever they stand.
const EVERYWHERE: [(&str, &str); 17] = [
    ("edition", "default"),
    ("units", "default"),
    ("count", "default"),
    ("accept_unverified_rules", "choice"),
    ("reference", "choice"),
    ("amendments", "choice"),
    ("interpretations", "choice"),
    ("id", "choice"),
    ("layout", "choice"),
    ("brace", "thing"),
    ("damage", "thing"),
    ("fasteners", "thing"),
    ("separable", "thing"),
    ("side_entry", "thing"),
    ("spliced_to_reach", "thing"),
    ("marked_weight", "default"),
    ("stems", "default"),
];

/// Members of one schema that have another role than their namesakes, or whose schema is a reference, beside which the derive
/// writes no extension.
const OF_SCHEMA: [(&str, &str, &str); 32] = [
    ("Access", "finish_opening", "thing"),
    ("Access", "under_loose_cover", "relief"),
    ("Barrier", "marked_volume", "default"),
    ("BoxConstructionRequest", "cover", "thing"),
    ("BoxConstructionRequest", "enclosure", "thing"),
    ("BoxDepthsRequest", "enclosure", "thing"),
    ("BoxMountingRequest", "access", "thing"),
    ("BoxMountingRequest", "cover", "thing"),
    ("BoxMountingRequest", "enclosure", "thing"),
    ("BoxMountingRequest", "extension", "thing"),
    ("BoxMountingRequest", "flush_device", "thing"),
    ("BoxMountingRequest", "flush_surface", "thing"),
    ("BoxMountingRequest", "handhole", "thing"),
    ("BoxMountingRequest", "moisture", "thing"),
    ("BoxMountingRequest", "unused_openings", "thing"),
    ("Cable", "grounding", "default"),
    ("ConduitBodyRequest", "contents", "thing"),
    ("Contents", "canopy", "thing"),
    ("Device", "gangs", "default"),
    ("EnclosureTypesRequest", "enclosure_type", "thing"),
    ("Entry", "cable", "thing"),
    ("Entry", "raceway", "thing"),
    ("FittedCover", "combustible_finish", "thing"),
    ("FittedCover", "pendant_cord", "thing"),
    ("FittedCover", "screws", "thing"),
    ("FreeConductor", "emergence_depth", "default"),
    ("Handhole", "exposed_metal", "thing"),
    ("HoldingScrews", "count", "property"),
    ("LuminaireAndFanOutletsRequest", "box", "thing"),
    ("Marking", "insulation", "default"),
    ("MountedBox", "material", "thing"),
    ("WiringEntry", "clamp_inside", "thing"),
];

/// Members of requests that ask no check themselves, and that choose what is done with what they carry.
const CHOSEN: [&str; 9] =
    ["asks", "check", "difficulty", "editions", "language", "seed", "title", "topic", "version"];

/// Says the role of every member of every request: of those of the checks, and of the others, which carry them.
pub(super) fn assign(document: &mut Value, checks: impl Iterator<Item = String>) {
    let others = bodies(document);
    let Some(Value::Object(schemas)) = document.pointer_mut("/components/schemas") else { return };
    reach(schemas, checks.collect(), role_of);
    reach(schemas, others, role_beside);
}

/// The schemas of what is sent to the operations of a document.
fn bodies(document: &Value) -> Vec<String> {
    let operations = document["paths"].as_object().into_iter().flatten();
    let operations = operations.filter_map(|(_, path)| path.as_object()).flat_map(Map::values);
    operations
        .filter_map(|operation| operation.pointer("/requestBody/content")?.as_object())
        .flat_map(Map::values)
        .filter_map(|content| named(&content["schema"]))
        .collect()
}

/// The name of the schema that a reference is to.
fn named(schema: &Value) -> Option<String> {
    schema.get("$ref")?.as_str()?.rsplit('/').next().map(str::to_owned)
}

/// The role of a member that says none, by its name and schema.
type RoleOf = fn(&str, &Value) -> &'static str;

/// Says the role of every member of the schemas that are reached from those named.
fn reach(schemas: &mut Map<String, Value>, mut waiting: Vec<String>, role_of: RoleOf) {
    let mut reached = BTreeSet::new();
    while let Some(name) = waiting.pop() {
        if reached.insert(name.clone())
            && let Some(schema) = schemas.get_mut(&name)
        {
            let is_choice = name == "Amendment" || name.ends_with("Interpretations");
            for (_, member, role) in OF_SCHEMA.iter().filter(|(schema, ..)| *schema == name) {
                schema["properties"][member][ROLE] = (*role).into();
            }
            of_members(schema, if is_choice { |_, _| "choice" } else { role_of }, &mut waiting);
        }
    }
}

/// Says the role of the members of a schema.
fn of_members(schema: &mut Value, role_of: RoleOf, waiting: &mut Vec<String>) {
    waiting.extend(named(schema));
    let Value::Object(members) = schema else { return };
    if let Some(Value::Object(properties)) = members.get_mut("properties") {
        for (name, member) in properties.iter_mut() {
            let role = if is_kind(member) { "thing" } else { role_of(name, member) };
            if let Value::Object(member) = member
                && !member.contains_key(ROLE)
            {
                member.insert(ROLE.to_owned(), role.into());
            }
        }
    }
    for member in members.values_mut() {
        match member {
            Value::Object(_) => of_members(member, role_of, waiting),
            Value::Array(items) => items.iter_mut().for_each(|item| of_members(item, role_of, waiting)),
            _ => {}
        }
    }
    if let Some(Value::Object(properties)) = members.get_mut("properties") {
        properties.values_mut().for_each(|member| of_members(member, role_of, waiting));
    }
}

fn role_of(name: &str, member: &Value) -> &'static str {
    let everywhere = EVERYWHERE.iter().find(|(known, _)| *known == name).map(|(_, role)| *role);
    everywhere.unwrap_or(if member["type"] == "array" { "thing" } else { "property" })
}

/// The role of a member of a request that carries those of checks, or what somebody answered.
fn role_beside(name: &str, _: &Value) -> &'static str {
    let everywhere = EVERYWHERE.iter().find(|(known, _)| *known == name).map(|(_, role)| *role);
    everywhere.unwrap_or(if CHOSEN.contains(&name) { "choice" } else { "thing" })
}

/// The member that names the kind of a thing is part of the thing.
fn is_kind(member: &Value) -> bool {
    member.get("enum").and_then(Value::as_array).is_some_and(|names| names.len() == 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn document() -> Value {
        serde_json::from_str(crate::service::openapi::text()).unwrap()
    }

    /// The members of a schema and of what it is composed of, without what it refers to.
    fn members<'a>(schema: &'a Value, found: &mut Vec<(&'a String, &'a Value)>) {
        if let Some(Value::Object(properties)) = schema.get("properties") {
            found.extend(properties);
            properties.values().for_each(|member| members(member, found));
        }
        for key in ["oneOf", "anyOf", "allOf"] {
            schema
                .get(key)
                .and_then(Value::as_array)
                .into_iter()
                .flatten()
                .for_each(|part| members(part, found));
        }
        schema.get("items").into_iter().for_each(|item| members(item, found));
    }

    fn references(schema: &Value, found: &mut Vec<String>) {
        found.extend(named(schema));
        match schema {
            Value::Object(parts) => parts.values().for_each(|part| references(part, found)),
            Value::Array(parts) => parts.iter().for_each(|part| references(part, found)),
            _ => {}
        }
    }

    #[test]
    fn every_member_of_every_request_has_one_role() {
        let document = document();
        let (mut waiting, mut reached) = (bodies(&document), BTreeSet::new());
        assert!(waiting.len() > 15);
        let mut counted = 0;
        while let Some(name) = waiting.pop() {
            if !reached.insert(name.clone()) {
                continue;
            }
            let schema = &document["components"]["schemas"][&name];
            references(schema, &mut waiting);
            let mut found = Vec::new();
            members(schema, &mut found);
            counted += found.len();
            for (member, schema) in found {
                let role = schema[ROLE].as_str();
                let known = ["thing", "property", "relief", "choice", "default"];
                assert!(role.is_some_and(|role| known.contains(&role)), "{name}.{member}: {role:?}");
            }
        }
        assert!(counted > 500, "{counted}");
    }

    #[test]
    fn every_exemption_is_of_a_member_that_there_is() {
        let document = document();
        let schemas = document["components"]["schemas"].as_object().unwrap();
        for (schema, member, role) in OF_SCHEMA {
            assert_eq!(schemas[schema]["properties"][member][ROLE], role, "{schema}.{member}");
        }
        let mut all = Vec::new();
        schemas.values().for_each(|schema| members(schema, &mut all));
        for name in EVERYWHERE.map(|(name, _)| name).iter().chain(&CHOSEN) {
            assert!(all.iter().any(|(member, _)| *member == name), "{name}");
        }
    }
}
