//! Teaching: exercises, answer keys, and why an answer is wrong.
//!
//! A [`Misconception`] is a named mutation of the rulebook, or of what a request says. Whatever a learner gets wrong in that
//! way is computed by the very checks that compute what is right: [`grading`] looks for the mutation that gives the learner's
//! figure, and [`exercises`] make their wrong choices from mutations. What that comes to is a
//! [`Counterfactual`](crate::checks::Counterfactual), of which no answer can be made.
//!
//! **Invariants:** nothing here knows HTTP; a diagnosis is a figure that was computed, never a guess.

pub mod exercises;
pub mod grading;
mod misconception;
pub mod misconceptions;
pub mod situation;
mod teachable;
pub mod worksheet;

pub use misconception::{
    Misconception, MisconceptionView, Mutation, RuleCited, evaluate_counterfactual, view_of,
};
pub use teachable::{Quantity, Teachable};
