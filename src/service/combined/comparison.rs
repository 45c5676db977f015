//! `POST /v1/editions/compare`: the same request under several editions.

use super::super::access::Authorization;
use super::super::problem::Problem;
use super::super::query;
use super::super::register::{CHECKS, CheckEntry, form_per_check};
use super::super::state::Service;
use crate::checks::{FaultCode, Faults};
use crate::comparison::EditionComparison;
use crate::derivation::Pointer;
use crate::rulebook::Edition;
use axum::extract::{Request, State};
use axum::response::Response;
use serde::Deserialize;
use serde_json::{Map, Value};
use std::sync::Arc;
use utoipa::openapi::schema::{ArrayBuilder, Schema};
use utoipa::openapi::{Ref, RefOr};
use utoipa::{PartialSchema, ToSchema};

/// The most editions that one request compares.
const MOST_EDITIONS: usize = 4;

/// A request of some check, and the editions to answer it under.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ComparisonRequest {
    check: String,
    editions: Vec<Edition>,
    request: Map<String, Value>,
}

impl PartialSchema for ComparisonRequest {
    fn schema() -> RefOr<Schema> {
        let editions = || {
            ArrayBuilder::new()
                .items(Ref::from_schema_name("Edition"))
                .min_items(Some(2))
                .max_items(Some(MOST_EDITIONS))
                .description(Some(
                    "The editions, each once. The first is the one that the others are compared with.",
                ))
        };
        let description =
            "A request of some check, and the editions to answer it under. Its own `edition` is not used.";
        form_per_check("Compare", description, |form| {
            form.property("editions", editions()).required("editions")
        })
    }
}

impl ToSchema for ComparisonRequest {}

/// One request under several editions
///
/// What changes between editions, by which rule, with the steps of the proof that only one of them has. A rule whose
/// inputs differ is a cause; one that only computes with what changed is a consequence. For 2026 the request must say
/// that it accepts unverified rules.
#[utoipa::path(
    post, path = "/v1/editions/compare", tag = "Checks", operation_id = "edition_comparison",
    request_body(content = ComparisonRequest, description = "What is asked."),
    responses((status = 200, description = "Each edition, and what changes from the first to it.", body = EditionComparison)),
)]
pub async fn compare(State(service): State<Arc<Service>>, request: Request) -> Result<Response, Problem> {
    query::none(request.uri().query())?;
    let authorization = Authorization::of(&request);
    let asked: ComparisonRequest = super::read(&service, request).await?;
    let check = check_of(&asked)?;
    authorization.covers(check.name)?;
    let json =
        (check.compare)(&asked.request, &asked.editions).map_err(|problem| problem.below("/request"))?;
    Ok(super::super::check_route::answered(json))
}

fn check_of(asked: &ComparisonRequest) -> Result<&'static CheckEntry, Problem> {
    let mut faults = Faults::default();
    for (index, edition) in asked.editions.iter().enumerate() {
        if asked.editions[..index].contains(edition) {
            faults.add(Pointer::of(&"/editions/#", index), FaultCode::Conflict, "fault-edition-twice");
        }
    }
    if !(2..=MOST_EDITIONS).contains(&asked.editions.len()) {
        let fault =
            faults.add(Pointer::to(&"/editions"), FaultCode::OutOfBounds, "fault-editions-to-compare");
        fault.arguments = vec![("most", MOST_EDITIONS.to_string())];
    }
    match CheckEntry::named(&asked.check) {
        Some(check) if faults.is_empty() => return Ok(check),
        Some(_) => {}
        None => {
            faults.add(Pointer::to(&"/check"), FaultCode::UnknownReference, "fault-unknown-check").accepted =
                CHECKS.iter().map(|check| check.name.to_owned()).collect();
        }
    }
    Err(Problem::invalid((&faults).into()))
}
