//! What is asked: the enclosure, what is in it, and how disputed points are to be read.

mod cable_grounding;
mod contents;
mod enclosure;
mod list;

pub use cable_grounding::CableGrounding;
pub use contents::*;
pub use enclosure::*;
pub use list::List;

use crate::checks::Name;
use crate::checks::request::{interpretations, request};
use crate::quantity::{Count, Volume, converts};
use crate::rulebook::reading::{
    BondingJumpers, CanopyWires, DeviceLeads, FanCanopy, LoopThreshold, MoldedClamps, RailSplices,
    SmallConductors, UnmarkedLargeBox,
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

request! {
    /// One outlet, device or junction box with what enters it: what volume is required, and is it there?
    ///
    /// Leave `enclosure` out to ask only what volume is required and which standard boxes would do.
    pub struct OutletFillRequest {
        /// The units of every volume and length in the request and the answer.
        units,
        interpretations: OutletFillInterpretations,
        /// The box and what is added to it. Leave it out for a sizing question: the verdict is then null.
        pub enclosure: Option<Enclosure>,
        /// The opening of the box and how deep behind it conductors emerge: decides how long a loop must be to count twice.
        pub opening: Option<Opening>,
        /// What is in a box without barriers. Give either this or `spaces`.
        pub contents: Option<Contents>,
        /// The separate spaces that barriers make, each with its own contents and its own verdict.
        #[serde(default)]
        #[schema(max_items = 200)]
        pub spaces: Vec<Space>,
    }
}

interpretations! {
    /// How disputed points of the fill rules are to be read.
    pub struct OutletFillInterpretations {
        /// More than four small fixture wires from a canopy.
        canopy_wires: CanopyWires,
        /// Whether a ceiling fan's canopy is a luminaire's canopy.
        fan_canopy: FanCanopy,
        /// Spring tabs molded into a plastic box.
        molded_clamps: MoldedClamps,
        /// Bonding jumpers that enter, from 2023 on.
        bonding_jumpers: BondingJumpers,
        /// Which conductor sizes a device that comes with its own leads.
        device_leads: DeviceLeads,
        /// How long a loop must be to count twice.
        loop_threshold: LoopThreshold,
        /// Splicing terminals on a mounting rail.
        rail_splices: RailSplices,
        /// Conductors smaller than 18 AWG.
        small_conductors: SmallConductors,
        /// A large box with neither mark nor row in the table.
        unmarked_large_box: UnmarkedLargeBox,
    }
}

/// One of the spaces that barriers make. Its share of the box is by gangs, or by its measured volume, for all alike.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Space {
    /// A name for the space.
    pub id: Name,
    /// How many gangs of the box it covers.
    pub gangs: Option<Gangs>,
    /// Its measured volume: the box is shared out in proportion to these.
    pub measured_volume: Option<Volume>,
    /// What is in it.
    pub contents: Contents,
}

converts! {
    OutletFillRequest { enclosure, opening, contents, spaces }
    Space { measured_volume, contents }
}
