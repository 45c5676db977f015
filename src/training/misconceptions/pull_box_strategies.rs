//! What learners do with the raceways of a pull box in place of what the code does.

use crate::checks::pulls::lengths::{AngleRow, Multiplied, remove_one};
use crate::checks::pulls::rows::{Row, undivided};
use crate::checks::pulls::{Axis, LengthRequirement, Resolved};
use crate::derivation::{Derivation, Figure};
use crate::rulebook::over_1000_volts::CablesAdded;
use crate::rulebook::pull::{
    ANGLE, AngleAdds, CableCountsAs, DistanceBy, ENTRY_DISTANCE, GOVERNS, RacewayCountsAs, RowsOfWall,
    RowsTogether, STRAIGHT, StraightAlong, StraightOf, Together,
};
use crate::rulebook::{Choice, Strategy};

const OUTSIDE_DIAMETER: &str = "outside-diameter";

pub(super) const RACEWAY_OUTSIDE_DIAMETER: Strategy<RacewayCountsAs> =
    Strategy::<RacewayCountsAs>::new(OUTSIDE_DIAMETER, outside_diameter);
pub(super) const CABLE_OUTSIDE_DIAMETER: Strategy<CableCountsAs> =
    Strategy::<CableCountsAs>::new(OUTSIDE_DIAMETER, outside_diameter);

fn outside_diameter(size: Option<Figure>, outside: Option<Figure>) -> Option<Figure> {
    outside.or(size)
}

pub(super) const STRAIGHT_BOTH_SIDES: Strategy<StraightAlong> =
    Strategy::<StraightAlong>::new("both-sides", |_, _| true);

pub(super) const LARGEST_ON_WALLS: Strategy<StraightOf> =
    Strategy::<StraightOf>::new("largest-on-walls", |proof, resolved, axis, _| {
        proof.largest(&STRAIGHT, &sizes_on_walls(resolved, axis))
    });

pub(super) const ALL_ON_WALLS: Strategy<StraightOf> =
    Strategy::<StraightOf>::new("all-on-walls", |proof, resolved, axis, _| {
        Some(proof.sum(&STRAIGHT, &sizes_on_walls(resolved, axis)))
    });

/// The raceways of two walls, whatever they pull.
fn sizes_on_walls(resolved: &Resolved<'_>, axis: Axis) -> Vec<Figure> {
    resolved.sizes(&resolved.where_wall(|wall| wall.across() == axis))
}

pub(super) const ANGLE_ADDS_NOTHING: Strategy<AngleAdds> =
    Strategy::<AngleAdds>::new("nothing", |_, _, _, _| None);

pub(super) const ANGLE_ADDS_LARGEST_AGAIN: Strategy<AngleAdds> =
    Strategy::<AngleAdds>::new("largest-again", |proof, _, sizes, _| Some(proof.sum(&ANGLE, &sizes)));

pub(super) const ANGLE_MULTIPLIES_OTHERS: Strategy<AngleAdds> =
    Strategy::<AngleAdds>::new("others-multiplied", |proof, row, sizes, of| {
        let others = (AngleAdds::LAWFUL.apply)(proof, row, sizes, of)?;
        Some(proof.product(&ANGLE, of.multiple, others, None))
    });

pub(super) const ANGLE_ADDS_OTHER_WALLS: Strategy<AngleAdds> =
    Strategy::<AngleAdds>::new("other-walls-too", with_other_walls);

/// The others of the row, and the raceways on other walls that it pulls to.
fn with_other_walls(
    proof: &mut Derivation,
    row: AngleRow<'_>,
    mut sizes: Vec<Figure>,
    of: Multiplied,
) -> Option<Figure> {
    remove_one(&mut sizes, of.largest.value);
    let elsewhere = row.resolved.ends(|pull| pull.ends_at_any(row.turning), |entry| entry.wall != row.wall);
    sizes.extend(row.resolved.sizes(&elsewhere));
    (!sizes.is_empty()).then(|| proof.sum(&ANGLE, &sizes))
}

pub(super) const ROWS_AS_ONE: Strategy<RowsOfWall> = Strategy::<RowsOfWall>::new("as-one", as_one);

fn as_one(_: &mut Derivation, _: &Resolved<'_>, of_wall: Vec<usize>) -> Vec<Row> {
    undivided(of_wall)
}

pub(super) const ROWS_ADDED: Strategy<RowsTogether> = Strategy::<RowsTogether>::new("added", added);

fn added(proof: &mut Derivation, rows: Vec<LengthRequirement>) -> Vec<LengthRequirement> {
    let Some(first) = rows.first() else { return rows };
    let lengths: Vec<Figure> = rows.iter().map(|row| row.length).collect();
    vec![LengthRequirement { length: proof.sum(&ANGLE, &lengths), ..first.clone() }]
}

pub(super) const DISTANCE_BY_SMALLER: Strategy<DistanceBy> =
    Strategy::<DistanceBy>::new("smaller", |proof, sizes| proof.smallest(&ENTRY_DISTANCE, sizes));

pub(super) const REQUIREMENTS_ADDED: Strategy<Together> =
    Strategy::<Together>::new("added", |proof, lengths| {
        (!lengths.is_empty()).then(|| proof.sum(&GOVERNS, lengths))
    });

pub(super) const CABLES_OF_ROW: Strategy<CablesAdded> = Strategy::<CablesAdded>::new("of-row", of_row);

/// The entries in the rows of those that turn.
fn of_row(resolved: &Resolved<'_>, mut on_wall: Vec<usize>, turning: &[usize]) -> Vec<usize> {
    let row = |position: &usize| resolved.entries.get(*position).and_then(|entry| entry.row);
    let rows: Vec<Option<u32>> = turning.iter().map(row).collect();
    on_wall.retain(|position| rows.contains(&row(position)));
    on_wall
}
