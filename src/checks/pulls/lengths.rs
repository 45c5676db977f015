//! What the rules ask of each direction up to 1000 V: the straight rule, the angle rule, and the bending space that may
//! serve opposite a removable cover.

use super::entry::Entered;
use super::outcome::LengthRequirement;
use super::pull::Joined;
use super::rows::{self, Row};
use super::wall::{Axis, Cover, Wall};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer};
use crate::quantity::Decimal;
use crate::rulebook::Rule;
use crate::rulebook::pull::{
    ANGLE, AngleAdds, AngleRows, CABLES, REMOVABLE_COVER, STRAIGHT, StraightAlong, StraightOf,
};
use crate::rulebook::reading::{AngleSum, HingedCover};
use crate::tables::wire_bending_space::{self, Stranding};

/// A requirement, with the direction that it is about.
pub type Asked = (Axis, LengthRequirement);

/// Everything that is asked, in the order of walls.
pub fn asked(
    proof: &mut Derivation,
    entered: &[Entered<'_>],
    joined: &[Joined],
    cover: Cover,
    findings: &mut Vec<Finding>,
) -> Vec<Asked> {
    let mut asked = Vec::new();
    for axis in [Axis::Width, Axis::Height] {
        asked.extend(straight(proof, entered, joined, axis).map(|requirement| (axis, requirement)));
    }
    for wall in Wall::ALL {
        let of_wall = angles(proof, entered, joined, wall, cover);
        for requirement in of_rows(proof, of_wall) {
            asked.push((wall.across(), requirement));
        }
    }
    unsized_entries(entered, findings);
    asked
}

/// The straight rule along one direction: so many times the largest raceway of its straight pulls.
fn straight(
    proof: &mut Derivation,
    entered: &[Entered<'_>],
    joined: &[Joined],
    axis: Axis,
) -> Option<LengthRequirement> {
    let mut places: Vec<usize> = joined
        .iter()
        .filter(|joined| joined.straight)
        .flat_map(|joined| joined.between)
        .filter(|place| {
            let along = |entry: &Entered<'_>| entry.wall().across() == axis;
            entered.get(*place).is_some_and(along)
                || proof.rulebook().pull.straight_along == StraightAlong::BothSides && axis != Axis::Depth
        })
        .collect();
    places.sort_unstable();
    places.dedup();
    let counted = match proof.rulebook().pull.straight_of {
        _ if places.is_empty() => return None,
        StraightOf::LargestPulled => places.clone(),
        StraightOf::LargestOnWalls | StraightOf::AllOnWalls => (0..entered.len())
            .filter(|place| entered.get(*place).is_some_and(|entry| entry.wall().across() == axis))
            .collect(),
    };
    let sizes = sizes_of(entered, &counted);
    let largest = if proof.rulebook().pull.straight_of == StraightOf::AllOnWalls {
        proof.sum(&STRAIGHT, &sizes)
    } else {
        proof.largest(&STRAIGHT, &sizes)?
    };
    let multiple = proof.rulebook().pull.straight;
    let multiple = proof.stated(&multiple);
    let mut length = proof.product(&STRAIGHT, multiple, largest, None);
    if let Some(others) = others_in_row(proof, entered, &places) {
        length = proof.sum(&STRAIGHT, &[length, others]);
    }
    Some(requirement(&STRAIGHT, None, None, length, entered, &places))
}

/// What a local amendment adds to a straight pull: so many times the other raceways of the row that has most of them.
/// The code itself adds nothing.
fn others_in_row(proof: &mut Derivation, entered: &[Entered<'_>], straight: &[usize]) -> Option<Figure> {
    let figure = proof.rulebook().pull.straight_others;
    if proof.rulebook().value(&figure, proof.units()).0 == Decimal::ZERO {
        return None;
    }
    let mut sums = Vec::new();
    let mut walls: Vec<Wall> =
        straight.iter().filter_map(|place| Some(entered.get(*place)?.wall())).collect();
    walls.dedup();
    for wall in walls {
        for row in rows::of_wall(proof, entered, wall) {
            if !row.entries.iter().any(|place| straight.contains(place)) {
                continue;
            }
            let mut sizes = sizes_of(entered, &row.entries);
            if let Some(largest) = sizes.iter().map(|size| size.value).max()
                && let Some(place) = sizes.iter().position(|size| size.value == largest)
            {
                sizes.remove(place);
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

/// The angle rule for each row of a wall that has an angle pull, a U pull or a splice.
fn angles(
    proof: &mut Derivation,
    entered: &[Entered<'_>],
    joined: &[Joined],
    wall: Wall,
    cover: Cover,
) -> Vec<LengthRequirement> {
    let angled = |place: usize| joined.iter().any(|joined| joined.angle && joined.between.contains(&place));
    if !(0..entered.len())
        .any(|place| entered.get(place).is_some_and(|entry| entry.wall() == wall) && angled(place))
    {
        return Vec::new();
    }
    let removable = wall == Wall::Back && is_removable(proof, cover);
    let mut requirements = Vec::new();
    for row in rows::of_wall(proof, entered, wall) {
        let Row { number, entries } = row;
        let turning: Vec<usize> = entries.iter().copied().filter(|place| angled(*place)).collect();
        if turning.is_empty() {
            let at = entries.first().and_then(|place| entered.get(*place)).map(|entry| entry.at);
            proof.does_not_apply(&ANGLE, "row-only-straight", at);
            continue;
        }
        let counted = if turning.len() == entries.len() {
            entries
        } else {
            match proof.reading::<AngleSum>() {
                AngleSum::AllInRow => entries,
                AngleSum::AngleOnly => turning.clone(),
            }
        };
        let pulled_to = pulled_to(proof, entered, joined, wall, &turning);
        let Some(by_row) = row_length(proof, entered, &counted, &pulled_to) else { continue };
        let bending = if removable { bending_space(proof, joined, &turning) } else { None };
        let (rule, length) = match bending {
            None => (&ANGLE, by_row),
            Some(bending) => {
                let least = proof.smallest(&REMOVABLE_COVER, &[by_row, bending]).unwrap_or(bending);
                (&REMOVABLE_COVER, least)
            }
        };
        requirements.push(requirement(rule, Some(wall), number, length, entered, &counted));
    }
    requirements
}

/// What the rows of a wall come to: each by itself, as the code has it.
fn of_rows(proof: &mut Derivation, rows: Vec<LengthRequirement>) -> Vec<LengthRequirement> {
    let Some(first) = rows.first().filter(|_| proof.rulebook().pull.angle_rows == AngleRows::Added) else {
        return rows;
    };
    let lengths: Vec<Figure> = rows.iter().map(|row| row.length).collect();
    let together = LengthRequirement { length: proof.sum(&ANGLE, &lengths), ..first.clone() };
    vec![together]
}

/// The entries on other walls that a row pulls to, where the rulebook adds those; the code does not.
fn pulled_to(
    proof: &Derivation,
    entered: &[Entered<'_>],
    joined: &[Joined],
    wall: Wall,
    row: &[usize],
) -> Vec<usize> {
    if proof.rulebook().pull.angle_adds != AngleAdds::OtherWallsToo {
        return Vec::new();
    }
    let of_row = joined.iter().filter(|joined| joined.between.iter().any(|place| row.contains(place)));
    let mut other: Vec<usize> = of_row
        .flat_map(|joined| joined.between)
        .filter(|place| entered.get(*place).is_some_and(|entry| entry.wall() != wall))
        .collect();
    other.sort_unstable();
    other.dedup();
    other
}

/// So many times the largest raceway of the row, and all the others once.
fn row_length(
    proof: &mut Derivation,
    entered: &[Entered<'_>],
    row: &[usize],
    pulled_to: &[usize],
) -> Option<Figure> {
    let mut sizes = sizes_of(entered, row);
    let largest = proof.largest(&ANGLE, &sizes)?;
    let multiple = proof.rulebook().pull.angle;
    let multiple = proof.stated(&multiple);
    let length = proof.product(&ANGLE, multiple, largest, None);
    let adds = proof.rulebook().pull.angle_adds;
    if adds != AngleAdds::LargestAgain
        && let Some(place) = sizes.iter().position(|size| size.value == largest.value)
    {
        sizes.remove(place);
    }
    sizes.extend(sizes_of(entered, pulled_to));
    if sizes.is_empty() || adds == AngleAdds::Nothing {
        return Some(length);
    }
    let mut others = proof.sum(&ANGLE, &sizes);
    if adds == AngleAdds::OthersMultiplied {
        others = proof.product(&ANGLE, multiple, others, None);
    }
    Some(proof.sum(&ANGLE, &[length, others]))
}

/// The bending space of the largest conductor of the entries; `None` where one of them has no known conductor.
fn bending_space(proof: &mut Derivation, joined: &[Joined], entries: &[usize]) -> Option<Figure> {
    let mut spaces: Vec<Figure> = Vec::new();
    let mut seen = Vec::new();
    let pulls = joined
        .iter()
        .filter(|joined| joined.angle && joined.between.iter().any(|place| entries.contains(place)));
    for pull in pulls {
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

/// Whether the wall opposite the back is a removable cover.
pub fn is_removable(proof: &mut Derivation, cover: Cover) -> bool {
    let removable = match cover {
        Cover::Removable => true,
        Cover::Hinged => proof.reading::<HingedCover>() == HingedCover::Removable,
        Cover::Fixed => false,
    };
    if !removable {
        let at = Some(Pointer::to(&"/cover"));
        proof.does_not_apply(&REMOVABLE_COVER, "cover-not-removable", at);
    }
    removable
}

/// Says which entries could not be given a size: what they would add is missing from every sum of their row.
fn unsized_entries(entered: &[Entered<'_>], findings: &mut Vec<Finding>) {
    let at: Vec<Pointer> =
        entered.iter().filter(|entry| entry.size.is_none()).map(|entry| entry.at).collect();
    if !at.is_empty() {
        let mut finding = Finding::new(&CABLES, Status::NotDetermined, "finding-entry-without-size");
        finding.supply = at.iter().map(|at| at.member(&"/raceway")).collect();
        finding.at = at;
        findings.push(finding);
    }
}

fn sizes_of(entered: &[Entered<'_>], places: &[usize]) -> Vec<Figure> {
    places.iter().filter_map(|place| entered.get(*place)?.size).collect()
}

/// A requirement that does not yet know whether it governs.
pub fn requirement(
    rule: &'static Rule,
    wall: Option<Wall>,
    row: Option<u32>,
    length: Figure,
    entered: &[Entered<'_>],
    places: &[usize],
) -> LengthRequirement {
    let entries =
        places.iter().filter_map(|place| entered.get(*place)).map(|entry| entry.id().to_owned()).collect();
    LengthRequirement { rule, wall, row, length, governs: false, entries }
}
