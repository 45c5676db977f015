//! What learners get wrong about the volume of a box, as a request says it.

use super::outlet_fill::change;
use crate::checks::outlet_fill::{Gangs, Many, OutletFillRequest, SectionKind};
use crate::quantity::{Decimal, Units, Volume};
use crate::tables;

/// Outside length times width times depth, as the table names the box, in place of its volume.
pub(super) fn outside_dimensions(request: &mut OutletFillRequest) -> bool {
    let in_inches = request.units == Units::Us;
    let Some(enclosure) = &mut request.enclosure else { return false };
    let Some(standard) = enclosure.standard.filter(|_| enclosure.marked_volume.is_none() && in_inches) else {
        return false;
    };
    let Some(table) = tables::all().find(tables::standard_boxes::TABLE) else { return false };
    let side = |column| table.number(standard.key(), column);
    let (Some(length), Some(depth)) = (side("length_in"), side("depth_in")) else { return false };
    let gangs = enclosure.gangs.filter(|_| standard.shape().is_per_gang()).map_or(1, Gangs::get);
    let width = side("width_in").unwrap_or(length);
    let volume = length.times(width).times(depth).times(gangs.into());
    // a mark has six decimals
    let volume = volume.floor_to(Decimal::from_billionths(1_000));
    enclosure.marked_volume = Volume::new(volume);
    enclosure.marked_volume.is_some()
}

pub(super) fn sections_left_out(request: &mut OutletFillRequest) -> bool {
    request.enclosure.as_mut().is_some_and(|enclosure| {
        let some = !enclosure.sections.is_empty();
        enclosure.sections.clear();
        some
    })
}

/// An extension ring without a mark is credited with the volume of the box that it extends.
pub(super) fn unmarked_section_credited(request: &mut OutletFillRequest) -> bool {
    let Some(enclosure) = &mut request.enclosure else { return false };
    let Some(standard) = enclosure.standard else { return false };
    change(&mut enclosure.sections, |section| {
        let bare = section.kind == SectionKind::ExtensionRing
            && section.marked_volume.is_none()
            && section.standard.is_none();
        if bare {
            section.standard = Some(standard);
        }
        bare
    })
}

pub(super) fn mark_ignored(request: &mut OutletFillRequest) -> bool {
    request
        .enclosure
        .as_mut()
        .is_some_and(|enclosure| enclosure.standard.is_some() && enclosure.marked_volume.take().is_some())
}

/// The share of a raceway that may be filled, taken of a box.
pub(super) fn forty_percent_of_box(request: &mut OutletFillRequest) -> bool {
    let units = request.units;
    let Some(enclosure) = request.enclosure.as_mut().filter(|enclosure| enclosure.barriers.is_empty()) else {
        return false;
    };
    let table = enclosure.standard.map(|standard| {
        let gangs = enclosure.gangs.filter(|_| standard.shape().is_per_gang()).map_or(1, Gangs::get);
        standard.volume(units).value.times(gangs.into())
    });
    let Some(own) = enclosure.marked_volume.map(Volume::value).or(table) else { return false };
    let added = enclosure.sections.iter().filter_map(|section| {
        let of_one = section
            .marked_volume
            .map(Volume::value)
            .or(section.standard.map(|standard| standard.volume(units).value))?;
        Some(of_one.times(section.count.map_or(1, Many::get).into()))
    });
    let all: Decimal = added.fold(own, |sum, part| sum + part);
    let share = all.times(Decimal::ten_thousandths(4_000)).floor_to(Decimal::from_billionths(1_000));
    enclosure.sections.clear();
    enclosure.marked_volume = Volume::new(share);
    enclosure.marked_volume.is_some()
}
