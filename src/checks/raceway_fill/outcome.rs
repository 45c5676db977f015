//! What is answered about a raceway.

use crate::derivation::{Figure, Pointer, StepId};
use crate::trade::{RacewayKind, TradeSize};
use serde::Serialize;
use smol_str::SmolStr;
use utoipa::ToSchema;

/// What goes into the raceway, how full that makes it, and which trade sizes would do.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct RacewayFillOutcome {
    /// How many conductors there are; a cable is one.
    pub number: Figure,
    /// The cross-section of all together.
    pub total_area: Figure,
    /// Whether all have the same cross-section, so that the number may be raised at a fraction of 0.8.
    pub same_size: bool,
    /// What was counted, one line for each type and size.
    pub tally: Vec<RacewayTallyLine>,
    /// How full the given raceway is. Absent when none was given with a trade size, or its dimensions are not available.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub fill: Option<Fullness>,
    /// For each kind asked for, the smallest trade size that takes everything.
    pub fits: Vec<TradeSizeFit>,
}

/// What a line of the tally is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum RacewayItem {
    /// Insulated conductors and fixture wires of the tables.
    Conductors,
    /// Bare conductors.
    BareConductors,
    /// Multiconductor cables.
    Cables,
    /// Single conductors by their measured diameter.
    MeasuredConductors,
}

/// Conductors or cables of one kind and size.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct RacewayTallyLine {
    /// What they are.
    pub what: RacewayItem,
    /// The table that has their dimensions; absent for measured ones.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<String>, example = "conductor-dimensions")]
    pub table: Option<&'static str>,
    /// The row of the table: the first of the types that share the dimensions, and the size.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<String>, example = "THHN 12 AWG")]
    pub row: Option<&'static str>,
    /// What the caller calls it: its own type and size, whatever type the row is named for. Absent for measured ones.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<String>, example = "THW 12 AWG")]
    pub name: Option<SmolStr>,
    /// The measured diameter; absent for those of a table.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub diameter: Option<Figure>,
    /// How many.
    pub count: Figure,
    /// The cross-section of one.
    pub each: Figure,
    /// The cross-section of all of them.
    pub area: Figure,
    /// The rule that says which cross-section counts.
    #[schema(value_type = String, example = "raceway-fill.conductors")]
    pub rule: &'static str,
    /// The inputs that it comes from.
    pub at: Vec<Pointer>,
}

/// Which limit of Chapter 9, Table 1 and its notes applies.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum FillLimit {
    /// One conductor or cable.
    One,
    /// Two.
    Two,
    /// Three or more.
    OverTwo,
    /// A nipple, whatever the number.
    Nipple,
}

/// How full a raceway is.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct Fullness {
    /// The kind of raceway.
    pub kind: RacewayKind,
    /// Its trade size.
    #[schema(value_type = String, example = "3/4")]
    pub trade_size: TradeSize,
    /// Which limit applies.
    pub limit: FillLimit,
    /// The limit, in hundredths of the inside area.
    pub limit_percent: Figure,
    /// The inside area.
    pub inside_area: Figure,
    /// The area that may be filled.
    pub allowed_area: Figure,
    /// What of it is left: negative when it is overfilled. Of flexible metal conduit of trade size 3/8, where its table decides, how many
    /// conductors are left.
    pub margin: Figure,
    /// The fill in hundredths of the inside area, rounded to the nearest at the second decimal, or later where it would read as the limit without being it.
    pub fill_percent: Figure,
    /// The most conductors of this size that the raceway takes. Only where all have the same cross-section. Of
    /// flexible metal conduit of trade size 3/8 the number of its table, beside one equipment grounding conductor.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub maximum: Option<Figure>,
    /// How many more of each would fit, of that one alone.
    pub room_left: Vec<RacewayRoom>,
    /// The inside diameter over that of the conductors. Only for three of one diameter.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub jam_ratio: Option<Figure>,
}

/// Room for more of one line of the tally.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct RacewayRoom {
    /// What they are.
    pub what: RacewayItem,
    /// The row of their table; absent for measured ones.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<String>, example = "THHN 12 AWG")]
    pub row: Option<&'static str>,
    /// What the caller calls it: its own type and size, whatever type the row is named for. Absent for measured ones.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<String>, example = "THW 12 AWG")]
    pub name: Option<SmolStr>,
    /// The measured diameter; absent for those of a table.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub diameter: Option<Figure>,
    /// How many more would fit.
    pub more: Figure,
}

/// The smallest trade size of one kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct TradeSizeFit {
    /// The kind.
    pub kind: RacewayKind,
    /// The smallest trade size that takes everything; absent when none of the table does.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(value_type = Option<String>, example = "1-1/4")]
    pub trade_size: Option<TradeSize>,
    /// The area of it that may be filled; absent when none of the table does, and of a trade size 3/8 that is counted.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub allowed_area: Option<Figure>,
    /// The step of the proof that decides it: at the size below, another says that it does not.
    pub step: StepId,
}
