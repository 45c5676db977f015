//! What is answered about a pull box.

use crate::checks::Verdict;
use crate::checks::pulls::{Axis, AxisSize, EntryDistanceOf, PullKindOf, Wall};
use crate::derivation::Figure;
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
    pub layout: Option<PullBoxLayout>,
}

/// The smallest box in which every entry has a place, and those places.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct PullBoxLayout {
    /// From the left wall to the right wall.
    pub width: Figure,
    /// From the bottom wall to the top wall.
    pub height: Figure,
    /// From the back to the cover.
    pub depth: Figure,
    /// Whether every smaller box, on the same grid, was shown to have no places.
    pub proven_smallest: bool,
    /// The centre of each entry.
    pub places: Vec<EntryPlace>,
    /// How far apart entries with the same conductors then are.
    pub distances: Vec<PlacedDistance>,
}

/// The centre of an entry: two measures, those that lie in its wall.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct EntryPlace {
    /// The entry.
    pub entry: String,
    /// Its wall.
    pub wall: Wall,
    /// From the left wall.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub from_left: Option<Figure>,
    /// From the bottom wall.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub from_bottom: Option<Figure>,
    /// From the back.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub from_back: Option<Figure>,
}

/// How far apart two entries are in a layout.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct PlacedDistance {
    /// The two entries.
    pub entries: [String; 2],
    /// The distance that is asked.
    pub required: Figure,
    /// The distance that they have; on walls that meet and not level with one another, what it is at the least.
    pub measured: Figure,
}

impl SectionSize {
    /// What is required, and given, along a direction.
    pub(crate) const fn side(&self, axis: Axis) -> &AxisSize {
        match axis {
            Axis::Width => &self.width,
            Axis::Height => &self.height,
            Axis::Depth => &self.depth,
        }
    }

    pub(super) const fn side_mut(&mut self, axis: Axis) -> &mut AxisSize {
        match axis {
            Axis::Width => &mut self.width,
            Axis::Height => &mut self.height,
            Axis::Depth => &mut self.depth,
        }
    }
}

impl PullBoxLayout {
    /// The dimension along a direction.
    pub(crate) const fn side(&self, axis: Axis) -> Figure {
        match axis {
            Axis::Width => self.width,
            Axis::Height => self.height,
            Axis::Depth => self.depth,
        }
    }
}

impl EntryPlace {
    /// The measure along a direction; `None` across its wall.
    pub(crate) const fn along(&self, axis: Axis) -> Option<Figure> {
        match axis {
            Axis::Width => self.from_left,
            Axis::Height => self.from_bottom,
            Axis::Depth => self.from_back,
        }
    }
}
