//! A ceiling fan: on a box listed for fans, on a supporting receptacle, or held by the structure.

use super::carrying::Ways;
use super::request::{FanLoad, OutletBox, SeparableFitting};
use super::{LOAD_WEIGHT, MARKED_WEIGHT, Outlet, WEIGHT_MARKED, WITHIN_MARK, weight};
use crate::checks::inspection::Sentences;
use crate::checks::ways::Way;
use crate::checks::{Finding, Status};
use crate::derivation::Pointer;
use crate::derivation::Relation::AtMost;
use crate::quantity::{Measure, Weight};
use crate::rulebook::Rule;
use crate::rulebook::luminaire_outlet::{
    FAN, FAN_MARK, FAN_MARK_INSIDE, FAN_RECEPTACLE, FAN_STRUCTURE, SEPARABLE,
};

const RECEPTACLE: Pointer = Pointer::to(&"/load/separable");

impl Outlet<'_> {
    pub(super) fn fan(&mut self, fan: &FanLoad) -> Ways {
        let receptacle = fan.separable.as_ref().map(|separable| {
            let begun = self.inspection.begin();
            self.separable(fan.weight, separable);
            let receptacle = self.inspection.end(&SEPARABLE, begun);
            self.inspection.requirements.extend(receptacle.requirements.iter().cloned());
            receptacle
        });
        let of_box = self.inspection.findings.len();
        let (_, fan_box) = self.way(&FAN, |outlet| outlet.on_fan_box(fan));
        let unsaid = self.inspection.findings.iter().skip(of_box).flat_map(|finding| finding.supply.iter());
        let unsaid: Vec<Pointer> = unsaid.copied().collect();
        let mut ways = vec![(&FAN, fan_box.clone())];
        if let Some(receptacle) = receptacle {
            let rule = if self.figures.fan_support_read { &FAN_RECEPTACLE } else { &SEPARABLE };
            ways.push(self.way(rule, |outlet| outlet.on_receptacle(&receptacle, &fan_box, &unsaid)));
        }
        let structure = if self.figures.fan_support_read {
            &FAN_STRUCTURE
        } else {
            // 314.27(C) itself speaks only of a box that is the sole support
            self.inspection.proof.does_not_apply(&FAN_STRUCTURE, "not-in-edition", None);
            &FAN
        };
        if structure == &FAN_STRUCTURE || fan.carried_by_structure == Some(true) {
            self.by_structure(structure, fan.carried_by_structure, &mut ways);
        }
        ways
    }

    /// A supporting receptacle that carries a fan within its listing, on a box that may carry the fan itself: what hangs by the
    /// receptacle hangs from the box. `unsaid` is what would decide about the box.
    fn on_receptacle(&mut self, receptacle: &Way, fan_box: &Way, unsaid: &[Pointer]) {
        if !self.figures.fan_support_read {
            self.inspection.open(&SEPARABLE, None, RECEPTACLE, "finding-fan-on-receptacle-unread");
            return;
        }
        let sentences = Sentences {
            met: "finding-fan-on-receptacle",
            broken: "finding-fan-not-on-receptacle",
            open: "finding-fan-on-receptacle-open",
        };
        match receptacle.step {
            Some(step) => {
                let is_met = receptacle.status == Status::Satisfied;
                self.inspection.decided_by(&FAN_RECEPTACLE, is_met, RECEPTACLE, step, sentences);
            }
            None => {
                self.inspection.open(&FAN_RECEPTACLE, None, RECEPTACLE, sentences.open);
            }
        }
        let sentences = Sentences {
            met: "finding-fan-receptacle-on-fan-box",
            broken: "finding-fan-receptacle-on-no-fan-box",
            open: "finding-fan-receptacle-on-box-open",
        };
        let fan_listed = Pointer::to(&"/box/listed_for_fan");
        match (fan_box.step, unsaid.split_first()) {
            (Some(step), _) => {
                let is_met = fan_box.status == Status::Satisfied;
                self.inspection.decided_by(&FAN_RECEPTACLE, is_met, fan_listed, step, sentences);
            }
            (None, unsaid) => {
                let (first, others) = unsaid.unwrap_or((&fan_listed, &[]));
                self.inspection.open(&FAN_RECEPTACLE, None, *first, sentences.open);
                if let Some(finding) = self.inspection.findings.last_mut() {
                    finding.supply.extend(others);
                }
            }
        }
    }

    /// A box that alone carries a fan.
    fn on_fan_box(&mut self, fan: &FanLoad) {
        self.fan_box(&FAN);
        self.inspection.fact(
            &FAN,
            self.outlet_box.marked_for_fan,
            Pointer::to(&"/box/marked_for_fan"),
            Sentences {
                met: "finding-fan-box-marked",
                broken: "finding-fan-box-not-marked",
                open: "finding-fan-box-marked-open",
            },
        );
        let OutletBox { marked_inside, listed_for_fan, .. } = self.outlet_box;
        if !self.figures.fan_mark_inside {
            self.inspection.proof.does_not_apply(&FAN_MARK_INSIDE, "not-in-edition", None);
        } else if marked_inside.is_none() && *listed_for_fan == Some(true) {
            let at = Some(Pointer::to(&"/box/listed_for_fan"));
            self.inspection.proof.does_not_apply(&FAN_MARK_INSIDE, "listing-covers-mark", at);
        } else {
            self.marked_inside(&FAN_MARK_INSIDE);
        }
        let given = weight(fan.weight, LOAD_WEIGHT);
        let most = self.inspection.proof.stated(&self.figures.fan);
        let within = Sentences {
            met: "finding-fan-within-limit",
            broken: "finding-fan-too-heavy",
            open: "finding-load-weight-open",
        };
        self.inspection.limit(&FAN, given, AtMost, most, within);
        let marked = self.outlet_box.marked_weight;
        let carries = match marked {
            Some(marked) => {
                self.inspection.proof.given(&FAN_MARK, marked.value(), Measure::Weight, MARKED_WEIGHT)
            }
            None => {
                if let Some(is_marked) = self.outlet_box.weight_marked {
                    self.inspection.proof.fact(&FAN_MARK, is_marked, WEIGHT_MARKED);
                }
                self.inspection.proof.stated(&self.figures.fan_unmarked)
            }
        };
        self.box_carries = Some(if carries.value > most.value { most } else { carries });
        let is_heavier = fan.weight.is_some_and(|weight| weight.value() > carries.value);
        if is_heavier && marked.is_none() && self.outlet_box.weight_marked.is_none() {
            self.weight_mark_open(&FAN_MARK, carries, "finding-fan-weight-mark-open");
            return;
        }
        let without = Sentences {
            met: "finding-fan-needs-no-weight-mark",
            broken: "finding-fan-needs-weight-mark",
            open: "finding-load-weight-open",
        };
        let sentences = if marked.is_some() { WITHIN_MARK } else { without };
        self.inspection.limit(&FAN_MARK, given, AtMost, carries, sentences);
    }

    /// What hangs by a supporting receptacle stays within its listing, and the receptacle takes room in the box.
    pub(super) fn separable(&mut self, load: Option<Weight>, separable: &SeparableFitting) {
        let at = |member| Pointer::to(&"/load/separable").member(member);
        self.inspection.fact(
            &SEPARABLE,
            separable.listed,
            at(&"/listed"),
            Sentences {
                met: "finding-mounting-receptacle-listed",
                broken: "finding-mounting-receptacle-not-listed",
                open: "finding-mounting-receptacle-open",
            },
        );
        self.inspection.fact(
            &SEPARABLE,
            separable.compatible,
            at(&"/compatible"),
            Sentences {
                met: "finding-mounting-fitting-compatible",
                broken: "finding-mounting-fitting-not-compatible",
                open: "finding-mounting-fitting-open",
            },
        );
        match separable.rated_weight {
            Some(rated) => {
                let rated = self.inspection.proof.given(
                    &SEPARABLE,
                    rated.value(),
                    Measure::Weight,
                    at(&"/rated_weight"),
                );
                let sentences = Sentences {
                    met: "finding-mounting-weight-enough",
                    broken: "finding-mounting-weight-over",
                    open: "finding-load-weight-open",
                };
                self.inspection.limit(&SEPARABLE, weight(load, LOAD_WEIGHT), AtMost, rated, sentences);
            }
            None => {
                self.inspection.open(&SEPARABLE, None, at(&"/rated_weight"), "finding-mounting-weight-open");
            }
        }
        let room = Finding::new(&SEPARABLE, Status::Advisory, "finding-mounting-receptacle-takes-room");
        self.inspection.findings.push(room.at(Pointer::to(&"/load/separable")));
    }

    /// A box that is listed as the sole support of a fan.
    pub(super) fn fan_box(&mut self, rule: &'static Rule) -> Status {
        self.inspection.fact(
            rule,
            self.outlet_box.listed_for_fan,
            Pointer::to(&"/box/listed_for_fan"),
            Sentences {
                met: "finding-fan-box-listed",
                broken: "finding-fan-box-not-listed",
                open: "finding-fan-box-open",
            },
        )
    }
}
