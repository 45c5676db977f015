//! Different facts, different proofs: no two requests with different verdicts have the same proof, and a rule is never decided
//! by the same step in two senses.

use crate::corpus::{self, Asked, Schemas, mutated, without};
use elbowroom::checks::{Check, Evaluation, Verdict, evaluate, faults_of};
use elbowroom::derivation::DerivationView;
use elbowroom::json;
use elbowroom::of_each_check;
use serde_json::{Map, Value};
use std::collections::{BTreeMap, BTreeSet, HashMap};

/// The steps of a proof and the verdict; `None` for a request that is refused, or that only asks for a size.
type Prove = fn(&Value) -> Option<(Vec<Value>, Verdict)>;

fn prove<C: Check>(request: &Value) -> Option<(Vec<Value>, Verdict)> {
    let request: C::Request = json::read_value(request.clone()).ok()?;
    if !faults_of::<C>(&request).is_empty() {
        return None;
    }
    let Evaluation { verdict, proof, .. } = evaluate::<C>(&request);
    assert_eq!(proof.replay(), Ok(()));
    let steps = serde_json::to_value(DerivationView::from(&proof)).expect("a proof");
    Some((steps["steps"].as_array().expect("steps").clone(), verdict?))
}

/// Every request of every conformance case and example, those that are generated from them, and those under 2023 with any one
/// member left out.
fn requests() -> Vec<(String, Value)> {
    let whole = corpus::whole();
    let generated = mutated(&Schemas::published(), &whole, 6);
    let less = |Asked { check, request, .. }: &Asked| {
        let mut places = Vec::new();
        members(request, "", &mut places);
        let without = places.iter().map(|at| (check.clone(), without(request, at)));
        without.collect::<Vec<_>>()
    };
    let in_2023 = |asked: &&Asked| asked.request["edition"] == "2023";
    let less: Vec<(String, Value)> = whole.iter().filter(in_2023).flat_map(less).collect();
    let as_they_are = whole.into_iter().chain(generated).map(|asked| (asked.check, asked.request));
    as_they_are.chain(less).collect()
}

fn members(value: &Value, at: &str, found: &mut Vec<String>) {
    match value {
        Value::Object(held) => {
            for (name, member) in held {
                found.push(format!("{at}/{name}"));
                members(member, &format!("{at}/{name}"), found);
            }
        }
        Value::Array(items) => {
            items.iter().enumerate().for_each(|(index, item)| members(item, &format!("{at}/{index}"), found));
        }
        _ => {}
    }
}

#[test]
fn different_verdicts_have_different_proofs() {
    let provers: BTreeMap<&str, Prove> =
        of_each_check!(C => (<C as Check>::NAME, prove::<C> as Prove)).into();
    let (mut proofs, mut facts) = (HashMap::new(), HashMap::new());
    let (mut same, mut opposite, mut believed) = (BTreeSet::new(), BTreeSet::new(), BTreeMap::new());
    let mut counted = 0;
    for (check, request) in requests() {
        let Some((steps, verdict)) = provers[check.as_str()](&request) else { continue };
        counted += 1;
        let decided = |step: &&Value| step["op"] == "account" && step["status"] != "not_determined";
        for step in steps.iter().filter(decided).filter(|step| step.get("of").is_none()) {
            *believed.entry(format!("{check}: {}", step["rule"])).or_insert(0) += 1;
        }
        let told = |other: Verdict| format!("{check}: {other:?} with the proof of {verdict:?} for {request}");
        let whole = format!("{check} {}", Value::Array(steps.clone()));
        if let Some(other) = proofs.insert(whole, verdict).filter(|other| *other != verdict) {
            same.insert(told(other));
        }
        // what is said and computed, without what rules then came to: it may leave open, and must not turn over
        let said: Vec<&Value> = steps.iter().filter(|step| step["op"] != "account").collect();
        if verdict != Verdict::NotDetermined {
            let said = format!("{check} {}", serde_json::to_string(&said).expect("steps"));
            if let Some(other) = facts.insert(said, verdict).filter(|other| *other != verdict) {
                opposite.insert(told(other));
            }
        }
    }
    assert!(counted > 10_000, "only {counted} proofs");
    assert!(same.is_empty(), "{same:#?}");
    assert!(opposite.is_empty(), "{opposite:#?}");
    assert!(believed.is_empty(), "decided, and no step says what decided it: {believed:#?}");
}

/// What a step takes from the request as a word or as a fact is what the request says there.
#[test]
fn words_and_facts_are_those_of_the_request() {
    let provers: BTreeMap<&str, Prove> =
        of_each_check!(C => (<C as Check>::NAME, prove::<C> as Prove)).into();
    let mut held = 0;
    for Asked { check, name, request } in corpus::whole() {
        let Some((steps, _)) = provers[check.as_str()](&request) else { continue };
        for step in &steps {
            let says = match step["op"].as_str() {
                Some("word") => &step["says"],
                Some("fact") => &step["holds"],
                _ => continue,
            };
            let there = request.pointer(step["at"].as_str().expect("where it is said"));
            // a fact may be read from a word of a closed set: it is what the word says then
            if step["op"] == "fact" && there.is_some_and(Value::is_string) {
                continue;
            }
            assert_eq!(there, Some(says), "{name}: {step}");
            held += 1;
        }
    }
    assert!(held > 1_000, "only {held} words and facts");
}

#[test]
fn members_are_left_out_one_at_a_time() {
    let request: Value = Map::from_iter([("a".to_owned(), serde_json::json!([{"b": 1}]))]).into();
    let mut found = Vec::new();
    members(&request, "", &mut found);
    assert_eq!(found, ["/a", "/a/0/b"]);
}
