//! The entries of a request as the rules count them, up to 1000 V.

use super::request::{CableEntry, Entry, PullBoxRequest};
use super::section::Section;
use crate::checks::pulls::entry::{ResolvedEntry, SizeAndDiameter, counted, raceway};
use crate::checks::raceway_fill::sizing::{Load, Occupant, Sizer};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer};
use crate::quantity::Measure;
use crate::rulebook::pull::{CABLES, PLACEMENT};
use crate::rulebook::reading::{CableInsulation, CableRaceway, Point};
use crate::tables::trade_sizes;
use crate::trade::{Insulation, RacewayKind};

/// Resolves the entry with an index of the request.
pub(super) fn resolve<'a>(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    entry: &'a Entry,
    index: usize,
) -> ResolvedEntry<'a> {
    let at = Pointer::of(&"/entries/#", index);
    let size = if let Some(cable) = &entry.cable {
        let size = trade_size(proof, sizer, cable, index);
        let outside = cable.outside_diameter.map(|outside| {
            let at = at.member(&"/cable/outside_diameter");
            proof.given(&PLACEMENT, outside.value(), Measure::Length, at)
        });
        counted(proof.rulebook().pull.cable_counts_as.apply, size, outside)
    } else {
        let of_entry = entry.raceway.as_ref();
        let outside = of_entry.and_then(|raceway| raceway.outside_diameter);
        raceway(proof, of_entry.map(|raceway| raceway.trade_size), outside, at)
    };
    of_size(entry, at, size)
}

/// An entry of known size and diameter.
pub(super) fn of_size(entry: &Entry, at: Pointer, size: SizeAndDiameter) -> ResolvedEntry<'_> {
    let mut resolved = ResolvedEntry::new(entry.id.as_str(), entry.wall, at, size);
    resolved.row = entry.row.map(|row| row.get()).or(resolved.row);
    resolved.row_is_said = entry.row.is_some();
    resolved.position = entry.position;
    resolved.cable_conductor = entry.cable.as_ref().and_then(CableEntry::largest);
    resolved
}

/// The trade size that a cable counts as: the smallest raceway that its conductors would need by Chapter 9, with the
/// whole raceway fill as steps of the proof. `None` where the tables have no cross-section for one of its conductors, or no
/// raceway that large.
fn trade_size(proof: &mut Derivation, sizer: &mut Sizer, cable: &CableEntry, entry: usize) -> Option<Figure> {
    let at = |group| Pointer::of(&"/cable/conductors/#", group).under(&"/entries/#", entry);
    let mut occupants: Vec<Occupant> = Vec::with_capacity(cable.conductors.len());
    for (index, group) in cable.conductors.iter().enumerate() {
        occupants.push(group.occupant(proof, at(index), default_insulation)?);
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
fn default_insulation(proof: &mut Derivation) -> Insulation {
    match proof.reading::<CableInsulation>() {
        CableInsulation::Xhhw => Insulation::Xhhw,
        CableInsulation::Thhn => Insulation::Thhn,
    }
}

/// The finding that leaves open what cables count as whose conductors have no insulation, unless a reading was chosen for it.
pub(super) fn unsaid_insulation(
    proof: &mut Derivation,
    request: &PullBoxRequest,
    section: &Section<'_>,
) -> Option<Finding> {
    if section.inside.is_none() || proof.rulebook().readings.is_chosen(Point::CableInsulation) {
        return None;
    }
    let mut finding = Finding::new(&CABLES, Status::NotDetermined, "finding-cable-insulation-open");
    for index in &section.entries {
        let Some(cable) = request.entries.get(*index).and_then(|entry| entry.cable.as_ref()) else {
            continue;
        };
        let unsaid = cable
            .conductors
            .iter()
            .enumerate()
            .filter(|(_, group)| group.insulation.is_none() && !group.bare);
        for (number, _) in unsaid {
            let at = Pointer::of(&"/cable/conductors/#", number).under(&"/entries/#", *index);
            finding.supply.push(at.member(&"/insulation"));
        }
    }
    (!finding.supply.is_empty()).then_some(finding)
}
