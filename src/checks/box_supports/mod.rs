//! Box supports: is an enclosure held as 314.23 asks?
//!
//! The section names several means, and one complete means is enough. Each that a request names is inspected on its own,
//! and the verdict combines them:
//!
//! * one is complete: the enclosure complies, and what the others lack is advisory;
//! * none is complete, but one could be if more were known: not determined;
//! * every one lacks something: the enclosure violates the rule, and each finding says what is lacking.
//!
//! Some requirements stand by themselves: nails, screws and braces that are used are judged whatever else holds the box, and
//! while it is not known whether they are as asked nothing is settled.
//!
//! ```
//! use elbowroom::checks::{Verdict, box_supports::BoxSupports, evaluate};
//! let request = elbowroom::json::read(br#"{
//!     "enclosure": {"volume": 30.3, "devices_or_luminaires": true},
//!     "means": [{
//!         "kind": "raceways", "threaded_entries_or_hubs": true,
//!         "conduits": [{"kind": "RMC", "threaded_wrenchtight": true, "secured_within": 18}]
//!     }]
//! }"#).unwrap();
//! // one conduit, where a box with a device needs two
//! assert_eq!(evaluate::<BoxSupports>(&request).verdict, Some(Verdict::Violates));
//! ```

mod faults;
mod fixed;
mod hanging;
mod outcome;
mod raceways;
mod request;
mod subjects;

pub use outcome::{BoxSupportsOutcome, MeansOfSupport};
pub use request::*;

use super::inspection::{Given, Inspection};
use super::ways::{Settled, Way};
use super::{Check, Faults, Finding, Judgement, Retaking, Status, Subject};
use crate::derivation::{Derivation, Pointer};
use crate::quantity::{Length, Measure};
use crate::rulebook::box_support::{
    BRACE, BoxSupport, CEILING_FRAMING, CEILING_WIRES, CORD, EMBEDDED, FASTENERS, FINISHED_SURFACE,
    LUMINAIRE_ON_CONDUIT, MEANS, STEM, STRUCTURE, SURFACE, THREADS,
};
use crate::rulebook::digest::Reads;
use crate::rulebook::{Part, Rule, Rulebook};
use crate::tables;

/// The check of what holds one enclosure.
#[derive(Clone, Copy, Debug)]
pub struct BoxSupports;

impl Check for BoxSupports {
    const NAME: &'static str = "box_supports";
    const PATH: &'static str = "/v1/box-supports/check";
    type Request = BoxSupportsRequest;
    type Outcome = BoxSupportsOutcome;
    const SUBJECTS: &'static [Subject<BoxSupportsRequest>] = &subjects::SUBJECTS;

    fn reads() -> &'static Reads {
        static READS: Reads = Reads::new(
            &[Part::BoxSupport],
            &[tables::supporting_raceways::TABLE, tables::trade_sizes::TABLE],
        );
        &READS
    }

    fn faults(request: &BoxSupportsRequest, faults: &mut Faults) {
        faults::find(request, faults);
    }

    fn retake(outcome: &mut BoxSupportsOutcome, retaking: &Retaking<'_>) {
        for MeansOfSupport { requirements, status, step, .. } in &mut outcome.means {
            retaking.way(requirements, status, step);
        }
    }

    fn judge(rulebook: &Rulebook, request: &BoxSupportsRequest) -> Judgement<BoxSupportsOutcome> {
        let mut holding = Holding {
            inspection: Inspection::new(Derivation::new(rulebook, request.units)),
            figures: &rulebook.box_support,
            enclosure: &request.enclosure,
        };
        let mut ways = Vec::with_capacity(request.means.len());
        for (index, means) in request.means.iter().enumerate() {
            let found = holding.means(means, index);
            ways.extend(found.into_iter().map(|(rule, way)| (Pointer::of(&"/means/#", index), rule, way)));
        }
        let found: Vec<Way> = ways.iter().map(|(_, _, way)| way.clone()).collect();
        let settled = holding.inspection.settle(&MEANS, &found, &STAND);
        let is_wrong =
            |finding: &Finding| finding.status != Status::Satisfied && STAND.contains(&finding.rule);
        let all_right = !holding.inspection.findings.iter().any(is_wrong);
        holding.inspection.findings.push(overall(settled, &ways, all_right));
        let means = ways
            .into_iter()
            .map(|(at, rule, Way { requirements, status, step, .. })| MeansOfSupport {
                at,
                rule: rule.id,
                status,
                requirements,
                step,
            })
            .collect();
        let (findings, _, proof) = holding.inspection.close();
        let outcome = BoxSupportsOutcome { means };
        Judgement { outcome, findings, proof, cautions: Vec::new(), is_judged: true }
    }
}

/// What is judged wherever it is used, whatever else holds the enclosure.
static STAND: [&Rule; 3] = [&THREADS, &FASTENERS, &BRACE];

/// What the means come to together; `all_right` is whether nothing that is used breaks a rule or is open.
fn overall(settled: Settled, ways: &[(Pointer, &'static Rule, Way)], all_right: bool) -> Finding {
    let list = Pointer::to(&"/means");
    let Settled { status, step } = settled;
    let message = match status {
        Status::Satisfied if all_right => "finding-support-complete",
        Status::Satisfied => "finding-support-complete-but",
        Status::Violated => "finding-support-incomplete",
        _ if ways.is_empty() => "finding-support-not-named",
        _ => "finding-support-open",
    };
    let mut finding = Finding::new(&MEANS, status, message);
    finding.step = step;
    finding.at = ways.iter().filter(|(_, _, way)| way.status == status).map(|(at, _, _)| *at).collect();
    finding.at.dedup();
    if status == Status::Satisfied {
        let numbers: Vec<String> = finding.at.iter().map(|at| number_of(*at)).collect();
        finding = finding.with("means", numbers.join(", ").as_str());
    }
    if ways.is_empty() {
        finding = finding.at(list).supply(list);
    }
    finding
}

/// The number of a means in its list, counted from 1.
fn number_of(means: Pointer) -> String {
    let index = means.to_string().rsplit('/').next().and_then(|index| index.parse::<usize>().ok());
    index.map_or_else(String::new, |index| (index + 1).to_string())
}

/// An enclosure under inspection, with what holds it.
struct Holding<'a> {
    inspection: Inspection,
    figures: &'a BoxSupport,
    enclosure: &'a HeldEnclosure,
}

impl Holding<'_> {
    /// The ways in which one means may hold the enclosure, each with the rule that allows it.
    fn means(&mut self, means: &SupportMeans, index: usize) -> Vec<(&'static Rule, Way)> {
        let at = Pointer::of(&"/means/#", index);
        let (rule, way) = match means {
            SupportMeans::Raceways(raceways) => return self.raceways(raceways, index),
            SupportMeans::Surface(surface) => {
                (&SURFACE, self.way(&SURFACE, |held| held.surface(surface, at)))
            }
            SupportMeans::StructuralMember(structural) => {
                (&STRUCTURE, self.way(&STRUCTURE, |held| held.structural(structural, at)))
            }
            SupportMeans::FinishedSurface(finished) => {
                (&FINISHED_SURFACE, self.way(&FINISHED_SURFACE, |held| held.finished_surface(finished, at)))
            }
            SupportMeans::CeilingFraming(framing) => {
                (&CEILING_FRAMING, self.way(&CEILING_FRAMING, |held| held.ceiling_framing(framing, at)))
            }
            SupportMeans::CeilingWires(wires) => {
                (&CEILING_WIRES, self.way(&CEILING_WIRES, |held| held.ceiling_wires(wires, at)))
            }
            SupportMeans::LuminaireOnConduit(luminaire) => (
                &LUMINAIRE_ON_CONDUIT,
                self.way(&LUMINAIRE_ON_CONDUIT, |held| held.luminaire_on_conduit(luminaire, index)),
            ),
            SupportMeans::Embedded(embedded) => {
                (&EMBEDDED, self.way(&EMBEDDED, |held| held.embedded(embedded, at)))
            }
            SupportMeans::CordPendant(cord) => (&CORD, self.way(&CORD, |held| held.cord_pendant(cord, at))),
            SupportMeans::ConduitPendant(pendant) => {
                (&STEM, self.way(&STEM, |held| held.conduit_pendant(pendant, at)))
            }
        };
        vec![(rule, way)]
    }

    fn way(&mut self, rule: &'static Rule, inspect: impl FnOnce(&mut Self)) -> Way {
        let start = self.inspection.begin();
        inspect(self);
        self.inspection.end(rule, start)
    }
}

/// A length that a request may give.
fn length(value: Option<Length>, at: Pointer) -> Given {
    Given { value: value.map(Length::value), measure: Measure::Length, at }
}
