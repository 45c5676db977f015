//! The README's requests give the README's answers.

use super::support::ask;
use axum::http::Method;
use serde_json::Value;

const README: &str = include_str!("../../README.md");

/// A curl command of the README: its target without the host, its headers, and its body.
type Command = (String, Vec<(&'static str, &'static str)>, String);

fn commands() -> Vec<Command> {
    README
        .split("```sh\n")
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

/// The answers that the README shows, abridged.
fn answers() -> Vec<Value> {
    README
        .split("```json\n")
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
    let (commands, answers) = (commands(), answers());
    assert!(!commands.is_empty());
    assert_eq!(commands.len(), answers.len());
    for ((target, headers, body), shown) in commands.into_iter().zip(answers) {
        let reply = ask(Method::POST, &target, &headers, body).await;
        assert_eq!(reply.status, 200, "{target}");
        shows(&shown, &reply.json(), "");
    }
}
