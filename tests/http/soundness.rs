//! The laws of soundness over what is made of several requests: reviews of one box, lines of a takeoff, rows of a table.

use crate::corpus::{self, Asked, Schemas, kind_of, mutated, without};
use crate::support::{Reply, ask, post};
use axum::http::Method;
use elbowroom::rng::Rng;
use elbowroom::takeoff::table::{Column, Role};
use serde_json::{Map, Value, json};
use std::collections::BTreeMap;

/// How many reviews are put together.
const REVIEWS: usize = 150;
/// How many members are left out of each at the most.
const DROPS: usize = 8;

/// Requests of the 2023 edition in inches, each with what it comes to alone: parts of reviews and lines of takeoffs.
fn parts(schemas: &Schemas) -> Vec<Asked> {
    let mut all = corpus::whole();
    all.extend(mutated(schemas, &all, 23).into_iter().step_by(2));
    all.retain(|asked| {
        let said = |member: &str| &asked.request[member];
        said("edition") == "2023" && said("units") != "si" && said("amendments").is_null()
    });
    all
}

/// A review of the requests of several checks, each about the same box; the parts keep what is not said by the review.
fn review_of(parts: &[&Asked]) -> Value {
    let mut checks = Map::new();
    for Asked { check, request, .. } in parts {
        let mut part = request.as_object().expect("a request").clone();
        for term in ["edition", "units", "accept_unverified_rules", "reference"] {
            part.remove(term);
        }
        checks.insert(check.clone(), part.into());
    }
    json!({"edition": "2023", "checks": checks})
}

async fn reviewed(request: &Value) -> Option<Value> {
    let reply = post("/v1/boxes/review", request.to_string()).await;
    (reply.status == 200).then(|| reply.json())
}

/// The places of the properties and reliefs of every part of a review.
fn droppable(schemas: &Schemas, review: &Value) -> Vec<String> {
    let parts = review["checks"].as_object().expect("parts");
    let of_part = |(check, part): (&String, &Value)| {
        let below = |at: String| format!("/checks/{check}{at}");
        schemas.droppable(check, part).into_iter().map(below).collect::<Vec<_>>()
    };
    parts.iter().flat_map(of_part).collect()
}

#[tokio::test]
async fn silence_never_buys_a_review_approval() {
    let schemas = Schemas::published();
    let parts = parts(&schemas);
    let mut rng = Rng::new(14);
    let mut reviews: Vec<Value> =
        corpus::examples_of("box_review").into_iter().map(|(_, request)| request).collect();
    assert!(!reviews.is_empty());
    while reviews.len() < REVIEWS {
        let mut chosen: Vec<&Asked> = Vec::new();
        for _ in 0..rng.from(2, 4) {
            let part = &parts[rng.below(parts.len() as u32) as usize];
            if chosen.iter().all(|known| known.check != part.check) {
                chosen.push(part);
            }
        }
        reviews.push(review_of(&chosen));
    }
    let (mut answered, mut drops, mut bought) = (0, 0, BTreeMap::new());
    for request in reviews {
        let Some(review) = reviewed(&request).await else { continue };
        answered += 1;
        assert_eq!(review["verdict"], gravest(&review), "{request}");
        if review["verdict"] == "complies" {
            continue;
        }
        let mut places = droppable(&schemas, &request);
        rng.shuffle(&mut places);
        for at in places.iter().take(DROPS) {
            let less = without(&request, at);
            let Some(review) = reviewed(&less).await else { continue };
            drops += 1;
            if review["verdict"] == "complies" {
                bought.entry(kind_of(at)).or_insert(request.clone());
            }
        }
    }
    println!("{drops} members left out of {answered} reviews that were answered");
    assert!(answered > REVIEWS / 3 && drops > 200, "{answered}, {drops}");
    assert!(bought.is_empty(), "approval bought by silence: {bought:#?}");
}

/// The gravest verdict of the parts of a review. A part that was only asked for a size keeps the whole from complying.
fn gravest(review: &Value) -> Value {
    let verdicts: Vec<&Value> =
        review["verdicts"].as_array().expect("verdicts").iter().map(|made| &made["verdict"]).collect();
    if verdicts.iter().all(|verdict| verdict.is_null()) {
        return Value::Null;
    }
    let is = |name: &str| verdicts.iter().any(|verdict| **verdict == name);
    let open = is("not_determined") || verdicts.iter().any(|verdict| verdict.is_null());
    if is("violates") {
        "violates".into()
    } else if open {
        "not_determined".into()
    } else {
        "complies".into()
    }
}

async fn takeoff(sent: &str, body: String) -> Vec<Value> {
    let headers = [("content-type", sent), ("accept", "application/x-ndjson")];
    let reply: Reply = ask(Method::POST, "/v1/takeoffs?explain=none", &headers, body).await;
    assert_eq!(reply.status, 200);
    let text = std::str::from_utf8(&reply.body).expect("text");
    text.lines().map(|line| serde_json::from_str(line).expect("a record")).collect()
}

#[tokio::test]
async fn a_line_of_a_takeoff_comes_to_what_its_check_comes_to() {
    let parts = parts(&Schemas::published());
    let line = |asked: &Asked| json!({"check": asked.check, "request": asked.request}).to_string();
    let lines: Vec<String> = parts.iter().map(line).collect();
    let records = takeoff("application/x-ndjson", lines.join("\n")).await;
    assert_eq!(records.len(), parts.len() + 1);
    let paths: BTreeMap<&str, &str> =
        elbowroom::of_each_check!(C => (<C as elbowroom::checks::Check>::NAME, <C as elbowroom::checks::Check>::PATH)).into();
    for (asked, record) in parts.iter().zip(&records).step_by(29) {
        let path = format!("{}?explain=none", paths[asked.check.as_str()]);
        let alone = post(&path, asked.request.to_string()).await.json();
        assert_eq!(record.get("verdict"), alone.get("verdict"), "{}", asked.name);
        assert_eq!(record.get("account"), alone.get("account"), "{}", asked.name);
    }
    println!("{} lines", parts.len());
}

/// The columns of the tables of these tests, each with what may stand in it.
const CELLS: [(&str, &[&str]); 16] = [
    ("box", &["", "square-4x2-1/8", "device-3x2x2", "device-3x2x3-1/2", "octagonal-4x1-1/2"]),
    ("gangs", &["", "", "1", "2"]),
    ("marked_volume", &["", "", "18 in3", "12.5"]),
    ("material", &["", "metal", "plastic"]),
    ("ring_volume", &["", "", "3.3"]),
    ("cables", &["", "2 x 12-2 NM-B w/g", "3 x 14-2 MC w/g", "12-3 UF w/12g"]),
    ("grounds", &["", "", "2 x 12"]),
    ("devices", &["", "receptacle 12", "2 x switch 14", "switch"]),
    ("clamps", &["", "yes", "no", "2"]),
    ("fittings", &["", "", "stud"]),
    ("raceway", &["", "EMT", "FMC", "PVC-40"]),
    ("trade_size", &["", "1/2", "3/4", "3/8"]),
    ("length", &["", "", "18 in", "30"]),
    ("nipple", &["", "", "yes", "no"]),
    ("insulation", &["", "THHN", "XHHW-2"]),
    ("conductors", &["", "", "9 x 12", "16 x 12", "4 x 10 spliced"]),
];

/// Whether an empty cell of a column says that something is not there, instead of leaving open what it is like.
fn is_of_things(column: &str) -> bool {
    Column::named(column).expect("a column").role() == Role::Thing
}

fn row(rng: &mut Rng) -> Vec<&'static str> {
    let of_box = rng.chance(50);
    let stands = |column: &str| match column {
        "box" | "gangs" | "marked_volume" | "material" | "ring_volume" | "cables" | "grounds" | "devices"
        | "clamps" | "fittings" => of_box,
        "raceway" | "trade_size" | "length" | "nipple" | "insulation" => !of_box,
        _ => true,
    };
    CELLS
        .iter()
        .map(
            |(column, cells)| if stands(column) { cells[rng.below(cells.len() as u32) as usize] } else { "" },
        )
        .collect()
}

/// A table whose rows are marked by their numbers.
fn table(rows: &[Vec<&str>]) -> String {
    let header = CELLS.map(|(column, _)| column).join(",");
    let lines = rows.iter().enumerate().map(|(number, row)| format!("{},r-{number}", row.join(",")));
    std::iter::once(format!("{header},reference")).chain(lines).collect::<Vec<_>>().join("\n")
}

/// The verdict of each row that was answered, by its number.
async fn verdicts(rows: &[Vec<&str>]) -> BTreeMap<usize, Option<String>> {
    let records = takeoff("text/csv", table(rows)).await;
    let answered = records.iter().filter(|record| record.get("verdict").is_some());
    answered
        .map(|record| {
            let mark = record["reference"].as_str().expect("the mark of a row");
            let number = mark.strip_prefix("r-").and_then(|number| number.parse().ok()).expect("a number");
            (number, record["verdict"].as_str().map(str::to_owned))
        })
        .collect()
}

#[tokio::test]
async fn silence_in_a_row_buys_no_approval() {
    let mut rng = Rng::new(8);
    let rows: Vec<Vec<&str>> = (0..1_500).map(|_| row(&mut rng)).collect();
    let (mut less, mut left_out, mut fail) = (Vec::new(), Vec::new(), 0);
    for (number, verdict) in verdicts(&rows).await {
        if verdict.is_none_or(|verdict| verdict == "complies") {
            continue;
        }
        fail += 1;
        for (place, (column, _)) in CELLS.iter().enumerate() {
            // a box that no cable enters has the clamps that are named
            let is_thing = is_of_things(column) || *column == "clamps" && rows[number][5].is_empty();
            if !rows[number][place].is_empty() && !is_thing {
                let mut shorter = rows[number].clone();
                shorter[place] = "";
                less.push(shorter);
                left_out.push((*column, &rows[number]));
            }
        }
    }
    let mut bought = BTreeMap::new();
    for (number, verdict) in verdicts(&less).await {
        if verdict.is_some_and(|verdict| verdict == "complies") {
            let (column, row) = left_out[number];
            bought.entry(column).or_insert(row);
        }
    }
    println!("{} cells left out of {fail} rows that do not comply", less.len());
    assert!(less.len() > 500, "{}", less.len());
    assert!(bought.is_empty(), "approval bought by silence: {bought:#?}");
}

/// A row that says of nothing what is there is neither approved nor counted as sized; one that says nothing at all is blank.
#[tokio::test]
async fn a_row_that_says_nothing_is_not_sized() {
    let rows = [
        "reference,check,box,cables,raceway,trade_size,conductors",
        ",,,,,,",
        " , ,,,,,",
        "hall-1,,,,,,",
        "hall-2,box,,,,,",
        "hall-3,raceway,,,,,",
        "hall-4,,square-4x2-1/8,,,,",
        "hall-5,,,,EMT,,",
        "hall-6,,,,EMT,3/4,",
        "hall-7,,,2 x 12-2 NM-B w/g,,,",
    ];
    let records = takeoff("text/csv", rows.join("\n")).await;
    let (summary, answers) = records.split_last().expect("a summary");
    // a raceway that nothing is said to be in is refused, with what to say
    let came = |answer: &Value| answer.get("verdict").cloned().unwrap_or_else(|| answer["status"].clone());
    let came: Vec<Value> = answers.iter().map(came).collect();
    let open = || json!("not_determined");
    assert_eq!(json!(came), json!([open(), open(), 422, open(), 422, 422, null]));
    let lines = &summary["summary"]["lines"];
    assert_eq!((&lines["blank"], &lines["answered"], &lines["refused"]), (&json!(2), &json!(4), &json!(3)));
    let boxes = &summary["summary"]["checks"][0]["verdicts"];
    assert_eq!((&boxes["sized"], &boxes["not_determined"]), (&json!(1), &json!(3)), "{summary}");
}
