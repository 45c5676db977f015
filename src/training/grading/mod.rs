//! Why an answer is wrong: which misconceptions, alone or two together, give exactly the figure that a learner gave.
//!
//! Every explanation is a figure that was computed under it. What gives the learner's figure is reported, all of it, most
//! common first; where nothing does, the answer says that none fits. Slips that are no error about a rule (another unit,
//! a rounded figure, digits exchanged) are reported separately.

mod slips;
mod tally;
mod view;

pub use slips::Slip;
pub use tally::{LearnerLine, LineDiagnosis};
pub use view::{GradeView, KeyView, LineView, ReasonKind, ReasonView, grade_view};

use super::misconception::evaluate_counterfactual;
use super::{Misconception, Quantity, Teachable};
use crate::checks::{self, Counterfactual, Evaluation};
use crate::derivation::{Derivation, Figure};
use crate::quantity::{Decimal, Unit};
use crate::rulebook::Rule;
use crate::rulebook::outlet_fill::SUM;

/// The most pairs that are tried for one answer.
pub const MOST_PAIRS: usize = 400;

/// The most lines of a learner's tally.
pub const MOST_LINES: usize = 50;

/// What a learner answers: a number with its unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Given {
    /// The number.
    pub value: Decimal,
    /// Its unit.
    pub unit: Unit,
}

/// A misconception that explains an answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Diagnosed {
    /// Its name.
    pub id: &'static str,
    /// The rules that it goes against.
    pub rules: &'static [&'static Rule],
}

impl Diagnosed {
    fn by<C: Teachable>(wrong: &Misconception<C>) -> Self {
        Self { id: wrong.id, rules: wrong.rules }
    }
}

/// One explanation of an answer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Reason {
    /// One misconception, or two held together, give exactly this figure.
    Misconceptions(Vec<Diagnosed>),
    /// A slip, not an error about a rule.
    Slip(Slip),
}

/// What was found about an answer.
#[derive(Debug)]
pub struct Diagnosis<O> {
    /// Whether the answer is right.
    pub right: bool,
    /// What explains it where it is wrong, most likely first.
    pub reasons: Vec<Reason>,
    /// What was found about each line of the learner's tally.
    pub lines: Vec<LineDiagnosis>,
    /// How many misconceptions were tried.
    pub tried: usize,
    /// How many pairs of them were tried.
    pub pairs_tried: usize,
    /// The right figure; `None` where the check gives none.
    pub figure: Option<Figure>,
    /// The right answer, with its proof.
    pub evaluation: Evaluation<O>,
}

/// A figure as it is asked for and compared: to four decimals.
pub fn to_four_decimals(value: Decimal) -> Decimal {
    let half = Decimal::from_billionths(50_000);
    (value + half).floor_to(Decimal::ten_thousandths(1))
}

/// Whether two figures are the same to four decimals.
fn is_same(one: Decimal, other: Decimal) -> bool {
    to_four_decimals(one) == to_four_decimals(other)
}

/// What one misconception makes of a request.
struct Single<'a, C: Teachable> {
    wrong: &'a Misconception<C>,
    value: Option<Decimal>,
    counterfactual: Counterfactual<C::Outcome>,
}

/// Grades an answer: a number, a tally, or both.
pub fn grade<C: Teachable>(
    request: &C::Request,
    quantity: &Quantity<C>,
    given: Option<Given>,
    learner: &[LearnerLine],
) -> Diagnosis<C::Outcome> {
    let evaluation = checks::evaluate::<C>(request);
    let figure = (quantity.figure)(request, &evaluation.outcome);
    let expected = C::tally(&evaluation.outcome);
    let is_right =
        |given: Given, figure: Figure| figure.unit == given.unit && is_same(figure.value, given.value);
    let number_right = given.is_none_or(|given| figure.is_some_and(|figure| is_right(given, figure)));
    let mut lines = tally::compare(learner, &expected);
    let right = number_right && lines.iter().all(|line| line.right);
    let mut diagnosis = Diagnosis {
        right,
        reasons: Vec::new(),
        lines: Vec::new(),
        tried: 0,
        pairs_tried: 0,
        figure,
        evaluation,
    };
    if !right {
        let singles = singles(request, quantity, &diagnosis.evaluation.proof);
        diagnosis.tried = C::MISCONCEPTIONS.iter().filter(|wrong| wrong.is_about(quantity.name)).count();
        tally::explain(&mut lines, &singles);
        if let Some(given) = given.filter(|_| !number_right) {
            diagnosis.reasons =
                reasons(request, quantity, given, figure, &singles, &mut diagnosis.pairs_tried);
        }
        if !learner.is_empty() {
            diagnosis.reasons.retain(|reason| tally::supports(&lines, reason));
        }
        if let Some(given) = given {
            diagnosis.reasons.extend(tally::wrong_sum(learner, given).map(Reason::Slip));
        }
    }
    diagnosis.lines = lines;
    diagnosis
}

/// What every misconception gives that finds something to get wrong.
fn singles<'a, C: Teachable>(
    request: &C::Request,
    quantity: &Quantity<C>,
    proof: &Derivation,
) -> Vec<Single<'a, C>> {
    let of = |wrong: &'a Misconception<C>| {
        let counterfactual = evaluate_counterfactual::<C>(request, &[wrong.mutation])?;
        let figure = (quantity.figure)(request, counterfactual.outcome());
        let value = figure.map(|figure| to_four_decimals(figure.value));
        Some(Single { wrong, value, counterfactual })
    };
    let about = |wrong: &&'a Misconception<C>| wrong.is_about(quantity.name) && wrong.can_matter(proof);
    C::MISCONCEPTIONS.iter().filter(about).filter_map(of).collect()
}

fn reasons<C: Teachable>(
    request: &C::Request,
    quantity: &Quantity<C>,
    given: Given,
    figure: Option<Figure>,
    singles: &[Single<'_, C>],
    pairs_tried: &mut usize,
) -> Vec<Reason> {
    let answered = to_four_decimals(given.value);
    let right = figure.map(|figure| to_four_decimals(figure.value));
    let same_unit = figure.is_none_or(|figure| figure.unit == given.unit);
    let mut reasons = Vec::new();
    if same_unit {
        let alone = singles.iter().filter(|single| single.value == Some(answered) && single.value != right);
        reasons.extend(alone.map(|single| Reason::Misconceptions(vec![Diagnosed::by(single.wrong)])));
        if reasons.is_empty() {
            let changing: Vec<&Single<'_, C>> =
                singles.iter().filter(|single| single.value != right && single.value.is_some()).collect();
            reasons = pairs(request, quantity, answered, right, &changing, pairs_tried);
        }
    }
    let slips = figure.map(|figure| slips::of::<C>(request, quantity, given, figure)).unwrap_or_default();
    reasons.extend(slips.into_iter().map(Reason::Slip));
    reasons
}

/// Two misconceptions that together give the answer, none of which does alone. Of a sum, two about different rules change
/// it each by its own part; only where these add up, or where they are about one rule, the pair is computed.
fn pairs<C: Teachable>(
    request: &C::Request,
    quantity: &Quantity<C>,
    answered: Decimal,
    right: Option<Decimal>,
    changing: &[&Single<'_, C>],
    tried: &mut usize,
) -> Vec<Reason> {
    let mut found = Vec::new();
    for (place, first) in changing.iter().enumerate() {
        for other in changing.iter().skip(place + 1) {
            let together = |right| Some(first.value? + other.value? - right);
            let adds_up = right.and_then(together) == Some(answered);
            if *tried == MOST_PAIRS || quantity.is_sum && !adds_up && !touch(first.wrong, other.wrong) {
                continue;
            }
            *tried += 1;
            let counterfactual =
                evaluate_counterfactual::<C>(request, &[first.wrong.mutation, other.wrong.mutation]);
            let value = counterfactual
                .and_then(|counterfactual| (quantity.figure)(request, counterfactual.outcome()));
            if value.is_some_and(|figure| to_four_decimals(figure.value) == answered) {
                found.push(Reason::Misconceptions(vec![
                    Diagnosed::by(first.wrong),
                    Diagnosed::by(other.wrong),
                ]));
            }
        }
    }
    found
}

/// Whether two misconceptions are about one rule, or one of them about the whole sum.
fn touch<C: Teachable>(first: &Misconception<C>, other: &Misconception<C>) -> bool {
    let whole = |wrong: &Misconception<C>| wrong.rules.contains(&&SUM);
    whole(first) || whole(other) || first.rules.iter().any(|rule| other.rules.contains(rule))
}
