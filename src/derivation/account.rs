//! The end of a proof: what rules came to, each with the step that decided it and the answer that was wanted of it.

use super::{Derivation, Operation, Outcome, Pointer, Step, StepId};
use crate::rulebook::Rule;
use serde::Serialize;
use std::ptr;
use utoipa::ToSchema;

/// What a rule in the scope of a described subject came to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum RuleStatus {
    /// It is violated.
    Violated,
    /// It applies and cannot be decided from what was given.
    NotDetermined,
    /// It is satisfied, or what it counts was counted.
    Satisfied,
    /// The edition has no such rule, nothing raises it, or a fact of the request lifts it.
    DoesNotApply,
}

impl RuleStatus {
    /// The status as an answer writes it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Violated => "violated",
            Self::NotDetermined => "not_determined",
            Self::Satisfied => "satisfied",
            Self::DoesNotApply => "does_not_apply",
        }
    }
}

impl Derivation {
    /// Ends the proof of a rule that is satisfied or violated: by the step that is named, where it holds or does not, otherwise by
    /// the last step of the rule about one of some places.
    pub fn decided(&mut self, rule: &'static Rule, satisfied: bool, by: Option<StepId>, about: &[Pointer]) {
        let by = by.filter(|step| self.truth(*step).is_some()).or_else(|| self.last_about(rule, about));
        let wants = by.and_then(|step| self.truth(step)).map(|holds| holds == satisfied);
        let status = if satisfied { RuleStatus::Satisfied } else { RuleStatus::Violated };
        self.conclude(rule, Operation::Account { status, wants }, by, None);
    }

    /// Ends the proof of a rule that cannot be decided before what stands at a place is said.
    pub fn undecided(&mut self, rule: &'static Rule, at: Option<Pointer>) {
        self.conclude(rule, Operation::Account { status: RuleStatus::NotDetermined, wants: None }, None, at);
    }

    fn conclude(
        &mut self,
        rule: &'static Rule,
        operation: Operation,
        by: Option<StepId>,
        at: Option<Pointer>,
    ) {
        let operands = (self.operands.len() as u32, u32::from(by.is_some()));
        self.operands.extend(by);
        let (basis, outcome) = (rule.basis_in(self.rulebook.edition), Outcome::Noted);
        self.add(Step { operation, rule, basis, outcome, at, amended: false, operands });
    }

    /// The last step of a rule that holds or does not, or takes a word, at one of some places or below it.
    fn last_about(&self, rule: &Rule, about: &[Pointer]) -> Option<StepId> {
        let decides = |step: &Step| {
            ptr::eq(step.rule, rule)
                && (matches!(step.outcome, Outcome::Holds(_))
                    || matches!(step.operation, Operation::Word { .. }))
                && step.at.is_some_and(|at| about.contains(&at))
        };
        self.steps.iter().rposition(decides).map(|index| StepId(index as u32))
    }

    fn truth(&self, step: StepId) -> Option<bool> {
        match self.steps.get(step.index())?.outcome {
            Outcome::Holds(holds) => Some(holds),
            _ => None,
        }
    }

    /// Whether a concluding step says what the step that it rests on comes to.
    pub(super) fn concludes(&self, index: usize, step: &Step) -> bool {
        let Operation::Account { status, wants } = step.operation else { return false };
        match (self.operands(step), wants) {
            ([], None) => true,
            ([by], None) => by.index() < index && status != RuleStatus::NotDetermined,
            ([by], Some(wants)) if by.index() < index => self.truth(*by).is_some_and(|holds| {
                status == if holds == wants { RuleStatus::Satisfied } else { RuleStatus::Violated }
            }),
            _ => false,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Units;
    use crate::rulebook::outlet_fill::SUM;
    use crate::rulebook::{Edition, Rulebook};

    #[test]
    fn a_rule_that_comes_to_something_else_does_not_replay() {
        let mut proof = Derivation::new(Rulebook::of(Edition::E2023), Units::Us);
        let marked = Pointer::to(&"/marked");
        let no = proof.fact(&SUM, false, marked);
        proof.decided(&SUM, true, Some(no), &[]);
        proof.decided(&SUM, false, None, &[marked]);
        proof.undecided(&SUM, Some(Pointer::to(&"/cover")));
        assert_eq!(proof.replay(), Ok(()));
        let wants = |proof: &Derivation, index: usize| match proof.steps[index].operation {
            Operation::Account { wants, .. } => wants,
            _ => None,
        };
        assert_eq!([wants(&proof, 1), wants(&proof, 2)], [Some(false), Some(true)]);
        proof.steps[no.index()].outcome = Outcome::Holds(true);
        assert_eq!(proof.replay().unwrap_err().step, 1);
    }
}
