//! Pull and junction boxes: the lengths that conductors of 4 AWG and larger ask for, and whether a box has them.
//!
//! `pulls::pull` says what each pull is by the walls of its entries, `pulls::lengths` what the rules ask of each
//! direction, `pulls::distances` how far entries must stand apart, [`given_box`](self) whether a box complies, and
//! [`layout`](self) the smallest box in which every entry has a place. Each section between barriers is a box of its own.
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

pub(super) mod cable_size;
mod faults;
mod geometry;
mod given_box;
mod interpretations;
mod layout;
mod other_rules;
mod outcome;
mod over_1000_volts;
pub(super) mod request;
pub(super) mod section;

pub(crate) use super::pulls::Axis;
pub use super::pulls::{
    AxisSize, ConductorGroup, Cover, EntryDistanceOf, EntryPosition, LengthRequirement, Marking, PullKind,
    PullKindOf, Wall,
};
pub use interpretations::PullBoxInterpretations;
pub use layout::{EntryPlace, PlacedDistance, PullBoxLayout};
pub use outcome::{PullBoxOutcome, SectionSize};
pub use request::*;

use super::pulls::entry::Entered;
use super::pulls::{distances, lengths, pull};
use super::raceway_fill::sizing::Sizer;
use super::{Check, Evaluation, Faults, Finding, Terms, Verdict};
use crate::derivation::Derivation;
use crate::rulebook::Rulebook;
use crate::rulebook::pull::{GOVERNS, Together};
use crate::rulebook::reading::Readings;
use given_box::Placed;
use section::Chamber;

/// The check of one pull or junction box.
#[derive(Clone, Copy, Debug)]
pub struct PullBox;

impl Check for PullBox {
    const NAME: &'static str = "pull_box_size";
    const PATH: &'static str = "/v1/pull-boxes/size";
    type Request = PullBoxRequest;
    type Outcome = PullBoxOutcome;

    fn terms(request: &PullBoxRequest) -> Terms<'_> {
        Terms {
            edition: request.edition,
            accept_unverified_rules: request.accept_unverified_rules,
            units: request.units,
            reference: request.reference.as_ref().map(crate::checks::Reference::as_str),
            amendments: &request.amendments,
        }
    }

    fn readings(request: &PullBoxRequest, readings: Readings) -> Readings {
        request.interpretations.map_or(readings, |chosen| chosen.apply(readings))
    }

    fn faults(request: &PullBoxRequest, faults: &mut Faults) {
        faults::find(request, faults);
    }

    fn evaluate(rulebook: &Rulebook, request: &PullBoxRequest) -> Evaluation<PullBoxOutcome> {
        let mut proof = Derivation::new(rulebook, request.units);
        let mut sizer = Sizer::default();
        let mut findings = Vec::new();
        let mut general = Vec::new();
        other_rules::of_request(request, &mut general);
        let mut sections = Vec::new();
        for chamber in section::all(request) {
            let mut own = Vec::new();
            let mut section = evaluate_chamber(&mut proof, &mut sizer, request, &chamber, &mut own);
            section.verdict = chamber.inside.map(|_| Verdict::of(&own));
            findings.append(&mut own);
            sections.push(section);
        }
        findings.append(&mut general);
        let measured = sections.iter().any(|section| section.verdict.is_some());
        let verdict = measured.then(|| Verdict::of(&findings));
        let outcome = PullBoxOutcome { sections };
        Evaluation { verdict, outcome, findings, proof, cautions: Vec::new() }
    }
}

fn evaluate_chamber(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    request: &PullBoxRequest,
    chamber: &Chamber<'_>,
    findings: &mut Vec<Finding>,
) -> SectionSize {
    let entries =
        chamber.entries.iter().filter_map(|index| request.entries.get(*index).map(|entry| (*index, entry)));
    let (mut entered, cables) = if request.over_1000_volts {
        let (entered, cables) = over_1000_volts::entered(proof, entries);
        (entered, Some(cables))
    } else {
        let read = |(index, entry)| Entered::by_trade_size(proof, sizer, entry, index);
        (entries.map(read).collect::<Vec<_>>(), None)
    };
    let (joined, small) = pull::all(proof, request, chamber, &entered);
    findings.extend(pull::by_volume(&joined, small));
    let (asked, apart) = match &cables {
        Some(cables) => (
            over_1000_volts::asked(proof, &entered, cables, &joined, request.cover, findings),
            over_1000_volts::apart(proof, cables, &joined),
        ),
        None => (
            lengths::asked(proof, &entered, &joined, request.cover, findings),
            distances::required(proof, &entered, &joined),
        ),
    };
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
    let distances: Vec<EntryDistanceOf> = apart
        .iter()
        .map(|apart| EntryDistanceOf {
            entries: apart.between.map(name),
            rule: apart.rule.id,
            required: apart.required,
            measured: None,
        })
        .collect();
    let mut size = SectionSize {
        id: chamber.id.map(str::to_owned),
        verdict: None,
        width: axis_size(proof, Axis::Width, &asked),
        height: axis_size(proof, Axis::Height, &asked),
        depth: axis_size(proof, Axis::Depth, &asked),
        pulls,
        distances,
        layout: None,
    };
    let covered = match request.marked.as_ref().filter(|_| chamber.inside.is_some()) {
        Some(marked) => marked.covers(proof, findings),
        None => Some(false),
    };
    let placed = Placed::read(proof, chamber, &mut entered, covered);
    if let Some(placed) = &placed {
        for (axis, side) in
            [(Axis::Width, &mut size.width), (Axis::Height, &mut size.height), (Axis::Depth, &mut size.depth)]
        {
            given_box::compare_side(proof, axis, side, placed, chamber, findings);
        }
        given_box::compare_distances(proof, &entered, &apart, placed, &mut size.distances, findings);
        given_box::compare_places(proof, &entered, placed, findings);
    }
    if let Some(question) = &request.layout {
        size.layout = layout::find(proof, question, &mut entered, &apart, &size, findings);
    }
    other_rules::of_chamber(
        proof,
        request,
        chamber,
        &size,
        placed.as_ref().map(|placed| &placed.sides),
        findings,
    );
    size
}

/// The requirements of one direction, and the largest of them.
pub(super) fn axis_size(proof: &mut Derivation, axis: Axis, asked: &[lengths::Asked]) -> AxisSize {
    let mut requirements: Vec<LengthRequirement> = asked
        .iter()
        .filter(|(along, _)| *along == axis)
        .map(|(_, requirement)| requirement.clone())
        .collect();
    let lengths: Vec<_> = requirements.iter().map(|requirement| requirement.length).collect();
    let minimum = match proof.rulebook().pull.together {
        Together::Largest => proof.largest(&GOVERNS, &lengths),
        Together::Added if lengths.is_empty() => None,
        Together::Added => Some(proof.sum(&GOVERNS, &lengths)),
    };
    for requirement in &mut requirements {
        requirement.governs = Some(requirement.length.value) == minimum.map(|minimum| minimum.value);
    }
    AxisSize { minimum, requirements, given: None, margin: None }
}
