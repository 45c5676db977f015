//! The layout solver: the smallest box in which every entry has a position.
//!
//! The sums of the rules say how long a box must be; whether entries that must be apart then find room is another
//! question. The solver looks for positions on a grid so that every rule holds at once:
//!
//! - the hole of each entry lies within its wall, with the clearance to the walls beside; where the kind of a raceway is not said,
//!   the largest hole that it may need;
//! - the holes of a wall are clear of one another, with the clearance between them;
//! - entries of one row are in line, and the rows of a wall lie clear beside one another; declared rows on the back are
//!   level, and entries there without a row may stand anywhere that is off the lines of the declared rows both ways, though the
//!   sums count them as one row;
//! - entries with the same conductors are as far apart as is required, measured as in a given box.
//!
//! **Smallest** means: first the least depth that the rules and the rows allow; at that depth the least sum of width and
//! height; of several such boxes the narrowest. Dimensions and centres are multiples of the step. `proven_smallest` says
//! whether every box that comes before the one returned was shown to be infeasible on that grid; when the work that a
//! request may cause ends first, it is false, and the box is one that is feasible.
//!
//! [`problem`] states a constraint problem, [`solver`] decides it for one box by depth-first search with constraint
//! propagation ([`propagation`]), and [`smallest`] finds the smallest feasible box by bisection. What is returned is
//! checked again by steps of the proof, in the arithmetic of the rules ([`verification`]).

mod bounds;
mod clearances;
#[cfg(test)]
mod exhaustive;
mod problem;
mod propagation;
mod smallest;
mod solver;
mod verification;

use super::holes::Hole;
use super::outcome::{PullBoxLayout, SectionSize};
use super::request::LayoutQuestion;
use crate::checks::pulls::Axis;
use crate::checks::pulls::distances::MinDistance;
use crate::checks::pulls::entry::ResolvedEntry;
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer};
use crate::rulebook::pull::PLACEMENT;
use crate::rulebook::reading::EntryDistance;
use bounds::Bounds;
use clearances::Clearances;
use problem::{Pair, Placeable, Problem, Spacing};
use propagation::Dimensions;
use smallest::smallest;

/// Looks for the smallest box; `None`, with a finding, where an entry has no size or the work ended before any was found.
pub(super) fn find(
    proof: &mut Derivation,
    question: &LayoutQuestion,
    (entries, holes): (&mut [ResolvedEntry<'_>], &[Option<Hole>]),
    required: &[MinDistance],
    size: &SectionSize,
    findings: &mut Vec<Finding>,
) -> Option<PullBoxLayout> {
    let missing = |message| Finding::new(&PLACEMENT, Status::Advisory, message).at(Pointer::to(&"/layout"));
    let radii: Option<Vec<Figure>> = entries.iter_mut().map(|entry| entry.radius(proof)).collect();
    let wider = |(hole, entry): (&Option<Hole>, &ResolvedEntry<'_>)| {
        let (hole, edge) = (hole.as_ref()?.most, entry.diameter?);
        Some(if edge.value > hole.value { edge } else { hole })
    };
    let holes: Option<Vec<Figure>> = holes.iter().zip(entries.iter()).map(wider).collect();
    let (Some(radii), Some(holes)) = (radii, holes) else {
        findings.push(missing("finding-layout-open"));
        return None;
    };
    let half = proof.rulebook().pull.half;
    let half = proof.stated(&half);
    let halves: Vec<Figure> = holes.iter().map(|hole| proof.product(&PLACEMENT, half, *hole, None)).collect();
    let clearances = Clearances::read(proof, question);
    let centres = !required.is_empty() && proof.reading::<EntryDistance>() == EntryDistance::CentreToCentre;
    let bounds = bounds::of(proof, (entries, &holes), required, size, &clearances, centres);
    let or_zero = |figure: Option<Figure>| figure.map_or(0, |figure| figure.value.billionths());
    let spacing =
        Spacing { between: or_zero(clearances.between), to_wall: or_zero(clearances.to_wall), centres };
    let placeable = |(entry, (radius, hole)): (&ResolvedEntry<'_>, (&Figure, &Figure))| Placeable {
        wall: entry.wall,
        row: entry.row,
        radius: radius.value.billionths(),
        hole: hole.value.billionths(),
    };
    let placeables: Vec<Placeable> = entries.iter().zip(radii.iter().zip(&halves)).map(placeable).collect();
    let pairs: Vec<Pair> = required.iter().map(Pair::of).collect();
    let problem = Problem::new(&placeables, &pairs, spacing);
    let step = clearances.step.billionths().max(1);
    // a direction of which nothing is required still has to be one step long
    let least = Dimensions::new(|axis| or_zero(bounds.least[axis]).max(step));
    let work = proof.rulebook().pull.search.conditions;
    let found = smallest(&problem, least, reach(&placeables, &pairs, spacing), step, work);
    let layout = found.and_then(|found| {
        verification::layout(proof, (entries, &halves), required, &bounds, &clearances, &problem, &found)
    });
    match &layout {
        None => findings.push(missing("finding-layout-not-found")),
        Some(layout) => report(proof, layout, size, &bounds, findings),
    }
    layout
}

/// A growth of width and height with which everything certainly has a position.
fn reach(placeables: &[Placeable], pairs: &[Pair], spacing: Spacing) -> i64 {
    let entries = placeables.iter().map(|entry| 2 * entry.hole + spacing.between + 2 * spacing.to_wall);
    let pairs = pairs.iter().map(|pair| 2 * pair.required);
    entries.chain(pairs).fold(0, i64::saturating_add)
}

/// Reports the box, and where the layout needs more than the sums.
fn report(
    proof: &mut Derivation,
    layout: &PullBoxLayout,
    size: &SectionSize,
    bounds: &Bounds,
    findings: &mut Vec<Finding>,
) {
    let at = Pointer::to(&"/layout");
    let message =
        if layout.proven_smallest { "finding-layout-smallest" } else { "finding-layout-not-proven" };
    findings.push(
        Finding::new(&PLACEMENT, Status::Advisory, message)
            .with("width", layout.width)
            .with("height", layout.height)
            .with("depth", layout.depth)
            .at(at),
    );
    for axis in Axis::ALL {
        let chosen = layout.side(axis);
        let Some(minimum) = size.side(axis).minimum.filter(|minimum| chosen.value > minimum.value) else {
            continue;
        };
        let by_bound = bounds.least[axis].filter(|bound| bound.value > minimum.value);
        let (message, needed) = match by_bound {
            Some(bound) => ("finding-layout-needs", bound),
            None => ("finding-layout-grows", chosen),
        };
        let growth = proof.difference(&PLACEMENT, chosen, minimum);
        findings.push(
            Finding::new(&PLACEMENT, Status::Advisory, message)
                .with("axis", axis.name())
                .with("sum", minimum)
                .with("needed", needed)
                .with("growth", growth)
                .at(at)
                .step(growth.step),
        );
    }
}
