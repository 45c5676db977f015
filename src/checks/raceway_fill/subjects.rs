//! What a request can describe, and the rules in the scope of it.

use super::{RacewayFillRequest, three_eighths};
use crate::checks::{InScope, Subject};
use crate::quantity::Units;
use crate::rulebook::geometry;
use crate::rulebook::raceway_fill::{
    ACTUAL, AREA, BARE, CABLES, CONDUCTORS, EMT_SIZE, ENT_SIZE, IMC_SIZE, LFNC_SIZE, LIMITS, NIPPLE,
    SAME_SIZE, THREE_EIGHTHS,
};
use crate::tables::raceway_dimensions::{self, Dimension};
use crate::trade::RacewayKind;

pub(super) static SUBJECTS: [Subject<RacewayFillRequest>; 1] = [Subject {
    name: "fill",
    is_described: |request| request.raceway.is_some_and(|raceway| raceway.trade_size.is_some()),
    scope: &[
        InScope::when(|request| !is_three_eighths(request), &LIMITS),
        InScope::when(is_three_eighths, &THREE_EIGHTHS),
        InScope::when(has_figures, &AREA),
        InScope::when(has_figures, &SAME_SIZE),
        InScope::when(|request| is_of(request, &[RacewayKind::Emt]), &EMT_SIZE),
        InScope::when(|request| is_of(request, &[RacewayKind::Imc]), &IMC_SIZE),
        InScope::when(|request| is_of(request, &[RacewayKind::Ent]), &ENT_SIZE),
        InScope::when(
            |request| is_of(request, &[RacewayKind::LfncA, RacewayKind::LfncB, RacewayKind::LfncC]),
            &LFNC_SIZE,
        ),
        InScope::when(may_be_nipple, &NIPPLE),
        InScope::when(|_| false, &geometry::RACEWAYS),
        InScope::when(|request| !request.conductors.is_empty(), &CONDUCTORS),
        InScope::when(|request| !request.bare_conductors.is_empty(), &BARE),
        InScope::when(|request| !request.cables.is_empty(), &CABLES),
        InScope::when(|request| !request.measured_conductors.is_empty(), &ACTUAL),
    ],
}];

fn has_figures(request: &RacewayFillRequest) -> bool {
    let given = request.raceway.and_then(|raceway| Some((raceway.kind, raceway.trade_size?)));
    given.is_some_and(|(kind, size)| {
        raceway_dimensions::of(kind, size, Dimension::Diameter, Units::Us).is_some()
    })
}

fn is_three_eighths(request: &RacewayFillRequest) -> bool {
    let given = request.raceway.and_then(|raceway| Some((raceway.kind, raceway.trade_size?)));
    given.is_some_and(|(kind, size)| three_eighths::is_counted(kind, size))
}

fn is_of(request: &RacewayFillRequest, kinds: &[RacewayKind]) -> bool {
    request.raceway.is_some_and(|raceway| kinds.contains(&raceway.kind))
}

fn may_be_nipple(request: &RacewayFillRequest) -> bool {
    // of flexible metal conduit of trade size 3/8 the percentages may be read
    let is_counted = |kind| kind == RacewayKind::Lfmc && is_three_eighths(request);
    let given = request.raceway.filter(|raceway| !is_counted(raceway.kind));
    given.is_some_and(|raceway| raceway.length.is_some() || raceway.nipple == Some(true))
}
