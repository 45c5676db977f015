//! What was read for a rule, a figure or a row, and how far each can be trusted, as the catalogues show it.

use crate::rulebook::{Bases, Basis, Edition};
use crate::tables::evidence::{self, Evidence};
use serde::Serialize;
use std::collections::BTreeMap;
use utoipa::ToSchema;

/// One reading of one text.
#[derive(Debug, Serialize, ToSchema)]
#[schema(as = Evidence)]
pub struct EvidenceView {
    /// The edition that the text speaks of, as the year on its cover; it may be older than those that can be asked for.
    #[schema(value_type = String, example = "2011")]
    edition: &'static str,
    /// The text: a key of the table `sources`.
    #[schema(value_type = String, example = "cec-2013")]
    source: &'static str,
    /// Whether it says what is said here. An earlier edition may say otherwise, and rightly.
    agrees: bool,
    /// What it says otherwise, or what an auditor should know. Absent when there is nothing.
    #[serde(skip_serializing_if = "str::is_empty")]
    #[schema(value_type = String, required = false)]
    note: &'static str,
}

/// What was read for a rule, a figure or a row.
pub fn read_for(name: &str) -> Vec<EvidenceView> {
    let view = |evidence: &'static Evidence| {
        let Evidence { of: _, edition, source, agrees, note } = evidence;
        EvidenceView { edition, source, agrees: *agrees, note }
    };
    evidence::of(name).iter().map(view).collect()
}

/// How far something can be trusted, by edition.
pub fn bases(bases: Bases) -> BTreeMap<&'static str, Basis> {
    Edition::ALL.into_iter().map(|edition| (edition.year(), edition.basis_of(bases))).collect()
}
