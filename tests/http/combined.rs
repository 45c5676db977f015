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

#[tokio::test]
async fn the_gravest_verdict_decides_and_the_gravest_finding_comes_first() {
    let review = reviewed(short_box_and_open_raceway()).await;
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
    let request = short_box_and_open_raceway();
    let review = reviewed(request.clone()).await;
    let pointers: Vec<&str> = review["findings"]
        .as_array()
        .unwrap()
        .iter()
        .flat_map(|finding| finding["at"].as_array().unwrap())
        .map(|at| at.as_str().unwrap())
        .collect();
    assert!(!pointers.is_empty());
    for pointer in pointers {
        assert!(request.pointer(pointer).is_some(), "{pointer}");
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
    assert_eq!(faults(&problem), [("/checks/raceway_fill/units".to_owned(), "conflict".to_owned())]);
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
