//! One item of a takeoff: `{"check": "outlet_box_fill", "request": {…}}`, or one row of a table.

use super::operation::ITEM_SCHEMA;
use crate::answers::Explain;
use crate::checks::FaultCode;
use crate::json;
use crate::service::access::Authorization;
use crate::service::body::{self, schema};
use crate::service::fault_list::{FaultList, FaultView};
use crate::service::problem::Problem;
use crate::service::register::{Answered, CheckEntry};
use crate::takeoff::table::{Columns, RowFaults};
use serde::Deserialize;
use serde_json::value::RawValue;
use std::borrow::Cow;

/// An item that is answered, with the check that answers it.
pub type Answer = (&'static CheckEntry, Answered);

/// An item that is refused.
#[derive(Clone, Debug)]
pub struct Refusal {
    /// What is wrong. Boxed: most items are not refused.
    pub problem: Box<Problem>,
    /// The caller's own mark, where it could be read.
    pub reference: Option<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Item<'a> {
    #[serde(borrow)]
    check: Cow<'a, str>,
    #[serde(borrow)]
    request: &'a RawValue,
}

/// Answers an item that is JSON text. `above` is where the item stands: nothing for a line, `/items/4` in a list.
pub fn answer(
    text: &[u8],
    above: &str,
    explain: Explain,
    authorization: &Authorization,
) -> Result<Answer, Refusal> {
    let refusal = |problem: Problem, within: &str| {
        let place = |pointer: &str| format!("{above}{within}{pointer}");
        let problem = Problem { faults: problem.faults.with_places(place), ..problem };
        Refusal { problem: Box::new(problem), reference: reference_of(text) }
    };
    let (check, request) = named(text)
        .map_err(|error| refusal(body::refuse(text, &error, schema::published(ITEM_SCHEMA)), ""))?;
    let evaluate = || (check.evaluate)(request.get().as_bytes(), explain);
    let answered = authorization.covers(check.name).and_then(|()| evaluate());
    answered.map(|answered| (check, answered)).map_err(|problem| refusal(problem, "/request"))
}

/// The check that an item names, and the text of its request.
fn named(text: &[u8]) -> Result<(&'static CheckEntry, &RawValue), serde_json::Error> {
    let Item { check, request } = json::read(text)?;
    let known = CheckEntry::named(&check);
    known.map(|check| (check, request)).ok_or_else(|| serde::de::Error::custom("unknown check"))
}

/// The caller's own mark of a request that may be wrong in every other way.
fn reference_of(text: &[u8]) -> Option<String> {
    #[derive(Deserialize)]
    struct Marked {
        request: Mark,
    }
    #[derive(Deserialize)]
    struct Mark {
        reference: String,
    }
    let Marked { request: Mark { reference } } = serde_json::from_slice(text).ok()?;
    is_short(&reference).then_some(reference)
}

/// Whether a mark is no longer than marks may be: a longer one is not repeated.
fn is_short(reference: &str) -> bool {
    reference.chars().count() <= crate::checks::Reference::MOST
}

/// Answers a row of a table.
pub fn answer_row(
    columns: &Columns,
    text: &[u8],
    explain: Explain,
    authorization: &Authorization,
) -> Result<Answer, Refusal> {
    let refusal = |problem, reference: Option<String>| Refusal {
        problem: Box::new(problem),
        reference: reference.filter(|reference| is_short(reference)),
    };
    let text = std::str::from_utf8(text)
        .map_err(|_| refusal(Problem::invalid(FaultList::of(not_utf8(text))), None))?;
    let row = columns
        .row(text)
        .map_err(|RowFaults { faults, reference }| refusal(Problem::invalid((&faults).into()), reference))?;
    let check = CheckEntry::named(row.check).ok_or_else(|| refusal(Problem::internal(), None))?;
    let answered = authorization.covers(check.name).and_then(|()| (check.evaluate)(&row.request, explain));
    answered.map(|answered| (check, answered)).map_err(|problem| {
        let faults = problem.faults.with_places(|pointer| row.column_of(pointer).to_owned());
        refusal(Problem { faults, ..problem }, row.reference)
    })
}

/// The fault of a line that is not UTF-8, with its first byte that is none.
pub fn not_utf8(line: &[u8]) -> FaultView {
    let valid = std::str::from_utf8(line).map_or_else(|error| error.valid_up_to(), str::len);
    let named = [("byte", (valid + 1).to_string())];
    FaultView::in_body(String::new(), FaultCode::NotAccepted, "fault-table-not-utf8", named)
}
