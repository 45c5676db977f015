//! What is judged of a conduit body: its conductors by size, and what is spliced in it.

use super::request::{BodyPull, ConduitBodyRequest, HubPlace};
use crate::checks::{InScope, Subject};
use crate::rulebook::conduit_body::{AREA, CONDUCTORS, SHORT_RADIUS, SPLICES};
use crate::rulebook::{Rulebook, geometry, pull, raceway_fill};
use crate::trade::ConductorSize;

pub(super) static SUBJECTS: [Subject<ConduitBodyRequest>; 4] = [
    Subject {
        name: "small_conductors",
        is_described: has_small,
        scope: &[InScope::when(has_small, &AREA), InScope::always(&CONDUCTORS)],
    },
    Subject {
        name: "splices",
        is_described: has_splices,
        scope: &[InScope::always(&SPLICES), InScope::when(has_small, &SHORT_RADIUS)],
    },
    Subject {
        name: "large_conductors",
        is_described: |request| request.pulls.iter().any(|pull| pull.is_large(from(request))),
        scope: &[
            InScope::when(|request| joins(request, is_straight), &pull::STRAIGHT),
            InScope::when(
                |request| joins(request, |one, other, pull| pull.spliced || !is_straight(one, other, pull)),
                &pull::ANGLE,
            ),
            InScope::when(
                |request| joins(request, |one, other, pull| pull.spliced || !is_straight(one, other, pull)),
                &pull::ENTRY_DISTANCE,
            ),
            InScope::when(|request| joins(request, at_back), &pull::REMOVABLE_COVER),
            InScope::always(&pull::CONDUIT_BODY),
            InScope::when(
                |request| request.marked.is_some() || request.body.evaluated_for_full_fill == Some(true),
                &pull::MARKED,
            ),
        ],
    },
    Subject {
        name: "room",
        is_described: |_| true,
        scope: &[
            InScope::when(|_| false, &geometry::RACEWAYS),
            InScope::when(|_| false, &raceway_fill::EMT_SIZE),
            InScope::when(|_| false, &raceway_fill::IMC_SIZE),
            InScope::when(|_| false, &raceway_fill::ENT_SIZE),
            InScope::when(|_| false, &raceway_fill::LFNC_SIZE),
        ],
    },
];

fn from(request: &ConduitBodyRequest) -> ConductorSize {
    Rulebook::of(request.edition).pull.applies_from
}

fn has_small(request: &ConduitBodyRequest) -> bool {
    request.pulls.iter().any(|pull| pull.has_small(from(request)))
}

/// Whether anything is spliced or connected in the body.
pub(super) fn has_splices(request: &ConduitBodyRequest) -> bool {
    request.contents.is_some() || request.pulls.iter().any(|pull| pull.spliced)
}

fn joins(request: &ConduitBodyRequest, kind: impl Fn(HubPlace, HubPlace, &BodyPull) -> bool) -> bool {
    let large = request.pulls.iter().filter(|pull| pull.is_large(from(request)));
    large.into_iter().any(|pull| {
        let mut places = pull.between.iter().copied();
        places.next().is_some_and(|first| places.any(|other| kind(first, other, pull)))
    })
}

fn is_straight(one: HubPlace, other: HubPlace, _: &BodyPull) -> bool {
    use HubPlace::{End, OppositeEnd, OppositeSide, Side};
    matches!(
        (one, other),
        (End, OppositeEnd) | (OppositeEnd, End) | (Side, OppositeSide) | (OppositeSide, Side)
    )
}

fn at_back(one: HubPlace, other: HubPlace, _: &BodyPull) -> bool {
    one == HubPlace::Back || other == HubPlace::Back
}
