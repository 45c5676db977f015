//! In which language a caller is told: chosen by Accept-Language, never an error, the same figures in each.

use crate::process::run;
use crate::support::{FILL, Reply, ask, good, send, the_app};
use crate::takeoffs::TAKEOFFS;
use axum::body::Body;
use axum::http::{HeaderValue, Method, Request};
use elbowroom::i18n::{Catalogue, Language};
use elbowroom::rulebook::reading::Point;
use elbowroom::service::{Limits, Service, app, openapi};
use futures_util::{StreamExt, stream};
use serde_json::{Value, json};
use std::collections::BTreeSet;
use std::convert::Infallible;
use std::sync::Arc;
use std::time::Duration;

const JSON: (&str, &str) = ("content-type", "application/json");

const SPANISH: (&str, &str) = ("accept-language", "es-MX,es;q=0.9,en;q=0.5");

async fn in_spanish(method: Method, target: &str, body: impl Into<Body>) -> Reply {
    ask(method, target, &[JSON, SPANISH], body).await
}

/// Asserts that a reply says in which language it is, and that it depends on what was asked for.
fn assert_told_in(reply: &Reply, language: &str, what: &str) {
    assert_eq!(
        (reply.header("content-language"), reply.header("vary")),
        (language, "accept-language"),
        "{what}"
    );
}

#[tokio::test]
async fn the_header_chooses_and_what_it_cannot_choose_is_english() {
    let enough = |reply: &Reply| {
        let answer = reply.json();
        let findings = answer["findings"].as_array().unwrap().clone();
        let found = findings.into_iter().find(|finding| finding["rule"] == "outlet-volume.scope").unwrap();
        found["message"].as_str().unwrap().to_owned()
    };
    for (asked, language, begins) in [
        (&b"es"[..], "es", "El contenido requiere"),
        (b"es-US", "es", "El contenido requiere"),
        (b"fr;q=0.9, es;q=0.2, en;q=0.1", "es", "El contenido requiere"),
        (b"en;q=0, *", "es", "El contenido requiere"),
        (b"en-US", "en", "The contents require"),
        (b"es;q=0.4, en;q=0.5", "en", "The contents require"),
        (b"*", "en", "The contents require"),
        (b"fr", "en", "The contents require"),
        (b"", "en", "The contents require"),
        (b"es;q=", "es", "El contenido requiere"),
        (b";;,,q=1", "en", "The contents require"),
        (b"\xff\xfe", "en", "The contents require"),
    ] {
        let told = String::from_utf8_lossy(asked);
        let request = Request::post(FILL)
            .header(JSON.0, JSON.1)
            .header("accept-language", HeaderValue::from_bytes(asked).unwrap())
            .body(Body::from(good().to_string()))
            .unwrap();
        let reply = send(the_app(), request).await;
        assert_eq!(reply.status, 200, "{told}");
        assert_told_in(&reply, language, &told);
        assert!(enough(&reply).starts_with(begins), "{told}: {}", enough(&reply));
    }
    let silent = ask(Method::POST, FILL, &[JSON], good().to_string()).await;
    assert_told_in(&silent, "en", "no header");
}

#[tokio::test]
async fn every_problem_is_told_in_the_language_with_the_same_type_and_codes() {
    let wrong = json!({"enclosure": {"standard": "square-4x2"}, "contents": {"devises": [], "cables": null}});
    let cases = [
        (Method::POST, FILL, wrong.to_string()),
        (Method::POST, FILL, "{".to_owned()),
        (Method::POST, "/v1/outlet-boxes/fill?explain=all", good().to_string()),
        (Method::POST, "/v1/boxes/review", json!({"checks": {"outlet_box_fill": wrong}}).to_string()),
        (Method::GET, "/v1/rules/nothing", String::new()),
        (Method::GET, "/nothing", String::new()),
        (Method::DELETE, "/v1/rules", String::new()),
    ];
    for (method, target, body) in cases {
        let spanish = in_spanish(method.clone(), target, body.clone()).await;
        let english = ask(method, target, &[JSON], body).await;
        assert_eq!(spanish.header("content-type"), "application/problem+json", "{target}");
        assert_told_in(&spanish, "es", target);
        assert_told_in(&english, "en", target);
        let [spanish, english] = [spanish.json(), english.json()];
        for member in ["type", "status", "nearest", "accepted", "more_errors"] {
            assert_eq!(spanish.get(member), english.get(member), "{target} {member}");
        }
        for member in ["title", "detail"] {
            assert_ne!(spanish[member], english[member], "{target} {member}");
        }
        let faults = |problem: &Value| problem["errors"].as_array().cloned().unwrap_or_default();
        assert_eq!(faults(&spanish).len(), faults(&english).len(), "{target}");
        for (spanish, english) in faults(&spanish).iter().zip(faults(&english)) {
            for member in ["pointer", "parameter", "code", "accepted", "nearest"] {
                assert_eq!(spanish.get(member), english.get(member), "{target} {member}");
            }
            assert_ne!(spanish["detail"], english["detail"], "{target}");
        }
    }
    let told = in_spanish(Method::POST, FILL, "[]").await.json();
    assert_eq!(told["errors"][0]["detail"], "Aquí se espera: un objeto. Se dio: una lista.");
}

#[tokio::test]
async fn documents_that_hold_words_have_a_tag_for_each_language_and_the_others_one_for_all() {
    for target in
        ["/v1/editions", "/v1/rules", "/v1/rules/outlet-fill.sum", "/v1/interpretations", "/v1/problems"]
    {
        let english = ask(Method::GET, target, &[], Body::empty()).await;
        let spanish = in_spanish(Method::GET, target, Body::empty()).await;
        assert_told_in(&english, "en", target);
        assert_told_in(&spanish, "es", target);
        assert_ne!(english.header("etag"), spanish.header("etag"), "{target}");
        assert_ne!(english.json(), spanish.json(), "{target}");
        let known = |tag: &str| ("if-none-match".to_owned(), tag.to_owned());
        for (tag, status) in [(known(spanish.header("etag")), 304), (known(english.header("etag")), 200)] {
            let again = ask(Method::GET, target, &[SPANISH, (&tag.0, &tag.1)], Body::empty()).await;
            assert_eq!(again.status, status, "{target}");
            assert_told_in(&again, "es", target);
        }
    }
    for target in ["/v1/tables", "/v1/tables/conductor-volume", "/v1/amendments", "/openapi.json"] {
        let english = ask(Method::GET, target, &[], Body::empty()).await;
        let spanish = in_spanish(Method::GET, target, Body::empty()).await;
        assert_eq!(english.header("etag"), spanish.header("etag"), "{target}");
        assert_eq!((spanish.header("vary"), spanish.header("content-language")), ("", ""), "{target}");
    }
}

#[tokio::test]
async fn a_review_and_a_comparison_are_told_in_the_language() {
    let review = json!({"checks": {"outlet_box_fill": good()}}).to_string();
    let spanish = in_spanish(Method::POST, "/v1/boxes/review", review.clone()).await;
    assert_told_in(&spanish, "es", "review");
    let spanish = spanish.json();
    let english = ask(Method::POST, "/v1/boxes/review", &[JSON], review).await.json();
    assert_eq!((&spanish["verdict"], &spanish["ruleset"]), (&english["verdict"], &english["ruleset"]));
    for member in ["findings", "cautions", "not_looked_at"] {
        let [spanish, english] = [&spanish, &english].map(|review| review[member].as_array().unwrap());
        assert_eq!(spanish.len(), english.len(), "{member}");
        assert!(spanish.iter().zip(english).all(|(spanish, english)| spanish != english), "{member}");
    }
    let compared =
        json!({"check": "outlet_box_fill", "editions": ["2017", "2023"], "request": good()}).to_string();
    let spanish = in_spanish(Method::POST, "/v1/editions/compare", compared.clone()).await;
    assert_told_in(&spanish, "es", "comparison");
    let english = ask(Method::POST, "/v1/editions/compare", &[JSON], compared).await;
    // it names rules and figures and holds no sentence
    assert_eq!(spanish.body, english.body);
}

/// The answers go on in tasks and threads of their own, and when the request itself is answered.
#[tokio::test]
async fn every_record_of_a_takeoff_is_told_in_the_language() {
    let line = json!({"check": "outlet_box_fill", "request": good()}).to_string();
    let many = format!("{line}\n{{\"check\": \"outlet_box_fill\"}}\n").repeat(300);
    for accept in ["application/x-ndjson", "application/json", "text/csv"] {
        let headers = [("content-type", "application/x-ndjson"), ("accept", accept), SPANISH];
        let reply = ask(Method::POST, TAKEOFFS, &headers, many.clone()).await;
        assert_told_in(&reply, "es", accept);
        let text = String::from_utf8(reply.body).unwrap();
        let count = |sentence: &str| text.matches(sentence).count();
        assert_eq!(count("El contenido requiere"), if accept == "text/csv" { 0 } else { 300 }, "{accept}");
        assert_eq!(count("Debe indicarse request."), 300, "{accept}");
        for english in ["The contents require", "must be given", "The request is not valid"] {
            assert_eq!(count(english), 0, "{accept}: {english}");
        }
    }
    let headers = [("content-type", "text/csv"), ("accept", "application/x-ndjson"), SPANISH];
    let reply = ask(Method::POST, TAKEOFFS, &headers, "box,cables\n4x1-1/2,2 x 12-2 NM-B w/g\n").await;
    let text = String::from_utf8(reply.body).unwrap();
    assert!(text.contains("se puede leer de más de una manera"), "{text}");
}

#[tokio::test]
async fn a_takeoff_that_breaks_off_is_told_so_in_the_language_at_its_end() {
    let line = format!("{}\n", json!({"check": "outlet_box_fill", "request": good()}));
    let begun = stream::iter([Ok::<_, Infallible>(line)]).chain(stream::pending());
    let limits = Limits { body_timeout: Duration::from_millis(200), ..Limits::default() };
    let service = Arc::new(Service::start(limits).unwrap());
    let request = Request::post(TAKEOFFS)
        .header("content-type", "application/x-ndjson")
        .header(SPANISH.0, SPANISH.1)
        .body(Body::from_stream(begun))
        .unwrap();
    let reply = send(app(service), request).await;
    let text = String::from_utf8(reply.body).unwrap();
    let records: Vec<Value> = text.lines().map(|line| serde_json::from_str(line).unwrap()).collect();
    assert_eq!(records.len(), 3, "{text}");
    assert_eq!(records[1]["title"], "El cuerpo tardó demasiado en llegar");
    assert!(records[1]["detail"].as_str().unwrap().starts_with("No llegó ninguna línea completa"), "{text}");
}

#[test]
fn the_command_line_speaks_the_language_that_is_asked_for() {
    let text = |output: Vec<u8>| String::from_utf8(output).unwrap();
    let spanish = run(&["check", "--language", "es", "-"], &good().to_string());
    assert_eq!(spanish.status.code(), Some(0));
    let report = text(spanish.stdout);
    for told in
        ["Ocupación de cajas de salida", "Veredicto: CUMPLE", "Resultados", "Precauciones", "Desenergice"]
    {
        assert!(report.contains(told), "{told}: {report}");
    }
    let english = text(run(&["check", "-"], &good().to_string()).stdout);
    assert!(english.contains("Verdict: COMPLIES"), "{english}");
    let refused = run(&["check", "--language", "es", "-"], "{}");
    assert_eq!(refused.status.code(), Some(64));
    assert!(text(refused.stderr).contains("La solicitud no es válida"));
    let job = json!({"check": "outlet_box_fill", "request": good()}).to_string();
    let takeoff = text(run(&["takeoff", "--language", "es", "-"], &job).stdout);
    assert!(takeoff.contains("Líneas") && takeoff.contains("Lista de materiales"), "{takeoff}");
    assert_eq!(run(&["check", "--language", "fr", "-"], "{}").status.code(), Some(64));
}

/// Every name that a report shows has a label in each language but English, where it is its own; and no label is of a name
/// that there is not.
#[test]
fn every_name_of_an_answer_has_a_label_and_every_label_a_name() {
    /// What the summary of a takeoff shows beside the names of answers.
    const OF_TAKEOFFS: [&str; 18] = [
        "answered",
        "answers",
        "bill",
        "blank",
        "check",
        "checks",
        "complete",
        "count",
        "lines",
        "metal",
        "nonmetallic",
        "open",
        "needed",
        "place",
        "places",
        "refused",
        "rules_violated",
        "sized",
    ];
    /// What the report of an audit shows beside the names of answers.
    const OF_AUDITS: [&str; 11] = [
        "cases",
        "comparisons",
        "computed",
        "differences",
        "differing",
        "evaluations",
        "expected",
        "name",
        "pointer",
        "published",
        "source_held_wrong",
    ];
    /// Members whose values a report shows as labels; kinds of raceway are written alike everywhere.
    const LABELLED: [&str; 4] = ["what", "kind", "verdict", "status"];
    let document: Value = serde_json::from_str(openapi::text()).unwrap();
    let schemas = document["components"]["schemas"].as_object().unwrap();
    let mut names: BTreeSet<String> = OF_TAKEOFFS.into_iter().chain(OF_AUDITS).map(str::to_owned).collect();
    let mut waiting: Vec<&Value> = schemas
        .iter()
        .filter(|(name, _)| {
            name.ends_with("Answer") && !name.starts_with("Takeoff") && !name.starts_with("Review")
        })
        .map(|(_, schema)| schema)
        .collect();
    assert!(waiting.len() >= 11, "{}", waiting.len());
    let mut known: BTreeSet<&str> = BTreeSet::new();
    while let Some(schema) = waiting.pop() {
        match schema {
            Value::Object(members) => {
                if let Some(to) = members.get("$ref").and_then(Value::as_str)
                    && known.insert(to)
                {
                    waiting.extend(schemas.get(to.rsplit('/').next().unwrap()));
                }
                for (name, property) in
                    members.get("properties").and_then(Value::as_object).into_iter().flatten()
                {
                    names.insert(name.clone());
                    if LABELLED.contains(&name.as_str()) {
                        names.extend(values(property, schemas));
                    }
                }
                let described = |name: &str| ["example", "examples", "default"].contains(&name);
                waiting.extend(members.iter().filter(|(name, _)| !described(name)).map(|(_, value)| value));
            }
            Value::Array(items) => waiting.extend(items),
            _ => {}
        }
    }
    for point in Point::ALL {
        names.insert(point.name().to_owned());
        names.extend(point.readings().iter().map(|reading| (*reading).to_owned()));
    }
    names.retain(|name| !name.chars().any(|letter| letter.is_ascii_uppercase()));
    for language in Language::ALL.into_iter().filter(|language| *language != Language::English) {
        let words = Catalogue::of(language);
        let labels: BTreeSet<String> =
            words.keys().filter_map(|key| key.strip_prefix("label-")).map(str::to_owned).collect();
        let missing: Vec<&String> = names.difference(&labels).collect();
        let unused: Vec<&String> = labels.difference(&names).collect();
        assert!(
            missing.is_empty() && unused.is_empty(),
            "{language:?} lacks {missing:?} and does not use {unused:?}"
        );
    }
}

/// The texts that a schema admits.
fn values(schema: &Value, schemas: &serde_json::Map<String, Value>) -> Vec<String> {
    let mut found = Vec::new();
    if let Some(to) = schema["$ref"].as_str() {
        found.extend(
            schemas
                .get(to.rsplit('/').next().unwrap())
                .map(|schema| values(schema, schemas))
                .unwrap_or_default(),
        );
    }
    let closed = schema["enum"].as_array().into_iter().flatten().chain([&schema["const"]]);
    found.extend(closed.filter_map(Value::as_str).map(str::to_owned));
    for several in ["oneOf", "anyOf", "allOf"] {
        let alternatives = schema[several].as_array().into_iter().flatten();
        found.extend(alternatives.flat_map(|alternative| values(alternative, schemas)));
    }
    found
}
