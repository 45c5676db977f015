//! The same request under several editions: what changes, by which rule, with the steps that differ.
//!
//! Generic over [`Check`]. Two proofs are compared rule by rule: a rule whose inputs differ (a figure that it states, its
//! not being there, a look-up) is a *cause*; one that only computes with what changed is a *consequence*.

use crate::checks::{Check, Evaluation, Verdict};
use crate::derivation::{Derivation, Operation, Outcome, Step, StepView};
use crate::rulebook::{Edition, Rule};
use serde::Serialize;
use serde_json::{Map, Value};
use utoipa::ToSchema;

/// One check under several editions.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct EditionComparison {
    /// The check that was made.
    #[schema(value_type = String, example = "outlet_box_fill")]
    pub check: &'static str,
    /// The first edition asked for, which the others are compared with.
    pub base: Edition,
    /// Each edition, in the order asked for.
    pub editions: Vec<EditionResult>,
}

/// One edition, and what changes from the base to it.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct EditionResult {
    /// The edition.
    pub edition: Edition,
    /// Whether its figures could be verified.
    pub verified: bool,
    /// The verdict under it; null for a sizing question.
    #[schema(required = true)]
    pub verdict: Option<Verdict>,
    /// What differs in the outcome, by JSON Pointer into it. Empty for the base.
    pub changes: Vec<Change>,
    /// The rules that differ. Empty for the base.
    pub rules: Vec<RuleChange>,
}

/// One place of the outcome that differs.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct Change {
    /// The place, as a JSON Pointer into the outcome.
    #[schema(example = "/spaces/0/required")]
    pub at: String,
    /// What stands there under the base; absent where nothing does.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<Object>)]
    pub from: Option<Value>,
    /// What stands there under this edition; absent where nothing does.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<Object>)]
    pub to: Option<Value>,
}

/// One rule that differs.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct RuleChange {
    /// The rule; its words are at `/v1/rules/{rule}`.
    #[schema(value_type = String, example = "outlet-fill.grounding")]
    pub rule: &'static str,
    /// Whether the difference begins here: a cause, not a consequence.
    pub cause: bool,
    /// Where the base has it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub citation_from: Option<String>,
    /// Where this edition has it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub citation_to: Option<String>,
    /// The steps that only the base's proof has.
    #[schema(value_type = Vec<StepView>)]
    pub only_from: Vec<Value>,
    /// The steps that only this edition's proof has.
    #[schema(value_type = Vec<StepView>)]
    pub only_to: Vec<Value>,
}

/// Compares evaluations of one request, the first being the base.
pub fn compare<C: Check>(evaluations: &[(Edition, Evaluation<C::Outcome>)]) -> Option<EditionComparison> {
    let (base, first) = evaluations.first()?;
    let before = outcome(first);
    let editions = evaluations
        .iter()
        .map(|(edition, evaluation)| {
            let mut changes = Vec::new();
            differences(&before, &outcome(evaluation), &mut String::new(), &mut changes);
            EditionResult {
                edition: *edition,
                verified: edition.is_verified(),
                verdict: evaluation.verdict,
                changes,
                rules: rules(&first.proof, &evaluation.proof),
            }
        })
        .collect();
    Some(EditionComparison { check: C::NAME, base: *base, editions })
}

fn outcome<O: Serialize>(evaluation: &Evaluation<O>) -> Value {
    serde_json::to_value(&evaluation.outcome).unwrap_or_default()
}

/// Walks two outcomes side by side. The names of steps are no difference: they depend on how many steps came before.
fn differences(from: &Value, to: &Value, at: &mut String, changes: &mut Vec<Change>) {
    match (from, to) {
        (Value::Object(left), Value::Object(right)) if !is_figure(left) || !is_figure(right) => {
            for member in left.keys().chain(right.keys().filter(|member| !left.contains_key(*member))) {
                if member != "step" {
                    below(member, left.get(member), right.get(member), at, changes);
                }
            }
        }
        (Value::Array(left), Value::Array(right)) => {
            for index in 0..left.len().max(right.len()) {
                below(&index.to_string(), left.get(index), right.get(index), at, changes);
            }
        }
        _ if without_step(from) == without_step(to) => {}
        _ => changes.push(Change {
            at: at.clone(),
            from: Some(without_step(from)),
            to: Some(without_step(to)),
        }),
    }
}

fn below(name: &str, from: Option<&Value>, to: Option<&Value>, at: &mut String, changes: &mut Vec<Change>) {
    let length = at.len();
    at.push('/');
    at.push_str(&name.replace('~', "~0").replace('/', "~1"));
    match (from, to) {
        (Some(from), Some(to)) => differences(from, to, at, changes),
        (from, to) => {
            changes.push(Change { at: at.clone(), from: from.map(without_step), to: to.map(without_step) });
        }
    }
    at.truncate(length);
}

fn is_figure(object: &Map<String, Value>) -> bool {
    object.contains_key("value") && object.contains_key("unit")
}

fn without_step(value: &Value) -> Value {
    match value {
        Value::Object(members) => members
            .iter()
            .filter(|(member, _)| *member != "step")
            .map(|(member, value)| (member.clone(), without_step(value)))
            .collect(),
        Value::Array(items) => items.iter().map(without_step).collect(),
        other => other.clone(),
    }
}

/// The rules whose steps differ between two proofs, causes first.
fn rules(from: &Derivation, to: &Derivation) -> Vec<RuleChange> {
    let mut seen: Vec<&'static Rule> = Vec::new();
    for step in from.steps().iter().chain(to.steps()) {
        if !seen.contains(&step.rule) {
            seen.push(step.rule);
        }
    }
    let mut changes: Vec<RuleChange> =
        seen.into_iter().filter_map(|rule| rule_change(rule, from, to)).collect();
    changes.sort_by_key(|change| !change.cause);
    changes
}

fn rule_change(rule: &'static Rule, from: &Derivation, to: &Derivation) -> Option<RuleChange> {
    let (only_from, only_to) = (only_in(rule, from, to), only_in(rule, to, from));
    let citation = |proof: &Derivation| proof.citation(rule).map(|citation| citation.to_string());
    let (citation_from, citation_to) = (citation(from), citation(to));
    if only_from.is_empty() && only_to.is_empty() && citation_from == citation_to {
        return None;
    }
    let brings_in = |proof: &Derivation, steps: &[usize]| {
        steps.iter().any(|index| proof.operands(&proof.steps()[*index]).is_empty())
    };
    let cause = brings_in(from, &only_from) || brings_in(to, &only_to);
    let written = |proof: &Derivation, steps: &[usize]| {
        steps.iter().filter_map(|index| serde_json::to_value(StepView::at(proof, *index)?).ok()).collect()
    };
    Some(RuleChange {
        rule: rule.id,
        cause,
        citation_from,
        citation_to,
        only_from: written(from, &only_from),
        only_to: written(to, &only_to),
    })
}

/// The steps of a rule in one proof that have no equal in another, by what they do and come to.
fn only_in(rule: &Rule, here: &Derivation, there: &Derivation) -> Vec<usize> {
    let mut others: Vec<(Operation, Outcome)> =
        there.steps().iter().filter(|step| step.rule == rule).map(meaning).collect();
    let mut only = Vec::new();
    for (index, step) in here.steps().iter().enumerate().filter(|(_, step)| step.rule == rule) {
        match others.iter().position(|other| *other == meaning(step)) {
            Some(found) => {
                others.swap_remove(found);
            }
            None => only.push(index),
        }
    }
    only
}

fn meaning(step: &Step) -> (Operation, Outcome) {
    (step.operation, step.outcome)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::checks::evaluate;
    use crate::checks::outlet_fill::{OutletFill, OutletFillRequest};

    fn in_editions(request: &str) -> EditionComparison {
        let evaluations: Vec<_> = [Edition::E2017, Edition::E2020, Edition::E2023]
            .into_iter()
            .map(|edition| {
                let mut request: OutletFillRequest = crate::json::read(request.as_bytes()).unwrap();
                request.edition = edition;
                (edition, evaluate::<OutletFill>(&request))
            })
            .collect();
        compare::<OutletFill>(&evaluations).unwrap()
    }

    #[test]
    fn a_fifth_grounding_conductor_changes_from_2017_by_the_grounding_rule() {
        let compared = in_editions(
            r#"{"enclosure": {"marked_volume": 2.5},
                "contents": {"grounding": [{"size": "12 AWG", "kind": "equipment_grounding", "count": 5}]}}"#,
        );
        assert!(compared.editions[0].changes.is_empty() && compared.editions[0].rules.is_empty());
        let to_2020 = &compared.editions[1];
        assert_eq!(to_2020.verdict, Some(Verdict::Violates));
        let required = to_2020.changes.iter().find(|change| change.at == "/spaces/0/required").unwrap();
        assert_eq!(required.from, Some(serde_json::json!({"value": 2.25, "unit": "in3"})));
        assert_eq!(required.to, Some(serde_json::json!({"value": 2.8125, "unit": "in3"})));
        assert_eq!((to_2020.rules[0].rule, to_2020.rules[0].cause), ("outlet-fill.grounding", true));
        assert!(to_2020.rules.iter().any(|rule| rule.rule == "outlet-volume.scope" && !rule.cause));
    }

    #[test]
    fn a_table_that_is_only_renamed_changes_its_citation_and_no_figure() {
        let compared =
            in_editions(r#"{"contents": {"conductors": [{"size": "12 AWG", "role": "spliced"}]}}"#);
        let to_2023 = &compared.editions[2];
        assert!(to_2023.changes.is_empty());
        assert_eq!(to_2023.rules.len(), 1);
        assert_eq!(to_2023.rules[0].citation_from.as_deref(), Some("Table 314.16(B)"));
        assert_eq!(to_2023.rules[0].citation_to.as_deref(), Some("Table 314.16(B)(1)"));
        assert!(!to_2023.rules[0].cause);
    }
}
