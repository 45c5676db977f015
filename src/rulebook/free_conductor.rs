//! How much free conductor must be left at a box.

use super::{Basis, Rule, RuleFigure};
use crate::quantity::Measure;

const SOURCE: &str = "EC&M, Code Q&A: Free Conductor Length Requirements (2020 edition); a trade-forum thread that quotes 2023";

/// Free conductor is left at each outlet, junction and switch point, measured from where it leaves its raceway or sheath.
pub static LENGTH: Rule = Rule::everywhere("free-conductor.length", "300.14", Basis::Published, SOURCE);

/// At a small opening each conductor must also reach a stated length outside it.
pub static OUTSIDE: Rule = Rule::everywhere("free-conductor.outside", "300.14", Basis::Published, SOURCE);

/// The rules of this part.
pub static RULES: [&Rule; 2] = [&LENGTH, &OUTSIDE];

/// Figures of free conductor, the same in every edition.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FreeConductor {
    /// The base length.
    pub length: RuleFigure,
    /// How far a conductor must reach outside a small opening.
    pub outside: RuleFigure,
    /// An opening with any dimension below this is small.
    pub small_opening: RuleFigure,
}

impl FreeConductor {
    pub(super) const ALL_EDITIONS: Self = Self {
        length: RuleFigure::sized("free-conductor.length", &LENGTH, Measure::Length, 60_000, 1_500_000),
        outside: RuleFigure::sized("free-conductor.outside", &OUTSIDE, Measure::Length, 30_000, 750_000),
        small_opening: RuleFigure::sized(
            "free-conductor.small-opening",
            &OUTSIDE,
            Measure::Length,
            80_000,
            2_000_000,
        ),
    };

    pub(super) fn figures(&self) -> impl Iterator<Item = RuleFigure> + use<> {
        let Self { length, outside, small_opening } = self.clone();
        [length, outside, small_opening].into_iter()
    }
}
