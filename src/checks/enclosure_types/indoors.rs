//! An enclosure of type 4X that is marked for use indoors only does not stand outdoors.

use super::EnclosureTypesRequest;
use crate::checks::inspection::{Inspection, Sentences};
use crate::checks::{Finding, Status};
use crate::derivation::Pointer;
use crate::rulebook::Rulebook;
use crate::rulebook::enclosure_type::{INDOOR_ONLY, SELECTION};
use crate::tables::enclosure_types::{EnclosureLocation as Location, EnclosureType};

pub(super) const INDOOR_ONLY_AT: Pointer = Pointer::to(&"/marked_indoor_only");

/// Judges the mark, whichever type serves: one enclosure has it or has it not.
pub(super) fn judge(request: &EnclosureTypesRequest, rulebook: &Rulebook, inspection: &mut Inspection) {
    if may_be_for_indoors(request) && INDOOR_ONLY.citation(rulebook.edition).is_none() {
        // an edition without the mark does not say what it means
        let found = match request.marked_indoor_only {
            Some(true) => Some("finding-indoor-only-not-in-edition"),
            None => Some("finding-indoor-only-open"),
            Some(false) => None,
        };
        let finding = found.map(|message| Finding::new(&SELECTION, Status::NotDetermined, message));
        let finding = finding.map(|finding| match request.marked_indoor_only {
            Some(marked) => finding.step(inspection.proof.fact(&SELECTION, marked, INDOOR_ONLY_AT)),
            None => finding.supply(INDOOR_ONLY_AT),
        });
        inspection.findings.extend(finding.map(|finding| finding.at(INDOOR_ONLY_AT)));
    } else if may_be_for_indoors(request) {
        let sentences = Sentences {
            met: "finding-not-indoor-only",
            broken: "finding-indoor-only",
            open: "finding-indoor-only-open",
        };
        let marked = request.marked_indoor_only;
        inspection.expect(&INDOOR_ONLY, false, marked, INDOOR_ONLY_AT, sentences);
    }
}

/// Whether an enclosure may be marked for use indoors only, whatever other types it is marked with, and stands outdoors.
fn may_be_for_indoors(request: &EnclosureTypesRequest) -> bool {
    request.location == Location::Outdoor && has_4x(request)
}

/// Whether one of the marks of the enclosure is 4X.
pub(super) fn has_4x(request: &EnclosureTypesRequest) -> bool {
    request.also_marked.iter().chain(&request.enclosure_type).any(|mark| *mark == EnclosureType::Type4X)
}
