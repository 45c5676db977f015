//! Conductors of 6 AWG and smaller: the cross-section of the body, and the number of conductors in each opening.

use super::ConduitBodyCheck;
use super::outcome::{HubFill, SmallInBody};
use super::request::{BodyRaceway, ConduitBodyRequest, Hub, HubPlace};
use crate::checks::raceway_fill::sizing::{Load, Occupant, Sizer};
use crate::checks::{Finding, FindingArg, Status, rulebook_of};
use crate::derivation::{Derivation, Figure, Pointer, Relation, StepId};
use crate::quantity::Measure;
use crate::rulebook::conduit_body::{AREA, CONDUCTORS, SHORT_RADIUS};
use crate::rulebook::reading::ListedBodyArea;
use crate::tables::conductor_dimensions;
use crate::trade::{ConductorSize, Covering, Insulation};

/// Checks the body and every opening.
pub(super) fn check(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    request: &ConduitBodyRequest,
    findings: &mut Vec<Finding>,
) -> SmallInBody {
    let mut small = SmallInBody { required_cross_section: None, margin: None, hubs: Vec::new() };
    if is_exempt(request, proof.rulebook().pull.applies_from) {
        proof.does_not_apply(&AREA, "short-radius", Some(Pointer::to(&"/body/short_radius")));
        findings.push(
            Finding::new(&SHORT_RADIUS, Status::Advisory, "finding-short-radius-space")
                .at(Pointer::to(&"/body")),
        );
    } else {
        cross_section(proof, sizer, request, &mut small, findings);
    }
    for index in 0..request.hubs.len() {
        small.hubs.extend(fill(proof, sizer, request, index, findings).and_then(|(fill, _)| fill));
    }
    small
}

/// Whether a short-radius body is free from the cross-section: one that holds nothing larger than 6 AWG.
fn is_exempt(request: &ConduitBodyRequest, large_from: ConductorSize) -> bool {
    request.body.short_radius == Some(true) && !request.pulls.iter().any(|pull| pull.is_large(large_from))
}

fn cross_section(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    request: &ConduitBodyRequest,
    small: &mut SmallInBody,
    findings: &mut Vec<Finding>,
) {
    let body = Pointer::to(&"/body");
    let supply = body.member(&"/cross_section");
    let required = match required_area(proof, sizer, request) {
        Ok(Some(required)) => required,
        Ok(None) => return,
        Err(BodyRaceway { kind, trade_size }) => {
            let finding = Finding::new(&AREA, Status::NotDetermined, "finding-raceway-not-tabulated");
            findings.push(finding.with("kind", kind.name()).with("size", trade_size.name()));
            return;
        }
    };
    small.required_cross_section = Some(required);
    let Some(given) = request.body.cross_section else {
        if request.body.listed == Some(true) && proof.reading::<ListedBodyArea>() == ListedBodyArea::Meets {
            let at = body.member(&"/listed");
            let step = proof.fact(&AREA, true, at);
            let finding = Finding::new(&AREA, Status::Satisfied, "finding-cross-section-by-listing");
            findings.push(finding.with("required", required).at(at).step(step));
            return;
        }
        let finding = Finding::new(&AREA, Status::NotDetermined, "finding-cross-section-open");
        let mut finding = finding.with("required", required).supply(supply);
        if request.body.listed.is_none() {
            finding = finding.supply(body.member(&"/listed"));
        }
        findings.push(finding);
        return;
    };
    if let Some(short_radius) = request.body.short_radius {
        proof.fact(&AREA, short_radius, body.member(&"/short_radius"));
    }
    let given = proof.given(&AREA, given.value(), Measure::Area, supply);
    small.margin = Some(proof.difference(&AREA, given, required));
    let (enough, step) = proof.compare(&AREA, given, Relation::AtLeast, required);
    let from = proof.rulebook().pull.applies_from;
    let any_large = request.pulls.iter().any(|pull| pull.is_large(from));
    let (status, message) = match (enough, request.body.short_radius.or(any_large.then_some(false))) {
        (true, _) => (Status::Satisfied, "finding-cross-section-enough"),
        (false, None) => (Status::NotDetermined, "finding-cross-section-short"),
        (false, Some(_)) => (Status::Violated, "finding-cross-section-short"),
    };
    let mut finding = Finding::new(&AREA, status, message).with("given", given).with("required", required);
    if status == Status::NotDetermined {
        finding = finding.supply(body.member(&"/short_radius"));
    }
    findings.push(finding.at(supply).step(step));
}

/// A multiple of the area of the largest raceway; or the raceway that the tables have no area of.
fn required_area(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    request: &ConduitBodyRequest,
) -> Result<Option<Figure>, BodyRaceway> {
    let raceways = request.hubs.iter().map(|hub| hub.raceway).chain(request.body.largest_raceway);
    let areas: Vec<Figure> = raceways
        .map(|raceway| sizer.inside_area(proof, raceway.kind, raceway.trade_size).ok_or(raceway))
        .collect::<Result<_, _>>()?;
    let Some(largest) = proof.largest(&AREA, &areas) else { return Ok(None) };
    let multiple = proof.rulebook().conduit_body.area_multiple;
    let multiple = proof.stated(&multiple);
    Ok(Some(proof.product(&AREA, multiple, largest, None)))
}

/// Whether the cross-section that is stated of a body is less than its listing is taken to show.
pub(super) fn is_short_of_area(request: &ConduitBodyRequest) -> bool {
    let book = rulebook_of::<ConduitBodyCheck>(request, request.edition);
    let from = book.pull.applies_from;
    let shown = !is_exempt(request, from)
        && book.readings.of::<ListedBodyArea>() == ListedBodyArea::Meets
        && request.pulls.iter().any(|pull| pull.has_small(from));
    let (Some(given), true) = (request.body.cross_section, shown) else { return false };
    let mut proof = Derivation::new(&book, request.units);
    let required = required_area(&mut proof, &mut Sizer::default(), request);
    required.is_ok_and(|required| required.is_some_and(|required| given.value() < required.value))
}

/// How full the raceway of an opening is, where that is known, and whether it is permitted; `None`, with a finding, where the tables
/// lack something or it turns on an insulation that is not said.
pub(super) fn fill(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    request: &ConduitBodyRequest,
    index: usize,
    findings: &mut Vec<Finding>,
) -> Option<(Option<HubFill>, bool)> {
    let hub = request.hubs.get(index)?;
    let at = Pointer::of(&"/hubs/#", index);
    let open = |findings: &mut Vec<Finding>| {
        let finding = Finding::new(&CONDUCTORS, Status::NotDetermined, "finding-opening-not-tabulated");
        let finding = finding.with("opening", FindingArg::Words(vec![key(hub.place)])).at(at);
        findings.push(without_insulation(request, hub.place).fold(finding, Finding::supply));
    };
    let Some(occupants) = occupants(proof, request, hub.place, None) else {
        if let Some((fits, finding)) = whatever_insulation(proof, sizer, request, hub) {
            findings.push(finding.at(at));
            return Some((None, fits));
        }
        open(findings);
        return None;
    };
    let load = Load::of(proof, &occupants)?;
    let (limit, _) = sizer.limit(proof, load.number, false);
    let raceway = (hub.raceway.kind, hub.raceway.trade_size);
    let Some(admission) = sizer.admits(proof, &CONDUCTORS, raceway, &load, limit) else {
        open(findings);
        return None;
    };
    let maximum = load.alike.and_then(|each| sizer.most_alike(proof, raceway, each, false));
    let (status, message) = if admission.fits {
        (Status::Satisfied, "finding-opening-fill")
    } else {
        (Status::Violated, "finding-opening-overfull")
    };
    findings.push(
        Finding::new(&CONDUCTORS, status, message)
            .with("opening", FindingArg::Words(vec![key(hub.place)]))
            .with("area", load.total)
            .with("allowed", admission.allowed)
            .at(at)
            .step(admission.step),
    );
    let (place, number, area, allowed_area) = (hub.place, load.number, load.total, admission.allowed);
    Some((Some(HubFill { place, number, area, allowed_area, maximum }), admission.fits))
}

/// Whether an opening may hold its conductors whatever the insulation is that is not said of those of one size: by the thinnest
/// and by the thickest that there is. `None` where these do not agree.
fn whatever_insulation(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    request: &ConduitBodyRequest,
    hub: &Hub,
) -> Option<(bool, Finding)> {
    let at = without_insulation(request, hub.place).next()?;
    let unsaid = || {
        let here = request.pulls.iter().filter(|pull| pull.between.contains(&hub.place));
        let groups = here.flat_map(|pull| &pull.conductors);
        groups.filter(|group| group.is_unsaid())
    };
    let size = unsaid().next()?.size;
    if unsaid().any(|group| group.size != size || group.compact) {
        return None;
    }
    let extremes = conductor_dimensions::extremes(size)?;
    let mut tried = Vec::with_capacity(2);
    for insulation in extremes.types {
        let occupants = occupants(proof, request, hub.place, Some((insulation, Some(Covering::With))))?;
        let load = Load::of(proof, &occupants)?;
        let (limit, _) = sizer.limit(proof, load.number, false);
        let raceway = (hub.raceway.kind, hub.raceway.trade_size);
        tried.push((load.total, sizer.admits(proof, &CONDUCTORS, raceway, &load, limit)?));
    }
    // the count that is rounded up is one of conductors that are all alike, which these need not be
    if tried.iter().any(|(_, admission)| admission.raised) {
        return None;
    }
    let steps: Vec<StepId> = tried.iter().map(|(_, admission)| admission.step).collect();
    let (fits, step) = proof.whatever(&CONDUCTORS, at, &extremes.letters, &steps)?;
    let ((area, admission), status, message) = match (fits, &tried[..]) {
        (true, [.., thickest]) => (thickest, Status::Satisfied, "finding-opening-fill-whatever"),
        (false, [thinnest, ..]) => (thinnest, Status::Violated, "finding-opening-overfull-whatever"),
        (_, []) => return None,
    };
    let finding = Finding::new(&CONDUCTORS, status, message)
        .with("opening", FindingArg::Words(vec![key(hub.place)]))
        .with("area", *area)
        .with("allowed", admission.allowed);
    Some((fits, finding.step(step)))
}

/// The conductors of an opening, those without an insulation taken to have `unsaid`; none where a cross-section is missing.
pub(super) fn occupants(
    proof: &mut Derivation,
    request: &ConduitBodyRequest,
    place: HubPlace,
    unsaid: Option<(Insulation, Option<Covering>)>,
) -> Option<Vec<Occupant>> {
    let mut occupants = Vec::new();
    for (index, pull) in request.pulls.iter().enumerate().filter(|(_, pull)| pull.between.contains(&place)) {
        for (number, group) in pull.conductors.iter().enumerate() {
            let at = Pointer::of(&"/conductors/#", number).under(&"/pulls/#", index);
            let mut group = *group;
            if group.is_unsaid() {
                let (insulation, covering) = unsaid?;
                (group.insulation, group.covering) = (Some(insulation), covering);
            }
            occupants.push(group.occupant(proof, at, |_| Insulation::Xhhw)?);
        }
    }
    Some(occupants)
}

/// The places of what is not said of what covers the conductors of an opening.
pub(super) fn without_insulation(
    request: &ConduitBodyRequest,
    place: HubPlace,
) -> impl Iterator<Item = Pointer> {
    let pulls = request.pulls.iter().enumerate().filter(move |(_, pull)| pull.between.contains(&place));
    pulls.flat_map(|(index, pull)| {
        let unsaid = pull.conductors.iter().enumerate().filter(|(_, group)| group.is_unsaid());
        unsaid.map(move |(number, group)| {
            let at = Pointer::of(&"/conductors/#", number).under(&"/pulls/#", index);
            at.member(if group.insulation.is_none() { &"/insulation" } else { &"/covering" })
        })
    })
}

/// The message key of the name of an opening.
pub(super) const fn key(place: HubPlace) -> &'static str {
    match place {
        HubPlace::End => "word-opening-end",
        HubPlace::OppositeEnd => "word-opening-opposite-end",
        HubPlace::Side => "word-opening-side",
        HubPlace::OppositeSide => "word-opening-opposite-side",
        HubPlace::Back => "word-opening-back",
    }
}

/// The name of an opening, as the figures of an answer have it.
pub(super) const fn word(place: HubPlace) -> &'static str {
    match place {
        HubPlace::End => "end",
        HubPlace::OppositeEnd => "opposite end",
        HubPlace::Side => "side",
        HubPlace::OppositeSide => "opposite side",
        HubPlace::Back => "back",
    }
}
