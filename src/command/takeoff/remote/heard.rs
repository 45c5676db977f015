//! One record of a service's answer, and what it means for the line that it answers.

use super::window::Sent;
use crate::answers::Explain;
use crate::checks::{Gist, Verdict};
use crate::service::access::Authorization;
use crate::service::takeoff::batch::Reading;
use crate::service::takeoff::item;
use crate::service::takeoff::scribe::{Scribe, Spoken, SpokenProblem};
use crate::takeoff::summary::{Entry, Summary};
use serde::Deserialize;
use serde_json::Value;
use std::borrow::Cow;

/// A record: an answer, a problem, or the summary.
#[derive(Debug, Deserialize)]
pub(super) struct Heard {
    check: Option<String>,
    reference: Option<String>,
    verdict: Option<Verdict>,
    #[serde(default)]
    findings: Vec<Found>,
    status: Option<u16>,
    /// What happened, of a problem.
    pub detail: Option<String>,
    /// The summary.
    pub summary: Option<Summary>,
}

#[derive(Debug, Deserialize)]
struct Found {
    rule: String,
    status: String,
}

impl Heard {
    /// Reads a record; `None` for what is none.
    pub fn read(record: &[u8]) -> Option<Self> {
        serde_json::from_slice(record).ok()
    }

    /// Whether the service gave up waiting, or has no time: the line may be sent again.
    pub const fn is_given_up(&self) -> bool {
        matches!(self.status, Some(408 | 429 | 503))
    }

    /// Writes the record as the answer to a line, and says what became of the line.
    pub fn write(
        self,
        record: &[u8],
        sent: &Sent,
        reading: &Reading,
        scribe: &dyn Scribe,
        out: &mut Vec<u8>,
    ) -> Entry {
        let Some(check) = self.check.filter(|_| self.status.is_none()) else {
            let json = placed(record, sent.place, reading);
            let reference = self.reference.as_deref();
            scribe.problem(&SpokenProblem { place: Some(sent.place), reference, json: &json }, out);
            return Entry::Refused { reference: self.reference };
        };
        let gist = gist(sent, reading, self.verdict);
        let spoken = Spoken {
            place: sent.place,
            json: record,
            check: &check,
            reference: self.reference.as_deref(),
            verdict: self.verdict,
            gist,
        };
        scribe.answer(&spoken, out);
        let mut violated: Vec<Cow<'static, str>> = Vec::new();
        for found in self.findings.into_iter().filter(|found| found.status == "violated") {
            if !violated.contains(&Cow::Borrowed(found.rule.as_str())) {
                violated.push(Cow::Owned(found.rule));
            }
        }
        Entry::Answered {
            reference: self.reference,
            check: Cow::Owned(check),
            verdict: self.verdict,
            violated,
            billed: gist.billed,
        }
    }
}

/// A problem with the place that its line has here.
fn placed(record: &[u8], place: u64, reading: &Reading) -> Vec<u8> {
    let mut problem: Value = serde_json::from_slice(record).unwrap_or_default();
    match reading {
        Reading::Item(list) => {
            if let Some(members) = problem.as_object_mut() {
                members.shift_remove("line");
                members.shift_insert(0, "item".to_owned(), place.into());
            }
            let faults = problem["errors"].as_array_mut().into_iter().flatten();
            for pointer in faults.filter_map(|fault| fault.get_mut("pointer")) {
                *pointer = format!("{list}/{place}{}", pointer.as_str().unwrap_or_default()).into();
            }
        }
        Reading::Line | Reading::Row(_) => problem["line"] = place.into(),
    }
    serde_json::to_vec(&problem).unwrap_or_default()
}

/// What the same line comes to here, as far as it comes to the same verdict.
fn gist(sent: &Sent, reading: &Reading, verdict: Option<Verdict>) -> Gist {
    let here = match reading {
        Reading::Row(columns) => {
            item::answer_row(columns, &sent.text, Explain::None, &Authorization::default())
        }
        Reading::Line | Reading::Item(_) => {
            item::answer(&sent.text, "", Explain::None, &Authorization::default())
        }
    };
    match here {
        Ok((_, answered)) if answered.verdict == verdict => answered.gist,
        _ => Gist::default(),
    }
}
