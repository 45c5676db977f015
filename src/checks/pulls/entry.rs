//! What each entry counts as in the sums, and where its edge is.

use super::wall::Wall;
use crate::checks::pull_box::Entry;
use crate::checks::pull_box::cable_size;
use crate::checks::raceway_fill::sizing::Sizer;
use crate::derivation::{Derivation, Figure, Pointer};
use crate::quantity::Measure;
use crate::rulebook::pull::{CountsAs, PLACEMENT, TRADE_SIZE};
use crate::tables::trade_sizes;

/// One entry of a chamber, with what the sums need of it.
pub struct Entered<'a> {
    pub entry: &'a Entry,
    pub at: Pointer,
    /// What stands for it in the sums: its trade size, or that of the raceway its cable would need. `None` where that
    /// could not be established, and over 1000 V.
    pub size: Option<Figure>,
    /// The diameter that its edge is measured by.
    pub diameter: Option<Figure>,
    /// Half of that, once it was asked for.
    radius: Option<Figure>,
}

impl<'a> Entered<'a> {
    pub fn new(entry: &'a Entry, at: Pointer, size: Option<Figure>, diameter: Option<Figure>) -> Self {
        Self { entry, at, size, diameter, radius: None }
    }

    /// An entry that counts with the trade size of its raceway, or with that of the raceway its cable would need.
    pub fn by_trade_size(proof: &mut Derivation, sizer: &mut Sizer, entry: &'a Entry, index: usize) -> Self {
        let at = Pointer::of(&"/entries/#", index);
        if let Some(cable) = &entry.cable {
            let size = cable_size::trade_size(proof, sizer, cable, index);
            let outside = cable.outside_diameter.map(|outside| {
                let at = at.member(&"/cable/outside_diameter");
                proof.given(&PLACEMENT, outside.value(), Measure::Length, at)
            });
            let size = match proof.rulebook().pull.cable_counts_as {
                CountsAs::TradeSize => size,
                CountsAs::OutsideDiameter => outside.or(size),
            };
            return Self::new(entry, at, size, outside.or(size));
        }
        Self::by_raceway(proof, entry, at)
    }

    /// An entry that counts with the trade size of its raceway.
    pub fn by_raceway(proof: &mut Derivation, entry: &'a Entry, at: Pointer) -> Self {
        let raceway = entry.raceway.as_ref();
        let size = raceway
            .and_then(|raceway| trade_sizes::of(raceway.trade_size, proof.units()))
            .map(|cell| proof.lookup(&TRADE_SIZE, cell, Some(at.member(&"/raceway/trade_size"))));
        let outside = raceway.and_then(|raceway| raceway.outside_diameter).map(|outside| {
            let at = at.member(&"/raceway/outside_diameter");
            proof.given(&PLACEMENT, outside.value(), Measure::Length, at)
        });
        let size = match proof.rulebook().pull.raceway_counts_as {
            CountsAs::TradeSize => size,
            CountsAs::OutsideDiameter => outside.or(size),
        };
        Self::new(entry, at, size, outside.or(size))
    }

    pub fn id(&self) -> &'a str {
        self.entry.id.as_str()
    }

    pub const fn wall(&self) -> Wall {
        self.entry.wall
    }

    /// The row that it is declared in; a side wall has one row unless said otherwise.
    pub fn declared_row(&self) -> Option<u32> {
        let row = self.entry.row.map(|row| row.get());
        if self.wall() == Wall::Back { row } else { Some(row.unwrap_or(1)) }
    }

    /// The length from its centre to its edge.
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
