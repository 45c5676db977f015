//! Mutation testing of the rules: every way of getting a rule wrong changes some conformance case.
//!
//! A mutation that changes none would mean that this rule could be wrong and nobody would notice.

use elbowroom::answers::{Explain, answer};
use elbowroom::checks::{Check, Counterfactual, Evaluation, Request as _, evaluate_under, rulebook_of};
use elbowroom::i18n::Catalogue;
use elbowroom::quantity::{Decimal, Measure, Units};
use elbowroom::rulebook::amendment::Amended;
use elbowroom::rulebook::digest::Law;
use elbowroom::rulebook::{Edition, RuleFigure, Rulebook};
use elbowroom::training::{Mutation, Teachable, evaluate_counterfactual, misconceptions};
use serde_json::{Map, Value, json};
use std::collections::BTreeSet;
use std::path::Path;

/// One case under one edition: the request, and what the answer is expected to say.
struct Case<C: Check> {
    request: C::Request,
    expect: Map<String, Value>,
}

fn cases<C: Check>() -> Vec<Case<C>> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/conformance");
    let mut cases = Vec::new();
    for entry in std::fs::read_dir(folder).expect("the folder of cases") {
        let path = entry.expect("an entry").path();
        if path.extension().is_none_or(|extension| extension != "json") {
            continue;
        }
        let text = std::fs::read_to_string(&path).expect("a file of cases");
        let file: Vec<Value> = serde_json::from_str(&text).expect("cases");
        for case in file.iter().filter(|case| case["check"] == C::NAME) {
            for edition in case["editions"].as_array().expect("editions") {
                let mut request = case["request"].clone();
                request["edition"] = edition.clone();
                let request = elbowroom::json::read_value(request).expect("a request");
                let expect = case["expect"].as_object().expect("expectations").clone();
                cases.push(Case { request, expect });
            }
        }
    }
    assert!(!cases.is_empty(), "{} has no cases", C::NAME);
    cases
}

/// Whether an evaluation is not what a case expects.
fn differs<C: Check>(case: &Case<C>, evaluation: &Evaluation<C::Outcome>) -> bool {
    let answer = answer::<C>(&case.request, evaluation, Explain::None, Catalogue::english());
    let answer = serde_json::to_value(&answer).expect("an answer is JSON");
    case.expect.iter().any(|(pointer, expected)| is_other(expected, answer.pointer(pointer)))
}

/// Whether a counterfactual, of which no answer can be made, has another verdict or outcome than a case expects.
fn departs<C: Check>(case: &Case<C>, counterfactual: &Counterfactual<C::Outcome>) -> bool {
    let would_be = json!({"verdict": counterfactual.verdict(), "outcome": counterfactual.outcome()});
    let comparable = |pointer: &str| pointer == "/verdict" || pointer.starts_with("/outcome/");
    let expected = case.expect.iter().filter(|(pointer, _)| comparable(pointer));
    expected.into_iter().any(|(pointer, expected)| is_other(expected, would_be.pointer(pointer)))
}

fn is_other(expected: &Value, found: Option<&Value>) -> bool {
    let found = found.unwrap_or(&Value::Null);
    found != expected && !found.as_f64().is_some_and(|found| expected.as_f64() == Some(found))
}

fn without_cases<C: Teachable>() -> Vec<String> {
    let cases = cases::<C>();
    let noticed = |mutation: &Mutation<C>| {
        cases.iter().any(|case| {
            evaluate_counterfactual::<C>(&case.request, std::slice::from_ref(mutation))
                .is_some_and(|counterfactual| departs::<C>(case, &counterfactual))
        })
    };
    let unnoticed = C::MISCONCEPTIONS.iter().filter(|wrong| !noticed(&wrong.mutation));
    unnoticed.map(|wrong| format!("{}: {}", C::NAME, wrong.id)).collect()
}

#[test]
fn every_misconception_changes_some_case() {
    let unnoticed: Vec<String> = elbowroom::of_each_teachable_check!(C => without_cases::<C>()).concat();
    println!("{} misconceptions, {} unnoticed", misconceptions::all().count(), unnoticed.len());
    assert!(misconceptions::all().count() >= 100);
    assert!(unnoticed.is_empty(), "could be wrong and nobody would notice: {unnoticed:#?}");
}

/// The pointers of all strategies in what rules say, each with its name.
fn strategies(law: &Law) -> BTreeSet<(String, String)> {
    fn find(value: &Value, at: String, found: &mut BTreeSet<(String, String)>) {
        if let Some(name) = value["strategy"].as_str() {
            found.insert((at, name.to_owned()));
        } else if let Value::Array(items) = value {
            items.iter().enumerate().for_each(|(index, item)| find(item, format!("{at}/{index}"), found));
        } else if let Value::Object(members) = value {
            members.iter().for_each(|(name, member)| find(member, format!("{at}/{name}"), found));
        }
    }
    let mut found = BTreeSet::new();
    law.said.iter().for_each(|(part, said)| find(said, format!("{part:?}"), &mut found));
    found
}

fn changed_strategies<C: Teachable>() -> BTreeSet<(String, String)> {
    let book = Rulebook::of(Edition::E2023);
    let lawful = strategies(&book.law());
    let mutated = C::MISCONCEPTIONS.iter().filter_map(|wrong| match wrong.mutation {
        Mutation::Rules(change) => Some(strategies(&book.mutated(change).law())),
        Mutation::Request(_) | Mutation::EditionBefore => None,
    });
    mutated.flat_map(|mutated| mutated.difference(&lawful).cloned().collect::<Vec<_>>()).collect()
}

/// With the test above: every structural choice of a rule decides some case, or it is none.
#[test]
fn every_strategy_has_another_that_a_misconception_names() {
    let lawful = strategies(&Rulebook::of(Edition::E2023).law());
    let others: Vec<BTreeSet<(String, String)>> =
        elbowroom::of_each_teachable_check!(C => changed_strategies::<C>()).into();
    let others: BTreeSet<(String, String)> = others.into_iter().flatten().collect();
    println!("{} choices, {} other ways to make them", lawful.len(), others.len());
    assert!(lawful.len() >= 20, "{lawful:#?}");
    let made_otherwise: BTreeSet<&String> = others.iter().map(|(at, _)| at).collect();
    let idle: Vec<_> = lawful.iter().filter(|(at, _)| !made_otherwise.contains(at)).collect();
    assert!(idle.is_empty(), "choices that nothing makes otherwise: {idle:#?}");
}

/// A misconception is mutated rules, not a broken proof: what it gives can be recomputed like anything else.
fn broken_proofs<C: Teachable>() -> Vec<String> {
    let mut broken = Vec::new();
    for case in cases::<C>() {
        for wrong in C::MISCONCEPTIONS {
            if let Some(counterfactual) = evaluate_counterfactual::<C>(&case.request, &[wrong.mutation])
                && let Err(fault) = counterfactual.replay()
            {
                broken.push(format!("{}: {fault}", wrong.id));
            }
        }
    }
    broken.dedup();
    broken
}

/// What grading leaves untried: mutated rules of which the proof has no step. None of them may change an outcome.
fn wrongly_left_untried<C: Teachable>() -> Vec<String>
where
    C::Outcome: serde::Serialize,
{
    let figures = |outcome: &C::Outcome| -> Vec<String> {
        let outcome = serde_json::to_value(outcome).expect("an outcome is JSON");
        let mut values = Vec::new();
        collect_values(&outcome, &mut values);
        values
    };
    let mut wrong = BTreeSet::new();
    for case in cases::<C>() {
        let evaluation = elbowroom::checks::evaluate::<C>(&case.request);
        let right = figures(&evaluation.outcome);
        for untried in C::MISCONCEPTIONS.iter().filter(|wrong| !wrong.can_matter(&evaluation.proof)) {
            if evaluate_counterfactual::<C>(&case.request, &[untried.mutation])
                .is_some_and(|counterfactual| figures(counterfactual.outcome()) != right)
            {
                wrong.insert(format!("{}: {}", C::NAME, untried.id));
            }
        }
    }
    wrong.into_iter().collect()
}

/// Every value of a figure, in order.
fn collect_values(outcome: &Value, values: &mut Vec<String>) {
    match outcome {
        Value::Object(members) => {
            values.extend(members.get("value").map(Value::to_string));
            members.values().for_each(|member| collect_values(member, values));
        }
        Value::Array(items) => items.iter().for_each(|item| collect_values(item, values)),
        _ => {}
    }
}

#[test]
fn what_grading_leaves_untried_changes_no_figure() {
    let wrong: Vec<String> = elbowroom::of_each_teachable_check!(C => wrongly_left_untried::<C>()).concat();
    assert!(wrong.is_empty(), "{wrong:?}");
}

#[test]
fn every_counterfactual_proof_replays() {
    let broken = elbowroom::of_each_teachable_check!(C => broken_proofs::<C>()).concat();
    assert!(broken.is_empty(), "{broken:#?}");
}

#[test]
fn every_misconception_has_a_name_of_its_own_words_and_a_rule() {
    let words = Catalogue::english();
    let mut ids = BTreeSet::new();
    for wrong in misconceptions::all() {
        assert!(ids.insert(wrong.id), "{} stands twice", wrong.id);
        assert!(!wrong.rules.is_empty(), "{} goes against no rule", wrong.id);
        let key = format!("misconception-{}", wrong.id.replace('_', "-"));
        assert!(words.has(&key), "{key} has no title");
        assert!(words.has(&format!("{key}.why")), "{key} does not say why");
    }
}

/// A check under mutated figures, with its cases in inches.
struct Noticing {
    name: &'static str,
    notices: Box<dyn Fn(&Amended) -> bool>,
}

fn noticing<C: Check + 'static>() -> Noticing {
    let cases = cases::<C>();
    let notices = move |mutation: &Amended| {
        cases.iter().filter(|case| case.request.terms().units == Units::Us).any(|case| {
            let book = rulebook_of::<C>(&case.request, case.request.terms().edition);
            let evaluation = evaluate_under::<C>(&book.with_amendments(&[*mutation]), &case.request);
            differs::<C>(case, &evaluation)
        })
    };
    Noticing { name: C::NAME, notices: Box::new(notices) }
}

/// A figure a little larger and a little smaller: by one where it is a number of things.
fn mutations(figure: &RuleFigure) -> Vec<Decimal> {
    let value = figure.us;
    let tenth = value.times(Decimal::ten_thousandths(1_000));
    let whole = figure.measure == Measure::Number && value.is_whole();
    let step = match (whole, value == Decimal::ZERO) {
        (true, _) | (_, true) => Decimal::ONE,
        (false, false) => tenth,
    };
    if value == Decimal::ZERO { vec![value + step] } else { vec![value + step, value - step] }
}

/// Every figure of every subject, a little larger and a little smaller, changes what some case says. Sharper questions
/// are asked of inspections in `tests/engine/inspections/figures.rs`.
#[test]
fn every_figure_of_every_subject_changes_some_case_when_changed_either_way() {
    let checks = elbowroom::of_each_check!(C => noticing::<C>());
    let mut names = BTreeSet::new();
    let figures = Edition::ALL.into_iter().flat_map(|edition| Rulebook::of(edition).figures());
    let figures: Vec<RuleFigure> = figures.filter(|figure| names.insert(figure.name)).collect();
    let (mut count, mut unnoticed) = (0, Vec::new());
    for figure in &figures {
        for value in mutations(figure) {
            count += 1;
            let mutation = Amended { figure: figure.name, value };
            if !checks.iter().any(|check| (check.notices)(&mutation)) {
                unnoticed.push(format!("{} changed to {value}", figure.name));
            }
        }
    }
    println!(
        "{count} mutations of {} figures under {} checks, {} unnoticed",
        figures.len(),
        checks.len(),
        unnoticed.len()
    );
    assert!(checks.iter().all(|check| !check.name.is_empty()) && count > 200, "{count}");
    assert!(unnoticed.is_empty(), "{unnoticed:#?}");
}
