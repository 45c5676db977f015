//! What metal boxes and their covers are made of: 314.40 and 314.41, in 2023 314.100 and 314.101.

use super::RuleFigure;
use super::declare::RECALLED;
use crate::quantity::Decimal;

const ADOPTED: &str = "2013 and 2022 California Electrical Code (the 2011 and 2020 texts); NOM-001-SEDE-2012";

rules! {
    /// The walls of a sheet-steel box of up to the stated volume have a least thickness.
    SHEET_STEEL: "box-construction.sheet-steel", ["314.40(B)", "314.40(B)", "314.100(B)"],
        [Bracketed, Published, UnofficialCopy], RECALLED;
    /// The walls of a sheet-steel box over that volume have another, which is less.
    LARGE_SHEET_STEEL: "box-construction.large-sheet-steel", ["314.40(C)", "314.40(C)", "314.100(C)"],
        [Bracketed, Published, UnofficialCopy],
        "EC&M Code Quiz, 29 May 2007 (0.053 in.)";
    /// The walls of a cast box have a least thickness by how it is cast.
    CAST: "box-construction.cast", ["314.40(B)", "314.40(B)", "314.100(B)"],
        [Bracketed, Published, UnofficialCopy], RECALLED;
    /// A box listed as equal in strength, and a listed short-radius body, may be thinner.
    LISTED: "box-construction.listed", ["314.40(B) Exceptions", "314.40(B) Exceptions", "314.100(B) Exceptions"],
        [Bracketed, Published, UnofficialCopy], RECALLED;
    /// A metal box has a means to connect an equipment grounding conductor.
    GROUNDING: "box-construction.grounding-provision", ["314.40(D)", "314.40(D)", "314.100(D)"],
        [Bracketed, Published, UnofficialCopy], RECALLED;
    /// A metal cover is as thick as its box, or listed.
    COVER: "box-construction.cover", ["314.41", "314.41", "314.101"],
        [Bracketed, Published, UnofficialCopy], ADOPTED;
    /// A metal cover is of the material of its box, or lined with insulation, or listed.
    COVER_MATERIAL: "box-construction.cover-material", ["314.41", "314.41", "314.101"], Published, ADOPTED;
}

subject! {
    /// Figures of construction, the same in every edition.
    pub struct BoxConstruction {
        /// The volume up to which a sheet-steel box is a small one.
        pub small_up_to: RuleFigure,
        /// The least thickness of a small sheet-steel box.
        pub sheet_steel: RuleFigure,
        /// The least thickness of a larger one, without its coating.
        pub large_sheet_steel: RuleFigure,
        /// The least thickness of malleable iron and of die-cast or permanent-mold cast metal.
        pub malleable_or_die_cast: RuleFigure,
        /// The least thickness of other cast metal.
        pub other_cast: RuleFigure,
        /// The least thickness of an insulating lining in a cover.
        pub cover_lining: RuleFigure,
    }
}

impl BoxConstruction {
    pub(super) const ALL_EDITIONS: Self = Self {
        small_up_to: RuleFigure::volume("box-construction.small-up-to", &SHEET_STEEL, 1_000_000, 16_500_000),
        sheet_steel: RuleFigure::length("box-construction.sheet-steel", &SHEET_STEEL, 625, 15_900),
        large_sheet_steel: RuleFigure::length(
            "box-construction.large-sheet-steel",
            &LARGE_SHEET_STEEL,
            530,
            13_500,
        ),
        // 3/32 in. is 0.09375 in., which ten-thousandths cannot hold
        malleable_or_die_cast: RuleFigure {
            us: Decimal::from_billionths(93_750_000),
            ..RuleFigure::length("box-construction.malleable-or-die-cast", &CAST, 0, 23_800)
        },
        other_cast: RuleFigure::length("box-construction.other-cast", &CAST, 1_250, 31_700),
        // 1/32 in. is 0.03125 in.
        cover_lining: RuleFigure {
            us: Decimal::from_billionths(31_250_000),
            ..RuleFigure::length("box-construction.cover-lining", &COVER_MATERIAL, 0, 7_900)
        },
    };
}
