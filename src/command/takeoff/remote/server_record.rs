//! One record of a service's answer, and what it means for the line that it answers.

use super::retransmission::SentLine;
use crate::answers::Explain;
use crate::checks::{TakeoffFigures, Verdict};
use crate::service::access::Authorization;
use crate::service::takeoff::batch::LineKind;
use crate::service::takeoff::item;
use crate::service::takeoff::record_writer::{AnswerRecord, AnswerSummary, RecordWriter};
use crate::takeoff::summary::{Entry, Summary};
use serde::Deserialize;
use serde_json::Value;
use std::borrow::Cow;

/// A record: an answer, a problem, or the summary.
#[derive(Debug, Deserialize)]
pub(super) struct ServerRecord {
    check: Option<String>,
    reference: Option<String>,
    verdict: Option<Verdict>,
    #[serde(default)]
    findings: Vec<ServerFinding>,
    status: Option<u16>,
    /// What happened, of a problem.
    pub detail: Option<String>,
    /// The summary.
    pub summary: Option<Summary>,
}

#[derive(Debug, Deserialize)]
struct ServerFinding {
    rule: String,
    status: String,
}

impl ServerRecord {
    /// Reads a record; `None` for what is none.
    pub fn read(record: &[u8]) -> Option<Self> {
        serde_json::from_slice(record).ok()
    }

    /// Whether the service gave up waiting, or is busy: the line may be sent again.
    pub const fn is_retryable(&self) -> bool {
        matches!(self.status, Some(408 | 429 | 503))
    }

    /// Writes the record as the answer to a line, and says what became of the line.
    pub fn write(
        self,
        json: &[u8],
        sent: &SentLine,
        line_kind: &LineKind,
        writer: &dyn RecordWriter,
        out: &mut Vec<u8>,
    ) -> Entry {
        let (index, reference) = (Some(sent.index), self.reference.as_deref());
        let Some(check) = self.check.filter(|_| self.status.is_none()) else {
            let json = renumbered(json, sent.index, line_kind);
            writer.record(&AnswerRecord { index, json: &json, reference, answer: None }, out);
            return Entry::Refused { reference: self.reference };
        };
        let (verdict, takeoff_figures) = (self.verdict, takeoff_figures(sent, line_kind, self.verdict));
        let answer = Some(AnswerSummary { check: &check, verdict, takeoff_figures });
        writer.record(&AnswerRecord { index, json, reference, answer }, out);
        let mut violated: Vec<Cow<'static, str>> = Vec::new();
        for finding in self.findings.into_iter().filter(|finding| finding.status == "violated") {
            if !violated.iter().any(|rule| *rule == finding.rule) {
                violated.push(Cow::Owned(finding.rule));
            }
        }
        let (reference, check) = (self.reference, Cow::Owned(check));
        Entry::Answered { reference, check, verdict, violated, billed: takeoff_figures.billed }
    }
}

/// A problem with the number that its line has here.
fn renumbered(record: &[u8], index: u64, line_kind: &LineKind) -> Vec<u8> {
    let mut problem: Value = serde_json::from_slice(record).unwrap_or_default();
    match line_kind {
        LineKind::Item(list) => {
            if let Some(members) = problem.as_object_mut() {
                members.shift_remove("line");
                members.shift_insert(0, "item".to_owned(), index.into());
            }
            let faults = problem["errors"].as_array_mut().into_iter().flatten();
            for pointer in faults.filter_map(|fault| fault.get_mut("pointer")) {
                *pointer = format!("{list}/{index}{}", pointer.as_str().unwrap_or_default()).into();
            }
        }
        LineKind::Line | LineKind::Row(_) => problem["line"] = index.into(),
    }
    serde_json::to_vec(&problem).unwrap_or_default()
}

/// What the same line comes to here, as far as it comes to the same verdict.
fn takeoff_figures(sent: &SentLine, line_kind: &LineKind, verdict: Option<Verdict>) -> TakeoffFigures {
    let here = match line_kind {
        LineKind::Row(columns) => {
            item::answer_row(columns, &sent.text, Explain::None, &Authorization::default())
        }
        LineKind::Line | LineKind::Item(_) => {
            item::answer(&sent.text, "", Explain::None, &Authorization::default())
        }
    };
    match here {
        Ok((_, answered)) if answered.verdict == verdict => answered.takeoff_figures,
        _ => TakeoffFigures::default(),
    }
}
