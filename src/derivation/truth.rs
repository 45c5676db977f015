//! Steps that hold or do not: a yes or no of a table, and several of them together.

use super::{Derivation, Operation, Outcome, Pointer, Step, StepId};
use crate::rulebook::Rule;
use crate::tables::Affirmation;

impl Derivation {
    /// A yes or no of a published table.
    pub fn affirm(&mut self, rule: &'static Rule, cell: Affirmation, at: Option<Pointer>) -> StepId {
        let Affirmation { table, row, column, holds, bases } = cell;
        let basis = self.rulebook.edition.basis_of(bases);
        let (operation, outcome) = (Operation::Affirm { table, row, column }, Outcome::Holds(holds));
        self.add(Step { operation, rule, basis, outcome, at, amended: false, operands: (0, 0) })
    }

    /// A word of a closed set that the request gives.
    pub fn word(&mut self, rule: &'static Rule, says: &'static str, at: Pointer) -> StepId {
        let (operation, outcome) = (Operation::Word { says }, Outcome::Noted);
        let basis = rule.basis_in(self.rulebook.edition);
        self.add(Step { operation, rule, basis, outcome, at: Some(at), amended: false, operands: (0, 0) })
    }

    /// What a property comes to that the request does not say, tried with every value that it could have: one step for each of
    /// `values`, in order. `None` where they do not agree: then the property must be supplied.
    pub fn whatever(
        &mut self,
        rule: &'static Rule,
        at: Pointer,
        values: &'static [&'static str],
        of: &[StepId],
    ) -> Option<(bool, StepId)> {
        let holds = self.holds(*of.first()?);
        if of.len() != values.len() || of.iter().any(|step| self.holds(*step) != holds) {
            return None;
        }
        let operands = (self.operands.len() as u32, of.len() as u32);
        self.operands.extend_from_slice(of);
        let (operation, outcome) = (Operation::Whatever { values }, Outcome::Holds(holds));
        let basis = rule.basis_in(self.rulebook.edition);
        Some((
            holds,
            self.add(Step { operation, rule, basis, outcome, at: Some(at), amended: false, operands }),
        ))
    }

    /// Whether every one of several steps holds; of one step it is that step, and none is no step.
    pub fn every(&mut self, rule: &'static Rule, of: &[StepId]) -> Option<StepId> {
        self.combine(Operation::Every, rule, of, of.iter().all(|step| self.holds(*step)))
    }

    /// Whether at least one of several steps holds; of one step it is that step, and none is no step.
    pub fn any(&mut self, rule: &'static Rule, of: &[StepId]) -> Option<StepId> {
        self.combine(Operation::Any, rule, of, of.iter().any(|step| self.holds(*step)))
    }

    /// Whether a step holds; one that comes to no yes or no does not.
    pub fn holds(&self, step: StepId) -> bool {
        self.steps.get(step.index()).is_some_and(|step| step.outcome == Outcome::Holds(true))
    }

    fn combine(
        &mut self,
        operation: Operation,
        rule: &'static Rule,
        of: &[StepId],
        holds: bool,
    ) -> Option<StepId> {
        if of.len() < 2 {
            return of.first().copied();
        }
        let operands = (self.operands.len() as u32, of.len() as u32);
        self.operands.extend_from_slice(of);
        let (basis, outcome) = (rule.basis_in(self.rulebook.edition), Outcome::Holds(holds));
        Some(self.add(Step { operation, rule, basis, outcome, at: None, amended: false, operands }))
    }

    /// What a step that combines several yes or no comes to; `None` where one of them is not before it, or is neither.
    pub(super) fn combined(&self, index: usize, step: &Step) -> Option<bool> {
        let truth = |operand: &StepId| match self.steps.get(operand.index()).map(|step| step.outcome) {
            Some(Outcome::Holds(holds)) if operand.index() < index => Some(holds),
            _ => None,
        };
        let truths = self.operands(step).iter().map(truth).collect::<Option<Vec<bool>>>()?;
        match step.operation {
            Operation::Every => Some(truths.into_iter().all(|holds| holds)),
            Operation::Whatever { values } => {
                let first = truths.first().copied()?;
                (truths.len() == values.len() && truths.iter().all(|holds| *holds == first)).then_some(first)
            }
            _ => Some(truths.into_iter().any(|holds| holds)),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{Decimal, Measure, Units};
    use crate::rulebook::{Edition, Rulebook, outlet_fill};
    use crate::tables::enclosure_types::{EnclosureType, rated};

    #[test]
    fn a_yes_that_is_no_and_a_combination_of_what_is_neither_do_not_replay() {
        let mut proof = Derivation::new(Rulebook::of(Edition::E2023), Units::Us);
        let yes = proof.fact(&outlet_fill::SUM, true, Pointer::ROOT);
        let no = proof.fact(&outlet_fill::SUM, false, Pointer::ROOT);
        let every = proof.every(&outlet_fill::SUM, &[yes, no]).unwrap();
        let any = proof.any(&outlet_fill::SUM, &[yes, no]).unwrap();
        assert_eq!((proof.holds(every), proof.holds(any)), (false, true));
        assert_eq!(proof.replay(), Ok(()));
        for (step, claimed) in [(every, true), (any, false)] {
            let mut altered = proof.clone();
            altered.steps[step.index()].outcome = Outcome::Holds(claimed);
            assert_eq!(altered.replay().unwrap_err().step, step.index());
        }
        let mut number = proof.clone();
        number.steps[yes.index()].outcome = Outcome::Equals(Decimal::ONE, number.units.of(Measure::Number));
        assert_eq!(number.replay().unwrap_err().step, every.index());
        let mut backwards = proof;
        backwards.operands[0] = any;
        assert_eq!(backwards.replay().unwrap_err().step, every.index());
    }

    #[test]
    fn what_cannot_matter_is_decided_and_what_matters_is_not() {
        const VALUES: &[&str] = &["true", "false"];
        let mut proof = Derivation::new(Rulebook::of(Edition::E2023), Units::Us);
        let [yes, no] = [true, false].map(|holds| proof.fact(&outlet_fill::SUM, holds, Pointer::ROOT));
        assert_eq!(proof.whatever(&outlet_fill::SUM, Pointer::ROOT, VALUES, &[yes, no]), None);
        let (holds, step) = proof.whatever(&outlet_fill::SUM, Pointer::ROOT, VALUES, &[no, no]).unwrap();
        assert!(!holds);
        assert_eq!(proof.replay(), Ok(()));
        let index = proof.steps[step.index()].operands.0 as usize;
        proof.operands[index] = yes;
        assert_eq!(proof.replay().unwrap_err().step, step.index());
    }

    #[test]
    fn a_table_that_says_otherwise_does_not_replay() {
        let mut proof = Derivation::new(Rulebook::of(Edition::E2023), Units::Us);
        let cell = rated("outdoor_windblown_dust", EnclosureType::Type3R).unwrap();
        let step = proof.affirm(&outlet_fill::SUM, cell, None);
        assert!(!proof.holds(step));
        assert_eq!(proof.replay(), Ok(()));
        proof.steps[step.index()].outcome = Outcome::Holds(true);
        assert_eq!(proof.replay().unwrap_err().step, 0);
    }
}
