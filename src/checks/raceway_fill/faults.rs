//! What can be wrong with a request that decoded.

use super::RacewayFill;
use super::permitted;
use super::request::{
    BareConductor, BareConstruction, MOST_CONDUCTORS, MOST_ITEMS, RacewayCable, RacewayConductor,
    RacewayFillRequest, Wires,
};
use crate::checks::{FaultCode, Faults, rulebook_of};
use crate::derivation::Pointer;
use crate::quantity::{Decimal, Length, Units};
use crate::tables::{bare_conductor_dimensions, compact_conductor_dimensions, conductor_dimensions};
use crate::trade::{ConductorSize, RacewayKind};
use FaultCode::Conflict;

/// The largest diameter of a cable or conductor, in inches or millimetres. The largest raceway of the tables is 161 mm
/// inside, and one cable may take 53 % of that: none over 117 mm fits anywhere.
const LARGEST_DIAMETER: i32 = 120;

pub(super) fn find(request: &RacewayFillRequest, faults: &mut Faults) {
    let RacewayFillRequest {
        edition,
        accept_unverified_rules: _,
        units,
        reference: _,
        amendments: _,
        interpretations: _,
        raceway,
        conductors,
        bare_conductors,
        cables,
        measured_conductors,
        kinds,
    } = request;
    faults.at_most(Pointer::to(&"/conductors"), conductors.len(), MOST_ITEMS);
    faults.at_most(Pointer::to(&"/bare_conductors"), bare_conductors.len(), MOST_ITEMS);
    faults.at_most(Pointer::to(&"/cables"), cables.len(), MOST_ITEMS);
    faults.at_most(Pointer::to(&"/measured_conductors"), measured_conductors.len(), MOST_ITEMS);
    faults.at_most(Pointer::to(&"/kinds"), kinds.len(), RacewayKind::COUNT);
    let counts = conductors
        .iter()
        .map(|one| one.count)
        .chain(bare_conductors.iter().map(|one| one.count))
        .chain(cables.iter().map(|one| one.count))
        .chain(measured_conductors.iter().map(|one| one.count));
    let together: u64 = counts.map(|count| u64::from(count.map_or(1, Wires::get))).sum();
    if together == 0 {
        faults.add(Pointer::ROOT, FaultCode::MissingMember, "fault-nothing-in-raceway");
    }
    if together > u64::from(MOST_CONDUCTORS) {
        faults.add(Pointer::ROOT, FaultCode::OutOfBounds, "fault-too-many-conductors").arguments =
            vec![("number", together.to_string()), ("most", MOST_CONDUCTORS.to_string())];
    }
    if let Some((kind, size)) = raceway.and_then(|raceway| Some((raceway.kind, raceway.trade_size?)))
        && !permitted::is_over_largest(*edition, kind, size)
    {
        permitted::faults(kind, size, Pointer::to(&"/raceway/trade_size"), faults);
    }
    if let Some((length, Some(false))) = raceway.and_then(|raceway| Some((raceway.length?, raceway.nipple))) {
        let book = rulebook_of::<RacewayFill>(request, *edition);
        let (longest, _) = book.value(&book.raceway_fill.nipple_length, *units);
        if length.value() <= longest {
            let (nipple, length) = (Pointer::to(&"/raceway/nipple"), Pointer::to(&"/raceway/length"));
            faults.contradiction(nipple, length, "fault-short-and-no-nipple");
        }
    }
    for (index, conductor) in conductors.iter().enumerate() {
        of_conductor(conductor, *units, Pointer::of(&"/conductors/#", index), faults);
    }
    for (index, bare) in bare_conductors.iter().enumerate() {
        of_bare(bare, Pointer::of(&"/bare_conductors/#", index), faults);
    }
    for (index, cable) in cables.iter().enumerate() {
        of_cable(cable, Pointer::of(&"/cables/#", index), faults);
    }
    for (index, measured) in measured_conductors.iter().enumerate() {
        let at = Pointer::of(&"/measured_conductors/#", index).member(&"/diameter");
        of_diameter(measured.diameter, at, faults);
    }
}

fn of_conductor(conductor: &RacewayConductor, units: Units, item: Pointer, faults: &mut Faults) {
    let RacewayConductor { insulation, size, covering, compact, equipment_grounding: _, count: _ } =
        *conductor;
    if compact && compact_conductor_dimensions::sizes(insulation).next().is_none() {
        let fault = faults.add(item.member(&"/compact"), Conflict, "fault-type-not-compact");
        fault.arguments = vec![("insulation", insulation.letters().to_owned())];
        fault.accepted =
            compact_conductor_dimensions::types().map(|known| known.letters().to_owned()).collect();
        return;
    }
    let both_ways = insulation.is_made_with_and_without_covering();
    if both_ways && covering.is_none() {
        let fault =
            faults.add(item.member(&"/covering"), FaultCode::MissingMember, "fault-covering-not-said");
        fault.arguments = vec![("insulation", insulation.letters().to_owned())];
        fault.accepted = vec!["with".to_owned(), "without".to_owned()];
        return;
    }
    if !both_ways && covering.is_some() {
        faults.add(item.member(&"/covering"), Conflict, "fault-covering-of-other-type").arguments =
            vec![("insulation", insulation.letters().to_owned())];
    }
    let dimensions = |size| match compact {
        true => compact_conductor_dimensions::of(insulation, size, units),
        false => conductor_dimensions::of(insulation, covering, size, units),
    };
    if dimensions(size).is_none() {
        let fault = faults.add(item.member(&"/size"), Conflict, "fault-size-of-insulation");
        fault.arguments =
            vec![("insulation", insulation.letters().to_owned()), ("size", size.name().to_owned())];
        fault.accepted = names(ConductorSize::all().filter(|size| dimensions(*size).is_some()));
    }
}

fn of_bare(bare: &BareConductor, item: Pointer, faults: &mut Faults) {
    let accepted: Vec<ConductorSize> = match bare.construction {
        BareConstruction::Solid => bare_conductor_dimensions::sizes(false).collect(),
        BareConstruction::Stranded => bare_conductor_dimensions::sizes(true).collect(),
        BareConstruction::Compact => ConductorSize::all()
            .filter(|size| compact_conductor_dimensions::bare(*size, Units::Us).is_some())
            .collect(),
    };
    if !accepted.contains(&bare.size) {
        let fault = faults.add(item.member(&"/size"), Conflict, "fault-size-of-construction");
        fault.arguments = vec![("size", bare.size.name().to_owned())];
        fault.accepted = names(accepted.into_iter());
    }
}

fn of_cable(cable: &RacewayCable, item: Pointer, faults: &mut Faults) {
    let RacewayCable { diameter, major_diameter, count: _ } = cable;
    match (diameter, major_diameter) {
        (None, None) => {
            faults.add(item, FaultCode::MissingMember, "fault-cable-without-diameter");
        }
        (Some(_), Some(_)) => {
            faults.add(item.member(&"/major_diameter"), Conflict, "fault-cable-with-two-diameters");
        }
        _ => {}
    }
    for (given, member) in [(diameter, &"/diameter"), (major_diameter, &"/major_diameter")] {
        if let Some(diameter) = given {
            of_diameter(*diameter, item.member(member), faults);
        }
    }
}

fn of_diameter(diameter: Length, at: Pointer, faults: &mut Faults) {
    if diameter.value() > Decimal::whole(LARGEST_DIAMETER) {
        faults.add(at, FaultCode::OutOfBounds, "fault-diameter-too-large").arguments =
            vec![("most", LARGEST_DIAMETER.to_string())];
    }
}

fn names(sizes: impl Iterator<Item = ConductorSize>) -> Vec<String> {
    sizes.map(|size| size.name().to_owned()).collect()
}
