//! What goes into the raceway: each conductor and cable with the cross-section that counts for it.
//!
//! Inputs of one kind and size become one line, so neither their order nor their grouping changes a figure.

use super::outcome::{RacewayItem, RacewayTallyLine};
use super::request::{BareConstruction, RacewayFillRequest, Wires};
use super::sizing::{Load, Occupant, Sizer, area_of};
use crate::derivation::{Derivation, Figure, Pointer};
use crate::quantity::{Decimal, Measure};
use crate::rulebook::Rule;
use crate::rulebook::raceway_fill::{ACTUAL, BARE, CABLES, CONDUCTORS};
use crate::tables::Cell;
use crate::tables::conductor_dimensions::{self, Dimensions};
use crate::tables::{bare_conductor_dimensions, compact_conductor_dimensions};
use crate::trade::ConductorSize;
use smol_str::{SmolStr, format_smolstr};

/// Where the dimensions of a thing come from.
#[derive(Clone, Copy)]
enum Dimensioned {
    /// A row of a table.
    Row(Dimensions),
    /// A diameter that the request gives.
    Measured(Decimal, Pointer),
}

/// One input.
struct Entry {
    what: RacewayItem,
    rule: &'static Rule,
    dimensioned: Dimensioned,
    /// The type as the caller names it: types that share a row of a table are not the same.
    letters: &'static str,
    size: Option<ConductorSize>,
    count: Option<Wires>,
    at: Pointer,
}

impl Entry {
    /// What makes two inputs one line, and the order of the lines.
    fn key(&self) -> (RacewayItem, &'static str, Decimal, &'static str, &'static str) {
        let (what, table, value, row) = self.place();
        (what, table, value, row, self.letters)
    }

    fn place(&self) -> (RacewayItem, &'static str, Decimal, &'static str) {
        match self.dimensioned {
            Dimensioned::Row(dimensions) => {
                let cell = dimensions.diameter.or(dimensions.area);
                let of = |cell: Cell| (self.what, *cell.table, cell.value, *cell.row);
                cell.map_or((self.what, "", Decimal::ZERO, ""), of)
            }
            Dimensioned::Measured(diameter, _) => (self.what, "", diameter, ""),
        }
    }
}

/// Everything that goes in.
pub(super) struct Contents {
    pub lines: Vec<RacewayTallyLine>,
    pub load: Load,
    dimensioned: Vec<Dimensioned>,
}

impl Contents {
    /// Counts what a request without faults puts in; `None` for nothing.
    pub fn count(proof: &mut Derivation, sizer: &mut Sizer, request: &RacewayFillRequest) -> Option<Self> {
        let mut entries = entries(proof, request);
        entries.sort_by_key(Entry::key);
        let (mut lines, mut dimensioned) = (Vec::new(), Vec::new());
        for group in entries.chunk_by(|one, next| one.key() == next.key()) {
            let first = group.first()?;
            lines.push(line(proof, sizer, first, group)?);
            dimensioned.push(first.dimensioned);
        }
        let occupants: Vec<Occupant> =
            lines.iter().map(|line| Occupant { count: line.count, each: line.each }).collect();
        let areas: Vec<Figure> = lines.iter().map(|line| line.area).collect();
        let load = Load::of_areas(proof, &occupants, &areas)?;
        Some(Self { lines, load, dimensioned })
    }

    /// The outside diameter, where it is the same for all.
    pub fn common_diameter(&self, proof: &mut Derivation, rule: &'static Rule) -> Option<Figure> {
        let value = |dimensioned: &Dimensioned| match dimensioned {
            Dimensioned::Row(dimensions) => dimensions.diameter.map(|cell| cell.value),
            Dimensioned::Measured(diameter, _) => Some(*diameter),
        };
        let first = self.dimensioned.first()?;
        let same = self.dimensioned.iter().all(|other| value(other) == value(first));
        match (same, first) {
            (true, Dimensioned::Row(dimensions)) => {
                dimensions.diameter.map(|cell| proof.lookup(rule, cell, None))
            }
            (true, Dimensioned::Measured(diameter, at)) => {
                Some(proof.given(rule, *diameter, Measure::Length, *at))
            }
            (false, _) => None,
        }
    }
}

impl Contents {
    /// How wide the things of each line are, where their diameter is known and it is that of a circle, the widest first.
    fn round(&self) -> Vec<(Decimal, Dimensioned, Decimal)> {
        let width = |dimensioned: &Dimensioned| match dimensioned {
            Dimensioned::Row(dimensions) => dimensions.diameter.map(|cell| cell.value),
            Dimensioned::Measured(diameter, at) => {
                (!at.to_string().ends_with("/major_diameter")).then_some(*diameter)
            }
        };
        let lines = self.lines.iter().zip(&self.dimensioned);
        let mut round: Vec<_> =
            lines.filter_map(|(line, one)| Some((width(one)?, *one, line.count.value))).collect();
        round.sort_by_key(|(width, _, _)| std::cmp::Reverse(*width));
        round
    }

    /// The two widest, which may be of one line.
    fn two_widest(&self) -> Option<[(Decimal, Dimensioned); 2]> {
        let round = self.round();
        let (width, one, count) = *round.first()?;
        let (other_width, other, _) = if count > Decimal::ONE { round[0] } else { *round.get(1)? };
        Some([(width, one), (other_width, other)])
    }

    /// The diameters of the two widest together.
    pub fn widest_pair(&self) -> Option<Decimal> {
        self.two_widest().map(|[(one, _), (other, _)]| one + other)
    }

    /// The diameters of two of what is alike together.
    pub fn two_alike(&self) -> Option<Decimal> {
        self.round().last().map(|(width, _, _)| *width + *width)
    }

    /// The same as a figure of the proof.
    pub fn pair(&self, proof: &mut Derivation, rule: &'static Rule) -> Option<Figure> {
        let figures = self.two_widest()?.map(|(_, dimensioned)| match dimensioned {
            Dimensioned::Row(dimensions) => dimensions.diameter.map(|cell| proof.lookup(rule, cell, None)),
            Dimensioned::Measured(diameter, at) => Some(proof.given(rule, diameter, Measure::Length, at)),
        });
        let [Some(one), Some(other)] = figures else { return None };
        Some(proof.sum(rule, &[one, other]))
    }
}

fn entries(proof: &mut Derivation, request: &RacewayFillRequest) -> Vec<Entry> {
    let units = proof.units();
    let mut entries = Vec::new();
    for (index, conductor) in request.conductors.iter().enumerate() {
        let at = Pointer::of(&"/conductors/#", index);
        let row = if conductor.compact {
            compact_conductor_dimensions::of(conductor.insulation, conductor.size, units)
        } else {
            conductor_dimensions::of(conductor.insulation, conductor.covering, conductor.size, units)
        };
        let (what, rule) = (RacewayItem::Conductors, &CONDUCTORS);
        entries.extend(row.map(|row| {
            let dimensioned = Dimensioned::Row(Dimensions { area: area_of(proof, row), ..row });
            let (letters, size) = (conductor.insulation.letters(), Some(conductor.size));
            Entry { what, rule, dimensioned, letters, size, count: conductor.count, at }
        }));
    }
    for (index, bare) in request.bare_conductors.iter().enumerate() {
        let at = Pointer::of(&"/bare_conductors/#", index);
        let row = match bare.construction {
            BareConstruction::Solid => bare_conductor_dimensions::of(bare.size, false, units),
            BareConstruction::Stranded => bare_conductor_dimensions::of(bare.size, true, units),
            BareConstruction::Compact => compact_conductor_dimensions::bare(bare.size, units),
        };
        let (what, rule) = (RacewayItem::BareConductors, &BARE);
        entries.extend(row.map(|row| {
            let dimensioned = Dimensioned::Row(row);
            Entry { what, rule, dimensioned, letters: "", size: None, count: bare.count, at }
        }));
    }
    for (index, cable) in request.cables.iter().enumerate() {
        let at = Pointer::of(&"/cables/#", index);
        let round = cable.diameter.map(|diameter| (diameter, &"/diameter"));
        let given = round.or(cable.major_diameter.map(|diameter| (diameter, &"/major_diameter")));
        let (what, rule) = (RacewayItem::Cables, &CABLES);
        entries.extend(given.map(|(diameter, member)| {
            let dimensioned = Dimensioned::Measured(diameter.value(), at.member(member));
            Entry { what, rule, dimensioned, letters: "", size: None, count: cable.count, at }
        }));
    }
    for (index, measured) in request.measured_conductors.iter().enumerate() {
        let at = Pointer::of(&"/measured_conductors/#", index);
        let dimensioned = Dimensioned::Measured(measured.diameter.value(), at.member(&"/diameter"));
        let (what, rule) = (RacewayItem::MeasuredConductors, &ACTUAL);
        entries.push(Entry { what, rule, dimensioned, letters: "", size: None, count: measured.count, at });
    }
    entries
}

/// One line of like inputs; `None` where the table has neither an area nor a diameter for them.
fn line(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    first: &Entry,
    group: &[Entry],
) -> Option<RacewayTallyLine> {
    let rule = first.rule;
    let (each, place, diameter) = match first.dimensioned {
        Dimensioned::Row(Dimensions { area: Some(area), .. }) => {
            (proof.lookup(rule, area, Some(first.at)), Some((area.table, area.row)), None)
        }
        Dimensioned::Row(Dimensions { diameter, .. }) => {
            let cell = diameter?;
            let diameter = proof.lookup(rule, cell, Some(first.at));
            (sizer.circle(proof, rule, diameter), Some((cell.table, cell.row)), None)
        }
        Dimensioned::Measured(diameter, at) => {
            let diameter = proof.given(rule, diameter, Measure::Length, at);
            (sizer.circle(proof, rule, diameter), None, Some(diameter))
        }
    };
    let counts: Vec<Figure> =
        group.iter().map(|entry| proof.count(rule, entry.count.map(Wires::get), entry.at)).collect();
    let count = proof.sum(rule, &counts);
    let area = proof.product(rule, count, each, None);
    Some(RacewayTallyLine {
        what: first.what,
        table: place.map(|(table, _)| *table),
        row: place.map(|(_, row)| *row),
        name: name(first, place.map(|(_, row)| *row)),
        diameter,
        count,
        each,
        area,
        rule: rule.id,
        at: group.iter().map(|entry| entry.at).collect(),
    })
}

/// What the caller calls a thing of a table: its own type and size, or the row of one that has no type.
fn name(entry: &Entry, row: Option<&'static str>) -> Option<SmolStr> {
    match (entry.size, row) {
        (Some(size), _) => Some(format_smolstr!("{} {size}", entry.letters)),
        (None, row) => row.map(SmolStr::new_static),
    }
}
