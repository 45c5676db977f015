//! Who is let in: room, keys, scopes, quotas, origins.

use crate::support::{FILL, Reply, good, send};
use axum::Router;
use axum::body::Body;
use axum::http::{Method, Request};
use elbowroom::service::client_address::Peer;
use elbowroom::service::concurrency_limit::ConcurrencyLimit;
use elbowroom::service::keys::KeyRing;
use elbowroom::service::keys::token::{NewKey, make};
use elbowroom::service::rate_limit::Buckets;
use elbowroom::service::settings::values;
use elbowroom::service::{Ingress, Limits, Service, app};
use serde_json::json;
use std::fs;
use std::path::PathBuf;
use std::sync::Arc;

/// A file in a folder of this test run, gone when it is dropped.
pub struct TestFile(pub PathBuf);

impl TestFile {
    pub fn new(name: &str, text: &str) -> Self {
        let path = std::env::temp_dir().join(format!("elbowroom-{}-{name}", std::process::id()));
        fs::write(&path, text).unwrap();
        Self(path)
    }

    pub fn path(&self) -> &str {
        self.0.to_str().unwrap()
    }
}

impl Drop for TestFile {
    fn drop(&mut self) {
        let _ = fs::remove_file(&self.0);
    }
}

/// The token and the lines of a key.
pub fn key(
    name: &str,
    scopes: &[&str],
    quota: Option<u32>,
    expires: Option<jiff::Timestamp>,
) -> (String, String) {
    let scopes = scopes.iter().map(|scope| (*scope).to_owned()).collect();
    let made = make(&NewKey { name: name.to_owned(), scopes, quota, expires }).unwrap();
    (made.token, made.lines)
}

fn behind(front: Ingress) -> (Arc<Service>, Router) {
    let service = Arc::new(Service::start_behind(front, Limits::default()).unwrap());
    (Arc::clone(&service), app(service))
}

fn ring(file: &str, lines: &str) -> KeyRing {
    let file = TestFile::new(file, lines);
    let scopes = Ingress::default().operations.scopes().map(str::to_owned).collect();
    KeyRing::open(&file.0, scopes).unwrap()
}

async fn fill(app: &Router, headers: &[(&str, &str)]) -> Reply {
    ask(app, Method::POST, FILL, headers).await
}

async fn ask(app: &Router, method: Method, target: &str, headers: &[(&str, &str)]) -> Reply {
    ask_from(app, method, target, headers, "192.0.2.1").await
}

async fn ask_from(app: &Router, method: Method, target: &str, headers: &[(&str, &str)], peer: &str) -> Reply {
    let mut request =
        Request::builder().method(method).uri(target).header("content-type", "application/json");
    for (name, value) in headers {
        request = request.header(*name, *value);
    }
    let request = request.extension(Peer(peer.parse().unwrap()));
    send(app.clone(), request.body(Body::from(good().to_string())).unwrap()).await
}

#[tokio::test]
async fn without_a_known_key_in_force_nothing_is_computed_but_help_and_health_are_there() {
    let (token, lines) = key("estimating", &["*"], None, None);
    let (expired, more) = key("old", &["*"], None, Some(jiff::Timestamp::from_second(1_000).unwrap()));
    let (service, app) =
        behind(Ingress { keys: Some(ring("known", &format!("{lines}{more}"))), ..Ingress::default() });
    for (authorization, challenge) in [
        (None, "Bearer realm=\"elbowroom\""),
        (Some("Basic eDp5".to_owned()), "Bearer realm=\"elbowroom\""),
        (Some(format!("Bearer {}", token.replace('_', "-"))), "error=\"invalid_token\""),
        (Some("Bearer ".to_owned()), "error=\"invalid_token\""),
        (Some(format!("Bearer {expired}")), "error=\"invalid_token\""),
    ] {
        let headers: Vec<(&str, &str)> =
            authorization.iter().map(|value| ("authorization", value.as_str())).collect();
        for reply in [fill(&app, &headers).await, ask(&app, Method::GET, "/v1/tables", &headers).await] {
            reply.problem(401, "unauthorized");
            assert!(reply.header("www-authenticate").contains(challenge), "{authorization:?}");
            assert!(!String::from_utf8_lossy(&reply.body).contains(&token));
        }
    }
    for scheme in ["Bearer", "bearer", "BEARER"] {
        let authorization = format!("{scheme} {token}");
        assert_eq!(fill(&app, &[("authorization", &authorization)]).await.status, 200);
    }
    for open in [
        "/health/live",
        "/health/ready",
        "/v1/problems",
        "/v1/problems/unauthorized",
        "/docs/",
        "/openapi.json",
    ] {
        assert_eq!(ask(&app, Method::GET, open, &[]).await.status, 200, "{open}");
    }
    ask(&app, Method::GET, "/metrics", &[]).await.problem(401, "unauthorized");
    assert_eq!(service.concurrency().current(), 0);
}

#[tokio::test]
async fn a_key_is_for_its_scopes_only() {
    let (token, lines) = key("fill-only", &["outlet_box_fill"], None, None);
    let (metrics, more) = key("prometheus", &["metrics"], None, None);
    let (_, app) =
        behind(Ingress { keys: Some(ring("scopes", &format!("{lines}\n{more}"))), ..Ingress::default() });
    let bearer = format!("Bearer {token}");
    let headers = [("authorization", bearer.as_str())];
    assert_eq!(fill(&app, &headers).await.status, 200);
    let reply = ask(&app, Method::POST, "/v1/raceways/fill", &headers).await;
    let problem = reply.problem(403, "forbidden");
    let detail = problem["detail"].as_str().unwrap();
    assert!(detail.contains("fill-only") && detail.contains("raceway_fill"), "{detail}");
    assert!(reply.header("www-authenticate").contains("insufficient_scope"));
    assert_eq!(ask(&app, Method::GET, "/v1/tables", &headers).await.status, 200);
    ask(&app, Method::GET, "/metrics", &headers).await.problem(403, "forbidden");
    let bearer = format!("Bearer {metrics}");
    assert_eq!(ask(&app, Method::GET, "/metrics", &[("authorization", &bearer)]).await.status, 200);
}

#[tokio::test]
async fn the_key_of_exercises_has_a_scope_of_its_own() {
    let (learner, lines) = key("learner", &["exercises", "grade", "worksheet"], None, None);
    let (teacher, more) = key("teacher", &["exercises", "grade", "worksheet", "answer_key"], None, None);
    let (_, app) =
        behind(Ingress { keys: Some(ring("answer-key", &format!("{lines}\n{more}"))), ..Ingress::default() });
    let post = async |token: &str, target: &str, body: serde_json::Value| {
        let request = Request::post(target)
            .header("content-type", "application/json")
            .header("authorization", format!("Bearer {token}"));
        send(app.clone(), request.body(Body::from(body.to_string())).unwrap()).await
    };
    let exercises = json!({"topic": "box_depths", "seed": 1});
    let answer = json!({"value": 1, "unit": "in"});
    let exercise = json!({"exercise": {"topic": "box_depths", "seed": 1, "number": 1}, "answer": answer});
    for (target, body) in
        [("/v1/exercises", &exercises), ("/v1/worksheets", &exercises), ("/v1/answers/grade", &exercise)]
    {
        assert_eq!(post(&learner, target, body.clone()).await.status, 200, "{target}");
        let keyed = format!("{target}?key=true");
        let problem = post(&learner, &keyed, body.clone()).await.problem(403, "forbidden");
        assert!(problem["detail"].as_str().unwrap().contains("answer_key"));
        assert_eq!(post(&teacher, &keyed, body.clone()).await.status, 200, "{target}");
    }
    // an exercise is graded without its check; a request of one's own is not
    let own = json!({"check": "outlet_box_fill", "request": good(), "answer": {"value": 1, "unit": "in3"}});
    post(&teacher, "/v1/answers/grade", own).await.problem(403, "forbidden");
}

#[tokio::test]
async fn a_key_makes_no_check_by_way_of_another_operation() {
    let scopes = ["outlet_box_fill", "edition_comparison", "box_review", "takeoff", "certify", "verify"];
    let (token, lines) = key("combined", &scopes, None, None);
    let (_, app) = behind(Ingress { keys: Some(ring("combined", &lines)), ..Ingress::default() });
    let bearer = format!("Bearer {token}");
    let post = async |target: &str, body: serde_json::Value| {
        let request =
            Request::post(target).header("content-type", "application/json").header("authorization", &bearer);
        send(app.clone(), request.body(Body::from(body.to_string())).unwrap()).await
    };
    let request = |check: &str| match check {
        "raceway_fill" => json!({"conductors": [{"size": "12 AWG", "insulation": "THHN"}]}),
        _ => good(),
    };
    let review = |check: &str| json!({"checks": {check: request(check)}});
    let compare =
        |check: &str| json!({"check": check, "editions": ["2020", "2023"], "request": request(check)});
    assert_eq!(post("/v1/boxes/review", review("outlet_box_fill")).await.status, 200);
    assert_eq!(post("/v1/editions/compare", compare("outlet_box_fill")).await.status, 200);
    let certify = |check: &str| json!({"check": check, "request": request(check)});
    let mut certificate = post("/v1/results/certify", certify("outlet_box_fill")).await.json();
    assert_eq!(post("/v1/results/verify", certificate.clone()).await.json()["finding"], "reproduced");
    certificate["check"] = json!("raceway_fill");
    for reply in [
        post("/v1/boxes/review", review("raceway_fill")).await,
        post("/v1/editions/compare", compare("raceway_fill")).await,
        post("/v1/results/certify", certify("raceway_fill")).await,
        post("/v1/results/verify", certificate).await,
    ] {
        let problem = reply.problem(403, "forbidden");
        assert!(problem["detail"].as_str().unwrap().contains("raceway_fill"));
        assert!(reply.header("www-authenticate").contains("insufficient_scope"));
    }
    let item = |check: &str| json!({"check": check, "request": good()});
    let takeoff = json!({"items": [item("outlet_box_fill"), item("raceway_fill")]});
    let reply = post("/v1/takeoffs?explain=none", takeoff).await;
    assert_eq!(reply.status, 200);
    let summary = &reply.json()["summary"];
    assert_eq!(
        (&summary["lines"]["answered"], &summary["lines"]["refused"]),
        (&json!(1), &json!(1)),
        "{summary}"
    );
    assert!(String::from_utf8_lossy(&reply.body).contains("/v1/problems/forbidden"));
}

#[tokio::test]
async fn a_key_has_its_quota_and_says_what_is_left_of_it() {
    let (token, lines) = key("small", &["*"], Some(3), None);
    let (_, app) = behind(Ingress { keys: Some(ring("quota", &lines)), ..Ingress::default() });
    let bearer = format!("Bearer {token}");
    for left in ["2", "1", "0"] {
        let reply = fill(&app, &[("authorization", &bearer)]).await;
        assert_eq!(reply.status, 200);
        assert_eq!(reply.header("ratelimit-policy"), "\"key\";q=3;w=60");
        assert!(reply.header("ratelimit").starts_with(&format!("\"key\";r={left};t=")));
    }
    let reply = fill(&app, &[("authorization", &bearer)]).await;
    reply.problem(429, "too-many-requests");
    let wait: u64 = reply.header("retry-after").parse().unwrap();
    assert!((1..=20).contains(&wait), "{wait}");
    assert!(reply.header("ratelimit").starts_with("\"key\";r=0;t="));
    assert_eq!(ask(&app, Method::GET, "/health/ready", &[]).await.status, 200);
}

#[tokio::test]
async fn an_address_has_a_quota_and_a_proxy_is_only_believed_when_trusted() {
    let front = Ingress {
        addresses: Some(Buckets::new(2)),
        trusted_proxies: vec![values::network("10.0.0.0/8").unwrap()],
        ..Ingress::default()
    };
    let (_, app) = behind(front);
    let from = async |peer: &str, forwarded: &str| {
        ask_from(&app, Method::GET, "/v1/editions", &[("x-forwarded-for", forwarded)], peer).await
    };
    for _ in 0..2 {
        assert_eq!(from("192.0.2.1", "198.51.100.1").await.status, 200);
    }
    // what an outsider says of itself changes nothing
    from("192.0.2.1", "198.51.100.2").await.problem(429, "too-many-requests");
    for caller in ["198.51.100.1", "198.51.100.2"] {
        for _ in 0..2 {
            assert_eq!(from("10.1.1.1", caller).await.status, 200);
        }
        from("10.1.1.1", caller).await.problem(429, "too-many-requests");
        assert_eq!(ask_from(&app, Method::GET, "/health/live", &[], "192.0.2.1").await.status, 200);
    }
}

#[tokio::test]
async fn guesses_at_keys_count_against_the_address() {
    let (_, lines) = key("some", &["*"], None, None);
    let keys = Some(ring("guesses", &lines));
    let (service, app) = behind(Ingress { keys, addresses: Some(Buckets::new(5)), ..Ingress::default() });
    let mut statuses = Vec::new();
    for guess in 0..7 {
        let bearer = format!("Bearer elbowroom_{guess}");
        statuses.push(fill(&app, &[("authorization", &bearer)]).await.status.as_u16());
    }
    assert_eq!(statuses, [401, 401, 401, 401, 401, 429, 429]);
    assert_eq!(service.concurrency().current(), 0);
}

#[tokio::test]
async fn what_is_too_much_at_once_is_turned_away_and_health_is_not() {
    let (service, app) = behind(Ingress { concurrency: ConcurrencyLimit::new(2), ..Ingress::default() });
    let held = [service.concurrency().acquire(false), service.concurrency().acquire(false)];
    assert!(held.iter().all(Option::is_some));
    let reply = fill(&app, &[]).await;
    reply.problem(503, "overloaded");
    assert_eq!(reply.header("retry-after"), "1");
    for open in ["/health/live", "/health/ready", "/metrics"] {
        assert_eq!(ask(&app, Method::GET, open, &[]).await.status, 200, "{open}");
    }
    drop(held);
    assert_eq!(fill(&app, &[]).await.status, 200);
    assert_eq!(service.concurrency().current(), 0);
}

#[tokio::test]
async fn pages_of_other_origins_may_call_only_when_their_origin_is_listed() {
    let preflight = [
        ("origin", "https://tools.example"),
        ("access-control-request-method", "POST"),
        ("access-control-request-headers", "content-type,authorization"),
    ];
    let (_, closed) = behind(Ingress::default());
    let reply = ask(&closed, Method::OPTIONS, FILL, &preflight).await;
    reply.problem(405, "method-not-allowed");
    assert_eq!(reply.header("access-control-allow-origin"), "");
    let reply = fill(&closed, &preflight[..1]).await;
    let varies_by = |reply: &Reply| -> Vec<String> {
        reply.headers.get_all("vary").iter().map(|by| by.to_str().unwrap().to_owned()).collect()
    };
    assert_eq!(reply.header("access-control-allow-origin"), "");
    assert_eq!(varies_by(&reply), ["accept-language"]);

    let (_, lines) = key("some", &["*"], None, None);
    let origins = vec!["https://tools.example".parse().unwrap()];
    let (_, app) = behind(Ingress { origins, keys: Some(ring("cors", &lines)), ..Ingress::default() });
    // a browser asks without the key
    let reply = ask(&app, Method::OPTIONS, FILL, &preflight).await;
    assert_eq!((reply.status.as_u16(), reply.body.len()), (200, 0));
    assert_eq!(reply.header("access-control-allow-origin"), "https://tools.example");
    assert!(reply.header("access-control-allow-headers").contains("authorization"));
    // a refusal can be read by the page, too
    let reply = fill(&app, &preflight[..1]).await;
    reply.problem(401, "unauthorized");
    assert_eq!(reply.header("access-control-allow-origin"), "https://tools.example");
    assert!(reply.header("access-control-expose-headers").contains("www-authenticate"));
    for other in ["https://tools.example.evil", "http://tools.example", "null", ""] {
        let reply = ask(&app, Method::OPTIONS, FILL, &[("origin", other), preflight[1]]).await;
        assert_eq!(reply.body.len(), 0, "{other}");
        assert_eq!(reply.header("access-control-allow-origin"), "", "{other}");
        assert_eq!(varies_by(&reply), ["origin"], "{other}");
        let reply = fill(&app, &[("origin", other)]).await;
        assert_eq!(reply.header("access-control-allow-origin"), "", "{other}");
        assert_eq!(varies_by(&reply), ["accept-language", "origin"], "{other}");
    }
}

#[tokio::test]
async fn every_answer_carries_the_security_headers() {
    let (_, app) = behind(Ingress { is_tls: true, ..Ingress::default() });
    for target in ["/", "/docs/", "/openapi.json", "/v1/tables", "/metrics", "/nowhere", "/health/live"] {
        let reply = ask(&app, Method::GET, target, &[]).await;
        assert_eq!(reply.header("x-content-type-options"), "nosniff", "{target}");
        assert_eq!(reply.header("x-frame-options"), "DENY", "{target}");
        assert_eq!(reply.header("referrer-policy"), "no-referrer", "{target}");
        assert!(reply.header("content-security-policy").starts_with("default-src 'none'"), "{target}");
        assert!(reply.header("strict-transport-security").starts_with("max-age="), "{target}");
        assert!(!reply.header("x-request-id").is_empty(), "{target}");
    }
    let (_, app) = behind(Ingress::default());
    assert_eq!(ask(&app, Method::GET, "/", &[]).await.header("strict-transport-security"), "");
}
