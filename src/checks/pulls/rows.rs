//! Which entries are in one row of a wall.

use super::resolved::Resolved;
use super::wall::{Axis, Wall};
use crate::derivation::Derivation;
use crate::quantity::Decimal;
use crate::rulebook::pull::RowsOfWall;
use crate::rulebook::reading::BackWallRow;
use crate::rulebook::{Choice, Strategy};
use std::collections::BTreeMap;

/// One row of a wall.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Row {
    /// The declared number.
    pub number: Option<u32>,
    /// The positions of its entries.
    pub entries: Vec<usize>,
    /// The lines that its entries stand in by their positions, where no direction shows them in one: the rows that it may be.
    pub lines: Vec<Vec<Vec<usize>>>,
    /// What the row may be with other entries in it, which stand on a line with its own or of which no row is said.
    pub wider: Vec<Vec<usize>>,
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
    let Some(wall) = of_wall.first().and_then(|first| resolved.entries.get(*first)).map(|entry| entry.wall)
    else {
        return Vec::new();
    };
    let mut declared: BTreeMap<u32, Vec<usize>> = BTreeMap::new();
    let mut undeclared: Vec<usize> = Vec::new();
    for position in &of_wall {
        match resolved.entries.get(*position).and_then(|entry| entry.row) {
            Some(number) => declared.entry(number).or_default().push(*position),
            None => undeclared.push(*position),
        }
    }
    let mut rows: Vec<Row> = declared
        .into_iter()
        .map(|(number, entries)| {
            let by_direction = directions(wall).iter().map(|axis| lines(resolved, &entries, *axis));
            let lines: Option<Vec<_>> = by_direction.collect();
            let lines = lines.filter(|lines| lines.iter().all(|lines| lines.len() > 1)).unwrap_or_default();
            Row { number: Some(number), entries, lines, wider: Vec::new() }
        })
        .collect();
    rows.extend(by_position(proof, resolved, undeclared));
    widen(resolved, wall, &of_wall, &mut rows);
    rows
}

/// The directions across which the entries of a wall may be lined up: the rows of a side wall run along it, each at one depth; those
/// of the back run either way.
pub(crate) const fn directions(wall: Wall) -> &'static [Axis] {
    if matches!(wall, Wall::Back) { &[Axis::Height, Axis::Width] } else { &[Axis::Depth] }
}

/// Finds what rows may be with other entries in them. An entry of which no row is said may be in any of those that are declared;
/// where every position of the wall is given, in those that it stands on a line with. Rows that are declared go with the positions:
/// a request in which they do not is refused.
fn widen(resolved: &Resolved<'_>, wall: Wall, of_wall: &[usize], rows: &mut [Row]) {
    let is_said = |position: &usize| resolved.entries.get(*position).is_some_and(|entry| entry.row_is_said);
    let (unsaid, said): (Vec<usize>, Vec<usize>) = of_wall.iter().partition(|position| !is_said(position));
    if rows.len() < 2 || unsaid.is_empty() || said.is_empty() {
        return;
    }
    let number = |position: &usize| resolved.entries.get(*position).and_then(|entry| entry.row);
    let is_mixed = |line: &&Vec<usize>| {
        let is_apart = |other: &usize| number(other) != line.first().and_then(number);
        line.iter().any(is_apart) && line.iter().any(|position| !is_said(position))
    };
    let by_direction = directions(wall).iter().map(|axis| lines(resolved, of_wall, *axis));
    if let Some(lines) = by_direction.collect::<Option<Vec<_>>>() {
        let mixed: Vec<&Vec<usize>> = lines.iter().flatten().filter(is_mixed).collect();
        for row in rows {
            let meets = |line: &&&Vec<usize>| line.iter().any(|position| row.entries.contains(position));
            row.wider = mixed.iter().filter(meets).map(|line| (*line).clone()).collect();
        }
        return;
    }
    let together = |row: &Row, others: &[usize]| {
        let mut all: Vec<usize> = row.entries.iter().chain(others).copied().collect();
        all.sort_unstable();
        all.dedup();
        all
    };
    let declared: Vec<Vec<usize>> = rows
        .iter()
        .map(|row| row.entries.iter().copied().filter(|position| said.contains(position)).collect())
        .collect();
    for row in rows {
        row.wider = if row.entries.iter().all(|position| said.contains(position)) {
            vec![together(row, &unsaid)]
        } else {
            declared.iter().map(|others| together(row, others)).collect()
        };
    }
}

/// Entries grouped by whether their rims overlap along a direction; `None` where a position or a diameter is unknown.
fn lines(resolved: &Resolved<'_>, entries: &[usize], across: Axis) -> Option<Vec<Vec<usize>>> {
    let extent = |position: &usize| {
        let entry = resolved.entries.get(*position)?;
        let (centre, _) = entry.position?.along(across);
        Some(extent(centre?.value(), entry.diameter?.value, *position))
    };
    Some(overlapping(entries.iter().map(extent).collect::<Option<_>>()?))
}

/// From where to where something reaches along a direction. Both ends are doubled, so that half a diameter needs no rounding.
pub(crate) type Extent = (Decimal, Decimal, usize);

/// The extent of something round, by its centre.
pub(crate) fn extent(centre: Decimal, diameter: Decimal, of: usize) -> Extent {
    (centre + centre - diameter, centre + centre + diameter, of)
}

/// Things grouped by whether their extents overlap.
pub(crate) fn overlapping(mut extents: Vec<Extent>) -> Vec<Vec<usize>> {
    extents.sort_unstable();
    let mut lines: Vec<(Decimal, Vec<usize>)> = Vec::new();
    for (from, to, of) in extents {
        match lines.last_mut() {
            Some((end, line)) if from < *end => {
                *end = to.max(*end);
                line.push(of);
            }
            _ => lines.push((to, vec![of])),
        }
    }
    lines.into_iter().map(|(_, line)| line).collect()
}

/// All in one row, if there are any.
pub fn undivided(entries: Vec<usize>) -> Vec<Row> {
    if entries.is_empty() { Vec::new() } else { vec![Row { entries, ..Row::default() }] }
}

/// The rows of entries on the back for which none is declared.
fn by_position(proof: &mut Derivation, resolved: &Resolved<'_>, entries: Vec<usize>) -> Vec<Row> {
    if entries.len() < 2 {
        return undivided(entries);
    }
    let lined = |across| {
        let lines = lines(resolved, &entries, across)?.into_iter();
        Some(lines.map(|entries| Row { entries, ..Row::default() }).collect::<Vec<Row>>())
    };
    let (Some(level), Some(upright)) = (lined(Axis::Height), lined(Axis::Width)) else {
        return undivided(entries);
    };
    match proof.reading::<BackWallRow>() {
        BackWallRow::EitherWay => level.into_iter().chain(upright).collect(),
        BackWallRow::Horizontal => level,
        BackWallRow::Vertical => upright,
        BackWallRow::OneRow => undivided(entries),
    }
}
