//! What the routes share: limits, the documents that stay the same, whether the service is shutting down.

use super::catalogue::documents::CatalogueDocuments;
use super::certificate::signing::SigningKeys;
use super::concurrency_limit::ConcurrencyLimit;
use super::ingress::Ingress;
use super::limits::Limits;
use super::telemetry::metrics::Metrics;
use super::worker_pool::WorkerPool;
use crate::i18n::{Catalogue, CatalogueFault};
use crate::tables::{LoadFault, Tables};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use tokio::sync::{OwnedSemaphorePermit, Semaphore};

/// The state of the service. Nothing that an answer is made from changes in it.
#[derive(Debug)]
pub struct Service {
    /// What a request may take up.
    pub limits: Limits,
    /// The documents that stay the same.
    pub documents: CatalogueDocuments,
    /// The state of the middleware.
    pub ingress: Ingress,
    /// The workers that evaluate takeoffs, audits and certificates.
    pub worker_pool: WorkerPool,
    audits: Arc<Semaphore>,
    /// The keys that certificates are signed and verified with.
    pub signing_keys: SigningKeys,
    shutting_down: AtomicBool,
}

/// Why the service cannot start.
#[derive(Debug, thiserror::Error)]
pub enum StartFault {
    /// A table does not read.
    #[error(transparent)]
    Table(#[from] LoadFault),
    /// A message catalogue does not read.
    #[error(transparent)]
    Catalogue(#[from] CatalogueFault),
    /// A document cannot be written.
    #[error("document: {0}")]
    Document(#[from] serde_json::Error),
}

impl Service {
    /// Reads what the service is made from, strictly: it does not start on a table or a catalogue with a fault.
    pub fn start(limits: Limits) -> Result<Self, StartFault> {
        Self::start_behind(Ingress::default(), limits)
    }

    /// The same, with the state of the middleware.
    pub fn start_behind(ingress: Ingress, limits: Limits) -> Result<Self, StartFault> {
        Tables::load()?;
        Catalogue::check()?;
        let documents = CatalogueDocuments::write()?;
        let worker_pool = WorkerPool::of_this_machine();
        let audits = Arc::new(Semaphore::new(1));
        let (signing_keys, shutting_down) = (SigningKeys::default(), AtomicBool::new(false));
        Ok(Self { limits, documents, ingress, worker_pool, audits, signing_keys, shutting_down })
    }

    /// The same, with keys that certificates are signed and verified with.
    #[must_use]
    pub fn with_signing_keys(self, signing_keys: SigningKeys) -> Self {
        Self { signing_keys, ..self }
    }

    /// Waits for the turn of one self-audit, and for a free worker: however many are asked for, one evaluates at a time. The
    /// turn is over when what is given back is dropped.
    pub async fn audit_turn(&self) -> Option<[OwnedSemaphorePermit; 2]> {
        let turn = Arc::clone(&self.audits).acquire_owned().await.ok()?;
        Some([turn, self.worker_pool.acquire().await?])
    }

    /// The counts.
    pub const fn metrics(&self) -> &Metrics {
        &self.ingress.metrics
    }

    /// The requests that are being answered.
    pub const fn concurrency(&self) -> &ConcurrencyLimit {
        &self.ingress.concurrency
    }

    /// Says that the service is shutting down.
    pub fn begin_shutdown(&self) {
        self.shutting_down.store(true, Ordering::Relaxed);
    }

    /// Whether the service is shutting down.
    pub fn is_shutting_down(&self) -> bool {
        self.shutting_down.load(Ordering::Relaxed)
    }
}
