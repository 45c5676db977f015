//! Conductors that are alike, with the cross-section that the tables have for them.

use crate::checks::raceway_fill::sizing::{Occupant, insulated};
use crate::derivation::{Derivation, Pointer};
use crate::quantity::Count;
use crate::rulebook::raceway_fill::{BARE, CONDUCTORS, COUNTED};
use crate::tables::{bare_conductor_dimensions, compact_conductor_dimensions, conductor_dimensions};
use crate::trade::{ConductorSize, Covering, Insulation};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// Conductors of one size and make.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ConductorGroup {
    /// The size.
    pub size: ConductorSize,
    /// The insulation type. Where it is not said, a reading decides which is taken.
    pub insulation: Option<Insulation>,
    /// Whether it has an outer covering, for RHH, RHW and RHW-2.
    pub covering: Option<Covering>,
    /// Whether it is bare, as a grounding conductor may be.
    #[serde(default)]
    pub bare: bool,
    /// Whether its strands are compact.
    #[serde(default)]
    pub compact: bool,
    /// How many alike. 1 unless said otherwise.
    pub count: Option<Count<1000>>,
}

impl ConductorGroup {
    /// How many it is.
    pub fn number(&self) -> u32 {
        self.count.map_or(1, Count::get)
    }

    /// Whether it is not said what covers it: its insulation, or whether it has an outer covering where it is made both ways.
    pub fn is_unsaid(&self) -> bool {
        let without_covering = |insulation: Insulation| {
            insulation.is_made_with_and_without_covering() && self.covering.is_none() && !self.compact
        };
        !self.bare && self.insulation.is_none_or(without_covering)
    }

    /// Its count, and the least or the greatest cross-section that it can have: of the thinnest or the thickest insulation that its
    /// size is made with, where its own is not said.
    pub fn at_bound(&self, proof: &mut Derivation, at: Pointer, thickest: bool) -> Option<Occupant> {
        let mut group = *self;
        if self.is_unsaid() {
            if self.compact && !thickest {
                return None;
            }
            let [thin, thick] = conductor_dimensions::extremes(self.size)?.types;
            group.insulation = Some(if thickest { thick } else { thin });
            group.covering = Some(Covering::With);
            group.compact = false;
        }
        group.occupant(proof, at, |_| Insulation::Xhhw)
    }

    /// Its count and cross-section; `None` where the tables have none for it. `default` is the insulation that is
    /// taken where none is said.
    pub fn occupant(
        &self,
        proof: &mut Derivation,
        at: Pointer,
        default: impl FnOnce(&mut Derivation) -> Insulation,
    ) -> Option<Occupant> {
        let units = proof.units();
        if self.bare {
            let solid = || bare_conductor_dimensions::of(self.size, false, units);
            let row = bare_conductor_dimensions::of(self.size, true, units).or_else(solid)?;
            let count = proof.count(&COUNTED, self.count.map(Count::get), at);
            return Some(Occupant { count, each: proof.lookup(&BARE, row.area?, Some(at)) });
        }
        let insulation = match self.insulation {
            Some(insulation) => insulation,
            None => default(proof),
        };
        let count = proof.count(&COUNTED, self.count.map(Count::get), at);
        if self.compact {
            let area = compact_conductor_dimensions::of(insulation, self.size, units)?.area?;
            return Some(Occupant { count, each: proof.lookup(&CONDUCTORS, area, Some(at)) });
        }
        insulated(proof, (insulation, self.covering), self.size, count, Some(at))
    }
}
