//! The requests of the README and of the guide give the answers that are shown there.

use super::support::ask;
use axum::http::Method;
use serde_json::Value;

/// The pages that show requests with their answers.
const PAGES: [&str; 5] = [
    include_str!("../../README.md"),
    include_str!("../../openapi/guide/pull-boxes.md"),
    include_str!("../../openapi/guide/languages.md"),
    include_str!("../../openapi/guide/teaching.md"),
    include_str!("../../openapi/guide/certificates.md"),
];

/// A curl command of a page: its target without the host, its headers, and its body.
type Command = (String, Vec<(&'static str, &'static str)>, String);

/// The commands of a page that post a body in its text.
fn commands(page: &'static str) -> Vec<Command> {
    page.split("```sh\n")
        .skip(1)
        .filter_map(|block| block.split("```").next())
        .filter(|block| block.starts_with("curl"))
        .map(|block| {
            let target = block.split("127.0.0.1:8314").nth(1).unwrap().split(['\'', ' ']).next().unwrap();
            let body = block.split("--data '").nth(1).unwrap().split('\'').next().unwrap();
            let headers =
                block.split("-H '").skip(1).filter_map(|header| header.split('\'').next()?.split_once(": "));
            (target.to_owned(), headers.collect(), body.to_owned())
        })
        .collect()
}

/// The answers that a page shows, abridged.
fn answers(page: &str) -> Vec<Value> {
    page.split("```json\n")
        .skip(1)
        .map(|block| serde_json::from_str(block.split("```").next().unwrap()).unwrap())
        .collect()
}

/// Whether everything that is shown is there: members may be left out, items and values may not.
fn shows(shown: &Value, real: &Value, at: &str) {
    match (shown, real) {
        (Value::Object(shown), Value::Object(real)) => {
            for (member, shown) in shown {
                shows(shown, real.get(member).unwrap_or(&Value::Null), &format!("{at}/{member}"));
            }
        }
        (Value::Array(shown), Value::Array(real)) => {
            assert_eq!(shown.len(), real.len(), "{at}");
            for (index, (shown, real)) in shown.iter().zip(real).enumerate() {
                shows(shown, real, &format!("{at}/{index}"));
            }
        }
        _ => assert_eq!(shown, real, "{at}"),
    }
}

#[tokio::test]
async fn every_request_gives_the_answer_that_is_shown() {
    for page in PAGES {
        let (commands, answers) = (commands(page), answers(page));
        assert!(!commands.is_empty(), "{page}");
        assert_eq!(commands.len(), answers.len(), "{page}");
        for ((target, headers, body), shown) in commands.into_iter().zip(answers) {
            let reply = ask(Method::POST, &target, &headers, body).await;
            assert_eq!(reply.status, 200, "{target}");
            shows(&shown, &reply.json(), "");
        }
    }
}
