//! The opening that the finish leaves over a recessed box.

use super::{FinishOpening, Mounting, distance, of_box};
use crate::checks::inspection::Sentences;
use crate::derivation::{Figure, Pattern, Pointer, Relation};
use crate::quantity::Length;
use crate::rulebook::RuleFigure;
use crate::rulebook::box_access::{OPENING, OPENING_FOR_DEVICE, OPENING_FULL, Openings};

const FULL: Sentences = Sentences {
    met: "finding-whole-box-open",
    broken: "finding-large-box-covered",
    open: "finding-whole-box-open-open",
};
const CENTER: Sentences = Sentences {
    met: "finding-opening-centered",
    broken: "finding-opening-off-center",
    open: "finding-opening-center-open",
};
const WITHIN: Sentences = Sentences {
    met: "finding-opening-within-walls",
    broken: "finding-opening-beyond-walls",
    open: "finding-opening-walls-open",
};
const SIZE: Sentences = Sentences {
    met: "finding-opening-large-enough",
    broken: "finding-opening-too-small",
    open: "finding-opening-size-open",
};

const PLACE: Pointer = Pointer::to(&"/access/finish_opening");

impl Mounting {
    /// Openings are spoken of from 2023 on, there by an interim amendment that may not be in force.
    pub(super) fn finish_opening(&mut self, opening: FinishOpening) {
        let at = PLACE.member(&"/interim_amendment_in_force");
        let Some(openings) = self.book.box_access.openings.clone() else {
            self.inspection.proof.does_not_apply(&OPENING, "not-in-edition", Some(PLACE));
            return;
        };
        let whole = PLACE.member(&"/whole_box_open");
        if opening.whole_box_open == Some(true) {
            self.inspection.fact(&OPENING_FULL, Some(true), whole, FULL);
            self.inspection.proof.does_not_apply(&OPENING, "whole-box-open", Some(whole));
            return;
        }
        match opening.interim_amendment_in_force {
            _ if openings.in_text => {}
            // what is as the amendment asks is so whether or not it is in force
            None => {
                let begun = self.inspection.begin();
                self.opening_of_box(opening, &openings, whole);
                if !self.inspection.all_met_since(&begun) {
                    self.inspection.forget_since(&begun);
                    self.inspection.open(&OPENING, None, at, "finding-opening-amendment-open");
                }
                return;
            }
            Some(in_force) => {
                self.inspection.proof.fact(&OPENING, in_force, at);
                if !in_force {
                    self.inspection.proof.does_not_apply(&OPENING, "amendment-not-in-force", Some(at));
                    return;
                }
            }
        }
        self.opening_of_box(opening, &openings, whole);
    }

    /// By the size of the box: a large one, or a conduit body, is wholly open.
    fn opening_of_box(&mut self, opening: FinishOpening, openings: &Openings, whole: Pointer) {
        match self.is_small(openings) {
            Some(false) => {
                self.inspection.fact(&OPENING_FULL, opening.whole_box_open, whole, FULL);
            }
            None if self.enclosure.volume.is_none() => {
                self.inspection.open(&OPENING, None, of_box(&"/volume"), "finding-opening-volume-open");
            }
            None => {
                self.inspection.open(&OPENING, None, of_box(&"/conduit_body"), "finding-opening-body-open");
            }
            Some(true) => self.small_box_opening(opening, openings),
        }
    }

    /// Whether the smaller opening may serve: not over a conduit body, nor over a large box. `None` where that is not known.
    fn is_small(&mut self, openings: &Openings) -> Option<bool> {
        let is_body = self.is_conduit_body(&OPENING);
        if is_body == Some(true) {
            return Some(false);
        }
        let volume = self.volume(&OPENING)?;
        let proof = &mut self.inspection.proof;
        let limit = proof.stated(&openings.small_up_to);
        let (is_small, _) = proof.compare(&OPENING, volume, Relation::AtMost, limit);
        (!is_small || is_body.is_some()).then_some(is_small)
    }

    fn small_box_opening(&mut self, opening: FinishOpening, openings: &Openings) {
        if opening.fits_device == Some(true) {
            let at = PLACE.member(&"/fits_device");
            self.inspection.granted(&OPENING_FOR_DEVICE, at, "finding-opening-fits-device");
            return;
        }
        let Openings { off_center, long_side, short_side, diameter, .. } = *openings;
        let limit = self.stated(&off_center);
        let given = distance(opening.off_center.map(|center| center.value()), PLACE.member(&"/off_center"));
        self.inspection.limit(&OPENING, given, Relation::AtMost, limit, CENTER);
        let within = PLACE.member(&"/within_box_walls");
        self.inspection.fact(&OPENING, opening.within_box_walls, within, WITHIN);
        if opening.diameter.is_some() {
            self.side(opening.diameter, &"/diameter", diameter);
        } else {
            self.side(opening.long_side, &"/long_side", long_side);
            self.side(opening.short_side, &"/short_side", short_side);
        }
    }

    fn side(&mut self, side: Option<Length>, member: Pattern, least: RuleFigure) {
        let limit: Figure = self.stated(&least);
        let given = distance(side.map(|side| side.value()), PLACE.member(member));
        self.inspection.limit(&OPENING, given, Relation::AtLeast, limit, SIZE);
    }
}
