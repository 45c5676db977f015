//! What one box cannot be at once: a depth or an opening larger than itself, and sections that do not go on it.

use super::request::{Enclosure, Many, OutletFillRequest, SectionKind};
use crate::checks::Faults;
use crate::derivation::Pointer;
use crate::quantity::{Decimal, Units};
use crate::rulebook::Rulebook;
use crate::tables::standard_boxes::{Shape, StandardBox};

/// Conductors emerge within the box, and its opening is one in it.
pub(super) fn of_opening(request: &OutletFillRequest, enclosure: &Enclosure, faults: &mut Faults) {
    let Some(opening) = request.opening else { return };
    let measured = enclosure.inside_dimensions;
    let at = match (enclosure.standard, measured) {
        (Some(_), _) => Pointer::to(&"/enclosure/standard"),
        (None, _) => Pointer::to(&"/enclosure/inside_dimensions"),
    };
    let depth = depth(enclosure, request.units);
    if let (Some(given), Some(depth)) = (opening.conductor_depth, depth)
        && given.value() > depth
    {
        let given = Pointer::to(&"/opening/conductor_depth");
        faults.contradiction(given, at, "fault-deeper-than-box");
    }
    let widest = match (enclosure.standard, measured) {
        (Some(standard), _) => face(standard, enclosure).map(|side| nominal(side, request.units)),
        (None, Some(inside)) => Some(inside.length.value().min(inside.width.value())),
        (None, None) => None,
    };
    if widest.is_some_and(|widest| opening.smallest_dimension.value() > widest) {
        let given = Pointer::to(&"/opening/smallest_dimension");
        faults.contradiction(given, at, "fault-opening-wider-than-box");
    }
}

/// How deep a box is with all that is fitted to it; `None` where something of it has no depth that is known.
pub(super) fn depth(enclosure: &Enclosure, units: Units) -> Option<Decimal> {
    let own = match (enclosure.standard, enclosure.inside_dimensions) {
        (Some(standard), _) => nominal(standard.size().depth, units),
        (None, inside) => inside?.depth.value(),
    };
    enclosure.sections.iter().try_fold(own, |depth, section| {
        let count = section.count.map_or(1, Many::get);
        let one = nominal(section.standard?.size().depth, units);
        Some(depth + one.times(count.into()))
    })
}

/// Whether conductors may emerge so deep in a box that more free conductor is asked for than in any other.
pub(super) fn may_be_deep(rulebook: &Rulebook, enclosure: &Enclosure, units: Units) -> bool {
    let book = &rulebook.free_conductor;
    let depth = depth(enclosure, units);
    depth.is_none_or(|depth| depth + book.outside.value(units) > book.length.value(units))
}

/// The smaller side of the face of a standard box, all its gangs together.
fn face(standard: StandardBox, enclosure: &Enclosure) -> Option<Decimal> {
    let [length, width] = standard.size().face?;
    let gangs = enclosure.gangs.filter(|_| standard.shape().is_per_gang()).map_or(1, |gangs| gangs.get());
    Some(length.min(width.times(gangs.into())))
}

/// A nominal size in the units of a request: millimetres are taken to the next one, as nobody measures closer.
fn nominal(inches: Decimal, units: Units) -> Decimal {
    match units {
        Units::Us => inches,
        Units::Si => inches.times(Decimal::ten_thousandths(254_000)).ceil_to(Decimal::ONE),
    }
}

/// A ring has no more gangs than go on the box, and an extension has the face of the box that it extends.
pub(super) fn of_sections(request: &OutletFillRequest, enclosure: &Enclosure, faults: &mut Faults) {
    let Some(standard) = enclosure.standard else { return };
    let at = Pointer::to(&"/enclosure/standard");
    let book = Rulebook::of(request.edition);
    let most = match standard.shape() {
        Shape::Square => Some(book.outlet_volume.square_box_gangs.value(request.units)),
        Shape::Octagonal => Some(book.outlet_volume.octagonal_box_gangs.value(request.units)),
        _ => None,
    };
    let extends = enclosure.sections.iter().all(|section| section.kind == SectionKind::ExtensionRing);
    for (index, section) in enclosure.sections.iter().enumerate() {
        let item = Pointer::of(&"/enclosure/sections/#", index);
        if let (Some(gangs), Some(most)) = (section.gangs, most)
            && Decimal::from(gangs.get()) > most
        {
            faults.contradiction(item.member(&"/gangs"), at, "fault-ring-wider-than-box").arguments =
                vec![("gangs", gangs.get().to_string()), ("most", most.to_string())];
        }
        let same = |other: StandardBox| {
            (other.shape(), other.size().face) == (standard.shape(), standard.size().face)
        };
        if extends && section.standard.is_some_and(|other| !same(other)) {
            faults.contradiction(item.member(&"/standard"), at, "fault-extension-of-another-box");
        }
    }
}
