//! Graceful shutdown of connections: tells every one to finish, and waits until all have.
//!
//! A request may be on its way when the signal is given: sent, but not read yet. A connection that was never asked anything
//! waits some time for its first request, any other a shorter one for the next: closing at once would cut it off unanswered.

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

/// Gives the shutdown signal to connections.
#[derive(Debug)]
pub struct GracefulShutdown(watch::Sender<bool>);

/// Receives the shutdown signal for one connection.
#[derive(Clone, Debug)]
pub struct ShutdownSignal(watch::Receiver<bool>);

impl Default for GracefulShutdown {
    fn default() -> Self {
        Self(watch::Sender::new(false))
    }
}

impl GracefulShutdown {
    /// A receiver for a connection, which counts as open until the receiver is dropped.
    pub fn signal(&self) -> ShutdownSignal {
        ShutdownSignal(self.0.subscribe())
    }

    /// Tells all connections to finish and waits until they have.
    pub async fn shut_down(&self) {
        self.0.send_replace(true);
        self.0.closed().await;
    }
}

/// Serves a connection until it ends; after the signal, lets it finish what it has and take nothing more.
///
/// `begun` says whether the connection has had a request; `finish` tells it to end after those that it has.
pub async fn serve_until_shutdown<C: Future>(
    connection: C,
    finish: impl Fn(Pin<&mut C>),
    begun: &AtomicBool,
    mut signal: ShutdownSignal,
) {
    let mut connection = pin!(connection);
    // how a connection ends is the caller's business; a sender that is gone counts as a signal
    tokio::select! {
        _ = &mut connection => return,
        _ = signal.0.wait_for(|given| *given) => {}
    }
    let wait = if begun.load(Ordering::Relaxed) { NEXT } else { FIRST };
    tokio::select! {
        _ = &mut connection => return,
        () = sleep(wait) => {}
    }
    finish(connection.as_mut());
    let _ = connection.await;
}
