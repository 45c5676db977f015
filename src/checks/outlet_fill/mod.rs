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
mod gangs;
mod measures;
mod outcome;
mod request;
mod room;
mod subjects;
mod takeoff;

pub use outcome::{BoxOffer, Item, NotCounted, OutletFillOutcome, Room, SpaceFill, TallyLine};
pub use request::*;

use super::{
    Check, Evaluation, Faults, Finding, Judgement, Retaking, Status, Subject, TakeoffFigures, Verdict,
};
use crate::derivation::{BoxesAsked, Derivation, Figure, Pointer, Relation, StepId};
use crate::quantity::{Decimal, Measure};
use crate::rulebook::digest::Reads;
use crate::rulebook::outlet_fill::{CLAMPS, GROUNDING};
use crate::rulebook::outlet_volume::BARRIER;
use crate::rulebook::{Part, Rulebook, outlet_volume};
use crate::tables;
use capacity::Capacity;
pub(crate) use contents::{Alike, Counting, Entering, Figures, GroundingTally, SizeAndAllowance};
pub(in crate::checks) use contents::{Bound, Fill, Loops, Unsaid};
pub(in crate::checks) use faults::of_contents as faults_of_contents;
use smallvec::SmallVec;

/// The check of one outlet, device or junction box.
#[derive(Clone, Copy, Debug)]
pub struct OutletFill;

impl Check for OutletFill {
    const NAME: &'static str = "outlet_box_fill";
    const PATH: &'static str = "/v1/outlet-boxes/fill";
    type Request = OutletFillRequest;
    type Outcome = OutletFillOutcome;
    const SUBJECTS: &'static [Subject<OutletFillRequest>] = &subjects::SUBJECTS;

    fn reads() -> &'static Reads {
        static READS: Reads = Reads::new(
            &[Part::OutletVolume, Part::OutletFill, Part::FreeConductor, Part::Pull, Part::Geometry],
            &[tables::conductor_volume::TABLE, tables::standard_boxes::TABLE],
        );
        &READS
    }

    fn faults(request: &OutletFillRequest, faults: &mut Faults) {
        faults::find(request, faults);
    }

    fn retake(outcome: &mut OutletFillOutcome, retaking: &Retaking<'_>) {
        for (index, space) in outcome.spaces.iter_mut().enumerate() {
            if let Some(verdict) = retaking.verdict_of_part(index) {
                space.verdict = Some(verdict);
                // what would cure a shortfall is not needed where there is none
                space.section_that_would_cure =
                    space.section_that_would_cure.filter(|_| verdict == Verdict::Violates);
            }
        }
    }

    fn judge(rulebook: &Rulebook, request: &OutletFillRequest) -> Judgement<OutletFillOutcome> {
        let mut proof = Derivation::new(rulebook, request.units);
        let mut findings = Vec::new();
        let whole = [request.contents.as_ref().unwrap_or(&UNSAID)];
        let divided: SmallVec<[&Contents; 4]> = request.spaces.iter().map(|space| &space.contents).collect();
        let contents: &[&Contents] = if divided.is_empty() { &whole } else { &divided };
        let enclosure = request.enclosure.as_ref();
        let mut capacity =
            enclosure.map(|enclosure| Capacity::of(&mut proof, enclosure, contents, &mut findings));
        if let (Some(enclosure), Some(capacity)) = (enclosure, &mut capacity) {
            if !gangs::of_barriers(&mut proof, request, enclosure, &mut findings) {
                capacity.leave_shares_open();
            }
            capacity.measured_shares(&mut proof, &request.spaces, &mut findings);
        }
        let may_be_deep =
            enclosure.is_some_and(|enclosure| measures::may_be_deep(rulebook, enclosure, request.units));
        let loops = Loops { opening: request.opening.as_ref(), may_be_deep };
        let mut spaces = Vec::with_capacity(contents.len());
        let mut offer = None;
        let mut needed_by_spaces = Figures::new();
        for (index, contents) in contents.iter().enumerate() {
            let space = request.spaces.get(index).map(|space| (index, space));
            let place = space.map(|(index, _)| index);
            let mut fill = Fill::count(&mut proof, contents, place, loops, Bound::Least);
            let most = (!fill.unsaid.is_empty())
                .then(|| Fill::count(&mut proof, contents, place, loops, Bound::Most));
            if contents.is_unsaid() {
                match enclosure {
                    Some(_) => fill.leave_open_all(place),
                    // nothing is described, and no box is offered for it
                    None => fill.complete = false,
                }
            } else if let (None, Some(most)) = (enclosure, &most) {
                say_range(&mut fill, most);
            }
            let needed = gangs::needed(&mut proof, contents, place);
            needed_by_spaces.extend(needed);
            if space.is_none() && fill.complete {
                let asked = most.as_ref().unwrap_or(&fill);
                offer = Some(offer_boxes(&mut proof, request, asked, needed, capacity.as_ref()));
            }
            let available =
                capacity.as_ref().map(|capacity| capacity.share(&mut proof, &request.spaces, space));
            if let (Some(enclosure), Some(needed)) = (enclosure, needed) {
                fill.findings.extend(gangs::judge(&mut proof, enclosure, needed, space));
            }
            let roomier = capacity
                .as_ref()
                .and_then(|capacity| capacity.roomier_share(&mut proof, &request.spaces, space));
            spaces.push(close(&mut proof, &mut fill, most, (available, roomier), space));
            fill.findings.iter_mut().for_each(|finding| finding.part = Some(index));
            if findings.is_empty() {
                findings = fill.findings;
            } else {
                findings.append(&mut fill.findings);
            }
        }
        findings.extend(enclosure.and_then(|enclosure| {
            gangs::judge_together(&mut proof, enclosure, &needed_by_spaces, &request.spaces)
        }));
        let outcome = OutletFillOutcome { spaces, boxes: offer };
        // what says nothing of the contents either asks for no size
        let is_judged = enclosure.is_some() || contents.iter().all(|contents| contents.is_unsaid());
        Judgement { outcome, findings, proof, cautions: Vec::new(), is_judged }
    }

    fn takeoff_figures(
        request: &OutletFillRequest,
        evaluation: &Evaluation<OutletFillOutcome>,
    ) -> TakeoffFigures {
        takeoff::of(request, evaluation)
    }
}

/// What a barrier of unsaid material is tried as.
const METAL_OR_NOT: &[&str; 2] = &["metal", "nonmetallic"];

static UNSAID: Contents = Contents::UNSAID;

/// A size is asked for, and something is not said: the sizes of devices must be; for the rest the most that it can take counts.
fn say_range(fill: &mut Fill, most: &Fill) {
    let is_bounded =
        |unsaid: &Unsaid| [&CLAMPS, &GROUNDING].iter().any(|rule| std::ptr::eq(*rule, unsaid.rule));
    let sizes: Vec<Unsaid> = fill.unsaid.iter().copied().filter(|unsaid| !is_bounded(unsaid)).collect();
    if sizes.is_empty() {
        let mut finding = Finding::new(&outlet_volume::SCOPE, Status::Advisory, "finding-required-range")
            .with("least", fill.required)
            .with("most", most.required);
        finding.at = fill.unsaid.iter().map(|unsaid| unsaid.at).collect();
        fill.findings.push(finding);
    }
    fill.leave_open(sizes);
}

/// Compares what a space has with what its contents require. `available` is `None` for a sizing question, and holds
/// `None` where no volume could be established. `most` is the count of the most that the contents can come to, where something
/// is not said. `roomier` is what the space has where a barrier of unsaid material takes the least.
fn close(
    proof: &mut Derivation,
    fill: &mut Fill,
    mut most: Option<Fill>,
    (available, roomier): (Option<Option<Figure>>, Option<(Figure, Pointer)>),
    space: Option<(usize, &Space)>,
) -> SpaceFill {
    let scope = &outlet_volume::SCOPE;
    let required = fill.required;
    let name = space.map_or("", |(_, space)| space.id.as_str());
    let available_volume = available.flatten().map(|volume| fill.take_off_assemblies(proof, volume));
    let (mut margin, mut cure, mut percent_used, mut room_left) = (None, None, None, None);
    if let Some(volume) = available_volume {
        let (mut fits, mut least_step) = proof.compare(scope, required, Relation::AtMost, volume);
        if let Some((roomier, at)) = roomier {
            let roomier = fill.take_off_assemblies(proof, roomier);
            let (_, step) = proof.compare(scope, required, Relation::AtMost, roomier);
            match proof.whatever(&BARRIER, at, METAL_OR_NOT, &[step, least_step]) {
                Some((_, step)) => least_step = step,
                None => {
                    fits = true;
                    let message = "finding-barrier-material-unsaid";
                    fill.leave_open([Unsaid { rule: &BARRIER, at, values: METAL_OR_NOT, message }]);
                }
            }
        }
        let step = match &most {
            Some(most) => whatever_is_unsaid(proof, fill, most, least_step, volume),
            None => least_step,
        };
        let left = proof.difference(scope, volume, required);
        let (status, message) = match (fits, fill.complete) {
            (false, _) => (Status::Violated, "finding-volume-short"),
            (true, false) => (Status::NotDetermined, "finding-volume-open"),
            (true, true) if most.is_some() => (Status::Satisfied, "finding-volume-enough-either-way"),
            (true, true) => (Status::Satisfied, "finding-volume-enough"),
        };
        let mut finding = Finding::new(scope, status, message)
            .with("required", required)
            .with("most", most.as_ref().map_or(required, |most| most.required))
            .with("available", volume)
            .with("space", name)
            .step(step);
        if !fits {
            let short = proof.difference(scope, required, volume);
            finding = finding.with("short", short);
            cure = (fill.complete && most.is_none()).then_some(short);
        }
        fill.findings.push(finding);
        percent_used = proof.percent(scope, required, volume);
        if fill.complete {
            room_left = Some(match &mut most {
                Some(most) => {
                    let left = proof.difference(scope, volume, most.required);
                    room::left(proof, most, left)
                }
                None => room::left(proof, fill, left),
            });
        }
        margin = Some(left);
    } else if available.is_some() {
        let finding = Finding::new(scope, Status::NotDetermined, "finding-volume-unknown");
        fill.findings.push(finding.with("required", required).with("space", name));
    }
    SpaceFill {
        id: space.map(|(_, space)| space.id.as_str().to_owned()),
        verdict: available.map(|volume| match volume {
            Some(_) => Verdict::of_part(&fill.findings),
            None => Verdict::NotDetermined,
        }),
        required,
        required_at_most: most.map(|most| most.required),
        available: available_volume,
        margin,
        section_that_would_cure: cure,
        percent_used,
        tally: std::mem::take(&mut fill.tally),
        not_counted: std::mem::take(&mut fill.not_counted),
        room_left,
    }
}

/// Decides what is not said where the least and the most come to the same, and asks for it where they do not. The step that
/// the comparison comes to.
fn whatever_is_unsaid(
    proof: &mut Derivation,
    fill: &mut Fill,
    most: &Fill,
    least: StepId,
    volume: Figure,
) -> StepId {
    let (_, greatest) = proof.compare(&outlet_volume::SCOPE, most.required, Relation::AtMost, volume);
    let unsaid = std::mem::take(&mut fill.unsaid);
    let mut decided = least;
    for one in &unsaid {
        match proof.whatever(one.rule, one.at, one.values, &[least, greatest]) {
            Some((_, step)) => decided = step,
            None => fill.leave_open([*one]),
        }
    }
    decided
}

/// The standard boxes that hold the required volume, with the sections of the request fitted to them.
fn offer_boxes(
    proof: &mut Derivation,
    request: &OutletFillRequest,
    fill: &Fill,
    needed: Option<Figure>,
    capacity: Option<&Capacity>,
) -> BoxOffer {
    let rule = &outlet_volume::OFFER;
    let gangs = gangs_asked(proof, request, needed);
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
fn gangs_asked(proof: &mut Derivation, request: &OutletFillRequest, needed: Option<Figure>) -> Figure {
    let rule = &outlet_volume::OFFER;
    let given = request.enclosure.as_ref().and_then(|enclosure| enclosure.gangs).map(|gangs| {
        proof.given(rule, gangs.get().into(), Measure::Number, Pointer::to(&"/enclosure/gangs"))
    });
    match (needed, given) {
        (Some(devices), Some(given)) => proof.largest(rule, &[devices, given]).unwrap_or(given),
        (Some(one), None) | (None, Some(one)) => one,
        (None, None) => proof.given(rule, Decimal::ONE, Measure::Number, Pointer::ROOT),
    }
}
