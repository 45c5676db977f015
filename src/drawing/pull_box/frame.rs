//! The frame of a box on paper: one scale for all directions, the back in the middle, the walls folded out around it.

use super::facts::Amount;
use super::placement::PlacedEntry;
use super::view::BoxView;
use crate::checks::pull_box::{Axis, Wall};
use crate::drawing::sheet::{Point, at};
use std::ops::Add;

/// The highest that a box with its walls is drawn, as a part of the width of the paper.
const HIGHEST: f64 = 0.65;

/// What is kept free on each side of the box, for ids and dimensions.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Room {
    pub left: f64,
    pub right: f64,
    pub top: f64,
    pub bottom: f64,
}

impl Add for Room {
    type Output = Self;

    fn add(self, other: Self) -> Self {
        Self {
            left: self.left + other.left,
            right: self.right + other.right,
            top: self.top + other.top,
            bottom: self.bottom + other.bottom,
        }
    }
}

/// A rectangle on paper, by its upper left corner.
#[derive(Clone, Copy, Debug)]
pub(super) struct Rectangle {
    pub corner: Point,
    pub width: f64,
    pub height: f64,
}

/// The box on paper, in pixels.
#[derive(Clone, Copy, Debug)]
pub(super) struct Frame {
    /// From where to where the paper is written on.
    pub paper: [f64; 2],
    /// Pixels for each unit of length.
    pub scale: f64,
    /// Where the left wall and the bottom wall meet.
    pub origin: Point,
    pub width: f64,
    pub height: f64,
    /// How far the walls are folded out; nothing where they are not shown.
    pub depth: f64,
    /// What the given box lacks of each.
    pub missing: [f64; 3],
}

impl Frame {
    /// The box in the middle of some width of paper, below some height, with room around it.
    pub fn new(view: &BoxView<'_>, top: f64, paper: [f64; 2], room: Room) -> Self {
        let of_walls = |length| if view.shows_walls() { length } else { 0.0 };
        let missing = Axis::ALL.map(|axis| view.sides[axis].missing.map_or(0.0, Amount::approximate));
        let [over_width, over_height, over_depth] = missing;
        let (over_depth, folded) = (of_walls(over_depth), of_walls(view.sides.depth.drawn));
        let depth = folded + over_depth;
        let across = view.sides.width.drawn + over_width + 2.0 * depth;
        let upward = view.sides.height.drawn + over_height + 2.0 * depth;
        let [from, to] = paper;
        let wide = (to - from - room.left - room.right).max(60.0);
        let scale = (wide / across).min(HIGHEST * (to - from) / upward);
        let spare = (to - from - room.left - room.right - across * scale).max(0.0);
        let left = from + room.left + spare / 2.0 + depth * scale;
        let bottom = top + room.top + (upward - depth) * scale;
        Self {
            paper,
            scale,
            origin: at(left, bottom),
            width: view.sides.width.drawn * scale,
            height: view.sides.height.drawn * scale,
            depth: folded * scale,
            missing: [over_width, over_height, over_depth].map(|missing| missing * scale),
        }
    }

    /// Where the right wall is folded out: beyond what the box lacks of its width.
    pub const fn right_fold(&self) -> f64 {
        self.origin.x + self.width + self.missing[0]
    }

    /// Where the top wall is folded out.
    pub const fn top_fold(&self) -> f64 {
        self.origin.y - self.height - self.missing[1]
    }

    /// The outermost lines: left, right, top, bottom, with what the walls lack of the depth.
    pub const fn outer(&self, wall: Wall) -> f64 {
        let out = self.depth + self.missing[2];
        match wall {
            Wall::Left => self.origin.x - out,
            Wall::Right => self.right_fold() + out,
            Wall::Top => self.top_fold() - out,
            Wall::Bottom | Wall::Back => self.origin.y + out,
        }
    }

    /// A wall as it is folded out; the back as it lies.
    pub const fn wall(&self, wall: Wall) -> Rectangle {
        let Self { origin, width, height, depth, .. } = *self;
        let upper = origin.y - height;
        match wall {
            Wall::Back => Rectangle { corner: at(origin.x, upper), width, height },
            Wall::Left => Rectangle { corner: at(origin.x - depth, upper), width: depth, height },
            Wall::Right => Rectangle { corner: at(self.right_fold(), upper), width: depth, height },
            Wall::Top => Rectangle { corner: at(origin.x, self.top_fold() - depth), width, height: depth },
            Wall::Bottom => Rectangle { corner: origin, width, height: depth },
        }
    }

    /// The centre of an entry.
    pub fn centre(&self, placed: &PlacedEntry<'_>) -> Point {
        let [along, across] = placed.centre.map(|length| length * self.scale);
        let Point { x, y } = self.origin;
        match placed.entry.wall {
            Wall::Left => at(x - across, y - along),
            Wall::Right => at(self.right_fold() + across, y - along),
            Wall::Top => at(x + along, self.top_fold() - across),
            Wall::Bottom => at(x + along, y + across),
            Wall::Back => at(x + along, y - across),
        }
    }

    /// The rim of an entry.
    pub fn radius(&self, placed: &PlacedEntry<'_>) -> f64 {
        placed.radius * self.scale
    }
}
