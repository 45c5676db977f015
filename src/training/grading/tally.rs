//! A learner's own tally against the right one, line by line.

use super::{Diagnosed, Given, Reason, Single, Slip, is_same};
use crate::checks::outlet_fill::{Item, TallyLine};
use crate::quantity::Decimal;
use crate::training::Teachable;
use serde::Deserialize;
use utoipa::ToSchema;

/// One line of a learner's tally: all of one kind of thing, whatever its sizes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct LearnerLine {
    /// What was counted.
    pub what: Item,
    /// How many allowances.
    #[schema(value_type = Option<f64>, minimum = 0, maximum = 100_000, extensions(("x-decimals" = json!(6))), example = 4)]
    pub allowances: Option<Decimal>,
    /// What they come to, in the request's units.
    #[schema(value_type = Option<f64>, minimum = 0, maximum = 1_000_000, extensions(("x-decimals" = json!(6))), example = 9)]
    pub volume: Option<Decimal>,
}

/// What was found about one line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LineDiagnosis {
    /// What the line is about.
    pub what: Item,
    /// Whether it is right.
    pub right: bool,
    /// Whether the learner has it.
    pub given: bool,
    /// What explains it where it is wrong, most likely first.
    pub reasons: Vec<Reason>,
    /// The allowances and the volume that the learner gives, where given; 0 for a line that is missing.
    answered: (Option<Decimal>, Option<Decimal>),
    /// Those that are right.
    expected: (Decimal, Decimal),
}

impl LineDiagnosis {
    /// The right number of allowances and the right volume.
    pub const fn expected(&self) -> (Decimal, Decimal) {
        self.expected
    }
}

/// Holds each kind of thing that either tally has against the other. Nothing, where the learner gives no tally.
pub(super) fn compare(learner: &[LearnerLine], expected: &[&TallyLine]) -> Vec<LineDiagnosis> {
    if learner.is_empty() {
        return Vec::new();
    }
    let mut items: Vec<Item> =
        learner.iter().map(|line| line.what).chain(expected.iter().map(|line| line.what)).collect();
    items.sort_unstable();
    items.dedup();
    let compared = items.into_iter().map(|what| {
        let own = || learner.iter().filter(|line| line.what == what);
        // a sum with a part that is not given is not known
        let answered = (own().map(|line| line.allowances).sum(), own().map(|line| line.volume).sum());
        let expected = sums(expected, what);
        let (right, given) = (matches(answered, expected), own().next().is_some());
        LineDiagnosis { what, right, given, reasons: Vec::new(), answered, expected }
    });
    compared.collect()
}

fn sums(tally: &[&TallyLine], what: Item) -> (Decimal, Decimal) {
    let own = || tally.iter().filter(move |line| line.what == what);
    (own().map(|line| line.allowances.value).sum(), own().map(|line| line.volume.value).sum())
}

fn matches((allowances, volume): (Option<Decimal>, Option<Decimal>), sums: (Decimal, Decimal)) -> bool {
    let same =
        |answered: Option<Decimal>, sum: Decimal| answered.is_none_or(|answered| is_same(answered, sum));
    same(allowances, sums.0) && same(volume, sums.1)
}

/// Looks for misconceptions that give a wrong line.
pub(super) fn explain<C: Teachable>(lines: &mut [LineDiagnosis], singles: &[Single<'_, C>]) {
    if lines.iter().all(|line| line.right) {
        return;
    }
    let tallies: Vec<Vec<&TallyLine>> =
        singles.iter().map(|single| C::tally(single.counterfactual.outcome())).collect();
    for line in lines.iter_mut().filter(|line| !line.right) {
        for (single, tally) in singles.iter().zip(&tallies) {
            let counterfactual = sums(tally, line.what);
            if counterfactual != line.expected && matches(line.answered, counterfactual) {
                line.reasons.push(Reason::Misconceptions(vec![Diagnosed::by(single.wrong)]));
            }
        }
        let counted_right = line.answered.0.is_some_and(|answered| is_same(answered, line.expected.0));
        if line.reasons.is_empty() && counted_right && line.given {
            line.reasons.push(Reason::Slip(Slip::Product));
        }
    }
}

/// Whether the lines of a tally support a reason for its total: each misconception explains some line that is wrong.
pub(super) fn supports(lines: &[LineDiagnosis], reason: &Reason) -> bool {
    let explains = |held: &Diagnosed| {
        let reasons = lines.iter().flat_map(|line| &line.reasons);
        reasons.into_iter().any(|known| matches!(known, Reason::Misconceptions(ids) if ids.contains(held)))
    };
    match reason {
        Reason::Misconceptions(held) => held.iter().all(explains),
        Reason::Slip(_) => true,
    }
}

/// Whether the learner's own lines add up to something else than the learner's answer.
pub(super) fn wrong_sum(learner: &[LearnerLine], given: Given) -> Option<Slip> {
    let sum: Option<Decimal> = learner.iter().map(|line| line.volume).sum();
    sum.filter(|sum| !learner.is_empty() && !is_same(*sum, given.value)).map(|_| Slip::Sum)
}
