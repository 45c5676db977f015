//! Trade sizes of raceways, in inches or by metric designator.

use crate::quantity::{Decimal, Units};
use serde::de::{self, Deserializer, MapAccess, Visitor};
use serde::{Deserialize, Serialize, Serializer};
use std::fmt;
use utoipa::openapi::RefOr;
use utoipa::openapi::schema::{ObjectBuilder, OneOfBuilder, Schema, SchemaType, Type};
use utoipa::{PartialSchema, ToSchema};

/// The trade size of a raceway, from 3/8 to 6. Ordered by size.
///
/// A trade size is a name, not a diameter: pull-box sums multiply it as the code does, in inches or by its metric
/// designator in millimetres.
///
/// ```
/// use elbowroom::quantity::Units;
/// use elbowroom::trade::TradeSize;
/// let two_and_a_half = TradeSize::read("2 1/2").unwrap();
/// assert_eq!(two_and_a_half.name(), "2-1/2");
/// assert_eq!(two_and_a_half.figure(Units::Us).to_string(), "2.5");
/// assert_eq!(two_and_a_half.figure(Units::Si).to_string(), "63");
/// ```
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct TradeSize(u8);

/// Name, inches in ten-thousandths, metric designator.
const SIZES: [(&str, i64, i32); 13] = [
    ("3/8", 3_750, 12),
    ("1/2", 5_000, 16),
    ("3/4", 7_500, 21),
    ("1", 10_000, 27),
    ("1-1/4", 12_500, 35),
    ("1-1/2", 15_000, 41),
    ("2", 20_000, 53),
    ("2-1/2", 25_000, 63),
    ("3", 30_000, 78),
    ("3-1/2", 35_000, 91),
    ("4", 40_000, 103),
    ("5", 50_000, 129),
    ("6", 60_000, 155),
];

impl TradeSize {
    /// How many sizes there are.
    pub const COUNT: usize = SIZES.len();

    /// Every size, smallest first.
    pub fn all() -> impl DoubleEndedIterator<Item = Self> {
        (0..SIZES.len() as u8).map(Self)
    }

    /// The place of this size among all, from 0.
    pub const fn index(self) -> usize {
        self.0 as usize
    }

    /// The canonical text, in inches: `1/2`, `1-1/4`, `4`.
    pub fn name(self) -> &'static str {
        SIZES[self.index()].0
    }

    /// The metric designator.
    pub fn metric_designator(self) -> i32 {
        SIZES[self.index()].2
    }

    /// The number that stands for the size in a sum: inches, or the metric designator as millimetres.
    pub fn figure(self, units: Units) -> Decimal {
        let (_, ten_thousandths, designator) = SIZES[self.index()];
        match units {
            Units::Us => Decimal::ten_thousandths(ten_thousandths),
            Units::Si => Decimal::whole(designator),
        }
    }

    /// Reads `1-1/4`, `1 1/4`, `1.25`, `1-1/4"`, `1¼`; `None` when it is no trade size.
    pub fn read(text: &str) -> Option<Self> {
        let bare = text.trim().trim_end_matches(['"', '″']).trim_end();
        let spelled = spell_fractions(bare);
        let hyphened = spelled.replace(' ', "-");
        let decimal = spelled.parse::<Decimal>().ok();
        Self::all().find(|size| hyphened == size.name() || decimal == Some(size.figure(Units::Us)))
    }

    /// The size with a metric designator.
    pub fn by_metric_designator(designator: i32) -> Option<Self> {
        Self::all().find(|size| size.metric_designator() == designator)
    }
}

/// Replaces `¼`, `½`, `¾` and `⅜` by their digits, set off from a whole number before them.
fn spell_fractions(text: &str) -> String {
    let mut spelled = String::with_capacity(text.len() + 4);
    for letter in text.chars() {
        match letter {
            '¼' | '½' | '¾' | '⅜' => {
                if spelled.ends_with(|before: char| before.is_ascii_digit()) {
                    spelled.push('-');
                }
                spelled.push_str(match letter {
                    '¼' => "1/4",
                    '½' => "1/2",
                    '¾' => "3/4",
                    _ => "3/8",
                });
            }
            other => spelled.push(other),
        }
    }
    spelled
}

impl fmt::Display for TradeSize {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name())
    }
}

impl fmt::Debug for TradeSize {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name())
    }
}

impl Serialize for TradeSize {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_str(self.name())
    }
}

impl<'de> Deserialize<'de> for TradeSize {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Size;
        impl<'de> Visitor<'de> for Size {
            type Value = TradeSize;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a trade size such as \"1-1/4\", or {\"metric_designator\": 35}")
            }
            fn visit_str<E: de::Error>(self, text: &str) -> Result<TradeSize, E> {
                TradeSize::read(text).ok_or_else(|| de::Error::custom("unknown trade size"))
            }
            fn visit_map<M: MapAccess<'de>>(self, mut members: M) -> Result<TradeSize, M::Error> {
                let only =
                    members.next_entry::<String, i32>()?.filter(|(member, _)| member == "metric_designator");
                let rest = members.next_key::<de::IgnoredAny>()?;
                only.filter(|_| rest.is_none())
                    .and_then(|(_, designator)| TradeSize::by_metric_designator(designator))
                    .ok_or_else(|| {
                        de::Error::custom("expected one known `metric_designator` and nothing else")
                    })
            }
        }
        deserializer.deserialize_any(Size)
    }
}

impl PartialSchema for TradeSize {
    fn schema() -> RefOr<Schema> {
        let text = super::text_schema(
            "The trade size in inches: `1/2`, `1-1/4`, `4`. `1 1/4`, `1.25` and `1¼` are read as `1-1/4`.",
            "trade-size",
            "1-1/4",
        );
        let designators = SIZES.map(|(_, _, designator)| designator);
        let metric = ObjectBuilder::new()
            .schema_type(SchemaType::Type(Type::Object))
            .title(Some("MetricDesignator"))
            .description(Some("The trade size by its metric designator."))
            .property(
                "metric_designator",
                ObjectBuilder::new()
                    .schema_type(Type::Integer)
                    .enum_values(Some(designators))
                    .description(Some("The metric designator: 16 for trade size 1/2, 53 for 2.")),
            )
            .required("metric_designator")
            .additional_properties(Some(utoipa::openapi::schema::AdditionalProperties::<Schema>::FreeForm(
                false,
            )))
            .build();
        let either = OneOfBuilder::new()
            .item(text)
            .item(metric)
            .description(Some("The trade size of a raceway, in inches or by its metric designator."));
        RefOr::T(Schema::OneOf(either.build()))
    }
}

impl ToSchema for TradeSize {}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_size_reads_all_its_spellings() {
        for size in TradeSize::all() {
            assert_eq!(TradeSize::read(size.name()), Some(size));
            assert_eq!(TradeSize::read(&size.figure(Units::Us).to_string()), Some(size));
            assert_eq!(TradeSize::by_metric_designator(size.metric_designator()), Some(size));
            let json = format!("{{\"metric_designator\": {}}}", size.metric_designator());
            assert_eq!(serde_json::from_str::<TradeSize>(&json).unwrap(), size);
        }
        for (text, name) in
            [("½", "1/2"), ("1½", "1-1/2"), ("2 1/2\"", "2-1/2"), ("0.5", "1/2"), (" 4 ", "4")]
        {
            assert_eq!(TradeSize::read(text).unwrap().name(), name);
        }
        for bad in ["", "7", "1/3", "0.6", "2-1-2", "½½"] {
            assert_eq!(TradeSize::read(bad), None, "{bad}");
        }
    }
}
