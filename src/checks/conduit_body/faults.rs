//! What can be wrong with a request that decoded.

use super::request::{BodyRaceway, ConduitBodyRequest, HubPlace};
use super::small::is_short_of_area;
use crate::checks::outlet_fill::faults_of_contents;
use crate::checks::pulls::{ConductorGroup, Marking};
use crate::checks::raceway_fill::permitted;
use crate::checks::{FaultCode, Faults};
use crate::derivation::Pointer;
use crate::quantity::{Decimal, Length, Units};
use crate::rulebook::Rulebook;
use crate::tables::conductor_dimensions;
use crate::tables::raceway_dimensions::{self, Dimension};
use crate::trade::ConductorSize;
use FaultCode::{Conflict, DuplicateId, MissingMember, OutOfBounds, UnknownReference};
use std::collections::BTreeMap;

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
        let at = Pointer::of(&"/hubs/#", index).member(&"/raceway/trade_size");
        permitted::faults(hub.raceway.kind, hub.raceway.trade_size, at, faults);
    }
    if let Some(BodyRaceway { kind, trade_size }) = request.body.largest_raceway {
        let at = Pointer::to(&"/body/largest_raceway/trade_size");
        permitted::faults(kind, trade_size, at, faults);
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
            if let Some(insulation) = group.insulation.filter(|_| !group.bare && !group.compact)
                && !conductor_dimensions::sizes(insulation).any(|size| size == group.size)
            {
                let fault = faults.add(at.member(&"/insulation"), Conflict, "fault-size-of-insulation");
                fault.arguments = vec![
                    ("insulation", insulation.letters().to_owned()),
                    ("size", group.size.name().to_owned()),
                ];
                fault.accepted =
                    conductor_dimensions::sizes(insulation).map(|size| size.name().to_owned()).collect();
            }
            if group.bare && (group.insulation.is_some() || group.compact) {
                faults.add(at.member(&"/bare"), Conflict, "fault-bare-and-insulated");
            }
        }
        if pull.spliced && contents.is_none() && pull.has_small(large_from) {
            faults.add(Pointer::to(&"/contents"), MissingMember, "fault-splice-without-contents");
        }
    }
    if let Some(contents) = contents {
        faults_of_contents(contents, None, faults);
        if contents.first_thing().is_none() {
            faults.add(Pointer::to(&"/contents"), MissingMember, "fault-empty-contents");
        }
    }
    if let Some(marked) = marked {
        marked.faults(faults);
        of_held(request, marked, faults);
    }
    of_dimensions(request, faults);
    of_distances(request, faults);
    of_across(request, faults);
    of_corners(request, faults);
    of_listing(request, faults);
    of_spliced(request, large_from, faults);
    if request.body.unmarked == Some(true) {
        let body = Pointer::to(&"/body");
        let claims = [
            (request.body.marked_volume.is_some(), body.member(&"/marked_volume")),
            (marked.as_ref().is_some_and(|marked| marked.listed), Pointer::to(&"/marked")),
        ];
        for (_, at) in claims.into_iter().filter(|(claimed, _)| *claimed) {
            faults.contradiction(body.member(&"/unmarked"), at, "fault-unmarked-and-marked");
        }
    }
}

/// What is stated of a body goes with its own dimensions and its own openings.
fn of_dimensions(request: &ConduitBodyRequest, faults: &mut Faults) {
    let body = &request.body;
    let to = |at| Pointer::to(at);
    if let (Some(area), Some(width), Some(depth)) = (body.cross_section, body.width, body.depth)
        && area.value() > width.value().times(depth.value())
    {
        faults.contradiction(
            to(&"/body/cross_section"),
            to(&"/body/width"),
            "fault-cross-section-over-sides",
        );
    }
    // volumes of metric requests are in cubic centimetres: of three lengths in millimetres, a thousandth
    let scale = if request.units == Units::Si { Decimal::ten_thousandths(10) } else { Decimal::whole(1) };
    let volume = |length: Length, width: Length, depth: Length| {
        length.value().times(scale).times(width.value()).times(depth.value())
    };
    if let (Some(marked), Some(length), Some(width), Some(depth)) =
        (body.marked_volume, body.length, body.width, body.depth)
        && marked.value() > volume(length, width, depth)
    {
        faults.contradiction(to(&"/body/marked_volume"), to(&"/body/length"), "fault-volume-over-sides");
    }
    for (index, hub) in request.hubs.iter().enumerate() {
        let (kind, size) = (hub.raceway.kind, hub.raceway.trade_size);
        let Some(wide) = raceway_dimensions::of(kind, size, Dimension::Diameter, request.units) else {
            continue;
        };
        let said = sides_of(request, hub.place).into_iter().filter_map(|(side, at)| Some((side?, at)));
        if let Some((side, at)) = said.min_by_key(|(side, _)| *side)
            // where the opening narrows at the end of the raceway it is not narrower than the trade size
            && side.value() < wide.value.min(size.figure(request.units))
        {
            let hub = Pointer::of(&"/hubs/#", index).member(&"/raceway");
            faults.contradiction(at, hub, "fault-opening-larger-than-body");
        }
    }
    let Some(largest) = body.largest_raceway else { return };
    if let Some(index) = request.hubs.iter().position(|hub| hub.raceway.trade_size > largest.trade_size) {
        let hub = Pointer::of(&"/hubs/#", index).member(&"/raceway");
        faults.contradiction(to(&"/body/largest_raceway"), hub, "fault-largest-raceway-under-opening");
    }
}

/// A body is listed or it is not, wherever that is said; and what a listing is taken to show of a cross-section does not go with
/// one that is stated and less.
fn of_listing(request: &ConduitBodyRequest, faults: &mut Faults) {
    let listed_at = Pointer::to(&"/body/listed");
    let Some(listed) = request.body.listed else { return };
    let elsewhere = [
        (request.marked.as_ref().map(|marked| marked.listed), Pointer::to(&"/marked/listed")),
        (
            request.body.evaluated_for_full_fill.filter(|evaluated| *evaluated),
            Pointer::to(&"/body/evaluated_for_full_fill"),
        ),
    ];
    for (_, at) in elsewhere.into_iter().filter(|(said, _)| said.is_some_and(|said| said != listed)) {
        faults.contradiction(at, listed_at, "fault-body-listed-and-not");
    }
    if listed && is_short_of_area(request) {
        let at = Pointer::to(&"/body/cross_section");
        faults.contradiction(at, listed_at, "fault-listed-body-without-area");
    }
}

/// Each conductor that is spliced between two openings comes in at one and goes out at the other, so that the contents have it
/// twice.
fn of_spliced(request: &ConduitBodyRequest, large_from: ConductorSize, faults: &mut Faults) {
    let Some(contents) = request.contents.as_ref().filter(|contents| contents.cables.is_empty()) else {
        return;
    };
    let mut listed: BTreeMap<ConductorSize, u32> = BTreeMap::new();
    let loose = contents.conductors.iter().map(|one| (one.size, one.count.map_or(1, |count| count.get())));
    let grounds = contents.grounding.iter().map(|one| (one.size, one.count.map_or(1, |count| count.get())));
    for (size, count) in loose.chain(grounds) {
        let number = listed.entry(size).or_default();
        *number = number.saturating_add(count);
    }
    for (index, pull) in request.pulls.iter().enumerate().filter(|(_, pull)| pull.spliced) {
        for (place, group) in pull.conductors.iter().enumerate().filter(|(_, group)| group.size < large_from)
        {
            let ends = group.number().saturating_mul(2);
            let left = listed.entry(group.size).or_default();
            if *left < ends {
                let at = Pointer::of(&"/conductors/#", place).under(&"/pulls/#", index);
                faults.contradiction(at, Pointer::to(&"/contents"), "fault-splices-not-in-contents");
            }
            *left = left.saturating_sub(ends);
        }
    }
}

/// The conductors that a mark lists beside it are those of the pulls.
fn of_held(request: &ConduitBodyRequest, marked: &Marking, faults: &mut Faults) {
    let tally = |groups: &mut dyn Iterator<Item = &ConductorGroup>| {
        let mut numbers: BTreeMap<ConductorSize, u32> = BTreeMap::new();
        groups.for_each(|group| {
            let number = numbers.entry(group.size).or_default();
            *number = number.saturating_add(group.number());
        });
        numbers
    };
    let listed = tally(&mut marked.conductors.iter());
    let pulled = tally(&mut request.pulls.iter().flat_map(|pull| &pull.conductors));
    let (at, pulls) = (Pointer::to(&"/marked/conductors"), Pointer::to(&"/pulls"));
    if !listed.is_empty() && listed != pulled {
        faults.contradiction(at, pulls, "fault-mark-list-and-pulls");
        return;
    }
    let is_insulated_otherwise = |group: &ConductorGroup| {
        let mut of_size = marked.conductors.iter().filter(|listed| listed.size == group.size).peekable();
        let differs =
            |listed: &ConductorGroup| listed.insulation.is_some() && listed.insulation != group.insulation;
        group.insulation.is_some() && of_size.peek().is_some() && of_size.all(differs)
    };
    if request.pulls.iter().flat_map(|pull| &pull.conductors).any(is_insulated_otherwise) {
        faults.contradiction(at, pulls, "fault-mark-list-and-pulls");
    }
}

/// Pulls between the same two openings agree on how far apart these are.
fn of_distances(request: &ConduitBodyRequest, faults: &mut Faults) {
    let mut known: Vec<([HubPlace; 2], Length, Pointer)> = Vec::new();
    for (index, pull) in request.pulls.iter().enumerate() {
        let (Some(distance), Some(first)) = (pull.distance, pull.between.first()) else { continue };
        let at = Pointer::of(&"/pulls/#", index).member(&"/distance");
        for other in pull.between.iter().skip(1) {
            let mut ends = [*first, *other];
            ends.sort_unstable();
            match known.iter().find(|(between, ..)| *between == ends) {
                Some((_, earlier, there)) if *earlier != distance => {
                    faults.contradiction(at, *there, "fault-distances-differ");
                }
                Some(_) => {}
                None => known.push((ends, distance, at)),
            }
        }
    }
}

/// Openings on opposite ends or sides are no nearer to one another than these.
fn of_across(request: &ConduitBodyRequest, faults: &mut Faults) {
    use HubPlace::{End, OppositeEnd, OppositeSide, Side};
    let body = &request.body;
    let ends = (body.length, [End, OppositeEnd], Pointer::to(&"/body/length"));
    let sides = (body.width, [Side, OppositeSide], Pointer::to(&"/body/width"));
    for (index, pull) in request.pulls.iter().enumerate() {
        let (Some(distance), [one, other]) = (pull.distance, &pull.between[..]) else { continue };
        for (side, places, there) in [ends, sides] {
            let is_across = places == [*one, *other] || places == [*other, *one];
            if is_across && side.is_some_and(|side| distance < side) {
                let at = Pointer::of(&"/pulls/#", index).member(&"/distance");
                faults.contradiction(at, there, "fault-distance-within-body");
            }
        }
    }
}

/// No two places in a body are further apart than its corners. Which of its dimensions is meant is not known: the longest is named.
fn of_corners(request: &ConduitBodyRequest, faults: &mut Faults) {
    let body = &request.body;
    let sides = [(body.length, &"/body/length"), (body.width, &"/body/width"), (body.depth, &"/body/depth")];
    let said: Vec<(Length, Pointer)> =
        sides.iter().filter_map(|(side, at)| Some(((*side)?, Pointer::to(at)))).collect();
    let Some((_, longest)) = said.iter().max_by_key(|(side, _)| *side).filter(|_| said.len() == sides.len())
    else {
        return;
    };
    let legs: Vec<Decimal> = said.iter().map(|(side, _)| side.value()).collect();
    let corners = Decimal::distance(&legs);
    for (index, pull) in request.pulls.iter().enumerate() {
        if pull.distance.is_some_and(|distance| distance.value() > corners) {
            let at = Pointer::of(&"/pulls/#", index).member(&"/distance");
            faults.contradiction(at, *longest, "fault-distance-beyond-body");
        }
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

/// The two dimensions of the body that an opening stands in.
fn sides_of(request: &ConduitBodyRequest, place: HubPlace) -> [(Option<Length>, Pointer); 2] {
    let body = &request.body;
    let length = (body.length, Pointer::to(&"/body/length"));
    let width = (body.width, Pointer::to(&"/body/width"));
    let depth = (body.depth, Pointer::to(&"/body/depth"));
    match place {
        HubPlace::End | HubPlace::OppositeEnd => [width, depth],
        HubPlace::Side | HubPlace::OppositeSide => [length, depth],
        HubPlace::Back => [length, width],
    }
}
