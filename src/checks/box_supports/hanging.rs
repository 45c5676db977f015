//! Luminaires on unbroken conduit and on stems, and boxes on cords.

use super::request::{ConduitPendant, CordPendant, HeldKind, LuminaireOnConduit, UnbrokenConduit};
use super::{Holding, length};
use crate::checks::inspection::{Given, Sentences};
use crate::derivation::Pointer;
use crate::derivation::Relation::{AtLeast, AtMost};
use crate::quantity::{Length, Measure, Weight};
use crate::rulebook::box_support::{CORD, CORD_GRIP, Clearance, LUMINAIRE_ON_CONDUIT, STEM, StemFitting};
use crate::rulebook::{Rule, RuleFigure};
use crate::tables::supporting_raceways::{Carried, SupportingRaceway};

const SWIVEL: Sentences = Sentences {
    met: "finding-stem-swivels",
    broken: "finding-stem-does-not-swivel",
    open: "finding-stem-swivels-open",
};

/// Where a luminaire hangs.
struct Place {
    height: Option<Length>,
    horizontal: Option<Length>,
}

impl Place {
    /// Whether both distances were given and are enough.
    fn is_clear(&self, held: &Holding<'_>, clearance: &Clearance) -> bool {
        let proof = &held.inspection.proof;
        let enough = |given: Option<Length>, figure: &RuleFigure| {
            given.is_some_and(|given| given.value() >= proof.rulebook().value(figure, proof.units()).0)
        };
        enough(self.height, &clearance.height) && enough(self.horizontal, &clearance.horizontal)
    }
}

impl Holding<'_> {
    pub(super) fn luminaire_on_conduit(&mut self, luminaire: &LuminaireOnConduit, index: usize) {
        let rule = &LUMINAIRE_ON_CONDUIT;
        let at = Pointer::of(&"/means/#", index);
        for (place, conduit) in luminaire.conduits.iter().enumerate() {
            self.unbroken(conduit, Pointer::of(&"/conduits/#", place).under(&"/means/#", index));
        }
        let place = Place { height: luminaire.height, horizontal: luminaire.horizontal_clearance };
        let clearance = &self.figures.conduit_clearance;
        match luminaire.accessible_to_unqualified {
            Some(false) => {
                let at = at.member(&"/accessible_to_unqualified");
                self.inspection.proof.does_not_apply(rule, "not-accessible", Some(at));
            }
            None if !place.is_clear(self, clearance) => {
                let at = at.member(&"/accessible_to_unqualified");
                self.inspection.open(rule, None, at, "finding-accessible-open");
            }
            accessible => {
                if let Some(accessible) = accessible {
                    self.inspection.proof.fact(rule, accessible, at.member(&"/accessible_to_unqualified"));
                }
                self.clear(rule, &place, clearance, at);
            }
        }
        match luminaire.conduits.as_slice() {
            [_] => self.extent(rule, luminaire.extent, &clearance.extent, at),
            _ => {
                let at = Some(at.member(&"/conduits"));
                self.inspection.proof.does_not_apply(rule, "not-a-single-conduit", at);
            }
        }
        self.nipple(luminaire, at);
    }

    fn unbroken(&mut self, conduit: &UnbrokenConduit, at: Pointer) {
        let rule = &LUMINAIRE_ON_CONDUIT;
        let figures = self.figures;
        self.metal_conduit(rule, conduit.kind, at.member(&"/kind"));
        let beyond = length(conduit.beyond_last_support, at.member(&"/beyond_last_support"));
        let limit = self.inspection.proof.stated(&figures.beyond_support);
        self.inspection.limit(
            rule,
            beyond,
            AtMost,
            limit,
            Sentences {
                met: "finding-beyond-support-short",
                broken: "finding-beyond-support-long",
                open: "finding-beyond-support-open",
            },
        );
        let before = length(conduit.unbroken_before_support, at.member(&"/unbroken_before_support"));
        let limit = self.inspection.proof.stated(&figures.before_support);
        self.inspection.limit(
            rule,
            before,
            AtLeast,
            limit,
            Sentences {
                met: "finding-before-support-long",
                broken: "finding-before-support-short",
                open: "finding-before-support-open",
            },
        );
        let fastened = length(conduit.fastened_before_support, at.member(&"/fastened_before_support"));
        let limit = self.inspection.proof.stated(&figures.support_spacing);
        self.inspection.limit(
            rule,
            fastened,
            AtLeast,
            limit,
            Sentences {
                met: "finding-supports-apart",
                broken: "finding-supports-too-near",
                open: "finding-supports-open",
            },
        );
        let weight = Given {
            value: conduit.weight.map(Weight::value),
            measure: Measure::Weight,
            at: at.member(&"/weight"),
        };
        let limit = self.inspection.proof.stated(&figures.conduit_weight);
        self.inspection.limit(
            rule,
            weight,
            AtMost,
            limit,
            Sentences {
                met: "finding-conduit-weight-enough",
                broken: "finding-conduit-weight-over",
                open: "finding-conduit-weight-open",
            },
        );
        self.wrenchtight(rule, conduit.threaded_wrenchtight, at);
    }

    /// How the luminaire is secured to a box or conduit body on conduit.
    fn nipple(&mut self, luminaire: &LuminaireOnConduit, at: Pointer) {
        let rule = &LUMINAIRE_ON_CONDUIT;
        let directly = at.member(&"/secured_directly");
        let nipple = at.member(&"/nipple_length");
        match (luminaire.secured_directly, luminaire.nipple_length) {
            (Some(true), _) => {
                self.inspection.proof.does_not_apply(rule, "secured-directly", Some(directly));
            }
            (None, None) => {
                self.inspection.open(rule, None, directly, "finding-secured-directly-open");
            }
            (_, given) => {
                let limit = self.inspection.proof.stated(&self.figures.nipple);
                self.inspection.limit(
                    rule,
                    length(given, nipple),
                    AtMost,
                    limit,
                    Sentences {
                        met: "finding-nipple-short",
                        broken: "finding-nipple-long",
                        open: "finding-nipple-open",
                    },
                );
            }
        }
    }

    pub(super) fn conduit_pendant(&mut self, pendant: &ConduitPendant, at: Pointer) {
        self.metal_conduit(&STEM, pendant.conduit, at.member(&"/conduit"));
        self.stem_fitting(pendant, at);
        self.wrenchtight(&STEM, pendant.threaded_wrenchtight, at);
        if pendant.stems.is_some_and(|stems| stems.get() > 1) {
            self.inspection.proof.does_not_apply(&STEM, "not-a-single-stem", Some(at.member(&"/stems")));
            return;
        }
        let clearance = &self.figures.stem_clearance;
        let place = Place { height: pendant.height, horizontal: pendant.horizontal_clearance };
        let joints = at.member(&"/joints_secured");
        match pendant.joints_secured {
            Some(true) => self.inspection.granted(&STEM, joints, "finding-stem-joints-secured"),
            None if !place.is_clear(self, clearance) => {
                self.inspection.open(&STEM, None, joints, "finding-stem-joints-open");
            }
            secured => {
                if let Some(secured) = secured {
                    self.inspection.proof.fact(&STEM, secured, joints);
                }
                self.clear(&STEM, &place, clearance, at);
            }
        }
        self.extent(&STEM, pendant.extent, &clearance.extent, at);
    }

    /// A long stem needs listed swivel hangers. With them, its length need not be known.
    fn stem_fitting(&mut self, pendant: &ConduitPendant, at: Pointer) {
        let ConduitPendant { swivel_hangers, flexible_fitting, .. } = pendant;
        let stem = at.member(&"/length");
        let (swivel, flexible) = (at.member(&"/swivel_hangers"), at.member(&"/flexible_fitting"));
        let Some(given) = pendant.length else {
            match swivel_hangers {
                Some(true) => self.inspection.fact(&STEM, *swivel_hangers, swivel, SWIVEL),
                Some(false) | None => self.inspection.open(&STEM, None, stem, "finding-stem-length-open"),
            };
            return;
        };
        let limit = self.inspection.proof.stated(&self.figures.rigid_stem);
        let given = self.inspection.proof.given(&STEM, given.value(), Measure::Length, stem);
        let (short, _) = self.inspection.proof.compare(&STEM, given, AtMost, limit);
        if short {
            self.inspection.proof.does_not_apply(&STEM, "short-stem", Some(stem));
            return;
        }
        let other_may_serve = self.figures.stem_fitting == StemFitting::SwivelHangersOrUnread;
        match (swivel_hangers, flexible_fitting) {
            (Some(false), Some(true)) if other_may_serve => {
                self.inspection.proof.fact(&STEM, true, flexible);
                self.inspection.open(&STEM, None, swivel, "finding-stem-flexible-unread");
            }
            (Some(false), None) if other_may_serve => {
                self.inspection.open(&STEM, None, flexible, "finding-stem-flexible-open");
            }
            (swivel_hangers, flexible_fitting) => {
                if let (Some(fitted), true) = (flexible_fitting, other_may_serve) {
                    self.inspection.proof.fact(&STEM, *fitted, flexible);
                }
                self.inspection.fact(&STEM, *swivel_hangers, swivel, SWIVEL);
            }
        }
    }

    fn metal_conduit(&mut self, rule: &'static Rule, kind: SupportingRaceway, at: Pointer) {
        if let Some(cell) = kind.may_carry(Carried::Luminaire) {
            let (met, broken) = ("finding-conduit-carries-luminaire", "finding-conduit-carries-no-luminaire");
            self.inspection.affirm(rule, cell, at, met, broken);
        }
    }

    fn wrenchtight(&mut self, rule: &'static Rule, given: Option<bool>, at: Pointer) {
        self.inspection.fact(
            rule,
            given,
            at.member(&"/threaded_wrenchtight"),
            Sentences {
                met: "finding-luminaire-wrenchtight",
                broken: "finding-luminaire-not-wrenchtight",
                open: "finding-luminaire-wrenchtight-open",
            },
        );
    }

    fn clear(&mut self, rule: &'static Rule, place: &Place, clearance: &Clearance, at: Pointer) {
        let limit = self.inspection.proof.stated(&clearance.height);
        self.inspection.limit(
            rule,
            length(place.height, at.member(&"/height")),
            AtLeast,
            limit,
            Sentences {
                met: "finding-luminaire-high-enough",
                broken: "finding-luminaire-too-low",
                open: "finding-luminaire-height-open",
            },
        );
        let limit = self.inspection.proof.stated(&clearance.horizontal);
        self.inspection.limit(
            rule,
            length(place.horizontal, at.member(&"/horizontal_clearance")),
            AtLeast,
            limit,
            Sentences {
                met: "finding-luminaire-clear",
                broken: "finding-luminaire-not-clear",
                open: "finding-luminaire-clear-open",
            },
        );
    }

    fn extent(&mut self, rule: &'static Rule, given: Option<Length>, figure: &RuleFigure, at: Pointer) {
        let limit = self.inspection.proof.stated(figure);
        self.inspection.limit(
            rule,
            length(given, at.member(&"/extent")),
            AtMost,
            limit,
            Sentences {
                met: "finding-luminaire-compact",
                broken: "finding-luminaire-reaches-too-far",
                open: "finding-luminaire-extent-open",
            },
        );
    }

    pub(super) fn cord_pendant(&mut self, cord: &CordPendant, at: Pointer) {
        self.inspection.fact(
            &CORD,
            cord.strain_relieved,
            at.member(&"/strain_relieved"),
            Sentences {
                met: "finding-cord-relieved",
                broken: "finding-cord-not-relieved",
                open: "finding-cord-open",
            },
        );
        self.cord_grip(cord, at);
        let kind = Pointer::to(&"/enclosure/kind");
        match self.enclosure.kind {
            Some(HeldKind::ConduitBody) => {
                self.inspection.proof.word(&CORD, "conduit_body", kind);
                self.refused(&CORD, kind, "finding-cord-holds-no-body");
            }
            Some(HeldKind::Box) => {
                self.inspection.proof.word(&CORD, "box", kind);
            }
            None => {
                self.inspection.open(&CORD, None, kind, "finding-cord-holds-what");
            }
        }
    }

    /// What holds a cord at the hub that it enters by.
    fn cord_grip(&mut self, cord: &CordPendant, at: Pointer) {
        let (hub, grip) = (at.member(&"/hub"), at.member(&"/cord_grip_listed"));
        if !self.figures.cord_grip {
            self.inspection.proof.does_not_apply(&CORD_GRIP, "not-in-edition", Some(at));
            return;
        }
        if let Some(enters_by_hub) = cord.hub {
            self.inspection.proof.fact(&CORD_GRIP, enters_by_hub, hub);
        }
        match (cord.hub, cord.cord_grip_listed) {
            (Some(false), _) => {
                self.inspection.proof.does_not_apply(&CORD_GRIP, "no-hub", Some(hub));
            }
            (None, None | Some(false)) => {
                self.inspection.open(&CORD_GRIP, None, hub, "finding-cord-hub-open");
            }
            (Some(true), given) | (None, given @ Some(true)) => {
                let sentences = Sentences {
                    met: "finding-cord-grip-listed",
                    broken: "finding-cord-grip-not-listed",
                    open: "finding-cord-grip-open",
                };
                self.inspection.fact(&CORD_GRIP, given, grip, sentences);
            }
        }
    }
}
