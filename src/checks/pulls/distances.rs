//! How far apart two entries must be when they hold the same conductors.

use super::outcome::EntryDistanceOf;
use super::pull::ResolvedPull;
use super::resolved::Resolved;
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer};
use crate::rulebook::pull::{DistanceBy, ENTRY_DISTANCE};
use crate::rulebook::reading::SplicedConductor;
use crate::rulebook::{Choice, Rule, Strategy};
use smallvec::SmallVec;

/// The least distance between two entries, named by their positions, the lesser first.
#[derive(Clone, Debug)]
pub struct MinDistance {
    pub ends: [usize; 2],
    pub rule: &'static Rule,
    pub required: Figure,
    pub at: Pointer,
    /// What the request does not say and that the distance turns on; empty where any pull asks for it for sure.
    pub unsaid: SmallVec<[Pointer; 1]>,
}

/// The least distance of every pair of entries that an angle or U pull joins: once, however many pulls do. `required`
/// gives the distance of a pair, or `None` where a pull asks for none.
pub fn of_pairs(
    resolved: &Resolved<'_>,
    rule: &'static Rule,
    mut required: impl FnMut(&ResolvedPull, [usize; 2]) -> Option<Figure>,
) -> Vec<MinDistance> {
    let mut distances: Vec<MinDistance> = Vec::new();
    for pull in resolved.pulls.iter().filter(|pull| pull.angle) {
        let mut ends = pull.ends;
        ends.sort_unstable();
        if let Some(known) = distances.iter_mut().find(|known| known.ends == ends) {
            if pull.unsaid.is_empty() {
                known.unsaid.clear();
            }
            continue;
        }
        if let Some(required) = required(pull, ends) {
            distances.push(MinDistance { ends, rule, required, at: pull.at(), unsaid: pull.unsaid.clone() });
        }
    }
    distances
}

/// What is found where the size of an entry of an angle or U pull is not known, and so no distance either.
pub fn unknown(resolved: &Resolved<'_>) -> Option<Finding> {
    let mut pulls = resolved.pulls.iter().filter(|pull| pull.angle);
    let pull = pulls.find(|pull| resolved.sizes(&pull.ends).len() < 2)?;
    let finding = Finding::new(&ENTRY_DISTANCE, Status::NotDetermined, "finding-entry-distance-unknown");
    Some(finding.at(pull.at()))
}

/// The least distances as the answer has them, none measured yet.
pub fn answered(resolved: &Resolved<'_>, required: &[MinDistance]) -> Vec<EntryDistanceOf> {
    let distance = |least: &MinDistance| EntryDistanceOf {
        entries: least.ends.map(|end| resolved.id(end)),
        rule: least.rule.id,
        required: least.required,
        measured: None,
    };
    required.iter().map(distance).collect()
}

impl Choice for DistanceBy {
    /// The one of some sizes that the distance goes by.
    type Apply = fn(&mut Derivation, &[Figure]) -> Option<Figure>;
    const LAWFUL: Strategy<Self> =
        Strategy::<Self>::new("larger", |proof, sizes| proof.largest(&ENTRY_DISTANCE, sizes));
}

/// The distances up to 1000 V: a multiple of the larger of the two raceways.
pub fn required(proof: &mut Derivation, resolved: &Resolved<'_>) -> Vec<MinDistance> {
    let multiple = proof.rulebook().pull.entry_distance;
    of_pairs(resolved, &ENTRY_DISTANCE, |pull, ends| {
        if pull.spliced && proof.reading::<SplicedConductor>() == SplicedConductor::NotSame {
            proof.does_not_apply(&ENTRY_DISTANCE, "spliced", Some(pull.at()));
            return None;
        }
        let sizes = resolved.sizes(&ends);
        if sizes.len() < 2 {
            return None;
        }
        let raceway = (proof.rulebook().pull.distance_by.apply)(proof, &sizes)?;
        let multiple = proof.stated(&multiple);
        Some(proof.product(&ENTRY_DISTANCE, multiple, raceway, None))
    })
}
