//! A cable as the raceway that it counts as: the smallest that its conductors would need by Chapter 9.

use super::request::CableEntry;
use crate::checks::raceway_fill::sizing::{Load, Occupant, Sizer};
use crate::derivation::{Derivation, Figure, Pointer};
use crate::rulebook::pull::CABLES;
use crate::rulebook::reading::{CableInsulation, CableRaceway};
use crate::tables::trade_sizes;
use crate::trade::{Insulation, RacewayKind};

/// The trade size that a cable counts as, with the whole raceway fill as steps of the proof; `None` where the tables have
/// no cross-section for one of its conductors, or no raceway that large.
pub fn trade_size(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    cable: &CableEntry,
    entry: usize,
) -> Option<Figure> {
    let at = |place| Pointer::of(&"/cable/conductors/#", place).under(&"/entries/#", entry);
    let mut occupants: Vec<Occupant> = Vec::with_capacity(cable.conductors.len());
    for (place, group) in cable.conductors.iter().enumerate() {
        occupants.push(group.occupant(proof, at(place), unsaid)?);
    }
    let load = Load::of(proof, &occupants)?;
    let (limit, _) = sizer.limit(proof, load.number, false);
    let kind = match proof.reading::<CableRaceway>() {
        CableRaceway::Emt => RacewayKind::Emt,
        CableRaceway::Rmc => RacewayKind::Rmc,
        CableRaceway::Pvc80 => RacewayKind::Pvc80,
    };
    let (size, _) = sizer.smallest(proof, kind, &load, limit)?.size?;
    let cell = trade_sizes::of(size, proof.units())?;
    let at = Pointer::of(&"/entries/#", entry).member(&"/cable");
    Some(proof.lookup(&CABLES, cell, Some(at)))
}

/// The insulation that conductors of a cable are taken to have, where it is not said.
fn unsaid(proof: &mut Derivation) -> Insulation {
    match proof.reading::<CableInsulation>() {
        CableInsulation::Xhhw => Insulation::Xhhw,
        CableInsulation::Thhn => Insulation::Thhn,
    }
}
