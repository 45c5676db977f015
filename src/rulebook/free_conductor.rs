//! How much free conductor must be left at a box.

use super::declare::Figures;
use super::strategy::{Choice, Strategy, choices};
use super::{Edition, RuleFigure};
use serde::Serialize;

const SOURCE: &str = "EC&M, Code Q&A: Free Conductor Length Requirements (2020 edition); a trade-forum thread that quotes 2023";

rules! {
    /// Free conductor is left at each outlet, junction and switch point, measured from where it leaves its raceway or sheath.
    LENGTH: "free-conductor.length", "300.14", [Published, Published, UnofficialCopy], SOURCE;
    /// At a small opening each conductor must also reach a stated length outside it.
    OUTSIDE: "free-conductor.outside", "300.14", [Published, Published, UnofficialCopy], SOURCE;
    /// A conductor that is neither spliced nor terminated at the box need not be left long.
    UNBROKEN: "free-conductor.unbroken", "300.14 Exception", [Published, Published, UnofficialCopy], SOURCE;
    /// The free length may be in one piece or spliced.
    SPLICED: "free-conductor.spliced", [-, -, "300.14"], [Published, Published, UnofficialCopy],
        "A trade-forum thread that quotes the sentence of 2023; the editions before are silent, and the trade differed";
    /// A splice stands in a box or conduit body, not in the wall.
    SPLICE_PLACE: "free-conductor.splice-place", "300.15", Published,
        "UpCodes, 2018 International Residential Code E3905; Electrical Contractor, Exploring Chapter 3: Accepting NEC Change";
}

choices! {
    /// What the base length and the reach outside a small opening come to, by where the base length is measured from.
    FreeLengthBy;
}

/// What an edition says of a free length that is made up by a splice.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub enum SplicedLength {
    /// Nothing: whether it counts is a matter of reading.
    Silent,
    /// That it counts.
    Counts,
}

impl Figures for SplicedLength {}

subject! {
    /// What an edition asks of free conductor.
    pub struct FreeConductor {
        /// What the base length and the reach outside a small opening come to.
        pub required_by: Strategy<FreeLengthBy>,
        /// The base length.
        pub length: RuleFigure,
        /// How far a conductor must reach outside a small opening.
        pub outside: RuleFigure,
        /// An opening with any dimension below this is small.
        pub small_opening: RuleFigure,
        /// How high the opening of a device box is, whatever the number of its gangs.
        pub device_opening: RuleFigure,
        /// What is said of a length that a splice makes up.
        pub spliced: SplicedLength,
    }
}

impl FreeConductor {
    /// Through 2020 the section is silent on splices.
    const E2017: Self = Self {
        length: RuleFigure::length("free-conductor.length", &LENGTH, 60_000, 1_500_000),
        outside: RuleFigure::length("free-conductor.outside", &OUTSIDE, 30_000, 750_000),
        small_opening: RuleFigure::length("free-conductor.small-opening", &OUTSIDE, 80_000, 2_000_000),
        device_opening: RuleFigure::length("free-conductor.device-opening", &OUTSIDE, 30_000, 750_000),
        spliced: SplicedLength::Silent,
        required_by: FreeLengthBy::LAWFUL,
    };

    pub(super) const fn of(edition: Edition) -> Self {
        match edition {
            Edition::E2017 | Edition::E2020 => Self::E2017,
            Edition::E2023 | Edition::E2026 => Self { spliced: SplicedLength::Counts, ..Self::E2017 },
        }
    }
}
