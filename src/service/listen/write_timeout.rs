//! Write timeout: a stream is given up when its other end stops reading, or reads next to nothing.
//!
//! The usual timeout of a single write would let a client live for ever on a byte now and then.

use std::future::Future;
use std::io;
use std::pin::Pin;
use std::task::{Context, Poll};
use std::time::Duration;
use tokio::io::{AsyncRead, AsyncWrite, ReadBuf};
use tokio::time::{Sleep, sleep};

/// The bytes that must go out within the timeout, unless that is all there is.
const MIN_PROGRESS: usize = 16 * 1024;

/// A stream whose writes fail when next to nothing could be written for a while.
#[derive(Debug)]
pub struct WriteTimeout<S> {
    stream: S,
    timeout: Duration,
    waiting: Option<Waiting>,
}

#[derive(Debug)]
struct Waiting {
    deadline: Pin<Box<Sleep>>,
    written: usize,
}

impl<S> WriteTimeout<S> {
    /// Gives a stream up after `timeout` without progress.
    pub const fn new(stream: S, timeout: Duration) -> Self {
        Self { stream, timeout, waiting: None }
    }

    /// Passes on the result of a write; makes it an error when there was too little progress for too long.
    fn watch(
        &mut self,
        context: &mut Context<'_>,
        result: Poll<io::Result<usize>>,
    ) -> Poll<io::Result<usize>> {
        match (&result, &mut self.waiting) {
            (Poll::Ready(Ok(bytes)), Some(waiting)) if waiting.written + bytes < MIN_PROGRESS => {
                waiting.written += bytes;
                result
            }
            (Poll::Ready(_), _) => {
                self.waiting = None;
                result
            }
            (Poll::Pending, _) => self.wait(context).map(Err),
        }
    }

    /// Passes on the result of a flush: once it is done, everything is on its way.
    fn watch_flush(
        &mut self,
        context: &mut Context<'_>,
        result: Poll<io::Result<()>>,
    ) -> Poll<io::Result<()>> {
        if result.is_ready() {
            self.waiting = None;
            return result;
        }
        self.wait(context).map(Err)
    }

    fn wait(&mut self, context: &mut Context<'_>) -> Poll<io::Error> {
        let timeout = self.timeout;
        let begun = || Waiting { deadline: Box::pin(sleep(timeout)), written: 0 };
        self.waiting
            .get_or_insert_with(begun)
            .deadline
            .as_mut()
            .poll(context)
            .map(|()| io::ErrorKind::TimedOut.into())
    }
}

impl<S: AsyncRead + Unpin> AsyncRead for WriteTimeout<S> {
    fn poll_read(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        buffer: &mut ReadBuf<'_>,
    ) -> Poll<io::Result<()>> {
        Pin::new(&mut self.stream).poll_read(context, buffer)
    }
}

impl<S: AsyncWrite + Unpin> AsyncWrite for WriteTimeout<S> {
    fn poll_write(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        bytes: &[u8],
    ) -> Poll<io::Result<usize>> {
        let result = Pin::new(&mut self.stream).poll_write(context, bytes);
        self.watch(context, result)
    }

    fn poll_write_vectored(
        mut self: Pin<&mut Self>,
        context: &mut Context<'_>,
        slices: &[io::IoSlice<'_>],
    ) -> Poll<io::Result<usize>> {
        let result = Pin::new(&mut self.stream).poll_write_vectored(context, slices);
        self.watch(context, result)
    }

    fn is_write_vectored(&self) -> bool {
        self.stream.is_write_vectored()
    }

    fn poll_flush(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<io::Result<()>> {
        let result = Pin::new(&mut self.stream).poll_flush(context);
        self.watch_flush(context, result)
    }

    fn poll_shutdown(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<io::Result<()>> {
        let result = Pin::new(&mut self.stream).poll_shutdown(context);
        self.watch_flush(context, result)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use tokio::io::{AsyncReadExt, AsyncWriteExt, DuplexStream, duplex};

    /// Reads `bytes` at a time, `times` times, with a pause before each.
    async fn read(mut far: DuplexStream, bytes: usize, times: u32) -> DuplexStream {
        let mut buffer = vec![0; bytes];
        for _ in 0..times {
            sleep(Duration::from_millis(80)).await;
            far.read_exact(&mut buffer).await.unwrap();
        }
        far
    }

    #[tokio::test]
    async fn a_write_that_nobody_reads_fails_and_one_that_is_read_slowly_does_not() {
        let (near, far) = duplex(MIN_PROGRESS);
        let mut near = WriteTimeout::new(near, Duration::from_millis(200));
        let slow = tokio::spawn(read(far, MIN_PROGRESS, 6));
        near.write_all(&vec![1; 6 * MIN_PROGRESS]).await.unwrap();
        let _far = slow.await.unwrap();
        let error = near.write_all(&vec![1; 2 * MIN_PROGRESS]).await.unwrap_err();
        assert_eq!(error.kind(), io::ErrorKind::TimedOut);
    }

    #[tokio::test]
    async fn a_write_of_which_a_few_bytes_are_read_now_and_then_fails() {
        let (near, far) = duplex(16);
        let mut near = WriteTimeout::new(near, Duration::from_millis(200));
        let _slow = tokio::spawn(read(far, 16, 1000));
        let error = near.write_all(&[1; 1600]).await.unwrap_err();
        assert_eq!(error.kind(), io::ErrorKind::TimedOut);
        // as much in small parts, each of which is all there is, never times out
        let (near, far) = duplex(16);
        let mut near = WriteTimeout::new(near, Duration::from_millis(200));
        let _slow = tokio::spawn(read(far, 16, 1000));
        for _ in 0..6 {
            near.write_all(&[1; 16]).await.unwrap();
            near.flush().await.unwrap();
        }
    }
}
