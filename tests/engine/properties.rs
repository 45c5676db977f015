//! What must hold for every request, however strange: properties of outlet-box fill over generated requests.

use elbowroom::answers::{Explain, answer};
use elbowroom::checks::outlet_fill::{OutletFill, OutletFillRequest};
use elbowroom::checks::{Evaluation, Verdict, evaluate, faults_of};
use elbowroom::i18n::Catalogue;
use elbowroom::quantity::Decimal;
use elbowroom::trade::ConductorSize;
use proptest::prelude::*;
use proptest::sample::select;
use serde_json::{Value, json};

type Filled = Evaluation<elbowroom::checks::outlet_fill::OutletFillOutcome>;

/// Evaluates a request that must be free of faults, replays its proof, and holds the text of its answer against what
/// `serde_json` writes.
fn fill(request: &Value) -> Filled {
    let request: OutletFillRequest =
        elbowroom::json::read_value(request.clone()).expect("a generated request decodes");
    let faults = faults_of::<OutletFill>(&request);
    assert!(faults.is_empty(), "{faults:?}");
    let evaluation = evaluate::<OutletFill>(&request);
    assert_eq!(evaluation.proof.replay(), Ok(()));
    let answer = answer::<OutletFill>(&request, &evaluation, Explain::Full, Catalogue::english());
    let mut written = Vec::new();
    answer.write_json(&mut written).expect("an answer is written");
    assert!(written == serde_json::to_vec(&answer).expect("an answer is JSON"), "{request:?}");
    evaluation
}

fn required(evaluation: &Filled) -> Decimal {
    evaluation.outcome.spaces[0].required.value
}

fn size() -> impl Strategy<Value = &'static str> {
    select(vec!["18 AWG", "16 AWG", "14 AWG", "12 AWG", "10 AWG", "8 AWG", "6 AWG"])
}

fn conductor() -> impl Strategy<Value = Value> {
    (size(), 0_usize..5, 1_u32..6, 1_u32..400).prop_map(|(size, role, count, tenths)| {
        let role = ["terminated", "spliced", "passes_through", "loop", "stays_inside"][role];
        let mut conductor = json!({"size": size, "role": role, "count": count});
        if role == "loop" {
            conductor["loop_length"] = json!(f64::from(tenths) / 10.0);
        }
        conductor
    })
}

fn cable() -> impl Strategy<Value = Value> {
    (size(), 1_u32..5, proptest::option::of(size()), 1_u32..5).prop_map(
        |(size, conductors, grounding, count)| {
            let mut cable = json!({"kind": "NM-B", "size": size, "conductors": conductors, "count": count});
            match grounding {
                Some(grounding) => cable["grounding"] = json!(grounding),
                None => (cable["grounding"], cable["existing_cable"]) = (json!("none"), json!(true)),
            }
            cable
        },
    )
}

fn grounding() -> impl Strategy<Value = Value> {
    let kind = select(vec!["equipment_grounding", "bonding_jumper", "isolated", "stays_inside"]);
    (size(), kind, 1_u32..7)
        .prop_map(|(size, kind, count)| json!({"size": size, "kind": kind, "count": count}))
}

fn device() -> impl Strategy<Value = Value> {
    (size(), 1_u32..4, 1_u32..3).prop_map(|(size, gangs, count)| {
        json!({"kind": "switch", "largest_conductor": size, "gangs": gangs, "count": count})
    })
}

fn block() -> impl Strategy<Value = Value> {
    (size(), 1_u32..3).prop_map(|(size, count)| json!({"largest_conductor": size, "count": count}))
}

fn canopy() -> impl Strategy<Value = Option<Value>> {
    let kind = select(vec!["domed_luminaire", "flat_luminaire", "ceiling_fan"]);
    let wires = prop::collection::vec((size(), 1_u32..4), 0..3);
    let canopy = (kind, wires).prop_map(|(kind, wires)| {
        let wires: Vec<Value> =
            wires.iter().map(|(size, count)| json!({"size": size, "count": count})).collect();
        json!({"kind": kind, "fixture_wires": wires})
    });
    proptest::option::of(canopy)
}

fn contents() -> impl Strategy<Value = Value> {
    let clamps = prop::collection::vec(select(vec!["internal", "molded", "external"]), 0..3);
    let fittings = prop::collection::vec(select(vec!["stud", "hickey"]), 0..3);
    (
        prop::collection::vec(conductor(), 1..5),
        prop::collection::vec(cable(), 0..4),
        prop::collection::vec(grounding(), 0..4),
        prop::collection::vec(device(), 0..3),
        prop::collection::vec(block(), 0..2),
        canopy(),
        clamps,
        fittings,
    )
        .prop_map(|(conductors, cables, grounding, devices, terminal_blocks, canopy, clamps, fittings)| {
            let kinds = |kinds: Vec<&str>| kinds.iter().map(|kind| json!({"kind": kind})).collect::<Vec<Value>>();
            let mut contents = json!({
                "conductors": conductors, "cables": cables, "grounding": grounding, "devices": devices,
                "terminal_blocks": terminal_blocks, "clamps": kinds(clamps), "support_fittings": kinds(fittings),
            });
            if let Some(canopy) = canopy {
                contents["canopy"] = canopy;
            }
            contents
        })
}

fn request() -> impl Strategy<Value = Value> {
    let edition = select(vec!["2017", "2020", "2023"]);
    (edition, select(vec!["us", "si"]), contents()).prop_map(
        |(edition, units, contents)| json!({"edition": edition, "units": units, "contents": contents}),
    )
}

/// One more thing, and the list that it joins.
fn addition() -> impl Strategy<Value = (&'static str, Value)> {
    prop_oneof![
        conductor().prop_map(|one| ("conductors", one)),
        cable().prop_map(|one| ("cables", one)),
        grounding().prop_map(|one| ("grounding", one)),
        device().prop_map(|one| ("devices", one)),
        block().prop_map(|one| ("terminal_blocks", one)),
        Just(("clamps", json!({"kind": "internal"}))),
        Just(("support_fittings", json!({"kind": "hickey"}))),
    ]
}

const LISTS: [&str; 7] =
    ["conductors", "cables", "grounding", "devices", "terminal_blocks", "clamps", "support_fittings"];

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn adding_contents_never_lowers_the_required_volume(request in request(), (list, one) in addition()) {
        let before = required(&fill(&request));
        let mut more = request;
        more["contents"][list].as_array_mut().expect("a list").push(one);
        prop_assert!(required(&fill(&more)) >= before);
    }

    #[test]
    fn the_order_of_a_list_changes_no_figure(request in request()) {
        let before = fill(&request);
        let mut turned = request;
        for list in LISTS {
            turned["contents"][list].as_array_mut().expect("a list").reverse();
        }
        let after = fill(&turned);
        prop_assert_eq!(required(&before), required(&after));
        let lines = |filled: &Filled| -> Vec<_> {
            filled.outcome.spaces[0].tally.iter().map(|line| (line.what, line.size, line.volume.value)).collect()
        };
        prop_assert_eq!(lines(&before), lines(&after));
    }

    #[test]
    fn grouping_changes_no_figure(request in request()) {
        let before = required(&fill(&request));
        let mut single = request;
        for list in LISTS {
            let items = single["contents"][list].as_array().expect("a list").clone();
            let one_by_one = items.iter().flat_map(|item| {
                let mut one = item.clone();
                let count = item.get("count").and_then(Value::as_u64).unwrap_or(1);
                one.as_object_mut().expect("an item").remove("count");
                std::iter::repeat_n(one, count as usize)
            });
            single["contents"][list] = one_by_one.collect();
        }
        prop_assert_eq!(required(&fill(&single)), before);
    }

    #[test]
    fn a_larger_box_never_turns_complies_into_violates(request in request(), volume in 1_u32..3000, more in 1_u32..3000) {
        let with = |tenths: u32| {
            let mut boxed = request.clone();
            boxed["enclosure"] = json!({"marked_volume": f64::from(tenths) / 10.0});
            fill(&boxed).verdict
        };
        if with(volume) == Some(Verdict::Complies) {
            prop_assert_eq!(with(volume + more), Some(Verdict::Complies));
        }
    }

    #[test]
    fn editions_differ_only_by_grounding_isolated_sets_and_terminal_blocks(request in request()) {
        let mut plain = request;
        for list in ["grounding", "terminal_blocks"] {
            plain["contents"][list] = json!([]);
        }
        for cable in plain["contents"]["cables"].as_array_mut().expect("a list") {
            cable["grounding"] = json!("none");
            cable["existing_cable"] = json!(true);
        }
        let in_edition = |edition: &str| {
            let mut asked = plain.clone();
            asked["edition"] = json!(edition);
            required(&fill(&asked))
        };
        prop_assert_eq!(in_edition("2017"), in_edition("2020"));
        prop_assert_eq!(in_edition("2020"), in_edition("2023"));
    }

    #[test]
    fn room_left_is_exact(request in request(), volume in 10_u32..1400) {
        let mut boxed = request;
        boxed["enclosure"] = json!({"marked_volume": f64::from(volume), "gangs": 20});
        // a loop counts by its length alone where conductors emerge near the opening
        boxed["opening"] = json!({"smallest_dimension": 4, "conductor_depth": 1});
        // room is counted in the system of the request
        boxed["interpretations"] = json!({
            "molded_clamps": "counted", "fan_canopy": "not_a_luminaire", "bonding_jumpers": "with_grounding",
            "units": "as_requested",
        });
        let filled = fill(&boxed);
        for room in filled.outcome.spaces[0].room_left.as_ref().expect("everything is counted") {
            let with = |count: i64| {
                let mut more = boxed.clone();
                let one = json!({"size": room.size.name(), "role": "spliced", "count": count});
                more["contents"]["conductors"].as_array_mut().expect("a list").push(one);
                fill(&more).verdict
            };
            let fits = room.conductors.value.billionths() / 1_000_000_000;
            if fits > 0 {
                prop_assert_eq!(with(fits), Some(Verdict::Complies));
            }
            if fits < 999 {
                prop_assert_eq!(with(fits + 1), Some(Verdict::Violates));
            }
        }
    }

    /// Boxes about as large as they must be: of those that are far off nothing that is left out would turn the verdict.
    #[test]
    fn what_is_left_unsaid_of_clamps_and_devices_buys_nothing(request in request(), percent in 70_i64..120) {
        let asked = required(&fill(&request)).max(Decimal::ONE);
        let volume = asked.times(Decimal::ten_thousandths(percent * 100)).floor_to(Decimal::ten_thousandths(1));
        let mut boxed = request;
        boxed["enclosure"] = json!({"marked_volume": volume, "gangs": 20});
        let said = fill(&boxed).verdict;
        // clamps are a question where cables enter; elsewhere a list that does not name any has none
        if boxed["contents"]["cables"].as_array().is_some_and(|cables| !cables.is_empty()) {
            boxed["contents"].as_object_mut().expect("contents").remove("clamps");
        }
        let without_clamps = fill(&boxed).verdict;
        prop_assert!(said == Some(Verdict::Complies) || without_clamps != Some(Verdict::Complies));
        for device in boxed["contents"]["devices"].as_array_mut().expect("a list") {
            device.as_object_mut().expect("a device").remove("largest_conductor");
        }
        let without_sizes = fill(&boxed).verdict;
        prop_assert!(said == Some(Verdict::Complies) || without_sizes != Some(Verdict::Complies));
        prop_assert!(said != Some(Verdict::Complies) || without_sizes != Some(Verdict::Violates));
    }

    #[test]
    fn no_text_panics(text in "\\PC{0,200}") {
        let _ = elbowroom::json::read::<OutletFillRequest>(text.as_bytes()).map(|request| {
            if faults_of::<OutletFill>(&request).is_empty() {
                evaluate::<OutletFill>(&request);
            }
        });
        let _ = ConductorSize::read(&text);
        let _ = elbowroom::trade::TradeSize::read(&text);
        let _ = elbowroom::tables::standard_boxes::StandardBox::read(&text);
    }
}

/// The largest request that the bounds allow stays inside the range of exact numbers.
#[test]
fn the_largest_request_is_still_exact() {
    let many = |item: Value| Value::Array(vec![item; 200]);
    let request = json!({
        "units": "si",
        "opening": {"smallest_dimension": 100, "conductor_depth": 50},
        "enclosure": {"marked_volume": 1_000_000, "sections": many(json!({"kind": "plaster_ring", "marked_volume": 40_000, "count": 1000}))},
        "contents": {
            "conductors": many(json!({"size": "6 AWG", "role": "loop", "loop_length": 100_000, "count": 1000})),
            "cables": many(json!({"kind": "other", "size": "6 AWG", "conductors": 50, "grounding": "6 AWG", "count": 1000})),
            "devices": many(json!({"kind": "equipment", "largest_conductor": "6 AWG", "gangs": 20, "count": 1000})),
            "terminal_blocks": many(json!({"largest_conductor": "6 AWG", "count": 1000})),
        }
    });
    let filled = fill(&request);
    // allowances: 400 000 looped, 10 000 000 in cables, 8 000 000 of yokes, 200 000 of blocks, and of the 200 000
    // grounding conductors 1 + 199 996 / 4 = 50 000: together 18 650 000 at 81.9 cm³
    assert_eq!(required(&filled).to_string(), "1527435000");
    assert_eq!(filled.outcome.spaces[0].available.expect("a volume").value.to_string(), "8001000000");
}
