//! How disputed points of the pull-box rules are to be read.

use crate::checks::present;
use crate::rulebook::reading::{
    AngleSum, BackWallRow, CableDiameter, CableInsulation, CableRaceway, EntryDistance, HingedCover,
    MarkedSize, OffsetEntries, RacewayArea, Readings, SplicedConductor, StraightSplice,
};
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// How disputed points of the pull-box rules are to be read.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields, default)]
pub struct PullBoxInterpretations {
    /// Which raceways of a row the angle rule counts.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub angle_sum: Option<AngleSum>,
    /// What a row is on the back wall.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub back_wall_row: Option<BackWallRow>,
    /// From where to where the distance between two entries is measured.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub entry_distance: Option<EntryDistance>,
    /// Whether a spliced conductor is the same conductor on both sides of the splice.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub spliced_conductor: Option<SplicedConductor>,
    /// Whether conductors spliced between opposite walls also follow the straight rule.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub straight_splice: Option<StraightSplice>,
    /// Entries on opposite walls that are out of line.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub offset_entries: Option<OffsetEntries>,
    /// Whether a hinged cover is a removable one.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub hinged_cover: Option<HingedCover>,
    /// The kind of raceway that a cable is taken to be in.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub cable_raceway: Option<CableRaceway>,
    /// The insulation that the conductors of a cable are taken to have.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub cable_insulation: Option<CableInsulation>,
    /// Which inside area of a raceway is taken.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub raceway_area: Option<RacewayArea>,
    /// Whether a marked conductor size is also the largest that may be used.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub marked_size: Option<MarkedSize>,
    /// Whose diameter counts over 1000 V in a cable of several conductors.
    #[serde(deserialize_with = "present", skip_serializing_if = "Option::is_none")]
    #[schema(nullable = false)]
    pub cable_diameter: Option<CableDiameter>,
}

impl PullBoxInterpretations {
    /// The readings that are chosen, on top of those given.
    pub fn apply(&self, readings: Readings) -> Readings {
        let Self {
            angle_sum,
            back_wall_row,
            entry_distance,
            spliced_conductor,
            straight_splice,
            offset_entries,
            hinged_cover,
            cable_raceway,
            cable_insulation,
            raceway_area,
            marked_size,
            cable_diameter,
        } = *self;
        readings
            .choose(angle_sum)
            .choose(back_wall_row)
            .choose(entry_distance)
            .choose(spliced_conductor)
            .choose(straight_splice)
            .choose(offset_entries)
            .choose(hinged_cover)
            .choose(cable_raceway)
            .choose(cable_insulation)
            .choose(raceway_area)
            .choose(marked_size)
            .choose(cable_diameter)
    }
}
