//! What can be wrong with a request that decoded.

use super::request::{ConduitBodyRequest, HubPlace};
use crate::checks::outlet_fill::{Contents, faults_of_contents};
use crate::checks::{FaultCode, Faults};
use crate::derivation::Pointer;
use crate::rulebook::Rulebook;
use FaultCode::{Conflict, DuplicateId, MissingMember, OutOfBounds, UnknownReference};

/// The most items of a list.
const MOST_ITEMS: usize = 50;
/// The most openings of a body.
const MOST_HUBS: usize = 5;

pub(super) fn find(request: &ConduitBodyRequest, faults: &mut Faults) {
    let ConduitBodyRequest { hubs, pulls, contents, marked, .. } = request;
    faults.at_most(Pointer::to(&"/hubs"), hubs.len(), MOST_HUBS);
    faults.at_most(Pointer::to(&"/pulls"), pulls.len(), MOST_ITEMS);
    if hubs.len() < 2 {
        faults.add(Pointer::to(&"/hubs"), OutOfBounds, "fault-body-of-one-opening");
    }
    if pulls.is_empty() {
        faults.add(Pointer::to(&"/pulls"), MissingMember, "fault-empty-list");
    }
    for (index, hub) in hubs.iter().enumerate() {
        if hubs.iter().take(index).any(|earlier| earlier.place == hub.place) {
            faults.add(Pointer::of(&"/hubs/#", index).member(&"/place"), DuplicateId, "fault-opening-twice");
        }
    }
    let large_from = Rulebook::of(request.edition).pull.applies_from;
    for (index, pull) in pulls.iter().enumerate() {
        let at = Pointer::of(&"/pulls/#", index);
        let between = at.member(&"/between");
        if pull.between.len() < 2 {
            faults.add(between, OutOfBounds, "fault-pull-of-one-entry");
        }
        for (place, hub) in pull.between.iter().enumerate() {
            of_place(request, *hub, pull.between.iter().take(place), between, faults);
        }
        faults.at_most(at.member(&"/conductors"), pull.conductors.len(), MOST_ITEMS);
        if pull.conductors.is_empty() {
            faults.add(at.member(&"/conductors"), MissingMember, "fault-empty-list");
        }
        for (number, group) in pull.conductors.iter().enumerate() {
            let at = Pointer::of(&"/conductors/#", number).under(&"/pulls/#", index);
            if group.insulation.is_none() && !group.bare && group.size < large_from {
                faults.add(at.member(&"/insulation"), MissingMember, "fault-conductor-without-insulation");
            }
            if group.bare && (group.insulation.is_some() || group.compact) {
                faults.add(at.member(&"/bare"), Conflict, "fault-bare-and-insulated");
            }
        }
        if pull.spliced && contents.is_none() && !pull.is_large(large_from) {
            faults.add(Pointer::to(&"/contents"), MissingMember, "fault-splice-without-contents");
        }
    }
    if let Some(contents) = contents {
        faults_of_contents(contents, None, faults);
        if *contents == Contents::default() {
            faults.add(Pointer::to(&"/contents"), MissingMember, "fault-empty-contents");
        }
    }
    if let Some(marked) = marked {
        marked.faults(faults);
    }
}

fn of_place<'a>(
    request: &ConduitBodyRequest,
    place: HubPlace,
    mut earlier: impl Iterator<Item = &'a HubPlace>,
    at: Pointer,
    faults: &mut Faults,
) {
    if !request.hubs.iter().any(|hub| hub.place == place) {
        faults.add(at, UnknownReference, "fault-unknown-opening");
    }
    if earlier.any(|known| *known == place) {
        faults.add(at, DuplicateId, "fault-opening-twice-in-pull");
    }
}
