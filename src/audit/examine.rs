//! One case under one edition: evaluated, compared, its proof recomputed.

use super::{Case, CaseSource};
use crate::answers::{Explain, answer};
use crate::checks::{Check, evaluate, faults_of};
use crate::i18n::Catalogue;
use crate::json::{self, same};
use crate::rulebook::Edition;
use serde::Serialize;
use serde_json::Value;
use utoipa::ToSchema;

/// Examines a case under an edition: [`examine`] of some check.
pub type Examine = fn(&Case, Edition) -> Examined;

/// A case, and what came of it under each edition.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct AuditedCase<'a> {
    /// What the case is about, in a sentence.
    #[schema(value_type = String)]
    pub name: &'a str,
    /// The check.
    #[schema(value_type = String, example = "outlet_box_fill")]
    pub check: &'a str,
    /// Where the figures come from.
    pub source: &'a CaseSource,
    /// What the source says, where it is published.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<String>)]
    pub source_says: Option<&'a str>,
    /// Why the source is held wrong, where it is: what is expected is then not what the source says.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<String>)]
    pub source_held_wrong: Option<&'a str>,
    /// The sum, or what was assumed.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<String>)]
    pub note: Option<&'a str>,
    /// What came of it, edition by edition.
    pub evaluations: Vec<Examined>,
}

impl<'a> AuditedCase<'a> {
    /// Examines a case under every edition that it names, or under one of them alone.
    pub fn of(case: &'a Case, only: Option<Edition>, examine: Examine) -> Self {
        let editions = case.editions.iter().filter(|edition| only.is_none_or(|only| **edition == only));
        Self {
            name: &case.name,
            check: &case.check,
            source: &case.source,
            source_says: case.source_says.as_deref(),
            source_held_wrong: case.source_disagrees.as_deref(),
            note: case.note.as_deref(),
            evaluations: editions.map(|edition| examine(case, *edition)).collect(),
        }
    }

    /// Whether everything agrees under every edition.
    pub fn agrees(&self) -> bool {
        self.evaluations.iter().all(|examined| examined.agrees)
    }
}

/// What came of a case under one edition.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct Examined {
    /// The edition.
    pub edition: Edition,
    /// Whether the request was answered, its proof replays, and every value is the one that is expected.
    pub agrees: bool,
    /// Why the request was refused, where it was: nothing is compared then.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub refused: Option<String>,
    /// What recomputing the proof came to.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub proof: Option<Replayed>,
    /// Each value that is compared.
    pub values: Vec<Compared>,
}

/// What recomputing a proof came to.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct Replayed {
    /// How many steps it has.
    pub steps: usize,
    /// Whether each comes to what it says.
    pub replays: bool,
    /// The first step that does not, and what is wrong with it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub fault: Option<String>,
}

/// A value that is expected, beside the one that was computed.
#[derive(Clone, Debug, PartialEq, Serialize, ToSchema)]
pub struct Compared {
    /// Where it stands in the answer, as a JSON Pointer.
    #[schema(format = "json-pointer", example = "/outcome/required/value")]
    pub pointer: String,
    /// Whether both are the same.
    pub agrees: bool,
    /// What the case expects.
    pub expected: Value,
    /// What this engine answers; absent where nothing stands there.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub computed: Option<Value>,
}

/// Evaluates a case under an edition, compares every value that it expects, and recomputes the proof.
pub fn examine<C: Check>(case: &Case, edition: Edition) -> Examined {
    let refused = |why: String| Examined {
        edition,
        agrees: false,
        refused: Some(why),
        proof: None,
        values: Vec::new(),
    };
    let mut request = case.request.clone();
    request.insert("edition".to_owned(), edition.year().into());
    let request: C::Request = match json::read_value(Value::Object(request)) {
        Ok(request) => request,
        Err(error) => return refused(error.to_string()),
    };
    let faults = faults_of::<C>(&request);
    if !faults.is_empty() {
        let messages: Vec<String> =
            faults.iter().map(|fault| format!("{}: {}", fault.at, fault.message)).collect();
        return refused(messages.join("; "));
    }
    let evaluation = evaluate::<C>(&request);
    let fault = evaluation.proof.replay().err().map(|fault| fault.to_string());
    let proof = Replayed { steps: evaluation.proof.steps().len(), replays: fault.is_none(), fault };
    let answer = answer::<C>(&request, &evaluation, Explain::Full, Catalogue::english());
    let answer = match serde_json::to_value(&answer) {
        Ok(answer) => answer,
        Err(error) => return refused(error.to_string()),
    };
    let compared = |(pointer, expected): (&String, &Value)| {
        let computed = answer.pointer(pointer);
        Compared {
            pointer: pointer.clone(),
            agrees: computed.is_some_and(|computed| same(computed, expected)),
            expected: expected.clone(),
            computed: computed.cloned(),
        }
    };
    let values: Vec<Compared> = case.expect.iter().map(compared).collect();
    let agrees = proof.replays && values.iter().all(|value| value.agrees);
    Examined { edition, agrees, refused: None, proof: Some(proof), values }
}
