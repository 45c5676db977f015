//! Splices, taps and devices in a conduit body: only in one with a marked volume, and then as in an outlet box.

use super::outcome::SplicesInBody;
use super::request::ConduitBodyRequest;
use crate::checks::outlet_fill::{Contents, Fill};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Pointer, Relation};
use crate::quantity::Measure;
use crate::rulebook::conduit_body::{SHORT_RADIUS, SPLICES};

/// Counts what is spliced or connected, and compares it with the mark.
pub(super) fn check(
    proof: &mut Derivation,
    request: &ConduitBodyRequest,
    contents: &Contents,
    findings: &mut Vec<Finding>,
) -> SplicesInBody {
    let at = Pointer::to(&"/contents");
    let body = &request.body;
    if body.short_radius {
        let step = proof.fact(&SHORT_RADIUS, true, Pointer::to(&"/body/short_radius"));
        findings.push(
            Finding::new(&SHORT_RADIUS, Status::Violated, "finding-short-radius-splices").at(at).step(step),
        );
    }
    match body.rigidly_supported {
        Some(true) => {}
        Some(false) => {
            let supported = Pointer::to(&"/body/rigidly_supported");
            let step = proof.fact(&SPLICES, false, supported);
            let finding = Finding::new(&SPLICES, Status::Violated, "finding-body-not-supported");
            findings.push(finding.at(supported).step(step));
        }
        None => {
            let finding = Finding::new(&SPLICES, Status::NotDetermined, "finding-body-support-open");
            findings.push(finding.at(at).supply(Pointer::to(&"/body/rigidly_supported")));
        }
    }
    let mut fill = Fill::count(proof, contents, None, None);
    findings.append(&mut fill.findings);
    let mut splices = SplicesInBody {
        required: fill.required,
        available: None,
        margin: None,
        tally: fill.tally,
        not_counted: fill.not_counted,
    };
    let marked = Pointer::to(&"/body/marked_volume");
    let Some(volume) = body.marked_volume else {
        let finding = Finding::new(&SPLICES, Status::NotDetermined, "finding-body-without-volume");
        findings.push(finding.with("required", splices.required).at(at).supply(marked));
        return splices;
    };
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
