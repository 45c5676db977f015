//! A proof in sentences, one for each computing step.

use super::{Catalogue, figure};
use crate::derivation::{Derivation, Operation, Outcome, Relation, Step, StepId};

/// One sentence for each step that computes, compares or leaves a rule out.
pub fn sentences(proof: &Derivation, catalogue: &Catalogue) -> Vec<String> {
    proof.steps().iter().filter_map(|step| sentence(proof, step, catalogue)).collect()
}

/// The sentences of the steps that lead to some steps, and of those themselves; of all steps, where those have none: a
/// figure that a rule states is led to by the comparisons that it passes.
pub fn leading_to(proof: &Derivation, last: &[StepId], catalogue: &Catalogue) -> Vec<String> {
    let mut leads = vec![false; proof.steps().len()];
    for step in last {
        if let Some(place) = leads.get_mut(step.index()) {
            *place = true;
        }
    }
    for (index, step) in proof.steps().iter().enumerate().rev() {
        if leads[index] {
            proof.operands(step).iter().for_each(|operand| leads[operand.index()] = true);
        }
    }
    let steps = proof.steps().iter().zip(leads).filter(|(_, leads)| *leads);
    let leading: Vec<String> = steps.filter_map(|(step, _)| sentence(proof, step, catalogue)).collect();
    if leading.is_empty() { sentences(proof, catalogue) } else { leading }
}

/// What a computing step does with what, and what it comes to: `18 in + 3 in = 21 in`.
pub fn computed(proof: &Derivation, id: StepId) -> Option<String> {
    expression(proof, proof.steps().get(id.index())?)
}

fn sentence(proof: &Derivation, step: &Step, catalogue: &Catalogue) -> Option<String> {
    let citation = step.rule.citation(proof.rulebook().edition);
    let citation = citation.map(|citation| catalogue.citation(&citation.to_string()));
    let title = catalogue.rule_title(step.rule.id);
    let (key, text) = match step.operation {
        Operation::Given
        | Operation::Fact
        | Operation::Nothing
        | Operation::Lookup { .. }
        | Operation::Affirm { .. }
        | Operation::Every
        | Operation::Any
        | Operation::Stated { .. }
        | Operation::Account { .. } => {
            return None;
        }
        Operation::DoesNotApply { because } => ("step-left-out", catalogue.reason(because).to_owned()),
        Operation::Read { point, reading } => ("step-read", format!("{}: {reading}", point.name())),
        Operation::SelectBoxes => {
            ("step-boxes", proof.selected().iter().map(|known| known.key()).collect::<Vec<_>>().join(", "))
        }
        _ => ("step-computed", expression(proof, step)?),
    };
    let cited = match citation {
        Some(citation) => format!("{title}, {citation}"),
        None => title,
    };
    Some(catalogue.sentence(key, [("result", text), ("rule", cited)]))
}

fn expression(proof: &Derivation, step: &Step) -> Option<String> {
    let operands: Vec<String> = proof.operands(step).iter().map(|id| value(proof, *id)).collect();
    let left = match step.operation {
        Operation::Sum => operands.join(" + "),
        Operation::Product => operands.join(" × "),
        Operation::Difference => operands.join(" − "),
        Operation::Quotient | Operation::WholeQuotient => operands.join(" ÷ "),
        // a third operand is only the limit that it must not read as
        Operation::Percent => operands.iter().take(2).cloned().collect::<Vec<_>>().join(" ÷ "),
        Operation::Converted => operands.join(""),
        Operation::RoundCount => match &operands[..] {
            [of, by, step] => format!("{of} ÷ {by} (≥ {step} ↑)"),
            _ => return None,
        },
        Operation::Largest => format!("max({})", operands.join(", ")),
        Operation::Smallest => format!("min({})", operands.join(", ")),
        Operation::Distance => {
            format!("√({})", operands.iter().map(|leg| format!("({leg})²")).collect::<Vec<_>>().join(" + "))
        }
        Operation::Compare(relation) => operands.join(match (relation, step.outcome) {
            (Relation::AtLeast, Outcome::Holds(true)) | (Relation::Below, Outcome::Holds(false)) => " ≥ ",
            (Relation::AtMost, Outcome::Holds(true)) | (Relation::Above, Outcome::Holds(false)) => " ≤ ",
            (Relation::Below, _) | (Relation::AtLeast, _) => " < ",
            (Relation::Above, _) | (Relation::AtMost, _) => " > ",
        }),
        _ => return None,
    };
    Some(match step.outcome {
        Outcome::Equals(result, unit) => format!("{left} = {}", figure(result, unit)),
        _ => left,
    })
}

fn value(proof: &Derivation, id: StepId) -> String {
    match proof.steps().get(id.index()).map(|step| step.outcome) {
        Some(Outcome::Equals(value, unit)) => figure(value, unit),
        _ => id.to_string(),
    }
}
