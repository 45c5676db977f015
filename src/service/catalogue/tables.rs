//! The published tables, every figure with where it comes from. A proof is replayed from an answer and these alone.

use super::evidence::{EvidenceView, bases, read_for};
use crate::quantity::{Decimal, Unit};
use crate::tables::{Basis, Row, Table, Value};
use serde::Serialize;
use serde::ser::Serializer;
use std::collections::BTreeMap;
use utoipa::openapi::RefOr;
use utoipa::openapi::schema::{ObjectBuilder, OneOfBuilder, Schema, Type};
use utoipa::{PartialSchema, ToSchema};

/// Every table.
#[derive(Debug, Serialize, ToSchema)]
pub struct Tables {
    /// The tables.
    tables: Vec<TableSummary>,
}

/// A table in one line; `/v1/tables/{id}` has the whole of it.
#[derive(Debug, Serialize, ToSchema)]
pub struct TableSummary {
    /// The name, as steps of a proof give it. It is never changed.
    #[schema(value_type = String, example = "conductor-volume")]
    id: &'static str,
    /// Where the code has it; absent for a table of this service's own.
    #[serde(skip_serializing_if = "str::is_empty")]
    #[schema(value_type = String, required = false, example = "Table 314.16(B)")]
    section: &'static str,
    /// How many rows it has.
    rows: usize,
}

/// A table.
#[derive(Debug, Serialize, ToSchema)]
#[schema(as = Table)]
pub struct TableView {
    /// The name, as steps of a proof give it. It is never changed.
    #[schema(value_type = String, example = "conductor-volume")]
    id: &'static str,
    /// Where the code has it; absent for a table of this service's own.
    #[serde(skip_serializing_if = "str::is_empty")]
    #[schema(value_type = String, required = false, example = "Table 314.16(B)")]
    section: &'static str,
    /// The columns, in order.
    columns: Vec<ColumnView>,
    /// The rows, in order.
    rows: Vec<RowView>,
}

/// A column of a table.
#[derive(Debug, Serialize, ToSchema)]
#[schema(as = TableColumn)]
pub struct ColumnView {
    /// The name, as steps of a proof give it.
    #[schema(value_type = String, example = "volume_in3")]
    name: &'static str,
    /// The unit of its figures; absent for a column of words.
    #[serde(skip_serializing_if = "Option::is_none")]
    unit: Option<Unit>,
}

/// A row of a table.
#[derive(Debug, Serialize, ToSchema)]
#[schema(as = TableRow)]
pub struct RowView {
    /// The key, unique in the table, as steps of a proof give it.
    #[schema(value_type = String, example = "12 AWG")]
    key: &'static str,
    /// What stands in each column: an exact decimal, or words. A column that has nothing here is absent.
    #[schema(value_type = BTreeMap<String, CellValue>, example = json!({"volume_in3": 2.25, "volume_cm3": 36.9}))]
    values: Values,
    /// How far the row can be trusted, by edition.
    #[schema(value_type = BTreeMap<String, Basis>, example = json!({"2020": "published"}))]
    basis: BTreeMap<&'static str, Basis>,
    /// The texts that were read for the row. Absent when there are none.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schema(required = false)]
    evidence: Vec<EvidenceView>,
    /// What else the row comes from: keys of the table `sources`.
    #[serde(skip_serializing_if = "<[&str]>::is_empty")]
    #[schema(value_type = Vec<String>, required = false, example = json!(["box-guide"]))]
    sources: &'static [&'static str],
    /// What an auditor should know of the row; absent when there is nothing.
    #[serde(skip_serializing_if = "str::is_empty")]
    #[schema(value_type = String, required = false)]
    note: &'static str,
}

/// What stands in one field of a row.
#[derive(Debug, Serialize)]
#[serde(untagged)]
pub enum CellValue {
    /// An exact decimal, in the unit of its column.
    Number(Decimal),
    /// Words.
    Text(&'static str),
}

impl PartialSchema for CellValue {
    fn schema() -> RefOr<Schema> {
        let number = ObjectBuilder::new()
            .schema_type(Type::Number)
            .description(Some("An exact decimal, in the unit of its column."));
        let words = ObjectBuilder::new().schema_type(Type::String).description(Some("Words."));
        let either = OneOfBuilder::new().item(number).item(words);
        let either = either.description(Some("What stands in one field of a row."));
        RefOr::T(Schema::OneOf(either.build()))
    }
}

impl ToSchema for CellValue {}

/// The fields of a row by column.
#[derive(Debug)]
struct Values(Vec<(&'static str, CellValue)>);

impl Serialize for Values {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_map(self.0.iter().map(|(column, value)| (column, value)))
    }
}

/// All tables.
pub fn list(tables: impl Iterator<Item = &'static Table>) -> Tables {
    let summary =
        |table: &Table| TableSummary { id: table.id, section: table.section, rows: table.rows.len() };
    Tables { tables: tables.map(summary).collect() }
}

/// One table.
pub fn view(table: &'static Table) -> TableView {
    let column = |column: &crate::tables::Column| ColumnView { name: column.name, unit: column.unit };
    TableView {
        id: table.id,
        section: table.section,
        columns: table.columns.iter().map(column).collect(),
        rows: table.rows.iter().map(|row| view_of(table, row)).collect(),
    }
}

fn view_of(table: &Table, row: &'static Row) -> RowView {
    let field = |(column, value): (&crate::tables::Column, &Value)| match value {
        Value::Text(text) => Some((column.name, CellValue::Text(text))),
        Value::Number(number) => Some((column.name, CellValue::Number(*number))),
        Value::Absent => None,
    };
    RowView {
        key: row.key,
        values: Values(table.columns.iter().zip(&row.values).filter_map(field).collect()),
        basis: bases(row.bases),
        evidence: read_for(&format!("{}/{}", table.id, row.key)),
        sources: &row.sources,
        note: row.note,
    }
}
