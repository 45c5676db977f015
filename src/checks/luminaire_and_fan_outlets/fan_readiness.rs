//! Whether a ceiling box must be ready for a fan, and is.

use super::Outlet;
use super::request::{FanLocation, OutletLoad};
use crate::checks::inspection::Sentences;
use crate::derivation::Pointer;
use crate::rulebook::Rule;
use crate::rulebook::luminaire_outlet::{FAN_READY, FanReadiness, SPARE_CONDUCTORS};

/// One condition under which a box must be ready: what it comes to, where that was said, and why there is nothing to ask without
/// it.
struct Condition {
    given: Option<bool>,
    at: Option<Pointer>,
    without: &'static str,
}

impl Outlet<'_> {
    pub(super) fn ready_for_fan(&mut self, load: &OutletLoad, location: FanLocation) {
        let (rule, other) = match self.figures.readiness {
            FanReadiness::SpareConductors => (&SPARE_CONDUCTORS, &FAN_READY),
            FanReadiness::HabitableRooms { .. } => (&FAN_READY, &SPARE_CONDUCTORS),
        };
        self.inspection.proof.does_not_apply(other, "not-in-edition", None);
        let rests_on_box =
            matches!(load, OutletLoad::CeilingFan(fan) if fan.carried_by_structure != Some(true));
        if rests_on_box {
            let at = Some(Pointer::to(&"/load/kind"));
            self.inspection.proof.does_not_apply(rule, "a-fan-is-there", at);
        } else if self.is_asked(rule, &location) {
            match self.figures.readiness {
                FanReadiness::SpareConductors => {
                    self.fan_box(rule);
                }
                FanReadiness::HabitableRooms { through_box } => self.box_or_framing(&location, through_box),
            }
        }
    }

    /// Whether the box must be ready, or is ready whether it must be or not. One condition that does not hold rules the rule
    /// out; those that are not known leave it open.
    fn is_asked(&mut self, rule: &'static Rule, location: &FanLocation) -> bool {
        let at = |member| Some(Pointer::to(&"/fan_location").member(member));
        let dwelling =
            Condition { given: location.dwelling, at: at(&"/dwelling"), without: "not-a-dwelling" };
        let acceptable =
            Condition { given: location.acceptable, at: at(&"/acceptable"), without: "no-place-for-a-fan" };
        let own = match self.figures.readiness {
            // conductors that nobody names are not there
            FanReadiness::SpareConductors => Condition {
                given: Some(location.spare_conductors == Some(true)),
                at: location.spare_conductors.and_then(|_| at(&"/spare_conductors")),
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
            if let (Some(holds), Some(at)) = (given, at) {
                self.inspection.proof.fact(rule, *holds, *at);
            }
        }
        if let Some(without) = conditions.iter().find(|condition| condition.given == Some(false)) {
            self.inspection.proof.does_not_apply(rule, without.without, without.at);
            return false;
        }
        let mut unknown =
            conditions.iter().filter(|condition| condition.given.is_none()).filter_map(|unknown| unknown.at);
        match unknown.next() {
            Some(first) if !self.is_ready_anyway(location) => {
                self.inspection.open(rule, None, first, "finding-fan-location-open");
                let fan_box = Pointer::to(&"/box/listed_for_fan");
                if let Some(finding) = self.inspection.findings.last_mut() {
                    finding.supply.extend(unknown);
                    finding.supply.extend(self.outlet_box.listed_for_fan.is_none().then_some(fan_box));
                }
                false
            }
            _ => true,
        }
    }

    /// Whether the box is ready for a fan wherever it is.
    fn is_ready_anyway(&self, location: &FanLocation) -> bool {
        let reaches_framing = match self.figures.readiness {
            FanReadiness::SpareConductors => false,
            FanReadiness::HabitableRooms { through_box } => {
                location.framing_access_through_box == Some(true)
                    || !through_box && location.framing_access == Some(true)
            }
        };
        self.outlet_box.listed_for_fan == Some(true) || reaches_framing
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
        for mut way in [listed, framing] {
            // what a way lacks that another makes needless is only worth knowing, here as among the findings
            if way.status != settled.status {
                way.stand_aside();
            }
            self.inspection.requirements.extend(way.requirements);
        }
    }
}
