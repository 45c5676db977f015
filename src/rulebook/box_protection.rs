//! What keeps a box and its wiring safe: grounding (314.4), blunt fasteners (314.5), moisture and drains (314.15).

use super::{Basis, Edition, Rule, RuleFigure};
use crate::quantity::Measure;

const FASTENERS: &str = "A trade-forum post that quotes the section of 2023";
const MOISTURE: &str = "A maker's reprint of the section; 2018 International Residential Code p. 770";

/// A metal box is grounded and bonded.
pub static GROUNDED: Rule = Rule::everywhere(
    "box-protection.grounded",
    "314.4",
    Basis::Published,
    "2018 International Residential Code E3905 (main text); which parts of Article 250 apply is recalled",
);

/// A fastener that reaches into the wiring space is what the maker specifies, or has a blunt end.
pub static BLUNT: Rule = fasteners("box-protection.blunt-fasteners", Basis::Published, FASTENERS);

/// The screws of a cover reach in so far at most.
pub static COVER_SCREWS: Rule = fasteners("box-protection.cover-screws", Basis::Published, FASTENERS);

/// Other fasteners through a cover reach in so far at most.
pub static THROUGH_COVER: Rule =
    fasteners("box-protection.fasteners-through-cover", Basis::Published, FASTENERS);

/// Fasteners through the wall of a large box reach in so far at most.
pub static THROUGH_WALL: Rule =
    fasteners("box-protection.fasteners-through-wall", Basis::Published, FASTENERS);

/// Fasteners through the wall of a small box have a limit that could not be read.
pub static THROUGH_SMALL_WALL: Rule = fasteners(
    "box-protection.fasteners-through-small-wall",
    Basis::Unconfirmed,
    "The post on 2023 does not hold the item on boxes of up to 100 in³",
);

/// In damp and wet locations moisture is kept from entering or gathering.
pub static KEEP_DRY: Rule = Rule::everywhere("box-protection.moisture", "314.15", Basis::Published, MOISTURE);

/// In wet locations the box is listed for them.
pub static WET: Rule = Rule::everywhere("box-protection.wet-location", "314.15", Basis::Published, MOISTURE);

/// Drain openings made in the field have a least and a largest diameter.
pub static DRAIN: Rule = Rule::everywhere(
    "box-protection.drain-openings",
    "314.15",
    Basis::Published,
    "A maker's reprint of the section; 2018 International Residential Code p. 770; that the lower limit came with 2017 is recalled",
);

/// A larger drain opening takes a listed drain fitting, as its instructions say.
pub static DRAIN_FITTING: Rule =
    Rule::everywhere("box-protection.drain-fittings", "314.15", Basis::Published, MOISTURE);

const fn fasteners(id: &'static str, basis: Basis, source: &'static str) -> Rule {
    Rule { id, sections: [None, None, Some("314.5")], basis, source }
}

/// The rules of this part.
pub static RULES: [&Rule; 10] = [
    &GROUNDED,
    &BLUNT,
    &COVER_SCREWS,
    &THROUGH_COVER,
    &THROUGH_WALL,
    &THROUGH_SMALL_WALL,
    &KEEP_DRY,
    &WET,
    &DRAIN,
    &DRAIN_FITTING,
];

/// What an edition says of fasteners and drains.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BoxProtection {
    /// The narrowest drain opening.
    pub drain_least: RuleFigure,
    /// The widest drain opening without a fitting.
    pub drain_most: RuleFigure,
    /// How far fasteners reach into the wiring space, in an edition that says so.
    pub fasteners: Option<Fasteners>,
}

/// How far fasteners may reach into the wiring space.
#[derive(Clone, Debug, PartialEq, Eq)]
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
    /// That volume.
    pub large_over: RuleFigure,
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
        large_over: RuleFigure::sized(
            "box-protection.fasteners-through-wall.large-over",
            &THROUGH_WALL,
            Measure::Volume,
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

    pub(super) fn figures(&self) -> impl Iterator<Item = RuleFigure> + use<> {
        let Self { drain_least, drain_most, fasteners } = self.clone();
        let fasteners = fasteners.map(|fasteners| {
            let Fasteners { cover_screws, through_cover, through_wall, through_wall_near, near, large_over } =
                fasteners;
            [cover_screws, through_cover, through_wall, through_wall_near, near, large_over]
        });
        [drain_least, drain_most].into_iter().chain(fasteners.into_iter().flatten())
    }
}
