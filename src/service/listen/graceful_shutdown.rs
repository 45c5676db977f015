//! Tells every connection to finish, and waits until all have.
//!
//! A request may be on its way when a connection is told: sent, but not read yet. A connection that was never asked anything
//! waits a moment for its first request, any other a shorter one for the next: closing at once would cut it off unanswered.

use std::future::Future;
use std::pin::{Pin, pin};
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::Duration;
use tokio::sync::watch;
use tokio::time::sleep;

/// How long a connection waits for its first request.
const FIRST: Duration = Duration::from_millis(500);
/// How long one waits for its next.
const NEXT: Duration = Duration::from_millis(50);

/// What tells connections to finish.
#[derive(Debug)]
pub struct GracefulShutdown(watch::Sender<bool>);

/// The ear of one connection.
#[derive(Clone, Debug)]
pub struct Told(watch::Receiver<bool>);

impl Default for GracefulShutdown {
    fn default() -> Self {
        Self(watch::Sender::new(false))
    }
}

impl GracefulShutdown {
    /// An ear for a connection; it is taken for open until that is dropped.
    pub fn told(&self) -> Told {
        Told(self.0.subscribe())
    }

    /// Tells all to finish and waits until they have.
    pub async fn say(&self) {
        self.0.send_replace(true);
        self.0.closed().await;
    }
}

/// Serves a connection until it ends; once told, lets it finish what it has and take nothing more.
pub async fn serve_until_shutdown<C: Future>(
    connection: C,
    finish: impl Fn(Pin<&mut C>),
    begun: &AtomicBool,
    mut told: Told,
) {
    let mut connection = pin!(connection);
    // how a connection ends is the caller's business; a farewell that is gone counts as one that was said
    tokio::select! {
        _ = &mut connection => return,
        _ = told.0.wait_for(|told| *told) => {}
    }
    let moment = if begun.load(Ordering::Relaxed) { NEXT } else { FIRST };
    tokio::select! {
        _ = &mut connection => return,
        () = sleep(moment) => {}
    }
    finish(connection.as_mut());
    let _ = connection.await;
}
