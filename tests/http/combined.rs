//! Several checks at once: the review of a box and the comparison of editions.

use super::support::{faults, post};
use serde_json::{Value, json};

async fn reviewed(request: Value) -> Value {
    let reply = post("/v1/boxes/review", request.to_string()).await;
    assert_eq!(reply.status, 200, "{}", reply.json());
    reply.json()
}

fn short_box_and_open_raceway() -> Value {
    json!({
        "units": "us",
        "checks": {
            "outlet_box_fill": {
                "enclosure": {"marked_volume": 10},
                "contents": {"conductors": [{"size": "12 AWG", "role": "spliced", "count": 9}], "devices": [{"kind": "switch"}]}
            },
            "raceway_fill": {"raceway": {"kind": "EMT", "trade_size": "1"}, "conductors": [{"insulation": "THHN", "size": "12 AWG", "count": 9}]}
        }
    })
}

/// A box that is large enough or not by the conductors of its switch, which are not said, and a raceway that is too small.
fn open_box_and_full_raceway() -> Value {
    let mut request = short_box_and_open_raceway();
    request["checks"]["outlet_box_fill"]["enclosure"]["marked_volume"] = json!(25);
    request["checks"]["raceway_fill"]["raceway"]["trade_size"] = json!("1/2");
    request["checks"]["raceway_fill"]["conductors"][0]["count"] = json!(10);
    request["checks"]["outlet_box_fill"]["contents"]["conductors"][0]["count"] = json!(10);
    request
}

#[tokio::test]
async fn the_gravest_verdict_decides_and_the_gravest_finding_comes_first() {
    let review = reviewed(open_box_and_full_raceway()).await;
    assert_eq!(review["verdict"], "violates");
    let gravity = ["violated", "not_determined", "satisfied", "advisory"];
    let order: Vec<usize> = review["findings"]
        .as_array()
        .unwrap()
        .iter()
        .map(|finding| gravity.iter().position(|status| finding["status"] == *status).unwrap())
        .collect();
    assert!(order.is_sorted() && order[0] == 0 && order.contains(&1) && order.contains(&2), "{order:?}");
}

#[tokio::test]
async fn pointers_of_a_review_point_into_its_own_request() {
    let request = open_box_and_full_raceway();
    let review = reviewed(request.clone()).await;
    let pointers = |list: &'static str, member: &'static str| -> Vec<&str> {
        let entries = review[list].as_array().unwrap().iter();
        let pointers = entries.flat_map(|entry| entry[member].as_array().unwrap());
        pointers.map(|pointer| pointer.as_str().unwrap()).collect()
    };
    let (about, missing) = (pointers("findings", "at"), pointers("unknown", "supply"));
    assert!(about.iter().any(|pointer| request.pointer(pointer).is_some()), "{about:?}");
    for pointer in about.iter().filter(|pointer| !missing.contains(pointer)) {
        assert!(request.pointer(pointer).is_some(), "{pointer}");
    }
    // what is not said has a place in what is
    for pointer in &missing {
        let (holder, _) = pointer.rsplit_once('/').unwrap();
        assert!(request.pointer(holder).is_some() && request.pointer(pointer).is_none(), "{pointer}");
    }
    assert_eq!(
        review["unknown"][0]["supply"][0],
        "/checks/outlet_box_fill/contents/devices/0/largest_conductor"
    );
}

#[tokio::test]
async fn a_review_holds_the_same_answers_as_the_checks_themselves() {
    let request = short_box_and_open_raceway();
    let review = reviewed(request.clone()).await;
    for (check, path) in [("outlet_box_fill", "/v1/outlet-boxes/fill"), ("raceway_fill", "/v1/raceways/fill")]
    {
        let alone = post(&format!("{path}?explain=none"), request["checks"][check].to_string()).await;
        assert_eq!(review["answers"][check], alone.json(), "{check}");
    }
}

#[tokio::test]
async fn what_the_review_says_for_every_check_no_check_may_say_otherwise() {
    let mut request = short_box_and_open_raceway();
    request["checks"]["raceway_fill"]["units"] = json!("si");
    let problem = post("/v1/boxes/review", request.to_string()).await.problem(422, "invalid-request");
    assert_eq!(faults(&problem), [("/checks/raceway_fill/units".to_owned(), "contradiction".to_owned())]);
    assert_eq!(problem["errors"][0]["contradicts"], "/units");
}

#[tokio::test]
async fn a_review_of_nothing_or_by_a_check_that_there_is_not_is_refused() {
    let review = async |text: &str| {
        faults(&post("/v1/boxes/review", text.to_owned()).await.problem(422, "invalid-request"))
    };
    let fault = |pointer: &str, code: &str| [(pointer.to_owned(), code.to_owned())];
    assert_eq!(review(r#"{"checks": {}}"#).await, fault("/checks", "missing-member"));
    assert_eq!(review(r#"{"checks": {"box_fill": {}}}"#).await, fault("/checks/box_fill", "unknown-member"));
    let twice = r#"{"checks": {"raceway_fill": {}, "raceway_fill": {}}}"#;
    assert_eq!(review(twice).await, fault("/checks/raceway_fill", "duplicate-member"));
}

#[tokio::test]
async fn the_edition_of_a_compared_request_is_not_used_and_no_less_wrong() {
    let mut request = json!({"check": "outlet_box_fill", "editions": ["2023", "2020"], "request": {"edition": "2017", "contents": {}}});
    let reply = post("/v1/editions/compare", request.to_string()).await;
    assert_eq!((reply.status.as_u16(), &reply.json()["base"]), (200, &json!("2023")));
    request["request"]["edition"] = json!("2022");
    let problem = post("/v1/editions/compare", request.to_string()).await.problem(422, "invalid-request");
    assert_eq!(faults(&problem), [("/request/edition".to_owned(), "unknown-value".to_owned())]);
}

#[tokio::test]
async fn a_review_of_an_unverified_edition_asks_every_check_knowingly() {
    let mut request = short_box_and_open_raceway();
    request["edition"] = json!("2026");
    let problem = post("/v1/boxes/review", request.to_string()).await.problem(422, "invalid-request");
    assert_eq!(faults(&problem).len(), 2);
    request["accept_unverified_rules"] = json!(true);
    assert_eq!(reviewed(request).await["ruleset"]["verified"], false);
}

#[tokio::test]
async fn editions_are_compared_each_once_with_the_first() {
    let request = |editions: Value| json!({"check": "outlet_box_fill", "editions": editions, "request": {"contents": {"terminal_blocks": [{"largest_conductor": "10 AWG"}]}}});
    let reply = post("/v1/editions/compare", request(json!(["2023", "2017"])).to_string()).await.json();
    assert_eq!(reply["base"], "2023");
    assert_eq!(reply["editions"][0]["changes"], json!([]));
    let change = &reply["editions"][1]["changes"][0];
    assert_eq!((&change["from"]["value"], &change["to"]["value"]), (&json!(2.5), &json!(0.0)));
    assert!(reply["editions"][1]["rules"].as_array().unwrap().iter().any(|rule| {
        rule["rule"] == "outlet-fill.terminal-blocks"
            && rule["cause"] == true
            && rule.get("citation_to").is_none()
    }));
    for bad in [json!(["2023"]), json!(["2023", "2023"]), json!([])] {
        let problem =
            post("/v1/editions/compare", request(bad).to_string()).await.problem(422, "invalid-request");
        assert!(faults(&problem).iter().all(|(pointer, _)| pointer.starts_with("/editions")));
    }
}

/// Pairs of statements about one box: each pair cannot be true together.
fn said_twice() -> Vec<(Value, &'static str, &'static str)> {
    let review =
        |fill: Value, other: &str, part: Value| json!({"checks": {"outlet_box_fill": fill, other: part}});
    let contents = || json!({"cables": [{"kind": "MC", "size": "12 AWG", "conductors": 2}], "devices": [{"kind": "switch", "largest_conductor": "12 AWG"}]});
    let fill = |enclosure: Value| json!({"enclosure": enclosure, "contents": contents()});
    let marked = || fill(json!({"marked_volume": 20, "material": "nonmetallic", "gangs": 2}));
    let row = || fill(json!({"standard": "square-4x1-1/4"}));
    let mounting = |enclosure: Value| json!({"enclosure": enclosure});
    let held =
        |enclosure: Value| json!({"enclosure": enclosure, "means": [{"kind": "surface", "rigid": true}]});
    let enclosed = |size: &str| json!({"enclosure": {"internal_depth": 2}, "equipment": [{"projection": 1, "largest_supply_conductor": size}]});
    let pull = json!({"entries": [{"id": "a", "wall": "left", "raceway": {"trade_size": "2"}}, {"id": "b", "wall": "right", "raceway": {"trade_size": "2"}}],
        "pulls": [{"entries": ["a", "b"], "largest_conductor": "4/0 AWG"}]});
    let mut in_box = pull.clone();
    in_box["box"] = json!({"width": 24, "height": 24, "depth": 8});
    vec![
        (
            review(marked(), "box_mounting", mounting(json!({"material": "metal"}))),
            "outlet_box_fill/enclosure/material",
            "box_mounting/enclosure/material",
        ),
        (
            review(row(), "box_mounting", mounting(json!({"material": "nonmetallic"}))),
            "outlet_box_fill/enclosure/standard",
            "box_mounting/enclosure/material",
        ),
        (
            json!({"checks": {"box_construction": {"enclosure": {"material": "sheet_steel", "listed": false}},
                "box_mounting": mounting(json!({"listed_for_wet_locations": true}))}}),
            "box_construction/enclosure/listed",
            "box_mounting/enclosure/listed_for_wet_locations",
        ),
        (
            review(marked(), "box_construction", json!({"enclosure": {"material": "sheet_steel"}})),
            "outlet_box_fill/enclosure/material",
            "box_construction/enclosure/material",
        ),
        (
            review(
                marked(),
                "box_depths",
                json!({"enclosure": {"internal_depth": 3, "volume": 120}, "equipment": [{}]}),
            ),
            "box_depths/enclosure/volume",
            "outlet_box_fill/enclosure/marked_volume",
        ),
        (
            review(row(), "box_supports", held(json!({"volume": 120}))),
            "box_supports/enclosure/volume",
            "outlet_box_fill/enclosure/standard",
        ),
        (
            review(marked(), "box_mounting", mounting(json!({"single_gang_in_wall_or_ceiling": true}))),
            "outlet_box_fill/enclosure/gangs",
            "box_mounting/enclosure/single_gang_in_wall_or_ceiling",
        ),
        (
            review(row(), "box_mounting", mounting(json!({"shape": "round"}))),
            "box_mounting/enclosure/shape",
            "outlet_box_fill/enclosure/standard",
        ),
        (
            review(row(), "box_depths", json!({"enclosure": {"internal_depth": 3.5}, "equipment": [{}]})),
            "box_depths/enclosure/internal_depth",
            "outlet_box_fill/enclosure/standard",
        ),
        (
            review(marked(), "box_supports", held(json!({"devices_or_luminaires": false}))),
            "box_supports/enclosure/devices_or_luminaires",
            "outlet_box_fill/contents/devices",
        ),
        (
            review(marked(), "box_depths", enclosed("14 AWG")),
            "box_depths/equipment/0/largest_supply_conductor",
            "outlet_box_fill/contents/devices/0/largest_conductor",
        ),
        (
            review(
                marked(),
                "raceway_fill",
                json!({"conductors": [{"insulation": "THHN", "size": "14 AWG"}]}),
            ),
            "raceway_fill/conductors/0/size",
            "outlet_box_fill/contents",
        ),
        (
            json!({"checks": {"box_mounting": {"moisture": {"location": "dry"}}, "enclosure_types": {"location": "indoor", "moisture": "wet"}}}),
            "box_mounting/moisture/location",
            "enclosure_types/moisture",
        ),
        (
            json!({"checks": {"pull_box_size": pull.clone(), "raceway_fill": {"raceway": {"kind": "EMT", "trade_size": "3"}, "conductors": [{"insulation": "THHN", "size": "4/0 AWG"}]}}}),
            "raceway_fill/raceway/trade_size",
            "pull_box_size/entries",
        ),
        (
            json!({"checks": {"box_supports": held(json!({"kind": "conduit_body"})), "box_mounting": mounting(json!({"conduit_body": false}))}}),
            "box_supports/enclosure/kind",
            "box_mounting/enclosure/conduit_body",
        ),
        (
            review(marked(), "box_depths", json!({"enclosure": {"internal_depth": 3}})),
            "box_depths/equipment",
            "outlet_box_fill/contents/devices",
        ),
        (
            review(
                marked(),
                "box_depths",
                json!({"enclosure": {"internal_depth": 3}, "equipment": [{}, {}]}),
            ),
            "outlet_box_fill/contents/devices",
            "box_depths/equipment",
        ),
        (
            review(marked(), "free_conductors", json!({"opening": {"width": 10, "height": 10}})),
            "free_conductors/opening/width",
            "outlet_box_fill/enclosure/gangs",
        ),
        (
            review(marked(), "free_conductors", json!({"opening": {"gangs": 3}})),
            "outlet_box_fill/enclosure/gangs",
            "free_conductors/opening/gangs",
        ),
        (
            review(row(), "free_conductors", json!({"opening": {"standard": "square-4x1-1/2"}})),
            "outlet_box_fill/enclosure/standard",
            "free_conductors/opening/standard",
        ),
        (
            review(row(), "free_conductors", json!({"emergence_depth": 5})),
            "free_conductors/emergence_depth",
            "outlet_box_fill/enclosure/standard",
        ),
        (
            json!({"checks": {"outlet_box_fill": {"enclosure": {"marked_volume": 20}, "contents": {"nothing": true}},
                "luminaire_and_fan_outlets": {"load": {"kind": "luminaire", "position": "wall", "weight": 4}, "box": {"identified": true}}}}),
            "outlet_box_fill/contents/nothing",
            "luminaire_and_fan_outlets/load/kind",
        ),
        (
            json!({"checks": {"outlet_box_fill": {"enclosure": {"marked_volume": 20}, "contents": {"cables": [], "canopy": {"kind": "domed_luminaire"}}},
                "luminaire_and_fan_outlets": {"load": {"kind": "floor_receptacle"}, "box": {"listed_for_floor": true}}}}),
            "outlet_box_fill/contents/canopy/kind",
            "luminaire_and_fan_outlets/load/kind",
        ),
        (
            json!({"checks": {"outlet_box_fill": {"enclosure": {"marked_volume": 20}, "contents": {"conductors": [{"size": "12 AWG", "role": "spliced", "count": 6}]}},
                "raceway_fill": {"raceway": {"kind": "EMT", "trade_size": "1/2"}, "conductors": [{"insulation": "THHN", "size": "12 AWG", "count": 9}]}}}),
            "raceway_fill/conductors/0",
            "outlet_box_fill/contents",
        ),
        (
            json!({"checks": {"outlet_box_fill": {"enclosure": {"marked_volume": 20}, "contents": {"nothing": true}}, "pull_box_size": pull}}),
            "outlet_box_fill/contents/nothing",
            "pull_box_size/pulls",
        ),
        (
            review(marked(), "pull_box_size", in_box),
            "pull_box_size/box",
            "outlet_box_fill/enclosure/marked_volume",
        ),
        (
            review(row(), "box_mounting", mounting(json!({"conduit_body": true}))),
            "outlet_box_fill/enclosure/standard",
            "box_mounting/enclosure/conduit_body",
        ),
        (
            json!({"checks": {"box_mounting": {"moisture": {"location": "dry"}}, "enclosure_types": {"location": "outdoor", "conditions": ["rain_snow_sleet"]}}}),
            "enclosure_types/conditions",
            "box_mounting/moisture/location",
        ),
    ]
}

#[tokio::test]
async fn the_same_box_said_in_two_ways_is_refused_with_both_places() {
    for (request, here, there) in said_twice() {
        let problem = post("/v1/boxes/review", request.to_string()).await.problem(422, "invalid-request");
        let places = format!("/checks/{here} contradiction /checks/{there}");
        let found: Vec<String> = problem["errors"]
            .as_array()
            .unwrap()
            .iter()
            .map(|fault| {
                [&fault["pointer"], &fault["code"], &fault["contradicts"]]
                    .map(|text| text.as_str().unwrap_or(""))
                    .join(" ")
            })
            .collect();
        assert_eq!(found, [places], "{problem}");
    }
}

#[tokio::test]
async fn the_same_box_said_alike_is_not_refused() {
    let request = json!({"checks": {
        "outlet_box_fill": {
            "enclosure": {"standard": "device-3x2x3-1/2"},
            "contents": {"cables": [{"kind": "MC", "size": "12 AWG", "conductors": 2, "grounding": "12"}],
                "devices": [{"id": "A", "kind": "switch", "largest_conductor": "12"}, {"id": "B", "kind": "switch", "largest_conductor": "14"}]}
        },
        "box_depths": {"enclosure": {"internal_depth": 3.4, "volume": 18}, "equipment": [{"id": "B", "projection": 1, "largest_supply_conductor": "14 AWG"}]},
        "box_construction": {"enclosure": {"material": "sheet_steel"}},
        "box_mounting": {"enclosure": {"material": "metal", "shape": "flat_sided", "single_gang_in_wall_or_ceiling": true}}
    }});
    reviewed(request).await;
    // what the structure carries, the box neither holds nor contains
    let request = json!({"checks": {
        "box_supports": {"enclosure": {"kind": "box", "devices_or_luminaires": false}, "means": [{"kind": "surface", "rigid": true}]},
        "luminaire_and_fan_outlets": {"load": {"kind": "luminaire", "position": "ceiling", "weight": 60, "carried_by_structure": true}, "box": {}}
    }});
    reviewed(request).await;
}

#[tokio::test]
async fn a_part_without_a_verdict_keeps_the_whole_from_complying() {
    let fits = json!({"raceway": {"kind": "EMT", "trade_size": "1"}, "conductors": [{"insulation": "THHN", "size": "12 AWG", "count": 9}]});
    let whole = async |checks: Value| reviewed(json!({"checks": checks})).await["verdict"].clone();
    assert_eq!(whole(json!({"raceway_fill": fits})).await, "complies");
    let sized = json!({"contents": {"conductors": [{"size": "12 AWG", "role": "spliced", "count": 9}]}});
    assert_eq!(whole(json!({"raceway_fill": fits, "outlet_box_fill": sized})).await, "not_determined");
    assert_eq!(whole(json!({"outlet_box_fill": sized})).await, Value::Null);
}

#[tokio::test]
async fn a_review_does_not_ask_for_a_check_that_is_in_it() {
    let fill = json!({"enclosure": {"marked_volume": 400}, "contents": {"conductors": [{"size": "4/0 AWG", "role": "passes_through", "count": 3}, {"size": "12 AWG", "role": "spliced", "count": 2}]}});
    let pull = |size: &str| {
        json!({
            "entries": [{"id": "a", "wall": "left", "raceway": {"trade_size": "2"}}, {"id": "b", "wall": "right", "raceway": {"trade_size": "2"}}],
            "pulls": [{"entries": ["a", "b"], "largest_conductor": size, "insulated": true}]
        })
    };
    let asks = async |checks: Value| {
        let review = reviewed(json!({"checks": checks})).await;
        review["unknown"]
            .as_array()
            .unwrap()
            .iter()
            .any(|unknown| unknown["check"] == "outlet_box_fill" && unknown["rule"] == "pull.applies")
    };
    assert!(asks(json!({"outlet_box_fill": fill})).await);
    assert!(!asks(json!({"outlet_box_fill": fill, "pull_box_size": pull("4/0 AWG")})).await);
    // a check that knows none of the large conductors does not judge them
    assert!(asks(json!({"outlet_box_fill": fill, "pull_box_size": pull("12 AWG")})).await);
}

/// Members are left out of a review one by one: what does not comply never complies for it.
#[tokio::test]
async fn silence_never_buys_a_review_approval() {
    let requests = said_twice()
        .into_iter()
        .step_by(3)
        .map(|(request, ..)| request)
        .chain([short_box_and_open_raceway()]);
    for request in requests {
        for at in members(&request["checks"], "/checks") {
            let mut less = request.clone();
            let (parent, name) = at.rsplit_once('/').unwrap();
            less.pointer_mut(parent).unwrap().as_object_mut().unwrap().remove(name);
            let reply = post("/v1/boxes/review", less.to_string()).await;
            if reply.status != 200 {
                continue;
            }
            let review = reply.json();
            let all_comply =
                review["verdicts"].as_array().unwrap().iter().all(|made| made["verdict"] == "complies");
            assert_eq!(review["verdict"] == "complies", all_comply, "{less}");
        }
    }
}

/// The places of every member below a value.
fn members(value: &Value, at: &str) -> Vec<String> {
    match value {
        Value::Object(object) => object
            .iter()
            .flat_map(|(name, below)| {
                let at = format!("{at}/{name}");
                [vec![at.clone()], members(below, &at)].concat()
            })
            .collect(),
        Value::Array(list) => list
            .iter()
            .enumerate()
            .flat_map(|(index, below)| members(below, &format!("{at}/{index}")))
            .collect(),
        _ => Vec::new(),
    }
}
