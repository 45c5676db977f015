//! The box itself, moisture around it, and a handhole enclosure.

use crate::quantity::{Length, Volume, Weight, converts};
use crate::tables::standard_boxes::StandardBox;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// What a box is made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum MountedMaterial {
    /// Metal.
    Metal,
    /// Plastic, fiberglass or another nonmetallic material.
    Nonmetallic,
}

/// The shape of a box, as far as entries go by it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum BoxShape {
    /// Round: its sides are curved.
    Round,
    /// Octagonal, square, rectangular: its sides are flat.
    FlatSided,
}

/// The box itself.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct MountedBox {
    /// What it is made of. A box that is said to be metal is asked whether it is grounded.
    pub material: Option<MountedMaterial>,
    /// Its shape. Decides for locknuts and bushings on its side; that of a single-gang box is known, and so is that of a
    /// standard box unless its row takes in round boxes.
    pub shape: Option<BoxShape>,
    /// Its row of the table of standard metal boxes, where it has one. Its shape and, of a row that does not count by the gang, its
    /// volume are taken from it.
    pub standard: Option<StandardBox>,
    /// Its volume, without what rings and covers add, in the request's units; within a tenth of that of its row.
    pub volume: Option<Volume>,
    /// Whether it is a conduit body; a single-gang box is none.
    pub conduit_body: Option<bool>,
    /// Whether it is a single-gang box, nominally no larger than 2-1/4 by 4 in, in a wall or ceiling.
    pub single_gang_in_wall_or_ceiling: Option<bool>,
    /// Whether a metal box is grounded and bonded as Article 250 asks. Only where `material` is said.
    pub grounded: Option<bool>,
    /// Whether a nonmetallic box bonds all entries together inside, or is listed with bonding built into its threaded
    /// entries.
    pub bonds_all_entries: Option<bool>,
    /// Whether it is listed for damp locations.
    pub listed_for_damp_locations: Option<bool>,
    /// Whether it is listed for wet locations.
    pub listed_for_wet_locations: Option<bool>,
}

impl MountedBox {
    /// Whether it is a conduit body, where that is said or follows from its being a single-gang box or one of the table.
    pub(in super::super) fn is_conduit_body(self) -> Option<bool> {
        let by_gang = (self.single_gang_in_wall_or_ceiling == Some(true)).then_some(false);
        self.conduit_body.or(by_gang).or(self.standard.map(|_| false))
    }
}

/// How wet a location is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum LocationKind {
    /// Dry.
    Dry,
    /// Damp.
    Damp,
    /// Wet.
    Wet,
}

/// Moisture where the box is. Of a handhole enclosure nothing about it is asked.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Moisture {
    /// The location.
    pub location: LocationKind,
    /// Whether the box is so placed or fitted out that water neither gets in nor stays in it.
    pub kept_out: Option<bool>,
    /// Drain openings that were made on site.
    #[serde(default)]
    #[schema(max_items = 200)]
    pub drain_openings: Vec<DrainOpening>,
}

/// A drain opening that was made on site.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct DrainOpening {
    /// Its diameter, in the request's units.
    pub diameter: Length,
    /// Whether a listed drain fitting is in it, installed as its instructions say.
    pub listed_fitting: Option<bool>,
}

/// A handhole enclosure. About moisture nothing is asked of it, and of its volume neither.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Handhole {
    /// Whether it is identified for use in underground systems.
    pub identified: Option<bool>,
    /// Whether conductors and splices in it are listed for wet locations.
    pub wiring_listed_for_wet_locations: Option<bool>,
    /// Whether its cover is marked with what it serves, such as “electric”.
    pub cover_marked: Option<bool>,
    /// Whether its cover opens only with tools.
    pub cover_needs_tools: Option<bool>,
    /// The weight of its cover, in the request's units. Decides where the cover opens without tools.
    pub cover_weight: Option<Weight>,
    /// A metal cover and other exposed metal of it. Leave it out where nothing of it is metal.
    pub exposed_metal: Option<ExposedMetal>,
}

/// A metal cover and other exposed metal of a handhole enclosure.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct ExposedMetal {
    /// Whether all of it is bonded.
    pub bonded: Option<bool>,
}

converts! {
    MountedBox { volume }
    Moisture { drain_openings }
    DrainOpening { diameter }
    Handhole { cover_weight }
}
