//! What a box may carry: luminaires, fans, other equipment, and receptacles in floors (314.27).

use super::{Basis, Rule, RuleFigure};
use crate::quantity::Measure::Weight;

const RECALLED: &str = "recalled; no published source was read";
const WEIGHTY: &str = "EC&M, Weighty Issue, 16 Oct 2017";
const FANS: &str = "Three trade-forum threads on ceiling fans (2569630, 2581560, 2582558)";

/// A box on a wall or another vertical surface carries 50 lb, or what is marked inside it.
pub static WALL: Rule = Rule::everywhere("luminaire-outlet.wall", "314.27(A)(1)", Basis::Published, WEIGHTY);

/// A light luminaire on a wall may hang from any box or plaster ring by two screws.
pub static LIGHT_LUMINAIRE: Rule = Rule::everywhere(
    "luminaire-outlet.light",
    "314.27(A)(1) Exception",
    Basis::Published,
    "EC&M, Code Quiz 37; EC&M, Weighty Issue, 16 Oct 2017",
);

/// A box in a ceiling carries at least 50 lb; a heavier luminaire needs a box listed for it.
pub static CEILING: Rule =
    Rule::everywhere("luminaire-outlet.ceiling", "314.27(A)(2)", Basis::Published, WEIGHTY);

/// A heavier luminaire may hang from the structure instead.
pub static INDEPENDENT: Rule =
    Rule::everywhere("luminaire-outlet.independent", "314.27(A)(2)", Basis::Published, WEIGHTY);

/// The weight that a box carries is marked on its inside.
pub static MARK: Rule = Rule::everywhere("luminaire-outlet.mark", "314.27(A)", Basis::Published, WEIGHTY);

/// A box for a receptacle in a floor is listed for floors.
pub static FLOOR: Rule = Rule::everywhere("luminaire-outlet.floor", "314.27(B)", Basis::Recalled, RECALLED);

/// In the raised floor of a show window another box may serve.
pub static SHOW_WINDOW: Rule =
    Rule::everywhere("luminaire-outlet.show-window", "314.27(B) Exception", Basis::Recalled, RECALLED);

/// A box that alone carries a ceiling fan is listed and marked for it, up to a weight.
pub static FAN: Rule = Rule::everywhere("fan-outlet.support", "314.27(C)", Basis::Published, FANS);

/// A fan box for a heavy fan is marked with the weight.
pub static FAN_MARK: Rule = Rule::everywhere("fan-outlet.weight-mark", "314.27(C)", Basis::Published, FANS);

/// From 2023 the mark of a fan box is on its inside.
pub static FAN_MARK_INSIDE: Rule = Rule {
    id: "fan-outlet.mark-inside",
    sections: [None, None, Some("314.27(C)")],
    basis: Basis::Published,
    source: FANS,
};

/// In 2017, spare switched conductors at a ceiling box of a dwelling ask for a fan box.
pub static SPARE_CONDUCTORS: Rule = Rule {
    id: "fan-outlet.spare-conductors",
    sections: [Some("314.27(C)"), None, None],
    basis: Basis::Published,
    source: FANS,
};

/// From 2020, ceiling boxes of habitable rooms of dwellings are ready for a fan.
pub static FAN_READY: Rule = Rule {
    id: "fan-outlet.habitable-rooms",
    sections: [None, Some("314.27(C)"), Some("314.27(C)")],
    basis: Basis::Published,
    source: FANS,
};

/// Equipment other than a fan is carried as a luminaire of the same size and weight.
pub static EQUIPMENT: Rule =
    Rule::everywhere("luminaire-outlet.equipment", "314.27(D)", Basis::Recalled, RECALLED);

/// Light equipment may hang from any box or plaster ring by two screws.
pub static LIGHT_EQUIPMENT: Rule =
    Rule::everywhere("luminaire-outlet.light-equipment", "314.27(D) Exception", Basis::Recalled, RECALLED);

/// A locking mounting receptacle carries what its listing allows.
pub static SEPARABLE: Rule =
    Rule::everywhere("luminaire-outlet.separable", "314.27(E)", Basis::Recalled, RECALLED);

/// The rules of this part.
pub static RULES: [&Rule; 15] = [
    &WALL,
    &LIGHT_LUMINAIRE,
    &CEILING,
    &INDEPENDENT,
    &MARK,
    &FLOOR,
    &SHOW_WINDOW,
    &FAN,
    &FAN_MARK,
    &FAN_MARK_INSIDE,
    &SPARE_CONDUCTORS,
    &FAN_READY,
    &EQUIPMENT,
    &LIGHT_EQUIPMENT,
    &SEPARABLE,
];

/// What may hang from any box.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LightLoad {
    /// The most weight.
    pub weight: RuleFigure,
    /// The fewest screws.
    pub screws: RuleFigure,
    /// The smallest number of a screw: No. 6.
    pub screw_number: RuleFigure,
}

/// Where a ceiling box must be ready for a fan, and what makes it ready.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FanReadiness {
    /// Where spare switched conductors are run to it: a box listed for a fan.
    SpareConductors,
    /// In habitable rooms: a box listed for a fan, or access to the framing.
    HabitableRooms {
        /// Whether the framing must be reached through the box, without removing it.
        through_box: bool,
    },
}

/// What a box may carry, per edition.
#[derive(Clone, Debug, PartialEq, Eq)]
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
    /// Where a ceiling box must be ready for a fan.
    pub readiness: FanReadiness,
}

impl LuminaireOutlet {
    pub(super) const E2017: Self = Self {
        ordinary: RuleFigure::sized("luminaire-outlet.ordinary", &CEILING, Weight, 500_000, 230_000),
        light_luminaire: LightLoad {
            weight: RuleFigure::sized(
                "luminaire-outlet.light.weight",
                &LIGHT_LUMINAIRE,
                Weight,
                60_000,
                30_000,
            ),
            screws: RuleFigure::number("luminaire-outlet.light.screws", &LIGHT_LUMINAIRE, 20_000),
            screw_number: RuleFigure::number("luminaire-outlet.light.screw-number", &LIGHT_LUMINAIRE, 60_000),
        },
        light_equipment: LightLoad {
            weight: RuleFigure::sized(
                "luminaire-outlet.light-equipment.weight",
                &LIGHT_EQUIPMENT,
                Weight,
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
        fan: RuleFigure::sized("fan-outlet.weight", &FAN, Weight, 700_000, 320_000),
        fan_unmarked: RuleFigure::sized(
            "fan-outlet.weight-without-mark",
            &FAN_MARK,
            Weight,
            350_000,
            160_000,
        ),
        fan_mark_inside: false,
        readiness: FanReadiness::SpareConductors,
    };

    pub(super) const E2020: Self =
        Self { readiness: FanReadiness::HabitableRooms { through_box: false }, ..Self::E2017 };

    pub(super) const E2023: Self = Self {
        fan_mark_inside: true,
        readiness: FanReadiness::HabitableRooms { through_box: true },
        ..Self::E2017
    };

    pub(super) fn figures(&self) -> impl Iterator<Item = RuleFigure> + use<> {
        let Self {
            ordinary,
            light_luminaire,
            light_equipment,
            fan,
            fan_unmarked,
            fan_mark_inside: _,
            readiness: _,
        } = self.clone();
        let light = |LightLoad { weight, screws, screw_number }| [weight, screws, screw_number];
        [ordinary, fan, fan_unmarked]
            .into_iter()
            .chain([light_luminaire, light_equipment].into_iter().flat_map(light))
    }
}
