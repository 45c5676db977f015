//! From one system of units to the other.
//!
//! The code prints both systems and lets either be used; its two figures differ in their last digit. So a demand is worked wholly in
//! one system: what a request measures is converted, what the code prints never is.

use super::{Area, DECIMALS, Decimal, Length, Measure, Offset, Units, Volume, Weight};

/// How the units of the two systems are related.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Conversion {
    /// Millimetres in an inch.
    pub millimetres_per_inch: Decimal,
    /// Kilograms in a pound.
    pub kilograms_per_pound: Decimal,
    /// The system that is converted to.
    pub to: Units,
}

impl Conversion {
    /// A measured value in the other system, rounded to the nearest at the ninth decimal, a half away from zero.
    ///
    /// An inch is so many whole tenths of a millimetre that two lengths of six decimals, one in each system, are equal or differ by
    /// more than seven billionths: no comparison of a length with a printed one can be turned by rounding. An area, a volume or a
    /// weight can be off by half a billionth of its unit, either way.
    pub fn apply(&self, value: Decimal, measure: Measure) -> Decimal {
        match (self.si_per_us(measure), self.to) {
            (None, _) => value,
            (Some(factor), Units::Si) => value.times(factor),
            (Some(factor), Units::Us) => value.over_to_nearest(factor).unwrap_or(value),
        }
    }

    /// What a request said, from what its value was converted to: a request gives at most six decimals, so that rounding to those
    /// brings back exactly what was said.
    pub fn said(&self, converted: Decimal, measure: Measure) -> Decimal {
        let back = Self { to: self.to.other(), ..*self };
        back.apply(converted, measure).rounded_to(DECIMALS)
    }

    /// How many of the metric unit are one of the other; `None` for what has no unit.
    fn si_per_us(&self, measure: Measure) -> Option<Decimal> {
        let length = self.millimetres_per_inch;
        let area = length.times(length);
        match measure {
            Measure::Number | Measure::Percent => None,
            Measure::Length => Some(length),
            Measure::Area => Some(area),
            // cubic centimetres, not millimetres
            Measure::Volume => area.times(length).over(Decimal::whole(1000)),
            Measure::Weight => Some(self.kilograms_per_pound),
        }
    }
}

/// What holds measured values, directly or somewhere below.
pub trait Convert {
    /// Converts every measured value.
    fn convert(&mut self, by: &Conversion);
}

impl<T: Convert> Convert for Option<T> {
    fn convert(&mut self, by: &Conversion) {
        self.iter_mut().for_each(|held| held.convert(by));
    }
}

impl<T: Convert> Convert for Vec<T> {
    fn convert(&mut self, by: &Conversion) {
        self.iter_mut().for_each(|held| held.convert(by));
    }
}

macro_rules! measures {
    ($($name:ident),+) => {
        $(impl Convert for $name {
            fn convert(&mut self, by: &Conversion) {
                *self = self.converted(by);
            }
        })+
    };
}

measures!(Length, Area, Volume, Weight, Offset);

/// Says which members of a struct are measured, or hold what is.
macro_rules! converts {
    ($($name:ident { $($member:ident),* $(,)? })+) => {
        $(impl $crate::quantity::Convert for $name {
            fn convert(&mut self, by: &$crate::quantity::Conversion) {
                // a struct that measures nothing has nothing to convert
                let _ = by;
                $($crate::quantity::Convert::convert(&mut self.$member, by);)*
            }
        })+
    };
}

pub(crate) use converts;

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    fn to(to: Units) -> Conversion {
        let decimal = |text: &str| text.parse().unwrap();
        Conversion { millimetres_per_inch: decimal("25.4"), kilograms_per_pound: decimal("0.45359237"), to }
    }

    #[test]
    fn an_inch_its_square_and_its_cube_and_a_pound() {
        for (measure, si) in [
            (Measure::Length, "25.4"),
            (Measure::Area, "645.16"),
            (Measure::Volume, "16.387064"),
            (Measure::Weight, "0.45359237"),
            (Measure::Number, "1"),
        ] {
            assert_eq!(to(Units::Si).apply(Decimal::ONE, measure).to_string(), si);
            assert_eq!(to(Units::Us).apply(si.parse().unwrap(), measure), Decimal::ONE);
        }
    }

    proptest! {
        #[test]
        fn what_was_said_comes_back(millionths in 1_i64..1_000_000_000_000, si in any::<bool>()) {
            let (said, conversion) =
                (Decimal::from_billionths(millionths * 1000), to(if si { Units::Si } else { Units::Us }));
            for measure in [Measure::Length, Measure::Area, Measure::Volume, Measure::Weight, Measure::Number] {
                prop_assert_eq!(conversion.said(conversion.apply(said, measure), measure), said);
            }
        }

        #[test]
        fn rounding_turns_no_comparison_of_lengths(
            mm in 1_i64..2_000_000_000, off in -3_i64..3,
        ) {
            // the printed inches of six decimals that are nearest
            let inches = mm * 10 / 254 + off;
            let converted = to(Units::Us).apply(Decimal::from_billionths(mm * 1000), Measure::Length);
            let printed = Decimal::from_billionths(inches * 1000);
            prop_assert_eq!(converted.cmp(&printed), (mm * 10).cmp(&(inches * 254)));
        }
    }
}
