//! Finds lengths that satisfy a [`Problem`] in a box of given sides, or shows that there are none on the grid.
//!
//! Each variable has a range of grid points. Ranges are narrowed by every condition until nothing more follows; then
//! either two lengths that must differ are put in one order and in the other, or, when every order is settled, lengths
//! that only gain by growing (or shrinking) are put to their end, and what is still open is halved. All of it is done
//! depth first in a fixed order, so the same problem has the same answer. Work is bounded: it is counted in conditions
//! that are looked at.

use super::narrowing::{Box3, Case, Conditions, Order, Ranges, Search};
use super::problem::{Distance, Gap, Problem, Separation};

/// What a search comes to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Found {
    /// A value for each variable.
    Places(Vec<i64>),
    /// There are none.
    Nothing,
    /// The work that was allowed ended first.
    Unfinished,
}

/// Searches a box, on a grid of multiples of `step`, taking the conditions that it looks at off `work`.
pub(super) fn solve(
    problem: &Problem,
    conditions: &[Conditions],
    sides: Box3,
    step: i64,
    work: &mut u64,
) -> Found {
    let search = Search { problem, sides, step, conditions };
    let mut ranges = Ranges::with_capacity(problem.variables.len());
    for variable in &problem.variables {
        let low = search.up(variable.margin);
        let high = search.down(sides.along(variable.axis).saturating_sub(variable.margin));
        if low > high {
            return Found::Nothing;
        }
        ranges.push((low, high));
    }
    let order = |separation: &Separation| if separation.in_order { Order::OneFirst } else { Order::Either };
    let orders = problem.separations.iter().map(order).collect();
    let touched = (0..problem.variables.len()).collect();
    let case = Case { ranges, orders, touched };
    let in_turn = search.in_turn(&case);
    let mut open = vec![case];
    open.extend(in_turn);
    while let Some(mut case) = open.pop() {
        if *work == 0 {
            return Found::Unfinished;
        }
        if !search.narrow(&mut case, work) {
            continue;
        }
        match search.next(&mut case) {
            Next::Solved => return Found::Places(case.ranges.into_iter().map(|(low, _)| low).collect()),
            Next::Again => open.push(case),
            Next::Nothing => {}
            Next::Branch { later, first } => {
                open.push(later);
                open.push(first);
            }
        }
    }
    Found::Nothing
}

/// What to do with ranges that cannot be narrowed.
enum Next {
    /// Every condition holds with each variable at its least.
    Solved,
    /// Something was put to its end.
    Again,
    /// No place is left in these ranges.
    Nothing,
    /// Two cases.
    Branch { later: Case, first: Case },
}

impl Search<'_> {
    /// The case in which whatever is open stands in the order of the request: in a roomy box that serves at once.
    fn in_turn(&self, case: &Case) -> Option<Case> {
        let mut case = case.clone();
        for order in case.orders.iter_mut().filter(|order| **order == Order::Either) {
            *order = Order::OneFirst;
        }
        for distance in &self.problem.distances {
            if let [Gap::Between { one, other, less }, Gap::Between { .. }] = distance.gaps[..] {
                let by = distance.at_least.saturating_add(less);
                if !self.put(&mut case.ranges, one, other, by, &mut Vec::new()) {
                    return None;
                }
            }
        }
        Some(case)
    }

    fn next(&self, case: &mut Case) -> Next {
        if let Some(next) = self.settle_order(case) {
            return next;
        }
        let open: Vec<&Distance> =
            self.problem.distances.iter().filter(|distance| !self.holds(&case.ranges, distance)).collect();
        if open.is_empty() {
            return Next::Solved;
        }
        if self.put_to_ends(case, &open) {
            return Next::Again;
        }
        self.halve(case, &open)
    }

    /// Two cases for the widest separation whose order is open, the likelier one first.
    fn settle_order(&self, case: &Case) -> Option<Next> {
        let open = self.problem.separations.iter().enumerate();
        let (place, separation) = open
            .filter(|(place, _)| case.orders[*place] == Order::Either)
            .max_by_key(|(place, separation)| (separation.by, std::cmp::Reverse(*place)))?;
        let with = |order: Order| {
            let mut settled = case.clone();
            settled.orders[place] = order;
            settled.touched.push(separation.one);
            settled
        };
        let middle = |variable: usize| case.ranges[variable].0.saturating_add(case.ranges[variable].1);
        let (one, other) = (with(Order::OneFirst), with(Order::OtherFirst));
        Some(if middle(separation.one) <= middle(separation.other) {
            Next::Branch { later: other, first: one }
        } else {
            Next::Branch { later: one, first: other }
        })
    }

    /// Puts variables to their ends that lose nothing by it: every open distance grows with them, and so does
    /// everything that a settled order has them push along. True when one was moved.
    fn put_to_ends(&self, case: &mut Case, open: &[&Distance]) -> bool {
        let ranges = &case.ranges;
        let (mut grows, mut shrinks) = (vec![false; ranges.len()], vec![false; ranges.len()]);
        for gap in open.iter().flat_map(|distance| &distance.gaps) {
            match *gap {
                Gap::FromOrigin { variable, .. } => grows[variable] = true,
                Gap::FromEnd { variable, .. } => shrinks[variable] = true,
                Gap::Between { one, other, .. } if ranges[one].0 >= ranges[other].1 => {
                    (grows[one], shrinks[other]) = (true, true);
                }
                Gap::Between { one, other, .. } if ranges[other].0 >= ranges[one].1 => {
                    (grows[other], shrinks[one]) = (true, true);
                }
                Gap::Between { one, other, .. } => {
                    for variable in [one, other] {
                        (grows[variable], shrinks[variable]) = (true, true);
                    }
                }
            }
        }
        self.put_to_end(case, &grows, &shrinks, true) || self.put_to_end(case, &shrinks, &grows, false)
    }

    fn put_to_end(&self, case: &mut Case, wanted: &[bool], against: &[bool], upward: bool) -> bool {
        let mut free: Vec<bool> = against.iter().map(|against| !against).collect();
        let ranges = &mut case.ranges;
        loop {
            let mut changed = false;
            for (separation, order) in self.problem.separations.iter().zip(&case.orders) {
                let Separation { one, other, by, .. } = *separation;
                let (lesser, greater) = if *order == Order::OtherFirst { (other, one) } else { (one, other) };
                let settled = ranges[lesser].1.saturating_add(by) <= ranges[greater].0;
                let (moving, pushed) = if upward { (lesser, greater) } else { (greater, lesser) };
                if !settled && free[moving] && !free[pushed] {
                    (free[moving], changed) = (false, true);
                }
            }
            if !changed {
                break;
            }
        }
        let mut moved = false;
        for (variable, range) in ranges.iter_mut().enumerate() {
            if free[variable] && range.0 < range.1 {
                moved |= wanted[variable];
                *range = if upward { (range.1, range.1) } else { (range.0, range.0) };
                case.touched.push(variable);
            }
        }
        moved
    }

    /// Two halves of the widest range in an open distance, the half that helps first.
    fn halve(&self, case: &Case, open: &[&Distance]) -> Next {
        let ranges = &case.ranges;
        let mut widest = (0, 0, true);
        for gap in open.iter().flat_map(|distance| &distance.gaps) {
            let candidates = match *gap {
                Gap::FromOrigin { variable, .. } => [(variable, true); 2],
                Gap::FromEnd { variable, .. } => [(variable, false); 2],
                Gap::Between { one, other, .. } => {
                    let one_above = ranges[one].0 + ranges[one].1 >= ranges[other].0 + ranges[other].1;
                    [(one, one_above), (other, !one_above)]
                }
            };
            for (variable, up) in candidates {
                let width = ranges[variable].1 - ranges[variable].0;
                if width > widest.1 {
                    widest = (variable, width, up);
                }
            }
        }
        let (variable, width, up) = widest;
        if width == 0 {
            return Next::Nothing;
        }
        let (low, high) = ranges[variable];
        let middle = self.down(low + (high - low) / 2);
        let (mut below, mut above) = (case.clone(), case.clone());
        below.touched.push(variable);
        above.touched.push(variable);
        below.ranges[variable] = (low, middle);
        above.ranges[variable] = (middle + self.step, high);
        if up {
            Next::Branch { later: below, first: above }
        } else {
            Next::Branch { later: above, first: below }
        }
    }
}
