//! Outlet-box fill: is the volume there that the contents of a box require?
//!
//! What [`capacity`](self) adds up on one side (314.16(A)), [`contents`](self) counts on the other (314.16(B)); the
//! larger must be the first. A box that barriers divide is computed space by space.
//!
//! ```
//! use elbowroom::checks::{Check, Verdict, evaluate, outlet_fill::OutletFill};
//! let request = elbowroom::json::read(br#"{
//!     "enclosure": {"standard": "device-3x2x3-1/2"},
//!     "contents": {
//!         "cables": [{"kind": "NM-B", "size": "12 AWG", "conductors": 2, "grounding": "12 AWG", "count": 2}],
//!         "devices": [{"kind": "receptacle", "largest_conductor": "12 AWG"}],
//!         "clamps": [{"kind": "internal"}]
//!     }
//! }"#).unwrap();
//! let evaluation = evaluate::<OutletFill>(&request);
//! // four conductors 9.00, clamps 2.25, device 4.50, two grounding conductors 2.25: together 18.00 in³
//! assert_eq!(evaluation.outcome.spaces[0].required.value.to_string(), "18");
//! assert_eq!(evaluation.verdict, Some(Verdict::Complies));
//! ```

mod capacity;
mod contents;
mod faults;
mod outcome;
mod request;
mod room;
mod takeoff;

pub use outcome::{BoxOffer, Item, NotCounted, OutletFillOutcome, Room, SpaceFill, TallyLine};
pub use request::*;

use super::{Check, Evaluation, Faults, Finding, Judgement, Status, Subject, TakeoffFigures, Verdict};
use crate::derivation::{BoxesAsked, Derivation, Figure, Pointer, Relation};
use crate::quantity::{Decimal, Measure};
use crate::rulebook::digest::Reads;
use crate::rulebook::{Part, Rulebook, outlet_volume};
use crate::tables;
use capacity::Capacity;
use contents::Figures;
pub(in crate::checks) use contents::Fill;
pub(in crate::checks) use faults::of_contents as faults_of_contents;

/// The check of one outlet, device or junction box.
#[derive(Clone, Copy, Debug)]
pub struct OutletFill;

impl Check for OutletFill {
    const NAME: &'static str = "outlet_box_fill";
    const PATH: &'static str = "/v1/outlet-boxes/fill";
    type Request = OutletFillRequest;
    type Outcome = OutletFillOutcome;
    const SUBJECTS: &'static [Subject<OutletFillRequest>] =
        &[Subject { name: "outlet_fill", is_described: |_| true, scope: &[] }];

    fn reads() -> &'static Reads {
        static READS: Reads = Reads::new(
            &[Part::OutletVolume, Part::OutletFill, Part::FreeConductor, Part::Pull],
            &[tables::conductor_volume::TABLE, tables::standard_boxes::TABLE],
        );
        &READS
    }

    fn faults(request: &OutletFillRequest, faults: &mut Faults) {
        faults::find(request, faults);
    }

    fn judge(rulebook: &Rulebook, request: &OutletFillRequest) -> Judgement<OutletFillOutcome> {
        let mut proof = Derivation::new(rulebook, request.units);
        let mut findings = Vec::new();
        let capacity =
            request.enclosure.as_ref().map(|enclosure| Capacity::of(&mut proof, enclosure, &mut findings));
        let whole = [request.contents.as_ref().unwrap_or(&EMPTY)];
        let divided: Vec<&Contents> = request.spaces.iter().map(|space| &space.contents).collect();
        let contents: &[&Contents] = if divided.is_empty() { &whole } else { &divided };
        let mut spaces = Vec::with_capacity(contents.len());
        let mut offer = None;
        for (index, contents) in contents.iter().enumerate() {
            let space = request.spaces.get(index).map(|space| (index, space));
            let mut fill =
                Fill::count(&mut proof, contents, space.map(|(index, _)| index), request.opening.as_ref());
            if space.is_none() && fill.complete {
                offer = Some(offer_boxes(&mut proof, request, contents, &fill, capacity.as_ref()));
            }
            let available =
                capacity.as_ref().map(|capacity| capacity.share(&mut proof, &request.spaces, space));
            spaces.push(close(&mut proof, &mut fill, available, space.map(|(_, space)| space)));
            if findings.is_empty() {
                findings = fill.findings;
            } else {
                findings.append(&mut fill.findings);
            }
        }
        let outcome = OutletFillOutcome { spaces, boxes: offer };
        Judgement { outcome, findings, proof, cautions: Vec::new(), is_judged: request.enclosure.is_some() }
    }

    fn takeoff_figures(
        request: &OutletFillRequest,
        evaluation: &Evaluation<OutletFillOutcome>,
    ) -> TakeoffFigures {
        takeoff::of(request, evaluation)
    }
}

static EMPTY: Contents = Contents {
    conductors: Vec::new(),
    cables: Vec::new(),
    grounding: Vec::new(),
    canopy: None,
    clamps: Vec::new(),
    support_fittings: Vec::new(),
    devices: Vec::new(),
    terminal_blocks: Vec::new(),
    small_parts: Vec::new(),
};

/// Compares what a space has with what its contents require. `available` is `None` for a sizing question, and holds
/// `None` where no volume could be established.
fn close(
    proof: &mut Derivation,
    fill: &mut Fill,
    available: Option<Option<Figure>>,
    space: Option<&Space>,
) -> SpaceFill {
    let required = fill.required;
    let available_volume = available.flatten().map(|volume| fill.take_off_assemblies(proof, volume));
    let (mut margin, mut cure, mut percent_used, mut room_left) = (None, None, None, None);
    if let Some(volume) = available_volume {
        let (fits, step) = proof.compare(&outlet_volume::SCOPE, required, Relation::AtMost, volume);
        let left = proof.difference(&outlet_volume::SCOPE, volume, required);
        let (status, message) = match (fits, fill.complete) {
            (false, _) => (Status::Violated, "finding-volume-short"),
            (true, false) => (Status::NotDetermined, "finding-volume-open"),
            (true, true) => (Status::Satisfied, "finding-volume-enough"),
        };
        let mut finding = Finding::new(&outlet_volume::SCOPE, status, message)
            .with("required", required)
            .with("available", volume)
            .with("space", space.map_or("", |space| space.id.as_str()))
            .step(step);
        if !fits {
            let short = proof.difference(&outlet_volume::SCOPE, required, volume);
            finding = finding.with("short", short);
            cure = fill.complete.then_some(short);
        }
        fill.findings.push(finding);
        percent_used = proof.percent(&outlet_volume::SCOPE, required, volume);
        room_left = if fill.complete { Some(room::left(proof, fill, left)) } else { None };
        margin = Some(left);
    }
    SpaceFill {
        id: space.map(|space| space.id.as_str().to_owned()),
        verdict: available.map(|volume| match volume {
            Some(_) => Verdict::of_part(&fill.findings),
            None => Verdict::NotDetermined,
        }),
        required,
        available: available_volume,
        margin,
        section_that_would_cure: cure,
        percent_used,
        tally: std::mem::take(&mut fill.tally),
        not_counted: std::mem::take(&mut fill.not_counted),
        room_left,
    }
}

/// The standard boxes that hold the required volume, with the sections of the request fitted to them.
fn offer_boxes(
    proof: &mut Derivation,
    request: &OutletFillRequest,
    contents: &Contents,
    fill: &Fill,
    capacity: Option<&Capacity>,
) -> BoxOffer {
    let rule = &outlet_volume::OFFER;
    let gangs = gangs_needed(proof, request, contents);
    let added = capacity.and_then(|capacity| capacity.added);
    let added = added.unwrap_or_else(|| proof.nothing(rule, Measure::Volume));
    let book = proof.rulebook().clone();
    let square = proof.stated(&book.outlet_volume.square_box_gangs);
    let octagonal = proof.stated(&book.outlet_volume.octagonal_box_gangs);
    let needed = fill.with_assemblies(proof);
    let step = proof.select_boxes(rule, BoxesAsked { needed, added, gangs, square, octagonal });
    BoxOffer { gangs, fits: proof.selected().clone(), step }
}

/// The gangs that the devices need together, or those of the box if it was given with more.
fn gangs_needed(proof: &mut Derivation, request: &OutletFillRequest, contents: &Contents) -> Figure {
    let rule = &outlet_volume::OFFER;
    let mut needed = Figures::new();
    for (index, device) in contents.devices.iter().enumerate() {
        let item = Pointer::of(&"/contents/devices/#", index);
        let count = proof.count(rule, device.count.map(Many::get), item);
        needed.push(match device.gangs {
            None => count,
            Some(gangs) => {
                let gangs = proof.given(rule, gangs.get().into(), Measure::Number, item.member(&"/gangs"));
                proof.product(rule, count, gangs, None)
            }
        });
    }
    let by_devices = (!needed.is_empty()).then(|| proof.sum(rule, &needed));
    let given = request.enclosure.as_ref().and_then(|enclosure| enclosure.gangs).map(|gangs| {
        proof.given(rule, gangs.get().into(), Measure::Number, Pointer::to(&"/enclosure/gangs"))
    });
    match (by_devices, given) {
        (Some(devices), Some(given)) => proof.largest(rule, &[devices, given]).unwrap_or(given),
        (Some(one), None) | (None, Some(one)) => one,
        (None, None) => proof.given(rule, Decimal::ONE, Measure::Number, Pointer::ROOT),
    }
}
