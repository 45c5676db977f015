//! Tests over the registries: rules, figures, tables, messages, interpretation points, and what the engine may not name.

use elbowroom::i18n::{Catalogue, Language, rule_key};
use elbowroom::rulebook::reading::Point;
use elbowroom::rulebook::{Edition, Rulebook, figures_table, rules};
use elbowroom::tables::{Tables, Value};
use elbowroom::training::misconceptions;
use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

fn sources(folder: &str) -> Vec<(PathBuf, String)> {
    files(folder, &["rs"])
}

/// Every file of some kinds below a folder, with its text.
fn files(folder: &str, kinds: &[&str]) -> Vec<(PathBuf, String)> {
    let mut found = Vec::new();
    let mut folders = vec![Path::new(env!("CARGO_MANIFEST_DIR")).join(folder)];
    while let Some(folder) = folders.pop() {
        for entry in fs::read_dir(folder).expect("a folder") {
            let path = entry.expect("an entry").path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|extension| kinds.iter().any(|kind| extension == *kind)) {
                let text = fs::read_to_string(&path).expect("a source file");
                found.push((path, text));
            }
        }
    }
    assert!(!found.is_empty());
    found
}

/// The scripts of the page, in which a key stands in quotes as in the code.
fn scripts() -> Vec<(PathBuf, String)> {
    files("src", &["js"])
}

#[test]
fn every_catalogue_reads_whole_with_no_key_twice() {
    assert_eq!(Catalogue::check(), Ok(()));
}

#[test]
fn every_table_reads() {
    let tables = Tables::load().expect("every table reads");
    for table in tables.iter().chain([figures_table::table()]) {
        let keys: BTreeSet<&str> = table.rows.iter().map(|row| row.key).collect();
        assert_eq!(keys.len(), table.rows.len(), "{} has a key twice", table.id);
    }
}

#[test]
fn every_rule_has_a_unique_id_a_citation_a_source_and_words() {
    let mut ids = BTreeSet::new();
    for rule in rules() {
        assert!(ids.insert(rule.id), "{} stands twice", rule.id);
        assert!(rule.sections.iter().any(Option::is_some), "{} has no citation", rule.id);
        assert!(!rule.source.is_empty(), "{} has no source", rule.id);
        for language in Language::ALL {
            let words = Catalogue::of(language);
            assert!(words.has(&rule_key(rule.id)), "{} has no statement in {language:?}", rule.id);
            let title = format!("{}.title", rule_key(rule.id));
            assert!(words.has(&title), "{} has no title in {language:?}", rule.id);
        }
        for edition in Edition::ALL {
            if let Some(citation) = rule.citation(edition) {
                assert_eq!(
                    citation.to_string().contains("unverified"),
                    edition == Edition::E2026,
                    "{}",
                    rule.id
                );
            }
        }
    }
}

#[test]
fn every_figure_belongs_to_a_rule_and_stands_in_the_table_of_figures() {
    let ids: BTreeSet<&str> = rules().map(|rule| rule.id).collect();
    let table = figures_table::table();
    for edition in Edition::ALL {
        let mut names = BTreeSet::new();
        for figure in Rulebook::of(edition).figures() {
            assert!(names.insert(figure.name), "{} stands twice in {}", figure.name, edition.year());
            assert!(ids.contains(figure.rule.id), "{} has a rule that is not registered", figure.name);
            for units in [elbowroom::quantity::Units::Us, elbowroom::quantity::Units::Si] {
                let column = figures_table::column(edition, units);
                assert_eq!(
                    table.number(figure.name, column),
                    Some(figure.value(units)),
                    "{} {column}",
                    figure.name
                );
            }
        }
        for row in &table.rows {
            let column = table
                .column(figures_table::column(edition, elbowroom::quantity::Units::Us))
                .expect("a column");
            let stated = row.values[column] != Value::Absent;
            assert_eq!(stated, names.contains(row.key), "{} in {}", row.key, edition.year());
        }
    }
}

#[test]
fn the_unverified_edition_has_the_figures_of_the_one_before() {
    let figures = |edition| Rulebook::of(edition).figures().collect::<Vec<_>>();
    assert_eq!(figures(Edition::E2026), figures(Edition::E2023));
    assert_ne!(figures(Edition::E2020), figures(Edition::E2017));
    assert_ne!(figures(Edition::E2023), figures(Edition::E2020));
}

#[test]
fn every_interpretation_point_has_a_question_a_rule_and_two_readings() {
    let ids: BTreeSet<&str> = rules().map(|rule| rule.id).collect();
    let mut names = BTreeSet::new();
    for point in Point::ALL {
        assert!(names.insert(point.name()));
        for language in Language::ALL {
            let question = Catalogue::of(language).has(point.question());
            assert!(question, "{} has no question in {language:?}", point.name());
        }
        assert!(ids.contains(point.rule().id), "{} reads a rule that is not registered", point.name());
        assert!(point.readings().len() >= 2, "{} can be read in one way only", point.name());
    }
}

/// The keys that the code names: texts that begin like a key, and reasons given to `does_not_apply` or `leave_out`.
fn keys_in_code() -> BTreeSet<String> {
    let kinds = [
        "ui-",
        "caution-",
        "drawing-",
        "fault-",
        "finding-",
        "problem-",
        "question-",
        "situation-",
        "step-",
        "text-",
        "word-",
    ];
    let mut keys = BTreeSet::new();
    for (_, text) in sources("src").into_iter().chain(scripts()) {
        for quoted in text.split('"').skip(1).step_by(2) {
            let plain =
                quoted.bytes().all(|byte| byte.is_ascii_lowercase() || byte.is_ascii_digit() || byte == b'-');
            if plain && kinds.iter().any(|kind| quoted.len() > kind.len() && quoted.starts_with(kind)) {
                keys.insert(quoted.to_owned());
            }
        }
    }
    keys
}

#[test]
fn no_message_is_missing_and_none_is_unused() {
    let mut used = keys_in_code();
    for (language, key) in
        Language::ALL.into_iter().flat_map(|language| used.iter().map(move |key| (language, key)))
    {
        assert!(Catalogue::of(language).has(key), "the catalogue in {language:?} has no {key}");
    }
    for rule in rules() {
        used.insert(rule_key(rule.id));
        used.insert(format!("{}.title", rule_key(rule.id)));
    }
    for wrong in misconceptions::all() {
        let key = format!("misconception-{}", wrong.id.replace('_', "-"));
        used.extend([format!("{key}.why"), key]);
    }
    used.extend(Point::ALL.iter().map(|point| point.question().to_owned()));
    let code: String = sources("src").into_iter().map(|(_, text)| text).collect();
    // labels are held against the names that there are where the document is
    let keys = Language::ALL.into_iter().flat_map(|language| Catalogue::of(language).keys());
    for key in keys.filter(|key| !key.starts_with("label-")) {
        let reason =
            key.strip_prefix("because-").is_some_and(|reason| code.contains(&format!("\"{reason}\"")));
        assert!(reason || used.contains(key), "nothing uses the message {key}");
    }
}

/// The engine is pure: no HTTP, async, clock, file or process; binary floating point only where JSON numbers are read and
/// written, and for places on the paper of a drawing.
#[test]
fn the_engine_names_nothing_that_is_not_pure() {
    let outside = ["service", "command", "main.rs"];
    let forbidden = [
        "axum",
        "tokio",
        "hyper",
        "tower",
        "async ",
        "std::time",
        "std::fs",
        "std::net",
        "std::process",
        "std::env",
    ];
    for (path, text) in sources("src") {
        let inside = path.strip_prefix(Path::new(env!("CARGO_MANIFEST_DIR")).join("src")).expect("below src");
        if outside.iter().any(|part| inside.starts_with(part)) {
            continue;
        }
        let code = text.split("#[cfg(test)]").next().unwrap_or_default();
        for line in code.lines().map(str::trim_start).filter(|line| !line.starts_with("//")) {
            for name in forbidden {
                assert!(!line.contains(name), "{} names {name}", inside.display());
            }
            let floats = line.contains("f64") || line.contains("f32");
            let described = line.starts_with("#[schema")
                || ["quantity", "json", "drawing"].iter().any(|part| inside.starts_with(part));
            assert!(!floats || described, "{}: {line}", inside.display());
        }
    }
}

#[test]
fn every_dependency_is_listed_with_its_reason_and_no_other() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR"));
    let manifest = fs::read_to_string(folder.join("Cargo.toml")).expect("the manifest");
    let mut section = "";
    let mut declared = BTreeSet::new();
    for line in manifest.lines() {
        if line.starts_with('[') {
            section = line;
        } else if let (Some((name, _)), true) =
            (line.split_once(" = {").or(line.split_once(" = \"")), section.ends_with("dependencies]"))
        {
            declared.insert(name);
        }
    }
    let map = fs::read_to_string(folder.join("DEVELOPERS.md")).expect("the map");
    let list = map.split("\n## ").find(|part| part.starts_with("Dependencies")).expect("the list");
    let rows = list.lines().filter(|line| line.starts_with("| ") && !line.starts_with("| crate"));
    let cells = rows.filter_map(|row| row.split('|').nth(1));
    let listed: BTreeSet<&str> = cells.flat_map(|cell| cell.split(',').map(str::trim)).collect();
    assert!(declared.len() > 30, "{declared:?}");
    assert_eq!(listed, declared);
}

/// No check asks which edition it is: what differs is a field of the rulebook.
#[test]
fn no_check_compares_editions() {
    for (path, text) in sources("src/checks") {
        let code = text.split("#[cfg(test)]").next().unwrap_or_default();
        assert!(!code.contains("Edition::E20"), "{} names an edition", path.display());
    }
}
