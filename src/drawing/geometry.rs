//! Points of the paper, and the curves by which conductors are drawn.

/// A point of the paper, in pixels from the left and from the top.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Point {
    pub x: f64,
    pub y: f64,
}

/// A point.
pub(super) const fn at(x: f64, y: f64) -> Point {
    Point { x, y }
}

/// The point halfway between two others.
pub(super) const fn middle(one: Point, other: Point) -> Point {
    at((one.x + other.x) / 2.0, (one.y + other.y) / 2.0)
}

/// The point at some distance from a centre, in the direction of another point.
pub(super) fn toward(centre: Point, to: Point, distance: f64) -> Point {
    let (dx, dy) = (to.x - centre.x, to.y - centre.y);
    let length = dx.hypot(dy).max(0.01);
    at(centre.x + dx / length * distance, centre.y + dy / length * distance)
}

/// A quadratic Bézier curve: between two points, bent towards a third.
#[derive(Clone, Copy, Debug)]
pub(super) struct Curve {
    pub from: Point,
    pub bend: Point,
    pub to: Point,
}

impl Curve {
    /// The point at some part of it, from 0 to 1.
    pub fn point(&self, part: f64) -> Point {
        let Self { from, bend, to } = *self;
        let rest = 1.0 - part;
        let of =
            |from: f64, bend: f64, to: f64| rest * rest * from + 2.0 * rest * part * bend + part * part * to;
        at(of(from.x, bend.x, to.x), of(from.y, bend.y, to.y))
    }

    /// Points along it, close enough together to find what it runs over.
    pub fn points(&self) -> impl Iterator<Item = Point> {
        const POINTS: u32 = 24;
        (0..=POINTS).map(|step| self.point(f64::from(step) / f64::from(POINTS)))
    }
}
