//! Lower bounds of width, height and depth: simple sums below which no layout can be, each a step of the proof.

use super::clearances::Clearances;
use crate::checks::pull_box::outcome::SectionSize;
use crate::checks::pulls::distances::MinDistance;
use crate::checks::pulls::entry::ResolvedEntry;
use crate::checks::pulls::{PerAxis, Wall};
use crate::derivation::{Derivation, Figure};
use crate::rulebook::pull::PLACEMENT;
use std::collections::BTreeMap;

/// The lower bound of each direction.
pub(super) struct Bounds {
    pub least: PerAxis<Option<Figure>>,
    /// Whether every one of them is a length that no box can be below.
    pub strict: bool,
}

/// What the rules require, what each row takes from end to end, what all rows of a wall take beside one another, and what
/// two entries of one row take that must be apart.
pub(super) fn of(
    proof: &mut Derivation,
    (entries, holes): (&[ResolvedEntry<'_>], &[Figure]),
    required: &[MinDistance],
    size: &SectionSize,
    clearances: &Clearances,
    centres: bool,
) -> Bounds {
    let mut needed: PerAxis<Vec<Figure>> = PerAxis::new(|axis| size.side(axis).minimum.into_iter().collect());
    for wall in Wall::ALL {
        let [along, across] = wall.plane();
        let mut rows: BTreeMap<u32, Vec<Figure>> = BTreeMap::new();
        for (entry, hole) in entries.iter().zip(holes).filter(|(entry, _)| entry.wall == wall) {
            match entry.row {
                Some(row) => rows.entry(row).or_default().push(*hole),
                None => {
                    let length = end_to_end(proof, &[*hole], clearances);
                    needed[along].push(length);
                    needed[across].push(length);
                }
            }
        }
        let mut widest = Vec::with_capacity(rows.len());
        for row in rows.values() {
            needed[along].push(end_to_end(proof, row, clearances));
            widest.extend(proof.largest(&PLACEMENT, row));
        }
        if !widest.is_empty() {
            needed[across].push(end_to_end(proof, &widest, clearances));
        }
    }
    let mut strict = true;
    for distance in required {
        let [Some(one), Some(other)] = distance.ends.map(|end| entries.get(end)) else { continue };
        if one.wall.opposite() == Some(other.wall) {
            // the sums keep opposite entries apart already, unless they were amended
            let across = &mut needed[one.wall.across()];
            strict &= across.iter().any(|length| length.value >= distance.required.value);
            across.push(distance.required);
            continue;
        }
        if one.wall != other.wall || one.row.is_none() || one.row != other.row {
            continue;
        }
        let [Some(first), Some(second)] = distance.ends.map(|end| holes.get(end)) else { continue };
        let mut halved = vec![*first, *second];
        if !centres {
            halved.extend([one, other].iter().filter_map(|entry| entry.diameter));
        }
        let edges = proof.sum(&PLACEMENT, &halved);
        let half = proof.rulebook().pull.half;
        let half = proof.stated(&half);
        let edges = proof.product(&PLACEMENT, half, edges, None);
        let mut parts = vec![distance.required, edges];
        parts.extend(clearances.at_both_ends());
        let [along, _] = one.wall.plane();
        needed[along].push(proof.sum(&PLACEMENT, &parts));
    }
    Bounds { least: PerAxis::new(|axis| proof.largest(&PLACEMENT, &needed[axis])), strict }
}

/// The diameters of entries in line, with the clearance between them and at both ends.
fn end_to_end(proof: &mut Derivation, diameters: &[Figure], clearances: &Clearances) -> Figure {
    let mut parts = diameters.to_vec();
    if let (Some(between), more @ 1..) = (clearances.between, diameters.len().saturating_sub(1)) {
        parts.extend(std::iter::repeat_n(between, more));
    }
    parts.extend(clearances.at_both_ends());
    proof.sum(&PLACEMENT, &parts)
}
