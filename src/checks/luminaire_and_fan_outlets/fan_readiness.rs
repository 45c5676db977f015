//! Whether a ceiling box must be ready for a fan, and is.

use super::Outlet;
use super::request::{FanLocation, OutletLoad};
use crate::checks::inspection::Sentences;
use crate::checks::{Finding, Status};
use crate::derivation::Pointer;
use crate::rulebook::Rule;
use crate::rulebook::luminaire_outlet::{FAN_READY, FanReadiness, SPARE_CONDUCTORS};

/// One condition under which a box must be ready: what was said of it, where, and why there is nothing to ask without it.
struct Condition {
    given: Option<bool>,
    at: Pointer,
    without: &'static str,
}

impl Outlet<'_> {
    pub(super) fn ready_for_fan(&mut self, load: &OutletLoad, location: Option<&FanLocation>) {
        let (rule, other) = match self.figures.readiness {
            FanReadiness::SpareConductors => (&SPARE_CONDUCTORS, &FAN_READY),
            FanReadiness::HabitableRooms { .. } => (&FAN_READY, &SPARE_CONDUCTORS),
        };
        self.inspection.proof.does_not_apply(other, "not-in-edition", None);
        if let OutletLoad::CeilingFan(_) = load {
            let at = Some(Pointer::to(&"/load/kind"));
            self.inspection.proof.does_not_apply(rule, "a-fan-is-there", at);
            return;
        }
        let Some(location) = location else {
            let at = Pointer::to(&"/fan_location");
            let untold = Finding::new(rule, Status::Advisory, "finding-fan-location-not-told").at(at);
            self.inspection.findings.push(untold);
            return;
        };
        if self.is_asked(rule, location) {
            match self.figures.readiness {
                FanReadiness::SpareConductors => {
                    self.fan_box(rule);
                }
                FanReadiness::HabitableRooms { through_box } => self.box_or_framing(location, through_box),
            }
        }
    }

    /// Whether all conditions hold. One that does not rules the rule out; one that is not known leaves it open, unless the
    /// box is a fan box anyway.
    fn is_asked(&mut self, rule: &'static Rule, location: &FanLocation) -> bool {
        let at = |member| Pointer::to(&"/fan_location").member(member);
        let dwelling =
            Condition { given: location.dwelling, at: at(&"/dwelling"), without: "not-a-dwelling" };
        let acceptable =
            Condition { given: location.acceptable, at: at(&"/acceptable"), without: "no-place-for-a-fan" };
        let own = match self.figures.readiness {
            FanReadiness::SpareConductors => Condition {
                given: location.spare_conductors,
                at: at(&"/spare_conductors"),
                without: "no-spare-conductors",
            },
            FanReadiness::HabitableRooms { .. } => Condition {
                given: location.habitable_room,
                at: at(&"/habitable_room"),
                without: "not-a-habitable-room",
            },
        };
        let conditions = [dwelling, own, acceptable];
        for Condition { given, at, .. } in &conditions {
            if let Some(holds) = given {
                self.inspection.proof.fact(rule, *holds, *at);
            }
        }
        if let Some(without) = conditions.iter().find(|condition| condition.given == Some(false)) {
            self.inspection.proof.does_not_apply(rule, without.without, Some(without.at));
            return false;
        }
        let unknown = conditions.iter().find(|condition| condition.given.is_none());
        match unknown {
            Some(unknown) if self.outlet_box.listed_for_fan != Some(true) => {
                self.inspection.open(rule, None, unknown.at, "finding-fan-location-open");
                false
            }
            _ => true,
        }
    }

    /// A box that is listed for a fan, or framing that can carry a bracket and can be reached.
    fn box_or_framing(&mut self, location: &FanLocation, through_box: bool) {
        let at = |member| Pointer::to(&"/fan_location").member(member);
        let (_, listed) = self.way(&FAN_READY, |outlet| {
            outlet.fan_box(&FAN_READY);
        });
        let through = (location.framing_access_through_box, at(&"/framing_access_through_box"));
        let (given, place, sentences) = match through {
            (given, place) if through_box => (
                given,
                place,
                Sentences {
                    met: "finding-framing-through-box",
                    broken: "finding-framing-not-through-box",
                    open: "finding-framing-through-box-open",
                },
            ),
            (given, place) => {
                let sentences = Sentences {
                    met: "finding-framing-reached",
                    broken: "finding-framing-not-reached",
                    open: "finding-framing-open",
                };
                if given == Some(true) {
                    (given, place, sentences)
                } else {
                    (location.framing_access, at(&"/framing_access"), sentences)
                }
            }
        };
        let (_, framing) = self.way(&FAN_READY, |outlet| {
            outlet.inspection.fact(&FAN_READY, given, place, sentences);
        });
        let settled = self.inspection.settle(&FAN_READY, &[listed.clone(), framing.clone()], &[]);
        self.inspection.conclude(
            &FAN_READY,
            2,
            settled,
            Sentences {
                met: "finding-ready-for-fan",
                broken: "finding-not-ready-for-fan",
                open: "finding-ready-for-fan-open",
            },
        );
        for way in [listed, framing] {
            self.inspection.requirements.extend(way.requirements);
        }
    }
}
