//! The fallback of the router: what is answered to a path or a method that is not served.

use super::fault_list::nearest;
use super::operations::DOCS;
use super::problem::{Problem, ProblemKind};
use super::published;
use axum::extract::Request;

/// The answer to a path that is not served.
pub async fn path(request: Request) -> Problem {
    not_found(request.uri().path())
}

/// The answer to a method that a path does not have. The router adds the Allow header.
pub async fn method(request: Request) -> Problem {
    let named = [("method", request.method().to_string()), ("path", shortened(request.uri().path()))];
    Problem::new(ProblemKind::MethodNotAllowed, "problem-detail-method-not-allowed", named)
}

/// The problem of a path that is not served, with the known path that is most like it.
pub fn not_found(path: &str) -> Problem {
    let known = published::paths().keys().map(String::as_str).chain([DOCS, "/openapi.json"]);
    let problem =
        Problem::new(ProblemKind::NotFound, "problem-detail-not-found", [("path", shortened(path))]);
    Problem { nearest: nearest(path, known), ..problem }
}

fn shortened(path: &str) -> String {
    path.chars().take(120).collect()
}
