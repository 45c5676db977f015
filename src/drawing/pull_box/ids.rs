//! The ids of entries: in their rims where there is room, or else in line outside the wall, with lines that lead there.

use super::frame::Frame;
use super::spread::settled;
use super::stage::Stage;
use super::taken::{Area, Taken};
use crate::checks::pull_box::Wall;
use crate::drawing::sheet::{Anchor, Letters, Look, Point, Sheet, at};

/// Longer ids than this are written in the list only, and numbers stand on the drawing.
const LONGEST: usize = 12;
/// How much narrower small letters are.
const SMALLER: f64 = 0.78;
/// From one line of ids to the next.
const LINE: f64 = 14.0;
/// The width that ids above or below a wall may take.
const WIDEST: f64 = 780.0;

/// What is written at the entries of a box.
pub(super) struct Ids {
    /// One for each entry.
    pub texts: Vec<String>,
    /// Whether they are the numbers of the list, and not the callers' ids.
    pub numbered: bool,
}

/// Ids in line above or below a wall.
struct LinedUp {
    order: Vec<(Point, usize)>,
    columns: Vec<f64>,
    /// In how many lines they take turns.
    lines: usize,
    /// How high the lines fan out that lead to the entries.
    fan: f64,
}

impl Ids {
    /// The ids themselves; numbers where those are too long or too many.
    pub fn of(stage: &Stage<'_>) -> Self {
        let texts: Vec<String> =
            stage.entries.iter().map(|standing| standing.entry.id.as_str().to_owned()).collect();
        let ids = Self { texts, numbered: false };
        let is_crowded = |wall| ids.pitch(stage, wall) * stage.on(wall).count() as f64 > WIDEST;
        let longest = ids.texts.iter().map(|text| text.chars().count()).max().unwrap_or(0);
        let numbers_are_shorter = longest > stage.entries.len().to_string().len();
        let numbered =
            longest > LONGEST || numbers_are_shorter && (is_crowded(Wall::Top) || is_crowded(Wall::Bottom));
        if !numbered {
            return ids;
        }
        Self { texts: (1..=stage.entries.len()).map(|number| number.to_string()).collect(), numbered }
    }

    fn text(&self, place: usize) -> &str {
        self.texts.get(place).map_or("", String::as_str)
    }

    fn width(&self, place: usize) -> f64 {
        width_of(self.text(place))
    }

    /// The widest of a wall.
    pub fn widest(&self, stage: &Stage<'_>, wall: Wall) -> f64 {
        stage.on(wall).map(|(place, _)| self.width(place)).fold(0.0, f64::max)
    }

    /// From one id to the next where two lines of them take turns.
    fn pitch(&self, stage: &Stage<'_>, wall: Wall) -> f64 {
        self.widest(stage, wall) / 2.0 + 4.0
    }

    /// The width that all ids above or below a wall take.
    pub fn line(&self, stage: &Stage<'_>, wall: Wall) -> f64 {
        self.pitch(stage, wall) * stage.on(wall).count() as f64
    }

    /// The letters in which every id of a wall has room within its rim, clear of the others; `None` where some have none.
    pub fn within(&self, stage: &Stage<'_>, frame: &Frame, wall: Wall) -> Option<Letters> {
        [Letters::Over, Letters::SmallOver].into_iter().find(|letters| {
            let mut written: Vec<Area> = Vec::new();
            stage.on(wall).all(|(place, standing)| {
                let area = self.inside(place, frame.centre(standing), *letters);
                let is_clear = !written.iter().any(|other| other.meets(&area));
                written.push(area);
                is_clear && self.has_room(place, frame.radius(standing), *letters)
            })
        })
    }

    /// Where an id stands within a rim.
    fn inside(&self, place: usize, centre: Point, letters: Letters) -> Area {
        let narrower = if letters == Letters::Over { 1.0 } else { SMALLER };
        Area::of_text(middle_of(centre), Anchor::Middle, self.width(place) * narrower)
    }

    /// Whether an id has room within a rim.
    fn has_room(&self, place: usize, radius: f64, letters: Letters) -> bool {
        let width = self.width(place);
        let (least, needed) =
            if letters == Letters::Over { (9.0, width + 5.0) } else { (8.0, width * SMALLER + 3.0) };
        radius >= least && 2.0 * radius >= needed
    }

    /// Writes the ids of all entries; gives back how far down they reach, and whether every entry has its own.
    pub fn write(
        &self,
        sheet: &mut Sheet<'_>,
        stage: &Stage<'_>,
        frame: &Frame,
        taken: &mut Taken,
    ) -> (f64, bool) {
        let mut lowest = frame.outer(Wall::Bottom);
        for wall in [Wall::Left, Wall::Right, Wall::Top, Wall::Bottom] {
            if let Some(letters) = self.within(stage, frame, wall) {
                for (place, standing) in stage.on(wall) {
                    sheet.text(middle_of(frame.centre(standing)), Anchor::Middle, letters, self.text(place));
                }
                continue;
            }
            let below = match wall {
                Wall::Left | Wall::Right => self.beside(sheet, stage, frame, taken, wall),
                _ => self.above_or_below(sheet, stage, frame, taken, wall),
            };
            lowest = lowest.max(below);
        }
        (lowest, self.on_the_back(sheet, stage, frame, taken))
    }

    /// Writes one id with the middle of its letters at some height.
    fn write_one(
        &self,
        sheet: &mut Sheet<'_>,
        taken: &mut Taken,
        place: usize,
        point: Point,
        anchor: Anchor,
    ) {
        let point = middle_of(point);
        taken.take(Area::of_text(point, anchor, self.width(place)));
        sheet.text(point, anchor, Letters::Over, self.text(place));
    }

    /// The entries of a wall in the order in which they lie along it, those near the outer edge first.
    fn in_order(stage: &Stage<'_>, frame: &Frame, wall: Wall) -> Vec<(Point, usize)> {
        let is_upright = matches!(wall, Wall::Left | Wall::Right);
        let key = |point: &Point| if is_upright { point.y } else { point.x };
        let mut order: Vec<(Point, f64, usize)> = stage
            .on(wall)
            .map(|(place, standing)| (frame.centre(standing), standing.centre[1], place))
            .collect();
        order.sort_by(|(one, out, _), (other, further, _)| {
            key(one).total_cmp(&key(other)).then(further.total_cmp(out))
        });
        order.into_iter().map(|(point, _, place)| (point, place)).collect()
    }

    /// A column of ids beside the left or the right wall.
    fn beside(
        &self,
        sheet: &mut Sheet<'_>,
        stage: &Stage<'_>,
        frame: &Frame,
        taken: &mut Taken,
        wall: Wall,
    ) -> f64 {
        let order = Self::in_order(stage, frame, wall);
        let wanted: Vec<f64> = order.iter().map(|(point, _)| point.y).collect();
        let halves = vec![LINE / 2.0; order.len()];
        let from = frame.wall(wall).corner.y - LINE / 2.0;
        let most = (from + frame.height + LINE).max(from + LINE * order.len() as f64 + 1.0);
        let Some(lines) = settled(&wanted, &halves, from, most) else { return most };
        let outer = frame.outer(wall);
        let (side, anchor) = if wall == Wall::Left { (-1.0, Anchor::End) } else { (1.0, Anchor::Start) };
        for ((point, place), y) in order.iter().zip(&lines) {
            let end = at(outer + side * 6.0, *y);
            self.lead(sheet, stage, frame, *place, &[end, at(outer + side * 2.0, *y)], *point);
            self.write_one(sheet, taken, *place, at(outer + side * 9.0, *y), anchor);
        }
        lines.last().map_or(0.0, |last| last + LINE / 2.0)
    }

    /// Where the ids above or below a wall stand: in one line, or in two that take turns.
    fn line_up(&self, stage: &Stage<'_>, frame: &Frame, wall: Wall) -> Option<LinedUp> {
        let order = Self::in_order(stage, frame, wall);
        let wanted: Vec<f64> = order.iter().map(|(point, _)| point.x).collect();
        let one: Vec<f64> = order.iter().map(|(_, place)| self.width(*place) / 2.0 + 4.0).collect();
        let two = vec![self.pitch(stage, wall) / 2.0; order.len()];
        let (left, right) = (frame.origin.x - 40.0, frame.origin.x + frame.width + 40.0);
        let in_one = settled(&wanted, &one, left, right);
        let lines = if in_one.is_some() { 1 } else { 2 };
        let in_two = || settled(&wanted, &two, left, right);
        let anywhere = || settled(&wanted, &two, frame.paper[0], frame.paper[1]);
        let columns = in_one.or_else(in_two).or_else(anywhere)?;
        let furthest = columns.iter().zip(&wanted).map(|(x, wanted)| (x - wanted).abs()).fold(0.0, f64::max);
        let fan = if furthest > 6.0 { (furthest / 4.0).clamp(18.0, 60.0) } else { 5.0 };
        Some(LinedUp { order, columns, lines, fan })
    }

    /// How far the ids above or below a wall reach out from it.
    pub fn reach(&self, stage: &Stage<'_>, frame: &Frame, wall: Wall) -> f64 {
        let lined_up = self.line_up(stage, frame, wall);
        lined_up.map_or(0.0, |lined_up| lined_up.fan + LINE * lined_up.lines as f64 + 4.0)
    }

    /// Writes the ids above or below a wall.
    fn above_or_below(
        &self,
        sheet: &mut Sheet<'_>,
        stage: &Stage<'_>,
        frame: &Frame,
        taken: &mut Taken,
        wall: Wall,
    ) -> f64 {
        let (outer, side) = (frame.outer(wall), if wall == Wall::Top { -1.0 } else { 1.0 });
        let Some(LinedUp { order, columns, lines, fan }) = self.line_up(stage, frame, wall) else {
            return outer;
        };
        let mut lowest = outer;
        for (number, ((point, place), x)) in order.iter().zip(&columns).enumerate() {
            let y = outer + side * (fan + 9.0 + LINE * (number % lines) as f64);
            let (end, turn) = (at(*x, y - side * 7.0), at(*x, outer + side * fan));
            self.lead(sheet, stage, frame, *place, &[end, turn], *point);
            self.write_one(sheet, taken, *place, at(*x, y), Anchor::Middle);
            lowest = lowest.max(y + 8.0);
        }
        lowest
    }

    /// The line that leads from an id to the rim of its entry.
    fn lead(
        &self,
        sheet: &mut Sheet<'_>,
        stage: &Stage<'_>,
        frame: &Frame,
        place: usize,
        from: &[Point],
        centre: Point,
    ) {
        let radius = stage.entries.get(place).map_or(0.0, |standing| frame.radius(standing));
        let Some(last) = from.last() else { return };
        let mut path = from.to_vec();
        path.push(toward(centre, *last, radius));
        sheet.path(&path, Look::Thin);
    }

    /// The ids of the entries in the back: within, or on the side where nothing is. Says whether all found room.
    fn on_the_back(
        &self,
        sheet: &mut Sheet<'_>,
        stage: &Stage<'_>,
        frame: &Frame,
        taken: &mut Taken,
    ) -> bool {
        let mut all = true;
        let letters = self.within(stage, frame, Wall::Back).unwrap_or(Letters::SmallOver);
        let mut inside: Vec<Area> = Vec::new();
        for (place, standing) in stage.on(Wall::Back) {
            let (centre, radius, width) = (frame.centre(standing), frame.radius(standing), self.width(place));
            let own = self.inside(place, centre, letters);
            if self.has_room(place, radius, letters) && !inside.iter().any(|other| other.meets(&own)) {
                inside.push(own);
                sheet.text(middle_of(centre), Anchor::Middle, letters, self.text(place));
                continue;
            }
            let (aside, up) = (radius + 5.0, radius + 10.0);
            let sides = [
                (at(centre.x + aside, centre.y), Anchor::Start),
                (at(centre.x - aside, centre.y), Anchor::End),
                (at(centre.x, centre.y - up), Anchor::Middle),
                (at(centre.x, centre.y + up), Anchor::Middle),
                (at(centre.x + radius, centre.y - up), Anchor::Start),
                (at(centre.x + radius, centre.y + up), Anchor::Start),
                (at(centre.x - radius, centre.y - up), Anchor::End),
                (at(centre.x - radius, centre.y + up), Anchor::End),
            ];
            let area = |(point, anchor): &(Point, Anchor)| Area::of_text(middle_of(*point), *anchor, width);
            let free = sides.iter().find(|side| taken.is_free(&area(side), None));
            let over_lines = || sides.iter().find(|side| taken.is_free_of_shapes(&area(side)));
            match free.or_else(over_lines) {
                Some((point, anchor)) => self.write_one(sheet, taken, place, *point, *anchor),
                None => all = false,
            }
        }
        all
    }
}

/// The point at some distance from a centre, in the direction of another point.
pub(super) fn toward(centre: Point, to: Point, distance: f64) -> Point {
    let (dx, dy) = (to.x - centre.x, to.y - centre.y);
    let length = dx.hypot(dy).max(0.01);
    at(centre.x + dx / length * distance, centre.y + dy / length * distance)
}

/// Where letters are written whose middle is at some height.
const fn middle_of(point: Point) -> Point {
    at(point.x, point.y + 4.5)
}

/// About how wide an id is.
fn width_of(text: &str) -> f64 {
    text.chars().count() as f64 * 8.6
}
