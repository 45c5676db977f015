//! Digests: everything that a verdict can turn on, known by one hash. Two that are equal mean the same rules.
//!
//! A digest is put together from one for each table and one for each part of the rulebook, so that a change shows in the
//! digests of what can read it and in no other. What a check can read it declares as [`Reads`]; no step of a proof may name
//! anything else, which a test holds over every conformance case.

use super::reading::Readings;
use super::{Edition, Part, Rule, Rulebook, Rules, figures_table};
use crate::tables::{self, Table, Value};
use sha2::{Digest, Sha256};
use std::sync::{LazyLock, OnceLock};

/// The parts of the rulebook and the tables that a check can read, with the digest of them under each edition.
#[derive(Debug)]
pub struct Reads {
    parts: &'static [Part],
    tables: &'static [&'static str],
    digests: [OnceLock<String>; Edition::ALL.len()],
}

impl Reads {
    /// Declares what a check can read, beside what every check does.
    pub const fn new(parts: &'static [Part], tables: &'static [&'static str]) -> Self {
        Self { parts, tables, digests: [const { OnceLock::new() }; Edition::ALL.len()] }
    }

    /// The parts of the rulebook.
    pub fn parts(&self) -> impl Iterator<Item = Part> {
        self.parts.iter().copied().chain([Part::General, Part::Geometry])
    }

    /// Whether a rule is in one of the parts.
    pub fn has_rule(&self, rule: &Rule) -> bool {
        self.parts().any(|part| part.has(rule))
    }

    /// Whether a table can be read. The figures of rules stand in a table that belongs to the parts.
    pub fn has_table(&self, table: &str) -> bool {
        table == figures_table::TABLE || self.tables.contains(&table)
    }

    /// The digest of all that can be read under an edition, as `sha256:` and hexadecimal digits.
    pub fn digest(&'static self, edition: Edition) -> &'static str {
        let of = || self.digest_under(&Rulebook::of(edition).law(), tables::all().iter());
        self.digests.get(edition as usize).map_or("", |known| known.get_or_init(of))
    }

    /// The digest of all that can be read of what an edition says and of some tables.
    pub fn digest_under<'a>(&self, law: &Law, tables: impl Iterator<Item = &'a Table>) -> String {
        let mut feed = Feed::default();
        for part in self.parts() {
            feed.part(part, law);
        }
        for table in tables.filter(|table| self.tables.contains(&table.id)) {
            feed.table(table);
        }
        feed.digest()
    }
}

/// All that an edition says, part by part, as digests take it.
#[derive(Clone, Debug)]
pub struct Law {
    /// The edition.
    pub edition: Edition,
    /// What it says in each part, figures and structure alike.
    pub said: Vec<(Part, serde_json::Value)>,
    /// How disputed points are read.
    pub readings: Readings,
}

impl Rules {
    /// All that these rules say.
    pub fn law(&self) -> Law {
        let said = Part::ALL.iter().map(|part| (*part, part.said(self))).collect();
        Law { edition: self.edition, said, readings: self.readings }
    }
}

static WHOLE: LazyLock<String> = LazyLock::new(|| {
    whole_under(&Edition::ALL.map(|edition| Rulebook::of(edition).law()), tables::all().iter())
});

/// The digest of every table and of the whole of every edition's rules, as `sha256:` and hexadecimal digits.
pub fn whole() -> &'static str {
    &WHOLE
}

/// The digest of some tables and of all that some editions say.
pub fn whole_under<'a>(editions: &[Law], tables: impl Iterator<Item = &'a Table>) -> String {
    let mut feed = Feed::default();
    for law in editions {
        for part in Part::ALL {
            feed.part(*part, law);
        }
    }
    for table in tables {
        feed.table(table);
    }
    feed.digest()
}

/// Text after text, each with its length before it, so that no two sequences are the same bytes.
#[derive(Default)]
struct Feed(Sha256);

impl Feed {
    fn text(&mut self, text: &str) {
        self.0.update((text.len() as u64).to_le_bytes());
        self.0.update(text.as_bytes());
    }

    fn part(&mut self, part: Part, law: &Law) {
        let edition = law.edition;
        self.text(edition.year());
        self.text(&edition.is_verified().to_string());
        for rule in part.rules() {
            self.rule(rule, edition);
        }
        for (_, said) in law.said.iter().filter(|(of, _)| *of == part) {
            self.text(&said.to_string());
        }
        for point in part.points() {
            self.text(point.name());
            self.text(point.rule().id);
            self.text(point.standing().name());
            for reading in point.readings() {
                self.text(reading);
            }
            self.text(point.readings()[usize::from(law.readings.place(point))]);
        }
    }

    fn rule(&mut self, rule: &Rule, edition: Edition) {
        self.text(rule.id);
        self.text(&rule.citation(edition).map(|citation| citation.to_string()).unwrap_or_default());
        self.text(rule.basis_in(edition).name());
        self.text(rule.source);
    }

    fn table(&mut self, table: &Table) {
        self.text(table.id);
        self.text(table.section);
        for column in &table.columns {
            self.text(column.name);
            self.text(column.unit.map_or("", |unit| unit.name()));
        }
        for row in &table.rows {
            self.text(row.key);
            for value in &row.values {
                match value {
                    Value::Text(text) => self.text(text),
                    Value::Number(number) => self.text(&number.to_string()),
                    Value::Absent => self.text(""),
                }
            }
            self.text(&row.bases.name());
        }
    }

    fn digest(self) -> String {
        format!("sha256:{:x}", self.0.finalize())
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rulebook::{Bases, Basis};

    fn of_rule(rule: &Rule, edition: Edition) -> String {
        let mut feed = Feed::default();
        feed.rule(rule, edition);
        feed.digest()
    }

    #[test]
    fn whatever_a_rule_says_of_itself_shows_in_its_digest() {
        let rule =
            || Rule { id: "a", sections: [Some("1"); 3], bases: Bases::all(Basis::Published), source: "b" };
        let before = of_rule(&rule(), Edition::E2020);
        let bent = [
            Rule { id: "c", ..rule() },
            Rule { sections: [Some("1"), Some("2"), Some("1")], ..rule() },
            Rule { sections: [Some("1"), None, Some("1")], ..rule() },
            Rule { bases: Bases::all(Basis::Recalled), ..rule() },
            Rule { source: "d", ..rule() },
        ];
        assert!(bent.iter().all(|bent| of_rule(bent, Edition::E2020) != before));
        let of_another_edition = Rule { sections: [Some("2"), Some("1"), Some("3")], ..rule() };
        assert_eq!(of_rule(&of_another_edition, Edition::E2020), before);
    }
}
