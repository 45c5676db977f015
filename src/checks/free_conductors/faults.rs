//! What can be wrong with a request that decoded.

use super::FreeConductors;
use super::request::{
    BoxOpening, Damage, DamagePlace, FreeConductor, FreeConductorRole, FreeConductorsRequest, MOST_ITEMS,
};
use super::subjects::leaves_the_box;
use crate::checks::FaultCode::Conflict;
use crate::checks::{Faults, rulebook_of};
use crate::derivation::Pointer;
use crate::quantity::{Decimal, Length, Measure, Offset};
use crate::rulebook::Rulebook;
use crate::rulebook::reading::UnitsOfMeasure;

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

/// The widest opening by common practice: of a gang, in ten-thousandths, and of a box that has one gang or is not counted by the gang. No gang
/// is wider than 2-1/2 in (65 mm), nor is one higher than 5 in (130 mm), and neither is a square or an octagonal box.
const WIDEST: [(i64, i32); 2] = [(25_000, 5), (650_000, 130)];

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
        return;
    }
    let (gang, least) = WIDEST[request.units as usize];
    let (gang, least) = (Decimal::ten_thousandths(gang), Decimal::whole(least));
    let by_gangs = opening.gangs.map(|gangs| {
        let wide = gang.times(gangs.get().into());
        (if wide > least { wide } else { least }, Pointer::to(&"/opening/gangs"))
    });
    let by_row = opening
        .standard
        .filter(|row| !row.shape().is_per_gang())
        .map(|_| (least, Pointer::to(&"/opening/standard")));
    let sides = [
        (opening.diameter, Pointer::to(&"/opening/diameter")),
        (opening.width, Pointer::to(&"/opening/width")),
        (opening.height, Pointer::to(&"/opening/height")),
    ];
    let Some((most, named)) = by_row.or(by_gangs) else { return };
    if let Some((_, at)) = sides.iter().find(|(side, _)| side.is_some_and(|side| side.value() > most)) {
        faults.contradiction(*at, named, "fault-opening-wider-than-gangs");
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

/// A conductor reaches as far outside the opening as its free length gives over the depth: not farther, nor too short where that is
/// far enough.
fn reach(request: &FreeConductorsRequest, conductor: &FreeConductor, at: Pointer, faults: &mut Faults) {
    let (Some(free), Some(outside)) = (conductor.free_length, conductor.length_outside_opening) else {
        return;
    };
    let emerges = conductor.emergence_depth.or(request.emergence_depth).map(Offset::value);
    let rings = request.rings.iter().map(|ring| {
        let count = ring.count.map_or(Decimal::ONE, |count| count.get().into());
        ring.depth.value().times(count)
    });
    let depth = rings.fold(emerges.unwrap_or(Decimal::ZERO), |sum, ring| sum + ring);
    let [reach_at, free_at] = [at.member(&"/length_outside_opening"), at.member(&"/free_length")];
    if outside.value() + depth > free.value() {
        faults.contradiction(reach_at, free_at, "fault-reach-longer-than-conductor");
        return;
    }
    let book = rulebook_of::<FreeConductors>(request, request.edition);
    let is_cut_off = conductor.damage.is_some_and(|damage| damage.place == DamagePlace::InsideBox);
    let is_asked = emerges.is_some() && leaves_the_box(conductor) && !is_cut_off;
    let reaches = |length| is_reach(request, &book, length);
    if is_asked
        && !has_large_opening(request, &book)
        && reaches(free.value() - depth)
        && !reaches(outside.value())
    {
        faults.contradiction(reach_at, free_at, "fault-reach-shorter-than-conductor");
    }
}

/// Whether a length outside a small opening is enough, in either system of units where either serves.
fn is_reach(request: &FreeConductorsRequest, book: &Rulebook, length: Decimal) -> bool {
    let least = |book: &Rulebook, units| book.value(&book.free_conductor.outside, units).0;
    let (here, there) = (request.units, request.units.other());
    let converted = book.unit_systems.conversion(there).apply(length, Measure::Length);
    let either = book.readings.of::<UnitsOfMeasure>() == UnitsOfMeasure::Either;
    length >= least(book, here) || either && converted >= least(&book.for_other_units(here), there)
}

/// Whether the opening is known to be one that no reach outside of it is asked for.
fn has_large_opening(request: &FreeConductorsRequest, book: &Rulebook) -> bool {
    let Some(BoxOpening { width, height, diameter, gangs: None, standard: None }) = request.opening else {
        return false;
    };
    let (limit, _) = book.value(&book.free_conductor.small_opening, request.units);
    let is_large = |side: Option<Length>| side.is_some_and(|side| side.value() >= limit);
    is_large(diameter) || is_large(width) && is_large(height)
}
