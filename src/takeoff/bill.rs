//! What a job needs: standard boxes, boxes by their mark, raceways.

use super::summary::line;
use crate::checks::BillItem;
use crate::checks::outlet_fill::Material;
use crate::quantity::{Decimal, Unit};
use crate::tables::standard_boxes::StandardBox;
use crate::trade::{RacewayKind, TradeSize};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// A standard box, and how many are needed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct StandardBoxes {
    /// The box, by its key in the table `standard-boxes`.
    #[serde(rename = "box")]
    pub standard: StandardBox,
    /// How many gangs it is taken with; 1 for a box that is not counted by the gang.
    #[schema(value_type = f64, example = 1)]
    pub gangs: Decimal,
    /// How many.
    pub count: u64,
}

/// Boxes with one marked volume, and how many are needed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct MarkedBoxes {
    /// What they are made of, where that was said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub material: Option<Material>,
    /// The volume that is marked on each.
    #[schema(value_type = f64, example = 20.3)]
    pub marked_volume: Decimal,
    /// The unit of the volume.
    pub unit: Unit,
    /// How many.
    pub count: u64,
}

/// Runs of one raceway, and how many are needed.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Raceways {
    /// The kind.
    pub kind: RacewayKind,
    /// The trade size.
    #[schema(value_type = String, example = "3/4")]
    pub trade_size: TradeSize,
    /// How many runs.
    pub count: u64,
}

/// What the job needs. What complies counts as itself, what falls short as the smallest that complies, and a question for
/// a size as the smallest that was offered.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub struct Bill {
    /// Standard metal boxes.
    pub standard_boxes: Vec<StandardBoxes>,
    /// Boxes that comply by the volume marked on them, nonmetallic ones above all.
    pub marked_boxes: Vec<MarkedBoxes>,
    /// Raceways, by the run.
    pub raceways: Vec<Raceways>,
    /// How many things are needed that cannot be named: not determined, divided by barriers, measured on the spot, or
    /// larger than any in the tables.
    pub open: u64,
    /// How many things are needed beyond the lines that these lists have room for.
    pub more: u64,
}

impl Bill {
    /// Adds a number of one thing.
    pub(super) fn add(&mut self, billed: BillItem, more: u64) {
        let count = match billed {
            BillItem::Open => Some(&mut self.open),
            BillItem::StandardBox { standard, gangs } => line(
                &mut self.standard_boxes,
                |line| (line.standard, line.gangs).cmp(&(standard, gangs)),
                || StandardBoxes { standard, gangs, count: 0 },
            )
            .map(|line| &mut line.count),
            BillItem::MarkedBox { material, volume, unit } => line(
                &mut self.marked_boxes,
                |line| (line.material, line.unit, line.marked_volume).cmp(&(material, unit, volume)),
                || MarkedBoxes { material, marked_volume: volume, unit, count: 0 },
            )
            .map(|line| &mut line.count),
            BillItem::Raceway { kind, trade_size } => line(
                &mut self.raceways,
                |line| (line.kind, line.trade_size).cmp(&(kind, trade_size)),
                || Raceways { kind, trade_size, count: 0 },
            )
            .map(|line| &mut line.count),
        };
        match count {
            Some(count) => *count += more,
            None => self.more += more,
        }
    }

    /// Each thing that is needed with its number, what is open last.
    pub fn iter(&self) -> impl Iterator<Item = (BillItem, u64)> {
        let Self { standard_boxes, marked_boxes, raceways, open, more: _ } = self;
        let standard = standard_boxes.iter().map(|&StandardBoxes { standard, gangs, count }| {
            (BillItem::StandardBox { standard, gangs }, count)
        });
        let marked =
            marked_boxes.iter().map(|&MarkedBoxes { material, marked_volume: volume, unit, count }| {
                (BillItem::MarkedBox { material, volume, unit }, count)
            });
        let raceways = raceways
            .iter()
            .map(|&Raceways { kind, trade_size, count }| (BillItem::Raceway { kind, trade_size }, count));
        let open = (*open > 0).then_some((BillItem::Open, *open));
        standard.chain(marked).chain(raceways).chain(open)
    }

    /// Adds another bill.
    pub(super) fn absorb(&mut self, other: &Self) {
        other.iter().for_each(|(billed, count)| self.add(billed, count));
        self.more += other.more;
    }
}
