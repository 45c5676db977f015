//! How much room a box has: what 314.16(A) adds up, and what it lets count.

use super::RuleFigure;
use super::strategy::{Choice, Strategy, choices};
use crate::quantity::{Decimal, Measure};

const IRC: &str = "2018 International Residential Code p. 770, which mirrors the 2017 edition";

rules! {
    /// The volume found must be at least the fill.
    SCOPE: "outlet-volume.scope", "314.16", Published, IRC;
    /// Volumes of the assembled sections are added; a ring or cover counts only when marked, or made from a table box.
    ASSEMBLY: "outlet-volume.assembly", "314.16(A)", Published,
        "2018 International Residential Code p. 770; EC&M, Brushing Up on Your Box Fill Calculations Skills";
    /// A standard metal box without a mark takes the volume of the table.
    STANDARD: "outlet-volume.standard", "314.16(A)(1)", Published, IRC;
    /// What is not in the table, and every nonmetallic box, takes the volume that its maker marked on it.
    MARKED: "outlet-volume.marked", "314.16(A)(2)", [Bracketed, Published, UnofficialCopy],
        "Reprints of the section by two makers of boxes; the treatment of an unmarked box over 100 in³ is recalled";
    /// A barrier divides the box into spaces, each computed alone; the barrier itself takes room.
    BARRIER: "outlet-volume.barrier", "314.16(A)", [Published, Published, UnofficialCopy],
        "2018 International Residential Code p. 770 (0.5 and 1.0 in³); sharing the rest out is a policy of this service";
    /// Which standard boxes are offered for a number of gangs.
    OFFER: "outlet-volume.offer", "Table 314.16(A)", CommonPractice,
        "common practice: a 4 in. or 4-11/16 in. square box takes a cover or ring of at most two gangs, an octagonal box one";
}

subject! {
    /// Figures of the volume side.
    pub struct OutletVolume {
        /// What a metal barrier with no mark of its own takes.
        pub metal_barrier: RuleFigure,
        /// What a nonmetallic barrier with no mark of its own takes.
        pub nonmetallic_barrier: RuleFigure,
        /// Up to this volume a box that is not in the table must be marked.
        pub marked_up_to: RuleFigure,
        /// The volume of a cube one unit of length on each side: 1 in³, 0.001 cm³.
        pub volume_of_unit_cube: RuleFigure,
        /// How the volume is shared out between the spaces that barriers make.
        pub sharing: Strategy<Sharing>,
        /// The most gangs of devices for which a square box is offered.
        pub square_box_gangs: RuleFigure,
        /// The most gangs of devices for which an octagonal box is offered.
        pub octagonal_box_gangs: RuleFigure,
    }
}

choices! {
    /// What a space of a divided box has of what barriers leave.
    Sharing;
}

impl OutletVolume {
    /// The figures that 2017, 2020 and 2023 share.
    pub(super) const ALL_EDITIONS: Self = Self {
        metal_barrier: RuleFigure::volume("outlet-volume.barrier.metal", &BARRIER, 5_000, 82_000),
        nonmetallic_barrier: RuleFigure::volume(
            "outlet-volume.barrier.nonmetallic",
            &BARRIER,
            10_000,
            164_000,
        ),
        marked_up_to: RuleFigure::volume("outlet-volume.marked.up-to", &MARKED, 1_000_000, 16_500_000),
        volume_of_unit_cube: RuleFigure {
            name: "outlet-volume.unit-cube",
            rule: &MARKED,
            measure: Measure::Number,
            us: Decimal::ONE,
            si: Decimal::ten_thousandths(10),
        },
        sharing: Sharing::LAWFUL,
        square_box_gangs: RuleFigure::number("outlet-volume.offer.square-gangs", &OFFER, 20_000),
        octagonal_box_gangs: RuleFigure::number("outlet-volume.offer.octagonal-gangs", &OFFER, 10_000),
    };
}
