//! One box in plan, its walls folded out around its back, with its entries and the pulls between them.

use super::canvas::Canvas;
use super::dimensions::{self, beside, most_beside};
use super::facts::Facts;
use super::frame::{Frame, Rectangle};
use super::ids::Ids;
use super::occupied::{Area, Occupied};
use super::placement::{PlacedEntry, PullView};
use super::texts::{entry_text, pull_text};
use super::view::BoxView;
use crate::checks::pull_box::{PullKind, Wall};
use crate::drawing::geometry::{Curve, middle, toward};
use crate::drawing::sheet::{Anchor, Letters, Look, Point, Sheet, at};

/// The radius of the mark of a splice.
const SPLICE: f64 = 4.5;
/// Up to this number of pulls, each is marked with its largest conductor.
const MOST_MARKED: usize = 24;

/// Draws a box from some height on. Returns where the next thing begins, and whether every entry has its id there.
pub(super) fn draw(
    sheet: &mut Sheet<'_>,
    facts: &Facts<'_>,
    view: &BoxView<'_>,
    ids: &Ids,
    top: f64,
) -> (f64, bool) {
    let paper = [super::MARGIN, sheet.width() - super::MARGIN];
    let dimensions = dimensions::room(facts, view, sheet.messages());
    let first = Frame::new(view, top, paper, dimensions + most_beside(view, ids));
    // ids that fit within their rims leave room that the box can take
    let beside = beside(view, &first, ids);
    let frame = Frame::new(view, top, paper, dimensions + beside);
    let on_paper = |pull| curve(view, &frame, pull).map(|curve| (pull, curve));
    let curves: Vec<(&PullView, Curve)> = view.pulls.iter().filter_map(on_paper).collect();
    let mut canvas = Canvas { sheet, facts, view, frame, occupied: Occupied::default() };
    canvas.clearances();
    canvas.walls();
    canvas.pulls(&curves);
    canvas.rims(&curves);
    let (lowest, all_marked) = canvas.ids(ids);
    let end = canvas.sides(lowest, beside);
    canvas.distances();
    canvas.conductors(&curves);
    (end, all_marked)
}

impl Canvas<'_, '_> {
    /// The clearances around entries and along walls that a layout was asked to keep.
    fn clearances(&mut self) {
        let (between, to_wall) = super::clearances(self.facts, self.view);
        if let Some(to_wall) = to_wall {
            let inset = to_wall.approximate() * self.frame.scale;
            for wall in Wall::ALL.into_iter().filter(|wall| self.view.on(*wall).next().is_some()) {
                let Rectangle { corner, width, height } = self.frame.wall(wall);
                let corner = at(corner.x + inset, corner.y + inset);
                self.sheet.rectangle(corner, width - 2.0 * inset, height - 2.0 * inset, Look::Free);
            }
        }
        if let Some(between) = between {
            for placed in &self.view.entries {
                let ring = self.frame.radius(placed) + between.approximate() * self.frame.scale / 2.0;
                self.sheet.circle(self.frame.centre(placed), ring, Look::Free);
            }
        }
    }

    /// The walls, and what the given box lacks of each direction.
    fn walls(&mut self) {
        let lacking = if self.facts.is_covered_by_mark() { Look::Free } else { Look::Short };
        let frame = self.frame;
        let [over_width, over_height, over_depth] = frame.missing;
        let back = frame.wall(Wall::Back);
        let mut fill = |corner: Point, width: f64, height: f64| {
            if width > 0.0 && height > 0.0 {
                self.sheet.rectangle(corner, width, height, lacking);
            }
        };
        fill(at(back.corner.x + back.width, back.corner.y), over_width, back.height);
        fill(at(back.corner.x, frame.top_fold()), back.width, over_height);
        if over_depth > 0.0 {
            let [left, right] = [frame.outer(Wall::Left), frame.outer(Wall::Right) - over_depth];
            fill(at(left, back.corner.y), over_depth, back.height);
            fill(at(right, back.corner.y), over_depth, back.height);
            let [top, bottom] = [frame.outer(Wall::Top), frame.outer(Wall::Bottom) - over_depth];
            fill(at(back.corner.x, top), back.width, over_depth);
            fill(at(back.corner.x, bottom), back.width, over_depth);
        }
        let sides = &self.view.sides;
        if self.view.shows_walls() {
            for wall in [Wall::Left, Wall::Right, Wall::Top, Wall::Bottom] {
                let Rectangle { corner, width, height } = frame.wall(wall);
                let [along, _] = wall.plane();
                let assumed = sides[along].assumed || sides.depth.assumed;
                self.sheet.rectangle(corner, width, height, if assumed { Look::Assumed } else { Look::Thin });
                self.occupied.take_border(corner, width, height);
            }
        }
        self.edges(back);
    }

    /// The four edges of the back: dashed along a direction whose length is assumed.
    fn edges(&mut self, back: Rectangle) {
        let Rectangle { corner, width, height } = back;
        let (right, bottom) = (corner.x + width, corner.y + height);
        let sides = &self.view.sides;
        for (from, to, side) in [
            (corner, at(right, corner.y), &sides.width),
            (at(corner.x, bottom), at(right, bottom), &sides.width),
            (corner, at(corner.x, bottom), &sides.height),
            (at(right, corner.y), at(right, bottom), &sides.height),
        ] {
            self.sheet.line(from, to, if side.assumed { Look::Assumed } else { Look::Firm });
        }
        self.occupied.take_border(corner, width, height);
    }

    fn pulls(&mut self, curves: &[(&PullView, Curve)]) {
        for (pull, curve) in curves {
            let look = if pull.sized_by_length { Look::Pull } else { Look::Thin };
            let title = pull_text(self.view, pull, self.sheet.messages());
            self.sheet.group(&title, |sheet| {
                if pull.kind == PullKind::Straight {
                    sheet.line(curve.from, curve.to, look);
                } else {
                    sheet.curve(curve, look);
                }
                if pull.spliced {
                    sheet.circle(curve.point(0.5), SPLICE, Look::Mark);
                }
            });
        }
    }

    /// The rims of the entries, over the pulls. Both are occupied from then on.
    fn rims(&mut self, curves: &[(&PullView, Curve)]) {
        for placed in &self.view.entries {
            let (centre, radius) = (self.frame.centre(placed), self.frame.radius(placed));
            let look = match (placed.misplaced, placed.measures.is_some()) {
                (true, _) => Look::Short,
                (false, true) => Look::Filling(8),
                (false, false) => Look::AssumedRim,
            };
            let title = entry_text(placed, self.sheet.messages());
            self.sheet.group(&title, |sheet| sheet.circle(centre, radius, look));
            self.occupied.take(Area::around(centre, radius));
        }
        for (number, (pull, curve)) in curves.iter().enumerate().take(4 * MOST_MARKED) {
            self.occupied.take_line(number, curve.points());
            if pull.spliced {
                self.occupied.take(Area::around(curve.point(0.5), SPLICE));
            }
        }
    }

    /// The largest conductor of each pull, where there is room on its line.
    fn conductors(&mut self, curves: &[(&PullView, Curve)]) {
        let [left, right, top, bottom] =
            [Wall::Left, Wall::Right, Wall::Top, Wall::Bottom].map(|wall| self.frame.outer(wall));
        if curves.len() > MOST_MARKED {
            return;
        }
        let mut marked = Vec::new();
        for (number, (pull, curve)) in curves.iter().enumerate() {
            // once for conductors that split
            if marked.contains(&pull.index) {
                continue;
            }
            let Some(size) = pull.largest else { continue };
            let text = size.to_string();
            let width = text.chars().count() as f64 * 6.2 + 6.0;
            let within =
                |point: &Point| point.x > left && point.x < right && point.y > top && point.y < bottom;
            let area = |point: &Point| Area::of_text(at(point.x, point.y + 4.0), Anchor::Middle, width);
            let spot = [0.4, 0.6, 0.3, 0.7, 0.2, 0.8]
                .map(|part| curve.point(part))
                .into_iter()
                .find(|point| within(point) && self.occupied.is_free(&area(point), Some(number)));
            if let Some(point) = spot {
                marked.push(pull.index);
                let point = at(point.x, point.y + 4.0);
                self.write_as_wide(point, Anchor::Middle, Letters::SmallOver, &text, width);
            }
        }
    }
}

/// A pull on paper, from rim to rim: straight across, around a corner, or back to the same wall.
fn curve(view: &BoxView<'_>, frame: &Frame, pull: &PullView) -> Option<Curve> {
    let [first, other] = pull.ends;
    let (first, other) = (view.entries.get(first)?, view.entries.get(other)?);
    let (from, to) = (frame.centre(first), frame.centre(other));
    let middle = middle(from, to);
    let bend = match pull.kind {
        PullKind::Straight => middle,
        PullKind::U if first.entry.wall == Wall::Back => middle,
        PullKind::U => {
            let far = (from.x - to.x).hypot(from.y - to.y);
            let across = match first.entry.wall {
                Wall::Left | Wall::Right => frame.width,
                Wall::Top | Wall::Bottom | Wall::Back => frame.height,
            };
            // a curve reaches half as far as its bend, and stays within the box
            let out = first.centre[1].min(other.centre[1]) * frame.scale;
            let reach = far.max(0.5 * across) + frame.depth;
            inward(first.entry.wall, middle, reach.min(2.0 * out + 1.8 * across))
        }
        PullKind::Angle => corner(first, other, from, to),
    };
    let back = frame.wall(Wall::Back);
    let inside = at(back.corner.x + back.width / 2.0, back.corner.y + back.height / 2.0);
    let bend = match pull.kind {
        PullKind::Straight => bend,
        PullKind::Angle => bent(from, bend, to, 0.1, inside),
        PullKind::U => bent(from, bend, to, 0.25, inside),
    };
    let rim = |placed: &PlacedEntry<'_>, centre: Point| toward(centre, bend, frame.radius(placed));
    Some(Curve { from: rim(first, from), bend, to: rim(other, to) })
}

/// A point so far into the box from a wall.
const fn inward(wall: Wall, from: Point, reach: f64) -> Point {
    match wall {
        Wall::Left => at(from.x + reach, from.y),
        Wall::Right => at(from.x - reach, from.y),
        Wall::Top | Wall::Back => at(from.x, from.y + reach),
        Wall::Bottom => at(from.x, from.y - reach),
    }
}

/// Where conductors turn: as far in as each wall's entry lies along it.
fn corner(first: &PlacedEntry<'_>, other: &PlacedEntry<'_>, from: Point, to: Point) -> Point {
    match (first.entry.wall, other.entry.wall) {
        (Wall::Left | Wall::Right, Wall::Back) => at((from.x + to.x) / 2.0, from.y),
        (Wall::Top | Wall::Bottom, Wall::Back) => at(from.x, (from.y + to.y) / 2.0),
        (Wall::Back, Wall::Left | Wall::Right) => at((from.x + to.x) / 2.0, to.y),
        (Wall::Back, _) => at(to.x, (from.y + to.y) / 2.0),
        (Wall::Left | Wall::Right, _) => at(to.x, from.y),
        _ => at(from.x, to.y),
    }
}

/// A bend that can be seen: where it lies in line with both ends, moved off by a part of their distance, to the side of
/// the middle of the box.
fn bent(from: Point, bend: Point, to: Point, part: f64, inside: Point) -> Point {
    /// The least that can be seen.
    const LEAST: f64 = 26.0;
    let (dx, dy) = (to.x - from.x, to.y - from.y);
    let length = dx.hypot(dy).max(0.01);
    let off = |point: Point| ((point.x - from.x) * dy - (point.y - from.y) * dx) / length;
    let (has, needs) = (off(bend), (part * length).max(LEAST));
    if has.abs() >= needs {
        return bend;
    }
    let aim = if has.abs() < 1.0 { off(inside) } else { has };
    let more = if aim < 0.0 { -needs - has } else { needs - has };
    at(bend.x + more * dy / length, bend.y - more * dx / length)
}
