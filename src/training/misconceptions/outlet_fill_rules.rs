//! What learners get wrong about the rules of box fill.

use crate::rulebook::Rules;
use crate::rulebook::outlet_fill::{CountedBy, GroundingBeyond, InBox, OutletFill, Parts, Repeated};
use crate::rulebook::outlet_volume::Sharing;
use crate::trade::ConductorSize;

const ONE: i64 = 10_000;
const QUARTER: i64 = 2_500;

/// Changes what grounding conductors past the first few take, in an edition that has no such rule too.
fn beyond(rules: &mut Rules, change: impl FnOnce(&mut GroundingBeyond)) {
    let mut beyond = GroundingBeyond::FOUR_AND_QUARTERS;
    change(&mut beyond);
    rules.outlet_fill.grounding_beyond = Some(beyond);
}

/// So many allowances for the first few, taken together so many, and so much for each past them.
fn grounding(rules: &mut Rules, first: i64, together: i64, each: i64) {
    rules.outlet_fill.grounding = rules.outlet_fill.grounding.with_number(first);
    beyond(rules, |beyond| {
        beyond.together = beyond.together.with_number(together);
        beyond.each = beyond.each.with_number(each);
    });
}

pub(super) fn grounding_each(rules: &mut Rules) {
    grounding(rules, ONE, ONE, ONE);
    if let Some(beyond) = &mut rules.outlet_fill.grounding_beyond {
        beyond.parts = Parts::OfOwnSize;
    }
}

pub(super) fn grounding_left_out(rules: &mut Rules) {
    grounding(rules, 0, 4 * ONE, 0);
}

pub(super) fn grounding_one_for_all(rules: &mut Rules) {
    rules.outlet_fill.grounding_beyond = None;
}

pub(super) fn grounding_quarters_too_early(rules: &mut Rules) {
    rules.outlet_fill.grounding_beyond = Some(GroundingBeyond::FOUR_AND_QUARTERS);
}

pub(super) fn grounding_quarter_each(rules: &mut Rules) {
    grounding(rules, 0, 0, QUARTER);
}

pub(super) fn grounding_quarter_on_top(rules: &mut Rules) {
    grounding(rules, ONE, 0, QUARTER);
}

pub(super) fn grounding_rounded_up(rules: &mut Rules) {
    beyond(rules, |beyond| beyond.parts = Parts::RoundedUp);
}

pub(super) fn grounding_extra_own_size(rules: &mut Rules) {
    beyond(rules, |beyond| beyond.parts = Parts::OfOwnSize);
}

pub(super) fn grounding_by_circuit_conductor(rules: &mut Rules) {
    rules.outlet_fill.grounding_by = CountedBy::LargestInBox;
}

pub(super) fn isolated_set_on_top(rules: &mut Rules) {
    rules.outlet_fill.isolated_set = Some(OutletFill::ISOLATED_SET);
}

pub(super) fn isolated_set_joined(rules: &mut Rules) {
    rules.outlet_fill.isolated_set = None;
}

pub(super) fn loop_counted_once(rules: &mut Rules) {
    rules.outlet_fill.long_loop = rules.outlet_fill.long_loop.with_number(ONE);
}

pub(super) fn short_loop_counted_twice(rules: &mut Rules) {
    rules.outlet_fill.loop_multiple = rules.outlet_fill.loop_multiple.with_number(ONE);
}

pub(super) fn device_one_allowance(rules: &mut Rules) {
    rules.outlet_fill.yoke = rules.outlet_fill.yoke.with_number(ONE);
}

pub(super) fn device_left_out(rules: &mut Rules) {
    rules.outlet_fill.yoke = rules.outlet_fill.yoke.with_number(0);
}

pub(super) fn device_by_largest_in_box(rules: &mut Rules) {
    rules.outlet_fill.yoke_by = CountedBy::LargestInBox;
}

pub(super) fn clamps_each(rules: &mut Rules) {
    rules.outlet_fill.clamps_each = Repeated::ForEachPiece;
}

pub(super) fn clamps_left_out(rules: &mut Rules) {
    rules.outlet_fill.clamps = rules.outlet_fill.clamps.with_number(0);
}

pub(super) fn clamps_by_smallest(rules: &mut Rules) {
    rules.outlet_fill.clamps_by = InBox::Smallest;
}

pub(super) fn support_fittings_as_one(rules: &mut Rules) {
    rules.outlet_fill.support_fittings_each = Repeated::ForAll;
}

pub(super) fn support_fittings_by_piece(rules: &mut Rules) {
    rules.outlet_fill.support_fittings_each = Repeated::ForEachPiece;
}

pub(super) fn wire_connectors_counted(rules: &mut Rules) {
    rules.outlet_fill.wire_connector = rules.outlet_fill.wire_connector.with_number(ONE);
}

pub(super) fn canopy_wires_counted(rules: &mut Rules) {
    rules.outlet_fill.canopy_wires = rules.outlet_fill.canopy_wires.with_number(0);
}

pub(super) fn canopy_14_awg_left_out(rules: &mut Rules) {
    rules.outlet_fill.canopy_below = ConductorSize::AWG_8;
}

pub(super) fn terminal_block_too_early(rules: &mut Rules) {
    rules.outlet_fill.terminal_block = Some(OutletFill::TERMINAL_BLOCK);
}

pub(super) fn terminal_block_left_out(rules: &mut Rules) {
    rules.outlet_fill.terminal_block = None;
}

pub(super) fn barrier_takes_nothing(rules: &mut Rules) {
    let volume = &mut rules.outlet_volume;
    volume.metal_barrier = volume.metal_barrier.with_number(0);
    volume.nonmetallic_barrier = volume.nonmetallic_barrier.with_number(0);
}

pub(super) fn barrier_ignored(rules: &mut Rules) {
    barrier_takes_nothing(rules);
    rules.outlet_volume.sharing = Sharing::Pooled;
}

pub(super) fn barrier_as_metal(rules: &mut Rules) {
    let (us, si) = (5_000, 82_000);
    rules.outlet_volume.nonmetallic_barrier = rules.outlet_volume.nonmetallic_barrier.with(us, si);
}
