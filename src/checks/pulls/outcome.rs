//! What is answered about pulls: the lengths that they require, and how far apart their entries must be.

use super::pull::PullKind;
use super::wall::Wall;
use crate::derivation::{Figure, Pointer};
use crate::rulebook::Rule;
use serde::{Serialize, Serializer};
use utoipa::ToSchema;

/// What is asked along one direction of the box.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, ToSchema)]
pub struct AxisSize {
    /// The least that the rules ask; absent where none of them asks anything of this direction. Whether entries then
    /// have a place is another question: see `distances` and `layout`.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub minimum: Option<Figure>,
    /// What each rule asks.
    pub requirements: Vec<LengthRequirement>,
    /// The inside dimension of the given box.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub given: Option<Figure>,
    /// What the given box has over the least: negative when it falls short.
    #[serde(skip_serializing_if = "Option::is_none")]
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
    pub wall: Option<Wall>,
    /// The row of that wall; absent where all of the wall, or no declared row, is meant.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub row: Option<u32>,
    /// The length.
    pub length: Figure,
    /// Whether it is the largest of this direction.
    pub governs: bool,
    /// The entries that are counted.
    pub entries: Vec<String>,
    /// The least length that it could come to, and what the request leaves unclear that could make it so little.
    #[serde(skip)]
    pub at_least: Option<(Figure, Vec<Pointer>)>,
    /// The greatest length that it could come to, and what the request does not say that could make it so much.
    #[serde(skip)]
    pub at_most: Option<(Figure, Vec<Pointer>)>,
    /// What the request does not say and that turns on whether anything is required.
    #[serde(skip)]
    pub unsaid: Vec<Pointer>,
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
    /// The distance in the given box, where both positions are given; of entries on walls that meet and not level with one
    /// another, what it is at the least.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub measured: Option<Figure>,
}
