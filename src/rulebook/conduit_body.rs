//! Conduit bodies that hold 6 AWG and smaller: what 314.16(C) asks.

use super::RuleFigure;

rules! {
    /// The cross-section of the body is at least twice that of the largest conduit or tubing that it takes.
    AREA: "conduit-body.area", "314.16(C)(1)", [Bracketed, Bracketed, UnofficialCopy],
        "Electrical Contractor, Square Peg, Round Hole; Lamendola, codebookcity.com, Article 314 part 6; a trade-forum thread that works 1.728 in²";
    /// As many conductors as the raceway attached may hold.
    CONDUCTORS: "conduit-body.conductors", "314.16(C)(1)", Published,
        "Electrical Contractor, Square Peg, Round Hole; a trade-forum thread that works 26 conductors in trade size 1";
    /// Splices, taps and devices stand only in a body whose maker marked its volume; they are then counted as in a box.
    SPLICES: "conduit-body.splices", "314.16(C)(2)", [Bracketed, Published, UnofficialCopy],
        "Lamendola, codebookcity.com, Article 314 part 6; two trade-forum threads with marked volumes of 7.0 and 8.8 in³";
    /// Short-radius bodies hold no splices, taps or devices.
    SHORT_RADIUS: "conduit-body.short-radius", "314.16(C)(3)", [Bracketed, Published, UnofficialCopy],
        "Lamendola, codebookcity.com, Article 314 part 6; EC&M, What's Wrong Here (a crowded conduit body)";
}

subject! {
    /// Figures of conduit bodies, the same in every edition.
    pub struct ConduitBody {
        /// How many times the largest raceway's cross-section the body must have.
        pub area_multiple: RuleFigure,
    }
}

impl ConduitBody {
    pub(super) const ALL_EDITIONS: Self =
        Self { area_multiple: RuleFigure::number("conduit-body.area.multiple", &AREA, 20_000) };
}
