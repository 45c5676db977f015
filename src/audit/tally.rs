//! What cases come to, counted.

use super::{AuditedCase, CaseBasis};
use serde::Serialize;
use utoipa::ToSchema;

/// What the cases that were run came to.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, ToSchema)]
pub struct AuditSummary {
    /// The cases that were run.
    pub cases: usize,
    /// Each of them under each edition that it names.
    pub evaluations: usize,
    /// The values that were compared.
    pub comparisons: usize,
    /// The evaluations in which everything agrees and the proof replays.
    pub agreeing: usize,
    /// The evaluations in which something differs, does not replay or was refused.
    pub differing: usize,
    /// The cases by what they rest on.
    pub by_basis: BasisCounts,
    /// The cases whose source is held wrong: what is expected is what the rules give, and the case says why.
    pub source_held_wrong: usize,
}

/// Cases by what they rest on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, ToSchema)]
pub struct BasisCounts {
    /// Published examples.
    pub published: usize,
    /// Sums worked by hand.
    pub derived: usize,
    /// Common practice.
    pub common_practice: usize,
}

impl AuditSummary {
    /// Counts a case.
    pub fn add(&mut self, case: &AuditedCase<'_>) {
        self.cases += 1;
        self.source_held_wrong += usize::from(case.source_held_wrong.is_some());
        *match case.source.basis {
            CaseBasis::Published => &mut self.by_basis.published,
            CaseBasis::Derived => &mut self.by_basis.derived,
            CaseBasis::CommonPractice => &mut self.by_basis.common_practice,
        } += 1;
        for examined in &case.evaluations {
            self.evaluations += 1;
            self.comparisons += examined.values.len();
            *if examined.agrees { &mut self.agreeing } else { &mut self.differing } += 1;
        }
    }
}
