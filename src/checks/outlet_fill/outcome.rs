//! What is answered about an outlet box.

use crate::checks::{Name, Verdict};
use crate::derivation::{Figure, Pointer, StepId};
use crate::tables::standard_boxes::{StandardBox, StandardBoxes};
use crate::trade::ConductorSize;
use serde::{Deserialize, Serialize};
use smallvec::SmallVec;
use utoipa::ToSchema;

/// The volumes of a box, space by space, and which standard boxes would do.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct OutletFillOutcome {
    /// Each space of the box: one without barriers, several with.
    pub spaces: Vec<SpaceFill>,
    /// Standard metal boxes that comply, smallest first, with the sections of the request fitted, whatever is not said. Absent where barriers
    /// divide the box or the required volume is not determined.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub boxes: Option<BoxOffer>,
}

/// Standard boxes that comply.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct BoxOffer {
    /// The gangs that a box counted by the gang is taken with.
    pub gangs: Figure,
    /// The boxes, smallest first, by their key in the table `standard-boxes`.
    #[schema(value_type = Vec<StandardBox>)]
    pub fits: StandardBoxes,
    /// The step of the proof that picked them.
    pub step: StepId,
}

/// One space of a box.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct SpaceFill {
    /// The caller's name for the space; absent for a box without barriers.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub id: Option<String>,
    /// Whether this space complies; null when no enclosure was given.
    #[schema(required = true)]
    pub verdict: Option<Verdict>,
    /// The volume that the contents require. When something could not be counted this is the least it can be.
    pub required: Figure,
    /// The most that they can require, where something is not said that takes room or not, as clamps where a cable enters.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub required_at_most: Option<Figure>,
    /// The volume that the space has; absent when none was given or none could be established.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub available: Option<Figure>,
    /// What is left: negative when the space falls short.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub margin: Option<Figure>,
    /// The marked volume that a ring, cover or extension must at least add to cure the shortfall.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub section_that_would_cure: Option<Figure>,
    /// The required volume in hundredths of the available one, rounded to the nearest at the second decimal, or later
    /// where it would read as 100 without being it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub percent_used: Option<Figure>,
    /// What was counted.
    pub tally: Vec<TallyLine>,
    /// What was left out, and why.
    pub not_counted: Vec<NotCounted>,
    /// How many more insulated conductors of each size would fit, of that size alone, whatever is not said. Absent when not determined.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub room_left: Option<Vec<Room>>,
}

/// What a line of the tally is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Item {
    /// Insulated and other conductors that are not grounding conductors.
    Conductors,
    /// Internal clamps.
    Clamps,
    /// Support fittings.
    SupportFittings,
    /// Devices and equipment on yokes.
    Devices,
    /// Grounding conductors and bonding jumpers.
    Grounding,
    /// A separate set of isolated grounding conductors.
    IsolatedGrounding,
    /// Terminal blocks.
    TerminalBlocks,
    /// Fixture wires from a canopy.
    FixtureWires,
    /// Small parts.
    SmallParts,
}

/// The inputs that a line comes from, mostly one or two.
pub type Places = SmallVec<[Pointer; 2]>;

/// One thing that was counted.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct TallyLine {
    /// What it is.
    pub what: Item,
    /// The conductor size whose allowance is taken.
    #[schema(value_type = String, example = "12 AWG")]
    pub size: ConductorSize,
    /// How many allowances.
    pub allowances: Figure,
    /// What one allowance is.
    pub each: Figure,
    /// What they come to.
    pub volume: Figure,
    /// The rule that counts it.
    #[schema(value_type = String, example = "outlet-fill.conductors")]
    pub rule: &'static str,
    /// The caller's names for the devices, where given.
    #[serde(skip_serializing_if = "SmallVec::is_empty")]
    #[schema(value_type = Vec<String>)]
    pub ids: SmallVec<[Name; 1]>,
    /// The inputs that it comes from.
    #[schema(value_type = Vec<Pointer>)]
    pub at: Places,
}

/// One thing that was left out.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct NotCounted {
    /// What it is.
    pub what: Item,
    /// The rule that leaves it out.
    #[schema(value_type = String, example = "outlet-fill.conductors")]
    pub rule: &'static str,
    /// The reason, which `reasons` of the answer puts in words.
    #[schema(value_type = String, example = "stays-inside")]
    pub because: &'static str,
    /// The input that is left out.
    pub at: Pointer,
    /// The step of the proof that says so.
    pub step: StepId,
}

/// Room for more conductors of one size.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct Room {
    /// The size.
    #[schema(value_type = String, example = "12 AWG")]
    pub size: ConductorSize,
    /// How many more would fit.
    pub conductors: Figure,
}
