//! Rules of one kind: a given size against a limit, or a yes or no. What most inspections consist of.
//!
//! Each rule that is looked at becomes one [`Requirement`] of the outcome and one [`Finding`], both from the same step of
//! the proof. What was not given is not determined, and the finding says what to supply.
//!
//! **Invariant:** a rule that nothing confirms (basis `unconfirmed`) never decides: what is found about it is advisory.

use super::{Finding, FindingArg, Status};
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
    pub relation: Option<Relation>,
    /// The limit; absent for a yes or no.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub limit: Option<Figure>,
    /// What was given; absent when it was not, and for a yes or no.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub given: Option<Figure>,
    /// The input that it is about.
    pub at: Pointer,
    /// The step of the proof that decides it; absent when nothing could be decided.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub step: Option<StepId>,
}

/// The sentences of one requirement: when it is met, when it is broken, when it is open. Each may name `given`, `limit` and `subject`.
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
    subject: Option<String>,
}

impl Inspection {
    /// An inspection of nothing yet.
    pub fn new(proof: Derivation) -> Self {
        Self { proof, requirements: Vec::new(), findings: Vec::new(), subject: None }
    }

    /// From here on, sentences speak of this thing: the caller's name for it, or its number in its list, counted from 1.
    pub fn about(&mut self, id: Option<&str>, index: usize) {
        self.subject = Some(id.map_or_else(|| (index + 1).to_string(), str::to_owned));
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
            return self.open(rule, Some((relation, limit)), at, sentences.open);
        };
        let given = self.proof.given(rule, value, measure, at);
        self.compare(rule, (given, at), relation, limit, sentences)
    }

    /// Compares a figure that the proof has made, of an input, with a limit.
    pub fn compare(
        &mut self,
        rule: &'static Rule,
        (given, at): (Figure, Pointer),
        relation: Relation,
        limit: Figure,
        sentences: Sentences,
    ) -> Status {
        let (holds, step) = self.proof.compare(rule, given, relation, limit);
        let (status, message) = status_and_message(holds, sentences);
        let finding = self.finding(rule, status, message).with("given", given).with("limit", limit);
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
        self.expect(rule, true, given, at, sentences)
    }

    /// Asks that something is as wanted: so, or not so.
    pub fn expect(
        &mut self,
        rule: &'static Rule,
        wanted: bool,
        given: Option<bool>,
        at: Pointer,
        sentences: Sentences,
    ) -> Status {
        let Some(holds) = given else {
            return self.open(rule, None, at, sentences.open);
        };
        let step = self.proof.fact(rule, holds, at);
        self.decided_by(rule, holds == wanted, at, step, sentences)
    }

    /// Asks that at least one of several is so. What is not said stays open until another holds; it is broken where all are
    /// denied.
    pub fn any_of(
        &mut self,
        rule: &'static Rule,
        ways: &[(Option<bool>, Pointer)],
        sentences: Sentences,
    ) -> Status {
        let serves = ways.iter().find(|(given, _)| *given == Some(true));
        let unsaid = || ways.iter().filter(|(given, _)| given.is_none()).map(|(_, at)| *at);
        if let (None, Some(first)) = (serves, unsaid().next()) {
            let status = self.open(rule, None, first, sentences.open);
            if let Some(finding) = self.findings.last_mut() {
                finding.supply.extend(unsaid().skip(1));
            }
            return status;
        }
        let Some((_, at)) = serves.or(ways.first()) else { return Status::NotDetermined };
        let said = ways.iter().filter_map(|(given, at)| given.map(|given| (given, *at)));
        let steps: Vec<StepId> = said.map(|(given, at)| self.proof.fact(rule, given, at)).collect();
        let step = self.proof.any(rule, &steps);
        match step {
            Some(step) => self.decided_by(rule, serves.is_some(), *at, step, sentences),
            None => Status::NotDetermined,
        }
    }

    /// Notes that a rule is satisfied or violated as a step of the proof says.
    pub fn decided_by(
        &mut self,
        rule: &'static Rule,
        is_met: bool,
        at: Pointer,
        step: StepId,
        sentences: Sentences,
    ) -> Status {
        let (status, message) = status_and_message(is_met, sentences);
        let finding = self.finding(rule, status, message);
        self.findings.push(finding.at(at).step(step));
        let (relation, limit, given, step) = (None, None, None, Some(step));
        self.requirements.push(Requirement { rule: rule.id, status, relation, limit, given, at, step });
        status
    }

    /// Names a relief that would lift what was just found, where that is a violation.
    pub fn unless(&mut self, relief: Pointer) {
        if let Some(finding) = self.findings.last_mut()
            && finding.status == Status::Violated
        {
            finding.unless.push(relief);
        }
    }

    /// The end: what was found, what is required, and the proof. Of a thing that breaks a rule in one way it is not also
    /// found that it satisfies that rule in another.
    pub fn close(self) -> (Vec<Finding>, Vec<Requirement>, Derivation) {
        let Self { proof, requirements, mut findings, .. } = self;
        let about = |finding: &Finding| {
            let subject = finding.arguments.iter().find(|(name, _)| *name == "subject");
            (finding.rule.id, subject.map(|(_, subject)| subject.clone()))
        };
        let broken: Vec<_> =
            findings.iter().filter(|finding| finding.status == Status::Violated).map(about).collect();
        if !broken.is_empty() {
            findings
                .retain(|finding| finding.status != Status::Satisfied || !broken.contains(&about(finding)));
        }
        (findings, requirements, proof)
    }

    /// Notes that a rule is satisfied because an exception holds, which the request says at a place.
    pub fn granted(&mut self, rule: &'static Rule, at: Pointer, message: &'static str) {
        let sentences = Sentences { met: message, broken: message, open: message };
        self.expect(rule, true, Some(true), at, sentences);
    }

    /// Notes a rule that applies and cannot be decided before something is supplied.
    pub fn open(
        &mut self,
        rule: &'static Rule,
        limit: Option<(Relation, Figure)>,
        at: Pointer,
        message: &'static str,
    ) -> Status {
        let status = Status::NotDetermined;
        let mut finding = self.finding(rule, status, message).at(at).supply(at);
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
        status
    }

    /// Notes a rule that a given size alone does not decide: it is compared with no limit before something is supplied.
    pub fn open_given(
        &mut self,
        rule: &'static Rule,
        given: Given,
        (relation, limit): (Relation, Figure),
        at: Pointer,
        message: &'static str,
    ) -> Status {
        let figure = given.value.map(|value| self.proof.given(rule, value, given.measure, given.at));
        let status = self.open(rule, Some((relation, limit)), at, message);
        if let Some(figure) = figure {
            self.also_say("given", figure);
        }
        if let Some(requirement) = self.requirements.last_mut() {
            requirement.given = figure;
        }
        status
    }

    /// Adds a figure to what was found last, for its sentence.
    pub fn also_say(&mut self, name: &'static str, figure: Figure) {
        if let Some(finding) = self.findings.last_mut() {
            finding.arguments.push((name, FindingArg::Figure(figure)));
        }
    }

    /// Says something to know that decides nothing.
    pub fn advise(&mut self, rule: &'static Rule, message: &'static str, at: Pointer) -> &mut Finding {
        let finding = self.finding(rule, Status::Advisory, message).at(at);
        self.findings.push(finding);
        let last = self.findings.len() - 1;
        &mut self.findings[last]
    }

    fn finding(&self, rule: &'static Rule, status: Status, message: &'static str) -> Finding {
        let finding = Finding::new(rule, status, message);
        match &self.subject {
            Some(subject) => finding.with("subject", subject.as_str()),
            None => finding,
        }
    }
}

fn status_and_message(met: bool, sentences: Sentences) -> (Status, &'static str) {
    match met {
        true => (Status::Satisfied, sentences.met),
        false => (Status::Violated, sentences.broken),
    }
}
