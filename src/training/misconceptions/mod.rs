//! What learners get wrong, check by check, most common first.
//!
//! The explanation of each is in the message catalogues, under `misconception-` and its id with dashes.

mod box_depths;
mod conduit_body;
mod free_conductors;
mod inspections;
mod outlet_enclosures;
mod outlet_fill;
mod outlet_fill_rules;
mod outlet_fill_strategies;
mod pull_box;
mod pull_box_strategies;
mod raceway_fill;

use super::Teachable;
use crate::of_each_teachable_check;
use crate::rulebook::Rule;

/// A misconception without its bend: what a list of all needs.
#[derive(Clone, Copy, Debug)]
pub struct Listed {
    /// Its name.
    pub id: &'static str,
    /// The check that it is about.
    pub check: &'static str,
    /// The rules that it goes against.
    pub rules: &'static [&'static Rule],
}

/// Every misconception of every check, most common first within a check.
pub fn all() -> impl Iterator<Item = Listed> {
    fn of<C: Teachable>() -> Vec<Listed> {
        let listed =
            |known: &super::Misconception<C>| Listed { id: known.id, check: C::NAME, rules: known.rules };
        C::MISCONCEPTIONS.iter().map(listed).collect()
    }
    of_each_teachable_check!(C => of::<C>()).into_iter().flatten()
}
