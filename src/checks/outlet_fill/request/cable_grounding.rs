//! The grounding conductor of a cable.

use crate::trade::ConductorSize;
use serde::de::{self, Deserializer, IntoDeserializer, Visitor};
use serde::{Deserialize, Serialize, Serializer};
use std::fmt;
use utoipa::openapi::RefOr;
use utoipa::openapi::schema::Schema;
use utoipa::{PartialSchema, ToSchema};

/// The wire-type grounding conductor of a cable: its size, or that there is none.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CableGrounding {
    /// The cable has none.
    None,
    /// It has one of this size.
    Size(ConductorSize),
}

impl CableGrounding {
    /// The word for a cable that has none.
    const NONE: &'static str = "none";

    /// The size of the one that is there.
    pub const fn size(self) -> Option<ConductorSize> {
        match self {
            Self::None => None,
            Self::Size(size) => Some(size),
        }
    }
}

impl Serialize for CableGrounding {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::None => serializer.serialize_str(Self::NONE),
            Self::Size(size) => size.serialize(serializer),
        }
    }
}

impl<'de> Deserialize<'de> for CableGrounding {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Text;
        impl Visitor<'_> for Text {
            type Value = CableGrounding;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a conductor size such as \"12 AWG\", or \"none\"")
            }
            fn visit_str<E: de::Error>(self, text: &str) -> Result<CableGrounding, E> {
                if text == CableGrounding::NONE {
                    return Ok(CableGrounding::None);
                }
                ConductorSize::deserialize(text.into_deserializer()).map(CableGrounding::Size)
            }
        }
        deserializer.deserialize_str(Text)
    }
}

impl PartialSchema for CableGrounding {
    fn schema() -> RefOr<Schema> {
        crate::trade::text_schema(
            "The size of the wire-type grounding conductor of a cable, or `none`.",
            "conductor-size",
            "12 AWG",
        )
    }
}

impl ToSchema for CableGrounding {}
