//! One rule: its name, where each edition has it, and where our knowledge of it comes from.

use super::{Bases, Basis, Edition};
use crate::quantity::{Decimal, Measure, Units};
use serde::{Serialize, Serializer};
use std::fmt;

/// A rule of the code, or a policy where the code is silent. Its words are in the message catalogues, under its id.
#[derive(Debug, PartialEq, Eq)]
pub struct Rule {
    /// The name, never changed once published: `outlet-fill.devices`.
    pub id: &'static str,
    /// The section in the editions of 2017, 2020 and 2023; `None` where that edition has no such rule.
    pub sections: [Option<&'static str>; 3],
    /// How far the rule can be trusted under each edition.
    pub bases: Bases,
    /// The published sources, or a plain statement that there is none.
    pub source: &'static str,
}

impl Rule {
    /// Where an edition has the rule; `None` if it has not.
    ///
    /// ```
    /// use elbowroom::rulebook::{Edition, outlet_fill::TERMINAL_BLOCKS};
    /// assert!(TERMINAL_BLOCKS.citation(Edition::E2020).is_none());
    /// assert_eq!(TERMINAL_BLOCKS.citation(Edition::E2023).unwrap().to_string(), "314.16(B)(6)");
    /// ```
    pub fn citation(&self, edition: Edition) -> Option<Citation> {
        let section = match edition.figures_of() {
            Edition::E2017 => self.sections[0],
            Edition::E2020 => self.sections[1],
            Edition::E2023 | Edition::E2026 => self.sections[2],
        };
        section.map(|section| Citation { section, verified: edition.is_verified() })
    }

    /// How far the rule can be trusted under an edition.
    pub fn basis_in(&self, edition: Edition) -> Basis {
        edition.basis_of(self.bases)
    }
}

/// The place of a rule in one edition.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Citation {
    section: &'static str,
    verified: bool,
}

impl Citation {
    /// The same with one paragraph in place of several.
    pub const fn of_paragraph(self, section: &'static str) -> Self {
        Self { section, ..self }
    }

    /// The two parts of its text: the section, and what must be said of it, which is mostly nothing.
    pub const fn parts(self) -> [&'static str; 2] {
        [self.section, if self.verified { "" } else { " (2023; location in 2026 unverified)" }]
    }
}

impl fmt::Display for Citation {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.parts().into_iter().try_for_each(|part| f.write_str(part))
    }
}

/// A figure that a rule states: a count, a factor, a distance or a volume, in both columns of the code.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct RuleFigure {
    /// The name, never changed once published: `outlet-fill.devices.allowances-per-yoke`.
    pub name: &'static str,
    /// The rule that states it.
    #[serde(serialize_with = "by_id")]
    pub rule: &'static Rule,
    /// What kind of size it is.
    pub measure: Measure,
    /// The figure in inches and their powers.
    pub us: Decimal,
    /// The figure in millimetres and their powers, as the code prints it.
    pub si: Decimal,
}

fn by_id<S: Serializer>(rule: &&Rule, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_str(rule.id)
}

impl RuleFigure {
    /// A plain number, the same in both systems. `ten_thousandths` of 2 is 20 000.
    pub const fn number(name: &'static str, rule: &'static Rule, ten_thousandths: i64) -> Self {
        let value = Decimal::ten_thousandths(ten_thousandths);
        Self { name, rule, measure: Measure::Number, us: value, si: value }
    }

    /// A volume, given in ten-thousandths of a cubic inch and of a cubic centimetre.
    pub const fn volume(name: &'static str, rule: &'static Rule, us: i64, si: i64) -> Self {
        Self::sized(name, rule, Measure::Volume, us, si)
    }

    /// A weight, given in ten-thousandths of a pound and of a kilogram.
    pub const fn weight(name: &'static str, rule: &'static Rule, us: i64, si: i64) -> Self {
        Self::sized(name, rule, Measure::Weight, us, si)
    }

    /// A size, given in ten-thousandths of each system's unit.
    pub const fn sized(name: &'static str, rule: &'static Rule, measure: Measure, us: i64, si: i64) -> Self {
        Self { name, rule, measure, us: Decimal::ten_thousandths(us), si: Decimal::ten_thousandths(si) }
    }

    /// A distance, given in ten-thousandths of an inch and of a millimetre.
    pub const fn length(name: &'static str, rule: &'static Rule, us: i64, si: i64) -> Self {
        Self::sized(name, rule, Measure::Length, us, si)
    }

    /// The same figure with another value, given in ten-thousandths of each system's unit.
    pub const fn with(mut self, us: i64, si: i64) -> Self {
        self.set(us, si);
        self
    }

    /// Sets the value, given in ten-thousandths of each system's unit.
    pub const fn set(&mut self, us: i64, si: i64) {
        (self.us, self.si) = (Decimal::ten_thousandths(us), Decimal::ten_thousandths(si));
    }

    /// Sets a plain number, in ten-thousandths.
    pub const fn set_number(&mut self, ten_thousandths: i64) {
        self.set(ten_thousandths, ten_thousandths);
    }

    /// Sets the value to that of another figure.
    pub const fn set_to(&mut self, other: Self) {
        (self.us, self.si) = (other.us, other.si);
    }

    /// The figure in one system.
    pub const fn value(&self, units: Units) -> Decimal {
        match units {
            Units::Us => self.us,
            Units::Si => self.si,
        }
    }
}
