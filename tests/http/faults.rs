//! Every fault code, provoked; and all faults of a request in one answer.

use crate::support::{FILL, ask, faults, get, good, post};
use crate::takeoffs::TAKEOFFS;
use axum::http::Method;
use serde_json::{Value, json};
use std::collections::BTreeSet;

/// Posts a good request with one change, and gives back the problem.
async fn refused(pointer: &str, value: Value) -> Value {
    let mut request = good();
    let (parent, member) = pointer.rsplit_once('/').unwrap();
    match request.pointer_mut(parent).unwrap() {
        Value::Array(items) => items[member.parse::<usize>().unwrap()] = value,
        object => object[member] = value,
    }
    post(FILL, request.to_string()).await.problem(422, "invalid-request")
}

fn amendment(figure: &str, value: u32) -> Value {
    json!([{"figure": figure, "value": value, "citation": "town ordinance 7"}])
}

/// Each change to a good request, with the place and the code of the one fault that it makes.
fn changes() -> Vec<(&'static str, Value, &'static str, &'static str)> {
    let cable = "/contents/cables/0";
    let many: Vec<Value> = vec![json!({"kind": "internal"}); 201];
    vec![
        ("/edition", json!("2022"), "/edition", "unknown-value"),
        ("/edition", json!(2023), "/edition", "wrong-type"),
        ("/edition", json!("2026"), "/edition", "unverified-edition"),
        ("/reference", json!(""), "/reference", "out-of-bounds"),
        ("/reference", json!("x".repeat(201)), "/reference", "out-of-bounds"),
        ("/reference", Value::Null, "/reference", "wrong-type"),
        (
            "/interpretations",
            json!({"molded_clamps": "maybe"}),
            "/interpretations/molded_clamps",
            "unknown-value",
        ),
        ("/contents/devises", json!([]), "/contents/devises", "unknown-member"),
        ("/contents/cables/0/size", json!("13 AWG"), "/contents/cables/0/size", "unknown-conductor-size"),
        ("/contents/cables/0/size", json!(12), "/contents/cables/0/size", "wrong-type"),
        ("/contents/cables/0/count", json!(0), "/contents/cables/0/count", "out-of-bounds"),
        ("/contents/cables/0/count", json!(1001), "/contents/cables/0/count", "out-of-bounds"),
        ("/contents/cables/0/count", json!(1.5), "/contents/cables/0/count", "wrong-type"),
        (cable, json!(["NM-B", "12 AWG", 2]), cable, "wrong-type"),
        ("/contents/cables", json!({}), "/contents/cables", "wrong-type"),
        ("/contents/clamps", json!(many), "/contents/clamps", "too-many-items"),
        ("/contents/clamps", json!([{}]), "/contents/clamps/0/kind", "missing-member"),
        ("/contents/clamps", json!([{"kind": {"internal": null}}]), "/contents/clamps/0/kind", "wrong-type"),
        (
            "/contents/clamps",
            json!([{"kind": "internal", "volume": 1}]),
            "/contents/clamps/0/volume",
            "conflict",
        ),
        ("/enclosure", json!({"standard": "square-4x1-1/3"}), "/enclosure/standard", "unknown-standard-box"),
        (
            "/enclosure",
            json!({"standard": "square-4x2-1/8", "marked_volume": 5}),
            "/enclosure/marked_volume",
            "contradiction",
        ),
        ("/enclosure", json!({"marked_volume": 0}), "/enclosure/marked_volume", "out-of-bounds"),
        ("/enclosure", json!({"marked_volume": 1e300}), "/enclosure/marked_volume", "out-of-bounds"),
        ("/enclosure", json!({"marked_volume": 1.1234567}), "/enclosure/marked_volume", "too-many-decimals"),
        ("/enclosure", json!([]), "/enclosure", "wrong-type"),
        ("/amendments", amendment("no.such.figure", 1), "/amendments/0/figure", "unknown-reference"),
        ("/amendments", amendment("outlet-fill.canopy.wires", 21), "/amendments/0/value", "out-of-bounds"),
        (
            "/contents/devices",
            json!([{"id": "a", "kind": "switch"}, {"id": "a", "kind": "switch"}]),
            "/contents/devices/1/id",
            "duplicate-id",
        ),
    ]
}

#[tokio::test]
async fn every_code_is_provoked_and_each_fault_is_the_only_one_of_its_request() {
    let mut provoked: BTreeSet<String> = BTreeSet::new();
    for (pointer, value, place, code) in changes() {
        let problem = refused(pointer, value.clone()).await;
        assert_eq!(faults(&problem), [(place.to_owned(), code.to_owned())], "{pointer} = {value}");
        provoked.insert(code.to_owned());
        let fault = &problem["errors"][0];
        assert!(fault["detail"].as_str().unwrap().contains(' '), "{fault}");
    }
    let duplicate = post(FILL, r#"{"units": "us", "units": "si", "contents": {}}"#).await;
    let duplicate = duplicate.problem(422, "invalid-request");
    assert_eq!(faults(&duplicate), [("/units".into(), "duplicate-member".into())]);
    provoked.insert("duplicate-member".to_owned());
    let size = json!({"raceway": {"kind": "EMT", "trade_size": "7"}, "conductors": []});
    let size = post("/v1/raceways/fill", size.to_string()).await.problem(422, "invalid-request");
    assert_eq!(faults(&size), [("/raceway/trade_size".into(), "unknown-trade-size".into())]);
    provoked.insert("unknown-trade-size".to_owned());
    let query = post(&format!("{FILL}?verbose=1"), good().to_string()).await.json();
    provoked.insert(faults(&query)[0].1.clone());
    let headers = [("content-type", "text/csv"), ("accept", "application/x-ndjson")];
    let table = ask(Method::POST, TAKEOFFS, &headers, "box\n4x1-1/2\n").await;
    let row = table.body.split(|byte| *byte == b'\n').next().unwrap();
    assert_eq!(faults(&serde_json::from_slice(row).unwrap()), [("/box".into(), "ambiguous".into())]);
    provoked.insert("ambiguous".to_owned());
    // no published schema takes what its decoding refuses; a made-up one that does stands beside the code
    let not_accepted = provoked.insert("not-accepted".to_owned());
    assert!(not_accepted, "a request is refused that its published schema accepts");
    let served = get("/v1/problems/invalid-request").await.json();
    let known: BTreeSet<String> = served["fault_codes"]
        .as_array()
        .unwrap()
        .iter()
        .map(|fault| fault["code"].as_str().unwrap().to_owned())
        .collect();
    assert_eq!(provoked, known);
}

#[tokio::test]
async fn all_faults_come_in_one_answer() {
    let body = r#"{
        "edition": "2022", "edition": "2023", "unit": "us",
        "enclosure": {"standard": "box", "marked_volume": -1},
        "contents": {"cables": [{"size": "12"}, {"kind": "NM-B", "size": "x", "conductors": "two"}], "devises": []}
    }"#;
    let problem = post(FILL, body).await.problem(422, "invalid-request");
    let mut found = faults(&problem);
    found.sort();
    let mut expected = vec![
        ("/edition", "duplicate-member"),
        ("/edition", "unknown-value"),
        ("/unit", "unknown-member"),
        ("/enclosure/standard", "unknown-standard-box"),
        ("/enclosure/marked_volume", "out-of-bounds"),
        ("/contents/cables/0/kind", "missing-member"),
        ("/contents/cables/0/conductors", "missing-member"),
        ("/contents/cables/1/size", "unknown-conductor-size"),
        ("/contents/cables/1/conductors", "wrong-type"),
        ("/contents/devises", "unknown-member"),
    ];
    expected.sort_unstable();
    let expected: Vec<_> = expected.iter().map(|(at, code)| ((*at).to_owned(), (*code).to_owned())).collect();
    assert_eq!(found, expected);
}

#[tokio::test]
async fn closed_sets_and_nearest_names_are_given() {
    let problem = refused("/contents/devises", json!([])).await;
    assert_eq!(problem["errors"][0]["nearest"], "devices");
    assert!(problem["errors"][0]["accepted"].as_array().unwrap().contains(&json!("cables")));
    let problem = refused("/edition", json!("2022")).await;
    assert_eq!(problem["errors"][0]["accepted"], json!(["2017", "2020", "2023", "2026"]));
    let problem = refused("/enclosure", json!({"standard": "square-4x1-1/3"})).await;
    assert_eq!(problem["errors"][0]["nearest"], "square-4x1-1/2");
    let problem = refused("/contents/cables/0/size", json!("13 AWG")).await;
    assert!(problem["errors"][0]["accepted"].as_array().unwrap().contains(&json!("4/0 AWG")));
    let problem = refused("/edition", json!("2026")).await;
    assert_eq!(problem["errors"][0]["accepted"], json!(["2017", "2020", "2023"]));
}

#[tokio::test]
async fn semantic_faults_come_together_too() {
    let mut request = good();
    request["edition"] = json!("2026");
    request["enclosure"]["material"] = json!("nonmetallic");
    request["spaces"] = json!([{"id": "a", "contents": {}}]);
    let problem = post(FILL, request.to_string()).await.problem(422, "invalid-request");
    let found = faults(&problem);
    assert!(found.len() >= 4, "{found:?}");
    assert!(found.contains(&("/enclosure/material".into(), "conflict".into())));
    assert!(found.contains(&("/edition".into(), "unverified-edition".into())));
}

#[tokio::test]
async fn past_a_hundred_faults_the_rest_are_counted() {
    let mut request = good();
    request["contents"]["clamps"] = json!(vec![json!({"kind": "x", "y": 1}); 150]);
    let problem = post(FILL, request.to_string()).await.problem(422, "invalid-request");
    assert_eq!(faults(&problem).len(), 100);
    assert_eq!(problem["more_errors"], 200);
}

#[tokio::test]
async fn a_body_that_is_nothing_but_faults_is_answered_quickly() {
    let clamps = vec!["0"; 400_000].join(",");
    let start = std::time::Instant::now();
    let reply = post(FILL, format!(r#"{{"contents": {{"clamps": [{clamps}]}}}}"#)).await;
    reply.problem(422, "invalid-request");
    assert!(start.elapsed().as_secs() < 10);
    let deep = format!("{}{}", "[".repeat(500_000), "]".repeat(500_000));
    let problem = post(FILL, deep).await.problem(422, "invalid-request");
    assert_eq!(faults(&problem)[0].1, "out-of-bounds");
}
