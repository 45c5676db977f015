//! What is answered about the depth of a box.

use crate::checks::inspection::Requirement;
use crate::derivation::{Figure, Pointer};
use serde::Serialize;
use utoipa::ToSchema;

/// The least depth, and what each piece of equipment asks.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct BoxDepthsOutcome {
    /// The least depth inside that all of it asks for. Absent where it is not determined, and where no depth is asked.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub required: Option<Figure>,
    /// Each piece of equipment.
    pub equipment: Vec<EquipmentDepth>,
    /// What each rule asks of the box.
    pub requirements: Vec<Requirement>,
}

/// What one piece of equipment asks.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct EquipmentDepth {
    /// The caller's name for it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub id: Option<String>,
    /// The equipment.
    pub at: Pointer,
    /// The least depth that it asks for. Absent where it is not determined, and where no depth is asked.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub required: Option<Figure>,
    /// The rule that asks for it.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<String>, example = "box-depth.12-or-10-awg")]
    pub governed_by: Option<&'static str>,
}
