//! What a pull box must have besides its size: racking, a cover, barriers, room for power distribution blocks.

use super::geometry::Sides;
use super::given_box::GivenBox;
use super::outcome::SectionSize;
use super::request::{DistributionBlock, PullBoxRequest};
use super::section::Section;
use crate::checks::pulls::Axis;
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer, Relation, StepId};
use crate::quantity::Measure;
use crate::rulebook::pull::{BARRIERS, BLOCKS, COVERS, LINE_SIDE, RACKING};

/// What is found once for the whole request.
pub(super) fn of_request(proof: &mut Derivation, request: &PullBoxRequest, findings: &mut Vec<Finding>) {
    findings.push(Finding::new(&COVERS, Status::Advisory, "finding-cover").at(Pointer::to(&"/cover")));
    if !request.sections.is_empty() {
        let finding = Finding::new(&BARRIERS, Status::Advisory, "finding-barriers");
        findings.push(finding.at(Pointer::to(&"/sections")));
    }
    for (index, block) in request.power_distribution_blocks.iter().enumerate() {
        let at = Pointer::of(&"/power_distribution_blocks/#", index);
        if request.over_1000_volts {
            findings
                .push(Finding::new(&BLOCKS, Status::NotDetermined, "finding-block-over-1000-volts").at(at));
            continue;
        }
        if block.grounding_bar {
            proof.fact(&BLOCKS, true, at.member(&"/grounding_bar"));
        } else {
            findings.extend(line_side(proof, block, at));
            findings.push(block_itself(proof, block, at));
        }
    }
}

/// Whether a block stands on the line side of the service equipment, and is marked for that.
fn line_side(proof: &mut Derivation, block: &DistributionBlock, at: Pointer) -> Option<Finding> {
    let (stands, mark) = (at.member(&"/line_side_of_service"), at.member(&"/marked_for_line_side"));
    let finding = |status, message| Finding::new(&LINE_SIDE, status, message).at(at);
    if block.line_side_of_service == Some(false) {
        proof.does_not_apply(&LINE_SIDE, "not-on-line-side", Some(stands));
        return None;
    }
    Some(match block.marked_for_line_side {
        Some(true) => {
            let step = proof.fact(&LINE_SIDE, true, mark);
            finding(Status::Satisfied, "finding-block-line-side-marked").step(step)
        }
        Some(false) if block.line_side_of_service == Some(true) => {
            let step = proof.fact(&LINE_SIDE, false, mark);
            finding(Status::Violated, "finding-block-line-side").step(step)
        }
        None if block.line_side_of_service == Some(true) => {
            finding(Status::NotDetermined, "finding-block-line-side").supply(mark)
        }
        _ => finding(Status::NotDetermined, "finding-block-line-side-open").supply(stands),
    })
}

/// Whether a box or section holds a block that is more than a bar for grounding conductors.
pub(super) fn has_blocks(request: &PullBoxRequest, section: &Section<'_>) -> bool {
    blocks_of(request, section).next().is_some()
}

fn blocks_of<'a>(
    request: &'a PullBoxRequest,
    section: &'a Section<'_>,
) -> impl Iterator<Item = Pointer> + 'a {
    let of_section =
        |block: &DistributionBlock| block.section.as_ref().map(crate::checks::Name::as_str) == section.id;
    let blocks = request.power_distribution_blocks.iter().enumerate();
    blocks
        .filter(move |(_, block)| !block.grounding_bar && of_section(block))
        .map(|(index, _)| Pointer::of(&"/power_distribution_blocks/#", index))
}

/// The conditions of a block that are not about the size of the box.
fn block_itself(proof: &mut Derivation, block: &DistributionBlock, at: Pointer) -> Finding {
    let conditions = [
        (block.listed, &"/listed"),
        (block.box_as_instructed, &"/box_as_instructed"),
        (block.bending_space, &"/bending_space"),
        (block.live_parts_covered, &"/live_parts_covered"),
        (block.terminals_unobstructed, &"/terminals_unobstructed"),
    ];
    let those = |state: Option<bool>| {
        conditions
            .iter()
            .filter(move |(condition, _)| *condition == state)
            .map(|(_, member)| at.member(member))
    };
    let (broken, open): (Vec<Pointer>, Vec<Pointer>) = (those(Some(false)).collect(), those(None).collect());
    let said = conditions.iter().filter_map(|(condition, member)| Some(((*condition)?, at.member(member))));
    let steps: Vec<StepId> = said.map(|(holds, at)| proof.fact(&BLOCKS, holds, at)).collect();
    let decided = proof.every(&BLOCKS, &steps);
    let mut finding = if !broken.is_empty() {
        Finding::new(&BLOCKS, Status::Violated, "finding-block-conditions-broken")
    } else if open.is_empty() {
        Finding::new(&BLOCKS, Status::Satisfied, "finding-block-conditions")
    } else {
        Finding::new(&BLOCKS, Status::NotDetermined, "finding-block-conditions-open")
    };
    finding.at = if broken.is_empty() { vec![at] } else { broken };
    finding.supply = open;
    finding.step = decided;
    finding
}

/// What is found about one box or section: with its given sides, or else with the least that the rules require.
pub(super) fn of_section(
    proof: &mut Derivation,
    request: &PullBoxRequest,
    section: &Section<'_>,
    size: &SectionSize,
    given: Option<&GivenBox>,
    findings: &mut Vec<Finding>,
) {
    racking(proof, request, section, size, given, findings);
    let at: Vec<Pointer> = blocks_of(request, section).collect();
    if at.is_empty() || request.over_1000_volts {
        return;
    }
    let Some(sides) = given.and_then(|given| given.whole.as_ref()) else {
        let mut finding = Finding::new(&BLOCKS, Status::NotDetermined, "finding-block-volume-open");
        finding.at = at;
        findings.push(finding.supply(section.inside_at));
        return;
    };
    let volume = volume(proof, sides);
    let figure = proof.rulebook().pull.blocks;
    let limit = proof.stated(&figure);
    let (over, step) = proof.compare(&BLOCKS, volume, Relation::Above, limit);
    let (status, message) = if over {
        (Status::Satisfied, "finding-block-volume-enough")
    } else {
        (Status::Violated, "finding-block-volume-short")
    };
    let mut finding =
        Finding::new(&BLOCKS, status, message).with("volume", volume).with("limit", limit).step(step);
    finding.at = at;
    findings.push(finding);
}

/// Width times height times depth.
fn volume(proof: &mut Derivation, sides: &Sides) -> Figure {
    let units = proof.units();
    let cube = proof.rulebook().outlet_volume.volume_of_unit_cube;
    let cube = proof.stated(&cube);
    let depth = proof.product(&BLOCKS, sides.depth, cube, None);
    let face = proof.product_in(&BLOCKS, sides.width, sides.height, units.of(Measure::Area));
    proof.product_in(&BLOCKS, face, depth, units.of(Measure::Volume))
}

fn racking(
    proof: &mut Derivation,
    request: &PullBoxRequest,
    section: &Section<'_>,
    size: &SectionSize,
    given: Option<&GivenBox>,
    findings: &mut Vec<Finding>,
) {
    let side = |axis| match given {
        Some(given) => given.sides[axis],
        None => size.side(axis).minimum,
    };
    let lengths: Vec<Figure> = Axis::ALL.into_iter().filter_map(side).collect();
    let Some(longest) = proof.largest(&RACKING, &lengths) else { return };
    let figure = proof.rulebook().pull.racking;
    let limit = proof.stated(&figure);
    let (long, step) = proof.compare(&RACKING, longest, Relation::Above, limit);
    if !long {
        findings.extend(unsaid_side(proof, request, section, given, limit));
        return;
    }
    let (status, message) = match (request.racked, given) {
        (_, None) => (Status::Advisory, "finding-racking-ahead"),
        (Some(true), _) => (Status::Satisfied, "finding-racked"),
        (Some(false), _) => (Status::Violated, "finding-not-racked"),
        (None, _) => (Status::NotDetermined, "finding-racking-open"),
    };
    let racked = Pointer::to(&"/racked");
    let decided = request.racked.filter(|_| given.is_some()).map(|holds| proof.fact(&RACKING, holds, racked));
    let finding = Finding::new(&RACKING, status, message).with("longest", longest).with("limit", limit);
    let mut finding = finding.step(decided.unwrap_or(step));
    if status == Status::NotDetermined {
        finding = finding.supply(racked);
    }
    findings.push(finding.at(section.inside_at));
}

/// A side that is not said may be a long one.
fn unsaid_side(
    proof: &mut Derivation,
    request: &PullBoxRequest,
    section: &Section<'_>,
    given: Option<&GivenBox>,
    limit: Figure,
) -> Option<Finding> {
    let unsaid = Axis::ALL.into_iter().filter(|axis| given.is_some_and(|given| given.sides[*axis].is_none()));
    let supply: Vec<Pointer> = unsaid.map(|axis| section.inside_at.member(axis.member())).collect();
    if supply.is_empty() {
        return None;
    }
    if request.racked == Some(true) {
        proof.fact(&RACKING, true, Pointer::to(&"/racked"));
        return None;
    }
    let mut finding = Finding::new(&RACKING, Status::NotDetermined, "finding-racking-side-open");
    finding.supply = supply;
    Some(finding.with("limit", limit))
}
