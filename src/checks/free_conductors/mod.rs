//! Free conductor at a box: is enough left to splice and connect, and does it reach outside a small opening (300.14)?
//!
//! The usual question is a repair: insulation was damaged while the wall was cut, the conductor is cut back, and what is
//! left is too short. The answer says whether a splice inside the box may make the length up, and what it must reach.
//!
//! ```
//! use elbowroom::checks::{Verdict, evaluate, free_conductors::FreeConductors};
//! let request = elbowroom::json::read(br#"{
//!     "opening": {"width": 2, "height": 3},
//!     "emergence_depth": 3.5,
//!     "conductors": [{"role": "terminated", "free_length": 6}]
//! }"#).unwrap();
//! let evaluation = evaluate::<FreeConductors>(&request);
//! // the larger of 6 and 3.5 + 3
//! assert_eq!(evaluation.outcome.required.unwrap().value.to_string(), "6.5");
//! assert_eq!(evaluation.verdict, Some(Verdict::Violates));
//! ```

mod conductor;
mod faults;
mod outcome;
mod request;
mod subjects;

pub use outcome::{ConductorLength, FreeConductorsOutcome, SpliceAnswer};
pub use request::*;

use super::inspection::Inspection;
use super::{Check, Faults, Finding, Judgement, Retaking, Status, Subject};
use crate::derivation::{Derivation, Figure, Pointer, Relation};
use crate::quantity::{Measure, Offset};
use crate::rulebook::digest::Reads;
use crate::rulebook::free_conductor::{FreeLengthBy, OUTSIDE, SPLICED};
use crate::rulebook::{Choice, Part, RuleFigure, Rulebook, Strategy};

/// The check of the free conductors of one box.
#[derive(Clone, Copy, Debug)]
pub struct FreeConductors;

impl Check for FreeConductors {
    const NAME: &'static str = "free_conductors";
    const PATH: &'static str = "/v1/free-conductors/check";
    type Request = FreeConductorsRequest;
    type Outcome = FreeConductorsOutcome;
    const SUBJECTS: &'static [Subject<FreeConductorsRequest>] = &subjects::SUBJECTS;

    fn reads() -> &'static Reads {
        static READS: Reads = Reads::new(&[Part::FreeConductor], &[]);
        &READS
    }

    fn faults(request: &FreeConductorsRequest, faults: &mut Faults) {
        faults::find(request, faults);
    }

    fn retake(outcome: &mut FreeConductorsOutcome, retaking: &Retaking<'_>) {
        retaking.rows(&mut outcome.requirements);
    }

    /// A conductor that is long enough after all lacks nothing, and nobody need splice it.
    fn tell_again(outcome: &mut FreeConductorsOutcome, findings: &mut Vec<Finding>) {
        for row in outcome.conductors.iter_mut().filter(|row| row.short_by.is_some()) {
            let of_row = format!("{}/", row.at);
            let fails = |finding: &Finding| {
                matches!(finding.status, Status::Violated | Status::NotDetermined)
                    && finding.at.iter().any(|at| at.to_string().starts_with(&of_row))
            };
            if findings.iter().any(fails) {
                continue;
            }
            (row.required, row.short_by) = (None, None);
            let is_advice = |finding: &Finding| {
                std::ptr::eq(finding.rule, &SPLICED)
                    && finding.status == Status::Advisory
                    && finding.at.contains(&row.at)
            };
            if findings.iter().any(is_advice) {
                row.splice = None;
                findings.retain(|finding| !is_advice(finding));
            }
        }
    }

    fn judge(rulebook: &Rulebook, request: &FreeConductorsRequest) -> Judgement<FreeConductorsOutcome> {
        let mut lengths = Lengths::of_box(rulebook, request);
        let depth = lengths.depth(request.emergence_depth, Pointer::to(&"/emergence_depth"));
        let required = lengths.required(depth);
        let conductors: Vec<ConductorLength> = request
            .conductors
            .iter()
            .enumerate()
            .filter_map(|(index, conductor)| lengths.conductor(index, conductor, depth))
            .collect();
        let Lengths { inspection: Inspection { proof, requirements, findings, .. }, small, outside, .. } =
            lengths;
        let required_outside = (small == Some(true)).then_some(outside);
        let outcome = FreeConductorsOutcome {
            small_opening: small,
            required,
            required_outside,
            conductors,
            requirements,
        };
        Judgement {
            outcome,
            findings,
            proof,
            cautions: Vec::new(),
            is_judged: !request.conductors.is_empty(),
        }
    }
}

/// What the box asks of every conductor in it.
struct Lengths {
    inspection: Inspection,
    /// The base length.
    base: Figure,
    /// The reach outside a small opening.
    outside: Figure,
    /// Whether the opening is small, if that is known.
    small: Option<bool>,
    /// What rings and extensions add to the depth.
    rings: Vec<Figure>,
}

impl Lengths {
    fn of_box(rulebook: &Rulebook, request: &FreeConductorsRequest) -> Self {
        let mut proof = Derivation::new(rulebook, request.units);
        let book = rulebook.free_conductor.clone();
        let base = proof.stated(&book.length);
        let outside = proof.stated(&book.outside);
        let limit = proof.stated(&book.small_opening);
        let device = book.device_opening;
        let small =
            request.opening.as_ref().and_then(|opening| is_small(&mut proof, opening, limit, &device));
        if small == Some(false) {
            proof.does_not_apply(&OUTSIDE, "large-opening", Some(Pointer::to(&"/opening")));
        }
        let rings = request.rings.iter().enumerate().map(|(index, ring)| {
            let item = Pointer::of(&"/rings/#", index);
            let depth = proof.given(&OUTSIDE, ring.depth.value(), Measure::Length, item.member(&"/depth"));
            match ring.count {
                None => depth,
                Some(count) => {
                    let count = proof.count(&OUTSIDE, Some(count.get()), item);
                    proof.product(&OUTSIDE, count, depth, Some(item))
                }
            }
        });
        let rings = rings.collect();
        Self { inspection: Inspection::new(proof), base, outside, small, rings }
    }

    /// How far conductors emerge behind the opening, with what rings add.
    fn depth(&mut self, depth: Option<Offset>, at: Pointer) -> Option<Figure> {
        let proof = &mut self.inspection.proof;
        let mut parts = vec![proof.given(&OUTSIDE, depth?.value(), Measure::Length, at)];
        parts.extend(&self.rings);
        Some(proof.sum(&OUTSIDE, &parts))
    }

    /// The least depth from which conductors can emerge where nobody says it: that which rings add.
    fn least_depth(&mut self) -> Option<Figure> {
        let rings = self.rings.clone();
        (!rings.is_empty()).then(|| self.inspection.proof.sum(&OUTSIDE, &rings))
    }

    /// The free length that a conductor needs which emerges so far behind the opening.
    fn required(&mut self, depth: Option<Figure>) -> Option<Figure> {
        let Self { ref mut inspection, base, outside, small, .. } = *self;
        let required_by = inspection.proof.rulebook().free_conductor.required_by;
        (required_by.apply)(&mut inspection.proof, Emerging { base, outside, small, depth })
    }
}

/// What the free length of a conductor follows from.
#[derive(Clone, Copy, Debug)]
pub struct Emerging {
    /// The base length.
    pub base: Figure,
    /// The reach outside a small opening.
    pub outside: Figure,
    /// Whether the opening is small, if that is known.
    pub small: Option<bool>,
    /// How far behind the opening the conductor emerges, if that is known.
    pub depth: Option<Figure>,
}

impl Choice for FreeLengthBy {
    /// The free length, from where the conductor emerges; `None` where it is not determined.
    type Apply = fn(&mut Derivation, Emerging) -> Option<Figure>;
    const LAWFUL: Strategy<Self> = Strategy::<Self>::new("from-where-it-emerges", from_where_it_emerges);
}

/// The base length is measured from where the conductor emerges. Whatever the opening, where that suffices either way.
fn from_where_it_emerges(proof: &mut Derivation, of: Emerging) -> Option<Figure> {
    let Emerging { base, outside, small, depth } = of;
    if small == Some(false) {
        return Some(base);
    }
    let reach = proof.sum(&OUTSIDE, &[depth?, outside]);
    let either_way = small == Some(true) || reach.value <= base.value;
    if either_way { proof.largest(&OUTSIDE, &[base, reach]) } else { None }
}

/// Whether any dimension of an opening is below the limit; `None` while a dimension is missing that could be.
fn is_small(
    proof: &mut Derivation,
    opening: &BoxOpening,
    limit: Figure,
    device: &RuleFigure,
) -> Option<bool> {
    let BoxOpening { width, height, diameter, gangs, standard } = opening;
    if let Some(standard) = standard {
        proof.word(&OUTSIDE, standard.key(), Pointer::to(&"/opening/standard"));
        return Some(true);
    }
    let sides = [(width, &"/width"), (height, &"/height"), (diameter, &"/diameter")];
    let mut known = 0;
    for (side, member) in sides {
        let Some(side) = side else { continue };
        known += 1;
        let at = Pointer::to(&"/opening").member(member);
        let side = proof.given(&OUTSIDE, side.value(), Measure::Length, at);
        let (below, _) = proof.compare(&OUTSIDE, side, Relation::Below, limit);
        if below {
            return Some(true);
        }
    }
    if let Some(gangs) = gangs {
        let at = Pointer::to(&"/opening/gangs");
        proof.given(&OUTSIDE, gangs.get().into(), Measure::Number, at);
        let height = proof.stated(device);
        let (below, _) = proof.compare(&OUTSIDE, height, Relation::Below, limit);
        return Some(below);
    }
    (known == 2 || diameter.is_some()).then_some(false)
}
