//! Whether the entries of a wall can stand in it at all, by the smallest holes that they could have.

use super::geometry::End;
use super::holes;
use super::section::Section;
use crate::checks::pulls::entry::ResolvedEntry;
use crate::checks::pulls::{PerAxis, Wall};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer, Relation, StepId};
use crate::quantity::{Decimal, Measure};
use crate::rulebook::geometry::ENTRIES;
use std::collections::BTreeMap;

/// An entry of a wall.
struct Hole {
    diameter: Figure,
    of: holes::Hole,
    at: Pointer,
    row: Option<u32>,
    row_is_said: bool,
    is_placed: bool,
}

/// What a wall comes to.
enum Room {
    /// There is room.
    Enough(StepId),
    /// There is none, however they stand.
    Short(StepId),
    /// It depends on where they stand.
    Open(StepId),
}

/// What is found about the walls of a box: one finding for each that has no room or of which it is open, and else one for all.
pub(super) fn in_walls(
    proof: &mut Derivation,
    section: &Section<'_>,
    sides: &PerAxis<Option<Figure>>,
    entries: &[ResolvedEntry<'_>],
    (ends, holes): (&[Option<End>], &[Option<holes::Hole>]),
) -> Vec<Finding> {
    let mut findings = Vec::new();
    let (mut enough, mut missing) = (None, Vec::new());
    for wall in Wall::ALL {
        let of_wall = entries.iter().zip(ends.iter().zip(holes)).filter(|(entry, _)| entry.wall == wall);
        let mut holes: Vec<Hole> = of_wall
            .filter_map(|(entry, (end, hole))| {
                let is_placed = end.as_ref().is_some_and(|end| end.centre.is_some());
                let of = (*hole)?;
                Some(Hole {
                    diameter: of.least,
                    of,
                    at: entry.at,
                    row: entry.row,
                    row_is_said: entry.row_is_said,
                    is_placed,
                })
            })
            .collect();
        if holes.is_empty() {
            continue;
        }
        let finding = |holes: &[Hole], status, message, step| {
            let mut finding = Finding::new(&ENTRIES, status, message).with("wall", wall.name()).step(step);
            finding.at = holes.iter().map(|hole| hole.at).collect();
            finding
        };
        let [Some(one), Some(other)] = wall.plane().map(|axis| sides[axis]) else {
            let unsaid = wall.plane().into_iter().filter(|axis| sides[*axis].is_none());
            unsaid.for_each(|axis| missing.push(section.inside_at.member(axis.member())));
            continue;
        };
        let depth = sides.depth.filter(|_| wall != Wall::Back);
        let mut room = of_wall_with(proof, ([one, other], depth), &holes);
        let open: Vec<Pointer> =
            holes.iter().filter(|hole| hole.of.is_open()).map(|hole| hole.of.decided_at).collect();
        if !open.is_empty() && !matches!(room, Room::Short(_)) {
            holes.iter_mut().for_each(|hole| hole.diameter = hole.of.most);
            room = of_wall_with(proof, ([one, other], depth), &holes);
            if let Room::Short(step) = room {
                let mut by_kind = finding(&holes, Status::NotDetermined, "finding-wall-room-by-kind", step);
                by_kind.supply = open;
                findings.push(by_kind);
                continue;
            }
        }
        match room {
            Room::Enough(step) => enough = enough.or(Some(step)),
            Room::Short(step) => {
                findings.push(finding(&holes, Status::Violated, "finding-wall-without-room", step))
            }
            // where every place is known, whether entries overlap is found from those
            Room::Open(_) if holes.iter().all(|hole| hole.is_placed) => {}
            Room::Open(step) => {
                let mut open = finding(&holes, Status::NotDetermined, "finding-wall-room-open", step);
                let unplaced = holes.iter().filter(|hole| !hole.is_placed);
                open.supply = unplaced.map(|hole| hole.at.member(&"/position")).collect();
                findings.push(open);
            }
        }
    }
    missing.sort_unstable();
    missing.dedup();
    if !missing.is_empty() {
        let mut open = Finding::new(&ENTRIES, Status::NotDetermined, "finding-wall-room-unsaid");
        open.supply = missing;
        findings.push(open);
    }
    if let (true, Some(step)) = (findings.is_empty(), enough) {
        let finding = Finding::new(&ENTRIES, Status::Satisfied, "finding-walls-with-room");
        findings.push(finding.at(section.inside_at).step(step));
    }
    findings
}

/// A wall of two sides with its holes; of a side wall with the one of them that its rows stand beside one another along.
fn of_wall_with(
    proof: &mut Derivation,
    ([one, other], depth): ([Figure; 2], Option<Figure>),
    holes: &[Hole],
) -> Room {
    let (long, short) = if one.value >= other.value { (one, other) } else { (other, one) };
    let diameters: Vec<Figure> = holes.iter().map(|hole| hole.diameter).collect();
    let widest = proof.largest(&ENTRIES, &diameters).unwrap_or(long);
    let (fits, step) = proof.compare(&ENTRIES, widest, Relation::AtMost, short);
    if !fits {
        return Room::Short(step);
    }
    if holes.len() < 2 {
        return Room::Enough(step);
    }
    if let Some(depth) = depth {
        if let Some(step) = rows_without_depth(proof, holes, depth, |hole| hole.row_is_said) {
            return Room::Short(step);
        }
        // one of which no row is said may be in the row of another
        if let Some(step) = rows_without_depth(proof, holes, depth, |_| true) {
            return Room::Open(step);
        }
    }
    let line = proof.sum(&ENTRIES, &diameters);
    let (fits, in_line) = proof.compare(&ENTRIES, line, Relation::AtMost, long);
    if fits {
        return Room::Enough(in_line);
    }
    let row = holes.first().and_then(|hole| hole.row);
    let one_row = row.is_some() && holes.iter().all(|hole| hole.row == row);
    if one_row && !holes.iter().all(|hole| hole.is_placed) {
        return Room::Short(in_line);
    }
    if let Some(step) = in_rows(proof, holes, long, short) {
        return Room::Enough(step);
    }
    // a square that stands in each hole takes half of the square around it
    let half = proof.rulebook().pull.half;
    let half = proof.stated(&half);
    let area = proof.units().of(Measure::Area);
    let squares: Vec<Figure> = diameters
        .iter()
        .map(|diameter| {
            let square = proof.product_in(&ENTRIES, *diameter, *diameter, area);
            proof.product(&ENTRIES, half, square, None)
        })
        .collect();
    let needed = proof.sum(&ENTRIES, &squares);
    let face = proof.product_in(&ENTRIES, long, short, area);
    let (fits, step) = proof.compare(&ENTRIES, needed, Relation::AtMost, face);
    if fits { Room::Open(step) } else { Room::Short(step) }
}

/// The step that shows the rows that some holes of a side wall are in, each as deep as its widest hole, deeper together than the wall;
/// `None` where they are not.
fn rows_without_depth(
    proof: &mut Derivation,
    holes: &[Hole],
    depth: Figure,
    counts: impl Fn(&&Hole) -> bool,
) -> Option<StepId> {
    let mut widest: BTreeMap<Option<u32>, Figure> = BTreeMap::new();
    for hole in holes.iter().filter(counts) {
        let known = widest.entry(hole.row).or_insert(hole.diameter);
        if hole.diameter.value > known.value {
            *known = hole.diameter;
        }
    }
    let rows: Vec<Figure> = widest.into_values().collect();
    if rows.len() < 2 || rows.iter().map(|row| row.value).sum::<Decimal>() <= depth.value {
        return None;
    }
    let together = proof.sum(&ENTRIES, &rows);
    Some(proof.compare(&ENTRIES, together, Relation::AtMost, depth).1)
}

/// The step that shows all holes beside one another in rows, as declared or else filled one after another, the widest first;
/// `None` where they do not fit so.
fn in_rows(proof: &mut Derivation, holes: &[Hole], long: Figure, short: Figure) -> Option<StepId> {
    let mut ordered: Vec<&Hole> = holes.iter().collect();
    ordered.sort_by_key(|hole| std::cmp::Reverse(hole.diameter.value));
    let mut rows: Vec<(Option<u32>, Decimal, Vec<Figure>)> = Vec::new();
    for hole in ordered {
        let diameter = hole.diameter.value;
        let belongs = |row: &&mut (Option<u32>, Decimal, Vec<Figure>)| {
            row.0 == hole.row && (hole.row.is_some() || row.1 + diameter <= long.value)
        };
        match rows.iter_mut().find(belongs) {
            Some((_, length, row)) => {
                *length = *length + diameter;
                row.push(hole.diameter);
            }
            None => rows.push((hole.row, diameter, vec![hole.diameter])),
        }
    }
    if rows.iter().any(|(_, length, _)| *length > long.value) {
        return None;
    }
    let widest: Vec<Figure> = rows.iter().filter_map(|(_, _, row)| row.first().copied()).collect();
    if widest.iter().map(|figure| figure.value).sum::<Decimal>() > short.value {
        return None;
    }
    for (_, _, row) in &rows {
        let length = proof.sum(&ENTRIES, row);
        proof.compare(&ENTRIES, length, Relation::AtMost, long);
    }
    let height = proof.sum(&ENTRIES, &widest);
    Some(proof.compare(&ENTRIES, height, Relation::AtMost, short).1)
}
