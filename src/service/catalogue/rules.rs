//! The rules: what each asks, where each edition has it, what it states, and where our knowledge of it comes from.

use super::evidence::{EvidenceView, bases, read_for};
use crate::i18n::Catalogue;
use crate::quantity::{Decimal, Unit, Units};
use crate::rulebook::{Basis, Edition, Rule, RuleFigure, Rulebook, rules};
use serde::Serialize;
use std::collections::BTreeMap;
use utoipa::ToSchema;

/// Every rule of every edition.
#[derive(Debug, Serialize, ToSchema)]
pub struct Rules {
    /// The rules.
    rules: Vec<RuleSummary>,
}

/// A rule in one line; `/v1/rules/{id}` has the whole of it.
#[derive(Debug, Serialize, ToSchema)]
pub struct RuleSummary {
    /// The name, as findings and steps give it. It is never changed.
    #[schema(value_type = String, example = "outlet-fill.devices")]
    id: &'static str,
    /// The title.
    title: String,
    /// How far the rule can be trusted, by edition. An edition that is absent does not have it.
    #[schema(value_type = BTreeMap<String, Basis>, example = json!({"2020": "published"}))]
    basis: BTreeMap<&'static str, Basis>,
}

/// A rule.
#[derive(Debug, Serialize, ToSchema)]
#[schema(as = Rule)]
pub struct RuleView {
    /// The name, as findings and steps give it. It is never changed.
    #[schema(value_type = String, example = "outlet-fill.devices")]
    id: &'static str,
    /// The title.
    title: String,
    /// What the rule asks, in our own words: not the text of the code.
    statement: String,
    /// How far the rule can be trusted, by edition. An edition that is absent does not have it.
    #[schema(value_type = BTreeMap<String, Basis>, example = json!({"2020": "published"}))]
    basis: BTreeMap<&'static str, Basis>,
    /// What was read besides the texts under `evidence`, or a plain statement that nothing was.
    source: &'static str,
    /// The texts that were read for the rule. Absent when there are none.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schema(required = false)]
    evidence: Vec<EvidenceView>,
    /// Where each edition has the rule. An edition that is absent does not have it.
    #[schema(value_type = BTreeMap<String, String>, example = json!({"2020": "314.16(B)(4)"}))]
    citations: BTreeMap<&'static str, String>,
    /// The figures that the rule states.
    figures: Vec<RuleFigureView>,
}

/// A figure that a rule states, per edition.
#[derive(Debug, Serialize, ToSchema)]
#[schema(as = RuleFigure)]
pub struct RuleFigureView {
    /// The name: the row of the table `rule-figures`.
    #[schema(value_type = String, example = "outlet-fill.devices.allowances-per-yoke")]
    name: &'static str,
    /// The unit of the figure in `us`; `1` for a plain number.
    unit_us: Unit,
    /// The unit of the figure in `si`.
    unit_si: Unit,
    /// The figure in each edition that states it.
    #[schema(value_type = BTreeMap<String, EditionFigure>)]
    editions: BTreeMap<&'static str, EditionFigure>,
    /// The texts that were read for the figure itself. Absent when there are none.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    #[schema(required = false)]
    evidence: Vec<EvidenceView>,
}

/// A figure in one edition, in both columns of the code.
#[derive(Debug, Serialize, ToSchema)]
pub struct EditionFigure {
    /// The figure in inches and their powers, or the plain number.
    #[schema(value_type = f64, example = 2)]
    us: Decimal,
    /// The figure in millimetres and their powers as the code prints it, or the plain number.
    #[schema(value_type = f64, example = 2)]
    si: Decimal,
}

/// All rules.
pub fn list(messages: &Catalogue) -> Rules {
    let summary =
        |rule: &Rule| RuleSummary { id: rule.id, title: messages.rule_title(rule.id), basis: basis_of(rule) };
    Rules { rules: rules().map(summary).collect() }
}

/// One rule.
pub fn view(rule: &'static Rule, messages: &Catalogue) -> RuleView {
    let citation = |edition: Edition| Some((edition.year(), rule.citation(edition)?.to_string()));
    RuleView {
        id: rule.id,
        title: messages.rule_title(rule.id),
        statement: messages.rule_statement(rule.id),
        basis: basis_of(rule),
        source: rule.source,
        evidence: read_for(rule.id),
        citations: Edition::ALL.into_iter().filter_map(citation).collect(),
        figures: figures(rule),
    }
}

fn basis_of(rule: &Rule) -> BTreeMap<&'static str, Basis> {
    let mut bases = bases(rule.bases);
    bases.retain(|year, _| {
        Edition::ALL.iter().any(|edition| edition.year() == *year && rule.citation(*edition).is_some())
    });
    bases
}

fn figures(rule: &Rule) -> Vec<RuleFigureView> {
    let mut views: Vec<RuleFigureView> = Vec::new();
    for edition in Edition::ALL {
        for figure in Rulebook::of(edition).figures().filter(|figure| figure.rule.id == rule.id) {
            let RuleFigure { name, rule: _, measure, us, si } = figure;
            let stated = (edition.year(), EditionFigure { us, si });
            match views.iter_mut().find(|view| view.name == name) {
                Some(view) => view.editions.extend([stated]),
                None => views.push(RuleFigureView {
                    name,
                    unit_us: Units::Us.of(measure),
                    unit_si: Units::Si.of(measure),
                    editions: BTreeMap::from([stated]),
                    evidence: read_for(name),
                }),
            }
        }
    }
    views
}
