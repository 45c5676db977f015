//! A caller: the app in this process, asked without a socket.

use axum::Router;
use axum::body::{Body, to_bytes};
use axum::http::{HeaderMap, Method, Request, StatusCode};
use elbowroom::service::{Limits, Service, app};
use serde_json::Value;
use std::sync::{Arc, LazyLock};
use tower::ServiceExt;

/// The path of the check that these tests ask.
pub const FILL: &str = "/v1/outlet-boxes/fill";

/// What came back.
#[derive(Debug)]
pub struct Reply {
    pub status: StatusCode,
    pub headers: HeaderMap,
    pub body: Vec<u8>,
}

impl Reply {
    pub fn json(&self) -> Value {
        serde_json::from_slice(&self.body).expect("a JSON body")
    }

    pub fn header(&self, name: &str) -> &str {
        self.headers.get(name).map_or("", |value| value.to_str().expect("a plain header"))
    }

    /// Asserts that it is a problem of a kind, and gives it back.
    pub fn problem(&self, status: u16, slug: &str) -> Value {
        let problem = self.json();
        assert_eq!(self.status, status, "{problem}");
        assert_eq!(self.header("content-type"), "application/problem+json");
        assert_eq!(problem["type"], format!("/v1/problems/{slug}"));
        assert_eq!(problem["status"], status);
        assert!(problem["title"].as_str().is_some_and(|title| !title.is_empty()));
        assert!(problem["detail"].as_str().is_some_and(|detail| detail.contains(' ')), "{problem}");
        problem
    }
}

static SERVICE: LazyLock<Arc<Service>> =
    LazyLock::new(|| Arc::new(Service::start(Limits::default()).expect("the service starts")));

/// The app, with the usual limits.
pub fn the_app() -> Router {
    app(Arc::clone(&SERVICE))
}

/// Sends a request as it is.
pub async fn send(app: Router, request: Request<Body>) -> Reply {
    let response = app.oneshot(request).await.expect("an answer");
    let (parts, body) = response.into_parts();
    let body = to_bytes(body, usize::MAX).await.expect("a whole body").to_vec();
    Reply { status: parts.status, headers: parts.headers, body }
}

/// Sends a request with headers and a body.
pub async fn ask(method: Method, target: &str, headers: &[(&str, &str)], body: impl Into<Body>) -> Reply {
    let mut request = Request::builder().method(method).uri(target);
    for (name, value) in headers {
        request = request.header(*name, *value);
    }
    send(the_app(), request.body(body.into()).expect("a request")).await
}

pub async fn get(target: &str) -> Reply {
    ask(Method::GET, target, &[], Body::empty()).await
}

/// Posts a JSON body.
pub async fn post(target: &str, body: impl Into<Body>) -> Reply {
    ask(Method::POST, target, &[("content-type", "application/json")], body).await
}

/// The faults of a problem as (pointer or parameter, code).
pub fn faults(problem: &Value) -> Vec<(String, String)> {
    let errors = problem["errors"].as_array().expect("a list of faults");
    let text = |value: &Value| value.as_str().unwrap_or_default().to_owned();
    errors
        .iter()
        .map(|error| {
            let place = error.get("pointer").or_else(|| error.get("parameter"));
            (text(place.expect("a place")), text(&error["code"]))
        })
        .collect()
}

/// A request that complies.
pub fn good() -> Value {
    serde_json::json!({
        "reference": "hall-3",
        "enclosure": {"standard": "square-4x2-1/8"},
        "contents": {
            "cables": [{"kind": "NM-B", "size": "12 AWG", "conductors": 2, "grounding": "12 AWG", "count": 2}],
            "devices": [{"id": "S1", "kind": "switch", "largest_conductor": "12 AWG"}]
        }
    })
}
