//! The conductors of a body as lines between their openings.

use super::super::geometry::{Curve, middle};
use super::super::sheet::{Look, Point, Sheet, at};
use super::Page;
use super::measures::Opening;
use super::view::{Facing, View};
use crate::rulebook::Rulebook;

/// How far apart numbers of pulls stand at the least.
const APART: f64 = 21.0;

/// Conductors between two openings.
struct Strand<'a> {
    /// The number of their pull.
    number: usize,
    large: bool,
    from: &'a Opening<'a>,
    to: &'a Opening<'a>,
}

impl Strand<'_> {
    fn joins_the_same(&self, other: &Self) -> bool {
        let [one, other] = [self, other].map(|strand| (strand.from.hub.place, strand.to.hub.place));
        one == other || one == (other.1, other.0)
    }
}

impl Page<'_> {
    /// Every pull as a line between its openings, with its number where there is room.
    pub(super) fn strands(&self, sheet: &mut Sheet<'_>, view: &View<'_>) {
        let strands = self.all_strands(view);
        let mut numbers: Vec<(Point, usize)> = Vec::new();
        for (index, strand) in strands.iter().enumerate() {
            let Strand { number, large, from, to } = *strand;
            let same = |others: &[Strand<'_>]| {
                others.iter().filter(|other| strand.joins_the_same(other)).count() as f64
            };
            let (all, before) = (same(&strands), same(strands.get(..index).unwrap_or_default()));
            let narrow = from.radius.min(to.radius) * view.scale;
            let moved = (before - (all - 1.0) / 2.0) * (1.5 * narrow / all).min(10.0);
            let curve = curve_between(view, from, to, moved);
            let look = if large { Look::Firm } else { Look::Thin };
            let ends = [(from, curve.from), (to, curve.to)];
            for (opening, end) in ends {
                sheet.line(end, outside(view, opening, end, 0.8), look);
            }
            sheet.curve(&curve, look);
            let free = |point: &Point| {
                numbers.iter().all(|(other, _)| (point.x - other.x).hypot(point.y - other.y) >= APART)
            };
            let inside = [0.5, 0.35, 0.65, 0.2, 0.8].map(|share| curve.point(share));
            let beyond = ends.map(|(opening, end)| outside(view, opening, end, 0.5));
            let free = inside.into_iter().chain(beyond).find(free);
            numbers.extend(free.filter(|_| view.is_plan).map(|point| (point, number)));
        }
        for (point, number) in numbers {
            sheet.number(point, number);
        }
    }

    /// From the first opening of each pull to every other.
    fn all_strands<'v>(&self, view: &View<'v>) -> Vec<Strand<'v>> {
        let mut strands = Vec::new();
        let large_from = Rulebook::of(self.request.edition).pull.applies_from;
        for (index, pull) in self.request.pulls.iter().enumerate() {
            let mut openings = pull.between.iter().filter_map(|place| view.measures.opening(*place));
            let Some(from) = openings.next() else { continue };
            let (number, large) = (index + 1, pull.is_large(large_from));
            strands.extend(openings.map(|to| Strand { number, large, from, to }));
        }
        strands
    }
}

/// A point in the raceway of an opening, by a share of what is drawn of it.
fn outside(view: &View<'_>, opening: &Opening<'_>, end: Point, share: f64) -> Point {
    let out = view.outward(opening.hub.place);
    at(end.x + out.x * share, end.y + out.y * share)
}

/// How conductors run between two openings in a view.
fn curve_between(view: &View<'_>, from: &Opening<'_>, to: &Opening<'_>, moved: f64) -> Curve {
    let facings = [from, to].map(|opening| view.facing(opening.hub.place));
    let (from, to) = (view.point(from, moved), view.point(to, moved));
    let bend = match facings {
        [Facing::Across, Facing::Upright] => at(to.x, from.y),
        [Facing::Upright, Facing::Across] => at(from.x, to.y),
        _ => middle(from, to),
    };
    Curve { from, bend, to }
}
