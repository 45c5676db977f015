//! The volume side: the box, what is fitted to it, and what barriers take (314.16(A)).

use super::contents::Figures;
use super::request::{
    Barrier, ClampKind, Contents, Enclosure, InsideDimensions, Many, Material, Section, Space,
};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer, Relation};
use crate::quantity::Measure;
use crate::rulebook::geometry::BARRIERS;
use crate::rulebook::outlet_fill::CLAMP_ASSEMBLY;
use crate::rulebook::outlet_volume::{ASSEMBLY, BARRIER, MARKED, STANDARD, Sharing};
use crate::rulebook::reading::UnmarkedLargeBox;
use crate::rulebook::{Choice, Strategy};

/// The volume of an enclosure.
pub(super) struct Capacity {
    /// What sections add; `None` when there are none that add anything.
    pub added: Option<Figure>,
    /// The box with all that is fitted to it, before barriers take anything.
    assembled: Option<Figure>,
    /// All of it, less what barriers take; `None` when the volume of the box could not be established.
    total: Option<Figure>,
    /// The same with the least that barriers of unsaid material can take, and where the first such material would be said.
    roomier: Option<(Figure, Pointer)>,
}

impl Capacity {
    /// Adds up an enclosure.
    pub fn of(
        proof: &mut Derivation,
        enclosure: &Enclosure,
        all_contents: &[&Contents],
        findings: &mut Vec<Finding>,
    ) -> Self {
        let own = own_volume(proof, enclosure, findings);
        let sections: Figures = enclosure
            .sections
            .iter()
            .enumerate()
            .filter_map(|(index, section)| section_volume(proof, section, index, findings))
            .collect();
        let added = (!sections.is_empty()).then(|| proof.sum(&ASSEMBLY, &sections));
        let assembled = own.map(|own| match added {
            Some(added) => proof.sum(&ASSEMBLY, &[own, added]),
            None => own,
        });
        holds_assemblies_of(proof, enclosure, all_contents, findings);
        let total = match (assembled, enclosure.barriers.is_empty()) {
            (Some(assembled), false) => {
                Some(less_barriers(proof, assembled, &enclosure.barriers, Material::Nonmetallic))
            }
            (None, false) => {
                let finding = Finding::new(&BARRIER, Status::NotDetermined, "finding-barrier-in-unknown-box");
                let finding = finding.at(Pointer::to(&"/enclosure/barriers"));
                findings.push(finding.supply(Pointer::to(&"/enclosure/marked_volume")));
                None
            }
            _ => assembled,
        };
        if let (Some(assembled), false) = (assembled, enclosure.barriers.is_empty()) {
            findings.extend(fills_the_box(proof, assembled, &enclosure.barriers));
        }
        let unsaid = enclosure.barriers.iter().position(is_of_unsaid_material);
        let roomier = assembled.zip(unsaid).map(|(assembled, index)| {
            let at = Pointer::of(&"/enclosure/barriers/#", index).member(&"/material");
            (less_barriers(proof, assembled, &enclosure.barriers, Material::Metal), at)
        });
        if !enclosure.barriers.is_empty() {
            let finding = Finding::new(&BARRIER, Status::Advisory, "finding-barrier-policy");
            findings.push(finding.at(Pointer::to(&"/enclosure/barriers")));
        }
        Self { added, assembled, total, roomier }
    }

    /// The share of one space: in proportion to its gangs, or to its measured volume. The whole where nothing divides it.
    pub fn share(
        &self,
        proof: &mut Derivation,
        spaces: &[Space],
        space: Option<(usize, &Space)>,
    ) -> Option<Figure> {
        Self::share_of(self.total?, proof, spaces, space)
    }

    /// Whether the measured volumes of all spaces make the whole: no less than barriers leave of the box, whatever they are made of
    /// when that is unsaid, and no more than the box. Where they do not, no space has a share that is established.
    pub fn measured_shares(&mut self, proof: &mut Derivation, spaces: &[Space], findings: &mut Vec<Finding>) {
        let is_measured = spaces.iter().all(|space| space.measured_volume.is_some());
        let (Some(left), Some(assembled)) = (self.total, self.assembled) else { return };
        if spaces.is_empty() || !is_measured {
            return;
        }
        let (left, unsaid) =
            self.roomier.map_or((left, None), |(roomier, material)| (roomier, Some(material)));
        let shares: Figures =
            spaces.iter().enumerate().filter_map(|(index, space)| weight(proof, space, index)).collect();
        let together = proof.sum(&BARRIER, &shares);
        let (enough, least) = proof.compare(&BARRIER, together, Relation::AtLeast, left);
        let (no_more, most) = proof.compare(&BARRIER, together, Relation::AtMost, assembled);
        if !(enough && no_more) {
            let place = Pointer::to(&"/spaces");
            let finding =
                Finding::new(&BARRIER, Status::NotDetermined, "finding-shares-do-not-make-the-whole")
                    .with("together", together)
                    .with("left", left)
                    .with("whole", assembled)
                    .at(place)
                    .supply(place)
                    .step(if enough { most } else { least });
            findings.push(unsaid.into_iter().fold(finding, Finding::supply));
            self.leave_shares_open();
        }
    }

    /// What the spaces have is not established.
    pub const fn leave_shares_open(&mut self) {
        (self.total, self.roomier) = (None, None);
    }

    /// The share of one space where barriers of unsaid material take the least, and where that material would be said.
    pub fn roomier_share(
        &self,
        proof: &mut Derivation,
        spaces: &[Space],
        space: Option<(usize, &Space)>,
    ) -> Option<(Figure, Pointer)> {
        let (total, at) = self.roomier?;
        Some((Self::share_of(total, proof, spaces, space)?, at))
    }

    fn share_of(
        total: Figure,
        proof: &mut Derivation,
        spaces: &[Space],
        space: Option<(usize, &Space)>,
    ) -> Option<Figure> {
        let Some((index, _)) = space else { return Some(total) };
        (proof.rulebook().outlet_volume.sharing.apply)(proof, total, spaces, index)
    }
}

impl Choice for Sharing {
    /// What the space with an index has of a volume.
    type Apply = fn(&mut Derivation, Figure, &[Space], usize) -> Option<Figure>;
    const LAWFUL: Strategy<Self> = Strategy::<Self>::new("in-proportion", in_proportion);
}

fn in_proportion(proof: &mut Derivation, total: Figure, spaces: &[Space], index: usize) -> Option<Figure> {
    let weights: Vec<Figure> =
        spaces.iter().enumerate().filter_map(|(index, space)| weight(proof, space, index)).collect();
    let own = *weights.get(index)?;
    let all = proof.sum(&BARRIER, &weights);
    let portion = proof.product(&BARRIER, total, own, None);
    proof.quotient_in(&BARRIER, portion, all, total.unit)
}

/// What a space is shared out by.
fn weight(proof: &mut Derivation, space: &Space, index: usize) -> Option<Figure> {
    let at = |member| Pointer::of(&"/spaces/#", index).member(member);
    match (space.gangs, space.measured_volume) {
        (Some(gangs), _) => Some(proof.given(&BARRIER, gangs.get().into(), Measure::Number, at(&"/gangs"))),
        (None, Some(volume)) => {
            Some(proof.given(&BARRIER, volume.value(), Measure::Volume, at(&"/measured_volume")))
        }
        (None, None) => None,
    }
}

fn own_volume(proof: &mut Derivation, enclosure: &Enclosure, findings: &mut Vec<Finding>) -> Option<Figure> {
    if let Some(mark) = enclosure.marked_volume {
        let marked =
            proof.given(&MARKED, mark.value(), Measure::Volume, Pointer::to(&"/enclosure/marked_volume"));
        if enclosure.standard.is_some() {
            let table = standard_volume(proof, enclosure)?;
            proof.compare(&MARKED, marked, Relation::AtLeast, table);
        }
        return Some(marked);
    }
    if enclosure.standard.is_some() {
        return standard_volume(proof, enclosure);
    }
    let material = Pointer::to(&"/enclosure/material");
    if let Some(made_of) = enclosure.material {
        proof.word(&MARKED, made_of.name(), material);
    }
    let measured = match (enclosure.inside_dimensions, enclosure.material) {
        (Some(inside), Some(Material::Metal)) => large_box_volume(proof, inside, findings),
        _ => None,
    };
    if measured.is_none() {
        let finding = Finding::new(&MARKED, Status::NotDetermined, "finding-volume-not-established")
            .at(Pointer::to(&"/enclosure"))
            .supply(Pointer::to(&"/enclosure/marked_volume"));
        let may_be_measured = enclosure.inside_dimensions.is_some() && enclosure.material.is_none();
        findings.push(if may_be_measured { finding.supply(material) } else { finding });
    }
    measured
}

/// Clamp assemblies with terminations are made for nonmetallic boxes.
fn holds_assemblies_of(
    proof: &mut Derivation,
    enclosure: &Enclosure,
    all_contents: &[&Contents],
    findings: &mut Vec<Finding>,
) {
    let mut clamps = all_contents.iter().flat_map(|contents| &contents.clamps);
    if !clamps.any(|clamp| clamp.kind == ClampKind::TerminatingAssembly) {
        return;
    }
    let material = Pointer::to(&"/enclosure/material");
    let known = match (enclosure.material, enclosure.standard) {
        (None, Some(standard)) => {
            Some((Material::Metal, standard.key(), Pointer::to(&"/enclosure/standard")))
        }
        (said, _) => said.map(|made_of| (made_of, made_of.name(), material)),
    };
    let Some((made_of, says, at)) = known else {
        let finding = Finding::new(&CLAMP_ASSEMBLY, Status::NotDetermined, "finding-assembly-in-unsaid-box");
        findings.push(finding.at(Pointer::to(&"/enclosure")).supply(material));
        return;
    };
    let step = proof.word(&CLAMP_ASSEMBLY, says, at);
    if made_of == Material::Metal {
        let finding = Finding::new(&CLAMP_ASSEMBLY, Status::Violated, "finding-assembly-in-metal-box");
        findings.push(finding.at(at).step(step));
    }
}

fn standard_volume(proof: &mut Derivation, enclosure: &Enclosure) -> Option<Figure> {
    let standard = enclosure.standard?;
    let at = Pointer::to(&"/enclosure/standard");
    let one = proof.lookup(&STANDARD, standard.volume(proof.units()), Some(at));
    Some(match enclosure.gangs {
        Some(gangs) if standard.shape().is_per_gang() => {
            let gangs =
                proof.given(&ASSEMBLY, gangs.get().into(), Measure::Number, Pointer::to(&"/enclosure/gangs"));
            proof.product(&ASSEMBLY, gangs, one, None)
        }
        _ => one,
    })
}

/// Length times width times depth, for a box over the size that must be marked; `None` for one that must be.
fn large_box_volume(
    proof: &mut Derivation,
    inside: InsideDimensions,
    findings: &mut Vec<Finding>,
) -> Option<Figure> {
    let units = proof.units();
    let side =
        |proof: &mut Derivation, value, at| proof.given(&MARKED, value, Measure::Length, Pointer::to(at));
    let length = side(proof, inside.length.value(), &"/enclosure/inside_dimensions/length");
    let width = side(proof, inside.width.value(), &"/enclosure/inside_dimensions/width");
    let depth = side(proof, inside.depth.value(), &"/enclosure/inside_dimensions/depth");
    let face = proof.product_in(&MARKED, length, width, units.of(Measure::Area));
    let book = proof.rulebook().clone();
    let factor = proof.stated(&book.outlet_volume.volume_of_unit_cube);
    let depth = proof.product(&MARKED, depth, factor, None);
    let volume = proof.product_in(&MARKED, face, depth, units.of(Measure::Volume));
    let limit = proof.stated(&book.outlet_volume.marked_up_to);
    let (large, step) = proof.compare(&MARKED, volume, Relation::Above, limit);
    if !large {
        return None;
    }
    match proof.reading::<UnmarkedLargeBox>() {
        UnmarkedLargeBox::MarkOnly => None,
        UnmarkedLargeBox::InsideMeasure => {
            findings.push(
                Finding::new(&MARKED, Status::Advisory, "finding-inside-measure")
                    .with("volume", volume)
                    .at(Pointer::to(&"/enclosure/inside_dimensions"))
                    .step(step),
            );
            Some(volume)
        }
    }
}

/// What a ring or cover adds: its mark, or the table's volume of the box it is made from; nothing without either.
fn section_volume(
    proof: &mut Derivation,
    section: &Section,
    index: usize,
    findings: &mut Vec<Finding>,
) -> Option<Figure> {
    let item = Pointer::of(&"/enclosure/sections/#", index);
    let one = match (section.marked_volume, section.standard) {
        (Some(mark), _) => {
            proof.given(&ASSEMBLY, mark.value(), Measure::Volume, item.member(&"/marked_volume"))
        }
        (None, Some(standard)) => {
            proof.lookup(&ASSEMBLY, standard.volume(proof.units()), Some(item.member(&"/standard")))
        }
        (None, None) => {
            let step = proof.does_not_apply(&ASSEMBLY, "unmarked", Some(item));
            let finding = Finding::new(&ASSEMBLY, Status::Advisory, "finding-section-adds-nothing");
            findings.push(finding.at(item).step(step));
            return None;
        }
    };
    Some(times_count(proof, one, section.count, item))
}

const fn is_of_unsaid_material(barrier: &Barrier) -> bool {
    barrier.marked_volume.is_none() && barrier.material.is_none()
}

/// What barriers leave of a box. One of unsaid material is taken as of `otherwise`.
fn less_barriers(
    proof: &mut Derivation,
    assembled: Figure,
    barriers: &[Barrier],
    otherwise: Material,
) -> Figure {
    let taken = taken_by(proof, barriers, otherwise);
    let left = proof.difference(&BARRIER, assembled, taken);
    proof.at_least_zero(&BARRIER, left)
}

/// Barriers divide a box: those that take all of it leave no space on either side.
fn fills_the_box(proof: &mut Derivation, assembled: Figure, barriers: &[Barrier]) -> Option<Finding> {
    let taken = taken_by(proof, barriers, Material::Metal);
    if taken.value < assembled.value {
        return None;
    }
    let (_, step) = proof.compare(&BARRIERS, taken, Relation::Below, assembled);
    let finding = Finding::new(&BARRIERS, Status::Violated, "finding-barriers-fill-the-box");
    let finding = finding.with("taken", taken).with("whole", assembled);
    Some(finding.at(Pointer::to(&"/enclosure/barriers")).step(step))
}

/// What barriers take of a box together.
fn taken_by(proof: &mut Derivation, barriers: &[Barrier], otherwise: Material) -> Figure {
    let book = proof.rulebook().clone();
    let taken: Vec<Figure> = barriers
        .iter()
        .enumerate()
        .map(|(index, barrier)| {
            let item = Pointer::of(&"/enclosure/barriers/#", index);
            let one = match (barrier.marked_volume, barrier.material.unwrap_or(otherwise)) {
                (Some(mark), _) => {
                    proof.given(&BARRIER, mark.value(), Measure::Volume, item.member(&"/marked_volume"))
                }
                (None, made_of) => {
                    if let Some(said) = barrier.material {
                        proof.word(&BARRIER, said.name(), item.member(&"/material"));
                    }
                    match made_of {
                        Material::Metal => proof.stated(&book.outlet_volume.metal_barrier),
                        Material::Nonmetallic => proof.stated(&book.outlet_volume.nonmetallic_barrier),
                    }
                }
            };
            times_count(proof, one, barrier.count, item)
        })
        .collect();
    proof.sum(&BARRIER, &taken)
}

fn times_count(proof: &mut Derivation, one: Figure, count: Option<Many>, item: Pointer) -> Figure {
    match count {
        None => one,
        Some(_) => {
            let count = proof.count(&ASSEMBLY, count.map(Many::get), item);
            proof.product(&ASSEMBLY, count, one, None)
        }
    }
}
