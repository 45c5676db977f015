//! Answers, problems and the summary, written in one of the forms.

use super::form::Form;
use crate::checks::{TakeoffFigures, Verdict};
use crate::service::problem::{Problem, ProblemDocument};
use crate::takeoff::row::{self, Row};
use crate::takeoff::summary::Summary;
use serde::Serialize;
use serde_json::Value;
use utoipa::ToSchema;

/// Writes the records of a takeoff one after the other.
pub trait RecordWriter: Send + Sync {
    /// Writes what stands before the first record.
    fn open(&self, _out: &mut Vec<u8>) {}

    /// Writes a record.
    fn record(&self, record: &AnswerRecord<'_>, out: &mut Vec<u8>);

    /// Writes the summary, and what stands behind it.
    fn close(&self, summary: &Summary, out: &mut Vec<u8>);

    /// How many bytes at the beginning of a record only separate it from the one before.
    fn separator(&self) -> usize {
        0
    }
}

/// An answer, or the problem that stands in its place.
#[derive(Clone, Copy, Debug)]
pub struct AnswerRecord<'a> {
    /// The number of the line, from 1, or the index of the item, from 0; `None` for a problem of the whole takeoff.
    pub index: Option<u64>,
    /// The answer as JSON text, as the operation of the check gives it, or the problem.
    pub json: &'a [u8],
    /// The caller's own mark, where it could be read.
    pub reference: Option<&'a str>,
    /// What the answer comes to; `None` for a problem.
    pub answer: Option<AnswerSummary<'a>>,
}

/// What one answer comes to.
#[derive(Clone, Copy, Debug)]
pub struct AnswerSummary<'a> {
    /// The check.
    pub check: &'a str,
    /// The verdict; `None` when only a size was asked for.
    pub verdict: Option<Verdict>,
    /// What is required and needed.
    pub takeoff_figures: TakeoffFigures,
}

impl AnswerRecord<'_> {
    /// What a person should read of it: the findings that are violated or not determined, or what is wrong.
    pub fn sentences(&self) -> Vec<String> {
        match self.answer {
            None => faults(self.json),
            Some(answer) if answer.is_unsettled() => findings(self.json),
            Some(_) => Vec::new(),
        }
    }
}

impl AnswerSummary<'_> {
    /// Whether it violates a rule or is not determined.
    pub const fn is_unsettled(&self) -> bool {
        matches!(self.verdict, Some(Verdict::Violates | Verdict::NotDetermined))
    }
}

/// Why one line of a takeoff was not answered (RFC 9457). It stands in the place of the answer.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct TakeoffProblem<'a> {
    /// The number of the line, from 1, blank lines and the header of a table counted.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(minimum = 1, example = 12)]
    line: Option<u64>,
    /// The place of the item in its list, from 0, as the pointers have it.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(example = 11)]
    item: Option<u64>,
    /// The caller's own mark, where it could be read.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(example = "hall-3")]
    reference: Option<&'a str>,
    /// What is wrong.
    #[serde(flatten)]
    problem: ProblemDocument<'a>,
}

/// A problem of a takeoff as JSON text. `index` counts lines from 1, items of a list from 0.
pub fn problem_text(
    index: Option<u64>,
    of_list: bool,
    reference: Option<&str>,
    problem: &Problem,
) -> Vec<u8> {
    let (line, item) = if of_list { (None, index) } else { (index, None) };
    serde_json::to_vec(&TakeoffProblem { line, item, reference, problem: problem.document() })
        .unwrap_or_default()
}

/// The writer of a form.
pub fn of(form: Form) -> &'static dyn RecordWriter {
    match form {
        Form::Json => &JsonDocument,
        Form::Ndjson => &JsonLines,
        Form::Csv => &Table,
    }
}

/// `{"answers": […], "summary": {…}}`.
struct JsonDocument;

impl RecordWriter for JsonDocument {
    fn open(&self, out: &mut Vec<u8>) {
        out.extend_from_slice(b"{\"answers\":[");
    }

    fn record(&self, record: &AnswerRecord<'_>, out: &mut Vec<u8>) {
        out.push(b',');
        out.extend_from_slice(record.json);
    }

    fn close(&self, summary: &Summary, out: &mut Vec<u8>) {
        out.extend_from_slice(b"],\"summary\":");
        out.extend(serde_json::to_vec(summary).unwrap_or_default());
        out.push(b'}');
    }

    fn separator(&self) -> usize {
        1
    }
}

/// A record a line, `{"summary": {…}}` the last.
struct JsonLines;

impl RecordWriter for JsonLines {
    fn record(&self, record: &AnswerRecord<'_>, out: &mut Vec<u8>) {
        out.extend_from_slice(record.json);
        out.push(b'\n');
    }

    fn close(&self, summary: &Summary, out: &mut Vec<u8>) {
        out.extend_from_slice(b"{\"summary\":");
        out.extend(serde_json::to_vec(summary).unwrap_or_default());
        out.extend_from_slice(b"}\n");
    }
}

/// A row a record, then the rows of the summary.
struct Table;

impl RecordWriter for Table {
    fn open(&self, out: &mut Vec<u8>) {
        out.extend_from_slice(row::HEADER.as_bytes());
    }

    fn record(&self, record: &AnswerRecord<'_>, out: &mut Vec<u8>) {
        let row = Row {
            line: record.index,
            reference: record.reference.unwrap_or_default(),
            detail: &record.sentences().join(" "),
            ..Row::default()
        };
        let row = match record.answer {
            Some(AnswerSummary { check, verdict, takeoff_figures }) => Row {
                record: "answer",
                check,
                verdict: row::verdict_name(verdict),
                ..row.with_takeoff_figures(&takeoff_figures)
            },
            None => Row { record: "problem", ..row },
        };
        row::write(&[row], out);
    }

    fn close(&self, summary: &Summary, out: &mut Vec<u8>) {
        row::write_summary(summary, out);
    }
}

/// What an answer found that is violated or not determined, in sentences.
fn findings(json: &[u8]) -> Vec<String> {
    let answer: Value = serde_json::from_slice(json).unwrap_or_default();
    let findings = answer["findings"].as_array().into_iter().flatten();
    findings
        .filter(|finding| matches!(finding["status"].as_str(), Some("violated" | "not_determined")))
        .filter_map(|finding| finding["message"].as_str().map(str::to_owned))
        .collect()
}

/// What is wrong, in sentences: each fault with its pointer, or the detail of a problem without faults.
pub fn faults(json: &[u8]) -> Vec<String> {
    let problem: Value = serde_json::from_slice(json).unwrap_or_default();
    let text = |value: &Value| value.as_str().unwrap_or_default().to_owned();
    match problem["errors"].as_array() {
        Some(faults) if !faults.is_empty() => faults
            .iter()
            .map(|fault| match (text(&fault["pointer"]), text(&fault["detail"])) {
                (pointer, detail) if pointer.is_empty() => detail,
                (pointer, detail) => format!("{pointer}: {detail}"),
            })
            .collect(),
        _ => vec![text(&problem["detail"])],
    }
}
