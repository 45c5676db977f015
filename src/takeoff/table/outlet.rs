//! A row about an outlet box.

use super::cells::{ambiguous, not_understood, plain, unknown};
use super::{Column, Draft, conductors, standard};
use crate::checks::FaultCode;
use crate::quantity::Measure;
use crate::tables::standard_boxes::StandardBox;
use crate::trade::ConductorSize;
use serde_json::{Map, Value, json};

/// Reads the row.
pub(super) fn read(draft: &mut Draft<'_>) {
    standard_box(draft);
    if let Some(gangs) = gangs(draft) {
        draft.put(Column::Gangs, "/enclosure/gangs", gangs.into());
    }
    if let Some(mark) = draft.cells.measured(Column::MarkedVolume, Measure::Volume, &mut draft.faults) {
        draft.put(Column::MarkedVolume, "/enclosure/marked_volume", mark);
    }
    material(draft);
    for (column, kind) in [
        (Column::RingVolume, "plaster_ring"),
        (Column::ExtensionVolume, "extension_ring"),
        (Column::CoverVolume, "raised_cover"),
    ] {
        if let Some(volume) = draft.cells.measured(column, Measure::Volume, &mut draft.faults) {
            draft.push(column, "/enclosure/sections", json!({"kind": kind, "marked_volume": volume}));
        }
    }
    // a row without a word about contents says nothing of them
    draft.request.insert("contents".to_owned(), Value::Object(Map::new()));
    conductors::cables(draft);
    conductors::in_box(draft);
    conductors::grounds(draft);
    devices(draft);
    clamps(draft);
    fittings(draft);
}

fn standard_box(draft: &mut Draft<'_>) {
    let Some(given) = draft.cells.get(Column::Box) else { return };
    match standard::meant(given).as_slice() {
        [only] => draft.put(Column::Box, "/enclosure/standard", only.key().into()),
        [] => {
            let accepted = StandardBox::all().map(StandardBox::key);
            unknown(&mut draft.faults, Column::Box, FaultCode::UnknownStandardBox, given, accepted);
        }
        several => {
            ambiguous(&mut draft.faults, Column::Box, given, several.iter().map(|known| known.key()));
        }
    }
}

/// `2`, `2 gang`, `2-gang`.
fn gangs(draft: &mut Draft<'_>) -> Option<u32> {
    let given = draft.cells.get(Column::Gangs)?;
    let spelled = plain(given);
    let number = spelled.trim_end_matches("gangs").trim_end_matches("gang").parse().ok();
    // a point or a sign would be lost with the other marks
    let number = number.filter(|_| !given.contains(['.', '/']) && !given.starts_with('-'));
    if number.is_none() {
        not_understood(&mut draft.faults, Column::Gangs, given, ["1", "2", "3"]);
    }
    number
}

fn material(draft: &mut Draft<'_>) {
    let Some(given) = draft.cells.get(Column::Material) else { return };
    let material = match plain(given).as_str() {
        "metal" | "steel" | "aluminum" | "castiron" => "metal",
        "nonmetallic" | "plastic" | "fiberglass" | "pvc" | "nm" => "nonmetallic",
        _ => {
            not_understood(&mut draft.faults, Column::Material, given, ["metal", "nonmetallic"]);
            return;
        }
    };
    draft.put(Column::Material, "/enclosure/material", material.into());
}

const DEVICES: [&str; 6] =
    ["receptacle 12", "switch 14", "gfci 12", "dimmer 14", "combination 14", "equipment 12"];

/// `receptacle 12; 2 x switch 14`.
fn devices(draft: &mut Draft<'_>) {
    for listed in draft.cells.list(Column::Devices) {
        let mut kinds: Vec<&str> = Vec::new();
        let mut size: Vec<&str> = Vec::new();
        for word in listed.words.split_whitespace() {
            match word {
                "receptacle" | "receptacles" | "recept" | "duplex" => kinds.push("receptacle"),
                "switch" | "switches" | "3-way" | "4-way" => kinds.push("switch"),
                "gfci" | "afci" | "gfi" => kinds.push("protective_device"),
                "dimmer" | "timer" | "sensor" | "control" => kinds.push("control"),
                "combination" | "combo" => kinds.push("combination"),
                "equipment" => kinds.push("equipment"),
                other => size.push(other),
            }
        }
        // `gfci receptacle`: the more special word says what it is
        if kinds.len() > 1 {
            kinds.retain(|kind| *kind != "receptacle");
        }
        kinds.dedup();
        let largest = ConductorSize::read(&size.join(" "));
        let (&[kind], true) = (kinds.as_slice(), size.is_empty() || largest.is_some()) else {
            not_understood(&mut draft.faults, Column::Devices, listed.text, DEVICES);
            continue;
        };
        let mut device = json!({"kind": kind});
        if let Some(largest) = largest {
            device["largest_conductor"] = largest.name().into();
        }
        draft.push(Column::Devices, "/contents/devices", listed.counted(device));
    }
}

/// Internal clamps: yes, no, or how many.
fn clamps(draft: &mut Draft<'_>) {
    let Some(given) = draft.cells.get(Column::Clamps) else { return };
    let mut clamp = json!({"kind": "internal"});
    match given.parse::<u32>() {
        Ok(0) => return draft.put(Column::Clamps, "/contents/clamps", json!([])),
        Ok(number) => clamp["count"] = number.into(),
        Err(_) => match draft.cells.yes_or_no(Column::Clamps, &mut draft.faults) {
            Some(true) => {}
            Some(false) => return draft.put(Column::Clamps, "/contents/clamps", json!([])),
            None => return,
        },
    }
    draft.push(Column::Clamps, "/contents/clamps", clamp);
}

fn fittings(draft: &mut Draft<'_>) {
    for listed in draft.cells.list(Column::Fittings) {
        let kind = match plain(&listed.words).trim_end_matches('s') {
            "stud" | "fixturestud" | "luminairestud" => "stud",
            "hickey" => "hickey",
            _ => {
                not_understood(&mut draft.faults, Column::Fittings, listed.text, ["stud", "hickey"]);
                continue;
            }
        };
        draft.push(Column::Fittings, "/contents/support_fittings", listed.counted(json!({"kind": kind})));
    }
}
