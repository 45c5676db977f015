//! The room that one conductor takes: Table 314.16(B).

use super::by_size::BySize;
use super::loader::File;
use super::table::{Cell, Column};
use crate::quantity::{Unit, Units};
use crate::trade::{ConductorSize, SizeSet};
use std::sync::LazyLock;

/// The id of the table.
pub const TABLE: &str = "conductor-volume";

pub(super) static FILE: File = File::new(
    TABLE,
    "Table 314.16(B); Table 314.16(B)(1) in 2023",
    &[Column::figures("volume_in3", Unit::CubicInch), Column::figures("volume_cm3", Unit::CubicCentimetre)],
    include_str!("data/conductor-volume.csv"),
);

static BY_SIZE: LazyLock<BySize<Cell>> = LazyLock::new(|| {
    BySize::new(|size, units| FILE.cell(size.name(), ["volume_in3", "volume_cm3"][units as usize]))
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
    BY_SIZE.of(size, units)
}

/// The sizes that the table has.
pub fn sizes() -> SizeSet {
    static ALL: LazyLock<SizeSet> =
        LazyLock::new(|| ConductorSize::all().filter(|size| of(*size, Units::Us).is_some()).collect());
    *ALL
}
