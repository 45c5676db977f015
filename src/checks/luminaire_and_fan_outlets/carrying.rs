//! How a load is carried: by a box made for it, by two screws, by the structure, by a supporting receptacle.

use super::request::{FloorReceptacle, HungLoad, OutletLoad, OutletPosition};
use super::{LOAD_WEIGHT, Outlet, weight};
use crate::checks::inspection::{Given, Sentences};
use crate::checks::ways::Way;
use crate::checks::{Finding, Status};
use crate::derivation::Pointer;
use crate::derivation::Relation::{AtLeast, AtMost};
use crate::quantity::Measure;
use crate::rulebook::Rule;
use crate::rulebook::luminaire_outlet::{
    CEILING, EQUIPMENT, FAN, FLOOR, INDEPENDENT, LIGHT_EQUIPMENT, LIGHT_LUMINAIRE, LightLoad, SEPARABLE,
    SHOW_WINDOW, WALL,
};

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

pub(super) type Ways = Vec<(&'static Rule, Way)>;

impl Outlet<'_> {
    /// The ways in which a load may be carried, settled.
    pub(super) fn carried(&mut self, load: &OutletLoad) -> Ways {
        let (rule, mut ways, separable) = match load {
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
            OutletLoad::CeilingFan(fan) => (&FAN, self.fan(fan), None),
            OutletLoad::FloorReceptacle(receptacle) => (&FLOOR, self.floor(receptacle), None),
            OutletLoad::Nothing(_) => return Vec::new(),
        };
        let found: Vec<Way> = ways.iter().map(|(_, way)| way.clone()).collect();
        let settled = self.inspection.settle(rule, &found, &[]);
        if let (Status::Violated, Some(relief)) = (settled.status, unclaimed_relief(load)) {
            // what hangs by a receptacle stays within its listing, whoever carries it
            let violated =
                |finding: &&mut Finding| finding.status == Status::Violated && finding.rule != &SEPARABLE;
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
        if let (OutletLoad::Luminaire(hung) | OutletLoad::Equipment(hung), Some(separable)) =
            (load, separable)
        {
            self.separable(hung.weight, separable);
        }
        if settled.status == Status::Satisfied {
            // what another way lacks is only worth knowing beside one that serves
            let others = ways.iter_mut().map(|(_, way)| way).filter(|way| way.status != Status::Satisfied);
            others.for_each(Way::stand_aside);
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
        self.by_structure(&INDEPENDENT, hung.carried_by_structure, &mut ways);
        ways
    }

    fn equipment(&mut self, hung: &HungLoad) -> Ways {
        let light = &self.figures.light_equipment;
        let mut ways = vec![
            self.way(&EQUIPMENT, |outlet| outlet.on_box(&EQUIPMENT, hung)),
            self.way(&LIGHT_EQUIPMENT, |outlet| outlet.light(&LIGHT_EQUIPMENT, light, hung)),
        ];
        self.by_structure(&INDEPENDENT, hung.carried_by_structure, &mut ways);
        ways
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

    /// A load that the structure carries does not rest on the box.
    pub(super) fn by_structure(&mut self, rule: &'static Rule, given: Option<bool>, ways: &mut Ways) {
        if given == Some(true) {
            ways.push(self.way(rule, |outlet| {
                outlet.inspection.granted(rule, STRUCTURE, "finding-carried-by-structure");
            }));
        } else {
            self.inspection.proof.does_not_apply(rule, "the-box-carries-it", Some(STRUCTURE));
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
}
