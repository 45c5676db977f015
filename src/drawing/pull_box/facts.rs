//! What the answer knows of the inputs: the figures of its proof by the places that they come from.

use crate::checks::pull_box::{Entry, PullBoxRequest};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Operation, Outcome, Pointer};
use crate::drawing::sheet::approximate;
use crate::i18n::figure;
use crate::quantity::{Decimal, Unit};
use crate::rulebook::geometry::{ENTRIES, POSITIONS};
use crate::rulebook::over_1000_volts::SCOPE;
use crate::rulebook::pull::{CABLES, MARKED, PLACEMENT, TRADE_SIZE};
use rustc_hash::FxHashMap;

/// A figure without its step.
#[derive(Clone, Copy, Debug)]
pub(super) struct Amount(pub Decimal, pub Unit);

impl Amount {
    pub const fn of(figure: Figure) -> Self {
        Self(figure.value, figure.unit)
    }

    /// With its unit; of more than four decimals the first four, as roots have nine.
    pub fn text(self) -> String {
        let Self(value, unit) = self;
        let short = value.floor_to(Decimal::ten_thousandths(1));
        if short == value {
            return figure(value, unit);
        }
        format!("{short}… {}", unit.symbol())
    }

    pub fn approximate(self) -> f64 {
        approximate(self.0)
    }
}

/// The figures that a drawing takes from the proof, and what was found against places.
pub(super) struct Facts<'a> {
    pub request: &'a PullBoxRequest,
    pub proof: &'a Derivation,
    findings: &'a [Finding],
    figures: FxHashMap<Pointer, Amount>,
    pulls: FxHashMap<Pointer, usize>,
}

impl<'a> Facts<'a> {
    pub fn of(request: &'a PullBoxRequest, proof: &'a Derivation, findings: &'a [Finding]) -> Self {
        let mut figures = FxHashMap::default();
        let rules = [TRADE_SIZE.id, CABLES.id, PLACEMENT.id, SCOPE.id];
        for step in proof.steps() {
            let brought_in = matches!(step.operation, Operation::Given | Operation::Lookup { .. });
            if let (Some(at), Outcome::Equals(value, unit)) = (step.at, step.outcome)
                && brought_in
                && rules.contains(&step.rule.id)
            {
                figures.entry(at).or_insert(Amount(value, unit));
            }
        }
        let pulls = (0..request.pulls.len()).map(|pull| (Pointer::of(&"/pulls/#", pull), pull)).collect();
        Self { request, proof, findings, figures, pulls }
    }

    /// The figure that an input came to.
    pub fn at(&self, at: Pointer) -> Option<Amount> {
        self.figures.get(&at).copied()
    }

    /// The position of a pull in the request.
    pub fn pull(&self, at: Pointer) -> Option<usize> {
        self.pulls.get(&at).copied()
    }

    /// The diameter that the edge of an entry is measured by; `None` where it could not be established.
    pub fn diameter(&self, entry: &Entry, index: usize) -> Option<Amount> {
        let at = Pointer::of(&"/entries/#", index);
        if entry.raceway.is_some() {
            let outside = self.at(at.member(&"/raceway/outside_diameter"));
            return outside.or_else(|| self.at(at.member(&"/raceway/trade_size")));
        }
        if entry.cable.is_some() {
            let outside = self.at(at.member(&"/cable/outside_diameter"));
            return outside.or_else(|| self.at(at.member(&"/cable")));
        }
        let cables = 0..entry.cables_over_1000_volts.len();
        let outside = cables.filter_map(|position| {
            let at = Pointer::of(&"/cables_over_1000_volts/#", position).under(&"/entries/#", index);
            self.at(at.member(&"/outside_diameter"))
        });
        outside.max_by_key(|outside| outside.0)
    }

    /// Whether an entry was found out of its wall or over another.
    pub fn is_misplaced(&self, index: usize) -> bool {
        let at = Pointer::of(&"/entries/#", index);
        let position = at.member(&"/position");
        let against = |finding: &&Finding| [POSITIONS.id, ENTRIES.id].contains(&finding.rule.id);
        let violated = self.findings.iter().filter(|finding| finding.status == Status::Violated);
        violated.filter(against).any(|finding| finding.at.iter().any(|of| *of == at || *of == position))
    }

    /// Whether a marking lets the box be smaller than the rules ask.
    pub fn is_covered_by_mark(&self) -> bool {
        let covers = |finding: &Finding| finding.rule.id == MARKED.id && finding.status == Status::Satisfied;
        self.findings.iter().any(covers)
    }
}
