//! What a trade size stands for in a sum of lengths: inches, or its metric designator in millimetres.

use super::loader::File;
use super::table::{Cell, Column};
use crate::quantity::{Unit, Units};
use crate::trade::TradeSize;
use std::sync::LazyLock;

/// The id of the table.
pub const TABLE: &str = "trade-sizes";

pub(super) static FILE: File = File::new(
    TABLE,
    "Table 300.1(C)",
    &[Column::figures("size_in", Unit::Inch), Column::figures("designator_mm", Unit::Millimetre)],
    include_str!("data/trade-sizes.csv"),
);

static BY_SIZE: LazyLock<[Vec<Option<Cell>>; 2]> = LazyLock::new(|| {
    ["size_in", "designator_mm"].map(|column| {
        let table = FILE.table();
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
        assert_eq!(FILE.table().unwrap().rows.len(), TradeSize::all().count());
    }
}
