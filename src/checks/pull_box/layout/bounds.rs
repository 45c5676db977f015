//! Below which width, height and depth no places can be: simple sums, each a step of the proof.

use super::Asked;
use crate::checks::pull_box::outcome::SectionSize;
use crate::checks::pulls::Axis;
use crate::checks::pulls::Wall;
use crate::checks::pulls::distances::Apart;
use crate::checks::pulls::entry::Entered;
use crate::derivation::{Derivation, Figure};
use crate::rulebook::pull::PLACEMENT;
use std::collections::BTreeMap;

/// The least length of each direction.
pub(super) struct Bounds {
    along: [Option<Figure>; 3],
    /// Whether every one of them is a length that no box can be below.
    pub strict: bool,
}

impl Bounds {
    pub fn of(&self, axis: Axis) -> Option<Figure> {
        self.along[axis as usize]
    }
}

/// What the rules ask, what each row takes from end to end, what all rows of a wall take beside one another, and what
/// two entries of one row take that must stand apart.
pub(super) fn of(
    proof: &mut Derivation,
    entered: &[Entered<'_>],
    apart: &[Apart],
    size: &SectionSize,
    asked: &Asked,
    centres: bool,
) -> Bounds {
    let mut needed: [Vec<Figure>; 3] = [Vec::new(), Vec::new(), Vec::new()];
    for (axis, minimum) in [
        (Axis::Width, size.width.minimum),
        (Axis::Height, size.height.minimum),
        (Axis::Depth, size.depth.minimum),
    ] {
        needed[axis as usize].extend(minimum);
    }
    for wall in Wall::ALL {
        let [along, across] = wall.plane();
        let mut rows: BTreeMap<u32, Vec<Figure>> = BTreeMap::new();
        for entry in entered.iter().filter(|entry| entry.wall() == wall) {
            match (entry.declared_row(), entry.diameter) {
                (Some(row), Some(diameter)) => rows.entry(row).or_default().push(diameter),
                (None, Some(diameter)) => {
                    let length = end_to_end(proof, &[diameter], asked);
                    needed[along as usize].push(length);
                    needed[across as usize].push(length);
                }
                (_, None) => {}
            }
        }
        let mut widest = Vec::with_capacity(rows.len());
        for row in rows.values() {
            needed[along as usize].push(end_to_end(proof, row, asked));
            widest.extend(proof.largest(&PLACEMENT, row));
        }
        if !widest.is_empty() {
            needed[across as usize].push(end_to_end(proof, &widest, asked));
        }
    }
    let mut strict = true;
    for apart in apart {
        let [Some(one), Some(other)] = apart.between.map(|place| entered.get(place)) else { continue };
        if one.wall().opposite() == Some(other.wall()) {
            // the sums keep opposite entries apart already, unless they were amended
            let across = &mut needed[one.wall().across() as usize];
            strict &= across.iter().any(|length| length.value >= apart.required.value);
            across.push(apart.required);
            continue;
        }
        if one.wall() != other.wall()
            || one.declared_row().is_none()
            || one.declared_row() != other.declared_row()
        {
            continue;
        }
        let (Some(first), Some(second)) = (one.diameter, other.diameter) else { continue };
        let mut edges = proof.sum(&PLACEMENT, &[first, second]);
        if centres {
            let half = proof.rulebook().pull.half;
            let half = proof.stated(&half);
            edges = proof.product(&PLACEMENT, half, edges, None);
        }
        let mut parts = vec![apart.required, edges];
        parts.extend(asked.to_wall.into_iter().flat_map(|clearance| [clearance, clearance]));
        let [along, _] = one.wall().plane();
        needed[along as usize].push(proof.sum(&PLACEMENT, &parts));
    }
    Bounds { along: needed.map(|lengths| proof.largest(&PLACEMENT, &lengths)), strict }
}

/// The diameters of things in line, with the clearance between them and at both ends.
fn end_to_end(proof: &mut Derivation, diameters: &[Figure], asked: &Asked) -> Figure {
    let mut parts = diameters.to_vec();
    if let (Some(between), more @ 1..) = (asked.between, diameters.len().saturating_sub(1)) {
        parts.extend(std::iter::repeat_n(between, more));
    }
    parts.extend(asked.to_wall.into_iter().flat_map(|clearance| [clearance, clearance]));
    proof.sum(&PLACEMENT, &parts)
}
