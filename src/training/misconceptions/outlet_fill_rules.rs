//! What learners get wrong about the rules of box fill.

use super::outlet_fill_strategies as strategies;
use crate::rulebook::Rules;
use crate::rulebook::outlet_fill::{GroundingBeyond, OutletFill};
use crate::trade::ConductorSize;

const ONE: i64 = 10_000;
const QUARTER: i64 = 2_500;

/// Changes what grounding conductors beyond the first few take, even in an edition that has no such rule.
fn beyond(rules: &mut Rules, change: impl FnOnce(&mut GroundingBeyond)) {
    let mut beyond = GroundingBeyond::FOUR_AND_QUARTERS;
    change(&mut beyond);
    rules.outlet_fill.grounding_beyond = Some(beyond);
}

/// Sets the allowances of each of the first few conductors, how many count together, and the part for each one beyond.
fn grounding(rules: &mut Rules, first: i64, together: i64, each: i64) {
    rules.outlet_fill.grounding.set_number(first);
    beyond(rules, |beyond| {
        beyond.together.set_number(together);
        beyond.each.set_number(each);
    });
}

/// Declares misconceptions that are one change to the rules each.
macro_rules! changes {
    ($($name:ident: |$rules:ident| $change:expr;)+) => {
        $(pub(super) fn $name($rules: &mut Rules) {
            $change;
        })+
    };
}

changes! {
    grounding_left_out: |rules| grounding(rules, 0, 4 * ONE, 0);
    grounding_one_for_all: |rules| rules.outlet_fill.grounding_beyond = None;
    grounding_quarters_too_early: |rules| rules.outlet_fill.grounding_beyond = Some(GroundingBeyond::FOUR_AND_QUARTERS);
    grounding_quarter_each: |rules| grounding(rules, 0, 0, QUARTER);
    grounding_quarter_on_top: |rules| grounding(rules, ONE, 0, QUARTER);
    grounding_rounded_up: |rules| beyond(rules, |beyond| beyond.parts = strategies::PARTS_ROUNDED_UP);
    grounding_extra_own_size: |rules| beyond(rules, |beyond| beyond.lines = strategies::ONE_LINE_FOR_EACH_SIZE);
    grounding_by_circuit_conductor: |rules| rules.outlet_fill.grounding_by = strategies::GROUNDING_BY_LARGEST;
    isolated_set_on_top: |rules| rules.outlet_fill.isolated_set = Some(OutletFill::ISOLATED_SET);
    isolated_set_joined: |rules| rules.outlet_fill.isolated_set = None;
    loop_counted_once: |rules| rules.outlet_fill.long_loop.set_number(ONE);
    short_loop_counted_twice: |rules| rules.outlet_fill.loop_multiple.set_number(ONE);
    device_one_allowance: |rules| rules.outlet_fill.yoke.set_number(ONE);
    device_left_out: |rules| rules.outlet_fill.yoke.set_number(0);
    device_by_largest_in_box: |rules| rules.outlet_fill.yoke_by = strategies::YOKE_BY_LARGEST;
    clamps_each: |rules| rules.outlet_fill.clamps_take = strategies::CLAMPS_BY_PIECE;
    clamps_left_out: |rules| rules.outlet_fill.clamps.set_number(0);
    clamps_by_smallest: |rules| rules.outlet_fill.clamps_by = strategies::CLAMPS_BY_SMALLEST;
    support_fittings_as_one: |rules| rules.outlet_fill.support_fittings_take = strategies::FITTINGS_AS_ONE;
    support_fittings_by_piece: |rules| rules.outlet_fill.support_fittings_take = strategies::FITTINGS_BY_PIECE;
    wire_connectors_counted: |rules| rules.outlet_fill.wire_connector.set_number(ONE);
    canopy_wires_counted: |rules| rules.outlet_fill.canopy_wires.set_number(0);
    canopy_14_awg_left_out: |rules| rules.outlet_fill.canopy_below = ConductorSize::AWG_8;
    terminal_block_too_early: |rules| rules.outlet_fill.terminal_block = Some(OutletFill::TERMINAL_BLOCK);
    terminal_block_left_out: |rules| rules.outlet_fill.terminal_block = None;
}

pub(super) fn grounding_each(rules: &mut Rules) {
    grounding(rules, ONE, ONE, ONE);
    if let Some(beyond) = &mut rules.outlet_fill.grounding_beyond {
        beyond.lines = strategies::ONE_LINE_FOR_EACH_SIZE;
    }
}

pub(super) fn barrier_takes_nothing(rules: &mut Rules) {
    let volume = &mut rules.outlet_volume;
    volume.metal_barrier.set_number(0);
    volume.nonmetallic_barrier.set_number(0);
}

pub(super) fn barrier_ignored(rules: &mut Rules) {
    barrier_takes_nothing(rules);
    rules.outlet_volume.sharing = strategies::POOLED;
}

pub(super) fn barrier_as_metal(rules: &mut Rules) {
    let (us, si) = (5_000, 82_000);
    rules.outlet_volume.nonmetallic_barrier.set(us, si);
}
