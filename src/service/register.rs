//! The register of checks: everything that the service does with a check follows from its line here.

use super::body;
use super::problem::Problem;
use crate::answers::{Answer, Explain, answer};
use crate::checks::{self, Check, Gist, Status, Verdict, outlet_fill::OutletFill, raceway_fill::RacewayFill};
use crate::words::Catalogue;
use utoipa::openapi::{RefOr, Schema};
use utoipa::{PartialSchema, ToSchema};

/// Every check, in the order in which it is documented.
pub static CHECKS: &[CheckEntry] = &[
    CheckEntry::of::<OutletFill>("text-outlet-box-fill-title", "text-outlet-box-fill"),
    CheckEntry::of::<RacewayFill>("text-raceway-fill-title", "text-raceway-fill"),
];

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
    /// Reads a body and answers it.
    pub evaluate: fn(&[u8], Explain) -> Result<Answered, Problem>,
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
    pub gist: Gist,
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
        Self { name: C::NAME, path: C::PATH, title, purpose, evaluate: evaluate::<C>, schemas: schemas::<C> }
    }

    /// The check with a name.
    pub fn named(name: &str) -> Option<&'static Self> {
        CHECKS.iter().find(|check| check.name == name)
    }
}

fn evaluate<C: Check>(body: &[u8], explain: Explain) -> Result<Answered, Problem> {
    /// Room for the answers that are usual, so that writing them does not move them.
    const fn usual_size(explain: Explain) -> usize {
        match explain {
            Explain::Full => 16 * 1024,
            Explain::Summary | Explain::None => 6 * 1024,
        }
    }
    let request = body::read::<C>(body)?;
    let evaluation = checks::evaluate::<C>(&request);
    let verdict = evaluation.verdict;
    let reference = C::terms(&request).reference.map(str::to_owned);
    let mut violated: Vec<&'static str> = Vec::new();
    for finding in evaluation.findings.iter().filter(|finding| finding.status == Status::Violated) {
        if !violated.contains(&finding.rule.id) {
            violated.push(finding.rule.id);
        }
    }
    let gist = C::gist(&request, &evaluation);
    let answer = answer::<C>(&request, &evaluation, explain, Catalogue::english());
    let mut json = Vec::with_capacity(usual_size(explain));
    serde_json::to_writer(&mut json, &answer).map_err(|_| Problem::internal())?;
    Ok(Answered { json, verdict, reference, violated, gist })
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

/// Adds a schema and all that it refers to; gives back its name.
pub(super) fn with_schema<T: ToSchema>(all: &mut Vec<(String, RefOr<Schema>)>) -> String {
    all.push((T::name().into_owned(), <T as PartialSchema>::schema()));
    T::schemas(all);
    T::name().into_owned()
}
