//! Dimensions of bare conductors: Chapter 9, Table 8.

use super::by_size::BySize;
use super::conductor_dimensions::Dimensions;
use super::loader::File;
use super::table::Column;
use crate::quantity::{Unit, Units};
use crate::trade::ConductorSize;
use std::sync::LazyLock;

/// The id of the table.
pub const TABLE: &str = "bare-conductor-dimensions";

pub(super) static FILE: File = File::new(
    TABLE,
    "Chapter 9, Table 8",
    &[
        Column::text("size"),
        Column::text("construction"),
        Column::figures("circular_mils", Unit::One),
        Column::figures("strands", Unit::One),
        Column::figures("strand_diameter_in", Unit::Inch),
        Column::figures("diameter_in", Unit::Inch),
        Column::figures("area_in2", Unit::SquareInch),
        Column::figures("strand_diameter_mm", Unit::Millimetre),
        Column::figures("diameter_mm", Unit::Millimetre),
        Column::figures("area_mm2", Unit::SquareMillimetre),
    ],
    include_str!("data/bare-conductor-dimensions.csv"),
);

/// Solid and stranded.
static ROWS: LazyLock<[BySize<Dimensions>; 2]> = LazyLock::new(|| {
    ["solid", "stranded"].map(|construction| {
        BySize::new(|size, units| {
            Dimensions::of_row(FILE.table()?, &format!("{} {construction}", size.name()), units)
        })
    })
});

/// The dimensions of a bare conductor; `None` for a size that the table does not have in that construction.
///
/// ```
/// use elbowroom::{quantity::Units, tables::bare_conductor_dimensions, trade::ConductorSize};
/// let eight = ConductorSize::read("8").unwrap();
/// let solid = bare_conductor_dimensions::of(eight, false, Units::Us).unwrap();
/// assert_eq!(solid.area.unwrap().value.to_string(), "0.013");
/// ```
pub fn of(size: ConductorSize, stranded: bool, units: Units) -> Option<Dimensions> {
    ROWS[usize::from(stranded)].of(size, units)
}

/// The sizes that the table has in a construction, smallest first.
pub fn sizes(stranded: bool) -> impl Iterator<Item = ConductorSize> {
    ConductorSize::all().filter(move |size| of(*size, stranded, Units::Us).is_some())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_row_is_reached_and_complete() {
        let table = FILE.table().unwrap();
        assert_eq!(sizes(false).count() + sizes(true).count(), table.rows.len());
        assert_eq!((sizes(false).count(), sizes(true).count()), (6, 30));
        for stranded in [false, true] {
            for size in sizes(stranded) {
                for units in [Units::Us, Units::Si] {
                    let found = of(size, stranded, units).unwrap();
                    assert!(found.diameter.is_some() && found.area.is_some(), "{size}");
                }
            }
        }
    }
}
