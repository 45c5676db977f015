//! The smallest box in which a [`Problem`] has a solution.
//!
//! A box with a solution keeps it when a side grows, so the boxes that serve are all those above a staircase of width
//! and height. Its corner with the least sum is found by halving: between two widths with known heights, no box has
//! less than the lesser width and the lesser height.

use super::narrowing::{Box3, Conditions};
use super::problem::Problem;
use super::solver::{Found, solve};

/// A box with places for everything.
#[derive(Clone, Debug)]
pub(super) struct Smallest {
    pub sides: Box3,
    pub places: Vec<i64>,
    /// Whether every smaller box was shown to have none.
    pub proven: bool,
}

/// A search over boxes of one depth.
struct Boxes<'a> {
    problem: &'a Problem,
    conditions: &'a [Conditions],
    depth: i64,
    step: i64,
    work: u64,
    most_at_once: u64,
    proven: bool,
    best: Option<(Box3, Vec<i64>)>,
}

/// Of all boxes of the least depth, on multiples of `step`, the one with the least sum of width and height, then the
/// least width. `least` has sides below which no box is to be looked for, `reach` a growth with which everything has a
/// place. `work` is how many conditions may be looked at in all; a box may take an eighth of it. `None` when that ends before
/// any box is found.
pub(super) fn smallest(problem: &Problem, least: Box3, reach: i64, step: i64, work: u64) -> Option<Smallest> {
    let up = |length: i64| length.saturating_add(step - 1).div_euclid(step).saturating_mul(step);
    let (width, height) = (up(least.width), up(least.height));
    let (widest, highest) = (up(width.saturating_add(reach)), up(height.saturating_add(reach)));
    let conditions = Conditions::of(problem);
    let most_at_once = work / 8;
    let mut boxes = Boxes {
        problem,
        conditions: &conditions,
        depth: up(least.depth),
        step,
        work,
        most_at_once,
        proven: true,
        best: None,
    };
    if !boxes.serves(width, height) {
        boxes.most_at_once = most_at_once / 2;
        boxes.roughly((width, widest), (height, highest));
        (boxes.most_at_once, boxes.proven) = (most_at_once, true);
        boxes.search((width, widest), (height, highest));
    }
    let proven = boxes.proven;
    boxes.best.map(|(sides, places)| Smallest { sides, places, proven })
}

impl Boxes<'_> {
    /// Whether a box serves; the best one so far is kept.
    fn serves(&mut self, width: i64, height: i64) -> bool {
        let sides = Box3 { width, height, depth: self.depth };
        let allowed = self.work.min(self.most_at_once);
        let mut left = allowed;
        let found = solve(self.problem, self.conditions, sides, self.step, &mut left);
        self.work -= allowed - left;
        match found {
            Found::Places(places) => {
                if self
                    .best
                    .as_ref()
                    .is_none_or(|(best, _)| rank(width, height) < rank(best.width, best.height))
                {
                    self.best = Some((sides, places));
                }
                true
            }
            Found::Nothing => false,
            Found::Unfinished => {
                self.proven = false;
                false
            }
        }
    }

    /// The least height from `low` to `high` that serves with a width; `high` is known or taken to serve.
    fn least_height(&mut self, width: i64, (mut low, mut high): (i64, i64)) -> i64 {
        while low < high {
            let middle = self.halfway(low, high);
            if self.serves(width, middle) { high = middle } else { low = middle + self.step }
        }
        high
    }

    /// The least width that serves with the greatest height.
    fn least_width(&mut self, (mut low, mut high): (i64, i64), height: i64) -> i64 {
        while low < high {
            let middle = self.halfway(low, high);
            if self.serves(middle, height) { high = middle } else { low = middle + self.step }
        }
        high
    }

    fn halfway(&self, low: i64, high: i64) -> i64 {
        (low + (high - low) / 2).div_euclid(self.step) * self.step
    }

    /// Looks for a good box before the best: both sides grow alike until one serves, then shrink again by halves.
    fn roughly(&mut self, widths: (i64, i64), heights: (i64, i64)) {
        let (mut short, mut growth) = (0, self.step.saturating_mul(16));
        let most = (widths.1 - widths.0).max(heights.1 - heights.0).max(self.step);
        while growth < most && !self.serves(widths.0 + growth, heights.0 + growth) {
            (short, growth) = (growth, growth.saturating_mul(2));
        }
        if growth >= most && !self.serves(widths.1, heights.1) {
            return;
        }
        while growth.saturating_sub(short) > self.step {
            let middle = self.halfway(short, growth);
            if self.serves(widths.0 + middle, heights.0 + middle) { growth = middle } else { short = middle }
        }
    }

    fn search(&mut self, widths: (i64, i64), heights: (i64, i64)) {
        let narrowest = self.least_width(widths, heights.1);
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
