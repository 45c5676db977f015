//! Whole numbers of things, bounded when read.

use serde::de::{self, Deserializer, Visitor};
use serde::{Deserialize, Serialize};
use std::fmt;
use utoipa::openapi::RefOr;
use utoipa::openapi::schema::{ObjectBuilder, Schema, Type};
use utoipa::{PartialSchema, ToSchema};

/// A whole number from 1 to `MOST`. JSON's `4` and `4.0` are the same number, and both are read.
///
/// ```
/// use elbowroom::quantity::Count;
/// assert_eq!(serde_json::from_str::<Count<20>>("4.0").unwrap().get(), 4);
/// assert!(serde_json::from_str::<Count<20>>("21").is_err());
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
pub struct Count<const MOST: u32>(u32);

impl<const MOST: u32> Count<MOST> {
    /// The number, if it is from 1 to `MOST`.
    pub const fn new(number: u32) -> Option<Self> {
        if number >= 1 && number <= MOST { Some(Self(number)) } else { None }
    }

    /// The number.
    pub const fn get(self) -> u32 {
        self.0
    }
}

impl<'de, const MOST: u32> Deserialize<'de> for Count<MOST> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Whole<const MOST: u32>;
        impl<const MOST: u32> Visitor<'_> for Whole<MOST> {
            type Value = Count<MOST>;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write!(f, "a whole number from 1 to {MOST}")
            }
            fn visit_u64<E: de::Error>(self, number: u64) -> Result<Count<MOST>, E> {
                let count = u32::try_from(number).ok().and_then(Count::new);
                count.ok_or_else(|| de::Error::custom("out of bounds"))
            }
            fn visit_f64<E: de::Error>(self, number: f64) -> Result<Count<MOST>, E> {
                let whole = number.fract() == 0.0 && (1.0..=f64::from(MOST)).contains(&number);
                if whole { self.visit_u64(number as u64) } else { Err(de::Error::custom("out of bounds")) }
            }
        }
        // a choice by kind hands its members on buffered, and a buffered 4.0 is given to those who take anything
        deserializer.deserialize_any(Whole)
    }
}

impl<const MOST: u32> PartialSchema for Count<MOST> {
    fn schema() -> RefOr<Schema> {
        ObjectBuilder::new()
            .schema_type(Type::Integer)
            .minimum(Some(1))
            .maximum(Some(MOST))
            .description(Some(format!("A whole number from 1 to {MOST}.")))
            .build()
            .into()
    }
}

impl<const MOST: u32> ToSchema for Count<MOST> {
    fn name() -> std::borrow::Cow<'static, str> {
        format!("CountTo{MOST}").into()
    }
}
