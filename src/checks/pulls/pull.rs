//! What each pull is: straight, an angle or a U, by the walls of its entries, and whether it is sized by length.

use super::entry::Entered;
use super::outcome::PullKind;
use super::wall::Wall;
use crate::checks::pull_box::request::{CableEntry, PullBoxRequest};
use crate::checks::pull_box::section::{Chamber, Joining};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Pointer};
use crate::rulebook::pull::APPLIES;
use crate::rulebook::reading::{OffsetEntries, StraightSplice};
use crate::tables::wire_bending_space::Stranding;
use crate::trade::ConductorSize;

/// A pull between two of its entries.
pub struct Joined {
    /// The place of the pull in the request.
    pub pull: usize,
    /// The places of the two entries in the chamber.
    pub between: [usize; 2],
    pub kind: PullKind,
    /// Whether its conductors make a pull box of the box.
    pub large: bool,
    pub spliced: bool,
    /// Whether the straight rule asks for it.
    pub straight: bool,
    /// Whether the angle rule asks for it.
    pub angle: bool,
    /// The largest conductor, where known, and how it bends.
    pub largest: Option<(ConductorSize, Stranding)>,
}

impl Joined {
    pub fn at(&self) -> Pointer {
        Pointer::of(&"/pulls/#", self.pull)
    }
}

/// What the walls of two entries make of a pull.
pub fn kind(first: Wall, other: Wall) -> PullKind {
    if first == other {
        PullKind::U
    } else if first.opposite() == Some(other) {
        PullKind::Straight
    } else {
        PullKind::Angle
    }
}

/// The pulls of a chamber, entry by entry that they join, and which of them are not sized by length.
pub fn all(
    proof: &mut Derivation,
    request: &PullBoxRequest,
    chamber: &Chamber<'_>,
    entered: &[Entered<'_>],
) -> (Vec<Joined>, Vec<Pointer>) {
    let mut joined = Vec::with_capacity(chamber.pulls.len());
    let mut small: Vec<Pointer> = Vec::new();
    for Joining { pull, first, others } in &chamber.pulls {
        let (Some(asked), Some(from)) = (request.pulls.get(*pull), entered.get(*first)) else { continue };
        let ends = || others.iter().filter_map(|other| entered.get(*other)).chain([from]);
        let in_cables = ends().filter_map(|entry| entry.entry.cable.as_ref()).filter_map(CableEntry::largest);
        let by_cable = in_cables.max();
        let largest = asked.largest_conductor.max(by_cable);
        let least = Some(proof.rulebook().pull.applies_from);
        let insulated = asked.insulated && asked.largest_conductor >= least;
        let large = request.over_1000_volts || insulated || by_cable >= least;
        let at = Pointer::of(&"/pulls/#", *pull);
        if !large {
            let because =
                if largest >= Some(ConductorSize::AWG_4) { "not-insulated" } else { "smaller-than-4-awg" };
            proof.does_not_apply(&APPLIES, because, Some(at));
            small.push(at);
        }
        let stranding = if asked.compact_aa8000 { Stranding::CompactAa8000 } else { Stranding::Plain };
        for other in others {
            let Some(to) = entered.get(*other) else { continue };
            let kind = kind(from.wall(), to.wall());
            let spliced = asked.spliced && !request.over_1000_volts;
            let (straight, angle) = match (kind, spliced) {
                _ if !large => (false, false),
                (PullKind::Straight, false) => {
                    let both =
                        asked.offset && proof.reading::<OffsetEntries>() == OffsetEntries::LargerOfBoth;
                    (true, both)
                }
                (PullKind::Straight, true) => {
                    (proof.reading::<StraightSplice>() == StraightSplice::LargerOfBoth, true)
                }
                (PullKind::Angle | PullKind::U, _) => (false, true),
            };
            joined.push(Joined {
                pull: *pull,
                between: [*first, *other],
                kind,
                large,
                spliced,
                straight,
                angle,
                largest: largest.map(|size| (size, stranding)),
            });
        }
    }
    (joined, small)
}

/// The finding that sends pulls to the outlet-box check; it leaves the answer open where no pull is sized by length.
pub fn by_volume(joined: &[Joined], small: Vec<Pointer>) -> Option<Finding> {
    let all = joined.iter().all(|joined| !joined.large);
    let status = if all { Status::NotDetermined } else { Status::Advisory };
    let mut finding = Finding::new(&APPLIES, status, "finding-sized-by-volume");
    finding.at = small;
    (!finding.at.is_empty()).then_some(finding)
}
