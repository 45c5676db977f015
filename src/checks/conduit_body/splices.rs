//! Splices, taps and devices in a conduit body: only in one with a marked volume, and then as in an outlet box.

use super::outcome::SplicesInBody;
use super::request::ConduitBodyRequest;
use crate::checks::outlet_fill::{Bound, Contents, Fill, Loops, Unsaid};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Pointer, Relation};
use crate::quantity::Measure;
use crate::rulebook::conduit_body::{SHORT_RADIUS, SPLICES};
use crate::rulebook::outlet_fill::CLAMPS;
use crate::rulebook::pull::APPLIES;
use crate::rulebook::reading::LargeSpliceCount;

/// What splices, taps and devices of any size ask of the body: that it can have them, a marked volume and rigid support.
pub(super) fn asked_of_body(
    proof: &mut Derivation,
    request: &ConduitBodyRequest,
    findings: &mut Vec<Finding>,
) {
    let body = &request.body;
    let at = Pointer::to(&"/body");
    let from = proof.rulebook().pull.applies_from;
    if request.pulls.iter().any(|pull| pull.has_small(from)) {
        let short_radius = at.member(&"/short_radius");
        let finding = |status| Finding::new(&SHORT_RADIUS, status, "finding-short-radius-splices");
        findings.extend(match body.short_radius {
            Some(true) => {
                let step = proof.fact(&SHORT_RADIUS, true, short_radius);
                Some(finding(Status::Violated).at(short_radius).step(step))
            }
            Some(false) => {
                proof.does_not_apply(&SHORT_RADIUS, "not-short-radius", Some(short_radius));
                None
            }
            None => Some(finding(Status::NotDetermined).supply(short_radius)),
        });
    }
    let supported = at.member(&"/rigidly_supported");
    match body.rigidly_supported {
        Some(true) => {
            proof.fact(&SPLICES, true, supported);
        }
        Some(false) => {
            let step = proof.fact(&SPLICES, false, supported);
            let finding = Finding::new(&SPLICES, Status::Violated, "finding-body-not-supported");
            findings.push(finding.at(supported).step(step));
        }
        None => {
            let finding = Finding::new(&SPLICES, Status::NotDetermined, "finding-body-support-open");
            findings.push(finding.at(at).supply(supported));
        }
    }
    if body.marked_volume.is_none() {
        let unmarked = at.member(&"/unmarked");
        let finding = |status| Finding::new(&SPLICES, status, "finding-splices-without-volume").at(at);
        findings.push(if body.unmarked == Some(true) {
            let step = proof.fact(&SPLICES, true, unmarked);
            finding(Status::Violated).step(step)
        } else {
            finding(Status::NotDetermined).supply(at.member(&"/marked_volume")).supply(unmarked)
        });
    }
    if let Some(index) = request.pulls.iter().position(|pull| pull.spliced && pull.is_large(from)) {
        large(proof, Pointer::of(&"/pulls/#", index).member(&"/spliced"), findings);
    }
}

/// Splices of conductors that have no volume allowance.
fn large(proof: &mut Derivation, spliced: Pointer, findings: &mut Vec<Finding>) {
    let step = proof.fact(&SPLICES, true, spliced);
    if proof.reading::<LargeSpliceCount>() == LargeSpliceCount::NotCounted {
        let finding = Finding::new(&SPLICES, Status::Satisfied, "finding-large-splices-not-counted");
        findings.push(finding.step(step));
        return;
    }
    findings.push(Finding::new(&SPLICES, Status::NotDetermined, "finding-large-splices-without-allowance"));
}

/// Whether the count found conductors that have no allowance because of their size.
fn is_large(finding: &Finding) -> bool {
    std::ptr::eq(finding.rule, &APPLIES)
}

/// Counts what is spliced or connected, and compares it with the mark.
pub(super) fn check(
    proof: &mut Derivation,
    request: &ConduitBodyRequest,
    contents: &Contents,
    findings: &mut Vec<Finding>,
) -> SplicesInBody {
    let at = Pointer::to(&"/contents");
    let body = &request.body;
    let mut fill = Fill::count(proof, contents, None, Loops::default(), Bound::Least);
    // a body has no cable clamps
    let unsaid: Vec<Unsaid> =
        fill.unsaid.iter().copied().filter(|one| !std::ptr::eq(one.rule, &CLAMPS)).collect();
    if fill.findings.iter().any(is_large)
        && proof.reading::<LargeSpliceCount>() == LargeSpliceCount::NotCounted
    {
        fill.findings.retain(|finding| !is_large(finding));
        fill.complete = fill.findings.iter().all(|finding| finding.status != Status::NotDetermined);
    }
    fill.leave_open(unsaid);
    for mut finding in fill.findings.drain(..) {
        // what counts in a box counts here because a body with splices must satisfy it
        finding.rule = &SPLICES;
        findings.push(finding);
    }
    let mut splices = SplicesInBody {
        required: fill.required,
        available: None,
        margin: None,
        tally: fill.tally,
        not_counted: fill.not_counted,
    };
    let marked = Pointer::to(&"/body/marked_volume");
    let Some(volume) = body.marked_volume else { return splices };
    let available = proof.given(&SPLICES, volume.value(), Measure::Volume, marked);
    let (fits, step) = proof.compare(&SPLICES, splices.required, Relation::AtMost, available);
    splices.available = Some(available);
    splices.margin = Some(proof.difference(&SPLICES, available, splices.required));
    let (status, message) = match (fits, fill.complete) {
        (false, _) => (Status::Violated, "finding-body-volume-short"),
        (true, false) => (Status::NotDetermined, "finding-volume-open"),
        (true, true) => (Status::Satisfied, "finding-body-volume-enough"),
    };
    findings.push(
        Finding::new(&SPLICES, status, message)
            .with("required", splices.required)
            .with("available", available)
            .at(at)
            .step(step),
    );
    splices
}
