//! The cells of a row: numbers, yes and no, lists of things, and the faults of a cell that is not understood.

use super::Column;
use crate::checks::{FaultCode, Faults};
use crate::quantity::{Decimal, Measure, Unit, Units};
use serde_json::Value;

/// The filled cells of a row.
pub(super) struct Cells<'a>(Vec<(Column, &'a str)>);

/// A text without anything but its letters and digits, in lower case.
pub(super) fn plain(text: &str) -> String {
    text.chars().filter(|letter| letter.is_alphanumeric()).flat_map(char::to_lowercase).collect()
}

/// Reports a text that is not understood in a column, with what would be.
pub(super) fn not_understood<'t>(
    faults: &mut Faults,
    column: Column,
    given: &str,
    accepted: impl IntoIterator<Item = &'t str>,
) {
    unknown(faults, column, FaultCode::UnknownValue, given, accepted);
}

/// The same, with a code of its own.
pub(super) fn unknown<'t>(
    faults: &mut Faults,
    column: Column,
    code: FaultCode,
    given: &str,
    accepted: impl IntoIterator<Item = &'t str>,
) {
    let fault = faults.add(column.pointer(), code, "fault-table-not-understood");
    fault.arguments = vec![("given", shortened(given))];
    fault.accepted = accepted.into_iter().map(str::to_owned).collect();
}

/// Reports a text that could mean several things in a column, with all of them.
pub(super) fn ambiguous<'t>(
    faults: &mut Faults,
    column: Column,
    given: &str,
    meanings: impl IntoIterator<Item = &'t str>,
) {
    let fault = faults.add(column.pointer(), FaultCode::Ambiguous, "fault-table-ambiguous");
    fault.arguments = vec![("given", shortened(given))];
    fault.accepted = meanings.into_iter().map(str::to_owned).collect();
}

fn shortened(text: &str) -> String {
    text.chars().take(80).collect()
}

/// One of the things in a cell: how many, and the rest of its words in lower case.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Listed<'a> {
    /// As it is written.
    pub text: &'a str,
    /// How many; `None` where no number is written before an `x`.
    pub count: Option<u32>,
    /// What is counted.
    pub words: String,
}

impl Listed<'_> {
    /// A thing with its count, where one is written.
    pub fn counted(&self, mut thing: Value) -> Value {
        if let Some(count) = self.count {
            thing["count"] = count.into();
        }
        thing
    }
}

impl<'a> Cells<'a> {
    pub fn new(cells: Vec<(Column, &'a str)>) -> Self {
        Self(cells)
    }

    pub fn get(&self, column: Column) -> Option<&'a str> {
        self.0.iter().find(|(known, _)| *known == column).map(|(_, text)| *text)
    }

    pub fn has(&self, column: Column) -> bool {
        self.get(column).is_some()
    }

    /// The system of units; the default where none is named or the name is not understood.
    pub fn units(&self, faults: &mut Faults) -> Option<Units> {
        let given = self.get(Column::Units)?;
        match plain(given).as_str() {
            "us" | "inch" | "inches" | "in" => Some(Units::Us),
            "si" | "metric" | "mm" => Some(Units::Si),
            _ => {
                not_understood(faults, Column::Units, given, ["us", "si"]);
                None
            }
        }
    }

    /// Yes or no.
    pub fn yes_or_no(&self, column: Column, faults: &mut Faults) -> Option<bool> {
        let given = self.get(column)?;
        match plain(given).as_str() {
            "yes" | "y" | "true" | "x" => Some(true),
            "no" | "n" | "false" => Some(false),
            _ => {
                not_understood(faults, column, given, ["yes", "no"]);
                None
            }
        }
    }

    /// A measured number, in the units of the row.
    pub fn measured(&self, column: Column, measure: Measure, faults: &mut Faults) -> Option<Value> {
        let given = self.get(column)?;
        let units = self.units(&mut Faults::default()).unwrap_or_default();
        let (number, unit) = split_unit(given);
        if number.contains(',') {
            let point = number.replace(',', ".");
            let none = number.replace(',', "");
            ambiguous(faults, column, given, [point.as_str(), none.as_str()]);
            return None;
        }
        let unit = match unit_of(unit) {
            _ if unit.is_empty() => Some(units.of(measure)),
            known => known,
        };
        match (number_of(number), unit) {
            (Some(number), Some(unit)) if unit == units.of(measure) => serde_json::to_value(number).ok(),
            (Some(_), Some(_)) => {
                faults.add(column.pointer(), FaultCode::Conflict, "fault-table-unit").arguments =
                    vec![("given", shortened(given)), ("unit", units.of(measure).symbol().to_owned())];
                None
            }
            _ => {
                not_understood(faults, column, given, []);
                None
            }
        }
    }

    /// The things in a cell.
    pub fn list(&self, column: Column) -> Vec<Listed<'a>> {
        let Some(text) = self.get(column) else { return Vec::new() };
        text.split([';', ',', '+']).map(str::trim).filter(|item| !item.is_empty()).map(listed).collect()
    }
}

/// One thing with the number before its `x`: `2 x 12-2`, `2x 12-2`, `2×#12`, `2 @ 12`.
fn listed(text: &str) -> Listed<'_> {
    let digits = text.bytes().take_while(u8::is_ascii_digit).count();
    let (number, rest) = text.split_at(digits);
    let after = rest.trim_start();
    let counted = after.strip_prefix(['x', 'X', '×', '@']).filter(|after| {
        // `2 xhhw` is no number of things
        !after.starts_with(char::is_alphabetic)
    });
    match (number.parse().ok(), counted) {
        (Some(count), Some(words)) => Listed { text, count: Some(count), words: words.trim().to_lowercase() },
        _ => Listed { text, count: None, words: text.to_lowercase() },
    }
}

/// A number and the unit that is written behind it.
fn split_unit(text: &str) -> (&str, &str) {
    let end = text.find(|letter: char| letter.is_alphabetic() || matches!(letter, '"' | '″' | '\''));
    let (number, unit) = text.split_at(end.unwrap_or(text.len()));
    (number.trim(), unit.trim())
}

fn unit_of(text: &str) -> Option<Unit> {
    if matches!(text, "\"" | "″") {
        return Some(Unit::Inch);
    }
    Some(match plain(text).as_str() {
        "in" | "inch" | "inches" => Unit::Inch,
        "mm" => Unit::Millimetre,
        "in3" | "in³" | "cuin" | "cubicinch" | "cubicinches" => Unit::CubicInch,
        "cm3" | "cm³" | "cc" => Unit::CubicCentimetre,
        _ => return None,
    })
}

/// A decimal, or whole inches and a fraction: `20.3`, `.5`, `3-1/2`, `3 1/2`, `1/2`.
fn number_of(text: &str) -> Option<Decimal> {
    if let Some(fraction) = text.strip_prefix('.') {
        return format!("0.{fraction}").parse().ok();
    }
    if !text.contains('/') {
        return text.parse().ok();
    }
    let (whole, fraction) = text.rsplit_once(['-', ' ']).unwrap_or(("0", text));
    let (above, below) = fraction.split_once('/')?;
    let below: u32 = below.parse().ok()?;
    let small = below <= 64 && below.is_power_of_two();
    let part = Decimal::from(above.parse::<u32>().ok()?).over(Decimal::from(below)).filter(|_| small)?;
    Some(whole.trim().parse::<Decimal>().ok()? + part)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_are_read_as_people_type_them() {
        for (text, number) in
            [("20.3", "20.3"), (".5", "0.5"), ("3-1/2", "3.5"), ("3 1/2", "3.5"), ("1/64", "0.015625")]
        {
            assert_eq!(number_of(text).unwrap().to_string(), number, "{text}");
        }
        for bad in ["", "1/3", "a", "1/0", "1//2", "--1"] {
            assert_eq!(number_of(bad), None, "{bad}");
        }
    }

    #[test]
    fn a_number_of_things_stands_before_an_x() {
        for (text, count, words) in [
            ("2 x 12-2", Some(2), "12-2"),
            ("2x12-2", Some(2), "12-2"),
            ("3 × #12 THHN", Some(3), "#12 thhn"),
            ("12 THHN", None, "12 thhn"),
            ("4 XHHW", None, "4 xhhw"),
            ("4 @ 12", Some(4), "12"),
        ] {
            let Listed { count: found, words: left, .. } = listed(text);
            assert_eq!((found, left.as_str()), (count, words), "{text}");
        }
    }
}
