//! What each edition of the code says: variants, figures, citations, and where our knowledge of them comes from.
//!
//! [`Rules`] are data. An edition is one value of them, and nothing in a check asks which edition it is. A [`Rulebook`]
//! is a handle on such a value, cheap to copy: the rules of an edition, read and amended as a request asks. Rules that are
//! changed in any other way are [`MutatedRulebook`].
//!
//! **Invariant:** no check compares editions; whatever differs is a field here.

#[macro_use]
mod declare;

pub mod amendment;
pub mod box_access;
pub mod box_construction;
pub mod box_depth;
pub mod box_entry;
pub mod box_protection;
pub mod box_support;
pub mod box_surface;
pub mod conduit_body;
pub mod digest;
mod edition;
pub mod enclosure_type;
pub mod figures_table;
pub mod free_conductor;
pub mod geometry;
pub mod luminaire_outlet;
mod mutated;
pub mod outlet_fill;
pub mod outlet_volume;
pub mod over_1000_volts;
mod part;
pub mod pull;
pub mod raceway_fill;
pub mod reading;
mod rule;
mod strategy;
pub mod unit_systems;

pub use crate::tables::{Bases, Basis};
pub use edition::Edition;
pub use mutated::MutatedRulebook;
pub use part::Part;
pub use rule::{Citation, Rule, RuleFigure};
pub use strategy::{Choice, Strategy};

use crate::quantity::{Decimal, Measure, Units};
use amendment::Amended;
use declare::Figures;
use reading::Readings;
use std::ops::Deref;
use std::sync::Arc;

subject! {
    /// The rules of one edition, under one set of readings.
    pub struct Rules {
        /// The edition.
        pub edition: Edition,
        /// How much room a box has.
        pub outlet_volume: outlet_volume::OutletVolume,
        /// How much room its contents take.
        pub outlet_fill: outlet_fill::OutletFill,
        /// How much free conductor must be left.
        pub free_conductor: free_conductor::FreeConductor,
        /// What a conduit body with small conductors must have.
        pub conduit_body: conduit_body::ConduitBody,
        /// How long a box with large conductors must be.
        pub pull: pull::Pull,
        /// How long a box over 1000 V must be.
        pub over_1000_volts: over_1000_volts::Over1000Volts,
        /// How deep a box must be.
        pub box_depth: box_depth::BoxDepth,
        /// What metal boxes are made of.
        pub box_construction: box_construction::BoxConstruction,
        /// How a box sits in its surface, and what covers it.
        pub box_surface: box_surface::BoxSurface,
        /// How wiring enters a box.
        pub box_entry: box_entry::BoxEntry,
        /// Whether a box can be reached.
        pub box_access: box_access::BoxAccess,
        /// Fasteners that reach into a box, and moisture.
        pub box_protection: box_protection::BoxProtection,
        /// How full a raceway may be.
        pub raceway_fill: raceway_fill::RacewayFill,
        /// How enclosures are held in place.
        pub box_support: box_support::BoxSupport,
        /// What a box may carry.
        pub luminaire_outlet: luminaire_outlet::LuminaireOutlet,
        /// Words that go with enclosure types.
        pub enclosure_words: enclosure_type::EnclosureWords,
        /// How the two systems of units are related.
        pub unit_systems: unit_systems::UnitSystems,
        /// How disputed points are read.
        pub readings: Readings,
    }
}

impl Figures for Readings {}

/// The one general policy: an edition that nobody here could read is answered with the figures of the one before.
pub static UNVERIFIED_EDITION: Rule = Rule {
    id: "edition.unverified",
    sections: [Some("NFPA 70"); 3],
    bases: Bases::all(Basis::Unconfirmed),
    source: "The 2026 text was not available; the figures of 2023 are carried forward",
};

/// A verdict needs something that is judged.
pub static NOTHING_DESCRIBED: Rule = Rule {
    id: "nothing-described",
    sections: [Some("NFPA 70"); 3],
    bases: Bases::all(Basis::Arithmetic),
    source: "Policy of this service: silence is not approval",
};

static EDITIONS: [Rules; 4] = {
    const fn of(edition: Edition, outlet_fill: OutletFill, luminaire_outlet: LuminaireOutlet) -> Rules {
        Rules {
            edition,
            outlet_volume: outlet_volume::OutletVolume::ALL_EDITIONS,
            outlet_fill,
            conduit_body: conduit_body::ConduitBody::ALL_EDITIONS,
            pull: pull::Pull::ALL_EDITIONS,
            over_1000_volts: over_1000_volts::Over1000Volts::ALL_EDITIONS,
            free_conductor: free_conductor::FreeConductor::of(edition),
            box_depth: box_depth::BoxDepth::of(edition),
            box_construction: box_construction::BoxConstruction::ALL_EDITIONS,
            box_surface: box_surface::BoxSurface::of(edition),
            box_entry: box_entry::BoxEntry::of(edition),
            box_access: box_access::BoxAccess::of(edition),
            box_protection: box_protection::BoxProtection::of(edition),
            raceway_fill: raceway_fill::RacewayFill::of(edition),
            box_support: box_support::BoxSupport::of(edition),
            luminaire_outlet,
            enclosure_words: enclosure_type::EnclosureWords::of(edition),
            unit_systems: unit_systems::UnitSystems::ALL_EDITIONS,
            readings: Readings::DEFAULT,
        }
    }
    use luminaire_outlet::LuminaireOutlet;
    use outlet_fill::OutletFill;
    [
        of(Edition::E2017, OutletFill::E2017, LuminaireOutlet::E2017),
        of(Edition::E2020, OutletFill::E2020, LuminaireOutlet::E2020),
        of(Edition::E2023, OutletFill::E2023, LuminaireOutlet::E2023),
        of(Edition::E2026, OutletFill::E2023, LuminaireOutlet::E2023),
    ]
};

/// A handle on the rules that an evaluation follows.
#[derive(Clone, Debug)]
pub struct Rulebook(Handle);

#[derive(Clone, Debug)]
enum Handle {
    Edition(&'static Rules),
    Changed(Arc<Changed>),
}

#[derive(Clone, Debug)]
struct Changed {
    rules: Rules,
    amended: Vec<Amended>,
    /// The system that a request is in which is judged in the other one.
    said_in: Option<Units>,
}

static BOOKS: [Rulebook; 4] = [
    Rulebook(Handle::Edition(&EDITIONS[0])),
    Rulebook(Handle::Edition(&EDITIONS[1])),
    Rulebook(Handle::Edition(&EDITIONS[2])),
    Rulebook(Handle::Edition(&EDITIONS[3])),
];

impl Deref for Rulebook {
    type Target = Rules;

    fn deref(&self) -> &Rules {
        match &self.0 {
            Handle::Edition(rules) => rules,
            Handle::Changed(changed) => &changed.rules,
        }
    }
}

impl Rulebook {
    /// The rulebook of an edition, with every disputed point read in its default way.
    ///
    /// ```
    /// use elbowroom::rulebook::{Edition, Rulebook};
    /// assert!(Rulebook::of(Edition::E2017).outlet_fill.grounding_beyond.is_none());
    /// assert!(Rulebook::of(Edition::E2020).outlet_fill.grounding_beyond.is_some());
    /// ```
    pub fn of(edition: Edition) -> &'static Self {
        &BOOKS[edition as usize]
    }

    /// The same rules with disputed points read in other ways.
    pub fn with_readings(&self, readings: Readings) -> Self {
        if readings == self.readings {
            return self.clone();
        }
        let rules = Rules { readings, ..Rules::clone(self) };
        self.changed(rules, self.amended().to_vec())
    }

    /// The same rules with figures amended; those amended before stay so.
    pub fn with_amendments(&self, amended: &[Amended]) -> Self {
        if amended.is_empty() {
            return self.clone();
        }
        let amended = amended.iter().chain(self.amended()).copied().collect();
        self.changed(Rules::clone(self), amended)
    }

    /// The same rules with a change that no edition makes: what somebody follows who holds a misconception.
    ///
    /// ```
    /// use elbowroom::rulebook::{Edition, Rulebook};
    /// let mutated = Rulebook::of(Edition::E2023).mutated(|rules| rules.outlet_fill.grounding_beyond = None);
    /// assert_eq!(mutated.outlet_fill.grounding_beyond, Rulebook::of(Edition::E2017).outlet_fill.grounding_beyond);
    /// ```
    pub fn mutated(&self, change: impl FnOnce(&mut Rules)) -> MutatedRulebook {
        let mut rules = Rules::clone(self);
        change(&mut rules);
        MutatedRulebook(self.changed(rules, self.amended().to_vec()))
    }

    fn changed(&self, rules: Rules, amended: Vec<Amended>) -> Self {
        Self(Handle::Changed(Arc::new(Changed { rules, amended, said_in: self.said_in() })))
    }

    /// The same rules for judging, in the other system of units, a request that is in `said_in`: what its amendments say is converted.
    pub fn for_other_units(&self, said_in: Units) -> Self {
        let conversion = self.unit_systems.conversion(said_in.other());
        let measure =
            |figure: &str| self.figures().find(|known| known.name == figure).map(|known| known.measure);
        let convert = |amended: &Amended| {
            let measure = measure(amended.figure).unwrap_or(Measure::Number);
            Amended { value: conversion.apply(amended.value, measure), ..*amended }
        };
        let (rules, amended) = (Rules::clone(self), self.amended().iter().map(convert).collect());
        Self(Handle::Changed(Arc::new(Changed { rules, amended, said_in: Some(said_in) })))
    }

    /// The system that the request is in, where it is judged in the other one.
    pub fn said_in(&self) -> Option<Units> {
        match &self.0 {
            Handle::Edition(_) => None,
            Handle::Changed(changed) => changed.said_in,
        }
    }

    /// The figures that are amended.
    pub fn amended(&self) -> &[Amended] {
        match &self.0 {
            Handle::Edition(_) => &[],
            Handle::Changed(changed) => &changed.amended,
        }
    }

    /// What a figure is here, and whether an amendment changed it.
    ///
    /// ```
    /// use elbowroom::quantity::{Decimal, Units};
    /// use elbowroom::rulebook::{Edition, Rulebook, amendment::Amended};
    /// let book = Rulebook::of(Edition::E2023);
    /// let yoke = book.outlet_fill.yoke;
    /// assert_eq!(book.value(&yoke, Units::Us), (Decimal::whole(2), false));
    /// let town = book.with_amendments(&[Amended { figure: yoke.name, value: Decimal::whole(3) }]);
    /// assert_eq!(town.value(&yoke, Units::Us), (Decimal::whole(3), true));
    /// ```
    pub fn value(&self, figure: &RuleFigure, units: Units) -> (Decimal, bool) {
        amendment::value(figure, units, self.amended())
    }
}

impl Rules {
    /// Every figure that the rulebook states.
    pub fn figures(&self) -> impl Iterator<Item = RuleFigure> + use<> {
        let mut figures = Vec::new();
        self.list(&mut figures);
        figures.into_iter()
    }
}

/// The rules that belong to no subject.
pub static GENERAL: &[&Rule] = &[&UNVERIFIED_EDITION, &NOTHING_DESCRIBED, &unit_systems::EITHER];

/// Every rule of every edition.
pub fn rules() -> impl Iterator<Item = &'static Rule> {
    Part::ALL.iter().flat_map(|part| part.rules()).copied()
}
