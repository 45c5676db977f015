//! What the rules require of each direction up to 1000 V: the straight rule, the angle rule, and the bending space that
//! may replace it opposite a removable cover.

use super::outcome::{AxisSize, LengthRequirement};
use super::pull::ResolvedPull;
use super::resolved::{AxisRequirement, Resolved};
use super::rows::{self, Row};
use super::wall::{Axis, Cover, Wall};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer};
use crate::quantity::{Decimal, Measure};
use crate::rulebook::pull::{
    ANGLE, AngleAdds, BLOCK_SPACE, CABLES, GOVERNS, REMOVABLE_COVER, RowsTogether, STRAIGHT, StraightAlong,
    StraightOf, Together,
};
use crate::rulebook::reading::{AngleSum, HingedCover};
use crate::rulebook::{Choice, Strategy};
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
        let together = (proof.rulebook().pull.rows_together.apply)(proof, rows);
        requirements.extend(together.into_iter().map(|row| (wall.across(), row)));
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
    let minimum = (proof.rulebook().pull.together.apply)(proof, &lengths);
    for requirement in &mut requirements {
        requirement.governs = Some(requirement.length.value) == minimum.map(|minimum| minimum.value);
    }
    AxisSize { minimum, requirements, given: None, margin: None }
}

impl Choice for Together {
    /// What some lengths along one direction come to; `None` where there are none.
    type Apply = fn(&mut Derivation, &[Figure]) -> Option<Figure>;
    const LAWFUL: Strategy<Self> =
        Strategy::<Self>::new("largest", |proof, lengths| proof.largest(&GOVERNS, lengths));
}

impl Choice for StraightAlong {
    /// Whether an entry that looks along the first direction asks along the second.
    type Apply = fn(Axis, Axis) -> bool;
    const LAWFUL: Strategy<Self> = Strategy::<Self>::new("the-pull", |of_entry, axis| of_entry == axis);
}

impl Choice for StraightOf {
    /// What stands for the raceways of straight pulls along a direction, whose entries are at some positions.
    type Apply = for<'a> fn(&mut Derivation, &Resolved<'a>, Axis, &[usize]) -> Option<Figure>;
    const LAWFUL: Strategy<Self> = Strategy::<Self>::new("largest-pulled", |proof, resolved, _, pulled| {
        proof.largest(&STRAIGHT, &resolved.sizes(pulled))
    });
}

/// The straight rule along one direction: a multiple of the largest raceway of its straight pulls.
fn straight(proof: &mut Derivation, resolved: &Resolved<'_>, axis: Axis) -> Option<LengthRequirement> {
    let asks_along = proof.rulebook().pull.straight_along.apply;
    let pulled = resolved.ends(|pull| pull.straight, |entry| asks_along(entry.wall.across(), axis));
    if pulled.is_empty() {
        return None;
    }
    let largest = (proof.rulebook().pull.straight_of.apply)(proof, resolved, axis, &pulled)?;
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

/// Takes one of some sizes out.
pub fn remove_one(sizes: &mut Vec<Figure>, value: Decimal) {
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
    let mut requirements = Vec::new();
    let rows = rows::of_wall(proof, resolved, wall);
    for entry in resolved.entries.iter().filter(|entry| entry.wall == wall && entry.row_is_said) {
        let row = entry.row.unwrap_or_default();
        proof.given(&ANGLE, row.into(), Measure::Number, entry.at.member(&"/row"));
    }
    for Row { number, entries, lines, wider } in rows {
        let turning: Vec<usize> = entries.iter().copied().filter(|position| angled(*position)).collect();
        if turning.is_empty() {
            let at = entries.first().and_then(|first| resolved.entries.get(*first)).map(|entry| entry.at);
            proof.does_not_apply(&ANGLE, "row-only-straight", at);
            continue;
        }
        let all_turn = turning.len() == entries.len();
        let by_turning = !all_turn && proof.reading::<AngleSum>() == AngleSum::AngleOnly;
        let of_row = |mut row: Vec<usize>| {
            row.retain(|position| !by_turning || angled(*position));
            row
        };
        let counted = of_row(entries);
        let of = AngleRow { resolved, wall, entries: &counted, turning: &turning };
        let Some(by_row) = row_length(proof, of) else { continue };
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
        let mut longest = |rows: Vec<Vec<usize>>| {
            let turn = rows.into_iter().filter(|row| row.iter().copied().any(angled)).map(of_row);
            let lengths: Vec<Figure> =
                turn.filter_map(|row| row_length(proof, AngleRow { entries: &row, ..of })).collect();
            proof.largest(&ANGLE, &lengths)
        };
        let least = lines.into_iter().filter_map(&mut longest).min_by_key(|least| least.value);
        if let Some(least) = least.filter(|least| least.value < requirement.length.value) {
            requirement.at_least = Some((least, resolved.places(&counted, &"/row")));
        }
        let unclear: Vec<usize> = wider.iter().flatten().copied().collect();
        if removable != Some(true)
            && let Some(most) = longest(wider).filter(|most| most.value > by_row.value)
        {
            let mut because = requirement.at_most.take().map(|(_, because)| because).unwrap_or_default();
            because.extend(resolved.rows_in_question(&counted, &unclear));
            requirement.at_most = Some((most, because));
        }
        requirements.push(requirement);
    }
    requirements
}

impl Choice for RowsTogether {
    /// What the requirements of the rows of one wall come to.
    type Apply = fn(&mut Derivation, Vec<LengthRequirement>) -> Vec<LengthRequirement>;
    const LAWFUL: Strategy<Self> = Strategy::<Self>::new("each-alone", |_, rows| rows);
}

/// A row as the angle rule counts it.
#[derive(Clone, Copy)]
pub struct AngleRow<'a> {
    /// Everything that is in the box.
    pub resolved: &'a Resolved<'a>,
    /// The wall of the row.
    pub wall: Wall,
    /// The positions of the entries that count.
    pub entries: &'a [usize],
    /// The positions of those with an angle pull, a U pull or a splice.
    pub turning: &'a [usize],
}

/// What the angle rule adds something to.
#[derive(Clone, Copy, Debug)]
pub struct Multiplied {
    /// How many times the largest raceway is taken.
    pub multiple: Figure,
    /// The largest raceway of the row.
    pub largest: Figure,
}

impl Choice for AngleAdds {
    /// What is added to the multiple of the largest raceway of a row with these sizes; `None` where nothing is.
    type Apply = for<'a> fn(&mut Derivation, AngleRow<'a>, Vec<Figure>, Multiplied) -> Option<Figure>;
    const LAWFUL: Strategy<Self> = Strategy::<Self>::new("others-of-row", |proof, _, mut sizes, of| {
        remove_one(&mut sizes, of.largest.value);
        (!sizes.is_empty()).then(|| proof.sum(&ANGLE, &sizes))
    });
}

/// A multiple of the largest raceway of the row, and all the others once.
fn row_length(proof: &mut Derivation, row: AngleRow<'_>) -> Option<Figure> {
    let sizes = row.resolved.sizes(row.entries);
    let largest = proof.largest(&ANGLE, &sizes)?;
    let multiple = proof.rulebook().pull.angle;
    let multiple = proof.stated(&multiple);
    let length = proof.product(&ANGLE, multiple, largest, None);
    let adds = proof.rulebook().pull.angle_adds;
    match (adds.apply)(proof, row, sizes, Multiplied { multiple, largest }) {
        Some(others) => Some(proof.sum(&ANGLE, &[length, others])),
        None => Some(length),
    }
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

/// Where a box holds power distribution blocks, the length of the angle rule for every row of every wall, whatever is pulled there.
/// What the angle rule asks of a row for its pulls is the same, and is asked once: by the rule that no marking relieves.
pub fn require_for_blocks(
    proof: &mut Derivation,
    resolved: &Resolved<'_>,
    requirements: &mut Vec<AxisRequirement>,
) {
    for wall in Wall::ALL {
        for Row { number, entries, .. } in rows::of_wall(proof, resolved, wall) {
            let row = AngleRow { resolved, wall, entries: &entries, turning: &entries };
            let Some(length) = row_length(proof, row) else { continue };
            let mut requirement = resolved.requirement(&BLOCK_SPACE, (Some(wall), number), length, &entries);
            requirement.unsaid.clear();
            let same = |(_, asked): &AxisRequirement| {
                std::ptr::eq(asked.rule, &ANGLE)
                    && (asked.wall, asked.row) == (requirement.wall, requirement.row)
                    && asked.length.value == length.value
                    && asked.entries == requirement.entries
            };
            if let Some(place) = requirements.iter().position(same) {
                let (_, asked) = requirements.remove(place);
                (requirement.at_least, requirement.at_most) = (asked.at_least, asked.at_most);
            }
            requirements.push((wall.across(), requirement));
        }
    }
}

/// Reports the entries without a size: what they would add is missing from every sum of their row.
fn unsized_entries(resolved: &Resolved<'_>, findings: &mut Vec<Finding>) {
    let at: Vec<Pointer> =
        resolved.entries.iter().filter(|entry| entry.size.is_none()).map(|entry| entry.at).collect();
    if at.is_empty() {
        return;
    }
    let is_unsized = |end: &usize| resolved.entries.get(*end).is_some_and(|entry| entry.size.is_none());
    let is_at_back = |end: &usize| resolved.entries.get(*end).is_some_and(|entry| entry.wall == Wall::Back);
    let ends_at_one = |pull: &ResolvedPull| pull.ends.iter().any(is_unsized);
    let pulls = resolved.pulls.iter().filter(|pull| ends_at_one(pull));
    let turns_at_back = |pull: &ResolvedPull| pull.angle && pull.ends.iter().any(is_at_back);
    let rules = [
        (&CABLES, true),
        (&STRAIGHT, pulls.clone().any(|pull| pull.straight)),
        (&ANGLE, pulls.clone().any(|pull| pull.angle)),
        (&REMOVABLE_COVER, pulls.clone().any(turns_at_back)),
    ];
    for (rule, _) in rules.into_iter().filter(|(_, is_asked)| *is_asked) {
        let mut finding = Finding::new(rule, Status::NotDetermined, "finding-entry-without-size");
        finding.supply = at.iter().map(|at| at.member(&"/raceway")).collect();
        finding.at.clone_from(&at);
        findings.push(finding);
    }
}
