//! Generated requests: every member there or not, every size on both sides of every limit.

use proptest::prelude::*;
use proptest::sample::select;
use serde_json::{Map, Value, json};

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

/// A list that is not empty.
fn some(item: BoxedStrategy<Value>) -> BoxedStrategy<Value> {
    prop::collection::vec(item, 1..4).prop_map(Value::Array).boxed()
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
        placed("mounting_holes_in_several_sides", vec![]),
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
    // the part that is unbroken is what is fastened
    let unbroken = unbroken.prop_map(|mut conduit| {
        let length = |member: &str| conduit.get(member).and_then(Value::as_f64);
        if length("fastened_before_support") > length("unbroken_before_support")
            && let Some(unbroken) = conduit.get("unbroken_before_support").cloned()
        {
            conduit["fastened_before_support"] = unbroken;
        }
        conduit
    });
    let unbroken = unbroken.boxed();
    let hung = || vec![("height", size()), ("horizontal_clearance", size()), ("extent", size())];
    let luminaire = || {
        let mut members = hung();
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
        ("swivel_hangers", yes_or_no()),
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
        with(
            kind(
                "raceways",
                vec![("threaded_entries_or_hubs", yes_or_no()), ("entries_on_one_side", yes_or_no())]
            ),
            vec![("conduits", some(conduit))]
        ),
        with(kind("luminaire_on_conduit", directly), vec![("conduits", some(unbroken.clone()))]),
        with(kind("luminaire_on_conduit", by_nipple), vec![("conduits", some(unbroken))]),
        kind("embedded", vec![("corrosion_identified", yes_or_no()), ("secure", yes_or_no())]),
        kind(
            "cord_pendant",
            vec![("strain_relieved", yes_or_no()), ("hub", yes_or_no()), ("cord_grip_listed", yes_or_no()),]
        ),
        with(kind("conduit_pendant", pendant), vec![("conduit", raceway())]),
    ]
    .boxed()
}

fn terms() -> Vec<(&'static str, BoxedStrategy<Value>)> {
    vec![("edition", word(&["2017", "2020", "2023"])), ("units", word(&["us", "si"]))]
}

pub fn supports() -> BoxedStrategy<Value> {
    let held = || vec![("volume", size()), ("devices_or_luminaires", yes_or_no())];
    let body = with(
        object([held(), vec![("trade_size", trade_size())]].concat()),
        vec![("kind", Just(json!("conduit_body")).boxed())],
    );
    let enclosure = prop_oneof![object(held()), body].boxed();
    with(object(terms()), vec![("enclosure", enclosure), ("means", list(means()))])
        .prop_map(|mut request| {
            let hangs =
                |means: &Value| means["kind"] == "luminaire_on_conduit" || means["kind"] == "conduit_pendant";
            if request["means"].as_array().is_some_and(|means| means.iter().any(hangs))
                && request["enclosure"]["devices_or_luminaires"] == false
            {
                request["enclosure"]["devices_or_luminaires"] = json!(true);
            }
            request
        })
        .boxed()
}

pub fn outlets() -> BoxedStrategy<Value> {
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
    // a box that is listed for a weight is identified, and of what is marked nobody says that it is not; one that is listed for a fan
    // is marked inside
    let outlet_box = (outlet_box, any::<bool>()).prop_map(|(mut outlet_box, denies_mark)| {
        if outlet_box["identified"] == false {
            outlet_box.as_object_mut().expect("an object").remove("listed_for_weight");
        }
        if outlet_box.get("listed_for_fan") == Some(&true.into())
            && outlet_box.get("marked_inside") == Some(&false.into())
        {
            outlet_box.as_object_mut().expect("an object").remove("marked_inside");
        }
        if denies_mark && outlet_box.get("marked_weight").is_none() {
            outlet_box["weight_marked"] = false.into();
        }
        outlet_box
    });
    let outlet_box = outlet_box.boxed();
    let fan_location = object(vec![
        ("dwelling", yes_or_no()),
        ("habitable_room", yes_or_no()),
        ("acceptable", yes_or_no()),
        ("spare_conductors", yes_or_no()),
        ("framing_access", yes_or_no()),
        ("framing_access_through_box", yes_or_no()),
    ]);
    // what is reached through the box is reached
    let fan_location = fan_location.prop_map(|mut place| {
        if place.get("framing_access_through_box") == Some(&true.into())
            && place.get("framing_access").is_some()
        {
            place["framing_access"] = true.into();
        }
        place
    });
    let fan_location = fan_location.boxed();
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

pub const INDOOR: [&str; 11] = [
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
pub const OUTDOOR: [&str; 8] = [
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

pub fn enclosures() -> BoxedStrategy<Value> {
    let place = |location: &'static str, conditions: &[&'static str]| {
        let members = [
            terms(),
            vec![
                ("moisture", word(&["dry", "damp", "wet"])),
                ("conditions", list(word(conditions))),
                ("hazardous", yes_or_no()),
                ("enclosure_kind", word(&["box", "equipment"])),
                ("enclosure_type", word(&TYPES)),
            ],
        ]
        .concat();
        with(object(members), vec![("location", Just(json!(location)).boxed())])
    };
    prop_oneof![place("indoor", &INDOOR), place("outdoor", &OUTDOOR)].boxed()
}
