//! What the document says, and that it says enough.

use crate::support::get;
use elbowroom::service::openapi;
use elbowroom::service::register::CHECKS;
use serde_json::Value;
use std::collections::BTreeSet;

fn document() -> Value {
    serde_json::from_str(openapi::text()).unwrap()
}

#[tokio::test]
async fn the_document_is_served_as_it_is_printed() {
    assert_eq!(String::from_utf8(get("/openapi.json").await.body).unwrap(), openapi::text());
    assert!(document()["openapi"].as_str().unwrap().starts_with("3.1"));
}

#[test]
fn every_operation_says_what_it_is_for_and_how_it_can_fail() {
    let mut ids = BTreeSet::new();
    let document = document();
    for (path, item) in document["paths"].as_object().unwrap() {
        for (method, operation) in item.as_object().unwrap() {
            let id = operation["operationId"].as_str().unwrap();
            assert!(ids.insert(id.to_owned()), "{id} stands twice");
            for member in ["summary", "description"] {
                assert!(
                    operation[member].as_str().is_some_and(|text| text.len() > 6),
                    "{id} has no {member}"
                );
            }
            assert_eq!(operation["tags"].as_array().unwrap().len(), 1, "{id}");
            let responses = operation["responses"].as_object().unwrap();
            let mut failures = 0;
            for (status, response) in responses.iter().filter(|(status, _)| status.as_str() >= "400") {
                let schema = &response["content"]["application/problem+json"]["schema"]["$ref"];
                assert_eq!(schema, "#/components/schemas/Problem", "{id} {status}");
                failures += 1;
            }
            assert!(failures >= if method == "post" { 7 } else { 3 }, "{path}");
        }
    }
    for check in CHECKS {
        assert!(ids.contains(check.name));
        assert!(document["paths"][check.path]["post"].is_object());
    }
}

/// Every member of every object of every schema is described, where it stands or where it points.
#[test]
fn every_schema_member_has_a_description() {
    let document = document();
    let schemas = document["components"]["schemas"].as_object().unwrap();
    let mut described = 0;
    for (name, schema) in schemas {
        let valid = name.bytes().all(|byte| byte.is_ascii_alphanumeric() || b"._-".contains(&byte));
        assert!(valid, "{name} is no component name");
        assert!(text_of(schema, schemas).is_some(), "{name} is not described");
        walk(schema, &mut |place, members| {
            for (member, schema) in members {
                assert!(
                    text_of(schema, schemas).is_some(),
                    "{name} {place}/{member} is not described: {schema}"
                );
                described += 1;
            }
        });
    }
    assert!(described > 150, "{described}");
}

fn text_of<'a>(schema: &'a Value, schemas: &'a serde_json::Map<String, Value>) -> Option<&'a str> {
    if let Some(text) = schema["description"].as_str().filter(|text| text.len() > 3) {
        return Some(text);
    }
    // of a member that may be null the text stands beside the reference
    if let Some(text) = schema["oneOf"][0]["description"].as_str() {
        return Some(text);
    }
    let reference = schema["$ref"].as_str()?;
    text_of(&schemas[reference.rsplit('/').next()?], schemas)
}

fn walk(schema: &Value, found: &mut impl FnMut(&str, &serde_json::Map<String, Value>)) {
    match schema {
        Value::Object(members) => {
            if let Some(Value::Object(properties)) = members.get("properties") {
                found(members.get("title").and_then(Value::as_str).unwrap_or_default(), properties);
            }
            members.values().for_each(|value| walk(value, found));
        }
        Value::Array(items) => items.iter().for_each(|item| walk(item, found)),
        _ => {}
    }
}

#[test]
fn no_schema_is_unused_and_none_is_missing() {
    let text = openapi::text();
    let document = document();
    let schemas = document["components"]["schemas"].as_object().unwrap();
    for name in schemas.keys() {
        assert!(text.contains(&format!("\"#/components/schemas/{name}\"")), "{name} is unused");
    }
    for rest in text.split("\"#/components/schemas/").skip(1) {
        let name = rest.split('"').next().unwrap();
        assert!(schemas.contains_key(name), "{name} is missing");
    }
}

/// Bounds on every number and list that a request can hold.
#[test]
fn every_number_text_and_list_of_a_request_is_bounded() {
    let document = document();
    let schemas = document["components"]["schemas"].as_object().unwrap();
    for check in CHECKS {
        let mut waiting = vec![(elbowroom_request(&document, check.path), String::new())];
        let mut seen = BTreeSet::new();
        while let Some((schema, place)) = waiting.pop() {
            if let Some(reference) = schema["$ref"].as_str() {
                let name = reference.rsplit('/').next().unwrap();
                if seen.insert(name.to_owned()) {
                    waiting.push((schemas[name].clone(), format!("{place} → {name}")));
                }
                continue;
            }
            let has = |keywords: &[&str]| keywords.iter().any(|keyword| schema.get(*keyword).is_some());
            match schema["type"].as_str() {
                Some("number" | "integer") if schema.get("enum").is_none() => {
                    assert!(has(&["minimum", "exclusiveMinimum"]) && has(&["maximum"]), "{place}: {schema}");
                }
                Some("string") => assert!(has(&["maxLength", "enum", "const"]), "{place}: {schema}"),
                Some("array") => assert!(has(&["maxItems"]), "{place}: {schema}"),
                Some("object") => assert_eq!(schema["additionalProperties"], false, "{place}: {schema}"),
                _ => {}
            }
            for (member, schema) in schema["properties"].as_object().into_iter().flatten() {
                waiting.push((schema.clone(), format!("{place}/{member}")));
            }
            for several in ["oneOf", "anyOf", "allOf"] {
                for schema in schema[several].as_array().into_iter().flatten() {
                    waiting.push((schema.clone(), place.clone()));
                }
            }
            if let Some(items) = schema.get("items") {
                waiting.push((items.clone(), format!("{place}/#")));
            }
        }
        assert!(seen.len() > 5);
    }
}

fn elbowroom_request(document: &Value, path: &str) -> Value {
    document["paths"][path]["post"]["requestBody"]["content"]["application/json"]["schema"].clone()
}
