//! `POST /v1/boxes/review`: one installed box, by every check that something is known for.

use super::super::access::Authorization;
use super::super::fault_list::{FaultList, FaultView};
use super::super::language;
use super::super::problem::Problem;
use super::super::query;
use super::super::register::{CHECKS, CheckEntry};
use super::super::state::Service;
use super::said_twice;
use crate::answers::{Explain, Ruleset};
use crate::checks::{Amendment, FaultCode, Reference, Status, Verdict};
use crate::quantity::Units;
use crate::rulebook::Edition;
use crate::trade::ConductorSize;
use axum::extract::{Request, State};
use axum::response::Response;
use serde::{Deserialize, Serialize};
use serde_json::{Map, Value};
use std::collections::BTreeMap;
use std::sync::Arc;
use utoipa::openapi::schema::{AdditionalProperties, ObjectBuilder, Schema};
use utoipa::openapi::{Ref, RefOr};
use utoipa::{PartialSchema, ToSchema};

/// One installed box, with everything known of it.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ReviewRequest {
    /// The edition of NFPA 70, for every check.
    #[serde(default)]
    edition: Edition,
    /// Accept rules that could not be verified. Required to be true for the 2026 edition.
    #[serde(default)]
    accept_unverified_rules: bool,
    /// The units of the request and the answer, for every check.
    #[serde(default)]
    units: Units,
    /// The caller's own mark.
    reference: Option<Reference>,
    /// Local amendments to figures of the rules, for every check.
    #[serde(default)]
    #[schema(max_items = 200)]
    amendments: Vec<Amendment>,
    /// What is known of the box, check by check.
    #[schema(value_type = ReviewedChecks)]
    checks: BTreeMap<String, Map<String, Value>>,
}

/// The checks that something is known for: each member is the request of that check, without what the review itself says.
pub struct ReviewedChecks;

impl PartialSchema for ReviewedChecks {
    fn schema() -> RefOr<Schema> {
        let none = ObjectBuilder::new()
            .description(Some(
                "What is known of the box, check by check: each member is the request of that check. Edition, units and amendments are those of the review.",
            ))
            .min_properties(Some(1))
            .additional_properties(Some(AdditionalProperties::<Schema>::FreeForm(false)));
        let with = |checks: ObjectBuilder, check: &CheckEntry| {
            checks.property(check.name, Ref::from_schema_name((check.schemas)().request))
        };
        CHECKS.iter().fold(none, with).build().into()
    }
}

impl ToSchema for ReviewedChecks {}

/// What a box comes to under every check that something was known for.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct ReviewAnswer {
    /// The caller's own mark.
    #[serde(skip_serializing_if = "Option::is_none")]
    reference: Option<Reference>,
    /// The most severe verdict of all checks. A check that was only asked for a size keeps the whole from complying: it is not determined.
    /// Null when every one was only asked for a size.
    #[schema(required = true)]
    verdict: Option<Verdict>,
    /// The verdict of each check that was made.
    verdicts: Vec<CheckVerdict>,
    /// Every finding, the most severe first: violated, not determined, satisfied, advisory.
    findings: Vec<ReviewFinding>,
    /// What is still unknown: the inputs that would decide what is not determined.
    unknown: Vec<Unknown>,
    /// The checks for which nothing was said, and what was not described to one that was made. Nothing is vouched for of these.
    not_looked_at: Vec<NotLookedAt>,
    /// The whole answer of each check, by its name.
    #[schema(value_type = Object)]
    answers: Map<String, Value>,
    /// What to know before acting on the answer.
    cautions: Vec<String>,
    /// The rules that it was made under.
    #[schema(value_type = Ruleset)]
    ruleset: Value,
}

/// The verdict of one check.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct CheckVerdict {
    /// The check.
    #[schema(value_type = String, example = "outlet_box_fill")]
    check: &'static str,
    /// Its verdict, apart from what it hands on to another check of this review; null when only a size was asked for.
    #[schema(required = true)]
    verdict: Option<Verdict>,
}

/// A finding of one of the checks.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct ReviewFinding {
    /// The check.
    #[schema(value_type = String, example = "outlet_box_fill")]
    check: &'static str,
    /// The rule; its words are at `/v1/rules/{rule}`.
    rule: String,
    /// Where the edition has the rule.
    #[serde(skip_serializing_if = "Option::is_none")]
    citation: Option<String>,
    /// What is found.
    status: Status,
    /// The finding as a sentence.
    message: String,
    /// The inputs that it is about, as JSON Pointers into this request.
    at: Vec<String>,
}

/// Something that would decide what is not determined.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct Unknown {
    /// The check.
    #[schema(value_type = String, example = "outlet_box_fill")]
    check: &'static str,
    /// The rule that could not be decided.
    rule: String,
    /// What is missing, as a sentence.
    message: String,
    /// Where to supply it, as JSON Pointers into this request.
    supply: Vec<String>,
}

/// A check that was not made, or the subjects of one that were not described to it.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct NotLookedAt {
    /// The check.
    #[schema(value_type = String, example = "raceway_fill")]
    check: &'static str,
    /// What it is.
    title: String,
    /// The subjects that were not described, of a check that was made; absent for one that was not.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    subjects: Vec<String>,
}

/// A finding as an answer writes it.
#[derive(Deserialize)]
struct Written {
    rule: String,
    citation: Option<String>,
    status: Status,
    message: String,
    #[serde(default)]
    at: Vec<String>,
    #[serde(default)]
    supply: Vec<String>,
}

/// One installed box, by every check
///
/// Takes one box with everything known of it, makes every check that something is known for, and gives one verdict, the
/// findings in the order of gravity, what is still unknown, and which checks nothing was said for. Each check's whole
/// answer, with its proof, is there too.
#[utoipa::path(
    post, path = "/v1/boxes/review", tag = "Checks", operation_id = "box_review",
    params(("explain" = inline(Option<Explain>), Query, description = "How much of the proof each check's answer carries. None unless asked.")),
    request_body(content = ReviewRequest, description = "The box."),
    responses((status = 200, description = "The review, whatever the verdict.", body = ReviewAnswer)),
)]
pub async fn review(State(service): State<Arc<Service>>, request: Request) -> Result<Response, Problem> {
    let explain = match request.uri().query() {
        None | Some("") => Explain::None,
        asked => query::explain(asked)?,
    };
    let authorization = Authorization::of(&request);
    let asked: ReviewRequest = super::read(&service, request).await?;
    if asked.checks.is_empty() {
        return Err(Problem::invalid(FaultList::of(nothing_known())));
    }
    for check in asked.checks.keys() {
        authorization.covers(check)?;
    }
    let answers = answers(&asked, explain)?;
    let review = put_together(asked, answers).ok_or_else(Problem::internal)?;
    for CheckVerdict { check, verdict } in &review.verdicts {
        service.metrics().verdict(check, *verdict);
    }
    let json = serde_json::to_vec(&review).map_err(|_| Problem::internal())?;
    Ok(super::super::check_route::answered(json))
}

/// Makes every check that something is known for; when requests have faults, those of all checks together.
fn answers(asked: &ReviewRequest, explain: Explain) -> Result<Vec<(&'static CheckEntry, Value)>, Problem> {
    let terms = terms_of(asked);
    let (mut answers, mut faults) = (Vec::new(), FaultList::default());
    for check in CHECKS {
        let Some(part) = asked.checks.get(check.name) else { continue };
        let mut part = part.clone();
        for (term, value) in &terms {
            if part.insert(term.clone(), value.clone()).is_some_and(|own| own != *value) {
                faults.push(said_otherwise(check, term));
            }
        }
        match (check.evaluate)(Value::Object(part).to_string().as_bytes(), explain) {
            Ok(answered) => {
                answers
                    .push((check, serde_json::from_slice(&answered.json).map_err(|_| Problem::internal())?));
            }
            Err(problem) => {
                for fault in problem.below(&format!("/checks/{}", check.name)).faults.kept() {
                    faults.push(fault.clone());
                }
            }
        }
    }
    if faults.is_empty() {
        said_twice::contradictions(&asked.checks, asked.units)
            .into_iter()
            .for_each(|fault| faults.push(fault));
    }
    if faults.is_empty() { Ok(answers) } else { Err(Problem::invalid(faults)) }
}

/// What the review says for every check.
fn terms_of(asked: &ReviewRequest) -> Vec<(String, Value)> {
    let terms = serde_json::json!({
        "edition": asked.edition,
        "accept_unverified_rules": asked.accept_unverified_rules,
        "units": asked.units,
        "amendments": asked.amendments,
    });
    terms.as_object().map(|terms| terms.clone().into_iter().collect()).unwrap_or_default()
}

fn nothing_known() -> FaultView {
    let fault =
        FaultView::in_body("/checks".to_owned(), FaultCode::MissingMember, "fault-review-of-nothing", []);
    fault.accepting(CHECKS.iter().map(|check| check.name), None)
}

fn said_otherwise(check: &CheckEntry, term: &str) -> FaultView {
    let place = format!("/checks/{}/{term}", check.name);
    let named = [("term", term.to_owned())];
    let view = FaultView::in_body(place, FaultCode::Contradiction, "fault-said-by-the-review", named);
    FaultView { contradicts: Some(format!("/{term}")), ..view }
}

/// `None` when an answer is not what the checks write, which would be a fault of this service.
fn put_together(asked: ReviewRequest, answers: Vec<(&'static CheckEntry, Value)>) -> Option<ReviewAnswer> {
    let messages = language::messages();
    let (mut findings, mut unknown, mut verdicts) = (Vec::new(), Vec::new(), Vec::new());
    let mut cautions: Vec<String> = Vec::new();
    for (check, answer) in &answers {
        let verdict: Option<Verdict> = serde_json::from_value(answer.get("verdict")?.clone()).ok()?;
        let below = |pointers: Vec<String>| -> Vec<String> {
            pointers.into_iter().map(|pointer| format!("/checks/{}{pointer}", check.name)).collect()
        };
        let mut written: Vec<Written> = serde_json::from_value(answer.get("findings")?.clone()).ok()?;
        let found = written.len();
        written.retain(|finding| !is_handed_on(&asked.checks, check.name, finding));
        let verdict = verdict.map(|verdict| match written.iter().map(|finding| finding.status).min() {
            _ if found == written.len() => verdict,
            Some(Status::Violated) => Verdict::Violates,
            Some(Status::NotDetermined) => Verdict::NotDetermined,
            Some(Status::Satisfied | Status::Advisory) | None => Verdict::Complies,
        });
        verdicts.push(CheckVerdict { check: check.name, verdict });
        for Written { rule, citation, status, message, at, supply } in written {
            if status == Status::NotDetermined {
                let (rule, message) = (rule.clone(), message.clone());
                unknown.push(Unknown { check: check.name, rule, message, supply: below(supply) });
            }
            findings.push(ReviewFinding {
                check: check.name,
                rule,
                citation,
                status,
                message,
                at: below(at),
            });
        }
        for caution in answer.get("cautions")?.as_array()?.iter().filter_map(Value::as_str) {
            if !cautions.iter().any(|known| known == caution) {
                cautions.push(caution.to_owned());
            }
        }
    }
    findings.sort_by_key(|finding| finding.status);
    let not_looked_at = CHECKS
        .iter()
        .filter_map(|check| {
            let made = answers.iter().find(|(made, _)| made.name == check.name);
            let subjects: Vec<String> = made
                .and_then(|(_, answer)| answer.pointer("/account/not_looked_at")?.as_array())
                .map(|names| names.iter().filter_map(Value::as_str).map(str::to_owned).collect())
                .unwrap_or_default();
            let title = messages.fixed(check.title).to_owned();
            let is_whole = made.is_some() && subjects.is_empty();
            (!is_whole).then_some(NotLookedAt { check: check.name, title, subjects })
        })
        .collect();
    let mut ruleset = answers.first()?.1.get("ruleset")?.clone();
    // each answer has that of its own check
    ruleset.as_object_mut()?.remove("check_digest");
    Some(ReviewAnswer {
        reference: asked.reference,
        verdict: most_severe(&verdicts),
        verdicts,
        findings,
        unknown,
        not_looked_at,
        ruleset,
        answers: answers.into_iter().map(|(check, answer)| (check.name.to_owned(), answer)).collect(),
        cautions,
    })
}

/// The rules by which a check sends what it cannot judge to others.
const HANDED_ON: [(&str, &str, &[&str]); 3] = [
    ("outlet_box_fill", "pull.applies", &["pull_box_size", "conduit_body_check"]),
    ("pull_box_size", "pull.applies", &["outlet_box_fill"]),
    ("box_mounting", "box-access.handhole-size", &["pull_box_size"]),
];

/// Whether a finding only asks for another check that this review makes: the verdict of that one decides. Of conductors that a
/// fill leaves to a check by size, that check must know some as large.
fn is_handed_on(parts: &BTreeMap<String, Map<String, Value>>, check: &str, finding: &Written) -> bool {
    let to = HANDED_ON.iter().find(|(from, rule, _)| *from == check && *rule == finding.rule);
    let Some((_, _, to)) = to.filter(|_| matches!(finding.status, Status::NotDetermined | Status::Advisory))
    else {
        return false;
    };
    let largest = |part: &Map<String, Value>| part.values().filter_map(largest_conductor).max();
    let left = parts.get(check).and_then(largest).filter(|_| check == "outlet_box_fill");
    to.iter().filter_map(|other| parts.get(*other)).any(|part| left.is_none() || largest(part) >= left)
}

/// The largest conductor size that stands anywhere in a part of a request.
fn largest_conductor(value: &Value) -> Option<ConductorSize> {
    match value {
        Value::String(text) => ConductorSize::read(text),
        Value::Array(items) => items.iter().filter_map(largest_conductor).max(),
        Value::Object(members) => {
            let sizes = ["size", "largest_conductor"];
            let of = |(name, member): (&String, &Value)| match member {
                Value::String(_) if !sizes.contains(&name.as_str()) => None,
                _ => largest_conductor(member),
            };
            members.iter().filter_map(of).max()
        }
        _ => None,
    }
}

/// The most severe verdict. A check that was asked for a size alone vouches for nothing.
fn most_severe(verdicts: &[CheckVerdict]) -> Option<Verdict> {
    if verdicts.iter().all(|made| made.verdict.is_none()) {
        return None;
    }
    let gravity = |verdict: &Verdict| match verdict {
        Verdict::Complies => 0,
        Verdict::NotDetermined => 1,
        Verdict::Violates => 2,
    };
    verdicts.iter().map(|made| made.verdict.unwrap_or(Verdict::NotDetermined)).max_by_key(gravity)
}
