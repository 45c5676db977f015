//! What enters the box: wiring, and fasteners.

use crate::checks::Name;
use crate::quantity::{Offset, converts};
use crate::trade::ConductorSize;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// What kind of wiring enters.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum EntryWiring {
    /// Nonmetallic-sheathed cable.
    NonmetallicSheathedCable,
    /// Multiconductor underground feeder cable.
    UndergroundFeederCable,
    /// Armored or metal-clad cable.
    ArmoredCable,
    /// A metal raceway.
    MetalRaceway,
    /// A nonmetallic raceway.
    NonmetallicRaceway,
    /// Flexible cord, open wiring or another way.
    Other,
}

/// One entry of the box.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct WiringEntry {
    /// A name, so that the answer can speak of it.
    pub id: Option<Name>,
    /// What enters.
    pub wiring: EntryWiring,
    /// Whether it is secured to the box.
    pub secured: Option<bool>,
    /// For a cable: how far its sheath reaches inside the box, in the request's units.
    pub sheath_inside: Option<Offset>,
    /// For a cable with a nonmetallic sheath: a clamp inside the box that it comes through. Leave it out where a connector
    /// outside of the box or nothing holds it.
    pub clamp_inside: Option<ClampInside>,
    /// For a cable that is not secured to the box: how far from the box it is first fastened, along its sheath. In the
    /// request's units.
    pub fastened_at: Option<Offset>,
    /// For a cable: whether it comes in a raceway that is complete from end to end.
    #[schema(extensions(("x-role" = json!("relief"))))]
    pub in_complete_raceway: Option<bool>,
    /// For a raceway: the largest insulated circuit conductor that enters here. From 4 AWG on, one of the next four protects it.
    pub largest_insulated_conductor: Option<ConductorSize>,
    /// Whether a smooth, rounded insulating fitting protects it.
    pub insulating_fitting: Option<bool>,
    /// Whether a listed metal fitting with smooth, rounded edges protects it.
    pub listed_metal_fitting: Option<bool>,
    /// Whether insulating material that is fastened in place separates it from fitting and raceway.
    pub fastened_separation: Option<bool>,
    /// Whether it enters through a threaded hub or boss that is part of the box, with a smooth, rounded or flared end.
    pub rounded_hub: Option<bool>,
    /// Whether what protects it was in place before the conductors were pulled in. Asked from 2023; a hub or boss always is.
    pub protected_before_conductors: Option<bool>,
    /// Whether it enters the side of the box with a locknut or bushing.
    pub locknut_on_side: Option<bool>,
}

/// A clamp inside the box that a cable comes through.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct ClampInside {
    /// How far the sheath reaches past the end of the clamp, in the request's units; 0 where it ends there.
    pub sheath_past: Option<Offset>,
}

/// Openings in the box that nothing uses.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct UnusedOpenings {
    /// Whether all of them are closed, so that they protect about as well as the wall of the box.
    pub closed_like_the_wall: Option<bool>,
}

/// What a fastener goes through.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum FastenerThrough {
    /// It is a screw that holds the cover.
    CoverScrew,
    /// It goes through the cover, for another purpose.
    Cover,
    /// It goes through a wall of the box.
    Wall,
}

/// A screw or another fastener, put in on site, that reaches into the wiring space.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Fastener {
    /// A name, so that the answer can speak of it.
    pub id: Option<Name>,
    /// What it goes through.
    pub through: FastenerThrough,
    /// Whether it is what the maker of the box provides or specifies: nothing more is then asked.
    #[schema(extensions(("x-role" = json!("relief"))))]
    pub as_maker_specifies: Option<bool>,
    /// Whether it is a machine screw with a blunt end, or another fastener with a blunt end.
    pub blunt: Option<bool>,
    /// How far it stands inside the box, in the request's units; 0 where it ends flush with the wall.
    pub reach: Option<Offset>,
    /// Whether an approved means protects its end, so that it may reach farther. Serves in boxes, not in conduit bodies.
    #[schema(extensions(("x-role" = json!("relief"))))]
    pub protected_end: Option<bool>,
    /// For a fastener through a wall: whether it is a nail or screw that mounts the box.
    pub mounts_box: Option<bool>,
    /// For a fastener through a wall: how far it stands from the nearest adjacent wall, in the request's units.
    pub from_adjacent_wall: Option<Offset>,
}

converts! {
    WiringEntry { sheath_inside, clamp_inside, fastened_at }
    ClampInside { sheath_past }
    Fastener { reach, from_adjacent_wall }
}
