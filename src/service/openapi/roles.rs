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
const EVERYWHERE: [(&str, &str); 18] = [
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
    ("length_outside_opening", "default"),
    ("marked_weight", "default"),
    ("stems", "default"),
];

/// Members of one schema that have another role than their namesakes, or whose schema is a reference, beside which the derive
/// writes no extension.
const OF_SCHEMA: [(&str, &str, &str); 15] = [
    ("Access", "finish_opening", "thing"),
    ("Barrier", "marked_volume", "default"),
    ("BoxConstructionRequest", "cover", "thing"),
    ("BoxConstructionRequest", "enclosure", "thing"),
    ("BoxMountingRequest", "cover", "thing"),
    ("BoxMountingRequest", "enclosure", "thing"),
    ("Cable", "grounding", "default"),
    ("Contents", "canopy", "thing"),
    ("Device", "gangs", "default"),
    ("FittedCover", "combustible_finish", "thing"),
    ("FittedCover", "pendant_cord", "thing"),
    ("FreeConductor", "emergence_depth", "default"),
    ("Handhole", "exposed_metal", "thing"),
    ("HeldEnclosure", "kind", "default"),
    ("MountedBox", "grounded", "thing"),
];

/// Says the role of every member of the schemas that are reached from those named.
pub(super) fn assign(schemas: &mut Map<String, Value>, requests: impl Iterator<Item = String>) {
    let mut waiting: Vec<String> = requests.collect();
    let mut reached = BTreeSet::new();
    while let Some(name) = waiting.pop() {
        if reached.insert(name.clone())
            && let Some(schema) = schemas.get_mut(&name)
        {
            let is_choice = name == "Amendment" || name.ends_with("Interpretations");
            for (_, member, role) in OF_SCHEMA.iter().filter(|(schema, ..)| *schema == name) {
                schema["properties"][member][ROLE] = (*role).into();
            }
            of_members(schema, is_choice.then_some("choice"), &mut waiting);
        }
    }
}

/// Says the role of the members of a schema: one and the same for all, or each its own.
fn of_members(schema: &mut Value, all: Option<&'static str>, waiting: &mut Vec<String>) {
    let Value::Object(members) = schema else { return };
    if let Some(name) = members.get("$ref").and_then(Value::as_str).and_then(|at| at.rsplit('/').next()) {
        waiting.push(name.to_owned());
    }
    if let Some(Value::Object(properties)) = members.get_mut("properties") {
        for (name, member) in properties.iter_mut() {
            let role = all.unwrap_or_else(|| role_of(name, member));
            if let Value::Object(member) = member
                && !member.contains_key(ROLE)
                && !is_kind(member)
            {
                member.insert(ROLE.to_owned(), role.into());
            }
        }
    }
    for member in members.values_mut() {
        match member {
            Value::Object(_) => of_members(member, all, waiting),
            Value::Array(items) => items.iter_mut().for_each(|item| of_members(item, all, waiting)),
            _ => {}
        }
    }
    if let Some(Value::Object(properties)) = members.get_mut("properties") {
        properties.values_mut().for_each(|member| of_members(member, all, waiting));
    }
}

fn role_of(name: &str, member: &Value) -> &'static str {
    let everywhere = EVERYWHERE.iter().find(|(known, _)| *known == name).map(|(_, role)| *role);
    everywhere.unwrap_or(if member["type"] == "array" { "thing" } else { "property" })
}

/// The member that names the kind of a thing is part of the thing.
fn is_kind(member: &Map<String, Value>) -> bool {
    member.get("enum").and_then(Value::as_array).is_some_and(|names| names.len() == 1)
}
