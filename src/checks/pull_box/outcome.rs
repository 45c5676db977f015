//! What is answered about a pull box.

use crate::checks::Verdict;
use crate::checks::pulls::{AxisSize, EntryDistanceOf, PullKindOf};
use serde::Serialize;
use utoipa::ToSchema;

/// The lengths of a pull or junction box, section by section.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct PullBoxOutcome {
    /// Each section of the box: one without barriers.
    pub sections: Vec<SectionSize>,
}

/// One box, or one section of a divided one.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct SectionSize {
    /// The caller's name for the section; absent for a box without barriers.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub id: Option<String>,
    /// Whether this section complies; null when no dimensions were given.
    #[schema(required = true)]
    pub verdict: Option<Verdict>,
    /// From the left wall to the right wall.
    pub width: AxisSize,
    /// From the bottom wall to the top wall.
    pub height: AxisSize,
    /// From the back to the cover.
    pub depth: AxisSize,
    /// What each pull is, entry by entry that it joins.
    pub pulls: Vec<PullKindOf>,
    /// How far entries with the same conductors must stand apart.
    pub distances: Vec<EntryDistanceOf>,
    /// The smallest box in which every entry has a place; only where it was asked for.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub layout: Option<super::layout::PullBoxLayout>,
}
