//! What must hold for every request about supports, outlets and enclosure types, and which requests are refused.

use elbowroom::checks::box_supports::BoxSupports;
use elbowroom::checks::enclosure_types::EnclosureTypes;
use elbowroom::checks::luminaire_and_fan_outlets::LuminaireAndFanOutlets;
use elbowroom::checks::{Check, Evaluation, Status, Verdict, evaluate, faults_of};
use proptest::prelude::*;
use proptest::sample::select;
use serde_json::{Map, Value, json};

/// Evaluates a request that must be free of faults, and replays its proof.
fn answer<C: Check>(request: &Value) -> Evaluation<C::Outcome> {
    let request: C::Request = serde_json::from_value(request.clone()).expect("a generated request decodes");
    let faults = faults_of::<C>(&request);
    assert!(faults.is_empty(), "{faults:?}");
    let evaluation = evaluate::<C>(&request);
    assert_eq!(evaluation.proof.replay(), Ok(()));
    evaluation
}

/// An object with each member there or not.
fn object(members: Vec<(&'static str, BoxedStrategy<Value>)>) -> BoxedStrategy<Value> {
    let (names, values): (Vec<&str>, Vec<_>) =
        members.into_iter().map(|(name, value)| (name, proptest::option::of(value))).unzip();
    values
        .prop_map(move |values| {
            let present = names.iter().zip(values);
            let members: Map<String, Value> =
                present.filter_map(|(name, value)| Some(((*name).to_owned(), value?))).collect();
            Value::Object(members)
        })
        .boxed()
}

/// The same object with members that are always there.
fn with(
    object: BoxedStrategy<Value>,
    members: Vec<(&'static str, BoxedStrategy<Value>)>,
) -> BoxedStrategy<Value> {
    let (names, values): (Vec<&str>, Vec<_>) = members.into_iter().unzip();
    (object, values)
        .prop_map(move |(mut object, values)| {
            for (name, value) in names.iter().zip(values) {
                object[*name] = value;
            }
            object
        })
        .boxed()
}

fn yes_or_no() -> BoxedStrategy<Value> {
    any::<bool>().prop_map(Value::from).boxed()
}

/// Sizes on both sides of every limit, in either system.
fn size() -> BoxedStrategy<Value> {
    let near =
        vec![0.01, 0.02, 0.25, 0.51, 1.0, 2.0, 3.0, 6.0, 9.0, 12.0, 18.0, 20.0, 23.0, 25.0, 32.0, 35.0];
    let far = vec![36.0, 50.0, 70.0, 75.0, 96.0, 100.0, 300.0, 450.0, 900.0, 1650.0, 2500.0, 99_999.5];
    select([near, far].concat()).prop_map(Value::from).boxed()
}

fn word(words: &[&'static str]) -> BoxedStrategy<Value> {
    select(words.to_vec()).prop_map(Value::from).boxed()
}

fn trade_size() -> BoxedStrategy<Value> {
    word(&["1/2", "1", "1-1/4", "4"])
}

fn raceway() -> BoxedStrategy<Value> {
    word(&["RMC", "IMC", "PVC", "RTRC", "EMT", "other"])
}

fn list(item: BoxedStrategy<Value>) -> BoxedStrategy<Value> {
    prop::collection::vec(item, 0..4).prop_map(Value::Array).boxed()
}

fn kind(kind: &'static str, members: Vec<(&'static str, BoxedStrategy<Value>)>) -> BoxedStrategy<Value> {
    with(object(members), vec![("kind", Just(json!(kind)).boxed())])
}

fn fasteners() -> BoxedStrategy<Value> {
    let placed = |placement: &'static str, members| {
        with(object(members), vec![("placement", Just(json!(placement)).boxed())])
    };
    let screws = object(vec![("distance", size()), ("threads_protected", yes_or_no())]);
    let screws = with(
        screws,
        vec![
            ("placement", Just(json!("through_inside")).boxed()),
            ("fastener", Just(json!("screws")).boxed()),
        ],
    );
    let nails = with(
        object(vec![("distance", size())]),
        vec![
            ("placement", Just(json!("through_inside")).boxed()),
            ("fastener", Just(json!("nails")).boxed()),
        ],
    );
    prop_oneof![
        placed("outside_brackets", vec![]),
        placed("mounting_holes", vec![]),
        placed("field_made_holes", vec![("approved", yes_or_no())]),
        screws,
        nails,
    ]
    .boxed()
}

fn brace() -> BoxedStrategy<Value> {
    let of = |material: &'static str, members| {
        with(object(members), vec![("material", Just(json!(material)).boxed())])
    };
    prop_oneof![
        of("metal", vec![("thickness", size()), ("corrosion_protected", yes_or_no())]),
        of(
            "wood",
            vec![
                ("nominal_thickness", size()),
                ("nominal_width", size()),
                ("wet_location", yes_or_no()),
                ("treated", yes_or_no()),
            ]
        ),
        of("polymeric", vec![("identified", yes_or_no())]),
    ]
    .boxed()
}

fn means() -> BoxedStrategy<Value> {
    let conduit = with(
        object(vec![
            ("trade_size", trade_size()),
            ("threaded_wrenchtight", yes_or_no()),
            ("secured_within", size()),
        ]),
        vec![("kind", raceway())],
    );
    let unbroken = with(
        object(vec![
            ("beyond_last_support", size()),
            ("unbroken_before_support", size()),
            ("fastened_before_support", size()),
            ("weight", size()),
            ("threaded_wrenchtight", yes_or_no()),
        ]),
        vec![("kind", raceway())],
    );
    let hung = || vec![("height", size()), ("horizontal_clearance", size()), ("extent", size())];
    let luminaire = || {
        let mut members = hung();
        members.push(("conduits", list(unbroken.clone())));
        members.push(("accessible_to_unqualified", yes_or_no()));
        members
    };
    let mut directly = luminaire();
    directly.push(("secured_directly", yes_or_no()));
    let mut by_nipple = luminaire();
    by_nipple.push(("nipple_length", size()));
    let mut pendant = hung();
    pendant.extend([
        ("stems", (1_u32..4).prop_map(Value::from).boxed()),
        ("length", size()),
        ("flexible_fitting", yes_or_no()),
        ("threaded_wrenchtight", yes_or_no()),
        ("joints_secured", yes_or_no()),
    ]);
    prop_oneof![
        kind("surface", vec![("rigid", yes_or_no())]),
        kind(
            "structural_member",
            vec![("rigid", yes_or_no()), ("fasteners", fasteners()), ("brace", brace())]
        ),
        kind("finished_surface", vec![("rigid", yes_or_no()), ("fittings_identified", yes_or_no())]),
        kind("ceiling_framing", vec![("fastened", yes_or_no()), ("framing_secured", yes_or_no())]),
        kind(
            "ceiling_wires",
            vec![
                ("method_identified", yes_or_no()),
                ("independent_wires", yes_or_no()),
                ("taut", yes_or_no())
            ]
        ),
        kind(
            "raceways",
            vec![
                ("threaded_entries_or_hubs", yes_or_no()),
                ("entries_on_one_side", yes_or_no()),
                ("conduits", list(conduit)),
            ]
        ),
        kind("luminaire_on_conduit", directly),
        kind("luminaire_on_conduit", by_nipple),
        kind("embedded", vec![("corrosion_identified", yes_or_no()), ("secure", yes_or_no())]),
        kind("cord_pendant", vec![("strain_relieved", yes_or_no())]),
        with(kind("conduit_pendant", pendant), vec![("conduit", raceway())]),
    ]
    .boxed()
}

fn terms() -> Vec<(&'static str, BoxedStrategy<Value>)> {
    vec![("edition", word(&["2017", "2020", "2023"])), ("units", word(&["us", "si"]))]
}

fn supports() -> BoxedStrategy<Value> {
    let held = || vec![("volume", size()), ("devices_or_luminaires", yes_or_no())];
    let body = with(
        object([held(), vec![("trade_size", trade_size())]].concat()),
        vec![("kind", Just(json!("conduit_body")).boxed())],
    );
    let enclosure = prop_oneof![object(held()), body].boxed();
    with(object(terms()), vec![("enclosure", enclosure), ("means", list(means()))])
}

fn outlets() -> BoxedStrategy<Value> {
    let separable =
        object(vec![("listed", yes_or_no()), ("compatible", yes_or_no()), ("rated_weight", size())]);
    let carried =
        || vec![("weight", size()), ("carried_by_structure", yes_or_no()), ("separable", separable.clone())];
    let screws = (1_u32..4, 4_u32..9).prop_map(|(count, number)| json!({"count": count, "number": number}));
    let hung = |of, place| {
        let members = [carried(), vec![("screws", screws.clone().boxed())]].concat();
        with(kind(of, members), vec![("position", Just(json!(place)).boxed())])
    };
    let floor = kind(
        "floor_receptacle",
        vec![("show_window_accepted", yes_or_no()), ("listed_assembly", yes_or_no())],
    );
    let outlet_box = object(vec![
        ("identified", yes_or_no()),
        ("marked_weight", size()),
        ("marked_inside", yes_or_no()),
        ("listed_for_weight", yes_or_no()),
        ("listed_for_fan", yes_or_no()),
        ("marked_for_fan", yes_or_no()),
        ("listed_for_floor", yes_or_no()),
    ]);
    let fan_location = object(vec![
        ("dwelling", yes_or_no()),
        ("habitable_room", yes_or_no()),
        ("acceptable", yes_or_no()),
        ("spare_conductors", yes_or_no()),
        ("framing_access", yes_or_no()),
        ("framing_access_through_box", yes_or_no()),
    ]);
    let on_ceiling = prop_oneof![
        hung("luminaire", "ceiling"),
        hung("equipment", "ceiling"),
        kind("ceiling_fan", carried()),
        kind("nothing", vec![]),
    ];
    let elsewhere = prop_oneof![hung("luminaire", "wall"), hung("equipment", "wall"), floor];
    let asked = [terms(), vec![("box", outlet_box)]].concat();
    prop_oneof![
        with(
            object([asked.clone(), vec![("fan_location", fan_location)]].concat()),
            vec![("load", on_ceiling.boxed())]
        ),
        with(object(asked), vec![("load", elsewhere.boxed())]),
    ]
    .boxed()
}

const INDOOR: [&str; 11] = [
    "incidental_contact",
    "falling_dirt",
    "falling_liquids",
    "circulating_dust",
    "settling_dust",
    "hosedown",
    "oil_seepage",
    "oil_spray",
    "corrosive_agents",
    "temporary_submersion",
    "prolonged_submersion",
];
const OUTDOOR: [&str; 8] = [
    "incidental_contact",
    "rain_snow_sleet",
    "operable_when_iced",
    "windblown_dust",
    "hosedown",
    "corrosive_agents",
    "temporary_submersion",
    "prolonged_submersion",
];
const TYPES: [&str; 16] =
    ["1", "2", "3", "3R", "3S", "3X", "3RX", "3SX", "4", "4X", "5", "6", "6P", "12", "12K", "13"];

fn enclosures() -> BoxedStrategy<Value> {
    let place = |location: &'static str, conditions: &[&'static str]| {
        let members = [
            terms(),
            vec![
                ("moisture", word(&["dry", "damp", "wet"])),
                ("conditions", list(word(conditions))),
                ("hazardous", yes_or_no()),
                ("enclosure_type", word(&TYPES)),
            ],
        ]
        .concat();
        with(object(members), vec![("location", Just(json!(location)).boxed())])
    };
    prop_oneof![place("indoor", &INDOOR), place("outdoor", &OUTDOOR)].boxed()
}

/// Members whose absence says something: one stem, no weight marked, the box carries it, no such floor; and those that
/// cannot be absent.
const SILENCE_SPEAKS: [&str; 6] =
    ["stems", "marked_weight", "carried_by_structure", "show_window_accepted", "count", "number"];

/// Takes one thing out of a request: a verdict that is settled without it is the verdict with it.
fn settled_stays_settled<C: Check>(request: &Value, place: prop::sample::Index) -> Result<(), TestCaseError> {
    let mut told = Vec::new();
    untellable(request, &mut String::new(), &mut told);
    let Some((object, member)) = (!told.is_empty()).then(|| place.get(&told)) else { return Ok(()) };
    let mut untold = request.clone();
    untold.pointer_mut(object).and_then(Value::as_object_mut).expect("an object").remove(member);
    let before = answer::<C>(&untold).verdict;
    if before != Some(Verdict::NotDetermined) {
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

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, cases: 512, ..ProptestConfig::default() })]

    #[test]
    fn one_complete_means_is_enough_unless_threads_are_bare(request in supports()) {
        let found = answer::<BoxSupports>(&request);
        let complete = found.outcome.means.iter().any(|means| means.status == Status::Satisfied);
        let threads = |status: Status| found.findings.iter()
            .any(|finding| finding.rule.id == "box-support.screw-threads" && finding.status == status);
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
        let found = answer::<BoxSupports>(&more);
        let threads = found.findings.iter().any(|finding| {
            finding.rule.id == "box-support.screw-threads" && finding.status == Status::NotDetermined
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
        prop_assert_eq!(found.verdict.is_some(), request.get("box").is_some());
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
        let Some(given) = request.get("enclosure_type").and_then(Value::as_str) else { return Ok(()) };
        let serves = found.outcome.serves.iter().any(|one| one.name() == given);
        prop_assert!(found.verdict != Some(Verdict::Complies) || serves);
        prop_assert!(found.verdict != Some(Verdict::Violates) || !serves);
        for answered in &found.outcome.types {
            prop_assert_eq!(answered.serves, answered.ruled_out_by.is_empty());
        }
    }
}

/// The codes of a request's faults, with their places.
fn faults<C: Check>(request: &Value) -> Vec<String> {
    let request: C::Request = serde_json::from_value(request.clone()).expect("a request decodes");
    faults_of::<C>(&request).iter().map(|fault| format!("{} {}", fault.at, fault.message)).collect()
}

#[test]
fn contradictions_are_faults() {
    let supported = |enclosure: Value, means: Value| {
        faults::<BoxSupports>(&json!({"enclosure": enclosure, "means": [means]}))
    };
    assert_eq!(
        supported(json!({"trade_size": "1"}), json!({"kind": "surface"})),
        ["/enclosure/trade_size fault-trade-size-of-box"]
    );
    assert_eq!(
        supported(
            json!({}),
            json!({"kind": "luminaire_on_conduit", "secured_directly": true, "nipple_length": 2})
        ),
        ["/means/0/nipple_length fault-nipple-and-direct"]
    );
    assert_eq!(
        supported(
            json!({}),
            json!({"kind": "structural_member", "fasteners": {
                "placement": "through_inside", "fastener": "nails", "threads_protected": true
            }})
        ),
        ["/means/0/fasteners/threads_protected fault-threads-of-nails"]
    );
    assert_eq!(
        faults::<LuminaireAndFanOutlets>(&json!({
            "load": {"kind": "luminaire", "position": "wall"}, "fan_location": {"dwelling": true}
        })),
        ["/fan_location fault-fan-location-of-no-ceiling"]
    );
    assert_eq!(
        faults::<EnclosureTypes>(
            &json!({"location": "indoor", "conditions": ["hosedown", "windblown_dust"]})
        ),
        ["/conditions/1 fault-condition-not-at-location"]
    );
}

#[test]
fn long_lists_are_faults() {
    let many = |item: Value, number: usize| Value::Array(vec![item; number]);
    let conduit = json!({"kind": "RMC"});
    for (number, expected) in [(200, 0), (201, 1)] {
        let means = many(json!({"kind": "surface"}), number);
        assert_eq!(faults::<BoxSupports>(&json!({"enclosure": {}, "means": means})).len(), expected);
        for kind in ["raceways", "luminaire_on_conduit"] {
            let means = json!([{"kind": kind, "conduits": many(conduit.clone(), number)}]);
            assert_eq!(faults::<BoxSupports>(&json!({"enclosure": {}, "means": means})).len(), expected);
        }
        let conditions = many(json!("hosedown"), number);
        let request = json!({"location": "indoor", "conditions": conditions});
        assert_eq!(faults::<EnclosureTypes>(&request).len(), expected);
    }
}

#[test]
fn what_is_no_member_or_no_word_does_not_decode() {
    let refused = |request: Value| {
        assert!(
            serde_json::from_value::<<BoxSupports as Check>::Request>(request.clone()).is_err(),
            "{request}"
        );
    };
    refused(json!({"enclosure": {}, "means": [{"kind": "glue"}]}));
    refused(json!({"enclosure": {}, "means": [{"kind": "surface", "taut": true}]}));
    refused(json!({"enclosure": {}, "means": [{"kind": "surface", "rigid": null}]}));
    refused(json!({"enclosure": {}, "means": [{"rigid": true}]}));
    refused(json!({"enclosure": {}, "means": [], "mean": []}));
}
