//! What learners get wrong about the depth of boxes.

use crate::checks::box_depths::{BoxDepths, BoxDepthsRequest};
use crate::rulebook::box_depth::{AWG_12_OR_10, DepthTakes, EQUIPMENT, LARGE, PLAIN, REAR_CENTER};
use crate::rulebook::{Rules, Strategy};
use crate::training::situation::{Sentence, of_depths};
use crate::training::{Misconception, Quantity, Teachable};

type Wrong = Misconception<BoxDepths>;

/// More than any equipment projects, in ten-thousandths of an inch and of a millimetre.
const NEVER: (i64, i64) = (10_000_000, 250_000_000);

static MISCONCEPTIONS: &[Wrong] = &[
    Wrong::of_rules("depth_without_room_behind", &[&LARGE, &AWG_12_OR_10], |rules| {
        rules.box_depth.behind.set_number(0);
        rules.box_depth.behind_large.set_number(0);
    }),
    Wrong::edition_before("depth_by_edition_before", &[&REAR_CENTER]),
    Wrong::of_rules("depth_by_conductor_only", &[&LARGE, &AWG_12_OR_10], depth_by_conductor_only),
    Wrong::of_rules("depth_half_inch_only", &[&PLAIN, &EQUIPMENT], depth_half_inch_only),
    Wrong::of_rules("rear_center_quarter", &[&REAR_CENTER], |rules| rear_center(rules, 2_500, 60_000)),
    Wrong::of_rules("rear_center_on_top", &[&REAR_CENTER], |rules| rear_center(rules, 7_500, 190_000)),
    Wrong::of_rules("half_inch_behind_all", &[&LARGE, &AWG_12_OR_10], |rules| {
        rules.box_depth.behind.set(5_000, 130_000);
        rules.box_depth.behind_large.set(5_000, 130_000);
    }),
];

impl Teachable for BoxDepths {
    const QUANTITIES: &'static [Quantity<Self>] =
        &[Quantity::<Self>::new("required_depth", |_, outcome| outcome.required)];
    const MISCONCEPTIONS: &'static [Misconception<Self>] = MISCONCEPTIONS;

    fn situation(request: &BoxDepthsRequest) -> Vec<Sentence> {
        of_depths(request)
    }
}

fn rear_center(rules: &mut Rules, us: i64, si: i64) {
    if let Some(figure) = &mut rules.box_depth.rear_center {
        figure.set(us, si);
    }
}

fn depth_by_conductor_only(rules: &mut Rules) {
    let book = &mut rules.box_depth;
    book.projection.set(NEVER.0, NEVER.1);
    book.large_projection.set(NEVER.0, NEVER.1);
    book.rear_center = None;
    book.takes = Strategy::<DepthTakes>::new("nothing", |_| None);
}

/// The half inch of a box without devices, asked of one with devices.
fn depth_half_inch_only(rules: &mut Rules) {
    depth_by_conductor_only(rules);
    let book = &mut rules.box_depth;
    for least in [&mut book.awg_8_to_4, &mut book.awg_12_or_10, &mut book.up_to_14_awg] {
        least.set_to(book.plain);
    }
}
