//! What is asked: where an enclosure stands, what it must stand, and which type is meant.

use crate::checks::{Amendment, Reference, present};
use crate::quantity::Units;
use crate::rulebook::Edition;
use crate::tables::enclosure_types::{EnclosureCondition, EnclosureLocation, EnclosureType};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// The most items of any list.
pub const MOST_ITEMS: usize = 200;

/// A place for an enclosure: which types serve there?
///
/// Leave `enclosure_type` out to ask only that: the verdict is then null.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct EnclosureTypesRequest {
    /// The edition of NFPA 70.
    #[serde(default)]
    pub edition: Edition,
    /// Accept rules that could not be verified. Required to be true for the 2026 edition, whose text was not available.
    #[serde(default, skip_serializing_if = "is_false")]
    pub accept_unverified_rules: bool,
    /// The units of request and answer. No figure of this check has one.
    #[serde(default)]
    pub units: Units,
    /// The caller's own mark.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub reference: Option<Reference>,
    /// Local amendments to figures of the rules, each with the caller's citation.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schema(max_items = 200)]
    pub amendments: Vec<Amendment>,
    /// Where the enclosure stands.
    pub location: EnclosureLocation,
    /// Whether the place is dry, damp or wet. Indoors it decides what water the enclosure must stand.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub moisture: Option<PlaceMoisture>,
    /// What else the enclosure must stand there. The order decides nothing.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    #[schema(max_items = 200)]
    pub conditions: Vec<EnclosureCondition>,
    /// Whether the place is a hazardous (classified) location. No type is then named: Articles 500 to 506 decide.
    #[serde(default, skip_serializing_if = "is_false")]
    pub hazardous: bool,
    /// The type that is there, or is meant to be.
    #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub enclosure_type: Option<EnclosureType>,
}

fn is_false(flag: &bool) -> bool {
    !flag
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
