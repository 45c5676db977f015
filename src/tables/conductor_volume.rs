//! The room that one conductor takes: Table 314.16(B).

use super::{Cell, Column, all, loader};
use crate::quantity::{Unit, Units};
use crate::trade::{ConductorSize, SizeSet};
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

/// The sizes that the table has.
pub fn sizes() -> SizeSet {
    static ALL: LazyLock<SizeSet> =
        LazyLock::new(|| ConductorSize::all().filter(|size| of(*size, Units::Us).is_some()).collect());
    *ALL
}

fn find(size: ConductorSize, units: Units) -> Option<Cell> {
    let column = match units {
        Units::Us => "volume_in3",
        Units::Si => "volume_cm3",
    };
    all().find(TABLE)?.cell(size.name(), column)
}
