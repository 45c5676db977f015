//! What makes a check teachable: the figures that may be asked for, and what learners get wrong about them.

use super::Misconception;
use super::situation::Sentence;
use crate::checks::Check;
use crate::checks::outlet_fill::TallyLine;
use crate::derivation::Figure;
use crate::quantity::Units;
use serde::Serialize;

/// A check that can be taught.
pub trait Teachable: Check<Request: Clone + Serialize> + Sized + 'static {
    /// The figures that a learner may be asked for, the usual one first.
    const QUANTITIES: &'static [Quantity<Self>];

    /// What learners get wrong, most common first.
    const MISCONCEPTIONS: &'static [Misconception<Self>];

    /// Whether its answer has a tally that a learner's own can be held against.
    const HAS_TALLY: bool = false;

    /// The lines of that tally.
    fn tally(_outcome: &Self::Outcome) -> Vec<&TallyLine> {
        Vec::new()
    }

    /// The situation that a request describes, in sentences; none for a check without exercises.
    fn situation(_request: &Self::Request) -> Vec<Sentence> {
        Vec::new()
    }

    /// Makes the request one in other units; `false` where it holds sizes that are said in its own.
    fn in_units(_request: &mut Self::Request, _units: Units) -> bool {
        false
    }
}

/// A figure that a learner may be asked for.
pub struct Quantity<C: Check> {
    /// Its name: `required_volume`.
    pub name: &'static str,
    /// The figure; `None` where the answer has none.
    pub figure: fn(&C::Request, &C::Outcome) -> Option<Figure>,
    /// Whether it is a sum, so that departures about different things add up.
    pub is_sum: bool,
}

impl<C: Check> Quantity<C> {
    /// A figure of its own.
    pub const fn new(name: &'static str, figure: fn(&C::Request, &C::Outcome) -> Option<Figure>) -> Self {
        Self { name, figure, is_sum: false }
    }

    /// A sum of parts.
    pub const fn sum(name: &'static str, figure: fn(&C::Request, &C::Outcome) -> Option<Figure>) -> Self {
        Self { name, figure, is_sum: true }
    }
}
