//! Rules of one kind: a given size against a limit, or a yes or no. What most inspections consist of.
//!
//! Each rule that is looked at becomes one [`Requirement`] of the outcome and one [`Finding`], both from the same step of
//! the proof. What was not given is not determined, and the finding says what to supply.

use super::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer, Relation, StepId};
use crate::quantity::{Decimal, Measure};
use crate::rulebook::Rule;
use serde::Serialize;
use utoipa::ToSchema;

/// What one rule asks of what was described.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct Requirement {
    /// The rule; its words are at `/v1/rules/{rule}`.
    #[schema(value_type = String, example = "free-conductor.length")]
    pub rule: &'static str,
    /// What was found.
    pub status: Status,
    /// How what is given must relate to the limit; absent for a yes or no.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub relation: Option<Relation>,
    /// The limit; absent for a yes or no.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub limit: Option<Figure>,
    /// What was given; absent when it was not, and for a yes or no.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub given: Option<Figure>,
    /// The input that it is about.
    pub at: Pointer,
    /// The step of the proof that decides it; absent when nothing could be decided.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub step: Option<StepId>,
}

/// The sentences of one requirement: when it is met, when it is broken, when it is open. Each may name `given` and `limit`.
#[derive(Clone, Copy, Debug)]
pub struct Sentences {
    /// The key for a requirement that is met.
    pub met: &'static str,
    /// The key for one that is broken.
    pub broken: &'static str,
    /// The key for one that cannot be decided.
    pub open: &'static str,
}

/// A size that a request may give.
#[derive(Clone, Copy, Debug)]
pub struct Given {
    /// The size, if it was given.
    pub value: Option<Decimal>,
    /// What kind of size it is.
    pub measure: Measure,
    /// Where it stands, or would stand.
    pub at: Pointer,
}

/// An inspection under way: the proof, what was required and what was found.
#[derive(Debug)]
pub struct Inspection {
    /// The proof.
    pub proof: Derivation,
    /// What each rule asks.
    pub requirements: Vec<Requirement>,
    /// What was found.
    pub findings: Vec<Finding>,
}

impl Inspection {
    /// An inspection of nothing yet.
    pub fn new(proof: Derivation) -> Self {
        Self { proof, requirements: Vec::new(), findings: Vec::new() }
    }

    /// Compares a given size with a limit.
    pub fn limit(
        &mut self,
        rule: &'static Rule,
        given: Given,
        relation: Relation,
        limit: Figure,
        sentences: Sentences,
    ) -> Status {
        let Given { value, measure, at } = given;
        let Some(value) = value else {
            self.open(rule, Some((relation, limit)), at, sentences.open);
            return Status::NotDetermined;
        };
        let given = self.proof.given(rule, value, measure, at);
        let (holds, step) = self.proof.compare(rule, given, relation, limit);
        let (status, message) =
            if holds { (Status::Satisfied, sentences.met) } else { (Status::Violated, sentences.broken) };
        let finding = Finding::new(rule, status, message).with("given", given).with("limit", limit);
        self.findings.push(finding.at(at).step(step));
        let (relation, limit, given, step) = (Some(relation), Some(limit), Some(given), Some(step));
        self.requirements.push(Requirement { rule: rule.id, status, relation, limit, given, at, step });
        status
    }

    /// Asks that something is so.
    pub fn fact(
        &mut self,
        rule: &'static Rule,
        given: Option<bool>,
        at: Pointer,
        sentences: Sentences,
    ) -> Status {
        let Some(holds) = given else {
            self.open(rule, None, at, sentences.open);
            return Status::NotDetermined;
        };
        let step = self.proof.fact(rule, holds, at);
        let (status, message) =
            if holds { (Status::Satisfied, sentences.met) } else { (Status::Violated, sentences.broken) };
        self.findings.push(Finding::new(rule, status, message).at(at).step(step));
        let (relation, limit, given, step) = (None, None, None, Some(step));
        self.requirements.push(Requirement { rule: rule.id, status, relation, limit, given, at, step });
        status
    }

    fn open(
        &mut self,
        rule: &'static Rule,
        limit: Option<(Relation, Figure)>,
        at: Pointer,
        message: &'static str,
    ) {
        let status = Status::NotDetermined;
        let mut finding = Finding::new(rule, status, message).at(at).supply(at);
        if let Some((_, limit)) = limit {
            finding = finding.with("limit", limit);
        }
        self.findings.push(finding);
        let (relation, limit) = limit.unzip();
        self.requirements.push(Requirement {
            rule: rule.id,
            status,
            relation,
            limit,
            given: None,
            at,
            step: None,
        });
    }
}
