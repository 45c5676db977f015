//! What the rules require of each direction up to 1000 V: the straight rule, the angle rule, and the bending space that
//! may replace it opposite a removable cover.

use super::outcome::{AxisSize, LengthRequirement};
use super::pull::ResolvedPull;
use super::resolved::{AxisRequirement, Resolved};
use super::rows::{self, Row};
use super::wall::{Axis, Cover, Wall};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer};
use crate::quantity::Decimal;
use crate::rulebook::pull::{
    ANGLE, AngleAdds, AngleRows, BLOCKS, CABLES, GOVERNS, REMOVABLE_COVER, STRAIGHT, StraightAlong,
    StraightOf, Together,
};
use crate::rulebook::reading::{AngleSum, HingedCover};
use crate::tables::wire_bending_space::{self, Stranding};

/// What is opposite the back.
#[derive(Clone, Copy, Debug)]
pub enum OppositeBack {
    /// The cover of a box, as far as the request says what it is.
    Cover(Option<Cover>),
    /// The cover of a conduit body, which comes off.
    CoverOfBody,
}

/// Every requirement, in the order of walls.
pub fn required(
    proof: &mut Derivation,
    resolved: &Resolved<'_>,
    opposite: OppositeBack,
    findings: &mut Vec<Finding>,
) -> Vec<AxisRequirement> {
    let mut requirements = Vec::new();
    for axis in [Axis::Width, Axis::Height] {
        requirements.extend(straight(proof, resolved, axis).map(|requirement| (axis, requirement)));
    }
    for wall in Wall::ALL {
        let rows = angles(proof, resolved, wall, opposite);
        requirements.extend(of_rows(proof, rows).into_iter().map(|row| (wall.across(), row)));
    }
    unsized_entries(resolved, findings);
    requirements
}

/// The requirements of one direction, and the largest of them.
pub fn axis_size(proof: &mut Derivation, axis: Axis, all: &[AxisRequirement]) -> AxisSize {
    let of_axis = all.iter().filter(|(along, _)| *along == axis);
    let mut requirements: Vec<LengthRequirement> =
        of_axis.map(|(_, requirement)| requirement.clone()).collect();
    let lengths: Vec<Figure> = requirements.iter().map(|requirement| requirement.length).collect();
    let minimum = match proof.rulebook().pull.together {
        Together::Largest => proof.largest(&GOVERNS, &lengths),
        Together::Added if lengths.is_empty() => None,
        Together::Added => Some(proof.sum(&GOVERNS, &lengths)),
    };
    for requirement in &mut requirements {
        requirement.governs = Some(requirement.length.value) == minimum.map(|minimum| minimum.value);
    }
    AxisSize { minimum, requirements, given: None, margin: None }
}

/// The straight rule along one direction: a multiple of the largest raceway of its straight pulls.
fn straight(proof: &mut Derivation, resolved: &Resolved<'_>, axis: Axis) -> Option<LengthRequirement> {
    let any_side = proof.rulebook().pull.straight_along == StraightAlong::BothSides;
    let pulled = resolved.ends(|pull| pull.straight, |entry| any_side || entry.wall.across() == axis);
    if pulled.is_empty() {
        return None;
    }
    let sizes = match proof.rulebook().pull.straight_of {
        StraightOf::LargestPulled => resolved.sizes(&pulled),
        StraightOf::LargestOnWalls | StraightOf::AllOnWalls => {
            resolved.sizes(&resolved.where_wall(|wall| wall.across() == axis))
        }
    };
    let largest = if proof.rulebook().pull.straight_of == StraightOf::AllOnWalls {
        proof.sum(&STRAIGHT, &sizes)
    } else {
        proof.largest(&STRAIGHT, &sizes)?
    };
    let multiple = proof.rulebook().pull.straight;
    let multiple = proof.stated(&multiple);
    let mut length = proof.product(&STRAIGHT, multiple, largest, None);
    if let Some(others) = others_in_row(proof, resolved, &pulled) {
        length = proof.sum(&STRAIGHT, &[length, others]);
    }
    Some(resolved.requirement(&STRAIGHT, (None, None), length, &pulled))
}

/// What a local amendment adds to a straight pull: a multiple of the other raceways of the row that has most of them.
/// The code itself adds nothing.
fn others_in_row(proof: &mut Derivation, resolved: &Resolved<'_>, pulled: &[usize]) -> Option<Figure> {
    let figure = proof.rulebook().pull.straight_others;
    if proof.rulebook().value(&figure, proof.units()).0 == Decimal::ZERO {
        return None;
    }
    let mut walls: Vec<Wall> =
        pulled.iter().filter_map(|position| Some(resolved.entries.get(*position)?.wall)).collect();
    walls.dedup();
    let mut sums = Vec::new();
    for wall in walls {
        for row in rows::of_wall(proof, resolved, wall) {
            if !row.entries.iter().any(|position| pulled.contains(position)) {
                continue;
            }
            let mut sizes = resolved.sizes(&row.entries);
            if let Some(largest) = sizes.iter().map(|size| size.value).max() {
                remove_one(&mut sizes, largest);
            }
            if !sizes.is_empty() {
                sums.push(proof.sum(&STRAIGHT, &sizes));
            }
        }
    }
    let most = proof.largest(&STRAIGHT, &sums)?;
    let times = proof.stated(&figure);
    Some(proof.product(&STRAIGHT, times, most, None))
}

fn remove_one(sizes: &mut Vec<Figure>, value: Decimal) {
    if let Some(position) = sizes.iter().position(|size| size.value == value) {
        sizes.remove(position);
    }
}

/// The angle rule for each row of a wall that has an angle pull, a U pull or a splice.
fn angles(
    proof: &mut Derivation,
    resolved: &Resolved<'_>,
    wall: Wall,
    opposite: OppositeBack,
) -> Vec<LengthRequirement> {
    let angled =
        |position: usize| resolved.pulls.iter().any(|pull| pull.angle && pull.ends.contains(&position));
    if !resolved.on(wall).into_iter().any(angled) {
        return Vec::new();
    }
    let removable = if wall == Wall::Back { is_removable(proof, opposite) } else { Some(false) };
    let on_a_line = rows::on_a_line(resolved, wall);
    let mut requirements = Vec::new();
    for Row { number, entries } in rows::of_wall(proof, resolved, wall) {
        let turning: Vec<usize> = entries.iter().copied().filter(|position| angled(*position)).collect();
        if turning.is_empty() {
            let at = entries.first().and_then(|first| resolved.entries.get(*first)).map(|entry| entry.at);
            proof.does_not_apply(&ANGLE, "row-only-straight", at);
            continue;
        }
        let all_turn = turning.len() == entries.len();
        let counted = if !all_turn && proof.reading::<AngleSum>() == AngleSum::AngleOnly {
            turning.clone()
        } else {
            entries
        };
        let pulled_to = pulled_to(proof, resolved, wall, &turning);
        let Some(by_row) = row_length(proof, resolved, &counted, &pulled_to) else { continue };
        let bending =
            if removable == Some(false) { None } else { bending_space(proof, &resolved.pulls, &turning) };
        let (rule, length) = match bending {
            None => (&ANGLE, by_row),
            Some(bending) => {
                let least = proof.smallest(&REMOVABLE_COVER, &[by_row, bending]).unwrap_or(bending);
                (&REMOVABLE_COVER, least)
            }
        };
        let mut requirement = resolved.requirement(rule, (Some(wall), number), length, &counted);
        if removable.is_none() && by_row.value > length.value {
            requirement.at_most = Some((by_row, vec![Pointer::to(&"/cover")]));
        }
        let lined = on_a_line.iter().filter(|line| line.iter().any(|position| turning.contains(position)));
        let lined: Vec<Figure> =
            lined.filter_map(|line| row_length(proof, resolved, line, &pulled_to)).collect();
        if removable != Some(true)
            && let Some(most) = proof.largest(&ANGLE, &lined).filter(|most| most.value > by_row.value)
        {
            let mut because = requirement.at_most.take().map(|(_, because)| because).unwrap_or_default();
            because.extend(resolved.places(&counted, &"/row"));
            requirement.at_most = Some((most, because));
        }
        requirements.push(requirement);
    }
    requirements
}

/// The requirements of the rows of a wall: each by itself, as the code has it, or added where the rulebook says so.
fn of_rows(proof: &mut Derivation, rows: Vec<LengthRequirement>) -> Vec<LengthRequirement> {
    let Some(first) = rows.first().filter(|_| proof.rulebook().pull.angle_rows == AngleRows::Added) else {
        return rows;
    };
    let lengths: Vec<Figure> = rows.iter().map(|row| row.length).collect();
    let together = LengthRequirement { length: proof.sum(&ANGLE, &lengths), ..first.clone() };
    vec![together]
}

/// The entries on other walls that a row pulls to, where the rulebook adds those; the code does not.
fn pulled_to(proof: &Derivation, resolved: &Resolved<'_>, wall: Wall, row: &[usize]) -> Vec<usize> {
    if proof.rulebook().pull.angle_adds != AngleAdds::OtherWallsToo {
        return Vec::new();
    }
    resolved.ends(|pull| pull.ends_at_any(row), |entry| entry.wall != wall)
}

/// A multiple of the largest raceway of the row, and all the others once.
fn row_length(
    proof: &mut Derivation,
    resolved: &Resolved<'_>,
    row: &[usize],
    pulled_to: &[usize],
) -> Option<Figure> {
    let mut sizes = resolved.sizes(row);
    let largest = proof.largest(&ANGLE, &sizes)?;
    let multiple = proof.rulebook().pull.angle;
    let multiple = proof.stated(&multiple);
    let length = proof.product(&ANGLE, multiple, largest, None);
    let adds = proof.rulebook().pull.angle_adds;
    if adds != AngleAdds::LargestAgain {
        remove_one(&mut sizes, largest.value);
    }
    sizes.extend(resolved.sizes(pulled_to));
    if sizes.is_empty() || adds == AngleAdds::Nothing {
        return Some(length);
    }
    let mut others = proof.sum(&ANGLE, &sizes);
    if adds == AngleAdds::OthersMultiplied {
        others = proof.product(&ANGLE, multiple, others, None);
    }
    Some(proof.sum(&ANGLE, &[length, others]))
}

/// The bending space of the largest conductor that turns at some entries; `None` where a pull there has no known
/// conductor.
fn bending_space(proof: &mut Derivation, pulls: &[ResolvedPull], turning: &[usize]) -> Option<Figure> {
    let mut spaces: Vec<Figure> = Vec::new();
    let mut seen = Vec::new();
    for pull in pulls.iter().filter(|pull| pull.angle && pull.ends_at_any(turning)) {
        let (size, stranding) = pull.largest?;
        if seen.contains(&(size, stranding)) {
            continue;
        }
        seen.push((size, stranding));
        let plain = || wire_bending_space::of(size, Stranding::Plain, proof.units());
        let cell = wire_bending_space::of(size, stranding, proof.units()).or_else(plain)?;
        spaces.push(proof.lookup(&REMOVABLE_COVER, cell, Some(pull.at())));
    }
    proof.largest(&REMOVABLE_COVER, &spaces)
}

/// Whether the wall opposite the back is a removable cover; `None` where it is not said.
pub fn is_removable(proof: &mut Derivation, opposite: OppositeBack) -> Option<bool> {
    let OppositeBack::Cover(cover) = opposite else { return Some(true) };
    let at = Pointer::to(&"/cover");
    let (removable, says) = match cover? {
        Cover::Removable => (true, "removable"),
        Cover::Hinged => (proof.reading::<HingedCover>() == HingedCover::Removable, "hinged"),
        Cover::Fixed => (false, "fixed"),
    };
    if removable {
        proof.word(&REMOVABLE_COVER, says, at);
    } else {
        proof.does_not_apply(&REMOVABLE_COVER, "cover-not-removable", Some(at));
    }
    Some(removable)
}

/// Where a box holds power distribution blocks, the angle rule for every row of every wall, whatever is pulled there.
pub fn required_by_blocks(proof: &mut Derivation, resolved: &Resolved<'_>) -> Vec<AxisRequirement> {
    let mut requirements = Vec::new();
    for wall in Wall::ALL {
        for Row { number, entries } in rows::of_wall(proof, resolved, wall) {
            let pulled_to = pulled_to(proof, resolved, wall, &entries);
            if let Some(length) = row_length(proof, resolved, &entries, &pulled_to) {
                let mut requirement = resolved.requirement(&BLOCKS, (Some(wall), number), length, &entries);
                requirement.unsaid.clear();
                requirements.push((wall.across(), requirement));
            }
        }
    }
    requirements
}

/// Reports the entries without a size: what they would add is missing from every sum of their row.
fn unsized_entries(resolved: &Resolved<'_>, findings: &mut Vec<Finding>) {
    let at: Vec<Pointer> =
        resolved.entries.iter().filter(|entry| entry.size.is_none()).map(|entry| entry.at).collect();
    if !at.is_empty() {
        let mut finding = Finding::new(&CABLES, Status::NotDetermined, "finding-entry-without-size");
        finding.supply = at.iter().map(|at| at.member(&"/raceway")).collect();
        finding.at = at;
        findings.push(finding);
    }
}
