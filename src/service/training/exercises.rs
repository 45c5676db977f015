//! `POST /v1/exercises`.

use super::super::check_route::answered;
use super::super::language;
use super::super::media;
use super::super::problem::Problem;
use super::super::state::Service;
use super::Received;
use super::exercises_request::{ExercisesRequest, number_of};
use crate::training::exercises::{ExerciseSet, exercise_set};
use axum::extract::{Request, State};
use axum::response::Response;
use std::sync::Arc;

/// Exercises from a seed
///
/// Problems with a situation told from the request that it stands for, and four choices: the right one, and three that
/// named misconceptions give. The same version and seed give the same exercises for ever. With `key=true` each carries
/// its key: which choice is right, the worked solution, why each of the others is wrong and where the code says so, and
/// the figure under the other editions. Without it nothing tells the key.
#[utoipa::path(
    post, path = "/v1/exercises", tag = "Teaching", operation_id = "exercises",
    params(("key" = inline(Option<bool>), Query, description = "Whether each exercise carries its key. It does not unless asked.")),
    request_body(content = ExercisesRequest, description = "Which exercises."),
    responses((status = 200, description = "The exercises.", body = ExerciseSet)),
)]
pub async fn exercises(State(service): State<Arc<Service>>, request: Request) -> Result<Response, Problem> {
    media::takes_json(request.headers())?;
    let Received { body: asked, key, .. } = super::read::<ExercisesRequest>(&service, request).await?;
    let (spec, messages) = (asked.spec()?, language::messages());
    let made = tokio::task::spawn_blocking(move || {
        let set = exercise_set(&spec, number_of(asked.count), key, messages)?;
        serde_json::to_vec(&set).ok()
    });
    made.await.ok().flatten().map(answered).ok_or_else(Problem::internal)
}
