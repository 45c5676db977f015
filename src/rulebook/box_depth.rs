//! How deep a box must be: what 314.24 asks of plain boxes and of boxes that enclose devices or equipment.

use super::declare::RECALLED;
use super::strategy::{Choice, Strategy, choices};
use super::{Edition, RuleFigure};
use crate::trade::ConductorSize;

const THREAD: &str = "A trade-forum thread that quotes the section as of 2023";

rules! {
    /// A box that encloses neither device nor equipment has a least depth.
    PLAIN: "box-depth.plain", "314.24(A)", [Bracketed, Published, UnofficialCopy], RECALLED;
    /// With devices or equipment inside, the depth takes how far each projects, and goes by the conductors that supply it.
    EQUIPMENT: "box-depth.equipment", "314.24(B)", [Published, Published, UnofficialCopy], THREAD;
    /// Equipment that projects far into the box asks for its own depth and a little more.
    LARGE: "box-depth.large-equipment", "314.24(B)(1)", Published, THREAD;
    /// Equipment supplied by conductors larger than 4 AWG stands in a box identified for it.
    OVER_4_AWG: "box-depth.over-4-awg", "314.24(B)(2)", [Bracketed, Published, UnofficialCopy], RECALLED;
    /// A large pull or junction box with wire-bending space at the terminals serves for it too.
    PULL_BOX: "box-depth.over-4-awg-in-pull-box", "314.24(B)(2) Exception", [Bracketed, Published, UnofficialCopy],
        RECALLED;
    /// Equipment supplied by 8, 6 or 4 AWG asks for a least depth.
    AWG_8_TO_4: "box-depth.8-to-4-awg", "314.24(B)(3)", [Bracketed, Published, UnofficialCopy], RECALLED;
    /// Equipment supplied by 12 or 10 AWG asks for a least depth, and for its own depth and a little more when it projects.
    AWG_12_OR_10: "box-depth.12-or-10-awg", "314.24(B)(4)", [Bracketed, Published, UnofficialCopy], THREAD;
    /// Where conductors enter through the center of the back, equipment that projects leaves more room behind it.
    REAR_CENTER: "box-depth.rear-center-entry", [-, -, "314.24(B)(4)"], [Published, Published, UnofficialCopy], THREAD;
    /// Equipment supplied by 14 AWG and smaller asks for a least depth.
    UP_TO_14_AWG: "box-depth.up-to-14-awg", "314.24(B)(5)", [Bracketed, Published, UnofficialCopy], RECALLED;
    /// Equipment and a box that are listed for one another follow their listing.
    LISTED: "box-depth.listed-combination", "314.24(B)", [Bracketed, Published, UnofficialCopy], RECALLED;
    /// Equipment does not pass the center line of an entry in a side wall, or leaves room beside it.
    SIDE_ENTRY: "box-depth.side-entry", [-, -, "314.24(C)"], Published,
        "EC&M Code Quiz: Clearance From Box Wall to Installed Device, 6 Feb 2025";
}

subject! {
    /// Figures of box depth. An absent figure is a rule that the edition does not have.
    pub struct BoxDepth {
        /// The least depth of a box without equipment.
        pub plain: RuleFigure,
        /// Equipment that projects more than this is large.
        pub large_projection: RuleFigure,
        /// What a box is deeper than large equipment.
        pub behind_large: RuleFigure,
        /// Equipment on conductors larger than this is asked for what pull boxes are.
        pub pull_box_beyond: ConductorSize,
        /// Conductors from this size to that one need the greatest of the depths.
        pub deepest_from: ConductorSize,
        /// Conductors up to this size need the least.
        pub shallowest_up_to: ConductorSize,
        /// A pull box over this volume may hold equipment on conductors larger than 4 AWG.
        pub pull_box_over: RuleFigure,
        /// The least depth with 8, 6 or 4 AWG.
        pub awg_8_to_4: RuleFigure,
        /// The least depth with 12 or 10 AWG.
        pub awg_12_or_10: RuleFigure,
        /// Equipment on 12 or 10 AWG that projects more than this needs room behind it.
        pub projection: RuleFigure,
        /// That room.
        pub behind: RuleFigure,
        /// The least depth with 14 AWG and smaller.
        pub up_to_14_awg: RuleFigure,
        /// The room behind equipment where conductors enter through the center of the back.
        pub rear_center: Option<RuleFigure>,
        /// The clearance between equipment that passes the center line of a side entry and the wall of that entry.
        pub side_entry: Option<RuleFigure>,
        /// What the depth must take of the equipment itself, whatever supplies it.
        pub takes: Strategy<DepthTakes>,
    }
}

choices! {
    /// What the depth must take of equipment that projects so far.
    DepthTakes;
}

impl BoxDepth {
    const E2017: Self = Self {
        plain: RuleFigure::length("box-depth.plain", &PLAIN, 5_000, 127_000),
        large_projection: RuleFigure::length("box-depth.large-equipment.over", &LARGE, 18_750, 480_000),
        behind_large: RuleFigure::length("box-depth.large-equipment.behind", &LARGE, 2_500, 60_000),
        pull_box_beyond: ConductorSize::AWG_4,
        deepest_from: ConductorSize::AWG_8,
        shallowest_up_to: ConductorSize::AWG_14,
        pull_box_over: RuleFigure::volume(
            "box-depth.over-4-awg-in-pull-box.over",
            &PULL_BOX,
            1_000_000,
            16_500_000,
        ),
        awg_8_to_4: RuleFigure::length("box-depth.8-to-4-awg", &AWG_8_TO_4, 20_625, 524_000),
        awg_12_or_10: RuleFigure::length("box-depth.12-or-10-awg", &AWG_12_OR_10, 11_875, 302_000),
        projection: RuleFigure::length("box-depth.12-or-10-awg.over", &AWG_12_OR_10, 10_000, 250_000),
        behind: RuleFigure::length("box-depth.12-or-10-awg.behind", &AWG_12_OR_10, 2_500, 60_000),
        up_to_14_awg: RuleFigure::length("box-depth.up-to-14-awg", &UP_TO_14_AWG, 9_375, 238_000),
        rear_center: None,
        side_entry: None,
        takes: DepthTakes::LAWFUL,
    };

    const E2023: Self = Self {
        rear_center: Some(RuleFigure::length(
            "box-depth.rear-center-entry.behind",
            &REAR_CENTER,
            5_000,
            130_000,
        )),
        side_entry: Some(RuleFigure::length("box-depth.side-entry.clearance", &SIDE_ENTRY, 5_000, 130_000)),
        ..Self::E2017
    };

    pub(super) const fn of(edition: Edition) -> Self {
        match edition {
            Edition::E2017 | Edition::E2020 => Self::E2017,
            Edition::E2023 | Edition::E2026 => Self::E2023,
        }
    }
}
