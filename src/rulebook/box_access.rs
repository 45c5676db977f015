//! Whether a box can be reached, through what opening, and what a handhole enclosure needs: 314.29 and 314.30.

use super::{Edition, RuleFigure};

const REACH: &str =
    "2018 International Residential Code p. 770; the division into (A) and (B) from 2020 on is recalled";
const OPENINGS: &str =
    "EC&M, TIA Proposed for 2023 NEC Regarding Installation of Boxes and Conduit Bodies, spring 2025";
const HANDHOLES: &str = "EC&M, Code Q&A: Handhole Enclosure Covers, 22 Jan 2026, and Handhole Enclosure Requirements; the letters of the paragraphs are recalled";

rules! {
    /// Wiring in a box is reached without taking the building apart.
    BUILDING: "box-access.building", ["314.29", "314.29(A)", "314.29(A)"], Published, REACH;
    /// Wiring in an underground box is reached without digging up paving or earth.
    UNDERGROUND: "box-access.underground", ["314.29", "314.29(B)", "314.29(B)"], Published, REACH;
    /// A listed box may lie under loose material where its place is known: identified, and from 2023 described to those who may dig.
    UNDER_LOOSE_COVER: "box-access.under-loose-cover", ["314.29 Exception", "314.29(B) Exception", "314.29(B) Exception"],
        [Published, Published, UnofficialCopy],
        REACH;
    /// The finish over a recessed small box has an opening of a least size, near its center.
    OPENING: "box-access.opening", [-, -, "314.29(A)(1) to (3)"], [Published, Published, UnofficialCopy], OPENINGS;
    /// An opening that fits the device in it may be smaller.
    OPENING_FOR_DEVICE: "box-access.opening-for-device", [-, -, "314.29(A)(1) to (3)"], Published, OPENINGS;
    /// The finish over a large box or a conduit body leaves all of it open.
    OPENING_FULL: "box-access.full-opening", [-, -, "314.29(A)(1) to (3)"], Published, OPENINGS;
    /// A handhole enclosure is identified for underground systems.
    HANDHOLE: "box-access.handhole", "314.30", Published, HANDHOLES;
    /// A handhole enclosure is as large as a pull box must be.
    HANDHOLE_SIZE: "box-access.handhole-size", "314.30(A)", [Bracketed, Published, UnofficialCopy], HANDHOLES;
    /// Conductors and splices in a handhole enclosure are listed for wet locations.
    HANDHOLE_WIRING: "box-access.handhole-wiring", "314.30(C)", Published, HANDHOLES;
    /// The cover of a handhole enclosure tells what is below, and is not opened by just anyone.
    HANDHOLE_COVER: "box-access.handhole-cover", "314.30(D)", [Bracketed, Published, UnofficialCopy], HANDHOLES;
}

subject! {
    /// What an edition says of access.
    pub struct BoxAccess {
        /// The weight that a cover must exceed which opens without tools.
        pub handhole_cover: RuleFigure,
        /// Whether the place of a box under loose material is described, rather than identified.
        pub describes_place: bool,
        /// The openings that a finish must leave, in an edition that speaks of them.
        pub openings: Option<Openings>,
    }

    /// The openings that a finish must leave.
    pub struct Openings {
        /// Whether they stand in the edition itself, or in an interim amendment that a jurisdiction may have left out.
        pub in_text: bool,
        /// Up to this volume a box is a small one.
        pub small_up_to: RuleFigure,
        /// How far the center of the opening over a small box lies from that of the box, at most.
        pub off_center: RuleFigure,
        /// The longer side.
        pub long_side: RuleFigure,
        /// The shorter side.
        pub short_side: RuleFigure,
        /// The diameter of a round one.
        pub diameter: RuleFigure,
    }
}

impl BoxAccess {
    const E2017: Self = Self {
        handhole_cover: RuleFigure::weight(
            "box-access.handhole-cover.over",
            &HANDHOLE_COVER,
            1_000_000,
            450_000,
        ),
        describes_place: false,
        openings: None,
    };

    const OPENINGS_2023: Openings = Openings {
        in_text: false,
        small_up_to: RuleFigure::volume("box-access.opening.small-up-to", &OPENING, 1_000_000, 16_500_000),
        off_center: RuleFigure::length("box-access.opening.off-center", &OPENING, 10_000, 250_000),
        long_side: RuleFigure::length("box-access.opening.long-side", &OPENING, 28_750, 730_000),
        short_side: RuleFigure::length("box-access.opening.short-side", &OPENING, 17_500, 450_000),
        diameter: RuleFigure::length("box-access.opening.diameter", &OPENING, 35_000, 900_000),
    };

    pub(super) const fn of(edition: Edition) -> Self {
        match edition {
            Edition::E2017 | Edition::E2020 => Self::E2017,
            Edition::E2023 => {
                Self { describes_place: true, openings: Some(Self::OPENINGS_2023), ..Self::E2017 }
            }
            Edition::E2026 => Self {
                describes_place: true,
                openings: Some(Openings { in_text: true, ..Self::OPENINGS_2023 }),
                ..Self::E2017
            },
        }
    }
}
