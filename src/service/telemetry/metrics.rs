//! Metrics, as Prometheus scrapes them from `/metrics`.
//!
//! Every label has a closed set of values: operations, statuses that this service answers with, checks, reasons.

use super::process::ProcessCollector;
use crate::checks::Verdict;
use crate::rulebook::digest;
use crate::service::register::CHECKS;
use axum::http::{StatusCode, header};
use axum::response::{IntoResponse, Response};
use prometheus_client::encoding::{EncodeLabelSet, prometheus_text};
use prometheus_client::metrics::counter::Counter;
use prometheus_client::metrics::family::Family;
use prometheus_client::metrics::gauge::Gauge;
use prometheus_client::metrics::histogram::Histogram;
use prometheus_client::metrics::info::Info;
use prometheus_client::registry::Registry;
use std::sync::Arc;
use std::time::Duration;

/// Upper bounds of the buckets of durations, in seconds.
const BOUNDS: [f64; 14] =
    [5e-5, 1e-4, 2.5e-4, 5e-4, 1e-3, 2.5e-3, 5e-3, 1e-2, 2.5e-2, 5e-2, 0.1, 1.0, 10.0, 100.0];

#[derive(Clone, Debug, PartialEq, Eq, Hash, EncodeLabelSet)]
struct OperationLabel {
    operation: Arc<str>,
}

#[derive(Clone, Debug, PartialEq, Eq, Hash, EncodeLabelSet)]
struct RequestLabels {
    operation: Arc<str>,
    status: u16,
}

/// Labels whose values are known when the service starts.
type Labels<const N: usize> = [(&'static str, &'static str); N];

/// Why a request or a connection was rejected.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TurnedAway {
    /// Too many requests at once.
    Busy,
    /// Too many connections.
    Connections,
    /// The address asked too often.
    AddressRate,
    /// The quota of the key is used up.
    KeyQuota,
    /// No key, or none that is known and in force.
    Key,
    /// The key is for something else.
    Scope,
}

impl TurnedAway {
    /// The name of each, in the order of the variants.
    const NAMES: [&'static str; 6] = ["busy", "connections", "address_rate", "key_quota", "key", "scope"];
}

/// How a line of a stream ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StreamLine {
    /// With an answer.
    Answered,
    /// With a problem.
    Refused,
}

/// The metrics of a service, each a handle that is kept where it is counted.
#[derive(Debug)]
pub struct Metrics {
    registry: Registry,
    operations: Vec<Arc<str>>,
    requests: Family<RequestLabels, Counter>,
    durations: Family<OperationLabel, Histogram>,
    in_progress: Gauge,
    /// By check, in the order of the register, and by verdict; the last is that of a request which asks only for a size.
    verdicts: Vec<[Counter; 4]>,
    stream_lines: [Counter; 2],
    turned_away: [Counter; TurnedAway::NAMES.len()],
    reloads: [Counter; 2],
    shutting_down: Gauge,
    /// Connections that are open.
    pub connections: Gauge,
    /// Spans that could not be sent.
    pub lost_spans: Counter,
}

impl Metrics {
    /// All at zero, for operations with these ids.
    pub fn new<'a>(operations: impl Iterator<Item = &'a str>) -> Self {
        let mut registry = Registry::default();
        let requests = Family::default();
        let durations = Family::<OperationLabel, Histogram>::new_with_constructor(|| Histogram::new(BOUNDS));
        let in_progress = Gauge::default();
        registry.register("http_requests", "Answers by operation and status", requests.clone());
        let help = "Time from a request to its answer";
        registry.register("http_request_duration_seconds", help, durations.clone());
        let help = "Requests that are being answered";
        registry.register("http_requests_in_progress", help, in_progress.clone());
        registry.register_collector(Box::new(ProcessCollector));

        let own = registry.sub_registry_with_prefix("elbowroom");
        let build = Info::new([("version", env!("CARGO_PKG_VERSION")), ("ruleset", digest::whole())]);
        own.register("build", "What is running, and under which rules", build);
        let by_check = Family::<Labels<2>, Counter>::default();
        own.register("verdicts", "Verdicts by check, streams included", by_check.clone());
        let verdicts = |check: &'static str| {
            ["complies", "violates", "not_determined", "none"]
                .map(|verdict| by_check.get_or_create_owned(&[("check", check), ("verdict", verdict)]))
        };
        let verdicts = CHECKS.iter().map(|check| verdicts(check.name)).collect();
        let stream_lines =
            counters(own, "stream_lines", "Lines of streams", "result", ["answered", "refused"]);
        let help = "Requests and connections that were turned away";
        let turned_away = counters(own, "rejections", help, "reason", TurnedAway::NAMES);
        let help = "Reloads of keys and certificates";
        let reloads = counters(own, "reloads", help, "result", ["done", "refused"]);
        let (connections, shutting_down, lost_spans) =
            (Gauge::default(), Gauge::default(), Counter::default());
        own.register("open_connections", "Connections that are open", connections.clone());
        own.register("shutting_down", "Whether the service is shutting down", shutting_down.clone());
        own.register("dropped_spans", "Spans that could not be sent to the collector", lost_spans.clone());
        Self {
            registry,
            operations: operations.map(Arc::from).collect(),
            requests,
            durations,
            in_progress,
            verdicts,
            stream_lines,
            turned_away,
            reloads,
            shutting_down,
            connections,
            lost_spans,
        }
    }

    /// Counts an answer of an operation: 0.13 µs, with the series looked up by their labels, so that only those appear which
    /// were counted.
    pub fn answered(&self, operation: usize, status: StatusCode, took: Duration) {
        let Some(operation) = self.operations.get(operation) else { return };
        let labels = RequestLabels { operation: Arc::clone(operation), status: status.as_u16() };
        self.requests.get_or_create(&labels).inc();
        let label = OperationLabel { operation: labels.operation };
        self.durations.get_or_create(&label).observe(took.as_secs_f64());
    }

    /// Counts a verdict of a check, by its name.
    pub fn verdict(&self, check: &str, verdict: Option<Verdict>) {
        let index = match verdict {
            Some(Verdict::Complies) => 0,
            Some(Verdict::Violates) => 1,
            Some(Verdict::NotDetermined) => 2,
            None => 3,
        };
        let known = CHECKS.iter().position(|known| known.name == check);
        if let Some(verdicts) = known.and_then(|known| self.verdicts.get(known)) {
            verdicts[index].inc();
        }
    }

    /// Counts a line of a stream.
    pub fn stream_line(&self, line: StreamLine) {
        self.stream_lines[usize::from(line == StreamLine::Refused)].inc();
    }

    /// Counts what was turned away.
    pub fn turned_away(&self, reason: TurnedAway) {
        self.turned_away[reason as usize].inc();
    }

    /// Counts a reload.
    pub fn reloaded(&self, done: bool) {
        self.reloads[usize::from(!done)].inc();
    }

    /// The answer of `/metrics`, with what is known elsewhere.
    pub fn respond(&self, in_progress: u32, is_shutting_down: bool) -> Response {
        self.in_progress.set(in_progress.into());
        self.shutting_down.set(is_shutting_down.into());
        let mut text = String::new();
        if prometheus_text::encode(&mut text, &self.registry).is_err() {
            return StatusCode::INTERNAL_SERVER_ERROR.into_response();
        }
        let headers =
            [(header::CONTENT_TYPE, prometheus_text::CONTENT_TYPE), (header::CACHE_CONTROL, "no-store")];
        (headers, text).into_response()
    }
}

/// Registers a counter for each value of one label.
fn counters<const N: usize>(
    registry: &mut Registry,
    name: &str,
    help: &str,
    label: &'static str,
    values: [&'static str; N],
) -> [Counter; N] {
    let family = Family::<Labels<1>, Counter>::default();
    registry.register(name, help, family.clone());
    values.map(|value| family.get_or_create_owned(&[(label, value)]))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_reason_has_its_own_name() {
        assert_eq!(TurnedAway::NAMES[TurnedAway::Busy as usize], "busy");
        assert_eq!(TurnedAway::NAMES[TurnedAway::KeyQuota as usize], "key_quota");
        assert_eq!(TurnedAway::NAMES[TurnedAway::Scope as usize], "scope");
    }
}
