//! What a request would come to under rules that are no edition's.

use super::judging::follow;
use super::{Check, Evaluation, Verdict};
use crate::derivation::ReplayFault;
use crate::rulebook::MutatedRulebook;

/// What a request would come to if the rules were other than they are. It is no [`Evaluation`], and none can be had of it: so no answer,
/// drawing or certificate is made of a mistake.
///
/// ```
/// use elbowroom::answers::{Explain, answer};
/// use elbowroom::checks::{evaluate, outlet_fill::OutletFill};
/// use elbowroom::i18n::Catalogue;
/// let request = elbowroom::json::read(b"{}").unwrap();
/// let evaluation = evaluate::<OutletFill>(&request);
/// answer::<OutletFill>(&request, &evaluation, Explain::None, Catalogue::english());
/// ```
///
/// ```compile_fail,E0308
/// use elbowroom::answers::{Explain, answer};
/// use elbowroom::checks::{evaluate_mutated, outlet_fill::OutletFill};
/// use elbowroom::i18n::Catalogue;
/// use elbowroom::rulebook::{Edition, Rulebook};
/// let request = elbowroom::json::read(b"{}").unwrap();
/// let evaluation = evaluate_mutated::<OutletFill>(&Rulebook::of(Edition::ALL[0]).mutated(|_| {}), &request);
/// answer::<OutletFill>(&request, &evaluation, Explain::None, Catalogue::english());
/// ```
#[derive(Clone, Debug)]
pub struct Counterfactual<O>(Evaluation<O>);

/// Evaluates a request under mutated rules, by the same check as under the rules themselves.
pub fn evaluate_mutated<C: Check>(
    rulebook: &MutatedRulebook,
    request: &C::Request,
) -> Counterfactual<C::Outcome> {
    Counterfactual(follow::<C>(rulebook.rulebook(), request))
}

impl<O> Counterfactual<O> {
    /// The verdict that would be given; `None` when only a size was asked for.
    pub const fn verdict(&self) -> Option<Verdict> {
        self.0.verdict
    }

    /// The figures that would be answered.
    pub const fn outcome(&self) -> &O {
        &self.0.outcome
    }

    /// Computes its proof again: the rules are mutated, the sums are not.
    ///
    /// # Errors
    ///
    /// The first step that does not come to what it says.
    pub fn replay(&self) -> Result<(), ReplayFault> {
        self.0.proof.replay()
    }
}
