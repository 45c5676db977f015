//! Requests that name exercises: a set of them, one of them, a worksheet.

use crate::checks::{Faults, Reference};
use crate::quantity::{Count, Units};
use crate::rulebook::Edition;
use crate::service::language::ChosenLanguage;
use crate::service::problem::Problem;
use crate::training::exercises::{Difficulty, LARGEST_SEED, MOST, Spec, Topic, VERSION};
use serde::Deserialize;
use serde::de::{self, Deserializer};
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
        // 7.0 is a whole number to JSON Schema, and below 2⁵³ every whole number is exact
        let number = f64::deserialize(deserializer)?;
        let is_seed = number.fract() == 0.0 && (0.0..=LARGEST_SEED as f64).contains(&number);
        if is_seed { Ok(Self(number as u64)) } else { Err(de::Error::custom("out of bounds")) }
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

/// Declares a request that names exercises: what they are about and from which seed, and members of its own.
macro_rules! exercise_request {
    ($(#[$meta:meta])* $name:ident { $($own:tt)* }) => {
        $(#[$meta])*
        #[derive(Clone, Debug, Deserialize, ToSchema)]
        #[serde(deny_unknown_fields)]
        pub struct $name {
            /// What the exercises are about.
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
            /// Where the exercises begin.
            pub seed: Seed,
            $($own)*
            /// The version of the generator that makes them; the newest unless said otherwise.
            pub version: Option<Version>,
        }

        impl $name {
            /// What is to be made; the problem says what must be accepted first.
            pub fn spec(&self) -> Result<Spec, Problem> {
                let Self { topic, difficulty, edition, units, seed, .. } = *self;
                let mut faults = Faults::default();
                faults.edition(edition, self.accept_unverified_rules);
                if !faults.is_empty() {
                    return Err(Problem::invalid((&faults).into()));
                }
                let version = self.version.map_or(VERSION, Version::get);
                Ok(Spec { topic, difficulty, edition, units, seed: seed.0, version })
            }
        }
    };
}

exercise_request! {
    /// Exercises about one topic, from one seed.
    ExercisesRequest {
        /// How many exercises. 1 unless said otherwise.
        pub count: Option<Many>,
    }
}

exercise_request! {
    /// One exercise among those from a seed.
    ExerciseNamed {
        /// Its number among them, from 1.
        pub number: Many,
    }
}

exercise_request! {
    /// A sheet of exercises about one topic, from one seed.
    WorksheetRequest {
        /// How many exercises. 1 unless said otherwise.
        pub count: Option<Many>,
        /// The title of the sheet; that of the topic unless said otherwise.
        pub title: Option<Reference>,
        /// The language of the sheet; that of the Accept-Language header unless said otherwise.
        pub language: Option<ChosenLanguage>,
    }
}

/// How many exercises a request asks for.
pub(super) fn number_of(count: Option<Many>) -> u32 {
    count.map_or(1, Many::get)
}
