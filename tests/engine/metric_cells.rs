//! Metric cells beside their inch cells: nothing is converted when a request is judged, so a wrong figure of one system could
//! stand unnoticed. Each metric cell is held to its inch cell, or to the diameter beside it, within what the rounding of print
//! explains; what differs by more is named, with the reason.

use elbowroom::quantity::{Measure, Units};
use elbowroom::rulebook::{Edition, Rulebook};
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

const INCH: f64 = 25.4;
const POUND: f64 = 0.453_592_37;
/// What binary arithmetic adds to a difference that is exactly the tolerance.
const SLACK: f64 = 1e-9;

/// A row of a file of a table, by column, as it is printed.
type Row = BTreeMap<String, String>;

fn rows(table: &str) -> Vec<(String, Row)> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/tables/data").join(format!("{table}.csv"));
    let mut reader = csv::Reader::from_path(path).expect("a table");
    let header = reader.headers().expect("a header").clone();
    let rows = reader.records().map(|record| {
        let record = record.expect("a row");
        let of_row = header.iter().zip(&record).map(|(column, field)| (column.to_owned(), field.to_owned()));
        (record[0].to_owned(), of_row.collect())
    });
    rows.collect()
}

/// A printed figure, and half of the last place that is printed.
fn printed(row: &Row, column: &str) -> Option<(f64, f64)> {
    let text = row.get(column).expect("a column of the table");
    let value = text.parse().ok()?;
    Some((value, half_a_place(text)))
}

fn half_a_place(text: &str) -> f64 {
    let places = text.split_once('.').map_or(0, |(_, decimals)| decimals.len());
    0.5 * 10_f64.powi(-i32::try_from(places).expect("few decimals"))
}

/// How far the inch cell of a pair may be off.
#[derive(Clone, Copy, PartialEq)]
enum Inch {
    /// By half of its last place: it was rounded too.
    Rounded,
    /// Not at all: the figure was chosen in inches.
    Chosen,
}

/// A table, its inch columns each with the metric one, and the power of the inch by which they are held.
type Pairs = (&'static str, &'static [(&'static str, &'static str)], i32, Inch);

const PAIRS: [Pairs; 14] = [
    ("conductor-volume", &[("volume_in3", "volume_cm3")], 3, Inch::Chosen),
    ("standard-boxes", &[("volume_in3", "volume_cm3")], 3, Inch::Rounded),
    ("conductor-dimensions", &[("diameter_in", "diameter_mm")], 1, Inch::Rounded),
    ("conductor-dimensions", &[("area_in2", "area_mm2")], 2, Inch::Rounded),
    ("conductor-dimensions", &[("area_of_diameter_in2", "area_of_diameter_mm2")], 2, Inch::Rounded),
    ("compact-conductor-dimensions", &[("diameter_in", "diameter_mm")], 1, Inch::Rounded),
    ("compact-conductor-dimensions", &[("area_in2", "area_mm2")], 2, Inch::Rounded),
    (
        "bare-conductor-dimensions",
        &[("strand_diameter_in", "strand_diameter_mm"), ("diameter_in", "diameter_mm")],
        1,
        Inch::Rounded,
    ),
    ("bare-conductor-dimensions", &[("area_in2", "area_mm2")], 2, Inch::Rounded),
    ("raceway-dimensions", &[("diameter_in", "diameter_mm")], 1, Inch::Rounded),
    ("earlier-ent-dimensions", &[("diameter_in", "diameter_mm")], 1, Inch::Rounded),
    ("raceway-outside-diameters", &[("diameter_in", "diameter_mm")], 1, Inch::Rounded),
    (
        "wire-bending-space",
        &[
            ("one_wire_in", "one_wire_mm"),
            ("two_wires_in", "two_wires_mm"),
            ("three_wires_in", "three_wires_mm"),
            ("four_wires_in", "four_wires_mm"),
            ("five_wires_in", "five_wires_mm"),
        ],
        1,
        Inch::Chosen,
    ),
    ("wire-bending-space-compact", &[("one_wire_in", "one_wire_mm")], 1, Inch::Chosen),
];

const STRANDS: &str = "the metric column of bare stranded wire follows its own count of strands";
const COMPACT: &str = "the printed area is that of a diameter with one digit more";

/// The metric cells that rounding does not explain: table, row, column, by how much they are off at the most, and why.
const OTHERWISE: [(&str, &str, &str, f64, &str); 11] = [
    ("standard-boxes", "fd-multiple-cover", "volume_cm3", 0.005, "printed so: 24.0 in3 are 393.3"),
    ("raceway-dimensions", "IMC 4", "diameter_mm", 0.004, "printed so, and the areas beside it follow it"),
    ("compact-conductor-dimensions", "THHN 900 kcmil", "area_mm2", 0.0003, COMPACT),
    ("compact-conductor-dimensions", "XHHW 900 kcmil", "area_mm2", 0.0003, COMPACT),
    ("bare-conductor-dimensions", "12 AWG stranded", "strand_diameter_mm", 0.024, STRANDS),
    ("bare-conductor-dimensions", "12 AWG stranded", "area_mm2", 0.1, STRANDS),
    ("bare-conductor-dimensions", "10 AWG stranded", "area_mm2", 0.05, STRANDS),
    ("bare-conductor-dimensions", "6 AWG stranded", "area_mm2", 0.02, STRANDS),
    ("bare-conductor-dimensions", "1 AWG stranded", "area_mm2", 0.006, STRANDS),
    ("bare-conductor-dimensions", "2/0 AWG stranded", "area_mm2", 0.005, STRANDS),
    ("bare-conductor-dimensions", "500 kcmil stranded", "area_mm2", 0.004, STRANDS),
];

#[test]
fn every_metric_cell_is_its_inch_cell_as_far_as_print_rounds() {
    let (mut held, mut wrong, mut idle) = (0, Vec::new(), BTreeSet::from_iter(0..OTHERWISE.len()));
    for (table, columns, power, inch) in PAIRS {
        let cubic_centimetres = if power == 3 { 1_000.0 } else { 1.0 };
        let factor = INCH.powi(power) / cubic_centimetres;
        for (key, row) in rows(table) {
            for (inches, metric) in columns {
                let (us, si) = (printed(&row, inches), printed(&row, metric));
                let (Some((us, us_half)), Some((si, si_half))) = (us, si) else {
                    assert_eq!(us.is_some(), si.is_some(), "{table}: {key}: {metric} in one system alone");
                    continue;
                };
                held += 1;
                let rounding = si_half + if inch == Inch::Rounded { us_half * factor } else { 0.0 };
                let difference = (us * factor - si).abs();
                if difference <= rounding + SLACK {
                    continue;
                }
                let named = |(at, of, column, ..): &(&str, &str, &str, f64, &str)| {
                    (*at, *of, *column) == (table, &*key, *metric)
                };
                match OTHERWISE.iter().position(named) {
                    Some(place) if difference <= OTHERWISE[place].3 * si => {
                        idle.remove(&place);
                    }
                    _ => wrong.push(format!("{table}: {key}: {inches} {us} and {metric} {si}")),
                }
            }
        }
    }
    println!("{held} pairs of cells, {} named", OTHERWISE.len());
    assert!(held > 750, "{held}");
    assert!(wrong.is_empty(), "{wrong:#?}");
    let idle: Vec<_> = idle.iter().map(|place| OTHERWISE[*place]).collect();
    assert!(idle.is_empty(), "named without need: {idle:#?}");
}

/// In either system the areas of a raceway are shares of a circle of its printed diameter.
#[test]
fn the_areas_of_a_raceway_follow_its_diameter_in_either_system() {
    const SHARES: [(&str, f64); 5] =
        [("area", 1.0), ("area_53", 0.53), ("area_31", 0.31), ("area_40", 0.4), ("area_60", 0.6)];
    let mut held = 0;
    let all = ["raceway-dimensions", "earlier-ent-dimensions"].map(rows);
    for (key, row) in all.into_iter().flatten() {
        for unit in ["in", "mm"] {
            let Some((diameter, half)) = printed(&row, &format!("diameter_{unit}")) else { continue };
            let circle = |diameter: f64| std::f64::consts::FRAC_PI_4 * diameter * diameter;
            for (column, share) in SHARES {
                let column = format!("{column}_{unit}2");
                let (area, area_half) = printed(&row, &column).expect("an area beside a diameter");
                let [least, most] = [circle(diameter - half) * share, circle(diameter + half) * share];
                let within = least - area_half - SLACK <= area && area <= most + area_half + SLACK;
                assert!(within, "{key}: {column} {area} is not {share} of a circle of {diameter}");
                held += 1;
            }
        }
    }
    assert!(held > 1_200, "{held}");
}

/// Trade sizes and metric designators are names of one another, not lengths.
#[test]
fn every_trade_size_has_its_metric_designator() {
    const NAMES: [(&str, &str, &str); 13] = [
        ("3/8", "0.375", "12"),
        ("1/2", "0.5", "16"),
        ("3/4", "0.75", "21"),
        ("1", "1", "27"),
        ("1-1/4", "1.25", "35"),
        ("1-1/2", "1.5", "41"),
        ("2", "2", "53"),
        ("2-1/2", "2.5", "63"),
        ("3", "3", "78"),
        ("3-1/2", "3.5", "91"),
        ("4", "4", "103"),
        ("5", "5", "129"),
        ("6", "6", "155"),
    ];
    let named: BTreeMap<&str, &str> = NAMES.iter().map(|(size, _, metric)| (*size, *metric)).collect();
    let sizes = rows("trade-sizes");
    let read: Vec<_> =
        sizes.iter().map(|(size, row)| (&**size, &*row["size_in"], &*row["designator_mm"])).collect();
    assert_eq!(read, NAMES);
    for (key, row) in rows("raceway-dimensions") {
        assert_eq!(named.get(&*row["trade_size"]), Some(&&*row["metric_designator"]), "{key}");
    }
}

/// The figures whose metric value was rounded to a handier number, each with the reason.
const HANDIER: [(&str, &str); 3] = [
    ("raceway-fill.largest-ent", "trade size 2 is 53 by its metric designator, which is no length"),
    ("box-support.luminaire-on-conduit.height", "8 ft are 2.44 m, and print says 2.5 m"),
    ("box-support.stem.height", "8 ft are 2.44 m, and print says 2.5 m"),
];

/// A rule rounds more than a table does: to 2 %, or to the last place that is printed.
#[test]
fn every_metric_figure_of_a_rule_is_its_inch_figure_as_far_as_print_rounds() {
    let (mut names, mut handier) = (BTreeSet::new(), BTreeSet::new());
    for figure in Edition::ALL.into_iter().flat_map(|edition| Rulebook::of(edition).figures()) {
        let [us, si] = [Units::Us, Units::Si].map(|units| figure.value(units).to_string());
        let factor = match figure.measure {
            Measure::Number | Measure::Percent => {
                assert!(
                    us == si || figure.name == "outlet-volume.unit-cube",
                    "{}: {us} and {si}",
                    figure.name
                );
                continue;
            }
            Measure::Length => INCH,
            Measure::Area => INCH.powi(2),
            Measure::Volume => INCH.powi(3) / 1_000.0,
            Measure::Weight => POUND,
        };
        let [inches, metric] = [&us, &si].map(|text| text.parse::<f64>().expect("a number"));
        let converted = inches * factor;
        let rounding = f64::max(0.02 * converted, half_a_place(&si));
        let explained = (converted - metric).abs() <= rounding + SLACK;
        let named = HANDIER.iter().any(|(name, _)| *name == figure.name);
        assert!(explained || named, "{}: {us} are {converted}, not {si}", figure.name);
        handier.extend((!explained).then_some(figure.name));
        assert!((converted - metric).abs() <= 0.2 * converted, "{}: {us} and {si}", figure.name);
        names.insert(figure.name);
    }
    assert!(names.len() > 70, "{}", names.len());
    assert_eq!(handier, HANDIER.iter().map(|(name, _)| *name).collect(), "named without need");
}
