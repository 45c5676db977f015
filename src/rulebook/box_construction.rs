//! What metal boxes and their covers are made of: 314.40 and 314.41.

use super::{Basis, Rule, RuleFigure};
use crate::quantity::{Decimal, Measure};

const RECALLED: &str = "recalled; no published source was read";

/// The walls of a sheet-steel box of up to the stated volume have a least thickness.
pub static SHEET_STEEL: Rule =
    Rule::everywhere("box-construction.sheet-steel", "314.40(B)", Basis::Recalled, RECALLED);

/// The walls of a sheet-steel box over that volume have another, which is less.
pub static LARGE_SHEET_STEEL: Rule = Rule::everywhere(
    "box-construction.large-sheet-steel",
    "314.40(C)",
    Basis::Published,
    "EC&M Code Quiz, 29 May 2007 (0.053 in.)",
);

/// The walls of a cast box have a least thickness by how it is cast.
pub static CAST: Rule = Rule::everywhere("box-construction.cast", "314.40(B)", Basis::Recalled, RECALLED);

/// A box listed as equal in strength, and a listed short-radius body, may be thinner.
pub static LISTED: Rule =
    Rule::everywhere("box-construction.listed", "314.40(B) Exceptions", Basis::Recalled, RECALLED);

/// A metal box has a means to connect an equipment grounding conductor.
pub static GROUNDING: Rule =
    Rule::everywhere("box-construction.grounding-provision", "314.40(D)", Basis::Recalled, RECALLED);

/// A metal cover is as thick as the walls of its box must be, or listed, or lined with insulation.
pub static COVER: Rule = Rule::everywhere("box-construction.cover", "314.41", Basis::Recalled, RECALLED);

/// The rules of this part.
pub static RULES: [&Rule; 6] = [&SHEET_STEEL, &LARGE_SHEET_STEEL, &CAST, &LISTED, &GROUNDING, &COVER];

/// Figures of construction, the same in every edition.
#[derive(Clone, Debug, PartialEq, Eq)]
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

impl BoxConstruction {
    pub(super) const ALL_EDITIONS: Self = Self {
        small_up_to: RuleFigure::sized(
            "box-construction.small-up-to",
            &SHEET_STEEL,
            Measure::Volume,
            1_000_000,
            16_500_000,
        ),
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
            ..RuleFigure::length("box-construction.cover-lining", &COVER, 0, 7_900)
        },
    };

    pub(super) fn figures(&self) -> impl Iterator<Item = RuleFigure> + use<> {
        let Self {
            small_up_to,
            sheet_steel,
            large_sheet_steel,
            malleable_or_die_cast,
            other_cast,
            cover_lining,
        } = self.clone();
        [small_up_to, sheet_steel, large_sheet_steel, malleable_or_die_cast, other_cast, cover_lining]
            .into_iter()
    }
}
