//! The checks that are teachable, as grading knows them.

use super::super::body;
use super::super::language;
use super::super::problem::Problem;
use super::grade::fault;
use crate::checks::{FaultCode, Request as _};
use crate::derivation::Pointer;
use crate::of_each_teachable_check;
use crate::training::Teachable;
use crate::training::grading::{Given, LearnerLine, grade, grade_view};

/// Every check that is teachable.
pub(super) static TEACHABLE: &[TeachableEntry] = &of_each_teachable_check!(C => TeachableEntry::of::<C>());

/// A check that is teachable, as the service knows it.
pub(super) struct TeachableEntry {
    /// Its name.
    pub name: &'static str,
    /// Whether a learner's tally can be held against its answer.
    pub has_tally: bool,
    /// The figures that may be asked for, the usual one first.
    pub quantities: fn() -> Vec<&'static str>,
    /// Grades an answer to a request, given as JSON text.
    pub grade: fn(&[u8], &LearnersAnswer) -> Result<Vec<u8>, Problem>,
}

/// What a learner answers, and how it is to be graded.
pub(super) struct LearnersAnswer {
    /// The figure that is asked for; the usual one unless said.
    pub asks: Option<String>,
    /// The number.
    pub given: Option<Given>,
    /// The tally.
    pub tally: Vec<LearnerLine>,
    /// Whether the right answer is given as well.
    pub key: bool,
}

impl TeachableEntry {
    const fn of<C: Teachable>() -> Self {
        Self { name: C::NAME, has_tally: C::HAS_TALLY, quantities: names::<C>, grade: graded::<C> }
    }

    /// The check with a name.
    pub fn named(name: &str) -> Option<&'static Self> {
        TEACHABLE.iter().find(|check| check.name == name)
    }
}

fn names<C: Teachable>() -> Vec<&'static str> {
    C::QUANTITIES.iter().map(|quantity| quantity.name).collect()
}

fn graded<C: Teachable>(request: &[u8], answer: &LearnersAnswer) -> Result<Vec<u8>, Problem> {
    let request = body::read::<C>(request).map_err(|problem| problem.below("/request"))?;
    let named = |asks: &String| C::QUANTITIES.iter().find(|quantity| quantity.name == asks);
    let quantity = match &answer.asks {
        None => C::QUANTITIES.first().ok_or_else(Problem::internal)?,
        Some(asks) => named(asks).ok_or_else(|| {
            let code = FaultCode::UnknownReference;
            fault(Pointer::to(&"/asks"), code, "fault-unknown-quantity", &names::<C>())
        })?,
    };
    let diagnosis = grade::<C>(&request, quantity, answer.given, &answer.tally);
    let view = grade_view::<C>(&diagnosis, quantity, request.terms(), answer.key, language::messages());
    serde_json::to_vec(&view).map_err(|_| Problem::internal())
}
