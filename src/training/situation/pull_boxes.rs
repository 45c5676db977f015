//! A pull box and what enters it, in sentences.

use super::{Sentence, measured, trade_size};
use crate::checks::pull_box::{CableCovering, Entry, Pull, PullBoxRequest, Wall};
use crate::quantity::{Measure, Units};

/// The situation of a pull box.
pub fn of_pull_box(request: &PullBoxRequest) -> Vec<Sentence> {
    let key =
        if request.over_1000_volts { "situation-pull-box-over-1000-volts" } else { "situation-pull-box" };
    let entries = request.entries.iter().flat_map(|one| entry(one, request.units));
    let pulls = request.pulls.iter().map(pull);
    std::iter::once(Sentence::new(key)).chain(entries).chain(pulls).collect()
}

const fn wall(wall: Wall) -> &'static str {
    match wall {
        Wall::Left => "situation-wall-left",
        Wall::Right => "situation-wall-right",
        Wall::Top => "situation-wall-top",
        Wall::Bottom => "situation-wall-bottom",
        Wall::Back => "situation-wall-back",
    }
}

fn entry(entry: &Entry, units: Units) -> Vec<Sentence> {
    let id = entry.id.as_str();
    let mut sentences = Vec::new();
    if let Some(raceway) = &entry.raceway {
        let diameter =
            raceway.outside_diameter.map(|diameter| measured(diameter.value(), Measure::Length, units));
        let key = match (units, &diameter) {
            (Units::Us, None) => "situation-entry",
            (Units::Us, Some(_)) => "situation-entry-with-diameter",
            (Units::Si, None) => "situation-entry-metric",
            (Units::Si, Some(_)) => "situation-entry-metric-with-diameter",
        };
        let enters = Sentence::new(key).text("id", id).text("size", trade_size(raceway.trade_size, units));
        sentences.push(enters.word("wall", wall(entry.wall)).text_of("diameter", diameter));
    }
    if let Some(row) = entry.row {
        sentences
            .push(Sentence::new("situation-entry-row").text("id", id).text("row", row.get().to_string()));
    }
    sentences.extend(entry.cables_over_1000_volts.iter().map(|cable| {
        let key = match cable.covering {
            CableCovering::Shielded => "situation-cable-shielded",
            CableCovering::LeadCovered => "situation-cable-lead-covered",
            CableCovering::Nonshielded => "situation-cable-nonshielded",
        };
        let diameter = measured(cable.outside_diameter.value(), Measure::Length, units);
        Sentence::new(key).text("id", id).text("diameter", diameter)
    }));
    sentences
}

fn pull(pull: &Pull) -> Sentence {
    let ends: Vec<&str> = pull.entries.iter().map(|name| name.as_str()).collect();
    let (from, to) = (ends.first().copied().unwrap_or_default(), ends.last().copied().unwrap_or_default());
    let sentence = |key| Sentence::new(key).text("from", from).text("to", to);
    match pull.largest_conductor {
        Some(size) if pull.spliced => sentence("situation-pull-spliced").size(size),
        Some(size) => sentence("situation-pull").size(size),
        None => sentence("situation-pull-of-cable"),
    }
}
