//! How many more conductors would fit.

use super::contents::Fill;
use super::outcome::Room;
use crate::derivation::{Derivation, Figure};
use crate::rulebook::outlet_fill::{ALLOWANCE, CLAMPS, SUM};
use crate::tables::conductor_volume;

/// For each size of the table, how many insulated conductors of it would fit in what is left. A size larger than any in
/// the space also raises what clamps and support fittings take, which are sized by the largest conductor.
pub(super) fn left(proof: &mut Derivation, fill: &mut Fill, margin: Figure) -> Vec<Room> {
    let mut room = Vec::with_capacity(7);
    for size in conductor_volume::sizes().iter() {
        let Some(each) = fill.allowance_of(proof, size) else { continue };
        let raised = match (fill.by_largest, fill.largest) {
            (Some(allowances), Some(largest)) if each.value > largest.value => {
                let step_up = proof.difference(&ALLOWANCE, each, largest);
                let more = proof.product(&CLAMPS, allowances, step_up, None);
                proof.difference(&CLAMPS, margin, more)
            }
            _ => margin,
        };
        if let Some(conductors) = proof.whole_quotient(&SUM, raised, each) {
            room.push(Room { size, conductors });
        }
    }
    room
}
