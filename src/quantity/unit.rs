//! Units and the two systems of them that the code prints.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// The system that a request is written in and answered in.
///
/// The two columns of the code differ in their last digit, and either may be used: neither is converted into the other.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "lowercase")]
pub enum Units {
    /// Inches, square inches, cubic inches, pounds.
    #[default]
    Us,
    /// Millimetres, square millimetres, cubic centimetres, kilograms, as the code itself prints them.
    Si,
}

/// What kind of size a figure is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Measure {
    /// A number of things, or a factor.
    Number,
    /// A share in hundredths.
    Percent,
    /// A distance.
    Length,
    /// A cross-section.
    Area,
    /// A space inside.
    Volume,
    /// A load.
    Weight,
}

/// The unit of one figure, as an answer writes it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, ToSchema)]
pub enum Unit {
    /// A plain number.
    #[serde(rename = "1")]
    One,
    /// Hundredths.
    #[serde(rename = "%")]
    Percent,
    /// Inches.
    #[serde(rename = "in")]
    Inch,
    /// Millimetres.
    #[serde(rename = "mm")]
    Millimetre,
    /// Square inches.
    #[serde(rename = "in2")]
    SquareInch,
    /// Square millimetres.
    #[serde(rename = "mm2")]
    SquareMillimetre,
    /// Cubic inches.
    #[serde(rename = "in3")]
    CubicInch,
    /// Cubic centimetres.
    #[serde(rename = "cm3")]
    CubicCentimetre,
    /// Pounds.
    #[serde(rename = "lb")]
    Pound,
    /// Kilograms.
    #[serde(rename = "kg")]
    Kilogram,
}

impl Units {
    /// The other system.
    pub const fn other(self) -> Self {
        match self {
            Self::Us => Self::Si,
            Self::Si => Self::Us,
        }
    }

    /// The unit in which this system writes a measure.
    ///
    /// ```
    /// use elbowroom::quantity::{Measure, Unit, Units};
    /// assert_eq!(Units::Si.of(Measure::Volume), Unit::CubicCentimetre);
    /// ```
    pub const fn of(self, measure: Measure) -> Unit {
        match (measure, self) {
            (Measure::Number, _) => Unit::One,
            (Measure::Percent, _) => Unit::Percent,
            (Measure::Length, Self::Us) => Unit::Inch,
            (Measure::Length, Self::Si) => Unit::Millimetre,
            (Measure::Area, Self::Us) => Unit::SquareInch,
            (Measure::Area, Self::Si) => Unit::SquareMillimetre,
            (Measure::Volume, Self::Us) => Unit::CubicInch,
            (Measure::Volume, Self::Si) => Unit::CubicCentimetre,
            (Measure::Weight, Self::Us) => Unit::Pound,
            (Measure::Weight, Self::Si) => Unit::Kilogram,
        }
    }
}

impl Unit {
    /// The system that the unit belongs to, and what it measures; `None` for plain numbers and percentages, which both have.
    pub const fn measures(self) -> Option<(Units, Measure)> {
        match self {
            Self::One | Self::Percent => None,
            Self::Inch => Some((Units::Us, Measure::Length)),
            Self::SquareInch => Some((Units::Us, Measure::Area)),
            Self::CubicInch => Some((Units::Us, Measure::Volume)),
            Self::Pound => Some((Units::Us, Measure::Weight)),
            Self::Millimetre => Some((Units::Si, Measure::Length)),
            Self::SquareMillimetre => Some((Units::Si, Measure::Area)),
            Self::CubicCentimetre => Some((Units::Si, Measure::Volume)),
            Self::Kilogram => Some((Units::Si, Measure::Weight)),
        }
    }

    /// The unit as an answer writes it: `in3`, `mm`, `1` for a plain number.
    pub const fn name(self) -> &'static str {
        match self {
            Self::One => "1",
            Self::Percent => "%",
            Self::Inch => "in",
            Self::Millimetre => "mm",
            Self::SquareInch => "in2",
            Self::SquareMillimetre => "mm2",
            Self::CubicInch => "in3",
            Self::CubicCentimetre => "cm3",
            Self::Pound => "lb",
            Self::Kilogram => "kg",
        }
    }

    /// The unit as a person reads it: `in³`, `mm`, nothing for a plain number.
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::One => "",
            Self::Percent => "%",
            Self::Inch => "in",
            Self::Millimetre => "mm",
            Self::SquareInch => "in²",
            Self::SquareMillimetre => "mm²",
            Self::CubicInch => "in³",
            Self::CubicCentimetre => "cm³",
            Self::Pound => "lb",
            Self::Kilogram => "kg",
        }
    }
}
