//! Proofs: how a figure is built from inputs, tables and rules, one step at a time.
//!
//! A check never computes a figure and describes it afterwards. It asks the [`Derivation`] for the sum, and gets a
//! [`Figure`] that knows its step. [`Derivation::replay`] recomputes all of it from nothing but the steps.
//!
//! **Invariants:** a step refers to earlier steps only; no words are stored; nothing here knows any particular check.

mod account;
mod append;
mod pointer;
mod replay;
mod step;
mod sums;
mod truth;
mod view;
mod write;

pub use account::RuleStatus;
pub use pointer::{Pattern, Pointer};
pub use replay::ReplayFault;
pub use step::{Figure, Operation, Outcome, Relation, Step, StepId};
pub(crate) use view::write_citation;
pub use view::{DerivationView, StepView};

use crate::quantity::{Decimal, Measure, Unit, Units};
use crate::rulebook::reading::{Point, Reading};
use crate::rulebook::{Basis, Citation, Rule, RuleFigure, Rulebook};
use crate::tables::{Cell, standard_boxes};
use smallvec::SmallVec;

/// A proof under construction, for one rulebook and one system of units.
#[derive(Clone, Debug)]
pub struct Derivation {
    rulebook: Rulebook,
    amends: bool,
    units: Units,
    /// The system that the request is in: the other one, where a request is judged again in the other system.
    said_in: Units,
    steps: Vec<Step>,
    operands: Vec<StepId>,
    selected: standard_boxes::StandardBoxes,
    consulted: SmallVec<[Point; 4]>,
    /// Rules of several paragraphs, each with the one that the case falls under.
    paragraphs: SmallVec<[(&'static Rule, &'static str); 2]>,
}

impl Derivation {
    /// An empty proof.
    pub fn new(rulebook: &Rulebook, units: Units) -> Self {
        Self {
            rulebook: rulebook.clone(),
            amends: !rulebook.amended().is_empty(),
            units,
            said_in: rulebook.said_in().unwrap_or(units),
            steps: Vec::with_capacity(64),
            operands: Vec::with_capacity(96),
            selected: SmallVec::new(),
            consulted: SmallVec::new(),
            paragraphs: SmallVec::new(),
        }
    }

    /// Cites a rule that the edition has in several paragraphs by the one that this case falls under.
    pub fn cite(&mut self, rule: &'static Rule, paragraph: &'static str) {
        self.paragraphs.push((rule, paragraph));
    }

    /// Where the edition has a rule: the paragraph that was cited, else all of it.
    pub fn citation(&self, rule: &'static Rule) -> Option<Citation> {
        let citation = rule.citation(self.rulebook.edition)?;
        let cited = self.paragraphs.iter().find(|(known, _)| std::ptr::eq(*known, rule));
        Some(cited.map_or(citation, |(_, paragraph)| citation.of_paragraph(paragraph)))
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

    /// A number that the request gives. Where it is judged in the other system of units, the step has what the request says, and
    /// another one the value that it is converted to.
    #[inline]
    pub fn given(&mut self, rule: &'static Rule, value: Decimal, measure: Measure, at: Pointer) -> Figure {
        let basis = rule.basis_in(self.rulebook.edition);
        let (said, converts) = self.as_said(value, measure);
        let given = self.push(Operation::Given, rule, basis, &[], said, self.said_in.of(measure), Some(at));
        if converts { self.converted(rule, given, value, measure) } else { given }
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
        let Cell { table, row, column, value, unit, bases } = cell;
        let basis = self.rulebook.edition.basis_of(bases);
        self.push(Operation::Lookup { table, row, column }, rule, basis, &[], value, unit, at)
    }

    /// A figure that a rule states.
    #[inline]
    pub fn stated(&mut self, figure: &RuleFigure) -> Figure {
        let (value, amended) = self.rulebook.value(figure, self.units);
        // what an amendment says is in the units of the request
        let (said, converts) = if amended { self.as_said(value, figure.measure) } else { (value, false) };
        let units = if amended { self.said_in } else { self.units };
        let basis = figure.rule.basis_in(self.rulebook.edition);
        let operation = Operation::Stated { figure: figure.name, units };
        let stated = self.push(operation, figure.rule, basis, &[], said, units.of(figure.measure), None);
        if let (true, Some(step)) = (amended, self.steps.last_mut()) {
            step.amended = true;
        }
        if converts { self.converted(figure.rule, stated, value, figure.measure) } else { stated }
    }

    /// What the request says of a value, and whether that is in other units.
    #[inline(always)]
    fn as_said(&self, value: Decimal, measure: Measure) -> (Decimal, bool) {
        if self.said_in == self.units || self.units.of(measure) == self.said_in.of(measure) {
            return (value, false);
        }
        (self.rulebook.unit_systems.conversion(self.units).said(value, measure), true)
    }

    fn converted(&mut self, rule: &'static Rule, said: Figure, value: Decimal, measure: Measure) -> Figure {
        self.compute(Operation::Converted, rule, &[said], value, self.units.of(measure), None)
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
