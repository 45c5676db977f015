//! The box, what is fitted to it, and its opening.

use super::{Gangs, Many};
use crate::quantity::{Length, Volume, converts};
use crate::tables::standard_boxes::StandardBox;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// What a box is made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Material {
    /// Metal.
    Metal,
    /// Plastic, fiberglass or another nonmetallic material.
    Nonmetallic,
}

impl Material {
    /// The word for it in a request.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Metal => "metal",
            Self::Nonmetallic => "nonmetallic",
        }
    }
}

/// The box and what is added to it. Its volume comes from its mark, from the table of standard metal boxes, or, for a
/// large box with neither, from its inside measure.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Enclosure {
    /// A standard metal box.
    pub standard: Option<StandardBox>,
    /// How many gangs the box has. A standard device, masonry, FS or FD box has its table volume for each.
    pub gangs: Option<Gangs>,
    /// The volume that the maker marked on the box (all gangs together). It counts before the table does.
    pub marked_volume: Option<Volume>,
    /// The inside measure of a box that has neither a mark nor a row in the table.
    pub inside_dimensions: Option<InsideDimensions>,
    /// What the box is made of. A standard box is metal.
    pub material: Option<Material>,
    /// Rings, covers and extensions fitted to the box.
    #[schema(max_items = 200)]
    pub sections: Vec<Section>,
    /// Barriers that divide the box; `spaces` says what is on each side.
    #[schema(max_items = 200)]
    pub barriers: Vec<Barrier>,
}

/// Inside length, width and depth of a box, in the request's units.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct InsideDimensions {
    /// Inside length.
    pub length: Length,
    /// Inside width.
    pub width: Length,
    /// Inside depth.
    pub depth: Length,
}

/// What kind of section is added to a box.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum SectionKind {
    /// A plaster (mud) ring.
    PlasterRing,
    /// An extension ring.
    ExtensionRing,
    /// A raised cover.
    RaisedCover,
    /// A domed cover or canopy.
    DomedCover,
}

/// A ring, cover or extension. It adds the volume marked on it, or that of the standard box it is made from; with
/// neither it adds nothing.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Section {
    /// What it is.
    pub kind: SectionKind,
    /// The volume marked on it.
    pub marked_volume: Option<Volume>,
    /// How many gangs of devices it takes: the gangs of a square or octagonal box are those of its ring or cover.
    pub gangs: Option<Gangs>,
    /// The standard box that it is made from, where its dimensions are those of the table.
    pub standard: Option<StandardBox>,
    /// How many alike. 1 unless said otherwise.
    pub count: Option<Many>,
}

/// A securely installed barrier inside the box.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Barrier {
    /// What it is made of: decides what it takes when it is not marked. Left out of one that is not, both are tried.
    pub material: Option<Material>,
    /// The volume marked on it. A barrier that is not marked takes the volume that 314.16(A) gives for its material.
    pub marked_volume: Option<Volume>,
    /// How many alike. 1 unless said otherwise.
    pub count: Option<Many>,
}

/// The opening of the box.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Opening {
    /// The smallest dimension of the opening.
    pub smallest_dimension: Length,
    /// How far behind the plane of the opening conductors leave their raceway or sheath.
    pub conductor_depth: Option<Length>,
}

converts! {
    Enclosure { marked_volume, inside_dimensions, sections, barriers }
    InsideDimensions { length, width, depth }
    Section { marked_volume }
    Barrier { marked_volume }
    Opening { smallest_dimension, conductor_depth }
}
