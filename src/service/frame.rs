//! What surrounds every request: its id, the headers that every answer carries, the log line, the guard against panics.
//!
//! **Invariant:** nothing of a request but its method, path and id is ever logged.

use super::language;
use super::problem::Problem;
use axum::Router;
use axum::extract::{MatchedPath, Request};
use axum::http::{HeaderName, HeaderValue, header};
use axum::middleware::{Next, from_fn};
use axum::response::{IntoResponse, Response};
use std::any::Any;
use std::process;
use std::sync::LazyLock;
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::{Instant, SystemTime, UNIX_EPOCH};
use tower_http::catch_panic::CatchPanicLayer;
use tracing::Level;

const REQUEST_ID: HeaderName = HeaderName::from_static("x-request-id");

/// Headers of every answer. Pages of the documentation state a wider policy of their own.
const HEADERS: [(HeaderName, HeaderValue); 4] = [
    (header::X_CONTENT_TYPE_OPTIONS, HeaderValue::from_static("nosniff")),
    (header::X_FRAME_OPTIONS, HeaderValue::from_static("DENY")),
    (header::REFERRER_POLICY, HeaderValue::from_static("no-referrer")),
    (header::CONTENT_SECURITY_POLICY, HeaderValue::from_static("default-src 'none'; frame-ancestors 'none'")),
];

/// Puts the frame around every route.
pub fn around<S: Clone + Send + Sync + 'static>(router: Router<S>) -> Router<S> {
    router.layer(CatchPanicLayer::custom(panicked)).layer(from_fn(frame))
}

async fn frame(request: Request, next: Next) -> Response {
    let id = request.headers().get(REQUEST_ID).filter(|id| is_sane(id)).cloned().unwrap_or_else(next_id);
    let told = tracing::enabled!(Level::INFO).then(|| {
        let route = request.extensions().get::<MatchedPath>().map(|path| path.as_str().to_owned());
        (Instant::now(), request.method().clone(), route.unwrap_or_default())
    });
    let asked = language::asked(request.headers());
    let mut response = language::within(asked, next.run(request)).await;
    let status = response.status().as_u16();
    if let Some((start, method, route)) = told {
        let micros = start.elapsed().as_micros();
        tracing::info!(%method, route, status, micros, request_id = id.to_str().unwrap_or_default(), "answered");
    }
    if status == 500 {
        tracing::error!(request_id = id.to_str().unwrap_or_default(), "a request failed");
    }
    let headers = response.headers_mut();
    headers.insert(REQUEST_ID, id);
    for (name, value) in HEADERS {
        headers.entry(name).or_insert(value);
    }
    response
}

/// An id that may be echoed and logged: up to 64 letters, digits, `.`, `_` and `-`.
fn is_sane(id: &HeaderValue) -> bool {
    let plain = |byte: &u8| byte.is_ascii_alphanumeric() || b"._-".contains(byte);
    (1..=64).contains(&id.len()) && id.as_bytes().iter().all(plain)
}

/// A new id: a mark of this process, and a running number.
fn next_id() -> HeaderValue {
    static MARK: LazyLock<u64> = LazyLock::new(|| {
        let start = SystemTime::now().duration_since(UNIX_EPOCH).unwrap_or_default();
        (u64::from(process::id()) << 40) ^ start.as_micros() as u64
    });
    static NEXT: AtomicU64 = AtomicU64::new(1);
    let number = NEXT.fetch_add(1, Ordering::Relaxed);
    HeaderValue::try_from(format!("{:x}-{number:x}", *MARK)).unwrap_or_else(|_| HeaderValue::from_static("-"))
}

/// What a caller is told of a panic: nothing but that there was one.
fn panicked(_: Box<dyn Any + Send + 'static>) -> Response {
    Problem::internal().into_response()
}

#[cfg(test)]
mod tests {
    use super::*;
    use axum::body::{Body, to_bytes};
    use axum::routing::get;
    use tower::ServiceExt;

    #[tokio::test]
    async fn a_panic_is_answered_with_an_opaque_problem_and_the_request_id() {
        async fn fail() -> Response {
            panic!("secret-of-the-request")
        }
        let app = around(Router::new().route("/", get(fail)));
        let request = Request::builder().header("x-request-id", "abc-1").body(Body::empty()).unwrap();
        let response = app.oneshot(request).await.unwrap();
        assert_eq!(response.status(), 500);
        assert_eq!(response.headers()["x-request-id"], "abc-1");
        assert_eq!(response.headers()["content-type"], super::super::problem::MEDIA_TYPE);
        let body = to_bytes(response.into_body(), usize::MAX).await.unwrap();
        let problem: serde_json::Value = serde_json::from_slice(&body).unwrap();
        assert_eq!(problem["type"], "/v1/problems/internal-error");
        assert!(!problem.to_string().contains("secret"));
    }

    #[test]
    fn only_plain_short_ids_are_taken_from_the_caller() {
        for (id, sane) in [("a", true), ("A-1_b.c", true), ("", false), ("a b", false), ("a\"", false)] {
            assert_eq!(is_sane(&HeaderValue::from_static(id)), sane, "{id}");
        }
        assert!(!is_sane(&HeaderValue::try_from("a".repeat(65)).unwrap()));
        assert_ne!(next_id(), next_id());
    }
}
