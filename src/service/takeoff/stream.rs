//! A takeoff is read by one task and evaluated by the worker pool, several batches at a time; the answers leave in order.
//!
//! Between the two is room for a few batches: while the answers are not taken, nothing more is read. When the stream of
//! answers is dropped, reading and evaluating end.

use super::batch::{self, Done, Job};
use super::record_writer::{AnswerRecord, problem_text};
use super::source::{End, Next, Source};
use crate::i18n::Language;
use crate::service::language;
use crate::service::problem::Problem;
use crate::service::worker_pool::WorkerPool;
use crate::takeoff::summary::{Entry, Summary};
use axum::body::Bytes;
use futures_util::{Stream, stream};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use tokio::sync::mpsc;
use tokio::task::{AbortHandle, JoinHandle};

/// The answers to a takeoff, piece by piece, and what it comes to.
pub struct Answers {
    messages: mpsc::Receiver<Message>,
    job: Arc<Job>,
    summary: Summary,
    phase: Phase,
    /// Whether a record was written, so that the next is separated from it.
    written: bool,
    /// The language of the request, which outlives it here: the answers go on when the request itself is answered.
    language: Language,
    guard: Guard,
}

enum Message {
    Work(JoinHandle<Done>),
    End(End),
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum Phase {
    Opening,
    Answering,
    Closed,
}

/// Ends the work of a takeoff when its answers are not wanted any more.
struct Guard {
    reader: AbortHandle,
    over: Arc<AtomicBool>,
}

impl Drop for Guard {
    fn drop(&mut self) {
        self.over.store(true, Ordering::Relaxed);
        self.reader.abort();
    }
}

impl Answers {
    /// Begins to answer a takeoff.
    pub fn to<S, E>(source: Source<S>, job: Job, workers: &WorkerPool) -> Self
    where
        S: Stream<Item = Result<Bytes, E>> + Unpin + Send + 'static,
        E: Send + 'static,
    {
        let job = Arc::new(job);
        let (sender, messages) = mpsc::channel(2 * workers.processors);
        let over = Arc::new(AtomicBool::new(false));
        let mut summary = Summary::default();
        source.before.iter().for_each(|entry| summary.add(entry));
        let language = language::spoken();
        let read = read(source, Arc::clone(&job), workers.clone(), Arc::clone(&over), sender);
        let reader = tokio::spawn(language::within(language, read));
        let guard = Guard { reader: reader.abort_handle(), over };
        Self { messages, job, summary, phase: Phase::Opening, written: false, language, guard }
    }

    /// What the takeoff comes to, once everything was taken.
    pub const fn summary(&self) -> &Summary {
        &self.summary
    }

    /// The next piece of the answers; `None` behind the last.
    pub async fn next(&mut self) -> Option<Bytes> {
        language::within(self.language, self.next_piece()).await
    }

    async fn next_piece(&mut self) -> Option<Bytes> {
        loop {
            let mut piece = Vec::new();
            match self.phase {
                Phase::Closed => return None,
                Phase::Opening => {
                    self.job.writer.open(&mut piece);
                    self.phase = Phase::Answering;
                }
                Phase::Answering => match self.messages.recv().await {
                    Some(Message::Work(work)) => match work.await {
                        Ok(Done { text, entries }) => {
                            entries.iter().for_each(|entry| self.summary.add(entry));
                            piece = self.separated(text);
                        }
                        Err(_) => self.end(&mut piece, Some((Problem::internal(), None))),
                    },
                    Some(Message::End(End::Whole)) => self.end(&mut piece, None),
                    Some(Message::End(End::Broken { problem, line })) => {
                        self.end(&mut piece, Some((problem, line)));
                    }
                    None => self.end(&mut piece, Some((Problem::internal(), None))),
                },
            }
            if !piece.is_empty() {
                return Some(piece.into());
            }
        }
    }

    /// The answers as a stream.
    pub fn into_stream(self) -> impl Stream<Item = Result<Bytes, std::convert::Infallible>> + Send {
        let next = |mut answers: Self| async move { Some((Ok(answers.next().await?), answers)) };
        stream::unfold(self, next)
    }

    /// Records without what would separate the first of all from one before it.
    fn separated(&mut self, mut records: Vec<u8>) -> Vec<u8> {
        if !records.is_empty() && !std::mem::replace(&mut self.written, true) {
            records.drain(..self.job.writer.separator().min(records.len()));
        }
        records
    }

    /// Writes the end: why the takeoff broke off, if it did, and the summary.
    fn end(&mut self, piece: &mut Vec<u8>, broken: Option<(Problem, Option<u64>)>) {
        self.phase = Phase::Closed;
        // what was not evaluated yet is not waited for
        self.guard.over.store(true, Ordering::Relaxed);
        self.summary.complete = broken.is_none();
        if let Some((problem, line)) = broken {
            let json = problem_text(line, false, None, &problem);
            let mut text = Vec::new();
            let record = AnswerRecord { index: line, json: &json, reference: None, answer: None };
            self.job.writer.record(&record, &mut text);
            piece.extend(self.separated(text));
            if line.is_some() {
                self.summary.add(&Entry::Refused { reference: None });
            }
        }
        self.job.writer.close(&self.summary, piece);
    }
}

/// Reads batches and has them evaluated, no further ahead of the answers than the channel has room.
async fn read<S, E>(
    mut source: Source<S>,
    job: Arc<Job>,
    workers: WorkerPool,
    over: Arc<AtomicBool>,
    sender: mpsc::Sender<Message>,
) where
    S: Stream<Item = Result<Bytes, E>> + Unpin,
{
    loop {
        let Ok(room) = sender.reserve().await else { return };
        match source.next().await {
            Next::Batch(batch) => {
                let (job, over) = (Arc::clone(&job), Arc::clone(&over));
                let evaluate = move || batch::evaluate(&batch, &job, || over.load(Ordering::Relaxed));
                let Some(work) = workers.spawn(evaluate).await else { return };
                room.send(Message::Work(work));
            }
            Next::End(end) => {
                room.send(Message::End(end));
                return;
            }
        }
    }
}
