//! The parts of the rulebook: what a check may read, and what a digest covers.

use super::reading::Point;
use super::{Rule, Rules};
use serde_json::Value;

/// Declares the parts: the module that holds the rules of each, and the field of [`Rules`] that holds what an edition says
/// there, where it is more than rules.
macro_rules! parts {
    ($($(#[doc = $doc:literal])+ $part:ident: $rules:path $(, $field:ident)?;)+) => {
        /// A part of the rulebook: the rules of one subject, what an edition says there, and the disputed points about them.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Part { $($(#[doc = $doc])+ $part),+ }

        impl Part {
            /// Every part.
            pub const ALL: &'static [Self] = &[$(Self::$part),+];

            /// Its rules.
            pub fn rules(self) -> &'static [&'static Rule] {
                match self { $(Self::$part => $rules),+ }
            }

            /// All that an edition says there, figures and structure alike.
            pub fn said(self, rules: &Rules) -> Value {
                // what the macro makes of a part without a field ignores the rules
                let _ = rules;
                match self { $(Self::$part => serde_json::to_value(($(&rules.$field,)?)).unwrap_or_default()),+ }
            }
        }
    };
}

parts! {
    /// How much room a box has.
    OutletVolume: super::outlet_volume::RULES, outlet_volume;
    /// How much room its contents take.
    OutletFill: super::outlet_fill::RULES, outlet_fill;
    /// How much free conductor must be left.
    FreeConductor: super::free_conductor::RULES, free_conductor;
    /// What a conduit body with small conductors must have.
    ConduitBody: super::conduit_body::RULES, conduit_body;
    /// How deep a box must be.
    BoxDepth: super::box_depth::RULES, box_depth;
    /// What metal boxes are made of.
    BoxConstruction: super::box_construction::RULES, box_construction;
    /// How a box sits in its surface, and what covers it.
    BoxSurface: super::box_surface::RULES, box_surface;
    /// How wiring enters a box.
    BoxEntry: super::box_entry::RULES, box_entry;
    /// Whether a box can be reached.
    BoxAccess: super::box_access::RULES, box_access;
    /// Fasteners that reach into a box, and moisture.
    BoxProtection: super::box_protection::RULES, box_protection;
    /// How long a box with large conductors must be.
    Pull: super::pull::RULES, pull;
    /// How long a box over 1000 V must be.
    Over1000Volts: super::over_1000_volts::RULES, over_1000_volts;
    /// How full a raceway may be.
    RacewayFill: super::raceway_fill::RULES, raceway_fill;
    /// How enclosures are held in place.
    BoxSupport: super::box_support::RULES, box_support;
    /// What a box may carry.
    LuminaireOutlet: super::luminaire_outlet::RULES, luminaire_outlet;
    /// Which enclosure type serves where.
    EnclosureType: super::enclosure_type::RULES, enclosure_words;
    /// What cannot be built.
    Geometry: super::geometry::RULES;
    /// What every check goes by.
    General: super::GENERAL, unit_systems;
}

impl Part {
    /// The disputed points about its rules.
    pub fn points(self) -> impl Iterator<Item = Point> {
        let about = move |point: &Point| self.has(point.rule());
        Point::ALL.iter().copied().filter(about)
    }

    /// Whether a rule is one of its own.
    pub fn has(self, rule: &Rule) -> bool {
        self.rules().iter().any(|known| std::ptr::eq(*known, rule))
    }
}
