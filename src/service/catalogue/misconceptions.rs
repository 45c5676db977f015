//! The misconceptions: what learners get wrong, by which a wrong answer is explained.

use crate::i18n::Catalogue;
use crate::rulebook::Edition;
use crate::training::misconceptions::{self, Listed};
use crate::training::{MisconceptionView, view_of};
use serde::Serialize;
use utoipa::ToSchema;

/// Every misconception that a wrong answer is held against.
#[derive(Debug, Serialize, ToSchema)]
pub struct Misconceptions {
    /// The edition that the citations are of.
    edition: Edition,
    /// The misconceptions, check by check, most common first within a check.
    misconceptions: Vec<ListedMisconception>,
}

/// A misconception, with the check that it is about.
#[derive(Debug, Serialize, ToSchema)]
pub struct ListedMisconception {
    /// The check.
    #[schema(value_type = String, example = "outlet_box_fill")]
    check: &'static str,
    /// What is got wrong, why it is wrong, and where the code says so.
    #[serde(flatten)]
    view: MisconceptionView,
}

/// The document.
pub fn all(messages: &Catalogue) -> Misconceptions {
    let edition = Edition::default();
    let view = |Listed { id, check, rules }| ListedMisconception {
        check,
        view: view_of(id, rules, edition, messages),
    };
    Misconceptions { edition, misconceptions: misconceptions::all().map(view).collect() }
}
