//! Proofs: how a figure is built from inputs, tables and rules, one step at a time.
//!
//! A check never computes a figure and describes it afterwards. It asks the [`Derivation`] for the sum, and gets a
//! [`Figure`] that knows its step. [`Derivation::replay`] recomputes all of it from nothing but the steps.
//!
//! **Invariants:** a step refers to earlier steps only; no words are stored; nothing here knows any particular check.

mod pointer;
mod replay;
mod step;
mod truth;
mod view;
mod write;

pub use pointer::{Pattern, Pointer};
pub use replay::ReplayFault;
pub use step::{Figure, Operation, Outcome, Relation, Step, StepId};
pub(crate) use view::write_citation;
pub use view::{DerivationView, StepView};

use crate::quantity::{Decimal, Measure, Unit, Units};
use crate::rulebook::reading::{Point, Reading};
use crate::rulebook::{Basis, Rule, RuleFigure, Rulebook};
use crate::tables::{Cell, standard_boxes};
use smallvec::SmallVec;

/// A proof under construction, for one rulebook and one system of units.
#[derive(Clone, Debug)]
pub struct Derivation {
    rulebook: Rulebook,
    amends: bool,
    units: Units,
    steps: Vec<Step>,
    operands: Vec<StepId>,
    selected: standard_boxes::StandardBoxes,
    consulted: SmallVec<[Point; 4]>,
}

impl Derivation {
    /// An empty proof.
    pub fn new(rulebook: &Rulebook, units: Units) -> Self {
        Self {
            rulebook: rulebook.clone(),
            amends: !rulebook.amended().is_empty(),
            units,
            steps: Vec::with_capacity(64),
            operands: Vec::with_capacity(96),
            selected: SmallVec::new(),
            consulted: SmallVec::new(),
        }
    }

    /// The rulebook that the proof follows.
    pub const fn rulebook(&self) -> &Rulebook {
        &self.rulebook
    }

    /// The units that the proof is in.
    pub const fn units(&self) -> Units {
        self.units
    }

    /// The steps so far, in order.
    pub fn steps(&self) -> &[Step] {
        &self.steps
    }

    /// The steps that a step computes with.
    pub fn operands(&self, step: &Step) -> &[StepId] {
        let (start, count) = (step.operands.0 as usize, step.operands.1 as usize);
        self.operands.get(start..start + count).unwrap_or_default()
    }

    /// The boxes that the selecting step picked, smallest first.
    pub const fn selected(&self) -> &standard_boxes::StandardBoxes {
        &self.selected
    }

    /// The disputed points that mattered, each once.
    pub fn consulted(&self) -> &[Point] {
        &self.consulted
    }

    /// A number that the request gives.
    #[inline]
    pub fn given(&mut self, rule: &'static Rule, value: Decimal, measure: Measure, at: Pointer) -> Figure {
        let basis = rule.basis_in(self.rulebook.edition);
        self.push(Operation::Given, rule, basis, &[], value, self.units.of(measure), Some(at))
    }

    /// A yes or no that the request gives.
    #[inline]
    pub fn fact(&mut self, rule: &'static Rule, holds: bool, at: Pointer) -> StepId {
        let basis = rule.basis_in(self.rulebook.edition);
        let (operation, outcome) = (Operation::Fact, Outcome::Holds(holds));
        self.add(Step { operation, rule, basis, outcome, at: Some(at), amended: false, operands: (0, 0) })
    }

    /// How many of something the request gives: the number written there, or 1 for an item that gives none.
    #[inline]
    pub fn count(&mut self, rule: &'static Rule, count: Option<u32>, item: Pointer) -> Figure {
        match count {
            Some(count) => self.given(rule, count.into(), Measure::Number, item.member(&"/count")),
            None => self.given(rule, Decimal::ONE, Measure::Number, item),
        }
    }

    /// A number that a search chose: believed when the proof is replayed, so later steps must compare it with whatever is
    /// asked of it.
    pub fn chosen(&mut self, rule: &'static Rule, value: Decimal, measure: Measure) -> Figure {
        let unit = self.units.of(measure);
        self.compute(Operation::Chosen, rule, &[], value, unit, None)
    }

    /// A figure of a published table.
    #[inline]
    pub fn lookup(&mut self, rule: &'static Rule, cell: Cell, at: Option<Pointer>) -> Figure {
        let Cell { table, row, column, value, unit, basis } = cell;
        let basis = if self.rulebook.edition.is_verified() { basis } else { Basis::Unconfirmed };
        self.push(Operation::Lookup { table, row, column }, rule, basis, &[], value, unit, at)
    }

    /// A figure that a rule states.
    #[inline]
    pub fn stated(&mut self, figure: &RuleFigure) -> Figure {
        let (value, amended) = self.rulebook.value(figure, self.units);
        let unit = self.units.of(figure.measure);
        let basis = figure.rule.basis_in(self.rulebook.edition);
        let stated =
            self.push(Operation::Stated { figure: figure.name }, figure.rule, basis, &[], value, unit, None);
        if let (true, Some(step)) = (amended, self.steps.last_mut()) {
            step.amended = true;
        }
        stated
    }

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

    /// The first in hundredths of the second, rounded up at the second decimal; `None` when the second is not above zero.
    #[inline]
    pub fn percent(&mut self, rule: &'static Rule, part: Figure, whole: Figure) -> Option<Figure> {
        let value = percent(part.value, whole.value)?;
        Some(self.compute(Operation::Percent, rule, &[part, whole], value, Unit::Percent, None))
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

    /// The standard boxes that serve, smallest first: those whose volume with what is added is at least what is needed.
    #[inline]
    pub fn select_boxes(&mut self, rule: &'static Rule, of: BoxesAsked) -> StepId {
        let BoxesAsked { needed, added, gangs, square, octagonal } = of;
        let choice = standard_boxes::Choice {
            needed: needed.value,
            added: added.value,
            gangs: gangs.value,
            square: square.value,
            octagonal: octagonal.value,
        };
        self.selected = choice.boxes(self.units);
        let operands = self.refer(&[needed, added, gangs, square, octagonal]);
        let basis = rule.basis_in(self.rulebook.edition);
        let (operation, outcome) = (Operation::SelectBoxes, Outcome::Selects);
        self.add(Step { operation, rule, basis, outcome, at: None, amended: false, operands })
    }

    /// How a disputed point is read, noted once in the proof.
    pub fn reading<R: Reading>(&mut self) -> R {
        let (point, reading) = (R::POINT, self.rulebook.readings.of::<R>());
        if !self.consulted.contains(&point) {
            self.consulted.push(point);
            let name = point.readings()[usize::from(reading.place())];
            let (operation, rule) = (Operation::Read { point, reading: name }, point.rule());
            let (outcome, operands) = (Outcome::Noted, (0, 0));
            self.add(Step {
                operation,
                rule,
                basis: Basis::Disputed,
                outcome,
                at: None,
                amended: false,
                operands,
            });
        }
        reading
    }

    /// Notes that a rule was considered and does not apply, and why.
    #[inline]
    pub fn does_not_apply(
        &mut self,
        rule: &'static Rule,
        because: &'static str,
        at: Option<Pointer>,
    ) -> StepId {
        let (operation, outcome) = (Operation::DoesNotApply { because }, Outcome::Noted);
        let basis = rule.basis_in(self.rulebook.edition);
        self.add(Step { operation, rule, basis, outcome, at, amended: false, operands: (0, 0) })
    }

    // Inlined so that a step is written where it stays: put together elsewhere and copied, it costs twice as much.
    #[inline(always)]
    fn compute(
        &mut self,
        operation: Operation,
        rule: &'static Rule,
        of: &[Figure],
        value: Decimal,
        unit: Unit,
        at: Option<Pointer>,
    ) -> Figure {
        let basis = rule.basis_in(self.rulebook.edition);
        self.push(operation, rule, basis, of, value, unit, at)
    }

    #[expect(clippy::too_many_arguments, reason = "the one place where a step is put together")]
    #[inline(always)]
    fn push(
        &mut self,
        operation: Operation,
        rule: &'static Rule,
        basis: Basis,
        of: &[Figure],
        value: Decimal,
        unit: Unit,
        at: Option<Pointer>,
    ) -> Figure {
        let operands = self.refer(of);
        let (outcome, amended) = (Outcome::Equals(value, unit), false);
        let step = self.add(Step { operation, rule, basis, outcome, at, amended, operands });
        Figure { value, unit, step }
    }

    #[inline(always)]
    fn refer(&mut self, of: &[Figure]) -> (u32, u32) {
        let start = self.operands.len() as u32;
        for figure in of {
            self.operands.push(figure.step);
        }
        (start, of.len() as u32)
    }

    #[inline(always)]
    fn add(&mut self, step: Step) -> StepId {
        let id = StepId(self.steps.len() as u32);
        self.steps.push(step);
        if self.amends {
            let amended = self.operands(&step).iter().any(|operand| self.steps[operand.index()].amended);
            self.steps[id.index()].amended = amended;
        }
        id
    }
}

/// The figures that standard boxes are picked by, in the order in which the step names them.
#[derive(Clone, Copy, Debug)]
pub struct BoxesAsked {
    /// The volume needed.
    pub needed: Figure,
    /// The volume that sections add.
    pub added: Figure,
    /// The gangs that the devices need, 1 at the least.
    pub gangs: Figure,
    /// The most gangs for which a square box is offered.
    pub square: Figure,
    /// The most gangs for which an octagonal box is offered.
    pub octagonal: Figure,
}

/// `of` divided by `by` as a whole number, and one more where the fraction, rounded down at the ninth decimal, is at least
/// `step`.
fn round_count(of: Decimal, by: Decimal, step: Decimal) -> Option<Decimal> {
    let whole = of.whole_quotient(by)?;
    let rest = of - by.times(whole.into());
    let raised = rest > Decimal::ZERO && rest.over(by)? >= step;
    Some(whole.saturating_add(u32::from(raised)).into())
}

/// `part` in hundredths of `whole`, rounded up at the second decimal.
fn percent(part: Decimal, whole: Decimal) -> Option<Decimal> {
    let hundredth = Decimal::ten_thousandths(100);
    let up = part.negated().times(Decimal::whole(100)).over(whole)?.negated();
    (whole > Decimal::ZERO).then(|| up.ceil_to(hundredth))
}
