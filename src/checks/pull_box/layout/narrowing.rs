//! Narrowing: what the conditions of a [`Problem`] leave of the range of each variable.

use super::problem::{Distance, Gap, Problem, Separation};
use crate::checks::pulls::Axis;

/// The sides of a box in billionths of the unit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Box3 {
    pub width: i64,
    pub height: i64,
    pub depth: i64,
}

impl Box3 {
    pub const fn along(&self, axis: Axis) -> i64 {
        match axis {
            Axis::Width => self.width,
            Axis::Height => self.height,
            Axis::Depth => self.depth,
        }
    }
}

/// The range of each variable.
pub(super) type Ranges = Vec<(i64, i64)>;

/// A case of the search: the ranges, and which of two is the lesser for each separation, where that is settled.
#[derive(Clone)]
pub(super) struct Case {
    pub ranges: Ranges,
    pub orders: Vec<Order>,
    /// The variables whose conditions are to be looked at again.
    pub touched: Vec<usize>,
}

/// A search in one box.
pub(super) struct Search<'a> {
    pub problem: &'a Problem,
    pub sides: Box3,
    pub step: i64,
    /// The separations and distances that each variable is in.
    pub conditions: &'a [Conditions],
}

/// The separations and the distances that a variable is in, by their places in the problem.
#[derive(Clone, Debug, Default)]
pub(super) struct Conditions {
    separations: Vec<usize>,
    distances: Vec<usize>,
}

impl Conditions {
    /// Those of every variable of a problem.
    pub fn of(problem: &Problem) -> Vec<Self> {
        let mut of = vec![Self::default(); problem.variables.len()];
        for (place, Separation { one, other, .. }) in problem.separations.iter().enumerate() {
            of[*one].separations.push(place);
            of[*other].separations.push(place);
        }
        for (place, distance) in problem.distances.iter().enumerate() {
            for gap in &distance.gaps {
                match *gap {
                    Gap::FromOrigin { variable, .. } | Gap::FromEnd { variable, .. } => {
                        of[variable].distances.push(place);
                    }
                    Gap::Between { one, other, .. } => {
                        of[one].distances.push(place);
                        of[other].distances.push(place);
                    }
                }
            }
        }
        of
    }
}

impl Search<'_> {
    pub fn up(&self, length: i64) -> i64 {
        self.down(length.saturating_add(self.step - 1))
    }

    pub fn down(&self, length: i64) -> i64 {
        length.div_euclid(self.step).saturating_mul(self.step)
    }

    /// Narrows every range as far as follows; false when one becomes empty.
    pub fn narrow(&self, case: &mut Case, work: &mut u64) -> bool {
        let all = self.problem.separations.len() + 4 * self.problem.distances.len();
        *work = work.saturating_sub(1 + all as u64 / 4);
        let Case { ranges, orders, touched } = case;
        while let Some(variable) = touched.pop() {
            let Conditions { separations, distances } = &self.conditions[variable];
            *work = work.saturating_sub((separations.len() + 4 * distances.len()) as u64);
            for place in separations {
                let (separation, settled) = (&self.problem.separations[*place], &mut orders[*place]);
                if !self.narrow_by_separation(ranges, separation, settled, touched) {
                    return false;
                }
            }
            for place in distances {
                if !self.narrow_by_distance(ranges, &self.problem.distances[*place], touched) {
                    return false;
                }
            }
        }
        true
    }

    fn narrow_by_separation(
        &self,
        ranges: &mut Ranges,
        of: &Separation,
        settled: &mut Order,
        changed: &mut Vec<usize>,
    ) -> bool {
        let Separation { one, other, by, .. } = *of;
        if *settled == Order::Either {
            *settled = order(ranges, one, other, by);
        }
        match settled {
            Order::Neither => false,
            Order::OneFirst => self.put(ranges, one, other, by, changed),
            Order::OtherFirst => self.put(ranges, other, one, by, changed),
            Order::Either => true,
        }
    }

    /// Puts the lesser at least so much below the greater.
    pub fn put(
        &self,
        ranges: &mut Ranges,
        lesser: usize,
        greater: usize,
        by: i64,
        changed: &mut Vec<usize>,
    ) -> bool {
        let least = self.up(ranges[lesser].0.saturating_add(by));
        let most = self.down(ranges[greater].1.saturating_sub(by));
        raise(ranges, greater, least, changed) && lower(ranges, lesser, most, changed)
    }

    fn narrow_by_distance(&self, ranges: &mut Ranges, of: &Distance, changed: &mut Vec<usize>) -> bool {
        let asked = square(of.at_least);
        let longest: i128 = of.gaps.iter().map(|gap| square(self.longest(ranges, gap))).sum();
        if longest < asked {
            return false;
        }
        for gap in &of.gaps {
            let others = longest - square(self.longest(ranges, gap));
            if others >= asked {
                continue;
            }
            let needed = root_up(asked - others);
            let fits = match *gap {
                Gap::FromOrigin { variable, less } => {
                    raise(ranges, variable, self.up(needed.saturating_add(less)), changed)
                }
                Gap::FromEnd { variable, less } => {
                    let side = self.side(variable);
                    let most = self.down(side.saturating_sub(needed).saturating_sub(less));
                    lower(ranges, variable, most, changed)
                }
                Gap::Between { one, other, less } => {
                    match order(ranges, one, other, needed.saturating_add(less)) {
                        Order::Neither => false,
                        Order::OneFirst => self.put(ranges, one, other, needed.saturating_add(less), changed),
                        Order::OtherFirst => {
                            self.put(ranges, other, one, needed.saturating_add(less), changed)
                        }
                        Order::Either => true,
                    }
                }
            };
            if !fits {
                return false;
            }
        }
        true
    }

    fn side(&self, variable: usize) -> i64 {
        self.sides.along(self.problem.variables[variable].axis)
    }

    /// The most that a gap can be.
    fn longest(&self, ranges: &Ranges, gap: &Gap) -> i64 {
        let most = match *gap {
            Gap::FromOrigin { variable, less } => ranges[variable].1 - less,
            Gap::FromEnd { variable, less } => self.side(variable) - ranges[variable].0 - less,
            Gap::Between { one, other, less } => {
                (ranges[one].1 - ranges[other].0).max(ranges[other].1 - ranges[one].0) - less
            }
        };
        most.max(0)
    }

    /// The least that a gap can be.
    fn shortest(&self, ranges: &Ranges, gap: &Gap) -> i64 {
        let least = match *gap {
            Gap::FromOrigin { variable, less } => ranges[variable].0 - less,
            Gap::FromEnd { variable, less } => self.side(variable) - ranges[variable].1 - less,
            Gap::Between { one, other, less } => {
                (ranges[one].0 - ranges[other].1).max(ranges[other].0 - ranges[one].1) - less
            }
        };
        least.max(0)
    }

    pub fn holds(&self, ranges: &Ranges, distance: &Distance) -> bool {
        let shortest: i128 = distance.gaps.iter().map(|gap| square(self.shortest(ranges, gap))).sum();
        shortest >= square(distance.at_least)
    }
}

/// In which order two variables can differ by so much.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Order {
    OneFirst,
    OtherFirst,
    Either,
    Neither,
}

fn order(ranges: &Ranges, one: usize, other: usize, by: i64) -> Order {
    let first = ranges[one].0.saturating_add(by) <= ranges[other].1;
    let second = ranges[other].0.saturating_add(by) <= ranges[one].1;
    match (first, second) {
        (true, true) => Order::Either,
        (true, false) => Order::OneFirst,
        (false, true) => Order::OtherFirst,
        (false, false) => Order::Neither,
    }
}

fn touch(touched: &mut Vec<usize>, variable: usize) {
    if !touched.contains(&variable) {
        touched.push(variable);
    }
}

fn raise(ranges: &mut Ranges, variable: usize, least: i64, changed: &mut Vec<usize>) -> bool {
    let range = &mut ranges[variable];
    if least > range.0 {
        range.0 = least;
        touch(changed, variable);
    }
    range.0 <= range.1
}

fn lower(ranges: &mut Ranges, variable: usize, most: i64, changed: &mut Vec<usize>) -> bool {
    let range = &mut ranges[variable];
    if most < range.1 {
        range.1 = most;
        touch(changed, variable);
    }
    range.0 <= range.1
}

fn square(length: i64) -> i128 {
    i128::from(length) * i128::from(length)
}

/// The least whole number whose square is at least this.
fn root_up(number: i128) -> i64 {
    let root = number.isqrt();
    let up = if root * root < number { root + 1 } else { root };
    i64::try_from(up).unwrap_or(i64::MAX)
}
