//! Listening, and shutting down without dropping anyone.

use super::stall::Patient;
use super::{Service, app, docs};
use std::fmt;
use std::io;
use std::net::SocketAddr;
use std::sync::Arc;
use std::time::Duration;
use tokio::net::TcpListener;
use tokio::signal::unix::{SignalKind, signal};
use tokio::sync::Notify;

/// How long running requests may take to finish once the service was told to shut down.
const LONGEST_FAREWELL: Duration = Duration::from_secs(15);

/// Why the service does not run.
#[derive(Debug)]
pub enum RunFault {
    /// The address cannot be listened on.
    Bind(SocketAddr, io::Error),
    /// The operating system refused something else.
    System(io::Error),
}

impl fmt::Display for RunFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Bind(address, error) => write!(f, "cannot listen on {address}: {error}"),
            Self::System(error) => error.fmt(f),
        }
    }
}

impl std::error::Error for RunFault {}

/// Serves until SIGINT or SIGTERM; then takes nothing new and finishes what is running.
///
/// `listening` is told the address once connections are taken.
pub fn serve(
    service: Service,
    address: SocketAddr,
    listening: impl FnOnce(SocketAddr),
) -> Result<(), RunFault> {
    let runtime =
        tokio::runtime::Builder::new_multi_thread().enable_all().build().map_err(RunFault::System)?;
    runtime.block_on(async {
        let listener = TcpListener::bind(address).await.map_err(|error| RunFault::Bind(address, error))?;
        // heard before anyone is told that the service is there
        let mut interrupt = signal(SignalKind::interrupt()).map_err(RunFault::System)?;
        let mut terminate = signal(SignalKind::terminate()).map_err(RunFault::System)?;
        listening(listener.local_addr().map_err(RunFault::System)?);
        let service = Arc::new(service);
        let listener = Patient::new(listener, service.limits().longest_wait);
        let told = Arc::new(Notify::new());
        let shutdown = {
            let (service, told) = (Arc::clone(&service), Arc::clone(&told));
            async move {
                tokio::select! {
                    _ = interrupt.recv() => {}
                    _ = terminate.recv() => {}
                }
                service.leave();
                told.notify_one();
            }
        };
        let farewell = async {
            told.notified().await;
            tokio::time::sleep(LONGEST_FAREWELL).await;
        };
        tokio::select! {
            ended = async { axum::serve(listener, app(service)).with_graceful_shutdown(shutdown).await } => {
                ended.map_err(RunFault::System)
            }
            () = farewell => Ok(()),
        }
    })
}

/// Where the documentation of a service is that listens on an address.
pub fn documentation(address: SocketAddr) -> String {
    format!("http://{address}{}", docs::PATH)
}
