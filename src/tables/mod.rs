//! The published tables, one CSV each with its provenance, and typed look-up.
//!
//! The files under `data/` are what an auditor opens. They are read once, by a strict loader: an unknown column, a row
//! without a basis or a source, a figure that is no decimal are errors that a test finds; [`all`] gives the tables read.

pub mod bare_conductor_dimensions;
mod basis;
pub mod compact_conductor_dimensions;
pub mod conductor_dimensions;
pub mod conductor_volume;
pub mod enclosure_types;
mod loader;
pub mod raceway_dimensions;
pub mod raceway_fill_limits;
pub mod standard_boxes;
pub mod supporting_raceways;
pub mod trade_sizes;
pub mod wire_bending_space;

pub use basis::Basis;
pub use loader::{Column, LoadFault, Row, Table, Value};

use crate::quantity::{Decimal, Unit};
use std::sync::LazyLock;

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
    /// How far the row can be trusted.
    pub basis: Basis,
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
    /// How far the row can be trusted.
    pub basis: Basis,
}

/// Every table.
#[derive(Debug)]
pub struct Tables {
    tables: Vec<Table>,
}

impl Tables {
    /// Reads every table, or says what is wrong with the first bad one.
    ///
    /// ```
    /// assert!(elbowroom::tables::Tables::load().is_ok());
    /// ```
    pub fn load() -> Result<Self, LoadFault> {
        let sources = loader::read(&SOURCES, None)?;
        let keys: Vec<&str> = sources.rows.iter().map(|row| row.key).collect();
        let mut tables = vec![
            loader::read(&conductor_volume::FILE, Some(&keys))?,
            loader::read(&standard_boxes::FILE, Some(&keys))?,
            loader::read(&trade_sizes::FILE, Some(&keys))?,
            loader::read(&wire_bending_space::FILE, Some(&keys))?,
            loader::read(&wire_bending_space::COMPACT_FILE, Some(&keys))?,
            loader::read(&raceway_fill_limits::FILE, Some(&keys))?,
            loader::read(&raceway_dimensions::FILE, Some(&keys))?,
            loader::read(&conductor_dimensions::FILE, Some(&keys))?,
            loader::read(&compact_conductor_dimensions::FILE, Some(&keys))?,
            loader::read(&bare_conductor_dimensions::FILE, Some(&keys))?,
            loader::read(&supporting_raceways::FILE, Some(&keys))?,
            loader::read(&enclosure_types::FILE, Some(&keys))?,
            loader::read(&enclosure_types::WORDS_FILE, Some(&keys))?,
        ];
        tables.push(sources);
        Ok(Self { tables })
    }

    /// The table with an id.
    pub fn find(&self, id: &str) -> Option<&Table> {
        self.tables.iter().find(|table| table.id == id)
    }

    /// The tables, in the order in which they are listed.
    pub fn iter(&self) -> impl Iterator<Item = &Table> {
        self.tables.iter()
    }
}

const SOURCES: loader::File = loader::File {
    id: "sources",
    section: "",
    columns: &[
        Column::text("title"),
        Column::text("publisher"),
        Column::text("date"),
        Column::text("address"),
    ],
    text: include_str!("data/sources.csv"),
};

static ALL: LazyLock<Tables> =
    LazyLock::new(|| Tables::load().unwrap_or_else(|_| Tables { tables: Vec::new() }));

/// The tables, read once. That they all read is tested, and checked again before the service starts.
pub fn all() -> &'static Tables {
    &ALL
}
