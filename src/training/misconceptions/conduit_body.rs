//! What learners get wrong about conduit bodies.

use crate::checks::conduit_body::{ConduitBodyCheck, ConduitBodyOutcome, ConduitBodyRequest, HubFill};
use crate::checks::outlet_fill::{Conductor, Contents, Many, Role, TallyLine};
use crate::quantity::Units;
use crate::rulebook::Rules;
use crate::rulebook::conduit_body::{AREA, CONDUCTORS, SPLICES};
use crate::trade::ConductorSize;
use crate::training::situation::{Sentence, of_conduit_body};
use crate::training::{Misconception, Quantity, Teachable};

type Wrong = Misconception<ConduitBodyCheck>;

static MISCONCEPTIONS: &[Wrong] = &[
    Wrong::of_rules("body_doubles_conductors", &[&CONDUCTORS, &AREA], body_doubles_conductors),
    Wrong::of_rules("body_area_of_raceway", &[&AREA], |rules| {
        rules.conduit_body.area_multiple.set_number(10_000);
    }),
    Wrong::of_request("unspliced_body_by_volume", &[&SPLICES, &CONDUCTORS], unspliced_body_by_volume),
    Wrong::of_rules("body_filled_whole", &[&CONDUCTORS], |rules| {
        let book = &mut rules.raceway_fill;
        for limit in [&mut book.one, &mut book.two, &mut book.over_two] {
            limit.set_number(1_000_000);
        }
    }),
    Wrong::of_rules("body_fraction_dropped", &[&CONDUCTORS], |rules| {
        rules.raceway_fill.same_size_step.set_number(10_000);
        rules.raceway_fill.single_step.set_number(10_000);
    }),
];

impl Teachable for ConduitBodyCheck {
    const QUANTITIES: &'static [Quantity<Self>] = &[
        Quantity::<Self>::new("most_conductors", |_, outcome| first(outcome)?.maximum),
        Quantity::<Self>::new("required_cross_section", |_, outcome| {
            outcome.small_conductors.as_ref()?.required_cross_section
        }),
        Quantity::<Self>::new("allowed_area", |_, outcome| Some(first(outcome)?.allowed_area)),
        Quantity::<Self>::sum("required_volume", |_, outcome| {
            outcome.splices.as_ref().map(|splices| splices.required)
        }),
    ];
    const MISCONCEPTIONS: &'static [Misconception<Self>] = MISCONCEPTIONS;

    fn situation(request: &ConduitBodyRequest) -> Vec<Sentence> {
        of_conduit_body(request)
    }

    const HAS_TALLY: bool = true;

    fn tally(outcome: &ConduitBodyOutcome) -> Vec<&TallyLine> {
        outcome.splices.iter().flat_map(|splices| &splices.tally).collect()
    }

    fn in_units(request: &mut ConduitBodyRequest, units: Units) -> bool {
        let body = &request.body;
        let sized = [body.length, body.width, body.depth].iter().any(Option::is_some);
        let apart = request.pulls.iter().any(|pull| pull.distance.is_some());
        request.units = units;
        let free =
            body.cross_section.is_none() && body.marked_volume.is_none() && request.amendments.is_empty();
        free && !sized && !apart && request.contents.is_none()
    }
}

fn first(outcome: &ConduitBodyOutcome) -> Option<&HubFill> {
    outcome.small_conductors.as_ref()?.hubs.first()
}

/// A body of twice the cross-section is taken to hold twice the conductors.
fn body_doubles_conductors(rules: &mut Rules) {
    let book = &mut rules.raceway_fill;
    for limit in [&mut book.one, &mut book.two, &mut book.over_two] {
        (limit.us, limit.si) = (limit.us + limit.us, limit.si + limit.si);
    }
}

/// Conductors that only pass through are counted by volume, as in a box.
fn unspliced_body_by_volume(request: &mut ConduitBodyRequest) -> bool {
    if request.contents.is_some() || request.pulls.iter().any(|pull| pull.spliced) {
        return false;
    }
    let groups = request.pulls.iter().flat_map(|pull| &pull.conductors);
    let conductors: Vec<Conductor> = groups
        .filter(|group| !group.bare && group.size < ConductorSize::AWG_4)
        .map(|group| Conductor {
            size: group.size,
            role: Role::PassesThrough,
            loop_length: None,
            count: Many::new(group.count.map_or(1, |count| count.get())),
        })
        .collect();
    let any = !conductors.is_empty();
    request.contents = Some(Contents { conductors: conductors.into(), ..Contents::default() });
    any
}
