//! One piece of equipment: what depth it asks for, by how far it projects and what supplies it.

use super::{DEPTH, DepthEnclosure, Depths, EnclosedEquipment, EquipmentDepth, SideEntry};
use crate::checks::Name;
use crate::checks::inspection::{Given, Sentences};
use crate::derivation::{Figure, Pointer, Relation};
use crate::quantity::Measure;
use crate::rulebook::box_depth::{
    AWG_8_TO_4, AWG_12_OR_10, DepthTakes, EQUIPMENT, LARGE, LISTED, OVER_4_AWG, PULL_BOX, REAR_CENTER,
    SIDE_ENTRY, UP_TO_14_AWG,
};
use crate::rulebook::reading::{EqualDepth, RearCenterEntry};
use crate::rulebook::{Choice, Rule, RuleFigure, Strategy};

const IDENTIFIED: Sentences = Sentences {
    met: "finding-box-identified",
    broken: "finding-box-not-identified",
    open: "finding-box-identified-open",
};
const PULL_BOX_VOLUME: Sentences = Sentences {
    met: "finding-pull-box-large-enough",
    broken: "finding-pull-box-too-small",
    open: "finding-pull-box-volume-open",
};
const NOT_PAST: Sentences = Sentences {
    met: "finding-not-past-side-entry",
    broken: "finding-side-entry-open",
    open: "finding-side-entry-open",
};
const CLEARANCE: Sentences = Sentences {
    met: "finding-side-entry-clear",
    broken: "finding-side-entry-not-clear",
    open: "finding-side-entry-clearance-open",
};
const REAR_EITHER_WAY: Sentences = Sentences {
    met: "finding-rear-center-either-way",
    broken: "finding-rear-center-short",
    open: "finding-depth-open",
};
const TAKEN: Sentences = Sentences {
    met: "finding-projection-taken",
    broken: "finding-projection-not-taken",
    open: "finding-depth-open",
};
const REAR: Sentences = Sentences {
    met: "finding-rear-center-enough",
    broken: "finding-rear-center-short",
    open: "finding-depth-open",
};

impl Choice for DepthTakes {
    /// The least depth for equipment that projects so far; `None` where that asks for none.
    type Apply = fn(Figure) -> Option<Figure>;
    const LAWFUL: Strategy<Self> = Strategy::<Self>::new("whole-projection", Some);
}

/// The depths that one piece of equipment asks for, each by its rule.
struct RequiredDepths {
    depths: Vec<(&'static Rule, Figure)>,
    /// Whether nothing is missing that could ask for more.
    determined: bool,
}

impl Depths {
    /// What a piece of equipment asks for, and whether that is determined.
    pub(super) fn equipment(&mut self, index: usize, one: &EnclosedEquipment) -> (EquipmentDepth, bool) {
        let at = Pointer::of(&"/equipment/#", index);
        let id = one.id.as_ref().map(Name::as_str);
        self.inspection.about(id, index);
        let mut depths_required = RequiredDepths { depths: Vec::new(), determined: true };
        if one.listed_for_this_box == Some(true) {
            self.inspection.proof.fact(&LISTED, true, at.member(&"/listed_for_this_box"));
            self.inspection.proof.does_not_apply(&LARGE, "listed-for-one-another", Some(at));
            self.in_listed_box(one, at, &mut depths_required);
        } else {
            self.by_projection_and_supply(one, at, &mut depths_required);
        }
        if let Some(entry) = one.side_entry {
            self.side_entry(entry, at);
        }
        let figures: Vec<Figure> = depths_required.depths.iter().map(|(_, depth)| *depth).collect();
        let required = if depths_required.determined {
            self.inspection.proof.largest(&EQUIPMENT, &figures)
        } else {
            None
        };
        let governed_by = required.and_then(|required| {
            depths_required
                .depths
                .iter()
                .find(|(_, depth)| depth.value == required.value)
                .map(|(rule, _)| rule.id)
        });
        let depth = EquipmentDepth { id: id.map(str::to_owned), at, required, governed_by };
        (depth, depths_required.determined)
    }

    /// Equipment and a box that are listed for one another: a listing takes away the depths that go by the conductors, and makes no
    /// room in a box that is shallower than its equipment.
    fn in_listed_box(&mut self, one: &EnclosedEquipment, at: Pointer, depths_required: &mut RequiredDepths) {
        let projection_at = at.member(&"/projection");
        let Some(projection) = one.projection else {
            depths_required.determined = false;
            if self.enclosure.is_some() {
                self.inspection.open(&EQUIPMENT, None, projection_at, "finding-projection-open");
            }
            return;
        };
        let proof = &mut self.inspection.proof;
        let projection = proof.given(&EQUIPMENT, projection.value(), Measure::Length, projection_at);
        self.takes(Some(projection), depths_required);
    }

    fn by_projection_and_supply(
        &mut self,
        one: &EnclosedEquipment,
        at: Pointer,
        depths_required: &mut RequiredDepths,
    ) {
        let projection_at = at.member(&"/projection");
        let projection = one.projection.map(|projection| {
            self.inspection.proof.given(&EQUIPMENT, projection.value(), Measure::Length, projection_at)
        });
        if projection.is_none() {
            self.inspection.open(&LARGE, None, projection_at, "finding-projection-open");
            depths_required.determined = false;
        }
        let (over, behind) = (self.book.large_projection, self.book.behind_large);
        let large = projection
            .is_some_and(|projection| self.behind(depths_required, &LARGE, projection, over, behind));
        let Some(size) = one.largest_supply_conductor else {
            let at = at.member(&"/largest_supply_conductor");
            self.inspection.open(&EQUIPMENT, None, at, "finding-supply-conductor-open");
            self.takes(projection, depths_required);
            depths_required.determined = false;
            return;
        };
        self.inspection.proof.word(&EQUIPMENT, size.name(), at.member(&"/largest_supply_conductor"));
        if size > self.book.pull_box_beyond {
            self.over_4_awg();
        } else if size >= self.book.deepest_from {
            self.least(depths_required, &AWG_8_TO_4, self.book.awg_8_to_4);
        } else if size > self.book.shallowest_up_to {
            self.least(depths_required, &AWG_12_OR_10, self.book.awg_12_or_10);
            if let Some(projection) = projection {
                let (over, behind) = (self.book.projection, self.book.behind);
                // large equipment has been asked for the same room already
                let projects = large || self.behind(depths_required, &AWG_12_OR_10, projection, over, behind);
                self.rear_center(one, at, (projection, projects), depths_required);
            } else if self.book.rear_center.is_some() && self.enclosure.is_some() {
                self.inspection.open(&REAR_CENTER, None, projection_at, "finding-projection-open");
            }
        } else {
            self.least(depths_required, &UP_TO_14_AWG, self.book.up_to_14_awg);
        }
        self.takes(projection, depths_required);
        if projection.is_none() && self.enclosure.is_some() {
            self.inspection.open(&EQUIPMENT, None, projection_at, "finding-projection-open");
        }
    }

    /// Asks for a depth that does not depend on the projection.
    fn least(&mut self, depths_required: &mut RequiredDepths, rule: &'static Rule, figure: RuleFigure) {
        let least = self.inspection.proof.stated(&figure);
        depths_required.depths.push((rule, least));
        self.ask(rule, least, DEPTH);
    }

    /// Asks for room behind equipment that projects more than a limit; whether it does.
    fn behind(
        &mut self,
        depths_required: &mut RequiredDepths,
        rule: &'static Rule,
        projection: Figure,
        over: RuleFigure,
        behind: RuleFigure,
    ) -> bool {
        let proof = &mut self.inspection.proof;
        let over = proof.stated(&over);
        let (projects, _) = proof.compare(rule, projection, Relation::Above, over);
        if projects {
            let behind = proof.stated(&behind);
            let depth = proof.sum(rule, &[projection, behind]);
            depths_required.depths.push((rule, depth));
            self.ask(rule, depth, DEPTH);
        }
        projects
    }

    /// The depth takes the equipment itself, whatever supplies it.
    fn takes(&mut self, projection: Option<Figure>, depths_required: &mut RequiredDepths) {
        let Some(projection) = projection.and_then(self.book.takes.apply) else { return };
        depths_required.depths.push((&EQUIPMENT, projection));
        let is_equal = self.internal.is_some_and(|internal| internal.value == projection.value);
        let relation = if is_equal && self.inspection.proof.reading::<EqualDepth>() == EqualDepth::DoesNot {
            Relation::Above
        } else {
            Relation::AtLeast
        };
        self.ask_so(&EQUIPMENT, relation, projection, TAKEN);
    }

    /// Room behind equipment where conductors enter through the center of the back.
    fn rear_center(
        &mut self,
        one: &EnclosedEquipment,
        at: Pointer,
        (projection, projects): (Figure, bool),
        depths_required: &mut RequiredDepths,
    ) {
        let at = at.member(&"/rear_center_entry");
        let Some(clearance) = self.book.rear_center else {
            if one.rear_center_entry == Some(true) {
                self.inspection.proof.does_not_apply(&REAR_CENTER, "not-in-edition", Some(at));
            }
            return;
        };
        if one.rear_center_entry == Some(false) {
            self.inspection.proof.does_not_apply(&REAR_CENTER, "no-rear-center-entry", Some(at));
            return;
        }
        let proof = &mut self.inspection.proof;
        if !projects && proof.reading::<RearCenterEntry>() == RearCenterEntry::ProjectingEquipment {
            proof.does_not_apply(&REAR_CENTER, "projects-little", Some(at));
            return;
        }
        let clearance = proof.stated(&clearance);
        let depth = proof.sum(&REAR_CENTER, &[projection, clearance]);
        let relation = Relation::AtLeast;
        let is_deep_enough =
            self.internal.is_some_and(|internal| relation.holds(internal.value, depth.value));
        match one.rear_center_entry {
            Some(true) => {
                self.inspection.proof.fact(&REAR_CENTER, true, at);
                depths_required.depths.push((&REAR_CENTER, depth));
                self.ask(&REAR_CENTER, depth, REAR);
            }
            _ if is_deep_enough => {
                self.ask(&REAR_CENTER, depth, REAR_EITHER_WAY);
                depths_required.determined = false;
            }
            _ => {
                self.inspection.open(&REAR_CENTER, Some((relation, depth)), at, "finding-rear-center-open");
                depths_required.determined = false;
            }
        }
    }

    /// Equipment on conductors larger than 4 AWG: a box identified for it, or a large pull box with bending space.
    fn over_4_awg(&mut self) {
        let Some(enclosure) = self.enclosure else {
            let at = Pointer::to(&"/enclosure");
            self.inspection.advise(&OVER_4_AWG, "finding-box-must-be-identified", at);
            return;
        };
        let DepthEnclosure { identified_for_equipment: identified, volume, .. } = enclosure;
        let at = |member| Pointer::to(&"/enclosure").member(member);
        let identified_at = at(&"/identified_for_equipment");
        let spacious_at = at(&"/pull_box_with_bending_space");
        let value = volume.map(|volume| volume.value());
        let given = Given { value, measure: Measure::Volume, at: at(&"/volume") };
        let (rulebook, units) = (self.inspection.proof.rulebook(), self.inspection.proof.units());
        let least = rulebook.value(&self.book.pull_box_over, units).0;
        let small = value.is_some_and(|value| value <= least);
        match (identified, enclosure.pull_box_with_bending_space) {
            // no bending space makes up for a volume that is too small
            (Some(false), None) if small => {
                self.inspection.proof.does_not_apply(&OVER_4_AWG, "not-identified", Some(identified_at));
                let limit = self.inspection.proof.stated(&self.book.pull_box_over);
                self.inspection.limit(&PULL_BOX, given, Relation::Above, limit, PULL_BOX_VOLUME);
            }
            (Some(false), None) => {
                self.inspection.proof.does_not_apply(&OVER_4_AWG, "not-identified", Some(identified_at));
                self.inspection.open(&PULL_BOX, None, spacious_at, "finding-bending-space-open");
                if let (None, Some(finding)) = (value, self.inspection.findings.last_mut()) {
                    finding.supply.push(given.at);
                }
            }
            (None | Some(false), Some(true)) => {
                if let Some(identified) = identified {
                    self.inspection.proof.fact(&PULL_BOX, identified, identified_at);
                }
                self.inspection.proof.does_not_apply(
                    &OVER_4_AWG,
                    "pull-box-with-bending-space",
                    Some(spacious_at),
                );
                self.inspection.proof.fact(&PULL_BOX, true, spacious_at);
                let limit = self.inspection.proof.stated(&self.book.pull_box_over);
                if small && identified.is_none() {
                    self.inspection.open(&OVER_4_AWG, None, identified_at, IDENTIFIED.open);
                } else {
                    self.inspection.limit(&PULL_BOX, given, Relation::Above, limit, PULL_BOX_VOLUME);
                }
            }
            (Some(true), _) | (None, None | Some(false)) | (Some(false), Some(false)) => {
                let because =
                    if identified == Some(true) { "identified-for-equipment" } else { "no-pull-box-named" };
                self.inspection.proof.does_not_apply(&PULL_BOX, because, Some(spacious_at));
                self.inspection.fact(&OVER_4_AWG, identified, identified_at, IDENTIFIED);
            }
        }
    }

    /// Equipment beside an entry in a side wall: not past its center line, or clear of its wall.
    fn side_entry(&mut self, entry: SideEntry, at: Pointer) {
        let Some(limit) = self.book.side_entry else {
            self.inspection.proof.does_not_apply(&SIDE_ENTRY, "not-in-edition", Some(at));
            return;
        };
        let past = (entry.past_centerline, at.member(&"/side_entry/past_centerline"));
        if past.0 == Some(false) {
            self.inspection.expect(&SIDE_ENTRY, false, past.0, past.1, NOT_PAST);
            return;
        }
        if let (Some(is_past), at) = past {
            self.inspection.proof.fact(&SIDE_ENTRY, is_past, at);
        }
        let limit = self.inspection.proof.stated(&limit);
        let value = entry.clearance.map(|clearance| clearance.value());
        let at = at.member(&"/side_entry/clearance");
        let is_clear = value.is_some_and(|value| Relation::AtLeast.holds(value, limit.value));
        if past.0.is_some() || is_clear {
            let given = Given { value, measure: Measure::Length, at };
            self.inspection.limit(&SIDE_ENTRY, given, Relation::AtLeast, limit, CLEARANCE);
        } else {
            self.inspection.open(&SIDE_ENTRY, Some((Relation::AtLeast, limit)), past.1, NOT_PAST.open);
        }
    }
}
