//! Openings, depths and devices, in sentences.

use super::{Sentence, measured, place};
use crate::checks::box_depths::BoxDepthsRequest;
use crate::checks::free_conductors::FreeConductorsRequest;
use crate::quantity::{Decimal, Measure};

/// The situation of free conductors at a box.
pub fn of_free_conductors(request: &FreeConductorsRequest) -> Vec<Sentence> {
    let length = |value: Decimal| measured(value, Measure::Length, request.units);
    let mut sentences: Vec<Sentence> = place(request.reference.as_ref()).into_iter().collect();
    if let Some(opening) = &request.opening
        && let (Some(width), Some(height)) = (opening.width, opening.height)
    {
        let (width, height) = (length(width.value()), length(height.value()));
        sentences.push(Sentence::new("situation-opening").text("width", width).text("height", height));
    }
    if let Some(depth) = request.emergence_depth {
        sentences.push(Sentence::new("situation-emergence").text("depth", length(depth.value())));
    }
    sentences.extend(
        request
            .rings
            .iter()
            .map(|ring| Sentence::new("situation-ring").text("depth", length(ring.depth.value()))),
    );
    sentences
}

/// The situation of a device in a box.
pub fn of_depths(request: &BoxDepthsRequest) -> Vec<Sentence> {
    let mut sentences: Vec<Sentence> = place(request.reference.as_ref()).into_iter().collect();
    for one in &request.equipment {
        let projection =
            one.projection.map(|projection| measured(projection.value(), Measure::Length, request.units));
        let size = one.largest_supply_conductor.map_or("", |size| size.name());
        let projects =
            Sentence::new("situation-equipment").text("projection", projection.unwrap_or_default());
        sentences.push(projects.text("size", size));
        sentences.extend(one.rear_center_entry.map(|through| {
            Sentence::new(if through { "situation-rear-center" } else { "situation-no-rear-center" })
        }));
    }
    sentences
}
