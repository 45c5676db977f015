//! The answer that every check gives: the evaluation, put in words, with what it was made under.
//!
//! Generic over [`Check`]; no check is named here.

mod localized_arg;
mod shown;
mod write;

pub use shown::{Shown, columns, is_empty, is_plain};

use crate::checks::{
    self, Account, Amendment, Caution, Check, Evaluation, Finding, Request as _, RuleStatus, Status, Verdict,
};
use crate::derivation::{Derivation, DerivationView, Operation, Pointer, StepId, write_citation};
use crate::i18n::{Catalogue, summary};
use crate::rulebook::reading::Point;
use crate::rulebook::{Citation, Edition, digest};
use localized_arg::LocalizedArg;
use serde::{Deserialize, Serialize};
use std::sync::LazyLock;
use utoipa::ToSchema;

/// How much of the proof an answer carries. The figures are the same in every case.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "lowercase")]
pub enum Explain {
    /// Every step, so that the proof can be recomputed.
    #[default]
    Full,
    /// The computing steps, each as a sentence.
    Summary,
    /// No proof.
    None,
}

/// What is found about one rule.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct FindingView<'a> {
    /// The rule; its words are at `/v1/rules/{rule}`.
    #[schema(value_type = String, example = "outlet-volume.scope")]
    rule: &'static str,
    /// Where the edition has the rule.
    #[serde(skip_serializing_if = "Option::is_none", serialize_with = "write_citation")]
    #[schema(value_type = Option<String>, example = "314.16")]
    citation: Option<Citation>,
    /// What is found.
    status: Status,
    /// The finding as a sentence.
    message: String,
    /// The inputs that it is about.
    #[serde(skip_serializing_if = "<[Pointer]>::is_empty")]
    #[schema(value_type = Vec<Pointer>)]
    at: &'a [Pointer],
    /// The inputs that would decide it, when it is not determined.
    #[serde(skip_serializing_if = "<[Pointer]>::is_empty")]
    #[schema(value_type = Vec<Pointer>)]
    supply: &'a [Pointer],
    /// What would lift the rule, when it is violated and nobody claimed it: something that is added, or that the authority having
    /// jurisdiction grants.
    #[serde(skip_serializing_if = "<[Pointer]>::is_empty")]
    #[schema(value_type = Vec<Pointer>)]
    unless: &'a [Pointer],
    /// The step of the proof that decides it.
    #[serde(skip_serializing_if = "Option::is_none")]
    step: Option<StepId>,
}

/// Every rule in the scope of what was described, by what it came to. The verdict is taken from it.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct AccountView {
    /// The rules that are violated.
    #[schema(value_type = Vec<String>)]
    violated: Vec<&'static str>,
    /// The rules that apply and cannot be decided from what was given.
    #[schema(value_type = Vec<String>)]
    not_determined: Vec<&'static str>,
    /// The rules that are satisfied, and those by which things were counted.
    satisfied: RulesView,
    /// The rules that nothing raises, that a fact lifts, or that the edition has not.
    does_not_apply: RulesView,
    /// The subjects that the request does not describe: nothing is said about them.
    #[serde(skip_serializing_if = "<[_]>::is_empty")]
    #[schema(value_type = Vec<String>)]
    not_looked_at: Vec<&'static str>,
}

/// Rules by name; with `explain=none` only their number.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[serde(untagged)]
pub enum RulesView {
    /// Their names.
    #[schema(value_type = Vec<String>)]
    Named(Vec<&'static str>),
    /// How many there are.
    Counted(usize),
}

impl AccountView {
    fn of(account: &Account, explain: Explain) -> Self {
        let names = |status| account.rules(status).map(|rule| rule.id);
        let others = |status| match explain {
            Explain::None => RulesView::Counted(names(status).count()),
            Explain::Full | Explain::Summary => RulesView::Named(names(status).collect()),
        };
        Self {
            violated: names(RuleStatus::Violated).collect(),
            not_determined: names(RuleStatus::NotDetermined).collect(),
            satisfied: others(RuleStatus::Satisfied),
            does_not_apply: others(RuleStatus::DoesNotApply),
            not_looked_at: account.not_looked_at().to_vec(),
        }
    }
}

/// Why something was left out.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct ReasonView<'a> {
    /// The name of the reason, as steps and lists of the answer give it.
    #[schema(value_type = String, example = "stays-inside")]
    because: &'static str,
    /// The rules that it speaks of.
    #[schema(value_type = Vec<String>, example = json!(["free-conductor.length"]))]
    rules: Vec<&'static str>,
    /// The reason as a sentence.
    message: &'a str,
}

/// A disputed point that mattered to the answer.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct InterpretationView<'a> {
    /// The point, as `interpretations` of a request names it.
    #[schema(value_type = String, example = "molded_clamps")]
    point: &'static str,
    /// The rule that is read in several ways.
    #[schema(value_type = String, example = "outlet-fill.clamps")]
    rule: &'static str,
    /// What is disputed, in a sentence.
    question: &'a str,
    /// The reading that was followed.
    #[schema(value_type = String, example = "counted")]
    reading: &'static str,
    /// Whether that is the reading this service follows unless told otherwise.
    is_default: bool,
    /// The other readings, each with the verdict that it leads to.
    alternatives: Vec<Alternative>,
    /// Whether another reading would change the verdict.
    changes_verdict: bool,
}

/// Another reading of a disputed point.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct Alternative {
    /// The reading.
    #[schema(value_type = String, example = "not_counted")]
    reading: &'static str,
    /// The verdict under it; null for a sizing question.
    #[schema(required = true)]
    verdict: Option<Verdict>,
}

/// What the answer was made under.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct Ruleset<'a> {
    /// The edition that was asked for.
    pub edition: Edition,
    /// Whether the figures of that edition were compared with anything that speaks of it.
    pub verified: bool,
    /// The version of this service, which its rules carry.
    #[schema(value_type = String, example = "0.1.0")]
    pub version: &'static str,
    /// SHA-256 over every table and the whole of every edition's rules: two equal digests mean the same rules.
    #[schema(value_type = String, example = "sha256:0f…")]
    pub digest: &'static str,
    /// SHA-256 over the tables and the parts of this edition's rules that the check can read: while it is the same, nothing that the
    /// answer rests on has changed, whatever `digest` says. Absent where more than one check is spoken of.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<String>, nullable = false, example = "sha256:0f…")]
    pub check_digest: Option<&'static str>,
    /// The figures that the request amended, on the caller's word.
    #[serde(skip_serializing_if = "<[Amendment]>::is_empty")]
    #[schema(value_type = Vec<Amendment>)]
    pub amendments: &'a [Amendment],
}

impl<'a> Ruleset<'a> {
    /// The ruleset of an edition, whatever is checked.
    pub fn of_edition(edition: Edition) -> Self {
        let (verified, version) = (edition.is_verified(), env!("CARGO_PKG_VERSION"));
        Self { edition, verified, version, digest: digest::whole(), check_digest: None, amendments: &[] }
    }

    /// The ruleset of a check under an edition and some amendments.
    pub fn of<C: Check>(edition: Edition, amendments: &'a [Amendment]) -> Self {
        Self { check_digest: Some(C::reads().digest(edition)), amendments, ..Self::of_edition(edition) }
    }
}

/// The proof in sentences.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct SummaryView {
    /// One sentence for each computing step.
    summary: Vec<String>,
}

/// The proof of an answer: every step, or sentences.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[serde(untagged)]
pub enum ProofView<'a> {
    /// Every step (`explain=full`).
    Full(DerivationView<'a>),
    /// Sentences (`explain=summary`).
    Summary(SummaryView),
}

/// The answer to a check.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct Answer<'a, O> {
    /// The check that was made.
    #[schema(value_type = String, example = "outlet_box_fill")]
    pub check: &'static str,
    /// The caller's own mark.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<String>, example = "hall-3")]
    pub reference: Option<&'a str>,
    /// Whether what was described complies; null when only a size was asked for.
    #[schema(required = true)]
    pub verdict: Option<Verdict>,
    /// The figures.
    pub outcome: &'a O,
    /// What was found, rule by rule.
    pub findings: Vec<FindingView<'a>>,
    /// What every rule in the scope of what was described came to; absent when only a size was asked for.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub account: Option<AccountView>,
    /// Why rules were left out and things not counted: each `because` of the answer in words.
    pub reasons: Vec<ReasonView<'a>>,
    /// Disputed points that mattered, with the reading that was followed and the others.
    pub interpretations: Vec<InterpretationView<'a>>,
    /// The proof; absent with `explain=none`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub derivation: Option<ProofView<'a>>,
    /// What to know before acting on the answer.
    pub cautions: Vec<&'a str>,
    /// The rules that it was made under.
    pub ruleset: Ruleset<'a>,
}

/// Puts an evaluation in words.
pub fn answer<'a, C: Check>(
    request: &'a C::Request,
    evaluation: &'a Evaluation<C::Outcome>,
    explain: Explain,
    messages: &'a Catalogue,
) -> Answer<'a, C::Outcome> {
    let terms = request.terms();
    let Evaluation { verdict, outcome, findings, proof, cautions, account } = evaluation;
    let unverified = (!terms.edition.is_verified()).then_some(Caution::UnverifiedEdition);
    let amended = (!terms.amendments.is_empty()).then_some(Caution::Amended);
    let derivation = match explain {
        Explain::Full => Some(ProofView::Full(proof.into())),
        Explain::Summary => {
            Some(ProofView::Summary(SummaryView { summary: summary::sentences(proof, messages) }))
        }
        Explain::None => None,
    };
    Answer {
        check: C::NAME,
        reference: terms.reference,
        verdict: *verdict,
        outcome,
        findings: edition_finding(terms.edition)
            .into_iter()
            .chain(findings)
            .map(|finding| view_of(finding, proof, messages))
            .collect(),
        account: verdict.map(|_| AccountView::of(account, explain)),
        reasons: reasons(proof, messages),
        interpretations: interpretations::<C>(request, proof, *verdict, messages),
        derivation,
        cautions: unverified
            .into_iter()
            .chain(amended)
            .chain(Caution::USUAL)
            .chain(cautions.iter().copied())
            .map(|caution| messages.fixed(caution.key()))
            .collect(),
        ruleset: Ruleset::of::<C>(terms.edition, terms.amendments),
    }
}

fn edition_finding(edition: Edition) -> Option<&'static Finding> {
    static UNVERIFIED: LazyLock<Finding> = LazyLock::new(|| {
        let rule = &crate::rulebook::UNVERIFIED_EDITION;
        Finding::new(rule, Status::Advisory, "finding-unverified-edition").at(Pointer::to(&"/edition"))
    });
    (!edition.is_verified()).then(|| &*UNVERIFIED)
}

fn view_of<'a>(finding: &'a Finding, proof: &Derivation, messages: &Catalogue) -> FindingView<'a> {
    let Finding { rule, status, at, supply, unless, step, .. } = finding;
    FindingView {
        rule: rule.id,
        citation: proof.citation(rule),
        status: *status,
        message: message_of(finding, messages),
        at,
        supply,
        unless,
        step: *step,
    }
}

/// A finding as a sentence.
pub fn message_of(finding: &Finding, messages: &Catalogue) -> String {
    let named = finding.arguments.iter().map(|(name, argument)| (*name, LocalizedArg { argument, messages }));
    let sentence = messages.sentence(finding.message, named);
    match finding.read_as {
        Some(reading) => {
            let named = [("reading", reading), ("sentence", &*sentence)];
            messages.sentence("finding-under-a-reading", named)
        }
        None => sentence,
    }
}

/// Each reason of the proof once, in words.
fn reasons<'a>(proof: &Derivation, messages: &'a Catalogue) -> Vec<ReasonView<'a>> {
    let mut reasons: Vec<ReasonView<'a>> = Vec::new();
    for step in proof.steps() {
        let Operation::DoesNotApply { because } = step.operation else { continue };
        let rule = step.rule.id;
        match reasons.iter_mut().find(|known| known.because == because) {
            Some(known) if known.rules.contains(&rule) => {}
            Some(known) => known.rules.push(rule),
            None => {
                let message = messages.reason(because);
                reasons.push(ReasonView { because, rules: vec![rule], message });
            }
        }
    }
    reasons
}

/// Evaluates the request again under every other reading of each point that mattered.
fn interpretations<'a, C: Check>(
    request: &C::Request,
    proof: &Derivation,
    verdict: Option<Verdict>,
    messages: &'a Catalogue,
) -> Vec<InterpretationView<'a>> {
    let book = proof.rulebook();
    let others = |point: Point| {
        let followed = book.readings.place(point);
        let places = 0..point.readings().len() as u8;
        places.filter(move |place| *place != followed).map(move |place| {
            let readings = book.readings.with_place(point, place);
            let under = checks::evaluate_under::<C>(&book.with_readings(readings), request);
            Alternative { reading: point.readings()[usize::from(place)], verdict: under.verdict }
        })
    };
    let view = |point: &Point| {
        let followed = book.readings.place(*point);
        let alternatives: Vec<Alternative> = others(*point).collect();
        InterpretationView {
            point: point.name(),
            rule: point.rule().id,
            question: messages.fixed(point.question()),
            reading: point.readings()[usize::from(followed)],
            is_default: followed == 0,
            changes_verdict: alternatives.iter().any(|other| other.verdict != verdict),
            alternatives,
        }
    };
    proof.consulted().iter().map(view).collect()
}
