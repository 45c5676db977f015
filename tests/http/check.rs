//! `POST /v1/outlet-boxes/fill`, and what holds for every check.

use crate::support::{FILL, ask, good, post};
use axum::http::Method;
use serde_json::{Value, json};

#[tokio::test]
async fn an_answer_has_its_members_in_the_documented_order() {
    let reply = post(FILL, good().to_string()).await;
    assert_eq!(reply.status, 200);
    assert_eq!(reply.header("content-type"), "application/json");
    let answer = reply.json();
    let members: Vec<&str> = answer.as_object().unwrap().keys().map(String::as_str).collect();
    assert_eq!(members.first(), Some(&"check"));
    for member in ["reference", "verdict", "outcome", "findings", "interpretations", "derivation", "cautions"]
    {
        assert!(members.contains(&member), "{member}");
    }
    assert_eq!(members.last(), Some(&"ruleset"));
    assert_eq!(answer["verdict"], "complies");
    assert_eq!(answer["reference"], "hall-3");
}

#[tokio::test]
async fn two_devices_on_two_sizes_in_one_box_come_out_with_different_allowances() {
    let mut request = good();
    request["enclosure"] = json!({"standard": "device-3x2x3-1/2", "gangs": 2});
    request["contents"] = json!({
        "devices": [
            {"id": "twelve", "kind": "receptacle", "largest_conductor": "12 AWG"},
            {"id": "fourteen", "kind": "switch", "largest_conductor": "14 AWG"}
        ]
    });
    let answer = post(FILL, request.to_string()).await.json();
    let tally = answer["outcome"]["spaces"][0]["tally"].as_array().unwrap();
    let volume = |id: &str| {
        let line = tally.iter().find(|line| line["ids"] == json!([id])).unwrap();
        (line["size"].clone(), line["each"]["value"].clone(), line["volume"]["value"].clone())
    };
    assert_eq!(volume("twelve"), (json!("12 AWG"), json!(2.25), json!(4.5)));
    assert_eq!(volume("fourteen"), (json!("14 AWG"), json!(2.0), json!(4.0)));
}

#[tokio::test]
async fn a_violation_is_an_answer_and_a_sizing_question_has_no_verdict() {
    let mut request = good();
    request["enclosure"] = json!({"standard": "device-3x2x1-1/2"});
    let reply = post(FILL, request.to_string()).await;
    assert_eq!(reply.status, 200);
    assert_eq!(reply.json()["verdict"], "violates");
    request.as_object_mut().unwrap().shift_remove("enclosure");
    assert_eq!(post(FILL, request.to_string()).await.json()["verdict"], Value::Null);
}

#[tokio::test]
async fn explaining_changes_the_proof_and_no_figure() {
    let body = good().to_string();
    let full = post(FILL, body.clone()).await.json();
    assert!(full["derivation"]["steps"].as_array().unwrap().len() > 5);
    assert_eq!(post(&format!("{FILL}?explain=full"), body.clone()).await.json(), full);
    let summary = post(&format!("{FILL}?explain=summary"), body.clone()).await.json();
    assert!(summary["derivation"]["summary"][0].is_string());
    let none = post(&format!("{FILL}?explain=none"), body).await.json();
    assert!(none.get("derivation").is_none());
    for other in [&summary, &none] {
        assert_eq!(other["outcome"], full["outcome"]);
        assert_eq!(other["findings"], full["findings"]);
    }
}

#[tokio::test]
async fn a_query_with_faults_is_refused_with_what_is_accepted() {
    let reply = post(&format!("{FILL}?explain=ful&verbose=1"), good().to_string()).await;
    let problem = reply.problem(422, "invalid-request");
    assert_eq!(
        crate::support::faults(&problem),
        [("explain".into(), "unknown-value".into()), ("verbose".into(), "unknown-parameter".into())]
    );
    assert_eq!(problem["errors"][0]["accepted"], json!(["full", "summary", "none"]));
    assert_eq!(problem["errors"][0]["nearest"], "full");
    assert_eq!(problem["errors"][1]["accepted"], json!(["explain"]));
}

#[tokio::test]
async fn the_same_request_has_the_same_bytes_for_an_answer() {
    let first = post(FILL, good().to_string()).await;
    let second = post(FILL, good().to_string()).await;
    assert_eq!(first.body, second.body);
    assert_ne!(first.header("x-request-id"), second.header("x-request-id"));
}

#[tokio::test]
async fn every_answer_carries_the_headers_of_the_frame() {
    let headers = [("content-type", "application/json"), ("x-request-id", "site-7.box_3")];
    let reply = ask(Method::POST, FILL, &headers, good().to_string()).await;
    assert_eq!(reply.header("x-request-id"), "site-7.box_3");
    assert_eq!(reply.header("x-content-type-options"), "nosniff");
    assert_eq!(reply.header("x-frame-options"), "DENY");
    assert!(reply.header("content-security-policy").contains("default-src 'none'"));
    let strange = [("content-type", "application/json"), ("x-request-id", "a b\"c")];
    let reply = ask(Method::POST, FILL, &strange, good().to_string()).await;
    assert!(!reply.header("x-request-id").is_empty());
    assert_ne!(reply.header("x-request-id"), "a b\"c");
}

#[tokio::test]
async fn whole_numbers_may_be_written_with_a_point() {
    let mut request = good();
    request["contents"]["cables"][0]["count"] = json!(2.0);
    let with_point = post(FILL, request.to_string()).await.json();
    assert_eq!(with_point, post(FILL, good().to_string()).await.json());
}
