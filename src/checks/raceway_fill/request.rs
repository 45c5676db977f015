//! What is asked: the raceway, what goes into it, and which kinds of raceway are to be sized.

use crate::checks::request::{interpretations, request};
use crate::quantity::{Count, Length, converts};
use crate::rulebook::reading::{ConductorArea, EntDimensions, FmcThreeEighths, RacewayArea};
use crate::trade::{ConductorSize, Covering, Insulation, RacewayKind, TradeSize};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// The most items of any list.
pub const MOST_ITEMS: usize = 200;

/// The most conductors and cables of one request together.
pub const MOST_CONDUCTORS: u32 = 8000;

/// How many of one thing.
pub type Wires = Count<MOST_CONDUCTORS>;

request! {
    /// Conductors and cables in a raceway: how full is it, which trade size would do, and how many more fit?
    ///
    /// Leave `raceway`, or its trade size, out to ask only which trade size is needed: the verdict is then null.
    pub struct RacewayFillRequest {
        /// The units of every length in the request and of every figure in the answer. Each system takes the columns that
        /// the code itself prints in it; nothing is converted.
        units,
        interpretations: RacewayFillInterpretations,
        /// The raceway. Leave it out for a sizing question over every kind, or over those in `kinds`.
        pub raceway: Option<RacewayGiven>,
        /// Insulated conductors and fixture wires of the tables, grounding and bonding conductors among them: all count.
        #[serde(default)]
        #[schema(max_items = 200)]
        pub conductors: Vec<RacewayConductor>,
        /// Bare conductors, covered ones of no tabulated type aside: each counts like an insulated one.
        #[serde(default)]
        #[schema(max_items = 200)]
        pub bare_conductors: Vec<BareConductor>,
        /// Multiconductor cables and cords, by their measured diameter. Each counts as one conductor.
        #[serde(default)]
        #[schema(max_items = 200)]
        pub cables: Vec<RacewayCable>,
        /// Single conductors by their actual outside diameter: those that no table has, or whose dimensions are known.
        #[serde(default)]
        #[schema(max_items = 200)]
        pub measured_conductors: Vec<MeasuredConductor>,
        /// The kinds of raceway to size. Left out: the kind of `raceway`, or every kind where no raceway is given.
        #[serde(default)]
        #[schema(max_items = 14)]
        pub kinds: Vec<RacewayKind>,
    }
}

interpretations! {
    /// How disputed points of raceway fill are to be read.
    pub struct RacewayFillInterpretations {
        /// Which inside area of a raceway is taken.
        raceway_area: RacewayArea,
        /// The area of RFH-1 and of fixture wires of its row in 18 AWG, whose printed area is not that of the printed diameter.
        conductor_area: ConductorArea,
        /// How wide electrical nonmetallic tubing is in 2017, between two texts whose tables differ.
        ent_dimensions: EntDimensions,
        /// What decides how many conductors flexible metal conduit of trade size 3/8 takes.
        fmc_three_eighths: FmcThreeEighths,
    }
}

/// A raceway, or a kind of raceway whose trade size is asked for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct RacewayGiven {
    /// The kind.
    pub kind: RacewayKind,
    /// The trade size. Leave it out to ask for it.
    pub trade_size: Option<TradeSize>,
    /// The length of a raceway between two enclosures. Up to 24 in (600 mm) it is a nipple, which may be filled to 60 %.
    pub length: Option<Length>,
    /// Whether it is a nipple: a short piece between two enclosures. True without a `length` decides only where it matters nothing
    /// whether it is short enough.
    #[schema(extensions(("x-role" = json!("relief"))))]
    pub nipple: Option<bool>,
    /// Where the fittings of flexible metal conduit of trade size 3/8 sit. They leave less room inside; asked of no other.
    pub fittings: Option<FittingPlace>,
}

/// Where the fittings of a flexible conduit sit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum FittingPlace {
    /// Screwed into the conduit.
    Inside,
    /// Around the conduit.
    Outside,
}

/// Conductors of one insulation type and size.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct RacewayConductor {
    /// The insulation type.
    pub insulation: Insulation,
    /// The size.
    pub size: ConductorSize,
    /// Whether it has an outer covering. Required for RHH, RHW and RHW-2, which are made both ways; not for any other.
    pub covering: Option<Covering>,
    /// Whether its strands are compact. Aluminum building wire mostly is; the tables have THW, THHW, THHN and XHHW so.
    #[serde(default)]
    pub compact: bool,
    /// Whether it is an equipment grounding conductor. It counts like any other, apart from one of the same size in flexible metal
    /// conduit of trade size 3/8.
    pub equipment_grounding: Option<bool>,
    /// How many alike. 1 unless said otherwise.
    pub count: Option<Wires>,
}

/// How a bare conductor is made.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum BareConstruction {
    /// One strand.
    Solid,
    /// Several strands.
    Stranded,
    /// Several strands, compacted.
    Compact,
}

/// Bare conductors of one size and construction.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct BareConductor {
    /// The size.
    pub size: ConductorSize,
    /// How it is made.
    pub construction: BareConstruction,
    /// How many alike. 1 unless said otherwise.
    pub count: Option<Wires>,
}

/// Multiconductor cables of one size. Give `diameter` for a round cable, `major_diameter` for an elliptical one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct RacewayCable {
    /// The outside diameter of a round cable, at most 120 in either unit: no raceway of the tables takes a larger one.
    pub diameter: Option<Length>,
    /// The larger outside diameter of an elliptical cable, at most 120 in either unit.
    pub major_diameter: Option<Length>,
    /// How many alike. 1 unless said otherwise.
    pub count: Option<Wires>,
}

/// Single conductors of one measured diameter.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct MeasuredConductor {
    /// The actual outside diameter, insulation included, at most 120 in either unit.
    pub diameter: Length,
    /// How many alike. 1 unless said otherwise.
    pub count: Option<Wires>,
}

converts! {
    RacewayFillRequest { raceway, cables, measured_conductors }
    RacewayGiven { length }
    RacewayCable { diameter, major_diameter }
    MeasuredConductor { diameter }
}
