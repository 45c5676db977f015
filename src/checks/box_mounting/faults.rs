//! What can be wrong with a request that decoded.

use super::request::{
    AccessPlace, BoxMountingRequest, BoxShape, FinishOpening, MOST_ITEMS, MountedBox, MountedMaterial,
};
use super::{BODY, MATERIAL, SINGLE_GANG_BOX, of_box};
use crate::checks::FaultCode::Conflict;
use crate::checks::{FaultCode, Faults, Name};
use crate::derivation::Pointer;
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
    }
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
    let Some(FinishOpening { long_side, short_side, diameter, .. }) = access.finish_opening else { return };
    if diameter.is_some() && (long_side.is_some() || short_side.is_some()) {
        faults.add(at(&"/diameter"), Conflict, "fault-round-opening-with-sides");
    }
    if let (Some(long), Some(short)) = (long_side, short_side)
        && short > long
    {
        faults.add(at(&"/short_side"), Conflict, "fault-short-side-longer");
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
