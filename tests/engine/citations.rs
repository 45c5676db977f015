//! Where each edition has each rule, against a table that was written from the texts and not from the engine.

use elbowroom::rulebook::{Edition, Rule, rules};
use elbowroom::tables;
use std::collections::BTreeMap;

/// One line of `tests/data/citations.csv`: the rule, its section in 2017, 2020 and 2023 (`-` where the edition has no such rule),
/// and the sources in which that number was read.
struct Line {
    sections: [String; 3],
    read: Vec<String>,
}

fn lines() -> BTreeMap<String, Line> {
    let text = include_str!("../data/citations.csv");
    let mut reader = csv::Reader::from_reader(text.as_bytes());
    let mut lines = BTreeMap::new();
    for record in reader.records() {
        let record = record.expect("a line of five fields");
        let sections = [1, 2, 3].map(|place| record[place].to_owned());
        let read = record[4].split(' ').map(str::to_owned).collect();
        assert!(
            lines.insert(record[0].to_owned(), Line { sections, read }).is_none(),
            "{} twice",
            &record[0]
        );
    }
    lines
}

fn cited(rule: &Rule, edition: Edition) -> String {
    rule.citation(edition).map_or("-".to_owned(), |citation| citation.to_string())
}

#[test]
fn every_rule_is_cited_where_its_edition_has_it() {
    let mut lines = lines();
    let (mut compared, mut wrong) = (0, Vec::new());
    for rule in rules() {
        let Some(Line { sections, .. }) = lines.remove(rule.id) else {
            wrong.push(format!("{} is not in the table", rule.id));
            continue;
        };
        for (edition, section) in [Edition::E2017, Edition::E2020, Edition::E2023].into_iter().zip(&sections)
        {
            compared += 1;
            let cited = cited(rule, edition);
            if cited != *section {
                wrong.push(format!("{} of {}: {cited}, read: {section}", rule.id, edition.year()));
            }
        }
        // the place in 2026 was not read: that of 2023 stands, and says so
        let carried = cited(rule, Edition::E2026);
        if carried != sections[2] && !carried.starts_with(&format!("{} (", sections[2])) {
            wrong.push(format!("{} of 2026: {carried}, of 2023: {}", rule.id, sections[2]));
        }
    }
    println!("{compared} citations compared");
    assert!(wrong.is_empty(), "{wrong:#?}");
    let gone: Vec<&String> = lines.keys().collect();
    assert!(gone.is_empty(), "no rules: {gone:?}");
}

#[test]
fn every_section_number_names_where_it_was_read() {
    let sources = tables::all().find("sources").expect("the table of sources");
    for (rule, line) in lines() {
        for source in &line.read {
            assert!(sources.row(source).is_some(), "{rule}: {source} is no source");
        }
        assert!(line.sections.iter().any(|section| section != "-"), "{rule} is in no edition");
    }
}
