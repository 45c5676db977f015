//! One box in plan, its walls folded out around its back, with its entries and the pulls between them.

use super::dimensions::{self, Beside};
use super::facts::Facts;
use super::frame::{Frame, Rectangle, Room};
use super::ids::{Ids, toward};
use super::stage::{Joined, Stage, Standing};
use super::taken::{Area, Taken, along_curve, on_curve};
use crate::checks::pull_box::{PullKind, Wall};
use crate::drawing::sheet::{Anchor, Letters, Look, Point, Sheet, at};
use crate::i18n::Catalogue;

/// The radius of the mark of a splice.
const SPLICE: f64 = 4.5;
/// Up to so many pulls each is marked with its largest conductor.
const MOST_MARKED: usize = 24;

/// Draws a box from some height on; gives back where the next thing begins, and whether every entry has its id there.
pub(super) fn draw(
    sheet: &mut Sheet<'_>,
    facts: &Facts<'_>,
    stage: &Stage<'_>,
    ids: &Ids,
    top: f64,
) -> (f64, bool) {
    let paper = [super::MARGIN, sheet.width() - super::MARGIN];
    let (frame, beside) = frame(stage, ids, facts, sheet.messages(), top, paper);
    let mut taken = Taken::default();
    clearances(sheet, facts, stage, &frame);
    walls(sheet, facts, stage, &frame, &mut taken);
    let on_paper = |joined| Curve::of(stage, &frame, joined).map(|curve| (joined, curve));
    let curves: Vec<(&Joined, Curve)> = stage.joined.iter().filter_map(on_paper).collect();
    for (joined, curve) in &curves {
        pull(sheet, facts, stage, joined, curve);
    }
    rims(sheet, facts, stage, &frame, &curves, &mut taken);
    let (lowest, all_marked) = ids.write(sheet, stage, &frame, &mut taken);
    let end = dimensions::sides(sheet, facts, stage, &frame, &mut taken, (lowest, beside));
    dimensions::apart(sheet, stage, &frame, &mut taken);
    conductors(sheet, facts, stage, &frame, &curves, &mut taken);
    (end, all_marked)
}

/// The box on paper, with the room that its ids and dimensions need.
fn frame(
    stage: &Stage<'_>,
    ids: &Ids,
    facts: &Facts<'_>,
    messages: &Catalogue,
    top: f64,
    paper: [f64; 2],
) -> (Frame, Beside) {
    let dimensions = dimensions::room(facts, stage, messages);
    let with = |beside: Beside| Room {
        left: dimensions.left + beside.left,
        right: dimensions.right + beside.right,
        top: dimensions.top + beside.top,
        bottom: dimensions.bottom + beside.bottom,
    };
    let first = Frame::new(stage, top, paper, with(Beside::most(stage, ids)));
    // ids that fit within their rims leave room that the box can take
    let beside = Beside::of(stage, &first, ids);
    (Frame::new(stage, top, paper, with(beside)), beside)
}

/// The room that was asked around entries and along walls.
fn clearances(sheet: &mut Sheet<'_>, facts: &Facts<'_>, stage: &Stage<'_>, frame: &Frame) {
    let (between, to_wall) = super::clearances(facts, stage);
    if let Some(to_wall) = to_wall {
        let inset = to_wall.approximate() * frame.scale;
        for wall in Wall::ALL.into_iter().filter(|wall| stage.on(*wall).next().is_some()) {
            let Rectangle { corner, width, height } = frame.wall(wall);
            let corner = at(corner.x + inset, corner.y + inset);
            sheet.rectangle(corner, width - 2.0 * inset, height - 2.0 * inset, Look::Free);
        }
    }
    if let Some(between) = between {
        for standing in &stage.entries {
            let ring = frame.radius(standing) + between.approximate() * frame.scale / 2.0;
            sheet.circle(frame.centre(standing), ring, Look::Free);
        }
    }
}

/// The walls, and what the given box lacks of each direction.
fn walls(sheet: &mut Sheet<'_>, facts: &Facts<'_>, stage: &Stage<'_>, frame: &Frame, taken: &mut Taken) {
    let lacking = if facts.is_covered_by_mark() { Look::Free } else { Look::Short };
    let [over_width, over_height, over_depth] = frame.missing;
    let back = frame.wall(Wall::Back);
    let mut fill = |corner: Point, width: f64, height: f64| {
        if width > 0.0 && height > 0.0 {
            sheet.rectangle(corner, width, height, lacking);
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
    if stage.shows_walls() {
        for wall in [Wall::Left, Wall::Right, Wall::Top, Wall::Bottom] {
            let Rectangle { corner, width, height } = frame.wall(wall);
            let along = if matches!(wall, Wall::Left | Wall::Right) { &stage.height } else { &stage.width };
            let assumed = along.assumed || stage.depth.assumed;
            sheet.rectangle(corner, width, height, if assumed { Look::Assumed } else { Look::Thin });
            taken.take_border(corner, width, height);
        }
    }
    edges(sheet, stage, back, taken);
}

/// The four edges of the back: dashed along a direction whose length is assumed.
fn edges(sheet: &mut Sheet<'_>, stage: &Stage<'_>, back: Rectangle, taken: &mut Taken) {
    let Rectangle { corner, width, height } = back;
    let (right, bottom) = (corner.x + width, corner.y + height);
    let look = |assumed: bool| if assumed { Look::Assumed } else { Look::Firm };
    for (from, to, assumed) in [
        (corner, at(right, corner.y), stage.width.assumed),
        (at(corner.x, bottom), at(right, bottom), stage.width.assumed),
        (corner, at(corner.x, bottom), stage.height.assumed),
        (at(right, corner.y), at(right, bottom), stage.height.assumed),
    ] {
        sheet.line(from, to, look(assumed));
    }
    taken.take_border(corner, width, height);
}

/// A pull on paper.
struct Curve {
    from: Point,
    bend: Point,
    to: Point,
}

impl Curve {
    /// From rim to rim: straight across, around a corner, or back to the same wall.
    fn of(stage: &Stage<'_>, frame: &Frame, joined: &Joined) -> Option<Self> {
        let [first, other] = joined.ends;
        let (first, other) = (stage.entries.get(first)?, stage.entries.get(other)?);
        let (from, to) = (frame.centre(first), frame.centre(other));
        let middle = at((from.x + to.x) / 2.0, (from.y + to.y) / 2.0);
        let bend = match joined.kind {
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
        let bend = match joined.kind {
            PullKind::Straight => bend,
            PullKind::Angle => bent(from, bend, to, 0.1, inside),
            PullKind::U => bent(from, bend, to, 0.25, inside),
        };
        let rim = |standing: &Standing<'_>, centre: Point| toward(centre, bend, frame.radius(standing));
        Some(Self { from: rim(first, from), bend, to: rim(other, to) })
    }

    fn points(&self) -> impl Iterator<Item = Point> {
        along_curve(self.from, self.bend, self.to)
    }

    fn at(&self, part: f64) -> Point {
        on_curve(self.from, self.bend, self.to, part)
    }
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
fn corner(first: &Standing<'_>, other: &Standing<'_>, from: Point, to: Point) -> Point {
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

fn pull(sheet: &mut Sheet<'_>, facts: &Facts<'_>, stage: &Stage<'_>, joined: &Joined, curve: &Curve) {
    let look = if joined.sized_by_length { Look::Pull } else { Look::Thin };
    let title = super::lists::pull_told(facts, stage, joined, sheet.messages());
    sheet.group(&title, |sheet| {
        if joined.kind == PullKind::Straight {
            sheet.line(curve.from, curve.to, look);
        } else {
            sheet.curve(curve.from, curve.bend, curve.to, look);
        }
        if is_spliced(facts, joined) {
            sheet.circle(curve.at(0.5), SPLICE, Look::Mark);
        }
    });
}

fn is_spliced(facts: &Facts<'_>, joined: &Joined) -> bool {
    super::lists::asked(facts, joined).is_some_and(|pull| pull.spliced)
}

/// The rims of the entries, over the pulls; takes both.
fn rims(
    sheet: &mut Sheet<'_>,
    facts: &Facts<'_>,
    stage: &Stage<'_>,
    frame: &Frame,
    curves: &[(&Joined, Curve)],
    taken: &mut Taken,
) {
    for standing in &stage.entries {
        let (centre, radius) = (frame.centre(standing), frame.radius(standing));
        let look = match (standing.misplaced, standing.measures.is_some()) {
            (true, _) => Look::Short,
            (false, true) => Look::Filling(8),
            (false, false) => Look::AssumedRim,
        };
        let title = super::lists::entry_told(standing, sheet.messages());
        sheet.group(&title, |sheet| sheet.circle(centre, radius, look));
        taken.take(Area::around(centre, radius));
    }
    for (number, (joined, curve)) in curves.iter().enumerate().take(4 * MOST_MARKED) {
        taken.take_line(number, curve.points());
        if is_spliced(facts, joined) {
            taken.take(Area::around(curve.at(0.5), SPLICE));
        }
    }
}

/// The largest conductor of each pull, where there is room on its line.
fn conductors(
    sheet: &mut Sheet<'_>,
    facts: &Facts<'_>,
    stage: &Stage<'_>,
    frame: &Frame,
    curves: &[(&Joined, Curve)],
    taken: &mut Taken,
) {
    let [left, right, top, bottom] =
        [Wall::Left, Wall::Right, Wall::Top, Wall::Bottom].map(|wall| frame.outer(wall));
    if curves.len() > MOST_MARKED {
        return;
    }
    let mut marked = Vec::new();
    for (number, (joined, curve)) in curves.iter().enumerate() {
        // once for conductors that split
        if marked.contains(&joined.pull) {
            continue;
        }
        let Some(size) = super::lists::largest(facts, stage, joined) else { continue };
        let text = size.to_string();
        let width = text.chars().count() as f64 * 6.2 + 6.0;
        let within = |point: &Point| point.x > left && point.x < right && point.y > top && point.y < bottom;
        let spots = [0.4, 0.6, 0.3, 0.7, 0.2, 0.8].map(|part| curve.at(part));
        let place = |point: &Point| at(point.x, point.y + 4.0);
        let area = |point: &Point| Area::of_text(place(point), Anchor::Middle, width);
        if let Some(point) =
            spots.iter().find(|point| within(point) && taken.is_free(&area(point), Some(number)))
        {
            taken.take(area(point));
            marked.push(joined.pull);
            sheet.text(place(point), Anchor::Middle, Letters::SmallOver, &text);
        }
    }
}
