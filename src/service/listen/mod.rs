//! Connections: how many, their timeouts, keep-alive, TLS, graceful shutdown.
//!
//! | module | what it is for |
//! |---|---|
//! | [`graceful_shutdown`] | tells every connection to finish, and waits until all have |
//! | [`write_timeout`] | gives up a client that does not read its answer |
//! | [`tls`] | certificate and key |
//!
//! Without TLS only HTTP/1.1 is spoken: telling the versions apart by what a caller sends first would let a caller that
//! sends nothing wait for ever. With TLS the handshake says which version it is, within a time of its own.

pub mod graceful_shutdown;
pub mod tls;
pub mod write_timeout;

use super::client_address::Peer;
use super::language;
use super::limits::ConnectionLimits;
use super::problem::{MEDIA_TYPE, Problem, ProblemKind};
use super::state::Service;
use super::telemetry::metrics::TurnedAway;
use axum::Router;
use axum::body::Body;
use axum::extract::Request;
use axum::http::StatusCode;
use graceful_shutdown::{GracefulShutdown, ShutdownSignal, serve_until_shutdown};
use hyper::body::Incoming;
use hyper::service::service_fn;
use hyper_util::rt::{TokioExecutor, TokioIo, TokioTimer};
use hyper_util::server::conn::auto::Builder;
use std::future::Future;
use std::io;
use std::net::{IpAddr, SocketAddr};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::time::Duration;
use tls::Tls;
use tokio::io::{AsyncRead, AsyncReadExt, AsyncWrite, AsyncWriteExt};
use tokio::net::{TcpListener, TcpStream};
use tokio::sync::Semaphore;
use tokio::time::{sleep, timeout};
use tower::ServiceExt;
use write_timeout::WriteTimeout;

/// How long accepting pauses when the system gives no connection, because its files are used up, say.
const ACCEPT_PAUSE: Duration = Duration::from_millis(50);
/// Connections over the limit that are answered with a refusal at once, and for how long. Any more are closed.
const MAX_REFUSALS: usize = 64;
const REFUSAL_TIMEOUT: Duration = Duration::from_secs(1);
/// Requests at once on one connection of HTTP/2, and the most bytes of the headers of one.
const MAX_STREAMS: u32 = 64;
const MAX_HEADER_LIST: u32 = 16 * 1024;
/// Memory for the head of a request of HTTP/1.1.
const MAX_HEAD: usize = 64 * 1024;
/// Keep-alive: how often an idle connection of HTTP/2 is asked whether it is still there.
const KEEP_ALIVE_INTERVAL: Duration = Duration::from_secs(20);

/// Serves the connections of one address.
pub struct Listener {
    /// What a connection may take up.
    pub limits: ConnectionLimits,
    /// Certificate and key, where TLS is spoken.
    pub tls: Option<Arc<Tls>>,
    /// Counts connections.
    pub service: Arc<Service>,
    /// Answers requests.
    pub router: Router,
}

impl Listener {
    /// Accepts connections until `stop`, and those too that the system has queued by then. Each ends when `shutdown` is
    /// signalled and it has nothing left to do.
    pub async fn run(self, tcp: TcpListener, stop: impl Future<Output = ()>, shutdown: &GracefulShutdown) {
        let permits = Arc::new(Semaphore::new(self.limits.max_connections as usize));
        let refusal_permits = Arc::new(Semaphore::new(MAX_REFUSALS));
        let listener = Arc::new(self);
        let take = |accepted: io::Result<(TcpStream, SocketAddr)>| {
            let (stream, peer) = accepted?;
            let Ok(permit) = Arc::clone(&permits).try_acquire_owned() else {
                listener.service.metrics().turned_away(TurnedAway::Connections);
                if let (Ok(permit), None) = (Arc::clone(&refusal_permits).try_acquire_owned(), &listener.tls)
                {
                    tokio::spawn(async move {
                        let _ = timeout(REFUSAL_TIMEOUT, refuse(stream)).await;
                        drop(permit);
                    });
                }
                return Ok(());
            };
            let (listener, signal) = (Arc::clone(&listener), shutdown.signal());
            tokio::spawn(async move {
                listener.service.metrics().connections.inc();
                listener.serve(stream, peer.ip(), signal).await;
                listener.service.metrics().connections.dec();
                drop(permit);
            });
            Ok::<(), io::Error>(())
        };
        tokio::pin!(stop);
        loop {
            tokio::select! {
                accepted = tcp.accept() => if let Err(error) = take(accepted) {
                    pause(&error).await;
                },
                () = &mut stop => break,
            }
        }
        // asked of the system itself: the runtime may not have heard yet of those who came last
        let Ok(tcp) = tcp.into_std() else { return };
        while let Ok((stream, peer)) = tcp.accept() {
            let stream = stream.set_nonblocking(true).and_then(|()| TcpStream::from_std(stream));
            if take(stream.map(|stream| (stream, peer))).is_err() {
                break;
            }
        }
    }

    async fn serve(&self, stream: TcpStream, peer: IpAddr, signal: ShutdownSignal) {
        // an answer is written at once: holding its last part back for more only delays it
        let _ = stream.set_nodelay(true);
        let stream = WriteTimeout::new(stream, self.limits.write_timeout);
        let Some(tls) = &self.tls else {
            return self.over_http(stream, false, peer, signal).await;
        };
        if let Ok(Ok(stream)) = timeout(self.limits.header_timeout, tls.acceptor().accept(stream)).await {
            let is_http2 = stream.get_ref().1.alpn_protocol() == Some(b"h2");
            self.over_http(stream, is_http2, peer, signal).await;
        }
    }

    async fn over_http<S: AsyncRead + AsyncWrite + Unpin + Send + 'static>(
        &self,
        stream: S,
        is_http2: bool,
        peer: IpAddr,
        signal: ShutdownSignal,
    ) {
        let router = self.router.clone();
        let begun = Arc::new(AtomicBool::new(false));
        let begun_by = Arc::clone(&begun);
        let service = service_fn(move |request| {
            begun_by.store(true, Ordering::Relaxed);
            answer(router.clone(), peer, request)
        });
        let mut builder = Builder::new(TokioExecutor::new());
        builder
            .http1()
            .timer(TokioTimer::new())
            .header_read_timeout(self.limits.header_timeout)
            .max_buf_size(MAX_HEAD);
        builder
            .http2()
            .timer(TokioTimer::new())
            .keep_alive_interval(KEEP_ALIVE_INTERVAL)
            .keep_alive_timeout(self.limits.write_timeout)
            .max_concurrent_streams(MAX_STREAMS)
            .max_header_list_size(MAX_HEADER_LIST);
        let builder = if is_http2 { builder.http2_only() } else { builder.http1_only() };
        let connection = builder.serve_connection(TokioIo::new(stream), service);
        serve_until_shutdown(connection, |connection| connection.graceful_shutdown(), &begun, signal).await;
    }
}

async fn pause(error: &io::Error) {
    use io::ErrorKind::{ConnectionAborted, ConnectionRefused, ConnectionReset};
    // of these only one caller has the damage
    if !matches!(error.kind(), ConnectionAborted | ConnectionRefused | ConnectionReset) {
        tracing::error!(%error, "cannot accept connections");
        sleep(ACCEPT_PAUSE).await;
    }
}

/// Answers a connection over the limit, and waits for the caller to have read it: closing at once could take it away from under them.
async fn refuse(mut stream: TcpStream) -> io::Result<()> {
    let problem = Problem::new(ProblemKind::Overloaded, "problem-detail-overloaded", []).to_json();
    let head = format!(
        "HTTP/1.1 {}\r\ncontent-type: {MEDIA_TYPE}\r\ncontent-language: {}\r\ncontent-length: {}\r\nretry-after: 1\r\n\
         connection: close\r\n\r\n",
        StatusCode::SERVICE_UNAVAILABLE,
        language::spoken().tag(),
        problem.len()
    );
    stream.write_all(head.as_bytes()).await?;
    stream.write_all(&problem).await?;
    stream.shutdown().await?;
    let mut ignored = [0; 1024];
    while stream.read(&mut ignored).await? > 0 {}
    Ok(())
}

async fn answer(
    router: Router,
    peer: IpAddr,
    request: hyper::Request<Incoming>,
) -> Result<axum::response::Response, std::convert::Infallible> {
    let mut request: Request = request.map(Body::new);
    request.extensions_mut().insert(Peer(peer));
    router.oneshot(request).await
}
