//! Every link of the document is followed from every example that it can start from.

use crate::support::ask;
use axum::http::Method;
use elbowroom::service::openapi;
use serde_json::Value;

/// What a runtime expression stands for; in a list or an object, each expression in it.
fn resolved(expression: &Value, request: &Value, answer: &Value) -> Value {
    match expression {
        Value::String(text) if text == "$request.body" => request.clone(),
        Value::String(text) if text == "$response.body" => answer.clone(),
        Value::String(text) => match text.strip_prefix("$response.body#") {
            Some(pointer) => answer.pointer(pointer).cloned().unwrap_or_default(),
            None => expression.clone(),
        },
        Value::Array(items) => items.iter().map(|item| resolved(item, request, answer)).collect(),
        Value::Object(members) => {
            members.iter().map(|(name, value)| (name.clone(), resolved(value, request, answer))).collect()
        }
        _ => expression.clone(),
    }
}

#[tokio::test]
async fn every_link_leads_from_every_example_to_an_answer() {
    let document: Value = serde_json::from_str(openapi::text()).unwrap();
    let operations: Vec<(&String, &String, &Value)> = document["paths"]
        .as_object()
        .unwrap()
        .iter()
        .flat_map(|(path, item)| item.as_object().unwrap().iter().map(move |(method, of)| (path, method, of)))
        .collect();
    let (mut links, mut followed) = (0, 0);
    for (_, _, operation) in &operations {
        for (name, link) in operation["responses"]["200"]["links"].as_object().into_iter().flatten() {
            links += 1;
            let before = followed;
            let (path, method, _) = operations
                .iter()
                .find(|(_, _, target)| target["operationId"] == link["operationId"])
                .unwrap();
            let answers = &operation["responses"]["200"]["content"]["application/json"]["examples"];
            for (example, answer) in answers.as_object().unwrap() {
                let request =
                    &operation["requestBody"]["content"]["application/json"]["examples"][example]["value"];
                let of = |expression: &Value| resolved(expression, request, &answer["value"]);
                let mut target = (*path).clone();
                for (parameter, expression) in link["parameters"].as_object().into_iter().flatten() {
                    target = target
                        .replace(&format!("{{{parameter}}}"), of(expression).as_str().unwrap_or_default());
                }
                // an answer without findings leads to no rule
                if target.ends_with('/') {
                    continue;
                }
                let body = link.get("requestBody").map(|body| of(body).to_string()).unwrap_or_default();
                let method = Method::from_bytes(method.to_uppercase().as_bytes()).unwrap();
                let reply = ask(method, &target, &[("content-type", "application/json")], body).await;
                assert_eq!(reply.status, 200, "{name} of {example}: {}", reply.json());
                followed += 1;
            }
            assert!(followed > before, "{name} of {} cannot be followed", operation["operationId"]);
        }
    }
    assert!(links > 20, "{links}");
    println!("{links} links followed {followed} times");
}
