//! How wiring enters a box, and which box it may enter: 314.2, 314.3, 314.17, and what they lean on.

use super::declare::{Figures, RECALLED};
use super::{Edition, RuleFigure};
use crate::trade::ConductorSize;
use serde::Serialize;

const THREADS: &str = "Two trade-forum threads; UpCodes, 2018 International Residential Code E3906; the merger of 2020 is recalled";

const ADOPTED: &str =
    "2013 California Electrical Code (the 2011 text) and 2022 California Electrical Code (the 2020 text)";

rules! {
    /// A round box takes no conduit or connector whose locknut or bushing would bear on its side.
    ROUND: "box-entry.round-box", "314.2", [Bracketed, Published, UnofficialCopy], RECALLED;
    /// Metal raceways and armored cables enter a nonmetallic box only where it bonds all entries together.
    METAL_IN_NONMETALLIC: "box-entry.metal-in-nonmetallic", "314.3", Published,
        "UpCodes, 2018 International Residential Code E3905 (main text); the exceptions are recalled";
    /// What enters a box is secured to it.
    SECURED: "box-entry.secured", ["314.17(B), (C)", "314.17(B)", "314.17(B)"], Published, THREADS;
    /// A nonmetallic sheath reaches into the box.
    SHEATH: "box-entry.sheath", ["314.17(B), (C)", "314.17(B)(2)", "314.17(B)(2)"],
        [Published, Published, UnofficialCopy],
        THREADS;
    /// Where a clamp inside the box holds the cable, the sheath reaches past the clamp too.
    SHEATH_PAST_CLAMP: "box-entry.sheath-past-clamp", [-, "314.17(B)(2)", "314.17(B)(2)"],
        [Published, Published, UnofficialCopy], "2022 California Electrical Code (the 2020 text), which gives no figure";
    /// A nonmetallic single-gang box may do without a clamp where the cable is fastened close by.
    SINGLE_GANG: "box-entry.single-gang", ["314.17(C) Exception", "314.17(B)(2) Exception", "314.17(B)(2) Exception"],
        [Bracketed, Published, UnofficialCopy],
        ADOPTED;
    /// A cable inside a complete raceway is secured by the raceway.
    IN_RACEWAY: "box-entry.cable-in-raceway", [-, "314.17(B)(3)", "314.17(B)(3)"], [Recalled, Published, UnofficialCopy],
        "recalled: the relief came with the merger of 2020";
    /// Insulated conductors of 4 AWG and larger in a raceway enter over a smooth, rounded surface.
    INSULATING_FITTING: "box-entry.insulating-fitting", "300.4(G)", [Published, Published, UnofficialCopy], ADOPTED;
    /// What protects them is in place before they are pulled in.
    PROTECTED_FIRST: "box-entry.protected-first", [-, -, "300.4(G)"], [Published, Published, UnofficialCopy],
        "nothing but the text was read";
    /// Openings that are not used are closed as well as the wall of the box would close them.
    UNUSED: "box-entry.unused-openings", "110.12(A)", [Recalled, Published, UnofficialCopy],
        "recalled, with 314.17(A) for openings that conductors use; no published source was read";
}

/// Where an edition has paragraphs of their own for metal and for nonmetallic boxes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub struct ByMaterial {
    /// The paragraph on metal boxes.
    pub metal: &'static str,
    /// The paragraph on nonmetallic boxes.
    pub nonmetallic: &'static str,
}

impl Figures for ByMaterial {}

/// How far a sheath reaches past the end of a clamp inside the box.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub enum PastClamp {
    /// The edition does not ask.
    NotAsked,
    /// Beyond it, by no stated figure.
    Beyond,
    /// At least so far.
    AtLeast(RuleFigure),
}

impl Figures for PastClamp {
    fn list(&self, figures: &mut Vec<RuleFigure>) {
        if let Self::AtLeast(figure) = self {
            figures.push(*figure);
        }
    }
}

subject! {
    /// What an edition says of entries.
    pub struct BoxEntry {
        /// How far a sheath reaches into the box.
        pub sheath: RuleFigure,
        /// How far it reaches past a clamp inside the box.
        pub past_clamp: PastClamp,
        /// The paragraphs on securing and on sheaths, where metal and nonmetallic boxes have their own.
        pub by_material: Option<ByMaterial>,
        /// Within what distance a cable is fastened that is not secured to a single-gang box.
        pub fastened_within: RuleFigure,
        /// Insulated conductors from this size on need an insulating fitting.
        pub fitting_from: ConductorSize,
        /// Whether underground feeder cable, too, may enter a single-gang box without a clamp. Later editions name
        /// nonmetallic-sheathed cable alone, and whether that takes in the other is disputed.
        pub feeder_without_clamp: bool,
        /// Whether a listed metal fitting with rounded edges serves as well as an insulating one. Not known of 2017.
        pub listed_metal_fitting: bool,
        /// Whether what protects large conductors must be in place before they are.
        pub protected_first: bool,
        /// Whether a cable in a complete raceway need not itself be secured.
        pub relieves_in_raceway: bool,
    }
}

impl BoxEntry {
    const E2017: Self = Self {
        sheath: RuleFigure::length("box-entry.sheath", &SHEATH, 2_500, 60_000),
        past_clamp: PastClamp::NotAsked,
        by_material: Some(ByMaterial { metal: "314.17(B)", nonmetallic: "314.17(C)" }),
        fastened_within: RuleFigure::length(
            "box-entry.single-gang.fastened-within",
            &SINGLE_GANG,
            80_000,
            2_000_000,
        ),
        fitting_from: ConductorSize::AWG_4,
        feeder_without_clamp: true,
        listed_metal_fitting: false,
        protected_first: false,
        relieves_in_raceway: false,
    };

    const E2020: Self = Self {
        past_clamp: PastClamp::Beyond,
        by_material: None,
        feeder_without_clamp: false,
        listed_metal_fitting: true,
        relieves_in_raceway: true,
        ..Self::E2017
    };

    const E2023: Self = Self {
        past_clamp: PastClamp::AtLeast(RuleFigure::length(
            "box-entry.sheath-past-clamp",
            &SHEATH_PAST_CLAMP,
            2_500,
            60_000,
        )),
        protected_first: true,
        ..Self::E2020
    };

    pub(super) const fn of(edition: Edition) -> Self {
        match edition {
            Edition::E2017 => Self::E2017,
            Edition::E2020 => Self::E2020,
            Edition::E2023 | Edition::E2026 => Self::E2023,
        }
    }
}
