//! A diagnosis in words.

use super::{Diagnosed, Diagnosis, Reason, Slip};
use crate::answers::Ruleset;
use crate::checks::outlet_fill::Item;
use crate::checks::{Caution, Terms};
use crate::derivation::Figure;
use crate::i18n::{Catalogue, summary};
use crate::quantity::{Decimal, Unit};
use crate::rulebook::Edition;
use crate::training::misconception::{MisconceptionView, view_of};
use crate::training::{Quantity, Teachable};
use serde::Serialize;
use utoipa::ToSchema;

/// What was found about a learner's answer.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[schema(as = Grade)]
pub struct GradeView<'a> {
    /// The check that the answer is held against.
    #[schema(value_type = String, example = "outlet_box_fill")]
    pub check: &'static str,
    /// The figure that was asked for.
    #[schema(value_type = String, example = "required_volume")]
    pub asks: &'static str,
    /// Whether the answer is right.
    pub right: bool,
    /// What was found, in a sentence.
    pub message: String,
    /// What explains a wrong answer: everything that gives exactly this figure, most common first, single misconceptions
    /// before pairs and both before slips. Empty where nothing does.
    pub reasons: Vec<ReasonView>,
    /// Each kind of thing of the learner's tally, and of the right one. Absent where no tally was given.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub lines: Vec<LineView>,
    /// How many misconceptions were tried.
    pub misconceptions_tried: usize,
    /// How many pairs of them were tried.
    pub pairs_tried: usize,
    /// The right answer and how it comes about; only with `key=true`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub key: Option<KeyView>,
    /// What to know before acting on it.
    pub cautions: Vec<String>,
    /// The rules that it was graded under.
    pub ruleset: Ruleset<'a>,
}

/// What kind of explanation it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum ReasonKind {
    /// One misconception gives exactly this figure.
    Misconception,
    /// Two misconceptions held together give exactly this figure.
    Pair,
    /// The answer is in another unit, or the number is.
    Unit,
    /// The right figure was rounded.
    Rounding,
    /// A slip in the arithmetic.
    Arithmetic,
}

/// One explanation.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[schema(as = GradeReason)]
pub struct ReasonView {
    /// What kind it is.
    pub kind: ReasonKind,
    /// Its place among the explanations, from 1: the lower, the likelier.
    pub rank: usize,
    /// The explanation in a sentence.
    pub message: String,
    /// The misconceptions; none for a slip.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub misconceptions: Vec<MisconceptionView>,
}

/// What was found about one kind of thing of a tally.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[schema(as = GradedLine)]
pub struct LineView {
    /// What it is about.
    pub what: Item,
    /// Whether the learner has it right.
    pub right: bool,
    /// Whether the learner has it at all.
    pub given: bool,
    /// What explains it where it is wrong.
    pub reasons: Vec<ReasonView>,
    /// The right number of allowances; only with `key=true`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<f64>, example = 4)]
    pub allowances: Option<Decimal>,
    /// The right volume; only with `key=true`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<f64>, example = 9)]
    pub volume: Option<Decimal>,
}

/// The right answer, and how it comes about.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[schema(as = GradeKey)]
pub struct KeyView {
    /// The right figure; absent where the check gives none.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<f64>, example = 18)]
    pub value: Option<Decimal>,
    /// Its unit.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub unit: Option<Unit>,
    /// The steps that lead to it, each as a sentence.
    pub solution: Vec<String>,
}

impl KeyView {
    fn of(figure: Option<Figure>, proof: &crate::derivation::Derivation, messages: &Catalogue) -> Self {
        let solution = figure.map(|figure| summary::leading_to(proof, &[figure.step], messages));
        Self {
            value: figure.map(|figure| super::to_four_decimals(figure.value)),
            unit: figure.map(|figure| figure.unit),
            solution: solution.unwrap_or_default(),
        }
    }
}

/// Puts a diagnosis in words; the right answer only for those who may see the key.
pub fn grade_view<'a, C: Teachable>(
    diagnosis: &Diagnosis<C::Outcome>,
    quantity: &Quantity<C>,
    terms: Terms<'a>,
    key: bool,
    messages: &Catalogue,
) -> GradeView<'a> {
    let edition = terms.edition;
    let Diagnosis { right, reasons, lines, tried, pairs_tried, figure, evaluation } = diagnosis;
    let line = |line: &super::LineDiagnosis| LineView {
        what: line.what,
        right: line.right,
        given: line.given,
        reasons: reason_views(&line.reasons, edition, messages),
        allowances: key.then_some(line.expected().0),
        volume: key.then_some(line.expected().1),
    };
    let explained = !reasons.is_empty() || lines.iter().any(|line| !line.reasons.is_empty());
    let message = match (*right, explained, figure) {
        (true, ..) => "text-grade-right",
        (false, _, None) => "text-grade-no-figure",
        (false, true, _) => "text-grade-explained",
        (false, false, _) => "text-grade-unexplained",
    };
    let unverified = (!edition.is_verified()).then_some(Caution::UnverifiedEdition);
    let amended = (!terms.amendments.is_empty()).then_some(Caution::Amended);
    let cautions = unverified.into_iter().chain(amended).chain(Caution::USUAL);
    GradeView {
        check: C::NAME,
        asks: quantity.name,
        right: *right,
        message: messages.fixed(message).to_owned(),
        reasons: reason_views(reasons, edition, messages),
        lines: lines.iter().map(line).collect(),
        misconceptions_tried: *tried,
        pairs_tried: *pairs_tried,
        key: key.then(|| KeyView::of(*figure, &evaluation.proof, messages)),
        cautions: cautions.map(|caution| messages.fixed(caution.key()).to_owned()).collect(),
        ruleset: Ruleset::of::<C>(edition, terms.amendments),
    }
}

fn reason_views(reasons: &[Reason], edition: Edition, messages: &Catalogue) -> Vec<ReasonView> {
    let view = |(place, reason): (usize, &Reason)| {
        let rank = place + 1;
        match reason {
            Reason::Misconceptions(held) => {
                let (kind, key) = match held.len() {
                    1 => (ReasonKind::Misconception, "text-grade-misconception"),
                    _ => (ReasonKind::Pair, "text-grade-pair"),
                };
                let misconceptions = held
                    .iter()
                    .map(|Diagnosed { id, rules }| view_of(id, rules, edition, messages))
                    .collect();
                ReasonView { kind, rank, message: messages.fixed(key).to_owned(), misconceptions }
            }
            Reason::Slip(slip) => {
                let message = messages.fixed(slip.key()).to_owned();
                ReasonView { kind: kind_of(*slip), rank, message, misconceptions: Vec::new() }
            }
        }
    };
    reasons.iter().enumerate().map(view).collect()
}

const fn kind_of(slip: Slip) -> ReasonKind {
    match slip {
        Slip::Converted | Slip::OtherColumn | Slip::WrongUnit | Slip::NumberOfOtherUnit => ReasonKind::Unit,
        Slip::RoundedUp | Slip::RoundedDown => ReasonKind::Rounding,
        Slip::DigitsExchanged | Slip::Product | Slip::Sum => ReasonKind::Arithmetic,
    }
}
