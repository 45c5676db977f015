//! Raceways that hold an enclosure: two or more that are threaded into it, or one that carries a conduit body.

use super::request::{HeldKind, RacewaySupport, SupportingConduit};
use super::{Holding, length};
use crate::checks::FindingArg;
use crate::checks::inspection::{Given, Sentences};
use crate::checks::ways::Way;
use crate::derivation::Relation::{AtLeast, AtMost};
use crate::derivation::{Figure, Pointer};
use crate::quantity::{Measure, Volume};
use crate::rulebook::box_support::{
    CONDUIT_BODY, HeldByRaceways, LOADED_CONDUIT_BODY, LOADED_RACEWAYS, RACEWAYS,
};
use crate::rulebook::{Rule, RuleFigure};
use crate::tables::supporting_raceways::Carried;
use crate::tables::trade_sizes;
use crate::trade::TradeSize;

const SECURED: Sentences = Sentences {
    met: "finding-conduit-secured-close",
    broken: "finding-conduit-secured-too-far",
    open: "finding-conduit-secured-open",
};

const LOAD: Pointer = Pointer::to(&"/enclosure/devices_or_luminaires");

impl Holding<'_> {
    /// The ways in which raceways may hold the enclosure, each with the rule that allows it.
    pub(super) fn raceways(&mut self, raceways: &RacewaySupport, index: usize) -> Vec<(&'static Rule, Way)> {
        let mut ways = Vec::with_capacity(2);
        let loaded = self.enclosure.devices_or_luminaires;
        if let Some(loaded) = loaded {
            self.inspection.proof.fact(if loaded { &LOADED_RACEWAYS } else { &RACEWAYS }, loaded, LOAD);
        }
        let exception = if loaded == Some(true) { &LOADED_CONDUIT_BODY } else { &CONDUIT_BODY };
        if self.enclosure.kind == Some(HeldKind::ConduitBody) {
            ways.push((exception, self.way(exception, |held| held.conduit_body(exception, raceways, index))));
        } else {
            let at = Some(Pointer::of(&"/means/#", index));
            self.inspection.proof.does_not_apply(exception, "not-a-conduit-body", at);
        }
        let (rule, figures) = match loaded {
            Some(true) => (&LOADED_RACEWAYS, &self.figures.loaded),
            Some(false) | None => (&RACEWAYS, &self.figures.empty),
        };
        ways.push((rule, self.way(rule, |held| held.threaded(rule, figures, raceways, index))));
        ways
    }

    /// Held by two or more threaded conduits, each secured near the enclosure.
    fn threaded(
        &mut self,
        rule: &'static Rule,
        figures: &HeldByRaceways,
        raceways: &RacewaySupport,
        index: usize,
    ) {
        let at = Pointer::of(&"/means/#", index);
        let volume = self.inspection.proof.stated(&figures.volume);
        let given = Given {
            value: self.enclosure.volume.map(Volume::value),
            measure: Measure::Volume,
            at: Pointer::to(&"/enclosure/volume"),
        };
        let sentences = Sentences {
            met: "finding-raceways-volume-enough",
            broken: "finding-raceways-volume-over",
            open: "finding-raceways-volume-open",
        };
        self.inspection.limit(rule, given, AtMost, volume, sentences);
        self.inspection.fact(
            rule,
            raceways.threaded_entries_or_hubs,
            at.member(&"/threaded_entries_or_hubs"),
            Sentences {
                met: "finding-threaded-entries",
                broken: "finding-no-threaded-entries",
                open: "finding-threaded-entries-open",
            },
        );
        let conduits = raceways.conduits.iter().enumerate();
        let each: Vec<Figure> = conduits
            .clone()
            .map(|(place, _)| self.inspection.proof.count(rule, None, conduit_at(index, place)))
            .collect();
        let number = self.inspection.proof.sum(rule, &each);
        let least = self.inspection.proof.stated(&figures.conduits);
        let sentences = Sentences {
            met: "finding-conduits-enough",
            broken: "finding-conduits-too-few",
            open: "finding-conduits-too-few",
        };
        self.inspection.compare(rule, (number, at.member(&"/conduits")), AtLeast, least, sentences);
        for (place, conduit) in conduits {
            let of_conduit = self.inspection.findings.len();
            self.threaded_conduit(rule, conduit, conduit_at(index, place));
            let sides = (raceways.entries_on_one_side, at.member(&"/entries_on_one_side"));
            self.secured(rule, conduit, conduit_at(index, place), sides);
            let number = (place + 1).to_string();
            for finding in self.inspection.findings.iter_mut().skip(of_conduit) {
                finding.arguments.push(("conduit", FindingArg::Text(number.clone())));
            }
        }
    }

    fn threaded_conduit(&mut self, rule: &'static Rule, conduit: &SupportingConduit, at: Pointer) {
        let kind = at.member(&"/kind");
        let Some(cell) = conduit.kind.may_carry(Carried::Box) else { return };
        self.inspection.affirm(rule, cell, kind, "finding-conduit-threads", "finding-conduit-no-threads");
        if !cell.holds {
            return;
        }
        self.inspection.fact(
            rule,
            conduit.threaded_wrenchtight,
            at.member(&"/threaded_wrenchtight"),
            Sentences {
                met: "finding-conduit-wrenchtight",
                broken: "finding-conduit-not-wrenchtight",
                open: "finding-conduit-wrenchtight-open",
            },
        );
    }

    /// How far off a conduit may be secured depends on what the enclosure holds and on the sides that conduits enter. Where
    /// that was not said, a distance within the smaller limit is enough and one over the larger is too far all the same.
    fn secured(
        &mut self,
        rule: &'static Rule,
        conduit: &SupportingConduit,
        at: Pointer,
        (one_side, sides_at): (Option<bool>, Pointer),
    ) {
        let given = length(conduit.secured_within, at.member(&"/secured_within"));
        if let Some(one_side) = one_side {
            self.inspection.proof.fact(rule, one_side, sides_at);
        }
        let (smallest, largest) = self.limits(one_side);
        let (proof, value) = (&self.inspection.proof, given.value);
        let allows = |figure: &RuleFigure| {
            value.is_some_and(|value| value <= proof.rulebook().value(figure, proof.units()).0)
        };
        let limit = match (allows(&smallest), allows(&largest)) {
            (true, _) => smallest,
            (false, true) => {
                let missing = if self.enclosure.devices_or_luminaires.is_none() { LOAD } else { sides_at };
                let limits = [smallest, largest].map(|limit| self.inspection.proof.stated(&limit));
                self.inspection.open_given(
                    rule,
                    given,
                    (AtMost, limits[0]),
                    missing,
                    "finding-conduit-limit-open",
                );
                self.inspection.also_say("largest", limits[1]);
                return;
            }
            (false, false) => largest,
        };
        let limit = self.inspection.proof.stated(&limit);
        self.inspection.limit(rule, given, AtMost, limit, SECURED);
    }

    /// The smallest and the largest distance that may apply, as far as is known what the enclosure holds.
    fn limits(&self, one_side: Option<bool>) -> (RuleFigure, RuleFigure) {
        let (empty, loaded) = (&self.figures.empty, &self.figures.loaded);
        let close = empty.secured_one_side.unwrap_or(empty.secured);
        let holds_devices = self.enclosure.devices_or_luminaires;
        let possible = [
            (holds_devices != Some(false)).then_some(loaded.secured),
            (holds_devices != Some(true) && one_side != Some(false)).then_some(close),
            (holds_devices != Some(true) && one_side != Some(true)).then_some(empty.secured),
        ];
        let (proof, possible) = (&self.inspection.proof, possible.into_iter().flatten());
        let value = |figure: &RuleFigure| proof.rulebook().value(figure, proof.units()).0;
        (
            possible.clone().min_by_key(value).unwrap_or(close),
            possible.max_by_key(value).unwrap_or(empty.secured),
        )
    }

    /// A conduit body on one raceway of its own size or larger.
    fn conduit_body(&mut self, rule: &'static Rule, raceways: &RacewaySupport, index: usize) {
        for (place, conduit) in raceways.conduits.iter().enumerate() {
            self.body_conduit(rule, conduit, conduit_at(index, place));
        }
        let body_at = Pointer::to(&"/enclosure/trade_size");
        let Some(body) = self.trade_size(rule, self.enclosure.trade_size, body_at) else {
            self.inspection.open(rule, None, body_at, "finding-body-size-open");
            return;
        };
        let mut sizes = Vec::with_capacity(raceways.conduits.len());
        let mut unknown = None;
        for (place, conduit) in raceways.conduits.iter().enumerate() {
            let at = conduit_at(index, place).member(&"/trade_size");
            match self.trade_size(rule, conduit.trade_size, at) {
                Some(size) => sizes.push(size),
                None => unknown = Some(at),
            }
        }
        let largest = self.inspection.proof.largest(rule, &sizes);
        match (largest, unknown) {
            (None, at) => {
                self.inspection.open(rule, None, at.unwrap_or(body_at), "finding-conduit-size-open");
            }
            (Some(largest), Some(at)) if body.value > largest.value => {
                self.inspection.open(rule, None, at, "finding-conduit-size-open");
            }
            (Some(largest), _) => {
                let sentences = Sentences {
                    met: "finding-body-not-larger",
                    broken: "finding-body-larger",
                    open: "finding-body-size-open",
                };
                self.inspection.compare(rule, (body, body_at), AtMost, largest, sentences);
            }
        }
    }

    /// Whether a raceway may carry a conduit body depends on what the body holds; where that was not said, a kind that may
    /// carry either is enough.
    fn body_conduit(&mut self, rule: &'static Rule, conduit: &SupportingConduit, at: Pointer) {
        let kind = at.member(&"/kind");
        let empty = conduit.kind.may_carry(Carried::ConduitBody);
        let loaded = conduit.kind.may_carry(Carried::LoadedConduitBody);
        let (Some(empty), Some(loaded)) = (empty, loaded) else { return };
        let cell = match self.enclosure.devices_or_luminaires {
            Some(true) => loaded,
            Some(false) => empty,
            None if empty.holds == loaded.holds => empty,
            None => {
                self.inspection.open(rule, None, LOAD, "finding-body-load-open");
                return;
            }
        };
        self.inspection.affirm(
            rule,
            cell,
            kind,
            "finding-raceway-carries-body",
            "finding-raceway-carries-no-body",
        );
    }

    fn trade_size(&mut self, rule: &'static Rule, size: Option<TradeSize>, at: Pointer) -> Option<Figure> {
        let cell = trade_sizes::of(size?, self.inspection.proof.units())?;
        Some(self.inspection.proof.lookup(rule, cell, Some(at)))
    }
}

fn conduit_at(index: usize, place: usize) -> Pointer {
    Pointer::of(&"/conduits/#", place).under(&"/means/#", index)
}
