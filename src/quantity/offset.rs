//! Distances that may be nothing at all, as a setback or a gap may.

use super::{Conversion, DECIMALS, Decimal, Length, Measure};
use serde::de::{self, Deserializer};
use serde::{Deserialize, Serialize, Serializer};
use utoipa::openapi::RefOr;
use utoipa::openapi::extensions::ExtensionsBuilder;
use utoipa::openapi::schema::{ObjectBuilder, Schema, Type};
use utoipa::{PartialSchema, ToSchema};

/// A distance of nought or more: inches, or millimetres when the request says `si`.
///
/// ```
/// use elbowroom::quantity::Offset;
/// assert_eq!(serde_json::from_str::<Offset>("0").unwrap().value().to_string(), "0");
/// assert!(serde_json::from_str::<Offset>("-0.125").is_err());
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Offset(Decimal);

impl Offset {
    /// The distance, if it is neither below nought nor above [`Length::MOST`].
    pub fn new(value: Decimal) -> Option<Self> {
        (value >= Decimal::ZERO && value <= Decimal::whole(Length::MOST)).then_some(Self(value))
    }

    /// The number, in the request's units.
    pub const fn value(self) -> Decimal {
        self.0
    }

    /// The same distance in the other system.
    pub(super) fn converted(self, by: &Conversion) -> Self {
        Self(by.apply(self.0, Measure::Length))
    }
}

impl Serialize for Offset {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.0.serialize(serializer)
    }
}

impl<'de> Deserialize<'de> for Offset {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let value = Decimal::deserialize(deserializer)?;
        Self::new(value).ok_or_else(|| de::Error::custom("out of bounds"))
    }
}

impl PartialSchema for Offset {
    fn schema() -> RefOr<Schema> {
        let text = "A distance, 0 where there is none: inches (`us`) or millimetres (`si`). In the request's `units`; at most six decimals.";
        ObjectBuilder::new()
            .schema_type(Type::Number)
            .description(Some(text))
            .minimum(Some(0))
            .maximum(Some(Length::MOST))
            .examples([0.25])
            .extensions(Some(ExtensionsBuilder::new().add("x-decimals", DECIMALS).build()))
            .build()
            .into()
    }
}

impl ToSchema for Offset {}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn bounds_are_just_under_exactly_and_just_over() {
        let read = |text: &str| serde_json::from_str::<Offset>(text).map(|offset| offset.value().to_string());
        assert_eq!(read("0").unwrap(), "0");
        assert_eq!(read("100000").unwrap(), "100000");
        for bad in ["-0.000001", "100000.000001", "0.0000001", "null", "\"0\""] {
            assert!(read(bad).is_err(), "{bad}");
        }
    }
}
