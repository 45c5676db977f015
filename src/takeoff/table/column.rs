//! The columns of a table and the names that a header may give them.

use super::cells::plain;
use crate::derivation::{Pattern, Pointer};
use std::collections::HashMap;
use std::sync::LazyLock;

/// Declares the columns: their names, and other spellings that a header may have.
macro_rules! columns {
    ($($(#[doc = $doc:literal])+ $column:ident $name:literal $place:literal $(or $other:literal)*),+ $(,)?) => {
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
            pub const fn pointer(self) -> Pattern {
                match self { $(Self::$column => &$place),+ }
            }

            const fn others(self) -> &'static [&'static str] {
                match self { $(Self::$column => &[$($other),*]),+ }
            }
        }
    };
}

columns! {
    /// The caller's own mark.
    Reference "reference" "/reference" or "ref" or "mark" or "tag",
    /// Which check is made.
    Check "check" "/check",
    /// The edition of the code.
    Edition "edition" "/edition" or "code edition",
    /// The system of units.
    Units "units" "/units",
    /// A standard metal box.
    Box "box" "/box" or "standard box" or "box size",
    /// How many gangs the box has.
    Gangs "gangs" "/gangs" or "gang",
    /// The volume marked on the box.
    MarkedVolume "marked_volume" "/marked_volume" or "box volume",
    /// What the box is made of.
    Material "material" "/material" or "box material",
    /// The volume marked on a plaster ring.
    RingVolume "ring_volume" "/ring_volume" or "plaster ring volume" or "mud ring volume",
    /// The volume marked on an extension ring.
    ExtensionVolume "extension_volume" "/extension_volume" or "extension ring volume",
    /// The volume marked on a raised cover.
    CoverVolume "cover_volume" "/cover_volume" or "raised cover volume",
    /// Cables that end in the box.
    Cables "cables" "/cables" or "cable",
    /// Conductors in the box, or in the raceway.
    Conductors "conductors" "/conductors" or "conductor" or "wires",
    /// Grounding conductors that no cable brings.
    Grounds "grounds" "/grounds" or "ground" or "grounding conductors",
    /// Devices on yokes.
    Devices "devices" "/devices" or "device",
    /// Internal clamps.
    Clamps "clamps" "/clamps" or "internal clamps",
    /// Luminaire studs and hickeys.
    Fittings "fittings" "/fittings" or "support fittings",
    /// The kind of raceway.
    Raceway "raceway" "/raceway" or "conduit" or "raceway kind",
    /// The trade size of the raceway.
    TradeSize "trade_size" "/trade_size" or "conduit size" or "raceway size",
    /// The length of the raceway between two enclosures.
    Length "length" "/length",
    /// Whether the raceway is a nipple.
    Nipple "nipple" "/nipple",
    /// The insulation type of the conductors in a raceway.
    Insulation "insulation" "/insulation" or "insulation type",
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

    /// The column as a place of a fault.
    pub const fn place(self) -> Pointer {
        Pointer::to(self.pointer())
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
