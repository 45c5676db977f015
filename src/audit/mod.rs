//! The self-audit: conformance cases that are part of the program, run against the engine that it holds.
//!
//! A case is data under `tests/conformance/`: a request, where the figures come from, and what the answer must hold. The test
//! of conformance and the service read and run them by the functions of this module, so neither can drift from the other.

mod examine;
mod tally;

pub use examine::{AuditedCase, Compared, Examine, Examined, Replayed, examine};
pub use tally::{AuditSummary, BasisCounts};

use crate::rulebook::Edition;
use serde::{Deserialize, Serialize};
use serde_json::{Map, Value};
use std::collections::BTreeSet;
use std::sync::LazyLock;
use utoipa::ToSchema;

macro_rules! embedded {
    ($($name:literal)*) => {
        &[$(($name, include_str!(concat!("../../tests/conformance/", $name)))),*]
    };
}

/// Every file of cases, by name; a test holds the list against the folder.
pub static FILES: &[(&str, &str)] = embedded![
    "box-construction.json"
    "box-depths.json"
    "box-mounting.json"
    "box-supports.json"
    "conduit-bodies.json"
    "enclosure-types.json"
    "everyday.json"
    "free-conductors.json"
    "luminaire-and-fan-outlets.json"
    "outlet-box-fill.json"
    "pull-boxes.json"
    "raceway-fill.json"
];

/// One case: a request, and what the answer to it must hold.
#[derive(Clone, Debug, PartialEq, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Case {
    /// A sentence.
    pub name: String,
    /// The name of the check.
    pub check: String,
    /// Where the figures come from.
    pub source: CaseSource,
    /// The answer that the source gives, where it is published.
    pub source_says: Option<String>,
    /// Why the source is wrong, where it is.
    pub source_disagrees: Option<String>,
    /// The sum, or what was assumed.
    pub note: Option<String>,
    /// The editions that it holds for.
    pub editions: Vec<Edition>,
    /// The request, without the edition.
    pub request: Map<String, Value>,
    /// JSON Pointers into the answer, and what stands there.
    pub expect: Map<String, Value>,
}

/// Where the figures of a case come from.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CaseSource {
    /// What kind of source it is.
    pub basis: CaseBasis,
    /// What it is called.
    pub title: String,
    /// Who published it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub publisher: Option<String>,
    /// When.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub date: Option<String>,
    /// Where it can be read.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub address: Option<String>,
}

/// What a case rests on: a published example, a sum worked by hand from the rules, or what the trade commonly does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum CaseBasis {
    /// Read in a published source.
    Published,
    /// Worked by hand.
    Derived,
    /// Common practice.
    CommonPractice,
}

impl CaseBasis {
    /// Every basis.
    pub const ALL: [Self; 3] = [Self::Published, Self::Derived, Self::CommonPractice];

    /// The word as cases write it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Published => "published",
            Self::Derived => "derived",
            Self::CommonPractice => "common_practice",
        }
    }
}

/// What is wrong with a file of cases.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{0}")]
pub struct CaseFault(String);

/// Reads the cases of a file, strictly.
///
/// # Errors
///
/// An unknown member, a file without cases, two cases of one name, a case without a name, a source, an edition or something
/// that it expects; an address without a publisher and a date; a source that is held wrong and says nothing.
///
/// ```
/// let fault = elbowroom::audit::read("empty.json", "[]").unwrap_err();
/// assert_eq!(fault.to_string(), "empty.json: there are no cases");
/// ```
pub fn read(file: &str, text: &str) -> Result<Vec<Case>, CaseFault> {
    let fault = |what: &str| CaseFault(format!("{file}: {what}"));
    let cases: Vec<Case> = serde_json::from_str(text).map_err(|error| fault(&error.to_string()))?;
    if cases.is_empty() {
        return Err(fault("there are no cases"));
    }
    let mut names = BTreeSet::new();
    for case in &cases {
        let Case { name, source, source_says, source_disagrees, note, editions, expect, .. } = case;
        let wrong = [
            (!names.insert(name), "the name stands twice"),
            (name.is_empty() || source.title.is_empty(), "there is no name, or no source"),
            (expect.is_empty(), "nothing is expected"),
            (editions.is_empty(), "no edition is named"),
            (
                source.address.is_some() && (source.publisher.is_none() || source.date.is_none()),
                "an address has neither publisher nor date",
            ),
            (
                source_disagrees.is_some() && source_says.is_none(),
                "the source that is held wrong says nothing",
            ),
            (note.as_deref() == Some(""), "the note is empty"),
        ];
        if let Some((_, what)) = wrong.iter().find(|(is_wrong, _)| *is_wrong) {
            return Err(fault(&format!("«{name}»: {what}")));
        }
    }
    Ok(cases)
}

/// Every case that is part of the program, read when it is first asked for.
///
/// # Errors
///
/// The first file that does not read; a test reads them all.
pub fn cases() -> Result<&'static [Case], &'static CaseFault> {
    static CASES: LazyLock<Result<Vec<Case>, CaseFault>> = LazyLock::new(|| {
        let files = FILES.iter().map(|(name, text)| read(name, text));
        files.collect::<Result<Vec<_>, _>>().map(|files| files.into_iter().flatten().collect())
    });
    CASES.as_deref()
}

/// Which cases are run. Unless something is said, all of them.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Filter {
    /// The check that they are of.
    pub check: Option<&'static str>,
    /// What they rest on.
    pub basis: Option<CaseBasis>,
    /// The only edition under which they are evaluated.
    pub edition: Option<Edition>,
}

impl Filter {
    /// Whether a case is run.
    pub fn takes(&self, case: &Case) -> bool {
        let Self { check, basis, edition } = self;
        check.is_none_or(|check| case.check == check)
            && basis.is_none_or(|basis| case.source.basis == basis)
            && edition.is_none_or(|edition| case.editions.contains(&edition))
    }
}

#[cfg(test)]
mod tests;
