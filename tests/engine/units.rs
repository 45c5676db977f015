//! Either system of units meets a demand: the system that a request is in turns no verdict over, and rows of an outcome say what was
//! found in the end.

use elbowroom::audit;
use elbowroom::checks::{
    Check, Evaluation, Finding, Request, Status, Verdict, evaluate, evaluate_under, faults_of,
};
use elbowroom::checks::{outlet_fill::OutletFill, rulebook_of};
use elbowroom::derivation::Operation;
use elbowroom::json;
use elbowroom::of_each_check;
use elbowroom::quantity::{Conversion, Decimal, Measure, Units};
use elbowroom::rulebook::amendment::Amended;
use elbowroom::rulebook::{Edition, Rulebook, unit_systems::UnitSystems};
use proptest::prelude::*;
use serde_json::{Value, json};

/// Every request of the cases of a check, in every edition, with a name to find it by.
fn requests<C: Check>() -> Vec<(String, Value)> {
    let of_check = audit::cases().expect("cases").iter().filter(|case| case.check == C::NAME);
    of_check
        .flat_map(|case| {
            case.editions.clone().into_iter().map(move |edition| {
                let mut request = case.request.clone();
                request.insert("edition".to_owned(), edition.year().into());
                (format!("{} ({})", case.name, edition.year()), Value::Object(request))
            })
        })
        .collect()
}

fn read<C: Check>(request: &Value) -> Option<C::Request> {
    let request: C::Request = json::read_value(request.clone()).ok()?;
    faults_of::<C>(&request).is_empty().then_some(request)
}

fn conversion(to: Units) -> Conversion {
    UnitSystems::ALL_EDITIONS.conversion(to)
}

/// A request without what belongs to one system: a chosen system, figures of an amendment, the grid of a layout.
fn in_either(mut request: Value) -> Option<Value> {
    if request.get("amendments").is_some() || request.get("layout").is_some() {
        return None;
    }
    if let Some(readings) = request.get_mut("interpretations").and_then(Value::as_object_mut) {
        readings.remove("units");
    }
    Some(request)
}

/// A request as a caller writes it: without the members that it leaves out.
fn without_nulls(value: Value) -> Value {
    match value {
        Value::Object(members) => members
            .into_iter()
            .filter(|(_, member)| !member.is_null())
            .map(|(name, member)| (name, without_nulls(member)))
            .collect(),
        Value::Array(items) => items.into_iter().map(without_nulls).collect(),
        other => other,
    }
}

/// What the cases of a check come to in the other system, where that is something else; and how many there are.
fn turned_by_units<C: Check>() -> (usize, Vec<String>)
where
    C::Request: serde::Serialize,
{
    let (mut counted, mut turned) = (0, Vec::new());
    for (name, request) in requests::<C>() {
        let Some(request) = in_either(request).and_then(|request| read::<C>(&request)) else { continue };
        let other = request.in_other_units(&conversion(request.terms().units.other()));
        // millimetres that are no decimal of an inch have no exact conversion
        if serde_json::to_value(other.in_other_units(&conversion(request.terms().units))).ok()
            != serde_json::to_value(&request).ok()
        {
            continue;
        }
        let (here, there) = (evaluate::<C>(&request), evaluate::<C>(&other));
        assert_eq!(here.proof.replay(), Ok(()), "{name}");
        // no request can say more than six decimals; what a conversion needs more for is only judged
        if serde_json::to_value(&other).is_ok_and(|other| read::<C>(&without_nulls(other)).is_some()) {
            assert_eq!(there.proof.replay(), Ok(()), "{name}");
        }
        counted += 1;
        if here.verdict != there.verdict {
            turned.push(format!("{}: {name}: {:?} there {:?}", C::NAME, here.verdict, there.verdict));
        }
    }
    (counted, turned)
}

#[test]
fn the_system_of_units_turns_no_verdict_over() {
    let (counts, turned): (Vec<usize>, Vec<Vec<String>>) =
        of_each_check!(C => turned_by_units::<C>()).into_iter().unzip();
    let turned = turned.concat();
    assert!(turned.is_empty(), "{} of {counts:?}: {turned:#?}", turned.len());
    assert!(counts.iter().sum::<usize>() > 3000, "{counts:?}");
}

proptest! {
    #[test]
    fn a_filled_box_complies_in_both_systems_or_in_neither(
        count in 1_u32..30, size in prop::sample::select(vec!["18 AWG", "14 AWG", "12 AWG", "10 AWG", "8 AWG", "6 AWG"]),
        over in -20_i64..20,
    ) {
        let request = |volume: Decimal| {
            let contents = json!({"conductors": [{"size": size, "role": "spliced", "count": count}]});
            let box_of = json!({"enclosure": {"marked_volume": volume, "material": "metal"}, "contents": contents});
            read::<OutletFill>(&box_of).expect("a request")
        };
        // as much as is asked, and a few hundredths more or less
        let asked = evaluate::<OutletFill>(&request(Decimal::ONE)).outcome.spaces[0].required.value;
        let given = request(asked + Decimal::ten_thousandths(over * 100));
        let other = given.in_other_units(&conversion(Units::Si));
        let [here, there] = [&given, &other].map(evaluate::<OutletFill>);
        prop_assert_eq!(here.verdict, there.verdict);
        prop_assert_eq!(here.verdict == Some(Verdict::Complies), over >= 0 || there.outcome.spaces[0].margin.expect("a margin").value >= Decimal::ZERO);
    }
}

/// Converts every number that a schema calls measured, as `in_other_units` must.
fn convert_by_schema(schema: &Value, value: &mut Value, by: &Conversion, schemas: &Value) {
    let named = schema["$ref"].as_str().and_then(|name| name.rsplit('/').next());
    let measure = match named {
        Some("Length" | "Offset") => Some(Measure::Length),
        Some("Area") => Some(Measure::Area),
        Some("Volume") => Some(Measure::Volume),
        Some("Weight") => Some(Measure::Weight),
        _ => None,
    };
    if let (Some(measure), Some(number)) = (measure, value.as_f64()) {
        let said: Decimal = number.to_string().parse().expect("a decimal");
        *value = serde_json::to_value(by.apply(said, measure)).expect("a number");
        return;
    }
    if let Some(name) = named {
        return convert_by_schema(&schemas[name], value, by, schemas);
    }
    for branch in ["oneOf", "anyOf", "allOf"].iter().filter_map(|key| schema[*key].as_array()).flatten() {
        let kinds = branch["properties"].as_object().into_iter().flatten();
        let of_kind = kinds.clone().all(|(name, schema)| {
            schema["enum"]
                .as_array()
                .is_none_or(|names| value.get(name).is_none_or(|named| names.contains(named)))
        });
        if of_kind {
            convert_by_schema(branch, value, by, schemas);
        }
    }
    match value {
        Value::Array(items) => {
            items.iter_mut().for_each(|item| convert_by_schema(&schema["items"], item, by, schemas));
        }
        Value::Object(members) => {
            for (name, member) in members {
                if let Some(schema) = schema["properties"].get(name) {
                    convert_by_schema(schema, member, by, schemas);
                }
            }
        }
        _ => {}
    }
}

fn wrongly_converted<C: Check>(schemas: &Value) -> Vec<String>
where
    C::Request: serde::Serialize,
{
    let name = <C::Request as utoipa::ToSchema>::name();
    let mut wrong = Vec::new();
    for (case, request) in requests::<C>() {
        let Some(request) = in_either(request).and_then(|request| read::<C>(&request)) else { continue };
        let by = conversion(request.terms().units.other());
        let mut expected = serde_json::to_value(&request).expect("a request");
        convert_by_schema(&schemas[&*name], &mut expected, &by, schemas);
        expected["units"] = serde_json::to_value(by.to).expect("a name");
        if serde_json::to_value(request.in_other_units(&by)).expect("a request") != expected {
            wrong.push(format!("{}: {case}", C::NAME));
        }
    }
    wrong
}

#[test]
fn everything_that_is_measured_is_converted_and_nothing_else() {
    let document: Value = serde_json::from_str(elbowroom::service::openapi::text()).expect("the document");
    let schemas = &document["components"]["schemas"];
    let wrong = of_each_check!(C => wrongly_converted::<C>(schemas)).concat();
    assert!(wrong.is_empty(), "{wrong:#?}");
}

/// The rows of an outcome that say what was found about a rule, but for those of ways of which one is enough.
fn rows<'a>(part: &'a Value, found: &mut Vec<&'a Value>) {
    match part {
        Value::Object(members) => {
            if members.contains_key("rule")
                && members.contains_key("status")
                && !members.contains_key("requirements")
            {
                found.push(part);
            }
            members
                .iter()
                .filter(|(name, _)| !matches!(name.as_str(), "means" | "carried"))
                .for_each(|(_, part)| rows(part, found));
        }
        Value::Array(items) => items.iter().for_each(|item| rows(item, found)),
        _ => {}
    }
}

fn rows_that_say_otherwise<C: Check>() -> (usize, Vec<String>) {
    let (mut counted, mut otherwise) = (0, Vec::new());
    for (name, request) in requests::<C>() {
        let Some(request) = read::<C>(&request) else { continue };
        let Evaluation { verdict: Some(verdict), outcome, findings, .. } = evaluate::<C>(&request) else {
            continue;
        };
        let outcome = serde_json::to_value(&outcome).expect("an outcome");
        let mut found = Vec::new();
        rows(&outcome, &mut found);
        counted += found.len();
        for row in found {
            let about = |finding: &&Finding| {
                row["rule"] == finding.rule.id
                    && finding.at.iter().any(|at| row["at"] == at.to_string())
                    && finding.status != Status::Advisory
            };
            let said: Vec<Value> = findings
                .iter()
                .filter(about)
                .map(|finding| serde_json::to_value(finding.status).expect("a status"))
                .collect();
            let violated = row["status"] == "violated"
                && (verdict != Verdict::Violates || !said.contains(&json!("violated")));
            let met = row["status"] == "satisfied"
                && !said.is_empty()
                && said.iter().all(|said| said == "not_determined");
            if violated || met {
                otherwise.push(format!("{}: {name}: {verdict:?} with {row}, found {said:?}", C::NAME));
            }
        }
        let parts = ["spaces", "sections"].iter().filter_map(|parts| outcome[*parts].as_array()).flatten();
        for part in parts.filter(|part| part["verdict"] == "violates") {
            if verdict != Verdict::Violates {
                otherwise.push(format!("{}: {name}: {verdict:?} with a part that violates: {part}", C::NAME));
            }
        }
    }
    (counted, otherwise)
}

#[test]
fn rows_say_what_was_found_in_the_end() {
    let (counts, otherwise): (Vec<usize>, Vec<Vec<String>>) =
        of_each_check!(C => rows_that_say_otherwise::<C>()).into_iter().unzip();
    let otherwise = otherwise.concat();
    assert!(otherwise.is_empty(), "{otherwise:#?}");
    assert!(counts.iter().sum::<usize>() > 3000, "{counts:?}");
}

#[test]
fn an_amended_figure_is_that_of_the_request_in_either_system() {
    // one 14 AWG takes 32.8 cm³, and 2.00 in³
    let request = read::<OutletFill>(&json!({
        "units": "si",
        "enclosure": {"marked_volume": 344, "material": "metal", "gangs": 2, "barriers": [{"material": "metal"}]},
        "spaces": [
            {"id": "a", "gangs": 1, "contents": {"conductors": [{"size": "14 AWG", "role": "spliced"}]}},
            {"id": "b", "gangs": 1, "contents": {"nothing": true}},
        ],
    }))
    .expect("a request");
    let book = rulebook_of::<OutletFill>(&request, Edition::E2023);
    let amended = Amended { figure: "outlet-volume.barrier.metal", value: Decimal::whole(300) };
    let evaluation = evaluate_under::<OutletFill>(&book.with_amendments(&[amended]), &request);
    // 344 - 300 leaves 22 for each space, 32.8 are asked; in inches 20.99 - 18.307 leaves 1.34, and 2.00 are asked
    assert_eq!(evaluation.verdict, Some(Verdict::Violates));
    assert_eq!(evaluation.proof.replay(), Ok(()));
    let other = book.with_amendments(&[amended]).for_other_units(Units::Si);
    assert_eq!(other.amended()[0].value.to_string(), "18.307123228");
}

#[test]
fn an_everyday_answer_is_judged_once_and_its_proof_is_in_one_system() {
    let converted = |request: Value| {
        let evaluation = evaluate::<OutletFill>(&read::<OutletFill>(&request).expect("a request"));
        evaluation.proof.steps().iter().filter(|step| step.operation == Operation::Converted).count()
    };
    let asked = |count: u32, volume: f64| {
        json!({"units": "si", "enclosure": {"marked_volume": volume, "material": "metal"},
               "contents": {"conductors": [{"size": "14 AWG", "role": "spliced", "count": count}]}})
    };
    assert_eq!(converted(asked(9, 300.0)), 0);
    // met in the other system only: 295.2 over 294.97 cm³, 18.00 in 18.0002 in³
    assert_eq!(converted(asked(9, 294.97)), 1);
    // in neither, the other system leaves no step
    assert_eq!(converted(asked(9, 294.0)), 0);
    assert_eq!(Rulebook::of(Edition::E2023).said_in(), None);
}
