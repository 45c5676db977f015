//! A layout as steps of the proof: dimensions and centres as they were chosen, then every constraint compared.

use super::bounds::Bounds;
use super::clearances::Clearances;
use super::problem::Problem;
use super::smallest::Smallest;
use crate::checks::pull_box::geometry::{Centre, End, Sides, distance};
use crate::checks::pull_box::outcome::{EntryPlace, PlacedDistance, PullBoxLayout};
use crate::checks::pulls::Axis;
use crate::checks::pulls::distances::MinDistance;
use crate::checks::pulls::entry::ResolvedEntry;
use crate::derivation::{Derivation, Figure, Relation};
use crate::quantity::{Decimal, Measure};
use crate::rulebook::Rule;
use crate::rulebook::pull::PLACEMENT;

/// Writes a layout down and compares everything; `None` where a constraint does not hold, which a test rules out.
pub(super) fn layout(
    proof: &mut Derivation,
    (entries, holes): (&mut [ResolvedEntry<'_>], &[Figure]),
    required: &[MinDistance],
    bounds: &Bounds,
    clearances: &Clearances,
    problem: &Problem,
    found: &Smallest,
) -> Option<PullBoxLayout> {
    let mut chosen =
        |length: i64| proof.chosen(&PLACEMENT, Decimal::from_billionths(length), Measure::Length);
    let sides = Sides::new(|axis| chosen(found.sides[axis]));
    let values: Vec<Figure> = found.values.iter().map(|length| chosen(*length)).collect();
    for axis in Axis::ALL {
        if let Some(bound) = bounds.least[axis] {
            holds(proof, &PLACEMENT, sides[axis], Relation::AtLeast, bound)?;
        }
    }
    let mut ends = Vec::with_capacity(entries.len());
    let mut places = Vec::with_capacity(entries.len());
    for ((entry, hole), [along, across]) in entries.iter_mut().zip(holes).zip(&problem.of_entry) {
        let [first, second] = entry.wall.plane();
        let centre = Centre([(first, *values.get(*along)?), (second, *values.get(*across)?)]);
        let radius = entry.radius(proof)?;
        let margin = match clearances.to_wall {
            Some(clearance) => proof.sum(&PLACEMENT, &[*hole, clearance]),
            None => *hole,
        };
        if !centre.within(proof, &sides, margin).0 {
            return None;
        }
        ends.push(End { wall: entry.wall, centre: Some(centre), radius });
        places.push(EntryPlace {
            entry: entry.id.to_owned(),
            wall: entry.wall,
            from_left: centre.along(Axis::Width),
            from_bottom: centre.along(Axis::Height),
            from_back: centre.along(Axis::Depth),
        });
    }
    for (position, first) in ends.iter().zip(holes).enumerate() {
        for other in ends.iter().zip(holes).skip(position + 1).filter(|(other, _)| other.wall == first.0.wall)
        {
            clear(proof, first, other, clearances)?;
        }
    }
    let mut distances = Vec::with_capacity(required.len());
    for least in required {
        let [one, other] = least.ends;
        let measured = distance(proof, &sides, *ends.get(one)?, *ends.get(other)?);
        holds(proof, least.rule, measured, Relation::AtLeast, least.required)?;
        let entries = [places.get(one)?.entry.clone(), places.get(other)?.entry.clone()];
        distances.push(PlacedDistance { entries, required: least.required, measured });
    }
    let Sides { width, height, depth } = sides;
    let proven_smallest = found.proven && bounds.strict;
    Some(PullBoxLayout { width, height, depth, proven_smallest, places, distances })
}

fn holds(
    proof: &mut Derivation,
    rule: &'static Rule,
    left: Figure,
    relation: Relation,
    right: Figure,
) -> Option<()> {
    proof.compare(rule, left, relation, right).0.then_some(())
}

/// Two entries of a wall, each with half the diameter of its hole, are clear of one another. Where they are so along one direction alone, and not next to one
/// another, no step is needed: others stand between.
fn clear(
    proof: &mut Derivation,
    (first, hole): (&End, &Figure),
    (other, other_hole): (&End, &Figure),
    clearances: &Clearances,
) -> Option<()> {
    let (one, two) = (first.centre?, other.centre?);
    let mut reach = vec![*hole, *other_hole];
    reach.extend(clearances.between);
    let needed: Decimal = reach.iter().map(|figure| figure.value).sum();
    if one.gaps(&two).iter().any(|gap| *gap > needed) {
        return Some(());
    }
    let centres = one.distance(&two, proof);
    let needed = proof.sum(&PLACEMENT, &reach);
    holds(proof, &PLACEMENT, centres, Relation::AtLeast, needed)
}
