//! The reference documentation: pages that are part of the binary and load nothing from elsewhere.

use super::fallback;
use super::problem::Problem;
use axum::Router;
use axum::extract::{Request, State};
use axum::http::header;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::get;
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
    service.documents.openapi.respond(request.headers())
}

async fn page(request: Request) -> Result<Response, Problem> {
    let path = request.uri().path();
    let file = path.rsplit('/').next().unwrap_or_default();
    let Ok(Some(found)) = serve(file, CONFIG.clone()) else { return Err(fallback::not_found(path)) };
    let headers = [
        (header::CONTENT_TYPE, found.content_type.as_str()),
        (header::CONTENT_SECURITY_POLICY, POLICY),
        (header::CACHE_CONTROL, "public, max-age=3600"),
    ];
    Ok((headers, found.bytes).into_response())
}
