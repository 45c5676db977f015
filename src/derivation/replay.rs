//! Recomputing a proof from its steps alone.

use super::sums::round_count;
use super::{Derivation, Operation, Outcome, Step};
use crate::quantity::{Decimal, Units};
use crate::rulebook::RuleFigure;
use crate::tables::{self, standard_boxes::Choice};

/// A step that does not come to what it says.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("step s{}: {what}", step + 1)]
pub struct ReplayFault {
    /// The place of the step in the proof, from 0.
    pub step: usize,
    /// What is wrong with it.
    pub what: &'static str,
}

impl Derivation {
    /// Recomputes every step from the values of the steps before it, the tables and the rule figures.
    ///
    /// Steps that take a number from the request are believed: comparing them with the request is up to its holder.
    pub fn replay(&self) -> Result<(), ReplayFault> {
        let mut values: Vec<Option<Decimal>> = Vec::with_capacity(self.steps.len());
        for (index, step) in self.steps.iter().enumerate() {
            let fault = |what| ReplayFault { step: index, what };
            if let Operation::Every | Operation::Any | Operation::Whatever { .. } = step.operation {
                let expected =
                    self.combined(index, step).ok_or(fault("combines what does not hold or not"))?;
                if step.outcome != Outcome::Holds(expected) {
                    return Err(fault("comes to something else"));
                }
                values.push(None);
                continue;
            }
            if let Operation::Account { .. } = step.operation {
                if !self.concludes(index, step) {
                    return Err(fault("accounts for a rule that comes to something else"));
                }
                values.push(None);
                continue;
            }
            let operands = self
                .operands(step)
                .iter()
                .map(|operand| values.get(operand.index()).copied().flatten())
                .collect::<Option<Vec<Decimal>>>()
                .ok_or(fault("computes with a step that has no value before it"))?;
            let expected = self.recompute(step, &operands).ok_or(fault("cannot be recomputed"))?;
            if expected != step.outcome {
                return Err(fault("comes to something else"));
            }
            values.push(match step.outcome {
                Outcome::Equals(value, _) => Some(value),
                _ => None,
            });
        }
        Ok(())
    }

    /// A measured value in the system that the step is in.
    fn reconverted(&self, step: &Step, said: Decimal) -> Option<Decimal> {
        let unit = |step: &Step| match step.outcome {
            Outcome::Equals(_, unit) => unit.measures(),
            _ => None,
        };
        let from = self.operands(step).first().and_then(|operand| self.steps.get(operand.index()))?;
        let ((from, measure), (to, same)) = (unit(from)?, unit(step)?);
        let conversion = self.rulebook.unit_systems.conversion(to);
        (from != to && measure == same).then(|| conversion.apply(said, measure))
    }

    /// A figure that a rule states; an amended one is in the units of the request, which the rulebook of the other system converts.
    fn restated(&self, figure: &RuleFigure, units: Units) -> Decimal {
        let (value, amended) = self.rulebook.value(figure, self.units);
        match (amended, self.as_said(value, figure.measure)) {
            (true, (said, _)) => said,
            (false, _) => figure.value(units),
        }
    }

    fn recompute(&self, step: &Step, operands: &[Decimal]) -> Option<Outcome> {
        let value = match (step.operation, operands) {
            (Operation::Given | Operation::Chosen | Operation::Fact | Operation::Word { .. }, []) => {
                return Some(step.outcome);
            }
            (Operation::Nothing, []) => Decimal::ZERO,
            (Operation::Lookup { table, row, column }, []) => {
                tables::all().find(table)?.number(row, column)?
            }
            (Operation::Affirm { table, row, column }, []) => {
                return tables::all().find(table)?.affirmed(row, column).map(Outcome::Holds);
            }
            (Operation::Stated { figure, units }, []) => {
                let stated = self.rulebook.figures().find(|stated| stated.name == figure)?;
                self.restated(&stated, units)
            }
            (Operation::Sum, terms) => terms.iter().copied().sum(),
            (Operation::Product, [left, right]) => left.times(*right),
            (Operation::Difference, [from, take]) => *from - *take,
            (Operation::Quotient, [of, by]) => of.over(*by)?,
            (Operation::WholeQuotient, [of, by]) => of.whole_quotient(*by)?.into(),
            (Operation::RoundCount, [of, by, step]) => round_count(*of, *by, *step)?,
            (Operation::Percent, [part, whole]) => part.percent_of(*whole, Decimal::whole(100))?,
            (Operation::Percent, [part, whole, limit]) => part.percent_of(*whole, *limit)?,
            (Operation::Converted, [said]) => self.reconverted(step, *said)?,
            (Operation::Largest, several) => *several.iter().max()?,
            (Operation::Smallest, several) => *several.iter().min()?,
            (Operation::Distance, legs) => Decimal::distance(legs),
            (Operation::Compare(relation), [left, right]) => {
                return Some(Outcome::Holds(relation.holds(*left, *right)));
            }
            (Operation::SelectBoxes, [needed, added, gangs, square, octagonal]) => {
                let (needed, added, gangs, square, octagonal) =
                    (*needed, *added, *gangs, *square, *octagonal);
                let picked = Choice { needed, added, gangs, square, octagonal }.boxes(self.units);
                return (picked == self.selected).then_some(step.outcome);
            }
            (Operation::Read { .. } | Operation::DoesNotApply { .. }, []) => return Some(step.outcome),
            _ => return None,
        };
        match step.outcome {
            Outcome::Equals(_, unit) => Some(Outcome::Equals(value, unit)),
            _ => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::derivation::Pointer;
    use crate::quantity::Measure;
    use crate::rulebook::{Edition, Rulebook, outlet_fill};

    fn sum_of_two() -> Derivation {
        let mut proof = Derivation::new(Rulebook::of(Edition::E2023), Units::Us);
        let two = proof.given(&outlet_fill::SUM, Decimal::whole(2), Measure::Volume, Pointer::ROOT);
        let three = proof.given(&outlet_fill::SUM, Decimal::whole(3), Measure::Volume, Pointer::ROOT);
        proof.sum(&outlet_fill::SUM, &[two, three]);
        proof
    }

    #[test]
    fn an_honest_proof_replays_and_a_changed_one_does_not() {
        let honest = sum_of_two();
        assert_eq!(honest.replay(), Ok(()));
        let mut altered = honest.clone();
        altered.steps[1].outcome = Outcome::Equals(Decimal::whole(4), altered.units.of(Measure::Volume));
        assert_eq!(altered.replay().unwrap_err().to_string(), "step s3: comes to something else");
        let mut backwards = honest;
        backwards.operands[0] = crate::derivation::StepId(7);
        assert_eq!(backwards.replay().unwrap_err().step, 2);
    }

    #[test]
    fn a_count_is_raised_from_the_step_on() {
        let decimal = |text: &str| text.parse::<Decimal>().unwrap();
        let count =
            |of, by| round_count(decimal(of), decimal(by), decimal("0.8")).map(|count| count.to_string());
        assert_eq!(count("2.799999999", "1").as_deref(), Some("2"));
        assert_eq!(count("2.8", "1").as_deref(), Some("3"));
        assert_eq!(count("2.800000001", "1").as_deref(), Some("3"));
        assert_eq!(count("3", "1").as_deref(), Some("3"));
        assert_eq!(count("0.8", "1").as_deref(), Some("1"));
        assert_eq!(count("-5", "1").as_deref(), Some("0"));
        // 0.0237 is 2.8 times 0.008464285714…: the fraction falls short only at the ninth decimal
        assert_eq!(count("0.0237", "0.008464286").as_deref(), Some("2"));
        assert_eq!(count("0.0237", "0.008464285").as_deref(), Some("3"));
        assert_eq!(count("1", "0"), None);
    }

    #[test]
    fn a_percentage_is_the_nearest_and_reads_as_the_limit_only_where_it_is_the_limit() {
        let decimal = |text: &str| text.parse::<Decimal>().unwrap();
        let percent = |part: &str, whole: &str, limit: &str| {
            decimal(part).percent_of(decimal(whole), decimal(limit)).map(|share| share.to_string())
        };
        for (part, whole, limit, share) in [
            ("18", "18", "100", "100"),
            ("18.0001", "18", "100", "100.001"),
            ("17.9999", "18", "100", "99.999"),
            ("1", "3", "100", "33.33"),
            ("1", "8", "100", "12.5"),
            ("2", "3", "100", "66.67"),
            // halves go away from zero
            ("0.10005", "1", "100", "10.01"),
            ("10.001", "25", "40", "40.004"),
            ("9.999", "25", "40", "39.996"),
            ("10.001", "25", "100", "40"),
            // nothing that nine decimals can tell
            ("1000000.000000001", "1000000", "100", "100.000000001"),
            ("999999.999999999", "1000000", "100", "99.999999999"),
        ] {
            assert_eq!(
                percent(part, whole, limit).as_deref(),
                Some(share),
                "{part} of {whole} against {limit}"
            );
        }
        assert_eq!(percent("1", "0", "100"), None);
    }
}
