//! The published OpenAPI document: the committed file as it lies in the binary, which a test holds against the code.
//!
//! Whatever is asked of the document while requests are served is read from here; [`super::openapi`] makes it.

use serde::Deserialize;
use serde_json::{Map, Value};
use std::collections::BTreeMap;
use std::sync::LazyLock;

/// The text. It takes no memory of its own.
pub const fn text() -> &'static str {
    include_str!("../../openapi/openapi.json")
}

/// The operations of a path.
#[derive(Debug, Deserialize)]
pub struct PublishedPath {
    /// The one that is asked for with GET.
    pub get: Option<PublishedOperation>,
    /// The one that is posted to.
    pub post: Option<PublishedOperation>,
}

/// An operation.
#[derive(Debug, Deserialize)]
pub struct PublishedOperation {
    /// Its id.
    #[serde(rename = "operationId")]
    pub id: String,
}

/// Every path, with its operations.
pub fn paths() -> &'static BTreeMap<String, PublishedPath> {
    #[derive(Default, Deserialize)]
    struct Document {
        paths: BTreeMap<String, PublishedPath>,
    }
    static DOCUMENT: LazyLock<Document> = LazyLock::new(|| serde_json::from_str(text()).unwrap_or_default());
    &DOCUMENT.paths
}

/// The component schemas, read when the first faulty body needs them.
pub fn schemas() -> &'static Map<String, Value> {
    #[derive(Default, Deserialize)]
    struct Document {
        components: Components,
    }
    #[derive(Default, Deserialize)]
    struct Components {
        schemas: Map<String, Value>,
    }
    static DOCUMENT: LazyLock<Document> = LazyLock::new(|| serde_json::from_str(text()).unwrap_or_default());
    &DOCUMENT.components.schemas
}
