//! How full a raceway may be: Chapter 9, Table 1 and its notes.

use super::declare::RECALLED;
use super::{Edition, Rule, RuleFigure};
use crate::quantity::{Decimal, Measure};
use crate::trade::RacewayKind;

rules! {
    /// One conductor or cable may take 53 % of a raceway, two 31 %, three or more 40 %.
    LIMITS: "raceway-fill.limits", "Chapter 9, Table 1", Published,
        "McGraw-Hill NEC 2014 handbook abstract (53 and 31 %); the 40 % is in every published count of three and more";
    /// Every conductor counts with its own dimensions, equipment grounding and bonding conductors included.
    COUNTED: "raceway-fill.counted", "Chapter 9, Table 1, Note 3", EarlierEdition,
        "recalled: EC&M, Code Calculations, works an example with mixed sizes but does not quote the note";
    /// A nipple of up to 24 in (600 mm) between enclosures may be filled to 60 %.
    NIPPLE: "raceway-fill.nipple", "Chapter 9, Table 1, Note 4", Published,
        "EC&M, Code Calculations (a nipple not over 24 in); the 600 mm are recalled";
    /// What the tables do not have counts with its actual dimensions, and known actual dimensions may stand for tabulated ones.
    ACTUAL: "raceway-fill.actual-dimensions", "Chapter 9, Table 1, Notes 5 and 10", EarlierEdition,
        "recalled; which of the editions of 2014 and 2017 added Note 10 is not known";
    /// Insulated conductors take the cross-section of Table 5, compact ones that of Table 5A; different sizes are added.
    CONDUCTORS: "raceway-fill.conductors", "Chapter 9, Table 1, Note 6", Published,
        "EC&M, Code Calculations: areas of three sizes added; the note's number is recalled";
    /// Of conductors or cables of one size, one more is permitted when the computed number ends in 0.8 or more.
    SAME_SIZE: "raceway-fill.same-size", "Chapter 9, Table 1, Note 7", Published,
        "Published counts of Annex C that only this step gives: 22 of 14 AWG THHN in EMT 3/4 (21.99), 84 in 1-1/2 (83.9); the wording is recalled";
    /// The same step for a single conductor. By recollection its own sentence was added in 2017; counts for one took it before.
    SINGLE: "raceway-fill.single", "Chapter 9, Table 1, Note 7", EarlierEdition,
        "recalled: the sentence on a single conductor stands in 2017 and later; the counts of Annex C for one conductor follow it";
    /// Bare conductors take the cross-section of Table 8.
    BARE: "raceway-fill.bare", "Chapter 9, Table 1, Note 8", EarlierEdition, RECALLED;
    /// A multiconductor cable or cord is one conductor; an elliptical one is a circle of its major diameter.
    CABLES: "raceway-fill.cables", "Chapter 9, Table 1, Note 9", Published,
        "A trade-forum thread on two nonmetallic-sheathed cables in one conduit (31 %, by the major diameter)";
    /// The inside of a raceway: its nominal inside diameter, and the areas printed beside it.
    AREA: "raceway-fill.raceway-area", "Chapter 9, Table 4", Recalled,
        "Annex C follows the unrounded area of the diameter: 9661 of 9681 recalled counts, against 9622 by the printed percent columns";
    /// The smallest trade size of a kind that takes the conductors.
    SMALLEST: "raceway-fill.smallest", "Chapter 9, Tables 1 and 4", Recalled, RECALLED;
    /// Electrical metallic tubing is permitted up to trade size 4, from 2023 on up to 6.
    EMT_SIZE: "raceway-fill.emt-size", "358.20", [Published, Published, UnofficialCopy],
        "NFPA 70-2020 as California reprints it: 4; an unofficial copy of 2023: 6; 2017 lies between texts of 2011 and 2020 that both say 4";
    /// Intermediate metal conduit is permitted up to trade size 4, from 2023 on up to 6.
    IMC_SIZE: "raceway-fill.imc-size", "342.20", [Published, Published, UnofficialCopy],
        "NFPA 70-2020 as California reprints it: 4; an unofficial copy of 2023: 6; 2017 lies between texts of 2011 and 2020 that both say 4";
    /// Electrical nonmetallic tubing is permitted up to trade size 2-1/2. What 2017 says lies between texts that say 2 and 2-1/2.
    ENT_SIZE: "raceway-fill.ent-size", "362.20", [Bracketed, Published, UnofficialCopy],
        "NFPA 70-2020 as California reprints it, and an unofficial copy of 2023: 2-1/2; the text of 2011: 2, which all permit; that of 2017 was not read";
    /// Liquidtight flexible nonmetallic conduit is permitted up to trade size 4.
    LFNC_SIZE: "raceway-fill.lfnc-size", "356.20", [Bracketed, Published, UnofficialCopy],
        "NFPA 70-2011 and 2020 as California reprints them, and an unofficial copy of 2023: 4";
    /// Flexible metal conduit of trade size 3/8, plain or liquidtight, takes as many conductors as a table of its own has.
    THREE_EIGHTHS: "raceway-fill.three-eighths", "348.22", [Bracketed, Published, UnofficialCopy],
        "Official metric text of 2012 (table whole); NFPA 70-2011 as California reprints it; 350.22(B) sends liquidtight conduit to the outside fittings";
    /// Three conductors may jam where the raceway's diameter is about three times theirs. Advice, not a requirement.
    JAMMING: "raceway-fill.jamming", "Chapter 9, Table 1, informational note 2", EarlierEdition, RECALLED;
}

subject! {
    /// Figures of raceway fill. Editions differ in the largest trade sizes, and in what was read of electrical nonmetallic tubing.
    pub struct RacewayFill {
        /// The share for one conductor or cable.
        pub one: RuleFigure,
        /// The share for two.
        pub two: RuleFigure,
        /// The share for more than two.
        pub over_two: RuleFigure,
        /// The share for a nipple, whatever the number.
        pub nipple: RuleFigure,
        /// The longest raceway that is a nipple.
        pub nipple_length: RuleFigure,
        /// The number to which the share for one is for.
        pub number_for_one: RuleFigure,
        /// The number to which the share for two is for.
        pub number_for_two: RuleFigure,
        /// The least number to which the share for more than two is for.
        pub number_for_more: RuleFigure,
        /// The fraction from which a number of conductors of one size is raised.
        pub same_size_step: RuleFigure,
        /// The same for a single conductor.
        pub single_step: RuleFigure,
        /// A quarter of π, by which the square of a diameter becomes the area of a circle: nine decimals.
        pub quarter_pi: RuleFigure,
        /// One hundredth, by which a percentage becomes a factor.
        pub hundredth: RuleFigure,
        /// The largest trade size of EMT, or its metric designator.
        pub largest_emt: RuleFigure,
        /// The same for IMC.
        pub largest_imc: RuleFigure,
        /// The same for electrical nonmetallic tubing, as far as it was read.
        pub largest_ent: RuleFigure,
        /// In an edition that was not read, the largest trade size of ENT that a text on either side permits: what is larger is forbidden
        /// between them too.
        pub largest_ent_anywhere: Option<RuleFigure>,
        /// The same for liquidtight flexible nonmetallic conduit.
        pub largest_lfnc: RuleFigure,
        /// Whether it was read how large electrical nonmetallic tubing may be and how wide it is, which changed between two texts.
        pub ent_is_read: bool,
        /// How many conductors may jam.
        pub jam_number: RuleFigure,
        /// The least ratio of diameters at which three conductors may jam.
        pub jam_from: RuleFigure,
        /// The greatest.
        pub jam_to: RuleFigure,
    }
}

/// A quarter of π in billionths. Over a circle of 161 mm the rest is less than 0.00002 mm².
const QUARTER_PI: Decimal = Decimal::from_billionths(785_398_163);

impl RacewayFill {
    /// The figures of an edition.
    pub(super) const fn of(edition: Edition) -> Self {
        match edition {
            Edition::E2017 => Self {
                largest_ent: Self::E2020.largest_ent.with(20_000, 530_000),
                largest_ent_anywhere: Some(RuleFigure::length(
                    "raceway-fill.largest-ent-anywhere",
                    &ENT_SIZE,
                    25_000,
                    630_000,
                )),
                ent_is_read: false,
                ..Self::E2020
            },
            Edition::E2020 => Self::E2020,
            Edition::E2023 | Edition::E2026 => Self {
                largest_emt: Self::E2020.largest_emt.with(60_000, 1_550_000),
                largest_imc: Self::E2020.largest_imc.with(60_000, 1_550_000),
                ..Self::E2020
            },
        }
    }

    const E2020: Self = Self {
        one: share("raceway-fill.one", &LIMITS, 53),
        two: share("raceway-fill.two", &LIMITS, 31),
        over_two: share("raceway-fill.over-two", &LIMITS, 40),
        nipple: share("raceway-fill.nipple", &NIPPLE, 60),
        nipple_length: RuleFigure::length("raceway-fill.nipple-length", &NIPPLE, 240_000, 6_000_000),
        number_for_one: RuleFigure::number("raceway-fill.number-for-one", &LIMITS, 10_000),
        number_for_two: RuleFigure::number("raceway-fill.number-for-two", &LIMITS, 20_000),
        number_for_more: RuleFigure::number("raceway-fill.number-for-more", &LIMITS, 30_000),
        same_size_step: RuleFigure::number("raceway-fill.same-size-step", &SAME_SIZE, 8_000),
        single_step: RuleFigure::number("raceway-fill.single-step", &SINGLE, 8_000),
        quarter_pi: RuleFigure {
            name: "raceway-fill.quarter-pi",
            rule: &AREA,
            measure: Measure::Number,
            us: QUARTER_PI,
            si: QUARTER_PI,
        },
        hundredth: RuleFigure::number("raceway-fill.hundredth", &LIMITS, 100),
        largest_emt: RuleFigure::length("raceway-fill.largest-emt", &EMT_SIZE, 40_000, 1_030_000),
        largest_imc: RuleFigure::length("raceway-fill.largest-imc", &IMC_SIZE, 40_000, 1_030_000),
        largest_ent: RuleFigure::length("raceway-fill.largest-ent", &ENT_SIZE, 25_000, 630_000),
        largest_ent_anywhere: None,
        largest_lfnc: RuleFigure::length("raceway-fill.largest-lfnc", &LFNC_SIZE, 40_000, 1_030_000),
        ent_is_read: true,
        jam_number: RuleFigure::number("raceway-fill.jam-number", &JAMMING, 30_000),
        jam_from: RuleFigure::number("raceway-fill.jam-from", &JAMMING, 28_000),
        jam_to: RuleFigure::number("raceway-fill.jam-to", &JAMMING, 32_000),
    };
}

impl RacewayFill {
    /// The largest trade size of a kind that is permitted, by its rule; `None` for a kind of which no edition is known to limit it.
    pub const fn largest(&self, kind: RacewayKind) -> Option<(&'static Rule, &RuleFigure)> {
        match kind {
            RacewayKind::Emt => Some((&EMT_SIZE, &self.largest_emt)),
            RacewayKind::Imc => Some((&IMC_SIZE, &self.largest_imc)),
            RacewayKind::Ent => Some((&ENT_SIZE, &self.largest_ent)),
            RacewayKind::LfncA | RacewayKind::LfncB | RacewayKind::LfncC => {
                Some((&LFNC_SIZE, &self.largest_lfnc))
            }
            _ => None,
        }
    }

    /// Whether what is said here of a kind of raceway was read in the edition.
    pub const fn is_read(&self, kind: RacewayKind) -> bool {
        self.ent_is_read || !matches!(kind, RacewayKind::Ent)
    }
}

const fn share(name: &'static str, rule: &'static Rule, percent: i64) -> RuleFigure {
    RuleFigure::sized(name, rule, Measure::Percent, percent * 10_000, percent * 10_000)
}
