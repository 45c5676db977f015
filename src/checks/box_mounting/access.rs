//! Whether the wiring in the box can be reached.

use super::{Access, AccessPlace, LooseCover, Mounting};
use crate::checks::inspection::Sentences;
use crate::derivation::Pointer;
use crate::rulebook::box_access::{BUILDING, UNDER_LOOSE_COVER, UNDERGROUND};

const IN_BUILDING: Sentences = Sentences {
    met: "finding-reached-in-building",
    broken: "finding-not-reached-in-building",
    open: "finding-reached-in-building-open",
};
const BELOW_GROUND: Sentences = Sentences {
    met: "finding-reached-underground",
    broken: "finding-not-reached-underground",
    open: "finding-reached-underground-open",
};
const LISTED: Sentences = Sentences {
    met: "finding-loose-cover-listed-box",
    broken: "finding-loose-cover-unlisted-box",
    open: "finding-loose-cover-listed-box-open",
};
const LOOSE: Sentences = Sentences {
    met: "finding-loose-cover",
    broken: "finding-loose-cover-firm",
    open: "finding-loose-cover-open",
};
const IDENTIFIED: Sentences = Sentences {
    met: "finding-loose-cover-place-identified",
    broken: "finding-loose-cover-place-lost",
    open: "finding-loose-cover-place-open",
};

const DESCRIBED: Sentences = Sentences {
    met: "finding-loose-cover-place-described",
    broken: "finding-loose-cover-place-undescribed",
    open: "finding-loose-cover-place-described-open",
};

const LOOSE_COVER: Pointer = Pointer::to(&"/access/under_loose_cover");

impl LooseCover {
    fn is_as_asked(self, describes_place: bool) -> bool {
        let place = if describes_place { self.place_described } else { self.place_identified };
        [self.listed_box, self.only_loose_material, place] == [Some(true); 3]
    }
}

impl Mounting {
    /// Reached as it is; or, underground, covered up as the exception lets it be.
    pub(super) fn access(&mut self, access: Option<Access>, is_covered_in_finish: bool) {
        let Some(Access { place, reachable, under_loose_cover, finish_opening }) = access else { return };
        let at = Pointer::to(&"/access/reachable");
        let (rule, sentences) = match place {
            AccessPlace::Building => (&BUILDING, IN_BUILDING),
            AccessPlace::Underground => (&UNDERGROUND, BELOW_GROUND),
        };
        match (under_loose_cover, reachable) {
            (Some(_), Some(true)) => {
                self.inspection.fact(rule, reachable, at, sentences);
                self.inspection.proof.does_not_apply(&UNDER_LOOSE_COVER, "reached-as-it-is", Some(at));
            }
            // a cover that is not what the exception asks for fails only a box that is known not to be reached
            (Some(cover), None) if !cover.is_as_asked(self.book.box_access.describes_place) => {
                self.inspection.fact(rule, None, at, sentences);
                self.inspection.proof.does_not_apply(&UNDER_LOOSE_COVER, "not-known-to-be-needed", Some(at));
            }
            (Some(cover), _) => {
                if let Some(reachable) = reachable {
                    self.inspection.proof.fact(&UNDER_LOOSE_COVER, reachable, at);
                }
                self.inspection.proof.does_not_apply(rule, "under-loose-cover", Some(LOOSE_COVER));
                self.loose_cover(cover);
            }
            (None, None) if place == AccessPlace::Building && is_covered_in_finish => {
                let cover = Pointer::to(&"/cover/fitted");
                self.inspection.granted(rule, cover, "finding-reached-by-cover");
            }
            (None, _) => {
                self.inspection.fact(rule, reachable, at, sentences);
                if place == AccessPlace::Underground {
                    self.inspection.unless(LOOSE_COVER);
                }
            }
        }
        if let Some(opening) = finish_opening {
            self.finish_opening(opening);
        }
    }

    fn loose_cover(&mut self, cover: LooseCover) {
        let LooseCover { listed_box, only_loose_material, place_identified, place_described } = cover;
        let at = |member| LOOSE_COVER.member(member);
        let place = if self.book.box_access.describes_place {
            (place_described, at(&"/place_described"), DESCRIBED)
        } else {
            (place_identified, at(&"/place_identified"), IDENTIFIED)
        };
        let asked = [
            (listed_box, at(&"/listed_box"), LISTED),
            (only_loose_material, at(&"/only_loose_material"), LOOSE),
            place,
        ];
        for (given, at, sentences) in asked {
            self.inspection.fact(&UNDER_LOOSE_COVER, given, at, sentences);
        }
    }
}
