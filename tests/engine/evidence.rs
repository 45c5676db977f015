//! How far rules and tables can be trusted follows from what was read, and what rests on memory grows no more.

use elbowroom::rulebook::{Edition, Rulebook, rules};
use elbowroom::tables::evidence::{self, support};
use elbowroom::tables::{self, Bases, Basis, raceway_dimensions};
use std::collections::BTreeSet;

/// The one table of which no text was read.
const OUTSIDE: &str = "raceway-outside-diameters/";

/// Everything that has a basis, as the evidence names it.
fn everything() -> Vec<(String, Bases)> {
    let rows = tables::all()
        .iter()
        .filter(|table| table.id != "sources")
        .flat_map(|table| table.rows.iter().map(move |row| (format!("{}/{}", table.id, row.key), row.bases)));
    rules().map(|rule| (rule.id.to_owned(), rule.bases)).chain(rows).collect()
}

#[test]
fn evidence_is_about_what_there_is_and_names_its_source() {
    let mut known: BTreeSet<String> = everything().into_iter().map(|(name, _)| name).collect();
    for edition in Edition::ALL {
        known.extend(Rulebook::of(edition).figures().map(|figure| figure.name.to_owned()));
    }
    let sources = tables::all().find("sources").unwrap();
    assert!(
        !evidence::all().is_empty(),
        "evidence.csv does not read; `cargo test --lib evidence` names the line"
    );
    for read in evidence::all() {
        assert!(known.contains(&read.of), "{} is neither a rule, a figure nor a row", read.of);
        assert!(sources.row(&read.source).is_some(), "{}: {} is no source", read.of, read.source);
        assert!(["2008", "2011", "2017", "2020", "2023"].contains(&read.edition.as_str()), "{}", read.of);
        assert!(read.agrees || !read.note.is_empty(), "{}: what does it say otherwise?", read.of);
    }
}

#[test]
fn the_basis_follows_from_the_evidence() {
    for (name, bases) in everything() {
        for ((supported, basis), year) in
            support(evidence::of(&name)).into_iter().zip(bases.0).zip(Bases::YEARS)
        {
            let follows = match supported {
                // what else was published of it, named beside it, says more than an old text
                Some(Basis::EarlierEdition) => matches!(basis, Basis::EarlierEdition | Basis::Published),
                Some(supported) => basis == supported,
                None => !matches!(basis, Basis::Bracketed | Basis::UnofficialCopy | Basis::EarlierEdition),
            };
            assert!(follows, "{name} under {year} is {basis:?}, while what was read gives {supported:?}");
        }
    }
}

/// Lower these when something is found in print. They are never raised: what is new is read before it is written down.
/// Each counts a rule or a row once for every edition. The table of what 2011 says of electrical nonmetallic tubing is apart: it is there
/// because the tables of two texts differ.
#[test]
fn what_rests_on_memory_grows_no_more() {
    let count = |kinds: &[Basis], is_row: bool| {
        everything()
            .iter()
            .filter(|(name, _)| {
                !name.starts_with(OUTSIDE) && !name.starts_with(raceway_dimensions::EARLIER_ENT_TABLE)
            })
            .filter(|(name, _)| name.contains('/') == is_row)
            .flat_map(|(_, bases)| bases.0)
            .filter(|basis| kinds.contains(basis))
            .count()
    };
    let memory = [Basis::Recalled, Basis::Unconfirmed];
    let outside = everything().into_iter().filter(|(name, _)| name.starts_with(OUTSIDE));
    let of_memory = outside.flat_map(|(_, bases)| bases.0).filter(|basis| memory.contains(basis)).count();
    assert_eq!(
        of_memory, 168,
        "(row, edition) of the outside diameters of raceways: lower it when one is found in print"
    );
    assert_eq!(
        [count(&memory, false), count(&memory, true)],
        [27, 116],
        "(rule, edition) and (row, edition) that rest on memory: where they are fewer, lower the numbers here"
    );
    assert_eq!(
        [count(&[Basis::EarlierEdition], false), count(&[Basis::EarlierEdition], true)],
        [22, 1142],
        "(rule, edition) and (row, edition) read in an earlier edition only: where they are fewer, lower the numbers here"
    );
}
