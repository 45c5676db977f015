//! Which enclosure type serves where: 110.28 and its table.

use super::{Basis, Rule};

/// An enclosure is of a type that the table rates for every condition where it stands.
pub static SELECTION: Rule = Rule::everywhere(
    "enclosure-type.selection",
    "Table 110.28",
    Basis::Recalled,
    "That the table exists and what it covers: reprint of the 2018 International Residential Code, E3404.4; its rows are recalled",
);

/// What the table covers, and what no type number speaks of.
pub static SCOPE: Rule = Rule::everywhere(
    "enclosure-type.scope",
    "110.28",
    Basis::Published,
    "Reprint of the 2018 International Residential Code, E3404.4",
);

/// Dry, damp and wet are words for locations, which no row of the table names.
pub static MOISTURE: Rule = Rule::everywhere(
    "enclosure-type.moisture",
    "Article 100, Location",
    Basis::CommonPractice,
    "common practice: a damp place indoors is taken as falling liquids and light splashing, a wet one as hosedown and splashing water, a wet or damp one outdoors as rain, snow and sleet",
);

/// Hazardous (classified) locations are no matter of the table.
pub static HAZARDOUS: Rule = Rule::everywhere(
    "enclosure-type.hazardous",
    "Articles 500 to 506",
    Basis::Recalled,
    "recalled; no published source was read",
);

/// The rules of this part.
pub static RULES: [&Rule; 4] = [&SELECTION, &SCOPE, &MOISTURE, &HAZARDOUS];
