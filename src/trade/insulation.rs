//! Insulation types of conductors and fixture wires, by their letters.

use serde::{Deserialize, Serialize};
use std::fmt;
use utoipa::ToSchema;

/// Declares the types with their letters.
// names are taken as `tt`: behind `literal` the schema derive does not see what serde renames to
macro_rules! types {
    ($($(#[doc = $doc:literal])+ $kind:ident $letters:tt),+ $(,)?) => {
        /// The insulation of a conductor or fixture wire, by its type letters.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, ToSchema)]
        #[repr(u8)]
        pub enum Insulation { $($(#[doc = $doc])+ #[serde(rename = $letters)] $kind),+ }

        impl Insulation {
            /// Every type.
            pub const ALL: &'static [Self] = &[$(Self::$kind),+];

            /// The type letters.
            ///
            /// ```
            /// assert_eq!(elbowroom::trade::Insulation::Thwn2.letters(), "THWN-2");
            /// ```
            pub const fn letters(self) -> &'static str {
                match self { $(Self::$kind => $letters),+ }
            }
        }
    };
}

types! {
    /// Thermoplastic, heat-resistant, nylon jacket.
    Thhn "THHN",
    /// Thermoplastic, heat- and moisture-resistant, nylon jacket.
    Thwn "THWN",
    /// As THWN, 90 °C wet.
    Thwn2 "THWN-2",
    /// Cross-linked, heat- and moisture-resistant.
    Xhhw "XHHW",
    /// As XHHW, 90 °C wet.
    Xhhw2 "XHHW-2",
    /// Cross-linked, heat-resistant.
    Xhh "XHH",
    /// Modified ETFE, wet.
    Zw "ZW",
    /// Thermoplastic, moisture-resistant.
    Tw "TW",
    /// Thermoplastic, heat- and moisture-resistant.
    Thw "THW",
    /// As THW, 90 °C wet.
    Thw2 "THW-2",
    /// Thermoplastic, heat- and moisture-resistant, 90 °C dry.
    Thhw "THHW",
    /// Thermoset, heat-resistant; with or without an outer covering.
    Rhh "RHH",
    /// Thermoset, heat- and moisture-resistant; with or without an outer covering.
    Rhw "RHW",
    /// As RHW, 90 °C wet; with or without an outer covering.
    Rhw2 "RHW-2",
    /// Extended polytetrafluoroethylene.
    Tfe "TFE",
    /// Fluorinated ethylene propylene.
    Fep "FEP",
    /// Fluorinated ethylene propylene, braided.
    Fepb "FEPB",
    /// Perfluoroalkoxy.
    Pfa "PFA",
    /// Perfluoroalkoxy, high temperature.
    Pfah "PFAH",
    /// Modified ETFE.
    Z "Z",
    /// Fixture wire, thermoset, solid.
    Rfh1 "RFH-1",
    /// Fixture wire, thermoset, solid.
    Rfh2 "RFH-2",
    /// Fixture wire, thermoset, flexible.
    Ffh2 "FFH-2",
    /// Fixture wire, thermoset, high temperature.
    Rfhh2 "RFHH-2",
    /// Fixture wire, silicone, solid.
    Sf1 "SF-1",
    /// Fixture wire, silicone, flexible.
    Sff1 "SFF-1",
    /// Fixture wire, silicone, solid.
    Sf2 "SF-2",
    /// Fixture wire, silicone, flexible.
    Sff2 "SFF-2",
    /// Fixture wire, thermoplastic, solid.
    Tf "TF",
    /// Fixture wire, thermoplastic, flexible.
    Tff "TFF",
    /// Fixture wire, thermoplastic, nylon jacket, solid.
    Tfn "TFN",
    /// Fixture wire, thermoplastic, nylon jacket, flexible.
    Tffn "TFFN",
    /// Fixture wire, cross-linked, solid.
    Xf "XF",
    /// Fixture wire, cross-linked, flexible.
    Xff "XFF",
    /// Fixture wire, fluorinated ethylene propylene, solid.
    Pf "PF",
    /// Fixture wire, fluorinated ethylene propylene, flexible.
    Pff "PFF",
    /// Fixture wire, fluorinated ethylene propylene, glass braid, solid.
    Pgf "PGF",
    /// Fixture wire, fluorinated ethylene propylene, glass braid, flexible.
    Pgff "PGFF",
    /// Fixture wire, perfluoroalkoxy, solid.
    Paf "PAF",
    /// Fixture wire, perfluoroalkoxy, flexible.
    Paff "PAFF",
    /// Fixture wire, extended polytetrafluoroethylene, solid.
    Ptf "PTF",
    /// Fixture wire, extended polytetrafluoroethylene, flexible.
    Ptff "PTFF",
    /// Fixture wire, modified ETFE, solid.
    Zf "ZF",
    /// Fixture wire, modified ETFE, flexible.
    Zff "ZFF",
    /// Fixture wire, modified ETFE, high temperature.
    Zhf "ZHF",
    /// Fixture wire, tape, solid.
    Kf1 "KF-1",
    /// Fixture wire, tape, flexible.
    Kff1 "KFF-1",
    /// Fixture wire, tape, solid.
    Kf2 "KF-2",
    /// Fixture wire, tape, flexible.
    Kff2 "KFF-2",
}

impl Insulation {
    /// How many types there are.
    pub const COUNT: usize = Self::ALL.len();

    /// The place of this type among all, from 0.
    pub const fn index(self) -> usize {
        self as usize
    }

    /// Whether the type is made with and without an outer covering, of different dimensions.
    pub const fn is_made_with_and_without_covering(self) -> bool {
        matches!(self, Self::Rhh | Self::Rhw | Self::Rhw2)
    }
}

impl fmt::Display for Insulation {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.letters())
    }
}

/// Whether a conductor of a type that is made both ways has an outer covering.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum Covering {
    /// With an outer covering.
    With,
    /// Without one.
    Without,
}
