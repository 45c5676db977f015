//! Which trade sizes a kind of raceway comes in, and which of them an edition permits. Checks of boxes and bodies ask the same.

use crate::checks::{FaultCode, Faults, Finding, Status};
use crate::derivation::{Derivation, Pointer, Relation};
use crate::rulebook::{Edition, Rule, Rulebook};
use crate::tables::{raceway_dimensions, trade_sizes};
use crate::trade::{RacewayKind, TradeSize};

/// Refuses a trade size that the kind does not come in. `at` is where the trade size is said.
pub(crate) fn faults(kind: RacewayKind, size: TradeSize, at: Pointer, faults: &mut Faults) {
    if known(kind).all(|known| known != size) {
        let fault = faults.add(at, FaultCode::Conflict, "fault-trade-size-of-kind");
        fault.arguments = vec![("kind", kind.name().to_owned()), ("size", size.name().to_owned())];
        fault.accepted = raceway_dimensions::sizes(kind).map(|size| size.name().to_owned()).collect();
    }
}

/// Whether a trade size is larger than any of a kind whose largest a rule limits, which then judges it.
pub(crate) fn is_over_largest(edition: Edition, kind: RacewayKind, size: TradeSize) -> bool {
    Rulebook::of(edition).raceway_fill.largest(kind).is_some() && known(kind).all(|known| known < size)
}

/// The trade sizes that a kind comes in, with figures or without.
fn known(kind: RacewayKind) -> impl Iterator<Item = TradeSize> {
    raceway_dimensions::sizes(kind).chain(raceway_dimensions::without_figures(kind))
}

/// Whether the edition permits a raceway of this trade size; `None` for a kind whose sizes are not limited. What is larger than an
/// edition that was not read is known to permit is open.
pub(crate) fn judge(
    proof: &mut Derivation,
    kind: RacewayKind,
    size: TradeSize,
    at: Pointer,
) -> Option<Finding> {
    let book = proof.rulebook().clone();
    let (rule, largest) = book.raceway_fill.largest(kind)?;
    let given = proof.lookup(rule, trade_sizes::of(size, proof.units())?, Some(at));
    let is_read = book.raceway_fill.is_read(kind);
    let mut largest = proof.stated(largest);
    let (is_permitted, mut step) = proof.compare(rule, given, Relation::AtMost, largest);
    let mut is_anywhere = true;
    if let Some(anywhere) =
        book.raceway_fill.largest_ent_anywhere.as_ref().filter(|_| !is_permitted && !is_read)
    {
        let anywhere = proof.stated(anywhere);
        let (fits, of_any) = proof.compare(rule, given, Relation::AtMost, anywhere);
        if !fits {
            (largest, step, is_anywhere) = (anywhere, of_any, false);
        }
    }
    let (status, message) = match (is_permitted, is_read) {
        (true, _) => (Status::Satisfied, "finding-trade-size-permitted"),
        (false, true) => (Status::Violated, "finding-trade-size-not-permitted"),
        (false, false) if is_anywhere => (Status::NotDetermined, "finding-trade-size-not-read"),
        (false, false) => (Status::Violated, "finding-trade-size-in-no-text"),
    };
    let mut finding = Finding::new(rule, status, message).with("most", largest).at(at);
    // the print alone settles what was not read: nothing that the request could say does
    if status != Status::NotDetermined {
        finding = finding.step(step);
    }
    Some(finding.with("raceway", format!("{kind} {size}").as_str()))
}

/// As [`judge`], of a raceway that is beside what a check asks: nothing is found, and nothing worked out, where it is permitted.
pub(crate) fn refuse(
    proof: &mut Derivation,
    kind: RacewayKind,
    size: TradeSize,
    at: Pointer,
) -> Option<Finding> {
    let (_, largest) = proof.rulebook().raceway_fill.largest(kind)?;
    let (most, _) = proof.rulebook().value(largest, proof.units());
    if size.figure(proof.units()) <= most { None } else { judge(proof, kind, size, at) }
}

/// Of a raceway whose kind is not said: whether some kind that comes in its trade size is not permitted in it.
pub(crate) fn depends_on_kind(proof: &Derivation, size: TradeSize) -> Option<&'static Rule> {
    let book = proof.rulebook();
    RacewayKind::ALL.iter().copied().find_map(|kind| {
        let (rule, largest) = book.raceway_fill.largest(kind)?;
        let is_larger = size.figure(proof.units()) > book.value(largest, proof.units()).0;
        let is_made = book.raceway_fill.is_read(kind) && known(kind).any(|known| known == size);
        (is_larger && is_made).then_some(rule)
    })
}
