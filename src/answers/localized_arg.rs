//! What a finding names, as its sentence writes it.

use crate::checks::{AllowanceGroup, FindingArg, ReadingResult, Verdict};
use crate::i18n::{Catalogue, FigureText};
use std::fmt;

/// An argument as a sentence writes it.
pub(super) struct LocalizedArg<'a> {
    pub(super) argument: &'a FindingArg,
    pub(super) messages: &'a Catalogue,
}

impl fmt::Display for LocalizedArg<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self.argument {
            FindingArg::Text(text) => f.write_str(text),
            FindingArg::Name(name) => f.write_str(name),
            FindingArg::Words(keys) => keys.iter().enumerate().try_for_each(|(index, key)| {
                f.write_str(if index == 0 { "" } else { ", " })?;
                f.write_str(self.messages.fixed(key))
            }),
            FindingArg::Figure(figure) => FigureText(figure.value, figure.unit).fmt(f),
            FindingArg::AllowanceGroups(takings) => {
                takings.iter().enumerate().try_for_each(|(index, group)| {
                    f.write_str(if index == 0 { "" } else { "; " })?;
                    write_allowance_group(group, f)
                })
            }
            FindingArg::Readings(readings) => readings.iter().enumerate().try_for_each(|(index, result)| {
                f.write_str(if index == 0 { "" } else { ", " })?;
                write_reading_result(result, self.messages, f)
            }),
        }
    }
}

fn write_reading_result(
    result: &ReadingResult,
    messages: &Catalogue,
    f: &mut fmt::Formatter<'_>,
) -> fmt::Result {
    let ReadingResult { reading, verdict, figures } = result;
    write!(f, "{reading} → {}", messages.label(verdict.map_or("sized", Verdict::name)))?;
    let Some(figures) = figures else { return Ok(()) };
    let [given, limit] = figures.map(|figure| FigureText(figure.value, figure.unit));
    write!(f, " ({})", messages.sentence("text-reading-figures", [("given", given), ("limit", limit)]))
}

fn write_allowance_group(group: &AllowanceGroup, f: &mut fmt::Formatter<'_>) -> fmt::Result {
    let AllowanceGroup { names, size, allowances, each } = group;
    for (index, name) in names.iter().enumerate() {
        f.write_str(if index == 0 { "" } else { ", " })?;
        f.write_str(name.as_str())?;
    }
    f.write_str(if names.is_empty() { "" } else { ": " })?;
    write!(f, "{size} → {} × {}", allowances.value, FigureText(each.value, each.unit))
}
