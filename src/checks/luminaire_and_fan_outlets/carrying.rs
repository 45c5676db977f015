//! How a load is carried: by a box made for it, by two screws, by the structure, by a mounting receptacle.

use super::request::{
    FanLoad, FloorReceptacle, HungLoad, OutletBox, OutletLoad, OutletPosition, SeparableFitting,
};
use super::{LOAD_WEIGHT, Outlet, weight};
use crate::checks::inspection::{Given, Sentences};
use crate::checks::ways::Way;
use crate::checks::{Finding, Status};
use crate::derivation::Pointer;
use crate::derivation::Relation::{Above, AtLeast, AtMost};
use crate::quantity::{Measure, Weight};
use crate::rulebook::Rule;
use crate::rulebook::luminaire_outlet::{
    CEILING, EQUIPMENT, FAN, FAN_MARK, FAN_MARK_INSIDE, FLOOR, INDEPENDENT, LIGHT_EQUIPMENT, LIGHT_LUMINAIRE,
    LightLoad, MARK, SEPARABLE, SHOW_WINDOW, WALL,
};

const ON_BOX: Sentences = Sentences {
    met: "finding-box-carries-load",
    broken: "finding-box-overloaded",
    open: "finding-load-weight-open",
};
const WITHIN_MARK: Sentences = Sentences {
    met: "finding-load-within-mark",
    broken: "finding-load-over-mark",
    open: "finding-load-weight-open",
};
const MARKED_INSIDE: Sentences = Sentences {
    met: "finding-marked-inside",
    broken: "finding-not-marked-inside",
    open: "finding-marked-inside-open",
};
const MARKED_WEIGHT: Pointer = Pointer::to(&"/box/marked_weight");
const STRUCTURE: Pointer = Pointer::to(&"/load/carried_by_structure");
const SHOW_WINDOW_ACCEPTED: Pointer = Pointer::to(&"/load/show_window_accepted");

/// What would let a load be carried otherwise, and was neither claimed nor denied.
const fn unclaimed_relief(load: &OutletLoad) -> Option<Pointer> {
    let (claimed, relief) = match load {
        OutletLoad::Luminaire(hung) | OutletLoad::Equipment(hung) => (hung.carried_by_structure, STRUCTURE),
        OutletLoad::CeilingFan(fan) => (fan.carried_by_structure, STRUCTURE),
        OutletLoad::FloorReceptacle(receptacle) => (receptacle.show_window_accepted, SHOW_WINDOW_ACCEPTED),
        OutletLoad::Nothing(_) => return None,
    };
    if claimed.is_none() { Some(relief) } else { None }
}

type Ways = Vec<(&'static Rule, Way)>;

impl Outlet<'_> {
    /// The ways in which a load may be carried, settled.
    pub(super) fn carried(&mut self, load: &OutletLoad) -> Ways {
        let (rule, ways, separable) = match load {
            OutletLoad::Luminaire(hung) => {
                let rule = match hung.position {
                    OutletPosition::Wall => &WALL,
                    OutletPosition::Ceiling => &CEILING,
                };
                self.position(rule, hung.position);
                (rule, self.luminaire(rule, hung), hung.separable.as_ref())
            }
            OutletLoad::Equipment(hung) => {
                self.position(&EQUIPMENT, hung.position);
                (&EQUIPMENT, self.equipment(hung), hung.separable.as_ref())
            }
            OutletLoad::CeilingFan(fan) => (&FAN, self.fan(fan), fan.separable.as_ref()),
            OutletLoad::FloorReceptacle(receptacle) => (&FLOOR, self.floor(receptacle), None),
            OutletLoad::Nothing(_) => return Vec::new(),
        };
        let found: Vec<Way> = ways.iter().map(|(_, way)| way.clone()).collect();
        let settled = self.inspection.settle(rule, &found, &[]);
        if let (Status::Violated, Some(relief)) = (settled.status, unclaimed_relief(load)) {
            let violated = |finding: &&mut Finding| finding.status == Status::Violated;
            for finding in self.inspection.findings.iter_mut().filter(violated) {
                finding.unless.push(relief);
            }
        }
        self.inspection.conclude(
            rule,
            found.len(),
            settled,
            Sentences {
                met: "finding-load-carried",
                broken: "finding-load-not-carried",
                open: "finding-load-carried-open",
            },
        );
        if let Some(separable) = separable {
            self.separable(load, separable);
        }
        ways
    }

    fn position(&mut self, rule: &'static Rule, position: OutletPosition) {
        let says = match position {
            OutletPosition::Wall => "wall",
            OutletPosition::Ceiling => "ceiling",
        };
        self.inspection.proof.word(rule, says, Pointer::to(&"/load/position"));
    }

    fn luminaire(&mut self, rule: &'static Rule, hung: &HungLoad) -> Ways {
        let mut ways = vec![self.way(rule, |outlet| outlet.on_box(rule, hung))];
        match hung.position {
            OutletPosition::Wall => {
                let light = &self.figures.light_luminaire;
                ways.push(self.way(&LIGHT_LUMINAIRE, |outlet| outlet.light(&LIGHT_LUMINAIRE, light, hung)));
            }
            OutletPosition::Ceiling => {
                let at = Some(Pointer::to(&"/load/position"));
                self.inspection.proof.does_not_apply(&LIGHT_LUMINAIRE, "not-on-a-wall", at);
            }
        }
        self.by_structure(hung.carried_by_structure, &mut ways);
        ways
    }

    fn equipment(&mut self, hung: &HungLoad) -> Ways {
        let light = &self.figures.light_equipment;
        let mut ways = vec![
            self.way(&EQUIPMENT, |outlet| outlet.on_box(&EQUIPMENT, hung)),
            self.way(&LIGHT_EQUIPMENT, |outlet| outlet.light(&LIGHT_EQUIPMENT, light, hung)),
        ];
        self.by_structure(hung.carried_by_structure, &mut ways);
        ways
    }

    fn fan(&mut self, fan: &FanLoad) -> Ways {
        let mut ways = vec![self.way(&FAN, |outlet| outlet.on_fan_box(fan))];
        self.by_structure(fan.carried_by_structure, &mut ways);
        ways
    }

    /// A box that is made for a luminaire, within the weight that it may carry.
    fn on_box(&mut self, rule: &'static Rule, hung: &HungLoad) {
        self.inspection.fact(
            rule,
            self.outlet_box.identified,
            Pointer::to(&"/box/identified"),
            Sentences {
                met: "finding-luminaire-box-identified",
                broken: "finding-luminaire-box-not-identified",
                open: "finding-luminaire-box-identified-open",
            },
        );
        let ordinary = self.inspection.proof.stated(&self.figures.ordinary);
        let marked = self.outlet_box.marked_weight.map(Weight::value);
        let carries = match marked {
            Some(marked) => {
                let marked = self.inspection.proof.given(&MARK, marked, Measure::Weight, MARKED_WEIGHT);
                if hung.position == OutletPosition::Ceiling {
                    let (met, broken) = ("finding-ceiling-box-strong-enough", "finding-ceiling-box-too-weak");
                    let sentences = Sentences { met, broken, open: broken };
                    self.inspection.compare(rule, (marked, MARKED_WEIGHT), AtLeast, ordinary, sentences);
                }
                if marked.value == ordinary.value {
                    let at = Some(MARKED_WEIGHT);
                    self.inspection.proof.does_not_apply(&MARK, "marked-as-if-unmarked", at);
                } else {
                    self.marked_inside(&MARK);
                }
                marked
            }
            None => {
                self.inspection.proof.does_not_apply(&MARK, "no-weight-marked", Some(Pointer::to(&"/box")));
                ordinary
            }
        };
        let is_limited_to_ordinary = hung.position == OutletPosition::Ceiling
            && self.outlet_box.listed_for_weight == Some(false)
            && carries.value > ordinary.value;
        self.box_carries = Some(if is_limited_to_ordinary { ordinary } else { carries });
        let within = if marked.is_some() { WITHIN_MARK } else { ON_BOX };
        self.inspection.limit(rule, weight(hung.weight, LOAD_WEIGHT), AtMost, carries, within);
        if let (Some(load), OutletPosition::Ceiling) = (hung.weight, hung.position) {
            let proof = &mut self.inspection.proof;
            let load = proof.given(rule, load.value(), Measure::Weight, LOAD_WEIGHT);
            let (heavy, _) = proof.compare(rule, load, Above, ordinary);
            if heavy {
                self.inspection.fact(
                    rule,
                    self.outlet_box.listed_for_weight,
                    Pointer::to(&"/box/listed_for_weight"),
                    Sentences {
                        met: "finding-box-listed-for-weight",
                        broken: "finding-box-not-listed-for-weight",
                        open: "finding-box-listed-for-weight-open",
                    },
                );
            }
        }
    }

    fn marked_inside(&mut self, rule: &'static Rule) {
        let at = Pointer::to(&"/box/marked_inside");
        self.inspection.fact(rule, self.outlet_box.marked_inside, at, MARKED_INSIDE);
    }

    /// A light load on any box, by its screws.
    fn light(&mut self, rule: &'static Rule, light: &LightLoad, hung: &HungLoad) {
        let limit = self.inspection.proof.stated(&light.weight);
        let sentences = Sentences {
            met: "finding-load-is-light",
            broken: "finding-load-is-not-light",
            open: "finding-load-weight-open",
        };
        self.inspection.limit(rule, weight(hung.weight, LOAD_WEIGHT), AtMost, limit, sentences);
        let number = |value: Option<u32>, at| Given {
            value: value.map(Into::into),
            measure: Measure::Number,
            at: Pointer::to(at),
        };
        let screws = hung.screws.as_ref();
        let fewest = self.inspection.proof.stated(&light.screws);
        self.inspection.limit(
            rule,
            number(screws.map(|screws| screws.count.get()), &"/load/screws/count"),
            AtLeast,
            fewest,
            Sentences {
                met: "finding-screws-enough",
                broken: "finding-screws-too-few",
                open: "finding-screws-open",
            },
        );
        let smallest = self.inspection.proof.stated(&light.screw_number);
        self.inspection.limit(
            rule,
            number(screws.map(|screws| screws.number.get()), &"/load/screws/number"),
            AtLeast,
            smallest,
            Sentences {
                met: "finding-screws-large-enough",
                broken: "finding-screws-too-small",
                open: "finding-screw-size-open",
            },
        );
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
        let (carries, sentences) = match self.outlet_box.marked_weight {
            Some(marked) => {
                let proof = &mut self.inspection.proof;
                (proof.given(&FAN_MARK, marked.value(), Measure::Weight, MARKED_WEIGHT), WITHIN_MARK)
            }
            None => (
                self.inspection.proof.stated(&self.figures.fan_unmarked),
                Sentences {
                    met: "finding-fan-needs-no-weight-mark",
                    broken: "finding-fan-needs-weight-mark",
                    open: "finding-load-weight-open",
                },
            ),
        };
        self.box_carries = Some(if carries.value > most.value { most } else { carries });
        self.inspection.limit(&FAN_MARK, given, AtMost, carries, sentences);
    }

    /// A load that the structure carries does not rest on the box.
    fn by_structure(&mut self, given: Option<bool>, ways: &mut Ways) {
        if given == Some(true) {
            ways.push(self.way(&INDEPENDENT, |outlet| {
                outlet.inspection.granted(&INDEPENDENT, STRUCTURE, "finding-carried-by-structure");
            }));
        } else {
            self.inspection.proof.does_not_apply(&INDEPENDENT, "the-box-carries-it", Some(STRUCTURE));
        }
    }

    fn floor(&mut self, receptacle: &FloorReceptacle) -> Ways {
        let mut ways = vec![self.way(&FLOOR, |outlet| {
            outlet.inspection.fact(
                &FLOOR,
                outlet.outlet_box.listed_for_floor,
                Pointer::to(&"/box/listed_for_floor"),
                Sentences {
                    met: "finding-floor-box-listed",
                    broken: "finding-floor-box-not-listed",
                    open: "finding-floor-box-open",
                },
            );
        })];
        let window = SHOW_WINDOW_ACCEPTED;
        if receptacle.show_window_accepted == Some(true) {
            self.inspection.proof.fact(&SHOW_WINDOW, true, window);
            ways.push(self.way(&SHOW_WINDOW, |outlet| {
                outlet.inspection.fact(
                    &SHOW_WINDOW,
                    receptacle.listed_assembly,
                    Pointer::to(&"/load/listed_assembly"),
                    Sentences {
                        met: "finding-show-window-assembly-listed",
                        broken: "finding-show-window-assembly-not-listed",
                        open: "finding-show-window-assembly-open",
                    },
                );
            }));
        } else {
            self.inspection.proof.does_not_apply(&SHOW_WINDOW, "not-a-show-window", Some(window));
        }
        ways
    }

    /// What hangs by a locking mounting receptacle stays within its listing, and the receptacle takes room in the box.
    fn separable(&mut self, load: &OutletLoad, separable: &SeparableFitting) {
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
        let hung = match load {
            OutletLoad::Luminaire(hung) | OutletLoad::Equipment(hung) => hung.weight,
            OutletLoad::CeilingFan(fan) => fan.weight,
            OutletLoad::FloorReceptacle(_) | OutletLoad::Nothing(_) => None,
        };
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
                self.inspection.limit(&SEPARABLE, weight(hung, LOAD_WEIGHT), AtMost, rated, sentences);
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
