//! Steps that compute: sums, products, quotients, what governs, and how two figures compare.

use super::{Derivation, Figure, Operation, Outcome, Pointer, Relation, Step, StepId};
use crate::quantity::{Decimal, Measure, Unit};
use crate::rulebook::Rule;

impl Derivation {
    /// The sum of all; of one figure it is that figure.
    #[inline]
    pub fn sum(&mut self, rule: &'static Rule, of: &[Figure]) -> Figure {
        self.sum_of(rule, of.iter().copied())
    }

    /// Like [`Self::sum`], of figures that come one after another.
    #[inline]
    pub fn sum_of(&mut self, rule: &'static Rule, of: impl IntoIterator<Item = Figure>) -> Figure {
        let mut of = of.into_iter();
        let first = of.next();
        let mut next = of.next();
        if let (Some(only), None) = (first, next) {
            return only;
        }
        let start = self.operands.len();
        let (mut value, unit) = first.map_or((Decimal::ZERO, Unit::One), |first| (first.value, first.unit));
        self.operands.extend(first.map(|first| first.step));
        while let Some(figure) = next {
            value = value + figure.value;
            self.operands.push(figure.step);
            next = of.next();
        }
        let operands = (start as u32, (self.operands.len() - start) as u32);
        let (basis, outcome) = (rule.basis_in(self.rulebook.edition), Outcome::Equals(value, unit));
        let (operation, at, amended) = (Operation::Sum, None, false);
        let step = self.add(Step { operation, rule, basis, outcome, at, amended, operands });
        Figure { value, unit, step }
    }

    /// One figure times another; the unit is that of whichever is not a plain number.
    #[inline]
    pub fn product(
        &mut self,
        rule: &'static Rule,
        left: Figure,
        right: Figure,
        at: Option<Pointer>,
    ) -> Figure {
        let unit = if left.unit == Unit::One { right.unit } else { left.unit };
        self.compute(Operation::Product, rule, &[left, right], left.value.times(right.value), unit, at)
    }

    /// Like [`Self::product`], in a unit that the caller names, as for the area of two lengths.
    pub fn product_in(&mut self, rule: &'static Rule, left: Figure, right: Figure, unit: Unit) -> Figure {
        self.compute(Operation::Product, rule, &[left, right], left.value.times(right.value), unit, None)
    }

    /// The first less the second.
    #[inline]
    pub fn difference(&mut self, rule: &'static Rule, from: Figure, take: Figure) -> Figure {
        self.compute(Operation::Difference, rule, &[from, take], from.value - take.value, from.unit, None)
    }

    /// The first divided by the second, rounded down at the ninth decimal; `None` when the second is zero.
    pub fn quotient(&mut self, rule: &'static Rule, of: Figure, by: Figure) -> Option<Figure> {
        let value = of.value.over(by.value)?;
        let unit = if by.unit == of.unit { Unit::One } else { of.unit };
        Some(self.compute(Operation::Quotient, rule, &[of, by], value, unit, None))
    }

    /// Like [`Self::quotient`], in a unit that the caller names, as for a share.
    pub fn quotient_in(&mut self, rule: &'static Rule, of: Figure, by: Figure, unit: Unit) -> Option<Figure> {
        let value = of.value.over(by.value)?;
        Some(self.compute(Operation::Quotient, rule, &[of, by], value, unit, None))
    }

    /// None of something: 0 in the unit of a measure.
    #[inline]
    pub fn nothing(&mut self, rule: &'static Rule, measure: Measure) -> Figure {
        let unit = self.units.of(measure);
        self.compute(Operation::Nothing, rule, &[], Decimal::ZERO, unit, None)
    }

    /// The figure, or zero where it is below.
    pub fn at_least_zero(&mut self, rule: &'static Rule, figure: Figure) -> Figure {
        if figure.value >= Decimal::ZERO {
            return figure;
        }
        let zero = self.compute(Operation::Nothing, rule, &[], Decimal::ZERO, figure.unit, None);
        self.compute(Operation::Largest, rule, &[figure, zero], Decimal::ZERO, figure.unit, None)
    }

    /// How many whole times the second goes into the first; `None` when the second is not above zero.
    #[inline]
    pub fn whole_quotient(&mut self, rule: &'static Rule, of: Figure, by: Figure) -> Option<Figure> {
        let value = of.value.whole_quotient(by.value)?;
        Some(self.compute(Operation::WholeQuotient, rule, &[of, by], value.into(), Unit::One, None))
    }

    /// How many times the second goes into the first, raised to the next whole number when the fraction that is left is at
    /// least `step`; `None` when the second is not above zero.
    pub fn round_count(
        &mut self,
        rule: &'static Rule,
        of: Figure,
        by: Figure,
        step: Figure,
    ) -> Option<Figure> {
        let value = round_count(of.value, by.value, step.value)?;
        Some(self.compute(Operation::RoundCount, rule, &[of, by, step], value, Unit::One, None))
    }

    /// The first in hundredths of the second, as [`Decimal::percent_of`] rounds it; `None` when the second is not above zero.
    #[inline]
    pub fn percent(&mut self, rule: &'static Rule, part: Figure, whole: Figure) -> Option<Figure> {
        let value = part.value.percent_of(whole.value, Decimal::whole(100))?;
        Some(self.compute(Operation::Percent, rule, &[part, whole], value, Unit::Percent, None))
    }

    /// Like [`Self::percent`], of a share that is compared with another limit than the whole.
    pub fn percent_against(
        &mut self,
        rule: &'static Rule,
        (part, whole): (Figure, Figure),
        limit: Figure,
    ) -> Option<Figure> {
        let value = part.value.percent_of(whole.value, limit.value)?;
        Some(self.compute(Operation::Percent, rule, &[part, whole, limit], value, Unit::Percent, None))
    }

    /// The greatest of all; of one figure it is that figure, of none there is none.
    #[inline]
    pub fn largest(&mut self, rule: &'static Rule, of: &[Figure]) -> Option<Figure> {
        if let [only] = of {
            return Some(*only);
        }
        let greatest = *of.iter().max_by_key(|figure| figure.value)?;
        Some(self.compute(Operation::Largest, rule, of, greatest.value, greatest.unit, None))
    }

    /// The least of all; of one figure it is that figure, of none there is none.
    #[inline]
    pub fn smallest(&mut self, rule: &'static Rule, of: &[Figure]) -> Option<Figure> {
        if let [only] = of {
            return Some(*only);
        }
        let least = *of.iter().min_by_key(|figure| figure.value)?;
        Some(self.compute(Operation::Smallest, rule, of, least.value, least.unit, None))
    }

    /// The straight-line distance over lengths at right angles to one another, rounded down at the ninth decimal; of one
    /// length it is that length.
    pub fn distance(&mut self, rule: &'static Rule, legs: &[Figure]) -> Figure {
        if let [only] = legs {
            return *only;
        }
        let unit = legs.first().map_or(Unit::One, |first| first.unit);
        let values: Vec<Decimal> = legs.iter().map(|leg| leg.value).collect();
        self.compute(Operation::Distance, rule, legs, Decimal::distance(&values), unit, None)
    }

    /// Whether a relation holds between two figures, with the step that says so.
    #[inline]
    pub fn compare(
        &mut self,
        rule: &'static Rule,
        left: Figure,
        relation: Relation,
        right: Figure,
    ) -> (bool, StepId) {
        let holds = relation.holds(left.value, right.value);
        let basis = rule.basis_in(self.rulebook.edition);
        let operands = self.refer(&[left, right]);
        let operation = Operation::Compare(relation);
        (
            holds,
            self.add(Step {
                operation,
                rule,
                basis,
                outcome: Outcome::Holds(holds),
                at: None,
                amended: false,
                operands,
            }),
        )
    }
}

/// `of` divided by `by` as a whole number, and one more where the fraction, rounded down at the ninth decimal, is at least
/// `step`.
pub(super) fn round_count(of: Decimal, by: Decimal, step: Decimal) -> Option<Decimal> {
    let whole = of.whole_quotient(by)?;
    let rest = of - by.times(whole.into());
    let raised = rest > Decimal::ZERO && rest.over(by)? >= step;
    Some(whole.saturating_add(u32::from(raised)).into())
}
