//! What a request can describe, and the rules in its scope.

use super::request::{BoxDepthsRequest as Request, EnclosedEquipment};
use crate::checks::{InScope, Subject};
use crate::rulebook::box_depth::{
    AWG_8_TO_4, AWG_12_OR_10, EQUIPMENT, LARGE, LISTED, OVER_4_AWG, PLAIN, PULL_BOX, REAR_CENTER, SIDE_ENTRY,
    UP_TO_14_AWG,
};
use crate::trade::ConductorSize;

pub(super) static SUBJECTS: [Subject<Request>; 2] = [
    Subject {
        name: "depth",
        is_described: |request| request.enclosure.is_some(),
        scope: &[
            InScope::when(|request| request.equipment.is_empty(), &PLAIN),
            InScope::when(|request| request.equipment.iter().any(is_listed), &LISTED),
            InScope::when(|request| !request.equipment.is_empty(), &EQUIPMENT),
            InScope::when(|request| !request.equipment.is_empty(), &LARGE),
            InScope::when(|request| any_on(request, |size| size <= ConductorSize::AWG_14), &UP_TO_14_AWG),
            InScope::when(|request| any_on(request, is_12_or_10), &AWG_12_OR_10),
            InScope::when(|request| any_on(request, is_12_or_10), &REAR_CENTER),
            InScope::when(|request| any_on(request, is_8_to_4), &AWG_8_TO_4),
            InScope::when(|request| any_on(request, |size| size > ConductorSize::AWG_4), &OVER_4_AWG),
            InScope::when(|request| any_on(request, |size| size > ConductorSize::AWG_4), &PULL_BOX),
        ],
    },
    Subject {
        name: "side_entry",
        is_described: |request| request.equipment.iter().any(|one| one.side_entry.is_some()),
        scope: &[InScope::always(&SIDE_ENTRY)],
    },
];

fn is_listed(one: &EnclosedEquipment) -> bool {
    one.listed_for_this_box == Some(true)
}

fn any_on(request: &Request, sizes: fn(ConductorSize) -> bool) -> bool {
    let asked = request.equipment.iter().filter(|one| !is_listed(one));
    asked.filter_map(|one| one.largest_supply_conductor).any(sizes)
}

fn is_12_or_10(size: ConductorSize) -> bool {
    size > ConductorSize::AWG_14 && size < ConductorSize::AWG_8
}

fn is_8_to_4(size: ConductorSize) -> bool {
    size >= ConductorSize::AWG_8 && size <= ConductorSize::AWG_4
}
