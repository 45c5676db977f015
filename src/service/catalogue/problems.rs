//! What the `type` link of a problem answers.

use crate::checks::FaultCode;
use crate::i18n::Catalogue;
use crate::service::problem::{ProblemKind, meaning_of};
use serde::Serialize;
use utoipa::ToSchema;

/// Every kind of problem that the service answers with.
#[derive(Debug, Serialize, ToSchema)]
pub struct Problems {
    /// The kinds, by status.
    problems: Vec<ProblemKindView>,
}

/// A kind of problem.
#[derive(Debug, Serialize, ToSchema)]
#[schema(as = ProblemKind)]
pub struct ProblemKindView {
    /// The link to this kind, as a problem carries it.
    #[serde(rename = "type")]
    #[schema(format = "uri-reference", example = "/v1/problems/invalid-request")]
    link: String,
    /// The kind in a few words.
    title: &'static str,
    /// The HTTP status of every problem of this kind.
    #[schema(minimum = 400, maximum = 599, example = 422)]
    status: u16,
    /// What it means, and what to do about it.
    meaning: &'static str,
    /// The codes of the faults that such a problem lists.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    fault_codes: Vec<FaultCodeView>,
}

/// The code of a fault.
#[derive(Debug, Serialize, ToSchema)]
pub struct FaultCodeView {
    /// The code, as a fault carries it.
    code: FaultCode,
    /// What it means.
    meaning: &'static str,
}

/// All kinds.
pub fn list(messages: &'static Catalogue) -> Problems {
    Problems { problems: ProblemKind::ALL.into_iter().map(|kind| view(kind, messages)).collect() }
}

/// One kind.
pub fn view(kind: ProblemKind, messages: &'static Catalogue) -> ProblemKindView {
    let code = |code: &FaultCode| FaultCodeView { code: *code, meaning: messages.fixed(meaning_of(*code)) };
    ProblemKindView {
        link: kind.link(),
        title: kind.title(messages),
        status: kind.status().as_u16(),
        meaning: kind.meaning(messages),
        fault_codes: kind.codes().iter().map(code).collect(),
    }
}
