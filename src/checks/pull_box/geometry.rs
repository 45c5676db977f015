//! Where entries are in a box of given dimensions, and how far apart that makes them.
//!
//! Between edges the distance is: on one wall, between the rims; between opposite walls, across the box and past what
//! the rims leave open sideways; between walls that meet, from rim to rim straight across the corner, and past what the
//! rims leave open along the corner. The last is never more than the true distance, and is it where both entries are
//! level with one another; elsewhere `at_most` says what it is not more than.

use crate::checks::pulls::entry::ResolvedEntry;
use crate::checks::pulls::{Axis, PerAxis, Wall};
use crate::derivation::{Derivation, Figure, Relation, StepId};
use crate::quantity::{Decimal, Measure};
use crate::rulebook::Rule;
use crate::rulebook::geometry::POSITIONS;
use crate::rulebook::pull::{ENTRY_DISTANCE, PLACEMENT};
use crate::rulebook::reading::EntryDistance;

/// The inside dimensions of a box, as figures of the proof.
pub(super) type Sides = PerAxis<Figure>;

/// The centre of an entry, as its measure along each of the two directions of its wall.
#[derive(Clone, Copy, Debug)]
pub(super) struct Centre(pub [(Axis, Figure); 2]);

impl Centre {
    /// The centre that the request gives; `None` where it gives none.
    pub fn given(proof: &mut Derivation, entry: &ResolvedEntry<'_>) -> Option<Self> {
        let position = entry.position?;
        let mut measure = |axis: Axis| {
            let (length, member) = position.along(axis);
            let at = entry.at.member(member);
            Some((axis, proof.given(&PLACEMENT, length?.value(), Measure::Length, at)))
        };
        let [along, across] = entry.wall.plane();
        Some(Self([measure(along)?, measure(across)?]))
    }

    /// Its measure along a direction of its wall.
    pub fn along(&self, axis: Axis) -> Option<Figure> {
        self.0.iter().find(|(known, _)| *known == axis).map(|(_, length)| *length)
    }

    /// How far apart two centres of one wall are along each direction, without steps of the proof.
    pub fn gaps(&self, other: &Self) -> [Decimal; 2] {
        let gap = |direction: usize| {
            let [one, two] = [self, other].map(|centre| centre.0[direction].1.value);
            if one >= two { one - two } else { two - one }
        };
        [gap(0), gap(1)]
    }

    /// The distance between two centres of one wall.
    pub fn distance(&self, other: &Self, proof: &mut Derivation) -> Figure {
        let legs = [0, 1].map(|direction| {
            let [one, two] = [self, other].map(|centre| centre.0[direction].1);
            absolute_difference(proof, &PLACEMENT, one, two)
        });
        proof.distance(&PLACEMENT, &legs)
    }

    /// Whether the edge of an entry is within its wall, and no nearer to the ends of it than it may be; with the step that says so.
    /// `margin` is the least from the centre to an end.
    pub fn within(&self, proof: &mut Derivation, sides: &Sides, margin: Figure) -> (bool, Option<StepId>) {
        let mut steps = Vec::with_capacity(4);
        for (axis, length) in self.0 {
            let (from_edge, step) = proof.compare(&PLACEMENT, length, Relation::AtLeast, margin);
            let far = proof.sum(&PLACEMENT, &[length, margin]);
            let (to_edge, far_step) = proof.compare(&PLACEMENT, far, Relation::AtMost, sides[axis]);
            if !(from_edge && to_edge) {
                return (false, Some(if from_edge { far_step } else { step }));
            }
            steps.extend([step, far_step]);
        }
        (true, proof.every(&POSITIONS, &steps))
    }
}

/// One of two entries whose distance is measured.
#[derive(Clone, Copy, Debug)]
pub(super) struct End {
    pub wall: Wall,
    /// Its centre; `None` to ask how far apart the two could be at most.
    pub centre: Option<Centre>,
    /// From the centre to the edge.
    pub radius: Figure,
}

/// How far apart two entries are in a box; with a centre missing, how far apart they could be.
pub(super) fn distance(proof: &mut Derivation, sides: &Sides, first: End, other: End) -> Figure {
    let rule = &ENTRY_DISTANCE;
    if first.wall == other.wall || first.wall.opposite() == Some(other.wall) {
        let aside = first.wall.plane().map(|axis| gap(proof, sides, axis, first, other));
        let edges = proof.sum(rule, &[first.radius, other.radius]);
        let across = (first.wall != other.wall).then(|| sides[first.wall.across()]);
        if proof.reading::<EntryDistance>() == EntryDistance::CentreToCentre {
            return proof.distance(rule, &across.into_iter().chain(aside).collect::<Vec<_>>());
        }
        let centres = proof.distance(rule, &aside);
        let open = less(proof, centres, edges);
        return across.map_or(open, |across| proof.distance(rule, &[across, open]));
    }
    let (across_first, across_other) = (first.wall.across(), other.wall.across());
    let shared = Axis::ALL.into_iter().find(|axis| *axis != across_first && *axis != across_other);
    let mut from_first = away(proof, sides, first.wall, other);
    let mut from_other = away(proof, sides, other.wall, first);
    let mut along = gap(proof, sides, shared.unwrap_or(Axis::Depth), first, other);
    let edges = proof.sum(rule, &[first.radius, other.radius]);
    if proof.reading::<EntryDistance>() == EntryDistance::EdgeToEdge {
        from_first = less(proof, from_first, other.radius);
        from_other = less(proof, from_other, first.radius);
        along = less(proof, along, edges);
    }
    proof.distance(rule, &[from_first, from_other, along])
}

/// What the distance from edge to edge of two entries on walls that meet is at most: between the points of their rims that are
/// straight across the corner. `None` where that is the distance itself, or where edges are not what counts.
pub(super) fn at_most(proof: &mut Derivation, sides: &Sides, first: End, other: End) -> Option<Figure> {
    let meet = first.wall != other.wall && first.wall.opposite() != Some(other.wall);
    if !meet || proof.reading::<EntryDistance>() == EntryDistance::CentreToCentre {
        return None;
    }
    let (across_first, across_other) = (first.wall.across(), other.wall.across());
    let shared = Axis::ALL.into_iter().find(|axis| *axis != across_first && *axis != across_other)?;
    let along = gap(proof, sides, shared, first, other);
    if along.value == Decimal::ZERO {
        return None;
    }
    let from_first = away(proof, sides, first.wall, other);
    let from_first = less(proof, from_first, other.radius);
    let from_other = away(proof, sides, other.wall, first);
    let from_other = less(proof, from_other, first.radius);
    Some(proof.distance(&ENTRY_DISTANCE, &[from_first, from_other, along]))
}

/// A length less another, or nothing.
fn less(proof: &mut Derivation, from: Figure, take: Figure) -> Figure {
    let left = proof.difference(&ENTRY_DISTANCE, from, take);
    proof.at_least_zero(&ENTRY_DISTANCE, left)
}

fn absolute_difference(proof: &mut Derivation, rule: &'static Rule, one: Figure, two: Figure) -> Figure {
    let (more, less) = if one.value >= two.value { (one, two) } else { (two, one) };
    proof.difference(rule, more, less)
}

/// How far the centre of an entry is from a wall that its own wall meets.
fn away(proof: &mut Derivation, sides: &Sides, wall: Wall, entry: End) -> Figure {
    let side = sides[wall.across()];
    match entry.centre.and_then(|centre| centre.along(wall.across())) {
        Some(length) if wall.is_origin() => length,
        Some(length) => less(proof, side, length),
        None => less(proof, side, entry.radius),
    }
}

/// How far apart two centres are along one direction, or could be.
fn gap(proof: &mut Derivation, sides: &Sides, axis: Axis, first: End, other: End) -> Figure {
    let along = |end: End| end.centre.and_then(|centre| centre.along(axis));
    if let (Some(one), Some(two)) = (along(first), along(other)) {
        return absolute_difference(proof, &ENTRY_DISTANCE, one, two);
    }
    let edges = proof.sum(&ENTRY_DISTANCE, &[first.radius, other.radius]);
    less(proof, sides[axis], edges)
}
