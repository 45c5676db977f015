//! `GET /v1/self-audit`: every conformance case, run against the engine that answers.
//!
//! The cases are run some at a time, as the caller reads: nothing but these few is held for one who does not.

use super::media;
use super::problem::Problem;
use super::query::{self, YES_OR_NO};
use super::register::{CHECKS, CheckEntry};
use super::state::Service;
use crate::audit::{AuditSummary, AuditedCase, Case, CaseBasis, Filter, cases};
use crate::rulebook::Edition;
use crate::rulebook::digest;
use axum::body::{Body, Bytes};
use axum::extract::{Request, State};
use axum::http::header;
use axum::response::{IntoResponse, Response};
use futures_util::stream;
use serde::Serialize;
use std::io;
use std::sync::Arc;
use utoipa::ToSchema;
use utoipa_axum::router::OpenApiRouter;
use utoipa_axum::routes;

/// The path of the operation.
pub const PATH: &str = "/v1/self-audit";

/// How many cases are run in one turn: some milliseconds of work.
const CASES_A_TURN: usize = 32;

/// The route.
pub fn routes() -> OpenApiRouter<Arc<Service>> {
    OpenApiRouter::default().routes(routes!(self_audit))
}

/// What this installation makes of the conformance cases, run while it answers.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct SelfAudit<'a> {
    /// The rules that the cases were run under.
    ruleset: AuditedRuleset,
    /// The cases, in the order of their files; with `differing=true` only those in which something differs.
    cases: Vec<AuditedCase<'a>>,
    /// What all cases that were run come to, listed or not. It stands last: an audit without it is not whole.
    summary: AuditSummary,
}

/// The rules of this installation.
#[derive(Clone, Copy, Debug, Serialize, ToSchema)]
pub struct AuditedRuleset {
    /// The version of this service, which its rules carry.
    #[schema(value_type = String, example = "0.1.0")]
    version: &'static str,
    /// SHA-256 over every table and every rule with its figures, as every answer carries it.
    #[schema(value_type = String, example = "sha256:0f…")]
    digest: &'static str,
}

/// The conformance cases, run live
///
/// Runs the conformance cases that are part of the program while it answers, so that any installation can prove itself: for
/// each case its source, the value that is expected and the one that this engine computes, edition by edition, and whether
/// the proof of the answer can be recomputed. Where a source is held wrong the case says what it says and why. The names and
/// notes of cases are data, in English.
#[utoipa::path(
    get, path = "/v1/self-audit", tag = "Service", operation_id = "self_audit",
    params(
        ("check" = inline(Option<String>), Query, description = "Only cases of this check.", example = "conduit_body_check"),
        ("basis" = inline(Option<CaseBasis>), Query, description = "Only cases that rest on this."),
        ("edition" = inline(Option<Edition>), Query, description = "Only under this edition."),
        ("differing" = inline(Option<bool>), Query, description = "Whether only cases are listed in which something differs; all are run and counted."),
    ),
    responses((status = 200, description = "The audit, whatever it finds.", body = SelfAudit<'static>)),
)]
async fn self_audit(State(service): State<Arc<Service>>, request: Request) -> Result<Response, Problem> {
    let asked = Asked::read(request.uri().query())?;
    media::takes_json(request.headers())?;
    let cases = cases().map_err(|_| Problem::internal())?;
    let text =
        stream::try_unfold(Part::Opening, move |part| part.write(Arc::clone(&service), cases, asked.clone()));
    let headers = [(header::CONTENT_TYPE, media::JSON), (header::CACHE_CONTROL, "no-store")];
    Ok((headers, Body::from_stream(text)).into_response())
}

/// What is asked for.
#[derive(Clone, Debug)]
struct Asked {
    filter: Filter,
    differing: bool,
}

impl Asked {
    fn read(query: Option<&str>) -> Result<Self, Problem> {
        let checks: Vec<&str> = CHECKS.iter().map(|check| check.name).collect();
        let parameters = [
            ("check", &checks[..]),
            ("basis", &CaseBasis::ALL.map(CaseBasis::name)),
            ("edition", &Edition::ALL.map(Edition::year)),
            ("differing", YES_OR_NO),
        ];
        let [check, basis, edition, differing] = query::chosen(query, parameters)?;
        let filter = Filter {
            check: check.map(|place| checks[place]),
            basis: basis.map(|place| CaseBasis::ALL[place]),
            edition: edition.map(|place| Edition::ALL[place]),
        };
        Ok(Self { filter, differing: differing == Some(0) })
    }
}

/// What is written next.
#[derive(Clone, Copy, Debug)]
enum Part {
    Opening,
    /// Cases from an index on, after those that the summary counts.
    Cases {
        from: usize,
        summary: AuditSummary,
        is_first: bool,
    },
    End,
}

impl Part {
    /// Writes this part, and says which is next; `None` after the last.
    async fn write(
        self,
        service: Arc<Service>,
        cases: &'static [Case],
        asked: Asked,
    ) -> io::Result<Option<(Bytes, Self)>> {
        match self {
            Self::Opening => {
                let ruleset = AuditedRuleset { version: env!("CARGO_PKG_VERSION"), digest: digest::whole() };
                let mut text = br#"{"ruleset":"#.to_vec();
                serde_json::to_writer(&mut text, &ruleset)?;
                text.extend_from_slice(br#","cases":["#);
                let next = Self::Cases { from: 0, summary: AuditSummary::default(), is_first: true };
                Ok(Some((text.into(), next)))
            }
            Self::Cases { from, summary, is_first } => {
                let turn = service.audit_turn().await;
                let run = tokio::task::spawn_blocking(move || {
                    let _turn = turn;
                    run(cases, from, summary, is_first, &asked)
                });
                run.await.map_err(io::Error::other)?.map(Some)
            }
            Self::End => Ok(None),
        }
    }
}

/// Runs the next few cases that are asked for. After the last the summary follows.
fn run(
    cases: &'static [Case],
    from: usize,
    mut summary: AuditSummary,
    mut is_first: bool,
    asked: &Asked,
) -> io::Result<(Bytes, Part)> {
    let mut text = Vec::new();
    let mut chosen = cases.iter().enumerate().skip(from).filter(|(_, case)| asked.filter.takes(case));
    for (_, case) in chosen.by_ref().take(CASES_A_TURN) {
        let check = CheckEntry::named(&case.check)
            .ok_or_else(|| io::Error::other(format!("no check is called {}", case.check)))?;
        let audited = AuditedCase::of(case, asked.filter.edition, check.examine);
        summary.add(&audited);
        if !asked.differing || !audited.agrees() {
            text.extend_from_slice(if is_first { b"" } else { b"," });
            is_first = false;
            serde_json::to_writer(&mut text, &audited)?;
        }
    }
    if let Some((from, _)) = chosen.next() {
        return Ok((text.into(), Part::Cases { from, summary, is_first }));
    }
    text.extend_from_slice(br#"],"summary":"#);
    serde_json::to_writer(&mut text, &summary)?;
    text.push(b'}');
    Ok((text.into(), Part::End))
}
