//! What is asked: where conductors enter, which entries they join, and the box if there is one.

use super::interpretations::PullBoxInterpretations;
use crate::checks::Name;
use crate::checks::pulls::{Axis, ConductorGroup, Cover, EntryPosition, Marking, Wall};
use crate::checks::request::request;
use crate::quantity::{Conversion, Convert, Count, Length, converts};
use crate::trade::{ConductorSize, RacewayKind, TradeSize};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// The most entries of one request.
pub const MOST_ENTRIES: usize = 100;
/// The most pulls of one request.
pub const MOST_PULLS: usize = 200;
/// The most entries that one pull joins.
pub const MOST_JOINED: usize = 10;
/// The most items of any other list.
pub const MOST_ITEMS: usize = 50;

/// The number of a row on a wall.
pub type RowNumber = Count<20>;
/// How many of one thing.
pub type Many = Count<1000>;

request! {
    /// One pull or junction box: how large must it be, and is it?
    ///
    /// Whether a pull is straight, an angle or a U follows from the walls of its entries. Places in the box are measured
    /// inside, looking at the open cover: to the right from the left wall, up from the bottom wall, forward from the back.
    ///
    /// Leave `box` out to ask only what is required.
    pub struct PullBoxRequest {
        /// The units of every length in the request and the answer. With `si` a raceway counts with its metric designator.
        units,
        interpretations: PullBoxInterpretations,
        /// Whether the system is over 1000 V: every entry then names its
        /// `cables_over_1000_volts`, whose diameters count instead of raceways.
        #[serde(default)]
        pub over_1000_volts: bool,
        /// Where conductors enter and leave.
        #[schema(min_items = 1, max_items = 100)]
        pub entries: Vec<Entry>,
        /// Which entries the same conductors join.
        #[schema(min_items = 1, max_items = 200)]
        pub pulls: Vec<Pull>,
        /// The inside dimensions of the box. Leave it out for a sizing question: the verdict is then null.
        #[serde(rename = "box")]
        pub inside: Option<InsideBox>,
        /// The cover, which is the wall opposite the back.
        pub cover: Option<Cover>,
        /// The sections that permanent barriers make. Each is a box of its own: its entries name it, and their walls are
        /// the walls of the section, barriers included.
        #[serde(default)]
        #[schema(max_items = 50)]
        pub sections: Vec<BoxSection>,
        /// The permanent marking of a listed box that is smaller than the rules ask.
        pub marked: Option<Marking>,
        /// Whether its maker marked no conductors on it. A box that is smaller than the rules ask may be marked for that as long as
        /// this is not said.
        pub unmarked: Option<bool>,
        /// Whether the conductors are cabled or racked. Asked for when a side of the box is long.
        pub racked: Option<bool>,
        /// Power distribution blocks in the box.
        #[serde(default)]
        #[schema(max_items = 50)]
        pub power_distribution_blocks: Vec<DistributionBlock>,
        /// Ask for the smallest box in which every entry has a place.
        pub layout: Option<LayoutQuestion>,
    }
}

/// One place where a raceway or a cable enters the box: either `raceway` or `cable`, and over 1000 V the cables in it.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// A name for it.
    pub id: Name,
    /// The wall that it enters.
    pub wall: Wall,
    /// The row of the wall that it is in. A row of a side wall runs along the wall, at one depth; on the back rows may run either
    /// way. A side wall has one row unless said otherwise; on the back, entries without a row are grouped by their positions, and
    /// are one row where they have none. A row that the positions deny is refused.
    pub row: Option<RowNumber>,
    /// The section of a divided box.
    pub section: Option<Name>,
    /// The raceway.
    pub raceway: Option<RacewayEntry>,
    /// The cable.
    pub cable: Option<CableEntry>,
    /// The cables in it, in a system over 1000 V.
    #[serde(default)]
    #[schema(max_items = 50)]
    pub cables_over_1000_volts: Vec<CableOver1000Volts>,
    /// Where its centre is, in a box whose dimensions are given. Give it of every entry of a box or section, or of none.
    pub position: Option<EntryPosition>,
}

/// A raceway that enters the box.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct RacewayEntry {
    /// The kind. It changes no sum, since every raceway counts with its trade size; its outside diameter is the smallest hole that the
    /// raceway goes through.
    pub kind: Option<RacewayKind>,
    /// The trade size.
    pub trade_size: TradeSize,
    /// Its outside diameter, where distances between entries are to be measured from its edge and not from that of the trade size.
    pub outside_diameter: Option<Length>,
}

/// A cable that enters the box. It counts as the smallest raceway that its conductors would need.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CableEntry {
    /// Its conductors.
    #[schema(min_items = 1, max_items = 50)]
    pub conductors: Vec<ConductorGroup>,
    /// Its outside diameter, where entries are to be measured from its edge and not from that of the raceway it counts as.
    pub outside_diameter: Option<Length>,
}

/// What covers the conductors of a cable over 1000 V.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum CableCovering {
    /// Shielded.
    Shielded,
    /// Lead-covered.
    LeadCovered,
    /// Neither.
    Nonshielded,
}

/// Cables or single conductors of a system over 1000 V that enter together and are alike.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct CableOver1000Volts {
    /// The diameter over the sheath.
    pub outside_diameter: Length,
    /// What covers it.
    pub covering: CableCovering,
    /// The diameter of its largest single conductor over its own covering, for a cable of several conductors.
    pub conductor_diameter: Option<Length>,
    /// How many alike. 1 unless said otherwise.
    pub count: Option<Many>,
}

/// Conductors that join entries.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Pull {
    /// A name for it.
    pub id: Option<Name>,
    /// The entries that it joins: two; or more where the conductors split, the first then being the one that holds all
    /// of them.
    #[schema(min_items = 2, max_items = 10)]
    pub entries: Vec<Name>,
    /// The largest of the conductors. May be left out where an entry is a cable that says it, and over 1000 V.
    pub largest_conductor: Option<ConductorSize>,
    /// Whether that conductor is required to be insulated. A bare grounding conductor is not. Where it is not said, lengths
    /// are as for one that is, and whether they are asked at all is left open.
    pub insulated: Option<bool>,
    /// Whether there is a splice of the conductors in the box. Over 1000 V this changes nothing.
    #[serde(default)]
    #[schema(extensions(("x-role" = json!("thing"))))]
    pub spliced: bool,
    /// Whether the entries, on opposite walls, are out of line with one another.
    pub offset: Option<bool>,
    /// Whether the conductors are compact ones of AA-8000 aluminum, which bend in less room.
    #[serde(default)]
    #[schema(extensions(("x-role" = json!("relief"))))]
    pub compact_aa8000: bool,
}

/// Inside dimensions of a box. All three matter to a box that is judged, along which something is pulled or in which a hole has to
/// stand: one that is left out leaves that open.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct InsideBox {
    /// From the left wall to the right wall.
    pub width: Option<Length>,
    /// From the bottom wall to the top wall.
    pub height: Option<Length>,
    /// From the back to the cover.
    pub depth: Option<Length>,
}

/// A section of a box that permanent barriers divide.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct BoxSection {
    /// A name for it.
    pub id: Name,
    /// Its inside dimensions. Leave it out to ask only what is required.
    #[serde(rename = "box")]
    pub inside: Option<InsideBox>,
}

/// A power distribution block, or a bar for equipment grounding conductors, which may stand in any box.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct DistributionBlock {
    /// Whether it is a terminal bar for equipment grounding conductors.
    #[serde(default)]
    pub grounding_bar: bool,
    /// The section of a divided box that it is in.
    pub section: Option<Name>,
    /// Whether it is listed.
    pub listed: Option<bool>,
    /// Whether the box is as large as the instructions of the block ask.
    pub box_as_instructed: Option<bool>,
    /// Whether its terminals have the wire-bending space of 312.6.
    pub bending_space: Option<bool>,
    /// Whether no uninsulated live part is exposed in the box, with the cover on or off.
    pub live_parts_covered: Option<bool>,
    /// Whether conductors that pass through leave its terminals unobstructed.
    pub terminals_unobstructed: Option<bool>,
    /// Whether it is on the line side of the service equipment, where it must be marked for that.
    pub line_side_of_service: Option<bool>,
    /// Whether it is marked for use on the line side of service equipment.
    pub marked_for_line_side: Option<bool>,
}

/// What is asked of the placement of entries.
///
/// The box that is looked for has the least depth that the rules and the rows of its walls allow; at that depth the least
/// sum of width and height; of several such boxes it is the narrowest. Entries of a row are in line; entries on the
/// back without a row may stand anywhere, and count as one row.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct LayoutQuestion {
    /// The room between the edges of two neighbouring entries, for locknuts, bushings and tools. None unless said.
    pub clearance: Option<Length>,
    /// The room between the edge of an entry and the walls next to its own. None unless said.
    pub wall_clearance: Option<Length>,
    /// The step in which dimensions and places are looked for: 1/16 in. or 1 mm unless said.
    pub step: Option<Length>,
}

impl CableEntry {
    /// The largest of its conductors.
    pub fn largest(&self) -> Option<ConductorSize> {
        self.conductors.iter().map(|conductors| conductors.size).max()
    }
}

impl InsideBox {
    /// The dimension along a direction.
    pub(super) const fn side(&self, axis: Axis) -> Option<Length> {
        match axis {
            Axis::Width => self.width,
            Axis::Height => self.height,
            Axis::Depth => self.depth,
        }
    }

    /// Whether all three dimensions are said.
    pub(super) const fn is_whole(&self) -> bool {
        self.width.is_some() && self.height.is_some() && self.depth.is_some()
    }
}

impl Convert for PullBoxRequest {
    fn convert(&mut self, by: &Conversion) {
        self.entries.convert(by);
        self.inside.convert(by);
        self.sections.convert(by);
        // a layout is on a grid of the system that it is asked for in, and stays in it
        self.layout = None;
    }
}

converts! {
    Entry { raceway, cable, cables_over_1000_volts, position }
    RacewayEntry { outside_diameter }
    CableEntry { outside_diameter }
    CableOver1000Volts { outside_diameter, conductor_diameter }
    InsideBox { width, height, depth }
    BoxSection { inside }
}
