//! What a request about a mounting can describe, and the rules in the scope of each: what is there raises them.

use super::request::{
    Access, AccessPlace, BoxMountingRequest, EntryWiring, ExtensionMeans, FastenerThrough, LocationKind,
    Moisture, MountedMaterial, WiringEntry,
};
use crate::checks::{InScope, Subject};
use crate::rulebook::box_access::{
    BUILDING, HANDHOLE, HANDHOLE_COVER, HANDHOLE_SIZE, HANDHOLE_WIRING, OPENING, OPENING_FOR_DEVICE,
    OPENING_FULL, UNDER_LOOSE_COVER, UNDERGROUND,
};
use crate::rulebook::box_entry::{
    IN_RACEWAY, INSULATING_FITTING, METAL_IN_NONMETALLIC, PROTECTED_FIRST, ROUND, SECURED, SHEATH,
    SHEATH_PAST_CLAMP, SINGLE_GANG, UNUSED,
};
use crate::rulebook::box_protection::{
    BLUNT, COVER_SCREWS as SCREWS_REACH, DRAIN, DRAIN_FITTING, GROUNDED, KEEP_DRY, THROUGH_BODY,
    THROUGH_COVER, THROUGH_SMALL_WALL, THROUGH_WALL, WET,
};
use crate::rulebook::box_surface::{
    BODY_COVER, CANOPY_FINISH, COVER, COVER_SCREWS, EXTENSION_BOX, EXTENSION_COVER, EXTENSION_RING,
    FLUSH_DEVICE, GAP, LUMINAIRE_OVER_BOX, PENDANT_CORD, SETBACK,
};

type Request = BoxMountingRequest;

/// Each part of a mounting. A rule that stands in for another, or that only a figure brings in, is raised by what is found.
pub(super) static SUBJECTS: [Subject<Request>; 13] = [
    Subject {
        name: "grounding",
        is_described: |request| {
            request.enclosure.is_some_and(|enclosure| enclosure.material == Some(MountedMaterial::Metal))
        },
        scope: &[InScope::always(&GROUNDED)],
    },
    Subject {
        name: "flush_surface",
        is_described: |request| request.flush_surface.is_some(),
        scope: &[InScope::always(&SETBACK), InScope::always(&GAP)],
    },
    Subject {
        name: "flush_device",
        is_described: |request| request.flush_device.is_some(),
        scope: &[InScope::always(&FLUSH_DEVICE)],
    },
    Subject {
        name: "extension",
        is_described: |request| request.extension.is_some(),
        scope: &[
            InScope::when(|request| extends_by(request, ExtensionMeans::ExtensionRing), &EXTENSION_RING),
            InScope::when(|request| extends_by(request, ExtensionMeans::AnotherBox), &EXTENSION_BOX),
            InScope::when(|request| extends_by(request, ExtensionMeans::Cover), &EXTENSION_COVER),
        ],
    },
    Subject {
        name: "cover",
        is_described: |request| request.cover.is_some(),
        scope: &[
            InScope::when(|request| !is_conduit_body(request), &COVER),
            InScope::when(is_conduit_body, &BODY_COVER),
            InScope::when(|_| false, &LUMINAIRE_OVER_BOX),
            InScope::when(|request| request.cover.is_some_and(|cover| cover.screws.is_some()), &COVER_SCREWS),
            InScope::when(
                |request| request.cover.is_some_and(|cover| cover.combustible_finish.is_some()),
                &CANOPY_FINISH,
            ),
            InScope::when(
                |request| request.cover.is_some_and(|cover| cover.pendant_cord.is_some()),
                &PENDANT_CORD,
            ),
        ],
    },
    Subject {
        name: "access",
        is_described: |request| request.access.is_some(),
        scope: &[
            InScope::when(|request| is_reached_in(request, AccessPlace::Building), &BUILDING),
            InScope::when(|request| is_reached_in(request, AccessPlace::Underground), &UNDERGROUND),
            InScope::when(
                |request| access(request).is_some_and(|access| access.under_loose_cover.is_some()),
                &UNDER_LOOSE_COVER,
            ),
        ],
    },
    Subject {
        name: "finish_opening",
        is_described: |request| access(request).is_some_and(|access| access.finish_opening.is_some()),
        scope: &[
            InScope::always(&OPENING),
            InScope::when(|_| false, &OPENING_FULL),
            InScope::when(|_| false, &OPENING_FOR_DEVICE),
        ],
    },
    Subject {
        name: "entries",
        is_described: |request| !request.entries.is_empty(),
        scope: &[
            InScope::always(&ROUND),
            InScope::when(|request| any_entry(request, is_metal), &METAL_IN_NONMETALLIC),
            InScope::always(&SECURED),
            InScope::when(|request| any_entry(request, is_sheathed), &SHEATH),
            InScope::when(|request| any_entry(request, is_clamped_inside), &SHEATH_PAST_CLAMP),
            InScope::when(|_| false, &SINGLE_GANG),
            InScope::when(|_| false, &IN_RACEWAY),
            InScope::always(&INSULATING_FITTING),
            InScope::when(|_| false, &PROTECTED_FIRST),
        ],
    },
    Subject {
        name: "unused_openings",
        is_described: |request| request.unused_openings.is_some(),
        scope: &[InScope::always(&UNUSED)],
    },
    Subject {
        name: "fasteners",
        is_described: |request| !request.fasteners.is_empty(),
        scope: &[
            InScope::always(&BLUNT),
            InScope::when(|request| any_through(request, FastenerThrough::CoverScrew), &SCREWS_REACH),
            InScope::when(|request| any_through(request, FastenerThrough::Cover), &THROUGH_COVER),
            InScope::when(|request| any_through(request, FastenerThrough::Wall), &THROUGH_WALL),
            InScope::when(|_| false, &THROUGH_SMALL_WALL),
            InScope::when(|_| false, &THROUGH_BODY),
        ],
    },
    Subject {
        name: "moisture",
        is_described: |request| request.moisture.is_some(),
        scope: &[
            InScope::when(|request| is_moist(request, |_| true), &KEEP_DRY),
            InScope::when(|request| is_moist(request, |moist| moist.location == LocationKind::Wet), &WET),
            InScope::when(|request| is_moist(request, |moist| !moist.drain_openings.is_empty()), &DRAIN),
            InScope::when(|_| false, &DRAIN_FITTING),
        ],
    },
    Subject {
        name: "handhole",
        is_described: |request| request.handhole.is_some(),
        scope: &[
            InScope::always(&HANDHOLE),
            InScope::always(&HANDHOLE_WIRING),
            InScope::always(&HANDHOLE_COVER),
        ],
    },
    // how large one is, which another check judges
    Subject { name: "handhole_size", is_described: |_| false, scope: &[InScope::always(&HANDHOLE_SIZE)] },
];

fn extends_by(request: &Request, means: ExtensionMeans) -> bool {
    request.extension.is_some_and(|extension| extension.means == means)
}

fn access(request: &Request) -> Option<&Access> {
    request.access.as_ref()
}

fn is_reached_in(request: &Request, place: AccessPlace) -> bool {
    access(request).is_some_and(|access| access.place == place)
}

fn any_entry(request: &Request, is: fn(&WiringEntry) -> bool) -> bool {
    request.entries.iter().any(is)
}

fn is_metal(entry: &WiringEntry) -> bool {
    matches!(entry.wiring, EntryWiring::MetalRaceway | EntryWiring::ArmoredCable)
}

fn is_sheathed(entry: &WiringEntry) -> bool {
    matches!(entry.wiring, EntryWiring::NonmetallicSheathedCable | EntryWiring::UndergroundFeederCable)
}

fn is_clamped_inside(entry: &WiringEntry) -> bool {
    is_sheathed(entry) && entry.clamp_inside.is_some()
}

/// A fastener that the maker of the box specifies ends the question.
fn any_through(request: &Request, through: FastenerThrough) -> bool {
    let asked = |fastener: &super::Fastener| fastener.as_maker_specifies != Some(true);
    request.fasteners.iter().any(|fastener| fastener.through == through && asked(fastener))
}

/// Of a handhole enclosure nothing is asked about moisture.
fn is_moist(request: &Request, is: fn(&Moisture) -> bool) -> bool {
    request.handhole.is_none() && request.moisture.as_ref().is_some_and(is)
}

fn is_conduit_body(request: &Request) -> bool {
    request.enclosure.is_some_and(|enclosure| enclosure.conduit_body == Some(true))
}
