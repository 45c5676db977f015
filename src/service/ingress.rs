//! Ingress state: what the middleware works with, from access control to the log.

use super::concurrency_limit::ConcurrencyLimit;
use super::keys::KeyRing;
use super::operations::Operations;
use super::rate_limit::Buckets;
use super::settings::Settings;
use super::telemetry::log::{LogRequests, RequestLog};
use super::telemetry::metrics::Metrics;
use super::telemetry::otlp::Traces;
use axum::http::HeaderValue;
use ipnet::IpNet;
use std::time::Instant;

/// The state of the middleware.
#[derive(Debug)]
pub struct Ingress {
    /// What is served.
    pub operations: Operations,
    /// The counts.
    pub metrics: Metrics,
    /// The concurrency limit.
    pub concurrency: ConcurrencyLimit,
    /// The API keys; without them no caller needs one.
    pub keys: Option<KeyRing>,
    /// The rate limit by address.
    pub addresses: Option<Buckets>,
    /// Proxies whose X-Forwarded-For is trusted.
    pub trusted_proxies: Vec<IpNet>,
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
    /// As the settings say, with keys and a queue of traces that are open already.
    pub fn of(settings: &Settings, keys: Option<KeyRing>, traces: Option<Traces>) -> Self {
        Self {
            concurrency: ConcurrencyLimit::new(settings.max_concurrent_requests),
            keys,
            addresses: settings.rate_limit.map(Buckets::new),
            trusted_proxies: settings.trusted_proxies.clone(),
            origins: settings.cors_origins.clone(),
            log: RequestLog::new(settings.log_requests),
            traces,
            is_tls: settings.tls_certificate.is_some(),
            metrics_apart: settings.metrics_bind.is_some(),
            ..Self::default()
        }
    }
}
