//! Whether a given box is as large as is asked, and whether its entries are where they must be.

use super::geometry::{Centre, End, Sides, distance};
use super::section::Chamber;
use crate::checks::pulls::distances::Apart;
use crate::checks::pulls::entry::Entered;
use crate::checks::pulls::{Axis, AxisSize, EntryDistanceOf};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Relation};
use crate::rulebook::pull::{ENTRY_DISTANCE, GOVERNS, PLACEMENT};

/// The entries of a box of given dimensions.
pub(super) struct Placed {
    pub sides: Sides,
    /// Whether a marking lets the box be smaller than the rules ask; `None` where that is open.
    pub covered: Option<bool>,
    /// The centre of each entry that has one.
    centres: Vec<Option<Centre>>,
    radii: Vec<Option<Figure>>,
}

impl Placed {
    /// Reads the dimensions and the positions.
    pub fn read(
        proof: &mut Derivation,
        chamber: &Chamber<'_>,
        entered: &mut [Entered<'_>],
        covered: Option<bool>,
    ) -> Option<Self> {
        let sides = Sides::given(proof, chamber.inside?, chamber.inside_at);
        let centres = entered.iter().map(|entry| Centre::given(proof, entry)).collect();
        let radii = entered.iter_mut().map(|entry| entry.radius(proof)).collect();
        Some(Self { sides, covered, centres, radii })
    }

    fn end(&self, entered: &[Entered<'_>], place: usize) -> Option<End> {
        let centre = self.centres.get(place).copied().flatten();
        let radius = self.radii.get(place).copied().flatten()?;
        Some(End { wall: entered.get(place)?.wall(), centre, radius })
    }
}

/// Compares each direction with what is asked of it.
pub(super) fn compare_side(
    proof: &mut Derivation,
    axis: Axis,
    size: &mut AxisSize,
    placed: &Placed,
    chamber: &Chamber<'_>,
    findings: &mut Vec<Finding>,
) {
    let given = placed.sides.along(axis);
    size.given = Some(given);
    let Some(minimum) = size.minimum else { return };
    size.margin = Some(proof.difference(&GOVERNS, given, minimum));
    for requirement in &size.requirements {
        let rule = requirement.rule;
        let (enough, step) = proof.compare(rule, given, Relation::AtLeast, requirement.length);
        let (status, message) = match (enough, placed.covered) {
            (true, _) => (Status::Satisfied, "finding-side-enough"),
            (false, Some(true)) => (Status::Satisfied, "finding-smaller-by-mark"),
            (false, Some(false)) => (Status::Violated, "finding-side-short"),
            (false, None) => (Status::NotDetermined, "finding-side-short"),
        };
        findings.push(
            Finding::new(rule, status, message)
                .with("axis", axis.name())
                .with("section", chamber.id.unwrap_or(""))
                .with("given", given)
                .with("required", requirement.length)
                .with("entries", requirement.entries.join(", ").as_str())
                .at(chamber.inside_at.member(axis.member()))
                .step(step),
        );
    }
}

/// Compares the distance of every pair with what is asked; where a position is missing, with the most it could be.
pub(super) fn compare_distances(
    proof: &mut Derivation,
    entered: &[Entered<'_>],
    apart: &[Apart],
    placed: &Placed,
    distances: &mut [EntryDistanceOf],
    findings: &mut Vec<Finding>,
) {
    let mut open: Vec<(&Apart, &EntryDistanceOf)> = Vec::new();
    let mut enough: Option<Finding> = None;
    for (apart, told) in apart.iter().zip(distances) {
        let [first, other] = apart.between;
        let (Some(first), Some(other)) = (placed.end(entered, first), placed.end(entered, other)) else {
            continue;
        };
        let known = first.centre.is_some() && other.centre.is_some();
        let side = placed.sides.along(first.wall.across());
        let across = first.wall.opposite() == Some(other.wall) && side.value >= apart.required.value;
        let (measured, settled) = match (known, across) {
            (false, true) => (side, true),
            _ => (distance(proof, &placed.sides, first, other), known),
        };
        let (holds, step) = proof.compare(apart.rule, measured, Relation::AtLeast, apart.required);
        if known {
            told.measured = Some(measured);
        }
        let message = match (holds, settled) {
            (true, true) => {
                let new = || Finding::new(apart.rule, Status::Satisfied, "finding-entries-apart").step(step);
                enough.get_or_insert_with(new).at.push(apart.at);
                continue;
            }
            (true, false) if placed.covered != Some(true) => {
                open.push((apart, told));
                continue;
            }
            (true, false) => continue,
            (false, true) => "finding-entries-close",
            (false, false) => "finding-entries-never-apart",
        };
        let (status, message) = match placed.covered {
            Some(true) => (Status::Satisfied, "finding-closer-by-mark"),
            Some(false) => (Status::Violated, message),
            None => (Status::NotDetermined, message),
        };
        findings.push(
            Finding::new(apart.rule, status, message)
                .with("first", told.entries[0].as_str())
                .with("other", told.entries[1].as_str())
                .with("measured", measured)
                .with("required", apart.required)
                .at(apart.at)
                .step(step),
        );
    }
    findings.extend(enough);
    findings.extend(without_positions(entered, &open));
}

/// One finding for all pairs whose distance cannot be told without positions.
fn without_positions(entered: &[Entered<'_>], open: &[(&Apart, &EntryDistanceOf)]) -> Option<Finding> {
    let pairs: Vec<String> = open
        .iter()
        .map(|(apart, told)| {
            let [first, other] = &told.entries;
            format!("{first}–{other} {} {}", apart.required.value, apart.required.unit.symbol())
        })
        .collect();
    let (first, _) = open.first()?;
    let mut finding = Finding::new(&ENTRY_DISTANCE, Status::NotDetermined, "finding-positions-missing")
        .with("pairs", pairs.join("; ").as_str());
    finding.rule = first.rule;
    for (apart, _) in open {
        finding.at.push(apart.at);
        for place in apart.between {
            let Some(entry) = entered.get(place).filter(|entry| entry.entry.position.is_none()) else {
                continue;
            };
            let at = entry.at.member(&"/position");
            if !finding.supply.contains(&at) {
                finding.supply.push(at);
            }
        }
    }
    Some(finding)
}

/// Checks that every entry lies within its wall, and that no two entries of a wall overlap.
pub(super) fn compare_places(
    proof: &mut Derivation,
    entered: &[Entered<'_>],
    placed: &Placed,
    findings: &mut Vec<Finding>,
) {
    let mut within = Vec::new();
    for (place, entry) in entered.iter().enumerate() {
        let Some(End { centre: Some(centre), radius, .. }) = placed.end(entered, place) else { continue };
        let outside = centre.measures().into_iter().find_map(|(axis, length)| {
            let (from_edge, step) = proof.compare(&PLACEMENT, length, Relation::AtLeast, radius);
            let far = proof.sum(&PLACEMENT, &[length, radius]);
            let side = placed.sides.along(axis);
            let (to_edge, far_step) = proof.compare(&PLACEMENT, far, Relation::AtMost, side);
            (!(from_edge && to_edge)).then_some(if from_edge { far_step } else { step })
        });
        match outside {
            None => within.push(entry.at),
            Some(step) => findings.push(
                Finding::new(&PLACEMENT, Status::Violated, "finding-entry-outside-wall")
                    .with("entry", entry.id())
                    .with("wall", entry.wall().name())
                    .at(entry.at.member(&"/position"))
                    .step(step),
            ),
        }
    }
    for (place, entry) in entered.iter().enumerate() {
        for (later, other) in entered.iter().enumerate().skip(place + 1) {
            if entry.wall() == other.wall()
                && let (Some(first), Some(second)) = (placed.end(entered, place), placed.end(entered, later))
                && let Some(step) = overlap(proof, first, second)
            {
                let finding = Finding::new(&PLACEMENT, Status::Violated, "finding-entries-overlap")
                    .with("first", entry.id())
                    .with("other", other.id());
                findings.push(finding.at(entry.at).at(other.at).step(step));
            }
        }
    }
    if !within.is_empty() && !findings.iter().any(|finding| finding.rule == &PLACEMENT) {
        let mut finding = Finding::new(&PLACEMENT, Status::Satisfied, "finding-entries-placed");
        finding.at = within;
        findings.push(finding);
    }
}

/// The step that shows two entries of one wall overlapping; `None` where they do not. Entries that are clear of one
/// another along one direction alone need no step.
fn overlap(proof: &mut Derivation, first: End, other: End) -> Option<crate::derivation::StepId> {
    let (Some(one), Some(two)) = (first.centre, other.centre) else { return None };
    let reach = first.radius.value + other.radius.value;
    let gaps = one.measures().into_iter().zip(two.measures());
    let near = gaps.clone().all(|((_, one), (_, two))| {
        let gap = one.value - two.value;
        gap < reach && gap.negated() < reach
    });
    if !near {
        return None;
    }
    let legs: Vec<Figure> = gaps
        .map(|((_, one), (_, two))| {
            let (more, less) = if one.value >= two.value { (one, two) } else { (two, one) };
            proof.difference(&PLACEMENT, more, less)
        })
        .collect();
    let centres = proof.distance(&PLACEMENT, &legs);
    let edges = proof.sum(&PLACEMENT, &[first.radius, other.radius]);
    let (clear, step) = proof.compare(&PLACEMENT, centres, Relation::AtLeast, edges);
    (!clear).then_some(step)
}
