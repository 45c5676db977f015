//! What learners get wrong about the limits that an inspector measures: supports, setbacks, thicknesses, weights.

use crate::checks::box_construction::BoxConstruction;
use crate::checks::box_mounting::BoxMounting;
use crate::checks::box_supports::{BoxSupports, BoxSupportsOutcome};
use crate::checks::inspection::Requirement;
use crate::checks::luminaire_and_fan_outlets::{LuminaireAndFanOutlets, LuminaireAndFanOutletsOutcome};
use crate::derivation::Figure;
use crate::quantity::Unit;
use crate::rulebook::box_construction::{LARGE_SHEET_STEEL, SHEET_STEEL};
use crate::rulebook::box_support::{LOADED_RACEWAYS, RACEWAYS};
use crate::rulebook::box_surface::{GAP, SETBACK};
use crate::rulebook::luminaire_outlet::{FAN, LIGHT_LUMINAIRE};
use crate::rulebook::{Rule, RuleFigure};
use crate::training::{Misconception, Quantity, Teachable};

static OF_SUPPORTS: &[Misconception<BoxSupports>] = &[
    Misconception::of_rules("three_feet_on_one_side", &[&RACEWAYS], |rules| {
        let three_feet = rules.box_support.empty.secured;
        let of_one_side = &mut rules.box_support.empty.secured_one_side;
        *of_one_side = of_one_side.map(|figure| with_value_of(figure, three_feet));
    }),
    Misconception::of_rules("three_feet_with_device", &[&LOADED_RACEWAYS, &RACEWAYS], |rules| {
        let three_feet = rules.box_support.empty.secured;
        rules.box_support.loaded.secured = with_value_of(rules.box_support.loaded.secured, three_feet);
    }),
];

static OF_MOUNTING: &[Misconception<BoxMounting>] = &[
    Misconception::of_rules("setback_half_inch", &[&SETBACK], |rules| {
        rules.box_surface.setback = rules.box_surface.setback.with(5_000, 130_000);
    }),
    Misconception::of_rules("gap_quarter_inch", &[&GAP], |rules| {
        rules.box_surface.gap = rules.box_surface.gap.with(2_500, 60_000);
    }),
];

static OF_CONSTRUCTION: &[Misconception<BoxConstruction>] =
    &[Misconception::of_rules("thickness_swapped", &[&SHEET_STEEL, &LARGE_SHEET_STEEL], |rules| {
        let book = &mut rules.box_construction;
        let (small, large) = (book.sheet_steel, book.large_sheet_steel);
        (book.sheet_steel, book.large_sheet_steel) =
            (with_value_of(small, large), with_value_of(large, small));
    })];

static OF_OUTLETS: &[Misconception<LuminaireAndFanOutlets>] = &[
    Misconception::of_rules("fan_up_to_35_pounds", &[&FAN], |rules| {
        rules.luminaire_outlet.fan = rules.luminaire_outlet.fan.with(350_000, 160_000);
    }),
    Misconception::of_rules("light_luminaire_on_one_screw", &[&LIGHT_LUMINAIRE], |rules| {
        rules.luminaire_outlet.light_luminaire.screws =
            rules.luminaire_outlet.light_luminaire.screws.with_number(10_000);
    }),
];

const fn with_value_of(figure: RuleFigure, other: RuleFigure) -> RuleFigure {
    RuleFigure { us: other.us, si: other.si, ..figure }
}

/// The limit that a rule states in some kind of unit.
fn limit<'a>(
    requirements: impl IntoIterator<Item = &'a Requirement>,
    rule: &'static Rule,
    unit: fn(Unit) -> bool,
) -> Option<Figure> {
    let of_rule = requirements.into_iter().filter(|requirement| requirement.rule == rule.id);
    of_rule.filter_map(|requirement| requirement.limit).find(|limit| unit(limit.unit))
}

/// Whether a unit is one of length.
const fn is_length(unit: Unit) -> bool {
    matches!(unit, Unit::Inch | Unit::Millimetre)
}

/// Whether a unit is one of weight.
const fn is_weight(unit: Unit) -> bool {
    matches!(unit, Unit::Pound | Unit::Kilogram)
}

static SUPPORT_QUANTITIES: &[Quantity<BoxSupports>] =
    &[Quantity::<BoxSupports>::new("support_distance", |_, outcome| support_distance(outcome))];

/// How near the enclosure the raceways that hold it are secured.
fn support_distance(outcome: &BoxSupportsOutcome) -> Option<Figure> {
    let requirements = || outcome.means.iter().flat_map(|means| &means.requirements);
    limit(requirements(), &LOADED_RACEWAYS, is_length).or(limit(requirements(), &RACEWAYS, is_length))
}

static MOUNTING_QUANTITIES: &[Quantity<BoxMounting>] = &[
    Quantity::<BoxMounting>::new("most_setback", |_, outcome| {
        limit(&outcome.requirements, &SETBACK, is_length)
    }),
    Quantity::<BoxMounting>::new("most_gap", |_, outcome| limit(&outcome.requirements, &GAP, is_length)),
];

static CONSTRUCTION_QUANTITIES: &[Quantity<BoxConstruction>] =
    &[Quantity::<BoxConstruction>::new("required_thickness", |_, outcome| outcome.required_thickness)];

static OUTLET_QUANTITIES: &[Quantity<LuminaireAndFanOutlets>] = &[
    Quantity::<LuminaireAndFanOutlets>::new("most_fan_weight", |_, outcome| {
        carried(outcome, &FAN, is_weight)
    }),
    Quantity::<LuminaireAndFanOutlets>::new("least_screws", |_, outcome| {
        carried(outcome, &LIGHT_LUMINAIRE, |unit| unit == Unit::One)
    }),
];

fn carried(
    outcome: &LuminaireAndFanOutletsOutcome,
    rule: &'static Rule,
    unit: fn(Unit) -> bool,
) -> Option<Figure> {
    limit(outcome.carried.iter().flat_map(|way| &way.requirements), rule, unit)
}

/// Lists of one check, as what that check teaches.
macro_rules! teachable {
    ($($check:ty: $quantities:ident, $misconceptions:ident;)+) => {$(
        impl Teachable for $check {
            const QUANTITIES: &'static [Quantity<Self>] = $quantities;
            const MISCONCEPTIONS: &'static [Misconception<Self>] = $misconceptions;
        }
    )+};
}

teachable! {
    BoxSupports: SUPPORT_QUANTITIES, OF_SUPPORTS;
    BoxMounting: MOUNTING_QUANTITIES, OF_MOUNTING;
    BoxConstruction: CONSTRUCTION_QUANTITIES, OF_CONSTRUCTION;
    LuminaireAndFanOutlets: OUTLET_QUANTITIES, OF_OUTLETS;
}
