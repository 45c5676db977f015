//! The routes of the catalogue.

use super::amendments::Amendments;
use super::checks::{self as check_documents, CheckView, Checks};
use super::documents::CatalogueDocuments;
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
use std::sync::Arc;
use utoipa_axum::router::OpenApiRouter;
use utoipa_axum::routes;

/// Declares one route a document: its name, path and tag, the parameter of the path, what is answered, and where the document
/// is found among all by the last part of the path.
macro_rules! document_routes {
    ($($(#[doc = $doc:tt])* $name:ident: $path:tt, $tag:tt, $answered:tt $body:ident $(, params $params:tt)? => $find:expr;)*) => {
        /// Every route of the catalogue.
        pub fn routes() -> OpenApiRouter<Arc<Service>> {
            OpenApiRouter::default()$(.routes(routes!($name)))*
        }

        $(
            $(#[doc = $doc])*
            #[utoipa::path(
                get, path = $path, tag = $tag, $(params $params,)?
                responses((status = 200, description = $answered, body = $body)),
            )]
            async fn $name(State(service): State<Arc<Service>>, request: Request) -> Result<Response, Problem> {
                respond(&service.documents, &request, $find)
            }
        )*
    };
}

fn respond<'a>(
    documents: &'a CatalogueDocuments,
    request: &Request,
    find: impl FnOnce(&'a CatalogueDocuments, &str) -> Result<&'a Document, Problem>,
) -> Result<Response, Problem> {
    let last = request.uri().path().rsplit('/').next().unwrap_or_default();
    let document = find(documents, &percent_decode_str(last).decode_utf8_lossy())?;
    query::none(request.uri().query())?;
    document.respond(request.headers())
}

document_routes! {
    /// The checks
    ///
    /// Every check: what it is for, where its request is posted to, and whether its answers can be drawn.
    checks: "/v1/checks", "Rulebook", "The checks." Checks => |_, _| Ok(&check_documents::collection()?.list);

    /// One check
    ///
    /// A check with the JSON Schema of its request and requests to begin with: enough to make a form of it, without the whole
    /// OpenAPI document.
    check: "/v1/checks/{name}", "Rulebook",
        "The check." CheckView, params(("name" = String, Path, description = "The name of the check.", example = "outlet_box_fill"))
        => |_, name| check_documents::collection()?.find(name);

    /// The editions of the code
    ///
    /// Every edition that can be asked for, which one serves when a request names none, and which must be asked for
    /// knowingly because its text could not be verified.
    editions: "/v1/editions", "Rulebook", "The editions." Editions => |documents, _| Ok(&documents.in_words().editions);

    /// The published tables
    ///
    /// Every table that answers are made from, and the table `rule-figures` of the figures that rules state.
    tables: "/v1/tables", "Rulebook", "The tables." Tables => |documents, _| Ok(&documents.tables.list);

    /// One table
    ///
    /// A table with every figure, how far it can be trusted and where it comes from. Each look-up of a proof names a table,
    /// a row and a column that stand here.
    table: "/v1/tables/{id}", "Rulebook",
        "The table." TableView, params(("id" = String, Path, description = "The name of the table.", example = "conductor-volume"))
        => |documents, id| documents.tables.find(id);

    /// The rules
    ///
    /// Every rule of every edition that a finding or a step of a proof can name.
    rules: "/v1/rules", "Rulebook", "The rules." Rules => |documents, _| Ok(&documents.in_words().rules.list);

    /// One rule
    ///
    /// What the rule asks in our own words, where each edition has it, the figures it states, and where our knowledge of
    /// it comes from.
    rule: "/v1/rules/{id}", "Rulebook",
        "The rule." RuleView, params(("id" = String, Path, description = "The name of the rule.", example = "outlet-fill.devices"))
        => |documents, id| documents.in_words().rules.find(id);

    /// The disputed points
    ///
    /// Where inspectors and authors read a rule in more than one way: what is disputed, the readings, and the one that is
    /// followed unless a request chooses another.
    interpretations: "/v1/interpretations", "Rulebook",
        "The disputed points." Interpretations => |documents, _| Ok(&documents.in_words().interpretations);

    /// The misconceptions
    ///
    /// What learners get wrong, check by check: each a named departure from the rules, with why it is wrong and where the code says
    /// so. A wrong answer is explained by those that give exactly its figure.
    misconceptions: "/v1/misconceptions", "Teaching",
        "The misconceptions." Misconceptions => |documents, _| Ok(&documents.in_words().misconceptions);

    /// The figures that can be amended
    ///
    /// Where a jurisdiction states another figure than the code does, a request may say so, on the caller's word: which
    /// figures that can be, and how far.
    amendments: "/v1/amendments", "Rulebook", "The figures." Amendments => |documents, _| Ok(&documents.amendments);

    /// The kinds of problem
    ///
    /// Every kind of problem that a request can be answered with.
    problems: "/v1/problems", "Service",
        "The kinds of problem." Problems => |documents, _| Ok(&documents.in_words().problems.list);

    /// One kind of problem
    ///
    /// What the `type` link of a problem answers: what it means, what to do about it, and the codes of the faults that it
    /// lists.
    problem: "/v1/problems/{slug}", "Service",
        "The kind of problem." ProblemKindView, params(("slug" = String, Path, description = "The last part of the link.", example = "invalid-request"))
        => |documents, slug| documents.in_words().problems.find(slug);
}
