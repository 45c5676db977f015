//! The operations that are served, as access control, metrics and log know them.

use super::published::{self, PublishedPath};
use axum::extract::{MatchedPath, Request};
use axum::http::Method;
use std::collections::HashMap;

/// What a caller needs for an operation where keys are asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Need {
    /// Nothing: health, what a problem means, the documentation.
    Nothing,
    /// A key, whatever its scopes.
    Key,
    /// A key with the scope that has the name of the operation.
    Scope,
}

impl Need {
    /// What an operation needs, by its path and whether it is posted to.
    pub fn of(path: &str, is_post: bool) -> Self {
        if !path.starts_with("/v1/") || path.starts_with("/v1/problems") {
            Self::Nothing
        } else if is_post {
            Self::Scope
        } else {
            Self::Key
        }
    }
}

/// One operation.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Operation {
    /// Its id in the OpenAPI document.
    pub id: String,
    /// What a caller needs for it.
    pub need: Need,
    /// Whether it is answered however busy the service is: supervisors must not take load for failure.
    pub always: bool,
}

/// The scope that lets a caller see the key of exercises, beside that of the operation which is asked.
pub const ANSWER_KEY: &str = "answer_key";

/// Where the reference pages are.
pub const DOCS: &str = "/docs";

/// Where the metrics are served.
pub const METRICS: &str = "/metrics";

/// The indices of what the document does not describe.
const UNKNOWN: usize = 0;
const DOCUMENTATION: usize = 1;
const UNDESCRIBED: usize = 2;

/// The operations by path and method.
#[derive(Debug)]
pub struct Operations {
    all: Vec<Operation>,
    by_path: HashMap<String, [Option<usize>; 2]>,
}

impl Operations {
    /// The operations of every route, from the published document, which a test holds against the routes.
    pub fn of_the_service() -> Self {
        let open = |id: &str| Operation { id: id.to_owned(), need: Need::Nothing, always: false };
        // the first three stand for what the document does not describe
        let undescribed = Operation { need: Need::Scope, ..open("undescribed") };
        let all = vec![open("unknown"), open("documentation"), undescribed];
        let mut operations = Self { all, by_path: HashMap::new() };
        let metrics = Operation { id: "metrics".to_owned(), need: Need::Scope, always: true };
        operations.add(METRICS, 0, metrics);
        for (path, PublishedPath { get, post }) in published::paths() {
            for (slot, published) in [get, post].into_iter().enumerate() {
                let Some(published) = published else { continue };
                let (id, need) = (published.id.clone(), Need::of(path, slot == 1));
                operations.add(path, slot, Operation { id, need, always: path.starts_with("/health/") });
            }
        }
        operations
    }

    fn add(&mut self, path: &str, slot: usize, operation: Operation) {
        self.by_path.entry(path.to_owned()).or_default()[slot] = Some(self.all.len());
        self.all.push(operation);
    }

    /// Every operation.
    pub fn all(&self) -> &[Operation] {
        &self.all
    }

    /// The scopes that a key can have.
    pub fn scopes(&self) -> impl Iterator<Item = &str> {
        self.all
            .iter()
            .filter(|operation| operation.need == Need::Scope && operation.id != "undescribed")
            .map(|operation| operation.id.as_str())
            .chain([ANSWER_KEY])
    }

    /// The index among all of the operation that a request asks for.
    pub fn index_of(&self, request: &Request) -> usize {
        let Some(path) = request.extensions().get::<MatchedPath>() else { return UNKNOWN };
        let slot = match *request.method() {
            Method::GET | Method::HEAD => 0,
            Method::POST => 1,
            _ => return UNKNOWN,
        };
        // a path outside of the interface that is not described is one of the documentation
        let undescribed = if path.as_str().starts_with("/v1/") { UNDESCRIBED } else { DOCUMENTATION };
        self.by_path.get(path.as_str()).map_or(undescribed, |slots| slots[slot].unwrap_or(UNKNOWN))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::service::register::CHECKS;

    #[test]
    fn every_check_has_a_scope_and_only_health_is_answered_always() {
        let operations = Operations::of_the_service();
        let scopes: Vec<&str> = operations.scopes().collect();
        for check in CHECKS {
            assert!(scopes.contains(&check.name), "{}", check.name);
        }
        let named = |id: &str| operations.all().iter().find(|operation| operation.id == id).unwrap();
        assert_eq!(named("tables").need, Need::Key);
        assert_eq!(named("problem").need, Need::Nothing);
        assert!(named("live").always && named("ready").always && !named("rules").always);
    }
}
