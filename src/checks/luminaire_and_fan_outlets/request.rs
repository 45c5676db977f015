//! What is asked: the box, what hangs from it, and whether a fan may come there.

use crate::checks::request::{interpretations, request};
use crate::checks::tagged::tagged;
use crate::quantity::{Count, Weight, converts};
use crate::rulebook::reading::InteriorWeightMark;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// How many screws.
pub type Screws = Count<20>;
/// The number of a screw: 6 for No. 6.
pub type ScrewNumber = Count<24>;

request! {
    /// One box and what it carries: may it?
    ///
    /// Leave `box` out to ask only what such a box must be: the verdict is then null, unless something that is said
    /// breaks a rule.
    pub struct LuminaireAndFanOutletsRequest {
        /// The units of every weight in the request and the answer.
        units,
        interpretations: LuminaireAndFanOutletsInterpretations,
        /// What hangs from the box.
        pub load: OutletLoad,
        /// The box.
        #[serde(rename = "box")]
        pub outlet_box: Option<OutletBox>,
        /// Whether a ceiling fan may come where a ceiling box is. From 2020 on, a ceiling box is settled without it only where it is
        /// listed for a fan.
        pub fan_location: Option<FanLocation>,
    }
}

interpretations! {
    /// How disputed points of boxes that carry something are to be read.
    pub struct LuminaireAndFanOutletsInterpretations {
        /// Which ceiling boxes are marked inside with the weight that they carry.
        interior_weight_mark: InteriorWeightMark,
    }
}

tagged! {
    /// What a box carries.
    pub enum OutletLoad by "kind" {
        /// A luminaire or lampholder.
        "luminaire" => Luminaire(HungLoad),
        /// Equipment other than a luminaire or a ceiling fan, such as a smoke alarm.
        "equipment" => Equipment(HungLoad),
        /// A ceiling-suspended (paddle) fan, with or without a luminaire on it.
        "ceiling_fan" => CeilingFan(FanLoad),
        /// A receptacle in a floor.
        "floor_receptacle" => FloorReceptacle(FloorReceptacle),
        /// Nothing yet: a ceiling box under a blank cover.
        "nothing" => Nothing(NothingHung),
    }
}

impl OutletLoad {
    /// Whether the box is in a ceiling.
    pub const fn is_on_ceiling(&self) -> bool {
        match self {
            Self::Luminaire(hung) | Self::Equipment(hung) => {
                matches!(hung.position, OutletPosition::Ceiling)
            }
            Self::CeilingFan(_) | Self::Nothing(_) => true,
            Self::FloorReceptacle(_) => false,
        }
    }
}

/// Where a box is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum OutletPosition {
    /// In or on a wall or another vertical surface.
    Wall,
    /// In or on a ceiling.
    Ceiling,
}

/// A luminaire, or other equipment, that hangs from a box.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct HungLoad {
    /// Where the box is.
    pub position: OutletPosition,
    /// Its weight, in pounds or kilograms.
    pub weight: Option<Weight>,
    /// Whether the structure carries it, independently of the box. Left out: the box carries it.
    #[schema(extensions(("x-role" = json!("relief"))))]
    pub carried_by_structure: Option<bool>,
    /// The screws that hold it, or its yoke, to the box. A light load may hang from any box by these.
    pub screws: Option<HoldingScrews>,
    /// The supporting receptacle and fitting that it hangs by, if it does.
    pub separable: Option<SeparableFitting>,
}

/// Screws of one size.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct HoldingScrews {
    /// How many there are.
    pub count: Screws,
    /// The number of their size: 6 for No. 6, 8 for No. 8.
    pub number: ScrewNumber,
}

/// A ceiling fan.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct FanLoad {
    /// Where the box is. A fan of this check hangs from a ceiling, so that a wall is refused.
    pub position: Option<OutletPosition>,
    /// Its weight with everything on it, in pounds or kilograms.
    pub weight: Option<Weight>,
    /// Whether the structure carries it, independently of the box. Left out: the box carries it.
    #[schema(extensions(("x-role" = json!("relief"))))]
    pub carried_by_structure: Option<bool>,
    /// The supporting receptacle and fitting that it hangs by, if it does.
    pub separable: Option<SeparableFitting>,
}

/// A receptacle in a floor.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct FloorReceptacle {
    /// Whether it is in the raised floor of a show window or the like, which the authority having jurisdiction judges free from damage, moisture and dirt. Left out: it is not.
    #[schema(extensions(("x-role" = json!("relief"))))]
    pub show_window_accepted: Option<bool>,
    /// Whether receptacle and cover are listed as an assembly for such a floor.
    pub listed_assembly: Option<bool>,
}

/// Nothing hangs from the ceiling box yet.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct NothingHung {}

/// A locking support and mounting receptacle with the fitting that goes into it. In 2023 it is called a weight-supporting ceiling
/// receptacle; its use on a wall rests on its listing.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct SeparableFitting {
    /// Whether the receptacle is listed.
    pub listed: Option<bool>,
    /// Whether receptacle and fitting are identified for one another, and for this orientation.
    pub compatible: Option<bool>,
    /// The weight that the combination is identified for, in pounds or kilograms.
    pub rated_weight: Option<Weight>,
}

/// The box.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct OutletBox {
    /// Whether it is designed or identified to carry a luminaire.
    pub identified: Option<bool>,
    /// The most weight that its maker marked on it, in pounds or kilograms. Left out: a load of no more than the 50 lb (23 kg)
    /// that a box without a mark carries by 314.27(A), or a fan of no more than the 35 lb (16 kg) of 314.27(C), needs no mark; of a
    /// heavier one it is not determined.
    pub marked_weight: Option<Weight>,
    /// Whether a weight is marked on it at all. Say no where none is.
    pub weight_marked: Option<bool>,
    /// Whether its marking is on the inside of the box. Left out, of a box that is listed for a fan: where 314.27(C) asks it, as its
    /// listing does; that it is not is then refused.
    pub marked_inside: Option<bool>,
    /// Whether it is listed for the weight that is marked.
    pub listed_for_weight: Option<bool>,
    /// Whether it is listed as the sole support of a ceiling fan.
    pub listed_for_fan: Option<bool>,
    /// Whether its maker marked it as suitable for a ceiling fan.
    pub marked_for_fan: Option<bool>,
    /// Whether it is listed for floors.
    pub listed_for_floor: Option<bool>,
}

/// Whether a ceiling fan may come where a ceiling box is, and what would hold it.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct FanLocation {
    /// Whether it is in a dwelling.
    pub dwelling: Option<bool>,
    /// Whether it is in a habitable room: one for living, sleeping, eating or cooking. Bathrooms, toilets, closets, halls, storage
    /// and utility rooms are none. Asked from 2020 on.
    pub habitable_room: Option<bool>,
    /// Whether the place is acceptable for a ceiling fan. Inspectors differ on how far from walls that begins.
    pub acceptable: Option<bool>,
    /// Whether spare, separately switched, ungrounded conductors are run to the box. Left out: none are. Asked in 2017.
    #[schema(extensions(("x-role" = json!("thing"))))]
    pub spare_conductors: Option<bool>,
    /// Whether framing that can carry a fan bracket can be reached, in any way. Asked in 2020.
    pub framing_access: Option<bool>,
    /// Whether that framing is reached directly through the box, without removing it. Asked from 2023 on.
    pub framing_access_through_box: Option<bool>,
}

converts! {
    LuminaireAndFanOutletsRequest { load, outlet_box }
    HungLoad { weight, separable }
    FanLoad { weight, separable }
    FloorReceptacle {}
    NothingHung {}
    SeparableFitting { rated_weight }
    OutletBox { marked_weight }
}
