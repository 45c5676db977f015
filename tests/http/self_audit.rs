//! `GET /v1/self-audit`, and `elbowroom audit`.

use super::process;
use super::support::{ask, faults, get, the_app};
use axum::body::Body;
use axum::http::{Method, Request};
use elbowroom::audit::cases;
use elbowroom::rulebook::digest;
use elbowroom::service::register::CHECKS;
use http_body_util::BodyExt;
use serde_json::{Value, json};
use tower::ServiceExt;

async fn audited(query: &str) -> Value {
    let reply = get(&format!("/v1/self-audit{query}")).await;
    assert_eq!(reply.status, 200);
    assert_eq!(reply.header("cache-control"), "no-store");
    assert_eq!(reply.header("etag"), "");
    reply.json()
}

#[tokio::test]
async fn every_case_is_run_and_shown_with_source_values_and_proof() {
    let audit = audited("").await;
    assert_eq!(audit["ruleset"], json!({"version": env!("CARGO_PKG_VERSION"), "digest": digest::whole()}));
    let known = cases().unwrap();
    let shown = audit["cases"].as_array().unwrap();
    assert_eq!(shown.len(), known.len());
    let (mut evaluations, mut comparisons) = (0, 0);
    for (case, shown) in known.iter().zip(shown) {
        assert_eq!((&shown["name"], &shown["check"]), (&json!(case.name), &json!(case.check)));
        assert_eq!(shown["source"]["title"], json!(case.source.title));
        assert_eq!(shown.get("source_says"), case.source_says.clone().map(Value::from).as_ref());
        assert_eq!(shown.get("source_held_wrong"), case.source_disagrees.clone().map(Value::from).as_ref());
        let examined = shown["evaluations"].as_array().unwrap();
        assert_eq!(examined.len(), case.editions.len());
        for examined in examined {
            evaluations += 1;
            assert_eq!(examined["agrees"], true, "{}: {examined}", case.name);
            assert!(examined["proof"]["replays"] == true && examined["proof"]["steps"].is_u64());
            let values = examined["values"].as_array().unwrap();
            assert_eq!(values.len(), case.expect.len());
            comparisons += values.len();
        }
    }
    let summary = &audit["summary"];
    assert_eq!(summary["cases"], known.len());
    assert_eq!((&summary["evaluations"], &summary["agreeing"]), (&json!(evaluations), &json!(evaluations)));
    assert_eq!((&summary["comparisons"], &summary["differing"]), (&json!(comparisons), &json!(0)));
    let wrong = known.iter().filter(|case| case.source_disagrees.is_some()).count();
    assert_eq!(summary["source_held_wrong"], wrong);
    let by_basis: u64 = summary["by_basis"].as_object().unwrap().values().filter_map(Value::as_u64).sum();
    assert_eq!(by_basis, known.len() as u64);
}

#[tokio::test]
async fn filters_narrow_what_is_run_and_differing_what_is_listed() {
    for check in CHECKS {
        let audit = audited(&format!("?check={}&edition=2020&differing=true", check.name)).await;
        let of_check = |case: &&elbowroom::audit::Case| case.check == check.name;
        let known = cases().unwrap().iter().filter(of_check);
        let known = known.filter(|case| case.editions.iter().any(|edition| edition.year() == "2020")).count();
        assert!(known > 0 && audit["cases"] == json!([]), "{}", check.name);
        assert_eq!(
            (&audit["summary"]["cases"], &audit["summary"]["evaluations"]),
            (&json!(known), &json!(known))
        );
    }
    let audit = audited("?basis=common_practice").await;
    let listed = audit["cases"].as_array().unwrap();
    assert!(!listed.is_empty() && listed.iter().all(|case| case["source"]["basis"] == "common_practice"));
    assert_eq!(audited("?check=raceway_fill&basis=common_practice").await["summary"]["cases"], 0);
}

#[tokio::test]
async fn what_is_not_known_is_refused_with_all_that_is_wrong() {
    let problem = get("/v1/self-audit?check=raceway&basis=x&edition=2024&differing=no&all=1")
        .await
        .problem(422, "invalid-request");
    let places: Vec<String> = faults(&problem).into_iter().map(|(place, _)| place).collect();
    assert_eq!(places, ["check", "basis", "edition", "differing", "all"]);
    assert_eq!(problem["errors"][0]["nearest"], "raceway_fill");
    let html = ask(Method::GET, "/v1/self-audit", &[("accept", "text/html")], Body::empty()).await;
    html.problem(406, "not-acceptable");
}

/// Some cases are run when some are read; a caller who leaves stops the rest.
#[tokio::test]
async fn an_audit_is_run_as_it_is_read() {
    let ask = || Request::get("/v1/self-audit?check=box_supports&edition=2023").body(Body::empty()).unwrap();
    let mut body = the_app().oneshot(ask()).await.unwrap().into_body();
    let mut frames = 0;
    for _ in 0..3 {
        let frame = body.frame().await.unwrap().unwrap().into_data().unwrap();
        assert!(frame.len() < 1024 * 1024, "{}", frame.len());
        frames += 1;
    }
    // several at once take turns, and none waits for the one that is not read
    let others = (0..2).map(|_| tokio::spawn(the_app().oneshot(ask()))).collect::<Vec<_>>();
    for other in others {
        let whole = other.await.unwrap().unwrap().into_body().collect().await.unwrap().to_bytes();
        let audit: Value = serde_json::from_slice(&whole).unwrap();
        assert_eq!(audit["summary"]["differing"], 0);
    }
    while body.frame().await.is_some() {
        frames += 1;
    }
    assert!(frames > 8, "{frames}");
}

#[test]
fn the_command_prints_what_each_check_comes_to() {
    let output = process::run(&["audit", "--language", "es"], "");
    let text = String::from_utf8(output.stdout).unwrap();
    assert_eq!(output.status.code(), Some(0), "{text}");
    for check in CHECKS {
        assert!(text.contains(check.name), "{}: {text}", check.name);
    }
    assert!(text.contains(digest::whole()) && text.contains("Evaluaciones"), "{text}");
}
