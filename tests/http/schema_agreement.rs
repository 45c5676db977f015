//! The failure path against an independent validator: both must call the same bodies valid.

use crate::support::good;
use elbowroom::answers::Explain;
use elbowroom::quantity::has_at_most_decimals;
use elbowroom::service::body::{KEYWORDS, faults_under, schema::Schema};
use elbowroom::service::openapi::{self, examples::ExampleSet};
use elbowroom::service::register::CHECKS;
use elbowroom::tables::standard_boxes::StandardBox;
use elbowroom::trade::{ConductorSize, TradeSize};
use jsonschema::{Keyword, ValidationError, Validator};
use proptest::prelude::*;
use serde_json::{Map, Value, json};
use std::sync::LazyLock;

static DOCUMENT: LazyLock<Value> = LazyLock::new(|| serde_json::from_str(openapi::text()).unwrap());

fn components() -> &'static Map<String, Value> {
    DOCUMENT["components"]["schemas"].as_object().unwrap()
}

struct Decimals(u32);

impl<'i> Keyword<'i> for Decimals {
    fn validate(&self, instance: &'i Value) -> Result<(), ValidationError<'i>> {
        if Keyword::is_valid(self, instance) { Ok(()) } else { Err(ValidationError::custom("decimals")) }
    }

    fn is_valid(&self, instance: &'i Value) -> bool {
        // a number that is out of bounds is refused by its bound
        instance.as_f64().is_none_or(|number| number > 1e6 || has_at_most_decimals(number, self.0))
    }
}

/// An independent validator of a schema of the document, which knows our formats and our keyword.
pub fn validator(name: &str) -> Validator {
    let schema =
        json!({"$ref": format!("#/components/schemas/{name}"), "components": DOCUMENT["components"]});
    jsonschema::draft202012::options()
        .should_validate_formats(true)
        .with_format("conductor-size", |text: &str| ConductorSize::read(text).is_some())
        .with_format("trade-size", |text: &str| TradeSize::read(text).is_some())
        .with_format("standard-box", |text: &str| StandardBox::read(text).is_some())
        .with_keyword("x-decimals", |_, value, _| Ok(Box::new(Decimals(value.as_u64().unwrap() as u32))))
        .build(&schema)
        .unwrap()
}

fn request_schema(check: usize) -> String {
    let operation = &DOCUMENT["paths"][CHECKS[check].path]["post"];
    let schema = &operation["requestBody"]["content"]["application/json"]["schema"]["$ref"];
    schema.as_str().unwrap().rsplit('/').next().unwrap().to_owned()
}

fn answer_schema(check: usize) -> String {
    let operation = &DOCUMENT["paths"][CHECKS[check].path]["post"];
    let schema = &operation["responses"]["200"]["content"]["application/json"]["schema"]["$ref"];
    schema.as_str().unwrap().rsplit('/').next().unwrap().to_owned()
}

/// Every schema that a schema leads to holds only keywords that the failure path understands.
#[test]
fn request_schemas_use_no_keyword_that_is_not_understood() {
    fn look(schema: &Value, seen: &mut Vec<String>) {
        let Some(members) = schema.as_object() else { return };
        for (keyword, value) in members {
            assert!(KEYWORDS.contains(&keyword.as_str()), "{keyword} is not understood: {schema}");
            match keyword.as_str() {
                "properties" => value.as_object().unwrap().values().for_each(|schema| look(schema, seen)),
                "oneOf" | "anyOf" | "allOf" => {
                    value.as_array().unwrap().iter().for_each(|part| look(part, seen))
                }
                "items" | "additionalProperties" => look(value, seen),
                "$ref" => {
                    let name = value.as_str().unwrap().rsplit('/').next().unwrap().to_owned();
                    if !seen.contains(&name) {
                        seen.push(name.clone());
                        look(&components()[&name], seen);
                    }
                }
                _ => {}
            }
        }
    }
    for check in 0..CHECKS.len() {
        let mut seen = Vec::new();
        look(&json!({"$ref": format!("#/components/schemas/{}", request_schema(check))}), &mut seen);
        assert!(seen.len() > 5, "{seen:?}");
    }
}

/// A value that a schema allows, made from a supply of choices.
struct Maker<'a> {
    choices: std::iter::Cycle<std::slice::Iter<'a, u32>>,
}

impl Maker<'_> {
    fn choose(&mut self, below: usize) -> usize {
        self.choices.next().map_or(0, |choice| *choice as usize) % below
    }

    fn one_of<T>(&mut self, of: impl Iterator<Item = T>) -> T {
        let mut all: Vec<T> = of.collect();
        let index = self.choose(all.len());
        all.swap_remove(index)
    }

    fn make(&mut self, schema: &Value, depth: usize) -> Value {
        if let Some(reference) = schema["$ref"].as_str() {
            return self.make(&components()[reference.rsplit('/').next().unwrap()], depth);
        }
        for keyword in ["oneOf", "anyOf"] {
            if let Some(branches) = schema[keyword].as_array() {
                let branch = self.one_of(branches.iter());
                return self.make(branch, depth);
            }
        }
        if let Some(closed) = schema["enum"].as_array() {
            return self.one_of(closed.iter()).clone();
        }
        let bound = |keyword: &str| schema[keyword].as_f64();
        match schema["type"].as_str().unwrap() {
            "object" => {
                let required: Vec<&str> =
                    schema["required"].as_array().into_iter().flatten().filter_map(Value::as_str).collect();
                let mut members = Map::new();
                for (member, schema) in schema["properties"].as_object().into_iter().flatten() {
                    if required.contains(&member.as_str()) || self.choose(3) == 0 {
                        members.insert(member.clone(), self.make(schema, depth + 1));
                    }
                }
                Value::Object(members)
            }
            "array" => {
                let least = schema["minItems"].as_u64().unwrap_or(0) as usize;
                let length = least + self.choose(if depth > 4 { 2 } else { 3 });
                Value::Array((0..length).map(|_| self.make(&schema["items"], depth + 1)).collect())
            }
            "string" => match schema["format"].as_str() {
                Some("conductor-size") => self.one_of(ConductorSize::all().map(|size| json!(size.name()))),
                Some("trade-size") => self.one_of(TradeSize::all().map(|size| json!(size.name()))),
                Some("standard-box") => self.one_of(StandardBox::all().map(|known| json!(known.key()))),
                _ => self.one_of(["a", "b", "ü"].into_iter().map(Value::from)),
            },
            "integer" => {
                let (least, most) = (bound("minimum").unwrap(), bound("maximum").unwrap());
                self.one_of(
                    [least, most, (least + 1.0).min(most), (least + 3.0).min(most)]
                        .into_iter()
                        .map(Value::from),
                )
            }
            "number" => {
                let least = bound("minimum").or(bound("exclusiveMinimum")).unwrap();
                let number = self.one_of([0.000_001, 0.5, 1.25, 3.0, 20.3, 1e6].into_iter());
                json!((least + number).min(bound("maximum").unwrap()))
            }
            "boolean" => Value::Bool(self.choose(2) == 1),
            other => panic!("{other}"),
        }
    }
}

/// The places of every member of a value, and those of members that its published schema has besides.
fn members(value: &Value, at: &str, places: &mut Vec<String>) {
    let children: Vec<(String, &Value)> = match value {
        Value::Object(members) => {
            members.iter().map(|(name, member)| (format!("{at}/{name}"), member)).collect()
        }
        Value::Array(items) => {
            items.iter().enumerate().map(|(index, item)| (format!("{at}/{index}"), item)).collect()
        }
        _ => Vec::new(),
    };
    for (place, child) in children {
        members(child, &place, places);
        places.push(place);
    }
}

/// Null is not absence: wherever a member may be left out, and wherever one stands, null is a fault of that member.
#[test]
fn null_is_refused_for_every_member_of_every_example_and_every_member_that_it_leaves_out() {
    let (examples, mut tried) = (ExampleSet::embedded(), 0);
    for (index, check) in CHECKS.iter().enumerate() {
        let declared = components()[&request_schema(index)]["properties"].as_object().unwrap();
        let answered = |request: &Value| (check.evaluate)(request.to_string().as_bytes(), Explain::None);
        let requests = examples.of(check.name).iter().filter_map(|example| example.request.as_ref());
        for request in requests.filter(|request| answered(request).is_ok()) {
            let mut places: Vec<String> = Vec::new();
            members(request, "", &mut places);
            places.extend(
                declared.keys().filter(|name| request.get(name).is_none()).map(|name| format!("/{name}")),
            );
            for place in places {
                let mut with_null = request.clone();
                match with_null.pointer_mut(&place) {
                    Some(member) => *member = Value::Null,
                    None => with_null[&place[1..]] = Value::Null,
                }
                let problem = answered(&with_null).expect_err(&place);
                let below = |at: &str| place.starts_with(at) || at.starts_with(&place);
                let named =
                    problem.faults.kept().iter().any(|fault| fault.pointer.as_deref().is_some_and(below));
                assert!(named, "{place}: {problem:?}");
                tried += 1;
            }
        }
    }
    assert!(tried > 500, "{tried}");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(600))]

    #[test]
    fn what_the_schema_allows_is_decoded_and_the_answer_is_what_the_schema_says(
        check in 0..CHECKS.len(),
        choices in prop::collection::vec(any::<u32>(), 20..400),
    ) {
        static REQUESTS: LazyLock<Vec<Validator>> =
            LazyLock::new(|| (0..CHECKS.len()).map(|check| validator(&request_schema(check))).collect());
        static ANSWERS: LazyLock<Vec<Validator>> =
            LazyLock::new(|| (0..CHECKS.len()).map(|check| validator(&answer_schema(check))).collect());
        let schema = &components()[&request_schema(check)];
        let mut request = Maker { choices: choices.iter().cycle() }.make(schema, 0);
        for _ in 0..8 {
            prop_assert!(REQUESTS[check].is_valid(&request), "{}", request);
            match (CHECKS[check].evaluate)(request.to_string().as_bytes(), Default::default()) {
                Ok(answered) => {
                    let answer: Value = serde_json::from_slice(&answered.json).unwrap();
                    let faults: Vec<String> = ANSWERS[check]
                        .iter_errors(&answer)
                        .map(|error| format!("{}: {error}", error.instance_path()))
                        .collect();
                    prop_assert!(faults.is_empty(), "{} {:?}", request, faults);
                    break;
                }
                // members that cannot stand together are beyond a schema; what is decoded one by one is not
                Err(problem) => {
                    for fault in problem.faults.kept() {
                        prop_assert!(!STRUCTURAL.contains(&fault.code.name()), "{} {:?}", request, fault);
                    }
                    let places = problem.faults.kept().iter().filter_map(|fault| fault.pointer.as_deref());
                    mend(&mut request, places);
                    if !REQUESTS[check].is_valid(&request) {
                        break;
                    }
                }
            }
        }
    }
}

/// What typed decoding says of a single value, which the schema must say too.
const STRUCTURAL: [&str; 5] =
    ["not-accepted", "unknown-value", "wrong-type", "unknown-member", "malformed-json"];

/// Takes out the members that faults point at; gives contents where a fault is about the whole.
fn mend<'a>(request: &mut Value, places: impl Iterator<Item = &'a str>) {
    for place in places {
        match place.rsplit_once('/') {
            None => request["contents"] = json!({}),
            Some((parent, member)) => {
                if let Some(Value::Object(members)) = request.pointer_mut(parent) {
                    members.shift_remove(member);
                }
            }
        }
    }
}

/// Bodies to bend: the good one, and every request among the examples.
fn bodies() -> Vec<(usize, Value)> {
    let examples = ExampleSet::embedded();
    let named = CHECKS.iter().enumerate().flat_map(|(index, check)| {
        examples.of(check.name).iter().filter_map(move |example| Some((index, example.request.clone()?)))
    });
    let bodies: Vec<_> = named.chain([(0, good())]).collect();
    assert!(bodies.len() > 5);
    bodies
}

/// Every place of a value.
fn places(value: &Value, place: &str, all: &mut Vec<String>) {
    all.push(place.to_owned());
    match value {
        Value::Array(items) => {
            items.iter().enumerate().for_each(|(index, item)| places(item, &format!("{place}/{index}"), all));
        }
        Value::Object(members) => members.iter().for_each(|(member, value)| {
            places(value, &format!("{place}/{}", member.replace('/', "~1")), all)
        }),
        _ => {}
    }
}

fn strange() -> impl Strategy<Value = Value> {
    prop_oneof![
        Just(Value::Null),
        any::<bool>().prop_map(Value::from),
        any::<i64>().prop_map(Value::from),
        (-3..300_i32).prop_map(Value::from),
        any::<f64>().prop_map(Value::from),
        (0..40_000_000_i32).prop_map(|number| json!(f64::from(number) / 8e6)),
        "[a-z0-9/ #-]{0,12}".prop_map(Value::from),
        prop::sample::select(vec![
            "12",
            "12 AWG",
            "4/0",
            "switch",
            "internal",
            "2020",
            "si",
            "square-4x1-1/2",
            ""
        ])
        .prop_map(Value::from),
        Just(json!([])),
        Just(json!({})),
        Just(json!([{}])),
        Just(json!({"kind": "switch"})),
        Just(json!("x".repeat(500))),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(1_500))]

    #[test]
    fn the_failure_path_and_an_independent_validator_agree(
        body in prop::sample::select(bodies()),
        bends in prop::collection::vec((any::<prop::sample::Index>(), strange(), 0..4_u8), 0..4),
    ) {
        static VALIDATORS: LazyLock<Vec<Validator>> =
            LazyLock::new(|| (0..CHECKS.len()).map(|check| validator(&request_schema(check))).collect());
        let (check, mut value) = body;
        for (index, other, how) in bends {
            let mut all = Vec::new();
            places(&value, "", &mut all);
            let place = index.get(&all);
            let Some(target) = value.pointer_mut(place) else { continue };
            match (how, target) {
                (0, Value::Object(members)) => {
                    let first = members.keys().next().cloned().unwrap_or_default();
                    members.shift_remove(&first);
                }
                (1, Value::Object(members)) => {
                    members.insert("other".to_owned(), other);
                }
                (_, target) => *target = other,
            }
        }
        let root = json!({"$ref": format!("#/components/schemas/{}", request_schema(check))});
        let schema = Schema { root: &root, components: components() };
        let ours = faults_under(schema, &value);
        let independent = VALIDATORS[check].is_valid(&value);
        prop_assert_eq!(ours.is_empty(), independent, "{} {:?}", value, ours.kept());
        // and what the schema accepts, typed decoding accepts
        let answered = (CHECKS[check].evaluate)(value.to_string().as_bytes(), Default::default());
        if let Err(problem) = answered {
            let codes: Vec<&str> = problem.faults.kept().iter().map(|fault| fault.code.name()).collect();
            prop_assert!(!codes.contains(&"not-accepted"), "{} {:?}", value, problem);
        } else {
            prop_assert!(independent, "decoded what the schema refuses: {}", value);
        }
    }
}
