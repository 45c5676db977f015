//! What is answered about free conductors.

use crate::checks::inspection::Requirement;
use crate::derivation::{Figure, Pointer};
use serde::Serialize;
use utoipa::ToSchema;

/// The free length that is required, and what each conductor has.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct FreeConductorsOutcome {
    /// Whether the opening is small, so that conductors must also reach outside it. Absent where that is not determined.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub small_opening: Option<bool>,
    /// The free length that a conductor needs which emerges at the depth of the box. Absent where it is not determined.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub required: Option<Figure>,
    /// How far each conductor must reach outside the opening. Absent where the opening is not small or not known.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub required_outside: Option<Figure>,
    /// Each conductor that the rule covers.
    pub conductors: Vec<ConductorLength>,
    /// What each rule asks.
    pub requirements: Vec<Requirement>,
}

/// What one conductor has and needs.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct ConductorLength {
    /// The caller's name for it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub id: Option<String>,
    /// The conductor.
    pub at: Pointer,
    /// The free length that it needs, from where it emerges. Absent where it is not determined, and where what the other system of
    /// units asks is met: the findings have its figures.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub required: Option<Figure>,
    /// The length that counts: up to the damage if there is any, and in one piece where only that counts.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub counted: Option<Figure>,
    /// How much is missing. Absent where nothing is, or where it is not determined.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub short_by: Option<Figure>,
    /// What a splice inside the box may do about it. Absent where no splice is made or needed.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub splice: Option<SpliceAnswer>,
}

/// Whether a splice inside the box may make up the length, and what it must reach.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct SpliceAnswer {
    /// Whether a spliced length counts, under the edition and the reading that was followed.
    pub counts: bool,
    /// Whether the edition says so itself; otherwise it is silent, and this is a reading of it.
    pub stated_by_edition: bool,
    /// The free length that the conductor must have in all, from where it emerges, with what is spliced on. Absent where
    /// it is not determined.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub must_reach: Option<Figure>,
}
