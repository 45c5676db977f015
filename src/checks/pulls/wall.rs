//! The walls of a box and its directions, looking at the open cover.

use crate::derivation::Pattern;
use crate::quantity::{Length, converts};
use serde::{Deserialize, Serialize};
use std::ops::{Index, IndexMut};
use utoipa::ToSchema;

/// A wall of the box, looking at the open cover.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Wall {
    /// The left wall.
    Left,
    /// The right wall.
    Right,
    /// The top wall.
    Top,
    /// The bottom wall.
    Bottom,
    /// The back, opposite the cover.
    Back,
}

/// The cover of the box.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Cover {
    /// A cover that comes off.
    Removable,
    /// A hinged door or cover. Whether it is a removable one is disputed.
    Hinged,
    /// A side that cannot be removed.
    Fixed,
}

/// The centre of an entry: the two of the three measures that lie in its wall.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct EntryPosition {
    /// From the left wall, for an entry in the top, the bottom or the back.
    pub from_left: Option<Length>,
    /// From the bottom wall, for an entry in the left, the right or the back.
    pub from_bottom: Option<Length>,
    /// From the back, for an entry in a side wall.
    pub from_back: Option<Length>,
}

impl EntryPosition {
    /// The measure along a direction, and the member that holds it.
    pub(crate) fn along(&self, axis: Axis) -> (Option<Length>, Pattern) {
        match axis {
            Axis::Width => (self.from_left, &"/position/from_left"),
            Axis::Height => (self.from_bottom, &"/position/from_bottom"),
            Axis::Depth => (self.from_back, &"/position/from_back"),
        }
    }
}

/// A direction of the box.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Axis {
    /// From the left wall to the right wall.
    Width,
    /// From the bottom wall to the top wall.
    Height,
    /// From the back to the cover.
    Depth,
}

impl Axis {
    pub const ALL: [Self; 3] = [Self::Width, Self::Height, Self::Depth];

    /// The name of the side that lies along it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Width => "width",
            Self::Height => "height",
            Self::Depth => "depth",
        }
    }

    /// The member of the inside dimensions.
    pub const fn member(self) -> Pattern {
        match self {
            Self::Width => &"/width",
            Self::Height => &"/height",
            Self::Depth => &"/depth",
        }
    }
}

/// One value for each direction.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PerAxis<T> {
    /// For the width.
    pub width: T,
    /// For the height.
    pub height: T,
    /// For the depth.
    pub depth: T,
}

impl<T> PerAxis<T> {
    /// Makes the three, in that order.
    pub fn new(mut of: impl FnMut(Axis) -> T) -> Self {
        Self { width: of(Axis::Width), height: of(Axis::Height), depth: of(Axis::Depth) }
    }
}

impl<T> Index<Axis> for PerAxis<T> {
    type Output = T;

    fn index(&self, axis: Axis) -> &T {
        match axis {
            Axis::Width => &self.width,
            Axis::Height => &self.height,
            Axis::Depth => &self.depth,
        }
    }
}

impl<T> IndexMut<Axis> for PerAxis<T> {
    fn index_mut(&mut self, axis: Axis) -> &mut T {
        match axis {
            Axis::Width => &mut self.width,
            Axis::Height => &mut self.height,
            Axis::Depth => &mut self.depth,
        }
    }
}

impl Wall {
    pub(crate) const ALL: [Self; 5] = [Self::Left, Self::Right, Self::Top, Self::Bottom, Self::Back];

    /// The wall across the box; the cover, opposite the back, takes no entries.
    pub(crate) const fn opposite(self) -> Option<Self> {
        match self {
            Self::Left => Some(Self::Right),
            Self::Right => Some(Self::Left),
            Self::Top => Some(Self::Bottom),
            Self::Bottom => Some(Self::Top),
            Self::Back => None,
        }
    }

    /// The direction from this wall to the one across.
    pub(crate) const fn across(self) -> Axis {
        match self {
            Self::Left | Self::Right => Axis::Width,
            Self::Top | Self::Bottom => Axis::Height,
            Self::Back => Axis::Depth,
        }
    }

    /// The two directions that lie in this wall: along it, then the other.
    pub(crate) const fn plane(self) -> [Axis; 2] {
        match self {
            Self::Left | Self::Right => [Axis::Height, Axis::Depth],
            Self::Top | Self::Bottom => [Axis::Width, Axis::Depth],
            Self::Back => [Axis::Width, Axis::Height],
        }
    }

    /// Whether positions are measured from this wall, and not from the one across.
    pub(crate) const fn is_origin(self) -> bool {
        matches!(self, Self::Left | Self::Bottom | Self::Back)
    }

    /// The name that a sentence chooses its words by.
    pub(crate) const fn name(self) -> &'static str {
        match self {
            Self::Left => "left",
            Self::Right => "right",
            Self::Top => "top",
            Self::Bottom => "bottom",
            Self::Back => "back",
        }
    }
}

converts! {
    EntryPosition { from_left, from_bottom, from_back }
}
