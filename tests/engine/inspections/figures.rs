//! Every figure of an inspection decides some case: change it either way, and a case comes out otherwise.

use elbowroom::answers::{Explain, answer};
use elbowroom::checks::box_construction::BoxConstruction;
use elbowroom::checks::box_depths::BoxDepths;
use elbowroom::checks::box_mounting::BoxMounting;
use elbowroom::checks::box_supports::BoxSupports;
use elbowroom::checks::free_conductors::FreeConductors;
use elbowroom::checks::luminaire_and_fan_outlets::LuminaireAndFanOutlets;
use elbowroom::checks::{Check, Request as _, evaluate_under};
use elbowroom::i18n::Catalogue;
use elbowroom::quantity::{Decimal, Measure, Units};
use elbowroom::rulebook::amendment::Amended;
use elbowroom::rulebook::{Edition, RuleFigure, Rulebook};
use serde_json::Value;
use std::path::Path;

/// The conformance cases of one check in one system of units.
fn cases(file: &str, units: Units) -> Vec<Value> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/conformance").join(file);
    let text = std::fs::read_to_string(path).expect(file);
    let cases: Vec<Value> = serde_json::from_str(&text).expect(file);
    let named = if units == Units::Si { "si" } else { "us" };
    let of_units = |case: &Value| case["request"]["units"].as_str().unwrap_or("us") == named;
    cases.into_iter().filter(of_units).collect()
}

/// Whether any case comes out other than expected when a figure is changed.
fn notices<C: Check>(cases: &[Value], mutation: Amended) -> bool {
    cases.iter().any(|case| {
        let editions = case["editions"].as_array().expect("editions");
        editions.iter().any(|edition| {
            let mut request = case["request"].clone();
            request["edition"] = edition.clone();
            let request: C::Request = elbowroom::json::read_value(request).expect("a request");
            let book = Rulebook::of(request.terms().edition);
            let book = book.with_readings(request.readings(book.readings)).with_amendments(&[mutation]);
            let evaluation = evaluate_under::<C>(&book, &request);
            let answer = answer::<C>(&request, &evaluation, Explain::Full, Catalogue::english());
            let answer = serde_json::to_value(&answer).expect("an answer is JSON");
            let expect = case["expect"].as_object().expect("expectations");
            // a limit that the answer repeats would notice any mutation: what counts is what is decided
            let decides = |pointer: &str| pointer == "/verdict" || pointer.ends_with("/status");
            let required = |pointer: &str| pointer.contains("/required") || pointer.contains("/must_reach");
            expect.iter().any(|(pointer, expected)| {
                let found = answer.pointer(pointer).unwrap_or(&Value::Null);
                let same =
                    found == expected || found.as_f64().is_some_and(|found| expected.as_f64() == Some(found));
                (decides(pointer) || required(pointer)) && !same
            })
        })
    })
}

/// A figure that decides nothing: the opening of a device box is small by far.
fn never_decides(figure: &RuleFigure) -> bool {
    figure.name == "free-conductor.device-opening"
}

/// A figure a little larger and a little smaller: by one where it is a number of things.
fn mutations(figure: &RuleFigure, units: Units) -> Vec<Decimal> {
    let value = figure.value(units);
    let fiftieth = value.times(Decimal::ten_thousandths(200));
    // more than the cases differ by around a figure: 0.0001 in., 0.1 mm
    let least = Decimal::ten_thousandths(if units == Units::Si { 1_100 } else { 100 });
    let step = if figure.measure == Measure::Number { Decimal::ONE } else { fiftieth.max(least) };
    if value == Decimal::ZERO { vec![value + step] } else { vec![value + step, value - step] }
}

#[test]
fn every_figure_decides_some_case_when_changed_either_way() {
    let book = Rulebook::of(Edition::E2023);
    let (mut tried, mut unnoticed) = (0, Vec::new());
    for units in [Units::Us, Units::Si] {
        let (conductors, depths) = (cases("free-conductors.json", units), cases("box-depths.json", units));
        let (construction, mounting) =
            (cases("box-construction.json", units), cases("box-mounting.json", units));
        let (supports, outlets) =
            (cases("box-supports.json", units), cases("luminaire-and-fan-outlets.json", units));
        for figure in book.figures().filter(|figure| !never_decides(figure)) {
            for value in mutations(&figure, units) {
                let mutation = Amended { figure: figure.name, value };
                let noticed = match figure.name.split('.').next().unwrap_or_default() {
                    "free-conductor" => notices::<FreeConductors>(&conductors, mutation),
                    "box-depth" => notices::<BoxDepths>(&depths, mutation),
                    "box-construction" => notices::<BoxConstruction>(&construction, mutation),
                    "box-support" => notices::<BoxSupports>(&supports, mutation),
                    "luminaire-outlet" | "fan-outlet" => {
                        notices::<LuminaireAndFanOutlets>(&outlets, mutation)
                    }
                    of_boxes if of_boxes.starts_with("box-") => notices::<BoxMounting>(&mounting, mutation),
                    _ => continue,
                };
                tried += 1;
                if !noticed {
                    unnoticed.push(format!("{} changed to {value} ({units:?})", figure.name));
                }
            }
        }
    }
    println!("{tried} mutations of inspection figures, {} unnoticed", unnoticed.len());
    assert!(tried > 200, "only {tried} mutations");
    assert!(unnoticed.is_empty(), "{unnoticed:#?}");
}
