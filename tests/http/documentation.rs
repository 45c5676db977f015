//! `/docs` and what its pages load.

use crate::support::get;

#[tokio::test]
async fn docs_leads_to_the_documentation() {
    let reply = get("/docs").await;
    assert!(reply.status.is_redirection());
    assert_eq!(reply.header("location"), "/docs/");
}

#[tokio::test]
async fn the_pages_load_nothing_from_elsewhere() {
    let page = get("/docs/").await;
    assert_eq!(page.status, 200);
    assert!(page.header("content-type").starts_with("text/html"));
    let html = String::from_utf8(page.body.clone()).unwrap();
    let mut loaded = 0;
    for link in ["src=\"", "href=\""] {
        for rest in html.split(link).skip(1) {
            let target = rest.split('"').next().unwrap();
            assert!(!target.contains("//"), "{target} is elsewhere");
            let file = get(&format!("/docs/{}", target.trim_start_matches("./"))).await;
            assert_eq!(file.status, 200, "{target}");
            assert!(!file.body.is_empty());
            loaded += 1;
        }
    }
    assert!(loaded >= 4, "{html}");
    // the browser itself refuses whatever a script might still ask for
    let policy = page.header("content-security-policy");
    assert!(policy.starts_with("default-src 'none'") && !policy.contains("http"), "{policy}");
    assert!(policy.contains("connect-src 'self'"));
}

#[tokio::test]
async fn the_pages_show_this_document_and_send_it_to_no_validator() {
    let script = get("/docs/swagger-initializer.js").await;
    let text = String::from_utf8(script.body).unwrap();
    assert!(text.contains("\"url\": \"/openapi.json\""), "{text}");
    assert!(text.contains("\"validatorUrl\": \"none\""), "{text}");
    assert!(!text.contains("http"), "{text}");
}

#[tokio::test]
async fn a_page_that_is_not_there_is_a_problem() {
    get("/docs/none.js").await.problem(404, "not-found");
}
