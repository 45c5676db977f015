//! How an enclosure is held in place: 314.23.

use super::declare::{Figures, RECALLED};
use super::{Edition, RuleFigure};
use serde::Serialize;

const IRC: &str = "2018 International Residential Code p. 772; EC&M, Mounting a Box with Screws, 17 Aug 2017";
const CEILING_SOURCE: &str = "Electrical Contractor, Article 370: Boxes, Conduit Bodies, and Fittings";
const EMPTY_SOURCE: &str = "A trade-forum thread (210289) that quotes the 2011 text; later editions recalled";

rules! {
    /// An enclosure is supported by one or more of the means that the section names; one complete means is enough.
    MEANS: "box-support.means", "314.23", [Bracketed, Published, UnofficialCopy], RECALLED;
    /// On a surface the enclosure is rigidly and securely fastened in place.
    SURFACE: "box-support.surface", "314.23(A)", Published, IRC;
    /// On a structural member or from grade the enclosure is held rigidly, directly or by a brace.
    STRUCTURE: "box-support.structure", "314.23(B)", [Bracketed, Published, UnofficialCopy], RECALLED;
    /// Nails and screws hold by outside brackets or mounting holes, or pass inside close to the back or the ends.
    FASTENERS: "box-support.fasteners", "314.23(B)(1)", [Published, Published, UnofficialCopy], IRC;
    /// Screws that pass through the inside have their threads protected.
    THREADS: "box-support.screw-threads", "314.23(B)(1)", Published, IRC;
    /// Braces: least thickness of metal, least section of wood, polymeric ones identified.
    BRACE: "box-support.brace", "314.23(B)(2)", [Bracketed, Published, UnofficialCopy], RECALLED;
    /// In a finished surface the enclosure is rigidly secured by clamps, anchors or fittings identified for it.
    FINISHED_SURFACE: "box-support.finished-surface", "314.23(C)", [Bracketed, Published, UnofficialCopy], RECALLED;
    /// A suspended ceiling carries only enclosures up to a volume.
    CEILING_VOLUME: "box-support.ceiling-volume", "314.23(D)", [Bracketed, Published, UnofficialCopy], RECALLED;
    /// In a suspended ceiling the enclosure is fastened to framing members that are themselves fastened.
    CEILING_FRAMING: "box-support.ceiling-framing", "314.23(D)(1)", Published, CEILING_SOURCE;
    /// Or it is secured to support wires that are taut and not the ceiling's alone.
    CEILING_WIRES: "box-support.ceiling-wires", "314.23(D)(2)", Published, CEILING_SOURCE;
    /// Raceways hold an enclosure without devices or luminaires.
    RACEWAYS: "box-support.raceways", "314.23(E)", [Bracketed, Published, UnofficialCopy], EMPTY_SOURCE;
    /// A conduit body without devices or luminaires may hang from one raceway that is not smaller than it.
    CONDUIT_BODY: "box-support.conduit-body", "314.23(E) Exception", [Bracketed, Published, UnofficialCopy],
        EMPTY_SOURCE;
    /// Raceways hold an enclosure with devices or luminaires.
    LOADED_RACEWAYS: "box-support.loaded-raceways", "314.23(F)", [Bracketed, Published, UnofficialCopy],
        "Electrical Contractor, Article 370: Boxes, Conduit Bodies, and Fittings; EC&M, What's Wrong Here? 210";
    /// A conduit body with devices or luminaires may hang from one threaded metal conduit that is not smaller than it.
    LOADED_CONDUIT_BODY: "box-support.loaded-conduit-body", "314.23(F) Exception No. 1", [Bracketed, Published, UnofficialCopy],
        RECALLED;
    /// Unbroken metal conduit may carry a luminaire or the box of one.
    LUMINAIRE_ON_CONDUIT: "box-support.luminaire-on-conduit", "314.23(F) Exception No. 2", [Bracketed, Published, UnofficialCopy],
        RECALLED;
    /// Embedded in concrete or masonry.
    EMBEDDED: "box-support.embedded", "314.23(G)", [Bracketed, Published, UnofficialCopy], RECALLED;
    /// Hung from a cord.
    CORD: "box-support.cord-pendant", "314.23(H)(1)", [Bracketed, Published, UnofficialCopy], RECALLED;
    /// A cord that enters a box through a hub is held there by a listed cord grip that is marked for threaded hubs.
    CORD_GRIP: "box-support.cord-grip", [-, -, "314.23(H)(1)"], Recalled, RECALLED;
    /// Hung from conduit stems.
    STEM: "box-support.stem-pendant", "314.23(H)(2)", [Bracketed, Published, UnofficialCopy], RECALLED;
}

/// What a stem needs that is longer than a rigid one may be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub enum StemFitting {
    /// Listed swivel hangers; whether another flexible fitting serves was not read.
    SwivelHangersOrUnread,
    /// Listed swivel hangers.
    SwivelHangers,
}

impl Figures for StemFitting {}

subject! {
    /// Limits of an enclosure that raceways hold.
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
    pub struct Clearance {
        /// The least height of its lowest point above grade or where people stand.
        pub height: RuleFigure,
        /// The least horizontal distance, up to that height, from windows, doors and the like.
        pub horizontal: RuleFigure,
        /// How far it may reach from the entry of a single conduit.
        pub extent: RuleFigure,
    }

    /// Figures of box supports.
    pub struct BoxSupport {
        /// How far from the back or the ends a nail or screw may pass through the inside.
        pub fastener_distance: RuleFigure,
        /// Whether mounting holes may be in more than one side.
        pub holes_in_several_sides: bool,
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
        /// The longest stem that needs no swivel hanger.
        pub rigid_stem: RuleFigure,
        /// What a longer stem needs.
        pub stem_fitting: StemFitting,
        /// Whether a cord that enters a box through a hub needs a cord grip that is marked for it.
        pub cord_grip: bool,
        /// Where a luminaire on a stem may hang.
        pub stem_clearance: Clearance,
    }
}

impl BoxSupport {
    const E2017: Self = Self {
        fastener_distance: RuleFigure::length("box-support.fasteners.distance", &FASTENERS, 2_500, 60_000),
        holes_in_several_sides: false,
        metal_brace: RuleFigure::length("box-support.brace.metal-thickness", &BRACE, 200, 5_100),
        wood_brace_thickness: RuleFigure::length("box-support.brace.wood-thickness", &BRACE, 10_000, 250_000),
        wood_brace_width: RuleFigure::length("box-support.brace.wood-width", &BRACE, 20_000, 500_000),
        ceiling_volume: RuleFigure::volume(
            "box-support.ceiling.volume",
            &CEILING_VOLUME,
            1_000_000,
            16_500_000,
        ),
        empty: HeldByRaceways {
            volume: RuleFigure::volume("box-support.raceways.volume", &RACEWAYS, 1_000_000, 16_500_000),
            conduits: RuleFigure::number("box-support.raceways.conduits", &RACEWAYS, 20_000),
            secured: RuleFigure::length("box-support.raceways.secured", &RACEWAYS, 360_000, 9_000_000),
            secured_one_side: Some(RuleFigure::length(
                "box-support.raceways.secured-one-side",
                &RACEWAYS,
                180_000,
                4_500_000,
            )),
        },
        loaded: HeldByRaceways {
            volume: RuleFigure::volume(
                "box-support.loaded-raceways.volume",
                &LOADED_RACEWAYS,
                1_000_000,
                16_500_000,
            ),
            conduits: RuleFigure::number("box-support.loaded-raceways.conduits", &LOADED_RACEWAYS, 20_000),
            secured: RuleFigure::length(
                "box-support.loaded-raceways.secured",
                &LOADED_RACEWAYS,
                180_000,
                4_500_000,
            ),
            secured_one_side: None,
        },
        beyond_support: RuleFigure::length(
            "box-support.luminaire-on-conduit.beyond-support",
            &LUMINAIRE_ON_CONDUIT,
            360_000,
            9_000_000,
        ),
        before_support: RuleFigure::length(
            "box-support.luminaire-on-conduit.before-support",
            &LUMINAIRE_ON_CONDUIT,
            120_000,
            3_000_000,
        ),
        support_spacing: RuleFigure::length(
            "box-support.luminaire-on-conduit.support-spacing",
            &LUMINAIRE_ON_CONDUIT,
            120_000,
            3_000_000,
        ),
        conduit_weight: RuleFigure::weight(
            "box-support.luminaire-on-conduit.weight",
            &LUMINAIRE_ON_CONDUIT,
            200_000,
            90_000,
        ),
        nipple: RuleFigure::length(
            "box-support.luminaire-on-conduit.nipple",
            &LUMINAIRE_ON_CONDUIT,
            30_000,
            750_000,
        ),
        conduit_clearance: Clearance {
            height: RuleFigure::length(
                "box-support.luminaire-on-conduit.height",
                &LUMINAIRE_ON_CONDUIT,
                960_000,
                25_000_000,
            ),
            horizontal: RuleFigure::length(
                "box-support.luminaire-on-conduit.horizontal",
                &LUMINAIRE_ON_CONDUIT,
                360_000,
                9_000_000,
            ),
            extent: RuleFigure::length(
                "box-support.luminaire-on-conduit.extent",
                &LUMINAIRE_ON_CONDUIT,
                120_000,
                3_000_000,
            ),
        },
        rigid_stem: RuleFigure::length("box-support.stem.rigid", &STEM, 180_000, 4_500_000),
        stem_fitting: StemFitting::SwivelHangersOrUnread,
        cord_grip: false,
        stem_clearance: Clearance {
            height: RuleFigure::length("box-support.stem.height", &STEM, 960_000, 25_000_000),
            horizontal: RuleFigure::length("box-support.stem.horizontal", &STEM, 360_000, 9_000_000),
            extent: RuleFigure::length("box-support.stem.extent", &STEM, 120_000, 3_000_000),
        },
    };

    const E2020: Self =
        Self { holes_in_several_sides: true, stem_fitting: StemFitting::SwivelHangers, ..Self::E2017 };

    pub(super) const fn of(edition: Edition) -> Self {
        match edition {
            Edition::E2017 => Self::E2017,
            Edition::E2020 => Self::E2020,
            Edition::E2023 | Edition::E2026 => Self { cord_grip: true, ..Self::E2020 },
        }
    }
}
