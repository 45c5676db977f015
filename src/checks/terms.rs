//! What every request carries.

use crate::quantity::{Decimal, Units};
use crate::rulebook::Edition;
use crate::rulebook::amendment::{Amendable, Amended};
use serde::de::{self, Deserializer};
use serde::{Deserialize, Serialize};
use smol_str::SmolStr;
use utoipa::openapi::RefOr;
use utoipa::openapi::schema::{ObjectBuilder, Schema, Type};
use utoipa::{PartialSchema, ToSchema};

/// The members that every request has, in one place.
#[derive(Clone, Copy, Debug)]
pub struct Terms<'a> {
    /// The edition of the code.
    pub edition: Edition,
    /// Whether rules that nobody could verify are accepted.
    pub accept_unverified_rules: bool,
    /// The units of request and answer.
    pub units: Units,
    /// The caller's own mark.
    pub reference: Option<&'a str>,
    /// Local amendments, on the caller's word.
    pub amendments: &'a [Amendment],
}

/// A local amendment: a jurisdiction states another figure than the code does. Never assumed; taken on the caller's word.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Amendment {
    /// The name of the figure, as the table `rule-figures` has it. `/v1/amendments` lists those that can be amended.
    pub figure: FigureName,
    /// What it becomes, in the request's units.
    #[schema(value_type = f64, minimum = 0, maximum = 1_000_000, extensions(("x-decimals" = json!(6))), example = 3.0)]
    pub value: Decimal,
    /// Where the jurisdiction says so, in the caller's words.
    pub citation: Reference,
}

impl Amendment {
    /// The amended figure; `None` for one that cannot be amended, which is a fault of the request.
    pub fn amended(&self) -> Option<Amended> {
        let amendable = Amendable::find(self.figure.as_str())?;
        Some(Amended { figure: amendable.figure, value: self.value })
    }
}

/// Declares a bounded text, kept in place while it is short: its length is stated in its schema and enforced on reading.
macro_rules! bounded_text {
    ($(#[doc = $doc:literal])+ $name:ident, $most:literal, $text:literal, $example:literal) => {
        $(#[doc = $doc])+
        #[derive(Clone, Debug, PartialEq, Eq, Hash, Serialize)]
        pub struct $name(SmolStr);

        impl $name {
            /// The most characters.
            pub const MOST: usize = $most;

            /// The text, if it is not empty and not too long.
            pub fn new(text: impl Into<SmolStr>) -> Option<Self> {
                let text = text.into();
                let fits = !text.is_empty() && (text.len() <= Self::MOST || text.chars().count() <= Self::MOST);
                fits.then_some(Self(text))
            }

            /// The text.
            pub fn as_str(&self) -> &str {
                &self.0
            }
        }

        impl<'de> Deserialize<'de> for $name {
            fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                let text = SmolStr::deserialize(deserializer)?;
                Self::new(text).ok_or_else(|| de::Error::custom("out of bounds"))
            }
        }

        impl PartialSchema for $name {
            fn schema() -> RefOr<Schema> {
                ObjectBuilder::new()
                    .schema_type(Type::String)
                    .min_length(Some(1))
                    .max_length(Some($most))
                    .description(Some($text))
                    .examples([$example])
                    .build()
                    .into()
            }
        }

        impl ToSchema for $name {}
    };
}

bounded_text!(
    /// The caller's own mark for a request, echoed in the answer.
    Reference, 200, "The caller's own mark for this request, echoed in the answer.", "hall-3"
);
bounded_text!(
    /// The name of a figure that a rule states.
    FigureName, 100, "The name of a figure that a rule states.", "outlet-fill.wire-connectors.allowances"
);
bounded_text!(
    /// A name that the caller gives to a thing, so that the answer can speak of it.
    Name, 64, "A name chosen by the caller, so that the answer can speak of this thing.", "S1"
);
