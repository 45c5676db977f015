//! What a trade size stands for in a sum of lengths: inches, or its metric designator in millimetres.

use super::{Cell, Column, all, loader};
use crate::quantity::{Unit, Units};
use crate::trade::TradeSize;

/// The id of the table.
pub const TABLE: &str = "trade-sizes";

pub(super) const FILE: loader::File = loader::File {
    id: TABLE,
    section: "Table 300.1(C)",
    columns: &[Column::figures("size_in", Unit::Inch), Column::figures("designator_mm", Unit::Millimetre)],
    text: include_str!("data/trade-sizes.csv"),
};

/// The number that stands for a trade size; `None` only if the table lacks it, which a test rules out.
///
/// ```
/// use elbowroom::{quantity::Units, tables::trade_sizes, trade::TradeSize};
/// let two = TradeSize::read("2").unwrap();
/// assert_eq!(trade_sizes::of(two, Units::Si).unwrap().value.to_string(), "53");
/// ```
pub fn of(size: TradeSize, units: Units) -> Option<Cell> {
    let row = all().find(TABLE)?.row(size.name())?;
    let (column, unit) = match units {
        Units::Us => ("size_in", Unit::Inch),
        Units::Si => ("designator_mm", Unit::Millimetre),
    };
    let value = all().find(TABLE)?.number(row.key, column)?;
    Some(Cell { table: TABLE, row: row.key, column, value, unit, basis: row.basis })
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
