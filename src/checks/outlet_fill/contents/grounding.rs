//! Grounding conductors, which are counted together by the largest of them.

use super::{Counting, Entering, Figures, line, look_up};
use crate::checks::outlet_fill::outcome::{Item, TallyLine};
use crate::checks::outlet_fill::request::GroundingKind;
use crate::derivation::{Figure, Pointer, Relation};
use crate::rulebook::Rule;
use crate::rulebook::outlet_fill::{CONDUCTORS, CountedBy, GROUNDING, GroundingBeyond, ISOLATED_SET, Parts};
use crate::trade::{ConductorSize, SizeSet};
use smallvec::SmallVec;

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
            let count = self.count_at(&GROUNDING, grounding.count, item);
            self.enter(grounding.size, count, grounding.kind == GroundingKind::Isolated, item);
        }
    }

    pub(super) fn enter(&mut self, size: ConductorSize, count: Figure, isolated: bool, at: Pointer) {
        if let Some(size) = self.sized(size, at) {
            self.grounding.push(Entering { size, count, isolated, at });
        }
    }

    /// Grounding conductors are counted together, by the largest of them; where the edition says so, a separate isolated
    /// set is counted by itself.
    pub(super) fn grounding_lines(&mut self) -> SmallVec<[TallyLine; 2]> {
        let mut lines = SmallVec::new();
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
                    Some(beyond) if beyond.parts == Parts::OfOwnSize => {
                        lines.extend(self.grounded_by_own_size(entering, &beyond));
                    }
                    _ => lines.extend(self.grounded_together(&entering)),
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
                    let mut more = self.proof.product(&GROUNDING, extra, each, None);
                    if beyond.parts == Parts::RoundedUp {
                        more = self.proof.round_count(&GROUNDING, more, together, each).unwrap_or(more);
                    }
                    self.proof.sum(&GROUNDING, &[together, more])
                }
            }
        };
        self.grounding_line(Item::Grounding, &GROUNDING, allowances, entering)
    }

    /// As [`Self::grounded_together`], with what is past the first few counted by its own size; one line for each size.
    fn grounded_by_own_size(
        &mut self,
        mut entering: SmallVec<[Entering; 4]>,
        beyond: &GroundingBeyond,
    ) -> Vec<TallyLine> {
        entering.sort_by_key(|one| std::cmp::Reverse(one.size));
        let mut left = self.proof.stated(&beyond.together);
        let mut lines = Vec::new();
        for alike in entering.chunk_by(|one, next| one.size == next.size) {
            let counts: Figures = alike.iter().map(|one| one.count).collect();
            let all = self.proof.sum(&GROUNDING, &counts);
            let within = self.proof.smallest(&GROUNDING, &[all, left]).unwrap_or(all);
            left = self.proof.difference(&GROUNDING, left, within);
            let extra = self.proof.difference(&GROUNDING, all, within);
            let each = self.proof.stated(&beyond.each);
            let mut allowances = self.proof.product(&GROUNDING, extra, each, None);
            if lines.is_empty() {
                let together = self.proof.stated(&self.book.outlet_fill.grounding);
                allowances = self.proof.sum(&GROUNDING, &[together, allowances]);
            }
            lines.extend(self.grounding_line(Item::Grounding, &GROUNDING, allowances, alike));
        }
        lines
    }

    pub(super) fn grounding_line(
        &mut self,
        what: Item,
        rule: &'static Rule,
        allowances: Figure,
        entering: &[Entering],
    ) -> Option<TallyLine> {
        if self.book.outlet_fill.grounding_by == CountedBy::LargestInBox {
            let (size, each) = self.largest_present()?;
            let at = entering.iter().map(|one| one.at).collect();
            return Some(line(self.proof, what, rule, size, (allowances, each), SmallVec::new(), at));
        }
        let sizes: SizeSet = entering.iter().map(|one| one.size).collect();
        let size = sizes.largest()?;
        let each: Figures =
            sizes.iter().filter_map(|size| look_up(self.proof, &mut self.allowances, size)).collect();
        let each = self.proof.largest(rule, &each)?;
        let at = entering.iter().map(|one| one.at).collect();
        Some(line(self.proof, what, rule, size, (allowances, each), SmallVec::new(), at))
    }
}
