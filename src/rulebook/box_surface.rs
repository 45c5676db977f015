//! How a box sits in its surface, and what covers it: 314.19 to 314.22 and 314.25.

use super::declare::RECALLED;
use super::{Edition, RuleFigure};
use crate::quantity::Measure;

const LAMENDOLA: &str = "Lamendola, codebookcity.com, answers to Article 314 part 7; UpCodes, 2018 International Residential Code E3906";
const EXTENSION: &str =
    "Lamendola, codebookcity.com, answers to Article 314 on an older edition; later editions recalled";

rules! {
    /// The front edge of a box that opens in a surface is set back a little at most, and not at all in a combustible one.
    SETBACK: "box-surface.setback", "314.20", [Bracketed, Published, UnofficialCopy], LAMENDOLA;
    /// A noncombustible surface leaves a small gap at most around a box with a flush cover.
    GAP: "box-surface.gap", "314.21", [Bracketed, Published, UnofficialCopy],
        "EC&M, 2011 NEC Revisions for Boxes (1/8 in.)";
    /// A box encloses a flush device at back and sides, and gives it substantial support of its own.
    FLUSH_DEVICE: "box-surface.flush-device", "314.19", Published,
        "Lamendola, codebookcity.com, answers to Article 314 part 7";
    /// A surface extension is an extension ring, mounted over the box and mechanically secured to it.
    EXTENSION_RING: "box-surface.extension-ring", "314.22", [Bracketed, Published, UnofficialCopy], EXTENSION;
    /// Another box over the first is held and grounded as a ring is. That it must be listed for that is practice, not text.
    EXTENSION_BOX: "box-surface.extension-box", "314.22", CommonPractice,
        "common practice: the texts of 2011, 2020 and 2023 name the ring alone; another box is held to what they ask of one";
    /// An extension may be made from a cover under conditions.
    EXTENSION_COVER: "box-surface.extension-from-cover", "314.22 Exception", [Bracketed, Published, UnofficialCopy],
        EXTENSION;
    /// Each box has a cover, faceplate, lampholder or canopy.
    COVER: "box-surface.cover", "314.25", [Bracketed, Published, UnofficialCopy], RECALLED;
    /// A conduit body ends with a cover, a lampholder or a device.
    BODY_COVER: "box-surface.body-cover", [-, -, "314.25"], [Bracketed, Published, UnofficialCopy],
        "said of conduit bodies from 2023 on; the texts before speak of boxes";
    /// A luminaire that reaches over a box and is held beside it leaves the wiring within reach through its back.
    LUMINAIRE_OVER_BOX: "box-surface.luminaire-over-box", "314.25, 410.24(B)", [Bracketed, Published, UnofficialCopy],
        RECALLED;
    /// Screws of a cover match the threads of the box, or follow instructions.
    COVER_SCREWS: "box-surface.cover-screws", "314.25", [Recalled, Published, UnofficialCopy], RECALLED;
    /// A large combustible finish exposed between a canopy and its box is covered.
    CANOPY_FINISH: "box-surface.canopy-finish", "314.25(B), 410.23", [Recalled, Published, UnofficialCopy],
        "180 in² in either system of units: the square millimetres printed beside it (1160) are a slip, so no metric figure stands but the exact conversion";
    /// A cord pendant leaves its cover through a bushing or a smooth, rounded hole.
    PENDANT_CORD: "box-surface.pendant-cord", "314.25(C)", [Bracketed, Published, UnofficialCopy], RECALLED;
}

subject! {
    /// What an edition says of surfaces and covers.
    pub struct BoxSurface {
        /// The most that a box is set back in a noncombustible surface.
        pub setback: RuleFigure,
        /// The most that a box is set back in a combustible surface: nothing.
        pub setback_combustible: RuleFigure,
        /// The widest gap around a box.
        pub gap: RuleFigure,
        /// The exposed area from which on a combustible finish is covered.
        pub canopy_finish: RuleFigure,
        /// Whether conduit bodies are covered as boxes are.
        pub covers_bodies: bool,
    }
}

impl BoxSurface {
    const E2017: Self = Self {
        setback: RuleFigure::length("box-surface.setback.noncombustible", &SETBACK, 2_500, 60_000),
        setback_combustible: RuleFigure::length("box-surface.setback.combustible", &SETBACK, 0, 0),
        gap: RuleFigure::length("box-surface.gap", &GAP, 1_250, 30_000),
        canopy_finish: RuleFigure::sized(
            "box-surface.canopy-finish",
            &CANOPY_FINISH,
            Measure::Area,
            1_800_000,
            1_161_288_000,
        ),
        covers_bodies: false,
    };

    pub(super) const fn of(edition: Edition) -> Self {
        match edition {
            Edition::E2017 | Edition::E2020 => Self::E2017,
            Edition::E2023 | Edition::E2026 => Self { covers_bodies: true, ..Self::E2017 },
        }
    }
}
