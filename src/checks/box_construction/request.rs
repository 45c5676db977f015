//! What is asked: the metal box and its cover.

use crate::checks::request::{interpretations, request};
use crate::quantity::{Length, Offset, Volume, converts};
use crate::rulebook::reading::ListingEvidencesConstruction;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

request! {
    /// A box, and a cover if it has one: is its metal thick enough, and can a grounding conductor be connected?
    ///
    /// Give no more than `material` and `volume` to ask only what thickness is required: the verdict is then null.
    pub struct BoxConstructionRequest {
        /// The units of every length and volume in the request and the answer.
        units,
        interpretations: BoxConstructionInterpretations,
        /// The box.
        pub enclosure: ConstructedBox,
        /// The cover of the box.
        pub cover: Option<MetalCover>,
    }
}

interpretations! {
    /// How disputed points of the construction of boxes are to be read.
    pub struct BoxConstructionInterpretations {
        /// Whether a listing is evidence of what the box is made like.
        listing_evidences_construction: ListingEvidencesConstruction,
    }
}

/// What a box is made of, as far as its thickness goes by it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum BoxMetal {
    /// Sheet steel.
    SheetSteel,
    /// Malleable iron.
    MalleableIron,
    /// Die-cast or permanent-mold cast metal.
    DieCast,
    /// Metal cast in another way, as sand-cast.
    OtherCast,
    /// Not metal: these rules do not apply.
    Nonmetallic,
}

/// The box.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ConstructedBox {
    /// What it is made of.
    pub material: BoxMetal,
    /// Its volume, in the request's units. Decides which thickness sheet steel needs.
    pub volume: Option<Volume>,
    /// Whether the box is listed. A listing is evidence of the thickness of its walls and of its means to connect a grounding conductor,
    /// unless it is read otherwise: what denies them beside it is refused.
    pub listed: Option<bool>,
    /// The thickness of its walls without coating, in the request's units. Left out of a listed box: what its listing asks.
    pub wall_thickness: Option<Length>,
    /// Whether it is listed as equal in strength to one of the required thickness, or is a listed short-radius body.
    pub listed_as_equal: Option<bool>,
    /// Whether it has a tapped hole or the like for an equipment grounding conductor. Left out of a listed box: it has one, as its
    /// listing asks.
    pub grounding_provision: Option<bool>,
}

impl BoxMetal {
    /// The name that a request uses.
    pub const fn name(self) -> &'static str {
        match self {
            Self::SheetSteel => "sheet_steel",
            Self::MalleableIron => "malleable_iron",
            Self::DieCast => "die_cast",
            Self::OtherCast => "other_cast",
            Self::Nonmetallic => "nonmetallic",
        }
    }
}

/// A cover. A metal one is of the material of its box, or lined with insulation; and as thick as its box. A listing serves for
/// both.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct MetalCover {
    /// What it is made of. Of one that is not metal nothing is asked here.
    pub material: Option<BoxMetal>,
    /// Its thickness, in the request's units.
    pub thickness: Option<Length>,
    /// Whether it is listed for the purpose.
    pub listed: Option<bool>,
    /// The thickness of an insulating lining that is firmly attached, in the request's units; 0 for none.
    pub lining_thickness: Option<Offset>,
}

converts! {
    BoxConstructionRequest { enclosure, cover }
    ConstructedBox { volume, wall_thickness }
    MetalCover { thickness, lining_thickness }
}
