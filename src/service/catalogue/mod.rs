//! What every answer is made from, as documents: editions, tables, rules, disputed points, problems.
//!
//! Written once when the service starts; served with an entity tag.

pub mod amendments;
pub mod editions;
pub mod interpretations;
pub mod problems;
mod routes;
pub mod rules;
pub mod tables;

pub use routes::routes;

use super::document::Document;
use super::fault_list::nearest;
use super::openapi;
use super::problem::{Problem, ProblemKind};
use crate::rulebook::{figures_table, rules as all_rules};
use crate::tables as published;
use std::collections::BTreeMap;

/// Documents of one kind: the list, and each by its name.
#[derive(Debug)]
pub struct Shelf {
    list: Document,
    by_name: BTreeMap<String, Document>,
}

impl Shelf {
    /// The list of all.
    pub const fn list(&self) -> &Document {
        &self.list
    }

    /// The document with a name; the problem names those that are known.
    pub fn find(&self, name: &str) -> Result<&Document, Problem> {
        self.by_name.get(name).ok_or_else(|| {
            let named = [("name", name.chars().take(60).collect())];
            let problem = Problem::told(ProblemKind::NotFound, "problem-detail-unknown-name", named);
            Problem {
                nearest: nearest(name, self.by_name.keys().map(String::as_str)),
                accepted: self.by_name.keys().cloned().collect(),
                ..problem
            }
        })
    }
}

/// Every document that stays the same while the service runs.
#[derive(Debug)]
pub struct Library {
    /// The editions.
    pub editions: Document,
    /// The tables, with the figures of the rules as one of them.
    pub tables: Shelf,
    /// The rules.
    pub rules: Shelf,
    /// The disputed points.
    pub interpretations: Document,
    /// The figures that can be amended.
    pub amendments: Document,
    /// The kinds of problem.
    pub problems: Shelf,
    /// The OpenAPI document.
    pub openapi: Document,
}

impl Library {
    /// Writes every document.
    pub fn write() -> Result<Self, serde_json::Error> {
        let tables = || published::all().iter().chain([figures_table::table()]);
        let shelf = |list: Document, named: Vec<(String, Document)>| Shelf {
            list,
            by_name: named.into_iter().collect(),
        };
        Ok(Self {
            editions: Document::new(&editions::all())?,
            tables: shelf(
                Document::new(&tables::list(tables()))?,
                tables()
                    .map(|table| Ok((table.id.to_owned(), Document::new(&tables::view(table))?)))
                    .collect::<Result<_, serde_json::Error>>()?,
            ),
            rules: shelf(
                Document::new(&rules::list())?,
                all_rules()
                    .map(|rule| Ok((rule.id.to_owned(), Document::new(&rules::view(rule))?)))
                    .collect::<Result<_, serde_json::Error>>()?,
            ),
            interpretations: Document::new(&interpretations::all())?,
            amendments: Document::new(&amendments::all())?,
            problems: shelf(
                Document::new(&problems::list())?,
                ProblemKind::ALL
                    .into_iter()
                    .map(|kind| Ok((kind.slug().to_owned(), Document::new(&problems::view(kind))?)))
                    .collect::<Result<_, serde_json::Error>>()?,
            ),
            openapi: Document::of(openapi::text()),
        })
    }
}
