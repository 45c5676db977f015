//! The ids of entries: in their rims where there is room, or else in line outside the wall, with lines that lead there.

use super::canvas::Canvas;
use super::frame::Frame;
use super::occupied::Area;
use super::placement::settled;
use super::view::BoxView;
use crate::checks::pull_box::Wall;
use crate::drawing::geometry::toward;
use crate::drawing::sheet::{Anchor, Letters, Look, Point, at};

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
    pub fn of(view: &BoxView<'_>) -> Self {
        let texts = view.entries.iter().map(|placed| placed.entry.id.as_str().to_owned()).collect();
        let ids = Self { texts, numbered: false };
        let is_crowded = |wall| ids.pitch(view, wall) * view.on(wall).count() as f64 > WIDEST;
        let longest = ids.texts.iter().map(|text| text.chars().count()).max().unwrap_or(0);
        let numbers_are_shorter = longest > view.entries.len().to_string().len();
        let numbered =
            longest > LONGEST || numbers_are_shorter && (is_crowded(Wall::Top) || is_crowded(Wall::Bottom));
        if !numbered {
            return ids;
        }
        Self { texts: (1..=view.entries.len()).map(|number| number.to_string()).collect(), numbered }
    }

    fn text(&self, position: usize) -> &str {
        self.texts.get(position).map_or("", String::as_str)
    }

    /// About how wide an id is.
    fn width(&self, position: usize) -> f64 {
        self.text(position).chars().count() as f64 * 8.6
    }

    /// The widest of a wall.
    pub fn widest(&self, view: &BoxView<'_>, wall: Wall) -> f64 {
        view.on(wall).map(|(position, _)| self.width(position)).fold(0.0, f64::max)
    }

    /// From one id to the next where two lines of them take turns.
    fn pitch(&self, view: &BoxView<'_>, wall: Wall) -> f64 {
        self.widest(view, wall) / 2.0 + 4.0
    }

    /// The width that all ids above or below a wall take.
    pub fn line(&self, view: &BoxView<'_>, wall: Wall) -> f64 {
        self.pitch(view, wall) * view.on(wall).count() as f64
    }

    /// The letters in which every id of a wall has room within its rim, clear of the others; `None` where some have none.
    pub fn within(&self, view: &BoxView<'_>, frame: &Frame, wall: Wall) -> Option<Letters> {
        [Letters::Over, Letters::SmallOver].into_iter().find(|letters| {
            let mut written: Vec<Area> = Vec::new();
            view.on(wall).all(|(position, placed)| {
                let area = self.inside(position, frame.centre(placed), *letters);
                let is_clear = !written.iter().any(|other| other.meets(&area));
                written.push(area);
                is_clear && self.has_room(position, frame.radius(placed), *letters)
            })
        })
    }

    /// Where an id stands within a rim.
    fn inside(&self, position: usize, centre: Point, letters: Letters) -> Area {
        let narrower = if letters == Letters::Over { 1.0 } else { SMALLER };
        Area::of_text(middle_of(centre), Anchor::Middle, self.width(position) * narrower)
    }

    /// Whether an id has room within a rim.
    fn has_room(&self, position: usize, radius: f64, letters: Letters) -> bool {
        let width = self.width(position);
        let (least, needed) =
            if letters == Letters::Over { (9.0, width + 5.0) } else { (8.0, width * SMALLER + 3.0) };
        radius >= least && 2.0 * radius >= needed
    }

    /// The entries of a wall in the order in which they lie along it, those near the outer edge first.
    fn in_order(view: &BoxView<'_>, frame: &Frame, wall: Wall) -> Vec<(Point, usize)> {
        let is_upright = matches!(wall, Wall::Left | Wall::Right);
        let key = |point: &Point| if is_upright { point.y } else { point.x };
        let mut order: Vec<(Point, f64, usize)> = view
            .on(wall)
            .map(|(position, placed)| (frame.centre(placed), placed.centre[1], position))
            .collect();
        order.sort_by(|(one, out, _), (other, further, _)| {
            key(one).total_cmp(&key(other)).then(further.total_cmp(out))
        });
        order.into_iter().map(|(point, _, position)| (point, position)).collect()
    }

    /// Where the ids above or below a wall stand: in one line, or in two that take turns.
    fn line_up(&self, view: &BoxView<'_>, frame: &Frame, wall: Wall) -> Option<LinedUp> {
        let order = Self::in_order(view, frame, wall);
        let wanted: Vec<f64> = order.iter().map(|(point, _)| point.x).collect();
        let one: Vec<f64> = order.iter().map(|(_, position)| self.width(*position) / 2.0 + 4.0).collect();
        let two = vec![self.pitch(view, wall) / 2.0; order.len()];
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
    pub fn reach(&self, view: &BoxView<'_>, frame: &Frame, wall: Wall) -> f64 {
        let lined_up = self.line_up(view, frame, wall);
        lined_up.map_or(0.0, |lined_up| lined_up.fan + LINE * lined_up.lines as f64 + 4.0)
    }
}

impl Canvas<'_, '_> {
    /// Writes the ids of all entries. Returns how far down they reach, and whether every entry has its own.
    pub fn ids(&mut self, ids: &Ids) -> (f64, bool) {
        let mut lowest = self.frame.outer(Wall::Bottom);
        for wall in [Wall::Left, Wall::Right, Wall::Top, Wall::Bottom] {
            if let Some(letters) = ids.within(self.view, &self.frame, wall) {
                for (position, placed) in self.view.on(wall) {
                    let point = middle_of(self.frame.centre(placed));
                    self.sheet.text(point, Anchor::Middle, letters, ids.text(position));
                }
                continue;
            }
            let below = match wall {
                Wall::Left | Wall::Right => self.ids_beside(ids, wall),
                _ => self.ids_above_or_below(ids, wall),
            };
            lowest = lowest.max(below);
        }
        (lowest, self.ids_on_the_back(ids))
    }

    /// Writes one id with the middle of its letters at some height.
    fn id(&mut self, ids: &Ids, position: usize, point: Point, anchor: Anchor) {
        let (text, width) = (ids.text(position), ids.width(position));
        self.write_as_wide(middle_of(point), anchor, Letters::Over, text, width);
    }

    /// A column of ids beside the left or the right wall.
    fn ids_beside(&mut self, ids: &Ids, wall: Wall) -> f64 {
        let frame = self.frame;
        let order = Ids::in_order(self.view, &frame, wall);
        let wanted: Vec<f64> = order.iter().map(|(point, _)| point.y).collect();
        let halves = vec![LINE / 2.0; order.len()];
        let from = frame.wall(wall).corner.y - LINE / 2.0;
        let most = (from + frame.height + LINE).max(from + LINE * order.len() as f64 + 1.0);
        let Some(lines) = settled(&wanted, &halves, from, most) else { return most };
        let outer = frame.outer(wall);
        let (side, anchor) = if wall == Wall::Left { (-1.0, Anchor::End) } else { (1.0, Anchor::Start) };
        for ((centre, position), y) in order.iter().zip(&lines) {
            self.leader(*position, at(outer + side * 6.0, *y), at(outer + side * 2.0, *y), *centre);
            self.id(ids, *position, at(outer + side * 9.0, *y), anchor);
        }
        lines.last().map_or(0.0, |last| last + LINE / 2.0)
    }

    /// Writes the ids above or below a wall.
    fn ids_above_or_below(&mut self, ids: &Ids, wall: Wall) -> f64 {
        let (outer, side) = (self.frame.outer(wall), if wall == Wall::Top { -1.0 } else { 1.0 });
        let Some(LinedUp { order, columns, lines, fan }) = ids.line_up(self.view, &self.frame, wall) else {
            return outer;
        };
        let mut lowest = outer;
        for (number, ((centre, position), x)) in order.iter().zip(&columns).enumerate() {
            let y = outer + side * (fan + 9.0 + LINE * (number % lines) as f64);
            self.leader(*position, at(*x, y - side * 7.0), at(*x, outer + side * fan), *centre);
            self.id(ids, *position, at(*x, y), Anchor::Middle);
            lowest = lowest.max(y + 8.0);
        }
        lowest
    }

    /// The line that leads from an id to the rim of its entry.
    fn leader(&mut self, position: usize, from: Point, turn: Point, centre: Point) {
        let radius = self.view.entries.get(position).map_or(0.0, |placed| self.frame.radius(placed));
        self.sheet.path(&[from, turn, toward(centre, turn, radius)], Look::Thin);
    }

    /// The ids of the entries in the back: within, or on the side where nothing is. Returns whether all found room.
    fn ids_on_the_back(&mut self, ids: &Ids) -> bool {
        let mut all = true;
        let letters = ids.within(self.view, &self.frame, Wall::Back).unwrap_or(Letters::SmallOver);
        let mut inside: Vec<Area> = Vec::new();
        for (position, placed) in self.view.on(Wall::Back) {
            let (centre, radius) = (self.frame.centre(placed), self.frame.radius(placed));
            let own = ids.inside(position, centre, letters);
            if ids.has_room(position, radius, letters) && !inside.iter().any(|other| other.meets(&own)) {
                inside.push(own);
                self.sheet.text(middle_of(centre), Anchor::Middle, letters, ids.text(position));
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
            let width = ids.width(position);
            let area = |(point, anchor): &(Point, Anchor)| Area::of_text(middle_of(*point), *anchor, width);
            match self.occupied.first_free(sides.into_iter(), area) {
                Some((point, anchor)) => self.id(ids, position, point, anchor),
                None => all = false,
            }
        }
        all
    }
}

/// Where letters are written whose middle is at some height.
const fn middle_of(point: Point) -> Point {
    at(point.x, point.y + 4.5)
}
