//! What enters the box: whether it may, how far its sheath reaches in, and how it is held.

use super::{
    BODY, BoxShape, ClampInside, EntryWiring, MATERIAL, MountedBox, MountedMaterial, Mounting,
    SINGLE_GANG_BOX, WiringEntry, distance, of_box,
};
use crate::checks::inspection::Sentences;
use crate::checks::{Name, Status};
use crate::derivation::{Pointer, Relation};
use crate::quantity::Measure;
use crate::rulebook::box_entry::{
    ByMaterial, IN_RACEWAY, METAL_IN_NONMETALLIC, PastClamp, ROUND, SECURED, SHEATH, SHEATH_PAST_CLAMP,
    SINGLE_GANG,
};
use crate::rulebook::reading::FeederAsNm;
use crate::tables::standard_boxes::Shape;

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
const FEEDER: Sentences = Sentences {
    met: "finding-single-gang-feeder",
    broken: "finding-single-gang-feeder",
    open: "finding-single-gang-feeder",
};
const SHEATHED: Sentences = Sentences {
    met: "finding-sheath-far-enough",
    broken: "finding-sheath-too-short",
    open: "finding-sheath-open",
};
const PAST_CLAMP: Sentences = Sentences {
    met: "finding-sheath-past-clamp",
    broken: "finding-sheath-not-past-clamp",
    open: "finding-sheath-past-clamp-open",
};
const BEYOND_CLAMP: Sentences = Sentences { open: "finding-sheath-beyond-clamp-open", ..PAST_CLAMP };
const SMALL_BOX: Sentences = Sentences {
    met: "finding-single-gang",
    broken: "finding-not-single-gang",
    open: "finding-single-gang-open",
};
const FASTENED: Sentences =
    Sentences { met: "finding-fastened-near", broken: "finding-fastened-far", open: "finding-fastened-open" };

impl Mounting {
    /// Each entry in turn.
    pub(super) fn entries(&mut self, entries: &[WiringEntry]) {
        self.cite_by_material();
        for (index, entry) in entries.iter().enumerate() {
            self.inspection.about(entry.id.as_ref().map(Name::as_str), index);
            let item = Pointer::of(&"/entries/#", index);
            self.round(entry, item);
            self.metal_in_nonmetallic(entry);
            self.held(entry, item);
            self.large_conductors(entry, item);
        }
    }

    /// Cites what is asked of metal boxes and of nonmetallic ones by the paragraph of this box.
    fn cite_by_material(&mut self) {
        let (Some(paragraphs), Some(material)) = (self.book.box_entry.by_material, self.enclosure.material)
        else {
            return;
        };
        let ByMaterial { metal, nonmetallic } = paragraphs;
        let paragraph = if material == MountedMaterial::Metal { metal } else { nonmetallic };
        for rule in [&SECURED, &SHEATH] {
            self.inspection.proof.cite(rule, paragraph);
        }
    }

    /// A locknut or bushing on the side matters on a round box alone. Shape follows from its being a single-gang box, and from
    /// its row of the table unless that is of octagonal boxes, which are round there too.
    fn round(&mut self, entry: &WiringEntry, item: Pointer) {
        let at = item.member(&"/locknut_on_side");
        let MountedBox { shape, standard, conduit_body, single_gang_in_wall_or_ceiling, .. } = self.enclosure;
        let flat_row = standard.filter(|row| row.shape() != Shape::Octagonal);
        let proof = &mut self.inspection.proof;
        if let (None, Some(row)) = (shape, flat_row) {
            let standard = of_box(&"/standard");
            proof.word(&ROUND, row.key(), standard);
            proof.does_not_apply(&ROUND, "flat-sided-box", Some(standard));
            return;
        }
        match (shape, entry.locknut_on_side) {
            (Some(BoxShape::FlatSided), _) => {
                proof.does_not_apply(&ROUND, "flat-sided-box", Some(of_box(&"/shape")));
            }
            (None, _) if conduit_body == Some(true) => {
                proof.does_not_apply(&ROUND, "entry-of-conduit-body", Some(BODY));
            }
            (None, _) if single_gang_in_wall_or_ceiling == Some(true) => {
                proof.does_not_apply(&ROUND, "flat-sided-box", Some(SINGLE_GANG_BOX));
            }
            (None, Some(true) | None) => {
                let shape = of_box(&"/shape");
                self.inspection.open(&ROUND, None, shape, "finding-round-box-shape-open");
            }
            (Some(BoxShape::Round), given) | (None, given @ Some(false)) => {
                if shape.is_some() {
                    proof.word(&ROUND, "round", of_box(&"/shape"));
                }
                self.inspection.expect(&ROUND, false, given, at, ON_SIDE);
            }
        }
    }

    /// Metal wiring in a nonmetallic box. Where all entries are bonded it does not matter what the box is made of.
    fn metal_in_nonmetallic(&mut self, entry: &WiringEntry) {
        if !matches!(entry.wiring, EntryWiring::MetalRaceway | EntryWiring::ArmoredCable) {
            return;
        }
        let MountedBox { material, bonds_all_entries, .. } = self.enclosure;
        match material {
            Some(MountedMaterial::Metal) => {
                self.inspection.proof.does_not_apply(
                    &METAL_IN_NONMETALLIC,
                    "metal-box-mounted",
                    Some(MATERIAL),
                );
            }
            None if bonds_all_entries != Some(true) => {
                self.inspection.open(&METAL_IN_NONMETALLIC, None, MATERIAL, "finding-entry-material-open");
            }
            Some(MountedMaterial::Nonmetallic) | None => {
                let at = of_box(&"/bonds_all_entries");
                self.inspection.fact(&METAL_IN_NONMETALLIC, bonds_all_entries, at, BONDED);
            }
        }
    }

    /// Whether an entry is held: secured to the box, held by a complete raceway, or fastened near a nonmetallic single-gang box.
    fn held(&mut self, entry: &WiringEntry, item: Pointer) {
        let sheathed = matches!(
            entry.wiring,
            EntryWiring::NonmetallicSheathedCable | EntryWiring::UndergroundFeederCable
        );
        let sheath = if sheathed { self.sheath(entry, item) } else { Status::NotDetermined };
        let raceway = item.member(&"/in_complete_raceway");
        let relieves = sheathed && self.book.box_entry.relieves_in_raceway;
        if sheathed && entry.in_complete_raceway == Some(true) {
            if relieves {
                self.inspection.granted(&IN_RACEWAY, raceway, "finding-cable-in-raceway");
                self.inspection.proof.does_not_apply(&SECURED, "held-otherwise", Some(raceway));
                return;
            }
            self.inspection.proof.does_not_apply(&IN_RACEWAY, "not-in-edition", Some(raceway));
        }
        if sheathed && entry.secured != Some(true) {
            if self.enclosure.material == Some(MountedMaterial::Metal) {
                self.inspection.proof.does_not_apply(&SINGLE_GANG, "metal-box-mounted", Some(MATERIAL));
            } else if entry.secured == Some(false) || self.does_without_clamp(entry, sheath) {
                if let Some(secured) = entry.secured {
                    self.inspection.proof.fact(&SINGLE_GANG, secured, item.member(&"/secured"));
                }
                self.inspection.proof.does_not_apply(&SECURED, "held-otherwise", Some(item));
                self.fastened_near(entry, item, sheath);
                return;
            }
        }
        self.inspection.fact(&SECURED, entry.secured, item.member(&"/secured"), HELD);
        if relieves && entry.in_complete_raceway.is_none() {
            self.inspection.unless(raceway);
        }
    }

    /// How far a nonmetallic sheath reaches in.
    fn sheath(&mut self, entry: &WiringEntry, item: Pointer) -> Status {
        let limit = self.inspection.proof.stated(&self.book.box_entry.sheath);
        let value = entry.sheath_inside.map(|sheath| sheath.value());
        let given = distance(value, item.member(&"/sheath_inside"));
        let reaches = self.inspection.limit(&SHEATH, given, Relation::AtLeast, limit, SHEATHED);
        if let Some(clamp) = entry.clamp_inside {
            self.past_clamp(clamp, item);
        }
        reaches
    }

    /// How far the sheath reaches past a clamp inside the box.
    fn past_clamp(&mut self, clamp: ClampInside, item: Pointer) {
        let past = clamp.sheath_past.map(|past| past.value());
        let given = distance(past, item.member(&"/clamp_inside/sheath_past"));
        let proof = &mut self.inspection.proof;
        match self.book.box_entry.past_clamp {
            PastClamp::NotAsked => {
                proof.does_not_apply(
                    &SHEATH_PAST_CLAMP,
                    "not-in-edition",
                    Some(item.member(&"/clamp_inside")),
                );
            }
            PastClamp::Beyond => {
                let limit = proof.nothing(&SHEATH_PAST_CLAMP, Measure::Length);
                self.inspection.limit(&SHEATH_PAST_CLAMP, given, Relation::Above, limit, BEYOND_CLAMP);
            }
            PastClamp::AtLeast(least) => {
                let limit = proof.stated(&least);
                self.inspection.limit(&SHEATH_PAST_CLAMP, given, Relation::AtLeast, limit, PAST_CLAMP);
            }
        }
    }

    /// Whether a cable is named by the exception of the single-gang box.
    fn is_named(&mut self, entry: &WiringEntry) -> bool {
        let is_feeder = entry.wiring == EntryWiring::UndergroundFeederCable;
        !is_feeder
            || self.book.box_entry.feeder_without_clamp
            || self.inspection.proof.reading::<FeederAsNm>() == FeederAsNm::AsNm
    }

    /// Whether all that the exception of the single-gang box asks is known to be so: then securing does not matter.
    fn does_without_clamp(&mut self, entry: &WiringEntry, sheath: Status) -> bool {
        let most = self.value(&self.book.box_entry.fastened_within);
        self.enclosure.material == Some(MountedMaterial::Nonmetallic)
            && self.enclosure.single_gang_in_wall_or_ceiling == Some(true)
            && entry.fastened_at.is_some_and(|at| at.value() <= most)
            && sheath == Status::Satisfied
            && self.is_named(entry)
    }

    /// A cable that is not secured to its box: the box must be a small nonmetallic one in a wall or ceiling, and the cable
    /// fastened close by, with enough sheath inside.
    fn fastened_near(&mut self, entry: &WiringEntry, item: Pointer, sheath: Status) {
        let small = self.enclosure.single_gang_in_wall_or_ceiling;
        let small = self.inspection.fact(&SINGLE_GANG, small, SINGLE_GANG_BOX, SMALL_BOX);
        if small == Status::Violated {
            return;
        }
        let limit = self.inspection.proof.stated(&self.book.box_entry.fastened_within);
        let given = distance(entry.fastened_at.map(|at| at.value()), item.member(&"/fastened_at"));
        self.inspection.limit(&SINGLE_GANG, given, Relation::AtMost, limit, FASTENED);
        match self.enclosure.material {
            Some(material) => {
                let says = if material == MountedMaterial::Metal { "metal" } else { "nonmetallic" };
                self.inspection.proof.word(&SINGLE_GANG, says, MATERIAL);
            }
            None => {
                self.inspection.open(&SINGLE_GANG, None, MATERIAL, "finding-entry-material-open");
            }
        }
        if !self.is_named(entry) {
            let at = item.member(&"/wiring");
            let step = self.inspection.proof.word(&SINGLE_GANG, "underground_feeder_cable", at);
            self.inspection.decided_by(&SINGLE_GANG, false, at, step, FEEDER);
        }
        if sheath == Status::Violated {
            self.inspection.advise(&SINGLE_GANG, "finding-single-gang-needs-sheath", item);
        }
    }
}
