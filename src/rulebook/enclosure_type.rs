//! Which enclosure type serves where: 110.28 and its table.

use super::Edition;
use super::declare::RECALLED;

rules! {
    /// An enclosure is of a type that the table rates for every condition where it stands.
    SELECTION: "enclosure-type.selection", "Table 110.28", [Bracketed, Published, UnofficialCopy],
        "That the table exists and what it covers: reprint of the 2018 International Residential Code, E3404.4; its rows are recalled";
    /// What the table covers, and what no type number speaks of.
    SCOPE: "enclosure-type.scope", "110.28", Published,
        "Reprint of the 2018 International Residential Code, E3404.4";
    /// Dry, damp and wet are words for locations, which no row of the table names.
    MOISTURE: "enclosure-type.moisture", "Article 100, Location", CommonPractice,
        "common practice: a damp place indoors is taken as falling liquids and light splashing, a wet one as hosedown and splashing water, a wet or damp one outdoors as rain, snow and sleet";
    /// Some enclosures of type 4X are marked for use indoors only, and do not stand outdoors.
    INDOOR_ONLY: "enclosure-type.indoor-only", [-, -, "Table 110.28"], Recalled,
        "An unofficial copy of the 2023 edition, to be compared with the print";
    /// Hazardous (classified) locations are no matter of the table.
    HAZARDOUS: "enclosure-type.hazardous", "Articles 500 to 506", [Recalled, Published, UnofficialCopy],
        RECALLED;
}

subject! {
    /// What the note to the table says of each type, per edition.
    pub struct EnclosureWords {
        /// Whether it was read that types 4, 4X, 6 and 6P are dusttight.
        pub water_types_dusttight: bool,
    }
}

impl EnclosureWords {
    pub(super) const fn of(edition: Edition) -> Self {
        // the 2011 text says raintight and watertight only, that of 2020 dusttight too; that of 2017 was not read
        Self { water_types_dusttight: !matches!(edition, Edition::E2017) }
    }
}
