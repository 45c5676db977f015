//! Middleware, around every request: CORS, access control, request id, the headers that every answer carries, counts, log
//! line and span, the guard against panics.
//!
//! **Invariant:** nothing of a request but its method, operation, ids and the name of its key is ever logged.

use super::access;
use super::concurrency_limit::RequestPermit;
use super::ingress::Ingress;
use super::language;
use super::problem::Problem;
use super::state::Service;
use super::telemetry::otlp::{self, Span};
use super::telemetry::trace_context::TraceContext;
use axum::Router;
use axum::body::{Body, HttpBody as _};
use axum::extract::{Request, State};
use axum::http::{HeaderName, HeaderValue, Method, StatusCode, Version, header};
use axum::middleware::{Next, from_fn_with_state};
use axum::response::{IntoResponse, Response};
use http_body_util::BodyExt;
use std::any::Any;
use std::process;
use std::sync::atomic::{AtomicU64, Ordering};
use std::sync::{Arc, LazyLock};
use std::time::{Duration, Instant, SystemTime, UNIX_EPOCH};
use tower::ServiceBuilder;
use tower_http::catch_panic::CatchPanicLayer;
use tower_http::cors::{AllowOrigin, CorsLayer};

const REQUEST_ID: HeaderName = HeaderName::from_static("x-request-id");

/// Headers of every answer. Pages of the documentation state a wider policy of their own.
const HEADERS: [(HeaderName, HeaderValue); 4] = [
    (header::X_CONTENT_TYPE_OPTIONS, HeaderValue::from_static("nosniff")),
    (header::X_FRAME_OPTIONS, HeaderValue::from_static("DENY")),
    (header::REFERRER_POLICY, HeaderValue::from_static("no-referrer")),
    (header::CONTENT_SECURITY_POLICY, HeaderValue::from_static("default-src 'none'; frame-ancestors 'none'")),
];

/// Callers over TLS use nothing else for a year.
const ONLY_TLS: HeaderValue = HeaderValue::from_static("max-age=31536000");

/// The challenge to a key that is for something else (RFC 6750); the detail names the scope.
const OUT_OF_SCOPE: HeaderValue =
    HeaderValue::from_static("Bearer realm=\"elbowroom\", error=\"insufficient_scope\"");

/// Headers of a request that pages of other origins may send, and those of an answer that they may read. API keys are sent
/// as a header, never as a cookie, so credentials are not allowed.
const CORS_ALLOWED: [HeaderName; 6] = [
    header::ACCEPT,
    header::AUTHORIZATION,
    header::CONTENT_TYPE,
    header::IF_NONE_MATCH,
    HeaderName::from_static("traceparent"),
    REQUEST_ID,
];
const CORS_EXPOSED: [HeaderName; 6] = [
    header::ETAG,
    access::RATE_LIMIT,
    access::RATE_LIMIT_POLICY,
    header::RETRY_AFTER,
    header::WWW_AUTHENTICATE,
    REQUEST_ID,
];
const CORS_MAX_AGE: Duration = Duration::from_secs(600);

/// Wraps every route in the middleware. One stack is one boxed future a request, however many layers it has.
pub fn wrap(router: Router<Arc<Service>>, service: &Arc<Service>) -> Router<Arc<Service>> {
    let origins = &service.ingress.origins;
    let stack = ServiceBuilder::new()
        .option_layer((!origins.is_empty()).then(|| cors(origins)))
        .layer(from_fn_with_state(Arc::clone(service), handle))
        .layer(CatchPanicLayer::custom(|_: Box<dyn Any + Send>| Problem::internal().into_response()));
    router.layer(stack)
}

/// Cross-origin requests (CORS). It stands outside of access control: a browser asks first without the key, and a page may
/// read why it is refused.
fn cors(origins: &[HeaderValue]) -> CorsLayer {
    CorsLayer::new()
        .allow_origin(AllowOrigin::list(origins.iter().cloned()))
        .allow_methods([Method::GET, Method::HEAD, Method::POST])
        .allow_headers(CORS_ALLOWED)
        .expose_headers(CORS_EXPOSED)
        .max_age(CORS_MAX_AGE)
        .vary([header::ORIGIN])
}

/// What is remembered of a request while it is answered.
struct RequestContext {
    began: Instant,
    /// Of its operation among all.
    index: usize,
    method: Method,
    version: Version,
    id: HeaderValue,
    trace: Option<TraceContext>,
    key: Option<String>,
}

async fn handle(State(service): State<Arc<Service>>, request: Request, next: Next) -> Response {
    language::within(language::asked(request.headers()), answer(service, request, next)).await
}

async fn answer(service: Arc<Service>, mut request: Request, next: Next) -> Response {
    let ingress = &service.ingress;
    let id = request.headers().get(REQUEST_ID).filter(|id| is_sane(id)).cloned().unwrap_or_else(next_id);
    let mut context = RequestContext {
        began: Instant::now(),
        index: ingress.operations.index_of(&request),
        method: request.method().clone(),
        version: request.version(),
        id,
        trace: TraceContext::of(request.headers()),
        key: None,
    };
    let granted = match ingress.operations.all().get(context.index) {
        Some(operation) => access::check(ingress, &request, operation),
        None => Err(Box::new(Problem::internal().into_response())),
    };
    let mut response = match granted {
        Err(refused) => *refused,
        Ok(access::Granted { permit, key, quota }) => {
            if let Some(key) = key {
                context.key = Some(key.name.clone());
                request.extensions_mut().insert(key);
            }
            let mut response = next.run(request).await;
            if let Some(quota) = quota {
                quota.write(response.headers_mut());
            }
            hold_until_sent(response, permit)
        }
    };
    record(ingress, &context, response.status().as_u16());
    let is_forbidden = response.status() == StatusCode::FORBIDDEN;
    let headers = response.headers_mut();
    if is_forbidden {
        headers.insert(header::WWW_AUTHENTICATE, OUT_OF_SCOPE);
    }
    headers.insert(REQUEST_ID, context.id);
    for (name, value) in HEADERS {
        headers.entry(name).or_insert(value);
    }
    if ingress.is_tls {
        headers.insert(header::STRICT_TRANSPORT_SECURITY, ONLY_TLS);
    }
    if service.is_shutting_down() && context.version < Version::HTTP_2 {
        headers.insert(header::CONNECTION, HeaderValue::from_static("close"));
    }
    ingress.metrics.answered(context.index, response.status(), context.began.elapsed());
    response
}

/// Holds the permit of a request until a streamed answer has been sent. A whole one is written by now.
fn hold_until_sent(response: Response, permit: RequestPermit) -> Response {
    if response.body().size_hint().exact().is_some() {
        return response;
    }
    response.map(|body| {
        Body::new(body.map_frame(move |frame| {
            let _held_while_frames_come = &permit;
            frame
        }))
    })
}

/// Writes the log line and the span, where there is to be one.
fn record(ingress: &Ingress, context: &RequestContext, status: u16) {
    let took = || context.began.elapsed();
    let operation =
        || ingress.operations.all().get(context.index).map_or("", |operation| operation.id.as_str());
    let id = context.id.to_str().unwrap_or_default();
    if ingress.log.takes(status, context.began.saturating_duration_since(ingress.started)) {
        let trace_id = context.trace.map(|context| format!("{:032x}", context.trace));
        let micros = u64::try_from(took().as_micros()).unwrap_or(u64::MAX);
        let (method, key) = (context.method.as_str(), context.key.as_deref());
        let operation = operation();
        if status >= 500 {
            tracing::error!(method, operation, status, micros, request_id = id, trace_id, key, "failed");
        } else {
            tracing::info!(method, operation, status, micros, request_id = id, trace_id, key, "answered");
        }
    }
    if let Some(traces) = &ingress.traces
        && let Some((trace, parent)) = traces.sampled(context.trace)
    {
        let took = took();
        let span = Span {
            trace,
            id: otlp::random(),
            parent,
            began: SystemTime::now().checked_sub(took).unwrap_or(UNIX_EPOCH),
            took,
            operation: operation().to_owned(),
            method: context.method.to_string(),
            status,
            request_id: id.to_owned(),
        };
        traces.take(span, &ingress.metrics);
    }
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::service::Limits;
    use axum::body::to_bytes;
    use axum::routing::get;
    use tower::ServiceExt;

    #[tokio::test]
    async fn a_panic_is_answered_with_an_opaque_problem_and_the_request_id() {
        async fn fail() -> Response {
            panic!("secret-of-the-request")
        }
        let service = Arc::new(Service::start(Limits::default()).unwrap());
        let app = wrap(Router::new().route("/", get(fail)), &service).with_state(service);
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
