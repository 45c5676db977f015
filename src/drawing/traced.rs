//! Figures that an answer has only in its proof.

use crate::derivation::{Derivation, Figure, Operation, Outcome, Step, StepId};
use crate::rulebook::Rule;

/// The step that made a figure.
pub(super) fn step_of(proof: &Derivation, figure: Figure) -> Option<&Step> {
    proof.steps().get(figure.step.index())
}

/// The figures that a figure was computed from.
pub(super) fn operands_of(proof: &Derivation, figure: Figure) -> Vec<Figure> {
    let step = step_of(proof, figure);
    step.map_or_else(Vec::new, |step| {
        proof.operands(step).iter().filter_map(|operand| figure_at(proof, *operand)).collect()
    })
}

/// What a figure was computed from, where that was by some operation under some rule.
pub(super) fn made_by(
    proof: &Derivation,
    figure: Figure,
    operation: Operation,
    rule: &'static Rule,
) -> Option<[Figure; 2]> {
    let step =
        step_of(proof, figure).filter(|step| step.operation == operation && step.rule.id == rule.id)?;
    match proof.operands(step) {
        [one, other] => Some([figure_at(proof, *one)?, figure_at(proof, *other)?]),
        _ => None,
    }
}

fn figure_at(proof: &Derivation, step: StepId) -> Option<Figure> {
    match proof.steps().get(step.index())?.outcome {
        Outcome::Equals(value, unit) => Some(Figure { value, unit, step }),
        Outcome::Holds(_) | Outcome::Selects | Outcome::Noted => None,
    }
}
