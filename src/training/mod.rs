//! Teaching: exercises, answer keys, and why an answer is wrong.
//!
//! A [`Misconception`] is a named bend of the rulebook, or of what a request says. Whatever a learner gets wrong in that
//! way is computed by the very checks that compute what is right: [`grading`] looks for the bend that gives the learner's
//! figure, and [`exercises`] make their wrong choices from bends.
//!
//! **Invariants:** nothing here knows HTTP; a diagnosis is a figure that was computed, never a guess.

pub mod exercises;
pub mod grading;
mod misconception;
pub mod misconceptions;
pub mod situation;
mod taught;
pub mod worksheet;

pub use misconception::{Bend, Misconception, MisconceptionView, RuleCited, evaluate_bent, view_of};
pub use taught::{Quantity, Taught, TaughtLine};
