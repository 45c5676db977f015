//! Where entries are in a box of given dimensions, and how far apart that makes them.
//!
//! Between edges the distance is: on one wall, between the rims; between opposite walls, across the box and past what
//! the rims leave open sideways; between walls that meet, from rim to rim straight across the corner, and past what the
//! rims leave open along the corner. The last is never more than the true distance, and is it where both entries are
//! level with one another.

use crate::checks::pulls::Axis;
use crate::checks::pulls::Wall;
use crate::checks::pulls::entry::Entered;
use crate::derivation::{Derivation, Figure, Pointer};
use crate::quantity::Measure;
use crate::rulebook::pull::{ENTRY_DISTANCE, PLACEMENT};
use crate::rulebook::reading::EntryDistance;

/// The inside dimensions of a box, as figures of the proof.
#[derive(Clone, Copy, Debug)]
pub(super) struct Sides {
    pub width: Figure,
    pub height: Figure,
    pub depth: Figure,
}

impl Sides {
    /// The given dimensions.
    pub fn given(proof: &mut Derivation, inside: super::request::InsideBox, at: Pointer) -> Self {
        let mut side =
            |value, axis: Axis| proof.given(&PLACEMENT, value, Measure::Length, at.member(axis.member()));
        Self {
            width: side(inside.width.value(), Axis::Width),
            height: side(inside.height.value(), Axis::Height),
            depth: side(inside.depth.value(), Axis::Depth),
        }
    }

    pub const fn along(&self, axis: Axis) -> Figure {
        match axis {
            Axis::Width => self.width,
            Axis::Height => self.height,
            Axis::Depth => self.depth,
        }
    }
}

/// The centre of an entry: how far along each of the two directions of its wall.
#[derive(Clone, Copy, Debug)]
pub(super) struct Centre {
    along: [(Axis, Figure); 2],
}

impl Centre {
    /// A centre by its two measures.
    pub const fn new(along: [(Axis, Figure); 2]) -> Self {
        Self { along }
    }

    /// The centre that the request gives; `None` where it gives none.
    pub fn given(proof: &mut Derivation, entry: &Entered<'_>) -> Option<Self> {
        let position = entry.entry.position?;
        let mut measure = |axis: Axis| {
            let (length, member) = match axis {
                Axis::Width => (position.from_left, &"/position/from_left"),
                Axis::Height => (position.from_bottom, &"/position/from_bottom"),
                Axis::Depth => (position.from_back, &"/position/from_back"),
            };
            let at = entry.at.member(member);
            Some((axis, proof.given(&PLACEMENT, length?.value(), Measure::Length, at)))
        };
        let [one, other] = entry.wall().plane();
        Some(Self { along: [measure(one)?, measure(other)?] })
    }

    /// How far it is along a direction of its wall.
    pub fn along(&self, axis: Axis) -> Option<Figure> {
        self.along.iter().find(|(known, _)| *known == axis).map(|(_, length)| *length)
    }

    /// Its two measures.
    pub const fn measures(&self) -> [(Axis, Figure); 2] {
        self.along
    }
}

/// One of two entries whose distance is asked.
#[derive(Clone, Copy, Debug)]
pub(super) struct End {
    pub wall: Wall,
    /// Its centre; `None` to ask how far apart the two could be at most.
    pub centre: Option<Centre>,
    /// From the centre to the edge.
    pub radius: Figure,
}

/// The lengths at right angles that lie between two entries, before edges are taken off.
enum Between {
    SameWall([Figure; 2]),
    Opposite { across: Figure, aside: [Figure; 2] },
    Corner { from_first: Figure, from_other: Figure, along: Figure },
}

/// How far apart two entries are in a box; with a centre missing, how far apart they could be.
pub(super) fn distance(proof: &mut Derivation, sides: &Sides, first: End, other: End) -> Figure {
    let rule = &ENTRY_DISTANCE;
    let between = between(proof, sides, first, other);
    let edges = proof.sum(rule, &[first.radius, other.radius]);
    match proof.reading::<EntryDistance>() {
        EntryDistance::CentreToCentre => match between {
            Between::SameWall(legs) => proof.distance(rule, &legs),
            Between::Opposite { across, aside: [one, two] } => proof.distance(rule, &[across, one, two]),
            Between::Corner { from_first, from_other, along } => {
                proof.distance(rule, &[from_first, from_other, along])
            }
        },
        EntryDistance::EdgeToEdge => match between {
            Between::SameWall(legs) => {
                let centres = proof.distance(rule, &legs);
                less(proof, centres, edges)
            }
            Between::Opposite { across, aside } => {
                let centres = proof.distance(rule, &aside);
                let open = less(proof, centres, edges);
                proof.distance(rule, &[across, open])
            }
            Between::Corner { from_first, from_other, along } => {
                let one = less(proof, from_first, other.radius);
                let two = less(proof, from_other, first.radius);
                let open = less(proof, along, edges);
                proof.distance(rule, &[one, two, open])
            }
        },
    }
}

/// What is left of a length, or nothing.
fn less(proof: &mut Derivation, from: Figure, take: Figure) -> Figure {
    let left = proof.difference(&ENTRY_DISTANCE, from, take);
    proof.at_least_zero(&ENTRY_DISTANCE, left)
}

fn between(proof: &mut Derivation, sides: &Sides, first: End, other: End) -> Between {
    if first.wall == other.wall {
        let [one, two] = first.wall.plane();
        return Between::SameWall([
            apart(proof, sides, one, first, other),
            apart(proof, sides, two, first, other),
        ]);
    }
    if first.wall.opposite() == Some(other.wall) {
        let [one, two] = first.wall.plane();
        let aside = [apart(proof, sides, one, first, other), apart(proof, sides, two, first, other)];
        return Between::Opposite { across: sides.along(first.wall.across()), aside };
    }
    let (from_first, from_other) = (first.wall.across(), other.wall.across());
    let shared = Axis::ALL.into_iter().find(|axis| *axis != from_first && *axis != from_other);
    Between::Corner {
        from_first: away(proof, sides, first.wall, other),
        from_other: away(proof, sides, other.wall, first),
        along: apart(proof, sides, shared.unwrap_or(Axis::Depth), first, other),
    }
}

/// How far the centre of an entry is from a wall that its own wall meets.
fn away(proof: &mut Derivation, sides: &Sides, wall: Wall, entry: End) -> Figure {
    let side = sides.along(wall.across());
    match entry.centre.and_then(|centre| centre.along(wall.across())) {
        Some(length) if wall.is_origin() => length,
        Some(length) => less(proof, side, length),
        None => less(proof, side, entry.radius),
    }
}

/// How far two centres are apart along one direction.
fn apart(proof: &mut Derivation, sides: &Sides, axis: Axis, first: End, other: End) -> Figure {
    let along = |end: End| end.centre.and_then(|centre| centre.along(axis));
    match (along(first), along(other)) {
        (Some(one), Some(two)) if one.value >= two.value => proof.difference(&ENTRY_DISTANCE, one, two),
        (Some(one), Some(two)) => proof.difference(&ENTRY_DISTANCE, two, one),
        _ => {
            let edges = proof.sum(&ENTRY_DISTANCE, &[first.radius, other.radius]);
            less(proof, sides.along(axis), edges)
        }
    }
}
