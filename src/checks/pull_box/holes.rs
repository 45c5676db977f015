//! The holes that entries need in their walls.

use super::request::{Entry, PullBoxRequest};
use super::section::Section;
use crate::checks::pulls::entry::ResolvedEntry;
use crate::derivation::{Derivation, Figure, Pointer};
use crate::quantity::Measure;
use crate::rulebook::geometry::ENTRIES;
use crate::tables::raceway_outside_diameters::{self, extremes};

/// The hole of an entry: a raceway does not go through a smaller one than its outside diameter, with or without a fitting.
#[derive(Clone, Copy, Debug)]
pub(super) struct Hole {
    /// The smallest diameter that it can have.
    pub least: Figure,
    /// The diameter that it has at the most, by the kinds of raceway that it may be for.
    pub most: Figure,
    /// Where it is said what is not known of it.
    pub decided_at: Pointer,
}

impl Hole {
    const fn of(diameter: Figure, decided_at: Pointer) -> Self {
        Self { least: diameter, most: diameter, decided_at }
    }

    /// Whether what is not said of the entry changes it.
    pub fn is_open(&self) -> bool {
        self.least.value != self.most.value
    }
}

/// The holes of the entries of a section; `None` for an entry of which no size is known.
pub(super) fn of_entries(
    proof: &mut Derivation,
    request: &PullBoxRequest,
    section: &Section<'_>,
    resolved: &[ResolvedEntry<'_>],
) -> Vec<Option<Hole>> {
    let entries = section.entries.iter().map(|index| request.entries.get(*index));
    let holes = entries.zip(resolved).map(|(entry, resolved)| of_entry(proof, entry?, resolved));
    holes.collect()
}

/// A raceway has the outside diameter of its kind; one whose kind is not said or not in the table has one of those of its trade
/// size, and where it is stated, the one nearest to that. What is no raceway is as wide as its edge.
fn of_entry(proof: &mut Derivation, entry: &Entry, resolved: &ResolvedEntry<'_>) -> Option<Hole> {
    let Some(raceway) = &entry.raceway else { return Some(Hole::of(resolved.diameter?, resolved.at)) };
    let (size, units) = (raceway.trade_size, proof.units());
    let (kind_at, outside_at) =
        (resolved.at.member(&"/raceway/kind"), resolved.at.member(&"/raceway/outside_diameter"));
    let of_kind = raceway.kind.and_then(|kind| raceway_outside_diameters::of(kind, size, units));
    if let Some(cell) = of_kind {
        return Some(Hole::of(proof.lookup(&ENTRIES, cell, Some(kind_at)), kind_at));
    }
    let Some(cells) = extremes(size, units) else {
        return Some(Hole::of(resolved.diameter?, resolved.at));
    };
    let at = resolved.at.member(&"/raceway/trade_size");
    let [least, most] = cells.map(|cell| proof.lookup(&ENTRIES, cell, Some(at)));
    let Some(outside) = raceway.outside_diameter else {
        return Some(Hole { least, most, decided_at: kind_at });
    };
    let stated = proof.given(&ENTRIES, outside.value(), Measure::Length, outside_at);
    let above = proof.largest(&ENTRIES, &[least, stated])?;
    Some(Hole::of(proof.smallest(&ENTRIES, &[above, most])?, outside_at))
}
