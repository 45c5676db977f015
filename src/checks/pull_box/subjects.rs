//! What is judged of a pull box: its size, by 314.28(A), (B), (D) and (E), or over 1000 V by 314.71; and whether it can be built.
//!
//! The cover itself, and how a box over 1000 V is built, are subjects that nothing here describes.

use super::request::{Entry, Pull, PullBoxRequest};
use crate::checks::pulls::Wall;
use crate::checks::{InScope, Subject};
use crate::rulebook::{Rulebook, geometry, over_1000_volts, pull, raceway_fill};

pub(super) static SUBJECTS: [Subject<PullBoxRequest>; 3] = [
    Subject {
        name: "size",
        is_described: is_given,
        scope: &[
            InScope::always(&pull::APPLIES),
            InScope::when(|request| joins(request, opposite), &pull::STRAIGHT),
            InScope::when(
                |request| joins(request, |one, other, pull| !opposite(one, other, pull) || pull.spliced),
                &pull::ANGLE,
            ),
            InScope::when(
                |request| joins(request, |one, other, _| one.wall.opposite() != Some(other.wall)),
                &pull::ENTRY_DISTANCE,
            ),
            InScope::when(|request| joins(request, at_back), &pull::REMOVABLE_COVER),
            InScope::when(|request| request.entries.iter().any(|entry| entry.cable.is_some()), &pull::CABLES),
            InScope::when(|request| request.marked.is_some(), &pull::MARKED),
            InScope::always(&pull::RACKING),
            InScope::when(has_blocks, &pull::BLOCKS),
            InScope::when(|request| has_blocks(request) && !request.over_1000_volts, &pull::BLOCK_SPACE),
            InScope::when(|request| has_blocks(request) && !request.over_1000_volts, &pull::LINE_SIDE),
            InScope::when(|_| false, &geometry::RACEWAYS),
            InScope::when(|_| false, &raceway_fill::EMT_SIZE),
            InScope::when(|_| false, &raceway_fill::IMC_SIZE),
            InScope::when(|_| false, &raceway_fill::ENT_SIZE),
            InScope::when(|_| false, &raceway_fill::LFNC_SIZE),
        ],
    },
    Subject {
        name: "size_over_1000_volts",
        is_described: |request| request.over_1000_volts && is_given(request),
        scope: &[
            InScope::when(
                |request| pairs(request).any(|(one, other, pull)| opposite(one, other, pull)),
                &over_1000_volts::STRAIGHT,
            ),
            InScope::when(
                |request| pairs(request).any(|(one, other, _)| one.wall.opposite() != Some(other.wall)),
                &over_1000_volts::ANGLE,
            ),
            InScope::when(
                |request| pairs(request).any(|(one, other, _)| one.wall.opposite() != Some(other.wall)),
                &over_1000_volts::ENTRY_EXIT,
            ),
            InScope::when(
                |request| pairs(request).any(|(one, other, pull)| at_back(one, other, pull)),
                &over_1000_volts::REMOVABLE_COVER,
            ),
            InScope::always(&over_1000_volts::REMOVABLE_SIDE),
        ],
    },
    Subject {
        name: "room",
        is_described: is_given,
        scope: &[
            InScope::always(&geometry::ENTRIES),
            InScope::when(
                |request| request.entries.iter().any(|entry| entry.position.is_some()),
                &geometry::POSITIONS,
            ),
            InScope::when(|request| request.layout.is_some(), &pull::PLACEMENT),
        ],
    },
];

/// Whether a box is described, and not only asked for.
fn is_given(request: &PullBoxRequest) -> bool {
    request.inside.is_some() || request.sections.iter().any(|section| section.inside.is_some())
}

fn has_blocks(request: &PullBoxRequest) -> bool {
    request.power_distribution_blocks.iter().any(|block| !block.grounding_bar || request.over_1000_volts)
}

fn opposite(one: &Entry, other: &Entry, _: &Pull) -> bool {
    one.wall.opposite() == Some(other.wall)
}

fn at_back(one: &Entry, other: &Entry, _: &Pull) -> bool {
    [one, other].iter().any(|entry| entry.wall == Wall::Back)
}

/// Whether a pull up to 1000 V that is sized by length joins two entries of some kind.
fn joins(request: &PullBoxRequest, kind: impl Fn(&Entry, &Entry, &Pull) -> bool) -> bool {
    let least = Some(Rulebook::of(request.edition).pull.applies_from);
    !request.over_1000_volts
        && pairs(request).any(|(one, other, pull)| {
            let in_cable = pull.entries.iter().filter_map(|id| {
                let entry = request.entries.iter().find(|entry| &entry.id == id)?;
                entry.cable.as_ref()?.largest()
            });
            let is_sized = pull.insulated != Some(false) && pull.largest_conductor >= least;
            (is_sized || in_cable.max() >= least) && kind(one, other, pull)
        })
}

/// The two entries of each pull, and of one that splits the first with each of the others.
fn pairs(request: &PullBoxRequest) -> impl Iterator<Item = (&Entry, &Entry, &Pull)> {
    let entry = |id: &crate::checks::Name| request.entries.iter().find(|entry| &entry.id == id);
    request.pulls.iter().flat_map(move |pull| {
        let first = pull.entries.first().and_then(entry);
        let others = pull.entries.iter().skip(1).filter_map(entry);
        others.filter_map(move |other| Some((first?, other, pull)))
    })
}
