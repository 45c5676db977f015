//! Pages of other origins: closed unless the settings name the origin.

use super::ingress::Ingress;
use axum::body::Body;
use axum::extract::Request;
use axum::http::{HeaderMap, HeaderValue, Method, StatusCode, header};
use axum::response::Response;

const METHODS: HeaderValue = HeaderValue::from_static("GET, HEAD, POST");
const SENT: HeaderValue =
    HeaderValue::from_static("accept, authorization, content-type, if-none-match, traceparent, x-request-id");
const SEEN: HeaderValue = HeaderValue::from_static(
    "etag, ratelimit, ratelimit-policy, retry-after, www-authenticate, x-request-id",
);
const AGE: HeaderValue = HeaderValue::from_static("600");

/// The origin of a request, when its pages may call.
pub fn allowed(ingress: &Ingress, request: &Request) -> Option<HeaderValue> {
    if ingress.origins.is_empty() {
        return None;
    }
    let origin = request.headers().get(header::ORIGIN)?;
    ingress.origins.contains(origin).then(|| origin.clone())
}

/// The answer to a browser that asks before it calls; `None` for any other request.
pub fn preflight(request: &Request) -> Option<Response> {
    let asks = request.method() == Method::OPTIONS
        && request.headers().contains_key(header::ACCESS_CONTROL_REQUEST_METHOD);
    asks.then(|| {
        let mut response = Response::new(Body::empty());
        *response.status_mut() = StatusCode::NO_CONTENT;
        let headers = response.headers_mut();
        headers.insert(header::ACCESS_CONTROL_ALLOW_METHODS, METHODS);
        headers.insert(header::ACCESS_CONTROL_ALLOW_HEADERS, SENT);
        headers.insert(header::ACCESS_CONTROL_MAX_AGE, AGE);
        response
    })
}

/// Says in the headers of an answer that an origin may read it. Keys are sent as a header, never as a cookie, so credentials
/// are not allowed.
pub fn tell(headers: &mut HeaderMap, ingress: &Ingress, origin: Option<HeaderValue>) {
    if !ingress.origins.is_empty() {
        headers.append(header::VARY, HeaderValue::from_static("origin"));
    }
    if let Some(origin) = origin {
        headers.insert(header::ACCESS_CONTROL_ALLOW_ORIGIN, origin);
        headers.insert(header::ACCESS_CONTROL_EXPOSE_HEADERS, SEEN);
    }
}
