//! What is answered about a conduit body.

use super::request::HubPlace;
use crate::checks::outlet_fill::{NotCounted, TallyLine};
use crate::checks::pulls::{AxisSize, EntryDistanceOf, PullKindOf};
use crate::derivation::Figure;
use serde::Serialize;
use utoipa::ToSchema;

/// The shape of a body, by the places of its openings.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum BodyShape {
    /// Two opposite openings.
    Straight,
    /// An opening at an end and one in the back, opposite the cover.
    BackOutlet,
    /// Two openings that are neither opposite nor in the back.
    SideOutlet,
    /// Three openings.
    Tee,
    /// Four openings or five.
    Cross,
}

/// What a conduit body must be, and what it is.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct ConduitBodyOutcome {
    /// Its shape.
    pub shape: BodyShape,
    /// The check by cross-section and number; absent where no pull holds only 6 AWG and smaller.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub small_conductors: Option<SmallInBody>,
    /// The check by length; absent where no pull holds 4 AWG or larger.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub large_conductors: Option<LargeInBody>,
    /// What is spliced or connected in the body, by volume; absent where nothing is.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub splices: Option<SplicesInBody>,
}

/// What conductors of 6 AWG and smaller ask.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct SmallInBody {
    /// The least cross-section of the body; absent for a short-radius one, and where the tables lack the raceway.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub required_cross_section: Option<Figure>,
    /// What the body has over it: negative when it falls short.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub margin: Option<Figure>,
    /// How full each opening is.
    pub hubs: Vec<HubFill>,
}

/// How full the raceway of an opening is.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct HubFill {
    /// The opening.
    pub place: HubPlace,
    /// How many conductors it holds.
    pub number: Figure,
    /// Their cross-section.
    pub area: Figure,
    /// The area that may be filled.
    pub allowed_area: Figure,
    /// The most conductors, where all are of one size.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub maximum: Option<Figure>,
}

/// What splices and devices take of a marked body.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct SplicesInBody {
    /// The volume that they require.
    pub required: Figure,
    /// The volume that is marked.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub available: Option<Figure>,
    /// What is left: negative when the body falls short.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub margin: Option<Figure>,
    /// What was counted.
    pub tally: Vec<TallyLine>,
    /// What was left out, and why.
    pub not_counted: Vec<NotCounted>,
}

/// What conductors of 4 AWG and larger ask.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct LargeInBody {
    /// From end to end.
    pub length: AxisSize,
    /// From side to side.
    pub width: AxisSize,
    /// From the back to the cover.
    pub depth: AxisSize,
    /// What each pull is.
    pub pulls: Vec<PullKindOf>,
    /// How far openings with the same conductors must be apart.
    pub distances: Vec<EntryDistanceOf>,
}
