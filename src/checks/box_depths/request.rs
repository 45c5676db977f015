//! What is asked: the box, and the devices and equipment that it encloses.

use crate::checks::Name;
use crate::checks::request::{interpretations, request};
use crate::quantity::{Length, Offset, Volume, converts};
use crate::rulebook::reading::{EqualDepth, RearCenterEntry};
use crate::trade::ConductorSize;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// The most items of any list.
pub const MOST_ITEMS: usize = 200;

request! {
    /// A box and what it encloses: how deep must it be, and is it?
    ///
    /// Leave `enclosure` out to ask only what depth is required: the verdict is then null, unless something that is said
    /// breaks a rule.
    pub struct BoxDepthsRequest {
        /// The units of every length and volume in the request and the answer.
        units,
        interpretations: BoxDepthsInterpretations,
        /// The box. Leave it out for a sizing question: the verdict is then null.
        pub enclosure: Option<DepthEnclosure>,
        /// Devices and equipment inside the box. None for a plain box, as with a splice box or one under a luminaire.
        #[serde(default)]
        #[schema(max_items = 200)]
        pub equipment: Vec<EnclosedEquipment>,
    }
}

interpretations! {
    /// How disputed points of the depth of boxes are to be read.
    pub struct BoxDepthsInterpretations {
        /// Behind which equipment on 12 or 10 AWG an entry at the center of the back asks for room.
        rear_center_entry: RearCenterEntry,
        /// Equipment that projects exactly as far as its box is deep.
        equal_depth: EqualDepth,
    }
}

/// The box, as it is installed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct DepthEnclosure {
    /// Depth inside, from the back to the plane on which devices are mounted, in the request's units.
    pub internal_depth: Option<Length>,
    /// Whether the box is identified for the equipment in it. Decides for equipment on conductors larger than 4 AWG.
    pub identified_for_equipment: Option<bool>,
    /// Whether it is a pull or junction box whose terminals have the wire-bending space of 312.6. Decides where the box is
    /// not identified for equipment on conductors larger than 4 AWG.
    pub pull_box_with_bending_space: Option<bool>,
    /// Its volume, in the request's units. Decides in the same case.
    pub volume: Option<Volume>,
}

/// A device or a piece of utilization equipment inside the box.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct EnclosedEquipment {
    /// A name, so that the answer can speak of it.
    pub id: Option<Name>,
    /// How far it projects behind the plane on which it is mounted, in the request's units.
    pub projection: Option<Offset>,
    /// The largest conductor that supplies it.
    pub largest_supply_conductor: Option<ConductorSize>,
    /// Whether conductors enter the box through the center of its back, behind this equipment.
    pub rear_center_entry: Option<bool>,
    /// Whether it is listed for installation in this very box: the listing then decides in place of the depths that go by its
    /// conductors. The box is as deep as the equipment projects all the same.
    pub listed_for_this_box: Option<bool>,
    /// An entry in use in a wall beside this equipment, other than the back. Asked from 2023 on.
    pub side_entry: Option<SideEntry>,
}

/// An entry in a wall beside a piece of equipment.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct SideEntry {
    /// Whether the equipment reaches past the center line of the entry.
    pub past_centerline: Option<bool>,
    /// The clearance between the equipment and the wall of the entry, in the request's units.
    pub clearance: Option<Offset>,
}

converts! {
    BoxDepthsRequest { enclosure, equipment }
    DepthEnclosure { internal_depth, volume }
    EnclosedEquipment { projection, side_entry }
    SideEntry { clearance }
}
