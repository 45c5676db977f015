//! What keeps a box and its wiring safe: grounding (314.4), blunt fasteners (314.5), moisture and drains (314.15).

use super::{Edition, RuleFigure};

const FASTENERS: &str = "A trade-forum post that quotes the section of 2023";
const COPY: &str = "An unofficial copy of the 2023 edition, to be compared with the print";
const MOISTURE: &str = "A maker's reprint of the section; 2018 International Residential Code p. 770";

rules! {
    /// A metal box is grounded and bonded.
    GROUNDED: "box-protection.grounded", "314.4", Published,
        "2018 International Residential Code E3905 (main text); which parts of Article 250 apply is recalled";
    /// A fastener that reaches into the wiring space is what the maker specifies, or has a blunt end.
    BLUNT: "box-protection.blunt-fasteners", [-, -, "314.5(1), (2)"], [Published, Published, UnofficialCopy], FASTENERS;
    /// The screws of a cover reach in so far at most.
    COVER_SCREWS: "box-protection.cover-screws", [-, -, "314.5(3)"], [Published, Published, UnofficialCopy], FASTENERS;
    /// Other fasteners through a cover reach in so far at most.
    THROUGH_COVER: "box-protection.fasteners-through-cover", [-, -, "314.5(4)"], [Published, Published, UnofficialCopy],
        FASTENERS;
    /// Fasteners through the wall of a large box reach in so far at most.
    THROUGH_WALL: "box-protection.fasteners-through-wall", [-, -, "314.5(5)"], [Published, Published, UnofficialCopy],
        FASTENERS;
    /// Fasteners through the wall of a small box, other than those that mount it, end flush with its inside.
    THROUGH_SMALL_WALL: "box-protection.fasteners-through-small-wall", [-, -, "314.5(6)"],
        [Recalled, Recalled, UnofficialCopy],
        COPY;
    /// Fasteners through the wall of a conduit body end flush with its inside.
    THROUGH_BODY: "box-protection.fasteners-through-body", [-, -, "314.5(7)"], [Recalled, Recalled, UnofficialCopy],
        COPY;
    /// In damp and wet locations moisture is kept from entering or gathering.
    KEEP_DRY: "box-protection.moisture", "314.15", Published, MOISTURE;
    /// In wet locations the box is listed for them.
    WET: "box-protection.wet-location", "314.15", Published, MOISTURE;
    /// Drain openings made in the field have a least and a largest diameter.
    DRAIN: "box-protection.drain-openings", "314.15", [Published, Published, UnofficialCopy],
        "A maker's reprint of the section; 2018 International Residential Code p. 770; that the lower limit came with 2017 is recalled";
    /// A larger drain opening takes a listed drain fitting, as its instructions say.
    DRAIN_FITTING: "box-protection.drain-fittings", "314.15", Published, MOISTURE;
}

subject! {
    /// What an edition says of fasteners and drains.
    pub struct BoxProtection {
        /// The narrowest drain opening.
        pub drain_least: RuleFigure,
        /// The widest drain opening without a fitting.
        pub drain_most: RuleFigure,
        /// How far fasteners reach into the wiring space, in an edition that says so.
        pub fasteners: Option<Fasteners>,
    }

    /// How far fasteners may reach into the wiring space.
    pub struct Fasteners {
        /// The screws of a cover.
        pub cover_screws: RuleFigure,
        /// Others through a cover.
        pub through_cover: RuleFigure,
        /// Through the wall of a box over a volume.
        pub through_wall: RuleFigure,
        /// The same close to an adjacent wall.
        pub through_wall_near: RuleFigure,
        /// How close that is.
        pub near: RuleFigure,
        /// Through the wall of a box up to that volume.
        pub through_small_wall: RuleFigure,
        /// Through the wall of a conduit body.
        pub through_body: RuleFigure,
        /// That volume.
        pub large_over: RuleFigure,
    }
}

impl BoxProtection {
    const E2017: Self = Self {
        drain_least: RuleFigure::length("box-protection.drain-openings.least", &DRAIN, 1_250, 30_000),
        drain_most: RuleFigure::length("box-protection.drain-openings.most", &DRAIN, 2_500, 60_000),
        fasteners: None,
    };

    const FASTENERS_2023: Fasteners = Fasteners {
        cover_screws: RuleFigure::length("box-protection.cover-screws", &COVER_SCREWS, 3_750, 100_000),
        through_cover: RuleFigure::length(
            "box-protection.fasteners-through-cover",
            &THROUGH_COVER,
            3_125,
            80_000,
        ),
        through_wall: RuleFigure::length(
            "box-protection.fasteners-through-wall",
            &THROUGH_WALL,
            2_500,
            60_000,
        ),
        through_wall_near: RuleFigure::length(
            "box-protection.fasteners-through-wall.near-corner",
            &THROUGH_WALL,
            4_375,
            110_000,
        ),
        near: RuleFigure::length(
            "box-protection.fasteners-through-wall.near-within",
            &THROUGH_WALL,
            3_750,
            100_000,
        ),
        through_small_wall: RuleFigure::length(
            "box-protection.fasteners-through-small-wall",
            &THROUGH_SMALL_WALL,
            0,
            0,
        ),
        through_body: RuleFigure::length("box-protection.fasteners-through-body", &THROUGH_BODY, 0, 0),
        large_over: RuleFigure::volume(
            "box-protection.fasteners-through-wall.large-over",
            &THROUGH_WALL,
            1_000_000,
            16_500_000,
        ),
    };

    pub(super) const fn of(edition: Edition) -> Self {
        match edition {
            Edition::E2017 | Edition::E2020 => Self::E2017,
            Edition::E2023 | Edition::E2026 => Self { fasteners: Some(Self::FASTENERS_2023), ..Self::E2017 },
        }
    }
}
