//! The means that hold an enclosure, apart from raceways.

use super::{ConduitPendant, LuminaireOnConduit, RacewaySupport};
use crate::checks::tagged::tagged;
use crate::quantity::{Length, converts};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

tagged! {
    /// One means of support.
    pub enum SupportMeans by "kind" {
        /// Fastened on a building or another surface.
        "surface" => Surface(SurfaceSupport),
        /// Held by a structural member or from grade, directly or by a brace.
        "structural_member" => StructuralMember(StructuralSupport),
        /// Secured in a finished surface.
        "finished_surface" => FinishedSurface(FinishedSurfaceSupport),
        /// Fastened to the framing members of a suspended ceiling.
        "ceiling_framing" => CeilingFraming(CeilingFramingSupport),
        /// Secured to the support wires of a suspended ceiling.
        "ceiling_wires" => CeilingWires(CeilingWireSupport),
        /// Held by the raceways that enter it.
        "raceways" => Raceways(RacewaySupport),
        /// A luminaire or its box on unbroken metal conduit.
        "luminaire_on_conduit" => LuminaireOnConduit(LuminaireOnConduit),
        /// Embedded in concrete or masonry.
        "embedded" => Embedded(EmbeddedSupport),
        /// Hung from a cord.
        "cord_pendant" => CordPendant(CordPendant),
        /// Hung from stems of metal conduit.
        "conduit_pendant" => ConduitPendant(ConduitPendant),
    }
}

tagged! {
    /// How nails or screws hold the enclosure.
    pub enum SupportFasteners by "placement" {
        /// Through brackets outside the enclosure.
        "outside_brackets" => OutsideBrackets(OutsideBrackets),
        /// Through the maker's mounting holes in the back or in a single side.
        "mounting_holes" => MountingHoles(MountingHoles),
        /// Through the maker's mounting holes in more than one side. From 2020 on they serve like those of a single side.
        "mounting_holes_in_several_sides" => MountingHolesInSeveralSides(MountingHoles),
        /// Through mounting holes made in the field.
        "field_made_holes" => FieldMadeHoles(FieldMadeHoles),
        /// Through the inside of the enclosure.
        "through_inside" => ThroughInside(ThroughInside),
    }
}

tagged! {
    /// A brace between the enclosure and the structure.
    pub enum SupportBrace by "material" {
        /// Of metal.
        "metal" => Metal(MetalBrace),
        /// Of wood.
        "wood" => Wood(WoodBrace),
        /// Of a polymer.
        "polymeric" => Polymeric(PolymericBrace),
    }
}

/// What passes through the inside of an enclosure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum InsideFastener {
    /// Nails.
    Nails,
    /// Screws, whose exposed threads must be protected.
    Screws,
}

/// Fastened on a building or another surface.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SurfaceSupport {
    /// Whether it is rigidly and securely fastened in place, on a surface that is itself rigid.
    pub rigid: Option<bool>,
}

/// Held by a structural member or from grade: by fasteners, by a brace, or both.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct StructuralSupport {
    /// Whether it is held rigidly.
    pub rigid: Option<bool>,
    /// The nails or screws that hold it, if any do. Left out: none do. Those that are used are judged whatever else holds it.
    pub fasteners: Option<SupportFasteners>,
    /// The brace that holds it, if one does. Left out: none does.
    pub brace: Option<SupportBrace>,
}

/// Nails or screws through brackets outside the enclosure: nothing more is asked of them.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct OutsideBrackets {}

/// Nails or screws through the maker's mounting holes: nothing more is asked of them.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct MountingHoles {}

/// Nails or screws through mounting holes made in the field.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct FieldMadeHoles {
    /// Whether the authority having jurisdiction approved the holes. Left out: it did not.
    #[schema(extensions(("x-role" = json!("relief"))))]
    pub approved: Option<bool>,
}

/// Nails or screws through the inside of the enclosure.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ThroughInside {
    /// What passes through.
    pub fastener: InsideFastener,
    /// The largest distance from the back or the end that they pass by, in inches or millimetres.
    pub distance: Option<Length>,
    /// Whether the threads of screws inside are protected, so that they do not wear insulation.
    pub threads_protected: Option<bool>,
}

/// A metal brace.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct MetalBrace {
    /// Its thickness without coating, in inches or millimetres.
    pub thickness: Option<Length>,
    /// Whether it is protected against corrosion.
    pub corrosion_protected: Option<bool>,
}

/// A wood brace, by its nominal section: a 1 × 2 (25 mm × 50 mm) is enough.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct WoodBrace {
    /// Its nominal thickness, the smaller side, in inches or millimetres.
    pub nominal_thickness: Option<Length>,
    /// Its nominal width, in inches or millimetres.
    pub nominal_width: Option<Length>,
    /// Whether the location is wet.
    pub wet_location: Option<bool>,
    /// Whether the wood is treated for the conditions of a wet location.
    pub treated: Option<bool>,
}

/// A polymeric brace.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct PolymericBrace {
    /// Whether it is identified as suitable for the use.
    pub identified: Option<bool>,
}

/// Secured in a finished surface, such as a cut-in box.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct FinishedSurfaceSupport {
    /// Whether it is rigidly secured to the surface.
    pub rigid: Option<bool>,
    /// Whether the clamps, anchors or fittings are identified for the application.
    pub fittings_identified: Option<bool>,
}

/// Fastened to the framing members of a suspended ceiling.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CeilingFramingSupport {
    /// Whether it is fastened by bolts, screws or rivets, or by clips identified for the framing and the enclosure.
    pub fastened: Option<bool>,
    /// Whether the framing members are supported, and fastened to one another and to the building.
    pub framing_secured: Option<bool>,
}

/// Secured to support wires of a suspended ceiling.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CeilingWireSupport {
    /// Whether it is secured to the wires by methods identified for it.
    pub method_identified: Option<bool>,
    /// Whether the wires may carry it under 300.11: wires of its own, not those that hold the ceiling alone.
    pub independent_wires: Option<bool>,
    /// Whether the wires are fastened at both ends and taut.
    pub taut: Option<bool>,
}

/// Embedded in concrete or masonry.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct EmbeddedSupport {
    /// Whether it is identified as suitably protected from corrosion.
    pub corrosion_identified: Option<bool>,
    /// Whether it is securely embedded.
    pub secure: Option<bool>,
}

/// Hung from a multiconductor cord or cable.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CordPendant {
    /// Whether the conductors are protected from strain in an approved way, such as a strain-relief connector threaded into a hub.
    pub strain_relieved: Option<bool>,
    /// Whether the cord enters the box through a hub. Asked from 2023 on.
    pub hub: Option<bool>,
    /// Whether the cord is held at the hub by a listed cord grip that is marked for threaded hubs. Asked from 2023 on.
    pub cord_grip_listed: Option<bool>,
}

converts! {
    SurfaceSupport {}
    StructuralSupport { fasteners, brace }
    OutsideBrackets {}
    MountingHoles {}
    FieldMadeHoles {}
    ThroughInside { distance }
    MetalBrace { thickness }
    WoodBrace { nominal_thickness, nominal_width }
    PolymericBrace {}
    FinishedSurfaceSupport {}
    CeilingFramingSupport {}
    CeilingWireSupport {}
    EmbeddedSupport {}
    CordPendant {}
}
