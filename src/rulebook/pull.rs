//! Boxes and conduit bodies that hold 4 AWG and larger, which are sized by length: what 314.28 asks up to 1000 V.

use super::RuleFigure;
use super::declare::Figures;
use super::strategy::{Choice, Strategy, choices};
use crate::quantity::Decimal;
use crate::trade::ConductorSize;
use serde::Serialize;

rules! {
    /// Conductors of 4 AWG and larger are answered by the pull-box rules, not by volume.
    APPLIES: "pull.applies", "314.28(A)", [Bracketed, Published, UnofficialCopy],
        "2011 text of the section, later editions recalled; Electrical Contractor, 15 Apr 2015";
    /// A raceway stands in the sums with its trade size in inches, or its metric designator in millimetres.
    TRADE_SIZE: "pull.trade-size", "314.28(A)", Published,
        "2011 text of the section; Lamendola, codebookcity.com, answers to Article 314 part 9 (53 mm, 424 mm)";
    /// A straight pull asks for eight times the largest raceway, from wall to opposite wall.
    STRAIGHT: "pull.straight", "314.28(A)(1)", [Bracketed, Published, UnofficialCopy],
        "EC&M, Quizzes on the Code: Sizing Pull Boxes, 1 Sep 2000; EC&M Code Quiz, 29 May 2007";
    /// An angle pull, a U pull or a splice asks for six times the largest raceway of the row and all others of the row.
    ANGLE: "pull.angle", "314.28(A)(2)", [Bracketed, Published, UnofficialCopy],
        "2011 text of the section; EC&M, Raceway Restrictions in a Pull Box, 5 May 2014; two trade-forum threads";
    /// Entries that enclose the same conductors stand six times the larger of them apart.
    ENTRY_DISTANCE: "pull.entry-distance", "314.28(A)(2)", [Bracketed, Published, UnofficialCopy],
        "EC&M Code Quiz (Owen); four trade-forum threads. From where to where it is measured is disputed";
    /// Opposite a removable cover, the space that the largest conductor needs to bend may serve instead.
    REMOVABLE_COVER: "pull.removable-cover", "314.28(A)(2) Exception", [Bracketed, Published, UnofficialCopy],
        "2011 text of the section; an engineering data sheet with Table 312.6(A)";
    /// A cable stands in the sums as the smallest raceway that its conductors would need.
    CABLES: "pull.cables", "314.28(A)(2)", [Bracketed, Published, UnofficialCopy],
        "2011 text of the section; which raceway and which insulation to take is not stated there";
    /// A listed box or body smaller than the rules ask, with what is marked on it.
    MARKED: "pull.marked-smaller", "314.28(A)(3)", [Bracketed, Published, UnofficialCopy],
        "EC&M, 2017 National Electrical Code Changes p. 10; three trade-forum threads; Electrical Contractor, Box-Fill Calculations part XI";
    /// In a box with a side over the stated length, conductors are cabled or racked.
    RACKING: "pull.racking", "314.28(B)", [Bracketed, Published, UnofficialCopy], "EC&M summary of the section";
    /// The cover suits the box and the conditions, and a metal one is bonded.
    COVERS: "pull.covers", "314.28(C)", Published, "EC&M summary of the section";
    /// Permanent barriers make each section a box of its own.
    BARRIERS: "pull.barriers", "314.28(D)", [Bracketed, Published, UnofficialCopy], "EC&M, What's Wrong Here 246";
    /// Power distribution blocks stand in boxes over the stated volume, listed, with their own space.
    BLOCKS: "pull.distribution-blocks", "314.28(E)", [Published, Published, UnofficialCopy],
        "A trade-forum thread; EC&M, 2017 National Electrical Code Changes; the details besides the volume are recalled";
    /// From each wall with an entry to the opposite wall, a box with a block is as long as for an angle pull.
    BLOCK_SPACE: "pull.distribution-blocks.size", ["314.28(E)", "314.28(E)(2)", "314.28(E)(2)"],
        [Published, Published, UnofficialCopy],
        "A trade-forum thread; EC&M, 2017 National Electrical Code Changes; that its length was asked in 2017 too is recalled";
    /// A block on the line side of the service equipment is marked for that.
    LINE_SIDE: "pull.distribution-blocks.line-side", ["314.28(E)(1)", "230.46", "230.46"],
        [Published, Published, UnofficialCopy],
        "EC&M, 2017 National Electrical Code Changes; a trade-forum thread on the move to 230.46";
    /// Of all that is asked along one axis, the largest governs.
    GOVERNS: "pull.governs", "314.28(A)", Published,
        "A worked example of Electrical Contractor; the method in general is recalled";
    /// Entries must have a place: inside their wall, clear of one another, and as far apart as the rules ask.
    PLACEMENT: "pull.placement", "314.28(A)(2)", CommonPractice,
        "follows from the distance between entries; how entries may stand on a wall is geometry";
    /// A conduit body with 4 AWG and larger follows the same lengths, by its own dimensions.
    CONDUIT_BODY: "pull.conduit-body", "314.28(A)", Published,
        "Electrical Contractor, Square Peg, Round Hole; two trade-forum threads";
}

subject! {
    /// Figures of the pull-box rules.
    pub struct Pull {
        /// Conductors from this size on make a pull box of a box.
        pub applies_from: ConductorSize,
        /// How a layout is searched for.
        pub search: Search,
        /// What stands for a raceway in the sums.
        pub raceway_counts_as: Strategy<RacewayCountsAs>,
        /// What stands for a cable in the sums.
        pub cable_counts_as: Strategy<CableCountsAs>,
        /// What a straight pull asks a multiple of.
        pub straight_of: Strategy<StraightOf>,
        /// The directions in which a straight pull asks.
        pub straight_along: Strategy<StraightAlong>,
        /// What the angle rule adds to the multiple of the largest raceway.
        pub angle_adds: Strategy<AngleAdds>,
        /// The rows of a wall.
        pub rows_of_wall: Strategy<RowsOfWall>,
        /// What the requirements of several rows of one wall come to.
        pub rows_together: Strategy<RowsTogether>,
        /// Which of two raceways gives the distance between them.
        pub distance_by: Strategy<DistanceBy>,
        /// What several requirements along one direction come to.
        pub together: Strategy<Together>,
        /// How many times the largest raceway a straight pull asks for.
        pub straight: RuleFigure,
        /// How many times the other raceways of its row are added to a straight pull: none, unless a local amendment says so.
        pub straight_others: RuleFigure,
        /// How many times the largest raceway of a row an angle pull, a U pull or a splice asks for.
        pub angle: RuleFigure,
        /// How many times the larger raceway two entries with the same conductors stand apart.
        pub entry_distance: RuleFigure,
        /// Over this length of a side, conductors are racked.
        pub racking: RuleFigure,
        /// Over this volume a box may hold power distribution blocks.
        pub blocks: RuleFigure,
        /// The part of a diameter from the middle of an entry to its edge.
        pub half: RuleFigure,
    }
}

choices! {
    /// What stands for a raceway in the sums: its trade size, or something that is known of it besides.
    RacewayCountsAs;
    /// What stands for a cable in the sums: the trade size of the raceway that its conductors would need, or something else.
    CableCountsAs;
    /// What a straight pull asks a multiple of.
    StraightOf;
    /// Whether a straight pull asks along a direction.
    StraightAlong;
    /// What the angle rule adds to the multiple of the largest raceway of a row.
    AngleAdds;
    /// The rows that the entries of a wall stand in.
    RowsOfWall;
    /// What the requirements of several rows of one wall come to.
    RowsTogether;
    /// Which of two raceways gives the distance between them.
    DistanceBy;
    /// What several requirements along one direction come to.
    Together;
}

/// How far a search for the smallest box with a place for every entry goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct Search {
    /// How many conditions one layout may look at. That many take some hundredths of a second.
    pub conditions: u64,
    /// The step from one size and place to the next where the request names none, in inches and in millimetres.
    pub step: [Decimal; 2],
}

impl Figures for Search {}

impl Pull {
    /// The figures that 2017, 2020 and 2023 share.
    pub(super) const ALL_EDITIONS: Self = Self {
        applies_from: ConductorSize::AWG_4,
        search: Search { conditions: 1_500_000, step: [Decimal::ten_thousandths(625), Decimal::ONE] },
        raceway_counts_as: RacewayCountsAs::LAWFUL,
        cable_counts_as: CableCountsAs::LAWFUL,
        straight_of: StraightOf::LAWFUL,
        straight_along: StraightAlong::LAWFUL,
        angle_adds: AngleAdds::LAWFUL,
        rows_of_wall: RowsOfWall::LAWFUL,
        rows_together: RowsTogether::LAWFUL,
        distance_by: DistanceBy::LAWFUL,
        together: Together::LAWFUL,
        straight: RuleFigure::number("pull.straight.multiple", &STRAIGHT, 80_000),
        straight_others: RuleFigure::number("pull.straight.others-multiple", &STRAIGHT, 0),
        angle: RuleFigure::number("pull.angle.multiple", &ANGLE, 60_000),
        entry_distance: RuleFigure::number("pull.entry-distance.multiple", &ENTRY_DISTANCE, 60_000),
        racking: RuleFigure::length("pull.racking.side", &RACKING, 720_000, 18_000_000),
        blocks: RuleFigure::volume("pull.distribution-blocks.volume", &BLOCKS, 1_000_000, 16_500_000),
        half: RuleFigure::number("pull.placement.half", &PLACEMENT, 5_000),
    };
}
