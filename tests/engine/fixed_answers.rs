//! Answers that are fixed: verdicts, figures and section numbers over all checks, editions and both systems of units, in a file
//! that nothing rewrites. Published examples are rewritten with whatever the engine says; these lines change by hand alone, each
//! with a reason in its commit.

use elbowroom::answers::{Explain, answer};
use elbowroom::checks::{Check, evaluate, faults_of};
use elbowroom::i18n::Catalogue;
use elbowroom::json::same;
use elbowroom::of_each_check;
use serde::Deserialize;
use serde_json::Value;
use std::collections::{BTreeMap, BTreeSet};

/// One line of the file.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Fixed {
    about: String,
    check: String,
    request: Value,
    verdict: Value,
    /// Values by their places in the answer.
    figures: BTreeMap<String, Value>,
    /// Sections by the rules that something is found about.
    citations: BTreeMap<String, String>,
}

type Answerer = fn(&Value) -> Value;

fn answered<C: Check>(request: &Value) -> Value {
    let request: C::Request = elbowroom::json::read_value(request.clone()).expect("a request");
    assert!(faults_of::<C>(&request).is_empty());
    let evaluation = evaluate::<C>(&request);
    let answer = answer::<C>(&request, &evaluation, Explain::Full, Catalogue::english());
    serde_json::to_value(&answer).expect("an answer is JSON")
}

#[test]
fn what_is_fixed_is_answered_so() {
    let answerers: BTreeMap<&str, Answerer> =
        of_each_check!(C => (<C as Check>::NAME, answered::<C> as Answerer)).into();
    let lines = include_str!("../data/fixed-answers.jsonl").lines();
    let fixed: Vec<Fixed> = lines.map(|line| serde_json::from_str(line).expect("a line")).collect();
    let (mut covered, mut wrong) = (BTreeSet::new(), Vec::new());
    for Fixed { about, check, request, verdict, figures, citations } in &fixed {
        let answer = answerers[check.as_str()](request);
        let units = request["units"].as_str().unwrap_or("us");
        covered.insert((check.as_str(), request["edition"].as_str().expect("an edition"), units));
        if answer["verdict"] != *verdict {
            wrong.push(format!("«{about}»: {}, not {verdict}", answer["verdict"]));
        }
        for (place, value) in figures {
            if !answer.pointer(place).is_some_and(|found| same(found, value)) {
                wrong.push(format!("«{about}»: {place} is not {value}"));
            }
        }
        for (rule, section) in citations {
            let findings = answer["findings"].as_array().expect("findings");
            let mut about_rule = findings.iter().filter(|finding| finding["rule"] == **rule);
            if !about_rule.any(|finding| finding["citation"] == **section) {
                wrong.push(format!("«{about}»: {rule} is not cited at {section}"));
            }
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
    // every check in every edition; in millimetres too but for types of enclosures, which have no measures
    let measured = answerers.len() - 1;
    assert_eq!(covered.len(), 3 * answerers.len() + 3 * measured, "{covered:?}");
    assert!(fixed.iter().map(|line| line.figures.len()).sum::<usize>() >= 60);
    assert!(fixed.iter().map(|line| line.citations.len()).sum::<usize>() >= 60);
}
