//! What must hold for every inspection: requests of any shape, and figures that decide something.

use elbowroom::answers::{Explain, answer};
use elbowroom::checks::box_construction::BoxConstruction;
use elbowroom::checks::box_depths::BoxDepths;
use elbowroom::checks::box_mounting::BoxMounting;
use elbowroom::checks::free_conductors::FreeConductors;
use elbowroom::checks::{Check, Evaluation, Status, Verdict, faults_of};
use elbowroom::quantity::{Decimal, Units};
use elbowroom::rulebook::amendment::Amended;
use elbowroom::rulebook::{Edition, RuleFigure, Rulebook};
use elbowroom::words::Catalogue;
use proptest::prelude::*;
use serde_json::{Map, Value, json};
use std::path::Path;

/// Turns bytes into choices, so that what fails can be made smaller.
struct Choices<'a>(std::slice::Iter<'a, u8>);

/// What a member of a request may hold.
enum Kind {
    Fact,
    Size,
    Word(&'static [&'static str]),
    Object(&'static [(&'static str, Kind)]),
    List(&'static [(&'static str, Kind)]),
    /// One that is always there.
    Always(&'static Kind),
}
use Kind::{Always, Fact, List, Object, Size, Word};

impl Choices<'_> {
    fn next(&mut self, of: usize) -> usize {
        usize::from(self.0.next().copied().unwrap_or(0)) % of
    }

    fn value(&mut self, kind: &Kind) -> Value {
        const SIZES: [f64; 14] =
            [0.04, 0.0625, 0.1, 0.25, 0.4, 0.5, 1.0, 1.5, 2.0, 6.0, 8.0, 48.0, 100.0, 2000.0];
        match kind {
            Fact => json!(self.next(2) == 1),
            Size => json!(SIZES[self.next(SIZES.len())]),
            Word(words) => json!(words[self.next(words.len())]),
            Object(members) => self.object(members),
            List(members) => (0..self.next(4)).map(|_| self.object(members)).collect(),
            Always(kind) => self.value(kind),
        }
    }

    fn object(&mut self, members: &[(&str, Kind)]) -> Value {
        let mut object = Map::new();
        for (member, kind) in members {
            if matches!(kind, Always(_)) || self.next(4) > 0 {
                object.insert((*member).to_owned(), self.value(kind));
            }
        }
        object.into()
    }

    fn request(&mut self, members: &[(&str, Kind)]) -> Value {
        let mut request = self.object(members);
        request["edition"] = json!(["2017", "2020", "2023", "2026"][self.next(4)]);
        request["units"] = json!(["us", "si"][self.next(2)]);
        request["accept_unverified_rules"] = json!(true);
        request
    }
}

const CONDUCTORS: &[(&str, Kind)] = &[
    (
        "interpretations",
        Object(&[
            ("continuous_length", Word(&["length_counts", "one_piece"])),
            ("shared_pigtail", Word(&["each_alone", "lengthens_both"])),
        ]),
    ),
    ("opening", Object(&[("width", Size), ("height", Size)])),
    ("emergence_depth", Size),
    ("rings", List(&[("depth", Always(&Size))])),
    (
        "conductors",
        List(&[
            (
                "role",
                Always(&Word(&["spliced", "terminated", "terminated", "passes_through", "stays_inside"])),
            ),
            ("free_length", Size),
            ("length_outside_opening", Size),
            ("emergence_depth", Size),
            (
                "damage",
                Object(&[("place", Always(&Word(&["inside_box", "in_wall"]))), ("sound_length", Size)]),
            ),
            (
                "spliced_to_reach",
                Object(&[
                    ("kind", Always(&Word(&["own_length", "shared_pigtail"]))),
                    ("splice_inside_box", Fact),
                    ("length_in_one_piece", Size),
                ]),
            ),
        ]),
    ),
];

const DEPTHS: &[(&str, Kind)] = &[
    (
        "enclosure",
        Object(&[
            ("internal_depth", Size),
            ("identified_for_equipment", Fact),
            ("pull_box_with_bending_space", Fact),
            ("volume", Size),
        ]),
    ),
    (
        "equipment",
        List(&[
            ("projection", Size),
            (
                "largest_supply_conductor",
                Word(&["18 AWG", "14 AWG", "12 AWG", "10 AWG", "8 AWG", "4 AWG", "1/0 AWG"]),
            ),
            ("rear_center_entry", Fact),
            ("listed_for_this_box", Fact),
            ("clearance_to_walls", Size),
        ]),
    ),
];

const CONSTRUCTION: &[(&str, Kind)] = &[
    (
        "enclosure",
        Always(&Object(&[
            (
                "material",
                Always(&Word(&["sheet_steel", "malleable_iron", "die_cast", "other_cast", "nonmetallic"])),
            ),
            ("volume", Size),
            ("wall_thickness", Size),
            ("listed_as_equal", Fact),
            ("grounding_provision", Fact),
        ])),
    ),
    ("cover", Object(&[("thickness", Size), ("listed", Fact), ("lining_thickness", Size)])),
];

const MOUNTING: &[(&str, Kind)] = &[
    (
        "enclosure",
        Object(&[
            ("material", Word(&["metal", "nonmetallic"])),
            ("shape", Word(&["round", "flat_sided"])),
            ("volume", Size),
            ("conduit_body", Fact),
            ("single_gang_in_wall_or_ceiling", Fact),
            ("grounded", Fact),
            ("bonds_all_entries", Fact),
            ("listed_for_damp_locations", Fact),
            ("listed_for_wet_locations", Fact),
        ]),
    ),
    ("flush_surface", Object(&[("combustible", Fact), ("setback", Size), ("gap", Size)])),
    ("flush_device", Object(&[("enclosed", Fact), ("own_screws", Fact)])),
    (
        "extension",
        Object(&[
            ("means", Always(&Word(&["extension_ring", "another_box", "cover"]))),
            ("mechanically_secured", Fact),
            ("grounding_continues", Fact),
            ("listed_as_extension", Fact),
            ("cover_stays_on", Fact),
            ("wiring_lets_cover_come_off", Fact),
            ("grounding_independent_of_cover", Fact),
        ]),
    ),
    (
        "cover",
        Object(&[
            ("fitted", Fact),
            ("screws_match", Fact),
            ("combustible_finish", Object(&[("exposed_area", Size), ("covered", Fact)])),
            ("pendant_cord_bushed", Fact),
        ]),
    ),
    (
        "access",
        Object(&[
            ("place", Always(&Word(&["underground"]))),
            ("reachable", Fact),
            (
                "under_loose_cover",
                Object(&[("listed_box", Fact), ("only_loose_material", Fact), ("place_identified", Fact)]),
            ),
            (
                "finish_opening",
                Object(&[
                    ("interim_amendment_in_force", Fact),
                    ("whole_box_open", Fact),
                    ("fits_device", Fact),
                    ("within_box_walls", Fact),
                    ("off_center", Size),
                    ("long_side", Size),
                    ("short_side", Size),
                ]),
            ),
        ]),
    ),
    (
        "entries",
        List(&[
            (
                "wiring",
                Always(&Word(&[
                    "nonmetallic_sheathed_cable",
                    "underground_feeder_cable",
                    "armored_cable",
                    "metal_raceway",
                    "nonmetallic_raceway",
                    "other",
                ])),
            ),
            ("secured", Fact),
            ("sheath_inside", Size),
            ("fastened_at", Size),
            ("in_complete_raceway", Fact),
            ("largest_insulated_conductor", Word(&["6 AWG", "4 AWG"])),
            ("insulating_fitting", Fact),
            ("locknut_on_side", Fact),
        ]),
    ),
    ("unused_openings", Object(&[("closed_like_the_wall", Fact)])),
    (
        "fasteners",
        List(&[
            ("through", Always(&Word(&["cover_screw", "cover", "wall"]))),
            ("as_maker_specifies", Fact),
            ("blunt", Fact),
            ("reach", Size),
            ("from_adjacent_wall", Size),
        ]),
    ),
    (
        "moisture",
        Object(&[
            ("location", Always(&Word(&["dry", "damp", "wet"]))),
            ("kept_out", Fact),
            ("drain_openings", List(&[("diameter", Always(&Size)), ("listed_fitting", Fact)])),
        ]),
    ),
    (
        "handhole",
        Object(&[
            ("identified", Fact),
            ("wiring_listed_for_wet_locations", Fact),
            ("cover_marked", Fact),
            ("cover_needs_tools", Fact),
            ("cover_weight", Size),
            ("metal_cover_bonded", Fact),
        ]),
    ),
];

/// Evaluates a request, unless it has faults, and asks of the answer what must hold of every one.
fn holds<C: Check>(members: &[(&str, Kind)], bytes: &[u8]) {
    let request = Choices(bytes.iter()).request(members);
    let request: C::Request = serde_json::from_value(request).expect("a generated request decodes");
    if !faults_of::<C>(&request).is_empty() {
        return;
    }
    let evaluation = elbowroom::checks::evaluate::<C>(&request);
    assert_eq!(evaluation.proof.replay(), Ok(()));
    let Evaluation { verdict, findings, .. } = &evaluation;
    if let Some(verdict) = verdict {
        assert_eq!(*verdict, Verdict::of(findings));
    }
    for finding in findings {
        let open = finding.status == Status::NotDetermined;
        assert!(!open || !finding.supply.is_empty(), "{} does not say what to supply", finding.message);
        let decided = matches!(finding.status, Status::Satisfied | Status::Violated);
        assert!(!decided || finding.step.is_some(), "{} has no step", finding.message);
    }
    // a message that lacks an argument is written with the argument's name in braces
    let answer =
        serde_json::to_value(answer::<C>(&request, &evaluation, Explain::Full, Catalogue::english()));
    for finding in answer.expect("an answer is JSON")["findings"].as_array().expect("findings") {
        let message = finding["message"].as_str().expect("a message");
        assert!(!message.contains(['{', '}']) && !message.starts_with("finding-"), "{message}");
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 400, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn free_conductors_of_any_shape(bytes in prop::collection::vec(any::<u8>(), 0..160)) {
        holds::<FreeConductors>(CONDUCTORS, &bytes);
    }

    #[test]
    fn depths_of_any_shape(bytes in prop::collection::vec(any::<u8>(), 0..120)) {
        holds::<BoxDepths>(DEPTHS, &bytes);
    }

    #[test]
    fn construction_of_any_shape(bytes in prop::collection::vec(any::<u8>(), 0..40)) {
        holds::<BoxConstruction>(CONSTRUCTION, &bytes);
    }

    #[test]
    fn mounting_of_any_shape(bytes in prop::collection::vec(any::<u8>(), 0..400)) {
        holds::<BoxMounting>(MOUNTING, &bytes);
    }

    #[test]
    fn a_longer_conductor_never_falls_short_where_a_shorter_one_complied(
        depth in 0_u32..200, length in 0_u32..300, more in 0_u32..300, width in 1_u32..200, edition in 0_usize..3,
    ) {
        let with = |length: u32| {
            let tenths = |number: u32| f64::from(number) / 10.0;
            let request = json!({
                "edition": (["2017", "2020", "2023"][edition]),
                "opening": {"width": tenths(width), "height": 12},
                "emergence_depth": tenths(depth),
                "conductors": [{"role": "spliced", "free_length": tenths(length)}]
            });
            let request = serde_json::from_value(request).expect("a request");
            elbowroom::checks::evaluate::<FreeConductors>(&request).verdict
        };
        if with(length) == Some(Verdict::Complies) {
            prop_assert_eq!(with(length + more), Some(Verdict::Complies));
        }
    }

    #[test]
    fn a_deeper_box_never_falls_short_where_a_shallower_one_complied(
        projection in 0_u32..300, depth in 1_u32..400, more in 0_u32..300, size in 0_usize..4, edition in 0_usize..3,
    ) {
        let with = |depth: u32| {
            let hundredths = |number: u32| f64::from(number) / 100.0;
            let request = json!({
                "edition": (["2017", "2020", "2023"][edition]),
                "enclosure": {"internal_depth": hundredths(depth)},
                "equipment": [{
                    "projection": hundredths(projection),
                    "largest_supply_conductor": (["14 AWG", "12 AWG", "10 AWG", "6 AWG"][size]),
                }]
            });
            let request = serde_json::from_value(request).expect("a request");
            elbowroom::checks::evaluate::<BoxDepths>(&request).verdict
        };
        if with(depth) == Some(Verdict::Complies) {
            prop_assert_eq!(with(depth + more), Some(Verdict::Complies));
        }
    }
}

/// The conformance cases of one check in one system of units.
fn cases(file: &str, units: Units) -> Vec<Value> {
    let path = Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/conformance").join(file);
    let text = std::fs::read_to_string(path).expect(file);
    let cases: Vec<Value> = serde_json::from_str(&text).expect(file);
    let named = if units == Units::Si { "si" } else { "us" };
    let of_units = |case: &Value| case["request"]["units"].as_str().unwrap_or("us") == named;
    cases.into_iter().filter(of_units).collect()
}

/// Whether any case comes out other than expected when a figure is bent.
fn notices<C: Check>(cases: &[Value], bent: Amended) -> bool {
    cases.iter().any(|case| {
        let editions = case["editions"].as_array().expect("editions");
        editions.iter().any(|edition| {
            let mut request = case["request"].clone();
            request["edition"] = edition.clone();
            let request: C::Request = serde_json::from_value(request).expect("a request");
            let book = Rulebook::of(C::terms(&request).edition);
            let book = book.with_readings(C::readings(&request, book.readings)).with_amendments(&[bent]);
            let evaluation = C::evaluate(&book, &request);
            let answer = answer::<C>(&request, &evaluation, Explain::None, Catalogue::english());
            let answer = serde_json::to_value(&answer).expect("an answer is JSON");
            let expect = case["expect"].as_object().expect("expectations");
            // a limit that the answer repeats would notice any bend: what counts is what is decided
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

/// Figures that decide nothing in one system of units: what is printed in inches only decides in inches, and its
/// millimetres, which nobody confirms, advise only.
fn never_decides(figure: &RuleFigure, units: Units) -> bool {
    let sides = ["off-center", "long-side", "short-side", "diameter"];
    let of_opening = sides.iter().any(|side| figure.name == format!("box-access.opening.{side}"));
    let advises =
        ["box-access.opening-metric", "box-depth.wall-clearance", "box-depth.rear-center-entry-shallow"];
    of_opening && units == Units::Si || advises.iter().any(|advising| figure.name.starts_with(advising))
}

#[test]
fn every_figure_decides_some_case_when_bent_either_way() {
    let book = Rulebook::of(Edition::E2023);
    let (mut bends, mut unnoticed) = (0, Vec::new());
    for units in [Units::Us, Units::Si] {
        let (conductors, depths) = (cases("free-conductors.json", units), cases("box-depths.json", units));
        let (construction, mounting) =
            (cases("box-construction.json", units), cases("box-mounting.json", units));
        for figure in book.figures() {
            let ours = figure.name.starts_with("free-conductor.") || figure.name.starts_with("box-");
            if !ours || never_decides(&figure, units) {
                continue;
            }
            let value = figure.value(units);
            let fiftieth = value.times(Decimal::ten_thousandths(200));
            // more than the cases differ by around a figure: 0.0001 in., 0.1 mm
            let step = fiftieth.max(Decimal::ten_thousandths(if units == Units::Si { 1_100 } else { 100 }));
            let ways =
                if value == Decimal::ZERO { vec![value + step] } else { vec![value + step, value - step] };
            for value in ways {
                let bent = Amended { figure: figure.name, value };
                bends += 1;
                let noticed = if figure.name.starts_with("free-conductor.") {
                    notices::<FreeConductors>(&conductors, bent)
                } else if figure.name.starts_with("box-depth.") {
                    notices::<BoxDepths>(&depths, bent)
                } else if figure.name.starts_with("box-construction.") {
                    notices::<BoxConstruction>(&construction, bent)
                } else {
                    notices::<BoxMounting>(&mounting, bent)
                };
                if !noticed {
                    unnoticed.push(format!("{} bent to {value} ({units:?})", figure.name));
                }
            }
        }
    }
    say(&format!("{bends} bends of inspection figures, {} unnoticed", unnoticed.len()));
    assert!(bends > 100, "only {bends} bends");
    assert!(unnoticed.is_empty(), "{unnoticed:#?}");
}

/// Says what ran, past the capture of the test runner: a count that nobody sees is no count.
fn say(line: &str) {
    use std::io::Write;
    let _ = writeln!(std::io::stderr(), "{line}");
}
