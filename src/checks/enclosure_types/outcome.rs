//! What is answered about enclosure types.

use crate::checks::inspection::Requirement;
use crate::derivation::{Pointer, StepId};
use crate::tables::enclosure_types::{EnclosureCondition, EnclosureType, EnclosureWord};
use serde::Serialize;
use utoipa::ToSchema;

/// Which types serve, and why the others do not. All lists are empty for a hazardous (classified) location.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, ToSchema)]
pub struct EnclosureTypesOutcome {
    /// The types that serve, in the order of the table.
    pub serves: Vec<EnclosureType>,
    /// What an enclosure must stand there.
    pub conditions: Vec<AskedCondition>,
    /// Every type that the table has for the location.
    pub types: Vec<TypeAnswer>,
    /// The types that the table does not have for the location: it says nothing about them.
    pub not_rated: Vec<EnclosureType>,
    /// What is asked of the type that was given, condition by condition.
    pub requirements: Vec<Requirement>,
}

/// One condition, and where it comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct AskedCondition {
    /// The condition.
    pub condition: EnclosureCondition,
    /// Its row in the table `enclosure-types`.
    #[schema(value_type = String, example = "outdoor_windblown_dust")]
    pub row: &'static str,
    /// The input that brings it in.
    pub at: Pointer,
}

/// One type: whether it serves, and what rules it out.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct TypeAnswer {
    /// The type.
    #[serde(rename = "type")]
    pub enclosure_type: EnclosureType,
    /// Whether it is rated for every condition.
    pub serves: bool,
    /// The conditions that it is not rated for.
    pub ruled_out_by: Vec<RuledOut>,
    /// The words that go with it, in the table `enclosure-words`.
    pub words: Vec<EnclosureWord>,
    /// Words of which it was not read whether they go with it in this edition: compare with print.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub unread_words: Vec<EnclosureWord>,
    /// The step of the proof that says whether it serves.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub step: Option<StepId>,
}

/// A condition that rules a type out.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct RuledOut {
    /// The condition.
    pub condition: EnclosureCondition,
    /// The step of the proof that reads the table.
    pub step: StepId,
}
