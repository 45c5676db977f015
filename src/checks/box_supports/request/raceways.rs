//! Raceways that hold an enclosure.

use crate::quantity::{Count, Length, Weight, converts};
use crate::tables::supporting_raceways::SupportingRaceway;
use crate::trade::TradeSize;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// How many stems a pendant has.
pub type Stems = Count<20>;

/// Held by the raceways that enter it. Name those that are to hold it; others that enter need not be named.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct RacewaySupport {
    /// Whether the enclosure has threaded entries, or hubs identified for the purpose.
    pub threaded_entries_or_hubs: Option<bool>,
    /// Whether all of them enter on the same side.
    pub entries_on_one_side: Option<bool>,
    /// The raceways that hold it.
    #[serde(default)]
    #[schema(max_items = 200)]
    pub conduits: Vec<SupportingConduit>,
}

/// One raceway that holds an enclosure.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SupportingConduit {
    /// The kind.
    pub kind: SupportingRaceway,
    /// The trade size: decides whether it may hold a conduit body alone.
    pub trade_size: Option<TradeSize>,
    /// Whether it is threaded wrenchtight into the enclosure or its hub.
    pub threaded_wrenchtight: Option<bool>,
    /// The distance from the enclosure to where the raceway is secured, in inches or millimetres.
    pub secured_within: Option<Length>,
}

/// A luminaire, or a box that carries one, on unbroken rigid or intermediate metal conduit.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct LuminaireOnConduit {
    /// The conduits that carry it.
    #[serde(default)]
    #[schema(max_items = 200)]
    pub conduits: Vec<UnbrokenConduit>,
    /// Whether unqualified persons can reach it.
    pub accessible_to_unqualified: Option<bool>,
    /// The height of its lowest point above grade or where people stand, in inches or millimetres.
    pub height: Option<Length>,
    /// The horizontal distance, up to the height that is asked, from windows, doors, porches, fire escapes and the like, in inches or millimetres. Give the distance to the nearest, however far.
    pub horizontal_clearance: Option<Length>,
    /// How far the luminaire reaches in any direction from the entry of a single conduit, in inches or millimetres.
    pub extent: Option<Length>,
    /// Whether the luminaire is secured directly to the box or conduit body.
    pub secured_directly: Option<bool>,
    /// The length of the threaded nipple between them where it is not secured directly, in inches or millimetres.
    pub nipple_length: Option<Length>,
}

/// One unbroken conduit that carries a luminaire.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct UnbrokenConduit {
    /// The kind.
    pub kind: SupportingRaceway,
    /// The length beyond its last support, in inches or millimetres.
    pub beyond_last_support: Option<Length>,
    /// The unbroken length before its last support, in inches or millimetres.
    pub unbroken_before_support: Option<Length>,
    /// The distance from the last support to where that length is fastened, in inches or millimetres.
    pub fastened_before_support: Option<Length>,
    /// The weight that it carries, in pounds or kilograms.
    pub weight: Option<Weight>,
    /// Whether it is threaded wrenchtight at the luminaire.
    pub threaded_wrenchtight: Option<bool>,
}

/// A luminaire, or a box that carries one, hung from stems of conduit.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct ConduitPendant {
    /// The kind of conduit.
    pub conduit: SupportingRaceway,
    /// How many stems there are. 1 unless said otherwise.
    #[schema(extensions(("x-role" = json!("default"))))]
    pub stems: Option<Stems>,
    /// The length of the longest stem, in inches or millimetres.
    pub length: Option<Length>,
    /// Whether the stems hang from listed swivel hangers.
    pub swivel_hangers: Option<bool>,
    /// Whether the stems have other flexible fittings. In 2017 these may serve instead; from 2020 on they do not.
    pub flexible_fitting: Option<bool>,
    /// Whether the stems are threaded wrenchtight at the luminaire.
    pub threaded_wrenchtight: Option<bool>,
    /// Whether the joints of a single stem are kept from loosening, by set screws or as effectively.
    pub joints_secured: Option<bool>,
    /// The height of the lowest point of the luminaire above grade or where people stand, in inches or millimetres.
    pub height: Option<Length>,
    /// The horizontal distance, up to the height that is asked, from windows, doors, porches, fire escapes and the like, in inches or millimetres. Give the distance to the nearest, however far.
    pub horizontal_clearance: Option<Length>,
    /// How far the luminaire reaches horizontally from the entry of a single stem, in inches or millimetres.
    pub extent: Option<Length>,
}

converts! {
    RacewaySupport { conduits }
    SupportingConduit { secured_within }
    LuminaireOnConduit { conduits, height, horizontal_clearance, extent, nipple_length }
    UnbrokenConduit { beyond_last_support, unbroken_before_support, fastened_before_support, weight }
    ConduitPendant { length, height, horizontal_clearance, extent }
}
