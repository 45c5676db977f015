//! Every named example of the document is executed, and the document is the one that is committed.
//!
//! `ELBOWROOM_REWRITE=1 cargo test --test http every_example_is_what` records what comes back and rewrites the document.

use crate::schema_agreement::validator;
use crate::support::ask;
use axum::http::Method;
use elbowroom::service::openapi::examples::{Example, ExampleSet, Outcome};
use elbowroom::service::openapi::{self, text_with};
use serde_json::Value;
use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

const REWRITE: &str = "ELBOWROOM_REWRITE";

fn folder() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("openapi")
}

/// The examples as they are in the files now: operation, name of the file, text.
fn files() -> Vec<(String, String, String)> {
    let name = |path: &Path| path.file_name().unwrap().to_str().unwrap().to_owned();
    let list =
        |path: &Path| fs::read_dir(path).unwrap().map(|entry| entry.unwrap().path()).collect::<Vec<_>>();
    let mut files = Vec::new();
    for operation in list(&folder().join("examples")) {
        for file in list(&operation) {
            files.push((name(&operation), name(&file), fs::read_to_string(&file).unwrap()));
        }
    }
    files.sort();
    files
}

fn read(files: &[(String, String, String)]) -> ExampleSet {
    ExampleSet::of_files(files.iter().map(|(operation, name, text)| (&**operation, &**name, &**text)))
}

/// Each operation of the document: its id, method, path, and what it says.
fn operations() -> Vec<(String, Method, String, Value)> {
    let document: Value = serde_json::from_str(openapi::text()).unwrap();
    let mut all = Vec::new();
    for (path, item) in document["paths"].as_object().unwrap() {
        for (method, operation) in item.as_object().unwrap() {
            let method = Method::from_bytes(method.to_uppercase().as_bytes()).unwrap();
            let id = operation["operationId"].as_str().unwrap().to_owned();
            all.push((id, method, path.clone(), operation.clone()));
        }
    }
    all
}

async fn execute(method: &Method, path: &str, example: &Example) -> Outcome {
    let mut headers = vec![("content-type", example.sends.as_deref().unwrap_or("application/json"))];
    headers.extend(example.accept.as_deref().map(|accept| ("accept", accept)));
    headers.extend(example.language.as_deref().map(|language| ("accept-language", language)));
    let body = match &example.request {
        Some(Value::String(text)) => text.clone(),
        Some(request) => request.to_string(),
        None => String::new(),
    };
    let target = example.target.as_deref().unwrap_or(path);
    let reply = ask(method.clone(), target, &headers, body).await;
    match reply.header("content-type") {
        "application/json" => Outcome::Answer(reply.json()),
        "application/problem+json" => Outcome::Problem(reply.json()),
        "application/x-ndjson" | "text/csv" | "text/html; charset=utf-8" | "image/svg+xml" => {
            Outcome::Answer(Value::String(String::from_utf8(reply.body).unwrap()))
        }
        other => panic!("{target} is answered as {other}"),
    }
}

/// Replaces a file at once, and only when it differs: other tests may be reading it.
fn write(file: &Path, text: &str) {
    if fs::read_to_string(file).is_ok_and(|known| known == text) {
        return;
    }
    let fresh = Path::new(env!("CARGO_TARGET_TMPDIR")).join("fresh.json");
    fs::write(&fresh, text).unwrap();
    fs::rename(&fresh, file).unwrap();
}

fn record(operation: &str, name: &str, outcome: &Outcome) {
    let folder = folder().join("examples").join(operation);
    let (kind, other, value) = match outcome {
        Outcome::Answer(value) => ("answer", "problem", value),
        Outcome::Problem(value) => ("problem", "answer", value),
    };
    match value.as_str() {
        Some(text) => write(&folder.join(format!("{name}.{kind}.txt")), text),
        None => {
            let text = format!("{}\n", serde_json::to_string_pretty(value).unwrap());
            write(&folder.join(format!("{name}.{kind}.json")), &text);
        }
    }
    let stale = folder.join(format!("{name}.{other}.json"));
    if stale.exists() {
        fs::remove_file(stale).unwrap();
    }
}

#[tokio::test]
async fn every_example_is_what_the_service_answers_and_the_document_is_the_committed_one() {
    let rewrite = std::env::var_os(REWRITE).is_some();
    let examples = read(&files());
    let mut executed = 0;
    for (id, method, path, _) in operations() {
        for example in examples.of(&id) {
            let outcome = execute(&method, &path, example).await;
            if rewrite {
                record(&id, &example.name, &outcome);
            } else {
                assert_eq!(
                    Some(&outcome),
                    example.outcome.as_ref(),
                    "{id}/{}: if the new outcome is right, run with {REWRITE}=1",
                    example.name
                );
            }
            executed += 1;
        }
    }
    assert!(executed >= operations().len() * 2, "only {executed} examples");
    let committed = folder().join("openapi.json");
    let text = text_with(&read(&files()));
    if rewrite {
        write(&committed, &text);
    }
    let differs = fs::read_to_string(&committed).unwrap_or_default() != text;
    assert!(
        !differs,
        "openapi/openapi.json differs from the code: run with {REWRITE}=1 and look at the difference"
    );
    if !rewrite {
        assert!(openapi::text() == text, "the binary has other examples than the files");
    }
}

#[test]
fn every_file_is_an_example_and_every_operation_has_an_answer_and_a_problem() {
    let files = files();
    let examples = read(&files);
    let ids: BTreeSet<String> = operations().into_iter().map(|(id, ..)| id).collect();
    let with_examples: BTreeSet<String> = examples.operations().map(str::to_owned).collect();
    assert_eq!(with_examples, ids);
    for (id, method, ..) in operations() {
        let mut expected: BTreeSet<String> = BTreeSet::from(["index.json".to_owned()]);
        for example in examples.of(&id) {
            let (kind, value) = match example.outcome.as_ref().expect("a recorded outcome") {
                Outcome::Answer(value) => ("answer", value),
                Outcome::Problem(value) => ("problem", value),
            };
            let suffix = |value: &Value| if value.is_string() { "txt" } else { "json" };
            expected.insert(format!("{}.{kind}.{}", example.name, suffix(value)));
            if method == Method::POST {
                let request = example.request.as_ref().expect("a request");
                if example.takes.is_none() {
                    expected.insert(format!("{}.request.{}", example.name, suffix(request)));
                }
            }
            assert!(example.summary.len() >= 10, "{id}/{} has no summary", example.name);
        }
        let found: BTreeSet<String> =
            files.iter().filter(|file| file.0 == id).map(|file| file.1.clone()).collect();
        assert_eq!(found, expected, "{id}");
        let has = |wanted: fn(&Outcome) -> bool| {
            examples.of(&id).iter().any(|example| example.outcome.as_ref().is_some_and(wanted))
        };
        assert!(has(|outcome| matches!(outcome, Outcome::Answer(_))), "{id} has no answer");
        assert!(has(|outcome| matches!(outcome, Outcome::Problem(_))), "{id} has no problem");
    }
}

#[test]
fn every_example_is_valid_under_the_schema_that_is_published_for_it() {
    let mut validated = 0;
    for (id, _, _, operation) in operations() {
        let mut check = |content: &Value| {
            let Some(schema) = content["schema"]["$ref"].as_str() else { panic!("{id}: {content}") };
            let validator = validator(schema.rsplit('/').next().unwrap());
            for (name, example) in content["examples"].as_object().into_iter().flatten() {
                let faults: Vec<String> = validator
                    .iter_errors(&example["value"])
                    .map(|error| format!("{}: {error}", error.instance_path()))
                    .collect();
                assert!(faults.is_empty(), "{id}/{name}: {faults:?}");
                validated += 1;
            }
        };
        if let Some(body) = operation.get("requestBody") {
            body["content"].as_object().unwrap().values().for_each(&mut check);
        }
        for response in operation["responses"].as_object().unwrap().values() {
            for content in response["content"].as_object().into_iter().flatten().map(|(_, content)| content) {
                check(content);
            }
        }
    }
    assert!(validated > 25, "{validated}");
}

#[test]
fn an_example_of_a_check_that_is_named_after_a_verdict_answers_it() {
    let examples = read(&files());
    let checks: BTreeSet<&str> = elbowroom::of_each_check!(C => <C as elbowroom::checks::Check>::NAME).into();
    let mut named = 0;
    for (id, example) in checks.iter().flat_map(|id| examples.of(id).iter().map(move |example| (id, example)))
    {
        let verdict = match example.name.as_str() {
            "complies" => "complies",
            "violates" => "violates",
            "not-determined" => "not_determined",
            _ => continue,
        };
        let name = &example.name;
        let Some(Outcome::Answer(answer)) = &example.outcome else { panic!("{id}/{name}: no answer") };
        assert_eq!(answer["verdict"], verdict, "{id}/{name}");
        named += 1;
    }
    assert!(named >= 3 * (checks.len() - 2), "only {named} examples");
}
