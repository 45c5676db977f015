//! Whether the service is up, and whether it takes requests.

use super::media;
use super::problem::{Problem, ProblemKind};
use super::query;
use super::state::Service;
use crate::rulebook::digest;
use axum::extract::{Request, State};
use axum::http::header;
use axum::response::{IntoResponse, Response};
use serde::Serialize;
use std::sync::Arc;
use utoipa::ToSchema;
use utoipa_axum::router::OpenApiRouter;
use utoipa_axum::routes;

/// The routes of health.
pub fn routes() -> OpenApiRouter<Arc<Service>> {
    OpenApiRouter::default().routes(routes!(live)).routes(routes!(ready))
}

/// How the service is.
#[derive(Clone, Copy, Debug, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Condition {
    /// The process runs.
    Live,
    /// Tables, rules and words were read without a fault, and requests are taken.
    Ready,
}

/// How the service is, and under which rules it answers.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct Health {
    /// How the service is.
    status: Condition,
    /// The version of the service.
    #[schema(value_type = String, example = "0.1.0")]
    version: &'static str,
    /// SHA-256 over every table and the whole of every edition's rules: two equal digests mean the same rules.
    #[schema(value_type = String, example = "sha256:0f…")]
    ruleset: &'static str,
}

/// Whether the process runs
///
/// For supervisors: an answer means that the process runs. Nothing else is looked at.
#[utoipa::path(
    get, path = "/health/live", tag = "Service", operation_id = "live",
    responses((status = 200, description = "The process runs.", body = Health)),
)]
async fn live(request: Request) -> Result<Response, Problem> {
    answer(&request, Condition::Live)
}

/// Whether requests are taken
///
/// For load balancers. The service starts only when every table, rule and message was read without a fault, so it is
/// ready until it is told to shut down; from then on the answer is 503 while running requests are finished.
#[utoipa::path(
    get, path = "/health/ready", tag = "Service", operation_id = "ready",
    responses((status = 200, description = "Requests are taken.", body = Health)),
)]
async fn ready(State(service): State<Arc<Service>>, request: Request) -> Result<Response, Problem> {
    if service.is_shutting_down() {
        return Err(Problem::new(ProblemKind::NotReady, "problem-detail-not-ready", []));
    }
    answer(&request, Condition::Ready)
}

fn answer(request: &Request, status: Condition) -> Result<Response, Problem> {
    query::none(request.uri().query())?;
    media::takes_json(request.headers())?;
    let health = Health { status, version: env!("CARGO_PKG_VERSION"), ruleset: digest::whole() };
    let body = serde_json::to_vec(&health).map_err(|_| Problem::internal())?;
    let headers = [(header::CONTENT_TYPE, media::JSON), (header::CACHE_CONTROL, "no-store")];
    Ok((headers, body).into_response())
}
