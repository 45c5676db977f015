//! What a request can describe, and the rules in its scope.

use super::request::{HungLoad, LuminaireAndFanOutletsRequest as Request, OutletLoad, OutletPosition};
use crate::checks::{InScope, Subject};
use crate::rulebook::luminaire_outlet::{
    CEILING, EQUIPMENT, FAN, FAN_MARK, FAN_MARK_INSIDE, FAN_READY, FAN_RECEPTACLE, FAN_STRUCTURE, FLOOR,
    INDEPENDENT, LIGHT_EQUIPMENT, LIGHT_LUMINAIRE, MARK, SEPARABLE, SHOW_WINDOW, SPARE_CONDUCTORS, WALL,
};

pub(super) static SUBJECTS: [Subject<Request>; 2] = [
    Subject {
        name: "load",
        is_described: |request| !matches!(request.load, OutletLoad::Nothing(_)),
        scope: &[
            InScope::when(|request| is_luminaire_on(request, OutletPosition::Wall), &WALL),
            InScope::when(|request| is_luminaire_on(request, OutletPosition::Wall), &LIGHT_LUMINAIRE),
            InScope::when(|request| is_luminaire_on(request, OutletPosition::Ceiling), &CEILING),
            InScope::when(|request| matches!(request.load, OutletLoad::Equipment(_)), &EQUIPMENT),
            InScope::when(|request| matches!(request.load, OutletLoad::Equipment(_)), &LIGHT_EQUIPMENT),
            InScope::when(|request| hung(request).is_some(), &MARK),
            InScope::when(is_fan, &FAN),
            InScope::when(is_fan, &FAN_MARK),
            InScope::when(is_fan, &FAN_MARK_INSIDE),
            InScope::when(|request| is_fan(request) && has_supporting_receptacle(request), &FAN_RECEPTACLE),
            InScope::when(is_fan, &FAN_STRUCTURE),
            InScope::when(|request| hung(request).is_some(), &INDEPENDENT),
            InScope::when(is_in_floor, &FLOOR),
            InScope::when(is_in_floor, &SHOW_WINDOW),
            InScope::when(has_supporting_receptacle, &SEPARABLE),
        ],
    },
    Subject {
        name: "readiness_for_a_fan",
        is_described: |request| request.load.is_on_ceiling(),
        scope: &[InScope::always(&FAN_READY), InScope::always(&SPARE_CONDUCTORS)],
    },
];

const fn hung(request: &Request) -> Option<&HungLoad> {
    match &request.load {
        OutletLoad::Luminaire(hung) | OutletLoad::Equipment(hung) => Some(hung),
        OutletLoad::CeilingFan(_) | OutletLoad::FloorReceptacle(_) | OutletLoad::Nothing(_) => None,
    }
}

fn is_luminaire_on(request: &Request, position: OutletPosition) -> bool {
    matches!(&request.load, OutletLoad::Luminaire(hung) if hung.position == position)
}

const fn is_fan(request: &Request) -> bool {
    matches!(request.load, OutletLoad::CeilingFan(_))
}

const fn is_in_floor(request: &Request) -> bool {
    matches!(request.load, OutletLoad::FloorReceptacle(_))
}

fn has_supporting_receptacle(request: &Request) -> bool {
    match &request.load {
        OutletLoad::CeilingFan(fan) => fan.separable.is_some(),
        _ => hung(request).is_some_and(|hung| hung.separable.is_some()),
    }
}
