//! HTTP: routes, problems, limits, the OpenAPI document.
//!
//! | module | what it is for |
//! |---|---|
//! | [`register`] | the checks: one line each, and everything else follows |
//! | [`check_route`] | body and query in, answer or problem out |
//! | [`combined`] | several checks at once: the review of a box, the comparison of editions |
//! | [`body`] | from bytes to a request without faults, or every fault |
//! | [`takeoff`] | many checks at once, answered line by line |
//! | [`certificate`] | results with their fingerprints, and whether they are what this service computes |
//! | [`audit`] | the conformance cases, run live |
//! | [`training`] | exercises, what is wrong with an answer, sheets to print |
//! | [`problem`], [`fault_list`] | what a caller gets when a request is not answered |
//! | [`catalogue`] | editions, tables, rules, disputed points and problems as cacheable documents |
//! | [`openapi`], [`published`] | the OpenAPI document: made from the routes themselves; as it is embedded and served |
//! | [`ui`] | the page at `/` |
//! | [`docs`] | the reference pages |
//! | [`language`] | the language of what a caller reads |
//! | [`middleware`] | what surrounds every request: request id, headers, counts, log line, guard against panics |
//! | [`ingress`] | the state that the middleware works with |
//! | [`access`] | access control: the [`concurrency_limit`], authentication by [`keys`], authorization by their scopes, the [`rate_limit`] by key or [`client_address`] |
//! | [`limits`] | what a request and a connection may take up |
//! | [`settings`] | what an operator may set |
//! | [`telemetry`] | metrics, log, traces |
//! | [`listen`] | connections: their limits and TLS |
//! | [`worker_pool`] | how many evaluations of takeoffs, audits and certificates run at a time |
//! | [`run`] | starting, and shutting down without dropping anyone |

pub mod access;
pub mod audit;
pub mod body;
pub mod catalogue;
pub mod certificate;
pub mod check_route;
pub mod client_address;
pub mod combined;
pub mod concurrency_limit;
pub mod docs;
pub mod document;
pub mod fallback;
pub mod fault_list;
pub mod health;
pub mod ingress;
pub mod keys;
pub mod language;
pub mod limits;
pub mod listen;
pub mod media;
pub mod middleware;
pub mod openapi;
pub mod operations;
pub mod problem;
pub mod published;
pub mod quality;
pub mod query;
pub mod rate_limit;
pub mod register;
pub mod run;
pub mod settings;
pub mod state;
pub mod takeoff;
pub mod telemetry;
pub mod training;
pub mod ui;
pub mod worker_pool;

pub use ingress::Ingress;
pub use limits::Limits;
pub use state::{Service, StartFault};

use axum::Router;
use axum::extract::State;
use axum::routing::get;
use std::sync::Arc;
use utoipa_axum::router::OpenApiRouter;

/// The routes that the OpenAPI document describes.
pub fn described_routes() -> OpenApiRouter<Arc<Service>> {
    let checks = register::CHECKS
        .iter()
        .fold(OpenApiRouter::default(), |router, check| router.routes(check_route::route(check)));
    let checks =
        checks.routes(takeoff::route::route()).merge(combined::routes()).merge(certificate::routes());
    checks.merge(training::routes()).merge(catalogue::routes()).merge(audit::routes()).merge(health::routes())
}

/// Every route, with everything that surrounds it.
pub fn app(service: Arc<Service>) -> Router {
    let (described, _) = described_routes().split_for_parts();
    let mut router = described.merge(ui::routes()).merge(docs::routes());
    if !service.ingress.metrics_apart {
        router = router.merge(metrics_route());
    }
    let router = router.fallback(fallback::path).method_not_allowed_fallback(fallback::method);
    middleware::wrap(router, &service).with_state(service)
}

/// Metrics and health alone, for an address that only the operator reaches.
pub fn operator_app(service: Arc<Service>) -> Router {
    let (health, _) = health::routes().split_for_parts();
    metrics_route().merge(health).fallback(fallback::path).with_state(service)
}

fn metrics_route() -> Router<Arc<Service>> {
    let respond = |State(service): State<Arc<Service>>| async move {
        service.metrics().respond(service.concurrency().current(), service.is_shutting_down())
    };
    Router::new().route(operations::METRICS, get(respond))
}
