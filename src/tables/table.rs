//! A table that was read, and typed look-up in it.

use super::Bases;
use crate::quantity::{Decimal, Unit};

/// A name that stands in a table, kept by one thin reference, as proofs hold a great many.
pub type Key = &'static &'static str;

/// One figure of a table: where it stands, and how far it can be trusted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Cell {
    /// The table, as `/v1/tables/{id}` serves it.
    pub table: Key,
    /// The key of the row.
    pub row: Key,
    /// The column.
    pub column: Key,
    /// The figure.
    pub value: Decimal,
    /// Its unit.
    pub unit: Unit,
    /// How far the row can be trusted under each edition.
    pub bases: Bases,
}

/// One yes or no of a table: where it stands, and how far it can be trusted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Affirmation {
    /// The table, as `/v1/tables/{id}` serves it.
    pub table: Key,
    /// The key of the row.
    pub row: Key,
    /// The column.
    pub column: Key,
    /// Whether it is a yes.
    pub holds: bool,
    /// How far the row can be trusted under each edition.
    pub bases: Bases,
}

/// One column of a table: its name, and the unit of its figures if it holds any.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Column {
    /// The name in the header of the file.
    pub name: &'static str,
    /// The unit of the figures; `None` for words.
    pub unit: Option<Unit>,
}

impl Column {
    /// A column of words.
    pub const fn text(name: &'static str) -> Self {
        Self { name, unit: None }
    }

    /// A column of figures.
    pub const fn figures(name: &'static str, unit: Unit) -> Self {
        Self { name, unit: Some(unit) }
    }
}

/// What stands in one field of a row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Value {
    /// Words.
    Text(&'static str),
    /// A figure.
    Number(Decimal),
    /// Nothing: the table has no figure there.
    Absent,
}

/// One row: its key, its fields, and where they come from.
#[derive(Clone, Debug)]
pub struct Row {
    /// The key, unique in its table.
    pub key: &'static str,
    /// One field for each column.
    pub values: Vec<Value>,
    /// How far the row can be trusted under each edition.
    pub bases: Bases,
    /// Keys of the table `sources`.
    pub sources: Vec<&'static str>,
    /// What an auditor should know of the row; often empty.
    pub note: &'static str,
}

/// A table that was read.
#[derive(Clone, Debug)]
pub struct Table {
    /// The name under which it is served.
    pub id: &'static str,
    /// Where the code has it; empty for a table of our own.
    pub section: &'static str,
    /// Its columns, after the key.
    pub columns: Vec<Column>,
    /// Its rows, in the order of the file.
    pub rows: Vec<Row>,
}

impl Table {
    /// The row with a key.
    pub fn row(&self, key: &str) -> Option<&Row> {
        self.rows.iter().find(|row| row.key == key)
    }

    /// The place of a column.
    pub fn column(&self, name: &str) -> Option<usize> {
        self.columns.iter().position(|column| column.name == name)
    }

    /// The yes or no in a row and column; `None` where there is neither.
    pub fn affirmed(&self, row: &str, column: &str) -> Option<bool> {
        match self.row(row)?.values.get(self.column(column)?)? {
            Value::Text("yes") => Some(true),
            Value::Text("no") => Some(false),
            _ => None,
        }
    }

    /// The figure in a row and column, with everything that a proof says of it; `None` where there is none.
    pub fn cell(&'static self, row: &str, column: &str) -> Option<Cell> {
        let row = self.row(row)?;
        let place = self.column(column)?;
        let column = self.columns.get(place)?;
        let Value::Number(value) = row.values.get(place)? else { return None };
        let (table, unit, bases) = (&self.id, column.unit?, row.bases);
        Some(Cell { table, row: &row.key, column: &column.name, value: *value, unit, bases })
    }

    /// The yes or no in a row and column, with everything that a proof says of it; `None` where there is neither.
    pub fn affirmation(&'static self, row: &str, column: &str) -> Option<Affirmation> {
        let holds = self.affirmed(row, column)?;
        let row = self.row(row)?;
        let column = self.columns.get(self.column(column)?)?;
        Some(Affirmation { table: &self.id, row: &row.key, column: &column.name, holds, bases: row.bases })
    }

    /// The words in a row and column; `None` where there are none.
    pub fn text(&self, row: &str, column: &str) -> Option<&'static str> {
        match self.row(row)?.values.get(self.column(column)?)? {
            Value::Text(text) => Some(text),
            _ => None,
        }
    }

    /// The figure in a row and column; `None` where there is none.
    pub fn number(&self, row: &str, column: &str) -> Option<Decimal> {
        match self.row(row)?.values.get(self.column(column)?)? {
            Value::Number(number) => Some(*number),
            _ => None,
        }
    }
}
