//! Circles laid into a circle, as conductors lie in a raceway.
//!
//! The largest is laid first. Each next one goes where it touches two of what is there already, the wall or those before
//! it, and of these places to the best: the lowest, as weight would have it. Where that leaves some without a place, those
//! nearest the wall are tried, which packs more densely.
//!
//! Only sums, products and roots are computed, so every machine finds the same places.

use super::sheet::{Point, at};

/// How far circles may reach into one another, as a share of the circle that they are in: rounding, no more.
const TOLERANCE: f64 = 1e-7;

/// What makes one place better than another.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Preference {
    /// The lowest.
    Low,
    /// The nearest to the wall.
    Outer,
}

impl Preference {
    const fn worth(self, place: Point) -> f64 {
        match self {
            Self::Low => place.y,
            Self::Outer => place.x * place.x + place.y * place.y,
        }
    }
}

/// Where each of several circles lies in a circle around the origin, downwards counted up; `None` for one that found no
/// place. The order of the answer is that of the question.
///
/// The work grows with the square of the number, so the caller bounds that.
pub(super) fn pack(inside: f64, radii: &[f64]) -> Vec<Option<Point>> {
    let found = |places: &[Option<Point>]| places.iter().flatten().count();
    let low = Packing::of(inside, radii, Preference::Low);
    if found(&low) == radii.len() {
        return low;
    }
    let outer = Packing::of(inside, radii, Preference::Outer);
    if found(&outer) > found(&low) { outer } else { low }
}

/// One circle that has its place, with those near enough to leave no room between for the next.
struct Laid {
    centre: Point,
    radius: f64,
    near: Vec<usize>,
}

struct Packing {
    inside: f64,
    preference: Preference,
    laid: Vec<Laid>,
}

impl Packing {
    fn of(inside: f64, radii: &[f64], preference: Preference) -> Vec<Option<Point>> {
        let mut packing = Self { inside, preference, laid: Vec::with_capacity(radii.len()) };
        let mut order: Vec<usize> = (0..radii.len()).collect();
        order.sort_by(|one, other| radius(radii, *other).total_cmp(&radius(radii, *one)));
        let mut places = vec![None; radii.len()];
        let mut refused = f64::INFINITY;
        for index in order {
            let radius = radius(radii, index);
            // where one found no place, another like it finds none
            if radius >= refused {
                continue;
            }
            let best = packing.best(radius);
            match best {
                Some(centre) => packing.lay(centre, radius),
                None => refused = radius,
            }
            if let Some(place) = places.get_mut(index) {
                *place = best;
            }
        }
        places
    }

    /// The best place for a circle that is not larger than any before it.
    fn best(&self, radius: f64) -> Option<Point> {
        let reach = self.inside - radius;
        if reach < -TOLERANCE * self.inside {
            return None;
        }
        let reach = reach.max(0.0);
        let mut best: Option<Point> = None;
        let everyone: Vec<usize> = (0..self.laid.len()).collect();
        let mut consider = |place: Point, among: &[usize]| {
            let worth = |place| self.preference.worth(place);
            let better = best.is_none_or(|best| worth(place) > worth(best) + TOLERANCE * self.inside);
            if better && self.is_free(place, radius, among) {
                best = Some(place);
            }
        };
        consider(at(0.0, reach), &everyone);
        for (index, one) in self.laid.iter().enumerate() {
            let touching = (one.centre, one.radius + radius);
            // whatever a circle here could run into is near the circle that it touches
            for place in meeting((at(0.0, 0.0), reach), touching) {
                consider(place, &one.near);
            }
            for other in one.near.iter().filter(|other| **other > index) {
                let Some(other) = self.laid.get(*other) else { continue };
                let fewer = if one.near.len() < other.near.len() { &one.near } else { &other.near };
                for place in meeting(touching, (other.centre, other.radius + radius)) {
                    consider(place, fewer);
                }
            }
        }
        best
    }

    /// Whether a circle lies inside and runs into none of some others.
    fn is_free(&self, place: Point, radius: f64, among: &[usize]) -> bool {
        let rounding = TOLERANCE * self.inside;
        distance(place, at(0.0, 0.0)) <= self.inside - radius + rounding
            && among
                .iter()
                .filter_map(|other| self.laid.get(*other))
                .all(|other| distance(place, other.centre) >= other.radius + radius - rounding)
    }

    fn lay(&mut self, centre: Point, radius: f64) {
        let place = self.laid.len();
        let mut near = Vec::new();
        for (index, other) in self.laid.iter_mut().enumerate() {
            // the next circle is not larger than this one: it touches both only where they are this close
            if distance(centre, other.centre) <= other.radius + 3.0 * radius + TOLERANCE * self.inside {
                other.near.push(place);
                near.push(index);
            }
        }
        self.laid.push(Laid { centre, radius, near });
    }
}

fn radius(radii: &[f64], index: usize) -> f64 {
    radii.get(index).copied().unwrap_or_default()
}

fn distance(one: Point, other: Point) -> f64 {
    let (x, y) = (one.x - other.x, one.y - other.y);
    (x * x + y * y).sqrt()
}

/// Where two circles meet; nowhere, or twice, which may be the same point.
fn meeting(
    (centre, radius): (Point, f64),
    (other, other_radius): (Point, f64),
) -> impl Iterator<Item = Point> {
    let apart = distance(centre, other);
    let along = (apart * apart + radius * radius - other_radius * other_radius) / (2.0 * apart);
    let square = radius * radius - along * along;
    // circles that touch in one point may just miss it by rounding
    let meet = apart > 0.0 && square >= -TOLERANCE * radius * radius;
    let across = square.max(0.0).sqrt();
    let (x, y) = ((other.x - centre.x) / apart, (other.y - centre.y) / apart);
    let sides = if meet { [Some(across), Some(-across)] } else { [None, None] };
    let foot = at(centre.x + x * along, centre.y + y * along);
    sides.into_iter().flatten().map(move |across| at(foot.x - y * across, foot.y + x * across))
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    /// Holds places to what every packing promises: inside, and nothing in anything else.
    fn hold(inside: f64, radii: &[f64], places: &[Option<Point>]) {
        assert_eq!(radii.len(), places.len());
        let laid: Vec<(Point, f64)> =
            places.iter().zip(radii).filter_map(|(place, radius)| Some(((*place)?, *radius))).collect();
        let rounding = 2.0 * TOLERANCE * inside;
        for (index, (centre, radius)) in laid.iter().enumerate() {
            assert!(distance(*centre, at(0.0, 0.0)) <= inside - radius + rounding, "{centre:?} is outside");
            for (other, other_radius) in &laid[..index] {
                assert!(
                    distance(*centre, *other) >= radius + other_radius - rounding,
                    "{centre:?} {other:?}"
                );
            }
        }
    }

    fn alike(number: usize, share: f64) -> Vec<f64> {
        vec![(share / number as f64).sqrt(); number]
    }

    #[test]
    fn one_lies_at_the_bottom_and_two_that_just_fit_lie_above_one_another() {
        assert_eq!(pack(1.0, &[0.25]), [Some(at(0.0, 0.75))]);
        assert_eq!(pack(1.0, &[]), []);
        assert_eq!(pack(1.0, &[1.0]), [Some(at(0.0, 0.0))]);
        assert_eq!(pack(1.0, &[1.01, 0.5]), [None, Some(at(0.0, 0.5))]);
        let places = pack(1.0, &[0.4, 0.6]);
        hold(1.0, &[0.4, 0.6], &places);
        assert!(places.iter().flatten().count() == 2, "{places:?}");
    }

    /// The densest packings that are known to be perfect for a few circles alike, with nothing to spare.
    #[test]
    fn few_alike_that_just_fit_are_all_laid() {
        for (number, ratio) in [(2, 2.0), (3, 2.154_700_54), (4, 2.414_213_57), (7, 3.0)] {
            let radii = vec![1.0 / ratio - 1e-8; number];
            let places = pack(1.0, &radii);
            hold(1.0, &radii, &places);
            assert_eq!(places.iter().flatten().count(), number);
        }
    }

    /// The fullest that the code permits: three and more at 40 %, in a nipple at 60 %.
    #[test]
    fn whatever_may_be_filled_of_conductors_alike_is_laid() {
        for number in (3..=60).chain([84, 150, 250]) {
            for share in [0.40, 0.60] {
                let radii = alike(number, share);
                let places = pack(1.0, &radii);
                hold(1.0, &radii, &places);
                assert_eq!(places.iter().flatten().count(), number, "{number} at {share}");
            }
        }
    }

    #[test]
    fn too_many_leave_some_without_a_place() {
        let radii = alike(100, 1.2);
        let places = pack(1.0, &radii);
        hold(1.0, &radii, &places);
        let laid = places.iter().flatten().count();
        assert!((55..83).contains(&laid), "{laid}");
    }

    proptest! {
        #[test]
        fn nothing_overlaps_and_nothing_is_outside(
            inside in 0.1_f64..200.0,
            radii in prop::collection::vec(0.001_f64..1.2, 0..60),
        ) {
            let radii: Vec<f64> = radii.into_iter().map(|radius| radius * inside).collect();
            hold(inside, &radii, &pack(inside, &radii));
        }

        #[test]
        fn conductors_of_any_sizes_that_fill_forty_hundredths_are_all_laid(
            radii in prop::collection::vec(0.05_f64..1.0, 3..40),
        ) {
            let filled: f64 = radii.iter().map(|radius| radius * radius).sum();
            let radii: Vec<f64> = radii.into_iter().map(|radius| radius * (0.40 / filled).sqrt()).collect();
            let places = pack(1.0, &radii);
            hold(1.0, &radii, &places);
            prop_assert_eq!(places.iter().flatten().count(), radii.len());
        }
    }
}
