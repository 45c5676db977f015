//! What can be wrong with a request that decoded.

use super::request::{
    BoxSupportsRequest, HeldKind, InsideFastener, MOST_ITEMS, SupportFasteners, SupportMeans,
};
use crate::checks::FaultCode::Conflict;
use crate::checks::Faults;
use crate::derivation::Pointer;

pub(super) fn find(request: &BoxSupportsRequest, faults: &mut Faults) {
    if request.enclosure.kind == HeldKind::Box && request.enclosure.trade_size.is_some() {
        faults.add(Pointer::to(&"/enclosure/trade_size"), Conflict, "fault-trade-size-of-box");
    }
    faults.at_most(Pointer::to(&"/means"), request.means.len(), MOST_ITEMS);
    for (index, means) in request.means.iter().enumerate() {
        let at = Pointer::of(&"/means/#", index);
        match means {
            SupportMeans::Raceways(raceways) => {
                faults.at_most(at.member(&"/conduits"), raceways.conduits.len(), MOST_ITEMS);
            }
            SupportMeans::LuminaireOnConduit(luminaire) => {
                faults.at_most(at.member(&"/conduits"), luminaire.conduits.len(), MOST_ITEMS);
                if luminaire.secured_directly == Some(true) && luminaire.nipple_length.is_some() {
                    faults.add(at.member(&"/nipple_length"), Conflict, "fault-nipple-and-direct");
                }
            }
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
