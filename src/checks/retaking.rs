//! Rows of an outcome that say what was found, after something was found otherwise: met in the other system of units, or left open by
//! a reading that nobody chose.

use super::inspection::Requirement;
use super::{Finding, Status, Verdict};
use crate::derivation::{Pointer, StepId};
use crate::rulebook::Rule;
use smallvec::SmallVec;

/// What a finding was, so that the rows that speak of it can be found.
#[derive(Clone, Debug, PartialEq, Eq)]
struct Was {
    rule: &'static Rule,
    at: Vec<Pointer>,
    status: Status,
    step: Option<StepId>,
}

/// What was found first, and what it came to.
#[derive(Debug)]
pub struct Retaking<'a> {
    first: &'a First,
    findings: &'a [Finding],
}

/// What was found before anything was taken otherwise.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(super) struct First(SmallVec<[Was; 4]>);

impl First {
    /// Remembers what was found.
    pub fn of(findings: &[Finding]) -> Self {
        let was = |found: &Finding| Was {
            rule: found.rule,
            at: found.at.clone(),
            status: found.status,
            step: found.step,
        };
        Self(findings.iter().map(was).collect())
    }

    /// What it came to; `None` where nothing changed.
    pub fn retaking<'a>(&'a self, findings: &'a [Finding]) -> Option<Retaking<'a>> {
        let retaking = Retaking { first: self, findings };
        let has_changed = retaking.changed().next().is_some();
        has_changed.then_some(retaking)
    }
}

impl Retaking<'_> {
    fn changed(&self) -> impl Iterator<Item = (&Was, &Finding)> {
        self.first.0.iter().zip(self.findings).filter(|(was, is)| was.status != is.status)
    }

    /// Takes rows again: what they say and the step that says it. Whether any changed.
    pub fn rows(&self, rows: &mut [Requirement]) -> bool {
        let mut changed = false;
        for row in rows {
            let speaks = |(was, _): &(&Was, &Finding)| {
                was.rule.id == row.rule
                    && was.status == row.status
                    && was.step == row.step
                    && was.at.contains(&row.at)
            };
            if let Some((_, is)) = self.changed().find(speaks) {
                (row.status, row.step, changed) = (is.status, is.step, true);
                // what is met in the other system of units is shown as it is compared there
                if let (Status::Satisfied, Some([given, limit])) = (is.status, is.met_by()) {
                    (row.given, row.limit) = (Some(given), Some(limit));
                }
            }
        }
        changed
    }

    /// Takes the rows of a way to satisfy a rule again, and what they come to together.
    pub fn way(&self, rows: &mut [Requirement], status: &mut Status, step: &mut Option<StepId>) {
        if !self.rows(rows) {
            return;
        }
        let decided = rows.iter().map(|row| row.status).filter(|status| *status != Status::Advisory);
        let now = decided.min().unwrap_or(*status);
        if now != *status {
            // the step that combined what it asks says what it came to before
            (*status, *step) = (now, None);
        }
    }

    /// The verdict about a part of what is judged, where something about it changed.
    pub fn verdict_of_part(&self, part: usize) -> Option<Verdict> {
        let of_part = |finding: &&Finding| finding.part == Some(part);
        self.changed()
            .any(|(_, is)| of_part(&is))
            .then(|| Verdict::of_part(self.findings.iter().filter(of_part)))
    }
}
