//! Entries as the rules count them: what each adds to the sums, and where its edge is.

use super::wall::{EntryPosition, Wall};
use crate::derivation::{Derivation, Figure, Pointer};
use crate::quantity::{Length, Measure};
use crate::rulebook::pull::{CountsAs, PLACEMENT, TRADE_SIZE};
use crate::tables::trade_sizes;
use crate::trade::{ConductorSize, TradeSize};

/// One entry of a box, a section or a conduit body, with the figures that the rules take from it.
pub struct ResolvedEntry<'a> {
    pub id: &'a str,
    pub wall: Wall,
    /// The declared row. A side wall has one row unless said otherwise; the back has none.
    pub row: Option<u32>,
    pub position: Option<EntryPosition>,
    pub at: Pointer,
    /// What it counts as: its trade size, or that of the raceway that its cable would need. `None` where that could not
    /// be established, and over 1000 V.
    pub size: Option<Figure>,
    /// The diameter that its edge is measured by.
    pub diameter: Option<Figure>,
    /// The largest conductor of its cable, for an entry that is a cable.
    pub cable_conductor: Option<ConductorSize>,
    radius: Option<Figure>,
}

/// What an entry counts as in the sums, and the diameter of its edge.
pub type SizeAndDiameter = (Option<Figure>, Option<Figure>);

impl<'a> ResolvedEntry<'a> {
    pub fn new(id: &'a str, wall: Wall, at: Pointer, (size, diameter): SizeAndDiameter) -> Self {
        let row = if wall == Wall::Back { None } else { Some(1) };
        Self { id, wall, row, position: None, at, size, diameter, cable_conductor: None, radius: None }
    }

    /// Half its diameter; the step is added to the proof when it is first needed.
    pub fn radius(&mut self, proof: &mut Derivation) -> Option<Figure> {
        if self.radius.is_none() {
            let half = proof.rulebook().pull.half;
            self.radius = self.diameter.map(|diameter| {
                let half = proof.stated(&half);
                proof.product(&PLACEMENT, half, diameter, None)
            });
        }
        self.radius
    }
}

/// What the raceway of an entry counts as. `at` is the entry.
pub fn raceway(
    proof: &mut Derivation,
    trade_size: Option<TradeSize>,
    outside_diameter: Option<Length>,
    at: Pointer,
) -> SizeAndDiameter {
    let size = trade_size
        .and_then(|size| trade_sizes::of(size, proof.units()))
        .map(|cell| proof.lookup(&TRADE_SIZE, cell, Some(at.member(&"/raceway/trade_size"))));
    let outside = outside_diameter.map(|outside| {
        let at = at.member(&"/raceway/outside_diameter");
        proof.given(&PLACEMENT, outside.value(), Measure::Length, at)
    });
    counted(proof.rulebook().pull.raceway_counts_as, size, outside)
}

/// An entry counts with its trade size and is measured from its outside diameter where that is known; a rulebook may have
/// it count with that as well.
pub fn counted(by: CountsAs, size: Option<Figure>, outside: Option<Figure>) -> SizeAndDiameter {
    let size = match by {
        CountsAs::TradeSize => size,
        CountsAs::OutsideDiameter => outside.or(size),
    };
    (size, outside.or(size))
}
