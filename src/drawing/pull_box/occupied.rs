//! What is occupied on paper, so that no text runs over another.

use crate::drawing::sheet::{Anchor, Point};

/// A rectangle by its sides.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Area {
    pub left: f64,
    pub top: f64,
    pub right: f64,
    pub bottom: f64,
}

impl Area {
    /// About where a text stands.
    pub fn of_text(point: Point, anchor: Anchor, width: f64) -> Self {
        let left = match anchor {
            Anchor::Start => point.x,
            Anchor::Middle => point.x - width / 2.0,
            Anchor::End => point.x - width,
        };
        Self { left: left - 1.5, top: point.y - 10.0, right: left + width + 1.5, bottom: point.y + 3.0 }
    }

    /// A circle, or a point of a line with some room around it.
    pub fn around(centre: Point, radius: f64) -> Self {
        let Point { x, y } = centre;
        Self { left: x - radius, top: y - radius, right: x + radius, bottom: y + radius }
    }

    /// Whether two run over one another.
    pub const fn meets(&self, other: &Self) -> bool {
        self.left < other.right
            && other.left < self.right
            && self.top < other.bottom
            && other.top < self.bottom
    }
}

/// Everything that is occupied: what no text may cover, and lines that one may break where there is no other room.
#[derive(Default)]
pub(super) struct Occupied {
    firm: Vec<Area>,
    lines: Vec<(usize, Area)>,
}

impl Occupied {
    pub fn take(&mut self, area: Area) {
        self.firm.push(area);
    }

    /// Takes a line of its own number, by points along it.
    pub fn take_line(&mut self, number: usize, points: impl IntoIterator<Item = Point>) {
        self.lines.extend(points.into_iter().map(|point| (number, Area::around(point, 2.0))));
    }

    /// Takes the four edges of a rectangle, by its upper left corner.
    pub fn take_border(&mut self, corner: Point, width: f64, height: f64) {
        let (right, bottom) = (corner.x + width, corner.y + height);
        for (left, top, right, bottom) in [
            (corner.x, corner.y, right, corner.y),
            (corner.x, bottom, right, bottom),
            (corner.x, corner.y, corner.x, bottom),
            (right, corner.y, right, bottom),
        ] {
            self.take(Area { left: left - 1.5, top: top - 1.5, right: right + 1.5, bottom: bottom + 1.5 });
        }
    }

    /// The first of some candidates whose area is free; or else the first that covers nothing but lines.
    pub fn first_free<T>(
        &self,
        candidates: impl Iterator<Item = T> + Clone,
        area: impl Fn(&T) -> Area,
    ) -> Option<T> {
        let free = candidates.clone().find(|candidate| self.is_free(&area(candidate), None));
        free.or_else(|| candidates.clone().find(|candidate| self.is_free_of_shapes(&area(candidate))))
    }

    /// Whether nothing is there but the line of some number.
    pub fn is_free(&self, area: &Area, but: Option<usize>) -> bool {
        self.is_free_of_shapes(area)
            && !self.lines.iter().any(|(number, line)| Some(*number) != but && line.meets(area))
    }

    /// Whether nothing is there but lines.
    fn is_free_of_shapes(&self, area: &Area) -> bool {
        !self.firm.iter().any(|occupied| occupied.meets(area))
    }
}
