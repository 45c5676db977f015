//! What cannot be built: raceways that the edition does not permit, or that their conductors cannot enter.

use super::request::{ConduitBodyRequest, Hub};
use super::small::{key, without_insulation};
use crate::checks::raceway_fill::permitted;
use crate::checks::raceway_fill::sizing::{Load, Sizer};
use crate::checks::{Finding, FindingArg, Status};
use crate::derivation::{Derivation, Figure, Pointer, Relation};
use crate::rulebook::geometry::RACEWAYS;

/// Finds what cannot be, whatever the conductors ask of the body.
pub(super) fn check(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    request: &ConduitBodyRequest,
    findings: &mut Vec<Finding>,
) {
    for (index, hub) in request.hubs.iter().enumerate() {
        let at = Pointer::of(&"/hubs/#", index);
        let size_at = at.member(&"/raceway/trade_size");
        findings.extend(permitted::refuse(proof, hub.raceway.kind, hub.raceway.trade_size, size_at));
        findings.extend(overfull(proof, sizer, request, hub).map(|finding| finding.at(at)));
    }
}

/// A raceway whose conductors are together larger than it is inside: whatever their insulation is where it is not said, or by the
/// thickest that there is.
fn overfull(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    request: &ConduitBodyRequest,
    hub: &Hub,
) -> Option<Finding> {
    // worked out apart first, so that the proof of a body that can be built has none of it
    let is_over = |thickest: bool| {
        let (mut apart, mut sizer) = (proof.clone(), Sizer::default());
        let found = load_and_inside(&mut apart, &mut sizer, request, hub, thickest);
        found.is_some_and(|(load, inside)| load.total.value > inside.value)
    };
    let (status, message) = match (is_over(false), is_over(true)) {
        (true, _) => (Status::Violated, "finding-opening-smaller-than-conductors"),
        (false, true) => (Status::NotDetermined, "finding-opening-smaller-by-insulation"),
        (false, false) => return None,
    };
    let is_open = status == Status::NotDetermined;
    let (load, inside) = load_and_inside(proof, sizer, request, hub, is_open)?;
    let (_, step) = proof.compare(&RACEWAYS, load.total, Relation::AtMost, inside);
    let finding = Finding::new(&RACEWAYS, status, message)
        .with("opening", FindingArg::Words(vec![key(hub.place)]))
        .with("area", load.total)
        .with("inside", inside)
        .step(step);
    Some(if is_open {
        without_insulation(request, hub.place).fold(finding, Finding::supply)
    } else {
        finding
    })
}

fn load_and_inside(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    request: &ConduitBodyRequest,
    hub: &Hub,
    thickest: bool,
) -> Option<(Load, Figure)> {
    let inside = sizer.inside_area(proof, hub.raceway.kind, hub.raceway.trade_size)?;
    let mut occupants = Vec::new();
    for (index, pull) in request.pulls.iter().enumerate() {
        // of a pull that splits, the first opening holds all of it
        let is_whole = pull.between.first() == Some(&hub.place) || pull.between.len() == 2;
        if !is_whole || !pull.between.contains(&hub.place) {
            continue;
        }
        for (number, group) in pull.conductors.iter().enumerate() {
            let at = Pointer::of(&"/conductors/#", number).under(&"/pulls/#", index);
            occupants.push(group.at_bound(proof, at, thickest)?);
        }
    }
    Some((Load::of(proof, &occupants)?, inside))
}
