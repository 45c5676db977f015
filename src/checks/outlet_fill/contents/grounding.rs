//! Grounding conductors, which are counted together by the largest of them.

use super::fittings::SizeAndAllowance;
use super::{Counting, Entering, Figures, line};
use crate::checks::outlet_fill::outcome::{Item, TallyLine};
use crate::checks::outlet_fill::request::GroundingKind;
use crate::derivation::{Derivation, Figure, Pointer, Relation};
use crate::rulebook::outlet_fill::{
    CONDUCTORS, GROUNDING, GroundingBeyond, GroundingBy, GroundingLines, GroundingParts, ISOLATED_SET, InText,
};
use crate::rulebook::reading::BondingJumpers;
use crate::rulebook::{Choice, Rule, Strategy};
use crate::trade::{ConductorSize, SizeSet};
use smallvec::SmallVec;

impl Choice for GroundingBy {
    /// The conductor that some grounding conductors are counted by, and its allowance.
    type Apply =
        for<'a, 'p> fn(&mut Counting<'a, 'p>, &'static Rule, &[Entering]) -> Option<SizeAndAllowance>;
    const LAWFUL: Strategy<Self> = Strategy::<Self>::new("largest-grounding-conductor", largest_of);
}

fn largest_of(
    counting: &mut Counting<'_, '_>,
    rule: &'static Rule,
    entering: &[Entering],
) -> Option<SizeAndAllowance> {
    let sizes: SizeSet = entering.iter().map(|one| one.size).collect();
    let size = sizes.largest()?;
    let each: Figures = sizes.iter().filter_map(|size| counting.allowance_of(size)).collect();
    Some((size, counting.proof.largest(rule, &each)?))
}

/// What grounding conductors past the first few take.
#[derive(Clone, Copy, Debug)]
pub struct PartsOf {
    /// The allowances of the first few together.
    pub together: Figure,
    /// The part of an allowance for each one more.
    pub each: Figure,
    /// All of these parts.
    pub more: Figure,
}

impl Choice for GroundingParts {
    /// The allowances that the parts come to.
    type Apply = fn(&mut Derivation, PartsOf) -> Figure;
    const LAWFUL: Strategy<Self> = Strategy::<Self>::new("as-they-are", |_, parts| parts.more);
}

/// The lines of grounding conductors in a tally.
pub type GroundingTally = SmallVec<[TallyLine; 2]>;

impl Choice for GroundingLines {
    /// Adds the lines of all grounding conductors that enter.
    type Apply = for<'a, 'p> fn(&mut Counting<'a, 'p>, &GroundingBeyond, &[Entering], &mut GroundingTally);
    const LAWFUL: Strategy<Self> = Strategy::<Self>::new("one-for-all", |counting, _, entering, lines| {
        lines.extend(counting.grounded_together(entering));
    });
}

impl Counting<'_, '_> {
    pub(super) fn grounding_conductors(&mut self) {
        let contents = self.contents;
        for (index, grounding) in contents.grounding.iter().enumerate() {
            let item = self.at(&"/contents/grounding/#", index);
            if grounding.kind == GroundingKind::StaysInside {
                self.present.insert(grounding.size);
                self.leave_out(Item::Grounding, &CONDUCTORS, "stays-inside", item);
                continue;
            }
            if grounding.kind == GroundingKind::BondingJumper && self.bonding_jumpers_count_alone() {
                if let Some(size) = self.sized(grounding.size, item.member(&"/size")) {
                    let count = self.count_at(&CONDUCTORS, grounding.count, item);
                    self.take(Item::Conductors, &CONDUCTORS, size, count, item);
                }
                continue;
            }
            let count = self.count_at(&GROUNDING, grounding.count, item);
            self.enter(grounding.size, count, grounding.kind == GroundingKind::Isolated, item);
        }
    }

    /// Whether a bonding jumper that enters is read as a conductor like any other.
    fn bonding_jumpers_count_alone(&mut self) -> bool {
        self.book.outlet_fill.bonding_jumpers == InText::NotFound
            && self.proof.reading::<BondingJumpers>() == BondingJumpers::AsConductor
    }

    pub(super) fn enter(&mut self, size: ConductorSize, count: Figure, isolated: bool, at: Pointer) {
        if let Some(size) = self.sized(size, at) {
            self.grounding.push(Entering { size, count, isolated, at });
        }
    }

    /// Grounding conductors are counted together, by the largest of them; where the edition says so, a separate isolated
    /// set is counted by itself.
    pub(super) fn grounding_lines(&mut self) -> GroundingTally {
        let mut lines = GroundingTally::new();
        let mut entering = std::mem::take(&mut self.grounding);
        entering.sort_by_key(|one| one.isolated);
        let (plain, isolated) = entering.split_at(entering.partition_point(|one| !one.isolated));
        match (self.book.outlet_fill.isolated_set, plain.is_empty() || isolated.is_empty()) {
            (Some(own), false) => {
                lines.extend(self.grounded_together(plain));
                let allowances = self.proof.stated(&own);
                lines.extend(self.grounding_line(
                    Item::IsolatedGrounding,
                    &ISOLATED_SET,
                    allowances,
                    isolated,
                ));
            }
            _ => {
                if let (Some(first), None) = (isolated.first(), self.book.outlet_fill.isolated_set) {
                    self.proof.does_not_apply(&ISOLATED_SET, "not-in-edition", Some(first.at));
                }
                match self.book.outlet_fill.grounding_beyond.clone() {
                    Some(beyond) => (beyond.lines.apply)(self, &beyond, &entering, &mut lines),
                    None => lines.extend(self.grounded_together(&entering)),
                }
            }
        }
        lines
    }

    pub(super) fn grounded_together(&mut self, entering: &[Entering]) -> Option<TallyLine> {
        if entering.is_empty() {
            return None;
        }
        let together = self.proof.stated(&self.book.outlet_fill.grounding);
        let allowances = match &self.book.outlet_fill.grounding_beyond {
            None => together,
            Some(beyond) => {
                let all = self.proof.sum_of(&GROUNDING, entering.iter().map(|one| one.count));
                let first = self.proof.stated(&beyond.together);
                let (few, _) = self.proof.compare(&GROUNDING, all, Relation::AtMost, first);
                if few {
                    together
                } else {
                    let extra = self.proof.difference(&GROUNDING, all, first);
                    let each = self.proof.stated(&beyond.each);
                    let more = self.proof.product(&GROUNDING, extra, each, None);
                    let more = (beyond.parts.apply)(self.proof, PartsOf { together, each, more });
                    self.proof.sum(&GROUNDING, &[together, more])
                }
            }
        };
        self.grounding_line(Item::Grounding, &GROUNDING, allowances, entering)
    }

    /// A line of grounding conductors that take a number of allowances.
    pub(crate) fn grounding_line(
        &mut self,
        what: Item,
        rule: &'static Rule,
        allowances: Figure,
        entering: &[Entering],
    ) -> Option<TallyLine> {
        let (size, each) = (self.book.outlet_fill.grounding_by.apply)(self, rule, entering)?;
        let at = entering.iter().map(|one| one.at).collect();
        Some(line(self.proof, what, rule, size, (allowances, each), SmallVec::new(), at))
    }
}
