//! Conductors of 4 AWG and larger: the lengths of the pull-box rules, by the dimensions of the body.

use super::outcome::LargeInBody;
use super::request::{BodyPull, ConduitBodyRequest, HubPlace};
use super::small::{fill, key, occupants, without_insulation, word};
use crate::checks::pulls::comparison::{self, Smaller};
use crate::checks::pulls::distances::MinDistance;
use crate::checks::pulls::entry::{ResolvedEntry, raceway};
use crate::checks::pulls::lengths::OppositeBack;
use crate::checks::pulls::pull::RequestedPull;
use crate::checks::pulls::{Axis, AxisSize, EntryDistanceOf, Held, Resolved, Wall, distances, lengths, pull};
use crate::checks::raceway_fill::sizing::{Load, Sizer};
use crate::checks::{Finding, FindingArg, Status};
use crate::derivation::{Derivation, Pointer, Relation};
use crate::quantity::{Length, Measure};
use crate::rulebook::pull::{CONDUIT_BODY, MARKED};
use crate::tables::wire_bending_space::Stranding;
use crate::trade::Insulation;

/// Checks the body by length.
pub(super) fn check(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    request: &ConduitBodyRequest,
    findings: &mut Vec<Finding>,
) -> LargeInBody {
    let resolved = resolve(proof, request);
    let lengths = lengths::required(proof, &resolved, OppositeBack::CoverOfBody, findings);
    let distances = distances::required(proof, &resolved);
    let smaller = smaller(proof, sizer, request, findings);
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
        compare_side(proof, request, size, given, (name, Pointer::to(at)), &smaller, findings);
    }
    for (least, answered) in distances.iter().zip(&mut large.distances) {
        compare_distance(proof, request, least, answered, &smaller, findings);
    }
    smaller.settle(findings);
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
            insulated: Some(true),
            spliced: pull.spliced,
            offset: Some(false),
            stranding: Stranding::Plain,
        })
    });
    let pulls = pull::resolve(proof, &entries, &requested.collect::<Vec<_>>(), false);
    Resolved { entries, pulls }
}

/// What lets the body be smaller: a marking of conductors, or that it was evaluated for full fill.
fn smaller(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    request: &ConduitBodyRequest,
    findings: &mut Vec<Finding>,
) -> Smaller {
    let body = Pointer::to(&"/body");
    let unmarked = request.body.unmarked;
    if let Some(unmarked) = unmarked {
        proof.fact(&MARKED, unmarked, body.member(&"/unmarked"));
    }
    let absent = (unmarked == Some(true)).then_some(false);
    let mut supply = Vec::new();
    let evaluated_at = body.member(&"/evaluated_for_full_fill");
    let for_full_fill = match request.body.evaluated_for_full_fill {
        Some(true) => {
            let fills = hub_fills(proof, sizer, request);
            let step = proof.fact(&MARKED, true, evaluated_at);
            let (status, message) = match fills {
                Some(true) => (Status::Satisfied, "finding-full-fill"),
                Some(false) => (Status::Advisory, "finding-full-fill-exceeded"),
                None => (Status::NotDetermined, "finding-full-fill-open"),
            };
            let mut finding = Finding::new(&MARKED, status, message).at(evaluated_at).step(step);
            if fills.is_none() {
                let places = request.hubs.iter().flat_map(|hub| without_insulation(request, hub.place));
                finding.supply = places.collect();
                finding.supply.sort_unstable();
                finding.supply.dedup();
                supply.extend(&finding.supply);
            }
            findings.push(finding);
            fills
        }
        Some(false) => {
            proof.fact(&MARKED, false, evaluated_at);
            Some(false)
        }
        None => {
            supply.push(evaluated_at);
            absent
        }
    };
    let by_mark = match &request.marked {
        Some(marked) => {
            let below = below_full_fill(proof, sizer, request).or(marked.raceways_below_full_fill);
            // what is listed with the mark is what the pulls hold, which say more of it
            marked.covers(proof, &held(request), below, findings)
        }
        None => {
            supply.extend([Pointer::to(&"/marked"), body.member(&"/unmarked")]);
            absent
        }
    };
    Smaller { by_mark, for_full_fill, supply, ..Smaller::never() }
}

/// Every conductor of every pull.
fn held(request: &ConduitBodyRequest) -> Held<'_> {
    let groups = request.pulls.iter().enumerate().flat_map(|(index, pull)| {
        let at = move |number| Pointer::of(&"/conductors/#", number).under(&"/pulls/#", index);
        pull.conductors.iter().enumerate().map(move |(number, group)| (group, at(number)))
    });
    groups.collect()
}

/// Whether no raceway is fuller than permitted. What is found of each is told where there are small conductors.
fn hub_fills(proof: &mut Derivation, sizer: &mut Sizer, request: &ConduitBodyRequest) -> Option<bool> {
    let fills: Vec<Option<bool>> = (0..request.hubs.len())
        .map(|index| fill(proof, sizer, request, index, &mut Vec::new()).map(|(_, fits)| fits))
        .collect();
    fills.into_iter().try_fold(true, |all, fits| Some(all && fits?))
}

/// Whether every raceway holds less than it may; conductors whose insulation is not said are taken to be XHHW.
fn below_full_fill(proof: &mut Derivation, sizer: &mut Sizer, request: &ConduitBodyRequest) -> Option<bool> {
    let mut all = true;
    for hub in &request.hubs {
        let occupants = occupants(proof, request, hub.place, Some((Insulation::Xhhw, None)))?;
        let load = Load::of(proof, &occupants)?;
        let (limit, _) = sizer.limit(proof, load.number, false);
        let raceway = (hub.raceway.kind, hub.raceway.trade_size);
        let allowed = sizer.admits(proof, &MARKED, raceway, &load, limit)?.allowed;
        all &= proof.compare(&MARKED, load.total, Relation::Below, allowed).0;
    }
    Some(all)
}

/// Openings, given by name, as a sentence of any language names them.
fn openings(request: &ConduitBodyRequest, names: &[String]) -> FindingArg {
    let places = request.hubs.iter().map(|hub| hub.place);
    let key_of = |name: &String| places.clone().find(|place| word(*place) == name.as_str()).map(key);
    FindingArg::Words(names.iter().filter_map(key_of).collect())
}

/// Compares one dimension of the body with what is required of it.
fn compare_side(
    proof: &mut Derivation,
    request: &ConduitBodyRequest,
    size: &mut AxisSize,
    given: Option<Length>,
    (name, at): (&'static str, Pointer),
    smaller: &Smaller,
    findings: &mut Vec<Finding>,
) {
    let Some(minimum) = size.minimum else { return };
    let Some(given) = given else {
        if !smaller.than_all() {
            let finding = Finding::new(&CONDUIT_BODY, Status::NotDetermined, "finding-body-side-open");
            findings.push(finding.with("axis", name).with("required", minimum).supply(at));
        } else {
            proof.does_not_apply(&CONDUIT_BODY, "marked-smaller", Some(Pointer::to(&"/marked")));
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
    smaller: &Smaller,
    findings: &mut Vec<Finding>,
) {
    let at = least.at.member(&"/distance");
    let finding = |status, message, answered: &EntryDistanceOf| {
        Finding::new(least.rule, status, message)
            .with("first", openings(request, &answered.entries[..1]))
            .with("other", openings(request, &answered.entries[1..]))
            .with("required", least.required)
    };
    let Some((given, at)) = stated_distance(request, least) else {
        if smaller.than(least.rule) != Some(true) {
            let open = finding(Status::NotDetermined, "finding-openings-open", answered);
            findings.push(open.at(least.at).supply(at));
        }
        return;
    };
    let measured = proof.given(least.rule, given.value(), Measure::Length, at);
    answered.measured = Some(measured);
    let (enough, step) = proof.compare(least.rule, measured, Relation::AtLeast, least.required);
    let found = if enough {
        finding(Status::Satisfied, "finding-entries-apart", answered)
    } else {
        let short =
            smaller.short(least.rule, &least.unsaid, ["finding-closer-by-mark", "finding-entries-close"]);
        let Finding { status, message, supply, .. } = short;
        Finding { supply, ..finding(status, message, answered) }
    };
    findings.push(found.with("measured", measured).at(at).step(step));
}

/// The distance that a pull between two openings says they are apart, and where it says so.
fn stated_distance(request: &ConduitBodyRequest, least: &MinDistance) -> Option<(Length, Pointer)> {
    let joined = least.ends.map(|end| request.hubs.get(end).map(|hub| hub.place));
    let joins = |pull: &BodyPull| {
        let first = pull.between.first().copied();
        pull.between.iter().skip(1).any(|other| {
            let ends = [first, Some(*other)];
            ends == joined || [ends[1], ends[0]] == joined
        })
    };
    request.pulls.iter().enumerate().filter(|(_, pull)| joins(pull)).find_map(|(index, pull)| {
        Some((pull.distance?, Pointer::of(&"/pulls/#", index).member(&"/distance")))
    })
}
