//! Luminaire and fan outlets: may a box carry what hangs from it (314.27)?
//!
//! A load may be carried in several ways: by a box that is made for it, by two screws in any box where it is light, by the
//! structure. One complete way is enough. Apart from that, a ceiling box of a dwelling may have to be ready for a fan,
//! in a way that differs between editions.
//!
//! ```
//! use elbowroom::checks::{Verdict, evaluate, luminaire_and_fan_outlets::LuminaireAndFanOutlets};
//! let request = elbowroom::json::read(br#"{
//!     "load": {"kind": "luminaire", "position": "ceiling", "weight": 62},
//!     "box": {"identified": true, "weight_marked": false}
//! }"#).unwrap();
//! let evaluation = evaluate::<LuminaireAndFanOutlets>(&request);
//! // a box without a mark carries 50 lb
//! assert_eq!(evaluation.outcome.box_carries.unwrap().value.to_string(), "50");
//! assert_eq!(evaluation.verdict, Some(Verdict::Violates));
//! ```

mod carrying;
mod fan_readiness;
mod fans;
mod on_box;
mod outcome;
mod request;
mod subjects;

pub use outcome::{LuminaireAndFanOutletsOutcome, WayOfCarrying};
pub use request::*;

use super::inspection::{Given, Inspection, Sentences};
use super::ways::Way;
use super::{Check, FaultCode, Faults, Finding, Judgement, Retaking, Subject, rulebook_of};
use crate::derivation::{Derivation, Figure, Pointer};
use crate::quantity::{Measure, Weight};
use crate::rulebook::digest::Reads;
use crate::rulebook::luminaire_outlet::LuminaireOutlet;
use crate::rulebook::{Part, Rule, Rulebook};

/// The check of a box that carries a luminaire, a fan or other equipment.
#[derive(Clone, Copy, Debug)]
pub struct LuminaireAndFanOutlets;

impl Check for LuminaireAndFanOutlets {
    const NAME: &'static str = "luminaire_and_fan_outlets";
    const PATH: &'static str = "/v1/luminaire-and-fan-outlets/check";
    type Request = LuminaireAndFanOutletsRequest;
    type Outcome = LuminaireAndFanOutletsOutcome;
    const SUBJECTS: &'static [Subject<LuminaireAndFanOutletsRequest>] = &subjects::SUBJECTS;

    fn reads() -> &'static Reads {
        static READS: Reads = Reads::new(&[Part::LuminaireOutlet], &[]);
        &READS
    }

    fn faults(request: &LuminaireAndFanOutletsRequest, faults: &mut Faults) {
        if let OutletLoad::CeilingFan(FanLoad { position: Some(OutletPosition::Wall), .. }) = request.load {
            faults.contradiction(
                Pointer::to(&"/load/position"),
                Pointer::to(&"/load/kind"),
                "fault-ceiling-fan-on-wall",
            );
        }
        let is_luminaire = matches!(request.load, OutletLoad::Luminaire(_));
        let is_said_both_ways =
            |given: &OutletBox| given.identified == Some(false) && given.listed_for_weight == Some(true);
        if is_luminaire && request.outlet_box.as_ref().is_some_and(is_said_both_ways) {
            let listed = Pointer::to(&"/box/listed_for_weight");
            faults.contradiction(Pointer::to(&"/box/identified"), listed, "fault-listed-box-not-identified");
        }
        if request.fan_location.is_some() && !request.load.is_on_ceiling() {
            let place = match &request.load {
                OutletLoad::FloorReceptacle(_) => Pointer::to(&"/load/kind"),
                _ => Pointer::to(&"/load/position"),
            };
            let at = Pointer::to(&"/fan_location");
            faults.contradiction(at, place, "fault-fan-location-of-no-ceiling");
        }
        if let Some(FanLocation {
            framing_access: Some(false), framing_access_through_box: Some(true), ..
        }) = request.fan_location
        {
            let at = |member| Pointer::to(&"/fan_location").member(member);
            let (through, any) = (at(&"/framing_access_through_box"), at(&"/framing_access"));
            faults.contradiction(through, any, "fault-framing-through-box-and-not-at-all");
        }
        let is_fan = matches!(request.load, OutletLoad::CeilingFan(_));
        let is_marked_outside =
            |given: &OutletBox| given.listed_for_fan == Some(true) && given.marked_inside == Some(false);
        if is_fan
            && rulebook_of::<Self>(request, request.edition).luminaire_outlet.fan_mark_inside
            && request.outlet_box.as_ref().is_some_and(is_marked_outside)
        {
            let listed = Pointer::to(&"/box/listed_for_fan");
            faults.contradiction(Pointer::to(&"/box/marked_inside"), listed, "fault-fan-box-marked-outside");
        }
        match request.outlet_box.as_ref().map(|given| (given.weight_marked, given.marked_weight)) {
            Some((Some(false), Some(_))) => {
                faults.contradiction(WEIGHT_MARKED, MARKED_WEIGHT, "fault-weight-marked-and-not");
            }
            Some((Some(true), None)) => {
                faults.add(MARKED_WEIGHT, FaultCode::MissingMember, "fault-weight-marked-not-said");
            }
            _ => {}
        }
    }

    fn retake(outcome: &mut LuminaireAndFanOutletsOutcome, retaking: &Retaking<'_>) {
        retaking.rows(&mut outcome.requirements);
        for WayOfCarrying { requirements, status, step, .. } in &mut outcome.carried {
            retaking.way(requirements, status, step);
        }
    }

    fn judge(
        rulebook: &Rulebook,
        request: &LuminaireAndFanOutletsRequest,
    ) -> Judgement<LuminaireAndFanOutletsOutcome> {
        let nothing_known = OutletBox::default();
        let mut outlet = Outlet {
            inspection: Inspection::new(Derivation::new(rulebook, request.units)),
            figures: &rulebook.luminaire_outlet,
            outlet_box: request.outlet_box.as_ref().unwrap_or(&nothing_known),
            box_carries: None,
        };
        let carried = outlet.carried(&request.load);
        if request.load.is_on_ceiling() {
            outlet.ready_for_fan(&request.load, request.fan_location.clone().unwrap_or_default());
        }
        let box_carries = outlet.box_carries.filter(|_| !outlet.is_unfit(&request.load));
        let Inspection { proof, requirements, mut findings, .. } = outlet.inspection;
        if request.outlet_box.is_none() {
            leave_box_unasked(&mut findings);
        }
        let carried = carried.into_iter().map(|(rule, Way { requirements, status, step, .. })| {
            WayOfCarrying { rule: rule.id, status, requirements, step }
        });
        let outcome = LuminaireAndFanOutletsOutcome { box_carries, carried: carried.collect(), requirements };
        Judgement { outcome, findings, proof, cautions: Vec::new(), is_judged: request.outlet_box.is_some() }
    }
}

/// Nobody describes a box where only what it must be is asked: nothing is asked of it.
fn leave_box_unasked(findings: &mut Vec<Finding>) {
    let is_of_box = |at: &Pointer| at.to_string().starts_with("/box");
    for finding in findings.iter_mut() {
        finding.supply.retain(|at| !is_of_box(at));
    }
    findings.retain(|finding| finding.at.is_empty() || !finding.at.iter().all(is_of_box));
}

/// A box under inspection.
struct Outlet<'a> {
    inspection: Inspection,
    figures: &'a LuminaireOutlet,
    outlet_box: &'a OutletBox,
    box_carries: Option<Figure>,
}

impl Outlet<'_> {
    /// Whether the box is said to be none that may carry such a load, whatever its weight.
    fn is_unfit(&self, load: &OutletLoad) -> bool {
        match load {
            OutletLoad::CeilingFan(_) => {
                self.outlet_box.listed_for_fan == Some(false) || self.outlet_box.marked_for_fan == Some(false)
            }
            _ => self.outlet_box.identified == Some(false),
        }
    }

    fn way(&mut self, rule: &'static Rule, inspect: impl FnOnce(&mut Self)) -> (&'static Rule, Way) {
        let begun = self.inspection.begin();
        inspect(self);
        (rule, self.inspection.end(rule, begun))
    }
}

const MARKED_WEIGHT: Pointer = Pointer::to(&"/box/marked_weight");
const WEIGHT_MARKED: Pointer = Pointer::to(&"/box/weight_marked");
const WITHIN_MARK: Sentences = Sentences {
    met: "finding-load-within-mark",
    broken: "finding-load-over-mark",
    open: "finding-load-weight-open",
};
const LOAD_WEIGHT: Pointer = Pointer::to(&"/load/weight");

/// A weight that a request may give.
fn weight(value: Option<Weight>, at: Pointer) -> Given {
    Given { value: value.map(Weight::value), measure: Measure::Weight, at }
}
