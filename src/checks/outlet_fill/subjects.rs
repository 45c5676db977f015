//! What a request about an outlet box describes, and the rules that each thing in it raises.

use super::request::{
    CableGrounding, CableKind, ClampKind, Contents, GroundingKind, OutletFillRequest, Role, TerminalBlockKind,
};
use crate::checks::{InScope, Subject};
use crate::rulebook::outlet_fill::{
    ALLOWANCE, CANOPY, CLAMP_ASSEMBLY, CLAMPS, CONDUCTORS, DEVICES, GROUNDING, ISOLATED_SET, NM_GROUNDING,
    NOTHING, SUPPORT_FITTINGS, TERMINAL_BLOCKS,
};
use crate::rulebook::outlet_volume::{ASSEMBLY, BARRIER, MARKED, SCOPE, STANDARD};
use crate::rulebook::{geometry, pull};
use crate::trade::ConductorSize;

/// One subject: the volume of a box and what takes room in it.
pub(super) static SUBJECTS: [Subject<OutletFillRequest>; 1] = [Subject {
    name: "volume",
    is_described: |request| request.enclosure.is_some(),
    scope: &[
        InScope::always(&SCOPE),
        InScope::when(|request| of_box(request, |enclosure| enclosure.standard.is_some()), &STANDARD),
        InScope::when(is_marked_or_measured, &MARKED),
        InScope::when(|request| of_box(request, |enclosure| !enclosure.sections.is_empty()), &ASSEMBLY),
        InScope::when(|request| of_box(request, |enclosure| !enclosure.barriers.is_empty()), &BARRIER),
        InScope::when(
            |request| of_box(request, |enclosure| !enclosure.barriers.is_empty()),
            &geometry::BARRIERS,
        ),
        InScope::when(|request| any(request, |contents| !contents.devices.is_empty()), &geometry::GANGS),
        InScope::when(|request| any(request, has_conductors), &CONDUCTORS),
        InScope::when(|request| any(request, has_sizes), &ALLOWANCE),
        InScope::when(|request| any(request, |contents| contents.canopy.is_some()), &CANOPY),
        InScope::when(|request| any(request, may_have_clamps), &CLAMPS),
        InScope::when(|request| any(request, has_assemblies), &CLAMP_ASSEMBLY),
        InScope::when(
            |request| any(request, |contents| !contents.support_fittings.is_empty()),
            &SUPPORT_FITTINGS,
        ),
        InScope::when(|request| any(request, |contents| !contents.devices.is_empty()), &DEVICES),
        InScope::when(|request| any(request, has_grounding), &GROUNDING),
        InScope::when(|request| any(request, has_nm_without_grounding_size), &NM_GROUNDING),
        InScope::when(|request| any(request, has_isolated_set), &ISOLATED_SET),
        InScope::when(|request| any(request, has_terminal_blocks), &TERMINAL_BLOCKS),
        InScope::when(|request| any(request, |contents| !contents.small_parts.is_empty()), &NOTHING),
        InScope::when(|request| any(request, has_large_conductors), &pull::APPLIES),
    ],
}];

fn of_box(request: &OutletFillRequest, has: fn(&super::Enclosure) -> bool) -> bool {
    request.enclosure.as_ref().is_some_and(has)
}

fn any(request: &OutletFillRequest, has: fn(&Contents) -> bool) -> bool {
    request.contents.iter().chain(request.spaces.iter().map(|space| &space.contents)).any(has)
}

fn is_marked_or_measured(request: &OutletFillRequest) -> bool {
    of_box(request, |enclosure| enclosure.standard.is_none() || enclosure.marked_volume.is_some())
}

fn has_conductors(contents: &Contents) -> bool {
    !contents.conductors.is_empty() || !contents.cables.is_empty()
}

/// Whether a conductor in the box is small enough to take an allowance.
fn has_sizes(contents: &Contents) -> bool {
    let loose = contents.conductors.iter().filter(|one| one.role != Role::StaysInside).map(|one| one.size);
    let of_cables = contents.cables.iter().map(|cable| cable.size);
    loose.chain(of_cables).any(|size| size < ConductorSize::AWG_4)
}

fn has_large_conductors(contents: &Contents) -> bool {
    let loose = contents.conductors.iter().filter(|one| one.role != Role::StaysInside).map(|one| one.size);
    let of_cables = contents.cables.iter().map(|cable| cable.size);
    let grounding = contents.cables.iter().filter_map(|cable| cable.grounding?.size());
    loose.chain(of_cables).chain(grounding).any(|size| size >= ConductorSize::AWG_4)
}

fn may_have_clamps(contents: &Contents) -> bool {
    let takes_allowance = contents.clamps.iter().any(|clamp| clamp.kind != ClampKind::TerminatingAssembly);
    takes_allowance || contents.leaves_clamps_unsaid()
}

fn has_assemblies(contents: &Contents) -> bool {
    contents.clamps.iter().any(|clamp| clamp.kind == ClampKind::TerminatingAssembly)
}

fn has_grounding(contents: &Contents) -> bool {
    let loose = contents.grounding.iter().any(|one| one.kind != GroundingKind::StaysInside);
    // what a cable larger than the table leaves unsaid is for the pull-box rules
    let of_cables =
        contents.cables.iter().any(|cable| cable.grounding.is_some() || cable.size < ConductorSize::AWG_4);
    loose || of_cables
}

fn has_nm_without_grounding_size(contents: &Contents) -> bool {
    contents.cables.iter().any(|cable| {
        let is_unsaid = cable.grounding.is_none()
            && cable.existing_cable != Some(true)
            && cable.size < ConductorSize::AWG_4;
        cable.kind == CableKind::NmB && (is_unsaid || cable.grounding == Some(CableGrounding::None))
    })
}

/// Whether isolated grounding conductors are a set beside others.
fn has_isolated_set(contents: &Contents) -> bool {
    let isolated = contents.grounding.iter().any(|one| one.kind == GroundingKind::Isolated);
    let plain = contents
        .grounding
        .iter()
        .any(|one| !matches!(one.kind, GroundingKind::Isolated | GroundingKind::StaysInside));
    isolated && plain
}

fn has_terminal_blocks(contents: &Contents) -> bool {
    contents.terminal_blocks.iter().any(|block| block.kind == TerminalBlockKind::TerminalBlock)
}
