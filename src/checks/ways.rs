//! Rules that can be satisfied in several ways, of which one is enough.
//!
//! Each way is inspected on its own. When one is complete the rule is satisfied, and what the others lack is only worth
//! knowing; when none is, a way that could still be completed leaves the rule open. A requirement that stands whatever
//! else holds, such as one that protects conductors, counts in any case: broken it is a violation, open it is to be decided.

use super::inspection::{Inspection, Requirement, Sentences};
use super::{Finding, FindingArg, Status};
use crate::derivation::{Pointer, StepId};
use crate::rulebook::Rule;
use crate::tables::Affirmation;
use std::ops::Range;

/// One way to satisfy a rule, as it was found.
#[derive(Clone, Debug)]
pub struct Way {
    /// The findings about it, by their places in the inspection.
    findings: Range<usize>,
    /// What it asks, taken out of the inspection.
    pub requirements: Vec<Requirement>,
    /// Whether it is complete, cannot be, or is open.
    pub status: Status,
    /// The step of the proof that says so; absent where it is open.
    pub step: Option<StepId>,
}

impl Way {
    /// Lets what it lacks be only worth knowing, since another way serves.
    pub fn stand_aside(&mut self) {
        let lacks = |row: &&mut Requirement| row.status != Status::Satisfied;
        self.requirements.iter_mut().filter(lacks).for_each(|row| row.status = Status::Advisory);
        self.status = Status::Advisory;
    }
}

/// Where the inspection of a way began.
#[derive(Clone, Copy, Debug)]
pub struct Begun {
    findings: usize,
    requirements: usize,
}

/// What several ways come to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Settled {
    /// Whether one is complete, none can be, or it is open.
    pub status: Status,
    /// The step of the proof that says so; absent where it is open.
    pub step: Option<StepId>,
}

impl Inspection {
    /// Marks where the inspection of a way begins.
    pub fn begin(&self) -> Begun {
        Begun { findings: self.findings.len(), requirements: self.requirements.len() }
    }

    /// Whether something was found since, and all of it met.
    pub fn all_met_since(&self, begun: &Begun) -> bool {
        let found = self.findings.get(begun.findings..).unwrap_or_default();
        !found.is_empty() && found.iter().all(|finding| finding.status == Status::Satisfied)
    }

    /// Takes back what was found since; the steps of the proof stay.
    pub fn forget_since(&mut self, begun: &Begun) {
        self.findings.truncate(begun.findings);
        self.requirements.truncate(begun.requirements);
    }

    /// Closes a way to satisfy a rule: what was found since it began.
    pub fn end(&mut self, rule: &'static Rule, begun: Begun) -> Way {
        let found = self.findings.get(begun.findings..).unwrap_or_default();
        let decided = found.iter().filter(|finding| finding.status != Status::Advisory);
        let status = decided.clone().map(|finding| finding.status).min().unwrap_or(Status::NotDetermined);
        let has_step = decided.clone().all(|finding| finding.status != status || finding.step.is_some());
        let steps: Vec<StepId> = decided.filter_map(|finding| finding.step).collect();
        let is_decided = status != Status::NotDetermined && has_step;
        let step = if is_decided { self.proof.every(rule, &steps) } else { None };
        let requirements = self.requirements.split_off(begun.requirements.min(self.requirements.len()));
        Way { findings: begun.findings..self.findings.len(), requirements, status, step }
    }

    /// Says what several ways come to, and lets the findings about those that do not decide it be advisory. What is found
    /// about the rules that `stand` stays as it is.
    pub fn settle(&mut self, rule: &'static Rule, ways: &[Way], stand: &[&'static Rule]) -> Settled {
        let is = |status| ways.iter().any(|way| way.status == status);
        let status = match (is(Status::Satisfied), is(Status::NotDetermined) || ways.is_empty()) {
            (true, _) => Status::Satisfied,
            (false, true) => Status::NotDetermined,
            (false, false) => Status::Violated,
        };
        for way in ways {
            for finding in self.findings.get_mut(way.findings.clone()).unwrap_or_default() {
                let stands = stand.iter().any(|rule| std::ptr::eq(finding.rule, *rule));
                let is_decided = way.status == Status::Violated || status == Status::Satisfied;
                // what is missing of a way that another makes needless, or that is broken already, is not asked for
                let is_needless = is_decided && finding.status == Status::NotDetermined && !stands;
                if way.status != status && finding.status != Status::Satisfied && !stands || is_needless {
                    finding.is_needless |= is_needless;
                    finding.supersede();
                }
            }
        }
        let steps: Vec<StepId> =
            ways.iter().filter(|way| way.status == status).filter_map(|way| way.step).collect();
        let step = if status == Status::NotDetermined { None } else { self.proof.any(rule, &steps) };
        Settled { status, step }
    }

    /// Says in a finding of its own what several ways come to; of a single way its own findings say it.
    pub fn conclude(&mut self, rule: &'static Rule, ways: usize, settled: Settled, sentences: Sentences) {
        if ways < 2 {
            return;
        }
        let message = match settled.status {
            Status::Satisfied => sentences.met,
            Status::Violated => sentences.broken,
            Status::NotDetermined | Status::Advisory => sentences.open,
        };
        let mut finding = Finding::new(rule, settled.status, message);
        finding.step = settled.step;
        self.findings.push(finding);
    }

    /// Asks that a table says yes. The sentences may name `row` and `column`.
    pub fn affirm(
        &mut self,
        rule: &'static Rule,
        cell: Affirmation,
        at: Pointer,
        met: &'static str,
        broken: &'static str,
    ) -> (Status, StepId) {
        let Affirmation { row, column, holds, .. } = cell;
        let step = self.proof.affirm(rule, cell, Some(at));
        let (status, message) = if holds { (Status::Satisfied, met) } else { (Status::Violated, broken) };
        let finding = Finding::new(rule, status, message)
            .with("row", FindingArg::Name(row))
            .with("column", FindingArg::Name(column));
        self.findings.push(finding.at(at).step(step));
        let (relation, limit, given) = (None, None, None);
        let requirement = Requirement { rule: rule.id, status, relation, limit, given, at, step: Some(step) };
        self.requirements.push(requirement);
        (status, step)
    }
}
