//! Depth of a box: deep enough on its own, and for the devices and equipment that it encloses (314.24)?
//!
//! A box can have volume enough and still be too shallow for what is mounted in it.
//!
//! ```
//! use elbowroom::checks::{Verdict, box_depths::BoxDepths, evaluate};
//! let request = elbowroom::json::read(br#"{
//!     "edition": "2023",
//!     "enclosure": {"internal_depth": 1.75},
//!     "equipment": [{"projection": 1.4, "largest_supply_conductor": "12 AWG", "rear_center_entry": true}]
//! }"#).unwrap();
//! let evaluation = evaluate::<BoxDepths>(&request);
//! // conductors enter through the center of the back: 1.4 + 0.5
//! assert_eq!(evaluation.outcome.required.unwrap().value.to_string(), "1.9");
//! assert_eq!(evaluation.verdict, Some(Verdict::Violates));
//! ```

mod equipment;
mod outcome;
mod request;
mod subjects;

pub use outcome::{BoxDepthsOutcome, EquipmentDepth};
pub use request::*;

use super::inspection::{Inspection, Sentences};
use super::{Check, Faults, Judgement, Retaking, Subject};
use crate::derivation::{Derivation, Figure, Pointer, Relation};
use crate::quantity::Measure;
use crate::rulebook::box_depth::{BoxDepth, EQUIPMENT, PLAIN};
use crate::rulebook::digest::Reads;
use crate::rulebook::{Part, Rule, Rulebook};

/// The check of the depth of one box.
#[derive(Clone, Copy, Debug)]
pub struct BoxDepths;

impl Check for BoxDepths {
    const NAME: &'static str = "box_depths";
    const PATH: &'static str = "/v1/box-depths/check";
    type Request = BoxDepthsRequest;
    type Outcome = BoxDepthsOutcome;
    const SUBJECTS: &'static [Subject<BoxDepthsRequest>] = &subjects::SUBJECTS;

    fn reads() -> &'static Reads {
        static READS: Reads = Reads::new(&[Part::BoxDepth], &[]);
        &READS
    }

    fn faults(request: &BoxDepthsRequest, faults: &mut Faults) {
        faults.at_most(Pointer::to(&"/equipment"), request.equipment.len(), MOST_ITEMS);
        faults.distinct_ids(request.equipment.iter().enumerate().filter_map(|(index, one)| {
            let at = Pointer::of(&"/equipment/#", index).member(&"/id");
            one.id.as_ref().map(|id| (id.as_str(), at))
        }));
    }

    fn retake(outcome: &mut BoxDepthsOutcome, retaking: &Retaking<'_>) {
        retaking.rows(&mut outcome.requirements);
    }

    fn judge(rulebook: &Rulebook, request: &BoxDepthsRequest) -> Judgement<BoxDepthsOutcome> {
        let mut depths = Depths::of_box(rulebook, request);
        let (required, equipment) =
            if request.equipment.is_empty() { (depths.plain(), Vec::new()) } else { depths.with(request) };
        let Inspection { proof, requirements, findings, .. } = depths.inspection;
        let outcome = BoxDepthsOutcome { required, equipment, requirements };
        Judgement { outcome, findings, proof, cautions: Vec::new(), is_judged: request.enclosure.is_some() }
    }
}

const DEPTH: Sentences =
    Sentences { met: "finding-depth-enough", broken: "finding-depth-short", open: "finding-depth-open" };
const PLAIN_DEPTH: Sentences = Sentences {
    met: "finding-plain-depth-enough",
    broken: "finding-plain-depth-short",
    open: "finding-plain-depth-open",
};

/// The depth of a box under inspection.
struct Depths {
    inspection: Inspection,
    book: BoxDepth,
    enclosure: Option<DepthEnclosure>,
    /// The depth inside, if it was given.
    internal: Option<Figure>,
}

impl Depths {
    fn of_box(rulebook: &Rulebook, request: &BoxDepthsRequest) -> Self {
        let mut proof = Derivation::new(rulebook, request.units);
        let given = request.enclosure.and_then(|enclosure| enclosure.internal_depth);
        let rule = if request.equipment.is_empty() { &PLAIN } else { &EQUIPMENT };
        let internal = given.map(|depth| proof.given(rule, depth.value(), Measure::Length, Self::AT));
        let (inspection, book) = (Inspection::new(proof), rulebook.box_depth.clone());
        Self { inspection, book, enclosure: request.enclosure, internal }
    }

    const AT: Pointer = Pointer::to(&"/enclosure/internal_depth");

    /// A box with nothing in it that is a device or equipment.
    fn plain(&mut self) -> Option<Figure> {
        let least = self.inspection.proof.stated(&self.book.plain);
        self.ask(&PLAIN, least, PLAIN_DEPTH);
        Some(least)
    }

    /// A box with devices or equipment: the deepest that any of it asks for.
    fn with(&mut self, request: &BoxDepthsRequest) -> (Option<Figure>, Vec<EquipmentDepth>) {
        self.inspection.proof.does_not_apply(&PLAIN, "equipment-enclosed", None);
        let (mut asked, mut known, mut equipment) = (Vec::new(), true, Vec::new());
        for (index, one) in request.equipment.iter().enumerate() {
            let (depth, determined) = self.equipment(index, one);
            known &= determined;
            asked.extend(depth.required);
            equipment.push(depth);
        }
        let required = if known { self.inspection.proof.largest(&EQUIPMENT, &asked) } else { None };
        (required, equipment)
    }

    /// Asks a least depth of the box, where there is one to ask it of.
    fn ask(&mut self, rule: &'static Rule, least: Figure, sentences: Sentences) {
        self.ask_so(rule, Relation::AtLeast, least, sentences);
    }

    /// Asks a depth of the box that relates to a least one, where there is a box to ask it of.
    fn ask_so(&mut self, rule: &'static Rule, relation: Relation, least: Figure, sentences: Sentences) {
        match (self.enclosure, self.internal) {
            (None, _) => {}
            (Some(_), None) => {
                self.inspection.open(rule, Some((relation, least)), Self::AT, sentences.open);
            }
            (Some(_), Some(depth)) => {
                self.inspection.compare(rule, (depth, Self::AT), relation, least, sentences);
            }
        }
    }
}
