//! Whether a box can be reached, through what opening, and what a handhole enclosure needs: 314.29 and 314.30.

use super::{Basis, Edition, Rule, RuleFigure};
use crate::quantity::Measure;

const REACH: &str =
    "2018 International Residential Code p. 770; the division into (A) and (B) from 2020 on is recalled";
const OPENINGS: &str = "EC&M, TIA Proposed for 2023 NEC Regarding Installation of Boxes and Conduit Bodies, spring 2025; inches only, the millimetre column holds their exact equivalents";
const HANDHOLES: &str = "EC&M, Code Q&A: Handhole Enclosure Covers, 22 Jan 2026, and Handhole Enclosure Requirements; the letters of the paragraphs are recalled";

/// Wiring in a box is reached without taking the building apart.
pub static BUILDING: Rule = Rule {
    id: "box-access.building",
    sections: [Some("314.29"), Some("314.29(A)"), Some("314.29(A)")],
    basis: Basis::Published,
    source: REACH,
};

/// Wiring in an underground box is reached without digging up paving or earth.
pub static UNDERGROUND: Rule = Rule {
    id: "box-access.underground",
    sections: [Some("314.29"), Some("314.29(B)"), Some("314.29(B)")],
    basis: Basis::Published,
    source: REACH,
};

/// A listed box may lie under loose cover where its place is marked.
pub static UNDER_LOOSE_COVER: Rule = Rule {
    id: "box-access.under-loose-cover",
    sections: [Some("314.29 Exception"), Some("314.29(B) Exception"), Some("314.29(B) Exception")],
    basis: Basis::Published,
    source: REACH,
};

/// The finish over a recessed small box has an opening of a least size, near its center.
pub static OPENING: Rule = opening("box-access.opening", Basis::Published, OPENINGS);

/// The same in millimetres, whose printed figures were not at hand.
pub static OPENING_METRIC: Rule = opening(
    "box-access.opening-metric",
    Basis::Unconfirmed,
    "No millimetre figure was at hand: these are the exact equivalents of the inches",
);

/// An opening that fits the device in it may be smaller.
pub static OPENING_FOR_DEVICE: Rule = opening("box-access.opening-for-device", Basis::Published, OPENINGS);

/// The finish over a large box or a conduit body leaves all of it open.
pub static OPENING_FULL: Rule = opening("box-access.full-opening", Basis::Published, OPENINGS);

const fn opening(id: &'static str, basis: Basis, source: &'static str) -> Rule {
    Rule { id, sections: [None, None, Some("314.29(A)(1) to (3)")], basis, source }
}

/// A handhole enclosure is identified for underground systems.
pub static HANDHOLE: Rule = Rule::everywhere("box-access.handhole", "314.30", Basis::Published, HANDHOLES);

/// A handhole enclosure is as large as a pull box must be.
pub static HANDHOLE_SIZE: Rule =
    Rule::everywhere("box-access.handhole-size", "314.30(A)", Basis::Published, HANDHOLES);

/// Conductors and splices in a handhole enclosure are listed for wet locations.
pub static HANDHOLE_WIRING: Rule =
    Rule::everywhere("box-access.handhole-wiring", "314.30(C)", Basis::Published, HANDHOLES);

/// The cover of a handhole enclosure tells what is below, and is not opened by just anyone.
pub static HANDHOLE_COVER: Rule =
    Rule::everywhere("box-access.handhole-cover", "314.30(D)", Basis::Published, HANDHOLES);

/// The rules of this part.
pub static RULES: [&Rule; 11] = [
    &BUILDING,
    &UNDERGROUND,
    &UNDER_LOOSE_COVER,
    &OPENING,
    &OPENING_METRIC,
    &OPENING_FOR_DEVICE,
    &OPENING_FULL,
    &HANDHOLE,
    &HANDHOLE_SIZE,
    &HANDHOLE_WIRING,
    &HANDHOLE_COVER,
];

/// What an edition says of access.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BoxAccess {
    /// The weight that a cover must exceed which opens without tools.
    pub handhole_cover: RuleFigure,
    /// The openings that a finish must leave, in an edition that speaks of them.
    pub openings: Option<Openings>,
}

/// The openings that a finish must leave.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Openings {
    /// Whether they stand in the edition itself, or in an interim amendment that a jurisdiction may have left out.
    pub in_text: bool,
    /// Up to this volume a box is a small one.
    pub small_up_to: RuleFigure,
    /// In inches.
    pub inches: OpeningSizes,
    /// In millimetres.
    pub millimetres: OpeningSizes,
}

/// The least sizes of the opening over a small box.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OpeningSizes {
    /// How far its center lies from that of the box, at most.
    pub off_center: RuleFigure,
    /// The longer side.
    pub long_side: RuleFigure,
    /// The shorter side.
    pub short_side: RuleFigure,
    /// The diameter of a round one.
    pub diameter: RuleFigure,
}

impl BoxAccess {
    const E2017: Self = Self {
        handhole_cover: RuleFigure::sized(
            "box-access.handhole-cover.over",
            &HANDHOLE_COVER,
            Measure::Weight,
            1_000_000,
            450_000,
        ),
        openings: None,
    };

    const OPENINGS_2023: Openings = Openings {
        in_text: false,
        small_up_to: RuleFigure::sized(
            "box-access.opening.small-up-to",
            &OPENING,
            Measure::Volume,
            1_000_000,
            16_500_000,
        ),
        inches: OpeningSizes {
            off_center: RuleFigure::length("box-access.opening.off-center", &OPENING, 10_000, 254_000),
            long_side: RuleFigure::length("box-access.opening.long-side", &OPENING, 28_750, 730_250),
            short_side: RuleFigure::length("box-access.opening.short-side", &OPENING, 17_500, 444_500),
            diameter: RuleFigure::length("box-access.opening.diameter", &OPENING, 35_000, 889_000),
        },
        millimetres: OpeningSizes {
            off_center: metric("box-access.opening-metric.off-center", 10_000, 254_000),
            long_side: metric("box-access.opening-metric.long-side", 28_750, 730_250),
            short_side: metric("box-access.opening-metric.short-side", 17_500, 444_500),
            diameter: metric("box-access.opening-metric.diameter", 35_000, 889_000),
        },
    };

    pub(super) const fn of(edition: Edition) -> Self {
        match edition {
            Edition::E2017 | Edition::E2020 => Self::E2017,
            Edition::E2023 => Self { openings: Some(Self::OPENINGS_2023), ..Self::E2017 },
            Edition::E2026 => {
                Self { openings: Some(Openings { in_text: true, ..Self::OPENINGS_2023 }), ..Self::E2017 }
            }
        }
    }

    pub(super) fn figures(&self) -> impl Iterator<Item = RuleFigure> + use<> {
        let Self { handhole_cover, openings } = self.clone();
        let openings = openings.map(|openings| {
            let Openings { in_text: _, small_up_to, inches, millimetres } = openings;
            std::iter::once(small_up_to).chain(inches.figures()).chain(millimetres.figures())
        });
        std::iter::once(handhole_cover).chain(openings.into_iter().flatten())
    }
}

impl OpeningSizes {
    fn figures(self) -> [RuleFigure; 4] {
        [self.off_center, self.long_side, self.short_side, self.diameter]
    }
}

const fn metric(name: &'static str, us: i64, si: i64) -> RuleFigure {
    RuleFigure::length(name, &OPENING_METRIC, us, si)
}
