//! Clamps and support fittings, which are counted by the largest conductor present, and small parts, which are not.

use super::{Counting, Figures, Unsaid, look_up};
use crate::checks::outlet_fill::outcome::{Item, Places};
use crate::checks::outlet_fill::request::{Clamp, ClampKind, Many, SmallPartKind, SupportFittingKind};
use crate::checks::{Finding, Status};
use crate::derivation::{Figure, Pointer};
use crate::quantity::{Decimal, Measure};
use crate::rulebook::outlet_fill::{CLAMP_ASSEMBLY, CLAMPS, InBox, NOTHING, Repeated, SUPPORT_FITTINGS};
use crate::rulebook::reading::MoldedClamps;
use crate::tables::conductor_volume;
use crate::trade::ConductorSize;
use smallvec::SmallVec;

/// What clamps that are not said are taken as.
const OUTSIDE_OR_INSIDE: &[&str; 2] = &["outside", "inside"];

impl Counting<'_, '_> {
    /// The allowances of all internal clamps together, if there are any.
    pub(super) fn clamps(&mut self) -> Option<(Figure, Places)> {
        let contents = self.contents;
        let mut internal = Places::new();
        for (index, clamp) in contents.clamps.iter().enumerate() {
            let item = self.at(&"/contents/clamps/#", index);
            match clamp.kind {
                ClampKind::Internal => internal.push(item),
                ClampKind::External => self.leave_out(Item::Clamps, &CLAMPS, "outside", item),
                ClampKind::Molded => match self.proof.reading::<MoldedClamps>() {
                    MoldedClamps::Counted => internal.push(item),
                    MoldedClamps::NotCounted => self.leave_out(Item::Clamps, &CLAMPS, "molded", item),
                },
                ClampKind::TerminatingAssembly => {
                    self.assembly_listed(clamp, item);
                    self.leave_out(Item::Clamps, &CLAMP_ASSEMBLY, "own-volume", item);
                    let Some(volume) = clamp.volume else { continue };
                    let (volume, at) = (volume.value(), item.member(&"/volume"));
                    let mut taken = self.proof.given(&CLAMP_ASSEMBLY, volume, Measure::Volume, at);
                    if clamp.count.is_some() {
                        let many = self.count_at(&CLAMP_ASSEMBLY, clamp.count, item);
                        taken = self.proof.product(&CLAMP_ASSEMBLY, many, taken, Some(item));
                    }
                    self.assemblies.push(taken);
                }
            }
        }
        if contents.leaves_clamps_unsaid() {
            let at = self.at(&"/contents/clamps", 0);
            let (values, message) = (OUTSIDE_OR_INSIDE, "finding-clamps-unsaid");
            if self.leave_unsaid(Unsaid { rule: &CLAMPS, at, values, message }) {
                internal.push(at);
            }
        }
        if internal.is_empty() {
            return None;
        }
        let together = self.proof.stated(&self.book.outlet_fill.clamps);
        if self.book.outlet_fill.clamps_each == Repeated::ForAll {
            return Some((together, internal));
        }
        let counts: SmallVec<[(Option<Many>, Pointer); 4]> = contents
            .clamps
            .iter()
            .enumerate()
            .map(|(index, clamp)| (clamp.count, self.at(&"/contents/clamps/#", index)))
            .filter(|(_, item)| internal.contains(item))
            .collect();
        let each: Figures =
            counts.into_iter().map(|(count, item)| self.count_at(&CLAMPS, count, item)).collect();
        let all = self.proof.sum(&CLAMPS, &each);
        Some((self.proof.product(&CLAMPS, all, together, None), internal))
    }

    /// A clamp assembly with terminations is for boxes that it is listed and marked for.
    fn assembly_listed(&mut self, clamp: &Clamp, item: Pointer) {
        let at = item.member(&"/listed_for_box");
        match clamp.listed_for_box {
            Some(true) => {
                self.proof.fact(&CLAMP_ASSEMBLY, true, at);
            }
            Some(false) => {
                let step = self.proof.fact(&CLAMP_ASSEMBLY, false, at);
                let finding = Finding::new(&CLAMP_ASSEMBLY, Status::Violated, "finding-assembly-not-listed");
                self.findings.push(finding.at(item).step(step));
            }
            None => self.open(&CLAMP_ASSEMBLY, "finding-assembly-listing-unsaid", item, Some(at)),
        }
    }

    /// The allowances of support fittings: one for each type, however many there are of it.
    pub(super) fn support_fittings(&mut self) -> Option<(Figure, Places)> {
        let contents = self.contents;
        let mut types: SmallVec<[SupportFittingKind; 2]> = SmallVec::new();
        let mut at = Places::new();
        for (index, fitting) in contents.support_fittings.iter().enumerate() {
            at.push(self.at(&"/contents/support_fittings/#", index));
            if !types.contains(&fitting.kind) {
                types.push(fitting.kind);
            }
        }
        let one = self.book.outlet_fill.support_fitting;
        let each: Figures = match self.book.outlet_fill.support_fittings_each {
            Repeated::ForAll => types.iter().take(1).map(|_| self.proof.stated(&one)).collect(),
            Repeated::ForEachType => types.iter().map(|_| self.proof.stated(&one)).collect(),
            Repeated::ForEachPiece => contents
                .support_fittings
                .iter()
                .zip(&at)
                .map(|(fitting, item)| {
                    let pieces = self.count_at(&SUPPORT_FITTINGS, fitting.count, *item);
                    let one = self.proof.stated(&one);
                    self.proof.product(&SUPPORT_FITTINGS, pieces, one, Some(*item))
                })
                .collect(),
        };
        (!each.is_empty()).then(|| (self.proof.sum(&SUPPORT_FITTINGS, &each), at))
    }

    /// The smallest conductor present and its allowance, where clamps are counted by that.
    pub(super) fn smallest_for_clamps(&mut self) -> Option<(ConductorSize, Figure)> {
        if self.book.outlet_fill.clamps_by == InBox::Largest {
            return None;
        }
        let smallest = self.present.and(conductor_volume::sizes()).iter().next()?;
        look_up(self.proof, &mut self.allowances, smallest).map(|each| (smallest, each))
    }

    /// The largest conductor present and its allowance; a finding where there is none that the table has.
    pub(super) fn largest_present(&mut self) -> Option<(ConductorSize, Figure)> {
        let Some(largest) = self.present.largest() else {
            let at = self.at(&"/contents", 0);
            self.open(&CLAMPS, "finding-no-conductors", at, Some(self.at(&"/contents/conductors", 0)));
            return None;
        };
        let present = self.present.and(conductor_volume::sizes());
        let each: Figures =
            present.iter().filter_map(|size| look_up(self.proof, &mut self.allowances, size)).collect();
        if largest >= self.proof.rulebook().pull.applies_from || each.is_empty() {
            let at = self.at(&"/contents", 0);
            self.open(&CLAMPS, "finding-largest-has-no-allowance", at, None);
            return None;
        }
        self.proof.largest(&CLAMPS, &each).map(|each| (largest, each))
    }

    /// The allowances of wire connectors: none, unless a local amendment gives them some.
    pub(super) fn wire_connectors(&mut self) -> Option<(Figure, Places)> {
        if !self.connectors_count() {
            return None;
        }
        let contents = self.contents;
        let (mut allowances, mut places) = (Figures::new(), Places::new());
        for (index, part) in contents.small_parts.iter().enumerate() {
            if part.kind == SmallPartKind::WireConnector {
                let item = self.at(&"/contents/small_parts/#", index);
                let many = self.count_at(&NOTHING, part.count, item);
                let each = self.proof.stated(&self.book.outlet_fill.wire_connector);
                allowances.push(self.proof.product(&NOTHING, many, each, Some(item)));
                places.push(item);
            }
        }
        (!places.is_empty()).then(|| (self.proof.sum(&NOTHING, &allowances), places))
    }

    fn connectors_count(&self) -> bool {
        self.book.value(&self.book.outlet_fill.wire_connector, self.proof.units()).0 > Decimal::ZERO
    }

    pub(super) fn small_parts(&mut self) {
        let contents = self.contents;
        for (index, part) in contents.small_parts.iter().enumerate() {
            let item = self.at(&"/contents/small_parts/#", index);
            let because = match part.kind {
                SmallPartKind::WireConnector if self.connectors_count() => continue,
                SmallPartKind::WireConnector => "wire-connector",
                SmallPartKind::RacewayAsGround | SmallPartKind::BondingStrip => "not-a-conductor-inside",
                _ => "small-fitting",
            };
            self.leave_out(Item::SmallParts, &NOTHING, because, item);
        }
    }
}
