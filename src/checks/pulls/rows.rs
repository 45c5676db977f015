//! Which entries are in one row of a wall.

use super::resolved::Resolved;
use super::wall::{Axis, Wall};
use crate::derivation::Derivation;
use crate::quantity::{Decimal, Length};
use crate::rulebook::pull::RowsOfWall;
use crate::rulebook::reading::BackWallRow;
use crate::rulebook::{Choice, Strategy};
use std::collections::BTreeMap;

/// One row of a wall.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// The declared number.
    pub number: Option<u32>,
    /// The positions of its entries.
    pub entries: Vec<usize>,
}

/// The rows of a wall.
pub fn of_wall(proof: &mut Derivation, resolved: &Resolved<'_>, wall: Wall) -> Vec<Row> {
    (proof.rulebook().pull.rows_of_wall.apply)(proof, resolved, resolved.on(wall))
}

impl Choice for RowsOfWall {
    /// The rows that the entries at some positions, all of one wall, stand in.
    type Apply = for<'a> fn(&mut Derivation, &Resolved<'a>, Vec<usize>) -> Vec<Row>;
    const LAWFUL: Strategy<Self> = Strategy::<Self>::new("as-declared", as_declared);
}

/// As declared, and on the back by position where none is declared.
fn as_declared(proof: &mut Derivation, resolved: &Resolved<'_>, of_wall: Vec<usize>) -> Vec<Row> {
    let mut declared: BTreeMap<u32, Vec<usize>> = BTreeMap::new();
    let mut undeclared: Vec<usize> = Vec::new();
    for position in of_wall {
        match resolved.entries.get(position).and_then(|entry| entry.row) {
            Some(number) => declared.entry(number).or_default().push(position),
            None => undeclared.push(position),
        }
    }
    let mut rows: Vec<Row> =
        declared.into_iter().map(|(number, entries)| Row { number: Some(number), entries }).collect();
    rows.extend(by_position(proof, resolved, undeclared));
    rows
}

/// The lines that the entries of a wall stand in by their positions, where several rows are declared and every position is
/// given: entries whose rims overlap along the direction across the line are in one. Side walls have their lines across the
/// depth, the back has them both ways.
pub fn on_a_line(resolved: &Resolved<'_>, wall: Wall) -> Vec<Vec<usize>> {
    let of_wall = resolved.on(wall);
    let row = |position: &usize| resolved.entries.get(*position).and_then(|entry| entry.row);
    let mut declared: Vec<u32> = of_wall.iter().filter_map(row).collect();
    declared.sort_unstable();
    declared.dedup();
    if declared.len() < 2 {
        return Vec::new();
    }
    let across: &[Axis] = if wall == Wall::Back { &[Axis::Width, Axis::Height] } else { &[Axis::Depth] };
    across.iter().filter_map(|axis| lines(resolved, &of_wall, *axis)).flatten().collect()
}

/// Entries grouped by whether their rims overlap along a direction; `None` where a position or a diameter is unknown.
fn lines(resolved: &Resolved<'_>, entries: &[usize], across: Axis) -> Option<Vec<Vec<usize>>> {
    let extent = |position: &usize| {
        let entry = resolved.entries.get(*position)?;
        let (centre, _) = entry.position?.along(across);
        let (centre, diameter) = (centre?.value(), entry.diameter?.value);
        // doubled, so that half a diameter needs no rounding
        Some((centre + centre - diameter, centre + centre + diameter, *position))
    };
    let mut extents: Vec<(Decimal, Decimal, usize)> = entries.iter().map(extent).collect::<Option<_>>()?;
    extents.sort_unstable();
    let mut lines: Vec<(Decimal, Vec<usize>)> = Vec::new();
    for (from, to, position) in extents {
        match lines.last_mut() {
            Some((end, line)) if from < *end => {
                *end = to.max(*end);
                line.push(position);
            }
            _ => lines.push((to, vec![position])),
        }
    }
    Some(lines.into_iter().map(|(_, line)| line).collect())
}

/// All in one row, if there are any.
pub fn undivided(entries: Vec<usize>) -> Vec<Row> {
    if entries.is_empty() { Vec::new() } else { vec![Row { number: None, entries }] }
}

/// The rows of entries on the back for which none is declared.
fn by_position(proof: &mut Derivation, resolved: &Resolved<'_>, entries: Vec<usize>) -> Vec<Row> {
    let centre = |position: &usize| {
        let centre = resolved.entries.get(*position)?.position?;
        Some((centre.from_left?, centre.from_bottom?))
    };
    let centres: Option<Vec<(Length, Length)>> = entries.iter().map(centre).collect();
    let Some(centres) = centres.filter(|centres| centres.len() > 1) else { return undivided(entries) };
    let aligned = |along: fn(&(Length, Length)) -> Length| {
        let mut lines: BTreeMap<Length, Vec<usize>> = BTreeMap::new();
        for (position, centre) in entries.iter().zip(&centres) {
            lines.entry(along(centre)).or_default().push(*position);
        }
        lines.into_values().map(|entries| Row { number: None, entries }).collect::<Vec<Row>>()
    };
    let horizontal = aligned(|(_, from_bottom)| *from_bottom);
    let vertical = aligned(|(from_left, _)| *from_left);
    match proof.reading::<BackWallRow>() {
        BackWallRow::EitherWay => horizontal.into_iter().chain(vertical).collect(),
        BackWallRow::Horizontal => horizontal,
        BackWallRow::Vertical => vertical,
        BackWallRow::OneRow => undivided(entries),
    }
}
