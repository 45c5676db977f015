//! Traces, sent to a collector: OTLP over HTTP in its JSON form (OpenTelemetry Protocol 1.x, `/v1/traces`).
//!
//! A span a request, made only for those that are sampled. Spans wait in a bounded queue and are sent in batches by a task of
//! their own; what does not fit or cannot be sent is counted and dropped. A collector that is slow or gone costs a request
//! nothing.
//!
//! `opentelemetry-otlp` was tried and not taken: with its SDK it adds 25 crates, protocol buffers among them, and
//! its exporter works only with a blocking client on a thread of its own. The document is one `json!`.

use super::metrics::Metrics;
use super::trace_context::TraceContext;
use axum::http::{HeaderName, HeaderValue};
use prometheus_client::metrics::counter::Counter;
#[cfg(feature = "client")]
use reqwest::{Client, Url, header, redirect};
use serde_json::{Value, json};
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::{Duration, SystemTime, UNIX_EPOCH};
use tokio::sync::mpsc::{self, Receiver, Sender};

/// Spans that wait at the most.
const QUEUE: usize = 2_048;
/// Spans that are sent at once at the most.
const BATCH: usize = 256;
/// How long a span waits for others, and how long sending may take.
const PAUSE: Duration = Duration::from_secs(1);
const LONGEST: Duration = Duration::from_secs(5);

/// Headers that a collector asks for; they may hold a credential.
pub type CollectorHeaders = Vec<(HeaderName, HeaderValue)>;

/// Where traces are sent.
#[derive(Clone)]
pub struct Collector {
    endpoint: String,
    headers: CollectorHeaders,
    one_in: u32,
}

/// The headers may hold a credential: they are never written out.
impl std::fmt::Debug for Collector {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.debug_struct("Collector").field("endpoint", &self.endpoint).finish_non_exhaustive()
    }
}

impl Collector {
    /// The collector at a URL.
    #[cfg(feature = "client")]
    pub fn at(text: &str) -> Result<Self, String> {
        let plain = |url: &Url| {
            matches!(url.scheme(), "http" | "https") && url.username().is_empty() && url.password().is_none()
        };
        match Url::parse(text).ok().filter(plain) {
            Some(endpoint) => Ok(Self { endpoint: endpoint.into(), headers: Vec::new(), one_in: 1 }),
            None => {
                Err("is not a URL such as http://127.0.0.1:4318/v1/traces, without credentials".to_owned())
            }
        }
    }

    /// Traces need an HTTP client, which this program was built without.
    #[cfg(not(feature = "client"))]
    pub fn at(_: &str) -> Result<Self, String> {
        Err("needs a program that is built with the feature `client`".to_owned())
    }

    /// Reads headers: `name=value,…`. The fault does not repeat them.
    pub fn headers(text: &str) -> Result<CollectorHeaders, String> {
        let wrong = || "is not a list such as name=value,name=value".to_owned();
        let header = |text: &str| {
            let (name, value) = text.split_once('=').ok_or_else(wrong)?;
            let name = name.trim().parse().map_err(|_| wrong())?;
            let mut value: HeaderValue = value.trim().parse().map_err(|_| wrong())?;
            value.set_sensitive(true);
            Ok((name, value))
        };
        text.split(',').map(header).collect()
    }

    /// With headers, for one in `one_in` requests.
    pub fn with(self, headers: CollectorHeaders, one_in: u32) -> Self {
        Self { headers, one_in, ..self }
    }
}

/// A request as a trace shows it.
#[derive(Clone, Debug)]
pub struct Span {
    /// The trace.
    pub trace: u128,
    /// This span.
    pub id: u64,
    /// The span of the caller.
    pub parent: Option<u64>,
    /// When it began.
    pub began: SystemTime,
    /// How long it took.
    pub took: Duration,
    /// The operation.
    pub operation: String,
    /// The HTTP method.
    pub method: String,
    /// The HTTP status.
    pub status: u16,
    /// The id of the request.
    pub request_id: String,
}

/// Takes spans for a collector.
#[derive(Debug)]
pub struct Traces {
    sender: Sender<Span>,
    one_in: u32,
    seen: AtomicU64,
}

impl Traces {
    /// The end that takes spans, and the queue that is to be sent.
    pub fn new(collector: &Collector) -> (Self, Receiver<Span>) {
        let (sender, receiver) = mpsc::channel(QUEUE);
        (Self { sender, one_in: collector.one_in, seen: AtomicU64::new(0) }, receiver)
    }

    /// The trace and the parent of a request that is sampled: the caller decides where it says anything.
    pub fn sampled(&self, context: Option<TraceContext>) -> Option<(u128, Option<u64>)> {
        match context {
            Some(context) => context.sampled.then_some((context.trace, Some(context.parent))),
            None => {
                let is_next = self.seen.fetch_add(1, Ordering::Relaxed).is_multiple_of(self.one_in.into());
                is_next.then(|| (u128::from(random()) << 64 | u128::from(random()), None))
            }
        }
    }

    /// Queues a span, or counts it as lost.
    pub fn take(&self, span: Span, metrics: &Metrics) {
        if self.sender.try_send(span).is_err() {
            metrics.lost_spans.inc();
        }
    }
}

/// A number that no other span has, for all practical purposes; never zero.
pub fn random() -> u64 {
    use std::hash::{BuildHasher, RandomState};
    // keyed anew for every process, and with another key each time
    RandomState::new().hash_one(0).max(1)
}

/// Sends spans until none can come any more.
#[cfg(feature = "client")]
pub async fn send(collector: Collector, mut queue: Receiver<Span>, lost_spans: Counter) {
    let client = client(&collector);
    let mut batch = Vec::with_capacity(BATCH);
    while queue.recv_many(&mut batch, BATCH).await > 0 {
        if batch.len() < BATCH {
            tokio::time::sleep(PAUSE).await;
            while batch.len() < BATCH {
                let Ok(span) = queue.try_recv() else { break };
                batch.push(span);
            }
        }
        let count = batch.len() as u64;
        if post(client.as_ref(), &collector.endpoint, &document(&batch)).await.is_none() {
            lost_spans.inc_by(count);
            tracing::warn!(count, "spans could not be sent to the collector");
        }
        batch.clear();
    }
}

/// Without an HTTP client there is no collector to send to.
#[cfg(not(feature = "client"))]
pub async fn send(_: Collector, _: Receiver<Span>, _: Counter) {}

/// A client that follows no redirect: the headers are for this collector alone.
#[cfg(feature = "client")]
fn client(collector: &Collector) -> Option<Client> {
    // the provider of another part of the program is as good
    let _ = tokio_rustls::rustls::crypto::ring::default_provider().install_default();
    let headers = collector.headers.iter().cloned();
    let client = Client::builder().default_headers(headers.collect()).timeout(LONGEST);
    client.redirect(redirect::Policy::none()).no_proxy().build().ok()
}

#[cfg(feature = "client")]
async fn post(client: Option<&Client>, endpoint: &str, document: &Value) -> Option<()> {
    let body = serde_json::to_vec(document).ok()?;
    let request = client?.post(endpoint).header(header::CONTENT_TYPE, "application/json");
    let response = request.body(body).send().await.and_then(reqwest::Response::error_for_status).ok()?;
    // the answer is read to its end, so that the collector sees its work acknowledged
    response.bytes().await.ok().map(|_| ())
}

/// An export request. Numbers of 64 bits are text in it, as the JSON form of protocol buffers asks.
fn document(spans: &[Span]) -> Value {
    let text = |key: &str, text: &str| json!({"key": key, "value": {"stringValue": text}});
    let span = |span: &Span| {
        let began = span.began.duration_since(UNIX_EPOCH).unwrap_or_default();
        let mut written = json!({
            "traceId": format!("{:032x}", span.trace),
            "spanId": format!("{:016x}", span.id),
            "name": span.operation,
            "kind": 2,
            "startTimeUnixNano": began.as_nanos().to_string(),
            "endTimeUnixNano": (began + span.took).as_nanos().to_string(),
            "attributes": [
                text("http.request.method", &span.method),
                {"key": "http.response.status_code", "value": {"intValue": span.status.to_string()}},
                text("elbowroom.request_id", &span.request_id),
            ],
            "status": {"code": if span.status >= 500 { 2 } else { 0 }},
        });
        if let Some(parent) = span.parent {
            written["parentSpanId"] = format!("{parent:016x}").into();
        }
        written
    };
    json!({"resourceSpans": [{
        "resource": {"attributes": [
            text("service.name", "elbowroom"),
            text("service.version", env!("CARGO_PKG_VERSION")),
        ]},
        "scopeSpans": [{
            "scope": {"name": "elbowroom"},
            "spans": spans.iter().map(span).collect::<Vec<_>>(),
        }],
    }]})
}
