//! Conductors: loose ones, those that cables bring, and fixture wires from a canopy.

use super::{Bound, Counting, Figures, Unsaid};
use crate::checks::outlet_fill::outcome::Item;
use crate::checks::outlet_fill::request::{
    Cable, CableGrounding, CableKind, Canopy, CanopyKind, Conductor, Opening, Role, Wire,
};
use crate::checks::{Finding, Status};
use crate::derivation::{Figure, Pointer, Relation};
use crate::quantity::Measure;
use crate::rulebook::free_conductor;
use crate::rulebook::outlet_fill::{CANOPY, CONDUCTORS, GROUNDING, NM_GROUNDING};
use crate::rulebook::reading::{CanopyWires, FanCanopy, LoopThreshold};
use crate::trade::ConductorSize;

/// What a grounding conductor that is not said is taken as: for a cable that may have none, and for NM cable above 10 AWG.
const NONE_OR_AS_THE_OTHERS: &[&str; 2] = &["none", "as_the_others"];
const TEN_OR_AS_THE_OTHERS: &[&str; 2] = &["10 AWG", "as_the_others"];

/// What decides how long a loop must be to count twice.
#[derive(Clone, Copy, Debug, Default)]
pub(in crate::checks) struct Loops<'a> {
    pub opening: Option<&'a Opening>,
    /// Whether the box may be so deep that a loop must be longer than in any other.
    pub may_be_deep: bool,
}

/// How deep conductors emerge is taken as more than the base length less what must reach outside, and as no more.
const DEEP_OR_NOT: &[&str; 2] = &["deep", "shallow"];

impl Counting<'_, '_> {
    pub(super) fn conductors(&mut self, loops: Loops<'_>) {
        let contents = self.contents;
        let mut threshold = None;
        for (index, Conductor { size, role, loop_length, count }) in contents.conductors.iter().enumerate() {
            let item = self.at(&"/contents/conductors/#", index);
            if *role == Role::StaysInside {
                self.present.insert(*size);
                self.leave_out(Item::Conductors, &CONDUCTORS, "stays-inside", item);
                continue;
            }
            let many = self.count_at(&CONDUCTORS, *count, item);
            let Some(size) = self.sized(*size, item.member(&"/size")) else { continue };
            let allowances = match (role, loop_length) {
                (Role::Loop, Some(length)) => {
                    let (length, at) = (length.value(), item.member(&"/loop_length"));
                    let length = self.proof.given(&CONDUCTORS, length, Measure::Length, at);
                    let threshold = match threshold {
                        Some(threshold) => threshold,
                        None => *threshold.insert(self.loop_threshold(loops.opening)),
                    };
                    let (long, _) = self.proof.compare(&CONDUCTORS, length, Relation::AtLeast, threshold);
                    let figure = if long && !self.may_be_short(loops) {
                        self.book.outlet_fill.long_loop
                    } else {
                        self.book.outlet_fill.passing
                    };
                    let each = self.proof.stated(&figure);
                    self.proof.product(&CONDUCTORS, many, each, Some(item))
                }
                (Role::PassesThrough, _) => {
                    let each = self.proof.stated(&self.book.outlet_fill.passing);
                    self.proof.product(&CONDUCTORS, many, each, Some(item))
                }
                _ => many,
            };
            self.take(Item::Conductors, &CONDUCTORS, size, allowances, item);
        }
    }

    /// Whether a loop that is long enough in a shallow box is taken as too short: nobody says how deep its conductors emerge, and the
    /// box may be deep.
    fn may_be_short(&mut self, loops: Loops<'_>) -> bool {
        let small = self.book.free_conductor.small_opening.value(self.proof.units());
        let is_said = loops.opening.is_some_and(|opening| {
            opening.conductor_depth.is_some() || opening.smallest_dimension.value() >= small
        });
        if !loops.may_be_deep || is_said {
            return false;
        }
        if self.proof.reading::<LoopThreshold>() != LoopThreshold::TwiceRequired {
            return false;
        }
        let at = Pointer::to(&"/opening/conductor_depth");
        if self.unsaid.iter().any(|unsaid| unsaid.at == at) {
            return self.bound == Bound::Least;
        }
        let message = "finding-loop-depth-unsaid";
        !self.leave_unsaid(Unsaid { rule: &CONDUCTORS, at, values: DEEP_OR_NOT, message })
    }

    /// How long an unbroken loop must be to count twice.
    pub(super) fn loop_threshold(&mut self, opening: Option<&Opening>) -> Figure {
        let book = self.book.free_conductor.clone();
        let base = self.proof.stated(&book.length);
        let mut least = base;
        if let Some(opening) = opening {
            let (smallest, at) =
                (opening.smallest_dimension.value(), Pointer::to(&"/opening/smallest_dimension"));
            let smallest = self.proof.given(&free_conductor::OUTSIDE, smallest, Measure::Length, at);
            let limit = self.proof.stated(&book.small_opening);
            let (small, _) = self.proof.compare(&free_conductor::OUTSIDE, smallest, Relation::Below, limit);
            if let (true, Some(depth)) = (small, opening.conductor_depth) {
                let at = Pointer::to(&"/opening/conductor_depth");
                let depth = self.proof.given(&free_conductor::OUTSIDE, depth.value(), Measure::Length, at);
                let outside = self.proof.stated(&book.outside);
                let reach = self.proof.sum(&free_conductor::OUTSIDE, &[depth, outside]);
                let longer = reach.value > base.value;
                if longer && self.proof.reading::<LoopThreshold>() == LoopThreshold::TwiceRequired {
                    least = self.proof.largest(&free_conductor::OUTSIDE, &[base, reach]).unwrap_or(base);
                }
            }
        }
        let multiple = self.proof.stated(&self.book.outlet_fill.loop_multiple);
        let threshold = self.proof.product(&CONDUCTORS, multiple, least, None);
        let finding = Finding::new(&CONDUCTORS, Status::Advisory, "finding-loop-threshold");
        self.findings.push(finding.with("threshold", threshold).step(threshold.step));
        threshold
    }

    pub(super) fn cables(&mut self) {
        let contents = self.contents;
        for (index, cable) in contents.cables.iter().enumerate() {
            let item = self.at(&"/contents/cables/#", index);
            let many = cable.count.map(|_| self.count_at(&CONDUCTORS, cable.count, item));
            let (conductors, at) = (cable.conductors.get().into(), item.member(&"/conductors"));
            let each = self.proof.given(&CONDUCTORS, conductors, Measure::Number, at);
            if let Some(size) = self.sized(cable.size, item.member(&"/size")) {
                let allowances = match many {
                    Some(many) => self.proof.product(&CONDUCTORS, many, each, Some(item)),
                    None => each,
                };
                self.take(Item::Conductors, &CONDUCTORS, size, allowances, item);
            }
            if let Some((size, at)) = self.cable_grounding(cable, item) {
                let count = match many {
                    Some(many) => many,
                    None => self.count_at(&GROUNDING, None, at),
                };
                self.enter(size, count, false, at);
            }
        }
    }

    /// The size of the grounding conductor of a cable, and where that is known from; `None` where it has none.
    fn cable_grounding(&mut self, cable: &Cable, item: Pointer) -> Option<(ConductorSize, Pointer)> {
        let at = item.member(&"/grounding");
        let is_nm = cable.kind == CableKind::NmB;
        match cable.grounding {
            Some(CableGrounding::Size(size)) => return Some((size, at)),
            Some(CableGrounding::None) => {
                self.proof.word(&GROUNDING, "none", at);
                if is_nm {
                    let existing = item.member(&"/existing_cable");
                    match cable.existing_cable {
                        Some(true) => {
                            self.proof.fact(&NM_GROUNDING, true, existing);
                        }
                        _ => self.open(&NM_GROUNDING, "finding-nm-without-grounding", at, Some(existing)),
                    }
                }
                return None;
            }
            None => {}
        }
        if cable.size >= self.proof.rulebook().pull.applies_from {
            return None;
        }
        let by_law = is_nm && cable.existing_cable != Some(true);
        if by_law {
            self.proof.word(&NM_GROUNDING, "NM-B", item.member(&"/kind"));
            if cable.size <= ConductorSize::AWG_10 {
                return Some((cable.size, item));
            }
        }
        let values = if by_law { TEN_OR_AS_THE_OTHERS } else { NONE_OR_AS_THE_OTHERS };
        let (rule, message) = match by_law {
            true => (&NM_GROUNDING, "finding-nm-grounding-size-unsaid"),
            false => (&GROUNDING, "finding-cable-grounding-unsaid"),
        };
        let unsaid = Unsaid { rule, at, values, message };
        match (self.leave_unsaid(unsaid), by_law) {
            (true, _) => Some((cable.size, item)),
            (false, true) => Some((ConductorSize::AWG_10, item)),
            (false, false) => None,
        }
    }

    pub(super) fn canopy(&mut self) {
        let Some(canopy) = &self.contents.canopy else { return };
        let at = self.at(&"/contents/canopy", 0);
        let says = match canopy.kind {
            CanopyKind::DomedLuminaire => "domed_luminaire",
            CanopyKind::FlatLuminaire => "flat_luminaire",
            CanopyKind::CeilingFan => "ceiling_fan",
        };
        self.proof.word(&CANOPY, says, at.member(&"/kind"));
        let relieved = match canopy.kind {
            CanopyKind::DomedLuminaire => true,
            CanopyKind::FlatLuminaire => false,
            CanopyKind::CeilingFan => self.proof.reading::<FanCanopy>() == FanCanopy::AsALuminaire,
        };
        if !relieved {
            self.proof.does_not_apply(&CANOPY, "no-canopy", Some(at));
            if canopy.fixture_wires.is_unsaid() {
                let wires = at.member(&"/fixture_wires");
                self.open(&CONDUCTORS, "finding-fixture-wires-unsaid", at, Some(wires));
            }
        }
        for (index, Wire { size, count }) in canopy.grounding.iter().enumerate() {
            let item = self.at(&"/contents/canopy/grounding/#", index);
            if relieved {
                self.leave_out(Item::Grounding, &CANOPY, "canopy", item);
            } else {
                let count = self.count_at(&GROUNDING, *count, item);
                self.enter(*size, count, false, item);
            }
        }
        self.fixture_wires(canopy, relieved);
    }

    pub(super) fn fixture_wires(&mut self, canopy: &Canopy, relieved: bool) {
        let mut small: Vec<(ConductorSize, Figure, Pointer)> = Vec::new();
        for (index, Wire { size, count }) in canopy.fixture_wires.iter().enumerate() {
            let item = self.at(&"/contents/canopy/fixture_wires/#", index);
            let many = self.count_at(&CANOPY, *count, item);
            if relieved && *size < self.book.outlet_fill.canopy_below {
                small.push((*size, many, item));
            } else if let Some(size) = self.sized(*size, item) {
                self.take(Item::FixtureWires, &CONDUCTORS, size, many, item);
            }
        }
        if small.is_empty() {
            return;
        }
        let counts: Figures = small.iter().map(|(_, many, _)| *many).collect();
        let all = self.proof.sum(&CANOPY, &counts);
        let free = self.proof.stated(&self.book.outlet_fill.canopy_wires);
        let (few, _) = self.proof.compare(&CANOPY, all, Relation::AtMost, free);
        if few {
            for (_, _, item) in small {
                self.leave_out(Item::FixtureWires, &CANOPY, "canopy", item);
            }
            return;
        }
        match self.proof.reading::<CanopyWires>() {
            CanopyWires::AllCount => {
                for (size, many, item) in small {
                    if let Some(size) = self.sized(size, item) {
                        self.take(Item::FixtureWires, &CONDUCTORS, size, many, item);
                    }
                }
            }
            CanopyWires::ExcessCounts => {
                let excess = self.proof.difference(&CANOPY, all, free);
                let largest = small.iter().max_by_key(|(size, _, _)| *size);
                if let Some((size, _, item)) = largest.copied()
                    && let Some(size) = self.sized(size, item)
                {
                    self.take(Item::FixtureWires, &CANOPY, size, excess, item);
                }
            }
        }
    }
}
