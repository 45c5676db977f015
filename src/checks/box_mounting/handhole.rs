//! What is particular to a handhole enclosure.

use super::{Handhole, Mounting};
use crate::checks::inspection::{Given, Sentences};
use crate::derivation::{Pointer, Relation};
use crate::quantity::Measure;
use crate::rulebook::box_access::{HANDHOLE, HANDHOLE_COVER, HANDHOLE_SIZE, HANDHOLE_WIRING};

const IDENTIFIED: Sentences = Sentences {
    met: "finding-handhole-identified",
    broken: "finding-handhole-not-identified",
    open: "finding-handhole-identified-open",
};
const WIRING: Sentences = Sentences {
    met: "finding-handhole-wiring-listed",
    broken: "finding-handhole-wiring-not-listed",
    open: "finding-handhole-wiring-open",
};
const MARKED: Sentences = Sentences {
    met: "finding-handhole-cover-marked",
    broken: "finding-handhole-cover-unmarked",
    open: "finding-handhole-cover-marked-open",
};
const HEAVY: Sentences = Sentences {
    met: "finding-handhole-cover-heavy",
    broken: "finding-handhole-cover-light",
    open: "finding-handhole-cover-weight-open",
};
const BONDED: Sentences = Sentences {
    met: "finding-handhole-cover-bonded",
    broken: "finding-handhole-cover-not-bonded",
    open: "finding-handhole-cover-bonded-open",
};

impl Mounting {
    /// Identified, wired for wet locations, and under a cover that is marked and does not open to just anyone.
    pub(super) fn handhole(&mut self, handhole: Option<Handhole>) {
        let Some(handhole) = handhole else { return };
        let place = Pointer::to(&"/handhole");
        let at = |member| place.member(member);
        self.inspection.fact(&HANDHOLE, handhole.identified, at(&"/identified"), IDENTIFIED);
        self.inspection.advise(&HANDHOLE_SIZE, "finding-handhole-size", place);
        let listed = handhole.wiring_listed_for_wet_locations;
        self.inspection.fact(&HANDHOLE_WIRING, listed, at(&"/wiring_listed_for_wet_locations"), WIRING);
        self.inspection.fact(&HANDHOLE_COVER, handhole.cover_marked, at(&"/cover_marked"), MARKED);
        if handhole.cover_needs_tools == Some(true) {
            let at = at(&"/cover_needs_tools");
            self.inspection.granted(&HANDHOLE_COVER, at, "finding-handhole-cover-tools");
        } else {
            self.cover_weight(handhole);
        }
        if let Some(metal) = handhole.exposed_metal {
            let at = Pointer::to(&"/handhole/exposed_metal/bonded");
            self.inspection.fact(&HANDHOLE_COVER, metal.bonded, at, BONDED);
        }
    }

    /// A cover that opens without tools must be heavy. One that is light fails only when it is known to open so.
    fn cover_weight(&mut self, handhole: Handhole) {
        let at = |member| Pointer::to(&"/handhole").member(member);
        let limit = self.inspection.proof.stated(&self.book.box_access.handhole_cover);
        let (value, relation) = (handhole.cover_weight.map(|weight| weight.value()), Relation::Above);
        let given = Given { value, measure: Measure::Weight, at: at(&"/cover_weight") };
        let light = value.is_none_or(|weight| weight <= limit.value);
        if light && handhole.cover_needs_tools.is_none() {
            let finding = match value {
                Some(_) => "finding-handhole-cover-light-open",
                None => "finding-handhole-cover-tools-open",
            };
            let tools = at(&"/cover_needs_tools");
            self.inspection.open_given(&HANDHOLE_COVER, given, (relation, limit), tools, finding);
            return;
        }
        if let Some(needed) = handhole.cover_needs_tools {
            self.inspection.proof.fact(&HANDHOLE_COVER, needed, at(&"/cover_needs_tools"));
        }
        self.inspection.limit(&HANDHOLE_COVER, given, relation, limit, HEAVY);
    }
}
