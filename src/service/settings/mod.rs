//! What an operator may set: by flag, by environment variable, in a settings file (TOML), in this order of precedence.
//!
//! [`Settings`] is the only list: clap derives flag, environment variable, default and help from a field, and its name is
//! that of the member of the file. [`sources`] finds the value in force and every fault; [`values`] parses.

pub mod sources;
pub mod values;

pub use sources::Sources;

use super::limits::{ConnectionLimits, Limits};
use super::telemetry::log::{LogFormat, LogRequests};
use super::telemetry::otlp::{Collector, CollectorHeaders};
use axum::http::HeaderValue;
use clap::Args;
use ipnet::IpNet;
use std::net::SocketAddr;
use std::path::PathBuf;
use std::time::Duration;

/// Requests a minute, or as many as come. An alias, for clap takes an `Option` for a flag that may be absent.
type PerMinute = Option<u32>;

/// Everything that is set. What an operator may not see again has `hide_env_values`.
#[derive(Args, Clone, Debug)]
pub struct Settings {
    /// Address and port to listen on; port 0 takes any free one
    #[arg(long, env = "ELBOWROOM_BIND", value_name = "ADDRESS:PORT", default_value = "127.0.0.1:8314", value_parser = values::address)]
    pub bind: SocketAddr,
    /// Serve /metrics and health on this address only, without a key
    #[arg(long, env = "ELBOWROOM_METRICS_BIND", value_name = "ADDRESS:PORT", value_parser = values::address)]
    pub metrics_bind: Option<SocketAddr>,
    /// Require an API key from this file of every caller; reloaded when it changes and on SIGHUP
    #[arg(long, env = "ELBOWROOM_KEYS", value_name = "FILE")]
    pub keys: Option<PathBuf>,
    /// Serve an address that others can reach without requiring keys
    #[arg(long, env = "ELBOWROOM_WITHOUT_KEYS", value_name = "BOOL", default_value = "false", num_args = 0..=1, require_equals = true, default_missing_value = "true", action = clap::ArgAction::Set)]
    pub without_keys: bool,
    /// Serve TLS with this certificate chain (PEM); reloaded when it changes and on SIGHUP
    #[arg(long, env = "ELBOWROOM_TLS_CERTIFICATE", value_name = "FILE")]
    pub tls_certificate: Option<PathBuf>,
    /// Private key of the certificate (PEM)
    #[arg(long, env = "ELBOWROOM_TLS_KEY", value_name = "FILE")]
    pub tls_key: Option<PathBuf>,
    /// Sign certificates with the Ed25519 private key in this file (PEM); public keys in it still verify
    #[arg(long, env = "ELBOWROOM_SIGNING_KEY", value_name = "FILE")]
    pub signing_key: Option<PathBuf>,
    /// Origins whose pages may call the service (CORS), separated by commas
    #[arg(long, env = "ELBOWROOM_CORS_ORIGINS", value_name = "ORIGINS", value_delimiter = ',', value_parser = values::origin)]
    pub cors_origins: Vec<HeaderValue>,
    /// Addresses or networks of proxies whose X-Forwarded-For is trusted, separated by commas
    #[arg(long, env = "ELBOWROOM_TRUSTED_PROXIES", value_name = "NETWORKS", value_delimiter = ',', value_parser = values::network)]
    pub trusted_proxies: Vec<IpNet>,
    /// What a request may take up.
    #[command(flatten)]
    pub limits: Limits,
    /// What a connection may take up.
    #[command(flatten)]
    pub connections: ConnectionLimits,
    /// Concurrency limit: requests that are answered at once; further ones are answered 503
    #[arg(long, env = "ELBOWROOM_MAX_CONCURRENT_REQUESTS", value_name = "COUNT", default_value = "1024", value_parser = values::count)]
    pub max_concurrent_requests: u32,
    /// Rate limit: requests a minute from one address, or none; 6000 by default where others can reach the service
    #[arg(long, env = "ELBOWROOM_RATE_LIMIT", value_name = "COUNT", default_value = "none", value_parser = values::count_or_none)]
    pub rate_limit: PerMinute,
    /// How long to report "not ready" after the shutdown signal while still accepting connections
    #[arg(long, env = "ELBOWROOM_SHUTDOWN_DELAY", value_name = "TIME", default_value = "0s", value_parser = values::duration)]
    pub shutdown_delay: Duration,
    /// How long running requests then have to finish
    #[arg(long, env = "ELBOWROOM_SHUTDOWN_GRACE", value_name = "TIME", default_value = "15s", value_parser = values::duration)]
    pub shutdown_grace: Duration,
    /// What is logged, by module and level
    #[arg(long, env = "ELBOWROOM_LOG", value_name = "FILTER", default_value = "warn,elbowroom=info", value_parser = LogFormat::filter)]
    pub log: String,
    /// How a log line is written: text or json
    #[arg(long, env = "ELBOWROOM_LOG_FORMAT", value_name = "FORMAT", default_value = "text", value_parser = LogFormat::read)]
    pub log_format: LogFormat,
    /// Requests that are logged: all, none, failures, or COUNT for failures and one in COUNT of the others
    #[arg(long, env = "ELBOWROOM_LOG_REQUESTS", value_name = "WHICH", default_value = "failures", value_parser = LogRequests::read)]
    pub log_requests: LogRequests,
    /// Send traces to this collector (OTLP over HTTP, JSON)
    #[arg(long, env = "ELBOWROOM_OTLP_ENDPOINT", value_name = "URL", value_parser = Collector::at)]
    pub otlp_endpoint: Option<Collector>,
    /// Headers that the collector requires; never shown
    #[arg(long, env = "ELBOWROOM_OTLP_HEADERS", value_name = "NAME=VALUE,…", hide_env_values = true, value_parser = Collector::headers)]
    pub otlp_headers: Option<CollectorHeaders>,
    /// Trace one in COUNT requests, and those whose caller asks for it
    #[arg(long, env = "ELBOWROOM_OTLP_SAMPLE", value_name = "COUNT", default_value = "100", value_parser = values::count)]
    pub otlp_sample: u32,
}

impl Settings {
    /// Where traces are sent.
    pub fn collector(&self) -> Option<Collector> {
        let headers = self.otlp_headers.clone().unwrap_or_default();
        self.otlp_endpoint.clone().map(|collector| collector.with(headers, self.otlp_sample))
    }
}

#[cfg(test)]
mod tests;
