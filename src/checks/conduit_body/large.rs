//! Conductors of 4 AWG and larger: the lengths of the pull-box rules, by the dimensions of the body.

use super::outcome::LargeInBody;
use super::request::{ConduitBodyRequest, HubPlace};
use super::small::{fill, key, word};
use crate::checks::pull_box::axis_size;
use crate::checks::pull_box::request::{Entry, Pull, PullBoxRequest, RacewayEntry};
use crate::checks::pull_box::section::{Chamber, Joining};
use crate::checks::pulls::entry::Entered;
use crate::checks::pulls::{
    Axis, AxisSize, Cover, EntryDistanceOf, PullKindOf, Wall, distances, lengths, pull,
};
use crate::checks::raceway_fill::sizing::Sizer;
use crate::checks::{Argument, Finding, Name, Status};
use crate::derivation::{Derivation, Pointer, Relation};
use crate::quantity::{Length, Measure};
use crate::rulebook::pull::{CONDUIT_BODY, GOVERNS};

/// Whether what is marked on a body covers what it holds: yes, no, or open.
type Covered = Option<bool>;

/// Checks the body by length.
pub(super) fn check(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    request: &ConduitBodyRequest,
    findings: &mut Vec<Finding>,
) -> LargeInBody {
    let boxed = as_pull_box(request);
    let entered: Vec<Entered<'_>> = boxed
        .entries
        .iter()
        .enumerate()
        .map(|(index, entry)| Entered::by_raceway(proof, entry, Pointer::of(&"/hubs/#", index)))
        .collect();
    let (joined, _) = pull::all(proof, &boxed, &chamber(request), &entered);
    let asked = lengths::asked(proof, &entered, &joined, Cover::Removable, findings);
    let apart = distances::required(proof, &entered, &joined);
    let covered = covered(proof, sizer, request, findings);
    let name = |place: usize| entered.get(place).map(|entry| entry.id().to_owned()).unwrap_or_default();
    let pulls = joined
        .iter()
        .map(|joined| PullKindOf {
            at: joined.at(),
            entries: joined.between.map(name),
            kind: joined.kind,
            sized_by_length: joined.large,
        })
        .collect();
    let mut large = LargeInBody {
        length: axis_size(proof, Axis::Width, &asked),
        width: axis_size(proof, Axis::Height, &asked),
        depth: axis_size(proof, Axis::Depth, &asked),
        pulls,
        distances: Vec::with_capacity(apart.len()),
    };
    let body = &request.body;
    let sides = [
        (&mut large.length, body.length, "length", &"/body/length"),
        (&mut large.width, body.width, "width", &"/body/width"),
        (&mut large.depth, body.depth, "depth", &"/body/depth"),
    ];
    for (size, given, name, at) in sides {
        side(proof, request, size, given, (name, Pointer::to(at)), covered, findings);
    }
    for apart in apart {
        let mut told = EntryDistanceOf {
            entries: apart.between.map(name),
            rule: apart.rule.id,
            required: apart.required,
            measured: None,
        };
        distance(proof, request, &apart, &mut told, covered, findings);
        large.distances.push(told);
    }
    large
}

/// The body as a box: its ends are left and right, its sides top and bottom, its cover opposite the back.
fn as_pull_box(request: &ConduitBodyRequest) -> PullBoxRequest {
    let name = |place| Name::new(word(place).to_owned());
    let entries = request.hubs.iter().filter_map(|hub| {
        Some(Entry {
            id: name(hub.place)?,
            wall: match hub.place {
                HubPlace::End => Wall::Left,
                HubPlace::OppositeEnd => Wall::Right,
                HubPlace::Side => Wall::Top,
                HubPlace::OppositeSide => Wall::Bottom,
                HubPlace::Back => Wall::Back,
            },
            row: None,
            section: None,
            raceway: Some(RacewayEntry {
                kind: Some(hub.raceway.kind),
                trade_size: hub.raceway.trade_size,
                outside_diameter: None,
            }),
            cable: None,
            cables_over_1000_volts: Vec::new(),
            position: None,
        })
    });
    let pulls = request.pulls.iter().map(|pull| Pull {
        id: None,
        entries: pull.between.iter().filter_map(|place| name(*place)).collect(),
        largest_conductor: pull.largest(),
        insulated: true,
        spliced: pull.spliced,
        offset: false,
        compact_aa8000: false,
    });
    PullBoxRequest {
        edition: request.edition,
        accept_unverified_rules: request.accept_unverified_rules,
        units: request.units,
        reference: None,
        amendments: Vec::new(),
        interpretations: None,
        over_1000_volts: false,
        entries: entries.collect(),
        pulls: pulls.collect(),
        inside: None,
        cover: Cover::Removable,
        sections: Vec::new(),
        marked: None,
        racked: None,
        power_distribution_blocks: Vec::new(),
        layout: None,
    }
}

fn chamber(request: &ConduitBodyRequest) -> Chamber<'static> {
    let place = |wanted: &HubPlace| request.hubs.iter().position(|hub| hub.place == *wanted);
    let pulls = request.pulls.iter().enumerate().filter_map(|(pull, asked)| {
        let places: Vec<usize> = asked.between.iter().filter_map(place).collect();
        let (first, others) = places.split_first()?;
        Some(Joining { pull, first: *first, others: others.to_vec() })
    });
    Chamber {
        id: None,
        inside: None,
        inside_at: Pointer::to(&"/body"),
        entries: (0..request.hubs.len()).collect(),
        pulls: pulls.collect(),
    }
}

/// Whether a marking, or a listing for full fill, lets the body be smaller.
fn covered(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    request: &ConduitBodyRequest,
    findings: &mut Vec<Finding>,
) -> Covered {
    if request.body.evaluated_for_full_fill {
        let fills: Vec<Option<bool>> = (0..request.hubs.len())
            .map(|index| fill(proof, sizer, request, index, findings).map(|(_, fits)| fits))
            .collect();
        let all: Covered = fills.into_iter().try_fold(true, |all, fits| Some(all && fits?));
        if all == Some(true) {
            let finding =
                Finding::new(&crate::rulebook::pull::MARKED, Status::Satisfied, "finding-full-fill");
            findings.push(finding.at(Pointer::to(&"/body/evaluated_for_full_fill")));
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

/// Compares one dimension of the body with what is asked of it.
fn side(
    proof: &mut Derivation,
    request: &ConduitBodyRequest,
    size: &mut AxisSize,
    given: Option<Length>,
    (name, at): (&'static str, Pointer),
    covered: Covered,
    findings: &mut Vec<Finding>,
) {
    let Some(minimum) = size.minimum else { return };
    let Some(given) = given else {
        if covered != Some(true) {
            let finding = Finding::new(&CONDUIT_BODY, Status::NotDetermined, "finding-body-side-open");
            findings.push(finding.with("axis", name).with("required", minimum).supply(at));
        }
        return;
    };
    let given = proof.given(&CONDUIT_BODY, given.value(), Measure::Length, at);
    size.given = Some(given);
    size.margin = Some(proof.difference(&GOVERNS, given, minimum));
    for requirement in &size.requirements {
        let (enough, step) = proof.compare(requirement.rule, given, Relation::AtLeast, requirement.length);
        let (status, message) = match (enough, covered) {
            (true, _) => (Status::Satisfied, "finding-side-enough"),
            (false, Some(true)) => (Status::Satisfied, "finding-smaller-by-mark"),
            (false, Some(false)) => (Status::Violated, "finding-side-short"),
            (false, None) => (Status::NotDetermined, "finding-side-short"),
        };
        findings.push(
            Finding::new(requirement.rule, status, message)
                .with("axis", name)
                .with("given", given)
                .with("required", requirement.length)
                .with("entries", openings(request, &requirement.entries))
                .at(at)
                .step(step),
        );
    }
}

/// Compares the distance between two openings with what is asked.
fn distance(
    proof: &mut Derivation,
    request: &ConduitBodyRequest,
    apart: &distances::Apart,
    told: &mut EntryDistanceOf,
    covered: Covered,
    findings: &mut Vec<Finding>,
) {
    let at = apart.at.member(&"/distance");
    let pull = request.pulls.get(apart.pull);
    let Some(given) = pull.and_then(|pull| pull.distance) else {
        if covered != Some(true) {
            let finding = Finding::new(apart.rule, Status::NotDetermined, "finding-openings-open")
                .with("first", openings(request, &told.entries[..1]))
                .with("other", openings(request, &told.entries[1..]))
                .with("required", apart.required);
            findings.push(finding.at(apart.at).supply(at));
        }
        return;
    };
    let measured = proof.given(apart.rule, given.value(), Measure::Length, at);
    told.measured = Some(measured);
    let (enough, step) = proof.compare(apart.rule, measured, Relation::AtLeast, apart.required);
    let (status, message) = match (enough, covered) {
        (true, _) => (Status::Satisfied, "finding-entries-apart"),
        (false, Some(true)) => (Status::Satisfied, "finding-closer-by-mark"),
        (false, Some(false)) => (Status::Violated, "finding-entries-close"),
        (false, None) => (Status::NotDetermined, "finding-entries-close"),
    };
    findings.push(
        Finding::new(apart.rule, status, message)
            .with("first", openings(request, &told.entries[..1]))
            .with("other", openings(request, &told.entries[1..]))
            .with("measured", measured)
            .with("required", apart.required)
            .at(at)
            .step(step),
    );
}
