//! An answer as a person reads it: the verdict first, then the figures, what was found, and what to know.
//!
//! Written from the answer alone and for any check: a figure is a value with its unit, a list of like things is a
//! table, a rule is its title. The names of members are the labels.

use crate::answers::{Shown, columns, is_empty, is_plain};
use crate::i18n::{Catalogue, wrap};
use crate::service::language;
use crate::service::problem::Problem;
use crate::service::register::CheckEntry;
use comfy_table::Table;
use comfy_table::presets::NOTHING;
use serde_json::{Map, Value};
use std::fmt::Write as _;

type Members = Map<String, Value>;

/// How wide a line of sentences is; tables are as wide as they are.
const WIDTH: usize = 110;

/// The report of an answer.
pub fn of_answer(check: &CheckEntry, answer: &Value) -> String {
    let messages = language::messages();
    let mut report = Report { text: String::new(), answer, messages };
    let text = |pointer: &str| answer.pointer(pointer).and_then(Value::as_str);
    let edition = text("/ruleset/edition").unwrap_or_default();
    report.line(0, &format!("{} · NFPA 70, {edition}", messages.fixed(check.title)));
    if let Some(reference) = text("/reference") {
        report.line(0, &format!("{}: {reference}", label("reference")));
    }
    let verdict = text("/verdict").map_or_else(
        || messages.fixed("text-report-no-verdict").to_owned(),
        |verdict| label(verdict).to_uppercase(),
    );
    report.line(0, &format!("{}: {verdict}", label("verdict")));
    if let Some(Value::Object(outcome)) = answer.get("outcome") {
        report.members(0, outcome);
    }
    report.findings();
    report.interpretations();
    report.proof();
    report.sentences("cautions", answer.get("cautions"));
    let digest = text("/ruleset/digest").unwrap_or_default();
    let version = text("/ruleset/version").unwrap_or_default();
    report.line(0, &format!("\n{}: {version}, {digest}", label("ruleset")));
    report.text
}

/// The report of a request that was refused: every fault on its own lines.
pub fn of_problem(problem: &Problem) -> String {
    let mut text = format!("{}. {}", problem.kind.title(language::messages()), problem.detail);
    for fault in problem.faults.kept() {
        let place = fault.pointer.as_deref().or(fault.parameter.as_deref()).unwrap_or_default();
        let place = if place.is_empty() { "/" } else { place };
        let _ = write!(text, "\n  {place}: {} ({})", fault.detail, fault.code.name());
        if let Some(nearest) = &fault.nearest {
            let _ = write!(text, "\n    ≈ {nearest}");
        }
        if !fault.accepted.is_empty() {
            let _ = write!(text, "\n    ∈ {}", fault.accepted.join(", "));
        }
    }
    if problem.faults.more() > 0 {
        let _ = write!(text, "\n  + {}", problem.faults.more());
    }
    text
}

/// The report of the members of an object, such as a summary.
pub fn of_members(members: &Members) -> String {
    let mut report = Report { text: String::new(), answer: &Value::Null, messages: language::messages() };
    report.members(0, members);
    report.text
}

struct Report<'a> {
    text: String,
    answer: &'a Value,
    messages: &'a Catalogue,
}

impl Report<'_> {
    fn line(&mut self, depth: usize, text: &str) {
        for line in text.split('\n') {
            let indent = if line.is_empty() { 0 } else { depth * 2 };
            let _ = writeln!(self.text, "{:indent$}{line}", "");
        }
    }

    /// A sentence or a list, broken into lines that a page can hold.
    fn wrapped(&mut self, depth: usize, text: &str, hanging: usize) {
        self.line(depth, &wrap(text, WIDTH - depth * 2, hanging));
    }

    /// The members of an object, one below the other. What is absent or empty is left out.
    fn members(&mut self, depth: usize, object: &Members) {
        let shown = object.iter().filter(|(name, value)| name.as_str() != "step" && !is_empty(value));
        let plain: Vec<(String, String)> = shown
            .clone()
            .filter(|(_, value)| is_plain(value))
            .map(|(name, value)| (label(name), self.plain(name, value)))
            .collect();
        let width = plain.iter().map(|(label, _)| label.chars().count()).max().unwrap_or_default();
        for (label, value) in plain {
            self.wrapped(depth, &format!("{label:width$}  {value}"), width + 2);
        }
        for (name, value) in shown.filter(|(_, value)| !is_plain(value)) {
            match value {
                Value::Array(items) => self.list(depth, name, items),
                Value::Object(members) => {
                    self.line(depth, &format!("\n{}", label(name)));
                    self.members(depth + 1, members);
                }
                _ => {}
            }
        }
    }

    /// A list: a table when its things are plain, otherwise one thing below the other.
    fn list(&mut self, depth: usize, name: &str, items: &[Value]) {
        let objects: Vec<&Members> = items.iter().filter_map(Value::as_object).collect();
        if objects.is_empty() {
            return;
        }
        let is_table = objects.iter().all(|object| object.values().all(is_plain));
        self.line(depth, &format!("\n{}", label(name)));
        if !is_table {
            for (index, object) in objects.into_iter().enumerate() {
                if index > 0 {
                    self.line(0, "");
                }
                self.members(depth + 1, object);
            }
            return;
        }
        let columns = columns(&objects, &["step"]);
        let grid = self.grid(&columns, objects.into_iter());
        self.line(depth + 1, &grid);
    }

    /// A table with some members of objects as its columns.
    fn grid<'a>(&self, columns: &[&str], objects: impl Iterator<Item = &'a Members>) -> String {
        let row = |object: &Members| {
            let cell = |column: &&str| object.get(*column).map(|value| self.plain(column, value));
            columns.iter().map(|column| cell(column).unwrap_or_default()).collect()
        };
        grid(columns.iter().map(|column| label(column)).collect(), objects.map(row))
    }

    /// A value on one line.
    fn plain(&self, name: &str, value: &Value) -> String {
        Shown { answer: self.answer, messages: self.messages }.plain(name, value)
    }

    fn findings(&mut self) {
        let Some(Value::Array(findings)) = self.answer.get("findings") else { return };
        if findings.is_empty() {
            return;
        }
        self.line(0, &format!("\n{}", label("findings")));
        for finding in findings {
            let text = |member: &str| finding[member].as_str().unwrap_or_default().to_owned();
            let citation =
                finding["citation"].as_str().map(|at| format!(" [{}]", self.messages.citation(at)));
            let citation = citation.unwrap_or_default();
            let line = format!("{}: {}{citation}", label(&text("status")), text("message"));
            self.wrapped(1, &line, 2);
            if let Some(Value::Array(supply)) = finding.get("supply") {
                let places: Vec<&str> = supply.iter().filter_map(Value::as_str).collect();
                let line = format!("{} {}", self.messages.fixed("text-report-supply"), places.join(", "));
                self.wrapped(2, &line, 2);
            }
        }
    }

    fn interpretations(&mut self) {
        let Some(Value::Array(points)) = self.answer.get("interpretations") else { return };
        if points.is_empty() {
            return;
        }
        self.line(0, &format!("\n{}", label("interpretations")));
        for point in points {
            let text = |member: &str| point[member].as_str().unwrap_or_default();
            self.wrapped(1, text("question"), 2);
            let mut readings = format!("{} → {}", label(text("point")), label(text("reading")));
            for other in point["alternatives"].as_array().into_iter().flatten() {
                let verdict = other["verdict"].as_str().map_or_else(|| "–".to_owned(), label);
                let reading = label(other["reading"].as_str().unwrap_or_default());
                let _ = write!(readings, "; {reading}: {verdict}");
            }
            self.wrapped(2, &readings, 2);
        }
    }

    /// The proof, when the answer carries it: sentences, or the steps by name.
    fn proof(&mut self) {
        self.sentences("summary", self.answer.pointer("/derivation/summary"));
        let Some(Value::Array(steps)) = self.answer.pointer("/derivation/steps") else { return };
        let columns = ["id", "op", "of", "table", "row", "column", "equals", "unit", "holds", "rule", "at"];
        let grid = self.grid(&columns, steps.iter().filter_map(Value::as_object));
        self.line(0, &format!("\n{}", label("steps")));
        self.line(1, &grid);
    }

    fn sentences(&mut self, name: &str, list: Option<&Value>) {
        let sentences: Vec<&str> =
            list.and_then(Value::as_array).into_iter().flatten().filter_map(Value::as_str).collect();
        if sentences.is_empty() {
            return;
        }
        self.line(0, &format!("\n{}", label(name)));
        for sentence in sentences {
            self.wrapped(1, sentence, 2);
        }
    }
}

/// A table of texts whose columns line up.
fn grid(headings: Vec<String>, rows: impl Iterator<Item = Vec<String>>) -> String {
    let mut table = Table::new();
    table.load_style(NOTHING).set_header(headings).add_rows(rows);
    table.column_iter_mut().for_each(|column| {
        column.set_padding((0, 2));
    });
    table.trim_fmt()
}

/// A member or a word as a label in the language of the report: `not_counted` is `Not counted`.
pub fn label(name: &str) -> String {
    language::messages().label(name).into_owned()
}

#[cfg(test)]
mod tests {
    use super::grid;

    #[test]
    fn columns_line_up_by_characters() {
        let rows = [["Devices", "9 in³"], ["Clamps", ""]];
        let rows = rows.map(|row| row.map(str::to_owned).into());
        let text = grid(vec!["What".into(), "Volume".into()], rows.into_iter());
        assert_eq!(text, "What     Volume\nDevices  9 in³\nClamps");
    }
}
