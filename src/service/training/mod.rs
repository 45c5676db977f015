//! Teaching over HTTP: exercises, what is wrong with an answer, sheets to print.

mod exercises;
mod exercises_request;
mod grade;
mod register;
mod worksheets;

pub use exercises_request::{ExercisesRequest, Seed, WorksheetRequest};
pub use grade::GradeRequest;

use super::access::Authorization;
use super::body;
use super::check_route::receive;
use super::media;
use super::operations::ANSWER_KEY;
use super::problem::Problem;
use super::query;
use super::state::Service;
use axum::extract::Request;
use serde::de::DeserializeOwned;
use std::sync::Arc;
use utoipa::ToSchema;
use utoipa_axum::router::OpenApiRouter;
use utoipa_axum::routes;

/// The routes.
pub fn routes() -> OpenApiRouter<Arc<Service>> {
    OpenApiRouter::default()
        .routes(routes!(exercises::exercises))
        .routes(routes!(grade::grade))
        .routes(routes!(worksheets::worksheet))
}

/// A request of one of these operations.
struct Received<T> {
    body: T,
    /// Whether the key is asked for.
    key: bool,
    authorization: Authorization,
}

/// Takes in a JSON body and reads it against its published schema; says too whether the key is asked for, which this alone
/// allows, and what else the caller may ask.
async fn read<T: DeserializeOwned + ToSchema>(
    service: &Service,
    request: Request,
) -> Result<Received<T>, Problem> {
    let authorization = Authorization::of(&request);
    let (parts, body) = request.into_parts();
    let key = query::flag(parts.uri.query(), "key")?;
    if key {
        authorization.covers(ANSWER_KEY)?;
    }
    media::sends_json(&parts.headers)?;
    let bytes = receive(body, service.limits).await?;
    Ok(Received { body: body::read_as::<T>(&bytes)?, key, authorization })
}
