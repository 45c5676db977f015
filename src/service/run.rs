//! Startup and graceful shutdown: no request that was sent before the end is dropped.

use super::certificate::SigningKeys;
use super::keys::KeyRing;
use super::listen::Listener;
use super::listen::graceful_shutdown::GracefulShutdown;
use super::listen::tls::Tls;
use super::settings::Settings;
use super::telemetry::otlp::{self, Traces};
use super::{Ingress, Service, StartFault, app, docs, operations::Operations, operator_app};
use std::io;
use std::net::SocketAddr;
use std::sync::Arc;
use std::time::Duration;
use tokio::net::TcpListener;
use tokio::signal::unix::{Signal, SignalKind, signal};
use tokio::sync::oneshot;
use tokio::time::{sleep, timeout};

/// How often the files of keys and certificate are checked for changes.
const RELOAD_INTERVAL: Duration = Duration::from_secs(2);

/// Why the service does not run.
#[derive(Debug, thiserror::Error)]
pub enum RunFault {
    /// The address cannot be listened on.
    #[error("cannot listen on {0}: {1}")]
    Bind(SocketAddr, io::Error),
    /// The operating system refused something else.
    #[error(transparent)]
    System(#[from] io::Error),
    /// A table, a message catalogue or a document has a fault.
    #[error(transparent)]
    Start(#[from] StartFault),
    /// The files that the settings name have faults: every one of them.
    #[error("{}", .0.join("\n"))]
    Files(Vec<String>),
}

/// The addresses that the service listens on.
#[derive(Clone, Copy, Debug)]
pub struct BoundAddresses {
    /// The address that callers use.
    pub address: SocketAddr,
    /// Whether over TLS.
    pub is_tls: bool,
    /// The address of the metrics, when they have one of their own.
    pub metrics: Option<SocketAddr>,
}

impl BoundAddresses {
    /// The beginning of every URL.
    pub fn base(self) -> String {
        format!("{}://{}", if self.is_tls { "https" } else { "http" }, self.address)
    }

    /// Where the documentation is.
    pub fn documentation(self) -> String {
        format!("{}{}", self.base(), docs::PATH)
    }
}

/// What the files hold that settings name.
struct Files {
    keys: Option<KeyRing>,
    tls: Option<Arc<Tls>>,
    signing_keys: SigningKeys,
}

/// Reads the files that settings name: API keys, the certificate of TLS and the key that signs; or says everything that is
/// wrong with them.
fn open(settings: &Settings) -> Result<Files, RunFault> {
    let mut faults = Vec::new();
    let scopes = || Operations::of_the_service().scopes().map(str::to_owned).collect();
    let keys = settings.keys.as_ref().map(|path| KeyRing::open(path, scopes()));
    let tls = settings.tls_certificate.clone().zip(settings.tls_key.clone());
    let tls = tls.map(|(certificate, key)| Tls::open(certificate, key).map_err(|fault| vec![fault]));
    let signing_keys = settings.signing_key.as_ref().map(|path| SigningKeys::open(path));
    let files = Files {
        keys: opened(keys, &mut faults),
        tls: opened(tls, &mut faults).map(Arc::new),
        signing_keys: opened(signing_keys, &mut faults).unwrap_or_default(),
    };
    if faults.is_empty() { Ok(files) } else { Err(RunFault::Files(faults)) }
}

/// What was read; its faults are added to the others.
fn opened<T>(file: Option<Result<T, Vec<String>>>, faults: &mut Vec<String>) -> Option<T> {
    file?.map_err(|more| faults.extend(more)).ok()
}

/// Serves until SIGINT or SIGTERM, then shuts down gracefully: reports that it is not ready, accepts nothing new and finishes
/// what is running. A second signal ends it at once.
///
/// `listening` is called once connections are accepted.
pub fn serve(settings: &Settings, listening: impl FnOnce(BoundAddresses)) -> Result<(), RunFault> {
    let Files { keys, tls, signing_keys } = open(settings)?;
    let (traces, exporter) = match settings.collector() {
        Some(collector) => {
            let (traces, queue) = Traces::new(&collector);
            (Some(traces), Some((queue, collector)))
        }
        None => (None, None),
    };
    let ingress = Ingress::of(settings, keys, traces);
    let service = Service::start_behind(ingress, settings.limits)?;
    let service = Arc::new(service.with_signing_keys(signing_keys));
    let runtime = tokio::runtime::Builder::new_multi_thread().enable_all().build()?;
    let ended = runtime.block_on(async {
        if let Some((queue, collector)) = exporter {
            tokio::spawn(otlp::send(collector, queue, service.metrics().lost_spans.clone()));
        }
        serve_until_shutdown(settings, service, tls, listening).await
    });
    // whatever is left was given its time
    runtime.shutdown_background();
    ended
}

async fn bind(address: SocketAddr) -> Result<TcpListener, RunFault> {
    TcpListener::bind(address).await.map_err(|error| RunFault::Bind(address, error))
}

/// The signals of the operating system that shut the service down.
struct ShutdownSignals {
    interrupt: Signal,
    terminate: Signal,
}

impl ShutdownSignals {
    async fn wait(&mut self) {
        tokio::select! {
            _ = self.interrupt.recv() => {}
            _ = self.terminate.recv() => {}
        }
    }
}

async fn serve_until_shutdown(
    settings: &Settings,
    service: Arc<Service>,
    tls: Option<Arc<Tls>>,
    listening: impl FnOnce(BoundAddresses),
) -> Result<(), RunFault> {
    let tcp = bind(settings.bind).await?;
    let operator = match settings.metrics_bind {
        Some(address) => Some(bind(address).await?),
        None => None,
    };
    // before anyone learns that the service is there: a signal without a listener would kill it
    let mut signals = ShutdownSignals {
        interrupt: signal(SignalKind::interrupt())?,
        terminate: signal(SignalKind::terminate())?,
    };
    let hangup = signal(SignalKind::hangup())?;
    let metrics = operator.as_ref().map(TcpListener::local_addr).transpose()?;
    let addresses = BoundAddresses { address: tcp.local_addr()?, is_tls: tls.is_some(), metrics };
    tokio::spawn(reload(Arc::clone(&service), tls.clone(), hangup));

    let limits = settings.connections;
    if let Some(tcp) = operator {
        let router = operator_app(Arc::clone(&service));
        let listener = Listener { limits, tls: None, service: Arc::clone(&service), router };
        // until the process ends: it reports how the shutdown goes
        tokio::spawn(async move {
            listener.run(tcp, std::future::pending(), &GracefulShutdown::default()).await;
        });
    }
    let router = app(Arc::clone(&service));
    let listener = Listener { limits, tls, service: Arc::clone(&service), router };
    listening(addresses);

    let connections = GracefulShutdown::default();
    let (stop_accepting, stopped) = oneshot::channel::<()>();
    let shutdown = async {
        signals.wait().await;
        service.begin_shutdown();
        tracing::info!("shutdown signal received");
        let delay = async {
            sleep(settings.shutdown_delay).await;
            // nobody receives it when the listener has ended already
            let _ = stop_accepting.send(());
            std::future::pending::<()>().await;
        };
        tokio::select! {
            () = delay => {}
            () = signals.wait() => {}
        }
    };
    let drained = async {
        let stopped = async {
            let _ = stopped.await;
        };
        listener.run(tcp, stopped, &connections).await;
        timeout(settings.shutdown_grace, connections.shut_down()).await.is_ok()
    };
    tokio::select! {
        drained = drained => if !drained {
            tracing::warn!(requests = service.concurrency().current(), "shutdown grace period is over");
        },
        () = shutdown => {
            tracing::warn!(requests = service.concurrency().current(), "second shutdown signal received");
        }
    }
    Ok(())
}

/// Reloads keys and certificate on SIGHUP and when their files change.
async fn reload(service: Arc<Service>, tls: Option<Arc<Tls>>, mut hangup: Signal) {
    loop {
        let forced = tokio::select! {
            _ = hangup.recv() => true,
            () = sleep(RELOAD_INTERVAL) => false,
        };
        if let Some(keys) = service.ingress.keys.as_ref().filter(|keys| keys.has_changed() || forced) {
            let read = keys.reload();
            service.metrics().reloaded(read.is_ok());
            match read {
                Ok(count) => tracing::info!(count, "keys reloaded"),
                Err(faults) => faults.iter().for_each(|fault| {
                    tracing::error!(fault, "keys not reloaded; those before stay in force");
                }),
            }
        }
        if let Some(tls) = tls.as_ref().filter(|tls| tls.has_changed() || forced) {
            let read = tls.reload();
            service.metrics().reloaded(read.is_ok());
            match read {
                Ok(()) => tracing::info!("TLS certificate reloaded"),
                Err(fault) => {
                    tracing::error!(fault, "TLS certificate not reloaded; the one before stays in force")
                }
            }
        }
    }
}
