//! What is asked: the enclosure, what is in it, and how disputed points are to be read.

mod contents;
mod enclosure;

pub use contents::*;
pub use enclosure::*;

use crate::checks::{Amendment, Name, Reference, present};
use crate::quantity::{Count, Units, Volume};
use crate::rulebook::Edition;
use crate::rulebook::reading::{
    CanopyWires, DeviceLeads, FanCanopy, LoopThreshold, MoldedClamps, RailSplices, Readings, SmallConductors,
    UnmarkedLargeBox,
};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// The most items of any list.
pub const MOST_ITEMS: usize = 200;

/// How many of one thing.
pub type Many = Count<1000>;
/// How many gangs.
pub type Gangs = Count<20>;
/// How many insulated conductors one cable has.
pub type CableConductors = Count<50>;

/// One outlet, device or junction box with what enters it: what volume is required, and is it there?
///
/// Leave `enclosure` out to ask only what volume is required and which standard boxes would do.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct OutletFillRequest {
    /// The edition of NFPA 70.
    #[serde(default)]
    pub edition: Edition,
    /// Accept rules that could not be verified. Required to be true for the 2026 edition, whose text was not available.
    #[serde(default, skip_serializing_if = "is_false")]
    pub accept_unverified_rules: bool,
    /// The units of every volume and length in the request and the answer.
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
    /// How disputed points are to be read, where not in the default way.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub interpretations: Option<OutletFillInterpretations>,
    /// The box and what is added to it. Leave it out for a sizing question: the verdict is then null.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub enclosure: Option<Enclosure>,
    /// The opening of the box and how deep behind it conductors emerge: decides how long a loop must be to count twice.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub opening: Option<Opening>,
    /// What is in a box without barriers. Give either this or `spaces`.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub contents: Option<Contents>,
    /// The separate spaces that barriers make, each with its own contents and its own verdict.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schema(max_items = 200)]
    pub spaces: Vec<Space>,
}

fn is_false(flag: &bool) -> bool {
    !flag
}

/// How disputed points of the fill rules are to be read.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct OutletFillInterpretations {
    /// More than four small fixture wires from a canopy.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub canopy_wires: Option<CanopyWires>,
    /// Whether a ceiling fan's canopy is a luminaire's canopy.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub fan_canopy: Option<FanCanopy>,
    /// Spring tabs molded into a plastic box.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub molded_clamps: Option<MoldedClamps>,
    /// Which conductor sizes a device that comes with its own leads.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub device_leads: Option<DeviceLeads>,
    /// How long a loop must be to count twice.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub loop_threshold: Option<LoopThreshold>,
    /// Splicing terminals on a mounting rail.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub rail_splices: Option<RailSplices>,
    /// Conductors smaller than 18 AWG.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub small_conductors: Option<SmallConductors>,
    /// A large box with neither mark nor row in the table.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub unmarked_large_box: Option<UnmarkedLargeBox>,
}

impl OutletFillInterpretations {
    /// The readings that are chosen, on top of those given.
    pub fn apply(&self, readings: Readings) -> Readings {
        let Self {
            canopy_wires,
            fan_canopy,
            molded_clamps,
            device_leads,
            loop_threshold,
            rail_splices,
            small_conductors,
            unmarked_large_box,
        } = *self;
        readings
            .choose(canopy_wires)
            .choose(fan_canopy)
            .choose(molded_clamps)
            .choose(device_leads)
            .choose(loop_threshold)
            .choose(rail_splices)
            .choose(small_conductors)
            .choose(unmarked_large_box)
    }
}

/// One of the spaces that barriers make. Its share of the box is by gangs, or by its measured volume, for all alike.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Space {
    /// A name for the space.
    pub id: Name,
    /// How many gangs of the box it covers.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub gangs: Option<Gangs>,
    /// Its measured volume: the box is shared out in proportion to these.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub measured_volume: Option<Volume>,
    /// What is in it.
    pub contents: Contents,
}
