//! Devices stand in the gangs of a box: whether it has as many as they need, and whether its barriers make its spaces.

use super::contents::Figures;
use super::request::{Contents, Enclosure, Many, OutletFillRequest, Space};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer, Relation};
use crate::quantity::{Decimal, Measure};
use crate::rulebook::geometry::{BARRIERS, GANGS};
use crate::rulebook::outlet_volume::BARRIER;
use crate::tables::standard_boxes::Shape;

/// The gangs that a box is said to have, and where: those of a box counted by the gang, or of the ring on any other.
pub(super) fn stated(enclosure: &Enclosure) -> Option<(u32, Pointer)> {
    let of_ring = enclosure.sections.iter().enumerate().filter_map(|(index, section)| {
        let place = Pointer::of(&"/enclosure/sections/#", index).member(&"/gangs");
        Some((section.gangs?.get(), place))
    });
    let ring = of_ring.min_by_key(|(gangs, _)| *gangs);
    let of_box = enclosure.gangs.map(|gangs| (gangs.get(), Pointer::to(&"/enclosure/gangs")));
    match enclosure.standard.map(|standard| standard.shape()) {
        Some(Shape::Square) => ring,
        Some(Shape::Octagonal) => ring.or(Some((1, Pointer::to(&"/enclosure/standard")))),
        Some(_) => of_box.or(Some((1, Pointer::to(&"/enclosure/standard")))),
        None => of_box.or(ring),
    }
}

/// Where the gangs of a box that does not say them would be said.
fn unsaid_at(enclosure: &Enclosure) -> Pointer {
    match enclosure.standard {
        Some(_) => Pointer::to(&"/enclosure/sections"),
        None => Pointer::to(&"/enclosure/gangs"),
    }
}

/// The gangs that the devices of a box, or of one of its spaces, need together; `None` without devices.
pub(super) fn needed(proof: &mut Derivation, contents: &Contents, space: Option<usize>) -> Option<Figure> {
    let mut needed = Figures::new();
    for (index, device) in contents.devices.iter().enumerate() {
        let item = Pointer::of(&"/contents/devices/#", index);
        let item = space.map_or(item, |space| item.under(&"/spaces/#", space));
        let count = proof.count(&GANGS, device.count.map(Many::get), item);
        needed.push(match device.gangs {
            None => count,
            Some(gangs) => {
                let gangs = proof.given(&GANGS, gangs.get().into(), Measure::Number, item.member(&"/gangs"));
                proof.product(&GANGS, count, gangs, None)
            }
        });
    }
    (!needed.is_empty()).then(|| proof.sum(&GANGS, &needed))
}

/// Holds the gangs that devices need against those that the box, or the space, has.
pub(super) fn judge(
    proof: &mut Derivation,
    enclosure: &Enclosure,
    needed: Figure,
    space: Option<(usize, &Space)>,
) -> Option<Finding> {
    let of_space = space.and_then(|(index, space)| {
        Some((space.gangs?.get(), Pointer::of(&"/spaces/#", index).member(&"/gangs")))
    });
    // any box that takes a device has a gang for it
    if needed.value <= Decimal::ONE {
        return None;
    }
    let Some((gangs, place)) = of_space.or_else(|| stated(enclosure)) else {
        let finding = Finding::new(&GANGS, Status::NotDetermined, "finding-gangs-unsaid");
        return Some(finding.with("needed", needed).supply(unsaid_at(enclosure)));
    };
    let gangs = proof.given(&GANGS, gangs.into(), Measure::Number, place);
    let (fits, step) = proof.compare(&GANGS, needed, Relation::AtMost, gangs);
    let finding = Finding::new(&GANGS, Status::Violated, "finding-more-yokes-than-gangs");
    (!fits).then(|| finding.with("needed", needed).with("gangs", gangs).at(place).step(step))
}

/// Holds the gangs that the devices of all spaces need together against those of the box, where the spaces have no gangs of their own.
pub(super) fn judge_together(
    proof: &mut Derivation,
    enclosure: &Enclosure,
    needed: &[Figure],
    spaces: &[Space],
) -> Option<Finding> {
    if needed.len() < 2 || spaces.iter().any(|space| space.gangs.is_some()) {
        return None;
    }
    let together = proof.sum(&GANGS, needed);
    judge(proof, enclosure, together, None)
}

/// Spaces side by side need one barrier fewer than there are of them; and the shares of the spaces are the whole box. Whether
/// those by gangs are known to be.
pub(super) fn of_barriers(
    proof: &mut Derivation,
    request: &OutletFillRequest,
    enclosure: &Enclosure,
    findings: &mut Vec<Finding>,
) -> bool {
    if enclosure.barriers.is_empty() {
        return true;
    }
    let counts: Figures = enclosure
        .barriers
        .iter()
        .enumerate()
        .map(|(index, barrier)| {
            let item = Pointer::of(&"/enclosure/barriers/#", index);
            proof.count(&BARRIERS, barrier.count.map(Many::get), item)
        })
        .collect();
    let barriers = proof.sum(&BARRIERS, &counts);
    let place = Pointer::to(&"/spaces");
    let each: Figures = (0..request.spaces.len())
        .map(|index| proof.count(&BARRIERS, None, Pointer::of(&"/spaces/#", index)))
        .collect();
    let spaces = proof.sum(&BARRIERS, &each);
    let one = proof.given(&BARRIERS, Decimal::ONE, Measure::Number, Pointer::ROOT);
    let asked = proof.difference(&BARRIERS, spaces, one);
    let (enough, step) = proof.compare(&BARRIERS, barriers, Relation::AtLeast, asked);
    let (no_more, _) = proof.compare(&BARRIERS, barriers, Relation::AtMost, asked);
    let found = match (enough, no_more) {
        (false, _) if can_make_by_crossing(proof, barriers, spaces, one) => {
            Some((Status::NotDetermined, "finding-barriers-may-cross"))
        }
        (false, _) => Some((Status::Violated, "finding-fewer-barriers-than-spaces")),
        (true, false) => Some((Status::NotDetermined, "finding-more-barriers-than-spaces")),
        (true, true) => None,
    };
    findings.extend(found.map(|(status, message)| {
        let finding =
            Finding::new(&BARRIERS, status, message).with("barriers", barriers).with("spaces", spaces);
        let finding = finding.at(Pointer::to(&"/enclosure/barriers")).step(step);
        if status == Status::NotDetermined { finding.supply(place) } else { finding }
    }));
    let shared_by_gangs = request.spaces.iter().all(|space| space.gangs.is_some());
    match stated(enclosure).filter(|_| shared_by_gangs) {
        Some((gangs, at)) => {
            proof.given(&BARRIER, gangs.into(), Measure::Number, at);
        }
        None if shared_by_gangs => {
            let finding = Finding::new(&BARRIER, Status::NotDetermined, "finding-shares-of-an-unsaid-whole");
            findings.push(finding.at(place).supply(unsaid_at(enclosure)));
            return false;
        }
        None => {}
    }
    true
}

/// Whether barriers make so many spaces where they cross: each then crosses all that were there before it.
fn can_make_by_crossing(proof: &mut Derivation, barriers: Figure, spaces: Figure, one: Figure) -> bool {
    let square = proof.product(&BARRIERS, barriers, barriers, None);
    let twice = proof.sum(&BARRIERS, &[square, barriers, one, one]);
    let two = proof.sum(&BARRIERS, &[one, one]);
    let most = proof.quotient(&BARRIERS, twice, two);
    most.is_some_and(|most| proof.compare(&BARRIERS, spaces, Relation::AtMost, most).0)
}
