//! What a box may carry: luminaires, fans, other equipment, and receptacles in floors (314.27).

use super::RuleFigure;
use super::declare::{Figures, RECALLED};
use serde::Serialize;

const WEIGHTY: &str = "EC&M, Weighty Issue, 16 Oct 2017";
const FANS: &str = "Three trade-forum threads on ceiling fans (2569630, 2581560, 2582558)";

rules! {
    /// A box on a wall or another vertical surface carries 50 lb, or what is marked inside it.
    WALL: "luminaire-outlet.wall", "314.27(A)(1)", Published, WEIGHTY;
    /// A light luminaire on a wall may hang from any box or plaster ring by two screws.
    LIGHT_LUMINAIRE: "luminaire-outlet.light", "314.27(A)(1) Exception", [Bracketed, Published, UnofficialCopy],
        "EC&M, Code Quiz 37; EC&M, Weighty Issue, 16 Oct 2017";
    /// A box in a ceiling carries at least 50 lb; a heavier luminaire needs a box listed for it.
    CEILING: "luminaire-outlet.ceiling", "314.27(A)(2)", [Published, Published, UnofficialCopy], WEIGHTY;
    /// A heavier luminaire may hang from the structure instead.
    INDEPENDENT: "luminaire-outlet.independent", "314.27(A)(2)", Published, WEIGHTY;
    /// The weight that a box carries is marked on its inside.
    MARK: "luminaire-outlet.mark", "314.27(A)", Published, WEIGHTY;
    /// A box for a receptacle in a floor is listed for floors.
    FLOOR: "luminaire-outlet.floor", "314.27(B)", [Bracketed, Published, UnofficialCopy], RECALLED;
    /// In the raised floor of a show window another box may serve.
    SHOW_WINDOW: "luminaire-outlet.show-window", "314.27(B) Exception", [Bracketed, Published, UnofficialCopy],
        RECALLED;
    /// A box that alone carries a ceiling fan is listed and marked for it, up to a weight.
    FAN: "fan-outlet.support", "314.27(C)", [Bracketed, Published, UnofficialCopy], FANS;
    /// A fan box for a heavy fan is marked with the weight.
    FAN_MARK: "fan-outlet.weight-mark", "314.27(C)", [Bracketed, Published, UnofficialCopy], FANS;
    /// From 2023 the mark of a fan box is on its inside.
    FAN_MARK_INSIDE: "fan-outlet.mark-inside", [-, -, "314.27(C)"], [Published, Published, UnofficialCopy], FANS;
    /// The structure may carry a fan, apart from the box.
    FAN_STRUCTURE: "fan-outlet.structure", [-, "422.18", "422.18(A)"], [Published, Published, UnofficialCopy], RECALLED;
    /// A supporting receptacle may carry a fan within its listing.
    FAN_RECEPTACLE: "fan-outlet.receptacle", [-, "422.18(2)", "422.18(A)(2)"], [Published, Published, UnofficialCopy],
        RECALLED;
    /// In 2017, spare switched conductors at a ceiling box of a dwelling ask for a fan box.
    SPARE_CONDUCTORS: "fan-outlet.spare-conductors", ["314.27(C)", -, -], Published, FANS;
    /// From 2020, ceiling boxes of habitable rooms of dwellings are ready for a fan.
    FAN_READY: "fan-outlet.habitable-rooms", [-, "314.27(C)", "314.27(C)"], [Published, Published, UnofficialCopy],
        FANS;
    /// Equipment other than a fan is carried as a luminaire of the same size and weight.
    EQUIPMENT: "luminaire-outlet.equipment", "314.27(D)", [Bracketed, Published, UnofficialCopy], RECALLED;
    /// Light equipment may hang from any box or plaster ring by two screws.
    LIGHT_EQUIPMENT: "luminaire-outlet.light-equipment", "314.27(D) Exception", [Bracketed, Published, UnofficialCopy],
        RECALLED;
    /// A supporting receptacle carries what its listing allows.
    SEPARABLE: "luminaire-outlet.separable", "314.27(E)", [Recalled, Published, UnofficialCopy], RECALLED;
}

subject! {
    /// What may hang from any box.
    pub struct LightLoad {
        /// The most weight.
        pub weight: RuleFigure,
        /// The fewest screws.
        pub screws: RuleFigure,
        /// The smallest number of a screw: No. 6.
        pub screw_number: RuleFigure,
    }
}

/// Where a ceiling box must be ready for a fan, and what makes it ready.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub enum FanReadiness {
    /// Where spare switched conductors are run to it: a box listed for a fan.
    SpareConductors,
    /// In habitable rooms: a box listed for a fan, or access to the framing.
    HabitableRooms {
        /// Whether the framing must be reached through the box, without removing it.
        through_box: bool,
    },
}

impl Figures for FanReadiness {}

subject! {
    /// What a box may carry, per edition.
    pub struct LuminaireOutlet {
        /// What a box without a mark carries, and a box in a ceiling at least.
        pub ordinary: RuleFigure,
        /// Luminaires that may hang from any box.
        pub light_luminaire: LightLoad,
        /// Equipment that may hang from any box.
        pub light_equipment: LightLoad,
        /// The heaviest fan that a box may carry.
        pub fan: RuleFigure,
        /// The heaviest fan on a box whose mark names no weight.
        pub fan_unmarked: RuleFigure,
        /// Whether the mark of a fan box must be on its inside.
        pub fan_mark_inside: bool,
        /// Whether 422.18 was read, which lets the structure or a supporting receptacle carry a fan.
        pub fan_support_read: bool,
        /// Where a ceiling box must be ready for a fan.
        pub readiness: FanReadiness,
    }
}

impl LuminaireOutlet {
    pub(super) const E2017: Self = Self {
        ordinary: RuleFigure::weight("luminaire-outlet.ordinary", &CEILING, 500_000, 230_000),
        light_luminaire: LightLoad {
            weight: RuleFigure::weight("luminaire-outlet.light.weight", &LIGHT_LUMINAIRE, 60_000, 30_000),
            screws: RuleFigure::number("luminaire-outlet.light.screws", &LIGHT_LUMINAIRE, 20_000),
            screw_number: RuleFigure::number("luminaire-outlet.light.screw-number", &LIGHT_LUMINAIRE, 60_000),
        },
        light_equipment: LightLoad {
            weight: RuleFigure::weight(
                "luminaire-outlet.light-equipment.weight",
                &LIGHT_EQUIPMENT,
                60_000,
                30_000,
            ),
            screws: RuleFigure::number("luminaire-outlet.light-equipment.screws", &LIGHT_EQUIPMENT, 20_000),
            screw_number: RuleFigure::number(
                "luminaire-outlet.light-equipment.screw-number",
                &LIGHT_EQUIPMENT,
                60_000,
            ),
        },
        fan: RuleFigure::weight("fan-outlet.weight", &FAN, 700_000, 320_000),
        fan_unmarked: RuleFigure::weight("fan-outlet.weight-without-mark", &FAN_MARK, 350_000, 160_000),
        fan_mark_inside: false,
        fan_support_read: false,
        readiness: FanReadiness::SpareConductors,
    };

    pub(super) const E2020: Self = Self {
        fan_support_read: true,
        readiness: FanReadiness::HabitableRooms { through_box: false },
        ..Self::E2017
    };

    pub(super) const E2023: Self = Self {
        fan_mark_inside: true,
        readiness: FanReadiness::HabitableRooms { through_box: true },
        ..Self::E2020
    };
}
