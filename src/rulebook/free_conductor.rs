//! How much free conductor must be left at a box.

use super::{Basis, Edition, Rule, RuleFigure};
use crate::quantity::Measure;

const SOURCE: &str = "EC&M, Code Q&A: Free Conductor Length Requirements (2020 edition); a trade-forum thread that quotes 2023";

/// Free conductor is left at each outlet, junction and switch point, measured from where it leaves its raceway or sheath.
pub static LENGTH: Rule = Rule::everywhere("free-conductor.length", "300.14", Basis::Published, SOURCE);

/// At a small opening each conductor must also reach a stated length outside it.
pub static OUTSIDE: Rule = Rule::everywhere("free-conductor.outside", "300.14", Basis::Published, SOURCE);

/// A conductor that is neither spliced nor terminated at the box need not be left long.
pub static UNBROKEN: Rule =
    Rule::everywhere("free-conductor.unbroken", "300.14 Exception", Basis::Published, SOURCE);

/// The free length may be in one piece or spliced.
pub static SPLICED: Rule = Rule {
    id: "free-conductor.spliced",
    sections: [None, None, Some("300.14")],
    basis: Basis::Published,
    source: "A trade-forum thread that quotes the sentence of 2023; the editions before are silent, and the trade differed",
};

/// A splice stands in a box or conduit body, not in the wall.
pub static SPLICE_PLACE: Rule = Rule::everywhere(
    "free-conductor.splice-place",
    "300.15",
    Basis::Published,
    "UpCodes, 2018 International Residential Code E3905; Electrical Contractor, Exploring Chapter 3: Accepting NEC Change",
);

/// The rules of this part.
pub static RULES: [&Rule; 5] = [&LENGTH, &OUTSIDE, &UNBROKEN, &SPLICED, &SPLICE_PLACE];

/// Where the base length is measured from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MeasuredFrom {
    /// Where the conductor leaves its raceway or sheath.
    Emergence,
    /// The opening of the box.
    Opening,
}

/// What an edition says of a free length that is made up by a splice.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SplicedLength {
    /// Nothing: whether it counts is a matter of reading.
    Silent,
    /// That it counts.
    Counts,
}

/// What an edition asks of free conductor.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FreeConductor {
    /// Where the base length is measured from.
    pub from: MeasuredFrom,
    /// The base length.
    pub length: RuleFigure,
    /// How far a conductor must reach outside a small opening.
    pub outside: RuleFigure,
    /// An opening with any dimension below this is small.
    pub small_opening: RuleFigure,
    /// What is said of a length that a splice makes up.
    pub spliced: SplicedLength,
}

impl FreeConductor {
    /// Through 2020 the section is silent on splices.
    const E2017: Self = Self {
        length: RuleFigure::sized("free-conductor.length", &LENGTH, Measure::Length, 60_000, 1_500_000),
        outside: RuleFigure::sized("free-conductor.outside", &OUTSIDE, Measure::Length, 30_000, 750_000),
        small_opening: RuleFigure::sized(
            "free-conductor.small-opening",
            &OUTSIDE,
            Measure::Length,
            80_000,
            2_000_000,
        ),
        spliced: SplicedLength::Silent,
        from: MeasuredFrom::Emergence,
    };

    pub(super) const fn of(edition: Edition) -> Self {
        match edition {
            Edition::E2017 | Edition::E2020 => Self::E2017,
            Edition::E2023 | Edition::E2026 => Self { spliced: SplicedLength::Counts, ..Self::E2017 },
        }
    }

    pub(super) fn figures(&self) -> impl Iterator<Item = RuleFigure> + use<> {
        let Self { length, outside, small_opening, spliced: _, from: _ } = self.clone();
        [length, outside, small_opening].into_iter()
    }
}
