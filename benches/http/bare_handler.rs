//! The least that an HTTP service in axum can do with an outlet box: decode the typed request, and serialise a ready typed
//! answer of the same bytes. No layer, no check, no sum. `benches/http.sh` measures the service against it.
//!
//! It reads the body as bytes, which is faster than axum's own `Json`, and writes into a buffer that is large enough.

use axum::Router;
use axum::body::Bytes;
use axum::http::{StatusCode, header};
use axum::response::IntoResponse;
use axum::routing::post;
use elbowroom::answers::{Explain, answer};
use elbowroom::checks::outlet_fill::{OutletFill, OutletFillRequest};
use elbowroom::checks::{Check, evaluate};
use elbowroom::i18n::Catalogue;
use std::error::Error;

fn main() -> Result<(), Box<dyn Error>> {
    let mut arguments = std::env::args().skip(1);
    let (Some(address), Some(body)) = (arguments.next(), arguments.next()) else {
        return Err("bare_handler ADDRESS REQUEST-FILE".into());
    };
    let request: OutletFillRequest = serde_json::from_slice(&std::fs::read(body)?)?;
    // kept for as long as the program runs
    let request: &'static OutletFillRequest = Box::leak(Box::new(request));
    let evaluation = Box::leak(Box::new(evaluate::<OutletFill>(request)));
    let ready = answer::<OutletFill>(request, evaluation, Explain::Full, Catalogue::english());
    let ready: &'static _ = Box::leak(Box::new(ready));
    let handler = async move |body: Bytes| {
        let Ok(request) = serde_json::from_slice::<OutletFillRequest>(&body) else {
            return StatusCode::BAD_REQUEST.into_response();
        };
        drop(std::hint::black_box(request));
        let mut json = Vec::with_capacity(16 * 1024);
        match serde_json::to_writer(&mut json, ready) {
            Ok(()) => ([(header::CONTENT_TYPE, "application/json")], json).into_response(),
            Err(_) => StatusCode::INTERNAL_SERVER_ERROR.into_response(),
        }
    };
    let runtime = tokio::runtime::Builder::new_multi_thread().enable_all().build()?;
    runtime.block_on(async move {
        let listener = tokio::net::TcpListener::bind(&address).await?;
        axum::serve(listener, Router::new().route(OutletFill::PATH, post(handler))).await?;
        Ok(())
    })
}
