//! What learners get wrong about the limits that an inspector measures: supports, setbacks, thicknesses, weights.

use crate::checks::box_construction::BoxConstruction;
use crate::checks::box_mounting::BoxMounting;
use crate::checks::box_supports::{BoxSupports, BoxSupportsOutcome};
use crate::checks::inspection::Requirement;
use crate::checks::luminaire_and_fan_outlets::{LuminaireAndFanOutlets, LuminaireAndFanOutletsOutcome};
use crate::derivation::Figure;
use crate::quantity::Unit;
use crate::rulebook::Rule;
use crate::rulebook::box_construction::{LARGE_SHEET_STEEL, SHEET_STEEL};
use crate::rulebook::box_support::{LOADED_RACEWAYS, RACEWAYS};
use crate::rulebook::box_surface::{GAP, SETBACK};
use crate::rulebook::luminaire_outlet::{FAN, LIGHT_LUMINAIRE};
use crate::training::{Misconception, Quantity, Teachable};

static OF_SUPPORTS: &[Misconception<BoxSupports>] = &[
    Misconception::of_rules("three_feet_on_one_side", &[&RACEWAYS], |rules| {
        if let Some(of_one_side) = &mut rules.box_support.empty.secured_one_side {
            of_one_side.set_to(rules.box_support.empty.secured);
        }
    }),
    Misconception::of_rules("three_feet_with_device", &[&LOADED_RACEWAYS, &RACEWAYS], |rules| {
        rules.box_support.loaded.secured.set_to(rules.box_support.empty.secured);
    }),
];

static OF_MOUNTING: &[Misconception<BoxMounting>] = &[
    Misconception::of_rules("setback_half_inch", &[&SETBACK], |rules| {
        rules.box_surface.setback.set(5_000, 130_000);
    }),
    Misconception::of_rules("gap_quarter_inch", &[&GAP], |rules| rules.box_surface.gap.set(2_500, 60_000)),
];

static OF_CONSTRUCTION: &[Misconception<BoxConstruction>] =
    &[Misconception::of_rules("thickness_swapped", &[&SHEET_STEEL, &LARGE_SHEET_STEEL], |rules| {
        let book = &mut rules.box_construction;
        let small = book.sheet_steel;
        book.sheet_steel.set_to(book.large_sheet_steel);
        book.large_sheet_steel.set_to(small);
    })];

static OF_OUTLETS: &[Misconception<LuminaireAndFanOutlets>] = &[
    Misconception::of_rules("fan_up_to_35_pounds", &[&FAN], |rules| {
        rules.luminaire_outlet.fan.set(350_000, 160_000);
    }),
    Misconception::of_rules("light_luminaire_on_one_screw", &[&LIGHT_LUMINAIRE], |rules| {
        rules.luminaire_outlet.light_luminaire.screws.set_number(10_000);
    }),
];

impl Teachable for BoxSupports {
    const QUANTITIES: &'static [Quantity<Self>] =
        &[Quantity::<Self>::new("support_distance", |_, outcome| support_distance(outcome))];
    const MISCONCEPTIONS: &'static [Misconception<Self>] = OF_SUPPORTS;
}

impl Teachable for BoxMounting {
    const QUANTITIES: &'static [Quantity<Self>] = &[
        Quantity::<Self>::new("most_setback", |_, outcome| limit(&outcome.requirements, &SETBACK, is_length)),
        Quantity::<Self>::new("most_gap", |_, outcome| limit(&outcome.requirements, &GAP, is_length)),
    ];
    const MISCONCEPTIONS: &'static [Misconception<Self>] = OF_MOUNTING;
}

impl Teachable for BoxConstruction {
    const QUANTITIES: &'static [Quantity<Self>] =
        &[Quantity::<Self>::new("required_thickness", |_, outcome| outcome.required_thickness)];
    const MISCONCEPTIONS: &'static [Misconception<Self>] = OF_CONSTRUCTION;
}

impl Teachable for LuminaireAndFanOutlets {
    const QUANTITIES: &'static [Quantity<Self>] = &[
        Quantity::<Self>::new("most_fan_weight", |_, outcome| carried(outcome, &FAN, is_weight)),
        Quantity::<Self>::new("least_screws", |_, outcome| {
            carried(outcome, &LIGHT_LUMINAIRE, |unit| unit == Unit::One)
        }),
    ];
    const MISCONCEPTIONS: &'static [Misconception<Self>] = OF_OUTLETS;
}

/// How near the enclosure the raceways that hold it are secured.
fn support_distance(outcome: &BoxSupportsOutcome) -> Option<Figure> {
    let requirements = || outcome.means.iter().flat_map(|means| &means.requirements);
    limit(requirements(), &LOADED_RACEWAYS, is_length).or(limit(requirements(), &RACEWAYS, is_length))
}

fn carried(
    outcome: &LuminaireAndFanOutletsOutcome,
    rule: &'static Rule,
    unit: fn(Unit) -> bool,
) -> Option<Figure> {
    limit(outcome.carried.iter().flat_map(|way| &way.requirements), rule, unit)
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

const fn is_length(unit: Unit) -> bool {
    matches!(unit, Unit::Inch | Unit::Millimetre)
}

const fn is_weight(unit: Unit) -> bool {
    matches!(unit, Unit::Pound | Unit::Kilogram)
}
