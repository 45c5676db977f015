//! The checks: one module each, behind one trait.
//!
//! A check is a request, an outcome and a pure [`Check::judge`]. The HTTP routes, the command line, the comparison
//! of readings, the replay of proofs and the OpenAPI document are generic over [`Check`]; adding one is a module here
//! and a line in the list of checks ([`for_each_check!`](crate::for_each_check)).

mod account;
pub mod box_construction;
pub mod box_depths;
pub mod box_mounting;
pub mod box_supports;
mod caution;
pub mod conduit_body;
mod counterfactual;
mod either_units;
pub mod enclosure_types;
mod fault;
mod finding;
pub mod free_conductors;
pub mod inspection;
mod judging;
mod list;
pub mod luminaire_and_fan_outlets;
pub mod outlet_fill;
pub mod pull_box;
pub(crate) mod pulls;
pub mod raceway_fill;
mod request;
mod retaking;
mod tagged;
mod takeoff;
mod terms;
pub mod ways;

pub use crate::derivation::RuleStatus;
pub use account::{Account, Entry, InScope, Subject};
pub use caution::Caution;
pub use counterfactual::{Counterfactual, evaluate_mutated};
pub use fault::{Fault, FaultCode, Faults};
pub use finding::{AllowanceGroup, Finding, FindingArg, ReadingResult, Status, Verdict};
pub use judging::{Judgement, evaluate_under};
pub use request::{Request, UnitsInterpretations};
pub use retaking::Retaking;
pub use takeoff::{BillItem, TakeoffFigures};
pub use terms::{Amendment, FigureName, Name, Reference, Terms};

use crate::derivation::Derivation;
use crate::rulebook::amendment::Amended;
use crate::rulebook::digest::Reads;
use crate::rulebook::{Edition, Rulebook};
use serde::Serialize;
use utoipa::ToSchema;

/// One check.
pub trait Check {
    /// The name in answers: `outlet_box_fill`.
    const NAME: &'static str;
    /// The path of its operation: `/v1/outlet-boxes/fill`.
    const PATH: &'static str;
    /// What is asked.
    type Request: Request;
    /// What is answered, apart from what every answer carries.
    type Outcome: Serialize + ToSchema + 'static;

    /// The parts of the rulebook and the tables that it can read.
    fn reads() -> &'static Reads;

    /// Everything that is wrong with a request that decoded: bounds, conflicts, references.
    fn faults(request: &Self::Request, faults: &mut Faults);

    /// What a request can describe, each with the rules in its scope.
    const SUBJECTS: &'static [Subject<Self::Request>];

    /// Judges a request that has no faults, under a rulebook. Pure, and total: it never panics. [`evaluate_under`] takes the
    /// verdict from what was found.
    fn judge(rulebook: &Rulebook, request: &Self::Request) -> Judgement<Self::Outcome>;

    /// Takes again what the outcome says of findings that came to something else: rows that are met or not, verdicts about parts.
    fn retake(_outcome: &mut Self::Outcome, _retaking: &Retaking<'_>) {}

    /// Takes back what was advised, and what rows lack, where that followed from what was found first and not from what it came to.
    fn tell_again(_outcome: &mut Self::Outcome, _findings: &mut Vec<Finding>) {}

    /// What a takeoff takes from an answer beside its verdict. Nothing, for a check that neither measures nor sizes.
    fn takeoff_figures(_request: &Self::Request, _evaluation: &Evaluation<Self::Outcome>) -> TakeoffFigures {
        TakeoffFigures::default()
    }
}

/// What evaluating a request comes to, before it is put in words.
#[derive(Clone, Debug)]
pub struct Evaluation<O> {
    /// The verdict; `None` when only a size was asked for.
    pub verdict: Option<Verdict>,
    /// What is answered.
    pub outcome: O,
    /// What was found, rule by rule.
    pub findings: Vec<Finding>,
    /// The proof.
    pub proof: Derivation,
    /// What must be said beside the usual cautions.
    pub cautions: Vec<Caution>,
    /// Every rule in the scope of what was described, and what it came to: the verdict is taken from it.
    pub account: Account,
}

/// Every fault of a request that decoded: those of the check, and those that every request can have.
pub fn faults_of<C: Check>(request: &C::Request) -> Faults {
    let mut faults = Faults::default();
    let terms = request.terms();
    faults.edition(terms.edition, terms.accept_unverified_rules);
    faults.amendments(terms.amendments, terms.edition, terms.units);
    C::faults(request, &mut faults);
    faults
}

/// Evaluates a request under the rulebook that it asks for.
pub fn evaluate<C: Check>(request: &C::Request) -> Evaluation<C::Outcome> {
    evaluate_under::<C>(&rulebook_of::<C>(request, request.terms().edition), request)
}

/// The rulebook of an edition, read and amended as a request asks.
pub fn rulebook_of<C: Check>(request: &C::Request, edition: Edition) -> Rulebook {
    let book = Rulebook::of(edition);
    let amendments = request.terms().amendments;
    let amended: Vec<Amended> = amendments.iter().filter_map(Amendment::amended).collect();
    book.with_readings(request.readings(book.readings)).with_amendments(&amended)
}
