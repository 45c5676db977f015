//! What is asked: the body, the raceways attached to it, and the conductors in it.

use crate::checks::outlet_fill::Contents;
use crate::checks::pulls::{ConductorGroup, Marking};
use crate::checks::request::{interpretations, request};
use crate::quantity::{Area, Length, Volume, converts};
use crate::rulebook::reading::{
    ConductorArea, EntDimensions, EntryDistance, LargeSpliceCount, ListedBodyArea, MarkedSize, RacewayArea,
    SmallConductors, SplicedConductor, StraightSplice,
};
use crate::trade::{ConductorSize, RacewayKind, TradeSize};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

request! {
    /// One conduit body: may it hold these conductors?
    ///
    /// Conductors of 6 AWG and smaller are checked by cross-section and number, splices by the marked volume; conductors of
    /// 4 AWG and larger by length, as in a pull box. A body with both must satisfy both. Bodies of systems over 1000 V are not
    /// asked about here: what 314.71 asks goes by the cables, and whether a mark relieves a body of that is disputed.
    pub struct ConduitBodyRequest {
        /// The units of every figure in the request and the answer.
        units,
        interpretations: ConduitBodyInterpretations,
        /// The body.
        #[serde(default)]
        pub body: ConduitBody,
        /// The raceways attached to it, one for each opening. Their places make its shape.
        #[schema(min_items = 2, max_items = 5)]
        pub hubs: Vec<Hub>,
        /// The conductors in it, and which openings they join.
        #[schema(min_items = 1, max_items = 50)]
        pub pulls: Vec<BodyPull>,
        /// What is spliced or connected in the body, counted as in an outlet box. Required where anything is.
        pub contents: Option<Contents>,
        /// The permanent marking of a listed body that is smaller than the lengths ask.
        pub marked: Option<Marking>,
    }
}

interpretations! {
    /// How disputed points are to be read for a conduit body.
    pub struct ConduitBodyInterpretations {
        /// Which inside area of a raceway is taken.
        raceway_area: RacewayArea,
        /// The area of RFH-1 and of fixture wires of its row in 18 AWG.
        conductor_area: ConductorArea,
        /// How wide electrical nonmetallic tubing is in 2017, between two texts whose tables differ.
        ent_dimensions: EntDimensions,
        /// Whether a spliced conductor is the same conductor on both sides of the splice.
        spliced_conductor: SplicedConductor,
        /// Whether conductors spliced between opposite openings also follow the straight rule.
        straight_splice: StraightSplice,
        /// From where to where the distance between two openings is measured.
        entry_distance: EntryDistance,
        /// Whether a marked conductor size is also the largest that may be used.
        marked_size: MarkedSize,
        /// Conductors smaller than 18 AWG.
        small_conductors: SmallConductors,
        /// Whether its listing shows that a body has the cross-section.
        listed_body_area: ListedBodyArea,
        /// Whether splices of conductors larger than 6 AWG are counted.
        large_splice_count: LargeSpliceCount,
    }
}

/// The body itself.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct ConduitBody {
    /// Whether it is a short-radius body: a capped elbow, a handy ell, a service-entrance elbow.
    pub short_radius: Option<bool>,
    /// Whether it is listed.
    pub listed: Option<bool>,
    /// Its inside cross-section.
    pub cross_section: Option<Area>,
    /// The largest raceway that it can be attached to, where larger than those that are.
    pub largest_raceway: Option<BodyRaceway>,
    /// The volume that its maker marked on it.
    pub marked_volume: Option<Volume>,
    /// Whether it is supported rigidly and securely, which a body with splices must be.
    pub rigidly_supported: Option<bool>,
    /// Whether it is listed, bends its conductors with at least the radius of a field bend of its raceway, and is
    /// marked as evaluated for all that its raceway may hold.
    pub evaluated_for_full_fill: Option<bool>,
    /// Whether its maker marked neither a volume nor conductors on it, nor, where `evaluated_for_full_fill` does not say
    /// otherwise, that it was evaluated for full fill.
    pub unmarked: Option<bool>,
    /// Inside, from end to end.
    pub length: Option<Length>,
    /// Inside, from side to side.
    pub width: Option<Length>,
    /// Inside, from the back to the cover.
    pub depth: Option<Length>,
}

/// A raceway.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct BodyRaceway {
    /// The kind.
    pub kind: RacewayKind,
    /// The trade size.
    pub trade_size: TradeSize,
}

/// Where an opening of the body is. The cover is opposite the back.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum HubPlace {
    /// One end.
    End,
    /// The other end.
    OppositeEnd,
    /// One side.
    Side,
    /// The other side.
    OppositeSide,
    /// The back, opposite the cover.
    Back,
}

/// An opening with its raceway.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Hub {
    /// Where it is.
    pub place: HubPlace,
    /// The raceway.
    pub raceway: BodyRaceway,
}

/// Conductors that join two openings.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct BodyPull {
    /// The two openings; or more where the conductors split, the first then being the one that holds all of them.
    #[schema(min_items = 2, max_items = 5)]
    pub between: Vec<HubPlace>,
    /// The conductors, grounding conductors among them.
    #[schema(min_items = 1, max_items = 50)]
    pub conductors: Vec<ConductorGroup>,
    /// Whether there is a splice of them in the body.
    #[serde(default)]
    #[schema(extensions(("x-role" = json!("thing"))))]
    pub spliced: bool,
    /// How far apart the two openings are, for conductors of 4 AWG and larger.
    pub distance: Option<Length>,
}

impl BodyPull {
    /// The largest insulated conductor, which decides how the body is checked.
    pub fn largest(&self) -> Option<ConductorSize> {
        self.conductors.iter().filter(|group| !group.bare).map(|group| group.size).max()
    }

    /// Whether it makes a pull box of the body, as conductors from some size on do.
    pub fn is_large(&self, from: ConductorSize) -> bool {
        self.largest() >= Some(from)
    }

    /// Whether it has conductors that are smaller, alone or beside larger ones; or none that makes a pull box of the body.
    pub fn has_small(&self, from: ConductorSize) -> bool {
        !self.is_large(from) || self.conductors.iter().any(|group| group.size < from)
    }
}

converts! {
    ConduitBodyRequest { body, pulls, contents }
    ConduitBody { cross_section, marked_volume, length, width, depth }
    BodyPull { distance }
}
