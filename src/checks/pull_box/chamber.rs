//! A box without barriers, or one section of a divided box: what is evaluated by itself.

use super::request::{InsideBox, PullBoxRequest, Wall};
use crate::derivation::{Pattern, Pointer};
use std::collections::HashMap;

/// One box or section, with its entries and pulls by their places in the request.
pub(super) struct Chamber<'a> {
    pub id: Option<&'a str>,
    pub inside: Option<InsideBox>,
    pub inside_at: Pointer,
    /// The places of its entries in the request.
    pub entries: Vec<usize>,
    pub pulls: Vec<Joining>,
}

/// A pull, with the places of its entries among those of the chamber; the first holds all its conductors.
pub(super) struct Joining {
    /// The place of the pull in the request.
    pub pull: usize,
    pub first: usize,
    pub others: Vec<usize>,
}

/// The boxes or sections of a request that has no faults.
pub(super) fn all(request: &PullBoxRequest) -> Vec<Chamber<'_>> {
    let empty = |id, inside, inside_at| Chamber {
        id,
        inside,
        inside_at,
        entries: Vec::with_capacity(request.entries.len()),
        pulls: Vec::with_capacity(request.pulls.len()),
    };
    let mut chambers = Vec::with_capacity(request.sections.len().max(1));
    if request.sections.is_empty() {
        chambers.push(empty(None, request.inside, Pointer::to(&"/box")));
    }
    for (index, section) in request.sections.iter().enumerate() {
        chambers.push(empty(
            Some(section.id.as_str()),
            section.inside,
            Pointer::of(&"/sections/#/box", index),
        ));
    }
    let mut places: HashMap<&str, (usize, usize)> = HashMap::with_capacity(request.entries.len());
    for (index, entry) in request.entries.iter().enumerate() {
        let section = entry.section.as_ref().map(|name| name.as_str());
        let Some(number) = chambers.iter().position(|chamber| chamber.id == section) else { continue };
        let Some(chamber) = chambers.get_mut(number) else { continue };
        places.insert(entry.id.as_str(), (number, chamber.entries.len()));
        chamber.entries.push(index);
    }
    for (pull, asked) in request.pulls.iter().enumerate() {
        let joined: Vec<(usize, usize)> =
            asked.entries.iter().filter_map(|id| places.get(id.as_str()).copied()).collect();
        if let Some(((number, first), others)) = joined.split_first()
            && let Some(chamber) = chambers.get_mut(*number)
        {
            let others = others.iter().map(|(_, place)| *place).collect();
            chamber.pulls.push(Joining { pull, first: *first, others });
        }
    }
    chambers
}

/// A direction of the box.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Axis {
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

impl Wall {
    pub(crate) const ALL: [Self; 5] = [Self::Left, Self::Right, Self::Top, Self::Bottom, Self::Back];

    /// The wall across the box; the cover, opposite the back, takes no entries.
    pub(super) const fn opposite(self) -> Option<Self> {
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

    /// Whether places are measured from this wall, and not from the one across.
    pub(super) const fn is_origin(self) -> bool {
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
