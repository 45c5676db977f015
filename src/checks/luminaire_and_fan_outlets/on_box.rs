//! A luminaire or other equipment on a box that is made for it: what the box may carry, by its mark or without one.

use super::request::{HungLoad, OutletBox, OutletPosition};
use super::{LOAD_WEIGHT, MARKED_WEIGHT, Outlet, WEIGHT_MARKED, WITHIN_MARK, weight};
use crate::checks::Status;
use crate::checks::inspection::Sentences;
use crate::derivation::Relation::{Above, AtLeast, AtMost};
use crate::derivation::{Figure, Pointer};
use crate::quantity::{Measure, Weight};
use crate::rulebook::Rule;
use crate::rulebook::luminaire_outlet::MARK;
use crate::rulebook::reading::InteriorWeightMark;

const ON_BOX: Sentences = Sentences {
    met: "finding-box-carries-load",
    broken: "finding-box-overloaded",
    open: "finding-load-weight-open",
};
const MARKED_INSIDE: Sentences = Sentences {
    met: "finding-marked-inside",
    broken: "finding-not-marked-inside",
    open: "finding-marked-inside-open",
};
const INSIDE: Pointer = Pointer::to(&"/box/marked_inside");

impl Outlet<'_> {
    /// A box that is made for a luminaire, within the weight that it may carry.
    pub(super) fn on_box(&mut self, rule: &'static Rule, hung: &HungLoad) {
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
        let is_on_ceiling = hung.position == OutletPosition::Ceiling;
        let ordinary = self.inspection.proof.stated(&self.figures.ordinary);
        let marked = self.outlet_box.marked_weight.map(Weight::value);
        let marked =
            marked.map(|marked| self.inspection.proof.given(&MARK, marked, Measure::Weight, MARKED_WEIGHT));
        if let (Some(marked), true) = (marked, is_on_ceiling) {
            let (met, broken) = ("finding-ceiling-box-strong-enough", "finding-ceiling-box-too-weak");
            let sentences = Sentences { met, broken, open: broken };
            self.inspection.compare(rule, (marked, MARKED_WEIGHT), AtLeast, ordinary, sentences);
        }
        let asks_weight = is_on_ceiling || marked.is_none();
        let is_heavy = hung.weight.filter(|_| asks_weight).map(|load| {
            let proof = &mut self.inspection.proof;
            let load = proof.given(rule, load.value(), Measure::Weight, LOAD_WEIGHT);
            proof.compare(rule, load, Above, ordinary).0
        });
        self.weight_mark(marked.filter(|marked| marked.value != ordinary.value), is_on_ceiling, is_heavy);
        let carries = marked.unwrap_or(ordinary);
        // whatever is marked on a box that is not listed for it
        let is_unlisted = is_on_ceiling && self.outlet_box.listed_for_weight == Some(false);
        let is_limited = is_unlisted && carries.value > ordinary.value;
        self.box_carries = Some(if is_limited { ordinary } else { carries });
        let is_mark_open = marked.is_none() && self.outlet_box.weight_marked.is_none() && !is_unlisted;
        if is_mark_open && is_heavy == Some(true) {
            self.weight_mark_open(rule, ordinary, "finding-weight-mark-open");
        } else {
            let within = if marked.is_some() { WITHIN_MARK } else { ON_BOX };
            self.inspection.limit(rule, weight(hung.weight, LOAD_WEIGHT), AtMost, carries, within);
        }
        if is_on_ceiling && is_heavy == Some(true) {
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

    /// A mark of another weight than a box without one carries is on the inside. On a ceiling, for a load of no more than that weight,
    /// no mark is asked for unless the rule is read so. `other` is what is marked, where it is another weight.
    fn weight_mark(&mut self, other: Option<Figure>, is_on_ceiling: bool, is_heavy: Option<bool>) {
        let OutletBox { marked_weight, weight_marked, marked_inside, .. } = *self.outlet_box;
        let is_marked_so = other.is_some() && marked_inside == Some(true);
        let nothing_asked = match is_heavy {
            Some(false) if is_on_ceiling && !is_marked_so => {
                if self.inspection.proof.reading::<InteriorWeightMark>() == InteriorWeightMark::EveryBox {
                    self.mark_on_every_box();
                    return;
                }
                let is_marked_alike = marked_weight.is_some() && other.is_none();
                if is_marked_alike {
                    ("marked-as-if-unmarked", MARKED_WEIGHT)
                } else {
                    ("no-mark-asked-on-ceiling", LOAD_WEIGHT)
                }
            }
            None if is_on_ceiling && other.is_some() && !is_marked_so => {
                self.inspection.open(&MARK, None, LOAD_WEIGHT, "finding-load-weight-open");
                return;
            }
            _ if other.is_some() => {
                self.marked_inside(&MARK);
                return;
            }
            _ if marked_weight.is_some() => ("marked-as-if-unmarked", MARKED_WEIGHT),
            _ if weight_marked == Some(false) => ("no-weight-marked", WEIGHT_MARKED),
            _ => ("no-mark-named", MARKED_WEIGHT),
        };
        self.inspection.proof.does_not_apply(&MARK, nothing_asked.0, Some(nothing_asked.1));
    }

    /// Every ceiling box is marked inside with what it carries, whatever hangs from it.
    fn mark_on_every_box(&mut self) {
        let is_marked = self.outlet_box.marked_weight.map(|_| true).or(self.outlet_box.weight_marked);
        if is_marked == Some(true) {
            self.marked_inside(&MARK);
            return;
        }
        let sentences = Sentences {
            met: "finding-marked-inside",
            broken: "finding-no-weight-marked-on-ceiling-box",
            open: "finding-weight-mark-on-ceiling-box-open",
        };
        let status = self.inspection.fact(&MARK, is_marked, WEIGHT_MARKED, sentences);
        if let (Status::NotDetermined, Some(finding)) = (status, self.inspection.findings.last_mut()) {
            finding.supply.push(MARKED_WEIGHT);
        }
    }

    /// A load that is too heavy for a box without a mark, on a box of which no mark is named and none is denied.
    pub(super) fn weight_mark_open(
        &mut self,
        rule: &'static Rule,
        unmarked: Figure,
        message: &'static str,
    ) -> Status {
        let status = self.inspection.open(rule, Some((AtMost, unmarked)), MARKED_WEIGHT, message);
        if let Some(finding) = self.inspection.findings.last_mut() {
            finding.supply.push(WEIGHT_MARKED);
        }
        status
    }

    pub(super) fn marked_inside(&mut self, rule: &'static Rule) {
        self.inspection.fact(rule, self.outlet_box.marked_inside, INSIDE, MARKED_INSIDE);
    }
}
