//! Teaching over HTTP: the key comes apart, a wrong answer is explained, a sheet is whole and loads nothing.

use crate::support::{ask, faults, post};
use axum::http::Method;
use elbowroom::training::exercises::{Topic, VERSION};
use serde_json::{Value, json};

const EXERCISES: &str = "/v1/exercises";
const GRADE: &str = "/v1/answers/grade";
const WORKSHEETS: &str = "/v1/worksheets";

fn five_cables() -> Value {
    json!({"edition": "2023", "contents": {
        "cables": [{"kind": "NM-B", "size": "12 AWG", "conductors": 2, "grounding": "12 AWG", "count": 5}]
    }})
}

async fn graded(request: Value) -> Value {
    let reply = post(GRADE, request.to_string()).await;
    assert_eq!(reply.status, 200, "{}", reply.json());
    reply.json()
}

#[tokio::test]
async fn the_same_seed_gives_the_same_bytes_and_the_key_comes_apart() {
    for topic in Topic::ALL {
        let request = json!({"topic": topic, "seed": 11, "count": 3, "difficulty": "advanced"}).to_string();
        let bare = post(EXERCISES, request.clone()).await;
        // 11.0 is the same whole number
        assert_eq!(bare.body, post(EXERCISES, request.replace(":11,", ":11.0,")).await.body);
        let keyed = post(&format!("{EXERCISES}?key=true"), request).await.json();
        let bare = bare.json();
        for (bare, keyed) in
            bare["exercises"].as_array().unwrap().iter().zip(keyed["exercises"].as_array().unwrap())
        {
            assert!(bare.get("key").is_none());
            let mut without = keyed.clone();
            without.as_object_mut().unwrap().remove("key").unwrap();
            assert_eq!(*bare, without);
        }
    }
}

#[tokio::test]
async fn every_choice_of_an_exercise_is_graded_as_its_key_says() {
    for topic in Topic::ALL {
        let asked = json!({"topic": topic, "seed": 5, "count": 2, "units": "si"});
        let set = post(&format!("{EXERCISES}?key=true"), asked.to_string()).await.json();
        for exercise in set["exercises"].as_array().unwrap() {
            for choice in exercise["choices"].as_array().unwrap() {
                let answer = json!({"value": choice["value"], "unit": choice["unit"]});
                let named = json!({"topic": topic, "seed": 5, "units": "si", "number": exercise["number"]});
                let by_seed = graded(json!({"exercise": named, "answer": answer})).await;
                let by_request = graded(json!({
                    "check": exercise["check"], "request": exercise["request"], "asks": exercise["asks"],
                    "answer": answer,
                }))
                .await;
                assert_eq!(by_seed, by_request);
                assert!(by_seed.get("key").is_none());
                assert_eq!(by_seed["right"], json!(choice["letter"] == exercise["key"]["letter"]));
                let wrong = exercise["key"]["wrong"].as_array().unwrap();
                if let Some(wrong) = wrong.iter().find(|wrong| wrong["letter"] == choice["letter"]) {
                    let reasons = by_seed["reasons"].as_array().unwrap();
                    let found = |reason: &&Value| reason["misconceptions"][0] == wrong["misconception"];
                    assert!(reasons.iter().find(found).is_some(), "{wrong} {reasons:?}");
                }
            }
        }
    }
}

#[tokio::test]
async fn a_figure_of_one_misconception_of_two_and_of_none_is_told_as_such() {
    let answer = |value: f64| json!({"check": "outlet_box_fill", "request": five_cables(), "answer": {"value": value, "unit": "in3"}});
    // ten conductors 22.5 and five grounding conductors 2.8125
    assert_eq!(graded(answer(25.3125)).await["right"], true);
    // each of the five counted whole: 22.5 + 11.25
    let each = graded(answer(33.75)).await;
    assert_eq!(each["reasons"][0]["kind"], "misconception");
    assert_eq!(each["reasons"][0]["misconceptions"][0]["id"], "grounding_each");
    assert_eq!(each["reasons"][0]["misconceptions"][0]["rules"][0]["citation"], "314.16(B)(5)");
    let nothing = graded(answer(26.1)).await;
    assert_eq!((nothing["right"].clone(), nothing["reasons"].clone()), (json!(false), json!([])));
    assert!(nothing["message"].as_str().unwrap().contains("Neither"));
    let mut with_device = answer(24.75);
    // 22.5 for the conductors, one allowance for the device, none for the grounding conductors
    with_device["request"]["contents"]["devices"] =
        json!([{"kind": "switch", "largest_conductor": "12 AWG"}]);
    let pair = graded(with_device).await;
    assert_eq!(pair["reasons"][0]["kind"], "pair", "{pair}");
    let ids: Vec<&Value> =
        pair["reasons"][0]["misconceptions"].as_array().unwrap().iter().map(|one| &one["id"]).collect();
    assert_eq!(ids, ["device_one_allowance", "grounding_left_out"]);
}

#[tokio::test]
async fn slips_are_told_apart_from_errors_about_rules() {
    for (value, unit, kind) in [
        (25.31, "in3", "rounding"),
        (26.0, "in3", "rounding"),
        (414.8, "cm3", "unit"),
        (25.3125, "cm3", "unit"),
        (52.3125, "in3", "arithmetic"),
    ] {
        let answer = json!({"value": value, "unit": unit});
        let found =
            graded(json!({"check": "outlet_box_fill", "request": five_cables(), "answer": answer})).await;
        let kinds: Vec<&Value> =
            found["reasons"].as_array().unwrap().iter().map(|reason| &reason["kind"]).collect();
        assert!(kinds.contains(&&json!(kind)), "{value} {unit}: {found}");
        assert_eq!(found["right"], false);
    }
}

#[tokio::test]
async fn a_tally_says_which_line_went_wrong() {
    let found = graded(json!({
        "check": "outlet_box_fill", "request": five_cables(),
        "answer": {"value": 33.0, "unit": "in3"},
        "tally": [
            {"what": "conductors", "allowances": 10, "volume": 22.5},
            {"what": "grounding", "volume": 11.25},
        ],
    }))
    .await;
    assert_eq!(found["lines"][0]["right"], true);
    assert_eq!(found["lines"][1]["reasons"][0]["misconceptions"][0]["id"], "grounding_each");
    let kinds: Vec<&Value> =
        found["reasons"].as_array().unwrap().iter().map(|reason| &reason["kind"]).collect();
    assert_eq!(kinds, ["arithmetic"], "the lines add up to 33.75: {found}");
    assert!(found["lines"][0].get("volume").is_none());
    let request = json!({
        "check": "outlet_box_fill", "request": five_cables(),
        "tally": [{"what": "conductors", "allowances": 10, "volume": 20}],
    });
    let keyed = post(&format!("{GRADE}?key=true"), request.to_string()).await.json();
    assert_eq!(keyed["lines"][0]["reasons"][0]["kind"], "arithmetic");
    assert_eq!(keyed["lines"][0]["volume"], 22.5);
    assert_eq!(
        (keyed["lines"][1]["given"].clone(), keyed["lines"][1]["right"].clone()),
        (json!(false), json!(false))
    );
    assert_eq!(keyed["key"]["value"], 25.3125);
    assert!(!keyed["key"]["solution"].as_array().unwrap().is_empty());
}

#[tokio::test]
async fn a_length_that_nobody_asks_is_explained_by_whoever_asks_it() {
    let request = json!({
        "entries": [
            {"id": "A", "wall": "left", "raceway": {"trade_size": "2"}},
            {"id": "B", "wall": "bottom", "raceway": {"trade_size": "2"}}
        ],
        "pulls": [{"entries": ["A", "B"], "largest_conductor": "6 AWG"}]
    });
    let answer = json!({"value": 12, "unit": "in"});
    let found =
        graded(json!({"check": "pull_box_size", "request": request, "asks": "width", "answer": answer}))
            .await;
    assert_eq!(found["right"], false);
    assert_eq!(found["reasons"][0]["misconceptions"][0]["id"], "lengths_from_6_awg");
}

#[tokio::test]
async fn what_cannot_be_graded_is_refused_with_what_is_wrong() {
    let number = json!({"value": 1, "unit": "in3"});
    let exercise = json!({"topic": "box_depths", "seed": 1, "number": 1});
    let early = json!({"topic": "box_depths", "edition": "2026", "seed": 1, "number": 1});
    let lines: Vec<Value> = vec![json!({"what": "devices", "allowances": 1}); 51];
    for (request, place, code) in [
        (json!({"answer": number}), "/exercise", "missing-member"),
        (json!({"exercise": exercise}), "/answer", "missing-member"),
        (json!({"exercise": early, "answer": number}), "/edition", "unverified-edition"),
        (json!({"check": "enclosure_types", "request": {}, "answer": number}), "/check", "unknown-reference"),
        (
            json!({"check": "outlet_box_fill", "request": five_cables(), "asks": "width", "answer": number}),
            "/asks",
            "unknown-reference",
        ),
        (
            json!({"exercise": exercise, "answer": number, "tally": [{"what": "devices"}]}),
            "/tally",
            "conflict",
        ),
        (
            json!({"check": "outlet_box_fill", "request": five_cables(), "tally": lines}),
            "/tally",
            "too-many-items",
        ),
        (json!({"check": "pull_box_size", "request": {}}), "/request/entries", "missing-member"),
        (json!({"check": "load_calculation", "request": {}}), "/check", "unknown-value"),
    ] {
        let problem = post(GRADE, request.to_string()).await.problem(422, "invalid-request");
        let (found, told) = &faults(&problem)[0];
        // a name outside a closed set is refused as one, by the schema or by whoever looks for it
        let alike = told == code || code == "unknown-reference" && told == "unknown-value";
        assert!(found == place && alike, "{request}: {found} {told}");
    }
    for (request, code) in [
        (json!({"topic": "box_depths", "seed": -1}), "out-of-bounds"),
        (json!({"topic": "box_depths", "seed": 9_007_199_254_740_992_u64}), "out-of-bounds"),
        (json!({"topic": "box_depths", "seed": 1, "count": 51}), "out-of-bounds"),
        (json!({"topic": "box_depths", "seed": 1, "version": VERSION + 1}), "out-of-bounds"),
        (json!({"topic": "load_calculation", "seed": 1}), "unknown-value"),
        (json!({"topic": "box_depths", "seed": 1, "edition": "2026"}), "unverified-edition"),
    ] {
        for path in [EXERCISES, WORKSHEETS] {
            let reply =
                ask(Method::POST, path, &[("content-type", "application/json")], request.to_string()).await;
            let problem = reply.problem(422, "invalid-request");
            assert_eq!(faults(&problem)[0].1, code, "{request}");
        }
    }
    let wrong =
        post(&format!("{EXERCISES}?key=maybe"), json!({"topic": "box_depths", "seed": 1}).to_string()).await;
    assert_eq!(wrong.problem(422, "invalid-request")["errors"][0]["code"], "unknown-value");
}

async fn sheet(target: &str, request: Value, language: &str) -> String {
    let headers = [("content-type", "application/json"), ("accept-language", language)];
    let reply = ask(Method::POST, target, &headers, request.to_string()).await;
    assert_eq!(reply.status, 200);
    assert_eq!(reply.header("content-type"), "text/html; charset=utf-8");
    let policy = reply.header("content-security-policy");
    assert!(
        policy.starts_with("default-src 'none'; style-src 'sha256-") && !policy.contains("unsafe"),
        "{policy}"
    );
    String::from_utf8(reply.body).unwrap()
}

#[tokio::test]
async fn a_sheet_is_numbered_and_its_key_is_on_a_page_of_its_own_or_nowhere() {
    let request = json!({"topic": "outlet_box_fill", "seed": 3, "count": 4, "title": "<b>Test & \"1\"</b>"});
    let bare = sheet(WORKSHEETS, request.clone(), "en").await;
    assert!(bare.starts_with("<!DOCTYPE html><html lang=\"en\">"));
    assert_eq!(bare.matches("class=\"question\"").count(), 4);
    assert_eq!(bare.matches("class=\"working\"").count(), 4);
    assert!(bare.contains("&lt;b&gt;Test &amp; &quot;1&quot;&lt;/b&gt;") && !bare.contains("<b>Test"));
    assert!(!bare.contains("class=\"key\"") && !bare.contains("class=\"right\""));
    let keyed = sheet(&format!("{WORKSHEETS}?key=true"), request, "en").await;
    assert_eq!(keyed.matches("class=\"right\"").count(), 4);
    assert_eq!(keyed.matches("<section class=\"key\">").count(), 1);
    for loads in ["<script", "http://", "https://", "src=", "url(", "@import", "style=\""] {
        assert!(!keyed.contains(loads), "{loads}");
    }
}

#[tokio::test]
async fn a_sheet_is_in_the_language_that_it_is_asked_in() {
    let request = json!({"topic": "pull_angle", "seed": 3, "count": 2});
    let spanish = sheet(&format!("{WORKSHEETS}?key=true"), request.clone(), "es-MX").await;
    assert!(spanish.contains("<html lang=\"es\">") && spanish.contains("Clave de respuestas"));
    assert!(!spanish.contains("Answer key") && !spanish.contains("Raceway"), "{spanish}");
    let mut english = request;
    english["language"] = json!("en");
    let english = sheet(WORKSHEETS, english, "es-MX").await;
    assert!(english.contains("<html lang=\"en\">") && english.contains("Name"));
    let headers = [("content-type", "application/json"), ("accept", "application/json")];
    let body = json!({"topic": "pull_angle", "seed": 3}).to_string();
    ask(Method::POST, WORKSHEETS, &headers, body).await.problem(406, "not-acceptable");
}
