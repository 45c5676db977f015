//! Clamps and support fittings, which are counted by the largest conductor present, and small parts, which are not.

use super::{Counting, Figures, Unsaid};
use crate::checks::outlet_fill::outcome::{Item, Places};
use crate::checks::outlet_fill::request::{Clamp, ClampKind, Many, SmallPartKind, SupportFittingKind};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer};
use crate::quantity::{Decimal, Measure};
use crate::rulebook::outlet_fill::{
    CLAMP_ASSEMBLY, CLAMPS, ClampsBy, ClampsTake, InText, NOTHING, SUPPORT_FITTINGS, SupportFittingsTake,
};
use crate::rulebook::reading::MoldedClamps;
use crate::rulebook::{Choice, Rule, RuleFigure, Strategy};
use crate::trade::ConductorSize;
use smallvec::SmallVec;

/// What clamps that are not said are taken as.
const OUTSIDE_OR_INSIDE: &[&str; 2] = &["outside", "inside"];

/// Things of one kind that take an allowance.
#[derive(Clone, Copy, Debug)]
pub struct Alike<'a> {
    /// The rule that gives it.
    pub rule: &'static Rule,
    /// How many allowances.
    pub allowances: RuleFigure,
    /// How many types of them there are.
    pub types: usize,
    /// How many there are, item by item.
    pub pieces: &'a [Piece],
}

/// An item of a list: how many it stands for, and where it is.
pub type Piece = (Option<Many>, Pointer);

impl Choice for ClampsTake {
    /// What they take together.
    type Apply = fn(&mut Derivation, Alike<'_>) -> Figure;
    const LAWFUL: Strategy<Self> =
        Strategy::<Self>::new("once-for-all", |proof, alike| proof.stated(&alike.allowances));
}

impl Choice for SupportFittingsTake {
    /// What they take together.
    type Apply = fn(&mut Derivation, Alike<'_>) -> Figure;
    const LAWFUL: Strategy<Self> = Strategy::<Self>::new("once-for-each-type", |proof, alike| {
        let each: Figures = (0..alike.types).map(|_| proof.stated(&alike.allowances)).collect();
        proof.sum(alike.rule, &each)
    });
}

/// A size of conductor, and its allowance.
pub type SizeAndAllowance = (ConductorSize, Figure);

impl Choice for ClampsBy {
    /// The conductor that clamps are counted by, in a box with a largest one.
    type Apply = for<'a, 'p> fn(&mut Counting<'a, 'p>, SizeAndAllowance) -> SizeAndAllowance;
    const LAWFUL: Strategy<Self> = Strategy::<Self>::new("largest-in-box", |_, largest| largest);
}

impl Counting<'_, '_> {
    /// The allowances of all internal clamps together, if there are any.
    pub(super) fn clamps(&mut self) -> Option<(Figure, Places)> {
        let contents = self.contents;
        let (mut internal, mut pieces) = (Places::new(), SmallVec::<[Piece; 4]>::new());
        for (index, clamp) in contents.clamps.iter().enumerate() {
            let item = self.at(&"/contents/clamps/#", index);
            match clamp.kind {
                ClampKind::Internal => pieces.push((clamp.count, item)),
                ClampKind::External => self.leave_out(Item::Clamps, &CLAMPS, "outside", item),
                ClampKind::Molded => match self.proof.reading::<MoldedClamps>() {
                    MoldedClamps::Counted => pieces.push((clamp.count, item)),
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
        internal.extend(pieces.iter().map(|(_, item)| *item));
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
        let book = &self.book.outlet_fill;
        let alike = Alike { rule: &CLAMPS, allowances: book.clamps, types: 1, pieces: &pieces };
        Some(((book.clamps_take.apply)(self.proof, alike), internal))
    }

    /// A clamp assembly with terminations is for boxes that it is listed and marked for.
    fn assembly_listed(&mut self, clamp: &Clamp, item: Pointer) {
        if self.book.outlet_fill.clamp_assemblies == InText::NotFound {
            self.open(&CLAMP_ASSEMBLY, "finding-assembly-not-read", item, None);
        }
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
        let mut pieces = SmallVec::<[Piece; 4]>::new();
        for (index, fitting) in contents.support_fittings.iter().enumerate() {
            pieces.push((fitting.count, self.at(&"/contents/support_fittings/#", index)));
            if !types.contains(&fitting.kind) {
                types.push(fitting.kind);
            }
        }
        if pieces.is_empty() {
            return None;
        }
        let book = &self.book.outlet_fill;
        let (rule, allowances, types) = (&SUPPORT_FITTINGS, book.support_fitting, types.len());
        let alike = Alike { rule, allowances, types, pieces: &pieces };
        let together = (book.support_fittings_take.apply)(self.proof, alike);
        Some((together, pieces.iter().map(|(_, item)| *item).collect()))
    }

    /// The largest conductor present and its allowance; a finding where there is none that the table has.
    pub(crate) fn largest_present(&mut self) -> Option<SizeAndAllowance> {
        let Some(largest) = self.present.largest() else {
            let at = self.at(&"/contents", 0);
            self.open(&CLAMPS, "finding-no-conductors", at, Some(self.at(&"/contents/conductors", 0)));
            return None;
        };
        let present = self.present();
        let each: Figures = present.iter().filter_map(|size| self.allowance_of(size)).collect();
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
