//! The smallest box in which a [`Problem`] has a solution, found by bisection.
//!
//! A box with a solution keeps it when a side grows, so the feasible boxes are all those above a staircase of width and
//! height. Its corner with the least sum is found by halving: between two widths with known heights, no box has less than
//! the lesser width and the lesser height.

use super::problem::Problem;
use super::propagation::{Constraints, Dimensions};
use super::solver::{Solution, solve};

/// A feasible box.
#[derive(Clone, Debug)]
pub(super) struct Smallest {
    pub sides: Dimensions,
    /// The value of each variable.
    pub values: Vec<i64>,
    /// Whether every smaller box was shown to be infeasible.
    pub proven: bool,
}

/// A search over boxes of one depth.
struct Boxes<'a> {
    problem: &'a Problem,
    constraints: &'a [Constraints],
    depth: i64,
    step: i64,
    work: u64,
    most_at_once: u64,
    proven: bool,
    best: Option<(Dimensions, Vec<i64>)>,
}

/// Of all boxes of the least depth that has places, on multiples of `step`, the one with the least sum of width and height, then the
/// least width. `least` has the lower bounds of the sides, `reach` a growth with which every box is feasible. `work`
/// is how many constraints may be looked at in all; a box may take an eighth of it. `None` when that ends before any box
/// is found.
pub(super) fn smallest(
    problem: &Problem,
    least: Dimensions,
    reach: i64,
    step: i64,
    work: u64,
) -> Option<Smallest> {
    let up = |length: i64| length.saturating_add(step - 1).div_euclid(step).saturating_mul(step);
    let (width, height) = (up(least.width), up(least.height));
    let (widest, highest) = (up(width.saturating_add(reach)), up(height.saturating_add(reach)));
    let constraints = Constraints::of(problem);
    let most_at_once = work / 8;
    let mut boxes = Boxes {
        problem,
        constraints: &constraints,
        depth: up(least.depth),
        step,
        work,
        most_at_once,
        proven: true,
        best: None,
    };
    if !boxes.is_feasible(width, height) {
        boxes.deepen(Dimensions { width: widest, height: highest, depth: boxes.depth });
        boxes.most_at_once = most_at_once / 2;
        boxes.roughly((width, widest), (height, highest));
        (boxes.most_at_once, boxes.proven) = (most_at_once, true);
        boxes.search((width, widest), (height, highest));
    }
    let proven = boxes.proven;
    boxes.best.map(|(sides, values)| Smallest { sides, values, proven })
}

impl Boxes<'_> {
    fn solve(&mut self, sides: Dimensions) -> Solution {
        let allowed = self.work.min(self.most_at_once);
        let mut left = allowed;
        let found = solve(self.problem, self.constraints, sides, self.step, &mut left);
        self.work -= allowed - left;
        found
    }

    /// Rows whose centres have to be multiples of the step may take more of the depth than they do without a grid: as long as the
    /// widest box has no places, it is not deep enough. Each variable is rounded once.
    fn deepen(&mut self, mut widest: Dimensions) {
        for _ in 0..=self.problem.variables.len() {
            if self.solve(widest) != Solution::Infeasible {
                break;
            }
            widest.depth = widest.depth.saturating_add(self.step);
            self.depth = widest.depth;
        }
    }

    /// Whether a box is feasible; the best one so far is kept.
    fn is_feasible(&mut self, width: i64, height: i64) -> bool {
        let sides = Dimensions { width, height, depth: self.depth };
        match self.solve(sides) {
            Solution::Feasible(values) => {
                if self
                    .best
                    .as_ref()
                    .is_none_or(|(best, _)| rank(width, height) < rank(best.width, best.height))
                {
                    self.best = Some((sides, values));
                }
                true
            }
            Solution::Infeasible => false,
            Solution::Unfinished => {
                self.proven = false;
                false
            }
        }
    }

    /// The least height from `low` to `high` that is feasible with a width; `high` is known or taken to be.
    fn least_height(&mut self, width: i64, heights: (i64, i64)) -> i64 {
        self.bisect(heights, |boxes, height| boxes.is_feasible(width, height))
    }

    /// The least length of a range that satisfies a condition, which holds from there on.
    fn bisect(&mut self, (mut low, mut high): (i64, i64), holds: impl Fn(&mut Self, i64) -> bool) -> i64 {
        while low < high {
            let middle = self.halfway(low, high);
            if holds(self, middle) { high = middle } else { low = middle + self.step }
        }
        high
    }

    fn halfway(&self, low: i64, high: i64) -> i64 {
        (low + (high - low) / 2).div_euclid(self.step) * self.step
    }

    /// Looks for a good box before the best: both sides grow alike until one is feasible, then shrink again by halves.
    fn roughly(&mut self, widths: (i64, i64), heights: (i64, i64)) {
        let (mut short, mut growth) = (0, self.step.saturating_mul(16));
        let most = (widths.1 - widths.0).max(heights.1 - heights.0).max(self.step);
        while growth < most && !self.is_feasible(widths.0 + growth, heights.0 + growth) {
            (short, growth) = (growth, growth.saturating_mul(2));
        }
        if growth >= most && !self.is_feasible(widths.1, heights.1) {
            return;
        }
        while growth.saturating_sub(short) > self.step {
            let middle = self.halfway(short, growth);
            if self.is_feasible(widths.0 + middle, heights.0 + middle) {
                growth = middle
            } else {
                short = middle
            }
        }
    }

    fn search(&mut self, widths: (i64, i64), heights: (i64, i64)) {
        let narrowest = self.bisect(widths, |boxes, width| boxes.is_feasible(width, heights.1));
        let at_narrowest = self.least_height(narrowest, heights);
        let at_widest = self.least_height(widths.1, (heights.0, at_narrowest));
        let mut open = vec![((narrowest, at_narrowest), (widths.1, at_widest))];
        while let Some(((from, high), (to, low))) = open.pop() {
            let next = from.saturating_add(self.step);
            let hopeless =
                self.best.as_ref().is_some_and(|(best, _)| rank(next, low) >= rank(best.width, best.height));
            if next >= to || hopeless {
                continue;
            }
            let middle = self.halfway(from, to).max(next);
            let at_middle = self.least_height(middle, (low, high));
            open.push(((middle, at_middle), (to, low)));
            open.push(((from, high), (middle, at_middle)));
        }
    }
}

/// Smaller boxes first: by the sum of width and height, then by width.
fn rank(width: i64, height: i64) -> (i64, i64) {
    (width.saturating_add(height), width)
}
