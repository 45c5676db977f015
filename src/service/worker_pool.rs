//! The worker pool: how many evaluations of takeoffs, self-audits and certificates run at the same time.

use crate::service::language;
use std::sync::Arc;
use std::thread;
use tokio::sync::{OwnedSemaphorePermit, Semaphore};
use tokio::task::{JoinHandle, spawn_blocking};

/// Two workers for each processor, shared by all callers, so that none is idle while the next batch is read.
#[derive(Clone, Debug)]
pub struct WorkerPool {
    permits: Arc<Semaphore>,
    /// How many processors there are.
    pub processors: usize,
}

impl WorkerPool {
    /// A pool for the processors of this machine.
    pub fn of_this_machine() -> Self {
        let processors = thread::available_parallelism().map_or(1, usize::from);
        Self { permits: Arc::new(Semaphore::new(2 * processors)), processors }
    }

    /// Waits for a free worker, which is busy until the permit is dropped.
    pub async fn acquire(&self) -> Option<OwnedSemaphorePermit> {
        Arc::clone(&self.permits).acquire_owned().await.ok()
    }

    /// Waits for a free worker and has it do the work, in the language of the caller.
    pub async fn spawn<T: Send + 'static>(
        &self,
        work: impl FnOnce() -> T + Send + 'static,
    ) -> Option<JoinHandle<T>> {
        let permit = self.acquire().await?;
        let language = language::spoken();
        Some(spawn_blocking(move || {
            let _busy = permit;
            language::speaking(language, work)
        }))
    }
}
