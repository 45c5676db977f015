//! What enters the box: whether it may, how far its sheath reaches in, and how it is held.

use super::{BoxShape, EntryWiring, MountedMaterial, Mounting, WiringEntry, distance, of_box};
use crate::checks::inspection::Sentences;
use crate::checks::{Name, Status};
use crate::derivation::{Pointer, Relation};
use crate::rulebook::box_entry::{
    IN_RACEWAY, INSULATING_FITTING, METAL_IN_NONMETALLIC, ROUND, SECURED, SHEATH, SINGLE_GANG,
};

const ON_SIDE: Sentences = Sentences {
    met: "finding-round-box-side-free",
    broken: "finding-round-box-side-locknut",
    open: "finding-round-box-side-open",
};
const BONDED: Sentences = Sentences {
    met: "finding-entries-bonded",
    broken: "finding-entries-not-bonded",
    open: "finding-entries-bonded-open",
};
const HELD: Sentences = Sentences {
    met: "finding-entry-secured",
    broken: "finding-entry-not-secured",
    open: "finding-entry-secured-open",
};
const SHEATHED: Sentences = Sentences {
    met: "finding-sheath-far-enough",
    broken: "finding-sheath-too-short",
    open: "finding-sheath-open",
};
const SMALL_BOX: Sentences = Sentences {
    met: "finding-single-gang",
    broken: "finding-not-single-gang",
    open: "finding-single-gang-open",
};
const FASTENED: Sentences =
    Sentences { met: "finding-fastened-near", broken: "finding-fastened-far", open: "finding-fastened-open" };
const FITTING: Sentences = Sentences {
    met: "finding-insulating-fitting",
    broken: "finding-no-insulating-fitting",
    open: "finding-insulating-fitting-open",
};

const MATERIAL: Pointer = of_box(&"/material");

impl Mounting {
    /// Each entry in turn.
    pub(super) fn entries(&mut self, entries: &[WiringEntry]) {
        for (index, entry) in entries.iter().enumerate() {
            self.inspection.about(entry.id.as_ref().map(Name::as_str), index);
            let item = Pointer::of(&"/entries/#", index);
            self.round(entry, item);
            self.metal_in_nonmetallic(entry);
            self.held(entry, item);
            self.insulating_fitting(entry, item);
        }
    }

    fn round(&mut self, entry: &WiringEntry, item: Pointer) {
        if self.enclosure.shape == Some(BoxShape::Round) {
            let at = item.member(&"/locknut_on_side");
            self.inspection.expect(&ROUND, false, entry.locknut_on_side, at, ON_SIDE);
        }
    }

    fn metal_in_nonmetallic(&mut self, entry: &WiringEntry) {
        if !matches!(entry.wiring, EntryWiring::MetalRaceway | EntryWiring::ArmoredCable) {
            return;
        }
        match self.enclosure.material {
            Some(MountedMaterial::Metal) => {}
            Some(MountedMaterial::Nonmetallic) => {
                let at = of_box(&"/bonds_all_entries");
                self.inspection.fact(&METAL_IN_NONMETALLIC, self.enclosure.bonds_all_entries, at, BONDED);
            }
            None => {
                self.inspection.open(&METAL_IN_NONMETALLIC, None, MATERIAL, "finding-entry-material-open");
            }
        }
    }

    /// Whether an entry is held: secured to the box, held by a complete raceway, or fastened near a single-gang box.
    fn held(&mut self, entry: &WiringEntry, item: Pointer) {
        let sheathed = matches!(
            entry.wiring,
            EntryWiring::NonmetallicSheathedCable | EntryWiring::UndergroundFeederCable
        );
        if sheathed && entry.in_complete_raceway == Some(true) {
            let at = item.member(&"/in_complete_raceway");
            if self.book.box_entry.relieves_in_raceway {
                self.inspection.granted(&IN_RACEWAY, at, "finding-cable-in-raceway");
                return;
            }
            self.inspection.proof.does_not_apply(&IN_RACEWAY, "not-in-edition", Some(at));
        }
        let sheath = if sheathed { self.sheath(entry, item) } else { None };
        let at = item.member(&"/secured");
        let unsecured = sheathed && entry.secured == Some(false);
        let metal = self.enclosure.material == Some(MountedMaterial::Metal);
        if unsecured && metal && !self.book.box_entry.covers_metal_boxes {
            self.inspection.proof.does_not_apply(&SINGLE_GANG, "metal-box-before-the-merger", Some(MATERIAL));
        } else if unsecured {
            self.fastened_near(entry, item, sheath);
            return;
        }
        self.inspection.fact(&SECURED, entry.secured, at, HELD);
    }

    /// How far a nonmetallic sheath reaches in. Before the rules were merged, metal boxes were not spoken of.
    fn sheath(&mut self, entry: &WiringEntry, item: Pointer) -> Option<Status> {
        let covers_metal = self.book.box_entry.covers_metal_boxes;
        if !covers_metal && self.enclosure.material == Some(MountedMaterial::Metal) {
            self.inspection.proof.does_not_apply(&SHEATH, "metal-box-before-the-merger", Some(MATERIAL));
            return None;
        }
        let limit = self.inspection.proof.stated(&self.book.box_entry.sheath);
        let relation = Relation::AtLeast;
        let value = entry.sheath_inside.map(|sheath| sheath.value());
        let short = value.is_some_and(|sheath| !relation.holds(sheath, limit.value));
        if short && !covers_metal && self.enclosure.material.is_none() {
            let finding = "finding-entry-material-open";
            return Some(self.inspection.open(&SHEATH, Some((relation, limit)), MATERIAL, finding));
        }
        let given = distance(value, item.member(&"/sheath_inside"));
        Some(self.inspection.limit(&SHEATH, given, relation, limit, SHEATHED))
    }

    /// A cable that is not secured to its box: the box must be a small one in a wall or ceiling, and the cable fastened
    /// close by, with enough sheath inside.
    fn fastened_near(&mut self, entry: &WiringEntry, item: Pointer, sheath: Option<Status>) {
        let small = self.enclosure.single_gang_in_wall_or_ceiling;
        let at = of_box(&"/single_gang_in_wall_or_ceiling");
        let small = self.inspection.fact(&SINGLE_GANG, small, at, SMALL_BOX);
        if small == Status::Violated {
            return;
        }
        let limit = self.inspection.proof.stated(&self.book.box_entry.fastened_within);
        let given = distance(entry.fastened_at.map(|at| at.value()), item.member(&"/fastened_at"));
        self.inspection.limit(&SINGLE_GANG, given, Relation::AtMost, limit, FASTENED);
        if self.enclosure.material.is_none() && !self.book.box_entry.covers_metal_boxes {
            self.inspection.open(&SINGLE_GANG, None, MATERIAL, "finding-entry-material-open");
        } else if sheath == Some(Status::Violated) {
            self.inspection.advise(&SINGLE_GANG, "finding-single-gang-needs-sheath", item);
        }
    }

    fn insulating_fitting(&mut self, entry: &WiringEntry, item: Pointer) {
        let Some(size) = entry.largest_insulated_conductor else { return };
        let at = item.member(&"/insulating_fitting");
        if size >= self.book.box_entry.fitting_from {
            self.inspection.fact(&INSULATING_FITTING, entry.insulating_fitting, at, FITTING);
        } else {
            let at = item.member(&"/largest_insulated_conductor");
            self.inspection.proof.does_not_apply(&INSULATING_FITTING, "no-large-conductor-enters", Some(at));
        }
    }
}
