//! What can be wrong with a request that decoded.

use super::request::{
    BoxSupportsRequest, HeldKind, InsideFastener, MOST_ITEMS, SupportFasteners, SupportMeans,
};
use crate::checks::FaultCode::Conflict;
use crate::checks::Faults;
use crate::derivation::Pointer;

pub(super) fn find(request: &BoxSupportsRequest, faults: &mut Faults) {
    if request.enclosure.kind != Some(HeldKind::ConduitBody) && request.enclosure.trade_size.is_some() {
        faults.add(Pointer::to(&"/enclosure/trade_size"), Conflict, "fault-trade-size-of-box");
    }
    faults.at_most(Pointer::to(&"/means"), request.means.len(), MOST_ITEMS);
    for (index, means) in request.means.iter().enumerate() {
        let at = Pointer::of(&"/means/#", index);
        match means {
            SupportMeans::Raceways(raceways) => {
                none_named(raceways.conduits.is_empty(), at, faults);
                faults.at_most(at.member(&"/conduits"), raceways.conduits.len(), MOST_ITEMS);
            }
            SupportMeans::LuminaireOnConduit(luminaire) => {
                none_named(luminaire.conduits.is_empty(), at, faults);
                carries_nothing(request, at, faults);
                faults.at_most(at.member(&"/conduits"), luminaire.conduits.len(), MOST_ITEMS);
                for (place, conduit) in luminaire.conduits.iter().enumerate() {
                    let at = Pointer::of(&"/conduits/#", place).under(&"/means/#", index);
                    let lengths = (conduit.fastened_before_support, conduit.unbroken_before_support);
                    if let (Some(fastened), Some(unbroken)) = lengths
                        && fastened.value() > unbroken.value()
                    {
                        let fastened = at.member(&"/fastened_before_support");
                        let unbroken = at.member(&"/unbroken_before_support");
                        faults.contradiction(fastened, unbroken, "fault-fastened-beyond-unbroken");
                    }
                }
                if luminaire.secured_directly == Some(true) && luminaire.nipple_length.is_some() {
                    faults.add(at.member(&"/nipple_length"), Conflict, "fault-nipple-and-direct");
                }
            }
            SupportMeans::ConduitPendant(_) => carries_nothing(request, at, faults),
            SupportMeans::StructuralMember(structural) => {
                if let Some(SupportFasteners::ThroughInside(inside)) = &structural.fasteners
                    && inside.fastener == InsideFastener::Nails
                    && inside.threads_protected.is_some()
                {
                    let at = at.member(&"/fasteners/threads_protected");
                    faults.add(at, Conflict, "fault-threads-of-nails");
                }
            }
            _ => {}
        }
    }
}

/// Held by raceways, of which none is named.
fn none_named(is_empty: bool, at: Pointer, faults: &mut Faults) {
    if is_empty {
        faults.contradiction(at.member(&"/kind"), at.member(&"/conduits"), "fault-held-by-no-raceway");
    }
}

/// Hung as a luminaire is, and said to carry none.
fn carries_nothing(request: &BoxSupportsRequest, at: Pointer, faults: &mut Faults) {
    if request.enclosure.devices_or_luminaires == Some(false) {
        let load = Pointer::to(&"/enclosure/devices_or_luminaires");
        faults.contradiction(at.member(&"/kind"), load, "fault-luminaire-and-none");
    }
}
