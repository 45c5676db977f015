//! How disputed points of the pull-box rules are to be read.

use crate::checks::request::interpretations;
use crate::rulebook::reading::{
    AngleSum, BackWallRow, CableDiameter, CableInsulation, CableRaceway, ConductorArea, EntryDistance,
    HingedCover, MarkedSize, OffsetEntries, RacewayArea, SplicedConductor, StraightSplice,
};

interpretations! {
    /// How disputed points of the pull-box rules are to be read.
    pub struct PullBoxInterpretations {
        /// Which raceways of a row the angle rule counts.
        angle_sum: AngleSum,
        /// What a row is on the back wall.
        back_wall_row: BackWallRow,
        /// From where to where the distance between two entries is measured.
        entry_distance: EntryDistance,
        /// Whether a spliced conductor is the same conductor on both sides of the splice.
        spliced_conductor: SplicedConductor,
        /// Whether conductors spliced between opposite walls also follow the straight rule.
        straight_splice: StraightSplice,
        /// Entries on opposite walls that are out of line.
        offset_entries: OffsetEntries,
        /// Whether a hinged cover is a removable one.
        hinged_cover: HingedCover,
        /// The kind of raceway that a cable is taken to be in.
        cable_raceway: CableRaceway,
        /// The insulation that the conductors of a cable are taken to have.
        cable_insulation: CableInsulation,
        /// Which inside area of a raceway is taken.
        raceway_area: RacewayArea,
        /// The area of RFH-1 and of fixture wires of its row in 18 AWG.
        conductor_area: ConductorArea,
        /// Whether a marked conductor size is also the largest that may be used.
        marked_size: MarkedSize,
        /// Whose diameter counts over 1000 V in a cable of several conductors.
        cable_diameter: CableDiameter,
    }
}
