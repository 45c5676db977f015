//! What is in a box.

use super::{CableConductors, CableGrounding, Gangs, List, Many};
use crate::checks::Name;
use crate::quantity::{Length, Volume, converts};
use crate::trade::ConductorSize;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// What is in a box, or in one space of it. Order and grouping change no figure of the answer.
///
/// What is left out is not there, once anything is said: a list written out empty says that there is nothing of its kind, and
/// `nothing` that there is nothing at all. With all of it left out nothing is said about the contents, and nothing is decided.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Contents {
    /// Loose conductors, from raceways or named one by one. Not grounding conductors, which are in `grounding`.
    #[serde(skip_serializing_if = "List::is_unsaid")]
    #[schema(max_items = 200, value_type = Vec<Conductor>)]
    pub conductors: List<Conductor>,
    /// Cables that end in the box.
    #[serde(skip_serializing_if = "List::is_unsaid")]
    #[schema(max_items = 200, value_type = Vec<Cable>)]
    pub cables: List<Cable>,
    /// Equipment grounding conductors and bonding jumpers, except those that `cables` bring.
    #[serde(skip_serializing_if = "List::is_unsaid")]
    #[schema(max_items = 200, value_type = Vec<Grounding>)]
    pub grounding: List<Grounding>,
    /// What hangs from the box and brings its own wires into it.
    pub canopy: Option<Canopy>,
    /// Cable clamps and connectors. Left out where a cable enters, they are computed both ways.
    #[serde(skip_serializing_if = "List::is_unsaid")]
    #[schema(max_items = 200, value_type = Vec<Clamp>)]
    pub clamps: List<Clamp>,
    /// Luminaire studs, hickeys and the like inside the box.
    #[serde(skip_serializing_if = "List::is_unsaid")]
    #[schema(max_items = 200, value_type = Vec<SupportFitting>)]
    pub support_fittings: List<SupportFitting>,
    /// Devices and equipment, one entry for each yoke or strap.
    #[serde(skip_serializing_if = "List::is_unsaid")]
    #[schema(max_items = 200, value_type = Vec<Device>)]
    pub devices: List<Device>,
    /// Terminal block assemblies.
    #[serde(skip_serializing_if = "List::is_unsaid")]
    #[schema(max_items = 200, value_type = Vec<TerminalBlock>)]
    pub terminal_blocks: List<TerminalBlock>,
    /// Small parts that take no allowance. Name them to have the answer say so.
    #[serde(skip_serializing_if = "List::is_unsaid")]
    #[schema(max_items = 200, value_type = Vec<SmallPart>)]
    pub small_parts: List<SmallPart>,
    /// That there is nothing in the box.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub nothing: Option<bool>,
}

impl Contents {
    /// Contents about which nothing is said.
    pub const UNSAID: Self = Self {
        conductors: List::UNSAID,
        cables: List::UNSAID,
        grounding: List::UNSAID,
        canopy: None,
        clamps: List::UNSAID,
        support_fittings: List::UNSAID,
        devices: List::UNSAID,
        terminal_blocks: List::UNSAID,
        small_parts: List::UNSAID,
        nothing: None,
    };

    /// Whether nothing is said: no list is written out, and not that there is nothing.
    pub const fn is_unsaid(&self) -> bool {
        let lists_are_unsaid = self.conductors.is_unsaid()
            && self.cables.is_unsaid()
            && self.grounding.is_unsaid()
            && self.clamps.is_unsaid()
            && self.support_fittings.is_unsaid()
            && self.devices.is_unsaid()
            && self.terminal_blocks.is_unsaid()
            && self.small_parts.is_unsaid();
        lists_are_unsaid && self.canopy.is_none() && !matches!(self.nothing, Some(true))
    }

    /// The place of the first thing that is named; `None` where nothing is.
    pub fn first_thing(&self) -> Option<&'static &'static str> {
        let places: [(bool, &'static &'static str); 9] = [
            (!self.conductors.is_empty(), &"/contents/conductors"),
            (!self.cables.is_empty(), &"/contents/cables"),
            (!self.grounding.is_empty(), &"/contents/grounding"),
            (self.canopy.is_some(), &"/contents/canopy"),
            (!self.clamps.is_empty(), &"/contents/clamps"),
            (!self.support_fittings.is_empty(), &"/contents/support_fittings"),
            (!self.devices.is_empty(), &"/contents/devices"),
            (!self.terminal_blocks.is_empty(), &"/contents/terminal_blocks"),
            (!self.small_parts.is_empty(), &"/contents/small_parts"),
        ];
        places.into_iter().find(|(is_named, _)| *is_named).map(|(_, place)| place)
    }

    /// Whether a cable enters and nothing is said of clamps: then they may be inside.
    pub fn leaves_clamps_unsaid(&self) -> bool {
        self.clamps.is_unsaid() && !self.cables.is_empty()
    }
}

/// What a conductor does in the box.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Role {
    /// It enters and ends on a device or terminal, or is capped: counts 1.
    Terminated,
    /// It enters and is spliced: counts 1. The conductor that carries on is another entry.
    Spliced,
    /// It passes straight through, unbroken: counts 1.
    PassesThrough,
    /// It passes through in an unbroken loop or coil: counts 2 when long enough to be cut, otherwise 1.
    Loop,
    /// No part of it leaves the box, as with a pigtail or a jumper between devices: counts 0.
    StaysInside,
}

/// Conductors of one size that do the same thing.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Conductor {
    /// The size.
    pub size: ConductorSize,
    /// What it does in the box.
    pub role: Role,
    /// The length of an unbroken loop, from where it emerges to where it leaves. Required for a loop.
    pub loop_length: Option<Length>,
    /// How many alike. 1 unless said otherwise.
    pub count: Option<Many>,
}

/// The kind of a cable.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
pub enum CableKind {
    /// Nonmetallic-sheathed cable.
    #[serde(rename = "NM-B")]
    NmB,
    /// Underground feeder cable.
    #[serde(rename = "UF-B")]
    UfB,
    /// Armored cable. Its bonding strip is cut at the armor and is not a conductor in the box.
    #[serde(rename = "AC")]
    Ac,
    /// Metal-clad cable.
    #[serde(rename = "MC")]
    Mc,
    /// Service-entrance cable, round.
    #[serde(rename = "SER")]
    Ser,
    /// Service-entrance cable, flat.
    #[serde(rename = "SEU")]
    Seu,
    /// Tray cable.
    #[serde(rename = "TC-ER")]
    TcEr,
    /// Mineral-insulated cable.
    #[serde(rename = "MI")]
    Mi,
    /// Flexible cord.
    #[serde(rename = "cord")]
    Cord,
    /// Any other cable.
    #[serde(rename = "other")]
    Other,
}

/// Cables of one make-up. Each insulated conductor counts as one that ends in the box; capped ones count too.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Cable {
    /// The kind.
    pub kind: CableKind,
    /// The size of its insulated conductors.
    pub size: ConductorSize,
    /// How many insulated conductors it has: 2 for 12-2, 3 for 12-3.
    pub conductors: CableConductors,
    /// The size of its wire-type grounding conductor, or `none`. Left out, NM cable has one (334.108): of the size of the
    /// others up to 10 AWG, and above that of 10 AWG at the least. Another cable is computed with one and without.
    pub grounding: Option<CableGrounding>,
    /// Whether it is an existing cable, laid when NM cable was made without a grounding conductor too.
    pub existing_cable: Option<bool>,
    /// How many alike. 1 unless said otherwise.
    pub count: Option<Many>,
}

/// What a grounding conductor does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum GroundingKind {
    /// An equipment grounding conductor that enters the box.
    EquipmentGrounding,
    /// An equipment bonding jumper that enters the box.
    BondingJumper,
    /// A grounding conductor of a separate set for isolated-ground equipment.
    Isolated,
    /// A grounding pigtail or jumper no part of which leaves the box.
    StaysInside,
}

/// Grounding conductors of one size and kind.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Grounding {
    /// The size.
    pub size: ConductorSize,
    /// What it is.
    pub kind: GroundingKind,
    /// How many alike. 1 unless said otherwise.
    pub count: Option<Many>,
}

/// What covers or hangs from the box.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum CanopyKind {
    /// A luminaire with a domed canopy, or a canopy like it.
    DomedLuminaire,
    /// A luminaire without a canopy: its wires count.
    FlatLuminaire,
    /// A ceiling fan. Whether its canopy is like a luminaire's is disputed.
    CeilingFan,
}

/// A luminaire or fan whose wires enter the box from its canopy and end there.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Canopy {
    /// What it is.
    pub kind: CanopyKind,
    /// Its wires that enter the box.
    #[serde(default, skip_serializing_if = "List::is_unsaid")]
    #[schema(max_items = 200, value_type = Vec<Wire>)]
    pub fixture_wires: List<Wire>,
    /// Its grounding conductors that enter the box.
    #[serde(default)]
    #[schema(max_items = 200)]
    pub grounding: Vec<Wire>,
}

/// Wires of one size.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Wire {
    /// The size.
    pub size: ConductorSize,
    /// How many alike. 1 unless said otherwise.
    pub count: Option<Many>,
}

/// What kind of clamp or connector it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum ClampKind {
    /// A clamp inside the box, supplied with it or added. All together take one allowance.
    Internal,
    /// A spring tab molded into a plastic box. Whether it is an internal clamp is disputed.
    Molded,
    /// A connector whose clamping part is outside the box: no allowance.
    External,
    /// A listed assembly that also ends the cable's conductors: takes its own volume off the box.
    TerminatingAssembly,
}

/// Clamps of one kind.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Clamp {
    /// What it is.
    pub kind: ClampKind,
    /// The volume that one terminating assembly occupies; only for that kind.
    pub volume: Option<Volume>,
    /// Whether a terminating assembly is listed and marked for this box; only for that kind.
    pub listed_for_box: Option<bool>,
    /// How many alike. 1 unless said otherwise.
    pub count: Option<Many>,
}

/// What kind of support fitting it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum SupportFittingKind {
    /// A luminaire stud.
    Stud,
    /// A hickey.
    Hickey,
}

/// Support fittings of one type. Each type takes one allowance, however many there are of it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SupportFitting {
    /// The type.
    pub kind: SupportFittingKind,
    /// How many alike. 1 unless said otherwise.
    pub count: Option<Many>,
}

/// What is on a yoke.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum DeviceKind {
    /// A switch.
    Switch,
    /// A receptacle, single or duplex.
    Receptacle,
    /// Several devices on one yoke, such as a switch with a receptacle.
    Combination,
    /// A ground-fault or arc-fault device.
    ProtectiveDevice,
    /// A dimmer, timer, sensor or control.
    Control,
    /// Other equipment on a yoke or strap.
    Equipment,
}

/// One yoke or strap, with one or more devices or equipment on it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Device {
    /// A name for it.
    pub id: Option<Name>,
    /// What it is.
    pub kind: DeviceKind,
    /// The largest conductor connected to any device on this yoke: not the largest in the box.
    pub largest_conductor: Option<ConductorSize>,
    /// The size of leads that came with the device, joined to the circuit conductors by a connector.
    pub factory_leads: Option<ConductorSize>,
    /// How many gangs it needs for mounting. 1 unless said otherwise.
    pub gangs: Option<Gangs>,
    /// How many alike. 1 unless said otherwise.
    pub count: Option<Many>,
}

/// What kind of terminal block it is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum TerminalBlockKind {
    /// A terminal block assembly.
    #[default]
    TerminalBlock,
    /// Splicing terminals on a mounting rail. Whether they are a terminal block is disputed.
    RailSplices,
}

/// A terminal block assembly, whatever the number of its poles.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct TerminalBlock {
    /// What it is.
    #[serde(default)]
    pub kind: TerminalBlockKind,
    /// The largest conductor that ends on it.
    pub largest_conductor: Option<ConductorSize>,
    /// How many alike. 1 unless said otherwise.
    pub count: Option<Many>,
}

/// Parts that take no allowance.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum SmallPartKind {
    /// Twist-on, crimped or lever splicing connectors.
    WireConnector,
    /// Locknuts.
    Locknut,
    /// Bushings.
    Bushing,
    /// Grounding screws and clips.
    GroundingScrew,
    /// Cover and device screws.
    Screw,
    /// A crossbar that holds a luminaire.
    Crossbar,
    /// A metal raceway that serves as the grounding conductor.
    RacewayAsGround,
    /// The bonding strip of armored cable, cut at the armor.
    BondingStrip,
}

/// Small parts of one kind.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SmallPart {
    /// What it is.
    pub kind: SmallPartKind,
    /// How many alike. 1 unless said otherwise.
    pub count: Option<Many>,
}

converts! {
    Contents { conductors, clamps }
    Conductor { loop_length }
    Clamp { volume }
}
