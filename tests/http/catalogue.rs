//! `GET /v1/editions`, `/v1/tables`, `/v1/rules`, `/v1/interpretations`, `/v1/problems`.

use crate::support::{FILL, ask, get, good, post};
use axum::body::Body;
use axum::http::Method;
use elbowroom::rulebook::reading::Point;
use elbowroom::rulebook::{Edition, rules};
use serde_json::{Value, json};

const LISTS: [&str; 6] =
    ["/v1/editions", "/v1/tables", "/v1/rules", "/v1/interpretations", "/v1/amendments", "/v1/problems"];

#[tokio::test]
async fn every_document_is_tagged_and_answered_with_304_to_a_caller_who_has_it() {
    for target in
        LISTS.into_iter().chain(["/v1/tables/standard-boxes", "/v1/rules/outlet-fill.sum", "/openapi.json"])
    {
        let reply = get(target).await;
        assert_eq!(reply.status, 200, "{target}");
        assert_eq!(reply.header("content-type"), "application/json");
        assert!(reply.header("cache-control").contains("max-age"), "{target}");
        let tag = reply.header("etag").to_owned();
        assert!(tag.starts_with('"') && tag.len() == 66, "{tag}");
        for known in [tag.clone(), format!("W/{tag}"), format!("\"x\", {tag}"), "*".to_owned()] {
            let again = ask(Method::GET, target, &[("if-none-match", &known)], Body::empty()).await;
            assert_eq!(again.status, 304, "{target} {known}");
            assert_eq!(again.header("etag"), tag);
            assert!(again.body.is_empty());
        }
        let other = ask(Method::GET, target, &[("if-none-match", "\"other\"")], Body::empty()).await;
        assert_eq!(other.status, 200);
        let head = ask(Method::HEAD, target, &[], Body::empty()).await;
        assert_eq!((head.status.as_u16(), head.body.len()), (200, 0));
        assert_eq!(head.header("etag"), tag);
    }
}

#[tokio::test]
async fn the_editions_say_which_is_the_default_and_which_is_unverified() {
    let editions = get("/v1/editions").await.json();
    let editions = editions["editions"].as_array().unwrap();
    assert_eq!(editions.len(), Edition::ALL.len());
    let default: Vec<&Value> = editions.iter().filter(|edition| edition["is_default"] == true).collect();
    assert_eq!(default.len(), 1);
    assert_eq!(default[0]["edition"], "2023");
    let unverified = editions.iter().find(|edition| edition["edition"] == "2026").unwrap();
    assert_eq!(unverified["must_accept_unverified_rules"], true);
    assert_eq!(unverified["figures_of"], "2023");
}

#[tokio::test]
async fn a_table_has_exact_figures_with_where_they_come_from() {
    let table = get("/v1/tables/conductor-volume").await.json();
    let row = table["rows"].as_array().unwrap().iter().find(|row| row["key"] == "12 AWG").unwrap();
    assert_eq!(row["values"], json!({"volume_in3": 2.25, "volume_cm3": 36.9}));
    let basis =
        json!({"2017": "bracketed", "2020": "bracketed", "2023": "unofficial_copy", "2026": "unconfirmed"});
    assert_eq!(row["basis"], basis);
    assert!(
        row["evidence"]
            .as_array()
            .unwrap()
            .contains(&json!({"edition": "2011", "source": "cec-2013", "agrees": true}))
    );
    let sources = get("/v1/tables/sources").await.json();
    let known: Vec<&Value> = sources["rows"].as_array().unwrap().iter().map(|row| &row["key"]).collect();
    for list in ["conductor-volume", "standard-boxes"] {
        for row in get(&format!("/v1/tables/{list}")).await.json()["rows"].as_array().unwrap() {
            for source in row["sources"].as_array().unwrap() {
                assert!(known.contains(&source), "{source}");
            }
        }
    }
}

#[tokio::test]
async fn every_look_up_of_a_proof_stands_in_a_table_that_is_served() {
    let answer = post(FILL, good().to_string()).await.json();
    let mut looked_up = 0;
    for step in answer["derivation"]["steps"].as_array().unwrap() {
        let (Some(table), Some(row), Some(column)) =
            (step["table"].as_str(), step["row"].as_str(), step["column"].as_str())
        else {
            continue;
        };
        let served = get(&format!("/v1/tables/{table}")).await.json();
        let row = served["rows"].as_array().unwrap().iter().find(|known| known["key"] == row).unwrap();
        assert_eq!(row["values"][column].as_f64(), step["equals"].as_f64(), "{step}");
        looked_up += 1;
    }
    assert!(looked_up > 2);
}

#[tokio::test]
async fn every_listed_table_rule_and_problem_is_served() {
    for (list, member, name) in [("tables", "tables", "id"), ("rules", "rules", "id")] {
        for entry in get(&format!("/v1/{list}")).await.json()[member].as_array().unwrap() {
            let id = entry[name].as_str().unwrap();
            let reply = get(&format!("/v1/{list}/{id}")).await;
            assert_eq!((reply.status.as_u16(), &reply.json()["id"]), (200, &entry["id"]));
        }
    }
    assert_eq!(get("/v1/rules").await.json()["rules"].as_array().unwrap().len(), rules().count());
    for problem in get("/v1/problems").await.json()["problems"].as_array().unwrap() {
        assert_eq!(&get(problem["type"].as_str().unwrap()).await.json(), problem);
    }
}

#[tokio::test]
async fn a_rule_says_where_each_edition_has_it_and_what_it_states() {
    let rule = get("/v1/rules/outlet-fill.terminal-blocks").await.json();
    assert_eq!(rule["citations"]["2023"], "314.16(B)(6)");
    assert!(rule["citations"].get("2020").is_none());
    let stated: Vec<&Value> = rule["figures"].as_array().unwrap().iter().collect();
    assert_eq!(stated.len(), 1);
    assert!(stated[0]["editions"].get("2020").is_none());
    assert_eq!(stated[0]["editions"]["2023"]["us"], 1.0);
}

#[tokio::test]
async fn every_disputed_point_is_served_with_its_default_first() {
    let points = get("/v1/interpretations").await.json();
    let points = points["points"].as_array().unwrap();
    assert_eq!(points.len(), Point::ALL.len());
    for point in points {
        assert_eq!(point["default"], point["readings"][0]);
        assert!(point["question"].as_str().unwrap().contains(' '));
    }
}

#[tokio::test]
async fn every_figure_that_can_be_amended_is_served_with_its_bounds() {
    let figures = get("/v1/amendments").await.json();
    let figures = figures["figures"].as_array().unwrap();
    assert_eq!(figures.len(), elbowroom::rulebook::amendment::AMENDABLE.len());
    for figure in figures {
        assert!(figure["least"].as_f64() < figure["most_us"].as_f64(), "{figure}");
    }
}

#[tokio::test]
async fn a_name_that_is_not_known_is_answered_with_those_that_are() {
    let problem = get("/v1/tables/conductor-volumes").await.problem(404, "not-found");
    assert_eq!(problem["nearest"], "conductor-volume");
    assert!(problem["accepted"].as_array().unwrap().contains(&json!("rule-figures")));
    for strange in ["/v1/rules/%FF%00", "/v1/rules/..", "/v1/problems/%2e%2e%2f"] {
        get(strange).await.problem(404, "not-found");
    }
}

#[tokio::test]
async fn a_query_is_refused_where_there_is_none() {
    for target in LISTS {
        let problem = get(&format!("{target}?page=2")).await.problem(422, "invalid-request");
        assert_eq!(crate::support::faults(&problem), [("page".into(), "unknown-parameter".into())]);
    }
}
