//! The OpenAPI document. The route table is the document: what is served is described, and nothing else is.

pub mod check_operation;
pub mod examples;
mod whole;

use examples::ExampleSet;
use std::sync::LazyLock;

/// The document as it is served, printed and committed.
pub fn text() -> &'static str {
    static TEXT: LazyLock<String> = LazyLock::new(|| text_with(&ExampleSet::embedded()));
    &TEXT
}

/// The document with other examples than those that are part of the binary.
pub fn text_with(examples: &ExampleSet) -> String {
    let document = whole::document(super::described_routes().into_openapi(), examples);
    let mut text = serde_json::to_string_pretty(&document).unwrap_or_default();
    text.push('\n');
    text
}

/// The paths that the document describes.
pub fn paths() -> &'static [String] {
    static PATHS: LazyLock<Vec<String>> = LazyLock::new(|| {
        let described = super::described_routes().into_openapi();
        described.paths.paths.into_keys().collect()
    });
    &PATHS
}
