//! What an operator can see: counts, log lines, traces. Never what a request contains.
//!
//! | module | what it is for |
//! |---|---|
//! | [`metrics`] | counts, kept as atomic numbers |
//! | [`exposition`] | the counts as Prometheus reads them |
//! | [`trace_context`] | the trace that a request belongs to (W3C) |
//! | [`log`] | which requests are logged, and how |
//! | [`otlp`] | traces, sent to a collector |

pub mod exposition;
pub mod log;
pub mod metrics;
pub mod otlp;
pub mod trace_context;
