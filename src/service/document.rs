//! Documents that stay the same while the service runs: written once, tagged by their content, served with 304.

use super::language;
use super::media;
use super::problem::Problem;
use axum::body::{Body, Bytes};
use axum::http::{HeaderMap, HeaderValue, StatusCode, header};
use axum::response::{IntoResponse, Response};
use serde::Serialize;
use sha2::{Digest, Sha256};

/// How long a copy may be used without asking again. A new ruleset comes with a new release, so an hour is no risk.
const CACHE_CONTROL: HeaderValue = HeaderValue::from_static("public, max-age=3600");

/// A JSON document with its strong entity tag: the SHA-256 of its bytes.
#[derive(Clone, Debug)]
pub struct Document {
    body: Bytes,
    tag: HeaderValue,
    /// Whether there is such a document in every language; the others are the same for every caller.
    has_words: bool,
}

impl Document {
    /// Writes a document.
    pub fn new(content: &impl Serialize) -> Result<Self, serde_json::Error> {
        Ok(Self::of(serde_json::to_vec(content)?))
    }

    /// Writes a document that is in the language of its words: there is one for each language, each with a tag of its own.
    pub fn in_words(content: &impl Serialize) -> Result<Self, serde_json::Error> {
        Ok(Self { has_words: true, ..Self::new(content)? })
    }

    /// A document that is already written.
    pub fn of(body: impl Into<Bytes>) -> Self {
        let body = body.into();
        let tag = HeaderValue::try_from(format!("\"{:x}\"", Sha256::digest(&body)))
            .unwrap_or_else(|_| HeaderValue::from_static("\"\""));
        Self { body, tag, has_words: false }
    }

    /// Answers with the document, or with 304 when the caller has it.
    pub fn respond(&self, headers: &HeaderMap) -> Result<Response, Problem> {
        media::takes_json(headers)?;
        let mut validators =
            HeaderMap::from_iter([(header::ETAG, self.tag.clone()), (header::CACHE_CONTROL, CACHE_CONTROL)]);
        if self.has_words {
            validators.extend(language::headers());
        }
        if self.is_known_to(headers) {
            return Ok((StatusCode::NOT_MODIFIED, validators).into_response());
        }
        let json = HeaderValue::from_static("application/json");
        Ok((validators, [(header::CONTENT_TYPE, json)], Body::from(self.body.clone())).into_response())
    }

    /// Whether If-None-Match names the tag. A weak tag matches too: the comparison is weak (RFC 9110, 13.1.2).
    fn is_known_to(&self, headers: &HeaderMap) -> bool {
        let tag = self.tag.to_str().unwrap_or_default();
        let known = headers.get_all(header::IF_NONE_MATCH).iter().filter_map(|value| value.to_str().ok());
        known
            .flat_map(|tags| tags.split(','))
            .map(str::trim)
            .any(|known| known == "*" || known.strip_prefix("W/").unwrap_or(known) == tag)
    }
}
