//! Where two answers differ: each place with what stands there on either side, up to a limit, the rest counted.

use crate::json::same;
use crate::service::body::lenient::append;
use serde::Serialize;
use serde_json::{Map, Value};
use std::collections::BTreeMap;
use utoipa::ToSchema;

/// The most differences that are listed.
pub const MOST_LISTED: usize = 50;

/// The most characters of a text that is shown.
const MOST_CHARACTERS: usize = 200;

/// The members of an answer whose differences come first.
const FIRST: [&str; 3] = ["verdict", "outcome", "findings"];

/// A place where a certificate and what is computed here differ.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct Difference {
    /// Where, as a JSON Pointer into the certificate.
    #[schema(format = "json-pointer", example = "/answer/outcome/required/value")]
    pub at: String,
    /// What the certificate says; absent where it says nothing. A long text is cut, of a list or object only the kind is told.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub certificate: Option<Value>,
    /// What is computed here; absent where there is nothing.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub computed: Option<Value>,
}

/// Differences as they are listed.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Differences {
    /// Those that are listed.
    pub listed: Vec<Difference>,
    /// How many more there are.
    pub more: usize,
}

impl Differences {
    /// Adds one; past the most that are listed it is only counted.
    pub fn note(&mut self, at: &str, certificate: Option<&Value>, computed: Option<&Value>) {
        if self.listed.len() < MOST_LISTED {
            let (certificate, computed) = (certificate.map(shown), computed.map(shown));
            self.listed.push(Difference { at: at.to_owned(), certificate, computed });
        } else {
            self.more += 1;
        }
    }

    /// Adds everything in which two answers differ, verdict and figures first.
    pub fn of_answers(&mut self, certificate: &Map<String, Value>, computed: &Map<String, Value>) {
        let rest = members(certificate, computed).filter(|member| !FIRST.contains(member));
        for member in FIRST.into_iter().chain(rest) {
            let mut at = String::from("/answer");
            append(&mut at, member);
            self.compare(&mut at, certificate.get(member), computed.get(member));
        }
    }

    /// Compares two values down to their leaves.
    fn compare(&mut self, at: &mut String, left: Option<&Value>, right: Option<&Value>) {
        match (left, right) {
            (None, None) => {}
            (Some(Value::Object(left)), Some(Value::Object(right))) => {
                for member in members(left, right) {
                    self.below(at, member, left.get(member), right.get(member));
                }
            }
            (Some(Value::Array(left)), Some(Value::Array(right))) => {
                for index in 0..left.len().max(right.len()) {
                    self.below(at, &index.to_string(), left.get(index), right.get(index));
                }
            }
            (Some(left), Some(right)) if same(left, right) => {}
            (left, right) => self.note(at, left, right),
        }
    }

    fn below(&mut self, at: &mut String, segment: &str, left: Option<&Value>, right: Option<&Value>) {
        let before = append(at, segment);
        self.compare(at, left, right);
        at.truncate(before);
    }
}

/// The members of two objects, each once.
fn members<'a>(left: &'a Map<String, Value>, right: &'a Map<String, Value>) -> impl Iterator<Item = &'a str> {
    left.keys().chain(right.keys().filter(|member| !left.contains_key(*member))).map(String::as_str)
}

/// A value as a difference shows it.
fn shown(value: &Value) -> Value {
    match value {
        Value::String(text) => match text.char_indices().nth(MOST_CHARACTERS) {
            Some((end, _)) => Value::String(format!("{}…", text.get(..end).unwrap_or_default())),
            None => value.clone(),
        },
        Value::Object(members) if !members.is_empty() => Value::String("{…}".to_owned()),
        Value::Array(items) if !items.is_empty() => Value::String("[…]".to_owned()),
        plain => plain.clone(),
    }
}

/// Which inputs two proofs take differently from their requests: the steps that take a number, a yes or a no from it.
pub fn of_inputs(certificate: &Map<String, Value>, computed: &Map<String, Value>) -> Differences {
    let (left, right) = (inputs(certificate), inputs(computed));
    let mut differences = Differences::default();
    for at in left.keys().chain(right.keys().filter(|at| !left.contains_key(*at))) {
        let [left, right] = [&left, &right].map(|inputs| inputs.get(at).map_or(&[][..], Vec::as_slice));
        let pairs = (0..left.len().max(right.len())).map(|index| (left.get(index), right.get(index)));
        let mut differing =
            pairs.filter(|(left, right)| !left.zip(*right).is_some_and(|(left, right)| same(left, right)));
        if let Some((left, right)) = differing.next() {
            differences.note(&format!("/request{at}"), left.copied(), right.copied());
        }
    }
    differences
}

/// What a proof takes from its request, by the place there.
fn inputs(answer: &Map<String, Value>) -> BTreeMap<&str, Vec<&Value>> {
    let steps = answer.get("derivation").and_then(|proof| proof.get("steps")).and_then(Value::as_array);
    let mut inputs: BTreeMap<&str, Vec<&Value>> = BTreeMap::new();
    for step in steps.into_iter().flatten() {
        let text = |member: &str| step.get(member).and_then(Value::as_str);
        let (Some("given" | "fact"), Some(at)) = (text("op"), text("at")) else { continue };
        inputs.entry(at).or_default().extend(step.get("equals").or_else(|| step.get("holds")));
    }
    inputs
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    fn map(value: Value) -> Map<String, Value> {
        value.as_object().unwrap().clone()
    }

    #[test]
    fn every_leaf_that_differs_is_found_verdict_and_figures_first() {
        let left = map(json!({
            "cautions": ["a", "b"], "outcome": {"x/y": 1, "gone": null, "same": 2.0}, "verdict": "complies",
        }));
        let right = map(json!({
            "cautions": ["a"], "outcome": {"x/y": {"value": 1}, "new": [], "same": 2}, "verdict": null,
        }));
        let mut differences = Differences::default();
        differences.of_answers(&left, &right);
        let found: Vec<Value> =
            differences.listed.iter().map(|found| serde_json::to_value(found).unwrap()).collect();
        assert_eq!(
            found,
            [
                json!({"at": "/answer/verdict", "certificate": "complies", "computed": null}),
                json!({"at": "/answer/outcome/x~1y", "certificate": 1, "computed": "{…}"}),
                json!({"at": "/answer/outcome/gone", "certificate": null}),
                json!({"at": "/answer/outcome/new", "computed": []}),
                json!({"at": "/answer/cautions/1", "certificate": "b"}),
            ]
        );
        let mut none = Differences::default();
        none.of_answers(&left, &left);
        assert_eq!(none, Differences::default());
    }

    #[test]
    fn what_is_listed_is_bounded_and_the_rest_is_counted() {
        let left = map(json!({"outcome": vec!["é".repeat(1000); 80]}));
        let mut differences = Differences::default();
        differences.of_answers(&left, &map(json!({"outcome": vec![0; 90]})));
        assert_eq!((differences.listed.len(), differences.more), (MOST_LISTED, 40));
        let text = differences.listed[0].certificate.as_ref().unwrap().as_str().unwrap();
        assert_eq!(text.chars().count(), MOST_CHARACTERS + 1);
    }

    #[test]
    fn inputs_are_told_by_their_place_in_the_request() {
        let proof = |value: Value, more: Value| {
            map(json!({"derivation": {"steps": [
                {"op": "given", "at": "/contents/0/count", "equals": value}, {"op": "fact", "at": "/flat", "holds": true},
                {"op": "product", "equals": value}, more,
            ]}}))
        };
        let nothing = json!({"op": "nothing"});
        let differences = of_inputs(
            &proof(json!(2), json!({"op": "given", "at": "/more", "equals": 1})),
            &proof(json!(3), nothing.clone()),
        );
        let found: Vec<(&str, Option<Value>, Option<Value>)> = differences
            .listed
            .iter()
            .map(|found| (found.at.as_str(), found.certificate.clone(), found.computed.clone()))
            .collect();
        assert_eq!(
            found,
            [
                ("/request/contents/0/count", Some(json!(2)), Some(json!(3))),
                ("/request/more", Some(json!(1)), None),
            ]
        );
        assert!(of_inputs(&proof(json!(2), nothing.clone()), &proof(json!(2.0), nothing)).listed.is_empty());
        assert!(of_inputs(&Map::new(), &map(json!({"derivation": []}))).listed.is_empty());
    }
}
