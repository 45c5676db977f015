//! Whether entries stand in their walls as they are said to: within them, and clear of one another.

use super::geometry::{Centre, End, Sides};
use super::holes::Hole;
use crate::checks::pulls::entry::ResolvedEntry;
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Relation, StepId};
use crate::rulebook::geometry::{ENTRIES, POSITIONS};
use crate::rulebook::pull::PLACEMENT;

/// An entry in its place.
struct Placed<'a> {
    entry: &'a ResolvedEntry<'a>,
    centre: Centre,
    hole: Hole,
    /// Half of the smallest and of the largest diameter of its hole.
    radii: [Figure; 2],
}

/// Compares every position with its wall and with the others of the wall: what does not go with the smallest holes cannot be, and what
/// does not go with the largest turns on what is not said.
pub(super) fn compare(
    proof: &mut Derivation,
    sides: &Sides,
    entries: &[ResolvedEntry<'_>],
    (ends, holes): (&[Option<End>], &[Option<Hole>]),
    findings: &mut Vec<Finding>,
) {
    let mut placed = Vec::new();
    for (entry, (end, hole)) in entries.iter().zip(ends.iter().zip(holes)) {
        let (Some(End { centre: Some(centre), .. }), Some(hole)) = (end, hole) else { continue };
        let least = half(proof, hole.least);
        let most = if hole.is_open() { half(proof, hole.most) } else { least };
        placed.push(Placed { entry, centre: *centre, hole: *hole, radii: [least, most] });
    }
    let mut within = Finding::new(&POSITIONS, Status::Satisfied, "finding-entries-placed");
    let mut steps = Vec::new();
    for one in &placed {
        let (status, step) = in_wall(proof, sides, one);
        let at = one.entry.at.member(&"/position");
        match status {
            Status::Satisfied => {
                within.at.push(one.entry.at);
                steps.extend(step);
            }
            status => {
                let message = match status {
                    Status::Violated => "finding-entry-outside-wall",
                    _ => "finding-placed-by-kind",
                };
                let mut finding =
                    Finding::new(&POSITIONS, status, message).with("entry", one.entry.id).at(at);
                if status == Status::Violated {
                    finding = finding.with("wall", one.entry.wall.name());
                }
                finding.step = step;
                findings.push(supplied(finding, &[one]));
            }
        }
    }
    within.step = proof.every(&POSITIONS, &steps);
    if within.step.is_some() {
        findings.push(within);
    }
    for (place, one) in placed.iter().enumerate() {
        for other in placed.iter().skip(place + 1).filter(|other| other.entry.wall == one.entry.wall) {
            let overlap = overlap(proof, one, other, 0).map(|step| (Status::Violated, step));
            let may_overlap = || overlap_at_most(proof, one, other);
            let Some((status, step)) = overlap.or_else(may_overlap) else { continue };
            let finding = match status {
                Status::Violated => Finding::new(&ENTRIES, status, "finding-entries-overlap")
                    .with("first", one.entry.id)
                    .with("other", other.entry.id),
                _ => Finding::new(&ENTRIES, status, "finding-placed-by-kind").with("entry", one.entry.id),
            };
            let finding = finding.at(one.entry.at).at(other.entry.at).step(step);
            findings.push(supplied(finding, &[one, other]));
        }
    }
}

fn half(proof: &mut Derivation, diameter: Figure) -> Figure {
    let half = proof.rulebook().pull.half;
    let half = proof.stated(&half);
    proof.product(&PLACEMENT, half, diameter, None)
}

/// Asks for what would decide a finding that is open.
fn supplied(mut finding: Finding, of: &[&Placed<'_>]) -> Finding {
    if finding.status == Status::NotDetermined {
        finding.supply = of.iter().filter(|one| one.hole.is_open()).map(|one| one.hole.decided_at).collect();
    }
    finding
}

fn in_wall(proof: &mut Derivation, sides: &Sides, one: &Placed<'_>) -> (Status, Option<StepId>) {
    let [least, most] = one.radii;
    let (holds, step) = one.centre.within(proof, sides, least);
    if !holds || !one.hole.is_open() {
        return (if holds { Status::Satisfied } else { Status::Violated }, step);
    }
    let (holds, step) = one.centre.within(proof, sides, most);
    (if holds { Status::Satisfied } else { Status::NotDetermined }, step)
}

fn overlap_at_most(proof: &mut Derivation, one: &Placed<'_>, other: &Placed<'_>) -> Option<(Status, StepId)> {
    let is_open = one.hole.is_open() || other.hole.is_open();
    is_open.then(|| overlap(proof, one, other, 1)).flatten().map(|step| (Status::NotDetermined, step))
}

/// The step that shows two entries of one wall overlapping, by their smallest holes (0) or their largest (1); `None` where they do not.
/// Entries that are clear of one another along one direction alone need no step.
fn overlap(proof: &mut Derivation, one: &Placed<'_>, other: &Placed<'_>, by: usize) -> Option<StepId> {
    let radii = [*one.radii.get(by)?, *other.radii.get(by)?];
    let reach = radii[0].value + radii[1].value;
    if one.centre.gaps(&other.centre).iter().any(|gap| *gap >= reach) {
        return None;
    }
    let centres = one.centre.distance(&other.centre, proof);
    let edges = proof.sum(&PLACEMENT, &radii);
    let (clear, step) = proof.compare(&PLACEMENT, centres, Relation::AtLeast, edges);
    (!clear).then_some(step)
}
