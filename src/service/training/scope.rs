//! Who may see the key of exercises, and a grade with it.

use super::super::access::Authorization;
use super::super::operations::ANSWER_KEY;
use super::super::problem::Problem;
use super::super::query;
use axum::http::request;

/// Whether a caller asks for the key, and may have it: the one place where that is decided.
pub(super) fn key(parts: &request::Parts, authorization: &Authorization) -> Result<bool, Problem> {
    let asked = query::flag(parts.uri.query(), "key")?;
    if asked {
        authorization.covers(ANSWER_KEY)?;
    }
    Ok(asked)
}
