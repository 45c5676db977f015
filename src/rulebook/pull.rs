//! Boxes and conduit bodies that hold 4 AWG and larger, which are sized by length: what 314.28 asks up to 1000 V.

use super::{Basis, Rule, RuleFigure};
use crate::quantity::Measure;

/// Conductors of 4 AWG and larger are answered by the pull-box rules, not by volume.
pub static APPLIES: Rule = Rule::everywhere(
    "pull.applies",
    "314.28(A)",
    Basis::Published,
    "2011 text of the section, later editions recalled; Electrical Contractor, 15 Apr 2015",
);

/// A raceway stands in the sums with its trade size in inches, or its metric designator in millimetres.
pub static TRADE_SIZE: Rule = Rule::everywhere(
    "pull.trade-size",
    "314.28(A)",
    Basis::Published,
    "2011 text of the section; Lamendola, codebookcity.com, answers to Article 314 part 9 (53 mm, 424 mm)",
);

/// A straight pull asks for eight times the largest raceway, from wall to opposite wall.
pub static STRAIGHT: Rule = Rule::everywhere(
    "pull.straight",
    "314.28(A)(1)",
    Basis::Published,
    "EC&M, Quizzes on the Code: Sizing Pull Boxes, 1 Sep 2000; EC&M Code Quiz, 29 May 2007",
);

/// An angle pull, a U pull or a splice asks for six times the largest raceway of the row and all others of the row.
pub static ANGLE: Rule = Rule::everywhere(
    "pull.angle",
    "314.28(A)(2)",
    Basis::Published,
    "2011 text of the section; EC&M, Raceway Restrictions in a Pull Box, 5 May 2014; two trade-forum threads",
);

/// Entries that enclose the same conductors stand six times the larger of them apart.
pub static ENTRY_DISTANCE: Rule = Rule::everywhere(
    "pull.entry-distance",
    "314.28(A)(2)",
    Basis::Published,
    "EC&M Code Quiz (Owen); four trade-forum threads. From where to where it is measured is disputed",
);

/// Opposite a removable cover, the space that the largest conductor needs to bend may serve instead.
pub static REMOVABLE_COVER: Rule = Rule::everywhere(
    "pull.removable-cover",
    "314.28(A)(2) Exception",
    Basis::Published,
    "2011 text of the section; an engineering data sheet with Table 312.6(A)",
);

/// A cable stands in the sums as the smallest raceway that its conductors would need.
pub static CABLES: Rule = Rule::everywhere(
    "pull.cables",
    "314.28(A)(2)",
    Basis::Published,
    "2011 text of the section; which raceway and which insulation to take is not stated there",
);

/// A listed box or body smaller than the rules ask, with what is marked on it.
pub static MARKED: Rule = Rule::everywhere(
    "pull.marked-smaller",
    "314.28(A)(3)",
    Basis::Published,
    "EC&M, 2017 National Electrical Code Changes p. 10; three trade-forum threads; Electrical Contractor, Box-Fill Calculations part XI",
);

/// In a box with a side over the stated length, conductors are cabled or racked.
pub static RACKING: Rule =
    Rule::everywhere("pull.racking", "314.28(B)", Basis::Published, "EC&M summary of the section");

/// The cover suits the box and the conditions, and a metal one is bonded.
pub static COVERS: Rule =
    Rule::everywhere("pull.covers", "314.28(C)", Basis::Published, "EC&M summary of the section");

/// Permanent barriers make each section a box of its own.
pub static BARRIERS: Rule =
    Rule::everywhere("pull.barriers", "314.28(D)", Basis::Published, "EC&M, What's Wrong Here 246");

/// Power distribution blocks stand in boxes over the stated volume, listed, with their own space.
pub static BLOCKS: Rule = Rule::everywhere(
    "pull.distribution-blocks",
    "314.28(E)",
    Basis::Published,
    "A trade-forum thread; EC&M, 2017 National Electrical Code Changes; the details besides the volume are recalled",
);

/// A block on the line side of the service equipment is marked for that.
pub static LINE_SIDE: Rule = Rule {
    id: "pull.distribution-blocks.line-side",
    sections: [Some("314.28(E)(1)"), Some("230.46"), Some("230.46")],
    basis: Basis::Published,
    source: "EC&M, 2017 National Electrical Code Changes; a trade-forum thread on the move to 230.46",
};

/// Of all that is asked along one axis, the largest governs.
pub static GOVERNS: Rule = Rule::everywhere(
    "pull.governs",
    "314.28(A)",
    Basis::Published,
    "A worked example of Electrical Contractor; the method in general is recalled",
);

/// Entries must have a place: inside their wall, clear of one another, and as far apart as the rules ask.
pub static PLACEMENT: Rule = Rule::everywhere(
    "pull.placement",
    "314.28(A)(2)",
    Basis::CommonPractice,
    "follows from the distance between entries; how entries may stand on a wall is geometry",
);

/// A conduit body with 4 AWG and larger follows the same lengths, by its own dimensions.
pub static CONDUIT_BODY: Rule = Rule::everywhere(
    "pull.conduit-body",
    "314.28(A)",
    Basis::Published,
    "Electrical Contractor, Square Peg, Round Hole; two trade-forum threads",
);

/// The rules of this part.
pub static RULES: [&Rule; 16] = [
    &APPLIES,
    &TRADE_SIZE,
    &STRAIGHT,
    &ANGLE,
    &ENTRY_DISTANCE,
    &REMOVABLE_COVER,
    &CABLES,
    &MARKED,
    &RACKING,
    &COVERS,
    &BARRIERS,
    &BLOCKS,
    &LINE_SIDE,
    &GOVERNS,
    &PLACEMENT,
    &CONDUIT_BODY,
];

/// Figures of the pull-box rules.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Pull {
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

impl Pull {
    /// The figures that 2017, 2020 and 2023 share.
    pub(super) const ALL_EDITIONS: Self = Self {
        straight: RuleFigure::number("pull.straight.multiple", &STRAIGHT, 80_000),
        straight_others: RuleFigure::number("pull.straight.others-multiple", &STRAIGHT, 0),
        angle: RuleFigure::number("pull.angle.multiple", &ANGLE, 60_000),
        entry_distance: RuleFigure::number("pull.entry-distance.multiple", &ENTRY_DISTANCE, 60_000),
        racking: RuleFigure::sized("pull.racking.side", &RACKING, Measure::Length, 720_000, 18_000_000),
        blocks: RuleFigure::sized(
            "pull.distribution-blocks.volume",
            &BLOCKS,
            Measure::Volume,
            1_000_000,
            16_500_000,
        ),
        half: RuleFigure::number("pull.placement.half", &PLACEMENT, 5_000),
    };

    pub(super) fn figures(&self) -> impl Iterator<Item = RuleFigure> + use<> {
        let Self { straight, straight_others, angle, entry_distance, racking, blocks, half } = self.clone();
        [straight, straight_others, angle, entry_distance, racking, blocks, half].into_iter()
    }
}
