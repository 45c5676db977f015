//! Which exercises are asked for.

use crate::checks::Faults;
use crate::quantity::{Count, Units};
use crate::rulebook::Edition;
use crate::service::problem::Problem;
use crate::training::exercises::{Difficulty, LARGEST_SEED, MOST, Spec, Topic, VERSION};
use serde::Deserialize;
use serde::de::{self, Deserializer, Visitor};
use std::fmt;
use utoipa::openapi::RefOr;
use utoipa::openapi::schema::{ObjectBuilder, Schema, Type};
use utoipa::{PartialSchema, ToSchema};

/// How many exercises.
pub type Many = Count<MOST>;

/// A version of the generator.
pub type Version = Count<VERSION>;

/// Where exercises begin: a whole number that every reader of JSON keeps exactly.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Seed(u64);

impl<'de> Deserialize<'de> for Seed {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Whole;
        impl Visitor<'_> for Whole {
            type Value = Seed;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                write!(f, "a whole number from 0 to {LARGEST_SEED}")
            }
            fn visit_u64<E: de::Error>(self, number: u64) -> Result<Seed, E> {
                if number > LARGEST_SEED { Err(de::Error::custom("out of bounds")) } else { Ok(Seed(number)) }
            }
            fn visit_f64<E: de::Error>(self, number: f64) -> Result<Seed, E> {
                let whole = number.fract() == 0.0 && (0.0..=LARGEST_SEED as f64).contains(&number);
                if whole { self.visit_u64(number as u64) } else { Err(de::Error::custom("out of bounds")) }
            }
        }
        // 7.0 is a whole number to JSON Schema
        deserializer.deserialize_any(Whole)
    }
}

impl PartialSchema for Seed {
    fn schema() -> RefOr<Schema> {
        ObjectBuilder::new()
            .schema_type(Type::Integer)
            .minimum(Some(0))
            .maximum(Some(LARGEST_SEED as usize))
            .description(Some("Where exercises begin: the same seed gives the same exercises for ever."))
            .examples([7])
            .build()
            .into()
    }
}

impl ToSchema for Seed {}

/// Exercises about one topic, from one seed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ExercisesRequest {
    /// What they are about.
    pub topic: Topic,
    /// How much comes together in each.
    #[serde(default)]
    pub difficulty: Difficulty,
    /// The edition of NFPA 70.
    #[serde(default)]
    pub edition: Edition,
    /// Accept rules that could not be verified. Required to be true for the 2026 edition, whose text was not available.
    #[serde(default)]
    pub accept_unverified_rules: bool,
    /// The units of every figure.
    #[serde(default)]
    pub units: Units,
    /// Where they begin.
    pub seed: Seed,
    /// How many. 1 unless said otherwise.
    pub count: Option<Many>,
    /// The version of the generator that makes them; the newest unless said otherwise.
    pub version: Option<Version>,
}

impl ExercisesRequest {
    /// What is to be made; the problem says what must be accepted first.
    pub fn spec(&self) -> Result<Spec, Problem> {
        let Self { topic, difficulty, edition, accept_unverified_rules, units, seed, version, count: _ } =
            *self;
        let version = version.map_or(VERSION, Version::get);
        let spec = Spec { topic, difficulty, edition, units, seed: seed.0, version };
        accepted(edition, accept_unverified_rules)?;
        Ok(spec)
    }

    /// How many.
    pub fn count(&self) -> u32 {
        self.count.map_or(1, Many::get)
    }
}

/// One exercise among those from a seed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ExerciseNamed {
    /// What it is about.
    pub topic: Topic,
    /// How much comes together in it.
    #[serde(default)]
    pub difficulty: Difficulty,
    /// The edition of NFPA 70.
    #[serde(default)]
    pub edition: Edition,
    /// Accept rules that could not be verified. Required to be true for the 2026 edition, whose text was not available.
    #[serde(default)]
    pub accept_unverified_rules: bool,
    /// The units of every figure.
    #[serde(default)]
    pub units: Units,
    /// Where the exercises begin.
    pub seed: Seed,
    /// Its number among them, from 1.
    pub number: Many,
    /// The version of the generator that made it; the newest unless said otherwise.
    pub version: Option<Version>,
}

impl ExerciseNamed {
    /// What was made.
    pub fn spec(&self) -> Result<Spec, Problem> {
        let Self { topic, difficulty, edition, accept_unverified_rules, units, seed, version, number: _ } =
            *self;
        accepted(edition, accept_unverified_rules)?;
        let version = version.map_or(VERSION, Version::get);
        Ok(Spec { topic, difficulty, edition, units, seed: seed.0, version })
    }
}

fn accepted(edition: Edition, accept_unverified_rules: bool) -> Result<(), Problem> {
    let mut faults = Faults::default();
    faults.edition(edition, accept_unverified_rules);
    if faults.is_empty() { Ok(()) } else { Err(Problem::invalid((&faults).into())) }
}
