//! Two conductors lie side by side in a raceway: together they are no wider than it is inside, whatever share of it they fill.
//!
//! The percentages alone never come to that for one, two or more in an ordinary run: 40 % of a circle leaves two circles in it
//! `√(2 × 0.40) = 0.89` of its diameter at the most. The 60 % of a nipple leave them 1.10. Three and more that are alike and fill no
//! more than 64 % always fit: three that touch fill 64.6 % of the circle around them, more of them more.

use super::contents::Contents;
use super::sizing::{Sizer, dimension_of};
use super::{FillLimit, TradeSizeFit};
use crate::checks::{Finding, Status};
use crate::derivation::{Derivation, Figure, Pointer, Relation};
use crate::quantity::Decimal;
use crate::rulebook::geometry::RACEWAYS;
use crate::tables::raceway_dimensions::{self, Dimension};
use crate::trade::{RacewayKind, TradeSize};

/// What is found of the two widest conductors, where they do not lie side by side.
pub(super) fn judge(
    proof: &mut Derivation,
    (kind, size): (RacewayKind, TradeSize),
    contents: &Contents,
) -> Option<Finding> {
    let pair = contents.widest_pair();
    let inside = dimension_of(proof, kind, size, Dimension::Diameter)?;
    if pair? <= inside.value {
        return None;
    }
    let together = contents.pair(proof, &RACEWAYS)?;
    let inside = proof.lookup(&RACEWAYS, inside, None);
    let (_, step) = proof.compare(&RACEWAYS, together, Relation::AtMost, inside);
    let finding = Finding::new(&RACEWAYS, Status::Violated, "finding-not-side-by-side");
    let finding = finding.with("together", together).with("inside", inside);
    Some(finding.at(Pointer::to(&"/raceway")).step(step))
}

/// The most that are alike, where two of them do not lie side by side.
pub(super) fn most(
    proof: &mut Derivation,
    (kind, size): (RacewayKind, TradeSize),
    contents: &Contents,
    most: Figure,
) -> Option<Figure> {
    let inside = dimension_of(proof, kind, size, Dimension::Diameter)?;
    let is_too_wide = most.value > Decimal::ONE && contents.two_alike()? > inside.value;
    let book = proof.rulebook().clone();
    Some(if is_too_wide { proof.stated(&book.raceway_fill.number_for_one) } else { most })
}

/// The smallest trade size in which the two widest lie side by side, from one that has the area on.
pub(super) fn widen(
    proof: &mut Derivation,
    sizer: &mut Sizer,
    contents: &Contents,
    limit: FillLimit,
    mut fit: TradeSizeFit,
) -> TradeSizeFit {
    let (Some(pair), Some(size)) = (contents.widest_pair(), fit.trade_size) else { return fit };
    let is_wide = |size: TradeSize, proof: &mut Derivation| {
        dimension_of(proof, fit.kind, size, Dimension::Diameter).is_none_or(|cell| cell.value >= pair)
    };
    if is_wide(size, proof) {
        return fit;
    }
    let mut larger = raceway_dimensions::sizes(fit.kind).skip_while(|other| *other != size);
    fit.trade_size = larger.find(|other| is_wide(*other, proof));
    fit.allowed_area = fit.trade_size.and_then(|size| sizer.allowed(proof, fit.kind, size, limit));
    let inside = fit.trade_size.and_then(|size| dimension_of(proof, fit.kind, size, Dimension::Diameter));
    if let (Some(inside), Some(together)) = (inside, contents.pair(proof, &RACEWAYS)) {
        let inside = proof.lookup(&RACEWAYS, inside, None);
        fit.step = proof.compare(&RACEWAYS, together, Relation::AtMost, inside).1;
    }
    fit
}
