//! The named examples: files under `openapi/examples/{operation}/`, each executed by a test.
//!
//! | file | what it holds |
//! |---|---|
//! | `index.json` | for each example its `summary`; `target`, `sends`, `accept` and `language` where the path, the Content-Type, the Accept or the Accept-Language header are special |
//! | `{name}.request.json` | the body, for an operation that takes one; `.txt` for one that is no JSON; none where `takes` of the index names the answer of another example as `{operation}/{name}` |
//! | `{name}.answer.json` or `{name}.problem.json` | what comes back; `.txt` for what is no JSON |

use serde::Deserialize;
use serde_json::{Map, Value};
use std::collections::BTreeMap;

/// Every file that is part of the binary: operation, name, text.
const EMBEDDED: &[(&str, &str, &str)] = include!(concat!(env!("OUT_DIR"), "/examples.rs"));

/// The examples of all operations.
#[derive(Clone, Debug, Default)]
pub struct ExampleSet(BTreeMap<String, Vec<Example>>);

/// One example, as the index has it, with what its files hold.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Example {
    /// Its name.
    #[serde(skip)]
    pub name: String,
    /// What it shows.
    pub summary: String,
    /// The path that is asked, where the path of the operation has a parameter.
    pub target: Option<String>,
    /// The Content-Type header, where the body is no JSON.
    pub sends: Option<String>,
    /// The Accept header, where it is special.
    pub accept: Option<String>,
    /// The Accept-Language header, where a language is asked for.
    pub language: Option<String>,
    /// The example whose answer is the body that is sent: `{operation}/{name}`.
    pub takes: Option<String>,
    /// The body that is sent; a text for one that is no JSON.
    #[serde(skip)]
    pub request: Option<Value>,
    /// What comes back, once it was recorded.
    #[serde(skip)]
    pub outcome: Option<Outcome>,
}

/// What comes back.
#[derive(Clone, Debug, PartialEq)]
pub enum Outcome {
    /// An answer; a text for one that is no JSON.
    Answer(Value),
    /// A problem.
    Problem(Value),
}

/// The files of each operation by name.
type Files<'a> = BTreeMap<&'a str, BTreeMap<&'a str, &'a str>>;

impl ExampleSet {
    /// The examples that are part of the binary.
    pub fn embedded() -> Self {
        Self::of_files(EMBEDDED.iter().copied())
    }

    /// The examples in files: operation, name of the file, text. What does not read is left out, which a test finds.
    pub fn of_files<'a>(files: impl Iterator<Item = (&'a str, &'a str, &'a str)>) -> Self {
        let mut by_operation = Files::new();
        for (operation, name, text) in files {
            by_operation.entry(operation).or_default().insert(name, text);
        }
        let operations = by_operation.iter();
        let set = operations.map(|(operation, files)| ((*operation).to_owned(), read(files, &by_operation)));
        Self(set.collect())
    }

    /// The examples of one operation, in the order of its index.
    pub fn of(&self, operation: &str) -> &[Example] {
        self.0.get(operation).map_or(&[], Vec::as_slice)
    }

    /// The operations that have examples.
    pub fn operations(&self) -> impl Iterator<Item = &str> {
        self.0.keys().map(String::as_str)
    }
}

fn read(files: &BTreeMap<&str, &str>, all: &Files<'_>) -> Vec<Example> {
    let value = |name: &str| files.get(name).and_then(|text| serde_json::from_str::<Value>(text).ok());
    let text = |name: &str| files.get(name).map(|text| Value::String((*text).to_owned()));
    let index: Map<String, Value> = match value("index.json") {
        Some(Value::Object(index)) => index,
        _ => return Vec::new(),
    };
    let example = |(name, entry): (String, Value)| {
        let example: Example = serde_json::from_value(entry).ok()?;
        let taken = || {
            let (operation, name) = example.takes.as_ref()?.split_once('/')?;
            serde_json::from_str(all.get(operation)?.get(format!("{name}.answer.json").as_str())?).ok()
        };
        let outcome = value(&format!("{name}.answer.json"))
            .or_else(|| text(&format!("{name}.answer.txt")))
            .map(Outcome::Answer)
            .or_else(|| value(&format!("{name}.problem.json")).map(Outcome::Problem));
        let request = value(&format!("{name}.request.json")).or_else(|| text(&format!("{name}.request.txt")));
        let request = request.or_else(taken);
        Some(Example { name, request, outcome, ..example })
    };
    index.into_iter().filter_map(example).collect()
}
