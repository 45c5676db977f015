//! Boxes for systems over 1000 V: what Part IV of Article 314 asks, which counts in diameters of cables.

use super::{Basis, Rule, RuleFigure};

const RECALLED: &str = "recalled; no published source was read";

/// Over 1000 V nominal (from 2023 also over 1500 V direct current) the lengths follow the cables, not the raceways.
pub static SCOPE: Rule = Rule::everywhere("over-1000-volts.scope", "314.70", Basis::Recalled, RECALLED);

/// A straight pull asks for so many diameters of the largest cable.
pub static STRAIGHT: Rule = Rule::everywhere(
    "over-1000-volts.straight",
    "314.71(A)",
    Basis::Published,
    "Two trade-forum threads that work 48 diameters; 32 for nonshielded cable is recalled",
);

/// An angle or U pull asks for so many diameters of the largest cable and the diameters of all others of the wall.
pub static ANGLE: Rule = Rule::everywhere(
    "over-1000-volts.angle",
    "314.71(B)(1)",
    Basis::Published,
    "A trade-forum thread that works 36 diameters of 2.15 in.; the sum over the wall and 24 for nonshielded cable are recalled",
);

/// Where a cable enters and where it leaves stand so many of its diameters apart.
pub static ENTRY_EXIT: Rule =
    Rule::everywhere("over-1000-volts.entry-exit", "314.71(B)(2)", Basis::Recalled, RECALLED);

/// Opposite a removable cover, the bending radius of the cable may serve instead.
pub static REMOVABLE_COVER: Rule =
    Rule::everywhere("over-1000-volts.removable-cover", "314.71(B)(1) Exception", Basis::Recalled, RECALLED);

/// How sharply a cable may be bent.
pub static BENDING_RADIUS: Rule = Rule {
    id: "over-1000-volts.bending-radius",
    sections: [Some("300.34"), Some("300.34"), Some("305.5")],
    basis: Basis::Recalled,
    source: "recalled; the section number of 2023 is unconfirmed",
};

/// At least one side of the box can be removed.
pub static REMOVABLE_SIDE: Rule =
    Rule::everywhere("over-1000-volts.removable-side", "314.71(C)", Basis::Recalled, RECALLED);

/// How the box is built, closed and marked on the outside.
pub static CONSTRUCTION: Rule =
    Rule::everywhere("over-1000-volts.construction", "314.72", Basis::Recalled, RECALLED);

/// The rules of this part.
pub static RULES: [&Rule; 8] = [
    &SCOPE,
    &STRAIGHT,
    &ANGLE,
    &ENTRY_EXIT,
    &REMOVABLE_COVER,
    &BENDING_RADIUS,
    &REMOVABLE_SIDE,
    &CONSTRUCTION,
];

/// A multiple of the diameter, for cable that is shielded or lead-covered, and for cable that is neither.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Multiple {
    /// For shielded or lead-covered cable.
    pub shielded: RuleFigure,
    /// For cable that is neither.
    pub nonshielded: RuleFigure,
}

/// Figures over 1000 V.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Over1000Volts {
    /// Which other cables the angle rule adds.
    pub angle_adds: CablesAdded,
    /// Diameters that a straight pull asks for.
    pub straight: Multiple,
    /// Diameters that an angle or U pull asks for.
    pub angle: Multiple,
    /// Diameters between where a cable enters and where it leaves.
    pub entry_exit: Multiple,
    /// Diameters of the least bending radius.
    pub bending_radius: Multiple,
    /// Overall diameters of the least bending radius of a cable of several shielded conductors.
    pub bending_radius_overall: RuleFigure,
}

/// Which other cables the angle rule adds to so many diameters of the largest.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CablesAdded {
    /// All of the wall.
    OfWall,
    /// Those of the same row only.
    OfRow,
}

impl Over1000Volts {
    /// The figures that 2017, 2020 and 2023 share.
    pub(super) const ALL_EDITIONS: Self = Self {
        angle_adds: CablesAdded::OfWall,
        straight: Multiple {
            shielded: RuleFigure::number("over-1000-volts.straight.shielded", &STRAIGHT, 480_000),
            nonshielded: RuleFigure::number("over-1000-volts.straight.nonshielded", &STRAIGHT, 320_000),
        },
        angle: Multiple {
            shielded: RuleFigure::number("over-1000-volts.angle.shielded", &ANGLE, 360_000),
            nonshielded: RuleFigure::number("over-1000-volts.angle.nonshielded", &ANGLE, 240_000),
        },
        entry_exit: Multiple {
            shielded: RuleFigure::number("over-1000-volts.entry-exit.shielded", &ENTRY_EXIT, 360_000),
            nonshielded: RuleFigure::number("over-1000-volts.entry-exit.nonshielded", &ENTRY_EXIT, 240_000),
        },
        bending_radius: Multiple {
            shielded: RuleFigure::number("over-1000-volts.bending-radius.shielded", &BENDING_RADIUS, 120_000),
            nonshielded: RuleFigure::number(
                "over-1000-volts.bending-radius.nonshielded",
                &BENDING_RADIUS,
                80_000,
            ),
        },
        bending_radius_overall: RuleFigure::number(
            "over-1000-volts.bending-radius.overall",
            &BENDING_RADIUS,
            70_000,
        ),
    };

    pub(super) fn figures(&self) -> impl Iterator<Item = RuleFigure> + use<> {
        let Self { straight, angle, entry_exit, bending_radius, bending_radius_overall, .. } = self.clone();
        [straight, angle, entry_exit, bending_radius]
            .into_iter()
            .flat_map(|multiple| [multiple.shielded, multiple.nonshielded])
            .chain([bending_radius_overall])
    }
}
