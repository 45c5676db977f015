//! Kinds of raceway whose dimensions the code tabulates.

use serde::{Deserialize, Serialize};
use std::fmt;
use utoipa::ToSchema;

/// Declares the kinds with their names and the name under which the table of dimensions has them.
// names are taken as `tt`: behind `literal` the schema derive does not see what serde renames to
macro_rules! kinds {
    ($($(#[doc = $doc:literal])+ $kind:ident $name:tt as $table:tt),+ $(,)?) => {
        /// The kind of a raceway: its dimensions are in Chapter 9, Table 4.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, ToSchema)]
        #[repr(u8)]
        pub enum RacewayKind { $($(#[doc = $doc])+ #[serde(rename = $name)] $kind),+ }

        impl RacewayKind {
            /// Every kind.
            pub const ALL: &'static [Self] = &[$(Self::$kind),+];

            /// The name as requests and answers write it.
            ///
            /// ```
            /// assert_eq!(elbowroom::trade::RacewayKind::Pvc40.name(), "PVC-40");
            /// ```
            pub const fn name(self) -> &'static str {
                match self { $(Self::$kind => $name),+ }
            }

            /// The name in the table of dimensions, where two kinds may share their rows.
            pub const fn table_name(self) -> &'static str {
                match self { $(Self::$kind => $table),+ }
            }
        }
    };
}

kinds! {
    /// Electrical metallic tubing.
    Emt "EMT" as "EMT",
    /// Electrical nonmetallic tubing.
    Ent "ENT" as "ENT",
    /// Flexible metal conduit.
    Fmc "FMC" as "FMC",
    /// Intermediate metal conduit.
    Imc "IMC" as "IMC",
    /// Liquidtight flexible nonmetallic conduit, type A.
    LfncA "LFNC-A" as "LFNC-A",
    /// Liquidtight flexible nonmetallic conduit, type B.
    LfncB "LFNC-B" as "LFNC-B",
    /// Liquidtight flexible nonmetallic conduit, type C. Its dimensions are unconfirmed.
    LfncC "LFNC-C" as "LFNC-C",
    /// Liquidtight flexible metal conduit.
    Lfmc "LFMC" as "LFMC",
    /// Rigid metal conduit.
    Rmc "RMC" as "RMC",
    /// Rigid PVC conduit, schedule 80.
    Pvc80 "PVC-80" as "PVC-80",
    /// Rigid PVC conduit, schedule 40.
    Pvc40 "PVC-40" as "PVC-40",
    /// HDPE conduit, which has the dimensions of rigid PVC schedule 40.
    Hdpe "HDPE" as "PVC-40",
    /// Rigid PVC conduit, type A.
    PvcA "PVC-A" as "PVC-A",
    /// PVC conduit, type EB.
    PvcEb "PVC-EB" as "PVC-EB",
}

impl RacewayKind {
    /// How many kinds there are.
    pub const COUNT: usize = Self::ALL.len();

    /// The place of this kind among all, from 0.
    pub const fn index(self) -> usize {
        self as usize
    }
}

impl fmt::Display for RacewayKind {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.name())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_kind_reads_its_own_name() {
        for (index, kind) in RacewayKind::ALL.iter().enumerate() {
            let json = serde_json::to_string(kind).unwrap();
            assert_eq!(json, format!("\"{}\"", kind.name()));
            assert_eq!(serde_json::from_str::<RacewayKind>(&json).unwrap(), *kind);
            assert_eq!(kind.index(), index);
        }
    }
}
