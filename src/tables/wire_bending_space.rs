//! The room that a conductor needs to bend at a wall: Table 312.6(A), one wire per terminal.
//!
//! The table also has figures for several wires per terminal; no rule here uses them, and they are kept so that the
//! table can be compared with print as a whole. Compact conductors of AA-8000 alloy have a table of their own, whose
//! ranges are recalled only.

use super::by_size::BySize;
use super::loader::File;
use super::table::{Cell, Column};
use crate::quantity::{Unit, Units};
use crate::trade::ConductorSize;
use std::sync::LazyLock;

/// The id of the table.
pub const TABLE: &str = "wire-bending-space";
/// The id of the table for compact AA-8000 conductors.
pub const COMPACT_TABLE: &str = "wire-bending-space-compact";

pub(super) static FILE: File = File::new(
    TABLE,
    "Table 312.6(A)",
    &[
        Column::figures("one_wire_in", Unit::Inch),
        Column::figures("two_wires_in", Unit::Inch),
        Column::figures("three_wires_in", Unit::Inch),
        Column::figures("four_wires_in", Unit::Inch),
        Column::figures("five_wires_in", Unit::Inch),
        Column::figures("one_wire_mm", Unit::Millimetre),
        Column::figures("two_wires_mm", Unit::Millimetre),
        Column::figures("three_wires_mm", Unit::Millimetre),
        Column::figures("four_wires_mm", Unit::Millimetre),
        Column::figures("five_wires_mm", Unit::Millimetre),
    ],
    include_str!("data/wire-bending-space.csv"),
);

pub(super) static COMPACT_FILE: File = File::new(
    COMPACT_TABLE,
    "Table 312.6(A), column for compact AA-8000 conductors",
    &[Column::figures("one_wire_in", Unit::Inch), Column::figures("one_wire_mm", Unit::Millimetre)],
    include_str!("data/wire-bending-space-compact.csv"),
);

/// Whether a conductor is looked up among the plain ones or among the compact AA-8000 ones.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stranding {
    /// Every conductor that is not a compact AA-8000 one.
    Plain,
    /// Compact conductors of AA-8000 aluminum alloy.
    CompactAa8000,
}

static PLAIN: LazyLock<BySize<Cell>> = LazyLock::new(|| one_wire(&FILE));
static COMPACT: LazyLock<BySize<Cell>> = LazyLock::new(|| one_wire(&COMPACT_FILE));

fn one_wire(file: &'static File) -> BySize<Cell> {
    BySize::new(|size, units| file.cell(size.name(), ["one_wire_in", "one_wire_mm"][units as usize]))
}

/// The bending space of one conductor, one wire per terminal; `None` for a size that the table does not have.
///
/// ```
/// use elbowroom::quantity::Units;
/// use elbowroom::tables::wire_bending_space::{self, Stranding};
/// use elbowroom::trade::ConductorSize;
/// let size = ConductorSize::read("4/0").unwrap();
/// let space = |stranding| wire_bending_space::of(size, stranding, Units::Us).unwrap().value.to_string();
/// assert_eq!(space(Stranding::Plain), "4");
/// assert_eq!(space(Stranding::CompactAa8000), "3.5");
/// ```
pub fn of(size: ConductorSize, stranding: Stranding, units: Units) -> Option<Cell> {
    match stranding {
        Stranding::Plain => PLAIN.of(size, units),
        Stranding::CompactAa8000 => COMPACT.of(size, units),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_conductor_that_makes_a_pull_box_has_a_bending_space_that_never_shrinks_with_size() {
        for units in [Units::Us, Units::Si] {
            let spaces: Vec<_> = ConductorSize::all()
                .filter(|size| *size >= ConductorSize::AWG_4)
                .map(|size| of(size, Stranding::Plain, units).unwrap().value)
                .collect();
            assert_eq!(spaces.len(), 25);
            assert!(spaces.is_sorted(), "{spaces:?}");
        }
    }

    #[test]
    fn a_compact_conductor_never_asks_for_more_than_a_plain_one() {
        let both = |size| {
            Some((of(size, Stranding::Plain, Units::Us)?, of(size, Stranding::CompactAa8000, Units::Us)?))
        };
        let pairs: Vec<_> = ConductorSize::all().filter_map(both).collect();
        assert_eq!(pairs.len(), 19);
        assert!(pairs.iter().all(|(plain, compact)| compact.value <= plain.value));
    }
}
