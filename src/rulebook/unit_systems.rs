//! The two systems of units: how they are related, and that either may be used.

use crate::quantity::{Conversion, Decimal, Units};

rules! {
    /// Installations may be made in either system of units: a demand that is met in one is met.
    EITHER: "units.either", "90.9(D)", EarlierEdition,
        "2013 California Electrical Code, which reprints the text of 2011; later texts were not read";
}

subject! {
    /// What a unit of one system is in the other, by definition.
    pub struct UnitSystems {
        /// Millimetres in an inch; of areas and volumes its square and its cube.
        pub millimetres_per_inch: Decimal,
        /// Kilograms in a pound.
        pub kilograms_per_pound: Decimal,
    }
}

impl UnitSystems {
    /// What every edition goes by.
    pub const ALL_EDITIONS: Self = Self {
        millimetres_per_inch: Decimal::ten_thousandths(254_000),
        kilograms_per_pound: Decimal::from_billionths(453_592_370),
    };

    /// How measured values come into a system from the other one.
    pub const fn conversion(&self, to: Units) -> Conversion {
        let Self { millimetres_per_inch, kilograms_per_pound } = *self;
        Conversion { millimetres_per_inch, kilograms_per_pound, to }
    }
}
