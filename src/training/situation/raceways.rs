//! A raceway or a conduit body and what is pulled into it, in sentences.

use super::{Sentence, measured, trade_size};
use crate::checks::conduit_body::{ConduitBodyRequest, HubPlace};
use crate::checks::raceway_fill::RacewayFillRequest;
use crate::quantity::Measure;

/// The situation of a raceway.
pub fn of_raceway(request: &RacewayFillRequest) -> Vec<Sentence> {
    let mut sentences = Vec::new();
    if let Some(raceway) = request.raceway {
        let size = raceway.trade_size.map(|size| trade_size(size, request.units)).unwrap_or_default();
        let kind = raceway.kind.name();
        sentences.push(Sentence::new("situation-raceway").text("kind", kind).text("size", size));
        if let Some(length) = raceway.length {
            let length = measured(length.value(), Measure::Length, request.units);
            sentences.push(Sentence::new("situation-raceway-length").text("length", length));
        }
    }
    sentences.extend(request.conductors.iter().map(|one| {
        Sentence::new("situation-raceway-conductors")
            .size(one.size)
            .text("insulation", one.insulation.letters())
    }));
    sentences
}

/// The situation of a conduit body.
pub fn of_conduit_body(request: &ConduitBodyRequest) -> Vec<Sentence> {
    let places: Vec<HubPlace> = request.hubs.iter().map(|hub| hub.place).collect();
    let shape = match places[..] {
        [_, HubPlace::OppositeEnd] => "situation-body-straight",
        [_, HubPlace::Back] => "situation-body-back",
        _ => "situation-body-side",
    };
    let mut sentences = vec![Sentence::new(shape)];
    if let Some(hub) = request.hubs.first() {
        let kind = hub.raceway.kind;
        let size = trade_size(hub.raceway.trade_size, request.units);
        sentences.push(Sentence::new("situation-body-raceway").text("kind", kind.name()).text("size", size));
    }
    sentences.extend(request.pulls.iter().flat_map(|pull| &pull.conductors).map(|group| {
        let letters = group.insulation.map_or("", |insulation| insulation.letters());
        Sentence::new("situation-body-conductors").size(group.size).text("insulation", letters)
    }));
    sentences
}
