//! What learners get wrong about raceway fill.

use crate::checks::raceway_fill::{RacewayFill, RacewayFillRequest};
use crate::quantity::Units;
use crate::rulebook::raceway_fill::{BARE, CONDUCTORS, LIMITS, NIPPLE, SAME_SIZE};
use crate::trade::Insulation;
use crate::training::situation::{Sentence, of_raceway};
use crate::training::{Misconception, Quantity, Teachable};

type Wrong = Misconception<RacewayFill>;

const PERCENT: i64 = 10_000;

static MISCONCEPTIONS: &[Wrong] = &[
    Wrong::of_rules("two_by_forty_percent", &[&LIMITS], |rules| {
        rules.raceway_fill.two.set_number(40 * PERCENT);
    }),
    Wrong::of_rules("one_by_forty_percent", &[&LIMITS], |rules| {
        rules.raceway_fill.one.set_number(40 * PERCENT);
    }),
    Wrong::of_rules("fraction_dropped", &[&SAME_SIZE], |rules| {
        rules.raceway_fill.same_size_step.set_number(10_000);
        rules.raceway_fill.single_step.set_number(10_000);
    }),
    Wrong::of_rules("fraction_rounded_at_half", &[&SAME_SIZE], |rules| {
        rules.raceway_fill.same_size_step.set_number(5_000);
        rules.raceway_fill.single_step.set_number(5_000);
    }),
    Wrong::of_rules("nipple_by_forty_percent", &[&NIPPLE], |rules| {
        rules.raceway_fill.nipple.set_number(40 * PERCENT);
    }),
    Wrong::of_rules("sixty_percent_everywhere", &[&NIPPLE, &LIMITS], |rules| {
        let book = &mut rules.raceway_fill;
        for limit in [&mut book.one, &mut book.two, &mut book.over_two] {
            limit.set_number(60 * PERCENT);
        }
    }),
    Wrong::of_rules("raceway_filled_whole", &[&LIMITS], |rules| {
        let book = &mut rules.raceway_fill;
        for limit in [&mut book.one, &mut book.two, &mut book.over_two, &mut book.nipple] {
            limit.set_number(100 * PERCENT);
        }
    }),
    Wrong::of_rules("fifty_three_percent_everywhere", &[&LIMITS], |rules| {
        rules.raceway_fill.two.set_number(53 * PERCENT);
        rules.raceway_fill.over_two.set_number(53 * PERCENT);
    }),
    Wrong::of_request("bare_conductors_left_out", &[&BARE], |request| {
        let some = !request.bare_conductors.is_empty() && !request.conductors.is_empty();
        request.bare_conductors.clear();
        some
    }),
    Wrong::of_request("insulation_as_thhn", &[&CONDUCTORS], insulation_as_thhn),
];

impl Teachable for RacewayFill {
    const QUANTITIES: &'static [Quantity<Self>] = &[
        Quantity::<Self>::new("most_conductors", |_, outcome| outcome.fill.as_ref()?.maximum),
        Quantity::<Self>::sum("total_area", |_, outcome| Some(outcome.total_area)),
        Quantity::<Self>::new("allowed_area", |_, outcome| Some(outcome.fill.as_ref()?.allowed_area)),
        Quantity::<Self>::new("fill_percent", |_, outcome| Some(outcome.fill.as_ref()?.fill_percent)),
    ];
    const MISCONCEPTIONS: &'static [Misconception<Self>] = MISCONCEPTIONS;

    fn situation(request: &RacewayFillRequest) -> Vec<Sentence> {
        of_raceway(request)
    }

    fn in_units(request: &mut RacewayFillRequest, units: Units) -> bool {
        let measured = !request.cables.is_empty() || !request.measured_conductors.is_empty();
        let long = request.raceway.is_some_and(|raceway| raceway.length.is_some());
        request.units = units;
        !measured && !long && request.amendments.is_empty()
    }
}

/// Every insulation is taken to be as thin as THHN.
fn insulation_as_thhn(request: &mut RacewayFillRequest) -> bool {
    let mut other = false;
    for conductor in request.conductors.iter_mut().filter(|conductor| !conductor.compact) {
        other |= conductor.insulation != Insulation::Thhn;
        (conductor.insulation, conductor.covering) = (Insulation::Thhn, None);
    }
    other
}
