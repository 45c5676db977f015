//! Every kind of problem, provoked.

use crate::support::{FILL, ask, get, good, post};
use axum::body::Body;
use axum::http::Method;
use elbowroom::service::{Limits, Service, app};
use serde_json::{Value, json};
use std::sync::Arc;
use std::time::Duration;
use tokio::io::{AsyncReadExt, AsyncWriteExt};
use tokio::net::{TcpListener, TcpStream};

fn json_headers<'a>() -> [(&'a str, &'a str); 1] {
    [("content-type", "application/json")]
}

#[tokio::test]
async fn an_unknown_path_is_answered_with_the_nearest_known_one() {
    let problem = get("/v1/outlet-box/fill").await.problem(404, "not-found");
    assert_eq!(problem["nearest"], FILL);
    let problem = get("/wp-login.php").await.problem(404, "not-found");
    assert!(problem.get("nearest").is_none());
    let long = format!("/{}", "a".repeat(5_000));
    let problem = get(&long).await.problem(404, "not-found");
    assert!(problem["detail"].as_str().unwrap().len() < 200);
}

#[tokio::test]
async fn a_method_that_a_path_does_not_have_is_answered_with_those_it_has() {
    for (method, target, allowed) in [
        (Method::GET, FILL, "POST"),
        (Method::DELETE, "/v1/rules", "GET,HEAD"),
        (Method::PUT, "/docs/", "GET,HEAD"),
    ] {
        let reply = ask(method, target, &[], Body::empty()).await;
        reply.problem(405, "method-not-allowed");
        assert_eq!(reply.header("allow"), allowed, "{target}");
    }
}

#[tokio::test]
async fn a_caller_that_takes_no_json_is_told_so() {
    let headers = [("content-type", "application/json"), ("accept", "text/html, application/json;q=0")];
    ask(Method::POST, FILL, &headers, good().to_string()).await.problem(406, "not-acceptable");
    for target in ["/v1/rules", "/health/live", "/openapi.json"] {
        ask(Method::GET, target, &[("accept", "text/csv")], Body::empty())
            .await
            .problem(406, "not-acceptable");
    }
}

#[tokio::test]
async fn a_body_that_is_not_said_to_be_json_is_refused() {
    for headers in [
        &[][..],
        &[("content-type", "text/plain")],
        &[("content-type", "application/json; charset=utf-16")],
        &[("content-type", "application/json"), ("content-encoding", "gzip")],
    ] {
        let reply = ask(Method::POST, FILL, headers, good().to_string()).await;
        reply.problem(415, "unsupported-media-type");
    }
    for taken in ["application/json; charset=utf-8", "application/box+json"] {
        let reply = ask(Method::POST, FILL, &[("content-type", taken)], good().to_string()).await;
        assert_eq!(reply.status, 200, "{taken}");
    }
}

#[tokio::test]
async fn a_body_is_read_to_its_limit_and_no_further() {
    let padded = |length: usize| {
        let body = good().to_string();
        format!("{body}{}", " ".repeat(length - body.len()))
    };
    let most = Limits::default().max_body_size;
    assert_eq!(ask(Method::POST, FILL, &json_headers(), padded(most)).await.status, 200);
    let problem =
        ask(Method::POST, FILL, &json_headers(), padded(most + 1)).await.problem(413, "body-too-large");
    assert!(problem["detail"].as_str().unwrap().contains(&most.to_string()));
}

/// Sends the beginning of a request over a socket and gives back what the service says.
async fn over_a_socket(headers: &str, beginning: &str) -> String {
    let limits = Limits { body_timeout: Duration::from_millis(200), ..Limits::default() };
    let service = Arc::new(Service::start(limits).unwrap());
    let listener = TcpListener::bind("127.0.0.1:0").await.unwrap();
    let address = listener.local_addr().unwrap();
    tokio::spawn(async move { axum::serve(listener, app(service)).await });
    let mut stream = TcpStream::connect(address).await.unwrap();
    let head =
        format!("POST {FILL} HTTP/1.1\r\nhost: x\r\ncontent-type: application/json\r\n{headers}\r\n\r\n");
    stream.write_all(format!("{head}{beginning}").as_bytes()).await.unwrap();
    let mut answer = vec![0; 8192];
    let length = stream.read(&mut answer).await.unwrap();
    String::from_utf8_lossy(&answer[..length]).into_owned()
}

#[tokio::test]
async fn a_body_that_does_not_arrive_is_given_up() {
    let answer = over_a_socket("content-length: 10", "{").await;
    assert!(answer.starts_with("HTTP/1.1 408"), "{answer}");
    assert!(answer.contains("/v1/problems/request-timeout"), "{answer}");
}

#[tokio::test]
async fn a_body_that_breaks_off_is_no_json() {
    let answer = over_a_socket("transfer-encoding: chunked", "1\r\n{\r\nnonsense\r\n").await;
    assert!(answer.starts_with("HTTP/1.1 400"), "{answer}");
    assert!(answer.contains("/v1/problems/malformed-json"), "{answer}");
}

#[tokio::test]
async fn what_is_no_json_is_refused_with_where_it_breaks() {
    for body in [
        &b""[..],
        b"\xef\xbb\xbf{}",
        b"{\"reference\": \"\xff\"}",
        b"{\"reference\": \"\\ud800\"}",
        b"{\"reference\": 1,}",
        b"{} {}",
        b"{",
        b"nonsense",
    ] {
        let problem = post(FILL, body.to_vec()).await.problem(400, "malformed-json");
        assert_eq!(problem["errors"][0]["pointer"], "");
        assert_eq!(problem["errors"][0]["code"], "malformed-json");
    }
    let problem = post(FILL, "{\n  \"units\": us\n}").await.json();
    let detail = problem["errors"][0]["detail"].as_str().unwrap();
    assert!(detail.contains('2') && detail.contains("12"), "{detail}");
}

#[tokio::test]
async fn every_kind_that_is_served_has_words_and_a_status() {
    let problems = get("/v1/problems").await.json();
    let problems = problems["problems"].as_array().unwrap();
    assert_eq!(problems.len(), elbowroom::service::problem::ProblemKind::ALL.len());
    let mut links: Vec<&Value> = problems.iter().map(|problem| &problem["type"]).collect();
    links.dedup();
    assert_eq!(links.len(), problems.len());
    for problem in problems {
        assert!(problem["meaning"].as_str().unwrap().contains(' '));
        assert!(problem["status"].as_u64().unwrap() >= 400);
    }
    // each of these is provoked above, in `faults`, `health` and `gate`; a panic is provoked beside the guard itself
    let provoked = [
        "malformed-json",
        "unauthorized",
        "forbidden",
        "not-found",
        "method-not-allowed",
        "not-acceptable",
        "request-timeout",
        "body-too-large",
        "unsupported-media-type",
        "invalid-request",
        "too-many-requests",
        "internal-error",
        "not-ready",
        "overloaded",
    ];
    let slugs: Vec<Value> = provoked.iter().map(|slug| json!(format!("/v1/problems/{slug}"))).collect();
    assert_eq!(links, slugs.iter().collect::<Vec<_>>());
}
