//! A stream that is given up when its other end stops reading.

use std::future::Future;
use std::io;
use std::pin::Pin;
use std::task::{Context, Poll};
use std::time::Duration;
use tokio::io::{AsyncRead, AsyncWrite, ReadBuf};
use tokio::time::{Sleep, sleep};

/// A stream whose writes fail when nothing could be written for a while.
#[derive(Debug)]
pub struct Stall<S> {
    stream: S,
    longest: Duration,
    waiting: Option<Pin<Box<Sleep>>>,
}

impl<S> Stall<S> {
    /// Gives a stream up after so long without progress.
    pub const fn new(stream: S, longest: Duration) -> Self {
        Self { stream, longest, waiting: None }
    }

    /// Passes on what a write said; says that it failed when it waited for too long.
    fn watch<T>(&mut self, context: &mut Context<'_>, said: Poll<io::Result<T>>) -> Poll<io::Result<T>> {
        if said.is_ready() {
            self.waiting = None;
            return said;
        }
        let longest = self.longest;
        match self.waiting.get_or_insert_with(|| Box::pin(sleep(longest))).as_mut().poll(context) {
            Poll::Ready(()) => Poll::Ready(Err(io::ErrorKind::TimedOut.into())),
            Poll::Pending => Poll::Pending,
        }
    }
}

impl<S: AsyncRead + Unpin> AsyncRead for Stall<S> {
    fn poll_read(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        buffer: &mut ReadBuf<'_>,
    ) -> Poll<io::Result<()>> {
        Pin::new(&mut self.stream).poll_read(context, buffer)
    }
}

impl<S: AsyncWrite + Unpin> AsyncWrite for Stall<S> {
    fn poll_write(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        bytes: &[u8],
    ) -> Poll<io::Result<usize>> {
        let said = Pin::new(&mut self.stream).poll_write(context, bytes);
        self.watch(context, said)
    }

    fn poll_write_vectored(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        slices: &[io::IoSlice<'_>],
    ) -> Poll<io::Result<usize>> {
        let said = Pin::new(&mut self.stream).poll_write_vectored(context, slices);
        self.watch(context, said)
    }

    fn is_write_vectored(&self) -> bool {
        self.stream.is_write_vectored()
    }

    fn poll_flush(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<io::Result<()>> {
        let said = Pin::new(&mut self.stream).poll_flush(context);
        self.watch(context, said)
    }

    fn poll_shutdown(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<io::Result<()>> {
        let said = Pin::new(&mut self.stream).poll_shutdown(context);
        self.watch(context, said)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use tokio::io::{AsyncReadExt, AsyncWriteExt, duplex};

    #[tokio::test]
    async fn a_write_that_nobody_reads_fails_and_one_that_is_read_slowly_does_not() {
        let (near, mut far) = duplex(16);
        let mut near = Stall::new(near, Duration::from_millis(200));
        let slow = tokio::spawn(async move {
            let mut buffer = [0; 16];
            for _ in 0..6 {
                tokio::time::sleep(Duration::from_millis(80)).await;
                far.read_exact(&mut buffer).await.unwrap();
            }
            far
        });
        near.write_all(&[1; 96]).await.unwrap();
        let _far = slow.await.unwrap();
        let error = near.write_all(&[1; 96]).await.unwrap_err();
        assert_eq!(error.kind(), io::ErrorKind::TimedOut);
    }
}
