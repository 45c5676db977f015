//! The route of one check: body and query in, answer or problem out.

use super::language;
use super::media;
use super::openapi::check_operation;
use super::problem::{Problem, ProblemKind};
use super::query;
use super::register::{Answered, CheckEntry};
use super::state::{Limits, Service};
use axum::body::{Body, Bytes};
use axum::extract::{Request, State};
use axum::http::{HeaderValue, header, request};
use axum::response::{IntoResponse, Response};
use axum::routing::post;
use std::sync::Arc;
use utoipa_axum::router::UtoipaMethodRouter;

/// The route and its part of the OpenAPI document.
pub fn route(check: &'static CheckEntry) -> UtoipaMethodRouter<Arc<Service>> {
    let (schemas, paths) = check_operation::describe(check);
    let handler = move |State(service): State<Arc<Service>>, request: Request| async move {
        let (parts, body) = request.into_parts();
        match handle(check, service.limits(), &parts, body).await {
            Ok(Answered { json, verdict, .. }) => {
                service.metrics().verdict(check.name, verdict);
                answered(json)
            }
            Err(problem) => problem.into_response(),
        }
    };
    (schemas, paths, post(handler))
}

/// An answer that is written already.
pub(super) fn answered(json: Vec<u8>) -> Response {
    let content_type = [(header::CONTENT_TYPE, HeaderValue::from_static("application/json"))];
    (content_type, language::headers(), json).into_response()
}

async fn handle(
    check: &CheckEntry,
    limits: Limits,
    parts: &request::Parts,
    body: Body,
) -> Result<Answered, Problem> {
    media::takes_json(&parts.headers)?;
    media::sends_json(&parts.headers)?;
    let explain = query::explain(parts.uri.query())?;
    let body = receive(body, limits).await?;
    (check.evaluate)(&body, explain)
}

/// Takes in a body, up to the limits of size and time.
pub(super) async fn receive(body: Body, limits: Limits) -> Result<Bytes, Problem> {
    let Limits { largest_body, longest_wait, .. } = limits;
    match tokio::time::timeout(longest_wait, axum::body::to_bytes(body, largest_body)).await {
        Ok(Ok(bytes)) => Ok(bytes),
        Ok(Err(error)) if is_over_limit(&error) => {
            let most = [("most", largest_body.to_string())];
            Err(Problem::told(ProblemKind::BodyTooLarge, "problem-detail-body-too-large", most))
        }
        Ok(Err(_)) => Err(super::body::broken_off()),
        Err(_) => {
            let seconds = [("seconds", longest_wait.as_secs_f32().to_string())];
            Err(Problem::told(ProblemKind::RequestTimeout, "problem-detail-request-timeout", seconds))
        }
    }
}

fn is_over_limit(error: &(dyn std::error::Error + 'static)) -> bool {
    error.is::<http_body_util::LengthLimitError>() || error.source().is_some_and(is_over_limit)
}
