//! What an operator can see (observability): metrics, log lines, traces. Never what a request contains.
//!
//! | module | what it is for |
//! |---|---|
//! | [`metrics`] | metrics for Prometheus, served at `/metrics` |
//! | `process` | the metrics of the process: memory, processor time, file descriptors |
//! | [`trace_context`] | the trace that a request belongs to (W3C) |
//! | [`log`] | which requests are logged, and how |
//! | [`otlp`] | traces, sent to a collector |

pub mod log;
pub mod metrics;
#[cfg_attr(
    not(feature = "client"),
    expect(dead_code, reason = "without an HTTP client nothing sends traces")
)]
pub mod otlp;
mod process;
pub mod trace_context;
