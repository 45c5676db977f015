//! How the box sits in its surface, what covers and extends it, and how it is reached.

use crate::quantity::{Area, Length, Offset, converts};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// The surface in which a box opens.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct FlushSurface {
    /// Whether the surface burns: wood does; masonry, drywall and ceramic do not.
    pub combustible: Option<bool>,
    /// How far the front edge of the box, ring or extender lies behind the finished surface, in the request's units; 0
    /// where it is flush or projects.
    pub setback: Option<Offset>,
    /// The widest gap between the surface and the edge of the box, in the request's units.
    pub gap: Option<Offset>,
    /// Whether the cover or plate of the box is of the flush kind. It is taken to be one where that is not said; around a box
    /// with another cover no gap is asked about.
    #[schema(extensions(("x-role" = json!("relief"))))]
    pub flush_cover: Option<bool>,
}

/// A flush device in the box.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct FlushDevice {
    /// Whether the box surrounds it on every side but the front.
    pub enclosed: Option<bool>,
    /// Whether screws of its own hold it, not those that hold the box.
    pub own_screws: Option<bool>,
}

/// What the extension from a flush box is made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum ExtensionMeans {
    /// An extension ring.
    ExtensionRing,
    /// Another box over the first.
    AnotherBox,
    /// The cover of the box, from which wiring goes on.
    Cover,
}

/// An extension from a flush box over the surface.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SurfaceExtension {
    /// What it is made of.
    pub means: ExtensionMeans,
    /// Whether it is mounted over the box and mechanically secured to it. Asked of a ring and of another box.
    pub mechanically_secured: Option<bool>,
    /// Whether equipment grounding goes on through it. Asked of a ring and of another box.
    pub grounding_continues: Option<bool>,
    /// Whether the other box is listed to serve as an extension. No text asks it; the answer says so where it is not said.
    pub listed_as_extension: Option<bool>,
    /// Whether the cover does not come off by itself, even when its screws are loose.
    pub cover_stays_on: Option<bool>,
    /// Whether the wiring bends and is long enough to lift the cover away and reach inside.
    pub wiring_lets_cover_come_off: Option<bool>,
    /// Whether grounding holds without the contact between cover and box.
    pub grounding_independent_of_cover: Option<bool>,
}

/// How far an installation has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Stage {
    /// Boxes and wiring are in, finishes and covers are not.
    RoughIn,
    /// It is completed.
    Finished,
}

/// What covers the box.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct FittedCover {
    /// Whether the box has a cover, faceplate, lampholder or canopy; whether a conduit body ends with a cover, a lampholder or a
    /// device.
    pub fitted: Option<bool>,
    /// Whether, instead, a discharge or LED luminaire reaches over the box, is not held by the box alone, and has openings in its
    /// back through which the wiring is reached.
    #[schema(extensions(("x-role" = json!("relief"))))]
    pub luminaire_with_open_back: Option<bool>,
    /// Screws that hold it in place of those that came with it. Leave them out where there are none.
    pub screws: Option<CoverScrews>,
    /// A combustible finish that is exposed between the edge of a canopy and the box.
    pub combustible_finish: Option<CombustibleFinish>,
    /// The cord of a pendant that leaves through the cover.
    pub pendant_cord: Option<PendantCord>,
}

/// Screws that were put in on site to hold a cover.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct CoverScrews {
    /// Whether they are machine screws that fit the threads of the box, or are those of the instructions.
    pub match_threads: Option<bool>,
}

/// The cord of a pendant that leaves through a cover.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct PendantCord {
    /// Whether a bushing or a rounded, smooth edge protects it there.
    pub bushed: Option<bool>,
}

/// A combustible finish under a canopy, that of a luminaire or of a ceiling fan.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct CombustibleFinish {
    /// The area that is exposed between the edge of the canopy and the box, in the request's units.
    pub exposed_area: Option<Area>,
    /// Whether noncombustible material covers it.
    pub covered: Option<bool>,
}

/// Where a box is reached.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum AccessPlace {
    /// In or on a building.
    Building,
    /// Underground.
    Underground,
}

/// Whether the wiring in the box can be reached.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Access {
    /// Where the box is.
    pub place: AccessPlace,
    /// Whether the wiring is reached while the building stays as it is and, underground, the ground above stays as it is. In a
    /// building a cover that is fitted in the surface in which the box opens proves it.
    pub reachable: Option<bool>,
    /// For a box underground that is covered up: what lets it be.
    pub under_loose_cover: Option<LooseCover>,
    /// The opening that the finish leaves over a recessed box.
    pub finish_opening: Option<FinishOpening>,
}

/// What lets a box underground be covered up.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct LooseCover {
    /// Whether the box is listed.
    pub listed_box: Option<bool>,
    /// Whether nothing but gravel, other light stone, or soil that does not stick together lies over it.
    pub only_loose_material: Option<bool>,
    /// Whether its place is identified and can be dug out. Asked before 2023.
    pub place_identified: Option<bool>,
    /// Whether its place is described well enough to dig it out, and those who may do so have the description. Asked from 2023.
    pub place_described: Option<bool>,
}

/// The opening that the finish leaves over a recessed box: two sides, or the diameter of a round one.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct FinishOpening {
    /// Whether the tentative interim amendment on these openings is in force where the box is. In an edition that holds
    /// them in its text this decides nothing.
    pub interim_amendment_in_force: Option<bool>,
    /// Whether the opening leaves the whole box open, up to its outer walls.
    pub whole_box_open: Option<bool>,
    /// Whether it is smaller because it fits the individual device in it.
    pub fits_device: Option<bool>,
    /// Whether it stays within the walls of the box.
    pub within_box_walls: Option<bool>,
    /// How far its center lies from that of the box, in the request's units.
    pub off_center: Option<Offset>,
    /// The longer side, in the request's units.
    pub long_side: Option<Length>,
    /// The shorter side, in the request's units.
    pub short_side: Option<Length>,
    /// The diameter of a round opening, in the request's units.
    pub diameter: Option<Length>,
}

converts! {
    FlushSurface { setback, gap }
    FittedCover { combustible_finish }
    CombustibleFinish { exposed_area }
    Access { finish_opening }
    FinishOpening { off_center, long_side, short_side, diameter }
}
