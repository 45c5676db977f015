//! The editions of the code that can be asked for.

use crate::tables::{Bases, Basis};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// An edition of NFPA 70.
#[derive(
    Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, ToSchema,
)]
pub enum Edition {
    /// The 2017 edition.
    #[serde(rename = "2017")]
    E2017,
    /// The 2020 edition.
    #[serde(rename = "2020")]
    E2020,
    /// The 2023 edition.
    #[default]
    #[serde(rename = "2023")]
    E2023,
    /// The 2026 edition: the figures of 2023 carried forward, unverified. A request must say that it accepts that.
    #[serde(rename = "2026")]
    E2026,
}

impl Edition {
    /// Every edition, oldest first.
    pub const ALL: [Self; 4] = [Self::E2017, Self::E2020, Self::E2023, Self::E2026];

    /// The year on the cover.
    ///
    /// ```
    /// assert_eq!(elbowroom::rulebook::Edition::E2020.year(), "2020");
    /// ```
    pub const fn year(self) -> &'static str {
        match self {
            Self::E2017 => "2017",
            Self::E2020 => "2020",
            Self::E2023 => "2023",
            Self::E2026 => "2026",
        }
    }

    /// The edition before; `None` for the first.
    pub const fn before(self) -> Option<Self> {
        match self {
            Self::E2017 => None,
            Self::E2020 => Some(Self::E2017),
            Self::E2023 => Some(Self::E2020),
            Self::E2026 => Some(Self::E2023),
        }
    }

    /// Whether the figures were compared with anything that speaks of this edition. No text of 2026 was at hand.
    pub const fn is_verified(self) -> bool {
        !matches!(self, Self::E2026)
    }

    /// How far something can be trusted under this edition: nothing of an unverified one is confirmed but arithmetic.
    pub const fn basis_of(self, bases: Bases) -> Basis {
        let basis = bases.0[self.figures_of() as usize];
        if self.is_verified() || matches!(basis, Basis::Arithmetic) { basis } else { Basis::Unconfirmed }
    }

    /// The edition whose figures and section numbers serve for this one.
    pub const fn figures_of(self) -> Self {
        match self {
            Self::E2026 => Self::E2023,
            known => known,
        }
    }
}
