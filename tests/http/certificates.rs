//! Certificates: issued, printed, altered in every way, and found out.

use super::access::TestFile;
use super::process::{self, Served};
use super::support::{Reply, ask, faults, get, post, send};
use axum::body::Body;
use axum::http::{Method, Request};
use elbowroom::service::certificate::{SigningKeys, canonical, sha256};
use elbowroom::service::openapi::examples::{ExampleSet, Outcome};
use elbowroom::service::register::CHECKS;
use elbowroom::service::{Limits, Service, app};
use proptest::prelude::*;
use proptest::test_runner::{Config, TestRunner};
use serde_json::{Map, Value, json};
use std::sync::Arc;

const CERTIFY: &str = "/v1/results/certify";
const VERIFY: &str = "/v1/results/verify";

/// The key of appendix A of RFC 8037, and its public half.
const PRIVATE: &str = include_str!("../data/signing-key.pem");
const PUBLIC: &str = include_str!("../data/signing-key.public.pem");
const KID: &str = "kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k";
const OTHER_PRIVATE: &str = include_str!("../data/other-signing-key.pem");

/// A service that signs and verifies with the keys of a file.
fn service_with(pem: &str) -> Arc<Service> {
    let keys = SigningKeys::read(pem.as_bytes()).unwrap();
    Arc::new(Service::start(Limits::default()).unwrap().with_signing_keys(keys))
}

async fn post_to(service: &Arc<Service>, target: &str, body: &Value) -> Reply {
    let request = Request::post(target).header("content-type", "application/json");
    send(app(Arc::clone(service)), request.body(Body::from(body.to_string())).unwrap()).await
}

/// The requests of every check that its examples answer.
fn requests() -> Vec<Value> {
    let examples = ExampleSet::embedded();
    let mut requests = Vec::new();
    for check in CHECKS {
        let before = requests.len();
        for example in examples.of(check.name) {
            if let (Some(request @ Value::Object(_)), Some(Outcome::Answer(Value::Object(_)))) =
                (&example.request, &example.outcome)
            {
                requests.push(json!({"check": check.name, "request": request}));
            }
        }
        assert!(requests.len() > before, "{} has no example", check.name);
    }
    requests
}

async fn certified(request: &Value) -> Value {
    let reply = post(CERTIFY, request.to_string()).await;
    assert_eq!(reply.status, 200, "{}", reply.json());
    reply.json()
}

async fn verified(certificate: &Value) -> Value {
    let reply = post(VERIFY, certificate.to_string()).await;
    assert_eq!(reply.status, 200, "{}", reply.json());
    reply.json()
}

/// The fingerprints made anew, as a forger would.
fn fingerprinted(mut certificate: Value) -> Value {
    let hash = |value: &Value| json!(sha256(&canonical(value).unwrap()));
    let whole: Map<String, Value> = ["check", "language", "request", "answer"]
        .map(|member| (member.to_owned(), certificate[member].clone()))
        .into_iter()
        .collect();
    certificate["fingerprint"] = json!({
        "request": hash(&certificate["request"]), "answer": hash(&certificate["answer"]),
        "whole": hash(&Value::Object(whole)),
    });
    certificate
}

/// A certificate that was cheap to make and has a little of everything.
async fn small() -> Value {
    certified(&json!({"check": "box_depths", "request": {
        "edition": "2023", "reference": "R-1", "enclosure": {"internal_depth": 1.125},
        "equipment": [{"id": "S1", "projection": 0.75, "largest_supply_conductor": "12 AWG", "rear_center_entry": false}],
    }}))
    .await
}

#[tokio::test]
async fn what_is_certified_is_reproduced_for_every_check_and_in_every_language() {
    for request in requests() {
        for language in ["en", "es"] {
            let headers = [("content-type", "application/json"), ("accept-language", language)];
            let reply = ask(Method::POST, CERTIFY, &headers, request.to_string()).await;
            let again = ask(Method::POST, CERTIFY, &headers, request.to_string()).await;
            assert_eq!(reply.body, again.body, "the same bytes each time");
            let certificate = reply.json();
            assert_eq!(
                (&certificate["language"], reply.header("content-language")),
                (&json!(language), language)
            );
            assert_eq!(certificate["request"], request["request"]);
            assert_eq!(fingerprinted(certificate.clone()), certificate);
            let check = CHECKS.iter().find(|check| request["check"] == check.name).unwrap();
            let alone = ask(Method::POST, check.path, &headers, request["request"].to_string()).await;
            assert_eq!(certificate["answer"], alone.json());
            assert!(certificate.get("signature").is_none());
            // whoever asks, and in whatever language
            let found = verified(&certificate).await;
            assert_eq!(found["finding"], "reproduced", "{found}");
            assert_eq!(found["differences"], json!([]));
            assert_eq!((&found["signature"]["finding"], found.get("today")), (&json!("none"), None));
        }
    }
}

#[tokio::test]
async fn the_order_of_members_and_the_way_of_writing_numbers_change_nothing() {
    let certificate = small().await;
    let text = String::from_utf8(canonical(&certificate).unwrap()).unwrap();
    assert!(text.contains("\"projection\":0.75") && !text.contains(".0,"));
    let spread = serde_json::to_string_pretty(&certificate).unwrap();
    for text in [text.clone(), text.replace("\"projection\":0.75", "\"projection\":7.5e-1"), spread] {
        let reply = post(VERIFY, text).await;
        assert_eq!(reply.json()["finding"], "reproduced");
    }
}

/// The places of all scalars of a value.
fn scalars(value: &Value, at: &str, found: &mut Vec<String>) {
    let below = |segment: &str| format!("{at}/{}", segment.replace('~', "~0").replace('/', "~1"));
    match value {
        Value::Object(members) => {
            members.iter().for_each(|(member, value)| scalars(value, &below(member), found));
        }
        Value::Array(items) => {
            items
                .iter()
                .enumerate()
                .for_each(|(index, item)| scalars(item, &below(&index.to_string()), found));
        }
        _ => found.push(at.to_owned()),
    }
}

/// Another value of the same type.
fn bent(value: &Value, by: u32) -> Value {
    match value {
        Value::Bool(truth) => json!(!truth),
        Value::Number(number) => json!(number.as_f64().unwrap() + f64::from(by)),
        Value::String(text) => match text.strip_prefix("sha256:") {
            Some(digits) if digits.ends_with('0') => json!(format!("sha256:{}1", &digits[..63])),
            Some(digits) => json!(format!("sha256:{}0", &digits[..63])),
            None => json!(format!("{text}{by}")),
        },
        _ => json!(by),
    }
}

/// Whether what was found points at the part in which a place lies, and at the place itself where that can be told.
fn is_located(found: &Value, at: &str) -> bool {
    let listed = |list: &str| -> Vec<String> {
        let places = found[list].as_array().into_iter().flatten();
        places.filter_map(|place| place["at"].as_str().map(str::to_owned)).collect()
    };
    let part = at.split('/').nth(1).unwrap();
    let fits = |part: &str| found["fingerprint"][part] == true;
    match part {
        "request" => !fits("request") && fits("answer"),
        "answer" => {
            !fits("answer") && fits("request") && listed("differences").iter().any(|known| known == at)
        }
        "fingerprint" => listed("differences").iter().any(|known| known == at),
        // the check or the language
        _ => !fits("whole") && fits("request") && fits("answer"),
    }
}

#[test]
fn altering_any_scalar_of_a_certificate_is_found_and_located() {
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().unwrap();
    let certificates: Vec<Value> = runtime.block_on(async {
        let mut certificates = vec![small().await];
        for check in CHECKS {
            let request = requests().into_iter().find(|request| request["check"] == check.name).unwrap();
            certificates.push(certified(&request).await);
        }
        certificates
    });
    let places: Vec<Vec<String>> = certificates
        .iter()
        .map(|certificate| {
            let mut found = Vec::new();
            scalars(certificate, "", &mut found);
            found
        })
        .collect();
    let mut runner = TestRunner::new(Config { cases: 100, failure_persistence: None, ..Config::default() });
    let strategy = (any::<prop::sample::Index>(), any::<prop::sample::Index>(), 1_u32..1000);
    runner
        .run(&strategy, |(which, place, by)| {
            let which = which.index(certificates.len());
            let at = &places[which][place.index(places[which].len())];
            let mut certificate = certificates[which].clone();
            let value = certificate.pointer_mut(at).unwrap();
            *value = bent(value, by);
            let reply = runtime.block_on(post(VERIFY, certificate.to_string()));
            let found = reply.json();
            if reply.status == 422 {
                // names of closed sets: what is no certificate at all
                prop_assert!(["/check", "/language"].contains(&at.as_str()), "{at}: {found}");
                prop_assert_eq!(&found["errors"][0]["pointer"], at);
            } else {
                prop_assert_eq!(&found["finding"], "altered", "{}: {}", at, found);
                prop_assert!(is_located(&found, at), "{at}: {found}");
                // what is worked out from a few bytes stays small
                prop_assert!(reply.body.len() < 2 * certificate.to_string().len() + 100_000);
            }
            Ok(())
        })
        .unwrap();
}

#[tokio::test]
async fn another_check_or_language_of_the_same_certificate_is_found() {
    let mut certificate = small().await;
    certificate["language"] = json!("es");
    let found = verified(&certificate).await;
    assert_eq!(found["finding"], "altered");
    assert!(is_located(&found, "/language") && found["reasons"][0].as_str().unwrap().contains("language"));
    let mut certificate = small().await;
    certificate["check"] = json!("raceway_fill");
    let found = verified(&certificate).await;
    assert_eq!(found["finding"], "altered");
    assert!(is_located(&found, "/check"));
    assert!(found["faults"][0]["pointer"].as_str().unwrap().starts_with("/request"), "{found}");
}

/// Under our own rules there is nothing to gain by making the fingerprints anew.
#[tokio::test]
async fn fingerprints_made_anew_do_not_help_a_forger() {
    let mut request = small().await;
    request["request"]["enclosure"]["internal_depth"] = json!(2);
    let found = verified(&fingerprinted(request)).await;
    assert_eq!((&found["finding"], &found["fingerprint"]["whole"]), (&json!("altered"), &json!(true)));
    assert_eq!(
        found["differences"][0],
        json!({"at": "/answer/verdict", "certificate": "violates", "computed": "complies"})
    );
    assert_eq!(
        found["inputs"],
        json!([{"at": "/request/enclosure/internal_depth", "certificate": 1.125, "computed": 2.0}])
    );
    let mut answer = small().await;
    answer["answer"]["verdict"] = json!("complies");
    answer["answer"]["findings"][0]["status"] = json!("satisfied");
    let found = verified(&fingerprinted(answer)).await;
    assert_eq!(found["finding"], "altered");
    let places: Vec<&Value> =
        found["differences"].as_array().unwrap().iter().map(|found| &found["at"]).collect();
    assert_eq!(places, ["/answer/verdict", "/answer/findings/0/status"]);
    assert_eq!(found["inputs"], json!([]));
    let mut refused = small().await;
    refused["request"]["enclosure"] = json!({"internal_depth": -1, "deep": true});
    let found = verified(&fingerprinted(refused)).await;
    assert_eq!(found["finding"], "altered");
    let at: Vec<&Value> = found["faults"].as_array().unwrap().iter().map(|fault| &fault["pointer"]).collect();
    assert_eq!(at, ["/request/enclosure/internal_depth", "/request/enclosure/deep"]);
}

#[tokio::test]
async fn under_other_rules_todays_answer_and_the_differences_are_told() {
    let other = |mut certificate: Value| {
        certificate["answer"]["ruleset"]["check_digest"] = json!(format!("sha256:{}", "0".repeat(64)));
        certificate["answer"]["verdict"] = json!("complies");
        fingerprinted(certificate)
    };
    let certificate = small().await;
    let found = verified(&other(certificate.clone())).await;
    assert_eq!((&found["finding"], &found["reasons"]), (&json!("other_ruleset"), &json!([])));
    assert_eq!(found["today"]["verdict"], "violates");
    assert_eq!(found["today"]["answer"], certificate["answer"]);
    let places: Vec<&Value> =
        found["differences"].as_array().unwrap().iter().map(|found| &found["at"]).collect();
    assert_eq!(places, ["/answer/verdict", "/answer/ruleset/check_digest"]);
    assert!(found["signature"]["message"].as_str().unwrap().contains("cannot be told"));
    // the same rules in the words of another version
    let mut version = certificate.clone();
    version["answer"]["ruleset"]["version"] = json!("9.9.9");
    assert_eq!(verified(&fingerprinted(version)).await["finding"], "other_ruleset");
    // rules that this check cannot read have changed, and nothing that the answer rests on
    let mut elsewhere = certificate.clone();
    elsewhere["answer"]["ruleset"]["digest"] = json!(format!("sha256:{}", "0".repeat(64)));
    let found = verified(&fingerprinted(elsewhere.clone())).await;
    assert_eq!((&found["finding"], &found["differences"]), (&json!("reproduced"), &json!([])));
    assert_ne!(found["ruleset"]["certificate"]["digest"], found["ruleset"]["here"]["digest"]);
    elsewhere["answer"]["verdict"] = json!("complies");
    assert_eq!(verified(&fingerprinted(elsewhere)).await["finding"], "altered");
    // a request that is refused by now
    let mut refused = other(certificate);
    refused["request"]["equipment"][0]["projection"] = json!("deep");
    let found = verified(&fingerprinted(refused)).await;
    assert_eq!((&found["finding"], found.get("today")), (&json!("other_ruleset"), None));
    assert_eq!(found["faults"][0]["pointer"], "/request/equipment/0/projection");
    // whoever asks is told in their own language, faults too
    let headers = [("content-type", "application/json"), ("accept-language", "es")];
    let mut refused = small().await;
    refused["request"]["equipment"] = json!(1);
    let spanish = ask(Method::POST, VERIFY, &headers, refused.to_string()).await.json();
    assert!(spanish["message"].as_str().unwrap().starts_with("El certificado"), "{spanish}");
    assert!(spanish["faults"][0]["detail"].as_str().unwrap().contains("una lista"), "{spanish}");
}

#[tokio::test]
async fn signatures_are_judged_and_former_keys_still_verify() {
    let request = json!({"check": "box_depths", "request": small().await["request"]});
    let before = service_with(PRIVATE);
    let certificate = post_to(&before, CERTIFY, &request).await.json();
    assert_eq!(post_to(&before, CERTIFY, &request).await.json(), certificate);
    let judged = async |service: &Arc<Service>, certificate: &Value| {
        let found = post_to(service, VERIFY, certificate).await.json();
        let text = |value: &Value| value.as_str().unwrap().to_owned();
        (text(&found["finding"]), text(&found["signature"]["finding"]), found["signature"]["kid"].clone())
    };
    let is = |finding: &str, signature: &str, kid: Value| (finding.to_owned(), signature.to_owned(), kid);
    assert_eq!(judged(&before, &certificate).await, is("reproduced", "valid", json!(KID)));
    let after = service_with(&format!("{OTHER_PRIVATE}{PUBLIC}"));
    assert_eq!(judged(&after, &certificate).await, is("reproduced", "valid", json!(KID)));
    let stranger = service_with(OTHER_PRIVATE);
    assert_eq!(judged(&stranger, &certificate).await, is("reproduced", "unknown_key", json!(KID)));
    let mut unsigned = certificate.clone();
    unsigned.as_object_mut().unwrap().remove("signature");
    assert_eq!(judged(&before, &unsigned).await, is("reproduced", "none", Value::Null));
    // the content is right, the signature is not
    let mut tampered = certificate.clone();
    let signature = certificate["signature"].as_str().unwrap();
    let turned = if signature.ends_with('A') { "Q" } else { "A" };
    tampered["signature"] = json!(format!("{}{turned}", &signature[..signature.len() - 1]));
    assert_eq!(judged(&before, &tampered).await, is("altered", "invalid", Value::Null));
    let found = post_to(&before, VERIFY, &tampered).await.json();
    assert_eq!(found["differences"][0]["at"], "/signature");
    // the signature was made over other content: under other rules only it can tell
    let mut other = certificate.clone();
    other["answer"]["ruleset"]["version"] = json!("0.0.1");
    assert_eq!(judged(&before, &fingerprinted(other)).await, is("altered", "invalid", Value::Null));
    let keys = async |service: &Arc<Service>| {
        let request = Request::get("/v1/signing-keys").body(Body::empty()).unwrap();
        let set = send(app(Arc::clone(service)), request).await.json();
        set["keys"].as_array().unwrap().iter().map(|key| key["kid"].clone()).collect::<Vec<_>>()
    };
    assert_eq!(keys(&before).await, [KID]);
    assert_eq!((keys(&after).await.len(), &keys(&after).await[1]), (2, &json!(KID)));
    assert_eq!(get("/v1/signing-keys").await.json(), json!({"keys": []}));
}

#[test]
fn the_key_is_a_setting_and_a_fault_in_it_stops_the_start() {
    let file = TestFile::new("signing.pem", PRIVATE);
    let served = Served::start(&["--bind", "127.0.0.1:0", "--signing-key", file.path()]);
    let answer = served.ask("GET /v1/signing-keys HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n");
    assert!(answer.contains(KID), "{answer}");
    let wrong = TestFile::new("unsigned.pem", PUBLIC);
    let output = process::run(&["--bind", "127.0.0.1:0", "--signing-key", wrong.path()], "");
    let told = String::from_utf8(output.stderr).unwrap();
    assert_eq!(output.status.code(), Some(78), "{told}");
    assert!(told.contains("no PRIVATE KEY") && !told.contains("MCow"), "{told}");
}

#[tokio::test]
async fn what_is_no_certificate_is_refused_with_every_fault() {
    let refused = async |body: String| post(VERIFY, body).await.problem(422, "invalid-request");
    let codes = |problem: &Value| -> Vec<(String, String)> { faults(problem) };
    let fault = |at: &str, code: &str| (at.to_owned(), code.to_owned());
    let problem = refused("{}".to_owned()).await;
    let missing = ["check", "language", "request", "answer", "fingerprint"];
    assert_eq!(codes(&problem), missing.map(|member| fault(&format!("/{member}"), "missing-member")));
    let mut wrong = small().await;
    wrong["language"] = json!("fr");
    wrong["check"] = json!("box_depth");
    wrong["answer"]["ruleset"] = json!({"version": 1});
    wrong["fingerprint"]["whole"] = json!("sha256:0");
    wrong["signature"] = json!("x".repeat(601));
    wrong["seal"] = json!(null);
    let problem = refused(wrong.to_string()).await;
    for (at, code) in [
        ("/language", "unknown-value"),
        ("/check", "unknown-value"),
        ("/answer/ruleset/version", "wrong-type"),
        ("/answer/ruleset/digest", "missing-member"),
        ("/fingerprint/whole", "out-of-bounds"),
        ("/signature", "out-of-bounds"),
        ("/seal", "unknown-member"),
    ] {
        assert!(codes(&problem).contains(&fault(at, code)), "{at}: {problem}");
    }
    let text = small().await.to_string();
    let twice = text.replacen("\"verdict\":", "\"verdict\":\"complies\",\"verdict\":", 1);
    assert_eq!(codes(&refused(twice).await), [fault("/answer/verdict", "duplicate-member")]);
    let deep = text.replacen(
        "\"verdict\":",
        &format!("\"deep\":{}{},\"verdict\":", "[".repeat(40), "]".repeat(40)),
        1,
    );
    assert!(codes(&refused(deep).await)[0].0.starts_with("/answer/deep/0"));
    let huge = text.replacen("\"verdict\":", "\"huge\":1e999,\"verdict\":", 1);
    post(VERIFY, huge).await.problem(400, "malformed-json");
}

/// A body of the largest size, as unlike the answer as can be: what comes back is bounded, in size and in time.
#[tokio::test]
async fn a_large_certificate_of_nonsense_is_answered_shortly() {
    let mut certificate = small().await;
    certificate["answer"]["derivation"]["steps"] = json!(vec![json!({"a": 1}); 80_000]);
    certificate["answer"]["nonsense"] = json!("x".repeat(200_000));
    let text = certificate.to_string();
    assert!(text.len() > 800_000 && text.len() < 1024 * 1024, "{}", text.len());
    let reply = post(VERIFY, text).await;
    let found = reply.json();
    assert_eq!(found["finding"], "altered");
    assert_eq!(found["differences"].as_array().unwrap().len(), 50);
    assert!(found["more_differences"].as_u64().is_some_and(|more| more > 70_000), "{found}");
    assert!(reply.body.len() < 50_000, "{}", reply.body.len());
}

/// A certificate that nobody could have verified is not issued; any that is issued can be sent back.
#[tokio::test]
async fn a_certificate_is_no_larger_than_what_is_taken_to_verify_it() {
    let request = |equipment: usize| {
        let thing = |index: usize| json!({"id": format!("S{index}"), "projection": 0.75, "largest_supply_conductor": "12 AWG"});
        let equipment: Vec<Value> = (0..equipment).map(thing).collect();
        json!({"check": "box_depths", "request": {"enclosure": {"internal_depth": 1.125}, "equipment": equipment}})
    };
    let limits = Limits { max_body_size: 64 * 1024, ..Limits::default() };
    let service = Arc::new(Service::start(limits).unwrap());
    post_to(&service, CERTIFY, &request(200)).await.problem(413, "body-too-large");
    let certificate = post_to(&service, CERTIFY, &request(12)).await;
    assert_eq!(certificate.status, 200);
    assert_eq!(post_to(&service, VERIFY, &certificate.json()).await.json()["finding"], "reproduced");
}

#[tokio::test]
async fn faults_of_what_is_to_be_certified_are_told_below_the_request() {
    let body =
        json!({"check": "box_depths", "request": {"edition": "2026", "enclosure": {"internal_depth": 1}}});
    let problem = post(CERTIFY, body.to_string()).await.problem(422, "invalid-request");
    assert!(!faults(&problem).is_empty());
    assert!(faults(&problem).iter().all(|(at, _)| at.starts_with("/request/")), "{problem}");
    let problem = post(CERTIFY, json!({"check": "box", "request": {}}).to_string())
        .await
        .problem(422, "invalid-request");
    assert_eq!(faults(&problem)[0].0, "/check");
    let html = [("content-type", "application/json"), ("accept", "image/png")];
    ask(Method::POST, CERTIFY, &html, "{}").await.problem(406, "not-acceptable");
    post("/v1/results/certify?explain=none", "{}").await.problem(422, "invalid-request");
}

/// The elements of a page, in order, with their attributes; fails when one is not closed where it must be.
fn elements(page: &str) -> Vec<(String, String)> {
    const VOID: [&str; 1] = ["meta"];
    let (mut open, mut found): (Vec<String>, Vec<(String, String)>) = (Vec::new(), Vec::new());
    let mut rest = page.strip_prefix("<!DOCTYPE html>").unwrap();
    while let Some(at) = rest.find('<') {
        assert!(
            !rest[..at].contains('>') || open.last().is_some_and(|name| name == "style" || name == "script")
        );
        let end = rest[at..].find('>').unwrap() + at;
        let tag = &rest[at + 1..end];
        rest = &rest[end + 1..];
        if let Some(name) = tag.strip_prefix('/') {
            assert_eq!(open.pop().as_deref(), Some(name), "closed out of order");
            continue;
        }
        let (name, attributes) = tag.split_once([' ', '\n']).unwrap_or((tag, ""));
        let is_closed = attributes.ends_with('/') || name.ends_with('/') || VOID.contains(&name);
        found.push((name.trim_end_matches('/').to_owned(), attributes.to_owned()));
        if !is_closed {
            open.push(name.to_owned());
        }
    }
    assert!(open.is_empty(), "left open: {open:?}");
    found
}

#[tokio::test]
async fn the_page_is_well_formed_loads_nothing_and_holds_the_certificate() {
    let hostile = "</script><script>alert('1')</script> <!-- \"é\" & ñ";
    for mut request in requests() {
        request["request"]["reference"] = json!(hostile);
        let headers =
            [("content-type", "application/json"), ("accept", "text/html"), ("accept-language", "es")];
        let reply = ask(Method::POST, CERTIFY, &headers, request.to_string()).await;
        assert_eq!((reply.status.as_u16(), reply.header("content-type")), (200, "text/html; charset=utf-8"));
        assert_eq!(
            (reply.header("content-language"), reply.header("vary")),
            ("es", "accept, accept-language")
        );
        let policy = reply.header("content-security-policy").to_owned();
        assert!(policy.starts_with("default-src 'none'; style-src 'sha256-") && !policy.contains("unsafe"));
        let page = String::from_utf8(reply.body).unwrap();
        assert!(!page.contains("alert('1')</script>") && !page.contains("<script>"), "{page}");
        let elements = elements(&page);
        let count = |name: &str| elements.iter().filter(|(known, _)| known == name).count();
        assert_eq!((count("html"), count("h1"), count("script")), (1, 1, 1));
        for (name, attributes) in &elements {
            assert!(!["link", "img", "iframe", "object", "base", "form"].contains(&name.as_str()), "{name}");
            for loading in ["src=", "onload", "onclick", "javascript:", " style="] {
                assert!(!attributes.contains(loading), "{name} {attributes}");
            }
        }
        let check = CHECKS.iter().find(|check| request["check"] == check.name).unwrap();
        assert_eq!(count("svg"), usize::from(check.draw.is_some()), "{}", check.name);
        for style in page.split("<style>").skip(1).map(|rest| rest.split("</style>").next().unwrap()) {
            assert!(
                policy.contains(&elbowroom::content_policy::digest_of(style)),
                "a style that a browser refuses"
            );
        }
        let data = page.split("<script type=\"application/json\" id=\"certificate\">").nth(1).unwrap();
        let certificate: Value = serde_json::from_str(data.split("</script>").next().unwrap()).unwrap();
        assert_eq!(certificate["request"]["reference"], hostile);
        for part in certificate["fingerprint"].as_object().unwrap().values() {
            assert!(page.split("<script").next().unwrap().contains(part.as_str().unwrap()));
        }
        assert_eq!(verified(&certificate).await["finding"], "reproduced");
    }
}

#[tokio::test]
async fn a_page_for_print_says_what_a_person_must_know() {
    let service = service_with(PRIVATE);
    let body = json!({"check": "box_depths", "request": small().await["request"]});
    let request =
        Request::post(CERTIFY).header("content-type", "application/json").header("accept", "text/html");
    let reply = send(app(service), request.body(Body::from(body.to_string())).unwrap()).await;
    let page = String::from_utf8(reply.body).unwrap();
    let shown = page.split("<script").next().unwrap();
    for part in [
        "Depth of boxes",
        "NFPA 70, 2023",
        "R-1",
        "Violates",
        "314.24(B)(4)",
        "1.1875 in",
        "/equipment/0",
        "eyJhbGciOiJFZERTQSIsImtpZCI6I",
        "approved anything",
        "De-energize",
        "/v1/results/verify",
    ] {
        assert!(shown.contains(part), "{part}: {shown}");
    }
}
