//! What the routes share: limits, the documents that stay the same, whether the service is shutting down.

use super::admission::Admission;
use super::catalogue::Library;
use super::front::Front;
use super::operations::Operations;
use super::telemetry::metrics::Metrics;
use crate::tables::{LoadFault, Tables};
use crate::words::{Catalogue, CatalogueFault};
use std::fmt;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::Duration;

/// What a request may take up.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Limits {
    /// The largest body that is read, in bytes.
    pub largest_body: usize,
    /// How long a body may take to arrive. Evaluating it takes microseconds, so this bounds the whole request.
    pub longest_wait: Duration,
}

impl Default for Limits {
    fn default() -> Self {
        Self { largest_body: 1024 * 1024, longest_wait: Duration::from_secs(10) }
    }
}

/// The state of the service. Nothing that an answer is made from changes in it.
#[derive(Debug)]
pub struct Service {
    limits: Limits,
    library: Library,
    front: Front,
    leaving: AtomicBool,
}

/// Why the service cannot start.
#[derive(Debug)]
pub enum StartFault {
    /// A table does not read.
    Table(LoadFault),
    /// The message catalogue does not read.
    Words(CatalogueFault),
    /// A document cannot be written.
    Document(serde_json::Error),
}

impl fmt::Display for StartFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Table(fault) => fault.fmt(f),
            Self::Words(fault) => fault.fmt(f),
            Self::Document(fault) => write!(f, "document: {fault}"),
        }
    }
}

impl std::error::Error for StartFault {}

impl Service {
    /// Reads what the service is made from, strictly: it does not start on a table or a catalogue with a fault.
    pub fn start(limits: Limits) -> Result<Self, StartFault> {
        Self::start_behind(Front::default(), limits)
    }

    /// The same, with what stands between callers and the routes.
    pub fn start_behind(front: Front, limits: Limits) -> Result<Self, StartFault> {
        Tables::load().map_err(StartFault::Table)?;
        Catalogue::check_english().map_err(StartFault::Words)?;
        let library = Library::write().map_err(StartFault::Document)?;
        Ok(Self { limits, library, front, leaving: AtomicBool::new(false) })
    }

    /// What a request may take up.
    pub const fn limits(&self) -> Limits {
        self.limits
    }

    /// The documents that stay the same.
    pub const fn library(&self) -> &Library {
        &self.library
    }

    /// What stands between callers and the routes.
    pub const fn front(&self) -> &Front {
        &self.front
    }

    /// What is served.
    pub const fn operations(&self) -> &Operations {
        &self.front.operations
    }

    /// The counts.
    pub const fn metrics(&self) -> &Metrics {
        &self.front.metrics
    }

    /// The requests that are being answered.
    pub const fn admission(&self) -> &Admission {
        &self.front.admission
    }

    /// Says that the service is shutting down.
    pub fn leave(&self) {
        self.leaving.store(true, Ordering::Relaxed);
    }

    /// Whether the service is shutting down.
    pub fn is_leaving(&self) -> bool {
        self.leaving.load(Ordering::Relaxed)
    }
}
