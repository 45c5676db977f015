//! How far apart two entries must stand when they hold the same conductors.

use super::entry::Entered;
use super::pull::Joined;
use crate::derivation::{Derivation, Figure, Pointer};
use crate::rulebook::Rule;
use crate::rulebook::pull::{DistanceBy, ENTRY_DISTANCE};
use crate::rulebook::reading::SplicedConductor;

/// Two entries that must stand apart, by their places in the chamber, the lesser first.
#[derive(Clone, Copy, Debug)]
pub struct Apart {
    pub between: [usize; 2],
    pub rule: &'static Rule,
    pub required: Figure,
    /// The place of the first pull that joins them.
    pub pull: usize,
    pub at: Pointer,
}

/// Every pair that must stand apart: once, however many pulls join it.
pub fn required(proof: &mut Derivation, entered: &[Entered<'_>], joined: &[Joined]) -> Vec<Apart> {
    let mut apart: Vec<Apart> = Vec::new();
    let multiple = proof.rulebook().pull.entry_distance;
    for joined in joined.iter().filter(|joined| joined.angle) {
        let between = in_order(joined.between);
        if apart.iter().any(|known| known.between == between) {
            continue;
        }
        if joined.spliced && proof.reading::<SplicedConductor>() == SplicedConductor::NotSame {
            proof.does_not_apply(&ENTRY_DISTANCE, "spliced", Some(joined.at()));
            continue;
        }
        let size = |place: usize| entered.get(place).and_then(|entry| entry.size);
        let (Some(one), Some(other)) = (size(between[0]), size(between[1])) else { continue };
        let by = match proof.rulebook().pull.distance_by {
            DistanceBy::Larger => proof.largest(&ENTRY_DISTANCE, &[one, other]),
            DistanceBy::Smaller => proof.smallest(&ENTRY_DISTANCE, &[one, other]),
        };
        let Some(raceway) = by else { continue };
        let multiple = proof.stated(&multiple);
        let required = proof.product(&ENTRY_DISTANCE, multiple, raceway, None);
        apart.push(Apart { between, rule: &ENTRY_DISTANCE, required, pull: joined.pull, at: joined.at() });
    }
    apart
}

pub fn in_order([one, other]: [usize; 2]) -> [usize; 2] {
    if one <= other { [one, other] } else { [other, one] }
}
