//! What can be wrong with a request that decoded.

use super::gangs;
use super::measures;
use super::request::{
    Clamp, ClampKind, Contents, Enclosure, MOST_ITEMS, Material, OutletFillRequest, Role, Space,
};
use crate::checks::{FaultCode, Faults};
use crate::derivation::Pointer;
use crate::quantity::{Decimal, Units};
use crate::tables::standard_boxes::StandardBox;
use FaultCode::Conflict;

pub(super) fn find(request: &OutletFillRequest, faults: &mut Faults) {
    if let Some(enclosure) = &request.enclosure {
        of_enclosure(enclosure, request.units, faults);
    }
    let divided = request.enclosure.as_ref().is_some_and(|enclosure| !enclosure.barriers.is_empty());
    match (&request.contents, request.spaces.is_empty()) {
        (Some(_), false) => {
            faults.add(Pointer::to(&"/contents"), Conflict, "fault-contents-and-spaces");
        }
        (None, true) => {
            faults.add(Pointer::ROOT, FaultCode::MissingMember, "fault-no-contents");
        }
        _ => {}
    }
    if divided && request.spaces.is_empty() {
        faults.add(Pointer::to(&"/enclosure/barriers"), Conflict, "fault-barriers-without-spaces");
    }
    if !divided && !request.spaces.is_empty() && request.enclosure.is_some() {
        faults.add(Pointer::to(&"/spaces"), Conflict, "fault-spaces-without-barriers");
    }
    if let Some(contents) = &request.contents {
        of_contents(contents, None, faults);
    }
    if let Some(enclosure) = &request.enclosure {
        of_molded_clamps(request, enclosure, faults);
        measures::of_opening(request, enclosure, faults);
        measures::of_sections(request, enclosure, faults);
    }
    faults.at_most(Pointer::to(&"/spaces"), request.spaces.len(), MOST_ITEMS);
    of_spaces(&request.spaces, faults);
    if let Some(enclosure) = &request.enclosure {
        of_shares(enclosure, &request.spaces, faults);
    }
}

/// Spring tabs are molded into plastic boxes only.
fn of_molded_clamps(request: &OutletFillRequest, enclosure: &Enclosure, faults: &mut Faults) {
    let metal = match (enclosure.standard, enclosure.material) {
        (Some(_), _) => Pointer::to(&"/enclosure/standard"),
        (None, Some(Material::Metal)) => Pointer::to(&"/enclosure/material"),
        _ => return,
    };
    let whole = request.contents.iter().map(|contents| (contents, None));
    let divided = request.spaces.iter().enumerate().map(|(space, one)| (&one.contents, Some(space)));
    for (contents, space) in whole.chain(divided) {
        if let Some(index) = contents.clamps.iter().position(|clamp| clamp.kind == ClampKind::Molded) {
            let item = Pointer::of(&"/contents/clamps/#", index);
            let item = space.map_or(item, |space| item.under(&"/spaces/#", space));
            faults.contradiction(item.member(&"/kind"), metal, "fault-molded-clamp-in-metal-box");
        }
    }
}

fn of_enclosure(enclosure: &Enclosure, units: Units, faults: &mut Faults) {
    let at = |member| Pointer::to(&"/enclosure").member(member);
    faults.at_most(at(&"/sections"), enclosure.sections.len(), MOST_ITEMS);
    faults.at_most(at(&"/barriers"), enclosure.barriers.len(), MOST_ITEMS);
    if let Some(standard) = enclosure.standard {
        if enclosure.material == Some(Material::Nonmetallic) {
            faults.add(at(&"/material"), Conflict, "fault-standard-box-is-metal");
        }
        if enclosure.inside_dimensions.is_some() {
            faults.add(at(&"/inside_dimensions"), Conflict, "fault-standard-box-is-not-measured");
        }
        let gangs = enclosure.gangs.map_or(1, |gangs| gangs.get());
        let shape = standard.shape();
        if !shape.takes_gangs(gangs) {
            faults.add(at(&"/gangs"), Conflict, "fault-gangs-of-standard-box").arguments =
                vec![("box", standard.key().to_owned()), ("gangs", gangs.to_string())];
        }
    }
    let one_gang = |standard: StandardBox| standard.volume(units).value;
    if let (Some(mark), Some(standard)) = (enclosure.marked_volume, enclosure.standard) {
        let gangs = enclosure.gangs.filter(|_| standard.shape().is_per_gang()).map_or(1, |gangs| gangs.get());
        if mark.value() < one_gang(standard).times(gangs.into()) {
            faults.contradiction(at(&"/marked_volume"), at(&"/standard"), "fault-mark-below-table");
        }
    }
    for (index, section) in enclosure.sections.iter().enumerate() {
        let item = Pointer::of(&"/enclosure/sections/#", index);
        if let (Some(mark), Some(standard)) = (section.marked_volume, section.standard)
            && mark.value() < one_gang(standard)
        {
            let (marked, made_from) = (item.member(&"/marked_volume"), item.member(&"/standard"));
            faults.contradiction(marked, made_from, "fault-mark-below-table");
        }
    }
    if enclosure.marked_volume.is_some() && enclosure.inside_dimensions.is_some() {
        faults.add(at(&"/inside_dimensions"), Conflict, "fault-marked-box-is-not-measured");
    }
    for (index, section) in enclosure.sections.iter().enumerate() {
        if let (Some(ring), Some(own)) = (section.gangs, enclosure.gangs)
            && ring.get() < own.get()
        {
            let ring = Pointer::of(&"/enclosure/sections/#", index).member(&"/gangs");
            faults.contradiction(ring, at(&"/gangs"), "fault-ring-narrower-than-box");
        }
    }
    if let Some(inside) = enclosure.inside_dimensions {
        for (side, member) in [
            (inside.length, &"/inside_dimensions/length"),
            (inside.width, &"/inside_dimensions/width"),
            (inside.depth, &"/inside_dimensions/depth"),
        ] {
            if side.value() > Decimal::whole(LONGEST_SIDE) {
                faults.add(at(member), FaultCode::OutOfBounds, "fault-side-too-long").arguments =
                    vec![("most", LONGEST_SIDE.to_string())];
            }
        }
    }
}

/// The longest inside dimension of a box, in inches or millimetres.
const LONGEST_SIDE: i32 = 10_000;

/// The gangs of the spaces are those of the box: no more and no fewer.
fn of_shares(enclosure: &Enclosure, spaces: &[Space], faults: &mut Faults) {
    let shares: Option<u32> = spaces.iter().map(|space| space.gangs.map(|gangs| gangs.get())).sum();
    let (Some(shares), Some((gangs, place)), false) = (shares, gangs::stated(enclosure), spaces.is_empty())
    else {
        return;
    };
    if shares != gangs {
        faults.contradiction(Pointer::to(&"/spaces"), place, "fault-shares-are-not-the-box").arguments =
            vec![("shares", shares.to_string()), ("gangs", gangs.to_string())];
    }
}

fn of_spaces(spaces: &[Space], faults: &mut Faults) {
    if spaces.len() == 1 {
        faults.add(Pointer::to(&"/spaces"), Conflict, "fault-one-space");
    }
    let by_gangs = spaces.iter().filter(|space| space.gangs.is_some()).count();
    let by_measure = spaces.iter().filter(|space| space.measured_volume.is_some()).count();
    let one_way = (by_gangs, by_measure) == (spaces.len(), 0) || (by_gangs, by_measure) == (0, spaces.len());
    if !one_way {
        faults.add(Pointer::to(&"/spaces"), Conflict, "fault-shares-of-spaces");
    }
    faults.distinct_ids(
        spaces
            .iter()
            .enumerate()
            .map(|(index, space)| (space.id.as_str(), Pointer::of(&"/spaces/#", index).member(&"/id"))),
    );
    for (index, space) in spaces.iter().enumerate() {
        of_contents(&space.contents, Some(index), faults);
    }
}

pub(in crate::checks) fn of_contents(contents: &Contents, space: Option<usize>, faults: &mut Faults) {
    let within = |pointer: Pointer| match space {
        Some(index) => pointer.under(&"/spaces/#", index),
        None => pointer,
    };
    let list = |name| within(Pointer::to(name));
    let Contents {
        conductors,
        cables,
        grounding,
        canopy,
        clamps,
        support_fittings,
        devices,
        terminal_blocks,
        small_parts,
        nothing,
    } = contents;
    if let (Some(true), Some(thing)) = (nothing, contents.first_thing()) {
        faults.contradiction(list(&"/contents/nothing"), list(thing), "fault-nothing-and-something");
    }
    faults.at_most(list(&"/contents/conductors"), conductors.len(), MOST_ITEMS);
    faults.at_most(list(&"/contents/cables"), cables.len(), MOST_ITEMS);
    faults.at_most(list(&"/contents/grounding"), grounding.len(), MOST_ITEMS);
    faults.at_most(list(&"/contents/clamps"), clamps.len(), MOST_ITEMS);
    faults.at_most(list(&"/contents/support_fittings"), support_fittings.len(), MOST_ITEMS);
    faults.at_most(list(&"/contents/devices"), devices.len(), MOST_ITEMS);
    faults.at_most(list(&"/contents/terminal_blocks"), terminal_blocks.len(), MOST_ITEMS);
    faults.at_most(list(&"/contents/small_parts"), small_parts.len(), MOST_ITEMS);
    if let Some(canopy) = canopy {
        faults.at_most(list(&"/contents/canopy/fixture_wires"), canopy.fixture_wires.len(), MOST_ITEMS);
        faults.at_most(list(&"/contents/canopy/grounding"), canopy.grounding.len(), MOST_ITEMS);
    }
    for (index, conductor) in conductors.iter().enumerate() {
        let item = within(Pointer::of(&"/contents/conductors/#", index));
        match (conductor.role, conductor.loop_length) {
            (Role::Loop, None) => {
                faults.add(
                    item.member(&"/loop_length"),
                    FaultCode::MissingMember,
                    "fault-loop-without-length",
                );
            }
            (Role::Loop, Some(_)) | (_, None) => {}
            (_, Some(_)) => {
                faults.add(item.member(&"/loop_length"), Conflict, "fault-length-without-loop");
            }
        }
    }
    for (index, Clamp { kind, volume, listed_for_box, count: _ }) in clamps.iter().enumerate() {
        let item = within(Pointer::of(&"/contents/clamps/#", index));
        if listed_for_box.is_some() && *kind != ClampKind::TerminatingAssembly {
            faults.add(item.member(&"/listed_for_box"), Conflict, "fault-listing-of-plain-clamp");
        }
        let at = item.member(&"/volume");
        match (kind, volume) {
            (ClampKind::TerminatingAssembly, None) => {
                faults.add(at, FaultCode::MissingMember, "fault-assembly-without-volume");
            }
            (ClampKind::TerminatingAssembly, Some(_)) | (_, None) => {}
            (_, Some(_)) => {
                faults.add(at, Conflict, "fault-volume-of-plain-clamp");
            }
        }
    }
    faults.distinct_ids(devices.iter().enumerate().filter_map(|(index, device)| {
        let at = within(Pointer::of(&"/contents/devices/#", index)).member(&"/id");
        device.id.as_ref().map(|id| (id.as_str(), at))
    }));
}
