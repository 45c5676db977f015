//! Published and hand-worked cases, run against the engine: every figure, every edition that a case names, every proof.
//!
//! A case is data under `tests/conformance/`, read and run as the self-audit does it. The loader refuses an unknown member, an
//! empty file, a case without a source and a case that expects nothing; nothing can be skipped. What ran is counted in the
//! output. A second test holds the other forms of each answer: another language, less of the proof, the text itself.

#![expect(clippy::panic, reason = "a case that cannot run fails where it stands")]

use elbowroom::answers::{Explain, answer};
use elbowroom::audit::{self, Case, CaseBasis, Compared, FILES, examine};
use elbowroom::checks::{Check, evaluate};
use elbowroom::i18n::{Catalogue, Language};
use elbowroom::rulebook::Edition;
use serde_json::Value;
use std::path::Path;

/// Evaluates one case under one edition; every difference is a line.
fn differences<C: Check>(case: &Case, edition: Edition) -> Vec<String> {
    let examined = examine::<C>(case, edition);
    let mut differences: Vec<String> = examined.refused.into_iter().collect();
    differences.extend(examined.proof.and_then(|proof| proof.fault));
    for Compared { pointer, expected, computed, .. } in examined.values.iter().filter(|value| !value.agrees) {
        let found = computed.as_ref().map_or("nothing".to_owned(), Value::to_string);
        differences.push(format!("{pointer}: expected {expected}, found {found}"));
    }
    assert_eq!(examined.agrees, differences.is_empty(), "«{}» agrees and differs", case.name);
    differences
}

/// What is said in every form of the answer: the text is what `serde_json` writes, and another language translates sentences.
fn otherwise_written<C: Check>(case: &Case, edition: Edition) -> Vec<String> {
    let mut differences = Vec::new();
    let mut request = case.request.clone();
    request.insert("edition".to_owned(), edition.year().into());
    let request: C::Request =
        elbowroom::json::read_value(Value::Object(request)).expect("a request that was answered");
    let evaluation = evaluate::<C>(&request);
    for explain in [Explain::Full, Explain::Summary, Explain::None] {
        let [english, spanish] = [Language::English, Language::Spanish]
            .map(|language| answer::<C>(&request, &evaluation, explain, Catalogue::of(language)));
        let mut written = Vec::new();
        english.write_json(&mut written).expect("an answer is written");
        if written != serde_json::to_vec(&english).expect("an answer is JSON") {
            differences.push(format!("{explain:?}: the text of the answer is not what serde_json writes"));
        }
        let [english, spanish] =
            [english, spanish].map(|answer| serde_json::to_value(answer).expect("an answer is JSON"));
        other_than_translated("", &english, &spanish, &mut differences);
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

/// Evaluates a case under an edition.
type Run = fn(&Case, Edition) -> Vec<String>;

/// Every check, by its name: whether its cases agree, and whether they are written so in every form.
const CHECKS: &[(&str, Run, Run)] =
    &elbowroom::of_each_check!(C => (C::NAME, differences::<C> as Run, otherwise_written::<C> as Run));

/// Runs every case of a file, by one or the other function of its check; gives back every difference.
fn run(file: &str, text: &str, of: fn(&(&str, Run, Run)) -> Run) -> Vec<String> {
    let cases = audit::read(file, text).unwrap_or_else(|fault| panic!("{fault}"));
    let (mut evaluations, mut failures) = (0, Vec::new());
    for case in &cases {
        let run = CHECKS.iter().find(|(name, ..)| *name == case.check).map(of);
        let run = run.unwrap_or_else(|| panic!("{file}: no check is called {}", case.check));
        for edition in &case.editions {
            evaluations += 1;
            for difference in run(case, *edition) {
                failures.push(format!("{file}: «{}» ({}): {difference}", case.name, edition.year()));
            }
        }
    }
    let published = cases.iter().filter(|case| case.source.basis == CaseBasis::Published).count();
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
    assert!(FILES.len() >= CHECKS.len(), "a check has no file of cases");
    let failures: Vec<String> =
        FILES.iter().flat_map(|(file, text)| run(file, text, |check| check.1)).collect();
    assert!(failures.is_empty(), "{}", failures.join("\n"));
}

#[test]
fn every_case_is_the_same_in_every_form() {
    let failures: Vec<String> =
        FILES.iter().flat_map(|(file, text)| run(file, text, |check| check.2)).collect();
    assert!(failures.is_empty(), "{}", failures.join("\n"));
}

#[test]
fn every_file_of_the_folder_is_part_of_the_program() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/conformance");
    let mut files: Vec<(String, String)> = std::fs::read_dir(folder)
        .expect("the folder of cases")
        .map(|entry| entry.expect("an entry").path())
        .filter(|path| path.extension().is_some_and(|extension| extension == "json"))
        .map(|path| {
            let name = path.file_name().expect("a name").to_string_lossy().into_owned();
            (name, std::fs::read_to_string(&path).expect("a file of cases"))
        })
        .collect();
    files.sort();
    assert!(
        FILES
            .iter()
            .map(|(name, text)| (*name, *text))
            .eq(files.iter().map(|(name, text)| (&**name, &**text)))
    );
    let read: usize = files.iter().map(|(name, text)| audit::read(name, text).expect("cases").len()).sum();
    assert_eq!(audit::cases().expect("cases").len(), read);
}

/// Says what ran, past the capture of the test runner: a count that nobody sees is no count.
fn say(line: &str) {
    use std::io::Write;
    let _ = writeln!(std::io::stderr(), "{line}");
}
