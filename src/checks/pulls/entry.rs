//! Entries as the rules count them: what each adds to the sums, and where its edge is.

use super::wall::{EntryPosition, Wall};
use crate::derivation::{Derivation, Figure, Pointer};
use crate::quantity::{Length, Measure};
use crate::rulebook::pull::{CableCountsAs, PLACEMENT, RacewayCountsAs, TRADE_SIZE};
use crate::rulebook::{Choice, Strategy};
use crate::tables::trade_sizes;
use crate::trade::{ConductorSize, TradeSize};

/// One entry of a box, a section or a conduit body, with the figures that the rules take from it.
pub struct ResolvedEntry<'a> {
    pub id: &'a str,
    pub wall: Wall,
    /// The declared row. A side wall has one row unless said otherwise; the back has none.
    pub row: Option<u32>,
    /// Whether the request says the row.
    pub row_is_said: bool,
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
        let (row_is_said, position, cable_conductor, radius) = (false, None, None, None);
        Self { id, wall, row, row_is_said, position, at, size, diameter, cable_conductor, radius }
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
    counted(proof.rulebook().pull.raceway_counts_as.apply, size, outside)
}

/// What an entry counts with, by its trade size and its outside diameter, as far as they are known.
pub type CountsWith = fn(Option<Figure>, Option<Figure>) -> Option<Figure>;

const TRADE_SIZES: (&str, CountsWith) = ("trade-size", |size, _| size);

impl Choice for RacewayCountsAs {
    type Apply = CountsWith;
    const LAWFUL: Strategy<Self> = Strategy::<Self>::new(TRADE_SIZES.0, TRADE_SIZES.1);
}

impl Choice for CableCountsAs {
    type Apply = CountsWith;
    const LAWFUL: Strategy<Self> = Strategy::<Self>::new(TRADE_SIZES.0, TRADE_SIZES.1);
}

/// What an entry counts with; it is measured from its outside diameter where that is known.
pub fn counted(counts: CountsWith, size: Option<Figure>, outside: Option<Figure>) -> SizeAndDiameter {
    let size = counts(size, outside);
    (size, outside.or(size))
}
