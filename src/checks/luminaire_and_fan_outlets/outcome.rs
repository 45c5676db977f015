//! What is answered about a box and its load.

use crate::checks::Status;
use crate::checks::inspection::Requirement;
use crate::derivation::{Figure, StepId};
use serde::Serialize;
use utoipa::ToSchema;

/// What a box carries and may carry, and what else is asked of it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct LuminaireAndFanOutletsOutcome {
    /// The most weight that the box may carry by its mark; where none is named, what a box without one carries. Absent where nothing
    /// hangs from it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub box_carries: Option<Figure>,
    /// The ways in which the load may be carried. One that is complete is enough.
    pub carried: Vec<WayOfCarrying>,
    /// What else is asked: a supporting receptacle within its listing, a box that is ready for a fan.
    pub requirements: Vec<Requirement>,
}

/// One way to carry a load.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct WayOfCarrying {
    /// The rule that allows it.
    #[schema(value_type = String, example = "luminaire-outlet.ceiling")]
    pub rule: &'static str,
    /// Whether it is complete, cannot carry the load, or is not known well enough; `advisory` where it is not complete and another
    /// way is.
    pub status: Status,
    /// What it asks.
    pub requirements: Vec<Requirement>,
    /// The step of the proof that combines what it asks; absent when nothing could be decided.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub step: Option<StepId>,
}
