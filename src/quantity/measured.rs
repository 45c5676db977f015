//! Lengths, areas and volumes as a request gives them: plain JSON numbers in the request's units, bounded when read.

use super::{Conversion, Decimal, Measure};
use serde::de::{self, Deserializer, Visitor};
use serde::{Deserialize, Serialize, Serializer};
use std::fmt;
use utoipa::openapi::RefOr;
use utoipa::openapi::extensions::ExtensionsBuilder;
use utoipa::openapi::schema::{ObjectBuilder, Schema, Type};
use utoipa::{PartialSchema, ToSchema};

/// The most decimals that a number in a request may have: a 1/64 of an inch is 0.015625.
pub const DECIMALS: u32 = 6;

/// Declares one measured quantity: a positive number with a largest value, stated in its schema and enforced on reading.
macro_rules! measured {
    ($(#[doc = $doc:literal])+ $name:ident, most $most:literal, $text:literal, $example:literal) => {
        $(#[doc = $doc])+
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
        pub struct $name(Decimal);

        impl $name {
            /// The largest that a request may give.
            pub const MOST: i32 = $most;

            /// The quantity, if it is above zero and not above [`Self::MOST`].
            pub fn new(value: Decimal) -> Option<Self> {
                (value > Decimal::ZERO && value <= Decimal::whole(Self::MOST)).then_some(Self(value))
            }

            /// The number, in the request's units.
            pub const fn value(self) -> Decimal {
                self.0
            }

            /// The same quantity in the other system.
            pub(super) fn converted(self, by: &Conversion) -> Self {
                Self(by.apply(self.0, Measure::$name))
            }
        }

        impl Serialize for $name {
            fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                self.0.serialize(serializer)
            }
        }

        impl<'de> Deserialize<'de> for $name {
            fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                let value = Decimal::deserialize(deserializer)?;
                Self::new(value).ok_or_else(|| de::Error::custom("out of bounds"))
            }
        }

        impl PartialSchema for $name {
            fn schema() -> RefOr<Schema> {
                number_schema(concat!($text, " In the request's `units`; above 0, at most six decimals."), $most, $example)
            }
        }

        impl ToSchema for $name {}
    };
}

measured!(
    /// A distance: inches, or millimetres when the request says `si`.
    Length, most 100_000, "A distance: inches (`us`) or millimetres (`si`).", 1.5
);
measured!(
    /// A cross-section: square inches, or square millimetres.
    Area, most 1_000_000, "A cross-section: square inches (`us`) or square millimetres (`si`).", 0.533
);
measured!(
    /// A space inside: cubic inches, or cubic centimetres.
    Volume, most 1_000_000, "A volume: cubic inches (`us`) or cubic centimetres (`si`).", 20.3
);

measured!(
    /// A load: pounds, or kilograms.
    Weight, most 100_000, "A weight: pounds (`us`) or kilograms (`si`).", 35.0
);

fn number_schema(description: &str, most: i32, example: f64) -> RefOr<Schema> {
    ObjectBuilder::new()
        .schema_type(Type::Number)
        .description(Some(description))
        .exclusive_minimum(Some(0))
        .maximum(Some(most))
        .examples([example])
        .extensions(Some(ExtensionsBuilder::new().add("x-decimals", DECIMALS).build()))
        .build()
        .into()
}

impl Serialize for Decimal {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_f64(self.to_json_number())
    }
}

impl<'de> Deserialize<'de> for Decimal {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Number;
        impl Visitor<'_> for Number {
            type Value = Decimal;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write!(f, "a number with at most {DECIMALS} decimals")
            }
            fn visit_f64<E: de::Error>(self, number: f64) -> Result<Decimal, E> {
                Decimal::from_json_number(number, DECIMALS).ok_or_else(|| de::Error::custom(NOT_READABLE))
            }
            fn visit_u64<E: de::Error>(self, number: u64) -> Result<Decimal, E> {
                u32::try_from(number).map(Decimal::from).map_err(|_| de::Error::custom(NOT_READABLE))
            }
            fn visit_i64<E: de::Error>(self, number: i64) -> Result<Decimal, E> {
                i32::try_from(number).map(Decimal::whole).map_err(|_| de::Error::custom(NOT_READABLE))
            }
        }
        deserializer.deserialize_f64(Number)
    }
}

const NOT_READABLE: &str = "not a number with at most six decimals in the accepted range";

/// Whether a JSON number has at most a number of decimals: what the schemas' `x-decimals` asks.
pub fn has_at_most_decimals(number: f64, decimals: u32) -> bool {
    Decimal::from_json_number(number, decimals).is_some()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bounds_are_just_under_exactly_and_just_over() {
        let read = |text: &str| serde_json::from_str::<Length>(text).map(|length| length.value().to_string());
        assert_eq!(read("0.000001").unwrap(), "0.000001");
        assert_eq!(read("100000").unwrap(), "100000");
        for bad in ["0", "-1", "100000.000001", "0.0000001", "1e300", "\"1\"", "null"] {
            assert!(read(bad).is_err(), "{bad}");
        }
    }
}
