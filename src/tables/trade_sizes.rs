//! What a trade size stands for in a sum of lengths: inches, or its metric designator in millimetres.

use super::{Cell, Column, all, loader};
use crate::quantity::{Unit, Units};
use crate::trade::TradeSize;
use std::sync::LazyLock;

/// The id of the table.
pub const TABLE: &str = "trade-sizes";

pub(super) const FILE: loader::File = loader::File {
    id: TABLE,
    section: "Table 300.1(C)",
    columns: &[Column::figures("size_in", Unit::Inch), Column::figures("designator_mm", Unit::Millimetre)],
    text: include_str!("data/trade-sizes.csv"),
};

static BY_SIZE: LazyLock<[Vec<Option<Cell>>; 2]> = LazyLock::new(|| {
    ["size_in", "designator_mm"].map(|column| {
        let table = all().find(TABLE);
        TradeSize::all().map(|size| table?.cell(size.name(), column)).collect()
    })
});

/// The number that stands for a trade size; `None` only if the table lacks it, which a test rules out.
///
/// ```
/// use elbowroom::{quantity::Units, tables::trade_sizes, trade::TradeSize};
/// let two = TradeSize::read("2").unwrap();
/// assert_eq!(trade_sizes::of(two, Units::Si).unwrap().value.to_string(), "53");
/// ```
pub fn of(size: TradeSize, units: Units) -> Option<Cell> {
    BY_SIZE[units as usize].get(size.index()).copied().flatten()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_table_says_what_the_trade_sizes_themselves_say() {
        for size in TradeSize::all() {
            for units in [Units::Us, Units::Si] {
                assert_eq!(of(size, units).unwrap().value, size.figure(units), "{size}");
            }
        }
        assert_eq!(all().find(TABLE).unwrap().rows.len(), TradeSize::all().count());
    }
}
