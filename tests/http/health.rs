//! `/health/live` and `/health/ready`.

use crate::support::{get, send};
use axum::body::Body;
use axum::http::Request;
use elbowroom::rulebook::digest;
use elbowroom::service::{Limits, Service, app};
use std::sync::Arc;

#[tokio::test]
async fn a_service_that_started_is_live_and_ready_and_says_under_which_rules() {
    for (target, status) in [("/health/live", "live"), ("/health/ready", "ready")] {
        let reply = get(target).await;
        assert_eq!(reply.status, 200);
        assert_eq!(reply.header("cache-control"), "no-store");
        let health = reply.json();
        assert_eq!(health["status"], status);
        assert_eq!(health["ruleset"], digest::whole());
    }
}

#[tokio::test]
async fn a_service_that_is_leaving_is_live_but_not_ready() {
    let service = Arc::new(Service::start(Limits::default()).unwrap());
    service.begin_shutdown();
    let ask = |target: &str| Request::builder().uri(target).body(Body::empty()).unwrap();
    let reply = send(app(Arc::clone(&service)), ask("/health/ready")).await;
    reply.problem(503, "not-ready");
    assert_eq!(send(app(service), ask("/health/live")).await.status, 200);
}
