//! The answers to a takeoff as a person reads them: a line for each that does not comply, then the summary.

use super::super::report;
use crate::checks::Verdict;
use crate::service::language;
use crate::service::register::CheckEntry;
use crate::service::takeoff::scribe::{Scribe, Spoken, SpokenProblem, faults, findings};
use crate::takeoff::row::{named, verdict_name};
use crate::takeoff::summary::{Summary, Verdicts};
use serde_json::{Map, Value, json};

/// Writes for a person.
pub struct Text;

impl Scribe for Text {
    fn answer(&self, answer: &Spoken<'_>, out: &mut Vec<u8>) {
        if matches!(answer.verdict, Some(Verdict::Violates | Verdict::NotDetermined)) {
            let verdict = report::label_of(verdict_name(answer.verdict)).to_uppercase();
            write_line(Some(answer.place), answer.reference, &verdict, &findings(answer.json), out);
        }
    }

    fn problem(&self, problem: &SpokenProblem<'_>, out: &mut Vec<u8>) {
        let refused = report::label_of("refused").to_uppercase();
        write_line(problem.place, problem.reference, &refused, &faults(problem.json), out);
    }

    fn close(&self, summary: &Summary, out: &mut Vec<u8>) {
        out.extend_from_slice(b"\n");
        out.extend_from_slice(report::of_members(&plain(summary)).as_bytes());
    }
}

fn write_line(place: Option<u64>, reference: Option<&str>, what: &str, told: &[String], out: &mut Vec<u8>) {
    let place = place.map(|place| place.to_string()).unwrap_or_default();
    let parts = [place.as_str(), reference.unwrap_or_default(), what];
    let parts: Vec<&str> = parts.into_iter().filter(|part| !part.is_empty()).collect();
    // what a caller wrote may hold anything: a terminal is told nothing but text
    let text: String = format!("{}: {}", parts.join("  "), told.join(" "))
        .chars()
        .map(|letter| if letter.is_control() { '\u{fffd}' } else { letter })
        .collect();
    out.extend_from_slice(text.as_bytes());
    out.push(b'\n');
}

/// The summary as tables that fit on a page: verdicts beside what they are of, and no zeros.
fn plain(summary: &Summary) -> Map<String, Value> {
    let messages = language::messages();
    let word = |name: &str| messages.label(name).to_lowercase();
    let yes = messages.fixed(if summary.complete { "text-yes" } else { "text-no" });
    let lines = summary.lines;
    let checks: Vec<Value> = summary
        .checks
        .iter()
        .map(|counts| with_verdicts(json!({"check": CheckEntry::named(&counts.check).map_or(&*counts.check, |check| messages.fixed(check.title))}), counts.verdicts))
        .collect();
    let rules: Vec<Value> = summary
        .rules_violated
        .iter()
        .map(|count| json!({"rule": count.rule, "answers": count.answers}))
        .collect();
    let mut bill: Vec<Value> = summary
        .bill
        .iter()
        .map(|(billed, count)| json!({"needed": named(&billed, word), "count": count}))
        .collect();
    if summary.bill.more > 0 {
        bill.push(json!({"needed": "…", "count": summary.bill.more}));
    }
    let mut places: Vec<Value> = summary
        .prefixes
        .iter()
        .map(|totals| place(&totals.prefix, totals.verdicts, totals.refused))
        .collect();
    let others = summary.no_prefix;
    if others.verdicts.answered() + others.refused > 0 {
        places.push(place("–", others.verdicts, others.refused));
    }
    let told = json!({
        "complete": yes,
        "lines": lines.received,
        "answered": lines.answered,
        "refused": lines.refused,
        "blank": lines.blank,
        "checks": checks,
        "rules_violated": rules,
        "bill": bill,
        "places": places
    });
    match told {
        Value::Object(members) => members,
        _ => Map::new(),
    }
}

fn place(prefix: &str, verdicts: Verdicts, refused: u64) -> Value {
    let mut line = with_verdicts(json!({"place": prefix}), verdicts);
    line["refused"] = refused.into();
    line
}

fn with_verdicts(mut line: Value, verdicts: Verdicts) -> Value {
    let Verdicts { complies, violates, not_determined, sized } = verdicts;
    for (name, count) in
        [("complies", complies), ("violates", violates), ("not_determined", not_determined), ("sized", sized)]
    {
        line[name] = count.into();
    }
    line
}
