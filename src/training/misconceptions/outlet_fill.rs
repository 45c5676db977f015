//! What learners get wrong about box fill, and about what a request says of a box.

use super::{outlet_enclosures as boxes, outlet_fill_rules as mutations};
use crate::checks::outlet_fill::{
    CableGrounding, CanopyKind, ClampKind, Conductor, Contents, Device, DeviceKind, Enclosure, Gangs,
    GroundingKind, Many, OutletFill, OutletFillOutcome, OutletFillRequest, Role, TallyLine,
};
use crate::derivation::Figure;
use crate::quantity::Units;
use crate::rulebook::outlet_fill::{
    CANOPY, CLAMPS, CONDUCTORS, DEVICES, GROUNDING, ISOLATED_SET, NOTHING, SUM, SUPPORT_FITTINGS,
    TERMINAL_BLOCKS,
};
use crate::rulebook::outlet_volume::{ASSEMBLY, BARRIER, MARKED, SCOPE, STANDARD};
use crate::trade::ConductorSize;
use crate::training::situation::{Sentence, of_outlet_box};
use crate::training::{Misconception, Quantity, Teachable};

type Wrong = Misconception<OutletFill>;

static MISCONCEPTIONS: &[Wrong] = &[
    Wrong::of_rules("grounding_each", &[&GROUNDING], mutations::grounding_each),
    Wrong::of_rules("device_one_allowance", &[&DEVICES], mutations::device_one_allowance),
    Wrong::of_rules("clamps_each", &[&CLAMPS], mutations::clamps_each),
    Wrong::of_rules("grounding_one_for_all", &[&GROUNDING], mutations::grounding_one_for_all),
    Wrong::of_rules("device_by_largest_in_box", &[&DEVICES], mutations::device_by_largest_in_box),
    Wrong::of_request("pigtails_counted", &[&CONDUCTORS], pigtails_counted),
    Wrong::of_rules("grounding_left_out", &[&GROUNDING], mutations::grounding_left_out),
    Wrong::of_rules("clamps_left_out", &[&CLAMPS], mutations::clamps_left_out),
    Wrong::of_request("grounding_pigtails_counted", &[&CONDUCTORS, &GROUNDING], grounding_pigtails_counted),
    Wrong::of_rules("device_left_out", &[&DEVICES], mutations::device_left_out),
    Wrong::of_rules("wire_connectors_counted", &[&NOTHING], mutations::wire_connectors_counted),
    Wrong::of_request("passing_counted_twice", &[&CONDUCTORS], passing_counted_twice),
    Wrong::of_rules("loop_counted_once", &[&CONDUCTORS], mutations::loop_counted_once),
    Wrong::of_request("everything_by_largest", &[&SUM], everything_by_largest),
    Wrong::of_request("everything_by_smallest", &[&SUM], everything_by_smallest),
    Wrong::of_request("splices_counted_once", &[&CONDUCTORS], splices_counted_once),
    Wrong::of_request("devices_on_one_yoke_each", &[&DEVICES], devices_on_one_yoke_each),
    Wrong::of_request("wide_device_as_one_gang", &[&DEVICES], wide_device_as_one_gang),
    Wrong::of_request("heavy_device_as_two_gang", &[&DEVICES], heavy_device_as_two_gang),
    Wrong::of_request("empty_gang_as_device", &[&DEVICES], empty_gang_as_device),
    Wrong::of_request("outside_connector_counted", &[&CLAMPS], outside_connector_counted),
    Wrong::of_rules("clamps_by_smallest", &[&CLAMPS], mutations::clamps_by_smallest),
    Wrong::of_rules("grounding_quarter_on_top", &[&GROUNDING], mutations::grounding_quarter_on_top),
    Wrong::of_rules("grounding_quarter_each", &[&GROUNDING], mutations::grounding_quarter_each),
    Wrong::of_rules("grounding_rounded_up", &[&GROUNDING], mutations::grounding_rounded_up),
    Wrong::of_rules("grounding_extra_own_size", &[&GROUNDING], mutations::grounding_extra_own_size),
    Wrong::of_rules(
        "grounding_by_circuit_conductor",
        &[&GROUNDING],
        mutations::grounding_by_circuit_conductor,
    ),
    Wrong::of_rules("grounding_quarters_too_early", &[&GROUNDING], mutations::grounding_quarters_too_early),
    Wrong::of_rules("isolated_set_on_top", &[&ISOLATED_SET, &GROUNDING], mutations::isolated_set_on_top),
    Wrong::of_rules("isolated_set_joined", &[&ISOLATED_SET], mutations::isolated_set_joined),
    Wrong::of_rules("short_loop_counted_twice", &[&CONDUCTORS], mutations::short_loop_counted_twice),
    Wrong::of_rules("support_fittings_as_one", &[&SUPPORT_FITTINGS], mutations::support_fittings_as_one),
    Wrong::of_rules("support_fittings_by_piece", &[&SUPPORT_FITTINGS], mutations::support_fittings_by_piece),
    Wrong::of_rules("canopy_wires_counted", &[&CANOPY], mutations::canopy_wires_counted),
    Wrong::of_rules("canopy_14_awg_left_out", &[&CANOPY], mutations::canopy_14_awg_left_out),
    Wrong::of_request("flat_luminaire_as_canopy", &[&CANOPY], flat_luminaire_as_canopy),
    Wrong::of_rules("terminal_block_too_early", &[&TERMINAL_BLOCKS], mutations::terminal_block_too_early),
    Wrong::of_rules("terminal_block_left_out", &[&TERMINAL_BLOCKS], mutations::terminal_block_left_out),
    Wrong::of_request("table_column_without_deductions", &[&SCOPE, &SUM], table_column_without_deductions)
        .only_for("further_conductors"),
    Wrong::of_request("outside_dimensions", &[&STANDARD], boxes::outside_dimensions),
    Wrong::of_request("sections_left_out", &[&ASSEMBLY], boxes::sections_left_out),
    Wrong::of_request("unmarked_section_credited", &[&ASSEMBLY], boxes::unmarked_section_credited),
    Wrong::of_request("mark_ignored", &[&MARKED], boxes::mark_ignored),
    Wrong::of_request("forty_percent_of_box", &[&SCOPE], boxes::forty_percent_of_box),
    Wrong::of_rules("barrier_ignored", &[&BARRIER], mutations::barrier_ignored),
    Wrong::of_rules("barrier_takes_nothing", &[&BARRIER], mutations::barrier_takes_nothing),
    Wrong::of_rules("barrier_as_metal", &[&BARRIER], mutations::barrier_as_metal),
    Wrong::edition_before("fill_by_edition_before", &[&GROUNDING, &TERMINAL_BLOCKS]),
];

impl Teachable for OutletFill {
    const QUANTITIES: &'static [Quantity<Self>] = &[
        Quantity::<Self>::sum("required_volume", required_volume),
        Quantity::<Self>::sum("available_volume", available_volume),
        Quantity::<Self>::new("further_conductors", further_conductors),
    ];
    const MISCONCEPTIONS: &'static [Misconception<Self>] = MISCONCEPTIONS;

    fn situation(request: &OutletFillRequest) -> Vec<Sentence> {
        of_outlet_box(request)
    }

    const HAS_TALLY: bool = true;

    fn tally(outcome: &OutletFillOutcome) -> Vec<&TallyLine> {
        outcome.spaces.iter().flat_map(|space| &space.tally).collect()
    }

    fn in_units(request: &mut OutletFillRequest, units: Units) -> bool {
        let sized = |enclosure: &Enclosure| {
            enclosure.marked_volume.is_some()
                || enclosure.inside_dimensions.is_some()
                || enclosure.barriers.iter().any(|barrier| barrier.marked_volume.is_some())
                || enclosure.sections.iter().any(|section| section.marked_volume.is_some())
        };
        let holds_sizes = |contents: &Contents| {
            contents.conductors.iter().any(|one| one.loop_length.is_some())
                || contents.clamps.iter().any(|clamp| clamp.volume.is_some())
        };
        let has_sizes = request.enclosure.as_ref().is_some_and(sized)
            || request.opening.is_some()
            || !request.amendments.is_empty()
            || !request.spaces.is_empty()
            || request.contents.as_ref().is_some_and(holds_sizes);
        request.units = units;
        !has_sizes
    }
}

fn required_volume(request: &OutletFillRequest, outcome: &OutletFillOutcome) -> Option<Figure> {
    let complete = !request.spaces.is_empty() || outcome.boxes.is_some();
    outcome.spaces.first().filter(|_| complete).map(|space| space.required)
}

fn available_volume(_: &OutletFillRequest, outcome: &OutletFillOutcome) -> Option<Figure> {
    outcome.spaces.first()?.available
}

/// How many more conductors fit, of the size that the first cable or conductor has.
fn further_conductors(request: &OutletFillRequest, outcome: &OutletFillOutcome) -> Option<Figure> {
    let contents = request.contents.as_ref()?;
    let cable = contents.cables.first().map(|cable| cable.size);
    let size = cable.or(contents.conductors.first().map(|conductor| conductor.size))?;
    let room = outcome.spaces.first()?.room_left.as_ref()?;
    room.iter().find(|room| room.size == size).map(|room| room.conductors)
}

/// The contents of a box, or of each of its spaces.
fn contents(request: &mut OutletFillRequest) -> impl Iterator<Item = &mut Contents> {
    request.contents.iter_mut().chain(request.spaces.iter_mut().map(|space| &mut space.contents))
}

/// Changes everything that a list of the contents holds; whether anything was changed.
pub(super) fn change<T>(items: &mut [T], mut changed: impl FnMut(&mut T) -> bool) -> bool {
    items.iter_mut().filter_map(|item| changed(item).then_some(())).count() > 0
}

/// Changes the contents; whether any were changed.
fn change_contents(request: &mut OutletFillRequest, mut changed: impl FnMut(&mut Contents) -> bool) -> bool {
    contents(request).filter_map(|contents| changed(contents).then_some(())).count() > 0
}

/// Puts one value for another; whether it stood there.
fn swap<T: PartialEq>(place: &mut T, from: T, to: T) -> bool {
    let stood = *place == from;
    if stood {
        *place = to;
    }
    stood
}

fn times(count: Option<Many>, factor: u32) -> Option<Many> {
    Many::new(count.map_or(1, Many::get).saturating_mul(factor)).or(count)
}

fn pigtails_counted(request: &mut OutletFillRequest) -> bool {
    change_contents(request, |contents| {
        change(&mut contents.conductors, |one| swap(&mut one.role, Role::StaysInside, Role::Terminated))
    })
}

fn grounding_pigtails_counted(request: &mut OutletFillRequest) -> bool {
    change_contents(request, |contents| {
        change(&mut contents.grounding, |one| {
            swap(&mut one.kind, GroundingKind::StaysInside, GroundingKind::EquipmentGrounding)
        })
    })
}

fn passing_counted_twice(request: &mut OutletFillRequest) -> bool {
    change_contents(request, |contents| {
        change(&mut contents.conductors, |one| {
            let passes = one.role == Role::PassesThrough;
            if passes {
                one.count = times(one.count, 2);
            }
            passes
        })
    })
}

fn splices_counted_once(request: &mut OutletFillRequest) -> bool {
    let halved = |one: &mut Conductor| {
        let count = one.count.map_or(1, Many::get);
        let in_pairs = one.role == Role::Spliced && count.is_multiple_of(2);
        if in_pairs {
            one.count = Many::new(count / 2);
        }
        in_pairs
    };
    change_contents(request, |contents| change(&mut contents.conductors, halved))
}

fn change_devices(request: &mut OutletFillRequest, mut changed: impl FnMut(&mut Device) -> bool) -> bool {
    change_contents(request, |contents| change(&mut contents.devices, &mut changed))
}

fn devices_on_one_yoke_each(request: &mut OutletFillRequest) -> bool {
    change_devices(request, |device| {
        let several = device.kind == DeviceKind::Combination;
        if several {
            device.count = times(device.count, 2);
        }
        several
    })
}

fn wide_device_as_one_gang(request: &mut OutletFillRequest) -> bool {
    change_devices(request, |device| device.gangs.take().is_some_and(|gangs| gangs.get() > 1))
}

fn heavy_device_as_two_gang(request: &mut OutletFillRequest) -> bool {
    change_devices(request, |device| {
        let heavy = device.largest_conductor > ConductorSize::read("12 AWG");
        let narrow = device.gangs.is_none_or(|gangs| gangs.get() == 1);
        let taken = device.kind == DeviceKind::Receptacle && heavy && narrow;
        if taken {
            device.gangs = Gangs::new(2);
        }
        taken
    })
}

/// A gang without a device, closed by a plate, is counted as if it had one.
fn empty_gang_as_device(request: &mut OutletFillRequest) -> bool {
    let Some(gangs) = request.enclosure.as_ref().and_then(|enclosure| enclosure.gangs) else { return false };
    let Some(contents) = &mut request.contents else { return false };
    let taken: u32 = contents
        .devices
        .iter()
        .map(|device| device.gangs.map_or(1, Gangs::get) * device.count.map_or(1, Many::get))
        .sum();
    let Some(largest) = sizes(contents).max() else { return false };
    let empty = gangs.get().saturating_sub(taken);
    if empty > 0 {
        contents.devices.push(Device {
            id: None,
            kind: DeviceKind::Equipment,
            largest_conductor: Some(largest),
            factory_leads: None,
            gangs: None,
            count: Many::new(empty),
        });
    }
    empty > 0
}

fn outside_connector_counted(request: &mut OutletFillRequest) -> bool {
    change_contents(request, |contents| {
        change(&mut contents.clamps, |clamp| swap(&mut clamp.kind, ClampKind::External, ClampKind::Internal))
    })
}

fn flat_luminaire_as_canopy(request: &mut OutletFillRequest) -> bool {
    change_contents(request, |contents| {
        contents.canopy.as_mut().is_some_and(|canopy| {
            swap(&mut canopy.kind, CanopyKind::FlatLuminaire, CanopyKind::DomedLuminaire)
        })
    })
}

/// The sizes of everything in a box.
fn sizes(contents: &Contents) -> impl Iterator<Item = ConductorSize> {
    let conductors = contents.conductors.iter().map(|one| one.size);
    let cables = contents
        .cables
        .iter()
        .flat_map(|cable| [cable.grounding.and_then(CableGrounding::size), Some(cable.size)])
        .flatten();
    let grounding = contents.grounding.iter().map(|one| one.size);
    let devices = contents.devices.iter().filter_map(|device| device.largest_conductor);
    conductors.chain(cables).chain(grounding).chain(devices)
}

fn everything_by_largest(request: &mut OutletFillRequest) -> bool {
    change_contents(request, |contents| {
        let largest = sizes(contents).max();
        everything_by(contents, largest)
    })
}

fn everything_by_smallest(request: &mut OutletFillRequest) -> bool {
    change_contents(request, |contents| {
        let smallest = sizes(contents).min();
        everything_by(contents, smallest)
    })
}

fn everything_by(contents: &mut Contents, size: Option<ConductorSize>) -> bool {
    let Some(size) = size else { return false };
    let mixed = sizes(contents).any(|other| other != size);
    contents.conductors.iter_mut().for_each(|one| one.size = size);
    for cable in &mut contents.cables {
        cable.size = size;
        if cable.grounding.is_some_and(|grounding| grounding.size().is_some()) {
            cable.grounding = Some(CableGrounding::Size(size));
        }
    }
    contents.grounding.iter_mut().for_each(|one| one.size = size);
    contents.devices.iter_mut().for_each(|device| device.largest_conductor = Some(size));
    mixed
}

/// The printed count of a table is for conductors alone: read by itself, everything else in the box is forgotten.
fn table_column_without_deductions(request: &mut OutletFillRequest) -> bool {
    change_contents(request, |contents| {
        let none_before = contents.cables.iter().all(|cable| cable.grounding == Some(CableGrounding::None))
            && contents.grounding.is_empty()
            && contents.clamps.is_empty()
            && contents.support_fittings.is_empty()
            && contents.devices.is_empty()
            && contents.terminal_blocks.is_empty()
            && contents.canopy.is_none();
        for cable in &mut contents.cables {
            (cable.grounding, cable.existing_cable) = (Some(CableGrounding::None), Some(true));
        }
        contents.grounding.clear();
        contents.clamps.clear();
        contents.support_fittings.clear();
        contents.devices.clear();
        contents.terminal_blocks.clear();
        contents.canopy = None;
        !none_before
    })
}
