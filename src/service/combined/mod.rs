//! Operations over several checks at once: one box reviewed by every check that applies, one request under several
//! editions. Both name checks by the register and know none of them.

pub mod comparison;
pub mod review;
mod said_twice;

use super::body;
use super::media;
use super::problem::Problem;
use super::state::Service;
use axum::extract::Request;
use serde::de::DeserializeOwned;
use utoipa::ToSchema;
use utoipa_axum::router::OpenApiRouter;
use utoipa_axum::routes;

/// The routes.
pub fn routes() -> OpenApiRouter<std::sync::Arc<Service>> {
    OpenApiRouter::default().routes(routes!(review::review)).routes(routes!(comparison::compare))
}

/// Takes in a body of one of these operations and reads it against its published schema.
async fn read<T: DeserializeOwned + ToSchema>(service: &Service, request: Request) -> Result<T, Problem> {
    let (parts, body) = request.into_parts();
    media::takes_json(&parts.headers)?;
    media::sends_json(&parts.headers)?;
    let bytes = super::check_route::receive(body, service.limits).await?;
    body::read_as::<T>(&bytes)
}
