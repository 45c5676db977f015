//! Placement: the smallest box in which every entry has a place.
//!
//! The sums of the rules say how long a box must be; whether entries that must stand apart then find room is another
//! question. Here positions are looked for, on a grid, so that every rule holds at once:
//!
//! - each entry lies within its wall, with the clearance asked to the walls beside;
//! - entries of a wall are clear of one another, with the clearance asked between them;
//! - entries of one row are in line, and the rows of a wall lie clear beside one another; declared rows on the back are
//!   level, and entries there without a row may stand anywhere, though the sums count them as one row;
//! - entries with the same conductors are as far apart as is asked, measured as in a given box.
//!
//! **Smallest** means: first the least depth that the rules and the rows allow; at that depth the least sum of width and
//! height; of several such boxes the narrowest. Dimensions and centres are multiples of the step. `proven_smallest` says
//! whether every box that comes before the one returned was shown to have no places on that grid; when the work that a
//! request may cause ends first, it is false, and the box is one that serves.
//!
//! Everything that is returned is checked again by steps of the proof, in the arithmetic of the rules.

mod bounds;
#[cfg(test)]
mod exhaustive;
mod narrowing;
mod problem;
mod smallest;
mod solver;
mod verified;

use super::outcome::SectionSize;
use super::request::LayoutQuestion;
use crate::checks::pulls::distances::Apart;
use crate::checks::pulls::entry::Entered;
use crate::checks::pulls::{Axis, Wall};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer};
use crate::quantity::{Decimal, Measure, Units};
use crate::rulebook::pull::PLACEMENT;
use crate::rulebook::reading::EntryDistance;
use narrowing::Box3;
use problem::{Pair, Placeable, Problem, Room};
use serde::Serialize;
use smallest::smallest;
use utoipa::ToSchema;

/// How many conditions one layout may look at. That takes some hundredths of a second.
const WORK: u64 = 1_500_000;

/// The smallest box in which every entry has a place, and those places.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct PullBoxLayout {
    /// From the left wall to the right wall.
    pub width: Figure,
    /// From the bottom wall to the top wall.
    pub height: Figure,
    /// From the back to the cover.
    pub depth: Figure,
    /// Whether every smaller box, on the same grid, was shown to have no places.
    pub proven_smallest: bool,
    /// The centre of each entry.
    pub places: Vec<EntryPlace>,
    /// How far apart entries with the same conductors then are.
    pub distances: Vec<PlacedDistance>,
}

/// The centre of an entry: two measures, those that lie in its wall.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct EntryPlace {
    /// The entry.
    pub entry: String,
    /// Its wall.
    pub wall: Wall,
    /// From the left wall.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub from_left: Option<Figure>,
    /// From the bottom wall.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub from_bottom: Option<Figure>,
    /// From the back.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub from_back: Option<Figure>,
}

/// How far apart two entries are in a layout.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct PlacedDistance {
    /// The two entries.
    pub entries: [String; 2],
    /// The distance that is asked.
    pub required: Figure,
    /// The distance that they have.
    pub measured: Figure,
}

/// The clearances and the step of a question, as figures of the proof.
pub(super) struct Asked {
    between: Option<Figure>,
    to_wall: Option<Figure>,
    step: Decimal,
}

impl Asked {
    fn read(proof: &mut Derivation, question: &LayoutQuestion) -> Self {
        let mut given = |length: Option<crate::quantity::Length>, at| {
            length.map(|length| proof.given(&PLACEMENT, length.value(), Measure::Length, Pointer::to(at)))
        };
        let between = given(question.clearance, &"/layout/clearance");
        let to_wall = given(question.wall_clearance, &"/layout/wall_clearance");
        let usual = match proof.units() {
            Units::Us => Decimal::ten_thousandths(625),
            Units::Si => Decimal::ONE,
        };
        let step = question.step.map_or(usual, |step| step.value());
        Self { between, to_wall, step }
    }
}

/// Looks for the smallest box; `None`, with a finding, where an entry has no size or the work ended before any was found.
pub(super) fn find(
    proof: &mut Derivation,
    question: &LayoutQuestion,
    entered: &mut [Entered<'_>],
    apart: &[Apart],
    size: &SectionSize,
    findings: &mut Vec<Finding>,
) -> Option<PullBoxLayout> {
    let missing = |message| Finding::new(&PLACEMENT, Status::Advisory, message).at(Pointer::to(&"/layout"));
    let radii: Option<Vec<Figure>> = entered.iter_mut().map(|entry| entry.radius(proof)).collect();
    let Some(radii) = radii else {
        findings.push(missing("finding-layout-open"));
        return None;
    };
    let asked = Asked::read(proof, question);
    let centres = !apart.is_empty() && proof.reading::<EntryDistance>() == EntryDistance::CentreToCentre;
    let bounds = bounds::of(proof, entered, apart, size, &asked, centres);
    let zero = |figure: Option<Figure>| figure.map_or(0, |figure| figure.value.billionths());
    let room = Room { between: zero(asked.between), to_wall: zero(asked.to_wall), centres };
    let placeables: Vec<Placeable> = entered
        .iter()
        .zip(&radii)
        .map(|(entry, radius)| Placeable {
            wall: entry.wall(),
            row: entry.declared_row(),
            radius: radius.value.billionths(),
        })
        .collect();
    let pairs: Vec<Pair> = apart.iter().map(Pair::of).collect();
    let problem = Problem::new(&placeables, &pairs, room);
    let step = asked.step.billionths().max(1);
    // a direction of which nothing is asked still has to be one step long
    let least = |axis| zero(bounds.of(axis)).max(step);
    let least = Box3 { width: least(Axis::Width), height: least(Axis::Height), depth: least(Axis::Depth) };
    let found = smallest(&problem, least, reach(&placeables, &pairs, room), step, WORK);
    let layout =
        found.and_then(|found| verified::layout(proof, entered, apart, &bounds, &asked, &problem, &found));
    match &layout {
        None => findings.push(missing("finding-layout-not-found")),
        Some(layout) => tell(proof, layout, size, &bounds, findings),
    }
    layout
}

/// A growth of width and height with which everything certainly has a place.
fn reach(placeables: &[Placeable], pairs: &[Pair], room: Room) -> i64 {
    let entries = placeables.iter().map(|entry| 2 * entry.radius + room.between + 2 * room.to_wall);
    let pairs = pairs.iter().map(|pair| 2 * pair.required);
    entries.chain(pairs).fold(0, i64::saturating_add)
}

/// Says what the box is, and where placement asks for more than the sums.
fn tell(
    proof: &mut Derivation,
    layout: &PullBoxLayout,
    size: &SectionSize,
    bounds: &bounds::Bounds,
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
    for (axis, chosen, minimum) in [
        (Axis::Width, layout.width, size.width.minimum),
        (Axis::Height, layout.height, size.height.minimum),
        (Axis::Depth, layout.depth, size.depth.minimum),
    ] {
        let Some(minimum) = minimum else { continue };
        let by_bound = bounds.of(axis).filter(|bound| bound.value > minimum.value);
        if chosen.value <= minimum.value {
            continue;
        }
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
