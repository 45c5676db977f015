//! A layout as steps of the proof: dimensions and centres as they were chosen, then every condition compared.

use super::bounds::Bounds;
use super::problem::Problem;
use super::smallest::Smallest;
use super::{Asked, EntryPlace, PlacedDistance, PullBoxLayout};
use crate::checks::pull_box::geometry::{Centre, End, Sides, distance};
use crate::checks::pulls::Axis;
use crate::checks::pulls::distances::Apart;
use crate::checks::pulls::entry::Entered;
use crate::derivation::{Derivation, Figure, Relation};
use crate::quantity::{Decimal, Measure};
use crate::rulebook::Rule;
use crate::rulebook::pull::PLACEMENT;

/// Writes a layout down and compares everything; `None` where a condition does not hold, which a test rules out.
pub(super) fn layout(
    proof: &mut Derivation,
    entered: &mut [Entered<'_>],
    apart: &[Apart],
    bounds: &Bounds,
    asked: &Asked,
    problem: &Problem,
    found: &Smallest,
) -> Option<PullBoxLayout> {
    let mut chosen =
        |length: i64| proof.chosen(&PLACEMENT, Decimal::from_billionths(length), Measure::Length);
    let sides = Sides {
        width: chosen(found.sides.width),
        height: chosen(found.sides.height),
        depth: chosen(found.sides.depth),
    };
    let lengths: Vec<Figure> = found.places.iter().map(|length| chosen(*length)).collect();
    for axis in Axis::ALL {
        if let Some(bound) = bounds.of(axis) {
            holds(proof, &PLACEMENT, sides.along(axis), Relation::AtLeast, bound)?;
        }
    }
    let mut ends = Vec::with_capacity(entered.len());
    let mut places = Vec::with_capacity(entered.len());
    for (entry, [along, across]) in entered.iter_mut().zip(&problem.of_entry) {
        let [first, second] = entry.wall().plane();
        let centre = Centre::new([(first, *lengths.get(*along)?), (second, *lengths.get(*across)?)]);
        let radius = entry.radius(proof)?;
        within(proof, &sides, centre, radius, asked)?;
        ends.push(End { wall: entry.wall(), centre: Some(centre), radius });
        places.push(EntryPlace {
            entry: entry.id().to_owned(),
            wall: entry.wall(),
            from_left: centre.along(Axis::Width),
            from_bottom: centre.along(Axis::Height),
            from_back: centre.along(Axis::Depth),
        });
    }
    for (place, first) in ends.iter().enumerate() {
        for other in ends.iter().skip(place + 1).filter(|other| other.wall == first.wall) {
            clear(proof, first, other, asked)?;
        }
    }
    let mut distances = Vec::with_capacity(apart.len());
    for apart in apart {
        let [one, other] = apart.between;
        let measured = distance(proof, &sides, *ends.get(one)?, *ends.get(other)?);
        holds(proof, apart.rule, measured, Relation::AtLeast, apart.required)?;
        let entries = [places.get(one)?.entry.clone(), places.get(other)?.entry.clone()];
        distances.push(PlacedDistance { entries, required: apart.required, measured });
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

/// An entry lies within its wall.
fn within(
    proof: &mut Derivation,
    sides: &Sides,
    centre: Centre,
    radius: Figure,
    asked: &Asked,
) -> Option<()> {
    let margin = match asked.to_wall {
        Some(clearance) => proof.sum(&PLACEMENT, &[radius, clearance]),
        None => radius,
    };
    for (axis, length) in centre.measures() {
        holds(proof, &PLACEMENT, length, Relation::AtLeast, margin)?;
        let far = proof.sum(&PLACEMENT, &[length, margin]);
        holds(proof, &PLACEMENT, far, Relation::AtMost, sides.along(axis))?;
    }
    Some(())
}

/// Two entries of a wall are clear of one another. Where they are so along one direction alone, and not next to one
/// another, no step is needed: others stand between.
fn clear(proof: &mut Derivation, first: &End, other: &End, asked: &Asked) -> Option<()> {
    let (one, two) = (first.centre?, other.centre?);
    let mut reach = vec![first.radius, other.radius];
    reach.extend(asked.between);
    let needed: Decimal = reach.iter().map(|figure| figure.value).sum();
    let gap = |(_, one): (Axis, Figure), (_, two): (Axis, Figure)| {
        if one.value >= two.value { one.value - two.value } else { two.value - one.value }
    };
    let gaps: Vec<Decimal> =
        one.measures().into_iter().zip(two.measures()).map(|(one, two)| gap(one, two)).collect();
    if gaps.iter().any(|gap| *gap > needed) {
        return Some(());
    }
    let legs: Vec<Figure> = one
        .measures()
        .into_iter()
        .zip(two.measures())
        .map(|((_, one), (_, two))| {
            let (more, less) = if one.value >= two.value { (one, two) } else { (two, one) };
            proof.difference(&PLACEMENT, more, less)
        })
        .collect();
    let centres = proof.distance(&PLACEMENT, &legs);
    let needed = proof.sum(&PLACEMENT, &reach);
    holds(proof, &PLACEMENT, centres, Relation::AtLeast, needed)
}
