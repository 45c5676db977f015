//! Table files, and their strict reader.

use super::table::{Affirmation, Cell, Column, Row, Table, Value};
use super::{Bases, Basis};
use std::sync::OnceLock;

/// A file of a table, part of the program, and the table once it is read.
pub(super) struct File {
    id: &'static str,
    section: &'static str,
    columns: &'static [Column],
    text: &'static str,
    read: OnceLock<Result<Table, LoadFault>>,
}

/// The published sources, which rows of the other tables name.
pub(super) static SOURCES: File = File::new(
    "sources",
    "",
    &[
        Column::text("kind"),
        Column::text("title"),
        Column::text("publisher"),
        Column::text("date"),
        Column::text("address"),
    ],
    include_str!("data/sources.csv"),
);

impl File {
    pub(super) const fn new(
        id: &'static str,
        section: &'static str,
        columns: &'static [Column],
        text: &'static str,
    ) -> Self {
        Self { id, section, columns, text, read: OnceLock::new() }
    }

    /// The table without provenance of its rows, read when it is first asked for.
    pub(super) fn without_provenance(&'static self) -> Result<&'static Table, LoadFault> {
        self.read.get_or_init(|| read(self, None)).as_ref().map_err(Clone::clone)
    }

    /// The table, read when it is first asked for.
    pub(super) fn load(&'static self) -> Result<&'static Table, LoadFault> {
        let load = || {
            let sources: Vec<&str> = SOURCES.without_provenance()?.rows.iter().map(|row| row.key).collect();
            read(self, Some(&sources))
        };
        self.read.get_or_init(load).as_ref().map_err(Clone::clone)
    }

    /// The table; `None` if it does not read, which a test rules out.
    pub(super) fn table(&'static self) -> Option<&'static Table> {
        self.load().ok()
    }

    /// The figure in a row and column, with everything that a proof says of it.
    pub(super) fn cell(&'static self, row: &str, column: &str) -> Option<Cell> {
        self.table()?.cell(row, column)
    }

    /// The yes or no in a row and column, with everything that a proof says of it.
    pub(super) fn affirmation(&'static self, row: &str, column: &str) -> Option<Affirmation> {
        self.table()?.affirmation(row, column)
    }
}

/// What is wrong with a table file.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("table {table}, line {line}: {what}")]
pub struct LoadFault {
    /// The table.
    pub table: &'static str,
    /// The line of the file, from 1; 0 for the file as a whole.
    pub line: usize,
    /// What is wrong there.
    pub what: String,
}

/// Reads a file whose first column is the key and, when sources are given, whose last three are basis, source and note.
fn read(file: &File, sources: Option<&[&str]>) -> Result<Table, LoadFault> {
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
        return Ok(Row {
            key: keep(key),
            values,
            bases: Bases::all(Basis::Recalled),
            sources: Vec::new(),
            note: "",
        });
    };
    let after = file.columns.len() + 1;
    let bases = Bases::read(field(after)).ok_or_else(|| format!("{} is no basis", field(after)))?;
    let named: Vec<&'static str> = field(after + 1).split_whitespace().map(keep).collect();
    if named.is_empty() {
        return Err("no source is named".to_owned());
    }
    if let Some(unknown) = named.iter().find(|name| !known.contains(name)) {
        return Err(format!("{unknown} is not among the sources"));
    }
    Ok(Row { key: keep(key), values, bases, sources: named, note: keep(field(after + 2)) })
}

/// Keeps a text for as long as the program runs. Tables are read once, so this is bounded by the files.
fn keep(text: &str) -> &'static str {
    if text.is_empty() { "" } else { Box::leak(text.to_owned().into_boxed_str()) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Unit;

    fn load(text: &'static str) -> Result<Table, LoadFault> {
        let columns = const { &[Column::figures("volume_in3", Unit::CubicInch)] };
        read(&File::new("test", "", columns, text), Some(&["book"]))
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
