//! A takeoff that arrives as a stream of lines, with a timeout for the next line.

use super::source::{End, Next};
use crate::service::body;
use crate::service::problem::{Problem, ProblemKind};
use crate::takeoff::lines::{Batch, Lines, is_blank};
use axum::body::Bytes;
use futures_util::{FutureExt, Stream, StreamExt};
use std::time::Duration;
use tokio::time::{Instant, timeout_at};

/// Pieces of text, as they arrive, and the lines that they make.
pub struct LineStream<S> {
    pieces: S,
    piece: Bytes,
    lines: Lines,
    timeout: LineTimeout,
    end: Option<End>,
}

impl<S, E> LineStream<S>
where
    S: Stream<Item = Result<Bytes, E>> + Unpin,
{
    /// A stream of lines that ends when none has arrived for as long as `pause`.
    pub fn new(pieces: S, longest_line: usize, pause: Option<Duration>) -> Self {
        let lines = Lines::new(longest_line);
        Self { pieces, piece: Bytes::new(), lines, timeout: LineTimeout { pause, since: None }, end: None }
    }

    /// Reads what has arrived until there is a batch, and waits only when there is no whole line.
    pub async fn next(&mut self) -> Next {
        let Self { pieces, piece, lines, timeout, end } = self;
        timeout.begin();
        loop {
            let taken = lines.feed(piece);
            let _ = piece.split_to(taken);
            if lines.is_full() || end.is_some() {
                match (lines.take(), end.clone()) {
                    (Some(batch), _) => return timeout.restart(batch),
                    (None, Some(end)) => return Next::End(end),
                    (None, None) => {}
                }
            }
            let at_once = if timeout.is_over() { None } else { pieces.next().now_or_never() };
            let arrived = match at_once {
                Some(arrived) => Some(arrived),
                None => match lines.take() {
                    Some(batch) => return timeout.restart(batch),
                    None => timeout.wait(pieces).await,
                },
            };
            let problem = match arrived {
                Some(Some(Ok(bytes))) => {
                    *piece = bytes;
                    continue;
                }
                Some(None) => {
                    lines.finish();
                    *end = Some(End::Whole);
                    continue;
                }
                Some(Some(Err(_))) => body::broken_off(),
                None => timeout.problem(),
            };
            let line = lines.is_open().then(|| lines.next_number());
            *end = Some(End::Broken { problem, line });
        }
    }
}

/// How long to wait for the next line. Single bytes and blank lines do not prolong it: they could hold a connection open for
/// ever.
struct LineTimeout {
    pause: Option<Duration>,
    since: Option<Instant>,
}

impl LineTimeout {
    /// Begins the wait for the next line, unless it has begun.
    fn begin(&mut self) {
        self.since.get_or_insert_with(Instant::now);
    }

    /// Hands on a batch; unless all of it is blank, the wait begins anew after it.
    fn restart(&mut self, batch: Batch) -> Next {
        if batch.iter().any(|(_, line)| line.is_none_or(|line| !is_blank(line))) {
            self.since = None;
        }
        Next::Batch(batch)
    }

    /// Waits for the next piece; `None` when the time is over.
    async fn wait<S: Stream + Unpin>(&self, pieces: &mut S) -> Option<Option<S::Item>> {
        match self.deadline() {
            None => Some(pieces.next().await),
            // a stream that is always ready would win against the clock each time
            Some(_) if self.is_over() => None,
            Some(deadline) => timeout_at(deadline, pieces.next()).await.ok(),
        }
    }

    fn deadline(&self) -> Option<Instant> {
        Some(self.since? + self.pause?)
    }

    fn is_over(&self) -> bool {
        self.deadline().is_some_and(|deadline| deadline <= Instant::now())
    }

    fn problem(&self) -> Problem {
        let seconds = self.pause.unwrap_or_default().as_secs_f32().to_string();
        let detail = "problem-detail-takeoff-pause";
        Problem::new(ProblemKind::RequestTimeout, detail, [("seconds", seconds)])
    }
}
