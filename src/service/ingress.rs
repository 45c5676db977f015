//! What stands between a caller and the routes: who is let in, what is counted, what is logged.

use super::concurrency_limit::ConcurrencyLimit;
use super::keys::KeyRing;
use super::operations::Operations;
use super::rate_limit::Buckets;
use super::settings::Settings;
use super::settings::values::Network;
use super::telemetry::log::{LogRequests, RequestLog};
use super::telemetry::metrics::Metrics;
use super::telemetry::otlp::Traces;
use axum::http::HeaderValue;
use std::time::Instant;

/// Everything that the gate and the frame share.
#[derive(Debug)]
pub struct Ingress {
    /// What is served.
    pub operations: Operations,
    /// The counts.
    pub metrics: Metrics,
    /// The requests that are being answered.
    pub concurrency: ConcurrencyLimit,
    /// The keys; without them nobody is asked for one.
    pub keys: Option<KeyRing>,
    /// How often an address may ask.
    pub addresses: Option<Buckets>,
    /// Proxies whose word on the address of a caller is taken.
    pub trusted_proxies: Vec<Network>,
    /// Origins whose pages may call.
    pub origins: Vec<HeaderValue>,
    /// Which requests are logged.
    pub log: RequestLog,
    /// Takes spans.
    pub traces: Option<Traces>,
    /// Whether callers come over TLS.
    pub is_tls: bool,
    /// Whether metrics are served on an address of their own.
    pub metrics_apart: bool,
    /// When the service started.
    pub started: Instant,
}

impl Default for Ingress {
    /// Lets everyone in and logs nothing.
    fn default() -> Self {
        let operations = Operations::of_the_service();
        Self {
            metrics: Metrics::new(operations.all().iter().map(|operation| operation.id.as_str())),
            operations,
            concurrency: ConcurrencyLimit::new(u32::MAX),
            keys: None,
            addresses: None,
            trusted_proxies: Vec::new(),
            origins: Vec::new(),
            log: RequestLog::new(LogRequests::None),
            traces: None,
            is_tls: false,
            metrics_apart: false,
            started: Instant::now(),
        }
    }
}

impl Ingress {
    /// As the settings say; the keys and the queue of traces are opened by whoever runs the service.
    pub fn of(settings: &Settings, keys: Option<KeyRing>, traces: Option<Traces>) -> Self {
        let origins = settings.cors_origins.iter().filter_map(|origin| origin.parse().ok()).collect();
        Self {
            concurrency: ConcurrencyLimit::new(settings.most_requests),
            keys,
            addresses: settings.address_rate.map(Buckets::new),
            trusted_proxies: settings.trusted_proxies.clone(),
            origins,
            log: RequestLog::new(settings.log_requests),
            traces,
            is_tls: settings.tls.is_some(),
            metrics_apart: settings.metrics_bind.is_some(),
            ..Self::default()
        }
    }
}
