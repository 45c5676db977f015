//! Outside diameters of raceways, as their standards have them: ANSI C80.3 (EMT), C80.6 (IMC), C80.1 (RMC) and NEMA TC-2 (PVC).

use super::loader::File;
use super::table::{Cell, Column};
use crate::quantity::{Decimal, Unit, Units};
use crate::trade::{RacewayKind, TradeSize};
use std::sync::LazyLock;

/// The id of the table.
pub const TABLE: &str = "raceway-outside-diameters";

pub(super) static FILE: File = File::new(
    TABLE,
    "ANSI C80.1, C80.3, C80.6; NEMA TC-2",
    &[
        Column::text("kind"),
        Column::text("trade_size"),
        Column::figures("diameter_in", Unit::Inch),
        Column::figures("diameter_mm", Unit::Millimetre),
    ],
    include_str!("data/raceway-outside-diameters.csv"),
);

/// One row for each kind and trade size, by system: absent where the table has none.
static ROWS: LazyLock<Vec<[Option<Cell>; 2]>> = LazyLock::new(|| {
    let kinds = RacewayKind::ALL.iter();
    kinds.flat_map(|kind| TradeSize::all().map(|size| find(*kind, size))).collect()
});

fn find(kind: RacewayKind, size: TradeSize) -> [Option<Cell>; 2] {
    ["diameter_in", "diameter_mm"].map(|column| {
        let table = FILE.table()?;
        table.cell(table.row(&format!("{} {}", kind.table_name(), size.name()))?.key, column)
    })
}

/// The outside diameter of a raceway; `None` for kinds and trade sizes that the table does not have.
///
/// ```
/// use elbowroom::{quantity::Units, tables::raceway_outside_diameters, trade::{RacewayKind, TradeSize}};
/// let two = TradeSize::read("2").unwrap();
/// let outside = raceway_outside_diameters::of(RacewayKind::Emt, two, Units::Us).unwrap();
/// assert_eq!(outside.value.to_string(), "2.197");
/// ```
pub fn of(kind: RacewayKind, size: TradeSize, units: Units) -> Option<Cell> {
    ROWS.get(kind.index() * TradeSize::COUNT + size.index())?[units as usize]
}

/// The smallest and the largest outside diameter of the kinds that come in a trade size; `None` for a size of which the table has
/// no kind.
pub fn extremes(size: TradeSize, units: Units) -> Option<[Cell; 2]> {
    let cells = || RacewayKind::ALL.iter().filter_map(|kind| of(*kind, size, units));
    let (least, most) = (cells().min_by_key(|cell| cell.value)?, cells().max_by_key(|cell| cell.value)?);
    Some([least, most])
}

/// Whether a raceway of a trade size can have an outside diameter: that of its kind, or one of those of all kinds where the table has
/// none for its own; with 2 % that manufacturing may be off, and above it the 0.1 in (2.5 mm) of a coating or of a corrugated wall.
/// What no kind of the table comes in may have any.
pub fn admits(kind: Option<RacewayKind>, size: TradeSize, units: Units, outside: Decimal) -> bool {
    let of_kind = kind.and_then(|kind| of(kind, size, units)).map(|cell| [cell, cell]);
    let Some([least, most]) = of_kind.or_else(|| extremes(size, units)) else { return true };
    let off = |percent: i64, of: Cell| of.value.times(Decimal::ten_thousandths(percent * 100));
    let coating = if units == Units::Si { 25_000 } else { 1_000 };
    outside >= off(98, least) && outside <= off(102, most) + Decimal::ten_thousandths(coating)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tables::raceway_dimensions::{self, Dimension};

    /// Every row of the file is some kind in some trade size, is wider than the raceway is inside, and grows with the trade size.
    #[test]
    fn every_row_is_reached_and_goes_with_the_others() {
        let mut reached = 0;
        for kind in RacewayKind::ALL.iter().filter(|kind| **kind != RacewayKind::Hdpe) {
            for units in [Units::Us, Units::Si] {
                let sizes: Vec<_> =
                    TradeSize::all().filter(|size| of(*kind, *size, units).is_some()).collect();
                let outside: Vec<_> =
                    sizes.iter().map(|size| of(*kind, *size, units).unwrap().value).collect();
                assert!(outside.is_sorted_by(|one, next| one < next), "{kind}");
                for (size, outside) in sizes.into_iter().zip(&outside) {
                    let inside = raceway_dimensions::of(*kind, size, Dimension::Diameter, units);
                    assert!(inside.is_none_or(|inside| inside.value < *outside), "{kind} {size}");
                    assert!(size.figure(units) < *outside, "{kind} {size}");
                }
                reached += outside.len();
            }
        }
        assert_eq!(reached, 2 * FILE.table().unwrap().rows.len());
    }
}
