//! The register of checks: everything that the service does with a check, for each line of the list of checks.

use super::body;
use super::language;
use super::openapi::{closed_object, one_of_names};
use super::problem::Problem;
use crate::answers::{Answer, Explain, answer};
use crate::audit::{self, Examine};
use crate::checks::{self, Check, Request as _, Status, TakeoffFigures, Verdict};
use crate::comparison;
use crate::derivation::StepId;
use crate::drawing::{self, Drawn};
use crate::for_each_check;
use crate::i18n::summary;
use crate::rulebook::Edition;
use crate::rulebook::digest::Reads;
use serde_json::{Map, Value};
use utoipa::openapi::schema::{ObjectBuilder, OneOfBuilder};
use utoipa::openapi::{Ref, RefOr, Schema};
use utoipa::{PartialSchema, ToSchema};

macro_rules! entries {
    (
        ()
        teachable { $($teachable:ty, $how:ident, $title:literal, $purpose:literal;)* }
        other { $($other:ty, $otherwise:ident, $other_title:literal, $other_purpose:literal;)* }
    ) => {
        &[
            $(CheckEntry::$how::<$teachable>($title, $purpose),)*
            $(CheckEntry::$otherwise::<$other>($other_title, $other_purpose),)*
        ]
    };
}

/// Every check, in the order in which it is documented.
pub static CHECKS: &[CheckEntry] = for_each_check!((entries));

/// Answers a request, given as members, under several editions: the comparison as JSON text.
pub type Compare = fn(&Map<String, Value>, &[Edition]) -> Result<Vec<u8>, Problem>;

/// Reads a body and draws what it comes to, as SVG.
pub type Draw = fn(&[u8]) -> Result<String, Problem>;

/// A check as the service knows it.
#[derive(Clone, Copy, Debug)]
pub struct CheckEntry {
    /// The name: `outlet_box_fill`.
    pub name: &'static str,
    /// The path of its operation.
    pub path: &'static str,
    /// The key of its title.
    pub title: &'static str,
    /// The key of what it is for, in trade words.
    pub purpose: &'static str,
    /// The parts of the rulebook and the tables that it can read.
    pub reads: fn() -> &'static Reads,
    /// Reads a body and answers it.
    pub evaluate: fn(&[u8], Explain) -> Result<Answered, Problem>,
    /// Answers a body under several editions, and says what changes.
    pub compare: Compare,
    /// Reads a body and draws what it comes to; `None` for a check that has nothing to look at.
    pub draw: Option<Draw>,
    /// Reads a body and tells in sentences the steps that its findings rest on.
    pub reasoning: fn(&[u8]) -> Result<Vec<String>, Problem>,
    /// Runs a conformance case under an edition.
    pub examine: Examine,
    /// The schemas of its request and its answer.
    pub schemas: fn() -> CheckSchemas,
}

/// An answer in writing.
#[derive(Clone, Debug)]
pub struct Answered {
    /// The answer as JSON text.
    pub json: Vec<u8>,
    /// Its verdict; `None` when only a size was asked for.
    pub verdict: Option<Verdict>,
    /// The caller's own mark.
    pub reference: Option<String>,
    /// The rules that are violated, each once.
    pub violated: Vec<&'static str>,
    /// What a takeoff takes from the answer.
    pub takeoff_figures: TakeoffFigures,
}

/// The schemas of a check.
pub struct CheckSchemas {
    /// The name of the schema of the request.
    pub request: String,
    /// The name of the schema of the answer.
    pub answer: String,
    /// Both schemas and all that they refer to, by name.
    pub all: Vec<(String, RefOr<Schema>)>,
}

impl CheckEntry {
    /// The entry of a check, with the keys of its title and of what it is for.
    const fn of<C: Check>(title: &'static str, purpose: &'static str) -> Self {
        Self {
            name: C::NAME,
            path: C::PATH,
            reads: C::reads,
            title,
            purpose,
            evaluate: evaluate::<C>,
            compare: compare::<C>,
            draw: None,
            reasoning: reasoning::<C>,
            examine: audit::examine::<C>,
            schemas: schemas::<C>,
        }
    }

    /// The entry of a check whose answers can be drawn.
    const fn drawn<C: Drawn>(title: &'static str, purpose: &'static str) -> Self {
        Self { draw: Some(draw::<C>), ..Self::of::<C>(title, purpose) }
    }

    /// The check with a name.
    pub fn named(name: &str) -> Option<&'static Self> {
        CHECKS.iter().find(|check| check.name == name)
    }
}

fn evaluate<C: Check>(body: &[u8], explain: Explain) -> Result<Answered, Problem> {
    let request = body::read::<C>(body)?;
    let evaluation = checks::evaluate::<C>(&request);
    let verdict = evaluation.verdict;
    let reference = request.terms().reference.map(str::to_owned);
    let mut violated: Vec<&'static str> = Vec::new();
    for finding in evaluation.findings.iter().filter(|finding| finding.status == Status::Violated) {
        if !violated.contains(&finding.rule.id) {
            violated.push(finding.rule.id);
        }
    }
    let takeoff_figures = C::takeoff_figures(&request, &evaluation);
    let answer = answer::<C>(&request, &evaluation, explain, language::messages());
    // room for most answers, so that writing them does not move them
    let mut json = Vec::with_capacity(if explain == Explain::Full { 16 * 1024 } else { 6 * 1024 });
    answer.write_json(&mut json).map_err(|_| Problem::internal())?;
    Ok(Answered { json, verdict, reference, violated, takeoff_figures })
}

fn draw<C: Drawn>(body: &[u8]) -> Result<String, Problem> {
    let request = body::read::<C>(body)?;
    Ok(drawing::draw::<C>(&request, language::messages()))
}

fn compare<C: Check>(request: &Map<String, Value>, editions: &[Edition]) -> Result<Vec<u8>, Problem> {
    let mut evaluations = Vec::with_capacity(editions.len());
    for edition in editions {
        let mut request = request.clone();
        request.insert("edition".to_owned(), edition.year().into());
        let request = body::read::<C>(Value::Object(request).to_string().as_bytes())?;
        evaluations.push((*edition, checks::evaluate::<C>(&request)));
    }
    let compared = comparison::compare::<C>(&evaluations).ok_or_else(Problem::internal)?;
    serde_json::to_vec(&compared).map_err(|_| Problem::internal())
}

fn reasoning<C: Check>(body: &[u8]) -> Result<Vec<String>, Problem> {
    let evaluation = checks::evaluate::<C>(&body::read::<C>(body)?);
    let steps: Vec<StepId> = evaluation.findings.iter().filter_map(|finding| finding.step).collect();
    Ok(summary::leading_to(&evaluation.proof, &steps, language::messages()))
}

fn schemas<C: Check>() -> CheckSchemas {
    let mut all = Vec::new();
    let request = with_schema::<C::Request>(&mut all);
    let outcome = with_schema::<C::Outcome>(&mut all);
    // the name of a generic type does not tell its parameter: each check has an answer of its own
    let answer = format!("{}Answer", outcome.strip_suffix("Outcome").unwrap_or(&outcome));
    all.push((answer.clone(), <Answer<'static, C::Outcome> as PartialSchema>::schema()));
    <Answer<'static, C::Outcome> as ToSchema>::schemas(&mut all);
    CheckSchemas { request, answer, all }
}

/// The schema of a body that names a check and holds a request of it: one form a check, with what else it takes.
pub(super) fn form_per_check(
    verb: &str,
    description: &str,
    with: impl Fn(ObjectBuilder) -> ObjectBuilder,
) -> RefOr<Schema> {
    let forms = CHECKS.iter().fold(OneOfBuilder::new(), |forms, check| {
        let name = one_of_names([check.name]).description(Some("The check to make."));
        let form = closed_object()
            .title(Some(format!("{verb} {}", check.name)))
            .property("check", name)
            .required("check");
        let request = Ref::from_schema_name((check.schemas)().request);
        forms.item(with(form).property("request", request).required("request"))
    });
    RefOr::T(Schema::OneOf(forms.description(Some(description)).build()))
}

/// Adds a schema and all that it refers to; gives back its name.
pub(super) fn with_schema<T: ToSchema>(all: &mut Vec<(String, RefOr<Schema>)>) -> String {
    all.push((T::name().into_owned(), <T as PartialSchema>::schema()));
    T::schemas(all);
    T::name().into_owned()
}
