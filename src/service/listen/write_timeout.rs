//! A stream that is given up when its other end stops reading, or reads next to nothing.

use std::future::Future;
use std::io;
use std::pin::Pin;
use std::task::{Context, Poll};
use std::time::Duration;
use tokio::io::{AsyncRead, AsyncWrite, ReadBuf};
use tokio::time::{Sleep, sleep};

/// The bytes that must go out while a stream waits, unless that is all there is: who reads a byte now and then is as good as
/// one who reads none.
const LEAST: usize = 16 * 1024;

/// A stream whose writes fail when next to nothing could be written for a while.
#[derive(Debug)]
pub struct WriteTimeout<S> {
    stream: S,
    longest: Duration,
    waiting: Option<Waiting>,
}

#[derive(Debug)]
struct Waiting {
    end: Pin<Box<Sleep>>,
    written: usize,
}

impl<S> WriteTimeout<S> {
    /// Gives a stream up after so long without progress.
    pub const fn new(stream: S, longest: Duration) -> Self {
        Self { stream, longest, waiting: None }
    }

    /// Passes on what a write said; says that it failed when there was too little progress for too long.
    fn watch(&mut self, context: &mut Context<'_>, said: Poll<io::Result<usize>>) -> Poll<io::Result<usize>> {
        match (&said, &mut self.waiting) {
            (Poll::Ready(Ok(bytes)), Some(waiting)) if waiting.written + bytes < LEAST => {
                waiting.written += bytes;
                said
            }
            (Poll::Ready(_), _) => {
                self.waiting = None;
                said
            }
            (Poll::Pending, _) => self.wait(context).map(Err),
        }
    }

    /// Passes on what a flush said: once it is done, everything is on its way.
    fn watch_end(&mut self, context: &mut Context<'_>, said: Poll<io::Result<()>>) -> Poll<io::Result<()>> {
        if said.is_ready() {
            self.waiting = None;
            return said;
        }
        self.wait(context).map(Err)
    }

    fn wait(&mut self, context: &mut Context<'_>) -> Poll<io::Error> {
        let longest = self.longest;
        let begun = || Waiting { end: Box::pin(sleep(longest)), written: 0 };
        self.waiting
            .get_or_insert_with(begun)
            .end
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
        self.watch_end(context, said)
    }

    fn poll_shutdown(mut self: Pin<&mut Self>, context: &mut Context<'_>) -> Poll<io::Result<()>> {
        let said = Pin::new(&mut self.stream).poll_shutdown(context);
        self.watch_end(context, said)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use tokio::io::{AsyncReadExt, AsyncWriteExt, DuplexStream, duplex};

    /// Reads so many bytes at a time, with a pause before each.
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
        let (near, far) = duplex(LEAST);
        let mut near = WriteTimeout::new(near, Duration::from_millis(200));
        let slow = tokio::spawn(read(far, LEAST, 6));
        near.write_all(&vec![1; 6 * LEAST]).await.unwrap();
        let _far = slow.await.unwrap();
        let error = near.write_all(&vec![1; 2 * LEAST]).await.unwrap_err();
        assert_eq!(error.kind(), io::ErrorKind::TimedOut);
    }

    #[tokio::test]
    async fn a_write_of_which_a_few_bytes_are_read_now_and_then_fails() {
        let (near, far) = duplex(16);
        let mut near = WriteTimeout::new(near, Duration::from_millis(200));
        let _slow = tokio::spawn(read(far, 16, 1000));
        let error = near.write_all(&[1; 1600]).await.unwrap_err();
        assert_eq!(error.kind(), io::ErrorKind::TimedOut);
        // as much in small parts, each of which is all there is, is no stall
        let (near, far) = duplex(16);
        let mut near = WriteTimeout::new(near, Duration::from_millis(200));
        let _slow = tokio::spawn(read(far, 16, 1000));
        for _ in 0..6 {
            near.write_all(&[1; 16]).await.unwrap();
            near.flush().await.unwrap();
        }
    }
}
