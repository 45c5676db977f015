//! A proof in sentences, one for each computing step.

use super::{Catalogue, figure};
use crate::derivation::{Derivation, Operation, Outcome, Relation, Step, StepId};
use crate::quantity::{Decimal, Unit};
use std::cmp::Ordering;

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
    let citation = proof.citation(step.rule);
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
        Operation::WholeQuotient | Operation::RoundCount => {
            return whole(proof, step, catalogue, &place(title, citation));
        }
        _ => ("step-computed", expression(proof, step)?),
    };
    Some(catalogue.sentence(key, [("result", text), ("rule", place(title, citation))]))
}

fn place(title: String, citation: Option<String>) -> String {
    match citation {
        Some(citation) => format!("{title}, {citation}"),
        None => title,
    }
}

/// A whole number from a quotient: the quotient, and which way it is rounded.
fn whole(proof: &Derivation, step: &Step, catalogue: &Catalogue, rule: &str) -> Option<String> {
    let operands = proof.operands(step);
    let [of, by] = [operands.first()?, operands.get(1)?].map(|id| equals(proof, *id));
    let ((of, of_unit), (by, by_unit)) = (of?, by?);
    let Outcome::Equals(result, unit) = step.outcome else { return None };
    let quotient = of.over(by)?;
    let sign = if is_product(by, quotient, of) { "=" } else { "≈" };
    let told = format!("{} ÷ {} {sign} {}", figure(of, of_unit), figure(by, by_unit), figure(quotient, unit));
    let key = match result.cmp(&quotient) {
        Ordering::Less => "step-rounded-down",
        Ordering::Greater => "step-rounded-up",
        Ordering::Equal => "step-computed",
    };
    let step = operands.get(2).map(|id| value(proof, *id)).unwrap_or_default();
    let named =
        [("result", told), ("whole", figure(result, unit)), ("step", step), ("rule", rule.to_owned())];
    Some(catalogue.sentence(key, named))
}

fn equals(proof: &Derivation, id: StepId) -> Option<(Decimal, Unit)> {
    match proof.steps().get(id.index())?.outcome {
        Outcome::Equals(value, unit) => Some((value, unit)),
        _ => None,
    }
}

fn expression(proof: &Derivation, step: &Step) -> Option<String> {
    let operands: Vec<String> = proof.operands(step).iter().map(|id| value(proof, *id)).collect();
    let left = match step.operation {
        Operation::Sum => operands.join(" + "),
        Operation::Product => factors(proof, step).join(" × "),
        Operation::Difference => operands.join(" − "),
        Operation::Quotient => operands.join(" ÷ "),
        // a third operand is only the limit that it must not read as
        Operation::Percent => operands.iter().take(2).cloned().collect::<Vec<_>>().join(" ÷ "),
        Operation::Converted => operands.join(""),
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
        Outcome::Equals(result, unit) => {
            let sign = if is_exact(proof, step, result) { "=" } else { "≈" };
            format!("{left} {sign} {}", figure(result, unit))
        }
        _ => left,
    })
}

/// The factors of a product. A percentage that is made a plain factor is written without its sign, which would count twice.
fn factors(proof: &Derivation, step: &Step) -> Vec<String> {
    let is_plain = !matches!(step.outcome, Outcome::Equals(_, Unit::Percent));
    let factor = |id: &StepId| match equals(proof, *id) {
        Some((value, Unit::Percent)) if is_plain => value.to_string(),
        _ => value(proof, *id),
    };
    proof.operands(step).iter().map(factor).collect()
}

/// Whether what is printed comes out exactly: products, quotients and roots end at the ninth decimal.
fn is_exact(proof: &Derivation, step: &Step, result: Decimal) -> bool {
    let operands: Vec<Decimal> =
        proof.operands(step).iter().filter_map(|id| equals(proof, *id)).map(|(value, _)| value).collect();
    match (step.operation, &operands[..]) {
        (Operation::Product, [one, other]) => is_product(*one, *other, result),
        (Operation::Quotient, [of, by]) => is_product(*by, result, *of),
        (Operation::Percent, [part, whole, ..]) => {
            is_product(*whole, result, part.times(Decimal::whole(100)))
        }
        (Operation::Distance, legs) => {
            let square = |length: &Decimal| i128::from(length.billionths()).pow(2);
            legs.iter().map(square).sum::<i128>() == square(&result)
        }
        _ => true,
    }
}

fn is_product(one: Decimal, other: Decimal, result: Decimal) -> bool {
    const BILLION: i128 = 1_000_000_000;
    let wide = |number: Decimal| i128::from(number.billionths());
    wide(one) * wide(other) == wide(result) * BILLION
}

fn value(proof: &Derivation, id: StepId) -> String {
    match proof.steps().get(id.index()).map(|step| step.outcome) {
        Some(Outcome::Equals(value, unit)) => figure(value, unit),
        _ => id.to_string(),
    }
}
