//! The inside of a raceway seen end on, with what lies in it.

use super::head::MARGIN;
use super::packing::pack;
use super::sheet::{Look, Point, Sheet, at};
use std::f64::consts::PI;

/// The most conductors that are laid one by one.
pub(super) const MOST_SINGLE: usize = 250;
/// The most that are drawn beside the raceway, and the most rows that they take.
const MOST_BESIDE: usize = 60;
const MOST_ROWS: usize = 2;
/// The least radius on paper of a circle that its number still fits in.
const NUMBERED: f64 = 13.0;

/// Conductors of one line of the tally.
pub(super) struct Bundle {
    pub text: String,
    pub count: usize,
    /// The outside radius of one, in the unit of the request.
    pub radius: f64,
}

/// What is laid into a raceway, and what found no place.
pub(super) struct CrossSection<'b> {
    bundles: &'b [Bundle],
    /// The inside radius; zero where no raceway is known.
    inside: f64,
    /// Pixels for one inch or millimetre.
    scale: f64,
    /// For each bundle, the centres of its conductors.
    places: Vec<Vec<Option<Point>>>,
}

impl<'b> CrossSection<'b> {
    /// Lays conductors into a raceway that may be `width` pixels wide on paper.
    pub fn new(bundles: &'b [Bundle], inside: f64, width: f64) -> Self {
        let widest = bundles.iter().map(|bundle| bundle.radius).fold(inside, f64::max);
        let scale = width / (2.0 * if widest > 0.0 { widest } else { 1.0 });
        let mut section = Self { bundles, inside, scale, places: Vec::with_capacity(bundles.len()) };
        if !section.is_crowded() {
            let all = bundles.iter().flat_map(|bundle| std::iter::repeat_n(bundle.radius, bundle.count));
            let mut found = pack(inside, &all.collect::<Vec<f64>>()).into_iter();
            section.places = bundles.iter().map(|one| found.by_ref().take(one.count).collect()).collect();
        }
        section
    }

    /// How many conductors there are.
    pub fn number(&self) -> usize {
        self.bundles.iter().map(|bundle| bundle.count).sum()
    }

    /// Whether there are too many to draw one by one.
    pub fn is_crowded(&self) -> bool {
        self.number() > MOST_SINGLE
    }

    /// How many found no place.
    pub fn beside(&self) -> usize {
        self.places.iter().flatten().filter(|place| place.is_none()).count()
    }

    /// The inside radius on paper.
    pub fn radius(&self) -> f64 {
        self.inside * self.scale
    }

    /// Draws the raceway and what lies in it.
    pub fn draw(&self, sheet: &mut Sheet<'_>, centre: Point, wall: Look) {
        if self.is_crowded() {
            self.draw_areas(sheet, centre);
        } else {
            self.draw_singly(sheet, centre);
        }
        // half of the stroke lies on either side of the edge: the inside keeps its width
        sheet.circle(centre, self.radius() + 1.0, wall);
    }

    fn draw_singly(&self, sheet: &mut Sheet<'_>, centre: Point) {
        let on_paper = |place: &Point| at(centre.x + place.x * self.scale, centre.y + place.y * self.scale);
        for (line, (bundle, places)) in self.bundles.iter().zip(&self.places).enumerate() {
            let radius = bundle.radius * self.scale;
            sheet.group(&bundle.text, |sheet| {
                for place in places.iter().flatten().map(on_paper) {
                    sheet.circle(place, radius, Look::Filling(line));
                    if self.is_numbered(radius) {
                        sheet.number(place, line + 1);
                    }
                }
            });
        }
    }

    /// Whether a circle of some radius on paper bears the number of its line, which tells nothing where there is one only.
    fn is_numbered(&self, radius: f64) -> bool {
        radius >= NUMBERED && self.bundles.len() > 1
    }

    /// Draws each line as the area that it takes, one upon the other, as if it were poured in.
    fn draw_areas(&self, sheet: &mut Sheet<'_>, centre: Point) {
        let radius = self.radius();
        let whole = self.inside * self.inside;
        let (mut filled, mut level) = (0.0, radius);
        for (line, bundle) in self.bundles.iter().enumerate() {
            filled += bundle.count as f64 * bundle.radius * bundle.radius;
            let next = level_of(filled / whole) * radius;
            if next < level {
                sheet.group(&bundle.text, |sheet| {
                    sheet.path(&band(centre, radius, level, next), Look::Filling(line));
                });
            }
            level = next;
        }
    }

    /// Draws those that found no place in rows from some height on; returns where the rows end, and how many more
    /// there are.
    pub fn draw_beside(&self, sheet: &mut Sheet<'_>, top: f64, look: impl Fn(usize) -> Look) -> (f64, usize) {
        let lines = self.bundles.iter().zip(&self.places).enumerate();
        let waiting = lines.flat_map(|(line, (bundle, places))| {
            let waiting = places.iter().filter(|place| place.is_none());
            waiting.map(move |_| (line, bundle.radius * self.scale))
        });
        let (mut x, mut y, mut high, mut row, mut drawn) = (MARGIN, top, 0.0_f64, 1, 0);
        for (line, radius) in waiting.take(MOST_BESIDE) {
            if x + 2.0 * radius > sheet.width() - MARGIN && x > MARGIN {
                row += 1;
                if row > MOST_ROWS {
                    break;
                }
                (x, y, high) = (MARGIN, y + high + 6.0, 0.0);
            }
            let centre = at(x + radius, y + radius);
            sheet.circle(centre, radius, look(line));
            if self.is_numbered(radius) {
                sheet.number(centre, line + 1);
            }
            (x, high, drawn) = (x + 2.0 * radius + 6.0, high.max(2.0 * radius), drawn + 1);
        }
        (y + high, self.beside() - drawn)
    }
}

/// Up to which height a circle of radius 1 is filled by a share of its area, from its centre and downwards.
fn level_of(share: f64) -> f64 {
    let below = |level: f64| level.acos() - level * (1.0 - level * level).max(0.0).sqrt();
    let (mut full, mut empty) = (-1.0, 1.0);
    for _ in 0..50 {
        let middle = (full + empty) / 2.0;
        if below(middle) < share * PI {
            empty = middle;
        } else {
            full = middle;
        }
    }
    (full + empty) / 2.0
}

/// The outline of what lies between two levels of a circle.
fn band(centre: Point, radius: f64, from: f64, to: f64) -> Vec<Point> {
    const STEPS: usize = 40;
    let half = |level: f64| (radius * radius - level * level).max(0.0).sqrt();
    let level = |step: usize| from + (to - from) * step as f64 / STEPS as f64;
    let right = (0..=STEPS).map(level).map(|level| at(centre.x + half(level), centre.y + level));
    let left = (0..=STEPS).rev().map(level).map(|level| at(centre.x - half(level), centre.y + level));
    right.chain(left).chain([at(centre.x + half(from), centre.y + from)]).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_level_parts_a_circle_in_the_share_asked_for() {
        for (share, level) in [(0.5, 0.0), (0.0, 1.0), (1.0, -1.0), (2.0, -1.0), (0.195_501_1, 0.5)] {
            assert!((level_of(share) - level).abs() < 1e-6, "{share}");
        }
    }

    #[test]
    fn every_conductor_is_laid_or_beside_or_part_of_an_area() {
        for (count, crowded) in [(1, false), (40, false), (MOST_SINGLE, false), (MOST_SINGLE + 1, true)] {
            let bundles = [Bundle { text: String::new(), count, radius: 0.1 }];
            let section = CrossSection::new(&bundles, 1.0, 280.0);
            assert_eq!((section.number(), section.is_crowded()), (count, crowded));
            let laid = section.places.iter().flatten().flatten().count();
            assert_eq!(laid + section.beside(), if crowded { 0 } else { count });
        }
    }
}
