//! What a request can describe, and the rules in its scope.

use super::request::{
    BoxSupportsRequest as Request, HeldKind, InsideFastener, StructuralSupport, SupportFasteners,
    SupportMeans,
};
use crate::checks::{InScope, Subject};
use crate::rulebook::box_support::{
    BRACE, CEILING_FRAMING, CEILING_VOLUME, CEILING_WIRES, CONDUIT_BODY, CORD, CORD_GRIP, EMBEDDED,
    FASTENERS, FINISHED_SURFACE, LOADED_CONDUIT_BODY, LOADED_RACEWAYS, LUMINAIRE_ON_CONDUIT, MEANS, RACEWAYS,
    STEM, STRUCTURE, SURFACE, THREADS,
};

pub(super) static SUBJECTS: [Subject<Request>; 1] = [Subject {
    name: "support",
    is_described: |_| true,
    scope: &[
        InScope::always(&MEANS),
        InScope::when(|request| any(request, |means| matches!(means, SupportMeans::Surface(_))), &SURFACE),
        InScope::when(|request| any_structural(request, |_| true), &STRUCTURE),
        InScope::when(|request| any_structural(request, |held| held.fasteners.is_some()), &FASTENERS),
        InScope::when(|request| any_structural(request, has_screws_inside), &THREADS),
        InScope::when(|request| any_structural(request, |held| held.brace.is_some()), &BRACE),
        InScope::when(
            |request| any(request, |means| matches!(means, SupportMeans::FinishedSurface(_))),
            &FINISHED_SURFACE,
        ),
        InScope::when(|request| any(request, is_in_suspended_ceiling), &CEILING_VOLUME),
        InScope::when(
            |request| any(request, |means| matches!(means, SupportMeans::CeilingFraming(_))),
            &CEILING_FRAMING,
        ),
        InScope::when(
            |request| any(request, |means| matches!(means, SupportMeans::CeilingWires(_))),
            &CEILING_WIRES,
        ),
        InScope::when(|request| on_raceways(request) && !is_loaded(request), &RACEWAYS),
        InScope::when(|request| on_raceways(request) && is_loaded(request), &LOADED_RACEWAYS),
        InScope::when(|request| is_body_on_raceways(request) && !is_loaded(request), &CONDUIT_BODY),
        InScope::when(|request| is_body_on_raceways(request) && is_loaded(request), &LOADED_CONDUIT_BODY),
        InScope::when(
            |request| any(request, |means| matches!(means, SupportMeans::LuminaireOnConduit(_))),
            &LUMINAIRE_ON_CONDUIT,
        ),
        InScope::when(|request| any(request, |means| matches!(means, SupportMeans::Embedded(_))), &EMBEDDED),
        InScope::when(|request| any(request, |means| matches!(means, SupportMeans::CordPendant(_))), &CORD),
        InScope::when(
            |request| any(request, |means| matches!(means, SupportMeans::CordPendant(_))),
            &CORD_GRIP,
        ),
        InScope::when(
            |request| any(request, |means| matches!(means, SupportMeans::ConduitPendant(_))),
            &STEM,
        ),
    ],
}];

fn any(request: &Request, of_kind: fn(&SupportMeans) -> bool) -> bool {
    request.means.iter().any(of_kind)
}

fn any_structural(request: &Request, holds: fn(&StructuralSupport) -> bool) -> bool {
    request.means.iter().any(|means| match means {
        SupportMeans::StructuralMember(held) => holds(held),
        _ => false,
    })
}

fn has_screws_inside(held: &StructuralSupport) -> bool {
    matches!(&held.fasteners, Some(SupportFasteners::ThroughInside(inside))
        if inside.fastener == InsideFastener::Screws)
}

const fn is_in_suspended_ceiling(means: &SupportMeans) -> bool {
    matches!(means, SupportMeans::CeilingFraming(_) | SupportMeans::CeilingWires(_))
}

fn on_raceways(request: &Request) -> bool {
    any(request, |means| matches!(means, SupportMeans::Raceways(_)))
}

fn is_body_on_raceways(request: &Request) -> bool {
    on_raceways(request) && request.enclosure.kind == Some(HeldKind::ConduitBody)
}

fn is_loaded(request: &Request) -> bool {
    request.enclosure.devices_or_luminaires == Some(true)
}
