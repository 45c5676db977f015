//! The counts in the text form that Prometheus reads (version 0.0.4).

use super::metrics::{BOUNDS, Metrics, STATUSES, TurnedAway, VERDICTS};
use crate::answers::ruleset_digest;
use crate::service::register::CHECKS;
use crate::service::state::Service;
use axum::http::{HeaderValue, header};
use axum::response::{IntoResponse, Response};
use std::fmt::Write as _;
use std::fs;

const MEDIA_TYPE: HeaderValue = HeaderValue::from_static("text/plain; version=0.0.4; charset=utf-8");

/// The answer of `/metrics`.
pub fn respond(service: &Service) -> Response {
    let headers =
        [(header::CONTENT_TYPE, MEDIA_TYPE), (header::CACHE_CONTROL, HeaderValue::from_static("no-store"))];
    (headers, text(service)).into_response()
}

/// Text that grows family by family.
#[derive(Default)]
struct Page(String);

impl Page {
    fn family(&mut self, name: &str, kind: &str, help: &str) {
        self.0.push_str(&format!("# HELP elbowroom_{name} {help}\n# TYPE elbowroom_{name} {kind}\n"));
    }

    fn line(&mut self, name: &str, labels: &[(&str, &str)], value: u64) {
        self.0.push_str("elbowroom_");
        self.0.push_str(name);
        for (index, (label, text)) in labels.iter().enumerate() {
            // labels are names of operations, checks and reasons: nothing in them needs escaping
            let before = if index == 0 { '{' } else { ',' };
            let _ = write!(self.0, "{before}{label}=\"{text}\"");
        }
        let end = if labels.is_empty() { "" } else { "}" };
        let _ = writeln!(self.0, "{end} {value}");
    }

    fn gauge(&mut self, name: &str, help: &str, value: u64) {
        self.family(name, "gauge", help);
        self.line(name, &[], value);
    }
}

/// Every count of a service.
pub fn text(service: &Service) -> String {
    let metrics = service.metrics();
    let mut page = Page::default();
    operations(&mut page, service, metrics);
    page.family("verdicts_total", "counter", "Verdicts by check, streams included.");
    for (check, verdicts) in CHECKS.iter().zip(&metrics.verdicts) {
        for (verdict, count) in VERDICTS.iter().zip(verdicts) {
            page.line("verdicts_total", &[("check", check.name), ("verdict", verdict)], count.get());
        }
    }
    page.family("stream_lines_total", "counter", "Lines of streams.");
    for (result, count) in ["answered", "refused"].iter().zip(&metrics.stream_lines) {
        page.line("stream_lines_total", &[("result", result)], count.get());
    }
    page.family("turned_away_total", "counter", "Requests and connections that were turned away.");
    for ((_, reason), count) in TurnedAway::ALL.iter().zip(&metrics.turned_away) {
        page.line("turned_away_total", &[("reason", reason)], count.get());
    }
    page.family("reloads_total", "counter", "Reloads of keys and certificates.");
    for (result, count) in ["done", "refused"].iter().zip(&metrics.reloads) {
        page.line("reloads_total", &[("result", result)], count.get());
    }
    page.family("lost_spans_total", "counter", "Spans that could not be sent to the collector.");
    page.line("lost_spans_total", &[], metrics.lost_spans.get());
    page.gauge(
        "requests_in_progress",
        "Requests that are being answered.",
        service.concurrency().inside().into(),
    );
    page.gauge("connections_open", "Connections that are open.", metrics.connections.get());
    page.gauge("leaving", "Whether the service is shutting down.", service.is_shutting_down().into());
    page.family("build_info", "gauge", "What is running, and under which rules.");
    let build = [("version", env!("CARGO_PKG_VERSION")), ("ruleset", ruleset_digest())];
    page.line("build_info", &build, 1);
    process(&mut page);
    page.0
}

fn operations(page: &mut Page, service: &Service, metrics: &Metrics) {
    let all = || service.operations().all().iter().zip(&metrics.operations);
    page.family("requests_total", "counter", "Answers by operation and status.");
    for (operation, counts) in all() {
        for (status, count) in STATUSES.iter().zip(&counts.statuses).filter(|(_, count)| count.get() > 0) {
            let status = if *status == 0 { "other".to_owned() } else { status.to_string() };
            page.line("requests_total", &[("operation", &operation.id), ("status", &status)], count.get());
        }
    }
    page.family("request_duration_seconds", "histogram", "Time from a request to its answer.");
    for (operation, counts) in
        all().filter(|(_, counts)| counts.durations.iter().any(|count| count.get() > 0))
    {
        let mut sum = 0;
        let bounds = BOUNDS.iter().map(|micros| seconds(*micros)).chain(["+Inf".to_owned()]);
        for (bound, count) in bounds.zip(&counts.durations) {
            sum += count.get();
            page.line(
                "request_duration_seconds_bucket",
                &[("operation", &operation.id), ("le", &bound)],
                sum,
            );
        }
        let total = seconds(counts.micros.get());
        let _ = writeln!(
            page.0,
            "elbowroom_request_duration_seconds_sum{{operation=\"{}\"}} {total}",
            operation.id
        );
        page.line("request_duration_seconds_count", &[("operation", &operation.id)], sum);
    }
}

/// Microseconds as seconds.
fn seconds(micros: u64) -> String {
    format!("{}.{:06}", micros / 1_000_000, micros % 1_000_000)
}

/// What the operating system says of the process, where it says so.
fn process(page: &mut Page) {
    let field = |text: &str, name: &str| -> Option<u64> {
        text.lines().find_map(|line| line.strip_prefix(name))?.split_whitespace().next()?.parse().ok()
    };
    if let Some(kilobytes) =
        fs::read_to_string("/proc/self/status").ok().and_then(|text| field(&text, "VmRSS:"))
    {
        page.gauge("resident_memory_bytes", "Memory that is held.", kilobytes * 1024);
    }
    if let Ok(open) = fs::read_dir("/proc/self/fd") {
        page.gauge("open_files", "File descriptors that are open.", open.count() as u64);
    }
}
