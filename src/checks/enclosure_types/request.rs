//! What is asked: where an enclosure stands, what it must stand, and which type is meant.

use crate::checks::request::request;
use crate::quantity::converts;
use crate::tables::enclosure_types::{EnclosureCondition, EnclosureLocation, EnclosureType};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// The most items of any list.
pub const MOST_ITEMS: usize = 200;

request! {
    /// A place for an enclosure: which types serve there?
    ///
    /// Leave `enclosure_type` out to ask only that: the verdict is then null.
    pub struct EnclosureTypesRequest {
        /// The units of request and answer. No figure of this check has one.
        units,
        /// Where the enclosure stands.
        pub location: EnclosureLocation,
        /// Whether the place is dry, damp or wet. Indoors it decides what water the enclosure must stand.
        pub moisture: Option<PlaceMoisture>,
        /// What else the enclosure must stand there. The order decides nothing.
        #[serde(default)]
        #[schema(max_items = 200)]
        pub conditions: Vec<EnclosureCondition>,
        /// Whether the place is a hazardous (classified) location. No type is then named: Articles 500 to 506 decide. A type that
        /// is to be judged is only where this is said.
        pub hazardous: Option<bool>,
        /// What the enclosure is. The table judges no box; where it is not said, a type that does not serve is judged only where this is.
        pub enclosure_kind: Option<EnclosureKind>,
        /// The type that is there, or is meant to be.
        pub enclosure_type: Option<EnclosureType>,
        /// Other types that the same enclosure is marked with: any one of them serves.
        #[serde(default)]
        #[schema(max_items = 16)]
        pub also_marked: Vec<EnclosureType>,
        /// Whether an enclosure of type 4X is marked for use indoors only, as some are from 2023 on.
        pub marked_indoor_only: Option<bool>,
    }
}

/// What an enclosure is, as far as the table goes by it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum EnclosureKind {
    /// An outlet, device, pull or junction box, a conduit body or a fitting: 314.15 decides what moisture it stands, not the table.
    Box,
    /// Of a switchboard, panelboard, enclosed switch, motor controller or other equipment that 110.28 names.
    Equipment,
}

/// The word for how wet a place is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum PlaceMoisture {
    /// Not normally damp or wet.
    Dry,
    /// Moderately moist, as under a roof without walls or in some basements.
    Damp,
    /// Saturated with water, washed down, or open to the weather.
    Wet,
}

converts! {
    EnclosureTypesRequest {}
}
