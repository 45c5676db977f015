//! How far a figure may be amended: the bounds are a policy of this service, kept a second time in `tests/data`, and hold in
//! requests to the last place.

use elbowroom::checks::faults_of;
use elbowroom::checks::outlet_fill::OutletFill;
use elbowroom::quantity::{Decimal, Measure, Units};
use elbowroom::rulebook::amendment::AMENDABLE;
use elbowroom::rulebook::{Edition, RuleFigure, Rulebook};
use serde_json::json;
use std::collections::BTreeMap;

/// The figures of every edition, each with the editions that have it.
fn figures() -> BTreeMap<&'static str, Vec<(Edition, RuleFigure)>> {
    let mut found = BTreeMap::<_, Vec<_>>::new();
    for edition in [Edition::E2017, Edition::E2020, Edition::E2023] {
        for figure in Rulebook::of(edition).figures() {
            found.entry(figure.name).or_default().push((edition, figure));
        }
    }
    found
}

/// The faults of a request that amends a figure, each with its place.
fn faults(edition: Edition, units: Units, figure: &str, value: Decimal) -> Vec<String> {
    let request = json!({
        "edition": edition, "units": units, "contents": {"nothing": true},
        "amendments": [{"figure": figure, "value": value, "citation": "Ordinance 12 (invented)"}],
    });
    let request = elbowroom::json::read_value(request).expect("a request");
    faults_of::<OutletFill>(&request).iter().map(|fault| fault.at.to_string()).collect()
}

#[test]
fn a_figure_is_amended_up_to_its_bounds_and_no_further() {
    let (figures, least_step) = (figures(), Decimal::ten_thousandths(1));
    for amendable in &AMENDABLE {
        let (edition, _) = figures[amendable.figure][0];
        for units in [Units::Us, Units::Si] {
            let of = |value| faults(edition, units, amendable.figure, value);
            let most = amendable.most(units);
            assert!(of(amendable.least).is_empty() && of(most).is_empty(), "{}", amendable.figure);
            assert_eq!(of(most + least_step), ["/amendments/0/value"], "{} {units:?}", amendable.figure);
            if amendable.least > Decimal::ZERO {
                assert_eq!(of(amendable.least - least_step), ["/amendments/0/value"], "{}", amendable.figure);
            }
        }
    }
}

#[test]
fn the_bounds_are_those_that_are_kept_apart() {
    let mut reader = csv::Reader::from_reader(include_str!("../data/amendment-bounds.csv").as_bytes());
    let kept: Vec<[String; 4]> = reader
        .records()
        .map(|line| line.expect("a line"))
        .map(|line| [0, 1, 2, 3].map(|at| line[at].to_owned()))
        .collect();
    let stated = AMENDABLE.iter().map(|one| {
        [one.figure.to_owned(), one.least.to_string(), one.most_us.to_string(), one.most_si.to_string()]
    });
    assert_eq!(stated.collect::<Vec<_>>(), kept);
}

/// The code's own figure lies within the bounds, and the bounds of both systems are about as wide.
#[test]
fn the_bounds_leave_room_around_every_figure_in_either_system() {
    let figures = figures();
    for amendable in &AMENDABLE {
        for (edition, figure) in &figures[amendable.figure] {
            for units in [Units::Us, Units::Si] {
                let (value, most) = (figure.value(units), amendable.most(units));
                let within = amendable.least <= value && value < most;
                assert!(within, "{} of {}: {value} in {units:?}", figure.name, edition.year());
            }
            let parsed = |value: Decimal| value.to_string().parse::<f64>().expect("a number");
            let factor = match figure.measure {
                Measure::Number | Measure::Percent => 1.0,
                Measure::Length => 25.4,
                Measure::Area => 645.16,
                Measure::Volume => 16.387_064,
                Measure::Weight => 0.453_592_37,
            };
            let wider = parsed(amendable.most_si) / (parsed(amendable.most_us) * factor);
            assert!((0.9..=1.15).contains(&wider), "{}: {wider}", figure.name);
        }
    }
}
