//! What is asked: the metal box and its cover.

use crate::checks::{Amendment, Reference, present};
use crate::quantity::{Length, Offset, Units, Volume};
use crate::rulebook::Edition;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// A box, and a cover if it has one: is its metal thick enough, and can a grounding conductor be connected?
///
/// Give no more than `material` and `volume` to ask only what thickness is required: the verdict is then null.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct BoxConstructionRequest {
    /// The edition of NFPA 70.
    #[serde(default)]
    pub edition: Edition,
    /// Accept rules that could not be verified. Required to be true for the 2026 edition, whose text was not available.
    #[serde(default, skip_serializing_if = "is_false")]
    pub accept_unverified_rules: bool,
    /// The units of every length and volume in the request and the answer.
    #[serde(default)]
    pub units: Units,
    /// The caller's own mark.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub reference: Option<Reference>,
    /// Local amendments to figures of the rules, each with the caller's citation.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schema(max_items = 200)]
    pub amendments: Vec<Amendment>,
    /// The box.
    pub enclosure: ConstructedBox,
    /// A metal cover of the box.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub cover: Option<MetalCover>,
}

fn is_false(flag: &bool) -> bool {
    !flag
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
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub volume: Option<Volume>,
    /// The thickness of its walls without coating, in the request's units.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub wall_thickness: Option<Length>,
    /// Whether it is listed as equal in strength to one of the required thickness, or is a listed short-radius body.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub listed_as_equal: Option<bool>,
    /// Whether it has a tapped hole or the like for an equipment grounding conductor.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub grounding_provision: Option<bool>,
}

/// A metal cover. One of three serves: thickness, listing, or an insulating lining.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct MetalCover {
    /// Its thickness, in the request's units.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub thickness: Option<Length>,
    /// Whether it is listed for the purpose.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub listed: Option<bool>,
    /// The thickness of an insulating lining that is firmly attached, in the request's units; 0 for none.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub lining_thickness: Option<Offset>,
}
