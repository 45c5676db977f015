//! What is in an outlet box, told.

use super::{Sentence, measured, outlet_enclosures, place};
use crate::checks::outlet_fill::{
    Cable, Canopy, CanopyKind, Clamp, ClampKind, Conductor, Contents, Device, DeviceKind, Gangs, Grounding,
    GroundingKind, Many, OutletFillRequest, Role, SmallPart, SmallPartKind, SupportFitting,
    SupportFittingKind, TerminalBlock,
};
use crate::quantity::{Measure, Units};

/// The situation of an outlet box.
pub fn of_outlet_box(request: &OutletFillRequest) -> Vec<Sentence> {
    let mut sentences: Vec<Sentence> = place(request.reference.as_ref()).into_iter().collect();
    if let Some(enclosure) = &request.enclosure {
        sentences.extend(outlet_enclosures::of_enclosure(enclosure, request.units));
    }
    if let Some(contents) = &request.contents {
        sentences.extend(of_contents(contents, request.units));
    }
    for space in &request.spaces {
        let gangs = space.gangs.map_or(1, Gangs::get);
        sentences.push(Sentence::new("situation-space").count(gangs).text("space", space.id.as_str()));
        sentences.extend(of_contents(&space.contents, request.units));
    }
    sentences
}

fn many(count: Option<Many>) -> u32 {
    count.map_or(1, Many::get)
}

fn of_contents(contents: &Contents, units: Units) -> Vec<Sentence> {
    let conductors = contents.conductors.iter().map(|one| conductor(one, units));
    let fittings = contents.support_fittings.iter().map(support_fitting);
    let blocks = contents.terminal_blocks.iter().map(terminal_block);
    contents
        .cables
        .iter()
        .map(cable)
        .chain(conductors)
        .chain(contents.grounding.iter().map(grounding))
        .chain(contents.devices.iter().map(device))
        .chain(contents.clamps.iter().map(clamp))
        .chain(fittings)
        .chain(blocks)
        .chain(contents.canopy.iter().flat_map(canopy))
        .chain(contents.small_parts.iter().map(small_part))
        .collect()
}

fn cable(cable: &Cable) -> Sentence {
    let conductors = cable.conductors.get().to_string();
    let key = if cable.grounding.is_some() { "situation-cable" } else { "situation-cable-without-ground" };
    let sentence =
        Sentence::new(key).count(many(cable.count)).size(cable.size).text("conductors", conductors);
    match cable.grounding {
        Some(size) => sentence.text("grounding", size.name()),
        None => sentence,
    }
}

fn conductor(one: &Conductor, units: Units) -> Sentence {
    let key = match one.role {
        Role::Terminated => "situation-conductors-end",
        Role::Spliced => "situation-conductors-spliced",
        Role::PassesThrough => "situation-conductors-pass",
        Role::Loop => "situation-conductors-loop",
        Role::StaysInside => "situation-pigtails",
    };
    let sentence = Sentence::new(key).count(many(one.count)).size(one.size);
    match one.loop_length {
        Some(length) => sentence.text("length", measured(length.value(), Measure::Length, units)),
        None => sentence,
    }
}

fn grounding(one: &Grounding) -> Sentence {
    let key = match one.kind {
        GroundingKind::EquipmentGrounding => "situation-grounding",
        GroundingKind::BondingJumper => "situation-bonding-jumpers",
        GroundingKind::Isolated => "situation-isolated-grounding",
        GroundingKind::StaysInside => "situation-grounding-pigtails",
    };
    Sentence::new(key).count(many(one.count)).size(one.size)
}

fn device(device: &Device) -> Sentence {
    let name = match device.kind {
        DeviceKind::Switch => "situation-device-switch",
        DeviceKind::Receptacle => "situation-device-receptacle",
        DeviceKind::Combination => "situation-device-combination",
        DeviceKind::ProtectiveDevice => "situation-device-protective",
        DeviceKind::Control => "situation-device-control",
        DeviceKind::Equipment => "situation-device-equipment",
    };
    let size = device.largest_conductor.map_or("", |size| size.name());
    let gangs = device.gangs.map_or(1, Gangs::get);
    let key = if gangs > 1 { "situation-device-wide" } else { "situation-device" };
    let sentence = Sentence::new(key).count(many(device.count)).word("device", name).text("size", size);
    if gangs > 1 { sentence.text("gangs", gangs.to_string()) } else { sentence }
}

fn clamp(clamp: &Clamp) -> Sentence {
    let key = match clamp.kind {
        ClampKind::Internal => "situation-clamps-internal",
        ClampKind::Molded => "situation-clamps-molded",
        ClampKind::External => "situation-clamps-external",
        ClampKind::TerminatingAssembly => "situation-clamps-assembly",
    };
    Sentence::new(key).count(many(clamp.count))
}

fn support_fitting(fitting: &SupportFitting) -> Sentence {
    let key = match fitting.kind {
        SupportFittingKind::Stud => "situation-studs",
        SupportFittingKind::Hickey => "situation-hickeys",
    };
    Sentence::new(key).count(many(fitting.count))
}

fn terminal_block(block: &TerminalBlock) -> Sentence {
    let size = block.largest_conductor.map_or("", |size| size.name());
    Sentence::new("situation-terminal-blocks").count(many(block.count)).text("size", size)
}

fn canopy(canopy: &Canopy) -> Vec<Sentence> {
    let key = match canopy.kind {
        CanopyKind::DomedLuminaire => "situation-canopy-domed",
        CanopyKind::FlatLuminaire => "situation-canopy-flat",
        CanopyKind::CeilingFan => "situation-canopy-fan",
    };
    let wires = canopy
        .fixture_wires
        .iter()
        .map(|wires| Sentence::new("situation-fixture-wires").count(many(wires.count)).size(wires.size));
    let grounding = canopy
        .grounding
        .iter()
        .map(|wires| Sentence::new("situation-fixture-grounding").count(many(wires.count)).size(wires.size));
    std::iter::once(Sentence::new(key)).chain(wires).chain(grounding).collect()
}

fn small_part(part: &SmallPart) -> Sentence {
    let key = match part.kind {
        SmallPartKind::WireConnector => "situation-wire-connectors",
        _ => "situation-small-parts",
    };
    Sentence::new(key).count(many(part.count))
}
