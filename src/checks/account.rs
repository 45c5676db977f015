//! The account of a request: every rule in the scope of what it describes, and what each came to. The verdict is taken from it:
//! it complies where at least one rule is satisfied and none is violated or open.
//!
//! A request describes *subjects*: the volume of a box, its cover, one entry, a load. A subject declares the rules in its scope
//! and what raises each of them; a rule that is raised and that the check says nothing about is not determined, so a rule that
//! was forgotten can never pass for one that is satisfied. A subject that is not described is not judged, and is listed as not
//! looked at.

use super::{Finding, Status};
use crate::derivation::{Derivation, Operation, RuleStatus};
use crate::rulebook::{Edition, Rule};
use smallvec::SmallVec;

/// What is judged on its own: a part of a request with the rules in its scope.
pub struct Subject<R: 'static> {
    /// The name in answers: `volume`.
    pub name: &'static str,
    /// Whether a request describes it.
    pub is_described: fn(&R) -> bool,
    /// The rules in its scope.
    pub scope: &'static [InScope<R>],
}

/// A rule in the scope of a subject.
pub struct InScope<R: 'static> {
    /// The rule.
    pub rule: &'static Rule,
    /// Whether what the request describes raises the rule; what is not there raises nothing.
    pub is_raised: fn(&R) -> bool,
}

impl<R> InScope<R> {
    /// A rule that the subject raises whenever it is described.
    pub const fn always(rule: &'static Rule) -> Self {
        Self { rule, is_raised: |_| true }
    }

    /// A rule that something in the request raises.
    pub const fn when(is_raised: fn(&R) -> bool, rule: &'static Rule) -> Self {
        Self { rule, is_raised }
    }
}

/// One rule of an account.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Entry {
    /// The subject in whose scope it is; empty for a rule that no described subject declares.
    pub subject: &'static str,
    /// The rule.
    pub rule: &'static Rule,
    /// What it came to.
    pub status: RuleStatus,
    /// Whether the check said anything about it. A raised rule about which it said nothing is not determined.
    pub is_accounted_for: bool,
}

/// Every rule in the scope of what a request describes, and what it came to.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Account {
    entries: SmallVec<[Entry; 24]>,
    not_looked_at: SmallVec<[&'static str; 8]>,
    raises_something: bool,
}

impl Account {
    /// Draws up the account of a request from what a check found and from its proof: a rule has the most severe status of the
    /// findings about it; one without a finding is satisfied where the proof works with it, and does not apply where the proof
    /// says only that.
    pub fn of<R>(
        subjects: &[Subject<R>],
        request: &R,
        edition: Edition,
        findings: &[Finding],
        proof: &Derivation,
    ) -> Self {
        let mut account = Self::default();
        for subject in subjects {
            if !(subject.is_described)(request) {
                account.not_looked_at.push(subject.name);
                continue;
            }
            for InScope { rule, is_raised } in subject.scope {
                let is_raised = is_raised(request);
                account.raises_something |= is_raised;
                let applies = is_raised && rule.citation(edition).is_some();
                let status = if applies { RuleStatus::NotDetermined } else { RuleStatus::DoesNotApply };
                account.entries.push(Entry {
                    subject: subject.name,
                    rule,
                    status,
                    is_accounted_for: !applies,
                });
            }
        }
        account.take_findings(findings);
        account.name_subjects(subjects);
        account.take_needless_ways(findings);
        account.take_steps(proof);
        account
    }

    /// Leaves out what nothing was found about and nobody asked, where only a size was asked for.
    pub(super) fn leave_unasked(&mut self) {
        self.entries.retain(|entry| entry.is_accounted_for);
    }

    fn take_findings(&mut self, findings: &[Finding]) {
        for finding in findings {
            let status = match finding.status {
                Status::Violated => RuleStatus::Violated,
                Status::NotDetermined => RuleStatus::NotDetermined,
                Status::Satisfied => RuleStatus::Satisfied,
                Status::Advisory => continue,
            };
            match self.entries.iter_mut().find(|entry| std::ptr::eq(entry.rule, finding.rule)) {
                Some(entry) if entry.is_accounted_for => entry.status = entry.status.min(status),
                Some(entry) => (entry.status, entry.is_accounted_for) = (status, true),
                None => self.entries.push(Entry {
                    subject: "",
                    rule: finding.rule,
                    status,
                    is_accounted_for: true,
                }),
            }
        }
    }

    /// What was found about a subject that is not described, because what else is said breaks one of its rules, is of that subject.
    fn name_subjects<R>(&mut self, subjects: &[Subject<R>]) {
        for entry in self.entries.iter_mut().filter(|entry| entry.subject.is_empty()) {
            let asks = |subject: &&Subject<R>| {
                subject.scope.iter().any(|asked| std::ptr::eq(asked.rule, entry.rule))
            };
            if let Some(subject) = subjects.iter().find(asks) {
                entry.subject = subject.name;
                self.not_looked_at.retain(|name| *name != subject.name);
            }
        }
    }

    /// A rule that is only a way to satisfy another, which is satisfied in some other way, does not apply.
    fn take_needless_ways(&mut self, findings: &[Finding]) {
        for finding in findings.iter().filter(|finding| finding.is_superseded) {
            let silent =
                |entry: &&mut Entry| std::ptr::eq(entry.rule, finding.rule) && !entry.is_accounted_for;
            if let Some(entry) = self.entries.iter_mut().find(silent) {
                (entry.status, entry.is_accounted_for) = (RuleStatus::DoesNotApply, true);
            }
        }
    }

    /// Rules that count or compute have steps and no finding of their own.
    fn take_steps(&mut self, proof: &Derivation) {
        let mut waiting: SmallVec<[(usize, Option<RuleStatus>); 24]> = self
            .entries
            .iter()
            .enumerate()
            .filter(|(_, entry)| !entry.is_accounted_for)
            .map(|(index, _)| (index, None))
            .collect();
        if waiting.is_empty() {
            return;
        }
        let mut last: Option<(&'static Rule, bool)> = None;
        for step in proof.steps() {
            let lifts = matches!(step.operation, Operation::DoesNotApply { .. });
            if last.is_some_and(|(rule, lifted)| std::ptr::eq(rule, step.rule) && lifted == lifts) {
                continue;
            }
            last = Some((step.rule, lifts));
            let found = if lifts { RuleStatus::DoesNotApply } else { RuleStatus::Satisfied };
            let same = |(index, _): &&mut (usize, Option<RuleStatus>)| {
                std::ptr::eq(self.entries[*index].rule, step.rule)
            };
            if let Some((_, status)) = waiting.iter_mut().find(same) {
                *status = Some(status.map_or(found, |known| known.min(found)));
            }
        }
        for (index, status) in waiting {
            if let Some(status) = status {
                let entry = &mut self.entries[index];
                (entry.status, entry.is_accounted_for) = (status, true);
            }
        }
    }

    /// The rules, subject by subject.
    pub fn entries(&self) -> &[Entry] {
        &self.entries
    }

    /// The rules that came to a status, in order.
    pub fn rules(&self, status: RuleStatus) -> impl Iterator<Item = &'static Rule> {
        self.entries.iter().filter(move |entry| entry.status == status).map(|entry| entry.rule)
    }

    /// Whether what is described raises any rule at all, be it one that the edition has not.
    pub const fn raises_something(&self) -> bool {
        self.raises_something
    }

    /// The subjects that the request does not describe.
    pub fn not_looked_at(&self) -> &[&'static str] {
        &self.not_looked_at
    }
}
