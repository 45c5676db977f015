//! What holds for every request.

use super::requests::{INDOOR, OUTDOOR, enclosures, outlets, supports};
use elbowroom::checks::box_supports::BoxSupports;
use elbowroom::checks::enclosure_types::EnclosureTypes;
use elbowroom::checks::luminaire_and_fan_outlets::LuminaireAndFanOutlets;
use elbowroom::checks::{Check, Evaluation, Status, Verdict, evaluate, faults_of};
use proptest::prelude::*;
use serde_json::{Value, json};

/// Evaluates a request that must be free of faults, and replays its proof.
fn answer<C: Check>(request: &Value) -> Evaluation<C::Outcome> {
    let request: C::Request =
        elbowroom::json::read_value(request.clone()).expect("a generated request decodes");
    let faults = faults_of::<C>(&request);
    assert!(faults.is_empty(), "{faults:?}");
    let evaluation = evaluate::<C>(&request);
    assert_eq!(evaluation.proof.replay(), Ok(()));
    evaluation
}

/// Members whose absence says something: one stem, no weight marked, no spare conductors, the box carries it, no such floor; and those that
/// cannot be absent.
const SILENCE_SPEAKS: [&str; 8] = [
    "stems",
    "spare_conductors",
    "marked_weight",
    "carried_by_structure",
    "show_window_accepted",
    "approved",
    "count",
    "number",
];

/// What is judged of nails, screws and braces whatever else holds the box.
const STANDS: [&str; 3] = ["box-support.screw-threads", "box-support.fasteners", "box-support.brace"];

/// Takes one thing out of a request: a verdict that is settled without it is the verdict with it.
fn settled_stays_settled<C: Check>(request: &Value, place: prop::sample::Index) -> Result<(), TestCaseError> {
    let mut told = Vec::new();
    untellable(request, &mut String::new(), &mut told);
    let Some((object, member)) = (!told.is_empty()).then(|| place.get(&told)) else { return Ok(()) };
    let mut untold = request.clone();
    untold.pointer_mut(object).and_then(Value::as_object_mut).expect("an object").remove(member);
    let before = answer::<C>(&untold).verdict;
    if before.is_some_and(|before| before != Verdict::NotDetermined) {
        prop_assert_eq!(answer::<C>(request).verdict, before, "{}/{}", object, member);
    }
    Ok(())
}

/// The members that describe the enclosure and its means without saying which there are: each with the object it is in.
fn untellable(value: &Value, at: &mut String, found: &mut Vec<(String, String)>) {
    let (members, list): (Vec<(String, &Value)>, bool) = match value {
        Value::Object(members) => {
            (members.iter().map(|(name, below)| (name.clone(), below)).collect(), false)
        }
        Value::Array(items) => {
            (items.iter().enumerate().map(|(place, item)| (place.to_string(), item)).collect(), true)
        }
        _ => return,
    };
    for (name, below) in members {
        let describes = below.is_boolean() || below.is_number() || name == "trade_size";
        if describes && !list && !SILENCE_SPEAKS.contains(&name.as_str()) {
            found.push((at.clone(), name.clone()));
        }
        let before = at.len();
        at.push('/');
        at.push_str(&name);
        untellable(below, at, found);
        at.truncate(before);
    }
}

/// A request that is judged in its own units only: what holds of the outcome's rows holds of the verdict then.
fn in_its_own_units(mut request: Value) -> Value {
    request["interpretations"] = json!({"units": "as_requested"});
    request
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, cases: 512, ..ProptestConfig::default() })]

    #[test]
    fn one_complete_means_is_enough_unless_threads_are_bare(request in supports()) {
        let found = answer::<BoxSupports>(&in_its_own_units(request));
        let complete = found.outcome.means.iter().any(|means| means.status == Status::Satisfied);
        let threads = |status: Status| found.findings.iter()
            .any(|finding| STANDS.contains(&finding.rule.id) && finding.status == status);
        let (bare, unknown) = (threads(Status::Violated), threads(Status::NotDetermined));
        prop_assert_eq!(found.verdict == Some(Verdict::Complies), complete && !bare && !unknown);
        let lacking = found.outcome.means.iter().all(|means| means.status == Status::Violated);
        let named = !found.outcome.means.is_empty();
        prop_assert_eq!(found.verdict == Some(Verdict::Violates), bare || (named && lacking));
    }

    #[test]
    fn the_order_of_means_changes_no_verdict(request in supports()) {
        let mut turned = request.clone();
        turned["means"].as_array_mut().expect("a list").reverse();
        prop_assert_eq!(answer::<BoxSupports>(&request).verdict, answer::<BoxSupports>(&turned).verdict);
    }

    #[test]
    fn a_means_that_fails_changes_nothing_beside_a_complete_one(request in supports()) {
        let mut more = request;
        more["means"].as_array_mut().expect("a list").push(json!({"kind": "surface", "rigid": true}));
        let found = answer::<BoxSupports>(&in_its_own_units(more));
        let threads = found.findings.iter().any(|finding| {
            STANDS.contains(&finding.rule.id) && finding.status == Status::NotDetermined
        });
        prop_assert_eq!(found.verdict == Some(Verdict::NotDetermined), threads
            && !found.findings.iter().any(|finding| finding.status == Status::Violated));
    }

    #[test]
    fn saying_more_of_supports_never_turns_a_verdict_over(request in supports(), place in any::<prop::sample::Index>()) {
        settled_stays_settled::<BoxSupports>(&request, place)?;
    }

    #[test]
    fn saying_more_of_an_outlet_never_turns_a_verdict_over(request in outlets(), place in any::<prop::sample::Index>()) {
        settled_stays_settled::<LuminaireAndFanOutlets>(&request, place)?;
    }

    #[test]
    fn every_outlet_is_answered(request in outlets()) {
        let found = answer::<LuminaireAndFanOutlets>(&request);
        // what is violated is a verdict, whatever was asked
        let is_broken = found.findings.iter().any(|finding| finding.status == Status::Violated);
        prop_assert_eq!(found.verdict.is_some(), request.get("box").is_some() || is_broken);
    }

    #[test]
    fn a_lighter_load_is_never_worse(request in outlets(), less in 1_u32..100) {
        let Some(weight) = request["load"].get("weight").and_then(Value::as_f64) else { return Ok(()) };
        let mut lighter = request.clone();
        lighter["load"]["weight"] = json!((weight * f64::from(less)).round().max(1.0) / 100.0);
        if answer::<LuminaireAndFanOutlets>(&request).verdict == Some(Verdict::Complies) {
            prop_assert_eq!(answer::<LuminaireAndFanOutlets>(&lighter).verdict, Some(Verdict::Complies));
        }
    }

    #[test]
    fn one_more_condition_never_adds_a_type(request in enclosures(), place in 0_usize..8) {
        let before = answer::<EnclosureTypes>(&request);
        let mut more = request.clone();
        let conditions: &[&str] = if request["location"] == "indoor" { &INDOOR } else { &OUTDOOR };
        let mut list = request.get("conditions").and_then(Value::as_array).cloned().unwrap_or_default();
        list.push(conditions[place].into());
        more["conditions"] = Value::Array(list);
        let after = answer::<EnclosureTypes>(&more);
        prop_assert!(after.outcome.serves.iter().all(|one| before.outcome.serves.contains(one)));
    }

    #[test]
    fn a_type_complies_just_when_it_is_among_those_that_serve(request in enclosures()) {
        let found = answer::<EnclosureTypes>(&request);
        if request.get("enclosure_kind").is_some_and(|kind| kind == "box") {
            prop_assert!(found.outcome.types.is_empty() && found.verdict != Some(Verdict::Violates));
            return Ok(());
        }
        let Some(given) = request.get("enclosure_type").and_then(Value::as_str) else { return Ok(()) };
        let serves = found.outcome.serves.iter().any(|one| one.name() == given);
        prop_assert!(found.verdict != Some(Verdict::Complies) || serves);
        prop_assert!(found.verdict != Some(Verdict::Violates) || !serves);
        for answered in &found.outcome.types {
            prop_assert_eq!(answered.serves, answered.ruled_out_by.is_empty());
        }
    }
}
