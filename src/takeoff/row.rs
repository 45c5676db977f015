//! The answers to a takeoff as rows of a CSV: answers and refusals in order, then the summary, each row saying what it is.

use super::summary::{Summary, Verdicts};
use crate::checks::{Billed, Gist, Verdict};
use crate::derivation::Figure;
use crate::quantity::{Decimal, Unit};
use serde::Serialize;

/// The header: the columns of every row.
pub const HEADER: &str = "record,line,reference,check,verdict,required,available,unit,needs,count,detail\n";

/// One row. What does not apply is empty.
#[derive(Clone, Debug, Default)]
pub struct Row<'a> {
    /// What the row is: `answer`, `problem`, or a part of the summary.
    pub record: &'a str,
    /// The number of the line that is answered.
    pub line: Option<u64>,
    /// The caller's own mark; in the summary a prefix of marks.
    pub reference: &'a str,
    /// The check.
    pub check: &'a str,
    /// The verdict; `sized` when only a size was asked for.
    pub verdict: &'a str,
    /// What is required, what there is for it, and what the job needs.
    pub gist: Gist,
    /// What the job needs, in the summary.
    pub needs: String,
    /// How many, in the summary.
    pub count: Option<u64>,
    /// What was found, or what is wrong; in the summary the rule that is violated.
    pub detail: &'a str,
}

impl Row<'_> {
    /// Writes the row with its line ending.
    pub fn write(&self, out: &mut Vec<u8>) {
        let Self { record, line, reference, check, verdict, gist, needs, count, detail } = self;
        let number =
            |figure: Option<Figure>| figure.map(|figure| figure.value.to_string()).unwrap_or_default();
        let whole = |number: &Option<u64>| number.map(|number| number.to_string()).unwrap_or_default();
        let unit = gist.required.or(gist.available).map(|figure| unit_name(figure.unit)).unwrap_or_default();
        let needs = gist.billed.as_ref().map_or_else(|| needs.clone(), name_of);
        let fields = [
            record,
            whole(line).as_str(),
            reference,
            check,
            verdict,
            number(gist.required).as_str(),
            number(gist.available).as_str(),
            unit.as_str(),
            needs.as_str(),
            whole(count).as_str(),
            detail,
        ]
        .map(|field: &str| field.to_owned());
        for (index, field) in fields.iter().enumerate() {
            if index > 0 {
                out.push(b',');
            }
            write_field(field, out);
        }
        out.push(b'\n');
    }
}

fn write_field(field: &str, out: &mut Vec<u8>) {
    let plain = !field.contains([',', '"', '\n', '\r']) && field.trim() == field;
    if plain {
        out.extend_from_slice(field.as_bytes());
        return;
    }
    out.push(b'"');
    // one line is one row, in answers too
    let field = field.replace(['\n', '\r'], " ").replace('"', "\"\"");
    out.extend_from_slice(field.as_bytes());
    out.push(b'"');
}

/// The name of something that serde writes as a text.
fn name<T: Serialize>(named: &T) -> String {
    match serde_json::to_value(named) {
        Ok(serde_json::Value::String(name)) => name,
        _ => String::new(),
    }
}

fn unit_name(unit: Unit) -> String {
    name(&unit)
}

/// A verdict as a row names it.
pub const fn verdict_name(verdict: Option<Verdict>) -> &'static str {
    match verdict {
        Some(Verdict::Complies) => "complies",
        Some(Verdict::Violates) => "violates",
        Some(Verdict::NotDetermined) => "not_determined",
        None => "sized",
    }
}

/// What the job needs, in a few words: `square-4x2-1/8`, `device-3x2x2 (2 gangs)`, `20.3 in3 nonmetallic`, `EMT 3/4`.
pub fn name_of(billed: &Billed) -> String {
    named(billed, str::to_owned)
}

/// What a job needs, in a few words: those that are no names as `word` has them.
pub fn named(billed: &Billed, word: impl Fn(&str) -> String) -> String {
    match billed {
        Billed::StandardBox { standard, gangs } if *gangs == Decimal::ONE => standard.key().to_owned(),
        Billed::StandardBox { standard, gangs } => format!("{} ({gangs} gangs)", standard.key()),
        Billed::MarkedBox { material, volume, unit } => {
            let material = material.map(|material| word(&name(&material))).unwrap_or_default();
            format!("{volume} {} {material}", unit_name(*unit)).trim_end().to_owned()
        }
        Billed::Raceway { kind, trade_size } => format!("{kind} {trade_size}"),
        Billed::Open => word("open"),
    }
}

/// Writes a summary, one count a row.
pub fn write_summary(summary: &Summary, out: &mut Vec<u8>) {
    let counted = |record: &'static str, count: u64| Row { record, count: Some(count), ..Row::default() };
    let lines = summary.lines;
    for (what, count) in [
        ("received", lines.received),
        ("answered", lines.answered),
        ("refused", lines.refused),
        ("blank", lines.blank),
        ("header", lines.header),
    ] {
        Row { detail: what, ..counted("summary_lines", count) }.write(out);
    }
    let detail = if summary.complete { "complete" } else { "incomplete" };
    Row { detail, ..Row { record: "summary", ..Row::default() } }.write(out);
    for counts in &summary.checks {
        for (verdict, count) in each(counts.verdicts) {
            Row { check: &counts.check, verdict, ..counted("summary_check", count) }.write(out);
        }
    }
    for violated in &summary.rules_violated {
        Row { detail: &violated.rule, ..counted("summary_rule", violated.answers) }.write(out);
    }
    for (billed, count) in summary.bill.iter() {
        Row { needs: name_of(&billed), ..counted("summary_bill", count) }.write(out);
    }
    if summary.bill.more > 0 {
        Row { needs: "more".to_owned(), ..counted("summary_bill", summary.bill.more) }.write(out);
    }
    let others = ("", summary.no_prefix.verdicts, summary.no_prefix.refused);
    let listed =
        summary.prefixes.iter().map(|totals| (totals.prefix.as_str(), totals.verdicts, totals.refused));
    for (prefix, verdicts, refused) in listed.chain([others]) {
        for (verdict, count) in
            each(verdicts).chain([("refused", refused)].into_iter().filter(|(_, n)| *n > 0))
        {
            Row { reference: prefix, verdict, ..counted("summary_prefix", count) }.write(out);
        }
    }
}

/// The verdicts that there are.
pub fn each(verdicts: Verdicts) -> impl Iterator<Item = (&'static str, u64)> {
    let Verdicts { complies, violates, not_determined, sized } = verdicts;
    let all = [
        ("complies", complies),
        ("violates", violates),
        ("not_determined", not_determined),
        ("sized", sized),
    ];
    all.into_iter().filter(|(_, count)| *count > 0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_row_is_one_line_that_another_program_reads_back() {
        let mut out = HEADER.as_bytes().to_vec();
        let row = Row {
            record: "answer",
            line: Some(7),
            reference: "a, \"b\"",
            detail: "one\ntwo ",
            ..Row::default()
        };
        row.write(&mut out);
        assert_eq!(out.iter().filter(|byte| **byte == b'\n').count(), 2);
        let mut reader = csv::Reader::from_reader(out.as_slice());
        let record = reader.records().next().unwrap().unwrap();
        assert_eq!(record.len(), HEADER.split(',').count());
        assert_eq!((&record[1], &record[2], &record[10]), ("7", "a, \"b\"", "one two "));
    }
}
