//! One step of a proof.

use super::{Pointer, RuleStatus};
use crate::quantity::{Decimal, Unit, Units};
use crate::rulebook::reading::Point;
use crate::rulebook::{Basis, Rule};
use crate::tables::Key;
use serde::{Serialize, Serializer};
use std::fmt;
use utoipa::openapi::RefOr;
use utoipa::openapi::schema::{ObjectBuilder, Schema, Type};
use utoipa::{PartialSchema, ToSchema};

/// The name of a step inside one proof: `s1`, `s2`, …
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct StepId(pub(super) u32);

impl StepId {
    /// The step at a place in the proof, from 0.
    pub const fn at(index: usize) -> Self {
        Self(index as u32)
    }

    /// The place of the step in the proof, from 0.
    pub const fn index(self) -> usize {
        self.0 as usize
    }
}

impl fmt::Display for StepId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "s{}", self.0 + 1)
    }
}

impl StepId {
    /// Hands out the name piece by piece.
    pub(super) fn put(self, mut piece: impl FnMut(&str)) {
        piece("s");
        piece(itoa::Buffer::new().format(self.0 + 1));
    }
}

impl Serialize for StepId {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut digits = itoa::Buffer::new();
        let digits = digits.format(self.0 + 1).as_bytes();
        let mut text = [b's'; 11];
        text[1..=digits.len()].copy_from_slice(digits);
        serializer.serialize_str(str::from_utf8(&text[..=digits.len()]).unwrap_or_default())
    }
}

impl PartialSchema for StepId {
    fn schema() -> RefOr<Schema> {
        ObjectBuilder::new()
            .schema_type(Type::String)
            .pattern(Some("^s[1-9][0-9]*$"))
            .description(Some("The name of a step of the proof in the same answer."))
            .examples(["s7"])
            .build()
            .into()
    }
}

impl ToSchema for StepId {}

/// A figure of an answer: its value, its unit and the step of the proof that made it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct Figure {
    /// The exact decimal value.
    #[schema(value_type = f64, example = 2.25)]
    pub value: Decimal,
    /// The unit.
    pub unit: Unit,
    /// The step of the proof that made it.
    pub step: StepId,
}

/// How two figures compare.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub enum Relation {
    /// The first is at least the second.
    #[serde(rename = ">=")]
    AtLeast,
    /// The first is at most the second.
    #[serde(rename = "<=")]
    AtMost,
    /// The first is below the second.
    #[serde(rename = "<")]
    Below,
    /// The first is above the second.
    #[serde(rename = ">")]
    Above,
}

impl Relation {
    /// The relation as a proof writes it.
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::AtLeast => ">=",
            Self::AtMost => "<=",
            Self::Below => "<",
            Self::Above => ">",
        }
    }

    /// Whether the relation holds between two values.
    pub fn holds(self, left: Decimal, right: Decimal) -> bool {
        match self {
            Self::AtLeast => left >= right,
            Self::AtMost => left <= right,
            Self::Below => left < right,
            Self::Above => left > right,
        }
    }
}

/// What a step does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Operation {
    /// Takes a number from the request. A step that points at a whole item, not a number, takes 1: that one item.
    Given,
    /// Takes a yes or no from the request; the step holds or does not.
    Fact,
    /// Takes a word of a closed set from the request.
    Word {
        /// The word.
        says: &'static str,
    },
    /// A property that the request does not say, and that cannot matter: one step for each value that it could have, in order,
    /// and all of them hold or all of them do not.
    Whatever {
        /// The values, as the request would write them.
        values: &'static [&'static str],
    },
    /// Takes a number that a search chose. The steps that follow compare it with everything that is asked of it.
    Chosen,
    /// Takes 0, where there is none of something.
    Nothing,
    /// Takes a figure from a published table.
    Lookup {
        /// The table, as `/v1/tables/{id}` serves it.
        table: Key,
        /// The key of the row.
        row: Key,
        /// The column.
        column: Key,
    },
    /// Takes a yes or no from a published table; the step holds or does not.
    Affirm {
        /// The table, as `/v1/tables/{id}` serves it.
        table: Key,
        /// The key of the row.
        row: Key,
        /// The column.
        column: Key,
    },
    /// Takes a figure that a rule states.
    Stated {
        /// Its name among the rule figures.
        figure: &'static str,
        /// The system of units whose figure is taken.
        units: Units,
    },
    /// Takes a measured value of the request into the other system of units.
    Converted,
    /// Adds all.
    Sum,
    /// Multiplies two; rounded half away from zero at the ninth decimal.
    Product,
    /// Takes the second from the first.
    Difference,
    /// Divides the first by the second; rounded down at the ninth decimal.
    Quotient,
    /// How many whole times the second goes into the first; 0 at the least.
    WholeQuotient,
    /// How many times the second goes into the first: the whole number, and one more where the fraction, rounded down
    /// at the ninth decimal, is at least the third; 0 at the least.
    RoundCount,
    /// The first in hundredths of the second, rounded to the nearest at the second decimal, or later where it would read as the limit
    /// without being it: the third, or a hundred.
    Percent,
    /// The greatest of all.
    Largest,
    /// The least of all.
    Smallest,
    /// The straight-line distance over two or three lengths at right angles: the root of the sum of their squares,
    /// rounded down at the ninth decimal.
    Distance,
    /// Compares two; the step holds or does not.
    Compare(Relation),
    /// Whether every one of several steps holds.
    Every,
    /// Whether at least one of several steps holds.
    Any,
    /// Picks the standard boxes of a table whose volume serves: of the volume needed, the volume
    /// added, the gangs, and the most gangs for which a square and an octagonal box are offered.
    SelectBoxes,
    /// Reads a disputed point in one way.
    Read {
        /// The point.
        point: Point,
        /// The reading.
        reading: &'static str,
    },
    /// What a rule comes to: by the one operand, which holds or does not, or takes a word; or not at all, for want of what stands
    /// at the place of the step.
    Account {
        /// What it comes to.
        status: RuleStatus,
        /// Whether the operand must hold for the rule to be satisfied; `None` where it takes a word, or there is none.
        wants: Option<bool>,
    },
    /// A rule was considered and does not apply.
    DoesNotApply {
        /// The name of the reason, which the message catalogues put in words.
        because: &'static str,
    },
}

impl Operation {
    /// The word for the operation in a proof.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Given => "given",
            Self::Fact => "fact",
            Self::Word { .. } => "word",
            Self::Whatever { .. } => "whatever",
            Self::Chosen => "chosen",
            Self::Nothing => "nothing",
            Self::Lookup { .. } => "lookup",
            Self::Affirm { .. } => "affirm",
            Self::Stated { .. } => "stated",
            Self::Converted => "converted",
            Self::Sum => "sum",
            Self::Product => "product",
            Self::Difference => "difference",
            Self::Quotient => "quotient",
            Self::WholeQuotient => "whole_quotient",
            Self::RoundCount => "round_count",
            Self::Percent => "percent",
            Self::Largest => "largest",
            Self::Smallest => "smallest",
            Self::Distance => "distance",
            Self::Compare(_) => "compare",
            Self::Every => "every",
            Self::Any => "any",
            Self::SelectBoxes => "select_boxes",
            Self::Read { .. } => "read",
            Self::Account { .. } => "account",
            Self::DoesNotApply { .. } => "does_not_apply",
        }
    }
}

/// What a step comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Outcome {
    /// A number with its unit.
    Equals(Decimal, Unit),
    /// A relation that holds, or not.
    Holds(bool),
    /// A number of rows picked, kept by the derivation.
    Selects,
    /// Nothing to compute with.
    Noted,
}

/// One step: an operation over earlier steps, the rule it serves, and what it comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Step {
    /// What is done.
    pub operation: Operation,
    /// The rule that asks for it.
    pub rule: &'static Rule,
    /// How far the figure can be trusted, where the step brings one in; otherwise that of the rule.
    pub basis: Basis,
    /// What it comes to.
    pub outcome: Outcome,
    /// The place of the input that it comes from.
    pub at: Option<Pointer>,
    /// Whether a local amendment changed it, or a step that it computes with.
    pub amended: bool,
    /// Where its operands start among all operands of the proof, and how many there are.
    pub(super) operands: (u32, u32),
}
