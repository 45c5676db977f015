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
mod interpretations;
mod layout;
mod other_rules;
mod outcome;
mod over_1000_volts;
mod request;
mod section;

pub(crate) use super::pulls::{Axis, PerAxis};
pub use super::pulls::{
    AxisSize, ConductorGroup, Cover, EntryDistanceOf, EntryPosition, LengthRequirement, Marking, PullKind,
    PullKindOf, Wall,
};
pub use interpretations::PullBoxInterpretations;
pub use outcome::{EntryPlace, PlacedDistance, PullBoxLayout, PullBoxOutcome, SectionSize};
pub use request::*;

use super::pulls::{Resolved, distances, lengths, pull};
use super::raceway_fill::sizing::Sizer;
use super::{Check, Faults, Finding, Judgement, Status, Subject, Verdict};
use crate::derivation::Derivation;
use crate::rulebook::digest::Reads;
use crate::rulebook::pull::APPLIES;
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
    const SUBJECTS: &'static [Subject<PullBoxRequest>] =
        &[Subject { name: "pull_box", is_described: |_| true, scope: &[] }];

    fn reads() -> &'static Reads {
        static READS: Reads = Reads::new(
            &[Part::Pull, Part::Over1000Volts, Part::RacewayFill, Part::OutletVolume],
            &[
                tables::bare_conductor_dimensions::TABLE,
                tables::compact_conductor_dimensions::TABLE,
                tables::conductor_dimensions::TABLE,
                tables::raceway_dimensions::TABLE,
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

    fn judge(rulebook: &Rulebook, request: &PullBoxRequest) -> Judgement<PullBoxOutcome> {
        let mut proof = Derivation::new(rulebook, request.units);
        let mut sizer = Sizer::default();
        let mut findings = Vec::new();
        let mut general = Vec::new();
        other_rules::of_request(&mut proof, request, &mut general);
        let mut sections = Vec::new();
        for section in section::all(request) {
            let mut own = Vec::new();
            let mut size = evaluate_section(&mut proof, &mut sizer, request, &section, &mut own);
            size.verdict = section.inside.map(|_| Verdict::of_part(&own));
            findings.append(&mut own);
            sections.push(size);
        }
        findings.append(&mut general);
        let measured = sections.iter().any(|section| section.verdict.is_some());
        let outcome = PullBoxOutcome { sections };
        Judgement { outcome, findings, proof, cautions: Vec::new(), is_judged: measured }
    }
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
    findings.extend(sized_by_volume(&resolved));
    let (lengths, distances) = match &cables {
        Some(cables) => (
            over_1000_volts::required(proof, &resolved, cables, request.cover, findings),
            over_1000_volts::distances(proof, &resolved, cables),
        ),
        None => (
            lengths::required(proof, &resolved, request.cover, findings),
            distances::required(proof, &resolved),
        ),
    };
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
    let smaller = match request.marked.as_ref().filter(|_| section.inside.is_some()) {
        Some(marked) => marked.covers(proof, findings),
        None => Some(false),
    };
    let given = GivenBox::read(proof, section, &mut resolved.entries, smaller);
    if let Some(given) = &given {
        given.compare(proof, section, &resolved.entries, &distances, &mut size, findings);
    }
    if let Some(question) = &request.layout {
        size.layout = layout::find(proof, question, &mut resolved.entries, &distances, &size, findings);
    }
    other_rules::of_section(
        proof,
        request,
        section,
        &size,
        given.as_ref().map(|given| &given.sides),
        findings,
    );
    size
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
