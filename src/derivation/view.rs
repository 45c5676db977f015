//! A proof as an answer writes it.

use super::{Derivation, Operation, Outcome, Pointer, Relation, RuleStatus, Step, StepId};
use crate::quantity::{Decimal, Unit};
use crate::rulebook::{Basis, Citation, figures_table};
use crate::tables::{self, standard_boxes::StandardBox};
use serde::Serialize;
use serde::ser::{SerializeSeq, Serializer};
use utoipa::ToSchema;

/// The proof: every step, in order. It can be recomputed from the steps, the request and the published tables alone.
///
/// Every number is an exact decimal of at most nine places: read it from its digits, not as binary floating point. A step
/// computes with the values (`equals`) or the truths (`holds`) of the steps in `of`, in that order, and all of them stand
/// before it. Figures are in the units of the system that the request asks for (`in`, `in2`, `in3`, `lb`, or `mm`, `mm2`, `cm3`,
/// `kg`), or are plain numbers (`1`) or percentages (`%`). A demand that is not met in that system, and is met in the other one, is met:
/// after all others, and before the steps of `account`, stand then the steps of the other system that show it, wholly in its units. No
/// step computes with figures of both, but `converted`.
///
/// What a step takes from the request, at the place that `at` names:
///
/// - `given`: the number that stands there. Where there is none, because `at` is an item of a list without a `count`, or a word
///   that brings in one thing, as the size of the one grounding conductor of a cable does, it is that one thing: 1, in unit `1`.
///   Sizes that are names, of conductors, raceways and standard boxes, are never numbers of a step: they lead to the row of a
///   table.
/// - `fact`: the yes or no that stands there. Where a word stands there that a rule does not allow, a yes: it is so.
/// - `word`: the word of a closed set that stands there; `says` repeats it.
/// - `whatever`: nothing, since the request does not say what would stand there. It was tried with each of `values`: `of` has a step
///   for each, in order, and all of them hold or all do not, and so does this step.
/// - `read`: how the disputed point `point` is read: as `interpretations` of the request chooses, otherwise the reading that
///   `interpretations` of the answer calls the default.
///
/// What it takes from tables, which `/v1/tables/{table}` serves:
///
/// - `lookup`: the figure in `row` and `column`, in the unit of the column.
/// - `affirm`: the word in `row` and `column`: `yes` holds, `no` does not.
/// - `stated`: a figure that a rule states. The table is `rule-figures`, the row the name of the figure, the column the edition and
///   the system of units, as in `2023_us`; the unit stands in the columns `unit_us` and `unit_si` of the row. A figure that
///   `amendments` of the request names has the value that is given there, and the unit of the request's system, whatever the others
///   are in.
///
/// What it computes:
///
/// - `nothing`: 0. `chosen`: a number that a search chose; it is believed, and later steps compare it with what is asked of it.
/// - `converted`: what the request gives (a `given` step, or an amended figure) in the other system. An inch is 25.4 mm, a square inch
///   645.16 mm2, a cubic inch 16.387064 cm3, a pound 0.45359237 kg, all exactly; into metric units the value is multiplied, into the
///   others divided, and rounded to the nearest at the ninth decimal, a half away from zero. So it can be off by half a billionth,
///   either way, which no comparison of a length with a printed length can turn on.
/// - `sum`: all together. `difference`: the first less the second. `largest`, `smallest`: of all.
/// - `product`: the first times the second, rounded to the nearest at the ninth decimal, a half away from zero.
/// - `quotient`: the first by the second, rounded down (towards minus infinity) at the ninth decimal.
/// - `whole_quotient`: how many whole times the second goes into the first; 0 where it does not, or the first is below 0.
/// - `round_count`: the whole quotient of the first by the second; one more where something is left and what is left, divided by
///   the second as a `quotient`, is at least the third.
/// - `percent`: a hundred times the first, by the second, rounded to the nearest at the second decimal, a half away from zero. Where it
///   then equals the limit that it is compared with (the third; 100 where there is none) and unrounded does not, it is rounded at the
///   third decimal instead, or the next, up to the ninth, until it differs; where even that equals the limit, it is 0.000000001 above
///   or below it, on the side where it truly is.
/// - `distance`: the root of the sum of the squares of two or three lengths at right angles, rounded down at the ninth decimal.
/// - `compare`: whether `relation` holds between the first and the second.
/// - `every`, `any`: whether all, or at least one, of the steps hold.
/// - `select_boxes`: the keys of the rows of `standard-boxes` that serve, smallest volume first, and in the order of the table where
///   volumes are equal. Its five operands are the volume needed, the volume that sections add, the gangs, and the most gangs for
///   which a square and an octagonal box are offered. The volume of a row is `volume_in3` or `volume_cm3`, whichever is the unit of
///   the first operand, times the gangs where `per_gang` says `yes`. A row serves where its volume and the volume added are
///   together at least the volume needed and its `shape` takes the gangs: `square` up to the fourth operand, `octagonal` up to the
///   fifth, a shape that ends in `-single-cover` one, one that ends in `-multiple-cover` more than one, any other whatever they are.
/// - `does_not_apply`: nothing; it names a rule that was considered and left out, and why (`because`).
///
/// What rules and the verdict come to:
///
/// - `account`, at the end of the proof: what a rule comes to (`status`). Where it has `wants`, the one step in `of` holds or does not:
///   the rule is `satisfied` where it does as is wanted, and `violated` where it does not. Where it has none, `of` names the word of the
///   request that decides, if there is one. A rule that is `not_determined` lacks what would stand at `at`: the request says nothing
///   there, or has an object or a list there in which something is missing.
/// - A rule of the `account` of the answer comes to the most severe of these: violated, then not determined, then satisfied. One that no
///   such step is about is satisfied where a step serves it that is not `does_not_apply`, and does not apply where none does.
/// - The verdict is `violates` where any rule is violated, otherwise `not_determined` where any is not determined, otherwise
///   `complies`. Where nothing was described that could be judged, a step says so: the rule `nothing-described` is not determined.
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
    /// What is done; the description of `DerivationView` says how each is recomputed.
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
    /// The row of the table. Where `at` is given, what stands there chose it:
    ///
    /// - A key or a kind is the row. A conductor size is it, written in full (`12 AWG` for `12`, `#12` and `No. 12`; `250 kcmil`), where
    ///   it stands alone, or ends it after the insulation (`XHHW 2/0 AWG`). A trade size is that which it is read as, or the row
    ///   whose `designator_mm` is its metric designator.
    /// - Of an item of conductors it is the insulation and the size (`THHN 8 AWG`): the insulation is one for which the row is, as its column
    ///   `types` lists them; where none is given the rule says which is taken. Of a bare conductor it is the size and the
    ///   construction, `stranded` where none is given (`4 AWG stranded`). Of a pull it is its largest conductor. Of a cable that
    ///   counts as a raceway it is the smallest trade size that the steps before allow.
    /// - In `enclosure-types` it is the location and one of its conditions (`outdoor_rain_snow_sleet`); `location` brings in those that are
    ///   always asked there; `moisture` brings in `rain_snow_sleet` outdoors where it is damp or wet, and indoors `falling_liquids`
    ///   where it is damp and `hosedown` where it is wet.
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
    /// The word that the request gives.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<String>, nullable = false, example = "metal")]
    says: Option<&'static str>,
    /// The values that a property that is not said was tried with, in the order of the steps in `of`.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<Vec<String>>, nullable = false)]
    values: Option<&'static [&'static str]>,
    /// Whether the step in `of` must hold for the rule to be satisfied.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    wants: Option<bool>,
    /// What the rule comes to.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    status: Option<RuleStatus>,
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
    /// Whether what the step says holds.
    #[serde(skip_serializing_if = "Option::is_none")]
    holds: Option<bool>,
    /// The rows that `select_boxes` picked, in order.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<Vec<String>>)]
    selects: Option<&'a [StandardBox]>,
    /// Whether a local amendment of the request changed this step, or one that it computes with; absent where none did.
    #[serde(skip_serializing_if = "Option::is_none")]
    amended: Option<bool>,
    /// The place in the request that the step takes its value from, that led to its row, or that it is about.
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
        let mut view = Self {
            id,
            op: step.operation.name(),
            rule: step.rule.id,
            citation: proof.citation(step.rule),
            basis: step.basis,
            of: proof.operands(step),
            table: None,
            row: None,
            column: None,
            relation: None,
            point: None,
            reading: None,
            says: None,
            values: None,
            wants: None,
            status: None,
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
            Operation::Stated { figure, units } => {
                view.table = Some(figures_table::TABLE);
                (view.row, view.column) =
                    (Some(figure), Some(figures_table::column(proof.rulebook.edition, units)));
            }
            Operation::Compare(relation) => view.relation = Some(relation),
            Operation::Read { point, reading } => {
                (view.point, view.reading) = (Some(point.name()), Some(reading));
            }
            Operation::DoesNotApply { because } => view.because = Some(because),
            Operation::Word { says } => view.says = Some(says),
            Operation::Whatever { values } => view.values = Some(values),
            Operation::Account { status, wants } => (view.wants, view.status) = (wants, Some(status)),
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
