//! How much room the contents of a box take: what 314.16(B) counts.

use super::RuleFigure;
use super::declare::{Figures, RECALLED};
use super::strategy::{Choice, Strategy, choices};
use crate::trade::ConductorSize;
use serde::Serialize;

rules! {
    /// The fill is the sum of what conductors, clamps, fittings, devices, grounding conductors and terminal blocks take.
    SUM: "outlet-fill.sum", "314.16(B)", Published,
        "2018 International Residential Code E3905.12.2; EC&M Code Quiz, 7 Dec 2023";
    /// The room that one conductor of a size takes.
    ALLOWANCE: "outlet-fill.allowance", ["Table 314.16(B)", "Table 314.16(B)", "Table 314.16(B)(1)"], Published,
        "Figures beside each row of the table; the renaming in EC&M Code Quiz, 7 Dec 2023";
    /// Each conductor that enters and ends counts once, one that passes unbroken once, a long loop twice, one that stays inside not at all.
    CONDUCTORS: "outlet-fill.conductors", "314.16(B)(1)", [Bracketed, Published, UnofficialCopy],
        "Lamendola, codebookcity.com, answers to Article 314 part 5; Florida Residential Code E3905.12.2.1 as quoted";
    /// Grounding conductors and up to four small fixture wires from a domed canopy may be left out.
    CANOPY: "outlet-fill.canopy", "314.16(B)(1) Exception", [Bracketed, Published, UnofficialCopy],
        "Two trade forums that quote the exception; how a fifth wire is treated is disputed";
    /// All internal clamps together take one allowance, by the largest conductor in the box.
    CLAMPS: "outlet-fill.clamps", "314.16(B)(2)", [Bracketed, Published, UnofficialCopy],
        "Lamendola, codebookcity.com, answers to Article 314 part 5";
    /// A clamp assembly that also ends the cable takes its own volume off the box instead of an allowance.
    CLAMP_ASSEMBLY: "outlet-fill.clamp-assembly", "314.16(B)(2)", [Recalled, Published, EarlierEdition],
        RECALLED;
    /// Each type of support fitting takes one allowance, by the largest conductor in the box.
    SUPPORT_FITTINGS: "outlet-fill.support-fittings", "314.16(B)(3)", [Bracketed, Published, UnofficialCopy],
        "Lamendola, codebookcity.com, answers to Article 314 part 5; 'each type' is recalled";
    /// Each yoke takes two allowances, by the largest conductor connected to a device on it; a wide one two for each gang.
    DEVICES: "outlet-fill.devices", "314.16(B)(4)", [Bracketed, Published, UnofficialCopy],
        "Florida Residential Code E3905.12.2.4 as quoted; worked figures on two trade forums";
    /// Equipment grounding conductors and bonding jumpers: one allowance for the first four, a quarter for each one more.
    GROUNDING: "outlet-fill.grounding", "314.16(B)(5)", [Bracketed, Published, UnofficialCopy],
        "Electrical Contractor, Box-Fill Calculations part VIII (one allowance, through 2017); two trade-forum threads that work the 2020 text";
    /// NM cable has an equipment grounding conductor.
    NM_GROUNDING: "outlet-fill.nm-grounding", "334.108", [Bracketed, Published, UnofficialCopy],
        "334.108 read in the 2011, 2020 and 2023 texts; above 10 AWG the size of the conductor is recalled";
    /// A separate set of isolated grounding conductors takes one allowance of its own.
    ISOLATED_SET: "outlet-fill.isolated-set", ["314.16(B)(5)", -, -], EarlierEdition,
        "recalled: the sentence is gone from 2020 on, where isolated conductors join the count";
    /// Each terminal block assembly takes one allowance, by the largest conductor that ends on it.
    TERMINAL_BLOCKS: "outlet-fill.terminal-blocks", [-, -, "314.16(B)(6)"], [Published, Published, UnofficialCopy],
        "EC&M Code Quiz: Volume Allowance Requirement for a Terminal Block, 7 Dec 2023";
    /// Locknuts, bushings, wire connectors and other small fittings take no allowance.
    NOTHING: "outlet-fill.no-allowance", "314.16(B)", Published,
        "Locknuts and bushings: Florida Residential Code E3905.12.2 as quoted; wire connectors: common practice";
}

subject! {
    /// Figures of the fill side, per edition. An absent figure is a rule that the edition does not have.
    pub struct OutletFill {
        /// Allowances for a conductor that passes through unbroken.
        pub passing: RuleFigure,
        /// Allowances for an unbroken loop or coil that is long enough to be cut.
        pub long_loop: RuleFigure,
        /// How many times the least free length makes a loop long.
        pub loop_multiple: RuleFigure,
        /// The smallest size for which an allowance is published.
        pub smallest: ConductorSize,
        /// Fixture wires from a canopy are small below this size.
        pub canopy_below: ConductorSize,
        /// Fixture wires from a canopy that may be left out.
        pub canopy_wires: RuleFigure,
        /// Allowances for all internal clamps together.
        pub clamps: RuleFigure,
        /// What they take, however many there are.
        pub clamps_take: Strategy<ClampsTake>,
        /// The conductor that clamps are counted by.
        pub clamps_by: Strategy<ClampsBy>,
        /// Allowances for each type of support fitting.
        pub support_fitting: RuleFigure,
        /// What they take together.
        pub support_fittings_take: Strategy<SupportFittingsTake>,
        /// Allowances for each gang of each yoke.
        pub yoke: RuleFigure,
        /// The conductor that a yoke is counted by.
        pub yoke_by: Strategy<YokeBy>,
        /// Allowances for the grounding conductors that are taken together.
        pub grounding: RuleFigure,
        /// The conductor that grounding conductors are counted by.
        pub grounding_by: Strategy<GroundingBy>,
        /// How many grounding conductors are taken together, and what each one more takes.
        pub grounding_beyond: Option<GroundingBeyond>,
        /// Allowances for a separate set of isolated grounding conductors.
        pub isolated_set: Option<RuleFigure>,
        /// Allowances for each wire connector: none, unless a local amendment says otherwise.
        pub wire_connector: RuleFigure,
        /// Allowances for each terminal block assembly.
        pub terminal_block: Option<RuleFigure>,
        /// Whether bonding jumpers are named beside grounding conductors.
        pub bonding_jumpers: InText,
        /// Whether the paragraph on clamp assemblies with terminations is known.
        pub clamp_assemblies: InText,
    }
}

choices! {
    /// What clamps take together, however many there are.
    ClampsTake;
    /// The conductor of the box whose allowance clamps take.
    ClampsBy;
    /// What support fittings take together, of however many types.
    SupportFittingsTake;
    /// The conductor that a yoke is counted by.
    YokeBy;
    /// The conductor that grounding conductors are counted by.
    GroundingBy;
    /// What the parts of an allowance for grounding conductors past the first few add up to.
    GroundingParts;
    /// The lines that grounding conductors make in the tally, where those past the first few take parts of an allowance.
    GroundingLines;
}

/// Whether something was found in the text of an edition that was read.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
pub enum InText {
    /// It was.
    Found,
    /// It was not.
    NotFound,
}

impl Figures for InText {}

subject! {
    /// What grounding conductors past the first few take.
    pub struct GroundingBeyond {
        /// How many are taken together.
        pub together: RuleFigure,
        /// Allowances for each one more.
        pub each: RuleFigure,
        /// What these add up to.
        pub parts: Strategy<GroundingParts>,
        /// The lines that they make.
        pub lines: Strategy<GroundingLines>,
    }
}

impl GroundingBeyond {
    /// 2020 and later: four together, a quarter for each one more.
    pub const FOUR_AND_QUARTERS: Self = Self {
        together: RuleFigure::number("outlet-fill.grounding.together", &GROUNDING, 40_000),
        each: RuleFigure::number("outlet-fill.grounding.each-beyond", &GROUNDING, 2_500),
        parts: GroundingParts::LAWFUL,
        lines: GroundingLines::LAWFUL,
    };
}

impl OutletFill {
    /// 2017: one allowance however many grounding conductors; a separate isolated set takes its own.
    pub(super) const E2017: Self = Self {
        passing: RuleFigure::number("outlet-fill.conductors.passing", &CONDUCTORS, 10_000),
        long_loop: RuleFigure::number("outlet-fill.conductors.long-loop", &CONDUCTORS, 20_000),
        loop_multiple: RuleFigure::number("outlet-fill.conductors.loop-multiple", &CONDUCTORS, 20_000),
        smallest: ConductorSize::AWG_18,
        canopy_below: ConductorSize::AWG_14,
        canopy_wires: RuleFigure::number("outlet-fill.canopy.wires", &CANOPY, 40_000),
        clamps: RuleFigure::number("outlet-fill.clamps.allowances", &CLAMPS, 10_000),
        clamps_take: ClampsTake::LAWFUL,
        clamps_by: ClampsBy::LAWFUL,
        support_fitting: RuleFigure::number(
            "outlet-fill.support-fittings.allowances",
            &SUPPORT_FITTINGS,
            10_000,
        ),
        support_fittings_take: SupportFittingsTake::LAWFUL,
        yoke: RuleFigure::number("outlet-fill.devices.allowances-per-gang", &DEVICES, 20_000),
        yoke_by: YokeBy::LAWFUL,
        grounding: RuleFigure::number("outlet-fill.grounding.allowances", &GROUNDING, 10_000),
        grounding_by: GroundingBy::LAWFUL,
        grounding_beyond: None,
        isolated_set: Some(Self::ISOLATED_SET),
        wire_connector: RuleFigure::number("outlet-fill.wire-connectors.allowances", &NOTHING, 0),
        terminal_block: None,
        bonding_jumpers: InText::Found,
        clamp_assemblies: InText::Found,
    };

    /// 2020: a quarter allowance for each grounding conductor past four; the isolated set joins the count.
    pub(super) const E2020: Self = Self {
        grounding_beyond: Some(GroundingBeyond::FOUR_AND_QUARTERS),
        isolated_set: None,
        ..Self::E2017
    };

    /// 2023: terminal blocks take an allowance, bonding jumpers are named no more, and the paragraph on clamp assemblies was not in
    /// the copy read.
    pub(super) const E2023: Self = Self {
        terminal_block: Some(Self::TERMINAL_BLOCK),
        bonding_jumpers: InText::NotFound,
        clamp_assemblies: InText::NotFound,
        ..Self::E2020
    };

    /// One allowance for a separate isolated set, in an edition that has the sentence.
    pub const ISOLATED_SET: RuleFigure =
        RuleFigure::number("outlet-fill.isolated-set.allowances", &ISOLATED_SET, 10_000);

    /// One allowance for each terminal block assembly, in an edition that counts them.
    pub const TERMINAL_BLOCK: RuleFigure =
        RuleFigure::number("outlet-fill.terminal-blocks.allowances", &TERMINAL_BLOCKS, 10_000);
}
