//! What grading an answer costs over HTTP against a plain evaluation of the same request: how many times as much.
//!
//!     cargo bench --bench teaching
//!
//! Both go through the whole service, without a socket: with one, both cost the same more, and the ratio is smaller.

use axum::Router;
use axum::body::{Body, to_bytes};
use axum::http::Request;
use elbowroom::service::{Limits, Service, app};
use serde_json::{Value, json};
use std::hint::black_box;
use std::sync::Arc;
use std::time::{Duration, Instant};
use tower::ServiceExt;

const ROUNDS: u32 = 400;

fn main() {
    let runtime = tokio::runtime::Builder::new_current_thread().enable_all().build().expect("a runtime");
    runtime.block_on(measure());
}

async fn measure() {
    let app = app(Arc::new(Service::start(Limits::default()).expect("the service starts")));
    let outlet: Value = serde_json::from_str(include_str!("data/outlet-box.json")).expect("a request");
    let pull = json!({
        "entries": [
            {"id": "A", "wall": "left", "raceway": {"trade_size": "3"}},
            {"id": "B", "wall": "right", "raceway": {"trade_size": "3"}},
            {"id": "C", "wall": "left", "raceway": {"trade_size": "2"}},
            {"id": "D", "wall": "bottom", "raceway": {"trade_size": "2"}}
        ],
        "pulls": [
            {"entries": ["A", "B"], "largest_conductor": "350 kcmil"},
            {"entries": ["C", "D"], "largest_conductor": "4/0 AWG"}
        ]
    });
    for (check, path, request, unit, asks) in [
        ("outlet_box_fill", "/v1/outlet-boxes/fill", outlet, "in3", "required_volume"),
        ("pull_box_size", "/v1/pull-boxes/size", pull, "in", "width"),
    ] {
        let body = |value: Value| json!({"check": check, "request": request, "asks": asks, "answer": {"value": value, "unit": unit}});
        let right = ask(&app, "/v1/answers/grade?key=true", &body(json!(1))).await["key"]["value"].clone();
        let plain = time(&app, path, &request).await;
        println!("{check}: an evaluation takes {plain:?}");
        let wrong = right.as_f64().expect("a figure") + 0.0125;
        for (what, value) in [("a right answer", right), ("an answer that nothing explains", json!(wrong))] {
            let graded = time(&app, "/v1/answers/grade", &body(value)).await;
            println!("  {what}: {graded:?}, {:.2} times as much", graded.as_secs_f64() / plain.as_secs_f64());
        }
    }
}

/// The least of several times that a request takes, on average over many rounds.
async fn time(app: &Router, path: &str, request: &Value) -> Duration {
    let text = request.to_string();
    let mut least = Duration::MAX;
    for _ in 0..9 {
        let start = Instant::now();
        for _ in 0..ROUNDS {
            black_box(send(app, path, text.clone()).await);
        }
        least = least.min(start.elapsed() / ROUNDS);
    }
    least
}

async fn ask(app: &Router, path: &str, request: &Value) -> Value {
    serde_json::from_slice(&send(app, path, request.to_string()).await).expect("JSON")
}

async fn send(app: &Router, path: &str, body: String) -> Vec<u8> {
    let request = Request::post(path).header("content-type", "application/json").body(Body::from(body));
    let response = app.clone().oneshot(request.expect("a request")).await.expect("an answer");
    to_bytes(response.into_body(), usize::MAX).await.expect("a body").to_vec()
}
