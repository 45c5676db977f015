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
mod protection;
mod request;
mod surface;

pub use request::*;

use super::inspection::{Given, Inspection, Requirement};
use super::{Check, Faults, Judgement, Subject};
use crate::derivation::{Derivation, Figure, Pattern, Pointer};
use crate::quantity::{Decimal, Measure};
use crate::rulebook::digest::Reads;
use crate::rulebook::{Part, RuleFigure, Rulebook};
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
    const SUBJECTS: &'static [Subject<BoxMountingRequest>] =
        &[Subject { name: "box_mounting", is_described, scope: &[] }];

    fn reads() -> &'static Reads {
        static READS: Reads =
            Reads::new(&[Part::BoxSurface, Part::BoxEntry, Part::BoxAccess, Part::BoxProtection], &[]);
        &READS
    }

    fn faults(request: &BoxMountingRequest, faults: &mut Faults) {
        faults::find(request, faults);
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
        mounting.cover(request.cover);
        mounting.access(request.access);
        mounting.entries(&request.entries);
        mounting.unused_openings(request.unused_openings);
        mounting.fasteners(&request.fasteners);
        mounting.moisture(request.moisture.as_ref());
        mounting.handhole(request.handhole);
        let Inspection { proof, requirements, findings, .. } = mounting.inspection;
        let outcome = BoxMountingOutcome { requirements };
        Judgement { outcome, findings, proof, cautions: Vec::new(), is_judged: true }
    }
}

/// Whether anything is described that could be inspected, besides the box itself.
fn is_described(request: &BoxMountingRequest) -> bool {
    let BoxMountingRequest {
        edition: _,
        accept_unverified_rules: _,
        units: _,
        reference: _,
        amendments: _,
        enclosure: _,
        flush_surface,
        flush_device,
        extension,
        cover,
        access,
        entries,
        unused_openings,
        fasteners,
        moisture,
        handhole,
    } = request;
    flush_surface.is_some()
        || flush_device.is_some()
        || extension.is_some()
        || cover.is_some()
        || access.is_some()
        || !entries.is_empty()
        || unused_openings.is_some()
        || !fasteners.is_empty()
        || moisture.is_some()
        || handhole.is_some()
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

    /// What a figure is, where it only decides which question is asked.
    fn value(&self, figure: &RuleFigure) -> Decimal {
        self.book.value(figure, self.inspection.proof.units()).0
    }
}

/// A place of the box itself.
const fn of_box(member: Pattern) -> Pointer {
    Pointer::to(&"/enclosure").member(member)
}

/// A distance that may have been given.
const fn distance(value: Option<Decimal>, at: Pointer) -> Given {
    Given { value, measure: Measure::Length, at }
}
