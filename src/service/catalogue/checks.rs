//! The checks: what each is for, what it takes, and requests to begin with.

use super::Shelf;
use crate::service::document::Document;
use crate::service::language;
use crate::service::openapi::examples::{Example, ExampleSet, Outcome};
use crate::service::problem::Problem;
use crate::service::register::{CHECKS, CheckEntry, CheckSchemas};
use crate::words::{Catalogue, Language};
use serde::Serialize;
use serde_json::{Map, Value};
use std::collections::BTreeMap;
use std::sync::LazyLock;
use utoipa::ToSchema;

/// Every check.
#[derive(Debug, Serialize, ToSchema)]
pub struct Checks {
    /// The checks.
    checks: Vec<CheckSummary>,
}

/// A check in a few lines; `/v1/checks/{name}` has the whole of it.
#[derive(Debug, Serialize, ToSchema)]
pub struct CheckSummary {
    /// The name, as answers and lists of checks give it. It is never changed.
    #[schema(value_type = String, example = "outlet_box_fill")]
    name: &'static str,
    /// The path that its request is posted to.
    #[schema(value_type = String, example = "/v1/outlet-boxes/fill")]
    path: &'static str,
    /// The title.
    title: &'static str,
    /// What it is for, in trade words.
    purpose: &'static str,
    /// Whether its answers can be drawn: asked for with an Accept header of `image/svg+xml`.
    drawn: bool,
}

/// A check with what its request may hold.
#[derive(Debug, Serialize, ToSchema)]
pub struct CheckView {
    /// The check in a few lines.
    #[serde(flatten)]
    summary: CheckSummary,
    /// The JSON Schema (2020-12) of its request, which refers to nothing outside of itself: that of the OpenAPI document. Its
    /// descriptions are in English.
    #[schema(value_type = Object)]
    schema: Value,
    /// Requests to begin with.
    examples: Vec<ExampleView>,
}

/// A request to begin with.
#[derive(Debug, Serialize, ToSchema)]
pub struct ExampleView {
    /// Its name among the examples of the OpenAPI document.
    #[schema(example = "which-box")]
    name: String,
    /// What it shows, in English.
    summary: String,
    /// The request.
    #[schema(value_type = Object)]
    request: Value,
}

fn summary(check: &CheckEntry, words: &'static Catalogue) -> CheckSummary {
    CheckSummary {
        name: check.name,
        path: check.path,
        title: words.fixed(check.title),
        purpose: words.fixed(check.purpose),
        drawn: check.draw.is_some(),
    }
}

/// The list of all checks and each of them, in the language of the request. They are written when they are first asked for:
/// only a page or a program that makes forms asks for them.
pub fn shelf() -> Result<&'static Shelf, Problem> {
    static ENGLISH: LazyLock<Option<Shelf>> = LazyLock::new(|| write(Language::English).ok());
    static SPANISH: LazyLock<Option<Shelf>> = LazyLock::new(|| write(Language::Spanish).ok());
    let shelf = match language::spoken() {
        Language::English => &ENGLISH,
        Language::Spanish => &SPANISH,
    };
    shelf.as_ref().ok_or_else(Problem::internal)
}

fn write(language: Language) -> Result<Shelf, serde_json::Error> {
    let words = Catalogue::of(language);
    let list = Checks { checks: CHECKS.iter().map(|check| summary(check, words)).collect() };
    let examples = ExampleSet::embedded();
    let one = |check: &CheckEntry| {
        let view = CheckView {
            summary: summary(check, words),
            schema: schema(check),
            examples: begin(check, &examples),
        };
        Ok((check.name.to_owned(), Document::in_words(&view)?))
    };
    let by_name = CHECKS.iter().map(one).collect::<Result<_, serde_json::Error>>()?;
    Ok(Shelf { list: Document::in_words(&list)?, by_name })
}

/// The examples that are answered with JSON in English: others show the same requests in another way.
fn begin(check: &CheckEntry, examples: &ExampleSet) -> Vec<ExampleView> {
    let plain = examples.of(check.name).iter().filter(|example| {
        let is_answered = matches!(&example.outcome, Some(Outcome::Answer(answer)) if answer.is_object());
        is_answered && example.language.is_none()
    });
    let view = |example: &Example| {
        let request = example.request.clone()?;
        Some(ExampleView { name: example.name.clone(), summary: example.summary.clone(), request })
    };
    plain.filter_map(view).collect()
}

/// The schema of a request, with all that it refers to under `$defs`.
fn schema(check: &CheckEntry) -> Value {
    const ELSEWHERE: &str = "#/components/schemas/";
    let CheckSchemas { request, all, .. } = (check.schemas)();
    let all: BTreeMap<String, Value> = all
        .into_iter()
        .map(|(name, schema)| (name, serde_json::to_value(schema).unwrap_or_default()))
        .collect();
    let mut wanted = vec![request.clone()];
    let mut taken: BTreeMap<String, Value> = BTreeMap::new();
    while let Some(name) = wanted.pop() {
        if taken.contains_key(&name) {
            continue;
        }
        let mut schema = all.get(&name).cloned().unwrap_or_default();
        refer_inside(&mut schema, ELSEWHERE, &mut wanted);
        taken.insert(name, schema);
    }
    let mut whole = Map::new();
    whole.insert("$schema".to_owned(), "https://json-schema.org/draft/2020-12/schema".into());
    if let Some(Value::Object(members)) = taken.remove(&request) {
        whole.extend(members);
    }
    whole.insert("$defs".to_owned(), taken.into_iter().collect::<Map<_, _>>().into());
    Value::Object(whole)
}

/// Makes a schema refer to `$defs`, notes what it refers to, and drops defaults of null, which the derive writes for members
/// that may be left out.
fn refer_inside(schema: &mut Value, elsewhere: &str, wanted: &mut Vec<String>) {
    match schema {
        Value::Object(members) => {
            if members.get("default").is_some_and(Value::is_null) {
                members.shift_remove("default");
            }
            for (name, member) in members {
                match member {
                    Value::String(target) if name == "$ref" => {
                        if let Some(name) = target.strip_prefix(elsewhere) {
                            wanted.push(name.to_owned());
                            *target = format!("#/$defs/{name}");
                        }
                    }
                    member => refer_inside(member, elsewhere, wanted),
                }
            }
        }
        Value::Array(items) => items.iter_mut().for_each(|item| refer_inside(item, elsewhere, wanted)),
        _ => {}
    }
}
