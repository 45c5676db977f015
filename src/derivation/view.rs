//! A proof as an answer writes it.

use super::{Derivation, Operation, Outcome, Pointer, Relation, Step, StepId};
use crate::quantity::{Decimal, Unit};
use crate::rulebook::{Basis, Citation, Edition, figures_table};
use crate::tables::{self, standard_boxes::StandardBox};
use serde::Serialize;
use serde::ser::{SerializeSeq, Serializer};
use utoipa::ToSchema;

/// The proof: every step, in order. It can be recomputed from the steps, the request and the published tables alone.
#[derive(Clone, Copy, Debug, Serialize, ToSchema)]
pub struct DerivationView<'a> {
    /// The steps; each computes with earlier ones only.
    #[serde(serialize_with = "write_steps")]
    #[schema(value_type = Vec<StepView>)]
    steps: &'a Derivation,
}

impl<'a> From<&'a Derivation> for DerivationView<'a> {
    fn from(steps: &'a Derivation) -> Self {
        Self { steps }
    }
}

impl DerivationView<'_> {
    /// Writes the proof, as [`Derivation::write_json`].
    pub fn write_json(&self, out: &mut Vec<u8>) {
        self.steps.write_json(out);
    }
}

fn write_steps<S: Serializer>(proof: &&Derivation, serializer: S) -> Result<S::Ok, S::Error> {
    let mut list = serializer.serialize_seq(Some(proof.steps.len()))?;
    for (index, step) in proof.steps.iter().enumerate() {
        list.serialize_element(&StepView::new(proof, StepId(index as u32), step))?;
    }
    list.end()
}

/// One step of the proof.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct StepView<'a> {
    /// The name of the step.
    id: StepId,
    /// What is done: `fact` takes a yes or no from the request, `given` a number (1 when `at` is an item without a
    /// count), `chosen` a number that a search chose and later steps check, `nothing` takes 0, `lookup` a figure from a
    /// table, `affirm` a yes or no from a table, `stated` a figure of a rule (table `rule-figures`, column by edition).
    /// `sum`, `product`, `difference`, `quotient` (rounded down at the ninth decimal), `whole_quotient` (rounded down, 0 at
    /// the least), `round_count` (as `whole_quotient` of the first by the second, and one more where the fraction, rounded
    /// down at the ninth decimal, is at least the third), `percent` (rounded up at the second decimal), `largest`,
    /// `smallest` and `distance` (the root of the sum of squares, rounded down at the ninth decimal) compute; `compare`
    /// says whether a relation holds; `every` and `any` say whether all or at least one of several steps hold;
    /// `select_boxes` picks standard boxes; `read` says how a disputed point is read; `does_not_apply` names a rule
    /// that was considered and left out.
    #[schema(value_type = String, example = "product")]
    op: &'static str,
    /// The rule that the step serves; its words are at `/v1/rules/{rule}`.
    #[schema(value_type = String, example = "outlet-fill.devices")]
    rule: &'static str,
    /// Where the edition has the rule; absent where it has not.
    #[serde(skip_serializing_if = "Option::is_none", serialize_with = "write_citation")]
    #[schema(value_type = Option<String>, example = "314.16(B)(4)")]
    citation: Option<Citation>,
    /// How far the figure or the rule can be trusted.
    basis: Basis,
    /// The steps that are computed with, in order.
    #[serde(skip_serializing_if = "<[StepId]>::is_empty")]
    #[schema(value_type = Vec<StepId>)]
    of: &'a [StepId],
    /// The table that is looked up, as served at `/v1/tables/{table}`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<String>, example = "conductor-volume")]
    table: Option<&'static str>,
    /// The row of the table.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<String>, example = "12 AWG")]
    row: Option<&'static str>,
    /// The column of the table.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<String>, example = "volume_in3")]
    column: Option<&'static str>,
    /// The relation that is tested, between the first and the second operand.
    #[serde(skip_serializing_if = "Option::is_none")]
    relation: Option<Relation>,
    /// The disputed point that is read.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<String>, example = "molded_clamps")]
    point: Option<&'static str>,
    /// The reading that is followed.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<String>, example = "counted")]
    reading: Option<&'static str>,
    /// Why the rule does not apply.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<String>, example = "not-in-edition")]
    because: Option<&'static str>,
    /// The value that the step comes to.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<f64>, example = 4.5)]
    equals: Option<Decimal>,
    /// The unit of the value; `1` for a plain number.
    #[serde(skip_serializing_if = "Option::is_none")]
    unit: Option<Unit>,
    /// Whether the relation holds.
    #[serde(skip_serializing_if = "Option::is_none")]
    holds: Option<bool>,
    /// The rows that were picked, in order.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<Vec<String>>)]
    selects: Option<&'a [StandardBox]>,
    /// Whether a local amendment of the request changed this step, or one that it computes with.
    #[serde(skip_serializing_if = "Option::is_none")]
    amended: Option<bool>,
    /// The place in the request that the step takes its number from, or is about.
    #[serde(skip_serializing_if = "Option::is_none")]
    at: Option<Pointer>,
}

pub(crate) fn write_citation<S: Serializer>(
    citation: &Option<Citation>,
    serializer: S,
) -> Result<S::Ok, S::Error> {
    match citation {
        Some(citation) => serializer.collect_str(citation),
        None => serializer.serialize_none(),
    }
}

impl<'a> StepView<'a> {
    /// The step at a place of a proof, from 0.
    pub fn at(proof: &'a Derivation, index: usize) -> Option<Self> {
        proof.steps.get(index).map(|step| Self::new(proof, StepId(index as u32), step))
    }

    fn new(proof: &'a Derivation, id: StepId, step: &Step) -> Self {
        let edition: Edition = proof.rulebook.edition;
        let mut view = Self {
            id,
            op: step.operation.name(),
            rule: step.rule.id,
            citation: step.rule.citation(edition),
            basis: step.basis,
            of: proof.operands(step),
            table: None,
            row: None,
            column: None,
            relation: None,
            point: None,
            reading: None,
            because: None,
            equals: None,
            unit: None,
            holds: None,
            selects: None,
            amended: step.amended.then_some(true),
            at: step.at,
        };
        match step.operation {
            Operation::Lookup { table, row, column } | Operation::Affirm { table, row, column } => {
                (view.table, view.row, view.column) = (Some(*table), Some(*row), Some(*column));
            }
            Operation::Stated { figure } => {
                view.table = Some(figures_table::TABLE);
                (view.row, view.column) = (Some(figure), Some(figures_table::column(edition, proof.units)));
            }
            Operation::Compare(relation) => view.relation = Some(relation),
            Operation::Read { point, reading } => {
                (view.point, view.reading) = (Some(point.name()), Some(reading));
            }
            Operation::DoesNotApply { because } => view.because = Some(because),
            Operation::SelectBoxes => view.table = Some(tables::standard_boxes::TABLE),
            _ => {}
        }
        match step.outcome {
            Outcome::Equals(value, unit) => (view.equals, view.unit) = (Some(value), Some(unit)),
            Outcome::Holds(holds) => view.holds = Some(holds),
            Outcome::Selects => view.selects = Some(proof.selected()),
            Outcome::Noted => {}
        }
        view
    }
}
