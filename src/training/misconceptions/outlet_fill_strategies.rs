//! What learners do with the contents of a box in place of what the code does.

use crate::checks::outlet_fill::{
    Alike, Counting, Entering, Figures, GroundingTally, Item, Many, SizeAndAllowance,
};
use crate::derivation::{Derivation, Figure};
use crate::rulebook::Strategy;
use crate::rulebook::outlet_fill::{
    ClampsBy, ClampsTake, GROUNDING, GroundingBeyond, GroundingBy, GroundingLines, GroundingParts,
    SupportFittingsTake, YokeBy,
};
use crate::rulebook::outlet_volume::Sharing;

pub(super) const CLAMPS_BY_PIECE: Strategy<ClampsTake> =
    Strategy::<ClampsTake>::new("once-for-each-piece", by_piece);

pub(super) const FITTINGS_BY_PIECE: Strategy<SupportFittingsTake> =
    Strategy::<SupportFittingsTake>::new("once-for-each-piece", by_piece);

fn by_piece(proof: &mut Derivation, alike: Alike<'_>) -> Figure {
    let one = proof.stated(&alike.allowances);
    let count = |(count, item): &(Option<Many>, _)| proof.count(alike.rule, count.map(Many::get), *item);
    let counts: Figures = alike.pieces.iter().map(count).collect();
    let all = proof.sum(alike.rule, &counts);
    proof.product(alike.rule, all, one, None)
}

pub(super) const FITTINGS_AS_ONE: Strategy<SupportFittingsTake> =
    Strategy::<SupportFittingsTake>::new("once-for-all", |proof, alike| proof.stated(&alike.allowances));

pub(super) const CLAMPS_BY_SMALLEST: Strategy<ClampsBy> =
    Strategy::<ClampsBy>::new("smallest-in-box", by_smallest);

fn by_smallest(counting: &mut Counting<'_, '_>, largest: SizeAndAllowance) -> SizeAndAllowance {
    let smallest = counting.present().iter().next();
    let known = smallest.and_then(|size| Some((size, counting.allowance_of(size)?)));
    known.unwrap_or(largest)
}

pub(super) const YOKE_BY_LARGEST: Strategy<YokeBy> =
    Strategy::<YokeBy>::new("largest-in-box", |present, connected| present.largest().or(connected));

pub(super) const GROUNDING_BY_LARGEST: Strategy<GroundingBy> =
    Strategy::<GroundingBy>::new("largest-in-box", |counting, _, _| counting.largest_present());

pub(super) const PARTS_ROUNDED_UP: Strategy<GroundingParts> =
    Strategy::<GroundingParts>::new("rounded-up", |proof, parts| {
        let rounded = proof.round_count(&GROUNDING, parts.more, parts.together, parts.each);
        rounded.unwrap_or(parts.more)
    });

pub(super) const ONE_LINE_FOR_EACH_SIZE: Strategy<GroundingLines> =
    Strategy::<GroundingLines>::new("one-for-each-size", by_own_size);

/// What is past the first few is counted by its own size; one line for each size.
fn by_own_size(
    counting: &mut Counting<'_, '_>,
    beyond: &GroundingBeyond,
    entering: &[Entering],
    lines: &mut GroundingTally,
) {
    let mut entering = entering.to_vec();
    entering.sort_by_key(|one| std::cmp::Reverse(one.size));
    let mut left = counting.proof.stated(&beyond.together);
    for alike in entering.chunk_by(|one, next| one.size == next.size) {
        let proof = &mut *counting.proof;
        let counts: Figures = alike.iter().map(|one| one.count).collect();
        let all = proof.sum(&GROUNDING, &counts);
        let within = proof.smallest(&GROUNDING, &[all, left]).unwrap_or(all);
        left = proof.difference(&GROUNDING, left, within);
        let extra = proof.difference(&GROUNDING, all, within);
        let each = proof.stated(&beyond.each);
        let mut allowances = proof.product(&GROUNDING, extra, each, None);
        if lines.is_empty() {
            let together = proof.rulebook().outlet_fill.grounding;
            let together = proof.stated(&together);
            allowances = proof.sum(&GROUNDING, &[together, allowances]);
        }
        lines.extend(counting.grounding_line(Item::Grounding, &GROUNDING, allowances, alike));
    }
}

pub(super) const POOLED: Strategy<Sharing> = Strategy::<Sharing>::new("pooled", |_, total, _, _| Some(total));
