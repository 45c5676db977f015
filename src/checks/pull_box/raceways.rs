//! Whether raceways are wide enough for what is said to be in them, however it lies there.

use super::request::{Entry, PullBoxRequest, RacewayEntry};
use super::section::Section;
use crate::checks::raceway_fill::permitted;
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer, Relation};
use crate::quantity::Measure;
use crate::rulebook::geometry::RACEWAYS;
use crate::tables::raceway_dimensions::{self, Dimension};
use crate::tables::{Cell, bare_conductor_dimensions};
use crate::trade::RacewayKind;

/// The raceways of trade sizes that the edition does not permit.
pub(super) fn not_permitted(
    proof: &mut Derivation,
    request: &PullBoxRequest,
    section: &Section<'_>,
) -> Vec<Finding> {
    let raceways = section.entries.iter().filter_map(|index| {
        let raceway = request.entries.get(*index)?.raceway.as_ref()?;
        Some((raceway.kind, raceway.trade_size, Pointer::of(&"/entries/#", *index)))
    });
    let refused = raceways.filter_map(|(kind, size, at)| {
        let size_at = at.member(&"/raceway/trade_size");
        if let Some(kind) = kind {
            return permitted::refuse(proof, kind, size, size_at);
        }
        let rule = permitted::depends_on_kind(proof, size)?;
        let open = Finding::new(rule, Status::NotDetermined, "finding-trade-size-by-kind").at(size_at);
        Some(open.with("size", size.name()).supply(at.member(&"/raceway/kind")))
    });
    refused.collect()
}

/// The raceways that are narrower than a cable, or than the bare metal of an insulated conductor, that is said to be in them.
pub(super) fn too_narrow(
    proof: &mut Derivation,
    request: &PullBoxRequest,
    section: &Section<'_>,
) -> Vec<Finding> {
    let mut findings = Vec::new();
    for index in &section.entries {
        let Some(entry) = request.entries.get(*index) else { continue };
        let Some(raceway) = &entry.raceway else { continue };
        let at = Pointer::of(&"/entries/#", *index);
        let Some((least, most)) = inside(proof, raceway) else { continue };
        let Some((widest, told_at)) = widest(proof, request, section, entry, *index) else { continue };
        if widest.value() <= least.value {
            continue;
        }
        let (is_open, inside) = if widest.value() > most.value { (false, most) } else { (true, least) };
        let widest = widest.figure(proof, told_at);
        let inside = proof.lookup(&RACEWAYS, inside, None);
        let (_, step) = proof.compare(&RACEWAYS, widest, Relation::AtMost, inside);
        let (status, message) = match is_open {
            true => (Status::NotDetermined, "finding-raceway-kind-open"),
            false => (Status::Violated, "finding-raceway-too-narrow"),
        };
        let mut finding = Finding::new(&RACEWAYS, status, message)
            .with("entry", entry.id.as_str())
            .with("widest", widest)
            .with("inside", inside);
        if is_open {
            finding = finding.supply(at.member(&"/raceway/kind"));
        }
        findings.push(finding.at(at.member(&"/raceway")).at(told_at).step(step));
    }
    findings
}

/// What is in a raceway, by how wide it is.
#[derive(Clone, Copy)]
enum Wide {
    /// A cable, as it was said.
    Cable(crate::quantity::Length),
    /// The bare metal of a conductor, by the table.
    Metal(Cell),
}

impl Wide {
    const fn value(self) -> crate::quantity::Decimal {
        match self {
            Self::Cable(diameter) => diameter.value(),
            Self::Metal(cell) => cell.value,
        }
    }

    fn figure(self, proof: &mut Derivation, at: Pointer) -> Figure {
        match self {
            Self::Cable(diameter) => proof.given(&RACEWAYS, diameter.value(), Measure::Length, at),
            Self::Metal(cell) => proof.lookup(&RACEWAYS, cell, None),
        }
    }
}

/// The widest thing that is said to be in an entry, and where it is said.
fn widest(
    proof: &Derivation,
    request: &PullBoxRequest,
    section: &Section<'_>,
    entry: &Entry,
    index: usize,
) -> Option<(Wide, Pointer)> {
    let cables = entry.cables_over_1000_volts.iter().enumerate().map(|(number, cable)| {
        let at = Pointer::of(&"/cables_over_1000_volts/#", number).under(&"/entries/#", index);
        (Wide::Cable(cable.outside_diameter), at.member(&"/outside_diameter"))
    });
    let pulls = section.pulls.iter().filter_map(|pull| {
        // of a pull that splits or is spliced, another entry may have the largest conductor
        let told = request.pulls.get(pull.index)?;
        let is_whole = told.entries.first() == Some(&entry.id) || told.entries.len() == 2;
        let is_here = told.entries.contains(&entry.id) && is_whole && !told.spliced;
        let size = told.largest_conductor.filter(|_| is_here && told.insulated == Some(true))?;
        let metal = bare_conductor_dimensions::of(size, true, proof.units())?.diameter?;
        Some((Wide::Metal(metal), Pointer::of(&"/pulls/#", pull.index).member(&"/largest_conductor")))
    });
    cables.chain(pulls).max_by_key(|(wide, _)| wide.value())
}

/// The inside diameter of a raceway: of one whose kind is not said, the least and the greatest of its trade size.
fn inside(proof: &Derivation, raceway: &RacewayEntry) -> Option<(Cell, Cell)> {
    let of_kind = |kind| raceway_dimensions::of(kind, raceway.trade_size, Dimension::Diameter, proof.units());
    match raceway.kind {
        Some(kind) => of_kind(kind).map(|cell| (cell, cell)),
        None => {
            let cells = || RacewayKind::ALL.iter().filter_map(|kind| of_kind(*kind));
            Some((cells().min_by_key(|cell| cell.value)?, cells().max_by_key(|cell| cell.value)?))
        }
    }
}
