//! The documents of the catalogue, written once and kept: lists, and one document for each name.

use super::{amendments, editions, interpretations, misconceptions, problems, rules, tables};
use crate::i18n::{Catalogue, Language};
use crate::rulebook::{Rule, figures_table, rules as all_rules};
use crate::service::document::Document;
use crate::service::fault_list::nearest;
use crate::service::language;
use crate::service::problem::{Problem, ProblemKind};
use crate::service::published;
use crate::tables as published_tables;
use std::collections::BTreeMap;

/// Documents of one kind: the list, and each by its name.
#[derive(Debug)]
pub struct Collection {
    pub(super) list: Document,
    pub(super) by_name: BTreeMap<String, Document>,
}

impl Collection {
    /// The list, and each document by its name.
    pub(super) fn new(
        list: Document,
        each: impl Iterator<Item = Result<(&'static str, Document), serde_json::Error>>,
    ) -> Result<Self, serde_json::Error> {
        let by_name = each.map(|named| named.map(|(name, document)| (name.to_owned(), document)));
        Ok(Self { list, by_name: by_name.collect::<Result<_, _>>()? })
    }

    /// The document with a name; the problem names those that are known.
    pub fn find(&self, name: &str) -> Result<&Document, Problem> {
        self.by_name.get(name).ok_or_else(|| {
            let named = [("name", name.chars().take(60).collect())];
            let problem = Problem::new(ProblemKind::NotFound, "problem-detail-unknown-name", named);
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
pub struct CatalogueDocuments {
    /// The tables, with the figures of the rules as one of them.
    pub tables: Collection,
    /// The figures that can be amended.
    pub amendments: Document,
    /// The OpenAPI document.
    pub openapi: Document,
    english: InWords,
    spanish: InWords,
}

/// The documents that hold sentences, in one language.
#[derive(Debug)]
pub struct InWords {
    /// The editions.
    pub editions: Document,
    /// The rules.
    pub rules: Collection,
    /// The disputed points.
    pub interpretations: Document,
    /// What learners get wrong.
    pub misconceptions: Document,
    /// The kinds of problem.
    pub problems: Collection,
}

impl CatalogueDocuments {
    /// Writes every document.
    pub fn write() -> Result<Self, serde_json::Error> {
        let tables = || published_tables::all().iter().chain([figures_table::table()]);
        Ok(Self {
            tables: Collection::new(
                Document::new(&tables::list(tables()))?,
                tables().map(|table| Ok((table.id, Document::new(&tables::view(table))?))),
            )?,
            amendments: Document::new(&amendments::all())?,
            openapi: Document::of(published::text()),
            english: InWords::write(Catalogue::of(Language::English))?,
            spanish: InWords::write(Catalogue::of(Language::Spanish))?,
        })
    }

    /// The documents that hold sentences, in the language of the request.
    pub fn in_words(&self) -> &InWords {
        match language::spoken() {
            Language::English => &self.english,
            Language::Spanish => &self.spanish,
        }
    }
}

impl InWords {
    fn write(messages: &'static Catalogue) -> Result<Self, serde_json::Error> {
        let rule = |rule: &'static Rule| Ok((rule.id, Document::in_words(&rules::view(rule, messages))?));
        let problem =
            |kind: ProblemKind| Ok((kind.slug(), Document::in_words(&problems::view(kind, messages))?));
        Ok(Self {
            editions: Document::in_words(&editions::all(messages))?,
            rules: Collection::new(Document::in_words(&rules::list(messages))?, all_rules().map(rule))?,
            interpretations: Document::in_words(&interpretations::all(messages))?,
            misconceptions: Document::in_words(&misconceptions::all(messages))?,
            problems: Collection::new(
                Document::in_words(&problems::list(messages))?,
                ProblemKind::ALL.into_iter().map(problem),
            )?,
        })
    }
}
