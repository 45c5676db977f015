//! Conductors of 4 AWG and larger: the lengths of the pull-box rules, by the dimensions of the body.

use super::outcome::LargeInBody;
use super::request::{ConduitBodyRequest, HubPlace};
use super::small::{fill, key, word};
use crate::checks::pulls::comparison::{self, SmallerPermitted};
use crate::checks::pulls::distances::MinDistance;
use crate::checks::pulls::entry::{ResolvedEntry, raceway};
use crate::checks::pulls::pull::RequestedPull;
use crate::checks::pulls::{
    Axis, AxisSize, Cover, EntryDistanceOf, Resolved, Wall, distances, lengths, pull,
};
use crate::checks::raceway_fill::sizing::Sizer;
use crate::checks::{Argument, Finding, Status};
use crate::derivation::{Derivation, Pointer, Relation};
use crate::quantity::{Length, Measure};
use crate::rulebook::pull::{CONDUIT_BODY, MARKED};
use crate::tables::wire_bending_space::Stranding;

/// Checks the body by length.
pub(super) fn check(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    request: &ConduitBodyRequest,
    findings: &mut Vec<Finding>,
) -> LargeInBody {
    let resolved = resolve(proof, request);
    let lengths = lengths::required(proof, &resolved, Cover::Removable, findings);
    let distances = distances::required(proof, &resolved);
    let smaller = smaller_permitted(proof, sizer, request, findings);
    let mut large = LargeInBody {
        length: lengths::axis_size(proof, Axis::Width, &lengths),
        width: lengths::axis_size(proof, Axis::Height, &lengths),
        depth: lengths::axis_size(proof, Axis::Depth, &lengths),
        pulls: resolved.kinds(),
        distances: distances::answered(&resolved, &distances),
    };
    let body = &request.body;
    let sides = [
        (&mut large.length, body.length, "length", &"/body/length"),
        (&mut large.width, body.width, "width", &"/body/width"),
        (&mut large.depth, body.depth, "depth", &"/body/depth"),
    ];
    for (size, given, name, at) in sides {
        compare_side(proof, request, size, given, (name, Pointer::to(at)), smaller, findings);
    }
    for (least, answered) in distances.iter().zip(&mut large.distances) {
        compare_distance(proof, request, least, answered, smaller, findings);
    }
    large
}

/// The body as a box: its ends are the left and the right wall, its sides top and bottom, its cover opposite the back.
fn resolve(proof: &mut Derivation, request: &ConduitBodyRequest) -> Resolved<'static> {
    let mut entries = Vec::with_capacity(request.hubs.len());
    for (index, hub) in request.hubs.iter().enumerate() {
        let wall = match hub.place {
            HubPlace::End => Wall::Left,
            HubPlace::OppositeEnd => Wall::Right,
            HubPlace::Side => Wall::Top,
            HubPlace::OppositeSide => Wall::Bottom,
            HubPlace::Back => Wall::Back,
        };
        let at = Pointer::of(&"/hubs/#", index);
        let size = raceway(proof, Some(hub.raceway.trade_size), None, at);
        entries.push(ResolvedEntry::new(word(hub.place), wall, at, size));
    }
    let position = |wanted: &HubPlace| request.hubs.iter().position(|hub| hub.place == *wanted);
    let requested = request.pulls.iter().enumerate().filter_map(|(index, pull)| {
        let mut ends = pull.between.iter().filter_map(position);
        Some(RequestedPull {
            index,
            first: ends.next()?,
            others: ends.collect(),
            largest_conductor: pull.largest(),
            insulated: true,
            spliced: pull.spliced,
            offset: false,
            stranding: Stranding::Plain,
        })
    });
    let pulls = pull::resolve(proof, &entries, &requested.collect::<Vec<_>>(), false);
    Resolved { entries, pulls }
}

/// Whether a marking, or a listing for full fill, lets the body be smaller.
fn smaller_permitted(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    request: &ConduitBodyRequest,
    findings: &mut Vec<Finding>,
) -> SmallerPermitted {
    if request.body.evaluated_for_full_fill {
        let fills: Vec<Option<bool>> = (0..request.hubs.len())
            .map(|index| fill(proof, sizer, request, index, findings).map(|(_, fits)| fits))
            .collect();
        let all = fills.into_iter().try_fold(true, |all, fits| Some(all && fits?));
        if all == Some(true) {
            let at = Pointer::to(&"/body/evaluated_for_full_fill");
            let step = proof.fact(&MARKED, true, at);
            findings.push(Finding::new(&MARKED, Status::Satisfied, "finding-full-fill").at(at).step(step));
        }
        return all;
    }
    match &request.marked {
        Some(marked) => marked.covers(proof, findings),
        None => Some(false),
    }
}

/// Openings, given by name, as a sentence of any language names them.
fn openings(request: &ConduitBodyRequest, names: &[String]) -> Argument {
    let places = request.hubs.iter().map(|hub| hub.place);
    let key_of = |name: &String| places.clone().find(|place| word(*place) == name.as_str()).map(key);
    Argument::Words(names.iter().filter_map(key_of).collect())
}

/// Compares one dimension of the body with what is required of it.
fn compare_side(
    proof: &mut Derivation,
    request: &ConduitBodyRequest,
    size: &mut AxisSize,
    given: Option<Length>,
    (name, at): (&'static str, Pointer),
    smaller: SmallerPermitted,
    findings: &mut Vec<Finding>,
) {
    let Some(minimum) = size.minimum else { return };
    let Some(given) = given else {
        if smaller != Some(true) {
            let finding = Finding::new(&CONDUIT_BODY, Status::NotDetermined, "finding-body-side-open");
            findings.push(finding.with("axis", name).with("required", minimum).supply(at));
        }
        return;
    };
    let given = proof.given(&CONDUIT_BODY, given.value(), Measure::Length, at);
    findings.extend(comparison::compare_side(
        proof,
        size,
        given,
        (name, at),
        smaller,
        |finding, requirement| finding.with("entries", openings(request, &requirement.entries)),
    ));
}

/// Compares the distance between two openings with what is required.
fn compare_distance(
    proof: &mut Derivation,
    request: &ConduitBodyRequest,
    least: &MinDistance,
    answered: &mut EntryDistanceOf,
    smaller: SmallerPermitted,
    findings: &mut Vec<Finding>,
) {
    let at = least.at.member(&"/distance");
    let finding = |status, message, answered: &EntryDistanceOf| {
        Finding::new(least.rule, status, message)
            .with("first", openings(request, &answered.entries[..1]))
            .with("other", openings(request, &answered.entries[1..]))
            .with("required", least.required)
    };
    let pull = request.pulls.get(least.pull);
    let Some(given) = pull.and_then(|pull| pull.distance) else {
        if smaller != Some(true) {
            let open = finding(Status::NotDetermined, "finding-openings-open", answered);
            findings.push(open.at(least.at).supply(at));
        }
        return;
    };
    let measured = proof.given(least.rule, given.value(), Measure::Length, at);
    answered.measured = Some(measured);
    let (enough, step) = proof.compare(least.rule, measured, Relation::AtLeast, least.required);
    let messages = ["finding-entries-apart", "finding-closer-by-mark", "finding-entries-close"];
    let (status, message) = comparison::verdict(enough, smaller, messages);
    findings.push(finding(status, message, answered).with("measured", measured).at(at).step(step));
}
