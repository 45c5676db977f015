//! What covers the box, and openings that nothing uses.

use super::{BODY, CombustibleFinish, FittedCover, Mounting, Stage, UnusedOpenings};
use crate::checks::inspection::{Given, Sentences};
use crate::derivation::{Pointer, Relation};
use crate::quantity::Measure;
use crate::rulebook::box_entry::UNUSED;
use crate::rulebook::box_surface::{
    BODY_COVER, CANOPY_FINISH, COVER, COVER_SCREWS, LUMINAIRE_OVER_BOX, PENDANT_CORD,
};

const FITTED: Sentences = Sentences {
    met: "finding-cover-fitted",
    broken: "finding-cover-missing",
    open: "finding-cover-fitted-open",
};
const BODY_FITTED: Sentences = Sentences {
    met: "finding-body-covered",
    broken: "finding-body-uncovered",
    open: "finding-body-covered-open",
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

const STAGE: Pointer = Pointer::to(&"/stage");

impl Mounting {
    /// The cover, its screws, and what shows or passes around it.
    pub(super) fn cover(&mut self, cover: Option<FittedCover>, stage: Option<Stage>) {
        let Some(cover) = cover else { return };
        if stage == Some(Stage::RoughIn) {
            for rule in [&COVER, &BODY_COVER, &COVER_SCREWS, &CANOPY_FINISH, &PENDANT_CORD] {
                self.inspection.proof.does_not_apply(rule, "rough-in", Some(STAGE));
            }
            return;
        }
        if stage == Some(Stage::Finished) {
            self.inspection.proof.word(&COVER, "finished", STAGE);
        }
        self.closed(cover);
        match cover.screws {
            Some(_) if cover.fitted == Some(false) => {
                let fitted = Some(Pointer::to(&"/cover/fitted"));
                self.inspection.proof.does_not_apply(&COVER_SCREWS, "no-cover-fitted", fitted);
            }
            Some(screws) => {
                let at = Pointer::to(&"/cover/screws/match_threads");
                self.inspection.fact(&COVER_SCREWS, screws.match_threads, at, SCREWS);
            }
            None => {}
        }
        if let Some(finish) = cover.combustible_finish {
            self.finish_under_canopy(finish);
        }
        if let Some(cord) = cover.pendant_cord {
            let at = Pointer::to(&"/cover/pendant_cord/bushed");
            self.inspection.fact(&PENDANT_CORD, cord.bushed, at, CORD);
        }
    }

    /// Something closes a finished box: a cover, or a luminaire over it. Of conduit bodies not every edition asks that.
    fn closed(&mut self, cover: FittedCover) {
        let FittedCover { fitted, luminaire_with_open_back, .. } = cover;
        let [fitted_at, luminaire] =
            [Pointer::to(&"/cover/fitted"), Pointer::to(&"/cover/luminaire_with_open_back")];
        let asks_bodies = self.book.box_surface.covers_bodies;
        let is_body = self.enclosure.is_conduit_body();
        if is_body == Some(true) && !asks_bodies {
            self.inspection.proof.does_not_apply(&COVER, "entry-of-conduit-body", Some(BODY));
            return;
        }
        let (rule, sentences) =
            if is_body == Some(true) { (&BODY_COVER, BODY_FITTED) } else { (&COVER, FITTED) };
        if fitted == Some(true) {
            self.inspection.fact(rule, fitted, fitted_at, sentences);
            return;
        }
        let is_under_luminaire = luminaire_with_open_back == Some(true);
        match is_body {
            // a box needs a cover where a body does not, or may do with a luminaire where a body may not
            None if (fitted.is_some() || is_under_luminaire) && is_under_luminaire == asks_bodies => {
                self.inspection.open(rule, None, BODY, "finding-cover-missing-body-open");
            }
            Some(false) | None if is_under_luminaire => {
                self.is_conduit_body(&LUMINAIRE_OVER_BOX);
                if let Some(fitted) = fitted {
                    self.inspection.proof.fact(&LUMINAIRE_OVER_BOX, fitted, fitted_at);
                }
                self.inspection.proof.does_not_apply(&COVER, "luminaire-over-box", Some(luminaire));
                self.inspection.granted(&LUMINAIRE_OVER_BOX, luminaire, "finding-luminaire-open-back");
            }
            _ => {
                if fitted.is_some() {
                    self.is_conduit_body(rule);
                }
                self.inspection.fact(rule, fitted, fitted_at, sentences);
                if is_body != Some(true) && luminaire_with_open_back.is_none() {
                    self.inspection.unless(luminaire);
                }
            }
        }
    }

    /// A combustible finish that shows under a canopy: small, or covered.
    fn finish_under_canopy(&mut self, finish: CombustibleFinish) {
        let at = |member| Pointer::to(&"/cover/combustible_finish").member(member);
        if finish.covered == Some(true) {
            self.inspection.granted(&CANOPY_FINISH, at(&"/covered"), "finding-finish-covered");
            return;
        }
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

    /// Openings that nothing uses.
    pub(super) fn unused_openings(&mut self, openings: Option<UnusedOpenings>) {
        let Some(UnusedOpenings { closed_like_the_wall }) = openings else { return };
        let at = Pointer::to(&"/unused_openings/closed_like_the_wall");
        self.inspection.fact(&UNUSED, closed_like_the_wall, at, CLOSED);
    }
}
