//! What is answered about the support of an enclosure.

use crate::checks::Status;
use crate::checks::inspection::Requirement;
use crate::derivation::{Pointer, StepId};
use serde::Serialize;
use utoipa::ToSchema;

/// Each means that was named, and what it asks. The enclosure is supported when one is complete.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct BoxSupportsOutcome {
    /// The means, in the order of the request. Raceways that hold a conduit body are looked at in two ways: by the
    /// exception for conduit bodies, and as for a box.
    pub means: Vec<MeansOfSupport>,
}

/// One means of support.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct MeansOfSupport {
    /// The means in the request.
    pub at: Pointer,
    /// The rule that allows it.
    #[schema(value_type = String, example = "box-support.raceways")]
    pub rule: &'static str,
    /// Whether it is complete, cannot hold the enclosure as it is, or is not known well enough.
    pub status: Status,
    /// What it asks.
    pub requirements: Vec<Requirement>,
    /// The step of the proof that combines what it asks; absent when nothing could be decided.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub step: Option<StepId>,
}
