//! The reference documentation: pages that are part of the binary and load nothing from elsewhere.

use super::fallback;
use super::problem::Problem;
use axum::extract::{Request, State};
use axum::http::{HeaderValue, header};
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::get;
use axum::{Router, body::Body};
use std::borrow::Cow;
use std::sync::{Arc, LazyLock};
use utoipa_swagger_ui::{Config, serve};

use super::state::Service;

pub use super::operations::DOCS as PATH;

/// What the pages may load: files of this service only. A browser refuses anything else.
const POLICY: &str = "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; \
     font-src 'self'; connect-src 'self'; frame-ancestors 'none'";

static CONFIG: LazyLock<Arc<Config<'static>>> = LazyLock::new(|| {
    // "none" keeps the pages from sending the document to a validator on the internet
    let config = Config::from("/openapi.json").validator_url("none").use_base_layout();
    Arc::new(config.deep_linking(true).default_models_expand_depth(0))
});

/// The routes of the pages and of the document that they show.
pub fn routes() -> Router<Arc<Service>> {
    Router::new()
        .route("/docs", get(|| async { Redirect::temporary("/docs/") }))
        .route("/docs/", get(page))
        .route("/docs/{file}", get(page))
        .route("/openapi.json", get(document))
}

async fn document(State(service): State<Arc<Service>>, request: Request) -> Result<Response, Problem> {
    service.documents().openapi.respond(request.headers())
}

async fn page(request: Request) -> Result<Response, Problem> {
    let path = request.uri().path();
    let file = path.rsplit('/').next().unwrap_or_default();
    let Ok(Some(found)) = serve(file, CONFIG.clone()) else { return Err(fallback::not_found(path)) };
    let content_type = HeaderValue::try_from(found.content_type).map_err(|_| Problem::internal())?;
    let headers = [
        (header::CONTENT_TYPE, content_type),
        (header::CONTENT_SECURITY_POLICY, HeaderValue::from_static(POLICY)),
        (header::CACHE_CONTROL, HeaderValue::from_static("public, max-age=3600")),
    ];
    let body = match found.bytes {
        Cow::Borrowed(bytes) => Body::from(bytes),
        Cow::Owned(bytes) => Body::from(bytes),
    };
    Ok((headers, body).into_response())
}
