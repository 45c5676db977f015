//! What learners get wrong about pull boxes.

use super::pull_box_strategies as strategies;
use crate::checks::pull_box::{Cover, PullBox, PullBoxOutcome, PullBoxRequest, SectionSize};
use crate::derivation::Figure;
use crate::quantity::Units;
use crate::rulebook::over_1000_volts;
use crate::rulebook::pull::{
    ANGLE, APPLIES, CABLES, ENTRY_DISTANCE, GOVERNS, REMOVABLE_COVER, STRAIGHT, TRADE_SIZE,
};
use crate::rulebook::reading::EntryDistance;
use crate::trade::ConductorSize;
use crate::training::situation::{Sentence, of_pull_box};
use crate::training::{Misconception, Quantity, Teachable};

type Wrong = Misconception<PullBox>;

static MISCONCEPTIONS: &[Wrong] = &[
    Wrong::of_rules("straight_sum", &[&STRAIGHT], |rules| rules.pull.straight_others.set_number(10_000)),
    Wrong::of_rules("angle_without_sum", &[&ANGLE], |rules| {
        rules.pull.angle_adds = strategies::ANGLE_ADDS_NOTHING;
    }),
    Wrong::of_rules("straight_by_six", &[&STRAIGHT], |rules| rules.pull.straight.set_number(60_000)),
    Wrong::of_rules("angle_by_eight", &[&ANGLE], |rules| rules.pull.angle.set_number(80_000)),
    Wrong::of_rules("angle_largest_again", &[&ANGLE], |rules| {
        rules.pull.angle_adds = strategies::ANGLE_ADDS_LARGEST_AGAIN;
    }),
    Wrong::of_rules("angle_rows_added", &[&ANGLE], |rules| {
        rules.pull.rows_together = strategies::ROWS_ADDED;
    }),
    Wrong::of_rules("angle_rows_as_one", &[&ANGLE], |rules| {
        rules.pull.rows_of_wall = strategies::ROWS_AS_ONE;
    }),
    Wrong::of_rules("distance_by_smaller", &[&ENTRY_DISTANCE], |rules| {
        rules.pull.distance_by = strategies::DISTANCE_BY_SMALLER;
    }),
    Wrong::of_rules("distance_skipped", &[&ENTRY_DISTANCE], |rules| rules.pull.entry_distance.set_number(0)),
    Wrong::of_rules("angle_other_wall_added", &[&ANGLE], |rules| {
        rules.pull.angle_adds = strategies::ANGLE_ADDS_OTHER_WALLS;
    }),
    Wrong::of_rules("angle_all_multiplied", &[&ANGLE], |rules| {
        rules.pull.angle_adds = strategies::ANGLE_MULTIPLIES_OTHERS;
    }),
    Wrong::of_request("cover_exception_missed", &[&REMOVABLE_COVER], cover_exception_missed),
    Wrong::of_rules("straight_and_angle_added", &[&GOVERNS], |rules| {
        rules.pull.together = strategies::REQUIREMENTS_ADDED;
    }),
    Wrong::of_rules("straight_trade_sizes_added", &[&STRAIGHT], |rules| {
        rules.pull.straight_of = strategies::ALL_ON_WALLS;
        rules.pull.straight.set_number(10_000);
    }),
    Wrong::of_rules("straight_all_multiplied", &[&STRAIGHT], |rules| {
        rules.pull.straight_of = strategies::ALL_ON_WALLS;
    }),
    Wrong::of_rules("straight_largest_anywhere", &[&STRAIGHT], |rules| {
        rules.pull.straight_of = strategies::LARGEST_ON_WALLS;
    }),
    Wrong::of_rules("straight_both_sides", &[&STRAIGHT], |rules| {
        rules.pull.straight_along = strategies::STRAIGHT_BOTH_SIDES;
    }),
    Wrong::of_rules("distance_by_eight", &[&ENTRY_DISTANCE], |rules| {
        rules.pull.entry_distance.set_number(80_000)
    }),
    Wrong::of_rules("raceway_outside_diameter", &[&TRADE_SIZE], |rules| {
        rules.pull.raceway_counts_as = strategies::RACEWAY_OUTSIDE_DIAMETER;
    }),
    Wrong::of_rules("cable_outside_diameter", &[&CABLES], |rules| {
        rules.pull.cable_counts_as = strategies::CABLE_OUTSIDE_DIAMETER;
    }),
    Wrong::of_rules("distance_between_centers", &[&ENTRY_DISTANCE], |rules| {
        rules.readings = rules.readings.choose(Some(EntryDistance::CentreToCentre));
    }),
    Wrong::of_rules("lengths_from_6_awg", &[&APPLIES], |rules| {
        rules.pull.applies_from = ConductorSize::AWG_6
    }),
    Wrong::of_request("raceway_over_1000_volts", &[&over_1000_volts::SCOPE], raceway_over_1000_volts),
    Wrong::of_rules(
        "nonshielded_as_shielded",
        &[&over_1000_volts::STRAIGHT, &over_1000_volts::ANGLE],
        |rules| {
            let book = &mut rules.over_1000_volts;
            book.straight.nonshielded.set_number(480_000);
            book.angle.nonshielded.set_number(360_000);
            book.entry_exit.nonshielded.set_number(360_000);
        },
    ),
    Wrong::of_rules(
        "shielded_as_nonshielded",
        &[&over_1000_volts::STRAIGHT, &over_1000_volts::ANGLE],
        |rules| {
            let book = &mut rules.over_1000_volts;
            book.straight.shielded.set_number(320_000);
            book.angle.shielded.set_number(240_000);
            book.entry_exit.shielded.set_number(240_000);
        },
    ),
    Wrong::of_rules("straight_as_angle_over_1000_volts", &[&over_1000_volts::STRAIGHT], |rules| {
        rules.over_1000_volts.straight.shielded.set_number(360_000);
        rules.over_1000_volts.straight.nonshielded.set_number(240_000);
    }),
    Wrong::of_rules("angle_as_straight_over_1000_volts", &[&over_1000_volts::ANGLE], |rules| {
        rules.over_1000_volts.angle.shielded.set_number(480_000);
        rules.over_1000_volts.angle.nonshielded.set_number(320_000);
    }),
    Wrong::of_rules("row_only_over_1000_volts", &[&over_1000_volts::ANGLE], |rules| {
        rules.over_1000_volts.angle_adds = strategies::CABLES_OF_ROW;
    }),
];

impl Teachable for PullBox {
    const QUANTITIES: &'static [Quantity<Self>] = &[
        Quantity::<Self>::new("width", |_, outcome| only(outcome)?.width.minimum),
        Quantity::<Self>::new("height", |_, outcome| only(outcome)?.height.minimum),
        Quantity::<Self>::new("depth", |_, outcome| only(outcome)?.depth.minimum),
        Quantity::<Self>::new("entry_distance", |_, outcome| farthest(outcome)),
        Quantity::<Self>::new("measured_distance", |_, outcome| only(outcome)?.distances.first()?.measured),
    ];
    const MISCONCEPTIONS: &'static [Misconception<Self>] = MISCONCEPTIONS;

    fn situation(request: &PullBoxRequest) -> Vec<Sentence> {
        of_pull_box(request)
    }

    fn in_units(request: &mut PullBoxRequest, units: Units) -> bool {
        let holds_sizes = request.entries.iter().any(|entry| {
            !entry.cables_over_1000_volts.is_empty()
                || entry.position.is_some()
                || entry.raceway.as_ref().is_some_and(|raceway| raceway.outside_diameter.is_some())
                || entry.cable.as_ref().is_some_and(|cable| cable.outside_diameter.is_some())
        });
        request.units = units;
        let divided = request.sections.iter().any(|section| section.inside.is_some());
        let is_sized = request.inside.is_some() || request.layout.is_some() || !request.amendments.is_empty();
        !holds_sizes && !is_sized && !divided
    }
}

/// The box, or its first section.
fn only(outcome: &PullBoxOutcome) -> Option<&SectionSize> {
    outcome.sections.first()
}

/// The greatest distance that two entries of the box must stand apart.
fn farthest(outcome: &PullBoxOutcome) -> Option<Figure> {
    only(outcome)?.distances.iter().map(|apart| apart.required).max_by_key(|required| required.value)
}

fn cover_exception_missed(request: &mut PullBoxRequest) -> bool {
    let missed = request.cover != Some(Cover::Fixed);
    request.cover = Some(Cover::Fixed);
    missed
}

/// The raceways of a system over 1000 V are sized as if it were one of 600 V.
fn raceway_over_1000_volts(request: &mut PullBoxRequest) -> bool {
    let all_in_raceways = request.entries.iter().all(|entry| entry.raceway.is_some());
    if !request.over_1000_volts || !all_in_raceways {
        return false;
    }
    request.over_1000_volts = false;
    request.entries.iter_mut().for_each(|entry| entry.cables_over_1000_volts.clear());
    for pull in &mut request.pulls {
        pull.insulated = Some(true);
        pull.largest_conductor = pull.largest_conductor.max(Some(ConductorSize::AWG_4));
    }
    true
}
