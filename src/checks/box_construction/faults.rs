//! What can be wrong with a request that decoded.

use super::{
    BoxConstruction, BoxConstructionRequest, BoxMetal, ConstructedBox, LISTED_AS_EQUAL, LISTED_AT_ALL,
    PROVISION_AT, VOLUME, WALLS,
};
use crate::checks::{FaultCode, Faults, rulebook_of};
use crate::quantity::{Convert, Units};
use crate::rulebook::Rulebook;
use crate::rulebook::reading::{ListingEvidencesConstruction, UnitsOfMeasure};

pub(super) fn find(request: &BoxConstructionRequest, faults: &mut Faults) {
    let ConstructedBox { material, listed, listed_as_equal, grounding_provision, .. } = request.enclosure;
    if (listed, listed_as_equal) == (Some(false), Some(true)) {
        faults.contradiction(LISTED_AT_ALL, LISTED_AS_EQUAL, "fault-listed-and-not");
    }
    let said = [(listed, LISTED_AT_ALL), (listed_as_equal, LISTED_AS_EQUAL)];
    let Some((_, listing)) = said.into_iter().find(|(is_listed, _)| *is_listed == Some(true)) else { return };
    let book = rulebook_of::<BoxConstruction>(request, request.edition);
    let reading = book.readings.of::<ListingEvidencesConstruction>();
    if reading != ListingEvidencesConstruction::Evidence || material == BoxMetal::Nonmetallic {
        return;
    }
    if grounding_provision == Some(false) {
        faults.contradiction(PROVISION_AT, listing, "fault-listed-without-provision");
    }
    if denies_listing(request, &book, false) {
        faults.contradiction(WALLS, listing, "fault-listed-with-thin-walls");
    } else if denies_listing(request, &book, true) {
        faults.add(VOLUME, FaultCode::MissingMember, "fault-listed-thin-walls-of-unsaid-volume");
    }
}

/// Whether the walls are thinner than those of any box that has the listing, in either system of units where either serves; of a box whose
/// volume is not said, as of a large one or not.
fn denies_listing(request: &BoxConstructionRequest, book: &Rulebook, if_large: bool) -> bool {
    let (here, there) = (request.units, request.units.other());
    let mut converted = request.enclosure;
    converted.convert(&book.unit_systems.conversion(there));
    let either = book.readings.of::<UnitsOfMeasure>() == UnitsOfMeasure::Either;
    are_too_thin(&request.enclosure, book, here, if_large)
        && (!either || are_too_thin(&converted, &book.for_other_units(here), there, if_large))
}

/// A large box of sheet steel has no exception for thin walls; any other has none that is not listed for it.
fn are_too_thin(given: &ConstructedBox, book: &Rulebook, units: Units, if_large: bool) -> bool {
    let figures = &book.box_construction;
    let value = |figure| book.value(figure, units).0;
    let is_large = given.material == BoxMetal::SheetSteel
        && given.volume.map_or(if_large, |volume| volume.value() > value(&figures.small_up_to));
    let least = match given.material {
        BoxMetal::MalleableIron | BoxMetal::DieCast => &figures.malleable_or_die_cast,
        BoxMetal::OtherCast => &figures.other_cast,
        BoxMetal::SheetSteel | BoxMetal::Nonmetallic if is_large => &figures.large_sheet_steel,
        BoxMetal::SheetSteel | BoxMetal::Nonmetallic => &figures.sheet_steel,
    };
    let is_thin = given.wall_thickness.is_some_and(|thickness| thickness.value() < value(least));
    is_thin && (is_large || given.listed_as_equal == Some(false))
}
