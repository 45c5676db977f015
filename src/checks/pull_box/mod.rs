//! Pull and junction boxes: the lengths that conductors of 4 AWG and larger require, and whether a box has them.
//!
//! Each section between barriers is a box of its own. Its entries and pulls are resolved, and what follows from them is
//! shared with conduit bodies; `given_box` says whether a box complies, `layout` finds the smallest in which every entry
//! has a position, and `over_1000_volts` is what systems over 1000 V require instead.
//!
//! ```
//! use elbowroom::checks::{Check, evaluate, pull_box::PullBox};
//! let request = serde_json::from_str(r#"{
//!     "entries": [
//!         {"id": "A", "wall": "left", "raceway": {"trade_size": "3"}},
//!         {"id": "B", "wall": "left", "raceway": {"trade_size": "3"}},
//!         {"id": "C", "wall": "right", "raceway": {"trade_size": "3"}},
//!         {"id": "D", "wall": "bottom", "raceway": {"trade_size": "3"}}
//!     ],
//!     "pulls": [
//!         {"entries": ["A", "C"], "largest_conductor": "4/0 AWG"},
//!         {"entries": ["B", "D"], "largest_conductor": "4/0 AWG"}
//!     ]
//! }"#).unwrap();
//! let size = &evaluate::<PullBox>(&request).outcome.sections[0];
//! // straight across 8 × 3 = 24; angle from the left wall 6 × 3 + 3 = 21; angle from the bottom 6 × 3 = 18
//! assert_eq!(size.width.minimum.unwrap().value.to_string(), "24");
//! assert_eq!(size.height.minimum.unwrap().value.to_string(), "18");
//! ```

mod entries;
mod faults;
mod geometry;
mod given_box;
mod holes;
mod interpretations;
mod layout;
mod other_rules;
mod outcome;
mod over_1000_volts;
mod places;
mod placing;
mod raceways;
mod request;
mod room;
mod section;
mod subjects;

pub(crate) use super::pulls::{Axis, PerAxis};
pub use super::pulls::{
    AxisSize, ConductorGroup, Cover, EntryDistanceOf, EntryPosition, LengthRequirement, Marking, PullKind,
    PullKindOf, Wall,
};
pub use interpretations::PullBoxInterpretations;
pub use outcome::{EntryPlace, PlacedDistance, PullBoxLayout, PullBoxOutcome, SectionSize};
pub use request::*;

use super::pulls::comparison::Smaller;
use super::pulls::lengths::OppositeBack;
use super::pulls::{Resolved, distances, lengths, pull};
use super::raceway_fill::sizing::Sizer;
use super::{Check, Faults, Finding, Judgement, Retaking, Status, Subject, Verdict};
use crate::derivation::{Derivation, Pointer};
use crate::rulebook::digest::Reads;
use crate::rulebook::pull::{APPLIES, MARKED};
use crate::rulebook::{Part, Rulebook};
use crate::tables;
use given_box::GivenBox;
use section::Section;

/// The check of one pull or junction box.
#[derive(Clone, Copy, Debug)]
pub struct PullBox;

impl Check for PullBox {
    const NAME: &'static str = "pull_box_size";
    const PATH: &'static str = "/v1/pull-boxes/size";
    type Request = PullBoxRequest;
    type Outcome = PullBoxOutcome;
    const SUBJECTS: &'static [Subject<PullBoxRequest>] = &subjects::SUBJECTS;

    fn reads() -> &'static Reads {
        static READS: Reads = Reads::new(
            &[Part::Pull, Part::Over1000Volts, Part::RacewayFill, Part::OutletVolume, Part::Geometry],
            &[
                tables::bare_conductor_dimensions::TABLE,
                tables::compact_conductor_dimensions::TABLE,
                tables::conductor_dimensions::TABLE,
                tables::raceway_dimensions::TABLE,
                tables::raceway_outside_diameters::TABLE,
                tables::trade_sizes::TABLE,
                tables::wire_bending_space::TABLE,
                tables::wire_bending_space::COMPACT_TABLE,
            ],
        );
        &READS
    }

    fn faults(request: &PullBoxRequest, faults: &mut Faults) {
        faults::find(request, faults);
    }

    fn retake(outcome: &mut PullBoxOutcome, retaking: &Retaking<'_>) {
        for (index, section) in outcome.sections.iter_mut().enumerate() {
            section.verdict = retaking.verdict_of_part(index).or(section.verdict);
        }
    }

    fn judge(rulebook: &Rulebook, request: &PullBoxRequest) -> Judgement<PullBoxOutcome> {
        let mut proof = Derivation::new(rulebook, request.units);
        let mut sizer = Sizer::default();
        let mut findings = Vec::new();
        let mut general = Vec::new();
        other_rules::of_request(&mut proof, request, &mut general);
        let mut sections = Vec::new();
        for (index, section) in section::all(request).into_iter().enumerate() {
            let mut own = Vec::new();
            let mut size = evaluate_section(&mut proof, &mut sizer, request, &section, &mut own);
            size.verdict = section.inside.map(|_| Verdict::of_part(&own));
            own.iter_mut().for_each(|finding| finding.part = Some(index));
            findings.append(&mut own);
            sections.push(size);
        }
        findings.append(&mut general);
        leave_gravest(&mut findings);
        let measured = sections.iter().any(|section| section.verdict.is_some());
        let outcome = PullBoxOutcome { sections };
        Judgement { outcome, findings, proof, cautions: Vec::new(), is_judged: measured }
    }
}

/// Of a rule that is violated or open somewhere, it is not said that it is satisfied somewhere else.
fn leave_gravest(findings: &mut Vec<Finding>) {
    let graver: Vec<_> = findings
        .iter()
        .filter(|finding| matches!(finding.status, Status::Violated | Status::NotDetermined))
        .map(|finding| finding.rule)
        .collect();
    findings.retain(|finding| finding.status != Status::Satisfied || !graver.contains(&finding.rule));
}

fn evaluate_section(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    request: &PullBoxRequest,
    section: &Section<'_>,
    findings: &mut Vec<Finding>,
) -> SectionSize {
    let of_request = |index: &usize| request.entries.get(*index).map(|entry| (*index, entry));
    let entries = section.entries.iter().filter_map(of_request);
    let (entries, cables) = if request.over_1000_volts {
        let (entries, cables) = over_1000_volts::resolve(proof, entries);
        (entries, Some(cables))
    } else {
        (entries.map(|(index, entry)| entries::resolve(proof, sizer, entry, index)).collect(), None)
    };
    let pulls = pull::resolve(proof, &entries, &section.pulls, request.over_1000_volts);
    let mut resolved = Resolved { entries, pulls };
    findings.extend(entries::unsaid_insulation(proof, request, section));
    let has_blocks = cables.is_none() && other_rules::has_blocks(request, section);
    findings.extend(sized_by_volume(&resolved));
    findings.extend(sized_by_length(proof, request, section, &resolved));
    let (mut lengths, distances) = match &cables {
        Some(cables) => (
            over_1000_volts::required(proof, &resolved, cables, request.cover, findings),
            over_1000_volts::distances(proof, &resolved, cables),
        ),
        None => (
            lengths::required(proof, &resolved, OppositeBack::Cover(request.cover), findings),
            distances::required(proof, &resolved),
        ),
    };
    if section.inside.is_some() && cables.is_none() {
        findings.extend(distances::unknown(&resolved));
    }
    if has_blocks {
        lengths::require_for_blocks(proof, &resolved, &mut lengths);
    }
    let pulls = resolved.kinds();
    let mut size = SectionSize {
        id: section.id.map(str::to_owned),
        verdict: None,
        width: lengths::axis_size(proof, Axis::Width, &lengths),
        height: lengths::axis_size(proof, Axis::Height, &lengths),
        depth: lengths::axis_size(proof, Axis::Depth, &lengths),
        pulls,
        distances: distances::answered(&resolved, &distances),
        layout: None,
    };
    if section.inside.is_some() {
        findings.extend(raceways::not_permitted(proof, request, section));
        findings.extend(raceways::too_narrow(proof, request, section));
    }
    let smaller = if section.inside.is_some() { smaller(proof, request, findings) } else { Smaller::never() };
    let holes = if section.inside.is_some() || request.layout.is_some() {
        holes::of_entries(proof, request, section, &resolved.entries)
    } else {
        Vec::new()
    };
    let given = GivenBox::read(proof, section, &mut resolved.entries, (smaller, &holes));
    if let Some(given) = &given {
        given.compare(proof, section, &resolved.entries, &distances, &mut size, findings);
    }
    if let Some(question) = &request.layout {
        size.layout =
            layout::find(proof, question, (&mut resolved.entries, &holes), &distances, &size, findings);
    }
    if let Some(given) = &given {
        given.smaller.settle(findings);
    }
    other_rules::of_section(proof, request, section, &size, given.as_ref(), findings);
    size
}

/// What lets the given box be smaller: its marking, up to 1000 V. A box of which it is not said whether it is marked may be; one
/// that barriers divide is not.
fn smaller(proof: &mut Derivation, request: &PullBoxRequest, findings: &mut Vec<Finding>) -> Smaller {
    let at = Pointer::to(&"/marked");
    let unmarked_at = Pointer::to(&"/unmarked");
    if let Some(unmarked) = request.unmarked.filter(|_| !request.over_1000_volts) {
        proof.fact(&MARKED, unmarked, unmarked_at);
    }
    let Some(marked) = &request.marked else {
        let is_denied = request.unmarked == Some(true) || !request.sections.is_empty();
        if is_denied || request.over_1000_volts {
            return Smaller::never();
        }
        return Smaller { by_mark: None, supply: vec![at, unmarked_at], ..Smaller::never() };
    };
    if request.over_1000_volts {
        let step = proof.does_not_apply(&MARKED, "marked-over-1000-volts", Some(at));
        let finding = Finding::new(&MARKED, Status::Advisory, "finding-mark-over-1000-volts");
        findings.push(finding.at(at).step(step));
        return Smaller::never();
    }
    let below = marked.raceways_below_full_fill;
    let by_mark = marked.covers(proof, &marked.said_to_hold(), below, findings);
    let mut supply = Vec::new();
    if marked.conductors.is_empty() {
        supply.push(at.member(&"/conductors"));
    }
    if below.is_none() {
        supply.push(at.member(&"/raceways_below_full_fill"));
    }
    Smaller { by_mark, supply, ..Smaller::never() }
}

/// Notes what makes a pull box of the box; the finding leaves it open where it is not said whether conductors must be
/// insulated.
fn sized_by_length(
    proof: &mut Derivation,
    request: &PullBoxRequest,
    section: &Section<'_>,
    resolved: &Resolved<'_>,
) -> Option<Finding> {
    let least = proof.rulebook().pull.applies_from;
    for pull in section.pulls.iter().filter(|pull| pull.largest_conductor >= Some(least)) {
        if let (Some(insulated), false) = (pull.insulated, request.over_1000_volts) {
            proof.fact(&APPLIES, insulated, Pointer::of(&"/pulls/#", pull.index).member(&"/insulated"));
        }
    }
    for entry in resolved.entries.iter().filter(|entry| entry.cable_conductor >= Some(least)) {
        proof.count(&APPLIES, None, entry.at.member(&"/cable"));
    }
    let unsaid = |pull: &pull::ResolvedPull| {
        let at = pull.at().member(&"/insulated");
        (pull.large && pull.unsaid.contains(&at)).then_some(at)
    };
    let mut open: Vec<Pointer> = resolved.pulls.iter().filter_map(unsaid).collect();
    open.dedup();
    if open.is_empty() || section.inside.is_none() {
        return None;
    }
    let mut finding = Finding::new(&APPLIES, Status::NotDetermined, "finding-insulated-open");
    finding.supply = open;
    Some(finding)
}

/// The finding that sends pulls to the outlet-box check; it leaves the answer open where no pull is sized by length.
fn sized_by_volume(resolved: &Resolved<'_>) -> Option<Finding> {
    let small = resolved.pulls.iter().filter(|pull| !pull.large);
    let mut at: Vec<_> = small.map(pull::ResolvedPull::at).collect();
    at.dedup();
    let all = resolved.pulls.iter().all(|pull| !pull.large);
    let status = if all { Status::NotDetermined } else { Status::Advisory };
    let mut finding = Finding::new(&APPLIES, status, "finding-sized-by-volume");
    finding.at = at;
    (!finding.at.is_empty()).then_some(finding)
}
