//! A box as it is installed: how it sits in its surface, what enters, covers and extends it, and whether it is reached.
//!
//! Only the parts that a request describes are inspected. Volume, depth, supports and construction are other checks.
//!
//! ```
//! use elbowroom::checks::{Verdict, box_mounting::BoxMounting, evaluate};
//! let request = elbowroom::json::read(br#"{
//!     "flush_surface": {"combustible": false, "setback": 0.375, "gap": 0.125}
//! }"#).unwrap();
//! // behind tile a box may be set back 1/4 in, and leave a gap of 1/8 in
//! assert_eq!(evaluate::<BoxMounting>(&request).verdict, Some(Verdict::Violates));
//! ```

mod access;
mod covers;
mod entries;
mod faults;
mod finish_opening;
mod handhole;
mod large_conductors;
mod protection;
mod request;
mod subjects;
mod surface;

pub use request::*;

use super::inspection::{Given, Inspection, Requirement};
use super::{Check, Faults, Judgement, Retaking, Subject};
use crate::derivation::{Derivation, Figure, Pattern, Pointer};
use crate::quantity::{Decimal, Measure};
use crate::rulebook::digest::Reads;
use crate::rulebook::{Part, Rule, RuleFigure, Rulebook};
use crate::tables::standard_boxes;
use serde::Serialize;
use utoipa::ToSchema;

/// The check of how one box is installed.
#[derive(Clone, Copy, Debug)]
pub struct BoxMounting;

/// What each rule asks of the box as it is installed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct BoxMountingOutcome {
    /// What each rule asks.
    pub requirements: Vec<Requirement>,
}

impl Check for BoxMounting {
    const NAME: &'static str = "box_mounting";
    const PATH: &'static str = "/v1/box-mountings/check";
    type Request = BoxMountingRequest;
    type Outcome = BoxMountingOutcome;
    const SUBJECTS: &'static [Subject<BoxMountingRequest>] = &subjects::SUBJECTS;

    fn reads() -> &'static Reads {
        static READS: Reads = Reads::new(
            &[Part::BoxSurface, Part::BoxEntry, Part::BoxAccess, Part::BoxProtection],
            &[standard_boxes::TABLE],
        );
        &READS
    }

    fn faults(request: &BoxMountingRequest, faults: &mut Faults) {
        faults::find(request, faults);
    }

    fn retake(outcome: &mut BoxMountingOutcome, retaking: &Retaking<'_>) {
        retaking.rows(&mut outcome.requirements);
    }

    fn judge(rulebook: &Rulebook, request: &BoxMountingRequest) -> Judgement<BoxMountingOutcome> {
        let mut mounting = Mounting {
            inspection: Inspection::new(Derivation::new(rulebook, request.units)),
            book: rulebook.clone(),
            enclosure: request.enclosure.unwrap_or_default(),
        };
        mounting.grounding();
        mounting.flush_surface(request.flush_surface);
        mounting.flush_device(request.flush_device);
        mounting.extension(request.extension);
        mounting.cover(request.cover, request.stage);
        mounting.access(request.access, faults::is_covered_in_finish(request));
        mounting.entries(&request.entries);
        mounting.unused_openings(request.unused_openings);
        mounting.fasteners(&request.fasteners);
        mounting.moisture(request);
        mounting.handhole(request.handhole);
        let (findings, requirements, proof) = mounting.inspection.close();
        let outcome = BoxMountingOutcome { requirements };
        Judgement { outcome, findings, proof, cautions: Vec::new(), is_judged: true }
    }
}

/// A box under inspection, as it is installed.
struct Mounting {
    inspection: Inspection,
    book: Rulebook,
    enclosure: MountedBox,
}

impl Mounting {
    fn stated(&mut self, figure: &RuleFigure) -> Figure {
        self.inspection.proof.stated(figure)
    }

    /// Whether the box is a conduit body, where that is said or follows from its being a single-gang box or one of the table; noted in the proof.
    fn is_conduit_body(&mut self, rule: &'static Rule) -> Option<bool> {
        if let Some(is_body) = self.enclosure.conduit_body {
            self.inspection.proof.fact(rule, is_body, BODY);
            return Some(is_body);
        }
        if self.enclosure.single_gang_in_wall_or_ceiling == Some(true) {
            self.inspection.proof.fact(rule, true, SINGLE_GANG_BOX);
            return Some(false);
        }
        let row = self.enclosure.standard?;
        self.inspection.proof.word(rule, row.key(), STANDARD);
        Some(false)
    }

    /// The volume of the box, where it is said or is that of its row.
    fn volume(&mut self, rule: &'static Rule) -> Option<Figure> {
        let proof = &mut self.inspection.proof;
        if let Some(volume) = self.enclosure.volume {
            return Some(proof.given(rule, volume.value(), Measure::Volume, of_box(&"/volume")));
        }
        let row = self.enclosure.standard.filter(|row| !row.shape().is_per_gang())?;
        Some(proof.lookup(rule, row.volume(proof.units()), Some(STANDARD)))
    }

    /// What a figure is, where it only decides which question is asked.
    fn value(&self, figure: &RuleFigure) -> Decimal {
        self.book.value(figure, self.inspection.proof.units()).0
    }
}

const MATERIAL: Pointer = of_box(&"/material");
const STANDARD: Pointer = of_box(&"/standard");
const BODY: Pointer = of_box(&"/conduit_body");
const SINGLE_GANG_BOX: Pointer = of_box(&"/single_gang_in_wall_or_ceiling");

/// A place of the box itself.
const fn of_box(member: Pattern) -> Pointer {
    Pointer::to(&"/enclosure").member(member)
}

/// A distance that may have been given.
const fn distance(value: Option<Decimal>, at: Pointer) -> Given {
    Given { value, measure: Measure::Length, at }
}
