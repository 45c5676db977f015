//! What covers the box, and openings that nothing uses.

use super::{FittedCover, Mounting, Stage, UnusedOpenings};
use crate::checks::inspection::{Given, Sentences};
use crate::derivation::{Pointer, Relation};
use crate::quantity::Measure;
use crate::rulebook::box_entry::UNUSED;
use crate::rulebook::box_surface::{CANOPY_FINISH, COVER, COVER_SCREWS, PENDANT_CORD};

const STAGE: Pointer = Pointer::to(&"/stage");
const FITTED: Sentences = Sentences {
    met: "finding-cover-fitted",
    broken: "finding-cover-missing",
    open: "finding-cover-fitted-open",
};
const SCREWS: Sentences = Sentences {
    met: "finding-cover-screws-match",
    broken: "finding-cover-screws-differ",
    open: "finding-cover-screws-open",
};
const BARE_FINISH: Sentences = Sentences {
    met: "finding-finish-small",
    broken: "finding-finish-bare",
    open: "finding-finish-area-open",
};
const CORD: Sentences =
    Sentences { met: "finding-cord-bushed", broken: "finding-cord-bare", open: "finding-pendant-cord-open" };
const CLOSED: Sentences = Sentences {
    met: "finding-openings-closed",
    broken: "finding-openings-left-open",
    open: "finding-openings-closed-open",
};

impl Mounting {
    /// The cover, its screws, and what shows or passes around it.
    pub(super) fn cover(&mut self, cover: Option<FittedCover>, stage: Option<Stage>) {
        let Some(FittedCover { fitted, screws_match, combustible_finish, pendant_cord }) = cover else {
            return;
        };
        if stage == Some(Stage::RoughIn) {
            for rule in [&COVER, &COVER_SCREWS, &CANOPY_FINISH, &PENDANT_CORD] {
                self.inspection.proof.does_not_apply(rule, "rough-in", Some(STAGE));
            }
            return;
        }
        if let Some(Stage::Finished) = stage {
            self.inspection.proof.word(&COVER, "finished", STAGE);
        }
        let at = |member| Pointer::to(&"/cover").member(member);
        self.inspection.fact(&COVER, fitted, at(&"/fitted"), FITTED);
        if fitted == Some(false) {
            self.inspection.proof.does_not_apply(&COVER_SCREWS, "no-cover-fitted", Some(at(&"/fitted")));
        } else {
            self.inspection.fact(&COVER_SCREWS, screws_match, at(&"/screws_match"), SCREWS);
        }
        if let Some(finish) = combustible_finish {
            let at = |member| Pointer::to(&"/cover/combustible_finish").member(member);
            if finish.covered == Some(true) {
                self.inspection.granted(&CANOPY_FINISH, at(&"/covered"), "finding-finish-covered");
            } else {
                if finish.covered == Some(false) {
                    self.inspection.proof.fact(&CANOPY_FINISH, false, at(&"/covered"));
                }
                let limit = self.inspection.proof.stated(&self.book.box_surface.canopy_finish);
                let value = finish.exposed_area.map(|area| area.value());
                let large = value.is_some_and(|area| area >= limit.value);
                let relation = Relation::Below;
                let given = Given { value, measure: Measure::Area, at: at(&"/exposed_area") };
                if large && finish.covered.is_none() {
                    let (finding, covered) = ("finding-finish-covered-open", at(&"/covered"));
                    self.inspection.open_given(&CANOPY_FINISH, given, (relation, limit), covered, finding);
                } else {
                    self.inspection.limit(&CANOPY_FINISH, given, relation, limit, BARE_FINISH);
                }
            }
        }
        if let Some(cord) = pendant_cord {
            let at = Pointer::to(&"/cover/pendant_cord/bushed");
            self.inspection.fact(&PENDANT_CORD, cord.bushed, at, CORD);
        }
    }

    /// Openings that nothing uses.
    pub(super) fn unused_openings(&mut self, openings: Option<UnusedOpenings>) {
        let Some(UnusedOpenings { closed_like_the_wall }) = openings else { return };
        let at = Pointer::to(&"/unused_openings/closed_like_the_wall");
        self.inspection.fact(&UNUSED, closed_like_the_wall, at, CLOSED);
    }
}
