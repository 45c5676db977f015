//! Starting, and shutting down without dropping anyone.

use super::certificate::SigningKeys;
use super::keys::{KeyRing, file::KeyFault};
use super::listen::Listener;
use super::listen::graceful_shutdown::GracefulShutdown;
use super::listen::tls::Tls;
use super::settings::Settings;
use super::telemetry::otlp::{self, Traces};
use super::{Ingress, Service, StartFault, app, docs, operations::Operations, operator_app};
use std::fmt;
use std::io;
use std::net::SocketAddr;
use std::sync::{Arc, Weak};
use std::time::Duration;
use tokio::net::TcpListener;
use tokio::signal::unix::{Signal, SignalKind, signal};
use tokio::sync::watch;
use tokio::time::{sleep, timeout};

/// How often the files of keys and certificate are looked at.
const LOOK: Duration = Duration::from_secs(2);

/// Why the service does not run.
#[derive(Debug)]
pub enum RunFault {
    /// The address cannot be listened on.
    Bind(SocketAddr, io::Error),
    /// The operating system refused something else.
    System(io::Error),
    /// A table, the words or a document has a fault.
    Start(StartFault),
    /// The files that the settings name have faults: every one of them.
    Files(Vec<String>),
}

impl fmt::Display for RunFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Bind(address, error) => write!(f, "cannot listen on {address}: {error}"),
            Self::System(error) => error.fmt(f),
            Self::Start(fault) => fault.fmt(f),
            Self::Files(faults) => f.write_str(&faults.join("\n")),
        }
    }
}

impl std::error::Error for RunFault {}

/// Where the service can be reached.
#[derive(Clone, Copy, Debug)]
pub struct BoundAddresses {
    /// The address.
    pub address: SocketAddr,
    /// Whether over TLS.
    pub is_tls: bool,
    /// The address of the metrics, when apart.
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
struct Opened {
    keys: Option<KeyRing>,
    tls: Option<Arc<Tls>>,
    signing_keys: SigningKeys,
}

/// Reads the files that settings name: the keys, the certificate and the key that signs; or says everything that is wrong
/// with them.
fn open(settings: &Settings) -> Result<Opened, RunFault> {
    let mut faults = Vec::new();
    let scopes = || Operations::of_the_service().scopes().map(str::to_owned).collect();
    let keys = settings.keys.as_ref().and_then(|path| {
        KeyRing::open(path, scopes())
            .map_err(|wrong| faults.extend(wrong.iter().map(KeyFault::to_string)))
            .ok()
    });
    let tls =
        settings.tls.clone().and_then(|files| Tls::open(files).map_err(|wrong| faults.push(wrong)).ok());
    let signing_keys = settings
        .signing_key
        .as_ref()
        .and_then(|path| SigningKeys::open(path).map_err(|wrong| faults.extend(wrong)).ok());
    if faults.is_empty() {
        Ok(Opened { keys, tls: tls.map(Arc::new), signing_keys: signing_keys.unwrap_or_default() })
    } else {
        Err(RunFault::Files(faults))
    }
}

/// Serves until SIGINT or SIGTERM; then says that it leaves, takes nothing new and finishes what is running. A second signal
/// ends it at once.
///
/// `listening` is told where once connections are taken.
pub fn serve(settings: &Settings, listening: impl FnOnce(BoundAddresses)) -> Result<(), RunFault> {
    let Opened { keys, tls, signing_keys } = open(settings)?;
    let traces = settings.collector.clone().map(|collector| {
        let (traces, queue) = Traces::new(&collector);
        (traces, queue, collector)
    });
    let (traces, sending) = match traces {
        Some((traces, queue, collector)) => (Some(traces), Some((queue, collector))),
        None => (None, None),
    };
    let ingress = Ingress::of(settings, keys, traces);
    let service = Service::start_behind(ingress, settings.limits).map_err(RunFault::Start)?;
    let service = Arc::new(service.with_signing_keys(signing_keys));
    let runtime =
        tokio::runtime::Builder::new_multi_thread().enable_all().build().map_err(RunFault::System)?;
    let ended = runtime.block_on(async {
        if let Some((queue, collector)) = sending {
            let service: Weak<Service> = Arc::downgrade(&service);
            tokio::spawn(otlp::send(collector, queue, move || service.upgrade()));
        }
        until_told(settings, service, tls, listening).await
    });
    // whatever is left was given its time
    runtime.shutdown_background();
    ended
}

async fn bind(address: SocketAddr) -> Result<TcpListener, RunFault> {
    TcpListener::bind(address).await.map_err(|error| RunFault::Bind(address, error))
}

/// The signals that end the service.
struct Told {
    interrupt: Signal,
    terminate: Signal,
}

impl Told {
    async fn wait(&mut self) {
        tokio::select! {
            _ = self.interrupt.recv() => {}
            _ = self.terminate.recv() => {}
        }
    }
}

async fn until_told(
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
    // heard before anyone is told that the service is there
    let hear = |kind| signal(kind).map_err(RunFault::System);
    let mut told =
        Told { interrupt: hear(SignalKind::interrupt())?, terminate: hear(SignalKind::terminate())? };
    let hangup = hear(SignalKind::hangup())?;
    let metrics = operator.as_ref().map(TcpListener::local_addr).transpose().map_err(RunFault::System)?;
    let address = tcp.local_addr().map_err(RunFault::System)?;
    let is_tls = tls.is_some();
    tokio::spawn(reload(Arc::clone(&service), tls.clone(), hangup));

    let connections = GracefulShutdown::default();
    let (stop, stopped) = watch::channel(false);
    let stopping = |mut stopped: watch::Receiver<bool>| async move {
        // a sender that is gone stops it as well
        let _ = stopped.wait_for(|stop| *stop).await;
    };
    if let Some(tcp) = operator {
        let operators = GracefulShutdown::default();
        let router = operator_app(Arc::clone(&service));
        let listener =
            Listener { tcp, limits: settings.connections, tls: None, service: Arc::clone(&service), router };
        // to the end: it says how the farewell goes
        tokio::spawn(async move { listener.run(std::future::pending(), &operators).await });
    }
    let router = app(Arc::clone(&service));
    let listener = Listener { tcp, limits: settings.connections, tls, service: Arc::clone(&service), router };
    listening(BoundAddresses { address, is_tls, metrics });
    let farewell = async {
        told.wait().await;
        service.begin_shutdown();
        tracing::info!("told to stop");
        let end = async {
            sleep(settings.notice).await;
            // nobody listens any more when the listener has ended already
            let _ = stop.send(true);
            std::future::pending::<()>().await;
        };
        tokio::select! {
            () = end => {}
            () = told.wait() => {}
        }
    };
    let drained = async {
        listener.run(stopping(stopped), &connections).await;
        timeout(settings.grace, connections.say()).await.is_ok()
    };
    tokio::select! {
        drained = drained => if !drained {
            tracing::warn!(requests = service.concurrency().inside(), "the time to finish is over");
        },
        () = farewell => tracing::warn!(requests = service.concurrency().inside(), "told a second time to stop"),
    }
    Ok(())
}

/// Reads keys and certificate again on SIGHUP and when their files change.
async fn reload(service: Arc<Service>, tls: Option<Arc<Tls>>, mut hangup: Signal) {
    loop {
        let forced = tokio::select! {
            _ = hangup.recv() => true,
            () = sleep(LOOK) => false,
        };
        if let Some(keys) = service.ingress().keys.as_ref().filter(|keys| keys.has_changed() || forced) {
            match keys.reload() {
                Ok(count) => tracing::info!(count, "keys were read"),
                Err(faults) => {
                    for fault in &faults {
                        tracing::error!(%fault, "keys stay as they were");
                    }
                    service.metrics().reloaded(false);
                    continue;
                }
            }
            service.metrics().reloaded(true);
        }
        if let Some(tls) = tls.as_ref().filter(|tls| tls.has_changed() || forced) {
            let read = tls.reload();
            service.metrics().reloaded(read.is_ok());
            match read {
                Ok(()) => tracing::info!("the certificate was read"),
                Err(fault) => tracing::error!(fault, "the certificate stays as it was"),
            }
        }
    }
}
