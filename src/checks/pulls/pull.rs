//! What each pull is: straight, an angle or a U, by the walls of its entries, and whether it is sized by length.

use super::entry::ResolvedEntry;
use super::wall::Wall;
use crate::derivation::{Derivation, Pointer};
use crate::rulebook::pull::{APPLIES, STRAIGHT};
use crate::rulebook::reading::{OffsetEntries, StraightSplice};
use crate::tables::wire_bending_space::Stranding;
use crate::trade::ConductorSize;
use serde::Serialize;
use smallvec::SmallVec;
use utoipa::ToSchema;

/// What a pull is between two of its entries.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum PullKind {
    /// Between opposite walls.
    Straight,
    /// Between walls that meet.
    Angle,
    /// Back to the same wall.
    U,
}

impl PullKind {
    fn between(first: Wall, other: Wall) -> Self {
        if first == other {
            Self::U
        } else if first.opposite() == Some(other) {
            Self::Straight
        } else {
            Self::Angle
        }
    }
}

/// A pull of a request, with the positions of its entries among those of the section.
pub struct RequestedPull {
    /// Its index in the request.
    pub index: usize,
    /// The entry that holds all its conductors.
    pub first: usize,
    pub others: Vec<usize>,
    pub largest_conductor: Option<ConductorSize>,
    /// Whether that conductor is required to be insulated, where it is said.
    pub insulated: Option<bool>,
    pub spliced: bool,
    /// Whether its entries, on opposite walls, are out of line, where it is said.
    pub offset: Option<bool>,
    pub stranding: Stranding,
}

/// A pull between two of its entries.
pub struct ResolvedPull {
    /// The index of the pull in the request.
    pub index: usize,
    /// The positions of the two entries.
    pub ends: [usize; 2],
    pub kind: PullKind,
    /// Whether it is sized by length, which makes a pull box of the box.
    pub large: bool,
    pub spliced: bool,
    /// Whether the straight rule applies to it.
    pub straight: bool,
    /// Whether the angle rule applies to it.
    pub angle: bool,
    /// The largest conductor, where known, and how it bends.
    pub largest: Option<(ConductorSize, Stranding)>,
    /// What the request does not say of it and that its kind turns on: it is taken to be what asks for more.
    pub unsaid: SmallVec<[Pointer; 1]>,
}

impl ResolvedPull {
    pub fn at(&self) -> Pointer {
        Pointer::of(&"/pulls/#", self.index)
    }

    /// Whether it ends at one of some entries.
    pub fn ends_at_any(&self, positions: &[usize]) -> bool {
        self.ends.iter().any(|end| positions.contains(end))
    }
}

/// Resolves every pull between its first entry and each of the others. Over 1000 V every pull is sized by length, and a
/// splice changes nothing.
pub fn resolve(
    proof: &mut Derivation,
    entries: &[ResolvedEntry<'_>],
    pulls: &[RequestedPull],
    over_1000_volts: bool,
) -> Vec<ResolvedPull> {
    let mut resolved = Vec::with_capacity(pulls.len());
    for pull in pulls {
        let Some(from) = entries.get(pull.first) else { continue };
        let ends = pull.others.iter().filter_map(|other| entries.get(*other)).chain([from]);
        let in_cable = ends.filter_map(|entry| entry.cable_conductor).max();
        let largest = pull.largest_conductor.max(in_cable);
        let least = Some(proof.rulebook().pull.applies_from);
        let is_sized = pull.largest_conductor >= least;
        let insulated = pull.insulated.unwrap_or(true) && is_sized;
        let large = over_1000_volts || insulated || in_cable >= least;
        let at = Pointer::of(&"/pulls/#", pull.index);
        let mut unsaid = SmallVec::new();
        if is_sized && !over_1000_volts && in_cable < least {
            unsaid.extend(pull.insulated.is_none().then(|| at.member(&"/insulated")));
        }
        if !large {
            let reason = if largest >= least { "not-insulated" } else { "smaller-than-4-awg" };
            proof.does_not_apply(&APPLIES, reason, Some(at));
        }
        let spliced = pull.spliced && !over_1000_volts;
        for other in &pull.others {
            let Some(to) = entries.get(*other) else { continue };
            let kind = PullKind::between(from.wall, to.wall);
            let mut unsaid = unsaid.clone();
            let (straight, angle) = match (kind, spliced) {
                _ if !large => (false, false),
                (PullKind::Straight, false) => {
                    let read_as_both =
                        proof.rulebook().readings.of::<OffsetEntries>() == OffsetEntries::LargerOfBoth;
                    let both = pull.offset.unwrap_or(read_as_both)
                        && proof.reading::<OffsetEntries>() == OffsetEntries::LargerOfBoth;
                    if both && pull.offset.is_none() {
                        unsaid.push(at.member(&"/offset"));
                    }
                    (true, both)
                }
                (PullKind::Straight, true) => {
                    if proof.reading::<StraightSplice>() == StraightSplice::AngleRule {
                        proof.does_not_apply(&STRAIGHT, "spliced-by-angle", Some(at));
                    }
                    (proof.reading::<StraightSplice>() == StraightSplice::LargerOfBoth, true)
                }
                (PullKind::Angle | PullKind::U, _) => (false, true),
            };
            resolved.push(ResolvedPull {
                index: pull.index,
                ends: [pull.first, *other],
                kind,
                large,
                spliced,
                straight,
                angle,
                largest: largest.map(|size| (size, pull.stranding)),
                unsaid,
            });
        }
    }
    resolved
}
