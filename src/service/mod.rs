//! HTTP: routes, problems, limits, the OpenAPI document.
//!
//! | module | what it is for |
//! |---|---|
//! | [`register`] | the checks: one line each, and everything else follows |
//! | [`check_route`] | body and query in, answer or problem out |
//! | [`combined`] | several checks at once: the review of a box, the comparison of editions |
//! | [`body`] | from bytes to a request without faults, or every fault |
//! | [`takeoff`] | many checks at once, answered line by line |
//! | [`training`] | exercises, what is wrong with an answer, sheets to print |
//! | [`problem`], [`fault_list`] | what a caller is told when a request is not answered |
//! | [`catalogue`] | editions, tables, rules, disputed points and problems as cacheable documents |
//! | [`openapi`] | the document, from the routes themselves |
//! | [`docs`] | the reference pages |
//! | [`language`] | in which language a caller is told |
//! | [`frame`] | request id, headers, log line, guard against panics |
//! | [`stall`] | connections of callers who do not read |
//! | [`run`] | listening, and shutting down without dropping anyone |

pub mod body;
pub mod catalogue;
pub mod check_route;
pub mod combined;
pub mod docs;
pub mod document;
pub mod fault_list;
pub mod frame;
pub mod health;
pub mod language;
pub mod media;
pub mod openapi;
pub mod problem;
pub mod query;
pub mod register;
pub mod run;
pub mod stall;
pub mod state;
pub mod takeoff;
pub mod training;
pub mod unknown;

pub use state::{Limits, Service, StartFault};

use axum::Router;
use std::sync::Arc;
use utoipa_axum::router::OpenApiRouter;

/// The routes that the OpenAPI document describes.
pub fn described_routes() -> OpenApiRouter<Arc<Service>> {
    let checks = register::CHECKS
        .iter()
        .fold(OpenApiRouter::default(), |router, check| router.routes(check_route::route(check)));
    let checks = checks.routes(takeoff::route::route()).merge(combined::routes());
    checks.merge(training::routes()).merge(catalogue::routes()).merge(health::routes())
}

/// Every route, with everything that surrounds it.
pub fn app(service: Arc<Service>) -> Router {
    let (described, _) = described_routes().split_for_parts();
    let router =
        described.merge(docs::routes()).fallback(unknown::path).method_not_allowed_fallback(unknown::method);
    frame::around(router).with_state(service)
}
