//! The search against trying everything: for small boxes on a coarse grid, no smaller box has places.
//!
//! What counts as a place is written here a second time, directly from the geometry and without the machinery of the
//! search: every centre is tried in every grid point.

use super::problem::{Pair, Placeable, Problem, Spacing};
use super::propagation::Dimensions;
use super::smallest::{Smallest, smallest};
use crate::checks::pulls::Axis;
use crate::checks::pulls::Wall;
use proptest::prelude::*;

/// A centre as width, height and depth, whatever the wall.
type Point = [i64; 3];

fn coordinates(wall: Wall, along: i64, across: i64, sides: Dimensions) -> Point {
    match wall {
        Wall::Left => [0, along, across],
        Wall::Right => [sides.width, along, across],
        Wall::Bottom => [along, 0, across],
        Wall::Top => [along, sides.height, across],
        Wall::Back => [along, across, 0],
    }
}

fn square(length: i64) -> i64 {
    length * length
}

/// Whether two entries with centres in a box are as far apart as is required between their edges, or their centres.
fn far_enough(
    (one, first): (&Placeable, Point),
    (other, second): (&Placeable, Point),
    required: i64,
    centres: bool,
) -> bool {
    let gaps = [0, 1, 2].map(|axis| (first[axis] - second[axis]).abs());
    let centre_square: i64 = gaps.iter().map(|gap| square(*gap)).sum();
    if centres {
        return centre_square >= square(required);
    }
    let normal = |wall: Wall| wall.across() as usize;
    let edges = one.radius + other.radius;
    if one.wall == other.wall {
        return centre_square >= square(required + edges);
    }
    if one.wall.opposite() == Some(other.wall) {
        return gaps[normal(one.wall)] >= required;
    }
    let (away, level) = (normal(one.wall), normal(other.wall));
    let shared = 3 - away - level;
    let rims = square((gaps[away] - other.radius).max(0)) + square((gaps[level] - one.radius).max(0));
    rims + square((gaps[shared] - edges).max(0)) >= square(required)
}

struct Case<'a> {
    entries: &'a [Placeable],
    pairs: &'a [Pair],
    spacing: Spacing,
    sides: Dimensions,
}

impl Case<'_> {
    /// Whether a centre can stand beside those placed before it.
    fn fits(&self, placed: &[(i64, i64)], at: (i64, i64)) -> bool {
        let (index, own) = (placed.len(), &self.entries[placed.len()]);
        let point = coordinates(own.wall, at.0, at.1, self.sides);
        placed.iter().enumerate().all(|(earlier, there)| {
            let other = &self.entries[earlier];
            let second = coordinates(other.wall, there.0, there.1, self.sides);
            let pair = self.pairs.iter().find(|pair| pair.ends == [earlier, index]);
            let apart = pair.is_none_or(|pair| {
                far_enough((other, second), (own, point), pair.required, self.spacing.centres)
            });
            if own.wall != other.wall {
                return apart;
            }
            let clear = own.hole + other.hole + self.spacing.between;
            let open = square(at.0 - there.0) + square(at.1 - there.1) >= square(clear);
            // a row is as wide as its widest entry, and an entry without one stays off the lines of every row both ways
            let reach = |entry: &Placeable| {
                let of_row =
                    self.entries.iter().filter(|other| other.wall == entry.wall && other.row == entry.row);
                let widest = of_row.filter(|_| entry.row.is_some()).map(|entry| entry.hole).max();
                widest.unwrap_or(entry.hole)
            };
            let aside = own.hole + other.hole + self.spacing.between;
            let rows = match (own.row, other.row) {
                (None, None) => true,
                (one, two) if one == two => at.1 == there.1,
                (one, two) => {
                    let apart = (at.1 - there.1).abs() >= reach(own) + reach(other) + self.spacing.between;
                    apart && (one.is_some() == two.is_some() || (at.0 - there.0).abs() >= aside)
                }
            };
            apart && open && rows
        })
    }

    fn has_places(&self, placed: &mut Vec<(i64, i64)>) -> bool {
        let Some(next) = self.entries.get(placed.len()) else { return true };
        let [along, across] = next.wall.plane();
        let margin = next.hole + self.spacing.to_wall;
        for first in margin..=self.sides[along] - margin {
            for second in margin..=self.sides[across] - margin {
                if self.fits(placed, (first, second)) {
                    placed.push((first, second));
                    if self.has_places(placed) {
                        return true;
                    }
                    placed.pop();
                }
            }
        }
        false
    }
}

fn wall() -> impl Strategy<Value = Wall> {
    prop_oneof![
        3 => Just(Wall::Left),
        3 => Just(Wall::Bottom),
        2 => Just(Wall::Back),
        1 => Just(Wall::Right),
        1 => Just(Wall::Top),
    ]
}

fn entry() -> impl Strategy<Value = Placeable> {
    (wall(), 1..=2_u32, any::<bool>(), 1..=2_i64, 0..=1_i64).prop_map(
        |(wall, row, declared, radius, wider)| Placeable {
            wall,
            row: (wall != Wall::Back || declared).then_some(row),
            radius,
            hole: radius + wider,
        },
    )
}

#[derive(Clone, Debug)]
struct Generated {
    entries: Vec<Placeable>,
    pairs: Vec<Pair>,
    spacing: Spacing,
    least: (i64, i64),
    spare_depth: i64,
}

fn generated() -> impl Strategy<Value = Generated> {
    let entries = prop::collection::vec(entry(), 2..=4);
    let clearances = (0..=1_i64, 0..=1_i64, any::<bool>());
    (entries, prop::collection::vec(prop::option::weighted(0.5, 2..=7_i64), 6), clearances, 0..=3_i64)
        .prop_map(|(entries, required, (between, to_wall, centres), spare_depth)| {
            let count = entries.len();
            let all = (0..count).flat_map(|one| (one + 1..count).map(move |other| [one, other]));
            let mut least = (2, 2);
            let mut pairs = Vec::new();
            for (ends, required) in all.zip(required) {
                let Some(required) = required else { continue };
                let (one, other): (&Placeable, &Placeable) = (&entries[ends[0]], &entries[ends[1]]);
                // between opposite walls the rules themselves make the box long enough
                if one.wall.opposite() == Some(other.wall) {
                    match one.wall.across() {
                        Axis::Width => least.0 = least.0.max(required),
                        _ => least.1 = least.1.max(required),
                    }
                }
                pairs.push(Pair { ends, required });
            }
            Generated { entries, pairs, spacing: Spacing { between, to_wall, centres }, least, spare_depth }
        })
}

/// The depth that the rows of the side walls take, and some to spare.
fn depth(generated: &Generated) -> i64 {
    let of_wall = |wall: Wall| {
        let rows: std::collections::BTreeMap<u32, i64> = generated
            .entries
            .iter()
            .filter(|entry| entry.wall == wall)
            .filter_map(|entry| Some((entry.row?, entry.hole)))
            .fold(Default::default(), |mut rows, (row, reach)| {
                rows.entry(row).and_modify(|widest: &mut i64| *widest = reach.max(*widest)).or_insert(reach);
                rows
            });
        let gaps = (rows.len() as i64 - 1).max(0) * generated.spacing.between;
        rows.values().map(|radius| 2 * radius).sum::<i64>() + gaps + 2 * generated.spacing.to_wall
    };
    let sides = [Wall::Left, Wall::Right, Wall::Top, Wall::Bottom];
    sides.into_iter().map(of_wall).max().unwrap_or(1).max(1) + generated.spare_depth
}

fn search(generated: &Generated) -> Smallest {
    within(generated, 1_000_000_000).expect("a large box has places")
}

fn within(generated: &Generated, work: u64) -> Option<Smallest> {
    let problem = Problem::new(&generated.entries, &generated.pairs, generated.spacing);
    let least = Dimensions { width: generated.least.0, height: generated.least.1, depth: depth(generated) };
    let reach = 2 * generated.entries.iter().map(|entry| 2 * entry.hole + 3).sum::<i64>()
        + generated.pairs.iter().map(|pair| 2 * pair.required).sum::<i64>();
    smallest(&problem, least, reach, 1, work)
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, cases: 150, ..ProptestConfig::default() })]

    #[test]
    fn no_smaller_box_was_missed(generated in generated()) {
        prop_assert_eq!(missed(&generated), None);
    }
}

/// What is wrong with the box that is found: it has no places, or a smaller one has.
fn missed(generated: &Generated) -> Option<String> {
    let found = search(generated);
    let Generated { entries, pairs, spacing, least, .. } = generated;
    let case = |width, height| {
        let sides = Dimensions { width, height, depth: found.sides.depth };
        Case { entries, pairs, spacing: *spacing, sides }.has_places(&mut Vec::new())
    };
    let (width, height) = (found.sides.width, found.sides.height);
    if !found.proven || !case(width, height) {
        return Some(format!("the box that was found has no places, or is not proven: {found:?}"));
    }
    let sum = width + height;
    let smaller = (least.0..=sum - least.1).find(|other| {
        let below = if *other < width { sum - other } else { sum - other - 1 };
        below >= least.1 && case(*other, below)
    });
    smaller.map(|other| format!("{other} wide serves, {width} × {height} was found"))
}

/// Two alike entries of one row may change places only if their partners are alike too: in size, row and distance.
#[test]
fn entries_with_unequal_partners_are_tried_in_either_order() {
    let entry = |wall, row, radius| Placeable { wall, row: Some(row), radius, hole: radius };
    let mut tried = 0;
    for (radii, rows) in
        [[1, 2], [2, 1]].into_iter().flat_map(|radii| [[1, 1], [1, 2], [2, 1]].map(|rows| (radii, rows)))
    {
        for required in [[3, 3], [4, 4], [5, 5], [3, 6], [6, 3]] {
            for wall in [Wall::Bottom, Wall::Right] {
                let partner = |place: usize| entry(wall, rows[place], radii[place]);
                let generated = Generated {
                    entries: vec![entry(Wall::Left, 1, 1), entry(Wall::Left, 1, 1), partner(0), partner(1)],
                    pairs: vec![
                        Pair { ends: [0, 2], required: required[0] },
                        Pair { ends: [1, 3], required: required[1] },
                    ],
                    spacing: Spacing { between: 0, to_wall: 0, centres: false },
                    least: if wall == Wall::Right { (required[0].max(required[1]), 2) } else { (2, 2) },
                    spare_depth: 0,
                };
                assert_eq!(missed(&generated), None, "{generated:?}");
                tried += 1;
            }
        }
    }
    assert_eq!(tried, 60);
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, cases: 300, ..ProptestConfig::default() })]

    #[test]
    fn what_is_found_with_little_work_serves_and_is_called_smallest_only_if_it_is(generated in generated(), work in 8..2_000_u64) {
        let Some(found) = within(&generated, work) else { return Ok(()) };
        let Dimensions { width, height, depth } = found.sides;
        let problem = Problem::new(&generated.entries, &generated.pairs, generated.spacing);
        let placed: Vec<(i64, i64)> =
            problem.of_entry.iter().map(|[along, across]| (found.values[*along], found.values[*across])).collect();
        let case = Case { entries: &generated.entries, pairs: &generated.pairs, spacing: generated.spacing, sides: found.sides };
        for count in 0..placed.len() {
            prop_assert!(case.fits(&placed[..count], placed[count]));
        }
        let best = search(&generated).sides;
        prop_assert!((width + height, width) >= (best.width + best.height, best.width));
        if found.proven {
            prop_assert_eq!(found.sides, Dimensions { depth, ..best });
        }
    }
}

#[test]
fn the_example_of_a_u_pull_takes_the_distance_and_both_diameters() {
    let entry = |row| Placeable { wall: Wall::Left, row: Some(row), radius: 3, hole: 3 };
    let spacing = Spacing { between: 0, to_wall: 0, centres: false };
    let pairs = [Pair { ends: [0, 1], required: 36 }];
    let problem = Problem::new(&[entry(1), entry(1)], &pairs, spacing);
    let found = smallest(&problem, Dimensions { width: 42, height: 6, depth: 6 }, 200, 1, 100_000)
        .expect("a box serves");
    assert_eq!((found.sides.width, found.sides.height, found.proven), (42, 48, true));
}
