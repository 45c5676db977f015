//! Whether a box or a conduit body is as large as the rules require, or may be smaller.

use super::outcome::{AxisSize, LengthRequirement};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer, Relation};
use crate::rulebook::Rule;
use crate::rulebook::pull::{BLOCK_SPACE, GOVERNS, MARKED, STRAIGHT};
use std::cell::Cell;

/// What lets a box or a conduit body be smaller than the rules require: each `None` where that is not determined.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Smaller {
    /// Its marking of a number and size of conductors, which stands against every length.
    pub by_mark: Option<bool>,
    /// Its listing for full fill, which stands against the angle rule and distances alone.
    pub for_full_fill: Option<bool>,
    /// What would decide it.
    pub supply: Vec<Pointer>,
    /// Whether a length turned on what is not determined of it.
    pub turned_on: Cell<bool>,
}

impl Smaller {
    /// Nothing does.
    pub const fn never() -> Self {
        let turned_on = Cell::new(false);
        Self { by_mark: Some(false), for_full_fill: Some(false), supply: Vec::new(), turned_on }
    }

    /// What is open of a marking is not asked where every length is there without it.
    pub fn settle(&self, findings: &mut [Finding]) {
        let is_open = |finding: &&mut Finding| {
            std::ptr::eq(finding.rule, &MARKED) && finding.status == Status::NotDetermined
        };
        if !self.turned_on.get() {
            for finding in findings.iter_mut().filter(is_open) {
                finding.supersede();
                finding.is_needless = true;
            }
        }
    }

    /// Whether a length of a rule may be less.
    pub fn than(&self, rule: &'static Rule) -> Option<bool> {
        let for_full_fill = if std::ptr::eq(rule, &STRAIGHT) { Some(false) } else { self.for_full_fill };
        match (self.by_mark, for_full_fill) {
            _ if std::ptr::eq(rule, &BLOCK_SPACE) => Some(false),
            (Some(true), _) | (_, Some(true)) => Some(true),
            (Some(false), Some(false)) => Some(false),
            _ => {
                self.turned_on.set(true);
                None
            }
        }
    }

    /// Whether every length may be less.
    pub fn than_all(&self) -> bool {
        self.by_mark == Some(true)
    }

    /// The status of a length of a rule that is less than required, and its message of two: smaller but permitted, too
    /// small; with what would decide it.
    pub fn short(
        &self,
        rule: &'static Rule,
        unsaid: &[Pointer],
        [permitted, short]: [&'static str; 2],
    ) -> Finding {
        let open = |supply: Vec<Pointer>| {
            let mut finding = Finding::new(rule, Status::NotDetermined, short);
            finding.supply = supply;
            finding
        };
        match self.than(rule) {
            Some(true) => Finding::new(rule, Status::Satisfied, permitted),
            Some(false) if unsaid.is_empty() => Finding::new(rule, Status::Violated, short),
            Some(false) => open(unsaid.to_vec()),
            None => open(unsaid.iter().chain(&self.supply).copied().collect()),
        }
    }
}

/// Compares a given dimension with every requirement of its direction; `describe` adds to each finding what names the
/// entries.
pub fn compare_side(
    proof: &mut Derivation,
    size: &mut AxisSize,
    given: Figure,
    (axis, at): (&'static str, Pointer),
    smaller: &Smaller,
    describe: impl Fn(Finding, &LengthRequirement) -> Finding,
) -> Vec<Finding> {
    size.given = Some(given);
    let Some(minimum) = size.minimum else { return Vec::new() };
    size.margin = Some(proof.difference(&GOVERNS, given, minimum));
    let mut findings = Vec::with_capacity(size.requirements.len());
    for requirement in &size.requirements {
        let LengthRequirement { rule, length, ref at_least, ref at_most, ref unsaid, .. } = *requirement;
        let (mut required, (mut reaches, mut step)) =
            (length, proof.compare(rule, given, Relation::AtLeast, length));
        let mut turns_on = unsaid.clone();
        let mut between = None;
        if let Some((least, because)) = at_least.as_ref().filter(|_| !reaches)
            && proof.compare(rule, given, Relation::AtLeast, *least).0
        {
            between = Some((*least, length));
            turns_on.extend(because);
        }
        if let Some((most, because)) = at_most.as_ref().filter(|_| reaches) {
            required = *most;
            (reaches, step) = proof.compare(rule, given, Relation::AtLeast, *most);
            between = (!reaches).then_some((length, *most));
            turns_on.extend(because);
        }
        let short = if between.is_some() { "finding-side-between" } else { "finding-side-short" };
        let mut finding = if reaches {
            Finding::new(rule, Status::Satisfied, "finding-side-enough")
        } else {
            smaller.short(rule, &turns_on, ["finding-smaller-by-mark", short])
        };
        if let Some((least, most)) = between {
            finding = finding.with("least", least).with("most", most);
        }
        let finding =
            finding.with("axis", axis).with("given", given).with("required", required).at(at).step(step);
        findings.push(describe(finding, requirement));
    }
    findings
}
