//! Which enclosure types are rated for which conditions, and the words for them: Table 110.28 and its note.

use super::loader::File;
use super::table::{Affirmation, Column};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// The id of the table: a row for each condition, indoors or outdoors, and a column for each type.
pub const TABLE: &str = "enclosure-types";

/// The id of the table of words: a row for each type, and a column for each word.
pub const WORDS_TABLE: &str = "enclosure-words";

/// A type that the table does not have for a location has no yes or no there.
pub(super) static FILE: File = File::new(
    TABLE,
    "Table 110.28",
    &[
        Column::text("1"),
        Column::text("2"),
        Column::text("3"),
        Column::text("3R"),
        Column::text("3S"),
        Column::text("3X"),
        Column::text("3RX"),
        Column::text("3SX"),
        Column::text("4"),
        Column::text("4X"),
        Column::text("5"),
        Column::text("6"),
        Column::text("6P"),
        Column::text("12"),
        Column::text("12K"),
        Column::text("13"),
    ],
    include_str!("data/enclosure-types.csv"),
);

pub(super) static WORDS_FILE: File = File::new(
    WORDS_TABLE,
    "note to Table 110.28",
    &[
        Column::text("raintight"),
        Column::text("rainproof"),
        Column::text("watertight"),
        Column::text("driptight"),
        Column::text("dusttight"),
    ],
    include_str!("data/enclosure-words.csv"),
);

/// Declares a closed set of names, each written in one way. Names are taken as `tt`: behind `literal` the schema derive
/// does not see what serde renames to.
macro_rules! names {
    ($(#[doc = $doc:literal])+ $name:ident { $($(#[doc = $one_doc:literal])+ $one:ident $text:tt),+ $(,)? }) => {
        $(#[doc = $doc])+
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize, ToSchema)]
        pub enum $name { $($(#[doc = $one_doc])+ #[serde(rename = $text)] $one),+ }

        impl $name {
            /// All of them, in the order of the table.
            pub const ALL: &'static [Self] = &[$(Self::$one),+];

            /// The name as tables, requests and answers write it.
            pub const fn name(self) -> &'static str {
                match self { $(Self::$one => $text),+ }
            }
        }
    };
}

names! {
    /// The number of an enclosure type.
    EnclosureType {
        /// Indoors, against incidental contact and falling dirt.
        Type1 "1",
        /// Indoors, and against dripping and light splashing.
        Type2 "2",
        /// Outdoors, against rain, snow, sleet and windblown dust.
        Type3 "3",
        /// Outdoors, against rain, snow and sleet, but not windblown dust.
        Type3R "3R",
        /// As type 3, with a mechanism that works while ice covers it.
        Type3S "3S",
        /// As type 3, and against corrosion.
        Type3X "3X",
        /// As type 3R, and against corrosion.
        Type3Rx "3RX",
        /// As type 3S, and against corrosion.
        Type3Sx "3SX",
        /// Against windblown dust, splashing and hose-directed water.
        Type4 "4",
        /// As type 4, and against corrosion.
        Type4X "4X",
        /// Indoors, against settling dust and dripping.
        Type5 "5",
        /// Against temporary submersion.
        Type6 "6",
        /// Against prolonged submersion and corrosion.
        Type6P "6P",
        /// Indoors, against circulating dust and dripping, without knockouts.
        Type12 "12",
        /// As type 12, with knockouts.
        Type12K "12K",
        /// Indoors, against spraying and splashing oil and coolant.
        Type13 "13",
    }
}

names! {
    /// A word for what an enclosure keeps out.
    EnclosureWord {
        /// Beating rain does not get in.
        Raintight "raintight",
        /// Beating rain does no harm.
        Rainproof "rainproof",
        /// Water does not get in.
        Watertight "watertight",
        /// Falling drops and dirt do not get in.
        Driptight "driptight",
        /// Dust does not get in.
        Dusttight "dusttight",
    }
}

names! {
    /// Where an enclosure stands.
    EnclosureLocation {
        /// Inside a building.
        Indoor "indoor",
        /// Outside.
        Outdoor "outdoor",
    }
}

names! {
    /// What an enclosure must stand.
    EnclosureCondition {
        /// Someone touches the enclosed equipment by chance. Always asked.
        IncidentalContact "incidental_contact",
        /// Dirt falls on it. Indoors; always asked there.
        FallingDirt "falling_dirt",
        /// Liquids fall on it, or splash lightly. Indoors.
        FallingLiquids "falling_liquids",
        /// Rain, snow and sleet. Outdoors; always asked there.
        RainSnowSleet "rain_snow_sleet",
        /// Its mechanism must work while ice covers it. Outdoors.
        OperableWhenIced "operable_when_iced",
        /// Wind blows dust at it. Outdoors.
        WindblownDust "windblown_dust",
        /// Dust, lint, fibers or flyings circulate in the air. Indoors.
        CirculatingDust "circulating_dust",
        /// Dust, lint, fibers or flyings settle on it. Indoors.
        SettlingDust "settling_dust",
        /// It is hosed down; indoors also: water splashes on it.
        Hosedown "hosedown",
        /// Oil or coolant seeps. Indoors.
        OilSeepage "oil_seepage",
        /// Oil or coolant sprays or splashes. Indoors.
        OilSpray "oil_spray",
        /// Corrosive agents.
        CorrosiveAgents "corrosive_agents",
        /// It is under water for a short time.
        TemporarySubmersion "temporary_submersion",
        /// It is under water for a long time.
        ProlongedSubmersion "prolonged_submersion",
    }
}

/// The row of the table for a condition at a location; `None` where the table has none.
pub fn row(location: EnclosureLocation, condition: EnclosureCondition) -> Option<&'static str> {
    let in_row = |key: &str| {
        key.strip_prefix(location.name())
            .and_then(|rest| rest.strip_prefix('_'))
            .is_some_and(|rest| rest == condition.name())
    };
    FILE.table()?.rows.iter().map(|row| row.key).find(|key| in_row(key))
}

/// Whether a type is rated for a condition, by the key of its row; `None` where the table does not have the type.
///
/// ```
/// use elbowroom::tables::enclosure_types::{EnclosureType, rated};
/// assert!(!rated("outdoor_windblown_dust", EnclosureType::Type3R).unwrap().holds);
/// assert!(rated("outdoor_windblown_dust", EnclosureType::Type3).unwrap().holds);
/// assert!(rated("outdoor_windblown_dust", EnclosureType::Type12).is_none());
/// ```
pub fn rated(row: &str, enclosure: EnclosureType) -> Option<Affirmation> {
    FILE.affirmation(row, enclosure.name())
}

/// The words that go with a type.
pub fn words(enclosure: EnclosureType) -> impl Iterator<Item = EnclosureWord> {
    let goes_with = move |word: &EnclosureWord| {
        let table = WORDS_FILE.table();
        table.and_then(|table| table.affirmed(enclosure.name(), word.name())) == Some(true)
    };
    EnclosureWord::ALL.iter().copied().filter(goes_with)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::tables::Value;

    #[test]
    fn every_type_has_a_column_and_a_row_of_words() {
        let (types, words) = (FILE.table().unwrap(), WORDS_FILE.table().unwrap());
        let names: Vec<&str> = EnclosureType::ALL.iter().map(|one| one.name()).collect();
        assert_eq!(types.columns.iter().map(|column| column.name).collect::<Vec<_>>(), names);
        assert_eq!(words.rows.iter().map(|row| row.key).collect::<Vec<_>>(), names);
        for word in EnclosureWord::ALL {
            assert!(words.column(word.name()).is_some(), "{}", word.name());
        }
    }

    #[test]
    fn every_cell_is_yes_or_no_and_a_type_is_in_all_rows_of_a_location_or_in_none() {
        for file in [&FILE, &WORDS_FILE] {
            let table = file.table().unwrap();
            for row in &table.rows {
                for (value, column) in row.values.iter().zip(&table.columns) {
                    assert!(matches!(value, Value::Text("yes" | "no") | Value::Absent), "{}", row.key);
                    let same_location = table.rows.iter().filter(|other| {
                        table.id == WORDS_TABLE
                            || other.key.starts_with("indoor") == row.key.starts_with("indoor")
                    });
                    for other in same_location {
                        let absent = table.affirmed(other.key, column.name).is_none();
                        assert_eq!(absent, *value == Value::Absent, "{} {}", other.key, column.name);
                    }
                }
            }
        }
    }

    #[test]
    fn the_published_schemas_name_what_is_read() {
        fn published<T: utoipa::PartialSchema>() -> Vec<String> {
            let schema = serde_json::to_value(T::schema()).unwrap();
            serde_json::from_value(schema["enum"].clone()).unwrap()
        }
        assert_eq!(
            published::<EnclosureType>(),
            EnclosureType::ALL.iter().map(|one| one.name()).collect::<Vec<_>>()
        );
        let conditions: Vec<&str> = EnclosureCondition::ALL.iter().map(|one| one.name()).collect();
        assert_eq!(published::<EnclosureCondition>(), conditions);
        let locations: Vec<&str> = EnclosureLocation::ALL.iter().map(|one| one.name()).collect();
        assert_eq!(published::<EnclosureLocation>(), locations);
        assert_eq!(
            published::<EnclosureWord>(),
            EnclosureWord::ALL.iter().map(|one| one.name()).collect::<Vec<_>>()
        );
    }

    #[test]
    fn every_row_is_a_condition_at_a_location() {
        let mut found = Vec::new();
        for location in EnclosureLocation::ALL {
            found.extend(EnclosureCondition::ALL.iter().filter_map(|condition| row(*location, *condition)));
        }
        let mut rows: Vec<&str> = FILE.table().unwrap().rows.iter().map(|row| row.key).collect();
        found.sort_unstable();
        rows.sort_unstable();
        assert_eq!(found, rows);
    }

    /// A type that stands more of one kind of exposure stands less of it too.
    #[test]
    fn the_grave_condition_implies_the_lighter_one() {
        for (severe, mild) in [
            ("outdoor_prolonged_submersion", "outdoor_temporary_submersion"),
            ("outdoor_temporary_submersion", "outdoor_hosedown"),
            ("outdoor_hosedown", "outdoor_rain_snow_sleet"),
            ("indoor_prolonged_submersion", "indoor_temporary_submersion"),
            ("indoor_temporary_submersion", "indoor_hosedown"),
            ("indoor_hosedown", "indoor_falling_liquids"),
            ("indoor_circulating_dust", "indoor_settling_dust"),
            ("indoor_oil_spray", "indoor_oil_seepage"),
        ] {
            for enclosure in EnclosureType::ALL {
                let holds = |row| rated(row, *enclosure).is_some_and(|cell| cell.holds);
                assert!(!holds(severe) || holds(mild), "{} {severe}", enclosure.name());
            }
        }
    }
}
