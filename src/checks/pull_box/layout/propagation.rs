//! Constraint propagation: what the constraints of a [`Problem`] leave of the domain of each variable.

use super::problem::{Distance, Gap, Problem, Separation};
use crate::checks::pulls::PerAxis;

/// The sides of a box in billionths of the unit.
pub(super) type Dimensions = PerAxis<i64>;

/// The domain of each variable, from its least value to its greatest.
pub(super) type Domains = Vec<(i64, i64)>;

/// A node of the search tree: the domains, and which of two variables is the lesser for each separation, where settled.
#[derive(Clone)]
pub(super) struct Node {
    pub domains: Domains,
    pub orders: Vec<Order>,
    /// The variables whose constraints must be propagated again.
    pub queue: Vec<usize>,
}

/// A search in one box.
pub(super) struct Search<'a> {
    pub problem: &'a Problem,
    pub sides: Dimensions,
    pub step: i64,
    /// The constraints of each variable.
    pub constraints: &'a [Constraints],
}

/// The separations and the distances that a variable is in, by their indices in the problem.
#[derive(Clone, Debug, Default)]
pub(super) struct Constraints {
    separations: Vec<usize>,
    distances: Vec<usize>,
}

impl Constraints {
    /// Those of every variable of a problem.
    pub fn of(problem: &Problem) -> Vec<Self> {
        let mut of = vec![Self::default(); problem.variables.len()];
        for (index, Separation { one, other, .. }) in problem.separations.iter().enumerate() {
            of[*one].separations.push(index);
            of[*other].separations.push(index);
        }
        for (index, distance) in problem.distances.iter().enumerate() {
            for gap in &distance.gaps {
                match *gap {
                    Gap::FromOrigin { variable, .. } | Gap::FromEnd { variable, .. } => {
                        of[variable].distances.push(index);
                    }
                    Gap::Between { one, other, .. } => {
                        of[one].distances.push(index);
                        of[other].distances.push(index);
                    }
                }
            }
        }
        of
    }
}

impl Search<'_> {
    pub fn round_up(&self, length: i64) -> i64 {
        self.round_down(length.saturating_add(self.step - 1))
    }

    pub fn round_down(&self, length: i64) -> i64 {
        length.div_euclid(self.step).saturating_mul(self.step)
    }

    /// Narrows every domain as far as the constraints demand; false when one becomes empty.
    pub fn propagate(&self, node: &mut Node, work: &mut u64) -> bool {
        let all = self.problem.separations.len() + 4 * self.problem.distances.len();
        *work = work.saturating_sub(1 + all as u64 / 4);
        let Node { domains, orders, queue } = node;
        while let Some(variable) = queue.pop() {
            let Constraints { separations, distances } = &self.constraints[variable];
            *work = work.saturating_sub((separations.len() + 4 * distances.len()) as u64);
            for index in separations {
                let (separation, settled) = (&self.problem.separations[*index], &mut orders[*index]);
                if !self.propagate_separation(domains, separation, settled, queue) {
                    return false;
                }
            }
            for index in distances {
                if !self.propagate_distance(domains, &self.problem.distances[*index], queue) {
                    return false;
                }
            }
        }
        true
    }

    fn propagate_separation(
        &self,
        domains: &mut Domains,
        of: &Separation,
        settled: &mut Order,
        queue: &mut Vec<usize>,
    ) -> bool {
        let Separation { one, other, by, .. } = *of;
        if *settled == Order::Either {
            *settled = order(domains, one, other, by);
        }
        self.put_in_order(domains, *settled, [one, other], by, queue)
    }

    /// Puts one variable at least so much below the other, where their order is settled; false where there is none.
    fn put_in_order(
        &self,
        domains: &mut Domains,
        order: Order,
        [one, other]: [usize; 2],
        by: i64,
        queue: &mut Vec<usize>,
    ) -> bool {
        match order {
            Order::Neither => false,
            Order::OneFirst => self.put_below(domains, one, other, by, queue),
            Order::OtherFirst => self.put_below(domains, other, one, by, queue),
            Order::Either => true,
        }
    }

    /// Puts the lesser at least so much below the greater.
    pub fn put_below(
        &self,
        domains: &mut Domains,
        lesser: usize,
        greater: usize,
        by: i64,
        queue: &mut Vec<usize>,
    ) -> bool {
        let least = self.round_up(domains[lesser].0.saturating_add(by));
        let most = self.round_down(domains[greater].1.saturating_sub(by));
        raise(domains, greater, least, queue) && lower(domains, lesser, most, queue)
    }

    fn propagate_distance(&self, domains: &mut Domains, of: &Distance, queue: &mut Vec<usize>) -> bool {
        let required = square(of.at_least);
        let longest: i128 = of.gaps.iter().map(|gap| square(self.longest(domains, gap))).sum();
        if longest < required {
            return false;
        }
        for gap in &of.gaps {
            let others = longest - square(self.longest(domains, gap));
            if others >= required {
                continue;
            }
            let needed = root_up(required - others);
            let fits = match *gap {
                Gap::FromOrigin { variable, less } => {
                    raise(domains, variable, self.round_up(needed.saturating_add(less)), queue)
                }
                Gap::FromEnd { variable, less } => {
                    let side = self.side(variable);
                    let most = self.round_down(side.saturating_sub(needed).saturating_sub(less));
                    lower(domains, variable, most, queue)
                }
                Gap::Between { one, other, less } => {
                    let by = needed.saturating_add(less);
                    self.put_in_order(domains, order(domains, one, other, by), [one, other], by, queue)
                }
            };
            if !fits {
                return false;
            }
        }
        true
    }

    fn side(&self, variable: usize) -> i64 {
        self.sides[self.problem.variables[variable].axis]
    }

    /// The most that a gap can be.
    fn longest(&self, domains: &Domains, gap: &Gap) -> i64 {
        let most = match *gap {
            Gap::FromOrigin { variable, less } => domains[variable].1 - less,
            Gap::FromEnd { variable, less } => self.side(variable) - domains[variable].0 - less,
            Gap::Between { one, other, less } => {
                (domains[one].1 - domains[other].0).max(domains[other].1 - domains[one].0) - less
            }
        };
        most.max(0)
    }

    /// The least that a gap can be.
    fn shortest(&self, domains: &Domains, gap: &Gap) -> i64 {
        let least = match *gap {
            Gap::FromOrigin { variable, less } => domains[variable].0 - less,
            Gap::FromEnd { variable, less } => self.side(variable) - domains[variable].1 - less,
            Gap::Between { one, other, less } => {
                (domains[one].0 - domains[other].1).max(domains[other].0 - domains[one].1) - less
            }
        };
        least.max(0)
    }

    pub fn holds(&self, domains: &Domains, distance: &Distance) -> bool {
        let shortest: i128 = distance.gaps.iter().map(|gap| square(self.shortest(domains, gap))).sum();
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

fn order(domains: &Domains, one: usize, other: usize, by: i64) -> Order {
    let first = domains[one].0.saturating_add(by) <= domains[other].1;
    let second = domains[other].0.saturating_add(by) <= domains[one].1;
    match (first, second) {
        (true, true) => Order::Either,
        (true, false) => Order::OneFirst,
        (false, true) => Order::OtherFirst,
        (false, false) => Order::Neither,
    }
}

fn enqueue(queue: &mut Vec<usize>, variable: usize) {
    if !queue.contains(&variable) {
        queue.push(variable);
    }
}

fn raise(domains: &mut Domains, variable: usize, least: i64, queue: &mut Vec<usize>) -> bool {
    let range = &mut domains[variable];
    if least > range.0 {
        range.0 = least;
        enqueue(queue, variable);
    }
    range.0 <= range.1
}

fn lower(domains: &mut Domains, variable: usize, most: i64, queue: &mut Vec<usize>) -> bool {
    let range = &mut domains[variable];
    if most < range.1 {
        range.1 = most;
        enqueue(queue, variable);
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
