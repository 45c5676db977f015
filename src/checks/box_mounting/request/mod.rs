//! What is asked: the box as it is installed, part by part. Only what is described is looked at.

mod enclosure;
mod surface;
mod wiring;

pub use enclosure::*;
pub use surface::*;
pub use wiring::*;

use crate::checks::{Amendment, Reference, present};
use crate::quantity::Units;
use crate::rulebook::Edition;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// The most items of any list.
pub const MOST_ITEMS: usize = 200;

/// A box as it is installed. Each part that is described is inspected; a part that is left out is not asked about.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct BoxMountingRequest {
    /// The edition of NFPA 70.
    #[serde(default)]
    pub edition: Edition,
    /// Accept rules that could not be verified. Required to be true for the 2026 edition, whose text was not available.
    #[serde(default, skip_serializing_if = "is_false")]
    pub accept_unverified_rules: bool,
    /// The units of every figure in the request and the answer.
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
    /// The box itself, as far as other parts go by it. A metal box is asked whether it is grounded.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub enclosure: Option<MountedBox>,
    /// The wall or ceiling around a box with a flush-type cover or faceplate. Leave it out for a surface-mounted box.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub flush_surface: Option<FlushSurface>,
    /// A flush device in the box.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub flush_device: Option<FlushDevice>,
    /// An extension from a flush box over the surface.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub extension: Option<SurfaceExtension>,
    /// What covers the box.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub cover: Option<FittedCover>,
    /// Whether its wiring can be reached.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub access: Option<Access>,
    /// What enters the box.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schema(max_items = 200)]
    pub entries: Vec<WiringEntry>,
    /// Openings in the box that nothing uses.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub unused_openings: Option<UnusedOpenings>,
    /// Screws and other fasteners put in on site that reach into the wiring space.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schema(max_items = 200)]
    pub fasteners: Vec<Fastener>,
    /// Moisture where the box is.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub moisture: Option<Moisture>,
    /// For a handhole enclosure: what is particular to it.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub handhole: Option<Handhole>,
}

fn is_false(flag: &bool) -> bool {
    !flag
}
