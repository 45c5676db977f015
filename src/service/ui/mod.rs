//! The web UI, the page at `/`: choose a check, say what is in the box, look at what comes back. It is part of the binary,
//! loads nothing from elsewhere, and does nothing that another caller could not do.

mod html;

use super::certificate;
use super::fallback;
use super::language;
use super::problem::Problem;
use super::state::Service;
use crate::content_policy::digest_of;
use crate::drawing;
use crate::i18n::{Catalogue, Language};
use axum::Router;
use axum::extract::Request;
use axum::http::header;
use axum::response::{IntoResponse, Response};
use axum::routing::get;
use sha2::{Digest, Sha256};
use std::sync::{Arc, LazyLock};

const JAVASCRIPT: &str = "text/javascript; charset=utf-8";

/// The files that the page loads: name, type, text.
const FILES: &[(&str, &str, &str)] = &[
    ("answer.js", JAVASCRIPT, include_str!("page/answer.js")),
    ("api.js", JAVASCRIPT, include_str!("page/api.js")),
    ("audit.js", JAVASCRIPT, include_str!("page/audit.js")),
    ("ui.css", "text/css; charset=utf-8", include_str!("page/ui.css")),
    ("certificate.js", JAVASCRIPT, include_str!("page/certificate.js")),
    ("dom.js", JAVASCRIPT, include_str!("page/dom.js")),
    ("editions.js", JAVASCRIPT, include_str!("page/editions.js")),
    ("figures.js", JAVASCRIPT, include_str!("page/figures.js")),
    ("form.js", JAVASCRIPT, include_str!("page/form.js")),
    ("main.js", JAVASCRIPT, include_str!("page/main.js")),
    ("mark.svg", "image/svg+xml", include_str!("page/mark.svg")),
    ("proof.js", JAVASCRIPT, include_str!("page/proof.js")),
];

/// A mark of the content of all files: a new release is not mixed with files that a browser kept of the last.
static VERSION: LazyLock<String> = LazyLock::new(|| {
    let mut hash = Sha256::new();
    FILES.iter().for_each(|(_, _, text)| hash.update(text));
    format!("{:.12x}", hash.finalize())
});

/// The content security policy (CSP) of the page: files of this service, and the styles of the drawings and certificates that it
/// shows.
static POLICY: LazyLock<String> = LazyLock::new(|| {
    format!(
        "default-src 'none'; script-src 'self'; style-src 'self' {} {}; img-src 'self' data:; connect-src 'self'; \
         base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
        digest_of(drawing::style()),
        digest_of(certificate::PAGE_STYLE)
    )
});

/// The routes of the page and of the files that it loads.
pub fn routes() -> Router<Arc<Service>> {
    Router::new().route("/", get(page)).route("/ui/{file}", get(file))
}

async fn page(request: Request) -> Response {
    let language = asked(request.uri().query()).unwrap_or_else(language::spoken);
    let html = html::page(Catalogue::of(language), &VERSION);
    let headers = [
        (header::CONTENT_TYPE, "text/html; charset=utf-8"),
        (header::CONTENT_SECURITY_POLICY, &POLICY),
        (header::CONTENT_LANGUAGE, language.tag()),
        (header::VARY, "accept-language"),
        (header::CACHE_CONTROL, "no-cache"),
    ];
    (headers, html).into_response()
}

/// The language that the address asks for, whatever the browser prefers: `/?language=es`.
fn asked(query: Option<&str>) -> Option<Language> {
    let mut pairs = form_urlencoded::parse(query?.as_bytes());
    pairs.find(|(name, _)| name == "language").and_then(|(_, tag)| Language::named(&tag))
}

async fn file(request: Request) -> Result<Response, Problem> {
    let path = request.uri().path();
    let name = path.rsplit('/').next().unwrap_or_default();
    let file = FILES.iter().find(|(known, ..)| *known == name);
    let (_, kind, text) = file.ok_or_else(|| fallback::not_found(path))?;
    let headers = [(header::CONTENT_TYPE, *kind), (header::CACHE_CONTROL, "public, max-age=3600")];
    Ok((headers, *text).into_response())
}
