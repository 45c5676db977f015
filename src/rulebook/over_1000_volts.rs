//! Boxes for systems over 1000 V: what Part IV of Article 314 asks, Part III in 2023, which counts in diameters of cables.

use super::RuleFigure;
use super::declare::RECALLED;
use super::strategy::{Choice, Strategy, choices};

rules! {
    /// Over 1000 V nominal the lengths follow the cables, not the raceways.
    SCOPE: "over-1000-volts.scope", "314.70", [Recalled, Published, UnofficialCopy], RECALLED;
    /// A straight pull asks for a multiple of the diameter of the largest cable.
    STRAIGHT: "over-1000-volts.straight", "314.71(A)", [Bracketed, Published, UnofficialCopy],
        "Two trade-forum threads that work 48 diameters; 32 for nonshielded cable is recalled";
    /// An angle or U pull asks for a multiple of the diameter of the largest cable and the diameters of all others of the wall.
    ANGLE: "over-1000-volts.angle", "314.71(B)(1)", [Bracketed, Published, UnofficialCopy],
        "A trade-forum thread that works 36 diameters of 2.15 in.; the sum over the wall and 24 for nonshielded cable are recalled";
    /// Where a cable enters and where it leaves stand a multiple of its diameter apart.
    ENTRY_EXIT: "over-1000-volts.entry-exit", "314.71(B)(2)", [Bracketed, Published, UnofficialCopy], RECALLED;
    /// Opposite a removable cover, the bending radius of the cable may serve instead.
    REMOVABLE_COVER: "over-1000-volts.removable-cover", "314.71(B)(1) Exception", [Bracketed, Published, UnofficialCopy],
        RECALLED;
    /// How sharply a cable may be bent.
    BENDING_RADIUS: "over-1000-volts.bending-radius", ["300.34", "300.34", "305.5"],
        [Bracketed, Published, UnofficialCopy],
        "recalled; the section number of 2023 is unconfirmed";
    /// At least one side of the box can be removed.
    REMOVABLE_SIDE: "over-1000-volts.removable-side", "314.71(C)", [Bracketed, Published, UnofficialCopy], RECALLED;
    /// How the box is built, closed and marked on the outside.
    CONSTRUCTION: "over-1000-volts.construction", "314.72", [Bracketed, Published, UnofficialCopy], RECALLED;
}

subject! {
    /// A multiple of the diameter, for cable that is shielded or lead-covered, and for cable that is neither.
    pub struct Multiple {
        /// For shielded or lead-covered cable.
        pub shielded: RuleFigure,
        /// For cable that is neither.
        pub nonshielded: RuleFigure,
    }

    /// Figures over 1000 V.
    pub struct Over1000Volts {
        /// Which cables of a wall the angle rule counts.
        pub angle_adds: Strategy<CablesAdded>,
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
}

choices! {
    /// Which cables of a wall the angle rule counts.
    CablesAdded;
}

impl Over1000Volts {
    /// The figures that 2017, 2020 and 2023 share.
    pub(super) const ALL_EDITIONS: Self = Self {
        angle_adds: CablesAdded::LAWFUL,
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
}
