//! Conduit bodies: what 314.16(C) asks for 6 AWG and smaller, and the pull-box lengths for 4 AWG and larger.
//!
//! ```
//! use elbowroom::checks::{Verdict, evaluate, conduit_body::ConduitBodyCheck};
//! let request = elbowroom::json::read(br#"{
//!     "body": {"length": 12, "depth": 4, "unmarked": true},
//!     "hubs": [
//!         {"place": "end", "raceway": {"kind": "EMT", "trade_size": "2"}},
//!         {"place": "back", "raceway": {"kind": "EMT", "trade_size": "2"}}
//!     ],
//!     "pulls": [{
//!         "between": ["end", "back"], "distance": 6,
//!         "conductors": [{"size": "4/0 AWG", "insulation": "THHN", "count": 3}]
//!     }]
//! }"#).unwrap();
//! let evaluation = evaluate::<ConduitBodyCheck>(&request);
//! // long and deep enough, but the two openings must be 6 × 2 = 12 in. apart
//! assert_eq!(evaluation.verdict, Some(Verdict::Violates));
//! let distance = &evaluation.outcome.large_conductors.unwrap().distances[0];
//! assert_eq!(distance.required.value.to_string(), "12");
//! ```

mod faults;
mod large;
mod outcome;
mod request;
mod room;
mod small;
mod splices;
mod subjects;

pub use outcome::{BodyShape, ConduitBodyOutcome, HubFill, LargeInBody, SmallInBody, SplicesInBody};
pub use request::*;

use crate::checks::raceway_fill::sizing::Sizer;
use crate::checks::{Check, Faults, Judgement, Subject};
use crate::derivation::Derivation;
use crate::rulebook::digest::Reads;
use crate::rulebook::{Part, Rulebook};
use crate::tables;

/// The check of one conduit body.
#[derive(Clone, Copy, Debug)]
pub struct ConduitBodyCheck;

impl Check for ConduitBodyCheck {
    const NAME: &'static str = "conduit_body_check";
    const PATH: &'static str = "/v1/conduit-bodies/check";
    type Request = ConduitBodyRequest;
    type Outcome = ConduitBodyOutcome;
    const SUBJECTS: &'static [Subject<ConduitBodyRequest>] = &subjects::SUBJECTS;

    fn reads() -> &'static Reads {
        static READS: Reads = Reads::new(
            &[
                Part::ConduitBody,
                Part::Pull,
                Part::RacewayFill,
                Part::OutletFill,
                Part::OutletVolume,
                Part::FreeConductor,
                Part::Geometry,
            ],
            &[
                tables::conductor_volume::TABLE,
                tables::bare_conductor_dimensions::TABLE,
                tables::compact_conductor_dimensions::TABLE,
                tables::conductor_dimensions::TABLE,
                tables::raceway_dimensions::TABLE,
                tables::raceway_dimensions::EARLIER_ENT_TABLE,
                tables::trade_sizes::TABLE,
                tables::wire_bending_space::TABLE,
                tables::wire_bending_space::COMPACT_TABLE,
            ],
        );
        &READS
    }

    fn faults(request: &ConduitBodyRequest, faults: &mut Faults) {
        faults::find(request, faults);
    }

    fn judge(rulebook: &Rulebook, request: &ConduitBodyRequest) -> Judgement<ConduitBodyOutcome> {
        let mut proof = Derivation::new(rulebook, request.units);
        let (mut sizer, mut findings) = (Sizer::default(), Vec::new());
        room::check(&mut proof, &mut sizer, request, &mut findings);
        let from = rulebook.pull.applies_from;
        let any_large = request.pulls.iter().any(|pull| pull.is_large(from));
        let any_small = request.pulls.iter().any(|pull| pull.has_small(from));
        let small_conductors =
            any_small.then(|| small::check(&mut proof, &mut sizer, request, &mut findings));
        let large_conductors =
            any_large.then(|| large::check(&mut proof, &mut sizer, request, &mut findings));
        if subjects::has_splices(request) {
            splices::asked_of_body(&mut proof, request, &mut findings);
        }
        let splices = request
            .contents
            .as_ref()
            .map(|contents| splices::check(&mut proof, request, contents, &mut findings));
        let outcome =
            ConduitBodyOutcome { shape: shape(&request.hubs), small_conductors, large_conductors, splices };
        Judgement { outcome, findings, proof, cautions: Vec::new(), is_judged: true }
    }
}

/// The shape that the places of openings make.
fn shape(hubs: &[Hub]) -> BodyShape {
    use HubPlace::{Back, End, OppositeEnd, OppositeSide, Side};
    let has = |place| hubs.iter().any(|hub| hub.place == place);
    match hubs.len() {
        0..=2 if (has(End) && has(OppositeEnd)) || (has(Side) && has(OppositeSide)) => BodyShape::Straight,
        0..=2 if has(Back) => BodyShape::BackOutlet,
        0..=2 => BodyShape::SideOutlet,
        3 => BodyShape::Tee,
        _ => BodyShape::Cross,
    }
}
