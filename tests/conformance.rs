//! Published and hand-worked cases, run against the engine: every figure, every edition that a case names, every proof.
//!
//! A case is data under `tests/conformance/`. The loader refuses an unknown member, an empty file, a case without a
//! source and a case that expects nothing; nothing can be skipped. What ran is counted in the output.

#![expect(clippy::panic, reason = "a case that cannot run fails where it stands")]

use elbowroom::answers::{Explain, answer};
use elbowroom::checks::box_construction::BoxConstruction;
use elbowroom::checks::box_depths::BoxDepths;
use elbowroom::checks::box_mounting::BoxMounting;
use elbowroom::checks::box_supports::BoxSupports;
use elbowroom::checks::conduit_body::ConduitBodyCheck;
use elbowroom::checks::enclosure_types::EnclosureTypes;
use elbowroom::checks::free_conductors::FreeConductors;
use elbowroom::checks::luminaire_and_fan_outlets::LuminaireAndFanOutlets;
use elbowroom::checks::outlet_fill::OutletFill;
use elbowroom::checks::pull_box::PullBox;
use elbowroom::checks::raceway_fill::RacewayFill;
use elbowroom::checks::{Check, evaluate, faults_of};
use elbowroom::words::{Catalogue, Language};
use serde::Deserialize;
use serde_json::{Map, Value};
use std::collections::BTreeSet;
use std::path::Path;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Case {
    /// A sentence.
    name: String,
    check: String,
    source: Source,
    /// The answer that the source gives, where it is published.
    source_says: Option<String>,
    /// Why the source is wrong, where it is.
    source_disagrees: Option<String>,
    /// The sum, or what was assumed.
    note: Option<String>,
    editions: Vec<String>,
    request: Map<String, Value>,
    /// JSON Pointers into the answer, and what stands there.
    expect: Map<String, Value>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Source {
    basis: String,
    title: String,
    publisher: Option<String>,
    date: Option<String>,
    address: Option<String>,
}

fn cases(file: &str) -> Vec<Case> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/conformance").join(file);
    let text = std::fs::read_to_string(&path).expect(file);
    let cases: Vec<Case> = serde_json::from_str(&text).expect(file);
    assert!(!cases.is_empty(), "{file} has no cases");
    let names: BTreeSet<&str> = cases.iter().map(|case| case.name.as_str()).collect();
    assert_eq!(names.len(), cases.len(), "{file} has two cases of one name");
    for case in &cases {
        assert!(
            !case.name.is_empty() && !case.source.title.is_empty(),
            "{file}: a case without a name or source"
        );
        assert!(!case.expect.is_empty(), "{file}: «{}» expects nothing", case.name);
        assert!(!case.editions.is_empty(), "{file}: «{}» names no edition", case.name);
        let published = case.source.basis == "published";
        assert!(
            published || ["derived", "common_practice"].contains(&case.source.basis.as_str()),
            "{file}: «{}» has no basis",
            case.name
        );
        assert!(
            case.source.address.is_none() || (case.source.publisher.is_some() && case.source.date.is_some()),
            "{file}: «{}» has an address without a publisher and a date",
            case.name
        );
        assert!(
            case.source_disagrees.is_none() || case.source_says.is_some(),
            "{file}: «{}» disagrees with a source that says nothing",
            case.name
        );
        assert!(case.note.as_deref() != Some(""), "{file}: «{}» has an empty note", case.name);
    }
    cases
}

/// Evaluates one case under one edition; every difference is a line.
fn differences<C: Check>(case: &Case, edition: &str) -> Vec<String> {
    let mut request = case.request.clone();
    request.insert("edition".to_owned(), edition.into());
    let request: C::Request = match serde_json::from_value(Value::Object(request)) {
        Ok(request) => request,
        Err(error) => return vec![format!("the request does not decode: {error}")],
    };
    let faults = faults_of::<C>(&request);
    if !faults.is_empty() {
        return faults.iter().map(|fault| format!("fault {}: {}", fault.at, fault.message)).collect();
    }
    let evaluation = evaluate::<C>(&request);
    let mut differences: Vec<String> =
        evaluation.proof.replay().err().iter().map(ToString::to_string).collect();
    for explain in [Explain::Full, Explain::Summary, Explain::None] {
        let answer = answer::<C>(&request, &evaluation, explain, Catalogue::english());
        let mut written = Vec::new();
        answer.write_json(&mut written).expect("an answer is written");
        if written != serde_json::to_vec(&answer).expect("an answer is JSON") {
            differences.push(format!("{explain:?}: the text of the answer is not what serde_json writes"));
        }
        let spanish =
            elbowroom::answers::answer::<C>(&request, &evaluation, explain, Catalogue::of(Language::Spanish));
        let [english, spanish] =
            [&answer, &spanish].map(|answer| serde_json::to_value(answer).expect("an answer is JSON"));
        other_than_translated("", &english, &spanish, &mut differences);
    }
    let answer = answer::<C>(&request, &evaluation, Explain::Full, Catalogue::english());
    let answer = serde_json::to_value(&answer).expect("an answer is JSON");
    for (pointer, expected) in &case.expect {
        let found = answer.pointer(pointer);
        if !found.is_some_and(|found| same(found, expected)) {
            let found = found.map_or("nothing".to_owned(), Value::to_string);
            differences.push(format!("{pointer}: expected {expected}, found {found}"));
        }
    }
    differences
}

/// Compares an answer in two languages: sentences differ and are whole, everything else is the same.
fn other_than_translated(at: &str, english: &Value, other: &Value, differences: &mut Vec<String>) {
    /// The members that hold sentences.
    const SENTENCES: [&str; 4] = ["message", "question", "cautions", "summary"];
    match (english, other) {
        (Value::Object(left), Value::Object(right)) if left.keys().eq(right.keys()) => {
            for (member, value) in left {
                other_than_translated(&format!("{at}/{member}"), value, &right[member], differences);
            }
        }
        (Value::Array(left), Value::Array(right)) if left.len() == right.len() => {
            for (index, (left, right)) in left.iter().zip(right).enumerate() {
                other_than_translated(&format!("{at}/{index}"), left, right, differences);
            }
        }
        (Value::String(left), Value::String(right))
            if at.split('/').any(|member| SENTENCES.contains(&member)) =>
        {
            let is_key = |text: &str| !text.contains(' ');
            if left == right || [left, right].iter().any(|text| text.contains("{$") || is_key(text)) {
                differences.push(format!("{at}: «{left}» is «{right}» in the other language"));
            }
        }
        _ if english == other => {}
        _ => differences.push(format!("{at}: {english} is {other} in the other language")),
    }
}

/// Numbers are the same when they are equal, however they are written.
fn same(found: &Value, expected: &Value) -> bool {
    match (found.as_f64(), expected.as_f64()) {
        (Some(found), Some(expected)) => found == expected,
        _ => found == expected,
    }
}

/// Evaluates a case under an edition.
type Run = fn(&Case, &str) -> Vec<String>;

/// Every check, by its name.
const CHECKS: &[(&str, Run)] = &[
    (OutletFill::NAME, differences::<OutletFill>),
    (PullBox::NAME, differences::<PullBox>),
    (ConduitBodyCheck::NAME, differences::<ConduitBodyCheck>),
    (RacewayFill::NAME, differences::<RacewayFill>),
    (FreeConductors::NAME, differences::<FreeConductors>),
    (BoxDepths::NAME, differences::<BoxDepths>),
    (BoxMounting::NAME, differences::<BoxMounting>),
    (BoxConstruction::NAME, differences::<BoxConstruction>),
    (BoxSupports::NAME, differences::<BoxSupports>),
    (LuminaireAndFanOutlets::NAME, differences::<LuminaireAndFanOutlets>),
    (EnclosureTypes::NAME, differences::<EnclosureTypes>),
];

/// Runs every case of a file; gives back every difference.
fn run(file: &str) -> Vec<String> {
    let cases = cases(file);
    let (mut evaluations, mut failures) = (0, Vec::new());
    for case in &cases {
        let run = CHECKS.iter().find(|(name, _)| *name == case.check).map(|(_, run)| run);
        let run = run.unwrap_or_else(|| panic!("{file}: no check is called {}", case.check));
        for edition in &case.editions {
            evaluations += 1;
            for difference in run(case, edition) {
                failures.push(format!("{file}: «{}» ({edition}): {difference}", case.name));
            }
        }
    }
    let published = cases.iter().filter(|case| case.source.basis == "published").count();
    let disagreeing = cases.iter().filter(|case| case.source_disagrees.is_some()).count();
    say(&format!(
        "{file}: {} cases ({published} published, {disagreeing} of them where the source is wrong), {evaluations} evaluations, {} differences",
        cases.len(),
        failures.len()
    ));
    failures
}

#[test]
fn every_case_of_every_file_agrees() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/conformance");
    let mut files: Vec<String> = std::fs::read_dir(folder)
        .expect("the folder of cases")
        .map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned())
        .filter(|name| name.ends_with(".json"))
        .collect();
    files.sort();
    assert!(files.len() >= CHECKS.len(), "a check has no file of cases: {files:?}");
    let failures: Vec<String> = files.iter().flat_map(|file| run(file)).collect();
    assert!(failures.is_empty(), "{}", failures.join("\n"));
}

/// Says what ran, past the capture of the test runner: a count that nobody sees is no count.
fn say(line: &str) {
    use std::io::Write;
    let _ = writeln!(std::io::stderr(), "{line}");
}
