//! How far a figure can be trusted.

use serde::Serialize;
use utoipa::ToSchema;

/// Where a figure or a rule comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Basis {
    /// Read in a published source, named beside it.
    Published,
    /// Written from knowledge of the code, with no printed copy open. Compare with print before relying on it.
    Recalled,
    /// What the trade commonly does where the code is silent.
    CommonPractice,
    /// Authors or inspectors differ; the reading that was used is named.
    Disputed,
    /// Arithmetic and geometry: no code has to say it.
    Arithmetic,
    /// Not confirmed by anything. Compare with print.
    Unconfirmed,
}

impl Basis {
    /// The word as tables and answers write it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Published => "published",
            Self::Recalled => "recalled",
            Self::CommonPractice => "common_practice",
            Self::Disputed => "disputed",
            Self::Arithmetic => "arithmetic",
            Self::Unconfirmed => "unconfirmed",
        }
    }

    /// Reads the word; `None` for any other.
    pub fn read(text: &str) -> Option<Self> {
        [
            Self::Published,
            Self::Recalled,
            Self::CommonPractice,
            Self::Disputed,
            Self::Arithmetic,
            Self::Unconfirmed,
        ]
        .into_iter()
        .find(|basis| basis.name() == text)
    }
}
