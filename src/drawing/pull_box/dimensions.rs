//! The dimensions of a box: what it has, what the rules ask, what it lacks, and how far entries are apart.

use super::facts::{Amount, Facts};
use super::frame::{Frame, Room};
use super::ids::{Ids, toward};
use super::lists;
use super::stage::{Apart, Side, Stage, Standing, asked};
use super::taken::{Area, Taken};
use crate::checks::pull_box::{Axis, Wall};
use crate::drawing::sheet::{Anchor, Letters, Look, Point, Sheet, approximate, at, text_width};
use crate::i18n::Catalogue;

/// From one line of a dimension to the next.
const LINE: f64 = 15.0;
/// Between the outermost thing and a dimension.
const GAP: f64 = 14.0;
/// How much narrower small letters are.
const SMALLER: f64 = 0.88;
/// At most so many distances are drawn; the list has all of them.
const MOST_APART: usize = 12;

/// What the ids outside of the walls take.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Beside {
    pub left: f64,
    pub right: f64,
    pub top: f64,
    pub bottom: f64,
}

impl Beside {
    /// What they take at the most.
    pub fn most(stage: &Stage<'_>, ids: &Ids) -> Self {
        let aside = |wall| if stage.on(wall).next().is_some() { ids.widest(stage, wall) + 14.0 } else { 0.0 };
        let up = |wall| match stage.on(wall).count() {
            0 => 0.0,
            1 => 22.0,
            _ => 54.0,
        };
        Self {
            left: aside(Wall::Left),
            right: aside(Wall::Right),
            top: up(Wall::Top),
            bottom: up(Wall::Bottom),
        }
    }

    /// What they take in a frame, where some stand within their rims and some rims are wider than their wall.
    pub fn of(stage: &Stage<'_>, frame: &Frame, ids: &Ids) -> Self {
        let Self { left, right, .. } = Self::most(stage, ids);
        let taken = |wall, room| if ids.within(stage, frame, wall).is_some() { 0.0 } else { room };
        let over = |wall| {
            let reach = |standing: &Standing<'_>| (standing.centre[1] + standing.radius) * frame.scale;
            let reaches = stage.on(wall).map(|(_, standing)| reach(standing));
            reaches.fold(0.0, f64::max) - frame.depth - frame.missing[2]
        };
        let room = |wall, room| f64::max(taken(wall, room), over(wall).max(0.0));
        let reach = |wall| room(wall, ids.reach(stage, frame, wall));
        Self {
            left: room(Wall::Left, left),
            right: room(Wall::Right, right),
            top: reach(Wall::Top),
            bottom: reach(Wall::Bottom),
        }
    }
}

/// What is written at one side, line by line.
struct Words {
    has: Option<String>,
    least: Option<String>,
    by: Option<String>,
    missing: Option<String>,
}

impl Words {
    fn of(facts: &Facts<'_>, stage: &Stage<'_>, side: &Side, messages: &Catalogue) -> Self {
        Self {
            has: side.figure.map(|figure| side_told("drawing-side", side.axis, Amount::of(figure), messages)),
            least: side
                .minimum
                .map(|figure| side_told("drawing-side-least", side.axis, Amount::of(figure), messages)),
            by: governing(facts, stage, side.axis, messages),
            missing: side
                .missing
                .map(|missing| messages.sentence("drawing-short", [("figure", missing.told())])),
        }
    }

    fn widest(texts: &[&Option<String>]) -> f64 {
        texts.iter().filter_map(|text| text.as_deref()).map(text_width).fold(0.0, f64::max)
    }
}

/// `Width 24 in`.
pub(super) fn side_told(key: &str, axis: Axis, amount: Amount, messages: &Catalogue) -> String {
    messages.sentence(key, [("axis", axis.name()), ("figure", &amount.told())])
}

/// Where the rule stands that governs a direction.
fn governing(facts: &Facts<'_>, stage: &Stage<'_>, axis: Axis, messages: &Catalogue) -> Option<String> {
    let requirement = asked(stage.size, axis).requirements.iter().find(|requirement| requirement.governs)?;
    lists::citation_of(facts, requirement.rule, messages)
}

/// The room that dimensions take on each side of the box, outside of ids.
pub(super) fn room(facts: &Facts<'_>, stage: &Stage<'_>, messages: &Catalogue) -> Room {
    let [width, height, depth] =
        [&stage.width, &stage.height, &stage.depth].map(|side| Words::of(facts, stage, side, messages));
    let aside = |texts: &[&Option<String>]| match Words::widest(texts) {
        0.0 => 8.0,
        // some fonts are wider than others
        widest => 1.15 * widest + GAP + 12.0,
    };
    Room {
        left: aside(&[&height.has, &height.missing, &depth.least, &depth.by]),
        right: aside(&[&height.least, &height.by, &depth.has, &depth.missing]),
        top: match (&width.missing, &width.has, &depth.least) {
            (Some(_), ..) => 54.0,
            // the words of the depth stand in the corners, and reach above a shallow box
            (None, Some(_), _) | (None, None, Some(_)) => 38.0,
            (None, None, None) => 12.0,
        },
        bottom: if width.least.is_some() { 36.0 } else { 10.0 },
    }
}

/// Draws the dimensions of the three sides; gives back where the next thing begins.
pub(super) fn sides(
    sheet: &mut Sheet<'_>,
    facts: &Facts<'_>,
    stage: &Stage<'_>,
    frame: &Frame,
    taken: &mut Taken,
    (lowest, ids): (f64, Beside),
) -> f64 {
    let messages = sheet.messages();
    let [width, height, depth] =
        [&stage.width, &stage.height, &stage.depth].map(|side| Words::of(facts, stage, side, messages));
    let Point { x: left, y: floor } = frame.origin;
    let lacking = if facts.is_covered_by_mark() { Letters::Plain } else { Letters::Short };
    let missing = if lacking == Letters::Short { Look::Short } else { Look::Thin };
    let long = |side: &Side| side.minimum.map_or(0.0, |least| approximate(least.value) * frame.scale);

    let mut level = |[from, to]: [f64; 2], y: f64, letters: Letters, text: &str| {
        sheet.dimension(at(from, y), at(to, y), letters, text);
        let middle = at(f64::midpoint(from, to), y - 5.0);
        taken.take(Area::of_text(middle, Anchor::Middle, text_width(text)));
    };
    let y = frame.outer(Wall::Top) - ids.top - GAP;
    let corner = left + frame.width;
    if let Some(text) = &width.has {
        level([left, corner], y, Letters::Plain, text);
    }
    if let Some(text) = &width.missing {
        level([corner, corner + frame.missing[0]], y - LINE - 5.0, lacking, text);
    }
    let mut y = lowest.max(frame.outer(Wall::Bottom) + ids.bottom);
    if let Some(text) = &width.least {
        let text = [Some(text.as_str()), width.by.as_deref()].into_iter().flatten().collect::<Vec<_>>();
        y += 2.0 * GAP;
        level([left, left + long(&stage.width)], y, Letters::Plain, &text.join(", "));
    }

    let ceiling = floor - frame.height;
    // the words of the depth end above
    let mut highest = frame.top_fold() + 12.0;
    let x = frame.outer(Wall::Left) - ids.left - GAP;
    if let Some(text) = &height.missing {
        let over = ceiling - frame.missing[1];
        sheet.span(at(x, ceiling), at(x, over), missing);
        let beside = (f64::midpoint(ceiling, over) + 4.0).max(highest);
        write(sheet, taken, at(x - 8.0, beside), Anchor::End, lacking, text);
        highest = beside + LINE + 2.0;
    }
    if let Some(text) = &height.has {
        sheet.span(at(x, floor), at(x, ceiling), Look::Thin);
        let beside = (f64::midpoint(floor, ceiling) + 4.0).max(highest);
        write(sheet, taken, at(x - 8.0, beside), Anchor::End, Letters::Plain, text);
    }
    if let Some(text) = &height.least {
        let x = frame.outer(Wall::Right) + ids.right + GAP;
        let top = floor - long(&stage.height);
        sheet.span(at(x, floor), at(x, top), Look::Thin);
        let middle = f64::midpoint(floor, top) + if height.by.is_some() { -4.0 } else { 4.0 };
        let middle = middle.max(frame.top_fold() + 12.0);
        write(sheet, taken, at(x + 8.0, middle), Anchor::Start, Letters::Plain, text);
        if let Some(by) = &height.by {
            write(sheet, taken, at(x + 8.0, middle + LINE), Anchor::Start, Letters::Small, by);
        }
    }
    if stage.shows_walls() {
        depths(sheet, stage, frame, taken, (&depth, long(&stage.depth)), lacking);
    }
    y.max(lowest) + 12.0
}

/// The depth, in the corners that the upper wall leaves open: what it is on the right, what it must be on the left.
fn depths(
    sheet: &mut Sheet<'_>,
    stage: &Stage<'_>,
    frame: &Frame,
    taken: &mut Taken,
    (depth, least): (&Words, f64),
    lacking: Letters,
) {
    let (fold, left) = (frame.top_fold(), frame.origin.x - 9.0);
    let right = frame.origin.x + frame.width + 9.0;
    if let Some(text) = &depth.has {
        let end = fold - frame.depth;
        sheet.span(at(right, fold), at(right, end), Look::Thin);
        let lines = [(Some(text), Letters::Plain), (depth.missing.as_ref(), lacking)];
        stack(sheet, taken, at(right + 8.0, fold - 7.0), Anchor::Start, &lines);
        if stage.depth.missing.is_some() {
            let look = if lacking == Letters::Short { Look::Short } else { Look::Thin };
            sheet.span(at(right, end), at(right, end - frame.missing[2]), look);
        }
    }
    if let Some(text) = &depth.least {
        sheet.span(at(left, fold), at(left, fold - least), Look::Thin);
        let lines = [(Some(text), Letters::Plain), (depth.by.as_ref(), Letters::Small)];
        stack(sheet, taken, at(left - 8.0, fold - 7.0), Anchor::End, &lines);
    }
}

/// One line of text, in which nothing else is to be written.
fn write(
    sheet: &mut Sheet<'_>,
    taken: &mut Taken,
    place: Point,
    anchor: Anchor,
    letters: Letters,
    text: &str,
) {
    sheet.text(place, anchor, letters, text);
    taken.take(Area::of_text(place, anchor, text_width(text)));
}

/// Lines of text one above the other, the last at a point.
fn stack(
    sheet: &mut Sheet<'_>,
    taken: &mut Taken,
    last: Point,
    anchor: Anchor,
    lines: &[(Option<&String>, Letters)],
) {
    let told = || lines.iter().filter_map(|(text, letters)| text.map(|text| (text, *letters)));
    let mut y = last.y - LINE * (told().count() as f64 - 1.0);
    for (text, letters) in told() {
        write(sheet, taken, at(last.x, y), anchor, letters, text);
        y += LINE;
    }
}

/// Draws the distances between entries that can be drawn as long as they are.
pub(super) fn apart(sheet: &mut Sheet<'_>, stage: &Stage<'_>, frame: &Frame, taken: &mut Taken) {
    let mut drawn: Vec<[Point; 2]> = Vec::new();
    for apart in stage.apart.iter().take(MOST_APART) {
        let Some((measured, ends)) = apart.measured.zip(line(stage, frame, apart)) else { continue };
        let [from, to] = beside_others(ends, &drawn);
        let (letters, look, sign) = match apart.is_short() {
            true => (Letters::ShortOver, Look::Short, '<'),
            false => (Letters::SmallOver, Look::Thin, '≥'),
        };
        let long = format!("{} {sign} {}", Amount::of(measured).told(), Amount::of(apart.required).told());
        // the list says what is required where there is no room for it
        let texts = [long, Amount::of(measured).told()];
        let spots = [0.5, 0.35, 0.65, 0.2, 0.8];
        let spots = spots.map(|part| at(from.x + (to.x - from.x) * part, from.y + (to.y - from.y) * part));
        let beside = |spot: &Point| {
            [(0.0, Anchor::Middle), (7.0, Anchor::Start), (-7.0, Anchor::End)]
                .map(|(aside, anchor)| (at(spot.x + aside, spot.y + 4.0), anchor))
        };
        let all =
            || texts.iter().flat_map(|text| spots.iter().flat_map(beside).map(move |place| (text, place)));
        let area = |(text, (place, anchor)): &(&String, (Point, Anchor))| {
            Area::of_text(*place, *anchor, SMALLER * text_width(text))
        };
        let free = all().find(|one| taken.is_free(&area(one), None));
        let Some(one) = free.or_else(|| all().find(|one| taken.is_free_of_shapes(&area(one)))) else {
            continue;
        };
        sheet.span(from, to, look);
        drawn.push([from, to]);
        taken.take(area(&one));
        let (text, (place, anchor)) = one;
        sheet.text(place, anchor, letters, text);
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
    let taken: Vec<f64> = drawn.iter().filter(is_beside).map(|[one, _]| off(*one)).collect();
    let is_free = |aside: &f64| taken.iter().all(|taken| (taken - aside).abs() >= ASIDE - 1.0);
    let aside =
        [0.0, 1.0, -1.0, 2.0, -2.0].map(|times| times * ASIDE).into_iter().find(is_free).unwrap_or(0.0);
    [from, to].map(|end| at(end.x + aside * across.x, end.y + aside * across.y))
}

/// The line of a distance on paper; `None` where it would not be as long as the distance is.
fn line(stage: &Stage<'_>, frame: &Frame, apart: &Apart) -> Option<[Point; 2]> {
    let [first, other] = apart.ends;
    let (first, other) = (stage.entries.get(first)?, stage.entries.get(other)?);
    let long = approximate(apart.measured?.value) * frame.scale;
    let ends = |edges: f64| {
        let (one, two) = if first.entry.wall == other.entry.wall {
            let (one, two) = (frame.centre(first), frame.centre(other));
            let far = (one.x - two.x).hypot(one.y - two.y);
            let rim = |standing: &Standing<'_>| (frame.radius(standing) * edges).min(far / 2.0);
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
fn on_wall(frame: &Frame, standing: &Standing<'_>, other: &Standing<'_>, edges: f64) -> Option<Point> {
    let along = standing.centre[0] * frame.scale;
    let radius = frame.radius(standing) * edges;
    let Point { x, y } = frame.origin;
    let nearer = match other.entry.wall {
        Wall::Left | Wall::Bottom => along - radius,
        Wall::Right | Wall::Top => along + radius,
        Wall::Back => return None,
    };
    Some(match standing.entry.wall {
        Wall::Left => at(x, y - nearer),
        Wall::Right => at(x + frame.width, y - nearer),
        Wall::Top => at(x + nearer, y - frame.height),
        Wall::Bottom => at(x + nearer, y),
        Wall::Back => return None,
    })
}
