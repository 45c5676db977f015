//! How full a raceway may be: Chapter 9, Table 1 and its notes.
//!
//! The rules state these figures per edition (the table `rule-figures`); this table is where an auditor finds which
//! note each comes from. A test holds the two together.

use super::loader::File;
use super::table::Column;
use crate::quantity::Unit;

/// The id of the table.
pub const TABLE: &str = "raceway-fill-limits";

pub(super) static FILE: File = File::new(
    TABLE,
    "Chapter 9, Table 1 and notes",
    &[
        Column::figures("value_us", Unit::One),
        Column::text("unit_us"),
        Column::figures("value_si", Unit::One),
        Column::text("unit_si"),
        Column::text("place"),
    ],
    include_str!("data/raceway-fill-limits.csv"),
);

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Units;
    use crate::rulebook::{Edition, Rulebook};

    #[test]
    fn every_row_is_what_the_rules_state() {
        let table = FILE.table().unwrap();
        for edition in Edition::ALL {
            for row in &table.rows {
                let name = format!("raceway-fill.{}", row.key);
                let figure = Rulebook::of(edition).figures().find(|figure| figure.name == name);
                let figure = figure.unwrap_or_else(|| panic!("no rule of {} states {name}", edition.year()));
                for (units, column) in [(Units::Us, "value_us"), (Units::Si, "value_si")] {
                    assert_eq!(table.number(row.key, column), Some(figure.value(units)), "{name}");
                }
            }
        }
    }
}
