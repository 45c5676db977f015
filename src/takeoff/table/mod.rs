//! A takeoff as a table in trade words: a header, then one outlet box or one raceway a line.
//!
//! | column | what stands in it |
//! |---|---|
//! | `reference` | your own mark: `hall-3` |
//! | `check` | `box` or `raceway`; left out, the columns that are filled decide |
//! | `edition`, `units` | as in a request; `2023`, `us` |
//! | `box` | a standard metal box: `square 4 x 2-1/8`, `3x2x3-1/2 device`, `octagonal-4x1-1/2` |
//! | `gangs` | how many gangs the box has |
//! | `marked_volume`, `material` | what is marked on the box, and what it is made of: `20.3 in3`, `plastic` |
//! | `ring_volume`, `extension_volume`, `cover_volume` | what is marked on a plaster ring, an extension, a raised cover |
//! | `cables` | `2 x 12-2 NM-B w/g; 14/3 MC w/g` |
//! | `conductors` | in a box `4 x 12; 2 x 14 pigtail`, in a raceway `3 x 12 THHN; 1 x 12 THHN ground; 1 x 12 bare solid` |
//! | `grounds` | grounding conductors that no cable brings: `2 x 12; 12 isolated; 12 pigtail` |
//! | `devices` | `receptacle 12; 2 x switch 14` |
//! | `clamps` | internal clamps: yes, no, or how many |
//! | `fittings` | `stud; hickey` |
//! | `raceway`, `trade_size` | `EMT`, `PVC schedule 40`; `1/2`, `0.5`, `½`, `16 mm` |
//! | `length`, `nipple` | `18 in`; yes or no |
//! | `insulation` | the type of the conductors that name none: `THHN` |
//!
//! Several things in one cell are separated by `;`, `,` or `+`, and a number of them stands before an `x`. Case, spaces and
//! marks make no difference where one meaning is possible. What could mean two things is refused with both. A line break
//! cannot stand in a cell: one line is one row, always.
//!
//! ```
//! use elbowroom::takeoff::table::Columns;
//! let columns = Columns::read("Reference,Box,Cables,Devices").unwrap();
//! let row = columns.row("hall-3,device 3x2x3-1/2,2 x 12-2 NM-B w/g,receptacle 12").unwrap();
//! assert_eq!(row.check, "outlet_box_fill");
//! let request: serde_json::Value = serde_json::from_slice(&row.request).unwrap();
//! assert_eq!(request["contents"]["cables"][0]["count"], 2);
//! assert_eq!(row.column_of("/contents/cables/0/size"), "/cables");
//! ```

mod cells;
mod column;
mod conductors;
mod outlet;
mod raceway;
mod record;
mod standard;

pub use column::{Column, Role};

use crate::checks::outlet_fill::OutletFill;
use crate::checks::raceway_fill::RacewayFill;
use crate::checks::{Check, FaultCode, Faults};
use crate::derivation::Pointer;
use cells::Cells;
use serde_json::{Map, Value};

/// The columns of a table, as its header names them.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Columns(Vec<Column>);

/// What is wrong with a header: where a name stands, and whether it is unknown or stands twice.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum HeaderFault {
    /// A name that no column has.
    Unknown(String),
    /// A name of a column that another name before it has too.
    Twice(String),
    /// A quote that is not closed.
    Quote,
}

/// A row as the request of a check.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// The check.
    pub check: &'static str,
    /// Its request, as JSON text.
    pub request: Vec<u8>,
    /// The caller's own mark.
    pub reference: Option<String>,
    /// Pointers into the request, each with the column that it came from.
    sources: Vec<(String, Column)>,
}

/// Why a row is no request.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RowFaults {
    /// The faults; each points to its column, as if the row were an object: `/trade_size`.
    pub faults: Faults,
    /// The caller's own mark.
    pub reference: Option<String>,
}

impl Columns {
    /// Reads a header. A byte-order mark before it is passed over: spreadsheets write one.
    pub fn read(header: &str) -> Result<Self, Vec<HeaderFault>> {
        let header = header.strip_prefix('\u{feff}').unwrap_or(header);
        let Some(names) = record::fields(header) else { return Err(vec![HeaderFault::Quote]) };
        let (mut columns, mut faults) = (Vec::new(), Vec::new());
        for name in names {
            match Column::named(&name) {
                None => faults.push(HeaderFault::Unknown(name.trim().to_owned())),
                Some(column) if columns.contains(&column) => {
                    faults.push(HeaderFault::Twice(name.trim().to_owned()));
                }
                Some(column) => columns.push(column),
            }
        }
        if faults.is_empty() { Ok(Self(columns)) } else { Err(faults) }
    }

    /// The header that names these columns.
    pub fn header(&self) -> String {
        let names: Vec<&str> = self.0.iter().map(|column| column.name()).collect();
        names.join(",")
    }

    /// Reads a row.
    pub fn row(&self, line: &str) -> Result<Row, RowFaults> {
        let mut faults = Faults::default();
        let Some(fields) = record::fields(line) else {
            faults.add(Pointer::ROOT, FaultCode::NotAccepted, "fault-table-quote");
            return Err(RowFaults { faults, reference: None });
        };
        if fields.iter().skip(self.0.len()).any(|extra| !extra.trim().is_empty()) {
            faults.add(Pointer::ROOT, FaultCode::UnknownMember, "fault-table-columns").arguments =
                vec![("columns", self.0.len().to_string()), ("cells", fields.len().to_string())];
        }
        let given = self.0.iter().copied().zip(fields.iter().map(|field| field.trim()));
        let cells = Cells::new(given.filter(|(_, text)| !text.is_empty()).collect());
        let reference = cells.get(Column::Reference).map(str::to_owned);
        let mut draft = Draft { cells, request: Map::new(), sources: Vec::new(), faults };
        draft.common();
        let check = draft.check();
        match check {
            Some(RacewayFill::NAME) => raceway::read(&mut draft),
            Some(_) => outlet::read(&mut draft),
            None => {}
        }
        let Draft { request, sources, faults, .. } = draft;
        match (check, serde_json::to_vec(&request)) {
            (Some(check), Ok(request)) if faults.is_empty() => Ok(Row { check, request, reference, sources }),
            _ => Err(RowFaults { faults, reference }),
        }
    }
}

/// Whether a line of a table is blank: white space, or a row whose cells are all empty.
pub fn is_blank_row(line: &[u8]) -> bool {
    match line.trim_ascii_start().first() {
        None => true,
        Some(first) if first.is_ascii_alphanumeric() => false,
        Some(_) => {
            let fields = str::from_utf8(line).ok().and_then(record::fields);
            fields.is_some_and(|fields| fields.iter().all(|field| field.trim().is_empty()))
        }
    }
}

impl Row {
    /// The column that a part of the request came from, as a JSON Pointer into the row; empty where none is known.
    pub fn column_of(&self, pointer: &str) -> &'static str {
        let within = |above: &str| {
            pointer.strip_prefix(above).is_some_and(|rest| rest.is_empty() || rest.starts_with('/'))
        };
        let closest =
            self.sources.iter().filter(|(above, _)| within(above)).max_by_key(|(above, _)| above.len());
        closest.map_or("", |(_, column)| column.pattern())
    }
}

/// A request in the making.
struct Draft<'a> {
    cells: Cells<'a>,
    request: Map<String, Value>,
    sources: Vec<(String, Column)>,
    faults: Faults,
}

impl Draft<'_> {
    /// What every request carries.
    fn common(&mut self) {
        if let Some(reference) = self.cells.get(Column::Reference) {
            self.put(Column::Reference, "/reference", reference.into());
        }
        if let Some(edition) = self.cells.get(Column::Edition) {
            self.put(Column::Edition, "/edition", edition.into());
        }
        if let Some(units) = self.cells.units(&mut self.faults) {
            self.put(Column::Units, "/units", serde_json::to_value(units).unwrap_or_default());
        }
    }

    /// The check that a row is for: the one that it names, or the one that its filled columns belong to.
    fn check(&mut self) -> Option<&'static str> {
        let named = match self.cells.get(Column::Check).map(cells::plain).as_deref() {
            None => None,
            Some("box" | "outletbox" | "outletboxfill") => Some(OutletFill::NAME),
            Some("raceway" | "conduit" | "racewayfill") => Some(RacewayFill::NAME),
            Some(_) => {
                let given = self.cells.get(Column::Check).unwrap_or_default();
                cells::not_understood(&mut self.faults, Column::Check, given, ["box", "raceway"]);
                return None;
            }
        };
        let is_raceway = Column::ALL.iter().any(|column| column.is_of_raceway() && self.cells.has(*column));
        let check = named.unwrap_or(if is_raceway { RacewayFill::NAME } else { OutletFill::NAME });
        for column in Column::ALL {
            let other = if check == RacewayFill::NAME { column.is_of_box() } else { column.is_of_raceway() };
            if other && self.cells.has(*column) {
                self.faults.add(column.pointer(), FaultCode::Conflict, "fault-table-other-check").arguments =
                    vec![("column", column.name().to_owned()), ("check", check.to_owned())];
            }
        }
        Some(check)
    }

    /// Puts a value where a pointer of member names says, and remembers the column that it came from.
    fn put(&mut self, column: Column, pointer: &str, value: Value) {
        let mut members = &mut self.request;
        let (above, last) = pointer.rsplit_once('/').unwrap_or(("", pointer));
        for name in above.split('/').filter(|name| !name.is_empty()) {
            let below = members.entry(name).or_insert_with(|| Value::Object(Map::new()));
            let Value::Object(below) = below else { return };
            members = below;
        }
        members.insert(last.to_owned(), value);
        self.sources.push((pointer.to_owned(), column));
    }

    /// Appends a value to the list that a pointer of member names says.
    fn push(&mut self, column: Column, pointer: &str, value: Value) {
        let listed = self.request_at(pointer).and_then(|list| list.as_array()).map_or(0, Vec::len);
        if listed == 0 {
            self.put(column, pointer, Value::Array(Vec::new()));
        }
        if let Some(Value::Array(list)) = self.request_at(pointer) {
            list.push(value);
        }
        self.sources.push((format!("{pointer}/{listed}"), column));
    }

    fn request_at(&mut self, pointer: &str) -> Option<&mut Value> {
        let mut names = pointer.split('/').filter(|name| !name.is_empty());
        let first = self.request.get_mut(names.next()?)?;
        names.try_fold(first, |value, name| value.get_mut(name))
    }
}

#[cfg(test)]
mod tests;
