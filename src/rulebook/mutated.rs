//! Rules that are no edition's.

use super::{Rulebook, Rules};
use std::ops::Deref;

/// A rulebook that somebody follows by mistake: the rules of an edition, some of them changed, or those of another edition
/// than the one that is asked for.
///
/// It is no [`Rulebook`], so nothing that answers takes it; [`evaluate_mutated`](crate::checks::evaluate_mutated) does, and what that
/// gives is no evaluation.
///
/// ```
/// use elbowroom::checks::{evaluate_under, outlet_fill::OutletFill};
/// use elbowroom::rulebook::{Edition, Rulebook};
/// let request = elbowroom::json::read(b"{}").unwrap();
/// evaluate_under::<OutletFill>(Rulebook::of(Edition::E2023), &request);
/// ```
///
/// ```compile_fail,E0308
/// use elbowroom::checks::{evaluate_under, outlet_fill::OutletFill};
/// use elbowroom::rulebook::{Edition, Rulebook};
/// let request = elbowroom::json::read(b"{}").unwrap();
/// evaluate_under::<OutletFill>(&Rulebook::of(Edition::E2023).mutated(|_| {}), &request);
/// ```
#[derive(Clone, Debug)]
pub struct MutatedRulebook(pub(super) Rulebook);

impl MutatedRulebook {
    /// The rules as a check reads them.
    pub(crate) const fn rulebook(&self) -> &Rulebook {
        &self.0
    }
}

impl From<Rulebook> for MutatedRulebook {
    /// The rules of an edition, followed where another is asked for.
    fn from(rulebook: Rulebook) -> Self {
        Self(rulebook)
    }
}

impl Deref for MutatedRulebook {
    type Target = Rules;

    fn deref(&self) -> &Rules {
        &self.0
    }
}
