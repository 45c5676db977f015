//! What is asked: the enclosure, and the means that hold it.

mod means;
mod raceways;

pub use means::*;
pub use raceways::*;

use crate::checks::request::request;
use crate::quantity::{Volume, converts};
use crate::trade::TradeSize;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// The most items of any list.
pub const MOST_ITEMS: usize = 200;

request! {
    /// One enclosure and what holds it: is it supported as 314.23 asks?
    ///
    /// Several means may be named. The enclosure complies when one of them is complete; what another lacks is then only worth
    /// knowing. When none is complete, the answer says of each what it lacks.
    pub struct BoxSupportsRequest {
        /// The units of every volume, length and weight in the request and the answer.
        units,
        /// What is held.
        pub enclosure: HeldEnclosure,
        /// What holds it: each means on its own. The order decides nothing.
        #[serde(default)]
        #[schema(max_items = 200)]
        pub means: Vec<SupportMeans>,
    }
}

/// What kind of enclosure it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum HeldKind {
    /// A box.
    Box,
    /// A conduit body.
    ConduitBody,
}

/// What is held.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct HeldEnclosure {
    /// What it is. Raceways and ceilings hold it as a box unless it is said to be a conduit body; a cord holds a box only.
    pub kind: Option<HeldKind>,
    /// Its volume, in in³ or cm³. A suspended ceiling, and raceways, hold only up to a volume.
    pub volume: Option<Volume>,
    /// The trade size of a conduit body; not for a box.
    pub trade_size: Option<TradeSize>,
    /// Whether it contains a device other than a splicing device, or supports a luminaire, a lampholder or other equipment.
    pub devices_or_luminaires: Option<bool>,
}

converts! {
    BoxSupportsRequest { enclosure, means }
    HeldEnclosure { volume }
}
