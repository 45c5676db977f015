//! The answers to a takeoff as rows of a CSV: answers and refusals in order, then the summary, each row saying what it is.

use super::summary::{Summary, Verdicts};
use crate::checks::{BillItem, TakeoffFigures, Verdict};
use crate::quantity::{Decimal, Unit};
use serde::{Serialize, Serializer};

/// The header: the columns of every row.
pub const HEADER: &str = "record,line,reference,check,verdict,required,available,unit,needs,count,detail\n";

/// One row. What does not apply is empty.
#[derive(Clone, Debug, Default, Serialize)]
pub struct Row<'a> {
    /// What the row is: `answer`, `problem`, or a part of the summary.
    pub record: &'a str,
    /// The number of the line that is answered.
    pub line: Option<u64>,
    /// The caller's own mark; in the summary a prefix of marks.
    #[serde(serialize_with = "one_line")]
    pub reference: &'a str,
    /// The check.
    pub check: &'a str,
    /// The verdict; `sized` when only a size was asked for.
    pub verdict: &'a str,
    /// What is required.
    #[serde(serialize_with = "exact")]
    pub required: Option<Decimal>,
    /// What there is for it.
    #[serde(serialize_with = "exact")]
    pub available: Option<Decimal>,
    /// The unit of both.
    pub unit: Option<Unit>,
    /// What the job needs.
    pub needs: String,
    /// How many, in the summary.
    pub count: Option<u64>,
    /// What was found, or what is wrong; in the summary the rule that is violated.
    #[serde(serialize_with = "one_line")]
    pub detail: &'a str,
}

impl Row<'_> {
    /// The row with what an answer requires and needs.
    #[must_use]
    pub fn with_takeoff_figures(self, takeoff_figures: &TakeoffFigures) -> Self {
        let &TakeoffFigures { required, available, billed } = takeoff_figures;
        Self {
            required: required.map(|figure| figure.value),
            available: available.map(|figure| figure.value),
            unit: required.or(available).map(|figure| figure.unit),
            needs: billed.as_ref().map(name_of).unwrap_or_default(),
            ..self
        }
    }
}

/// One line is one row, in answers too.
fn one_line<S: Serializer>(text: &str, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.collect_str(&text.replace(['\n', '\r'], " "))
}

/// A decimal in its own digits, not as binary floating point.
#[expect(clippy::ref_option, reason = "serde hands over a reference to the field")]
fn exact<S: Serializer>(number: &Option<Decimal>, serializer: S) -> Result<S::Ok, S::Error> {
    match number {
        Some(number) => serializer.collect_str(number),
        None => serializer.serialize_none(),
    }
}

/// Writes rows with their line endings.
pub fn write(rows: &[Row<'_>], out: &mut Vec<u8>) {
    let mut writer = csv::WriterBuilder::new().has_headers(false).buffer_capacity(512).from_writer(out);
    for row in rows {
        // a row of plain texts and numbers is always written to memory
        let _ = writer.serialize(row);
    }
}

/// The name of something that serde writes as a text.
fn name<T: Serialize>(named: &T) -> String {
    match serde_json::to_value(named) {
        Ok(serde_json::Value::String(name)) => name,
        _ => String::new(),
    }
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
pub fn name_of(billed: &BillItem) -> String {
    named(billed, str::to_owned)
}

/// What the job needs, its plain words translated by `word`.
pub fn named(billed: &BillItem, word: impl Fn(&str) -> String) -> String {
    match billed {
        BillItem::StandardBox { standard, gangs } if *gangs == Decimal::ONE => standard.key().to_owned(),
        BillItem::StandardBox { standard, gangs } => format!("{} ({gangs} gangs)", standard.key()),
        BillItem::MarkedBox { material, volume, unit } => {
            let material = material.map(|material| word(&name(&material))).unwrap_or_default();
            format!("{volume} {} {material}", name(unit)).trim_end().to_owned()
        }
        BillItem::Raceway { kind, trade_size } => format!("{kind} {trade_size}"),
        BillItem::Open => word("open"),
    }
}

/// Writes a summary, one count a row.
pub fn write_summary(summary: &Summary, out: &mut Vec<u8>) {
    let counted = |record: &'static str, count: u64| Row { record, count: Some(count), ..Row::default() };
    let lines = summary.lines;
    let mut rows = Vec::from(
        [
            ("received", lines.received),
            ("answered", lines.answered),
            ("refused", lines.refused),
            ("blank", lines.blank),
            ("header", lines.header),
        ]
        .map(|(detail, count)| Row { detail, ..counted("summary_lines", count) }),
    );
    let detail = if summary.complete { "complete" } else { "incomplete" };
    rows.push(Row { record: "summary", detail, ..Row::default() });
    for counts in &summary.checks {
        let verdicts = nonzero(counts.verdicts);
        rows.extend(verdicts.map(|(verdict, count)| Row {
            check: &counts.check,
            verdict,
            ..counted("summary_check", count)
        }));
    }
    for violated in &summary.rules_violated {
        rows.push(Row { detail: &violated.rule, ..counted("summary_rule", violated.answers) });
    }
    for (billed, count) in summary.bill.iter() {
        rows.push(Row { needs: name_of(&billed), ..counted("summary_bill", count) });
    }
    if summary.bill.more > 0 {
        rows.push(Row { needs: "more".to_owned(), ..counted("summary_bill", summary.bill.more) });
    }
    let others = ("", summary.no_prefix.verdicts, summary.no_prefix.refused);
    let listed =
        summary.prefixes.iter().map(|totals| (totals.prefix.as_str(), totals.verdicts, totals.refused));
    for (reference, verdicts, refused) in listed.chain([others]) {
        let refused = (refused > 0).then_some(("refused", refused));
        let verdicts = nonzero(verdicts).chain(refused);
        rows.extend(verdicts.map(|(verdict, count)| Row {
            reference,
            verdict,
            ..counted("summary_prefix", count)
        }));
    }
    write(&rows, out);
}

/// The verdicts of which there are any.
fn nonzero(verdicts: Verdicts) -> impl Iterator<Item = (&'static str, u64)> {
    verdicts.named().into_iter().filter(|(_, count)| *count > 0)
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
        write(&[row], &mut out);
        assert_eq!(out.iter().filter(|byte| **byte == b'\n').count(), 2);
        let mut reader = csv::Reader::from_reader(out.as_slice());
        let record = reader.records().next().unwrap().unwrap();
        assert_eq!(record.len(), HEADER.split(',').count());
        assert_eq!((&record[1], &record[2], &record[10]), ("7", "a, \"b\"", "one two "));
        let mut named = csv::Writer::from_writer(Vec::new());
        named.serialize(Row::default()).unwrap();
        assert!(named.into_inner().unwrap().starts_with(HEADER.as_bytes()));
    }
}
