//! The published tables, one CSV each with its provenance, and typed look-up.
//!
//! The files under `data/` are what an auditor opens. They are read once, by a strict loader: an unknown column, a row
//! without a basis or a source, a figure that is no decimal are errors that a test finds; [`all`] gives the tables read.

pub mod bare_conductor_dimensions;
mod basis;
mod by_size;
pub mod compact_conductor_dimensions;
pub mod conductor_dimensions;
pub mod conductor_volume;
pub mod enclosure_types;
pub mod evidence;
pub mod flexible_three_eighths;
mod loader;
pub mod raceway_dimensions;
pub mod raceway_fill_limits;
pub mod raceway_outside_diameters;
pub mod standard_boxes;
pub mod supporting_raceways;
mod table;
pub mod trade_sizes;
pub mod wire_bending_space;

pub use basis::{Bases, Basis};
pub use loader::LoadFault;
pub use table::{Affirmation, Cell, Column, Key, Row, Table, Value};

use loader::{File, SOURCES};
use std::sync::LazyLock;

/// Every table, in the order in which they are listed.
#[derive(Debug)]
pub struct Tables {
    tables: Vec<&'static Table>,
}

static FILES: [&File; 16] = [
    &conductor_volume::FILE,
    &standard_boxes::FILE,
    &trade_sizes::FILE,
    &wire_bending_space::FILE,
    &wire_bending_space::COMPACT_FILE,
    &raceway_fill_limits::FILE,
    &raceway_dimensions::FILE,
    &raceway_dimensions::EARLIER_ENT_FILE,
    &raceway_outside_diameters::FILE,
    &flexible_three_eighths::FILE,
    &conductor_dimensions::FILE,
    &compact_conductor_dimensions::FILE,
    &bare_conductor_dimensions::FILE,
    &supporting_raceways::FILE,
    &enclosure_types::FILE,
    &enclosure_types::WORDS_FILE,
];

impl Tables {
    /// Reads every table, or says what is wrong with the first bad one.
    ///
    /// ```
    /// assert!(elbowroom::tables::Tables::load().is_ok());
    /// ```
    pub fn load() -> Result<Self, LoadFault> {
        let sources = SOURCES.without_provenance()?;
        let published = FILES.iter().map(|file| file.load());
        Ok(Self { tables: published.chain([Ok(sources)]).collect::<Result<_, _>>()? })
    }

    /// The table with an id.
    pub fn find(&self, id: &str) -> Option<&'static Table> {
        self.tables.iter().copied().find(|table| table.id == id)
    }

    /// The tables, in the order in which they are listed.
    pub fn iter(&self) -> impl Iterator<Item = &'static Table> {
        self.tables.iter().copied()
    }
}

static ALL: LazyLock<Tables> =
    LazyLock::new(|| Tables::load().unwrap_or_else(|_| Tables { tables: Vec::new() }));

/// The tables, read once. That they all read is tested, and checked again before the service starts.
pub fn all() -> &'static Tables {
    &ALL
}
