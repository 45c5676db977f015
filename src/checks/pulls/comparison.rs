//! Whether a box or a conduit body is as large as the rules require, or may be smaller.

use super::outcome::{AxisSize, LengthRequirement};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer, Relation};
use crate::rulebook::pull::GOVERNS;

/// Whether a marking or a listing lets a box be smaller than the rules require; `None` where that is not determined.
pub type SmallerPermitted = Option<bool>;

/// The status of a comparison, and its message of three: satisfied, smaller but permitted, too small.
pub const fn verdict(
    enough: bool,
    smaller: SmallerPermitted,
    [satisfied, permitted, short]: [&'static str; 3],
) -> (Status, &'static str) {
    match (enough, smaller) {
        (true, _) => (Status::Satisfied, satisfied),
        (false, Some(true)) => (Status::Satisfied, permitted),
        (false, Some(false)) => (Status::Violated, short),
        (false, None) => (Status::NotDetermined, short),
    }
}

/// Compares a given dimension with every requirement of its direction; `describe` adds to each finding what names the
/// entries.
pub fn compare_side(
    proof: &mut Derivation,
    size: &mut AxisSize,
    given: Figure,
    (axis, at): (&'static str, Pointer),
    smaller: SmallerPermitted,
    describe: impl Fn(Finding, &LengthRequirement) -> Finding,
) -> Vec<Finding> {
    size.given = Some(given);
    let Some(minimum) = size.minimum else { return Vec::new() };
    size.margin = Some(proof.difference(&GOVERNS, given, minimum));
    let mut findings = Vec::with_capacity(size.requirements.len());
    for requirement in &size.requirements {
        let LengthRequirement { rule, length, .. } = *requirement;
        let (enough, step) = proof.compare(rule, given, Relation::AtLeast, length);
        let messages = ["finding-side-enough", "finding-smaller-by-mark", "finding-side-short"];
        let (status, message) = verdict(enough, smaller, messages);
        let finding = Finding::new(rule, status, message)
            .with("axis", axis)
            .with("given", given)
            .with("required", length)
            .at(at)
            .step(step);
        findings.push(describe(finding, requirement));
    }
    findings
}
