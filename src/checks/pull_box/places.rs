//! What positions say beside one another and beside the rows that are declared: faults of a request that decoded.

use super::request::{Entry, PullBoxRequest};
use crate::checks::pulls::rows::{directions, extent, overlapping};
use crate::checks::pulls::{Axis, Wall};
use crate::checks::{FaultCode, Faults};
use crate::derivation::Pointer;
use crate::quantity::{Decimal, Units};
use crate::trade::TradeSize;

/// Adds the faults of the positions of a request.
pub(super) fn find(request: &PullBoxRequest, faults: &mut Faults) {
    some_without_position(request, faults);
    for section in sections(request) {
        for wall in Wall::ALL {
            let entries = request.entries.iter().enumerate();
            let of_wall = entries.filter(|(_, entry)| entry.wall == wall && section_of(entry) == section);
            let declared: Vec<Declared> =
                of_wall.filter_map(|(index, entry)| Declared::of(entry, index, request.units)).collect();
            if let Some(index) = denied(wall, &declared) {
                let at = Pointer::of(&"/entries/#", index);
                faults.contradiction(at.member(&"/row"), at.member(&"/position"), "fault-row-and-positions");
            }
        }
    }
}

fn section_of(entry: &Entry) -> Option<&str> {
    entry.section.as_ref().map(|name| name.as_str())
}

/// The sections that entries name, each once.
fn sections(request: &PullBoxRequest) -> Vec<Option<&str>> {
    let mut sections: Vec<Option<&str>> = request.entries.iter().map(section_of).collect();
    sections.sort_unstable();
    sections.dedup();
    sections
}

/// Whether a place is right is only known beside the others: a box whose places are told in part is told as it may not be.
fn some_without_position(request: &PullBoxRequest, faults: &mut Faults) {
    for (index, entry) in request.entries.iter().enumerate() {
        let is_placed = |other: &Entry| other.position.is_some() && section_of(other) == section_of(entry);
        if entry.position.is_none() && request.entries.iter().any(is_placed) {
            let at = Pointer::of(&"/entries/#", index).member(&"/position");
            faults.add(at, FaultCode::MissingMember, "fault-some-positions");
        }
    }
}

/// An entry whose row is declared, as far as it is known where it stands.
struct Declared<'a> {
    index: usize,
    row: u32,
    entry: &'a Entry,
    diameter: Decimal,
}

impl<'a> Declared<'a> {
    fn of(entry: &'a Entry, index: usize, units: Units) -> Option<Self> {
        let outside = match (&entry.raceway, &entry.cable) {
            (Some(raceway), _) => raceway.outside_diameter,
            (None, Some(cable)) => cable.outside_diameter,
            (None, None) => entry.cables_over_1000_volts.iter().map(|cable| cable.outside_diameter).max(),
        };
        // a cable counts as no raceway that is smaller than the smallest
        let size =
            entry.raceway.as_ref().map(|raceway| raceway.trade_size).or_else(|| TradeSize::all().next());
        let diameter = outside.map(|outside| outside.value()).or(size.map(|size| size.figure(units)))?;
        Some(Self { index, row: entry.row?.get(), entry, diameter })
    }

    fn centre(&self, axis: Axis) -> Option<Decimal> {
        Some(self.entry.position?.along(axis).0?.value())
    }
}

/// The index of an entry whose row its position denies. Rows of a wall are its lines in some direction: rims that overlap across it
/// are in one row, and those that do not are in several.
fn denied(wall: Wall, declared: &[Declared<'_>]) -> Option<usize> {
    let mut first = None;
    for axis in directions(wall) {
        let extents = declared.iter().enumerate();
        let extents =
            extents.filter_map(|(place, one)| Some(extent(one.centre(*axis)?, one.diameter, place)));
        let lines = overlapping(extents.collect());
        let row = |place: &usize| declared.get(*place).map(|one| one.row);
        let mixed = lines.iter().find_map(|line| {
            let other = line.iter().find(|place| row(place) != line.first().and_then(row));
            other.copied()
        });
        let split = lines.iter().enumerate().find_map(|(place, line)| {
            let is_earlier =
                |one: &usize| lines.iter().take(place).flatten().any(|other| row(other) == row(one));
            line.iter().find(|one| is_earlier(one)).copied()
        });
        let off = mixed.or(split)?;
        first = first.or(declared.get(off).map(|one| one.index));
    }
    first
}
