//! The columns of a table and the names that a header may give them.

use super::cells::plain;
use crate::derivation::{Pattern, Pointer};
use std::collections::HashMap;
use std::sync::LazyLock;

/// What an empty cell means. The members of requests have the same roles.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Role {
    /// The thing is not there.
    Thing,
    /// It is not known.
    Property,
    /// It is not claimed.
    Relief,
    /// It is what the documentation says.
    Default,
    /// It says nothing of what is installed.
    Choice,
}

impl Role {
    /// The word for it, as in the schemas of requests.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Thing => "thing",
            Self::Property => "property",
            Self::Relief => "relief",
            Self::Default => "default",
            Self::Choice => "choice",
        }
    }
}

/// Declares the columns: the role of their cells, their names, and other spellings that a header may have.
macro_rules! columns {
    ($($(#[doc = $doc:literal])+ $role:ident $column:ident $name:literal $(or $other:literal)*),+ $(,)?) => {
        /// A column of a table.
        #[derive(Clone, Copy, Debug, PartialEq, Eq)]
        pub enum Column { $($(#[doc = $doc])+ $column),+ }

        impl Column {
            /// Every column, in the order in which they are documented.
            pub const ALL: &'static [Self] = &[$(Self::$column),+];

            /// The name.
            pub const fn name(self) -> &'static str {
                match self { $(Self::$column => $name),+ }
            }

            /// The column as a JSON Pointer into a row.
            pub const fn pattern(self) -> Pattern {
                match self { $(Self::$column => &concat!("/", $name)),+ }
            }

            /// The role of its cells: what it means that one is empty.
            pub const fn role(self) -> Role {
                match self { $(Self::$column => Role::$role),+ }
            }

            const fn others(self) -> &'static [&'static str] {
                match self { $(Self::$column => &[$($other),*]),+ }
            }
        }
    };
}

columns! {
    /// The caller's own mark.
    Choice Reference "reference" or "ref" or "mark" or "tag",
    /// Which check is made.
    Choice Check "check",
    /// The edition of the code.
    Default Edition "edition" or "code edition",
    /// The system of units.
    Default Units "units",
    /// A standard metal box.
    Property Box "box" or "standard box" or "box size",
    /// How many gangs the box has.
    Property Gangs "gangs" or "gang",
    /// The volume marked on the box.
    Property MarkedVolume "marked_volume" or "box volume",
    /// What the box is made of.
    Property Material "material" or "box material",
    /// The volume marked on a plaster ring.
    Property RingVolume "ring_volume" or "plaster ring volume" or "mud ring volume",
    /// The volume marked on an extension ring.
    Property ExtensionVolume "extension_volume" or "extension ring volume",
    /// The volume marked on a raised cover.
    Property CoverVolume "cover_volume" or "raised cover volume",
    /// Cables that end in the box.
    Thing Cables "cables" or "cable",
    /// Conductors in the box, or in the raceway.
    Thing Conductors "conductors" or "conductor" or "wires",
    /// Grounding conductors that no cable brings.
    Thing Grounds "grounds" or "ground" or "grounding conductors",
    /// Devices on yokes.
    Thing Devices "devices" or "device",
    /// Internal clamps.
    Property Clamps "clamps" or "internal clamps",
    /// Luminaire studs and hickeys.
    Thing Fittings "fittings" or "support fittings",
    /// The kind of raceway.
    Property Raceway "raceway" or "conduit" or "raceway kind",
    /// The trade size of the raceway.
    Property TradeSize "trade_size" or "conduit size" or "raceway size",
    /// The length of the raceway between two enclosures.
    Property Length "length",
    /// Whether the raceway is a nipple.
    Relief Nipple "nipple",
    /// The insulation type of the conductors in a raceway.
    Property Insulation "insulation" or "insulation type",
}

impl Column {
    /// Reads a name of a header in any case, with spaces, dashes or underscores.
    pub fn named(name: &str) -> Option<Self> {
        // made once: a header may have any number of cells
        static KNOWN: LazyLock<HashMap<String, Column>> = LazyLock::new(|| {
            let names = |column: &'static Column| {
                column
                    .others()
                    .iter()
                    .chain([&column.name()])
                    .map(|name| (plain(name), *column))
                    .collect::<Vec<_>>()
            };
            Column::ALL.iter().flat_map(names).collect()
        });
        KNOWN.get(&plain(name)).copied()
    }

    /// The column as the pointer of a fault.
    pub const fn pointer(self) -> Pointer {
        Pointer::to(self.pattern())
    }

    /// Whether only an outlet box has it.
    pub const fn is_of_box(self) -> bool {
        use Column::{
            Box, Cables, Clamps, CoverVolume, Devices, ExtensionVolume, Fittings, Gangs, Grounds,
            MarkedVolume, Material, RingVolume,
        };
        matches!(
            self,
            Box | Gangs
                | MarkedVolume
                | Material
                | RingVolume
                | ExtensionVolume
                | CoverVolume
                | Cables
                | Grounds
                | Devices
                | Clamps
                | Fittings
        )
    }

    /// Whether only a raceway has it.
    pub const fn is_of_raceway(self) -> bool {
        matches!(self, Self::Raceway | Self::TradeSize | Self::Length | Self::Nipple | Self::Insulation)
    }
}
