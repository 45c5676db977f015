//! What is in a box.

use super::{CableConductors, Gangs, Many};
use crate::checks::Name;
use crate::quantity::{Length, Volume};
use crate::trade::ConductorSize;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// What is in a box, or in one space of it. Order and grouping change no figure of the answer.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct Contents {
    /// Loose conductors, from raceways or named one by one. Not grounding conductors, which are in `grounding`.
    #[schema(max_items = 200)]
    pub conductors: Vec<Conductor>,
    /// Cables that end in the box.
    #[schema(max_items = 200)]
    pub cables: Vec<Cable>,
    /// Equipment grounding conductors and bonding jumpers, except those that `cables` bring.
    #[schema(max_items = 200)]
    pub grounding: Vec<Grounding>,
    /// What hangs from the box and brings its own wires into it.
    pub canopy: Option<Canopy>,
    /// Cable clamps and connectors.
    #[schema(max_items = 200)]
    pub clamps: Vec<Clamp>,
    /// Luminaire studs, hickeys and the like inside the box.
    #[schema(max_items = 200)]
    pub support_fittings: Vec<SupportFitting>,
    /// Devices and equipment, one entry for each yoke or strap.
    #[schema(max_items = 200)]
    pub devices: Vec<Device>,
    /// Terminal block assemblies.
    #[schema(max_items = 200)]
    pub terminal_blocks: Vec<TerminalBlock>,
    /// Small parts that take no allowance. Name them to have the answer say so.
    #[schema(max_items = 200)]
    pub small_parts: Vec<SmallPart>,
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
    /// The size of its wire-type grounding conductor. Leave it out where it has none.
    pub grounding: Option<ConductorSize>,
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
    #[serde(default)]
    #[schema(max_items = 200)]
    pub fixture_wires: Vec<Wire>,
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
    /// A clamp inside the box, whoever supplied it. All together take one allowance.
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
