//! The answers to a takeoff as a person reads them: a line for each that does not comply, then the summary.

use super::super::report;
use crate::service::language;
use crate::service::register::CheckEntry;
use crate::service::takeoff::record_writer::{AnswerRecord, RecordWriter};
use crate::takeoff::row::{named, verdict_name};
use crate::takeoff::summary::{Summary, Verdicts};
use serde_json::{Map, Value};

/// Writes for a person.
pub struct Text;

impl RecordWriter for Text {
    fn record(&self, record: &AnswerRecord<'_>, out: &mut Vec<u8>) {
        let outcome = match record.answer {
            Some(answer) if answer.is_unsettled() => verdict_name(answer.verdict),
            Some(_) => return,
            None => "refused",
        };
        let index = record.index.map(|index| index.to_string()).unwrap_or_default();
        let outcome = report::label(outcome).to_uppercase();
        let parts = [&index, record.reference.unwrap_or_default(), &outcome];
        let parts: Vec<&str> = parts.into_iter().filter(|part| !part.is_empty()).collect();
        let text = format!("{}: {}", parts.join("  "), record.sentences().join(" "));
        // callers' texts may hold anything: no control character reaches a terminal
        out.extend(text.replace(char::is_control, "\u{fffd}").into_bytes());
        out.push(b'\n');
    }

    fn close(&self, summary: &Summary, out: &mut Vec<u8>) {
        out.push(b'\n');
        out.extend(report::of_members(&members(summary)).into_bytes());
    }
}

/// The summary as tables that fit on a page: verdicts beside what they are of, and no zeros.
fn members(summary: &Summary) -> Map<String, Value> {
    let messages = language::messages();
    let word = |name: &str| messages.label(name).to_lowercase();
    let title =
        |name: &str| CheckEntry::named(name).map_or(name, |check| messages.fixed(check.title)).to_owned();
    let Summary { complete, lines, checks, rules_violated, bill, prefixes, no_prefix } = summary;
    let checks: Vec<Value> =
        checks.iter().map(|counts| line("check", title(&counts.check), &counts.verdicts.named())).collect();
    let rules: Vec<Value> = rules_violated
        .iter()
        .map(|count| line("rule", count.rule.clone(), &[("answers", count.answers)]))
        .collect();
    let needed = bill.iter().map(|(billed, count)| (named(&billed, word), count));
    let more = (bill.more > 0).then(|| ("…".to_owned(), bill.more));
    let bill: Vec<Value> =
        needed.chain(more).map(|(needed, count)| line("needed", needed, &[("count", count)])).collect();
    let mut places: Vec<Value> =
        prefixes.iter().map(|totals| place(&totals.prefix, totals.verdicts, totals.refused)).collect();
    if no_prefix.verdicts.answered() + no_prefix.refused > 0 {
        places.push(place("–", no_prefix.verdicts, no_prefix.refused));
    }
    let complete = messages.fixed(if *complete { "text-yes" } else { "text-no" });
    let members: [(&str, Value); 9] = [
        ("complete", complete.into()),
        ("lines", lines.received.into()),
        ("answered", lines.answered.into()),
        ("refused", lines.refused.into()),
        ("blank", lines.blank.into()),
        ("checks", checks.into()),
        ("rules_violated", rules.into()),
        ("bill", bill.into()),
        ("places", places.into()),
    ];
    members.into_iter().map(|(name, value)| (name.to_owned(), value)).collect()
}

fn place(prefix: &str, verdicts: Verdicts, refused: u64) -> Value {
    let [complies, violates, not_determined, sized] = verdicts.named();
    line("place", prefix.to_owned(), &[complies, violates, not_determined, sized, ("refused", refused)])
}

/// One line of a table: what it is of, and its counts.
fn line(heading: &str, of: String, counts: &[(&str, u64)]) -> Value {
    let counts = counts.iter().map(|(name, count)| ((*name).to_owned(), Value::from(*count)));
    [(heading.to_owned(), Value::from(of))].into_iter().chain(counts).collect()
}
