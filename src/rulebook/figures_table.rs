//! The figures that rules state, laid out as a table so that anyone can check a proof against it.

use super::{Edition, RuleFigure, Rulebook};
use crate::quantity::{Unit, Units};
use crate::tables::{Column, Row, Table, Value};
use std::sync::LazyLock;

/// The id of the table.
pub const TABLE: &str = "rule-figures";

/// One column for each edition and system of units; the unit of a figure stands in its own column.
const COLUMNS: [Column; 11] = [
    Column::text("rule"),
    Column::text("unit_us"),
    Column::text("unit_si"),
    Column::figures("2017_us", Unit::One),
    Column::figures("2017_si", Unit::One),
    Column::figures("2020_us", Unit::One),
    Column::figures("2020_si", Unit::One),
    Column::figures("2023_us", Unit::One),
    Column::figures("2023_si", Unit::One),
    Column::figures("2026_us", Unit::One),
    Column::figures("2026_si", Unit::One),
];

/// The column that holds the figures of an edition in one system.
pub const fn column(edition: Edition, units: Units) -> &'static str {
    COLUMNS[3 + 2 * edition as usize + units as usize].name
}

/// The table, from the rulebooks themselves.
pub fn table() -> &'static Table {
    &ALL
}

static ALL: LazyLock<Table> = LazyLock::new(build);

fn build() -> Table {
    let mut names: Vec<RuleFigure> = Vec::new();
    for edition in Edition::ALL {
        for figure in Rulebook::of(edition).figures() {
            if !names.iter().any(|known| known.name == figure.name) {
                names.push(figure);
            }
        }
    }
    names.sort_by_key(|figure| figure.name);
    Table { id: TABLE, section: "", columns: COLUMNS.to_vec(), rows: names.into_iter().map(row).collect() }
}

fn row(figure: RuleFigure) -> Row {
    let unit = |units: Units| Value::Text(units.of(figure.measure).name());
    let mut values = vec![Value::Text(figure.rule.id), unit(Units::Us), unit(Units::Si)];
    for edition in Edition::ALL {
        let stated = Rulebook::of(edition).figures().find(|stated| stated.name == figure.name);
        for units in [Units::Us, Units::Si] {
            values.push(stated.map_or(Value::Absent, |stated| Value::Number(stated.value(units))));
        }
    }
    Row { key: figure.name, values, bases: figure.rule.bases, sources: Vec::new(), note: figure.rule.source }
}
