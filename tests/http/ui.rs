//! The page at `/` and what it loads. `tests/browser/` uses it in a browser.

use crate::support::{ask, get};
use axum::http::Method;
use elbowroom::service::register::CHECKS;
use serde_json::Value;
use std::collections::BTreeSet;

#[tokio::test]
async fn the_page_loads_only_files_of_this_service() {
    let page = get("/").await;
    assert_eq!(page.status, 200);
    assert!(page.header("content-type").starts_with("text/html"));
    let policy = page.header("content-security-policy");
    assert!(
        policy.starts_with("default-src 'none'; script-src 'self'; style-src 'self' 'sha256-"),
        "{policy}"
    );
    assert!(!policy.contains("unsafe") && !policy.contains("http"), "{policy}");
    let html = String::from_utf8(page.body.clone()).unwrap();
    let mut loaded = BTreeSet::new();
    for link in ["src=\"", "href=\""] {
        for target in html.split(link).skip(1).map(|rest| rest.split('"').next().unwrap()) {
            assert!(
                target.starts_with('/') && !target.starts_with("//") || target.starts_with('#'),
                "{target}"
            );
            if target.starts_with("/ui/") {
                loaded.insert(target.to_owned());
            }
        }
    }
    assert_eq!(loaded.len(), 3, "{loaded:?}");
    for target in &loaded {
        let file = get(target).await;
        assert_eq!(file.status, 200, "{target}");
        assert!(!file.body.is_empty() && file.header("cache-control").contains("max-age"), "{target}");
    }
    // scripts import one another by name, from the same folder
    let script = String::from_utf8(get("/ui/main.js").await.body).unwrap();
    let imported: Vec<&str> =
        script.split(" from \"./").skip(1).map(|rest| rest.split('"').next().unwrap()).collect();
    assert!(imported.len() >= 5, "{imported:?}");
    for name in imported {
        let file = get(&format!("/ui/{name}")).await;
        assert_eq!(file.header("content-type"), "text/javascript; charset=utf-8", "{name}");
    }
    get("/ui/none.js").await.problem(404, "not-found");
}

#[tokio::test]
async fn the_page_speaks_the_language_that_is_asked_for() {
    for (target, accepts, tag) in [
        ("/", "fr", "en"),
        ("/", "es-MX", "es"),
        ("/?language=es", "en", "es"),
        ("/?language=xx", "es", "es"),
    ] {
        let page = ask(Method::GET, target, &[("accept-language", accepts)], String::new()).await;
        assert_eq!(page.header("content-language"), tag, "{target}");
        let html = String::from_utf8(page.body).unwrap();
        assert!(html.contains(&format!("<html lang=\"{tag}\">")), "{target}");
    }
}

/// A form is made of this, so every request must be valid under it, and it refers to nothing.
#[tokio::test]
async fn every_check_has_a_schema_that_stands_alone_and_requests_to_begin_with() {
    let list = get("/v1/checks").await.json();
    assert_eq!(list["checks"].as_array().unwrap().len(), CHECKS.len());
    for check in list["checks"].as_array().unwrap() {
        let name = check["name"].as_str().unwrap();
        let view = get(&format!("/v1/checks/{name}")).await.json();
        assert!(!view["schema"].to_string().contains("$ref"), "{name}");
        let validator = jsonschema::validator_for(&view["schema"]).unwrap();
        let requests = view["requests"].as_array().unwrap();
        assert!(requests.len() >= 2, "{name}");
        for example in requests {
            let faults: Vec<String> =
                validator.iter_errors(&example["request"]).map(|error| error.to_string()).collect();
            assert!(faults.is_empty(), "{name}/{}: {faults:?}", example["name"]);
        }
        assert!(!validator.is_valid(&serde_json::json!({"unknown-member": Value::Null})), "{name}");
    }
}
