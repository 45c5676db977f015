//! The routes of the catalogue.

use super::amendments::Amendments;
use super::checks::{self as check_documents, CheckView, Checks};
use super::editions::Editions;
use super::interpretations::Interpretations;
use super::misconceptions::Misconceptions;
use super::problems::{ProblemKindView, Problems};
use super::rules::{RuleView, Rules};
use super::tables::{TableView, Tables};
use crate::service::document::Document;
use crate::service::problem::Problem;
use crate::service::query;
use crate::service::state::Service;
use axum::extract::{Request, State};
use axum::response::Response;
use percent_encoding::percent_decode_str;
use std::borrow::Cow;
use std::sync::Arc;
use utoipa_axum::router::OpenApiRouter;
use utoipa_axum::routes;

type Shared = State<Arc<Service>>;
type Answer = Result<Response, Problem>;

/// Every route of the catalogue.
pub fn routes() -> OpenApiRouter<Arc<Service>> {
    OpenApiRouter::default()
        .routes(routes!(checks))
        .routes(routes!(check))
        .routes(routes!(editions))
        .routes(routes!(tables))
        .routes(routes!(table))
        .routes(routes!(rules))
        .routes(routes!(rule))
        .routes(routes!(interpretations))
        .routes(routes!(misconceptions))
        .routes(routes!(amendments))
        .routes(routes!(problems))
        .routes(routes!(problem))
}

fn respond(request: &Request, document: &Document) -> Answer {
    query::none(request.uri().query())?;
    document.respond(request.headers())
}

/// The last part of the path, decoded.
fn last(request: &Request) -> Cow<'_, str> {
    let last = request.uri().path().rsplit('/').next().unwrap_or_default();
    percent_decode_str(last).decode_utf8_lossy()
}

/// The checks
///
/// Every check: what it is for, where its request is posted to, and whether its answers can be drawn.
#[utoipa::path(
    get, path = "/v1/checks", tag = "Rulebook", operation_id = "checks",
    responses((status = 200, description = "The checks.", body = Checks)),
)]
async fn checks(request: Request) -> Answer {
    respond(&request, check_documents::collection()?.list())
}

/// One check
///
/// A check with the JSON Schema of its request and requests to begin with: enough to make a form of it, without the whole
/// OpenAPI document.
#[utoipa::path(
    get, path = "/v1/checks/{name}", tag = "Rulebook", operation_id = "check",
    params(("name" = String, Path, description = "The name of the check.", example = "outlet_box_fill")),
    responses((status = 200, description = "The check.", body = CheckView)),
)]
async fn check(request: Request) -> Answer {
    respond(&request, check_documents::collection()?.find(&last(&request))?)
}

/// The editions of the code
///
/// Every edition that can be asked for, which one serves when a request names none, and which must be asked for
/// knowingly because its text could not be verified.
#[utoipa::path(
    get, path = "/v1/editions", tag = "Rulebook", operation_id = "editions",
    responses((status = 200, description = "The editions.", body = Editions)),
)]
async fn editions(State(service): Shared, request: Request) -> Answer {
    respond(&request, &service.documents().in_words().editions)
}

/// The published tables
///
/// Every table that answers are made from, and the table `rule-figures` of the figures that rules state.
#[utoipa::path(
    get, path = "/v1/tables", tag = "Rulebook", operation_id = "tables",
    responses((status = 200, description = "The tables.", body = Tables)),
)]
async fn tables(State(service): Shared, request: Request) -> Answer {
    respond(&request, service.documents().tables.list())
}

/// One table
///
/// A table with every figure, how far it can be trusted and where it comes from. Each look-up of a proof names a table,
/// a row and a column that stand here.
#[utoipa::path(
    get, path = "/v1/tables/{id}", tag = "Rulebook", operation_id = "table",
    params(("id" = String, Path, description = "The name of the table.", example = "conductor-volume")),
    responses((status = 200, description = "The table.", body = TableView)),
)]
async fn table(State(service): Shared, request: Request) -> Answer {
    respond(&request, service.documents().tables.find(&last(&request))?)
}

/// The rules
///
/// Every rule of every edition that a finding or a step of a proof can name.
#[utoipa::path(
    get, path = "/v1/rules", tag = "Rulebook", operation_id = "rules",
    responses((status = 200, description = "The rules.", body = Rules)),
)]
async fn rules(State(service): Shared, request: Request) -> Answer {
    respond(&request, service.documents().in_words().rules.list())
}

/// One rule
///
/// What the rule asks in our own words, where each edition has it, the figures it states, and where our knowledge of
/// it comes from.
#[utoipa::path(
    get, path = "/v1/rules/{id}", tag = "Rulebook", operation_id = "rule",
    params(("id" = String, Path, description = "The name of the rule.", example = "outlet-fill.devices")),
    responses((status = 200, description = "The rule.", body = RuleView)),
)]
async fn rule(State(service): Shared, request: Request) -> Answer {
    respond(&request, service.documents().in_words().rules.find(&last(&request))?)
}

/// The disputed points
///
/// Where inspectors and authors read a rule in more than one way: what is disputed, the readings, and the one that is
/// followed unless a request chooses another.
#[utoipa::path(
    get, path = "/v1/interpretations", tag = "Rulebook", operation_id = "interpretations",
    responses((status = 200, description = "The disputed points.", body = Interpretations)),
)]
async fn interpretations(State(service): Shared, request: Request) -> Answer {
    respond(&request, &service.documents().in_words().interpretations)
}

/// The misconceptions
///
/// What learners get wrong, check by check: each a named departure from the rules, with why it is wrong and where the code says
/// so. A wrong answer is explained by those that give exactly its figure.
#[utoipa::path(
    get, path = "/v1/misconceptions", tag = "Teaching", operation_id = "misconceptions",
    responses((status = 200, description = "The misconceptions.", body = Misconceptions)),
)]
async fn misconceptions(State(service): Shared, request: Request) -> Answer {
    respond(&request, &service.documents().in_words().misconceptions)
}

/// The figures that can be amended
///
/// Where a jurisdiction states another figure than the code does, a request may say so, on the caller's word: which
/// figures that can be, and how far.
#[utoipa::path(
    get, path = "/v1/amendments", tag = "Rulebook", operation_id = "amendments",
    responses((status = 200, description = "The figures.", body = Amendments)),
)]
async fn amendments(State(service): Shared, request: Request) -> Answer {
    respond(&request, &service.documents().amendments)
}

/// The kinds of problem
///
/// Every kind of problem that a request can be answered with.
#[utoipa::path(
    get, path = "/v1/problems", tag = "Service", operation_id = "problems",
    responses((status = 200, description = "The kinds of problem.", body = Problems)),
)]
async fn problems(State(service): Shared, request: Request) -> Answer {
    respond(&request, service.documents().in_words().problems.list())
}

/// One kind of problem
///
/// What the `type` link of a problem answers: what it means, what to do about it, and the codes of the faults that it
/// lists.
#[utoipa::path(
    get, path = "/v1/problems/{slug}", tag = "Service", operation_id = "problem",
    params(("slug" = String, Path, description = "The last part of the link.", example = "invalid-request")),
    responses((status = 200, description = "The kind of problem.", body = ProblemKindView)),
)]
async fn problem(State(service): Shared, request: Request) -> Answer {
    respond(&request, service.documents().in_words().problems.find(&last(&request))?)
}
