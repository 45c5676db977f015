//! How an enclosure is held in place: 314.23.

use super::{Basis, Rule, RuleFigure};
use crate::quantity::Measure;
use Measure::{Length, Volume, Weight};

const RECALLED: &str = "recalled; no published source was read";
const IRC: &str = "2018 International Residential Code p. 772; EC&M, Mounting a Box with Screws, 17 Aug 2017";
const CEILING_SOURCE: &str = "Electrical Contractor, Article 370: Boxes, Conduit Bodies, and Fittings";
const EMPTY_SOURCE: &str = "A trade-forum thread (210289) that quotes the 2011 text; later editions recalled";

/// An enclosure is supported by one or more of the means that the section names; one complete means is enough.
pub static MEANS: Rule = Rule::everywhere("box-support.means", "314.23", Basis::Recalled, RECALLED);

/// On a surface the enclosure is rigidly and securely fastened in place.
pub static SURFACE: Rule = Rule::everywhere("box-support.surface", "314.23(A)", Basis::Published, IRC);

/// On a structural member or from grade the enclosure is held rigidly, directly or by a brace.
pub static STRUCTURE: Rule =
    Rule::everywhere("box-support.structure", "314.23(B)", Basis::Recalled, RECALLED);

/// Nails and screws hold by outside brackets or mounting holes, or pass inside close to the back or the ends.
pub static FASTENERS: Rule = Rule::everywhere("box-support.fasteners", "314.23(B)(1)", Basis::Published, IRC);

/// Screws that pass through the inside have their threads protected.
pub static THREADS: Rule =
    Rule::everywhere("box-support.screw-threads", "314.23(B)(1)", Basis::Published, IRC);

/// Braces: least thickness of metal, least section of wood, polymeric ones identified.
pub static BRACE: Rule = Rule::everywhere("box-support.brace", "314.23(B)(2)", Basis::Recalled, RECALLED);

/// In a finished surface the enclosure is rigidly secured by clamps, anchors or fittings identified for it.
pub static FINISHED_SURFACE: Rule =
    Rule::everywhere("box-support.finished-surface", "314.23(C)", Basis::Recalled, RECALLED);

/// A suspended ceiling carries only enclosures up to a volume.
pub static CEILING_VOLUME: Rule =
    Rule::everywhere("box-support.ceiling-volume", "314.23(D)", Basis::Recalled, RECALLED);

/// In a suspended ceiling the enclosure is fastened to framing members that are themselves fastened.
pub static CEILING_FRAMING: Rule =
    Rule::everywhere("box-support.ceiling-framing", "314.23(D)(1)", Basis::Published, CEILING_SOURCE);

/// Or it is secured to support wires that are taut and not the ceiling's alone.
pub static CEILING_WIRES: Rule =
    Rule::everywhere("box-support.ceiling-wires", "314.23(D)(2)", Basis::Published, CEILING_SOURCE);

/// Raceways hold an enclosure without devices or luminaires.
pub static RACEWAYS: Rule =
    Rule::everywhere("box-support.raceways", "314.23(E)", Basis::Published, EMPTY_SOURCE);

/// A conduit body without devices or luminaires may hang from one raceway that is not smaller than it.
pub static CONDUIT_BODY: Rule =
    Rule::everywhere("box-support.conduit-body", "314.23(E) Exception", Basis::Published, EMPTY_SOURCE);

/// Raceways hold an enclosure with devices or luminaires.
pub static LOADED_RACEWAYS: Rule = Rule::everywhere(
    "box-support.loaded-raceways",
    "314.23(F)",
    Basis::Published,
    "Electrical Contractor, Article 370: Boxes, Conduit Bodies, and Fittings; EC&M, What's Wrong Here? 210",
);

/// A conduit body with devices or luminaires may hang from one threaded metal conduit that is not smaller than it.
pub static LOADED_CONDUIT_BODY: Rule = Rule::everywhere(
    "box-support.loaded-conduit-body",
    "314.23(F) Exception No. 1",
    Basis::Recalled,
    RECALLED,
);

/// Unbroken metal conduit may carry a luminaire or the box of one.
pub static LUMINAIRE_ON_CONDUIT: Rule = Rule::everywhere(
    "box-support.luminaire-on-conduit",
    "314.23(F) Exception No. 2",
    Basis::Recalled,
    RECALLED,
);

/// Embedded in concrete or masonry.
pub static EMBEDDED: Rule = Rule::everywhere("box-support.embedded", "314.23(G)", Basis::Recalled, RECALLED);

/// Hung from a cord.
pub static CORD: Rule =
    Rule::everywhere("box-support.cord-pendant", "314.23(H)(1)", Basis::Recalled, RECALLED);

/// Hung from conduit stems.
pub static STEM: Rule =
    Rule::everywhere("box-support.stem-pendant", "314.23(H)(2)", Basis::Recalled, RECALLED);

/// The rules of this part.
pub static RULES: [&Rule; 18] = [
    &MEANS,
    &SURFACE,
    &STRUCTURE,
    &FASTENERS,
    &THREADS,
    &BRACE,
    &FINISHED_SURFACE,
    &CEILING_VOLUME,
    &CEILING_FRAMING,
    &CEILING_WIRES,
    &RACEWAYS,
    &CONDUIT_BODY,
    &LOADED_RACEWAYS,
    &LOADED_CONDUIT_BODY,
    &LUMINAIRE_ON_CONDUIT,
    &EMBEDDED,
    &CORD,
    &STEM,
];

/// Limits of an enclosure that raceways hold.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct HeldByRaceways {
    /// The most volume.
    pub volume: RuleFigure,
    /// The fewest conduits.
    pub conduits: RuleFigure,
    /// How far from the enclosure each conduit may be secured.
    pub secured: RuleFigure,
    /// How far where all conduits enter on one side, if that differs.
    pub secured_one_side: Option<RuleFigure>,
}

/// Limits of a luminaire that hangs from conduit or a stem.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Clearance {
    /// The least height of its lowest point above grade or where people stand.
    pub height: RuleFigure,
    /// The least horizontal distance, up to that height, from windows, doors and the like.
    pub horizontal: RuleFigure,
    /// How far it may reach from the entry of a single conduit.
    pub extent: RuleFigure,
}

/// Figures of box supports, the same in every edition.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BoxSupport {
    /// How far from the back or the ends a nail or screw may pass through the inside.
    pub fastener_distance: RuleFigure,
    /// The least thickness of a metal brace, uncoated.
    pub metal_brace: RuleFigure,
    /// The least nominal thickness of a wood brace.
    pub wood_brace_thickness: RuleFigure,
    /// The least nominal width of a wood brace.
    pub wood_brace_width: RuleFigure,
    /// The most volume that a suspended ceiling carries.
    pub ceiling_volume: RuleFigure,
    /// Raceways that hold an enclosure without devices or luminaires.
    pub empty: HeldByRaceways,
    /// Raceways that hold an enclosure with devices or luminaires.
    pub loaded: HeldByRaceways,
    /// Unbroken conduit that carries a luminaire: how far it may reach beyond its last support.
    pub beyond_support: RuleFigure,
    /// The least unbroken length before its last support.
    pub before_support: RuleFigure,
    /// The least distance from the last support to where the length before it is fastened.
    pub support_spacing: RuleFigure,
    /// The most weight on one conduit.
    pub conduit_weight: RuleFigure,
    /// The longest nipple between box and luminaire.
    pub nipple: RuleFigure,
    /// Where a luminaire on unbroken conduit may hang.
    pub conduit_clearance: Clearance,
    /// The longest stem that needs no flexible fitting.
    pub rigid_stem: RuleFigure,
    /// Where a luminaire on a stem may hang.
    pub stem_clearance: Clearance,
}

impl BoxSupport {
    pub(super) const ALL_EDITIONS: Self = Self {
        fastener_distance: length("box-support.fasteners.distance", &FASTENERS, 2_500, 60_000),
        metal_brace: length("box-support.brace.metal-thickness", &BRACE, 200, 5_100),
        wood_brace_thickness: length("box-support.brace.wood-thickness", &BRACE, 10_000, 250_000),
        wood_brace_width: length("box-support.brace.wood-width", &BRACE, 20_000, 500_000),
        ceiling_volume: RuleFigure::sized(
            "box-support.ceiling.volume",
            &CEILING_VOLUME,
            Volume,
            1_000_000,
            16_500_000,
        ),
        empty: HeldByRaceways {
            volume: RuleFigure::sized(
                "box-support.raceways.volume",
                &RACEWAYS,
                Volume,
                1_000_000,
                16_500_000,
            ),
            conduits: RuleFigure::number("box-support.raceways.conduits", &RACEWAYS, 20_000),
            secured: length("box-support.raceways.secured", &RACEWAYS, 360_000, 9_000_000),
            secured_one_side: Some(length(
                "box-support.raceways.secured-one-side",
                &RACEWAYS,
                180_000,
                4_500_000,
            )),
        },
        loaded: HeldByRaceways {
            volume: RuleFigure::sized(
                "box-support.loaded-raceways.volume",
                &LOADED_RACEWAYS,
                Volume,
                1_000_000,
                16_500_000,
            ),
            conduits: RuleFigure::number("box-support.loaded-raceways.conduits", &LOADED_RACEWAYS, 20_000),
            secured: length("box-support.loaded-raceways.secured", &LOADED_RACEWAYS, 180_000, 4_500_000),
            secured_one_side: None,
        },
        beyond_support: length(
            "box-support.luminaire-on-conduit.beyond-support",
            &LUMINAIRE_ON_CONDUIT,
            360_000,
            9_000_000,
        ),
        before_support: length(
            "box-support.luminaire-on-conduit.before-support",
            &LUMINAIRE_ON_CONDUIT,
            120_000,
            3_000_000,
        ),
        support_spacing: length(
            "box-support.luminaire-on-conduit.support-spacing",
            &LUMINAIRE_ON_CONDUIT,
            120_000,
            3_000_000,
        ),
        conduit_weight: RuleFigure::sized(
            "box-support.luminaire-on-conduit.weight",
            &LUMINAIRE_ON_CONDUIT,
            Weight,
            200_000,
            90_000,
        ),
        nipple: length("box-support.luminaire-on-conduit.nipple", &LUMINAIRE_ON_CONDUIT, 30_000, 750_000),
        conduit_clearance: Clearance {
            height: length(
                "box-support.luminaire-on-conduit.height",
                &LUMINAIRE_ON_CONDUIT,
                960_000,
                25_000_000,
            ),
            horizontal: length(
                "box-support.luminaire-on-conduit.horizontal",
                &LUMINAIRE_ON_CONDUIT,
                360_000,
                9_000_000,
            ),
            extent: length(
                "box-support.luminaire-on-conduit.extent",
                &LUMINAIRE_ON_CONDUIT,
                120_000,
                3_000_000,
            ),
        },
        rigid_stem: length("box-support.stem.rigid", &STEM, 180_000, 4_500_000),
        stem_clearance: Clearance {
            height: length("box-support.stem.height", &STEM, 960_000, 25_000_000),
            horizontal: length("box-support.stem.horizontal", &STEM, 360_000, 9_000_000),
            extent: length("box-support.stem.extent", &STEM, 120_000, 3_000_000),
        },
    };

    pub(super) fn figures(&self) -> impl Iterator<Item = RuleFigure> + use<> {
        let Self {
            fastener_distance,
            metal_brace,
            wood_brace_thickness,
            wood_brace_width,
            ceiling_volume,
            empty,
            loaded,
            beyond_support,
            before_support,
            support_spacing,
            conduit_weight,
            nipple,
            conduit_clearance,
            rigid_stem,
            stem_clearance,
        } = self.clone();
        let held = |HeldByRaceways { volume, conduits, secured, secured_one_side }| {
            [volume, conduits, secured].into_iter().chain(secured_one_side)
        };
        let clear = |Clearance { height, horizontal, extent }| [height, horizontal, extent];
        [fastener_distance, metal_brace, wood_brace_thickness, wood_brace_width, ceiling_volume]
            .into_iter()
            .chain([beyond_support, before_support, support_spacing, conduit_weight, nipple, rigid_stem])
            .chain([empty, loaded].into_iter().flat_map(held))
            .chain([conduit_clearance, stem_clearance].into_iter().flat_map(clear))
    }
}

const fn length(name: &'static str, rule: &'static Rule, us: i64, si: i64) -> RuleFigure {
    RuleFigure::sized(name, rule, Length, us, si)
}
