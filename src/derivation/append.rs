//! Steps of another proof that show what this one comes to.

use super::{Derivation, Figure, Operation, Outcome, Pointer, Step, StepId};
use crate::rulebook::Rule;
use std::ptr;

impl Derivation {
    /// The two figures that a step compares.
    pub fn compared(&self, step: StepId) -> Option<[Figure; 2]> {
        let compares =
            self.steps.get(step.index()).filter(|step| matches!(step.operation, Operation::Compare(_)))?;
        let figure = |operand: &StepId| match self.steps.get(operand.index())?.outcome {
            Outcome::Equals(value, unit) => Some(Figure { value, unit, step: *operand }),
            _ => None,
        };
        let [left, right] = self.operands(compares) else { return None };
        Some([figure(left)?, figure(right)?])
    }

    /// The last step that serves a rule.
    pub fn last_of(&self, rule: &Rule) -> Option<StepId> {
        self.steps.iter().rposition(|step| ptr::eq(step.rule, rule)).map(|index| StepId(index as u32))
    }

    /// The step, where it holds or does not; otherwise the last one of the rule that does, about some places if there are any.
    pub fn deciding(&self, rule: &Rule, step: Option<StepId>, about: &[Pointer]) -> Option<StepId> {
        let is_truth = |step: &StepId| {
            self.steps.get(step.index()).is_some_and(|step| matches!(step.outcome, Outcome::Holds(_)))
        };
        let last = || {
            let of_rule = |step: &Step| {
                ptr::eq(step.rule, rule)
                    && matches!(step.outcome, Outcome::Holds(_))
                    && (about.is_empty() || step.at.is_some_and(|at| about.contains(&at)))
            };
            self.steps.iter().rposition(of_rule).map(|index| StepId(index as u32))
        };
        step.filter(is_truth).or_else(last)
    }

    /// Takes over steps of another proof with all that they compute with, and the readings that it consulted, after the steps that are
    /// there. Where each of the steps then stands, in the same order.
    pub fn append(&mut self, other: &Self, wanted: &[StepId]) -> Vec<StepId> {
        let mut is_wanted = vec![false; other.steps.len()];
        wanted.iter().for_each(|step| is_wanted[step.index()] = true);
        for (index, step) in other.steps.iter().enumerate().rev() {
            if let Operation::Read { point, .. } = step.operation
                && !self.consulted.contains(&point)
            {
                self.consulted.push(point);
                is_wanted[index] = true;
            }
            if is_wanted[index] {
                other.operands(step).iter().for_each(|operand| is_wanted[operand.index()] = true);
            }
        }
        let mut here = vec![StepId(0); other.steps.len()];
        for (index, step) in other.steps.iter().enumerate().filter(|(index, _)| is_wanted[*index]) {
            let operands = (self.operands.len() as u32, step.operands.1);
            self.operands.extend(other.operands(step).iter().map(|operand| here[operand.index()]));
            here[index] = StepId(self.steps.len() as u32);
            self.steps.push(Step { operands, ..*step });
        }
        wanted.iter().map(|step| here[step.index()]).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::derivation::{Pointer, Relation};
    use crate::quantity::{Decimal, Measure, Units};
    use crate::rulebook::{Edition, Rulebook, outlet_fill::SUM};

    #[test]
    fn what_is_taken_over_replays_in_its_own_system_and_a_wrong_conversion_does_not() {
        let book = Rulebook::of(Edition::E2023);
        let mut proof = Derivation::new(book, Units::Si);
        let at = Pointer::to(&"/setback");
        proof.given(&SUM, Decimal::whole(381), Measure::Length, at);
        let mut other = Derivation::new(&book.for_other_units(Units::Si), Units::Us);
        other.given(&SUM, Decimal::whole(2), Measure::Length, at);
        let inches = other.given(&SUM, Decimal::whole(15), Measure::Length, at);
        let (_, step) = other.compare(&SUM, inches, Relation::AtMost, inches);
        assert_eq!(other.replay(), Ok(()));
        let taken = proof.append(&other, &[step]);
        assert_eq!(proof.replay(), Ok(()));
        let said: Vec<Outcome> = proof.steps.iter().map(|step| step.outcome).collect();
        let mm = |number| Outcome::Equals(Decimal::whole(number), Units::Si.of(Measure::Length));
        assert_eq!(said[..2], [mm(381), mm(381)]);
        assert_eq!(said[2], Outcome::Equals(Decimal::whole(15), Units::Us.of(Measure::Length)));
        assert_eq!((taken[0].index(), said[3]), (3, Outcome::Holds(true)));
        proof.steps[2].outcome = Outcome::Equals(Decimal::whole(16), Units::Us.of(Measure::Length));
        assert_eq!(proof.replay().unwrap_err().step, 2);
    }
}
