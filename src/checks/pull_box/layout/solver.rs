//! Depth-first search for values that satisfy a [`Problem`] in a box of given sides; or the proof that there are none on
//! the grid.
//!
//! The domain of each variable is a range of grid points. Domains are narrowed by propagation; then the search branches on
//! the order of two variables that must differ, or, when every order is settled, moves variables that only gain by growing
//! (or shrinking) to the end of their domain and halves what is still open. The order of branches is fixed, so the same
//! problem has the same answer. Work is bounded: it is counted in constraints that are looked at.

use super::problem::{Distance, Gap, Problem, Separation};
use super::propagation::{Constraints, Dimensions, Domains, Node, Order, Search};

/// The result of a search.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) enum Solution {
    /// A value for each variable.
    Feasible(Vec<i64>),
    /// There are none.
    Infeasible,
    /// The work that was allowed ended first.
    Unfinished,
}

/// Searches a box, on a grid of multiples of `step`, taking the constraints that it looks at off `work`.
pub(super) fn solve(
    problem: &Problem,
    constraints: &[Constraints],
    sides: Dimensions,
    step: i64,
    work: &mut u64,
) -> Solution {
    let search = Search { problem, sides, step, constraints };
    let mut domains = Domains::with_capacity(problem.variables.len());
    for variable in &problem.variables {
        let low = search.round_up(variable.margin);
        let high = search.round_down(sides[variable.axis].saturating_sub(variable.margin));
        if low > high {
            return Solution::Infeasible;
        }
        domains.push((low, high));
    }
    let order = |separation: &Separation| if separation.in_order { Order::OneFirst } else { Order::Either };
    let orders = problem.separations.iter().map(order).collect();
    let queue = (0..problem.variables.len()).collect();
    let node = Node { domains, orders, queue };
    let in_given_order = search.in_given_order(&node);
    let mut open = vec![node];
    open.extend(in_given_order);
    while let Some(mut node) = open.pop() {
        if *work == 0 {
            return Solution::Unfinished;
        }
        if !search.propagate(&mut node, work) {
            continue;
        }
        match search.next(&mut node) {
            Next::Solved => {
                return Solution::Feasible(node.domains.into_iter().map(|(low, _)| low).collect());
            }
            Next::Propagate => open.push(node),
            Next::DeadEnd => {}
            Next::Branch { later, first } => {
                open.push(later);
                open.push(first);
            }
        }
    }
    Solution::Infeasible
}

/// What to do with a node that propagation leaves as it is.
enum Next {
    /// Every constraint holds with each variable at its least.
    Solved,
    /// A variable was moved to its end: propagate again.
    Propagate,
    /// These domains hold no solution.
    DeadEnd,
    /// Two nodes.
    Branch { later: Node, first: Node },
}

impl Search<'_> {
    /// The node in which whatever is open is in the order of the request: a roomy box is solved by it at once.
    fn in_given_order(&self, node: &Node) -> Option<Node> {
        let mut node = node.clone();
        for order in node.orders.iter_mut().filter(|order| **order == Order::Either) {
            *order = Order::OneFirst;
        }
        for distance in &self.problem.distances {
            if let [Gap::Between { one, other, less }, Gap::Between { .. }] = distance.gaps[..] {
                let by = distance.at_least.saturating_add(less);
                if !self.put_below(&mut node.domains, one, other, by, &mut Vec::new()) {
                    return None;
                }
            }
        }
        Some(node)
    }

    fn next(&self, node: &mut Node) -> Next {
        if let Some(next) = self.settle_order(node) {
            return next;
        }
        let open: Vec<&Distance> =
            self.problem.distances.iter().filter(|distance| !self.holds(&node.domains, distance)).collect();
        if open.is_empty() {
            return Next::Solved;
        }
        if self.put_to_ends(node, &open) {
            return Next::Propagate;
        }
        self.halve(node, &open)
    }

    /// Two cases for the widest separation whose order is open, the likelier one first.
    fn settle_order(&self, node: &Node) -> Option<Next> {
        let open = self.problem.separations.iter().enumerate();
        let (index, separation) = open
            .filter(|(index, _)| node.orders[*index] == Order::Either)
            .max_by_key(|(index, separation)| (separation.by, std::cmp::Reverse(*index)))?;
        let with = |order: Order| {
            let mut settled = node.clone();
            settled.orders[index] = order;
            settled.queue.push(separation.one);
            settled
        };
        let middle = |variable: usize| node.domains[variable].0.saturating_add(node.domains[variable].1);
        let (one, other) = (with(Order::OneFirst), with(Order::OtherFirst));
        Some(if middle(separation.one) <= middle(separation.other) {
            Next::Branch { later: other, first: one }
        } else {
            Next::Branch { later: one, first: other }
        })
    }

    /// Puts variables to their ends that lose nothing by it: every open distance grows with them, and so does
    /// everything that a settled order has them push along. True when one was moved.
    fn put_to_ends(&self, node: &mut Node, open: &[&Distance]) -> bool {
        let domains = &node.domains;
        let (mut grows, mut shrinks) = (vec![false; domains.len()], vec![false; domains.len()]);
        for gap in open.iter().flat_map(|distance| &distance.gaps) {
            match *gap {
                Gap::FromOrigin { variable, .. } => grows[variable] = true,
                Gap::FromEnd { variable, .. } => shrinks[variable] = true,
                Gap::Between { one, other, .. } if domains[one].0 >= domains[other].1 => {
                    (grows[one], shrinks[other]) = (true, true);
                }
                Gap::Between { one, other, .. } if domains[other].0 >= domains[one].1 => {
                    (grows[other], shrinks[one]) = (true, true);
                }
                Gap::Between { one, other, .. } => {
                    for variable in [one, other] {
                        (grows[variable], shrinks[variable]) = (true, true);
                    }
                }
            }
        }
        self.put_to_end(node, &grows, &shrinks, true) || self.put_to_end(node, &shrinks, &grows, false)
    }

    fn put_to_end(&self, node: &mut Node, wanted: &[bool], against: &[bool], upward: bool) -> bool {
        let mut free: Vec<bool> = against.iter().map(|against| !against).collect();
        let domains = &mut node.domains;
        loop {
            let mut changed = false;
            for (separation, order) in self.problem.separations.iter().zip(&node.orders) {
                let Separation { one, other, by, .. } = *separation;
                let (lesser, greater) = if *order == Order::OtherFirst { (other, one) } else { (one, other) };
                let settled = domains[lesser].1.saturating_add(by) <= domains[greater].0;
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
        for (variable, range) in domains.iter_mut().enumerate() {
            if free[variable] && range.0 < range.1 {
                moved |= wanted[variable];
                *range = if upward { (range.1, range.1) } else { (range.0, range.0) };
                node.queue.push(variable);
            }
        }
        moved
    }

    /// Two halves of the widest range in an open distance, the half that helps first.
    fn halve(&self, node: &Node, open: &[&Distance]) -> Next {
        let domains = &node.domains;
        let mut widest = (0, 0, true);
        for gap in open.iter().flat_map(|distance| &distance.gaps) {
            let candidates = match *gap {
                Gap::FromOrigin { variable, .. } => [(variable, true); 2],
                Gap::FromEnd { variable, .. } => [(variable, false); 2],
                Gap::Between { one, other, .. } => {
                    let one_above = domains[one].0 + domains[one].1 >= domains[other].0 + domains[other].1;
                    [(one, one_above), (other, !one_above)]
                }
            };
            for (variable, up) in candidates {
                let width = domains[variable].1 - domains[variable].0;
                if width > widest.1 {
                    widest = (variable, width, up);
                }
            }
        }
        let (variable, width, up) = widest;
        if width == 0 {
            return Next::DeadEnd;
        }
        let (low, high) = domains[variable];
        let middle = self.round_down(low + (high - low) / 2);
        let (mut below, mut above) = (node.clone(), node.clone());
        below.queue.push(variable);
        above.queue.push(variable);
        below.domains[variable] = (low, middle);
        above.domains[variable] = (middle + self.step, high);
        if up {
            Next::Branch { later: below, first: above }
        } else {
            Next::Branch { later: above, first: below }
        }
    }
}
