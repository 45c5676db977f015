//! Answers, problems and the summary, written in one of the forms.

use super::form::Form;
use crate::checks::{Gist, Verdict};
use crate::service::problem::{Problem, ProblemDocument};
use crate::takeoff::row::{self, Row};
use crate::takeoff::summary::Summary;
use serde::Serialize;
use serde_json::Value;
use utoipa::ToSchema;

/// Writes the records of a takeoff, each after those before it.
pub trait Scribe: Send + Sync {
    /// Writes what stands before the first record.
    fn open(&self, _out: &mut Vec<u8>) {}

    /// Writes an answer.
    fn answer(&self, answer: &Spoken<'_>, out: &mut Vec<u8>);

    /// Writes a problem.
    fn problem(&self, problem: &SpokenProblem<'_>, out: &mut Vec<u8>);

    /// Writes the summary, and what stands behind it.
    fn close(&self, summary: &Summary, out: &mut Vec<u8>);

    /// How many bytes at the beginning of a record only separate it from the one before.
    fn separator(&self) -> usize {
        0
    }
}

/// An answer, as it is written.
#[derive(Clone, Copy, Debug)]
pub struct Spoken<'a> {
    /// The number of its line, from 1, or the place of its item, from 0.
    pub place: u64,
    /// The answer as JSON text, the same that the operation of the check gives.
    pub json: &'a [u8],
    /// The check.
    pub check: &'a str,
    /// The caller's own mark.
    pub reference: Option<&'a str>,
    /// The verdict; `None` when only a size was asked for.
    pub verdict: Option<Verdict>,
    /// What is required and needed.
    pub gist: Gist,
}

/// A problem, as it is written.
#[derive(Clone, Copy, Debug)]
pub struct SpokenProblem<'a> {
    /// The number of its line, from 1, or the place of its item, from 0; `None` for one of the whole takeoff.
    pub place: Option<u64>,
    /// The caller's own mark, where it could be read.
    pub reference: Option<&'a str>,
    /// The problem as JSON text.
    pub json: &'a [u8],
}

/// Why one line of a takeoff was not answered (RFC 9457). It stands in the place of the answer.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct TakeoffProblem<'a> {
    /// The number of the line, from 1, blank lines and the header of a table counted.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false, minimum = 1, example = 12)]
    line: Option<u64>,
    /// The place of the item in its list, from 0, as the pointers have it.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false, example = 11)]
    item: Option<u64>,
    /// The caller's own mark, where it could be read.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false, example = "hall-3")]
    reference: Option<&'a str>,
    /// What is wrong.
    #[serde(flatten)]
    problem: ProblemDocument<'a>,
}

/// A problem of a takeoff as JSON text. `place` counts lines from 1, items of a list from 0.
pub fn problem_text(
    place: Option<u64>,
    of_list: bool,
    reference: Option<&str>,
    problem: &Problem,
) -> Vec<u8> {
    let (line, item) = if of_list { (None, place) } else { (place, None) };
    serde_json::to_vec(&TakeoffProblem { line, item, reference, problem: problem.document() })
        .unwrap_or_default()
}

/// Where the summary stands: the last record of a stream, a member of a document.
#[derive(Serialize)]
struct Summed<'a> {
    summary: &'a Summary,
}

/// The scribe of a form.
pub fn of(form: Form) -> &'static dyn Scribe {
    match form {
        Form::Json => &OneDocument,
        Form::Ndjson => &LineByLine,
        Form::Csv => &Table,
    }
}

/// `{"answers": […], "summary": {…}}`.
struct OneDocument;

impl Scribe for OneDocument {
    fn open(&self, out: &mut Vec<u8>) {
        out.extend_from_slice(b"{\"answers\":[");
    }

    fn answer(&self, answer: &Spoken<'_>, out: &mut Vec<u8>) {
        out.push(b',');
        out.extend_from_slice(answer.json);
    }

    fn problem(&self, problem: &SpokenProblem<'_>, out: &mut Vec<u8>) {
        out.push(b',');
        out.extend_from_slice(problem.json);
    }

    fn close(&self, summary: &Summary, out: &mut Vec<u8>) {
        out.extend_from_slice(b"],\"summary\":");
        out.extend_from_slice(&serde_json::to_vec(summary).unwrap_or_default());
        out.push(b'}');
    }

    fn separator(&self) -> usize {
        1
    }
}

/// A record a line, `{"summary": {…}}` the last.
struct LineByLine;

impl Scribe for LineByLine {
    fn answer(&self, answer: &Spoken<'_>, out: &mut Vec<u8>) {
        out.extend_from_slice(answer.json);
        out.push(b'\n');
    }

    fn problem(&self, problem: &SpokenProblem<'_>, out: &mut Vec<u8>) {
        out.extend_from_slice(problem.json);
        out.push(b'\n');
    }

    fn close(&self, summary: &Summary, out: &mut Vec<u8>) {
        out.extend_from_slice(&serde_json::to_vec(&Summed { summary }).unwrap_or_default());
        out.push(b'\n');
    }
}

/// A row a record, then the rows of the summary.
struct Table;

impl Scribe for Table {
    fn open(&self, out: &mut Vec<u8>) {
        out.extend_from_slice(row::HEADER.as_bytes());
    }

    fn answer(&self, answer: &Spoken<'_>, out: &mut Vec<u8>) {
        let &Spoken { place, json, check, reference, verdict, gist } = answer;
        let detail = if matches!(verdict, Some(Verdict::Violates | Verdict::NotDetermined)) {
            findings(json).join(" ")
        } else {
            String::new()
        };
        let verdict = row::verdict_name(verdict);
        let reference = reference.unwrap_or_default();
        let row =
            Row { record: "answer", line: Some(place), reference, check, verdict, gist, ..Row::default() };
        Row { detail: &detail, ..row }.write(out);
    }

    fn problem(&self, problem: &SpokenProblem<'_>, out: &mut Vec<u8>) {
        let detail = faults(problem.json).join(" ");
        let reference = problem.reference.unwrap_or_default();
        let row = Row { record: "problem", line: problem.place, reference, ..Row::default() };
        Row { detail: &detail, ..row }.write(out);
    }

    fn close(&self, summary: &Summary, out: &mut Vec<u8>) {
        row::write_summary(summary, out);
    }
}

/// What an answer found that is violated or not determined, in sentences.
pub fn findings(json: &[u8]) -> Vec<String> {
    let answer: Value = serde_json::from_slice(json).unwrap_or_default();
    let findings = answer["findings"].as_array().into_iter().flatten();
    let grave =
        findings.filter(|finding| matches!(finding["status"].as_str(), Some("violated" | "not_determined")));
    grave.filter_map(|finding| finding["message"].as_str().map(str::to_owned)).collect()
}

/// What is wrong, in sentences: each fault with its place, or the detail of a problem without faults.
pub fn faults(json: &[u8]) -> Vec<String> {
    let problem: Value = serde_json::from_slice(json).unwrap_or_default();
    let faults = problem["errors"].as_array().into_iter().flatten();
    let told: Vec<String> = faults
        .map(|fault| {
            let place = fault["pointer"].as_str().unwrap_or_default();
            let detail = fault["detail"].as_str().unwrap_or_default();
            if place.is_empty() { detail.to_owned() } else { format!("{place}: {detail}") }
        })
        .collect();
    match told.is_empty() {
        true => vec![problem["detail"].as_str().unwrap_or_default().to_owned()],
        false => told,
    }
}
