//! What can be wrong with a request that decoded.

use super::request::{
    AccessPlace, BoxMountingRequest, BoxShape, FinishOpening, LocationKind, MOST_ITEMS, MountedBox,
    MountedMaterial,
};
use super::{BODY, MATERIAL, SINGLE_GANG_BOX, of_box};
use crate::checks::FaultCode::Conflict;
use crate::checks::{FaultCode, Faults, Name};
use crate::derivation::Pointer;
use crate::quantity::Decimal;
use crate::tables::standard_boxes::Shape;

pub(super) fn find(request: &BoxMountingRequest, faults: &mut Faults) {
    faults.at_most(Pointer::to(&"/entries"), request.entries.len(), MOST_ITEMS);
    faults.at_most(Pointer::to(&"/fasteners"), request.fasteners.len(), MOST_ITEMS);
    if let Some(moisture) = &request.moisture {
        let at = Pointer::to(&"/moisture/drain_openings");
        faults.at_most(at, moisture.drain_openings.len(), MOST_ITEMS);
    }
    let named = |pattern, ids: Vec<Option<&Name>>, faults: &mut Faults| {
        faults.distinct_ids(ids.into_iter().enumerate().filter_map(|(index, id)| {
            id.map(|id| (id.as_str(), Pointer::of(pattern, index).member(&"/id")))
        }));
    };
    named(&"/entries/#", request.entries.iter().map(|entry| entry.id.as_ref()).collect(), faults);
    named(&"/fasteners/#", request.fasteners.iter().map(|fastener| fastener.id.as_ref()).collect(), faults);
    if let Some(enclosure) = request.enclosure {
        contradictions(enclosure, faults);
        sizes(request, enclosure, faults);
    }
    underground(request, faults);
    listings(request, faults);
    for (index, entry) in request.entries.iter().enumerate() {
        let past = entry.clamp_inside.and_then(|clamp| clamp.sheath_past);
        if let (Some(past), Some(inside)) = (past, entry.sheath_inside)
            && past > inside
        {
            let item = Pointer::of(&"/entries/#", index);
            let at = item.member(&"/clamp_inside/sheath_past");
            faults.contradiction(at, item.member(&"/sheath_inside"), "fault-sheath-past-clamp-longer");
        }
    }
    let Some(access) = request.access else { return };
    if access.place == AccessPlace::Building
        && access.reachable == Some(false)
        && is_covered_in_finish(request)
    {
        let (reachable, cover) = (Pointer::to(&"/access/reachable"), Pointer::to(&"/cover/fitted"));
        faults.contradiction(reachable, cover, "fault-cover-and-not-reached");
    }
    if access.place == AccessPlace::Building && access.under_loose_cover.is_some() {
        let at = Pointer::to(&"/access/under_loose_cover");
        faults.add(at, Conflict, "fault-loose-cover-in-building");
    }
    let at = |member| Pointer::to(&"/access/finish_opening").member(member);
    let Some(opening) = access.finish_opening else { return };
    whole_box(request, opening, faults);
    let FinishOpening { long_side, short_side, diameter, .. } = opening;
    if diameter.is_some() && (long_side.is_some() || short_side.is_some()) {
        faults.add(at(&"/diameter"), Conflict, "fault-round-opening-with-sides");
    }
    if let (Some(long), Some(short)) = (long_side, short_side)
        && short > long
    {
        faults.add(at(&"/short_side"), Conflict, "fault-short-side-longer");
    }
}

/// What lies underground is no part of a building, opens in no wall of one, and is in a wet location (Article 100). So is a handhole
/// enclosure, which is for use in underground systems.
fn underground(request: &BoxMountingRequest, faults: &mut Faults) {
    let place = Pointer::to(&"/access/place");
    let lies = request.access.map(|access| access.place);
    let handhole = request.handhole.map(|_| Pointer::to(&"/handhole"));
    if let (Some(handhole), Some(AccessPlace::Building)) = (handhole, lies) {
        faults.contradiction(place, handhole, "fault-handhole-in-building");
    }
    let Some(below) = handhole.or((lies == Some(AccessPlace::Underground)).then_some(place)) else { return };
    if request.moisture.as_ref().is_some_and(|moisture| moisture.location != LocationKind::Wet) {
        faults.contradiction(Pointer::to(&"/moisture/location"), below, "fault-underground-is-wet");
    }
    let in_surface = [
        (request.flush_surface.is_some(), Pointer::to(&"/flush_surface")),
        (request.extension.is_some(), Pointer::to(&"/extension")),
        (
            request.access.is_some_and(|access| access.finish_opening.is_some()),
            Pointer::to(&"/access/finish_opening"),
        ),
        (
            request.enclosure.is_some_and(|enclosure| enclosure.single_gang_in_wall_or_ceiling == Some(true)),
            SINGLE_GANG_BOX,
        ),
    ];
    if let Some((_, at)) = in_surface.into_iter().find(|(is_said, _)| *is_said) {
        faults.contradiction(at, below, "fault-underground-and-in-surface");
    }
    let Some(handhole) = handhole else { return };
    let kinds = [
        (request.enclosure.is_some_and(|enclosure| enclosure.conduit_body == Some(true)), BODY),
        (request.enclosure.is_some_and(|enclosure| enclosure.standard.is_some()), of_box(&"/standard")),
    ];
    if let Some((_, at)) = kinds.into_iter().find(|(is_said, _)| *is_said) {
        faults.contradiction(at, handhole, "fault-handhole-of-another-kind");
    }
}

/// A box that is listed for a location is listed.
fn listings(request: &BoxMountingRequest, faults: &mut Faults) {
    let loose = request.access.and_then(|access| access.under_loose_cover);
    let Some(enclosure) = request.enclosure else { return };
    let said = [
        (enclosure.listed_for_wet_locations, of_box(&"/listed_for_wet_locations")),
        (enclosure.listed_for_damp_locations, of_box(&"/listed_for_damp_locations")),
    ];
    let listed = said.into_iter().find(|(is_listed, _)| *is_listed == Some(true));
    if let (Some(false), Some((_, at))) = (loose.and_then(|loose| loose.listed_box), listed) {
        let unlisted = Pointer::to(&"/access/under_loose_cover/listed_box");
        faults.contradiction(unlisted, at, "fault-box-listed-and-not");
    }
}

/// The most that a single-gang box holds: no more than 2-1/4 by 4 in (57 by 102 mm) in front, and about 5-1/2 in (140 mm) deep. By common
/// practice, and more than any that is made.
const LARGEST_SINGLE_GANG: [i32; 2] = [50, 820];

/// A box of a row has about the volume of the row, and a single-gang box is small.
fn sizes(request: &BoxMountingRequest, enclosure: MountedBox, faults: &mut Faults) {
    let Some(volume) = enclosure.volume.map(|volume| volume.value()) else { return };
    let at = of_box(&"/volume");
    if let Some(row) = enclosure.standard {
        let each = row.volume(request.units).value;
        let is_of_one_gang =
            !row.shape().is_per_gang() || enclosure.single_gang_in_wall_or_ceiling == Some(true);
        let tenth = each.times(Decimal::ten_thousandths(1_000));
        if volume < each - tenth || is_of_one_gang && volume > each + tenth {
            faults.contradiction(at, of_box(&"/standard"), "fault-volume-not-of-row");
            return;
        }
    }
    let most = Decimal::whole(LARGEST_SINGLE_GANG[request.units as usize]);
    if enclosure.single_gang_in_wall_or_ceiling == Some(true) && volume > most {
        faults.contradiction(at, SINGLE_GANG_BOX, "fault-single-gang-too-large");
    }
}

/// The least side of an opening that can leave a whole box open, in ten-thousandths: by common practice that of the smallest raceway, 0.7 in
/// (18 mm), than which no conduit body is narrower.
const NARROWEST: [i64; 2] = [7_000, 180_000];

/// An opening that leaves the whole box open takes in its center, is no narrower than any box, and is not cut to fit a device.
fn whole_box(request: &BoxMountingRequest, opening: FinishOpening, faults: &mut Faults) {
    if opening.whole_box_open != Some(true) {
        return;
    }
    let at = |member| Pointer::to(&"/access/finish_opening").member(member);
    let whole = at(&"/whole_box_open");
    if opening.fits_device == Some(true) {
        faults.contradiction(at(&"/fits_device"), whole, "fault-whole-box-and-fits-device");
    }
    let narrowest = Decimal::ten_thousandths(NARROWEST[request.units as usize]);
    let sides = [
        (opening.diameter, at(&"/diameter")),
        (opening.short_side, at(&"/short_side")),
        (opening.long_side, at(&"/long_side")),
    ];
    let narrow = sides.iter().find(|(side, _)| side.is_some_and(|side| side.value() < narrowest));
    if let Some((_, at)) = narrow {
        faults.contradiction(*at, whole, "fault-whole-box-in-narrow-opening");
    }
    // the center of the box is within the opening, whose corners lie nearer to its own center than its two half sides together
    let reach = match (opening.diameter, opening.long_side, opening.short_side) {
        (Some(diameter), ..) => Some(diameter.value()),
        (None, Some(long), Some(short)) => Some(long.value() + short.value()),
        _ => None,
    };
    if let (Some(off), Some(reach)) = (opening.off_center, reach)
        && off.value() + off.value() > reach
    {
        faults.contradiction(at(&"/off_center"), whole, "fault-whole-box-off-center");
    }
}

/// Whether the box opens in a finished surface and has its cover there.
pub(super) fn is_covered_in_finish(request: &BoxMountingRequest) -> bool {
    request.flush_surface.is_some() && request.cover.is_some_and(|cover| cover.fitted == Some(true))
}

/// A metal box is grounded; a nonmetallic one bonds its entries together. Neither has the means of the other, and a single-gang
/// box is neither a conduit body nor round.
fn contradictions(enclosure: MountedBox, faults: &mut Faults) {
    use MountedMaterial::{Metal, Nonmetallic};
    let MountedBox { material, grounded, bonds_all_entries, .. } = enclosure;
    if material == Some(Metal) && bonds_all_entries == Some(true) {
        let at = of_box(&"/bonds_all_entries");
        faults.contradiction(at, MATERIAL, "fault-metal-box-bonds-entries");
    }
    if material == Some(Nonmetallic) && grounded == Some(true) {
        faults.contradiction(of_box(&"/grounded"), MATERIAL, "fault-nonmetallic-box-grounded");
    }
    if material.is_none() && grounded.is_some() {
        faults.add(of_box(&"/material"), FaultCode::MissingMember, "fault-grounding-of-unsaid-material");
    }
    if let Some(row) = enclosure.standard {
        of_row(enclosure, row.shape(), faults);
    }
    if enclosure.single_gang_in_wall_or_ceiling == Some(true) {
        if enclosure.conduit_body == Some(true) {
            faults.contradiction(BODY, SINGLE_GANG_BOX, "fault-single-gang-body");
        }
        if enclosure.shape == Some(BoxShape::Round) {
            faults.contradiction(of_box(&"/shape"), SINGLE_GANG_BOX, "fault-single-gang-round");
        }
    }
}

/// A row of the table of standard boxes is of metal boxes, which are no conduit bodies, with flat sides but for round ones; of some
/// rows no box has a single gang.
fn of_row(enclosure: MountedBox, row: Shape, faults: &mut Faults) {
    let standard = of_box(&"/standard");
    if enclosure.material == Some(MountedMaterial::Nonmetallic) {
        faults.contradiction(MATERIAL, standard, "fault-standard-box-is-metal");
    }
    if enclosure.conduit_body == Some(true) {
        faults.contradiction(BODY, standard, "fault-standard-box-is-no-body");
    }
    if enclosure.shape == Some(BoxShape::Round) && row != Shape::Octagonal {
        faults.contradiction(of_box(&"/shape"), standard, "fault-standard-box-is-not-round");
    }
    let many = matches!(row, Shape::Square | Shape::Octagonal | Shape::MultipleCover);
    if enclosure.single_gang_in_wall_or_ceiling == Some(true) && many {
        faults.contradiction(SINGLE_GANG_BOX, standard, "fault-standard-box-is-not-single-gang");
    }
}
