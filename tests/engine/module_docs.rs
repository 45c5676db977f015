//! Whoever searches the module docs for the field's word finds the room that does it among the first three files.

use std::fs;
use std::path::{Path, PathBuf};

/// What a newcomer searches for, and the file that must come up.
const WORDS: [(&str, &str); 14] = [
    ("shutdown", "service/listen/graceful_shutdown.rs"),
    ("worker pool", "service/worker_pool.rs"),
    ("middleware", "service/middleware.rs"),
    ("validator", "service/body/validator.rs"),
    ("rate limit", "service/rate_limit.rs"),
    ("authentication", "service/keys/mod.rs"),
    ("concurrency limit", "service/concurrency_limit.rs"),
    ("retry", "command/takeoff/remote/mod.rs"),
    ("timestamp", "service/keys/timestamp.rs"),
    ("metrics", "service/telemetry/metrics.rs"),
    ("strict deserializer", "json/strict.rs"),
    ("write timeout", "service/listen/write_timeout.rs"),
    ("account of a request", "checks/account.rs"),
    ("mutation", "training/misconception.rs"),
];

/// Every source file, in the order in which a search lists them.
fn sources(folder: &Path, found: &mut Vec<PathBuf>) {
    let mut entries: Vec<PathBuf> =
        fs::read_dir(folder).expect("a folder").map(|entry| entry.expect("an entry").path()).collect();
    entries.sort();
    for path in entries {
        if path.is_dir() {
            sources(&path, found);
        } else if path.extension().is_some_and(|extension| extension == "rs") {
            found.push(path);
        }
    }
}

#[test]
fn the_field_s_words_lead_to_the_room() {
    let root = Path::new(env!("CARGO_MANIFEST_DIR")).join("src");
    let mut files = Vec::new();
    sources(&root, &mut files);
    let docs: Vec<(String, String)> = files
        .iter()
        .map(|path| {
            let text = fs::read_to_string(path).expect("a source file");
            let docs: String = text.lines().filter(|line| line.starts_with("//!")).collect();
            let path = path.strip_prefix(&root).expect("below src").to_string_lossy().into_owned();
            (path, docs.to_lowercase())
        })
        .collect();
    for (word, room) in WORDS {
        let hits: Vec<&str> = docs
            .iter()
            .filter(|(_, text)| text.contains(word))
            .map(|(path, _)| path.as_str())
            .take(3)
            .collect();
        assert!(hits.contains(&room), "{word} leads to {hits:?}, not to {room}");
    }
}
