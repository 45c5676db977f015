//! Drawings over HTTP: asked for by Accept, found by a link, refused like an answer. `tests/engine/drawings.rs` looks at what they show.

use crate::support::ask;
use axum::http::Method;
use elbowroom::service::openapi::examples::{ExampleSet, Outcome};
use elbowroom::service::register::CHECKS;

const SVG: &str = "image/svg+xml";

fn request(check: &str) -> String {
    let examples = ExampleSet::embedded();
    let answered = |outcome: &Option<Outcome>| matches!(outcome, Some(Outcome::Answer(_)));
    let example = examples.of(check).iter().find(|example| answered(&example.outcome)).unwrap();
    example.request.as_ref().unwrap().to_string()
}

#[tokio::test]
async fn what_can_be_drawn_is_drawn_for_whoever_asks_and_linked_for_whoever_does_not() {
    let json = ("content-type", "application/json");
    let mut drawn = 0;
    for check in CHECKS {
        let body = request(check.name);
        let plain = ask(Method::POST, check.path, &[json], body.clone()).await;
        assert_eq!(plain.header("content-type"), "application/json", "{}", check.name);
        let reply = ask(Method::POST, check.path, &[json, ("accept", SVG)], body.clone()).await;
        if check.draw.is_none() {
            assert!(plain.headers.get("link").is_none(), "{}", check.name);
            reply.problem(406, "not-acceptable");
            continue;
        }
        let link = format!("<{}>; rel=\"alternate\"; type=\"{SVG}\"", check.path);
        assert_eq!(plain.header("link"), link);
        assert_eq!(reply.status, 200, "{}", check.name);
        assert_eq!(reply.header("content-type"), SVG);
        assert_eq!(reply.header("vary"), "accept, accept-language");
        let policy = reply.header("content-security-policy");
        assert!(policy.starts_with("default-src 'none'; style-src 'sha256-"), "{policy}");
        let spanish = [json, ("accept", SVG), ("accept-language", "es")];
        let spanish = ask(Method::POST, check.path, &spanish, body.clone()).await;
        assert_eq!(spanish.header("content-language"), "es");
        assert_ne!(spanish.body, reply.body, "{}", check.name);
        // who takes either gets the answer; who prefers the drawing gets it
        for (accept, kind) in [
            ("*/*", "application/json"),
            ("image/svg+xml, application/json", "application/json"),
            ("application/json;q=0.5, image/svg+xml", SVG),
            ("image/*", SVG),
        ] {
            let reply = ask(Method::POST, check.path, &[json, ("accept", accept)], body.clone()).await;
            assert_eq!(reply.header("content-type"), kind, "{accept}");
        }
        drawn += 1;
    }
    assert!(drawn >= 1, "{drawn}");
}

#[tokio::test]
async fn a_request_with_faults_is_not_drawn_but_told_what_is_wrong() {
    let headers = [("content-type", "application/json"), ("accept", SVG)];
    for check in CHECKS.iter().filter(|check| check.draw.is_some()) {
        let reply = ask(Method::POST, check.path, &headers, r#"{"unknown": 1}"#.to_owned()).await;
        assert_eq!(reply.status, 422, "{}", check.name);
        assert_eq!(reply.header("content-type"), "application/problem+json");
    }
}
