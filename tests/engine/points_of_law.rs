//! Which case holds which point of law: a line of `tests/data/points_of_law.csv` names a point that is easily got wrong, where
//! each edition has it, and a conformance case that fails if it is lost. Here the case is held to that: it is there, it is of
//! these editions, and its answer cites these sections.

use elbowroom::answers::{Explain, answer};
use elbowroom::audit::{self, Case, FILES};
use elbowroom::checks::{Check, evaluate};
use elbowroom::i18n::Catalogue;
use elbowroom::of_each_check;
use elbowroom::rulebook::Edition;
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};

/// The editions of the columns, in order.
const EDITIONS: [Edition; 3] = [Edition::E2017, Edition::E2020, Edition::E2023];

/// The sections that the answer to a case cites under an edition, in a finding or in a step.
type Cite = fn(&Case, Edition) -> BTreeSet<String>;

fn cited<C: Check>(case: &Case, edition: Edition) -> BTreeSet<String> {
    let mut request = case.request.clone();
    request.insert("edition".to_owned(), edition.year().into());
    let request: C::Request = elbowroom::json::read_value(Value::Object(request)).expect("a request");
    let evaluation = evaluate::<C>(&request);
    let answer = answer::<C>(&request, &evaluation, Explain::Full, Catalogue::english());
    let answer = serde_json::to_value(&answer).expect("an answer is JSON");
    let parts = ["/findings", "/derivation/steps"].map(|part| answer.pointer(part).and_then(Value::as_array));
    let parts = parts.into_iter().flatten().flatten();
    parts.filter_map(|part| part["citation"].as_str()).map(str::to_owned).collect()
}

/// What is wrong with one line, which names a point, its sections, a file and a case.
fn faults(line: &csv::StringRecord, cases: &BTreeMap<&str, Vec<Case>>) -> Vec<String> {
    let cite: BTreeMap<&str, Cite> = of_each_check!(C => (<C as Check>::NAME, cited::<C> as Cite)).into();
    let [point, file, name] = [0, 4, 5].map(|column| &line[column]);
    let in_file = cases.get(file).and_then(|cases| cases.iter().find(|case| case.name == name));
    let Some(case) = in_file else { return vec![format!("{point}: {file} has no case «{name}»")] };
    let mut faults = Vec::new();
    let sections = EDITIONS.into_iter().zip(line.iter().skip(1)).filter(|(_, section)| *section != "-");
    for (edition, section) in sections {
        let year = edition.year();
        if !case.editions.contains(&edition) {
            faults.push(format!("{point}: «{name}» is not of {year}"));
            continue;
        }
        let cited = cite[case.check.as_str()](case, edition);
        if !cited.contains(section) {
            faults.push(format!("{point}: «{name}» of {year} cites {cited:?}, not {section}"));
        }
    }
    faults
}

#[test]
fn every_point_of_law_is_held_by_a_case_that_cites_it() {
    let read = |(file, text): &(&'static str, &str)| (*file, audit::read(file, text).expect("cases"));
    let cases: BTreeMap<&str, Vec<Case>> = FILES.iter().map(read).collect();
    let mut reader = csv::Reader::from_reader(include_str!("../data/points_of_law.csv").as_bytes());
    let (mut seen, mut points, mut wrong) = (BTreeSet::new(), BTreeSet::new(), Vec::new());
    for line in reader.records() {
        let line = line.expect("a line of six fields");
        assert!(line.iter().all(|field| !field.is_empty()), "{line:?}");
        assert!((1..=3).any(|column| &line[column] != "-"), "{line:?} is about no edition");
        assert!(seen.insert([0, 4, 5].map(|column| line[column].to_owned())), "{line:?} stands twice");
        points.insert(line[0].to_owned());
        wrong.extend(faults(&line, &cases));
    }
    println!("{} points of law, {} lines", points.len(), seen.len());
    assert!(points.len() > 90, "{}", points.len());
    assert!(wrong.is_empty(), "{wrong:#?}");
}
