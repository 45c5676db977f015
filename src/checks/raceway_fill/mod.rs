//! Raceway fill: do the conductors fit, which trade size would do, and how many more would fit?
//!
//! What goes in is counted line by line with the cross-section that the tables have for it; the inside of the raceway,
//! times the limit for that number of conductors, must be at least as large (Chapter 9, Table 1). Of conductors that are
//! all of one size one more is permitted where the computed number ends in 0.8 or more.
//!
//! ```
//! use elbowroom::checks::{Check, Verdict, evaluate, raceway_fill::RacewayFill};
//! let request = elbowroom::json::read(br#"{
//!     "raceway": {"kind": "EMT", "trade_size": "3/4"},
//!     "conductors": [{"insulation": "THHN", "size": "14 AWG", "count": 22}]
//! }"#).unwrap();
//! let evaluation = evaluate::<RacewayFill>(&request);
//! // 22 × 0.0097 = 0.2134 in² is over 40 % of 0.5333 in² (0.2133), but 21.99 may be taken as 22
//! assert_eq!(evaluation.verdict, Some(Verdict::Complies));
//! assert_eq!(evaluation.outcome.fill.unwrap().maximum.unwrap().value.to_string(), "22");
//! ```

mod contents;
mod faults;
mod fill;
mod outcome;
pub(crate) mod permitted;
mod request;
mod side_by_side;
pub mod sizing;
mod subjects;
mod takeoff;
mod three_eighths;

pub use outcome::{
    FillLimit, Fullness, RacewayFillOutcome, RacewayItem, RacewayRoom, RacewayTallyLine, TradeSizeFit,
};
pub use request::*;

use super::{Check, Evaluation, Faults, Finding, Judgement, Status, Subject, TakeoffFigures};
use crate::derivation::{Derivation, Operation, Pointer, Relation};
use crate::quantity::Measure;
use crate::rulebook::digest::Reads;
use crate::rulebook::raceway_fill::{AREA, COUNTED, NIPPLE, SAME_SIZE, SMALLEST, THREE_EIGHTHS};
use crate::rulebook::reading::{Point, RacewayArea, Reading};
use crate::rulebook::{Part, Rulebook};
use crate::tables::{self, Basis, raceway_dimensions};
use crate::trade::RacewayKind;
use contents::Contents;
use sizing::{Load, Sizer};

/// The check of what goes into one raceway.
#[derive(Clone, Copy, Debug)]
pub struct RacewayFill;

impl Check for RacewayFill {
    const NAME: &'static str = "raceway_fill";
    const PATH: &'static str = "/v1/raceways/fill";
    type Request = RacewayFillRequest;
    type Outcome = RacewayFillOutcome;
    const SUBJECTS: &'static [Subject<RacewayFillRequest>] = &subjects::SUBJECTS;

    fn reads() -> &'static Reads {
        static READS: Reads = Reads::new(
            &[Part::RacewayFill, Part::Geometry],
            &[
                tables::bare_conductor_dimensions::TABLE,
                tables::compact_conductor_dimensions::TABLE,
                tables::conductor_dimensions::TABLE,
                tables::raceway_dimensions::TABLE,
                tables::raceway_dimensions::EARLIER_ENT_TABLE,
                tables::flexible_three_eighths::TABLE,
                tables::trade_sizes::TABLE,
            ],
        );
        &READS
    }

    fn faults(request: &RacewayFillRequest, faults: &mut Faults) {
        faults::find(request, faults);
    }

    fn judge(rulebook: &Rulebook, request: &RacewayFillRequest) -> Judgement<RacewayFillOutcome> {
        let mut judgement = under(rulebook, request);
        let followed = rulebook.readings.of::<RacewayArea>();
        for other in RacewayArea::ALL.iter().copied().filter(|other| *other != followed) {
            let read = rulebook.with_readings(rulebook.readings.choose(Some(other)));
            let name = RacewayArea::POINT.readings()[usize::from(other.place())];
            let differences = differences(&judgement.outcome, &under(&read, request).outcome, name);
            judgement.findings.extend(differences);
        }
        judgement
    }

    fn takeoff_figures(
        request: &RacewayFillRequest,
        evaluation: &Evaluation<RacewayFillOutcome>,
    ) -> TakeoffFigures {
        takeoff::of(request, evaluation)
    }
}

/// Evaluates a request under one reading of the inside area.
fn under(rulebook: &Rulebook, request: &RacewayFillRequest) -> Judgement<RacewayFillOutcome> {
    let mut proof = Derivation::new(rulebook, request.units);
    let (mut sizer, mut findings) = (Sizer::default(), Vec::new());
    let Some(contents) = Contents::count(&mut proof, &mut sizer, request) else {
        return nothing(proof);
    };
    let load = contents.load;
    if load.alike.is_none() {
        proof.does_not_apply(&SAME_SIZE, "sizes-differ", None);
    }
    if let Some((kind, size)) = request.raceway.and_then(|raceway| Some((raceway.kind, raceway.trade_size?)))
    {
        findings.extend(permitted::judge(&mut proof, kind, size, Pointer::to(&"/raceway/trade_size")));
    }
    let nipple = is_nipple(&mut proof, request, &mut findings);
    let (limit, percent) = sizer.limit(&mut proof, load.number, nipple);
    let fill = fill::of(&mut proof, &mut sizer, request, &contents, (limit, percent), &mut findings);
    if fill.is_some() {
        leave_unconfirmed_open(&proof, &mut findings);
    }
    let mut fits = fits(&mut proof, &mut sizer, request, &load, limit, &mut findings);
    for fit in &mut fits {
        *fit = side_by_side::widen(&mut proof, &mut sizer, &contents, limit, *fit);
    }
    takes_three_eighths(request, &findings, &mut fits);
    findings.extend(unconfirmed(&proof));
    let outcome = RacewayFillOutcome {
        number: load.number,
        total_area: load.total,
        same_size: load.alike.is_some(),
        tally: contents.lines,
        fill,
        fits,
    };
    let is_judged = request.raceway.is_some_and(|raceway| raceway.trade_size.is_some());
    Judgement { outcome, findings, proof, cautions: Vec::new(), is_judged }
}

/// The answer to a request that puts nothing in, which its faults refuse.
fn nothing(mut proof: Derivation) -> Judgement<RacewayFillOutcome> {
    let outcome = RacewayFillOutcome {
        number: proof.nothing(&COUNTED, Measure::Number),
        total_area: proof.nothing(&COUNTED, Measure::Area),
        same_size: false,
        tally: Vec::new(),
        fill: None,
        fits: Vec::new(),
    };
    Judgement { outcome, findings: Vec::new(), proof, cautions: Vec::new(), is_judged: false }
}

/// Whether the raceway is a nipple: by its length, or by the word of the request.
fn is_nipple(proof: &mut Derivation, request: &RacewayFillRequest, findings: &mut Vec<Finding>) -> bool {
    let Some(raceway) = request.raceway else { return false };
    let (at, length_at) = (Pointer::to(&"/raceway"), Pointer::to(&"/raceway/length"));
    let said = raceway.nipple.map(|nipple| proof.fact(&NIPPLE, nipple, at.member(&"/nipple")));
    let step = match (raceway.nipple, raceway.length) {
        (Some(false), _) | (None, None) => {
            proof.does_not_apply(&NIPPLE, "not-a-nipple", Some(at));
            return false;
        }
        // whether it is short enough, and whether that matters, is seen when it is filled
        (Some(true), None) => return said.is_some(),
        (_, Some(length)) => {
            let length = proof.given(&NIPPLE, length.value(), Measure::Length, length_at);
            let book = proof.rulebook().clone();
            let most = proof.stated(&book.raceway_fill.nipple_length);
            let (short, step) = proof.compare(&NIPPLE, length, Relation::AtMost, most);
            if !short {
                proof.does_not_apply(&NIPPLE, "longer-than-a-nipple", Some(length_at));
                let finding = Finding::new(&NIPPLE, Status::Advisory, "finding-too-long-for-nipple");
                findings.push(finding.with("length", length).with("most", most).at(length_at).step(step));
                return false;
            }
            Some(step)
        }
    };
    let mut finding = Finding::new(&NIPPLE, Status::Advisory, "finding-taken-as-nipple").at(at);
    finding.step = step;
    findings.push(finding);
    true
}

/// A fill by figures that nothing confirms decides nothing, either way.
fn leave_unconfirmed_open(proof: &Derivation, findings: &mut [Finding]) {
    let mut unconfirmed = unconfirmed_rows(proof);
    // of these rows the reading decides that the caller chose
    if proof.consulted().contains(&Point::EntDimensions) {
        unconfirmed.retain(|(table, _)| *table != raceway_dimensions::TABLE);
    }
    if unconfirmed.is_empty() {
        return;
    }
    let of_raceway = unconfirmed.iter().any(|(table, _)| *table == raceway_dimensions::TABLE);
    let supply = Pointer::to(if of_raceway { &"/raceway" } else { &"/measured_conductors" });
    let rows = names(&unconfirmed);
    for finding in findings.iter_mut().filter(|finding| FILL_MESSAGES.contains(&finding.message)) {
        finding.status = Status::NotDetermined;
        finding.message = "finding-fill-not-confirmed";
        finding.arguments.push(("rows", rows.as_str().into()));
        finding.supply.push(supply);
    }
}

/// What is found of a fill by its figures.
const FILL_MESSAGES: [&str; 3] = ["finding-fill-within", "finding-fill-raised", "finding-fill-over"];

/// The smallest trade size of each kind that is asked for.
fn fits(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    request: &RacewayFillRequest,
    load: &Load,
    limit: FillLimit,
    findings: &mut Vec<Finding>,
) -> Vec<TradeSizeFit> {
    let given = request.raceway.map(|raceway| [raceway.kind]);
    let asked: &[RacewayKind] = match (&request.kinds[..], &given) {
        ([], Some(given)) => given,
        ([], None) => RacewayKind::ALL,
        (kinds, _) => kinds,
    };
    let mut fits: Vec<TradeSizeFit> = Vec::with_capacity(asked.len());
    for kind in asked.iter().copied() {
        if fits.iter().any(|known| known.kind == kind) {
            continue;
        }
        let Some(smallest) = sizer.smallest(proof, kind, load, limit) else { continue };
        if smallest.size.is_none() {
            let (units, book) = (proof.units(), proof.rulebook());
            let largest = book.raceway_fill.largest(kind).filter(|_| book.raceway_fill.is_read(kind));
            let most = largest.map(|(_, most)| book.value(most, units).0);
            let larger = raceway_dimensions::without_figures(kind)
                .filter(|size| most.is_none_or(|most| size.figure(units) <= most))
                .map(|size| size.name());
            let larger = larger.collect::<Vec<_>>().join(", ");
            let message =
                if larger.is_empty() { "finding-no-trade-size" } else { "finding-larger-without-figures" };
            findings.push(
                Finding::new(&SMALLEST, Status::Advisory, message)
                    .with("kind", kind.name())
                    .with("sizes", larger.as_str())
                    .step(smallest.step),
            );
        }
        fits.push(TradeSizeFit {
            kind,
            trade_size: smallest.size.map(|(size, _)| size),
            allowed_area: smallest.size.map(|(_, allowed)| allowed),
            step: smallest.step,
        });
    }
    fits
}

/// Flexible metal conduit of trade size 3/8 is offered to nobody; where it is given and takes everything, none is smaller.
fn takes_three_eighths(request: &RacewayFillRequest, findings: &[Finding], fits: &mut [TradeSizeFit]) {
    let given = request.raceway.and_then(|raceway| Some((raceway.kind, raceway.trade_size?)));
    let Some((kind, size)) = given.filter(|(kind, size)| three_eighths::is_counted(*kind, *size)) else {
        return;
    };
    let is_enough = |finding: &&Finding| {
        std::ptr::eq(finding.rule, &THREE_EIGHTHS) && finding.status == Status::Satisfied
    };
    let step = findings.iter().find(is_enough).and_then(|finding| finding.step);
    if let (Some(step), Some(fit)) = (step, fits.iter_mut().find(|fit| fit.kind == kind)) {
        *fit = TradeSizeFit { kind, trade_size: Some(size), allowed_area: None, step };
    }
}

/// Names the rows that nothing confirms and that the proof looked up.
fn unconfirmed(proof: &Derivation) -> Option<Finding> {
    let finding = Finding::new(&AREA, Status::Advisory, "finding-unconfirmed-dimensions");
    let rows = unconfirmed_rows(proof);
    (!rows.is_empty()).then(|| finding.with("rows", names(&rows).as_str()))
}

fn names(rows: &[(&str, &str)]) -> String {
    rows.iter().map(|(_, row)| *row).collect::<Vec<_>>().join(", ")
}

/// The tables and rows of them that nothing confirms.
fn unconfirmed_rows(proof: &Derivation) -> Vec<(&'static str, &'static str)> {
    let edition = proof.rulebook().edition.figures_of();
    let mut rows: Vec<(&str, &str)> = Vec::new();
    for step in proof.steps() {
        let Operation::Lookup { table, row, .. } = step.operation else { continue };
        let found = tables::all().find(table).and_then(|table| table.row(row));
        if found.is_some_and(|found| edition.basis_of(found.bases) == Basis::Unconfirmed)
            && !rows.contains(&(*table, *row))
        {
            rows.push((*table, *row));
        }
    }
    rows
}

/// What another reading of the inside area would make of the counts and trade sizes.
fn differences(
    ours: &RacewayFillOutcome,
    theirs: &RacewayFillOutcome,
    reading: &'static str,
) -> Vec<Finding> {
    let mut findings = Vec::new();
    let mut differ = |message, what: &str, ours: &str, theirs: &str| {
        if ours != theirs {
            findings.push(
                Finding::new(&AREA, Status::Advisory, message)
                    .with("reading", reading)
                    .with("what", what)
                    .with("ours", ours)
                    .with("theirs", theirs),
            );
        }
    };
    if let (Some(our), Some(their)) = (&ours.fill, &theirs.fill) {
        let raceway = format!("{} {}", our.kind, our.trade_size);
        match (our.maximum, their.maximum) {
            (Some(our), Some(their)) => {
                let (our, their) = (our.value.to_string(), their.value.to_string());
                differ("finding-other-area-count", &raceway, &our, &their);
            }
            _ => {
                for (our, their) in our.room_left.iter().zip(&their.room_left) {
                    let what = our.name.as_deref().unwrap_or("×");
                    let (our, their) = (our.more.value.to_string(), their.more.value.to_string());
                    differ("finding-other-area-room", what, &our, &their);
                }
            }
        }
    }
    for (our, their) in ours.fits.iter().zip(&theirs.fits) {
        let name = |fit: &TradeSizeFit| fit.trade_size.map_or("–", |size| size.name());
        differ("finding-other-area-size", our.kind.name(), name(our), name(their));
    }
    findings
}
