//! Grounding of a metal box, fasteners that reach into it, and moisture.

use super::{
    BODY, BoxMountingRequest, DrainOpening, Fastener, FastenerThrough, LocationKind, MATERIAL, Moisture,
    MountedBox, MountedMaterial, Mounting, distance, of_box,
};
use crate::checks::Name;
use crate::checks::inspection::Sentences;
use crate::derivation::{Pattern, Pointer, Relation};
use crate::quantity::{Decimal, Measure};
use crate::rulebook::box_protection::{
    BLUNT, COVER_SCREWS, DRAIN, DRAIN_FITTING, Fasteners, GROUNDED, KEEP_DRY, THROUGH_BODY, THROUGH_COVER,
    THROUGH_SMALL_WALL, THROUGH_WALL, WET,
};
use crate::rulebook::{Rule, RuleFigure};

const GROUND: Sentences = Sentences {
    met: "finding-box-grounded",
    broken: "finding-box-not-grounded",
    open: "finding-box-grounded-open",
};
const BLUNT_END: Sentences = Sentences {
    met: "finding-fastener-blunt",
    broken: "finding-fastener-sharp",
    open: "finding-fastener-blunt-open",
};
const REACH: Sentences = Sentences {
    met: "finding-fastener-short-enough",
    broken: "finding-fastener-too-long",
    open: "finding-fastener-reach-open",
};
const DRY_INSIDE: Sentences = Sentences {
    met: "finding-moisture-kept-out",
    broken: "finding-moisture-enters",
    open: "finding-moisture-open",
};
const LISTED_WET: Sentences = Sentences {
    met: "finding-listed-for-wet",
    broken: "finding-not-listed-for-wet",
    open: "finding-listed-for-wet-open",
};
const DRAINED_BOX: Sentences = Sentences {
    met: "finding-drained-box-listed",
    broken: "finding-drained-box-not-listed",
    open: "finding-drained-box-open",
};
const NARROW: Sentences = Sentences {
    met: "finding-drain-wide-enough",
    broken: "finding-drain-too-narrow",
    open: "finding-drain-too-narrow",
};
const WIDE: Sentences = Sentences {
    met: "finding-drain-narrow-enough",
    broken: "finding-drain-too-wide",
    open: "finding-drain-too-wide",
};

impl Mounting {
    /// A metal box is grounded. One that is grounded may be of anything.
    pub(super) fn grounding(&mut self) {
        let MountedBox { material, grounded, .. } = self.enclosure;
        match material {
            Some(MountedMaterial::Nonmetallic) => {
                self.inspection.proof.does_not_apply(&GROUNDED, "nonmetallic-box", Some(MATERIAL));
            }
            Some(MountedMaterial::Metal) => {
                self.inspection.fact(&GROUNDED, grounded, of_box(&"/grounded"), GROUND);
            }
            None => {}
        }
    }

    /// Fasteners put in on site that reach into the wiring space.
    pub(super) fn fasteners(&mut self, fasteners: &[Fastener]) {
        if fasteners.is_empty() {
            return;
        }
        let Some(book) = self.book.box_protection.fasteners.clone() else {
            let at = Pointer::to(&"/fasteners");
            self.inspection.proof.does_not_apply(&BLUNT, "not-in-edition", Some(at));
            return;
        };
        for (index, fastener) in fasteners.iter().enumerate() {
            self.inspection.about(fastener.id.as_ref().map(Name::as_str), index);
            let item = Pointer::of(&"/fasteners/#", index);
            if fastener.as_maker_specifies == Some(true) {
                let at = item.member(&"/as_maker_specifies");
                self.inspection.granted(&BLUNT, at, "finding-fastener-as-specified");
                continue;
            }
            if let Some(specified) = fastener.as_maker_specifies {
                self.inspection.proof.fact(&BLUNT, specified, item.member(&"/as_maker_specifies"));
            }
            self.inspection.fact(&BLUNT, fastener.blunt, item.member(&"/blunt"), BLUNT_END);
            self.unless_specified(fastener, item);
            match fastener.through {
                FastenerThrough::CoverScrew => {
                    self.reach(fastener, item, &COVER_SCREWS, book.cover_screws);
                }
                FastenerThrough::Cover => self.reach(fastener, item, &THROUGH_COVER, book.through_cover),
                FastenerThrough::Wall => self.through_wall(fastener, item, &book),
            }
        }
    }

    fn unless_specified(&mut self, fastener: &Fastener, item: Pointer) {
        if fastener.as_maker_specifies.is_none() {
            self.inspection.unless(item.member(&"/as_maker_specifies"));
        }
    }

    /// How far a fastener reaches in. An approved protection of its end lets it reach farther, except in a conduit body.
    fn reach(&mut self, fastener: &Fastener, item: Pointer, rule: &'static Rule, most: RuleFigure) {
        let limit = self.stated(&most);
        let reach = fastener.reach.map(|reach| reach.value());
        let protection = item.member(&"/protected_end");
        let may_be_longer = !std::ptr::eq(rule, &THROUGH_BODY);
        // a protected end may reach any way, so that nobody need say how far
        let is_long = reach.is_none_or(|reach| reach > limit.value);
        if may_be_longer && is_long && fastener.protected_end == Some(true) {
            if let Some(reach) = reach {
                self.inspection.proof.given(rule, reach, Measure::Length, item.member(&"/reach"));
            }
            self.inspection.granted(rule, protection, "finding-fastener-end-protected");
            return;
        }
        let given = distance(reach, item.member(&"/reach"));
        self.inspection.limit(rule, given, Relation::AtMost, limit, REACH);
        if may_be_longer && fastener.protected_end.is_none() {
            self.inspection.unless(protection);
        }
        self.unless_specified(fastener, item);
    }

    /// Through a wall: by whether it is that of a box or of a conduit body, by the volume of the box, and by how near an
    /// adjacent wall is. What ends flush with the wall suffices everywhere.
    fn through_wall(&mut self, fastener: &Fastener, item: Pointer, book: &Fasteners) {
        let is_flush = fastener.reach.is_some_and(|reach| reach.value() == Decimal::ZERO);
        let is_body = self.is_conduit_body(&THROUGH_WALL);
        if is_body == Some(true) || is_flush {
            self.inspection.proof.does_not_apply(&THROUGH_WALL, "flush-anyway", Some(item));
            self.reach(fastener, item, &THROUGH_BODY, book.through_body);
            return;
        }
        let most_of_large = self.most_of_large(fastener, book);
        let is_over = |most: Decimal| fastener.reach.is_some_and(|reach| reach.value() > most);
        let is_protected = fastener.protected_end == Some(true);
        let Some(volume) = self.volume(&THROUGH_WALL) else {
            if is_body == Some(false) && is_protected {
                let at = item.member(&"/protected_end");
                self.inspection.granted(&THROUGH_WALL, at, "finding-fastener-end-protected");
            } else if fastener.mounts_box == Some(false) && !is_protected && is_over(most_of_large) {
                // too long for a large box is too long for any other
                self.inspection.proof.fact(&THROUGH_WALL, false, item.member(&"/mounts_box"));
                self.through_large_wall(fastener, item, book);
            } else {
                let at = of_box(&"/volume");
                self.inspection.open(&THROUGH_WALL, None, at, "finding-fastener-volume-open");
                let unsaid = [
                    (
                        fastener.protected_end.is_none() && is_body == Some(false),
                        &"/protected_end" as Pattern,
                    ),
                    (fastener.mounts_box.is_none() && is_over(most_of_large), &"/mounts_box"),
                    (fastener.reach.is_none(), &"/reach"),
                ];
                self.also_supply(item, &unsaid);
            }
            return;
        };
        let proof = &mut self.inspection.proof;
        let limit = proof.stated(&book.large_over);
        let (is_large, _) = proof.compare(&THROUGH_WALL, volume, Relation::Above, limit);
        let relieved = !is_large && fastener.mounts_box == Some(true) || is_protected;
        let most = if is_large { most_of_large } else { self.value(&book.through_small_wall) };
        if is_body.is_none() && (relieved || !is_over(most)) {
            self.inspection.open(&THROUGH_WALL, None, BODY, "finding-fastener-body-open");
            let is_far_open = is_large && fastener.from_adjacent_wall.is_none();
            let unsaid = [
                (is_far_open && is_over(self.value(&book.through_wall)), &"/from_adjacent_wall" as Pattern),
                (fastener.reach.is_none(), &"/reach"),
            ];
            self.also_supply(item, &unsaid);
        } else if is_large {
            self.through_large_wall(fastener, item, book);
        } else {
            self.through_small_wall(fastener, item, book);
        }
    }

    /// What else would settle what was left open last.
    fn also_supply(&mut self, item: Pointer, unsaid: &[(bool, Pattern)]) {
        if let Some(finding) = self.inspection.findings.last_mut() {
            let members = unsaid.iter().filter(|(settles, _)| *settles);
            finding.supply.extend(members.map(|(_, member)| item.member(member)));
        }
    }

    /// The most that a fastener may reach into a large box, as far from an adjacent wall as it is said to be.
    fn most_of_large(&self, fastener: &Fastener, book: &Fasteners) -> Decimal {
        let near = self.value(&book.near);
        let is_far = fastener.from_adjacent_wall.is_some_and(|from| from.value() > near);
        self.value(if is_far { &book.through_wall } else { &book.through_wall_near })
    }

    /// Of a small box: flush, except what mounts the box.
    fn through_small_wall(&mut self, fastener: &Fastener, item: Pointer, book: &Fasteners) {
        let at = item.member(&"/mounts_box");
        match fastener.mounts_box {
            Some(true) => {
                self.inspection.granted(&THROUGH_SMALL_WALL, at, "finding-fastener-mounts-box");
            }
            None if fastener.reach.is_some() && fastener.protected_end != Some(true) => {
                let limit = self.stated(&book.through_small_wall);
                let given = distance(fastener.reach.map(|reach| reach.value()), item.member(&"/reach"));
                let finding = "finding-fastener-mounts-box-open";
                let limit = (Relation::AtMost, limit);
                self.inspection.open_given(&THROUGH_SMALL_WALL, given, limit, at, finding);
            }
            Some(false) | None => {
                if fastener.mounts_box.is_some() {
                    self.inspection.proof.fact(&THROUGH_SMALL_WALL, false, at);
                }
                self.reach(fastener, item, &THROUGH_SMALL_WALL, book.through_small_wall);
            }
        }
    }

    fn through_large_wall(&mut self, fastener: &Fastener, item: Pointer, book: &Fasteners) {
        let near_at = item.member(&"/from_adjacent_wall");
        let near = fastener.from_adjacent_wall.map(|from| {
            let proof = &mut self.inspection.proof;
            let from = proof.given(&THROUGH_WALL, from.value(), Measure::Length, near_at);
            let within = proof.stated(&book.near);
            proof.compare(&THROUGH_WALL, from, Relation::AtMost, within).0
        });
        let reach = fastener.reach.map(|reach| reach.value());
        let is_over = |most: Decimal| reach.is_some_and(|reach| reach > most);
        let (most, most_near) = (self.value(&book.through_wall), self.value(&book.through_wall_near));
        let is_decided = is_over(most_near) || fastener.protected_end == Some(true);
        match near {
            None if is_over(most) && !is_decided => {
                let limit = (Relation::AtMost, self.stated(&book.through_wall));
                let given = distance(reach, item.member(&"/reach"));
                let finding = "finding-fastener-corner-open";
                self.inspection.open_given(&THROUGH_WALL, given, limit, near_at, finding);
            }
            None if is_over(most_near) => self.reach(fastener, item, &THROUGH_WALL, book.through_wall_near),
            Some(true) => self.reach(fastener, item, &THROUGH_WALL, book.through_wall_near),
            Some(false) | None => self.reach(fastener, item, &THROUGH_WALL, book.through_wall),
        }
    }

    /// Moisture kept out, the box listed for a wet location, and drain openings of the right size.
    /// Of a handhole enclosure none of it is asked.
    pub(super) fn moisture(&mut self, request: &BoxMountingRequest) {
        let Some(Moisture { location, kept_out, drain_openings }) = &request.moisture else { return };
        if request.handhole.is_some() {
            let at = Pointer::to(&"/handhole");
            self.inspection.proof.does_not_apply(&KEEP_DRY, "handhole-enclosure", Some(at));
            return;
        }
        let at = Pointer::to(&"/moisture/location");
        if *location == LocationKind::Dry {
            self.inspection.proof.does_not_apply(&KEEP_DRY, "dry-location", Some(at));
        } else {
            let says = if *location == LocationKind::Wet { "wet" } else { "damp" };
            self.inspection.proof.word(&KEEP_DRY, says, at);
            self.inspection.fact(&KEEP_DRY, *kept_out, Pointer::to(&"/moisture/kept_out"), DRY_INSIDE);
        }
        if *location == LocationKind::Wet {
            let at = of_box(&"/listed_for_wet_locations");
            self.inspection.fact(&WET, self.enclosure.listed_for_wet_locations, at, LISTED_WET);
        }
        for (index, opening) in drain_openings.iter().enumerate() {
            self.drain(*opening, Pointer::of(&"/moisture/drain_openings/#", index), index);
        }
        if !drain_openings.is_empty() {
            self.drained_box();
        }
    }

    fn drain(&mut self, opening: DrainOpening, item: Pointer, index: usize) {
        self.inspection.about(None, index);
        let at = item.member(&"/diameter");
        let given = || distance(Some(opening.diameter.value()), at);
        let (least, most) = (self.book.box_protection.drain_least, self.book.box_protection.drain_most);
        let limit = self.stated(&least);
        self.inspection.limit(&DRAIN, given(), Relation::AtLeast, limit, NARROW);
        let limit = self.stated(&most);
        let wide = opening.diameter.value() > limit.value;
        let fitting = item.member(&"/listed_fitting");
        match opening.listed_fitting {
            Some(true) if wide => {
                self.inspection.granted(&DRAIN_FITTING, fitting, "finding-drain-fitting");
            }
            None if wide => {
                let limit = (Relation::AtMost, limit);
                self.inspection.open_given(&DRAIN, given(), limit, fitting, "finding-drain-fitting-open");
            }
            listed => {
                if let Some(listed) = listed {
                    self.inspection.proof.fact(&DRAIN, listed, fitting);
                }
                self.inspection.limit(&DRAIN, given(), Relation::AtMost, limit, WIDE);
            }
        }
    }

    /// Openings are drilled in boxes that are listed for damp or for wet locations.
    fn drained_box(&mut self) {
        let MountedBox { listed_for_wet_locations: wet, listed_for_damp_locations: damp, .. } =
            self.enclosure;
        let listings =
            [(wet, of_box(&"/listed_for_wet_locations")), (damp, of_box(&"/listed_for_damp_locations"))];
        self.inspection.any_of(&DRAIN, &listings, DRAINED_BOX);
    }
}
