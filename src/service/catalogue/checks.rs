//! The checks: what each is for, what it takes, and requests to begin with.

use super::documents::Collection;
use crate::i18n::{Catalogue, Language};
use crate::service::body::schema::{self, Schema};
use crate::service::document::Document;
use crate::service::language;
use crate::service::openapi::examples::{Example, ExampleSet, Outcome};
use crate::service::problem::Problem;
use crate::service::register::{CHECKS, CheckEntry};
use serde::Serialize;
use serde_json::{Map, Value};
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
    /// The JSON Schema (2020-12) of its request: that of the OpenAPI document, without references. Its descriptions are in
    /// English.
    #[schema(value_type = Object)]
    schema: Value,
    /// Requests to begin with.
    requests: Vec<RequestView>,
}

/// A request to begin with.
#[derive(Debug, Serialize, ToSchema)]
pub struct RequestView {
    /// Its name among the examples of the OpenAPI document.
    #[schema(example = "which-box")]
    name: String,
    /// What it shows, in English.
    summary: String,
    /// The request.
    #[schema(value_type = Object)]
    request: Value,
}

fn summary(check: &CheckEntry, messages: &'static Catalogue) -> CheckSummary {
    CheckSummary {
        name: check.name,
        path: check.path,
        title: messages.fixed(check.title),
        purpose: messages.fixed(check.purpose),
        drawn: check.draw.is_some(),
    }
}

/// The list of all checks and each of them, in the language of the request. They are written when they are first asked for:
/// only a page or a program that makes forms asks for them.
pub fn collection() -> Result<&'static Collection, Problem> {
    static ENGLISH: LazyLock<Option<Collection>> = LazyLock::new(|| write(Language::English).ok());
    static SPANISH: LazyLock<Option<Collection>> = LazyLock::new(|| write(Language::Spanish).ok());
    let collection = match language::spoken() {
        Language::English => &ENGLISH,
        Language::Spanish => &SPANISH,
    };
    collection.as_ref().ok_or_else(Problem::internal)
}

fn write(language: Language) -> Result<Collection, serde_json::Error> {
    let messages = Catalogue::of(language);
    let list = Checks { checks: CHECKS.iter().map(|check| summary(check, messages)).collect() };
    let examples = ExampleSet::embedded();
    let one = |check: &CheckEntry| {
        let view = CheckView {
            summary: summary(check, messages),
            schema: schema(check),
            requests: begin(check, &examples),
        };
        Ok((check.name, Document::in_words(&view)?))
    };
    Collection::new(Document::in_words(&list)?, CHECKS.iter().map(one))
}

/// The examples that are answered with JSON in English: others show the same requests in another way.
fn begin(check: &CheckEntry, examples: &ExampleSet) -> Vec<RequestView> {
    let plain = examples.of(check.name).iter().filter(|example| {
        let is_answered = matches!(&example.outcome, Some(Outcome::Answer(answer)) if answer.is_object());
        is_answered && example.language.is_none()
    });
    let view = |example: &Example| {
        let request = example.request.clone()?;
        Some(RequestView { name: example.name.clone(), summary: example.summary.clone(), request })
    };
    plain.filter_map(view).collect()
}

/// The published schema of a request, with whatever it refers to in the place of the reference.
fn schema(check: &CheckEntry) -> Value {
    let published = schema::published(&(check.schemas)().request);
    let dialect = "https://json-schema.org/draft/2020-12/schema".into();
    let mut whole = Map::from_iter([("$schema".to_owned(), dialect)]);
    if let Value::Object(members) = spelled_out(published.root, published) {
        whole.extend(members);
    }
    Value::Object(whole)
}

/// A schema without references. No request holds itself, so this has an end.
fn spelled_out(schema: &Value, published: Schema<'_>) -> Value {
    match schema {
        Value::Object(members) => {
            let named = members.get("$ref").and_then(Value::as_str).and_then(|to| published.named(to));
            let mut whole = match named.map(|known| spelled_out(known, published)) {
                Some(Value::Object(whole)) => whole,
                _ => Map::new(),
            };
            // what stands beside a reference says it more closely
            for (name, member) in members.iter().filter(|(name, _)| *name != "$ref") {
                whole.insert(name.clone(), spelled_out(member, published));
            }
            Value::Object(whole)
        }
        Value::Array(items) => items.iter().map(|item| spelled_out(item, published)).collect(),
        plain => plain.clone(),
    }
}
