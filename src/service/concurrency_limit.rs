//! Concurrency limit: how many requests are answered at once.

use std::sync::Arc;
use std::sync::atomic::{AtomicU32, Ordering};

/// Counts the requests that are being answered, up to a limit.
#[derive(Clone, Debug)]
pub struct ConcurrencyLimit {
    limit: u32,
    current: Arc<AtomicU32>,
}

/// The permit of one request, given back when it is dropped.
#[derive(Debug)]
pub struct RequestPermit(Arc<AtomicU32>);

impl ConcurrencyLimit {
    /// Admits `limit` requests at once.
    pub fn new(limit: u32) -> Self {
        Self { limit, current: Arc::default() }
    }

    /// How many requests are being answered.
    pub fn current(&self) -> u32 {
        self.current.load(Ordering::Relaxed)
    }

    /// Takes a permit; `None` when all are taken, unless the request is always answered.
    pub fn acquire(&self, always: bool) -> Option<RequestPermit> {
        let before = self.current.fetch_add(1, Ordering::Relaxed);
        let permit = RequestPermit(Arc::clone(&self.current));
        (always || before < self.limit).then_some(permit)
    }
}

impl Drop for RequestPermit {
    fn drop(&mut self) {
        self.0.fetch_sub(1, Ordering::Relaxed);
    }
}
