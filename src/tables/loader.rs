//! The strict reader of table files.

use super::{Affirmation, Basis, Cell};
use crate::quantity::{Decimal, Unit};
use std::fmt;

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
    /// How far the row can be trusted.
    pub basis: Basis,
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
        let (table, unit, basis) = (&self.id, column.unit?, row.basis);
        Some(Cell { table, row: &row.key, column: &column.name, value: *value, unit, basis })
    }

    /// The yes or no in a row and column, with everything that a proof says of it; `None` where there is neither.
    pub fn affirmation(&'static self, row: &str, column: &str) -> Option<Affirmation> {
        let holds = self.affirmed(row, column)?;
        let row = self.row(row)?;
        let column = self.columns.get(self.column(column)?)?;
        Some(Affirmation { table: &self.id, row: &row.key, column: &column.name, holds, basis: row.basis })
    }

    /// The figure in a row and column; `None` where there is none.
    pub fn number(&self, row: &str, column: &str) -> Option<Decimal> {
        match self.row(row)?.values.get(self.column(column)?)? {
            Value::Number(number) => Some(*number),
            _ => None,
        }
    }
}

/// A file before it is read.
pub(super) struct File {
    pub id: &'static str,
    pub section: &'static str,
    pub columns: &'static [Column],
    pub text: &'static str,
}

/// What is wrong with a table file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LoadFault {
    /// The table.
    pub table: &'static str,
    /// The line of the file, from 1; 0 for the file as a whole.
    pub line: usize,
    /// What is wrong there.
    pub what: String,
}

impl fmt::Display for LoadFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "table {}, line {}: {}", self.table, self.line, self.what)
    }
}

impl std::error::Error for LoadFault {}

/// Reads a file whose first column is the key and, when sources are given, whose last three are basis, source and note.
pub(super) fn read(file: &File, sources: Option<&[&str]>) -> Result<Table, LoadFault> {
    let fault = |line: usize, what: String| LoadFault { table: file.id, line, what };
    let mut reader = csv::ReaderBuilder::new().from_reader(file.text.as_bytes());
    let header = reader.headers().map_err(|error| fault(1, error.to_string()))?.clone();
    let provenance: &[&str] = if sources.is_some() { &["basis", "source", "note"] } else { &[] };
    let expected = file.columns.iter().map(|column| column.name).chain(provenance.iter().copied());
    if !header.iter().skip(1).eq(expected) {
        return Err(fault(1, "the columns are not those that the table declares".to_owned()));
    }
    let mut rows: Vec<Row> = Vec::new();
    for (index, record) in reader.records().enumerate() {
        let line = index + 2;
        let record = record.map_err(|error| fault(line, error.to_string()))?;
        let row = read_row(file, sources, &record).map_err(|what| fault(line, what))?;
        if rows.iter().any(|earlier| earlier.key == row.key) {
            return Err(fault(line, format!("the key {} stands twice", row.key)));
        }
        rows.push(row);
    }
    if rows.is_empty() {
        return Err(fault(0, "there are no rows".to_owned()));
    }
    Ok(Table { id: file.id, section: file.section, columns: file.columns.to_vec(), rows })
}

fn read_row(file: &File, sources: Option<&[&str]>, record: &csv::StringRecord) -> Result<Row, String> {
    let field = |place: usize| record.get(place).unwrap_or_default();
    let key = field(0);
    if key.is_empty() {
        return Err("the key is empty".to_owned());
    }
    let mut values = Vec::with_capacity(file.columns.len());
    for (place, column) in file.columns.iter().enumerate() {
        let text = field(place + 1);
        values.push(match column.unit {
            _ if text.is_empty() => Value::Absent,
            None => Value::Text(keep(text)),
            Some(_) => Value::Number(text.parse().map_err(|error| format!("{}: {error}", column.name))?),
        });
    }
    let Some(known) = sources else {
        return Ok(Row { key: keep(key), values, basis: Basis::Recalled, sources: Vec::new(), note: "" });
    };
    let after = file.columns.len() + 1;
    let basis = Basis::read(field(after)).ok_or_else(|| format!("{} is no basis", field(after)))?;
    let named: Vec<&'static str> = field(after + 1).split_whitespace().map(keep).collect();
    if named.is_empty() {
        return Err("no source is named".to_owned());
    }
    if let Some(unknown) = named.iter().find(|name| !known.contains(name)) {
        return Err(format!("{unknown} is not among the sources"));
    }
    Ok(Row { key: keep(key), values, basis, sources: named, note: keep(field(after + 2)) })
}

/// Keeps a text for as long as the program runs. Tables are read once, so this is bounded by the files.
fn keep(text: &str) -> &'static str {
    if text.is_empty() { "" } else { Box::leak(text.to_owned().into_boxed_str()) }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn load(text: &'static str) -> Result<Table, LoadFault> {
        let columns = const { &[Column::figures("volume_in3", Unit::CubicInch)] };
        read(&File { id: "test", section: "", columns, text }, Some(&["book"]))
    }

    #[test]
    fn a_good_file_is_read() {
        let table = load("size,volume_in3,basis,source,note\n12 AWG,2.25,published,book,\n").unwrap();
        assert_eq!(table.number("12 AWG", "volume_in3"), Some("2.25".parse().unwrap()));
    }

    #[test]
    fn every_fault_is_named_with_its_line() {
        for (text, line, what) in [
            ("size,volume,basis,source,note\n12,1,published,book,\n", 1, "columns"),
            ("size,volume_in3,basis,source,note\n", 0, "no rows"),
            ("size,volume_in3,basis,source,note\n12,1,guessed,book,\n", 2, "no basis"),
            ("size,volume_in3,basis,source,note\n12,1,published,,\n", 2, "no source"),
            ("size,volume_in3,basis,source,note\n12,1,published,hearsay,\n", 2, "not among"),
            ("size,volume_in3,basis,source,note\n12,x,published,book,\n", 2, "decimal"),
            ("size,volume_in3,basis,source,note\n12,1,published,book,\n12,1,published,book,\n", 3, "twice"),
            ("size,volume_in3,basis,source,note\n12,1,published,book\n", 2, "record"),
        ] {
            let fault = load(text).unwrap_err();
            assert_eq!(fault.line, line, "{text}");
            assert!(fault.what.contains(what), "{fault}");
        }
    }
}
