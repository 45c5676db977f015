//! Connections of callers who ask and do not read.
//!
//! An answer that nobody takes holds a connection, its buffers and, for a takeoff, the work behind it. A connection on
//! which nothing could be written for too long is cut, and all of that is free again.

use axum::serve::Listener;
use std::future::Future;
use std::io;
use std::pin::Pin;
use std::task::{Context, Poll, ready};
use std::time::Duration;
use tokio::io::{AsyncRead, AsyncWrite, ReadBuf};
use tokio::time::{Instant, Sleep, sleep};

/// A listener whose connections are cut when nothing can be written on them for so long.
#[derive(Debug)]
pub struct Patient<L> {
    listener: L,
    patience: Duration,
}

impl<L> Patient<L> {
    /// Puts a bound on the patience of a listener.
    pub const fn new(listener: L, patience: Duration) -> Self {
        Self { listener, patience }
    }
}

impl<L: Listener> Listener for Patient<L> {
    type Io = Connection<L::Io>;
    type Addr = L::Addr;

    async fn accept(&mut self) -> (Self::Io, Self::Addr) {
        let (connection, address) = self.listener.accept().await;
        (Connection { connection, patience: self.patience, stalled: None }, address)
    }

    fn local_addr(&self) -> io::Result<Self::Addr> {
        self.listener.local_addr()
    }
}

/// A connection that fails when nothing can be written on it for too long.
#[derive(Debug)]
pub struct Connection<C> {
    connection: C,
    patience: Duration,
    /// Runs while a write waits.
    stalled: Option<Pin<Box<Sleep>>>,
}

impl<C> Connection<C> {
    /// Passes on what writing came to, and cuts it short when it has waited for too long.
    fn within_patience<T>(
        &mut self,
        context: &mut Context<'_>,
        written: Poll<io::Result<T>>,
    ) -> Poll<io::Result<T>> {
        if written.is_ready() {
            self.stalled = None;
            return written;
        }
        let patience = self.patience;
        let stalled = self.stalled.get_or_insert_with(|| Box::pin(sleep(patience)));
        ready!(stalled.as_mut().poll(context));
        stalled.as_mut().reset(Instant::now() + patience);
        Poll::Ready(Err(io::ErrorKind::TimedOut.into()))
    }
}

impl<C: AsyncRead + Unpin> AsyncRead for Connection<C> {
    fn poll_read(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        buffer: &mut ReadBuf<'_>,
    ) -> Poll<io::Result<()>> {
        Pin::new(&mut self.connection).poll_read(context, buffer)
    }
}

impl<C: AsyncWrite + Unpin> AsyncWrite for Connection<C> {
    fn poll_write(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        bytes: &[u8],
    ) -> Poll<io::Result<usize>> {
        let written = Pin::new(&mut self.connection).poll_write(context, bytes);
        self.within_patience(context, written)
    }

    fn poll_write_vectored(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        bytes: &[io::IoSlice<'_>],
    ) -> Poll<io::Result<usize>> {
        let written = Pin::new(&mut self.connection).poll_write_vectored(context, bytes);
        self.within_patience(context, written)
    }

    fn is_write_vectored(&self) -> bool {
        self.connection.is_write_vectored()
    }

    fn poll_flush(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<io::Result<()>> {
        let flushed = Pin::new(&mut self.connection).poll_flush(context);
        self.within_patience(context, flushed)
    }

    fn poll_shutdown(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<io::Result<()>> {
        Pin::new(&mut self.connection).poll_shutdown(context)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use tokio::io::{AsyncReadExt, AsyncWriteExt, duplex};

    fn connection(patience: u64) -> (Connection<tokio::io::DuplexStream>, tokio::io::DuplexStream) {
        let (connection, other) = duplex(8);
        (Connection { connection, patience: Duration::from_millis(patience), stalled: None }, other)
    }

    #[tokio::test]
    async fn a_write_that_nobody_takes_fails_and_one_that_is_taken_slowly_does_not() {
        let (mut connection, _other) = connection(100);
        let error = connection.write_all(b"more than there is room for").await.unwrap_err();
        assert_eq!(error.kind(), io::ErrorKind::TimedOut);

        let (mut connection, mut other) = self::connection(100);
        let reader = tokio::spawn(async move {
            let mut taken = Vec::new();
            let mut piece = [0; 4];
            while let Ok(length @ 1..) = other.read(&mut piece).await {
                taken.extend_from_slice(&piece[..length]);
                sleep(Duration::from_millis(80)).await;
            }
            taken
        });
        connection.write_all(b"more than there is room for").await.unwrap();
        drop(connection);
        assert_eq!(reader.await.unwrap(), b"more than there is room for");
    }
}
