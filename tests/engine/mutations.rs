//! Mutation testing of the rules: every way of getting a rule wrong changes some conformance case.
//!
//! A mutation that changes none would mean that this rule could be wrong and nobody would notice.

use elbowroom::answers::{Explain, answer};
use elbowroom::checks::{
    Check, Counterfactual, Evaluation, Request as _, evaluate, evaluate_under, rulebook_of,
};
use elbowroom::derivation::Operation;
use elbowroom::i18n::Catalogue;
use elbowroom::quantity::{Decimal, Measure, Units};
use elbowroom::rulebook::amendment::Amended;
use elbowroom::rulebook::digest::Law;
use elbowroom::rulebook::{Edition, Rule, RuleFigure, Rulebook};
use elbowroom::training::{Mutation, Teachable, evaluate_counterfactual, misconceptions};
use serde_json::{Map, Value, json};
use std::collections::{BTreeSet, HashMap, HashSet};
use std::path::Path;

/// One case under one edition: the request, and what the answer is expected to say.
struct Case<C: Check> {
    name: String,
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
                let name = case["name"].as_str().expect("a name").to_owned();
                cases.push(Case { name, request, expect });
            }
        }
    }
    assert!(!cases.is_empty(), "{} has no cases", C::NAME);
    cases
}

/// What the answer to a case says otherwise than the case expects. It is the whole answer, since a case may expect a step of the
/// proof: a shorter one would differ from it whatever the rules say.
fn difference<C: Check>(case: &Case<C>, evaluation: &Evaluation<C::Outcome>) -> Option<String> {
    let answer = answer::<C>(&case.request, evaluation, Explain::Full, Catalogue::english());
    let answer = serde_json::to_value(&answer).expect("an answer is JSON");
    let other = case.expect.iter().find(|(pointer, expected)| is_other(expected, answer.pointer(pointer)));
    other.map(|(pointer, expected)| format!("«{}»: {pointer} is not {expected}", case.name))
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
    for case in &cases {
        let unchanged = evaluate_counterfactual::<C>(&case.request, &[]).expect("rules that nobody changed");
        assert!(!departs::<C>(case, &unchanged), "«{}» departs although nothing is changed", case.name);
    }
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

/// A figure of an edition in one system of units.
type Place = (&'static str, Edition, Units);

/// A check under mutated figures.
struct Noticing {
    reads: fn(&'static Rule) -> bool,
    states: Box<dyn Fn(Place) -> bool>,
    notices: Box<dyn Fn(Place, Decimal) -> bool>,
}

/// A case whose proof states a figure can notice that it is another. Where none does, a figure may be one that is only stated
/// when it is more than nothing, and every case is tried.
fn noticing<C: Check + 'static>() -> Noticing {
    let cases = cases::<C>();
    let mut of_place: HashMap<(Edition, Units), Vec<usize>> = HashMap::new();
    let mut stating: HashMap<Place, Vec<usize>> = HashMap::new();
    for (index, case) in cases.iter().enumerate() {
        let evaluation = evaluate::<C>(&case.request);
        assert_eq!(difference::<C>(case, &evaluation), None, "although nothing is changed");
        let (edition, units) = (case.request.terms().edition, case.request.terms().units);
        of_place.entry((edition, units)).or_default().push(index);
        for step in evaluation.proof.steps() {
            // a figure that the request amends is its own
            if let (Operation::Stated { figure, .. }, false) = (step.operation, step.amended) {
                let known = stating.entry((figure, edition, units)).or_default();
                if known.last() != Some(&index) {
                    known.push(index);
                }
            }
        }
    }
    let stated: HashSet<Place> = stating.keys().copied().collect();
    let notices = move |place: Place, value: Decimal| {
        let mutation = [Amended { figure: place.0, value }];
        let tried = stating.get(&place).or_else(|| of_place.get(&(place.1, place.2)));
        tried.into_iter().flatten().any(|index| {
            let case = &cases[*index];
            let book = rulebook_of::<C>(&case.request, place.1).with_amendments(&mutation);
            difference::<C>(case, &evaluate_under::<C>(&book, &case.request)).is_some()
        })
    };
    Noticing {
        reads: |rule| C::reads().has_rule(rule),
        states: Box::new(move |place| stated.contains(&place)),
        notices: Box::new(notices),
    }
}

/// A figure a little larger and a little smaller: by one where it is a number of things.
fn mutations(figure: &RuleFigure, units: Units) -> Vec<Decimal> {
    let value = figure.value(units);
    let tenth = value.times(Decimal::ten_thousandths(1_000));
    let whole = figure.measure == Measure::Number && value.is_whole();
    let step = if whole || value == Decimal::ZERO { Decimal::ONE } else { tenth };
    if value == Decimal::ZERO { vec![value + step] } else { vec![value + step, value - step] }
}

/// The figures of which a change shows nowhere, with the reason.
const IDLE: [(&str, &str); 1] = [(
    "free-conductor.device-opening",
    "a tenth more or less leaves the opening of a device box small by far",
)];

/// Every figure of every subject, a little larger and a little smaller, changes what some case of its edition says in its units.
/// Sharper questions are asked of inspections in `tests/engine/inspections/figures.rs`.
#[test]
fn every_figure_of_every_subject_changes_some_case_when_changed_either_way() {
    let checks = elbowroom::of_each_check!(C => noticing::<C>());
    let (mut count, mut names, mut unnoticed) = (0, BTreeSet::new(), Vec::new());
    for edition in [Edition::E2017, Edition::E2020, Edition::E2023] {
        let figures = Rulebook::of(edition).figures();
        for figure in figures.filter(|figure| IDLE.iter().all(|(name, _)| *name != figure.name)) {
            names.insert(figure.name);
            for units in [Units::Us, Units::Si] {
                let place = (figure.name, edition, units);
                let mut tried: Vec<&Noticing> = checks.iter().filter(|check| (check.states)(place)).collect();
                if tried.is_empty() {
                    tried = checks.iter().filter(|check| (check.reads)(figure.rule)).collect();
                }
                for value in mutations(&figure, units) {
                    count += 1;
                    if !tried.iter().any(|check| (check.notices)(place, value)) {
                        let year = edition.year();
                        unnoticed.push(format!("{} of {year} changed to {value} ({units:?})", figure.name));
                    }
                }
            }
        }
    }
    println!("{count} mutations of {} figures, {} unnoticed", names.len(), unnoticed.len());
    assert!(count > 1_200, "{count}");
    assert!(unnoticed.is_empty(), "{unnoticed:#?}");
}

/// Where nothing was read, nothing is tried: what is carried over is the same.
#[test]
fn the_figures_of_2026_are_those_of_2023() {
    let [before, carried] = [Edition::E2023, Edition::E2026].map(|edition| Rulebook::of(edition).figures());
    assert!(before.eq(carried));
}
