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

/// A path, with the ids of its operations.
#[derive(Debug)]
pub struct PublishedPath {
    /// That of the operation which is asked for with GET.
    pub get: Option<String>,
    /// That of the operation which is posted to.
    pub post: Option<String>,
}

/// Every path, with its operations.
pub fn paths() -> &'static BTreeMap<String, PublishedPath> {
    #[derive(Deserialize)]
    struct Document {
        paths: BTreeMap<String, Item>,
    }
    #[derive(Deserialize)]
    struct Item {
        get: Option<Operation>,
        post: Option<Operation>,
    }
    #[derive(Deserialize)]
    struct Operation {
        #[serde(rename = "operationId")]
        id: String,
    }
    static PATHS: LazyLock<BTreeMap<String, PublishedPath>> = LazyLock::new(|| {
        let paths = serde_json::from_str(text()).map_or_else(|_| BTreeMap::new(), |Document { paths }| paths);
        let id = |operation: Option<Operation>| operation.map(|operation| operation.id);
        let path = |Item { get, post }| PublishedPath { get: id(get), post: id(post) };
        paths.into_iter().map(|(name, item)| (name, path(item))).collect()
    });
    &PATHS
}

/// The component schemas, read when the first faulty body needs them.
pub fn schemas() -> &'static Map<String, Value> {
    #[derive(Deserialize)]
    struct Document {
        components: Components,
    }
    #[derive(Deserialize)]
    struct Components {
        schemas: Map<String, Value>,
    }
    static SCHEMAS: LazyLock<Map<String, Value>> = LazyLock::new(|| {
        serde_json::from_str(text())
            .map_or_else(|_| Map::new(), |document: Document| document.components.schemas)
    });
    &SCHEMAS
}
