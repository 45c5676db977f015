//! How a box sits in its surface, and what covers it: 314.19 to 314.22 and 314.25.

use super::{Basis, Rule, RuleFigure};
use crate::quantity::Measure;

const LAMENDOLA: &str = "Lamendola, codebookcity.com, answers to Article 314 part 7; UpCodes, 2018 International Residential Code E3906";
const RECALLED: &str = "recalled; no published source was read";
const EXTENSION: &str =
    "Lamendola, codebookcity.com, answers to Article 314 on an older edition; later editions recalled";

/// The front edge of a box behind a flush cover is set back a little at most, and not at all in a combustible surface.
pub static SETBACK: Rule = Rule::everywhere("box-surface.setback", "314.20", Basis::Published, LAMENDOLA);

/// A noncombustible surface leaves a small gap at most around a box with a flush cover.
pub static GAP: Rule = Rule::everywhere(
    "box-surface.gap",
    "314.21",
    Basis::Published,
    "EC&M, 2011 NEC Revisions for Boxes (1/8 in.)",
);

/// A box encloses a flush device at back and sides, and gives it substantial support of its own.
pub static FLUSH_DEVICE: Rule = Rule::everywhere(
    "box-surface.flush-device",
    "314.19",
    Basis::Published,
    "Lamendola, codebookcity.com, answers to Article 314 part 7",
);

/// A surface extension is an extension ring, mounted over the box and mechanically secured to it.
pub static EXTENSION_RING: Rule =
    Rule::everywhere("box-surface.extension-ring", "314.22", Basis::Recalled, EXTENSION);

/// Another box serves as an extension ring only where it is listed for that.
pub static EXTENSION_BOX: Rule =
    Rule::everywhere("box-surface.extension-box", "314.22", Basis::Recalled, EXTENSION);

/// An extension may be made from a cover under conditions.
pub static EXTENSION_COVER: Rule =
    Rule::everywhere("box-surface.extension-from-cover", "314.22 Exception", Basis::Recalled, EXTENSION);

/// Each box has a cover, faceplate, lampholder or canopy.
pub static COVER: Rule = Rule::everywhere("box-surface.cover", "314.25", Basis::Recalled, RECALLED);

/// Screws of a cover match the threads of the box, or follow instructions.
pub static COVER_SCREWS: Rule =
    Rule::everywhere("box-surface.cover-screws", "314.25", Basis::Recalled, RECALLED);

/// A large combustible finish exposed between a canopy and its box is covered.
pub static CANOPY_FINISH: Rule = Rule::everywhere(
    "box-surface.canopy-finish",
    "314.25(B)",
    Basis::Recalled,
    "recalled: 180 in² (0.116 m²); the square millimetres printed beside it are known to be a slip",
);

/// A cord pendant leaves its cover through a bushing or a smooth, rounded hole.
pub static PENDANT_CORD: Rule =
    Rule::everywhere("box-surface.pendant-cord", "314.25(C)", Basis::Recalled, RECALLED);

/// The rules of this part.
pub static RULES: [&Rule; 10] = [
    &SETBACK,
    &GAP,
    &FLUSH_DEVICE,
    &EXTENSION_RING,
    &EXTENSION_BOX,
    &EXTENSION_COVER,
    &COVER,
    &COVER_SCREWS,
    &CANOPY_FINISH,
    &PENDANT_CORD,
];

/// Figures of surfaces and covers, the same in every edition.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BoxSurface {
    /// The most that a box is set back in a noncombustible surface.
    pub setback: RuleFigure,
    /// The most that a box is set back in a combustible surface: nothing.
    pub setback_combustible: RuleFigure,
    /// The widest gap around a box.
    pub gap: RuleFigure,
    /// The exposed area from which on a combustible finish is covered.
    pub canopy_finish: RuleFigure,
}

impl BoxSurface {
    pub(super) const ALL_EDITIONS: Self = Self {
        setback: RuleFigure::length("box-surface.setback.noncombustible", &SETBACK, 2_500, 60_000),
        setback_combustible: RuleFigure::length("box-surface.setback.combustible", &SETBACK, 0, 0),
        gap: RuleFigure::length("box-surface.gap", &GAP, 1_250, 30_000),
        canopy_finish: RuleFigure::sized(
            "box-surface.canopy-finish",
            &CANOPY_FINISH,
            Measure::Area,
            1_800_000,
            1_160_000_000,
        ),
    };

    pub(super) fn figures(&self) -> impl Iterator<Item = RuleFigure> + use<> {
        let Self { setback, setback_combustible, gap, canopy_finish } = self.clone();
        [setback, setback_combustible, gap, canopy_finish].into_iter()
    }
}
