//! The requests that the laws of soundness are held over: every conformance case in each of its editions, every published
//! example, and requests generated from both by mutation. And the published schemas, by which members are told from one another.

mod mutation;
pub mod schemas;

use elbowroom::audit;
use elbowroom::checks::Check;
use elbowroom::of_each_check;
use serde_json::{Map, Value};
use std::path::Path;

pub use mutation::mutated;
pub use schemas::Schemas;

/// A request of one check.
#[derive(Clone, Debug)]
pub struct Asked {
    /// The name of the check.
    pub check: String,
    /// Where the request comes from.
    pub name: String,
    /// The request.
    pub request: Value,
}

/// Every request of every conformance case, and of every published example of a check.
pub fn whole() -> Vec<Asked> {
    let mut asked = examples();
    for case in audit::cases().expect("cases") {
        for edition in &case.editions {
            let mut request: Map<String, Value> = case.request.clone();
            request.insert("edition".to_owned(), edition.year().into());
            asked.push(Asked {
                check: case.check.clone(),
                name: format!("{} ({})", case.name, edition.year()),
                request: Value::Object(request),
            });
        }
    }
    asked
}

/// The requests among the published examples of the checks.
fn examples() -> Vec<Asked> {
    let checks: &[&str] = &of_each_check!(C => <C as Check>::NAME);
    let of_check = |check: &&str| {
        let name = |(name, request)| Asked { check: (*check).to_owned(), name, request };
        examples_of(check).into_iter().map(name).collect::<Vec<_>>()
    };
    let found: Vec<Asked> = checks.iter().flat_map(of_check).collect();
    assert!(found.len() > checks.len());
    found
}

/// The requests among the published examples in one folder, each with the name of its file.
pub fn examples_of(folder: &str) -> Vec<(String, Value)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("openapi/examples").join(folder);
    let mut files: Vec<_> = std::fs::read_dir(folder)
        .expect("a folder of examples")
        .map(|file| file.expect("a file").path())
        .filter(|path| path.to_string_lossy().ends_with(".request.json"))
        .collect();
    files.sort();
    let read = |path: &std::path::PathBuf| {
        let request = serde_json::from_str(&std::fs::read_to_string(path).expect("a request")).ok()?;
        Some((path.display().to_string(), request))
    };
    files.iter().filter_map(read).collect()
}

/// A request without one of its members.
pub fn without(request: &Value, at: &str) -> Value {
    let mut less = request.clone();
    let (parent, name) = at.rsplit_once('/').expect("a member");
    if let Some(Value::Object(members)) = less.pointer_mut(parent) {
        members.remove(name);
    }
    less
}

/// A place in a request, without the numbers of items of lists: what a kind of place is called.
pub fn kind_of(at: &str) -> String {
    at.split('/').filter(|part| part.parse::<usize>().is_err()).collect::<Vec<_>>().join("/")
}
