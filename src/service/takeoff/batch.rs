//! The answers to a batch of lines, and what the summary takes from them.

use super::item::{self, Answer, Refusal};
use super::record_writer::{AnswerRecord, AnswerSummary, RecordWriter, problem_text};
use crate::answers::Explain;
use crate::service::access::Authorization;
use crate::service::problem::{Problem, ProblemKind};
use crate::service::register::Answered;
use crate::service::state::Service;
use crate::service::telemetry::metrics::{Metrics, StreamLine};
use crate::takeoff::lines::{Batch, is_blank};
use crate::takeoff::summary::Entry;
use crate::takeoff::table::{Columns, is_blank_row};
use std::borrow::Cow;
use std::panic::{AssertUnwindSafe, catch_unwind};
use std::sync::Arc;

/// What a line is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LineKind {
    /// An item of a list, which stands at this JSON Pointer.
    Item(&'static str),
    /// An item a line.
    Line,
    /// A row of a table with these columns.
    Row(Columns),
}

impl LineKind {
    /// Whether the lines are items of a list, which are counted from 0 and are never blank.
    pub const fn is_of_list(&self) -> bool {
        matches!(self, Self::Item(_))
    }

    /// Whether a line is blank: counted, and not answered.
    pub fn is_blank(&self, line: &[u8]) -> bool {
        match self {
            Self::Item(_) => false,
            Self::Line => is_blank(line),
            Self::Row(_) => is_blank_row(line),
        }
    }
}

/// How a takeoff is answered.
pub struct Job {
    /// What its lines are.
    pub line_kind: LineKind,
    /// How the answers are written.
    pub writer: &'static dyn RecordWriter,
    /// How much of the proof they carry.
    pub explain: Explain,
    /// The longest line, in bytes.
    pub longest_line: usize,
    /// Which checks may be made.
    pub authorization: Authorization,
    /// The service that counts the lines; none on the command line.
    pub service: Option<Arc<Service>>,
}

/// The answers to a batch.
#[derive(Debug, Default)]
pub struct Done {
    /// The records, written one after the other.
    pub text: Vec<u8>,
    /// What became of each line.
    pub entries: Vec<Entry>,
}

/// Answers the lines of a batch in their order, until `is_over` says that the rest is not wanted.
pub fn evaluate(batch: &Batch, job: &Job, is_over: impl Fn() -> bool) -> Done {
    // answers are usually this much longer than their lines: a buffer that grows is copied
    let longer = if job.explain == Explain::Full { 40 } else { 12 };
    let mut done = Done { text: Vec::with_capacity(batch.bytes() * longer), entries: Vec::new() };
    for (number, text) in batch.iter() {
        if is_over() {
            break;
        }
        let entry = line(number, text, job, &mut done.text);
        if let Some(service) = &job.service {
            count(service.metrics(), &entry);
        }
        done.entries.push(entry);
    }
    done
}

fn count(metrics: &Metrics, entry: &Entry) {
    match entry {
        Entry::Answered { check, verdict, .. } => {
            metrics.stream_line(StreamLine::Answered);
            metrics.verdict(check, *verdict);
        }
        Entry::Refused { .. } => metrics.stream_line(StreamLine::Refused),
        Entry::Blank | Entry::Header => {}
    }
}

fn line(number: u64, text: Option<&[u8]>, job: &Job, out: &mut Vec<u8>) -> Entry {
    let index = if job.line_kind.is_of_list() { number - 1 } else { number };
    let Some(text) = text else {
        let problem = Box::new(line_too_long(job.longest_line));
        return refuse(index, Refusal { problem, reference: None }, job, out);
    };
    if job.line_kind.is_blank(text) {
        return Entry::Blank;
    }
    // a panic while one line is answered is the problem of that line alone
    let answered = catch_unwind(AssertUnwindSafe(|| answer(text, index, job)));
    let internal = |_| Err(Refusal { problem: Box::new(Problem::internal()), reference: None });
    let (check, Answered { json, verdict, reference, violated, takeoff_figures }) =
        match answered.unwrap_or_else(internal) {
            Ok(answer) => answer,
            Err(refusal) => return refuse(index, refusal, job, out),
        };
    let record = AnswerRecord {
        index: Some(index),
        json: &json,
        reference: reference.as_deref(),
        answer: Some(AnswerSummary { check: check.name, verdict, takeoff_figures }),
    };
    job.writer.record(&record, out);
    Entry::Answered {
        reference,
        check: Cow::Borrowed(check.name),
        verdict,
        violated: violated.into_iter().map(Cow::Borrowed).collect(),
        billed: takeoff_figures.billed,
    }
}

fn answer(text: &[u8], index: u64, job: &Job) -> Result<Answer, Refusal> {
    let Job { explain, authorization, .. } = job;
    match &job.line_kind {
        LineKind::Line => item::answer(text, "", *explain, authorization),
        LineKind::Item(list) => item::answer(text, &format!("{list}/{index}"), *explain, authorization),
        LineKind::Row(columns) => item::answer_row(columns, text, *explain, authorization),
    }
}

fn refuse(index: u64, refusal: Refusal, job: &Job, out: &mut Vec<u8>) -> Entry {
    let Refusal { problem, reference } = refusal;
    let json = problem_text(Some(index), job.line_kind.is_of_list(), reference.as_deref(), &problem);
    let record =
        AnswerRecord { index: Some(index), json: &json, reference: reference.as_deref(), answer: None };
    job.writer.record(&record, out);
    Entry::Refused { reference }
}

/// The problem of a line that is longer than lines may be.
pub fn line_too_long(most: usize) -> Problem {
    let most = [("most", most.to_string())];
    Problem::new(ProblemKind::BodyTooLarge, "problem-detail-line-too-long", most)
}
