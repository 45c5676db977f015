//! Dimensions of compact-stranded conductors: Chapter 9, Table 5A.

use super::by_size::BySize;
use super::conductor_dimensions::{COLUMNS, Dimensions, by_type};
use super::loader::File;
use crate::quantity::Units;
use crate::trade::{ConductorSize, Insulation};
use std::sync::LazyLock;

/// The id of the table.
pub const TABLE: &str = "compact-conductor-dimensions";

pub(super) static FILE: File =
    File::new(TABLE, "Chapter 9, Table 5A", COLUMNS, include_str!("data/compact-conductor-dimensions.csv"));

static BY_TYPE: LazyLock<Vec<BySize<Dimensions>>> = LazyLock::new(|| by_type(&FILE));

static BARE: LazyLock<BySize<Dimensions>> = LazyLock::new(|| {
    BySize::new(|size, units| Dimensions::of_row(FILE.table()?, &format!("bare {}", size.name()), units))
});

/// The dimensions of a compact insulated conductor; `None` for a type or a size that the table does not have.
///
/// ```
/// use elbowroom::{quantity::Units, tables::compact_conductor_dimensions, trade::{ConductorSize, Insulation}};
/// let size = ConductorSize::read("250 kcmil").unwrap();
/// let compact = compact_conductor_dimensions::of(Insulation::Xhhw2, size, Units::Us).unwrap();
/// assert_eq!(compact.area.unwrap().value.to_string(), "0.3421");
/// ```
pub fn of(insulation: Insulation, size: ConductorSize, units: Units) -> Option<Dimensions> {
    BY_TYPE.get(insulation.index())?.of(size, units)
}

/// The dimensions of a compact bare conductor, for which the table prints a diameter only.
pub fn bare(size: ConductorSize, units: Units) -> Option<Dimensions> {
    BARE.of(size, units)
}

/// The sizes that the table has for a type, smallest first; none for a type that it does not name.
pub fn sizes(insulation: Insulation) -> impl Iterator<Item = ConductorSize> {
    ConductorSize::all().filter(move |size| of(insulation, *size, Units::Us).is_some())
}

/// The types that the table names.
pub fn types() -> impl Iterator<Item = Insulation> {
    Insulation::ALL.iter().copied().filter(|insulation| sizes(*insulation).next().is_some())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_row_is_reached() {
        let bare_sizes: Vec<_> =
            ConductorSize::all().filter(|size| bare(*size, Units::Us).is_some()).collect();
        let insulated = [Insulation::Thw, Insulation::Thhn, Insulation::Xhhw].map(|kind| sizes(kind).count());
        assert_eq!((bare_sizes.len(), insulated), (19, [19, 18, 19]));
        assert_eq!(FILE.table().unwrap().rows.len(), 75);
        assert!(bare_sizes.iter().all(|size| bare(*size, Units::Si).unwrap().area.is_none()));
    }

    #[test]
    fn compact_is_smaller_than_ordinary_stranding() {
        for insulation in types() {
            for size in sizes(insulation) {
                let area = |found: Option<Dimensions>| found.unwrap().area.unwrap().value;
                for units in [Units::Us, Units::Si] {
                    let ordinary = super::super::conductor_dimensions::of(insulation, None, size, units);
                    let compact = of(insulation, size, units);
                    // 8 AWG THW compact is the one exception: its insulation is thicker than in Table 5.
                    let thw_8 = insulation.letters().starts_with('T') && size.name() == "8 AWG";
                    assert_eq!(area(compact) < area(ordinary), !thw_8, "{insulation} {size}");
                }
            }
        }
    }
}
