//! The route of one check: body and query in, answer, drawing or problem out.

use super::language;
use super::limits::Limits;
use super::media;
use super::openapi::check_operation;
use super::problem::{Problem, ProblemKind};
use super::query;
use super::register::{Answered, CheckEntry};
use super::state::Service;
use crate::content_policy::policy_of;
use crate::drawing;
use axum::body::{Body, Bytes};
use axum::extract::{Request, State};
use axum::http::{HeaderValue, header};
use axum::response::{IntoResponse, Response};
use axum::routing::post;
use std::sync::{Arc, LazyLock};
use utoipa_axum::router::UtoipaMethodRouter;

/// The route and its part of the OpenAPI document.
pub fn route(check: &'static CheckEntry) -> UtoipaMethodRouter<Arc<Service>> {
    let (schemas, paths) = check_operation::describe(check);
    let drawing = check.draw.and_then(|_| drawing_of(check));
    let handler = move |State(service): State<Arc<Service>>, request: Request| async move {
        handle(check, drawing, &service, request).await
    };
    (schemas, paths, post(handler))
}

/// Where the drawing of an answer is: the same body posted to the same path, asked for as SVG (RFC 8288).
fn drawing_of(check: &CheckEntry) -> Option<HeaderValue> {
    HeaderValue::try_from(format!("<{}>; rel=\"alternate\"; type=\"{}\"", check.path, media::SVG)).ok()
}

/// An answer that is written already.
pub(super) fn answered(json: Vec<u8>) -> Response {
    let content_type = [(header::CONTENT_TYPE, HeaderValue::from_static(media::JSON))];
    (content_type, language::headers(), json).into_response()
}

async fn handle(
    check: &CheckEntry,
    drawing: Option<HeaderValue>,
    service: &Service,
    request: Request,
) -> Result<Response, Problem> {
    let (parts, body) = request.into_parts();
    let draw = match check.draw {
        None => {
            media::takes_json(&parts.headers)?;
            None
        }
        Some(draw) => {
            let offered = [media::JSON, media::SVG];
            let chosen = media::chosen(&parts.headers, &offered, "problem-detail-not-acceptable-drawn")?;
            (chosen == 1).then_some(draw)
        }
    };
    media::sends_json(&parts.headers)?;
    let explain = query::explain(parts.uri.query())?;
    let body = receive(body, service.limits).await?;
    if let Some(draw) = draw {
        return draw(&body).map(drawn);
    }
    let Answered { json, verdict, .. } = (check.evaluate)(&body, explain)?;
    service.metrics().verdict(check.name, verdict);
    let mut response = answered(json);
    response.headers_mut().extend(drawing.map(|drawing| (header::LINK, drawing)));
    Ok(response)
}

/// A drawing. It may be shown by any page, has its own style and loads nothing.
fn drawn(svg: String) -> Response {
    static POLICY: LazyLock<String> = LazyLock::new(|| policy_of(&[drawing::style()]));
    let headers = [(header::CONTENT_TYPE, media::SVG), (header::CONTENT_SECURITY_POLICY, &POLICY)];
    let mut response = (headers, language::headers(), svg).into_response();
    response.headers_mut().insert(header::VARY, HeaderValue::from_static("accept, accept-language"));
    response
}

/// Takes in a body, up to the limits of size and time.
pub(super) async fn receive(body: Body, limits: Limits) -> Result<Bytes, Problem> {
    let Limits { max_body_size, body_timeout, .. } = limits;
    match tokio::time::timeout(body_timeout, axum::body::to_bytes(body, max_body_size)).await {
        Ok(Ok(bytes)) => Ok(bytes),
        Ok(Err(error)) if is_over_limit(&error) => {
            let most = [("most", max_body_size.to_string())];
            Err(Problem::new(ProblemKind::BodyTooLarge, "problem-detail-body-too-large", most))
        }
        Ok(Err(_)) => Err(super::body::broken_off()),
        Err(_) => {
            let seconds = [("seconds", body_timeout.as_secs_f32().to_string())];
            Err(Problem::new(ProblemKind::RequestTimeout, "problem-detail-request-timeout", seconds))
        }
    }
}

fn is_over_limit(error: &(dyn std::error::Error + 'static)) -> bool {
    error.is::<http_body_util::LengthLimitError>() || error.source().is_some_and(is_over_limit)
}
