//! Systems over 1000 V: what Part IV of Article 314 asks, Part III in 2023, counted in diameters of cables.

use super::entries;
use super::request::{CableCovering, CableOver1000Volts, Entry};
use crate::checks::pulls::distances::{MinDistance, of_pairs};
use crate::checks::pulls::entry::ResolvedEntry;
use crate::checks::pulls::lengths::{OppositeBack, is_removable};
use crate::checks::pulls::{Axis, AxisRequirement, Cover, LengthRequirement, Resolved, Wall};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer};
use crate::quantity::Measure;
use crate::rulebook::over_1000_volts::{
    ANGLE, BENDING_RADIUS, CONSTRUCTION, CablesAdded, ENTRY_EXIT, Multiple, REMOVABLE_COVER, REMOVABLE_SIDE,
    SCOPE, STRAIGHT,
};
use crate::rulebook::pull::{PLACEMENT, TRADE_SIZE};
use crate::rulebook::reading::{CableDiameter, HingedCover};
use crate::rulebook::{Choice, Rule, Strategy};
use crate::tables::trade_sizes;

/// Cables of one entry that are alike.
#[derive(Clone, Copy)]
struct Cable {
    /// The diameter that counts, under the reading in force.
    diameter: Figure,
    /// The diameter over the sheath.
    overall: Figure,
    /// The diameter of a single conductor of a cable of several.
    conductor: Option<Figure>,
    shielded: bool,
    count: Option<Figure>,
}

/// The cables of each entry of a section.
pub(super) struct Cables(Vec<Vec<Cable>>);

/// Resolves the entries of a section.
pub(super) fn resolve<'a>(
    proof: &mut Derivation,
    entries: impl Iterator<Item = (usize, &'a Entry)>,
) -> (Vec<ResolvedEntry<'a>>, Cables) {
    let (mut resolved, mut cables) = (Vec::new(), Vec::new());
    for (index, entry) in entries {
        let at = Pointer::of(&"/entries/#", index);
        let of_entry = |cable| Pointer::of(&"/cables_over_1000_volts/#", cable).under(&"/entries/#", index);
        let own: Vec<Cable> = entry
            .cables_over_1000_volts
            .iter()
            .enumerate()
            .map(|(number, cable)| read(proof, cable, of_entry(number)))
            .collect();
        let diameter = edge(proof, entry, at, &own);
        resolved.push(entries::of_size(entry, at, (None, diameter)));
        cables.push(own);
    }
    (resolved, Cables(cables))
}

fn read(proof: &mut Derivation, cable: &CableOver1000Volts, at: Pointer) -> Cable {
    let outside = cable.outside_diameter.value();
    let overall = proof.given(&SCOPE, outside, Measure::Length, at.member(&"/outside_diameter"));
    let conductor = cable.conductor_diameter.map(|diameter| {
        proof.given(&SCOPE, diameter.value(), Measure::Length, at.member(&"/conductor_diameter"))
    });
    let diameter = match conductor {
        Some(conductor) if proof.reading::<CableDiameter>() == CableDiameter::SingleConductor => conductor,
        _ => overall,
    };
    let count = cable.count.map(|count| proof.count(&SCOPE, Some(count.get()), at));
    Cable { diameter, overall, conductor, shielded: cable.covering != CableCovering::Nonshielded, count }
}

/// The diameter that the edge of an entry is measured by: of its raceway, or of its largest cable.
fn edge(proof: &mut Derivation, entry: &Entry, at: Pointer, cables: &[Cable]) -> Option<Figure> {
    if let Some(raceway) = &entry.raceway {
        if let Some(outside) = raceway.outside_diameter {
            let at = at.member(&"/raceway/outside_diameter");
            return Some(proof.given(&PLACEMENT, outside.value(), Measure::Length, at));
        }
        let cell = trade_sizes::of(raceway.trade_size, proof.units())?;
        return Some(proof.lookup(&TRADE_SIZE, cell, Some(at.member(&"/raceway/trade_size"))));
    }
    let diameters: Vec<Figure> = cables.iter().map(|cable| cable.overall).collect();
    proof.largest(&PLACEMENT, &diameters)
}

/// Every requirement, in the order of walls.
pub(super) fn required(
    proof: &mut Derivation,
    resolved: &Resolved<'_>,
    cables: &Cables,
    cover: Option<Cover>,
    findings: &mut Vec<Finding>,
) -> Vec<AxisRequirement> {
    let mut requirements = Vec::new();
    for axis in [Axis::Width, Axis::Height] {
        let pulled = resolved.ends(|pull| pull.straight, |entry| entry.wall.across() == axis);
        let multiple = proof.rulebook().over_1000_volts.straight.clone();
        if let Some(length) = largest_multiple(proof, &STRAIGHT, &multiple, &cables.of(&pulled), false) {
            requirements.push((axis, resolved.requirement(&STRAIGHT, (None, None), length, &pulled)));
        }
    }
    for wall in Wall::ALL {
        if let Some(requirement) = angle(proof, resolved, cables, wall, cover) {
            requirements.push((wall.across(), requirement));
        }
    }
    construction(proof, cover, findings);
    requirements
}

/// The angle rule for a wall: unlike up to 1000 V, all of the wall and not each row is added.
fn angle(
    proof: &mut Derivation,
    resolved: &Resolved<'_>,
    cables: &Cables,
    wall: Wall,
    cover: Option<Cover>,
) -> Option<LengthRequirement> {
    let on_wall = resolved.on(wall);
    let angled = resolved.pulls.iter().filter(|pull| pull.angle);
    let turning: Vec<usize> = angled.flat_map(|pull| pull.ends).filter(|end| on_wall.contains(end)).collect();
    if turning.is_empty() {
        return None;
    }
    let counted = (proof.rulebook().over_1000_volts.angle_adds.apply)(resolved, on_wall, &turning);
    let multiple = proof.rulebook().over_1000_volts.angle.clone();
    let mut length = largest_multiple(proof, &ANGLE, &multiple, &cables.of(&counted), true)?;
    let mut rule = &ANGLE;
    let by_angle = length;
    let removable =
        if wall == Wall::Back { is_removable(proof, OppositeBack::Cover(cover)) } else { Some(false) };
    if removable != Some(false) {
        let radius = bending_radius(proof, &cables.of(&turning))?;
        length = proof.smallest(&REMOVABLE_COVER, &[length, radius]).unwrap_or(radius);
        rule = &REMOVABLE_COVER;
    }
    if removable == Some(false) && wall == Wall::Back {
        let at = Pointer::to(&"/cover");
        proof.does_not_apply(&REMOVABLE_COVER, "cover-not-removable", Some(at));
    }
    let mut requirement = resolved.requirement(rule, (Some(wall), None), length, &counted);
    if removable.is_none() && by_angle.value > length.value {
        requirement.at_most = Some((by_angle, vec![Pointer::to(&"/cover")]));
    }
    Some(requirement)
}

impl Choice for CablesAdded {
    /// The positions of the entries that count, of those of a wall with these turning.
    type Apply = for<'a> fn(&Resolved<'a>, Vec<usize>, &[usize]) -> Vec<usize>;
    const LAWFUL: Strategy<Self> = Strategy::<Self>::new("of-wall", |_, on_wall, _| on_wall);
}

/// A multiple of the diameter of the largest cable, of those shielded or lead-covered and of the others, whichever comes
/// to more; with the diameters of all other cables added for angle pulls.
fn largest_multiple(
    proof: &mut Derivation,
    rule: &'static Rule,
    multiple: &Multiple,
    cables: &[Cable],
    with_others: bool,
) -> Option<Figure> {
    let mut lengths = Vec::new();
    for (shielded, figure) in [(true, &multiple.shielded), (false, &multiple.nonshielded)] {
        let of_kind = || cables.iter().enumerate().filter(|(_, cable)| cable.shielded == shielded);
        let diameters: Vec<Figure> = of_kind().map(|(_, cable)| cable.diameter).collect();
        let Some(largest) = proof.largest(rule, &diameters) else { continue };
        let times = proof.stated(figure);
        let length = proof.product(rule, times, largest, None);
        let chosen =
            of_kind().find(|(_, cable)| cable.diameter.value == largest.value).map(|(number, _)| number);
        let others = if with_others { others(proof, rule, cables, chosen) } else { Vec::new() };
        lengths.push(if others.is_empty() {
            length
        } else {
            let others = proof.sum(rule, &others);
            proof.sum(rule, &[length, others])
        });
    }
    proof.largest(rule, &lengths)
}

/// The diameters of all cables but one of the chosen ones.
fn others(
    proof: &mut Derivation,
    rule: &'static Rule,
    cables: &[Cable],
    chosen: Option<usize>,
) -> Vec<Figure> {
    let mut others = Vec::new();
    for (number, cable) in cables.iter().enumerate() {
        let all = cable.count.map(|count| proof.product(rule, count, cable.diameter, None));
        match (all, chosen == Some(number)) {
            (Some(all), true) => {
                let rest = proof.difference(rule, all, cable.diameter);
                if rest.value > crate::quantity::Decimal::ZERO {
                    others.push(rest);
                }
            }
            (None, true) => {}
            (Some(all), false) => others.push(all),
            (None, false) => others.push(cable.diameter),
        }
    }
    others
}

/// The greatest of the least bending radii of cables.
fn bending_radius(proof: &mut Derivation, cables: &[Cable]) -> Option<Figure> {
    let book = proof.rulebook().over_1000_volts.clone();
    let mut radii = Vec::new();
    for cable in cables {
        let times = |proof: &mut Derivation, figure, diameter| {
            let times = proof.stated(figure);
            proof.product(&BENDING_RADIUS, times, diameter, None)
        };
        match (cable.shielded, cable.conductor) {
            (true, Some(conductor)) => {
                radii.push(times(proof, &book.bending_radius.shielded, conductor));
                radii.push(times(proof, &book.bending_radius_overall, cable.overall));
            }
            (true, None) => radii.push(times(proof, &book.bending_radius.shielded, cable.overall)),
            (false, _) => radii.push(times(proof, &book.bending_radius.nonshielded, cable.overall)),
        }
    }
    proof.largest(&BENDING_RADIUS, &radii)
}

/// How far apart a cable's entry and exit must be, once for each pair.
pub(super) fn distances(
    proof: &mut Derivation,
    resolved: &Resolved<'_>,
    cables: &Cables,
) -> Vec<MinDistance> {
    let multiple = proof.rulebook().over_1000_volts.entry_exit.clone();
    of_pairs(resolved, &ENTRY_EXIT, |_, ends| {
        largest_multiple(proof, &ENTRY_EXIT, &multiple, &cables.common(ends), false)
    })
}

impl Cables {
    fn of(&self, positions: &[usize]) -> Vec<Cable> {
        positions.iter().filter_map(|position| self.0.get(*position)).flatten().copied().collect()
    }

    /// The cables that both entries have; where none is alike, those of both.
    fn common(&self, [first, other]: [usize; 2]) -> Vec<Cable> {
        let (first, other) = (self.of(&[first]), self.of(&[other]));
        let alike = |cable: &&Cable| {
            other
                .iter()
                .any(|there| there.overall.value == cable.overall.value && there.shielded == cable.shielded)
        };
        let common: Vec<Cable> = first.iter().filter(alike).copied().collect();
        if common.is_empty() { first.into_iter().chain(other).collect() } else { common }
    }
}

fn construction(proof: &mut Derivation, cover: Option<Cover>, findings: &mut Vec<Finding>) {
    let at = Pointer::to(&"/cover");
    let finding = |status, message| Finding::new(&REMOVABLE_SIDE, status, message);
    findings.push(match cover {
        Some(Cover::Removable) => finding(Status::Satisfied, "finding-removable-side").at(at),
        Some(Cover::Hinged) if proof.reading::<HingedCover>() == HingedCover::Removable => {
            finding(Status::Satisfied, "finding-removable-side").at(at)
        }
        Some(Cover::Fixed) => finding(Status::Violated, "finding-no-removable-side").at(at),
        Some(Cover::Hinged) | None => {
            finding(Status::NotDetermined, "finding-removable-side-open").supply(at)
        }
    });
    if let Some(cover) = cover {
        let says = match cover {
            Cover::Removable => "removable",
            Cover::Hinged => "hinged",
            Cover::Fixed => "fixed",
        };
        proof.word(&REMOVABLE_SIDE, says, at);
    }
    findings.push(Finding::new(&CONSTRUCTION, Status::Advisory, "finding-high-voltage-construction"));
    proof.does_not_apply(&crate::rulebook::pull::APPLIES, "over-1000-volts", None);
}
