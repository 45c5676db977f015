//! How many requests are answered at once.

use super::state::Service;
use std::sync::Arc;
use std::sync::atomic::{AtomicU32, Ordering};

/// The requests that are being answered, up to a limit.
#[derive(Debug)]
pub struct ConcurrencyLimit {
    most: u32,
    inside: AtomicU32,
}

impl ConcurrencyLimit {
    /// Lets so many in at once.
    pub const fn new(most: u32) -> Self {
        Self { most, inside: AtomicU32::new(0) }
    }

    /// How many are inside.
    pub fn inside(&self) -> u32 {
        self.inside.load(Ordering::Relaxed)
    }
}

/// The place of one request; free again when it is dropped.
#[derive(Debug)]
pub struct RequestPermit(Arc<Service>);

impl RequestPermit {
    /// Takes a place; `None` when all are taken and the request cannot do without.
    pub fn enter(service: &Arc<Service>, always: bool) -> Option<Self> {
        let admission = service.concurrency();
        let before = admission.inside.fetch_add(1, Ordering::Relaxed);
        let admitted = Self(Arc::clone(service));
        (always || before < admission.most).then_some(admitted)
    }
}

impl Drop for RequestPermit {
    fn drop(&mut self) {
        self.0.concurrency().inside.fetch_sub(1, Ordering::Relaxed);
    }
}
