//! Dimensions of bare conductors: Chapter 9, Table 8.

use super::conductor_dimensions::Dimensions;
use super::{Column, all, loader};
use crate::quantity::{Unit, Units};
use crate::trade::ConductorSize;
use std::sync::LazyLock;

/// The id of the table.
pub const TABLE: &str = "bare-conductor-dimensions";

pub(super) const FILE: loader::File = loader::File {
    id: TABLE,
    section: "Chapter 9, Table 8",
    columns: &[
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
    text: include_str!("data/bare-conductor-dimensions.csv"),
};

/// Solid and stranded, each by size and system.
static ROWS: LazyLock<[[Option<[Dimensions; 2]>; ConductorSize::COUNT]; 2]> = LazyLock::new(|| {
    [false, true].map(|stranded| {
        let mut line = [None; ConductorSize::COUNT];
        for size in ConductorSize::all() {
            line[size.index()] = find(size, stranded);
        }
        line
    })
});

fn find(size: ConductorSize, stranded: bool) -> Option<[Dimensions; 2]> {
    let table = all().find(TABLE)?;
    let construction = if stranded { "stranded" } else { "solid" };
    let key = table.row(&format!("{} {construction}", size.name()))?.key;
    Some([Dimensions::of_row(table, key, Units::Us)?, Dimensions::of_row(table, key, Units::Si)?])
}

/// The dimensions of a bare conductor; `None` for a size that the table does not have in that construction.
///
/// ```
/// use elbowroom::{quantity::Units, tables::bare_conductor_dimensions, trade::ConductorSize};
/// let eight = ConductorSize::read("8").unwrap();
/// let solid = bare_conductor_dimensions::of(eight, false, Units::Us).unwrap();
/// assert_eq!(solid.area.unwrap().value.to_string(), "0.013");
/// ```
pub fn of(size: ConductorSize, stranded: bool, units: Units) -> Option<Dimensions> {
    ROWS[usize::from(stranded)][size.index()].map(|both| both[units as usize])
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
        let table = all().find(TABLE).unwrap();
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
