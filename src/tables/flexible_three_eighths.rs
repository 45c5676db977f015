//! How many conductors trade size 3/8 of flexible conduit takes, where their fittings are inside or outside it: Table 348.22.

use super::loader::File;
use super::table::{Cell, Column};
use crate::quantity::Unit;
use crate::trade::{ConductorSize, Insulation};

/// The id of the table.
pub const TABLE: &str = "flexible-three-eighths";

pub(super) static FILE: File = File::new(
    TABLE,
    "Table 348.22",
    &[
        Column::text("types"),
        Column::figures("fittings_inside", Unit::One),
        Column::figures("fittings_outside", Unit::One),
    ],
    include_str!("data/flexible-three-eighths.csv"),
);

/// How many conductors of one type and size the conduit takes with its fittings inside, and outside; `None` where the table has
/// no such conductor. Types with a higher wet rating stand under the letters that are printed.
///
/// ```
/// use elbowroom::tables::flexible_three_eighths;
/// use elbowroom::trade::{ConductorSize, Insulation};
/// let size = ConductorSize::read("14").unwrap();
/// let [inside, outside] = flexible_three_eighths::of(Insulation::Thwn2, size).unwrap();
/// assert_eq!((inside.value.to_string(), outside.value.to_string()), ("3".to_owned(), "4".to_owned()));
/// ```
pub fn of(insulation: Insulation, size: ConductorSize) -> Option<[Cell; 2]> {
    let group = match insulation {
        Insulation::Rfh2 | Insulation::Sf2 => "RFH-2",
        Insulation::Tf | Insulation::Xhhw | Insulation::Xhhw2 | Insulation::Tw => "TF",
        Insulation::Tfn | Insulation::Thhn | Insulation::Thwn | Insulation::Thwn2 => "THHN",
        Insulation::Fep | Insulation::Fepb | Insulation::Pf | Insulation::Pgf => "FEP",
        _ => return None,
    };
    let (table, row) = (FILE.table()?, format!("{group} {}", size.name()));
    Some([table.cell(&row, "fittings_inside")?, table.cell(&row, "fittings_outside")?])
}
