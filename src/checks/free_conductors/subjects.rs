//! What a request can describe, and the rules in its scope.

use super::request::{DamagePlace, FreeConductor, FreeConductorRole, FreeConductorsRequest as Request};
use crate::checks::{InScope, Subject};
use crate::rulebook::free_conductor::{LENGTH, OUTSIDE, SPLICE_PLACE, SPLICED, UNBROKEN};

pub(super) static SUBJECTS: [Subject<Request>; 1] = [Subject {
    name: "free_length",
    is_described: |request| !request.conductors.is_empty(),
    scope: &[
        InScope::always(&LENGTH),
        InScope::when(|request| request.conductors.iter().any(leaves_the_box), &OUTSIDE),
        InScope::when(|request| request.conductors.iter().any(passes), &UNBROKEN),
        InScope::when(|request| request.conductors.iter().any(is_made_longer), &SPLICED),
        InScope::when(|request| request.conductors.iter().any(has_its_splice_placed), &SPLICE_PLACE),
    ],
}];

pub(super) const fn leaves_the_box(conductor: &FreeConductor) -> bool {
    matches!(conductor.role, FreeConductorRole::Spliced | FreeConductorRole::Terminated)
}

fn passes(conductor: &FreeConductor) -> bool {
    conductor.role == FreeConductorRole::PassesThrough
}

fn is_made_longer(conductor: &FreeConductor) -> bool {
    leaves_the_box(conductor) && conductor.spliced_to_reach.is_some()
}

/// A splice that makes it longer stands in this box; damage in the wall cannot be cured by one here.
fn has_its_splice_placed(conductor: &FreeConductor) -> bool {
    let in_wall = conductor.damage.is_some_and(|damage| damage.place == DamagePlace::InWall);
    is_made_longer(conductor)
        || leaves_the_box(conductor) && in_wall
        || !leaves_the_box(conductor) && conductor.damage.is_some()
}
