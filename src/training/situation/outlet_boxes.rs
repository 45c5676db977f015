//! What is in an outlet box, in sentences.

use super::{Sentence, counted, measured, outlet_enclosures, place};
use crate::checks::outlet_fill::{
    Cable, CableGrounding, Canopy, CanopyKind, Clamp, ClampKind, Conductor, Contents, Device, DeviceKind,
    Gangs, Grounding, GroundingKind, OutletFillRequest, Role, SmallPart, SmallPartKind, SupportFitting,
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

fn of_contents(contents: &Contents, units: Units) -> Vec<Sentence> {
    let conductors = contents.conductors.iter().map(|one| conductor(one, units));
    contents
        .cables
        .iter()
        .map(cable)
        .chain(conductors)
        .chain(contents.grounding.iter().map(grounding))
        .chain(contents.devices.iter().map(device))
        .chain(contents.clamps.iter().map(clamp))
        .chain(contents.support_fittings.iter().map(support_fitting))
        .chain(contents.terminal_blocks.iter().map(terminal_block))
        .chain(contents.canopy.iter().flat_map(canopy))
        .chain(contents.small_parts.iter().map(small_part))
        .collect()
}

fn cable(cable: &Cable) -> Sentence {
    let conductors = cable.conductors.get().to_string();
    let grounding = cable.grounding.and_then(CableGrounding::size);
    let key = if grounding.is_some() { "situation-cable" } else { "situation-cable-without-ground" };
    let sentence = counted(key, cable.count).size(cable.size).text("conductors", conductors);
    sentence.text_of("grounding", grounding.map(|size| size.name()))
}

fn conductor(one: &Conductor, units: Units) -> Sentence {
    let key = match one.role {
        Role::Terminated => "situation-conductors-end",
        Role::Spliced => "situation-conductors-spliced",
        Role::PassesThrough => "situation-conductors-pass",
        Role::Loop => "situation-conductors-loop",
        Role::StaysInside => "situation-pigtails",
    };
    let length = one.loop_length.map(|length| measured(length.value(), Measure::Length, units));
    counted(key, one.count).size(one.size).text_of("length", length)
}

fn grounding(one: &Grounding) -> Sentence {
    let key = match one.kind {
        GroundingKind::EquipmentGrounding => "situation-grounding",
        GroundingKind::BondingJumper => "situation-bonding-jumpers",
        GroundingKind::Isolated => "situation-isolated-grounding",
        GroundingKind::StaysInside => "situation-grounding-pigtails",
    };
    counted(key, one.count).size(one.size)
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
    let sentence = counted(key, device.count).word("device", name).text("size", size);
    sentence.text_of("gangs", (gangs > 1).then(|| gangs.to_string()))
}

fn clamp(clamp: &Clamp) -> Sentence {
    let key = match clamp.kind {
        ClampKind::Internal => "situation-clamps-internal",
        ClampKind::Molded => "situation-clamps-molded",
        ClampKind::External => "situation-clamps-external",
        ClampKind::TerminatingAssembly => "situation-clamps-assembly",
    };
    counted(key, clamp.count)
}

fn support_fitting(fitting: &SupportFitting) -> Sentence {
    let key = match fitting.kind {
        SupportFittingKind::Stud => "situation-studs",
        SupportFittingKind::Hickey => "situation-hickeys",
    };
    counted(key, fitting.count)
}

fn terminal_block(block: &TerminalBlock) -> Sentence {
    let size = block.largest_conductor.map_or("", |size| size.name());
    counted("situation-terminal-blocks", block.count).text("size", size)
}

fn canopy(canopy: &Canopy) -> Vec<Sentence> {
    let key = match canopy.kind {
        CanopyKind::DomedLuminaire => "situation-canopy-domed",
        CanopyKind::FlatLuminaire => "situation-canopy-flat",
        CanopyKind::CeilingFan => "situation-canopy-fan",
    };
    let wires = canopy.fixture_wires.iter();
    let wires = wires.map(|wires| counted("situation-fixture-wires", wires.count).size(wires.size));
    let grounding = canopy.grounding.iter();
    let grounding =
        grounding.map(|wires| counted("situation-fixture-grounding", wires.count).size(wires.size));
    std::iter::once(Sentence::new(key)).chain(wires).chain(grounding).collect()
}

fn small_part(part: &SmallPart) -> Sentence {
    let is_connector = part.kind == SmallPartKind::WireConnector;
    counted(if is_connector { "situation-wire-connectors" } else { "situation-small-parts" }, part.count)
}
