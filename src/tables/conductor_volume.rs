//! The room that one conductor takes: Table 314.16(B).

use super::{Cell, Column, all, loader};
use crate::quantity::{Unit, Units};
use crate::trade::ConductorSize;
use std::sync::LazyLock;

/// The id of the table.
pub const TABLE: &str = "conductor-volume";

pub(super) const FILE: loader::File = loader::File {
    id: TABLE,
    section: "Table 314.16(B); Table 314.16(B)(1) in 2023",
    columns: &[
        Column::figures("volume_in3", Unit::CubicInch),
        Column::figures("volume_cm3", Unit::CubicCentimetre),
    ],
    text: include_str!("data/conductor-volume.csv"),
};

static BY_SIZE: LazyLock<[[Option<Cell>; ConductorSize::COUNT]; 2]> = LazyLock::new(|| {
    [Units::Us, Units::Si].map(|units| {
        let mut cells = [None; ConductorSize::COUNT];
        for size in ConductorSize::all() {
            cells[size.index()] = find(size, units);
        }
        cells
    })
});

/// The room that one conductor of a size takes; `None` for a size that the table does not have.
///
/// ```
/// use elbowroom::{quantity::Units, tables::conductor_volume, trade::ConductorSize};
/// let twelve = ConductorSize::read("12").unwrap();
/// assert_eq!(conductor_volume::of(twelve, Units::Us).unwrap().value.to_string(), "2.25");
/// assert_eq!(conductor_volume::of(ConductorSize::AWG_4, Units::Us), None);
/// ```
pub fn of(size: ConductorSize, units: Units) -> Option<Cell> {
    BY_SIZE[units as usize][size.index()]
}

/// The sizes that the table has, smallest first.
pub fn sizes() -> impl Iterator<Item = ConductorSize> {
    ConductorSize::all().filter(|size| of(*size, Units::Us).is_some())
}

fn find(size: ConductorSize, units: Units) -> Option<Cell> {
    let table = all().find(TABLE)?;
    let row = table.row(size.name())?;
    let (column, unit) = match units {
        Units::Us => ("volume_in3", Unit::CubicInch),
        Units::Si => ("volume_cm3", Unit::CubicCentimetre),
    };
    let value = table.number(row.key, column)?;
    Some(Cell { table: TABLE, row: row.key, column, value, unit, basis: row.basis })
}
