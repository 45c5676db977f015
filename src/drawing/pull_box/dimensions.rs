//! The dimensions of a box: what it has, what the rules require, what it lacks, and how far entries are apart.

use super::canvas::Canvas;
use super::facts::{Amount, Facts};
use super::frame::{Frame, Room};
use super::ids::Ids;
use super::occupied::Area;
use super::placement::PlacedEntry;
use super::texts::SideTexts;
use super::view::{BoxView, DistanceView, Side};
use crate::checks::pull_box::{PerAxis, Wall};
use crate::drawing::geometry::toward;
use crate::drawing::sheet::{Anchor, Letters, Look, Point, approximate, at, text_width};
use crate::i18n::Catalogue;

/// From one line of a dimension to the next.
const LINE: f64 = 15.0;
/// Between the outermost thing and a dimension.
const GAP: f64 = 14.0;
/// How much narrower small letters are.
const SMALLER: f64 = 0.88;
/// The most distances that are drawn; the list has all of them.
const MOST_DISTANCES: usize = 12;

/// What the ids outside of the walls take at the most.
pub(super) fn most_beside(view: &BoxView<'_>, ids: &Ids) -> Room {
    let aside = |wall| if view.on(wall).next().is_some() { ids.widest(view, wall) + 14.0 } else { 0.0 };
    let up = |wall| match view.on(wall).count() {
        0 => 0.0,
        1 => 22.0,
        _ => 54.0,
    };
    Room { left: aside(Wall::Left), right: aside(Wall::Right), top: up(Wall::Top), bottom: up(Wall::Bottom) }
}

/// What they take in a frame, where some stand within their rims and some rims are wider than their wall.
pub(super) fn beside(view: &BoxView<'_>, frame: &Frame, ids: &Ids) -> Room {
    let most = most_beside(view, ids);
    let room = |wall, room| {
        let room = if ids.within(view, frame, wall).is_some() { 0.0 } else { room };
        let reach = |placed: &PlacedEntry<'_>| (placed.centre[1] + placed.radius) * frame.scale;
        let reaches = view.on(wall).map(|(_, placed)| reach(placed));
        let over = reaches.fold(0.0, f64::max) - frame.depth - frame.missing[2];
        f64::max(room, over.max(0.0))
    };
    Room {
        left: room(Wall::Left, most.left),
        right: room(Wall::Right, most.right),
        top: room(Wall::Top, ids.reach(view, frame, Wall::Top)),
        bottom: room(Wall::Bottom, ids.reach(view, frame, Wall::Bottom)),
    }
}

fn side_texts(facts: &Facts<'_>, view: &BoxView<'_>, messages: &Catalogue) -> PerAxis<SideTexts> {
    PerAxis::new(|axis| SideTexts::of(facts, view, &view.sides[axis], messages))
}

/// The room that dimensions take on each side of the box, outside of ids.
pub(super) fn room(facts: &Facts<'_>, view: &BoxView<'_>, messages: &Catalogue) -> Room {
    let PerAxis { width, height, depth } = side_texts(facts, view, messages);
    let aside = |texts: [&Option<String>; 4]| {
        let widths = texts.into_iter().flatten().map(|text| text_width(text));
        match widths.fold(0.0, f64::max) {
            0.0 => 8.0,
            // some fonts are wider than others
            widest => 1.15 * widest + GAP + 12.0,
        }
    };
    Room {
        left: aside([&height.has, &height.missing, &depth.least, &depth.by]),
        right: aside([&height.least, &height.by, &depth.has, &depth.missing]),
        top: match (&width.missing, &width.has, &depth.least) {
            (Some(_), ..) => 54.0,
            // the words of the depth stand in the corners, and reach above a shallow box
            (None, Some(_), _) | (None, None, Some(_)) => 38.0,
            (None, None, None) => 12.0,
        },
        bottom: if width.least.is_some() { 36.0 } else { 10.0 },
    }
}

impl Canvas<'_, '_> {
    /// Draws the dimensions of the three sides outside of the ids, which reach down to `lowest`. Returns where the next
    /// thing begins.
    pub fn sides(&mut self, lowest: f64, ids: Room) -> f64 {
        let frame = self.frame;
        let PerAxis { width, height, depth } = side_texts(self.facts, self.view, self.sheet.messages());
        let Point { x: left, y: floor } = frame.origin;
        let (lacking, missing) = self.lacking();
        let long = |side: &Side| side.minimum.map_or(0.0, |least| approximate(least.value) * frame.scale);
        let sides = &self.view.sides;

        let y = frame.outer(Wall::Top) - ids.top - GAP;
        let corner = left + frame.width;
        if let Some(text) = &width.has {
            self.level([left, corner], y, Letters::Plain, text);
        }
        if let Some(text) = &width.missing {
            self.level([corner, corner + frame.missing[0]], y - LINE - 5.0, lacking, text);
        }
        let mut y = lowest.max(frame.outer(Wall::Bottom) + ids.bottom);
        if let Some(text) = &width.least {
            let text = [Some(text.as_str()), width.by.as_deref()].into_iter().flatten().collect::<Vec<_>>();
            y += 2.0 * GAP;
            self.level([left, left + long(&sides.width)], y, Letters::Plain, &text.join(", "));
        }

        let ceiling = floor - frame.height;
        // the words of the depth end above
        let mut highest = frame.top_fold() + 12.0;
        let x = frame.outer(Wall::Left) - ids.left - GAP;
        if let Some(text) = &height.missing {
            let over = ceiling - frame.missing[1];
            self.sheet.span(at(x, ceiling), at(x, over), missing);
            let beside = (f64::midpoint(ceiling, over) + 4.0).max(highest);
            self.write(at(x - 8.0, beside), Anchor::End, lacking, text);
            highest = beside + LINE + 2.0;
        }
        if let Some(text) = &height.has {
            self.sheet.span(at(x, floor), at(x, ceiling), Look::Thin);
            let beside = (f64::midpoint(floor, ceiling) + 4.0).max(highest);
            self.write(at(x - 8.0, beside), Anchor::End, Letters::Plain, text);
        }
        if let Some(text) = &height.least {
            let x = frame.outer(Wall::Right) + ids.right + GAP;
            let top = floor - long(&sides.height);
            self.sheet.span(at(x, floor), at(x, top), Look::Thin);
            let middle = f64::midpoint(floor, top) + if height.by.is_some() { -4.0 } else { 4.0 };
            let middle = middle.max(frame.top_fold() + 12.0);
            self.write(at(x + 8.0, middle), Anchor::Start, Letters::Plain, text);
            if let Some(by) = &height.by {
                self.write(at(x + 8.0, middle + LINE), Anchor::Start, Letters::Small, by);
            }
        }
        if self.view.shows_walls() {
            self.depths(&depth, long(&sides.depth));
        }
        y.max(lowest) + 12.0
    }

    /// How what a box lacks looks: nothing counts against one that a marking covers.
    fn lacking(&self) -> (Letters, Look) {
        if self.facts.is_covered_by_mark() {
            (Letters::Plain, Look::Thin)
        } else {
            (Letters::Short, Look::Short)
        }
    }

    /// A horizontal dimension.
    fn level(&mut self, [from, to]: [f64; 2], y: f64, letters: Letters, text: &str) {
        self.sheet.dimension(at(from, y), at(to, y), letters, text);
        let middle = at(f64::midpoint(from, to), y - 5.0);
        self.occupied.take(Area::of_text(middle, Anchor::Middle, text_width(text)));
    }

    /// The depth, in the corners that the upper wall leaves open: what it is on the right, what it must be on the left.
    fn depths(&mut self, depth: &SideTexts, least: f64) {
        let frame = self.frame;
        let (fold, left) = (frame.top_fold(), frame.origin.x - 9.0);
        let right = frame.origin.x + frame.width + 9.0;
        let (lacking, missing) = self.lacking();
        if let Some(text) = &depth.has {
            let end = fold - frame.depth;
            self.sheet.span(at(right, fold), at(right, end), Look::Thin);
            let lines = [(Some(text), Letters::Plain), (depth.missing.as_ref(), lacking)];
            self.stack(at(right + 8.0, fold - 7.0), Anchor::Start, lines);
            if depth.missing.is_some() {
                self.sheet.span(at(right, end), at(right, end - frame.missing[2]), missing);
            }
        }
        if let Some(text) = &depth.least {
            self.sheet.span(at(left, fold), at(left, fold - least), Look::Thin);
            let lines = [(Some(text), Letters::Plain), (depth.by.as_ref(), Letters::Small)];
            self.stack(at(left - 8.0, fold - 7.0), Anchor::End, lines);
        }
    }

    /// Lines of text one above the other, the last at a point.
    fn stack(&mut self, last: Point, anchor: Anchor, lines: [(Option<&String>, Letters); 2]) {
        let lines = lines.into_iter().filter_map(|(text, letters)| Some((text?, letters)));
        let mut y = last.y - LINE * (lines.clone().count() as f64 - 1.0);
        for (text, letters) in lines {
            self.write(at(last.x, y), anchor, letters, text);
            y += LINE;
        }
    }

    /// Draws the distances between entries that can be drawn as long as they are.
    pub fn distances(&mut self) {
        let mut drawn: Vec<[Point; 2]> = Vec::new();
        for distance in self.view.distances.iter().take(MOST_DISTANCES) {
            let line = line(self.view, &self.frame, distance);
            let Some((measured, ends)) = distance.measured.zip(line) else { continue };
            let [from, to] = beside_others(ends, &drawn);
            let (letters, look, sign) = match distance.is_short() {
                true => (Letters::ShortOver, Look::Short, '<'),
                false => (Letters::SmallOver, Look::Thin, '≥'),
            };
            let measured = Amount::of(measured).text();
            let long = format!("{measured} {sign} {}", Amount::of(distance.required).text());
            // the list says what is required where there is no room for it
            let texts = [long, measured];
            let spots = [0.5, 0.35, 0.65, 0.2, 0.8]
                .map(|part| at(from.x + (to.x - from.x) * part, from.y + (to.y - from.y) * part));
            let beside = |spot: &Point| {
                [(0.0, Anchor::Middle), (7.0, Anchor::Start), (-7.0, Anchor::End)]
                    .map(|(aside, anchor)| (at(spot.x + aside, spot.y + 4.0), anchor))
            };
            let all = texts.iter().flat_map(|text| {
                spots.iter().flat_map(beside).map(move |(point, anchor)| (text, point, anchor))
            });
            let area = |(text, point, anchor): &(&String, Point, Anchor)| {
                Area::of_text(*point, *anchor, SMALLER * text_width(text))
            };
            if let Some((text, point, anchor)) = self.occupied.first_free(all, area) {
                self.sheet.span(from, to, look);
                drawn.push([from, to]);
                self.write_as_wide(point, anchor, letters, text, SMALLER * text_width(text));
            }
        }
    }
}

/// A line of a distance where none is drawn along it yet: moved aside as far as it takes.
fn beside_others([from, to]: [Point; 2], drawn: &[[Point; 2]]) -> [Point; 2] {
    const ASIDE: f64 = 8.0;
    let length = (to.x - from.x).hypot(to.y - from.y).max(0.01);
    let across = at((to.y - from.y) / length, (from.x - to.x) / length);
    // how far a point lies off the line, and how far along it
    let off = |point: Point| (point.x - from.x) * across.x + (point.y - from.y) * across.y;
    let along = |point: Point| (point.y - from.y) * across.x - (point.x - from.x) * across.y;
    let is_beside = |ends: &&[Point; 2]| {
        let [one, other] = ends.map(along);
        one.max(other) > 0.0
            && one.min(other) < length
            && ends.iter().all(|end| off(*end).abs() < 3.0 * ASIDE)
    };
    let occupied: Vec<f64> = drawn.iter().filter(is_beside).map(|[one, _]| off(*one)).collect();
    let is_free = |aside: &f64| occupied.iter().all(|occupied| (occupied - aside).abs() >= ASIDE - 1.0);
    let aside =
        [0.0, 1.0, -1.0, 2.0, -2.0].map(|times| times * ASIDE).into_iter().find(is_free).unwrap_or(0.0);
    [from, to].map(|end| at(end.x + aside * across.x, end.y + aside * across.y))
}

/// The line of a distance on paper; `None` where it would not be as long as the distance is.
fn line(view: &BoxView<'_>, frame: &Frame, distance: &DistanceView) -> Option<[Point; 2]> {
    let [first, other] = distance.ends;
    let (first, other) = (view.entries.get(first)?, view.entries.get(other)?);
    let long = approximate(distance.measured?.value) * frame.scale;
    let ends = |edges: f64| {
        let (one, two) = if first.entry.wall == other.entry.wall {
            let (one, two) = (frame.centre(first), frame.centre(other));
            let far = (one.x - two.x).hypot(one.y - two.y);
            let rim = |placed: &PlacedEntry<'_>| (frame.radius(placed) * edges).min(far / 2.0);
            (toward(one, two, rim(first)), toward(two, one, rim(other)))
        } else {
            (on_wall(frame, first, other, edges)?, on_wall(frame, other, first, edges)?)
        };
        let drawn = (one.x - two.x).hypot(one.y - two.y);
        ((drawn - long).abs() <= 1.0 + long / 100.0).then_some([one, two])
    };
    // from edge to edge, or from centre to centre where distances are read so
    ends(1.0).or_else(|| ends(0.0))
}

/// Where an entry of a side wall is, looking into the box: the edge that is nearer to another wall.
fn on_wall(frame: &Frame, placed: &PlacedEntry<'_>, other: &PlacedEntry<'_>, edges: f64) -> Option<Point> {
    let along = placed.centre[0] * frame.scale;
    let radius = frame.radius(placed) * edges;
    let Point { x, y } = frame.origin;
    let nearer = match other.entry.wall {
        Wall::Left | Wall::Bottom => along - radius,
        Wall::Right | Wall::Top => along + radius,
        Wall::Back => return None,
    };
    Some(match placed.entry.wall {
        Wall::Left => at(x, y - nearer),
        Wall::Right => at(x + frame.width, y - nearer),
        Wall::Top => at(x + nearer, y - frame.height),
        Wall::Bottom => at(x + nearer, y),
        Wall::Back => return None,
    })
}
