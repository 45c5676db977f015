//! What is answered about a pull box.

use super::request::Wall;
use crate::checks::Verdict;
use crate::derivation::{Figure, Pointer};
use crate::rulebook::Rule;
use serde::{Serialize, Serializer};
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

/// What is asked along one direction of the box.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, ToSchema)]
pub struct AxisSize {
    /// The least that the rules ask; absent where none of them asks anything of this direction. Whether entries then
    /// have a place is another question: see `distances` and `layout`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub minimum: Option<Figure>,
    /// What each rule asks.
    pub requirements: Vec<LengthRequirement>,
    /// The inside dimension of the given box.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub given: Option<Figure>,
    /// What the given box has over the least: negative when it falls short.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub margin: Option<Figure>,
}

fn write_id<S: Serializer>(rule: &&'static Rule, serializer: S) -> Result<S::Ok, S::Error> {
    serializer.serialize_str(rule.id)
}

/// What one rule asks of one direction.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct LengthRequirement {
    /// The rule.
    #[serde(serialize_with = "write_id")]
    #[schema(value_type = String, example = "pull.angle")]
    pub rule: &'static Rule,
    /// The wall whose entries ask it; absent for a straight pull, which two walls ask together.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub wall: Option<Wall>,
    /// The row of that wall; absent where all of the wall, or no declared row, is meant.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub row: Option<u32>,
    /// The length.
    pub length: Figure,
    /// Whether it is the largest of this direction.
    pub governs: bool,
    /// The entries that are counted.
    pub entries: Vec<String>,
}

/// What a pull is between two of its entries.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum PullKind {
    /// Between opposite walls.
    Straight,
    /// Between walls that meet.
    Angle,
    /// Back to the same wall.
    U,
}

/// A pull between two of its entries.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct PullKindOf {
    /// The pull.
    pub at: Pointer,
    /// The two entries.
    pub entries: [String; 2],
    /// What it is, by the walls of the two.
    pub kind: PullKind,
    /// Whether it is sized by length: it holds conductors of 4 AWG or larger that are required to be insulated, or a
    /// cable with conductors of that size, or the system is over 1000 V.
    pub sized_by_length: bool,
}

/// How far two entries must stand apart, and how far they do.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct EntryDistanceOf {
    /// The two entries.
    pub entries: [String; 2],
    /// The rule.
    #[schema(value_type = String, example = "pull.entry-distance")]
    pub rule: &'static str,
    /// The least distance.
    pub required: Figure,
    /// The distance in the given box, where both positions are given.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub measured: Option<Figure>,
}
