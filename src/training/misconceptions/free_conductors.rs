//! What learners get wrong about free conductors.

use crate::checks::free_conductors::{FreeConductors, FreeConductorsRequest};
use crate::rulebook::Strategy;
use crate::rulebook::free_conductor::{FreeLengthBy, LENGTH, OUTSIDE};
use crate::training::situation::{Sentence, of_free_conductors};
use crate::training::{Misconception, Quantity, Teachable};

type Wrong = Misconception<FreeConductors>;

/// The base length is measured from the opening of the box.
const FROM_OPENING: Strategy<FreeLengthBy> = Strategy::<FreeLengthBy>::new("from-opening", |proof, of| {
    let depth = of.depth?;
    Some(proof.sum(&LENGTH, &[depth, of.base]))
});

static MISCONCEPTIONS: &[Wrong] = &[
    Wrong::of_rules("free_length_six_outside", &[&LENGTH, &OUTSIDE], |rules| {
        rules.free_conductor.outside.set(60_000, 1_500_000);
    }),
    Wrong::of_rules("free_length_from_opening", &[&LENGTH], |rules| {
        rules.free_conductor.required_by = FROM_OPENING;
    }),
    Wrong::of_rules("free_length_three_only", &[&LENGTH, &OUTSIDE], |rules| {
        rules.free_conductor.length.set(30_000, 750_000);
        rules.free_conductor.outside.set_number(0);
    }),
    Wrong::of_rules("free_length_reach_only", &[&LENGTH], |rules| rules.free_conductor.length.set_number(0)),
    Wrong::of_rules("free_length_six_only", &[&OUTSIDE], |rules| rules.free_conductor.outside.set_number(0)),
    Wrong::of_request("rings_not_added", &[&OUTSIDE], |request| {
        let some = !request.rings.is_empty();
        request.rings.clear();
        some
    }),
    Wrong::of_request("small_in_every_dimension", &[&OUTSIDE], small_in_every_dimension),
];

impl Teachable for FreeConductors {
    const QUANTITIES: &'static [Quantity<Self>] =
        &[Quantity::<Self>::new("required_length", |_, outcome| outcome.required)];
    const MISCONCEPTIONS: &'static [Misconception<Self>] = MISCONCEPTIONS;

    fn situation(request: &FreeConductorsRequest) -> Vec<Sentence> {
        of_free_conductors(request)
    }
}

/// An opening is taken to be small only where both of its sides are.
fn small_in_every_dimension(request: &mut FreeConductorsRequest) -> bool {
    let Some(opening) = &mut request.opening else { return false };
    let longer = opening.width.max(opening.height);
    let differ = opening.width.is_some() && opening.height.is_some() && opening.width != opening.height;
    (opening.width, opening.height) = (longer, longer);
    differ
}
