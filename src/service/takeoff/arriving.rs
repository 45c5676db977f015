//! A takeoff that arrives as a stream of lines, and how long it is waited for.

use super::source::{End, Next};
use crate::checks::FaultCode;
use crate::service::body;
use crate::service::fault_list::{FaultList, FaultView};
use crate::service::problem::{Problem, ProblemKind};
use crate::takeoff::lines::{BATCH_BYTES, BATCH_LINES, Batch, Lines, is_blank};
use crate::takeoff::summary::Entry;
use axum::body::Bytes;
use futures_util::{FutureExt, Stream, StreamExt};
use std::time::Duration;
use tokio::time::{Instant, timeout_at};

/// Pieces of text, as they arrive, and the lines that they make.
pub struct Arriving<S> {
    pieces: S,
    piece: Bytes,
    lines: Lines,
    patience: Patience,
    end: Option<End>,
}

impl<S, E> Arriving<S>
where
    S: Stream<Item = Result<Bytes, E>> + Unpin,
{
    /// Lines to come. None is waited for longer than `pause`.
    pub fn new(pieces: S, longest_line: usize, pause: Option<Duration>) -> Self {
        let lines = Lines::new(longest_line);
        Self { pieces, piece: Bytes::new(), lines, patience: Patience { pause, since: None }, end: None }
    }

    /// Takes in what has arrived until there is a batch, and waits only when there is no whole line.
    pub async fn more(&mut self) -> Next {
        let Self { pieces, piece, lines, patience, end } = self;
        patience.begin();
        loop {
            while !lines.is_full() && !piece.is_empty() {
                lines.feed(&piece.split_to(piece.len().min(BATCH_BYTES)));
            }
            if lines.is_full() || end.is_some() {
                match (lines.take(), end.clone()) {
                    (Some(batch), _) => return patience.rewarded(batch),
                    (None, Some(end)) => return Next::End(end),
                    (None, None) => {}
                }
            }
            let at_once = if patience.is_over() { None } else { pieces.next().now_or_never() };
            let arrived = match at_once {
                Some(arrived) => Some(arrived),
                None => match lines.take() {
                    Some(batch) => return patience.rewarded(batch),
                    None => patience.wait(pieces).await,
                },
            };
            let broken = match arrived {
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
                None => patience.lost("problem-detail-takeoff-pause"),
            };
            let line = lines.is_open().then(|| lines.next_number());
            *end = Some(End::Broken { problem: broken, line });
        }
    }

    /// The first line that is not blank.
    pub async fn header(&mut self, before: &mut Vec<Entry>, longest_line: usize) -> Result<Vec<u8>, Problem> {
        let Self { pieces, piece, lines, patience, end } = self;
        patience.begin();
        loop {
            while let Some((_, line)) = lines.pop() {
                match line {
                    Some(line) if is_blank(&line) => before.push(Entry::Blank),
                    Some(line) => {
                        patience.since = None;
                        return Ok(line);
                    }
                    None => {
                        let most = [("most", longest_line.to_string())];
                        return Err(Problem::new(
                            ProblemKind::BodyTooLarge,
                            "problem-detail-line-too-long",
                            most,
                        ));
                    }
                }
            }
            if end.is_some() || before.len() > BATCH_LINES {
                let fault =
                    FaultView::in_body(String::new(), FaultCode::MissingMember, "fault-table-no-header", []);
                return Err(Problem::invalid(FaultList::of(fault)));
            }
            if !piece.is_empty() {
                lines.feed(&piece.split_to(piece.len().min(BATCH_BYTES)));
                continue;
            }
            match patience.wait(pieces).await {
                Some(Some(Ok(bytes))) => *piece = bytes,
                Some(None) => {
                    lines.finish();
                    *end = Some(End::Whole);
                }
                Some(Some(Err(_))) => return Err(body::broken_off()),
                None => return Err(patience.lost("problem-detail-request-timeout")),
            }
        }
    }
}

/// How long the next line is waited for. Bytes alone do not prolong it, nor do blank lines: a caller that sends a byte now and
/// then is no slow producer of lines.
struct Patience {
    pause: Option<Duration>,
    /// Since when.
    since: Option<Instant>,
}

impl Patience {
    /// The wait for the next line begins, unless it has begun.
    fn begin(&mut self) {
        self.since.get_or_insert_with(Instant::now);
    }

    /// Lines have arrived.
    fn rewarded(&mut self, batch: Batch) -> Next {
        if batch.iter().any(|(_, line)| line.is_none_or(|line| !is_blank(line))) {
            self.since = None;
        }
        Next::Batch(batch)
    }

    /// Waits for what arrives next; `None` when it has waited for too long.
    async fn wait<S: Stream + Unpin>(&self, pieces: &mut S) -> Option<Option<S::Item>> {
        match self.end() {
            None => Some(pieces.next().await),
            // what never pauses would win against the clock each time
            Some(_) if self.is_over() => None,
            Some(end) => timeout_at(end, pieces.next()).await.ok(),
        }
    }

    fn end(&self) -> Option<Instant> {
        Some(self.since? + self.pause?)
    }

    fn is_over(&self) -> bool {
        self.end().is_some_and(|end| end <= Instant::now())
    }

    /// The problem of a caller who was waited for too long.
    fn lost(&self, detail: &'static str) -> Problem {
        let seconds = self.pause.unwrap_or_default().as_secs_f32().to_string();
        Problem::new(ProblemKind::RequestTimeout, detail, [("seconds", seconds)])
    }
}
