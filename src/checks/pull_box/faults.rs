//! What can be wrong with a request that decoded.

use super::places;
use super::request::{
    CableEntry, Entry, InsideBox, MOST_ENTRIES, MOST_ITEMS, MOST_JOINED, MOST_PULLS, Pull, PullBoxRequest,
};
use crate::checks::pulls::{Axis, ConductorGroup, EntryPosition, Marking, Wall};
use crate::checks::raceway_fill::permitted;
use crate::checks::raceway_fill::sizing::{Load, Occupant, Sizer};
use crate::checks::{FaultCode, Faults};
use crate::derivation::{Derivation, Pointer};
use crate::quantity::{Decimal, Length, Measure, Units};
use crate::rulebook::Rulebook;
use crate::rulebook::geometry::RACEWAYS;
use crate::tables::raceway_outside_diameters;
use FaultCode::{Conflict, MissingMember, OutOfBounds, UnknownReference};
use std::collections::HashMap;

/// The longest inside dimension of a box, and the largest diameter, in inches or millimetres.
const LONGEST: i32 = 10_000;

pub(super) fn find(request: &PullBoxRequest, faults: &mut Faults) {
    let PullBoxRequest {
        entries, pulls, inside, sections, marked, power_distribution_blocks, layout, ..
    } = request;
    faults.at_most(Pointer::to(&"/entries"), entries.len(), MOST_ENTRIES);
    faults.at_most(Pointer::to(&"/pulls"), pulls.len(), MOST_PULLS);
    faults.at_most(Pointer::to(&"/sections"), sections.len(), MOST_ITEMS);
    let blocks = Pointer::to(&"/power_distribution_blocks");
    faults.at_most(blocks, power_distribution_blocks.len(), MOST_ITEMS);
    for (is_empty, at) in [(entries.is_empty(), &"/entries"), (pulls.is_empty(), &"/pulls")] {
        if is_empty {
            faults.add(Pointer::to(at), MissingMember, "fault-empty-list");
        }
    }
    let entry_at = |index| Pointer::of(&"/entries/#", index);
    faults.distinct_ids(
        entries.iter().enumerate().map(|(index, entry)| (entry.id.as_str(), entry_at(index).member(&"/id"))),
    );
    of_sections(request, faults);
    if let Some(inside) = inside {
        of_sides(inside, Pointer::to(&"/box"), faults);
    }
    for (index, entry) in entries.iter().enumerate() {
        of_entry(request, entry, index, faults);
    }
    of_pulls(request, faults);
    places::find(request, faults);
    if let Some(marked) = marked {
        marked.faults(faults);
        of_mark_list(pulls, marked, faults);
        if !sections.is_empty() {
            faults.add(Pointer::to(&"/marked"), Conflict, "fault-marked-and-sections");
        }
        if request.unmarked == Some(true) && marked.listed {
            let at = Pointer::to(&"/marked");
            faults.contradiction(Pointer::to(&"/unmarked"), at, "fault-box-unmarked-and-marked");
        }
    }
    if let Some(layout) = layout {
        for (length, member) in [
            (layout.clearance, &"/clearance"),
            (layout.wall_clearance, &"/wall_clearance"),
            (layout.step, &"/step"),
        ] {
            at_most_long(length, Pointer::to(&"/layout").member(member), faults);
        }
    }
}

/// The conductors listed with a mark are all that are in the box: the largest of each pull is among them, once for each pull.
fn of_mark_list(pulls: &[Pull], marked: &Marking, faults: &mut Faults) {
    if marked.conductors.is_empty() {
        return;
    }
    let listed = |size| -> u32 {
        let of_size = marked.conductors.iter().filter(|group| group.size == size);
        of_size.map(ConductorGroup::number).fold(0, u32::saturating_add)
    };
    for (index, pull) in pulls.iter().enumerate() {
        let Some(size) = pull.largest_conductor else { continue };
        let earlier = pulls.iter().take(index).filter(|earlier| earlier.largest_conductor == Some(size));
        if listed(size) <= earlier.count() as u32 {
            let at = Pointer::of(&"/pulls/#", index).member(&"/largest_conductor");
            faults.contradiction(at, Pointer::to(&"/marked/conductors"), "fault-mark-list-and-pulls");
        }
    }
}

fn at_most_long(length: Option<Length>, at: Pointer, faults: &mut Faults) {
    if length.is_some_and(|length| length.value() > Decimal::whole(LONGEST)) {
        faults.add(at, OutOfBounds, "fault-side-too-long").arguments = vec![("most", LONGEST.to_string())];
    }
}

fn of_sides(inside: &InsideBox, at: Pointer, faults: &mut Faults) {
    for axis in Axis::ALL {
        at_most_long(inside.side(axis), at.member(axis.member()), faults);
    }
    if Axis::ALL.into_iter().all(|axis| inside.side(axis).is_none()) {
        faults.add(at, MissingMember, "fault-box-without-sides");
    }
}

fn of_sections(request: &PullBoxRequest, faults: &mut Faults) {
    let PullBoxRequest { inside, sections, .. } = request;
    let at = |index| Pointer::of(&"/sections/#", index);
    faults.distinct_ids(
        sections.iter().enumerate().map(|(index, section)| (section.id.as_str(), at(index).member(&"/id"))),
    );
    if sections.len() == 1 {
        faults.add(Pointer::to(&"/sections"), Conflict, "fault-one-section");
    }
    if !sections.is_empty() && inside.is_some() {
        faults.add(Pointer::to(&"/box"), Conflict, "fault-box-and-sections");
    }
    let measured = sections.iter().filter(|section| section.inside.is_some()).count();
    if measured != 0 && measured != sections.len() {
        faults.add(Pointer::to(&"/sections"), Conflict, "fault-some-sections-measured");
    }
    for (index, section) in sections.iter().enumerate() {
        if let Some(inside) = &section.inside {
            of_sides(inside, Pointer::of(&"/sections/#/box", index), faults);
        }
    }
    for (index, block) in request.power_distribution_blocks.iter().enumerate() {
        let at = Pointer::of(&"/power_distribution_blocks/#", index).member(&"/section");
        of_section_name(request, block.section.as_ref(), at, faults);
    }
}

/// Requires that a thing names a section where there are sections, and none where there are none.
fn of_section_name(
    request: &PullBoxRequest,
    name: Option<&crate::checks::Name>,
    at: Pointer,
    faults: &mut Faults,
) {
    let known = || request.sections.iter().map(|section| section.id.as_str().to_owned());
    match name {
        None if request.sections.is_empty() => {}
        None => {
            faults.add(at, MissingMember, "fault-section-missing").accepted = known().collect();
        }
        Some(name) if request.sections.iter().any(|section| &section.id == name) => {}
        Some(name) => {
            let fault = faults.add(at, UnknownReference, "fault-unknown-section");
            fault.arguments = vec![("id", name.as_str().to_owned())];
            fault.accepted = known().collect();
        }
    }
}

fn of_entry(request: &PullBoxRequest, entry: &Entry, index: usize, faults: &mut Faults) {
    let at = Pointer::of(&"/entries/#", index);
    of_section_name(request, entry.section.as_ref(), at.member(&"/section"), faults);
    let over = &entry.cables_over_1000_volts;
    faults.at_most(at.member(&"/cables_over_1000_volts"), over.len(), MOST_ITEMS);
    match (request.over_1000_volts, over.is_empty()) {
        (true, true) => {
            faults.add(at.member(&"/cables_over_1000_volts"), MissingMember, "fault-entry-without-cables");
        }
        (false, false) => {
            faults.add(at.member(&"/cables_over_1000_volts"), Conflict, "fault-cables-over-1000-volts");
        }
        _ => {}
    }
    match (&entry.raceway, &entry.cable) {
        (Some(_), Some(_)) => {
            faults.add(at.member(&"/cable"), Conflict, "fault-raceway-and-cable");
        }
        (None, None) if !request.over_1000_volts => {
            faults.add(at, MissingMember, "fault-neither-raceway-nor-cable");
        }
        (None, Some(_)) if request.over_1000_volts => {
            faults.add(at.member(&"/cable"), Conflict, "fault-cable-over-1000-volts");
        }
        _ => {}
    }
    if let Some(raceway) = &entry.raceway {
        let outside_at = at.member(&"/raceway/outside_diameter");
        at_most_long(raceway.outside_diameter, outside_at, faults);
        if let Some(kind) = raceway.kind {
            let at = at.member(&"/raceway/trade_size");
            permitted::faults(kind, raceway.trade_size, at, faults);
        }
        let within = raceway.trade_size.figure(request.units);
        if raceway.outside_diameter.is_some_and(|outside| outside.value() < within) {
            let size = at.member(&"/raceway/trade_size");
            faults.contradiction(outside_at, size, "fault-outside-smaller-than-trade-size");
        } else if raceway.outside_diameter.is_some_and(|outside| {
            let (kind, size) = (raceway.kind, raceway.trade_size);
            !raceway_outside_diameters::admits(kind, size, request.units, outside.value())
        }) {
            let there =
                at.member(if raceway.kind.is_some() { &"/raceway/kind" } else { &"/raceway/trade_size" });
            faults.contradiction(outside_at, there, "fault-outside-not-of-raceway");
        }
    }
    if let Some(cable) = &entry.cable {
        at_most_long(cable.outside_diameter, at.member(&"/cable/outside_diameter"), faults);
        faults.at_most(at.member(&"/cable/conductors"), cable.conductors.len(), MOST_ITEMS);
        if cable.conductors.is_empty() {
            faults.add(at.member(&"/cable/conductors"), MissingMember, "fault-empty-list");
        }
        if cable.outside_diameter.is_some_and(|outside| is_thinner_than_conductors(request, cable, outside)) {
            let (outside, held) = (at.member(&"/cable/outside_diameter"), at.member(&"/cable/conductors"));
            faults.contradiction(outside, held, "fault-cable-thinner-than-conductors");
        }
    }
    for (number, cable) in over.iter().enumerate() {
        let at = Pointer::of(&"/cables_over_1000_volts/#", number).under(&"/entries/#", index);
        at_most_long(Some(cable.outside_diameter), at.member(&"/outside_diameter"), faults);
        if cable.conductor_diameter > Some(cable.outside_diameter) {
            faults.add(at.member(&"/conductor_diameter"), Conflict, "fault-conductor-over-cable");
        }
    }
    of_position(request, entry, at, faults);
}

/// Whether the conductors of a cable, by the least that they can have, are together larger than the cable.
fn is_thinner_than_conductors(request: &PullBoxRequest, cable: &CableEntry, outside: Length) -> bool {
    let mut proof = Derivation::new(Rulebook::of(request.edition), request.units);
    let at = Pointer::to(&"/entries");
    let conductors = cable.conductors.iter().filter_map(|group| group.at_bound(&mut proof, at, false));
    let occupants: Vec<Occupant> = conductors.collect();
    let Some(load) = Load::of(&mut proof, &occupants) else { return false };
    let outside = proof.given(&RACEWAYS, outside.value(), Measure::Length, at);
    let circle = Sizer::default().circle(&mut proof, &RACEWAYS, outside);
    load.total.value > circle.value
}

fn of_position(request: &PullBoxRequest, entry: &Entry, at: Pointer, faults: &mut Faults) {
    let Some(position) = entry.position else { return };
    let at = at.member(&"/position");
    let section = entry.section.as_ref();
    let in_section = request.sections.iter().find(|known| Some(&known.id) == section);
    let inside = request.inside.or(in_section.and_then(|section| section.inside));
    if inside.is_none_or(|inside| !inside.is_whole()) {
        faults.add(at, Conflict, "fault-position-without-box");
    }
    let expected = match entry.wall {
        Wall::Left | Wall::Right => (false, true, true),
        Wall::Top | Wall::Bottom => (true, false, true),
        Wall::Back => (true, true, false),
    };
    let given = (position.from_left.is_some(), position.from_bottom.is_some(), position.from_back.is_some());
    if expected != given {
        faults.add(at, Conflict, "fault-position-not-in-wall").arguments =
            vec![("wall", entry.wall.name().to_owned())];
    }
}

/// Whether two entries on opposite walls are out of line by their positions: so far that neither has any part across from the
/// other. `None` where they are a little out of line, which either word fits.
fn is_out_of_line(one: &Entry, other: &Entry, units: Units) -> Option<bool> {
    if one.wall.opposite() != Some(other.wall) {
        return None;
    }
    let (here, there) = (one.position?, other.position?);
    let size = |entry: &Entry| Some(entry.raceway.as_ref()?.trade_size.figure(units));
    let reach = size(one)? + size(other)?;
    let apart = |along: fn(&EntryPosition) -> Option<Length>| {
        let (Some(one), Some(other)) = (along(&here), along(&there)) else { return Decimal::ZERO };
        let gap = if one > other { one.value() - other.value() } else { other.value() - one.value() };
        // doubled, so that half a diameter needs no rounding
        gap + gap
    };
    let apart = [
        apart(|position| position.from_left),
        apart(|position| position.from_bottom),
        apart(|position| position.from_back),
    ];
    if apart.iter().any(|apart| *apart >= reach) {
        return Some(true);
    }
    apart.iter().all(|apart| *apart == Decimal::ZERO).then_some(false)
}

fn of_pulls(request: &PullBoxRequest, faults: &mut Faults) {
    let entries: HashMap<&str, &Entry> =
        request.entries.iter().map(|entry| (entry.id.as_str(), entry)).collect();
    let at = |index| Pointer::of(&"/pulls/#", index);
    faults.distinct_ids(
        request
            .pulls
            .iter()
            .enumerate()
            .filter_map(|(index, pull)| pull.id.as_ref().map(|id| (id.as_str(), at(index).member(&"/id")))),
    );
    for (index, pull) in request.pulls.iter().enumerate() {
        let list = at(index).member(&"/entries");
        faults.at_most(list, pull.entries.len(), MOST_JOINED);
        if pull.entries.len() < 2 {
            faults.add(list, OutOfBounds, "fault-pull-of-one-entry");
        }
        for (number, id) in pull.entries.iter().enumerate() {
            if !entries.contains_key(id.as_str()) {
                let fault = faults.add(list, UnknownReference, "fault-unknown-entry");
                fault.arguments = vec![("id", id.as_str().to_owned())];
            }
            if pull.entries.iter().take(number).any(|earlier| earlier == id) {
                faults.add(list, FaultCode::DuplicateId, "fault-entry-twice-in-pull").arguments =
                    vec![("id", id.as_str().to_owned())];
            }
        }
        let joined: Vec<&Entry> =
            pull.entries.iter().filter_map(|id| entries.get(id.as_str()).copied()).collect();
        if joined
            .windows(2)
            .any(|two| two.first().map(|one| &one.section) != two.last().map(|one| &one.section))
        {
            faults.add(list, Conflict, "fault-pull-through-barrier");
        }
        if pull.offset == Some(true)
            && !joined
                .windows(2)
                .any(|two| matches!(two, [one, other] if one.wall.opposite() == Some(other.wall)))
        {
            faults.add(at(index).member(&"/offset"), Conflict, "fault-offset-not-opposite");
        }
        if let (Some(offset), [one, other]) = (pull.offset, &joined[..])
            && let Some(is_offset) = is_out_of_line(one, other, request.units)
            && offset != is_offset
            && let Some(place) = request.entries.iter().position(|entry| entry.id == one.id)
        {
            let there = Pointer::of(&"/entries/#", place).member(&"/position");
            faults.contradiction(at(index).member(&"/offset"), there, "fault-offset-and-positions");
        }
        of_cables(request, pull, index, &joined, faults);
        let in_cable = joined.iter().any(|entry| entry.cable.is_some());
        if pull.largest_conductor.is_none() && !in_cable && !request.over_1000_volts {
            let at = at(index).member(&"/largest_conductor");
            faults.add(at, MissingMember, "fault-pull-without-conductor");
        }
    }
}

/// A pull has no conductor that is in none of the cables it comes from; and what no splice changes is the same at both its ends.
fn of_cables(request: &PullBoxRequest, pull: &Pull, index: usize, joined: &[&Entry], faults: &mut Faults) {
    let at = Pointer::of(&"/pulls/#", index);
    let place = |of: &Entry| request.entries.iter().position(|entry| entry.id == of.id).unwrap_or(0);
    if let (Some(largest), false) = (pull.largest_conductor, pull.spliced) {
        // of a pull that splits, the first entry holds all
        let whole = if joined.len() == 2 { joined } else { joined.get(..1).unwrap_or_default() };
        let lacks =
            |entry: &&&Entry| entry.cable.as_ref().is_some_and(|cable| cable.largest() < Some(largest));
        if let Some(entry) = whole.iter().find(lacks) {
            let there = Pointer::of(&"/entries/#", place(entry)).member(&"/cable");
            faults.contradiction(at.member(&"/largest_conductor"), there, "fault-pull-larger-than-cable");
        }
    }
    if let ([one, other], true, false) = (joined, request.over_1000_volts, pull.spliced) {
        let is_alone =
            |of: &Entry| request.pulls.iter().filter(|pull| pull.entries.contains(&of.id)).count() == 1;
        let cables = |of: &Entry| {
            let mut cables: Vec<_> = of
                .cables_over_1000_volts
                .iter()
                .map(|cable| {
                    (cable.outside_diameter, cable.covering as u8, cable.count.map_or(1, |count| count.get()))
                })
                .collect();
            cables.sort_unstable();
            cables
        };
        if is_alone(one) && is_alone(other) && cables(one) != cables(other) {
            let cables_of =
                |of: &Entry| Pointer::of(&"/entries/#", place(of)).member(&"/cables_over_1000_volts");
            faults.contradiction(cables_of(other), cables_of(one), "fault-cables-of-one-pull-differ");
        }
    }
}
