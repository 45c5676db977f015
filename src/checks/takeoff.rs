//! What an answer says of the things that a job needs, so that a takeoff can add them up.

use crate::checks::outlet_fill::Material;
use crate::derivation::Figure;
use crate::quantity::{Decimal, Unit};
use crate::tables::standard_boxes::StandardBox;
use crate::trade::{RacewayKind, TradeSize};

/// The one thing that a bill of material takes from an answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum BillItem {
    /// A standard metal box, with the gangs that it is taken with.
    StandardBox {
        /// The box.
        standard: StandardBox,
        /// How many gangs; 1 for a box that is not counted by the gang.
        gangs: Decimal,
    },
    /// A box that is known by the volume marked on it.
    MarkedBox {
        /// What it is made of, where that was said.
        material: Option<Material>,
        /// The volume marked on it.
        volume: Decimal,
        /// The unit of the volume.
        unit: Unit,
    },
    /// A run of raceway.
    Raceway {
        /// The kind.
        kind: RacewayKind,
        /// The trade size.
        trade_size: TradeSize,
    },
    /// Something is needed, but no one thing can be named: it is not determined, divided, measured on the spot, or larger
    /// than any in the tables.
    Open,
}

/// What a takeoff takes from an answer beside its verdict.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct TakeoffFigures {
    /// What is required, or what goes in.
    pub required: Option<Figure>,
    /// What there is for it, or what is allowed.
    pub available: Option<Figure>,
    /// What the job needs: the thing itself where it complies, otherwise the smallest that does.
    pub billed: Option<BillItem>,
}
