//! What can be wrong with a request that decoded.

use super::request::{
    BoxOpening, Damage, DamagePlace, FreeConductor, FreeConductorRole, FreeConductorsRequest, MOST_ITEMS,
};
use crate::checks::FaultCode::Conflict;
use crate::checks::Faults;
use crate::derivation::Pointer;
use crate::quantity::{Decimal, Offset};
use crate::rulebook::Rulebook;

pub(super) fn find(request: &FreeConductorsRequest, faults: &mut Faults) {
    if let Some(BoxOpening { width, height, diameter: Some(_), .. }) = request.opening
        && (width.is_some() || height.is_some())
    {
        faults.add(Pointer::to(&"/opening/diameter"), Conflict, "fault-round-opening-with-sides");
    }
    if let Some(BoxOpening { diameter: Some(_), gangs: Some(_), .. }) = request.opening {
        let at = Pointer::to(&"/opening/gangs");
        faults.contradiction(at, Pointer::to(&"/opening/diameter"), "fault-round-opening-with-gangs");
    }
    if let Some(opening) = &request.opening {
        of_opening(request, opening, faults);
    }
    faults.at_most(Pointer::to(&"/rings"), request.rings.len(), MOST_ITEMS);
    faults.at_most(Pointer::to(&"/conductors"), request.conductors.len(), MOST_ITEMS);
    faults.distinct_ids(request.conductors.iter().enumerate().filter_map(|(index, conductor)| {
        let at = Pointer::of(&"/conductors/#", index).member(&"/id");
        conductor.id.as_ref().map(|id| (id.as_str(), at))
    }));
    for (index, conductor) in request.conductors.iter().enumerate() {
        of_conductor(conductor, Pointer::of(&"/conductors/#", index), faults);
        reach(request, conductor, Pointer::of(&"/conductors/#", index), faults);
    }
}

/// A device box, and any box of the table, has a small opening: no other measure can make it a large one.
fn of_opening(request: &FreeConductorsRequest, opening: &BoxOpening, faults: &mut Faults) {
    let limit = Rulebook::of(request.edition).free_conductor.small_opening.value(request.units);
    let sides = [
        (opening.diameter, opening.diameter, &"/opening/diameter"),
        (opening.width, opening.height, &"/opening/width"),
    ];
    let large = sides.into_iter().find_map(|(one, other, place)| {
        (one?.value() >= limit && other?.value() >= limit).then_some(Pointer::to(place))
    });
    let named = [
        (opening.standard.is_some(), &"/opening/standard"),
        (opening.gangs.is_some() && opening.diameter.is_none(), &"/opening/gangs"),
    ];
    if let (Some(large), Some((_, named))) = (large, named.into_iter().find(|(is_said, _)| *is_said)) {
        faults.contradiction(Pointer::to(named), large, "fault-large-opening-of-small-box");
    }
}

fn of_conductor(conductor: &FreeConductor, at: Pointer, faults: &mut Faults) {
    let FreeConductor { role, free_length, damage, spliced_to_reach, .. } = conductor;
    let unbroken = *role == FreeConductorRole::PassesThrough;
    if let (Some(damage), Some(_)) = (damage, spliced_to_reach)
        && damage.place == DamagePlace::InsideBox
    {
        faults.add(at.member(&"/damage"), Conflict, "fault-damage-already-spliced");
    }
    if spliced_to_reach.is_some() && unbroken {
        faults.add(at.member(&"/spliced_to_reach"), Conflict, "fault-unbroken-conductor-spliced");
    }
    if let (Some(Damage { place: DamagePlace::InWall, .. }), FreeConductorRole::StaysInside) = (damage, role)
    {
        faults.contradiction(at.member(&"/damage/place"), at.member(&"/role"), "fault-damage-outside-of-box");
    }
    if let Some(Damage { place: DamagePlace::InWall, sound_length: Some(_) }) = damage {
        faults.add(at.member(&"/damage/sound_length"), Conflict, "fault-sound-length-in-wall");
    }
    let sound = damage.and_then(|damage| damage.sound_length);
    if let (Some(sound), Some(whole)) = (sound, free_length)
        && sound > *whole
    {
        faults.add(at.member(&"/damage/sound_length"), Conflict, "fault-part-longer-than-conductor");
    }
    let piece = spliced_to_reach.and_then(|extension| extension.length_in_one_piece);
    if let (Some(piece), Some(whole)) = (piece, free_length)
        && piece > *whole
    {
        let at = at.member(&"/spliced_to_reach/length_in_one_piece");
        faults.add(at, Conflict, "fault-part-longer-than-conductor");
    }
}

/// A conductor cannot reach farther outside the opening than its free length gives over the depth.
fn reach(request: &FreeConductorsRequest, conductor: &FreeConductor, at: Pointer, faults: &mut Faults) {
    let (Some(free), Some(outside)) = (conductor.free_length, conductor.length_outside_opening) else {
        return;
    };
    let depth = conductor.emergence_depth.or(request.emergence_depth).map_or(Decimal::ZERO, Offset::value);
    let rings = request.rings.iter().map(|ring| {
        let count = ring.count.map_or(Decimal::ONE, |count| count.get().into());
        ring.depth.value().times(count)
    });
    let depth = rings.fold(depth, |sum, ring| sum + ring);
    if outside.value() + depth > free.value() {
        faults.contradiction(
            at.member(&"/length_outside_opening"),
            at.member(&"/free_length"),
            "fault-reach-longer-than-conductor",
        );
    }
}
