//! Which raceways may carry a box, a conduit body or a luminaire: the kinds that 314.23 names.

use super::loader::File;
use super::table::{Affirmation, Column};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// The id of the table.
pub const TABLE: &str = "supporting-raceways";

pub(super) static FILE: File = File::new(
    TABLE,
    "314.23(E), (F) and (H)(2)",
    &[
        Column::text("boxes"),
        Column::text("conduit_bodies"),
        Column::text("loaded_conduit_bodies"),
        Column::text("luminaires"),
    ],
    include_str!("data/supporting-raceways.csv"),
);

/// A kind of raceway, as far as it matters to what it carries.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub enum SupportingRaceway {
    /// Rigid metal conduit.
    #[serde(rename = "RMC")]
    Rmc,
    /// Intermediate metal conduit.
    #[serde(rename = "IMC")]
    Imc,
    /// Rigid PVC conduit.
    #[serde(rename = "PVC")]
    Pvc,
    /// Reinforced thermosetting resin conduit.
    #[serde(rename = "RTRC")]
    Rtrc,
    /// Electrical metallic tubing.
    #[serde(rename = "EMT")]
    Emt,
    /// Any other: flexible conduit, flexible tubing.
    #[serde(rename = "other")]
    Other,
}

/// What a raceway is to carry.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Carried {
    /// A box, by threads.
    Box,
    /// A conduit body without devices, luminaires or other equipment.
    ConduitBody,
    /// A conduit body with a device, a luminaire or other equipment.
    LoadedConduitBody,
    /// A luminaire or a box that carries one, on unbroken conduit or a stem.
    Luminaire,
}

impl SupportingRaceway {
    /// The key of the row.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Rmc => "RMC",
            Self::Imc => "IMC",
            Self::Pvc => "PVC",
            Self::Rtrc => "RTRC",
            Self::Emt => "EMT",
            Self::Other => "other",
        }
    }

    /// Whether it may carry something; `None` only if the table lacks it, which a test rules out.
    ///
    /// ```
    /// use elbowroom::tables::supporting_raceways::{Carried, SupportingRaceway};
    /// assert!(!SupportingRaceway::Emt.may_carry(Carried::Box).unwrap().holds);
    /// assert!(SupportingRaceway::Emt.may_carry(Carried::ConduitBody).unwrap().holds);
    /// ```
    pub fn may_carry(self, carried: Carried) -> Option<Affirmation> {
        let column = match carried {
            Carried::Box => "boxes",
            Carried::ConduitBody => "conduit_bodies",
            Carried::LoadedConduitBody => "loaded_conduit_bodies",
            Carried::Luminaire => "luminaires",
        };
        FILE.affirmation(self.name(), column)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use SupportingRaceway::{Emt, Imc, Other, Pvc, Rmc, Rtrc};

    #[test]
    fn every_kind_is_in_the_table_for_everything_that_it_may_carry() {
        let carried = [Carried::Box, Carried::ConduitBody, Carried::LoadedConduitBody, Carried::Luminaire];
        for kind in [Rmc, Imc, Pvc, Rtrc, Emt, Other] {
            for carried in carried {
                assert!(kind.may_carry(carried).is_some(), "{} {carried:?}", kind.name());
            }
        }
        assert_eq!(FILE.table().unwrap().rows.len(), 6);
    }
}
