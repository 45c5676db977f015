//! What is said of a body below its views: pulls, requirements, distances, areas and volumes.

use super::super::gauge::{BAR, Balance, Gauge, Span, figure_sentence, figure_text, row};
use super::super::head::MARGIN;
use super::super::outlet_fill::{left_out, shares};
use super::super::sheet::{Sheet, approximate, at};
use super::{Page, WIDTH, comparison, raceway_of};
use crate::checks::Status;
use crate::checks::conduit_body::{BodyPull, HubFill};
use crate::checks::pull_box::{AxisSize, ConductorGroup, EntryDistanceOf};
use crate::derivation::Pointer;
use crate::i18n::{Catalogue, figure};
use crate::quantity::Measure;
use crate::rulebook::conduit_body::{AREA, CONDUCTORS};

/// The most conductors of a pull that are listed one by one.
const MOST_GROUPS: usize = 8;
/// The width that the number of a pull takes.
const NUMBERS: f64 = 28.0;

impl Page<'_> {
    /// Every pull with its number, its openings and its conductors.
    pub(super) fn pulls(&self, sheet: &mut Sheet<'_>, top: f64) -> f64 {
        let mut y = self.heading(sheet, top, &self.messages.label("pulls"));
        for (index, pull) in self.request.pulls.iter().enumerate() {
            sheet.number(at(MARGIN + 9.0, y + 8.0), index + 1);
            y = row(sheet, y, NUMBERS, &self.pull_text(index, pull), "");
        }
        y
    }

    fn pull_text(&self, index: usize, pull: &BodyPull) -> String {
        let messages = self.messages;
        let between: Vec<String> = pull.between.iter().map(|place| self.opening(*place)).collect();
        let groups = pull.conductors.iter().take(MOST_GROUPS).map(|group| group_text(group, messages));
        let mut groups: Vec<String> = groups.collect();
        let more = pull.conductors.len().saturating_sub(MOST_GROUPS);
        if more > 0 {
            groups.push(messages.sentence("drawing-body-more", [("number", more)]));
        }
        let mut parts = vec![format!("{}: {}", between.join(" – "), groups.join(", "))];
        let at = Pointer::of(&"/pulls/#", index);
        let large = self.outcome().large_conductors.as_ref();
        let mut kinds: Vec<String> = Vec::new();
        for kind in large.into_iter().flat_map(|large| &large.pulls).filter(|kind| kind.at == at) {
            let named = messages.label(&super::name_of(kind.kind)).into_owned();
            if !kinds.contains(&named) {
                kinds.push(named);
            }
        }
        parts.extend(kinds);
        if pull.spliced {
            parts.push(messages.fixed("drawing-body-spliced").to_owned());
        }
        parts.join(" · ")
    }

    /// What each rule asks of each direction.
    pub(super) fn requirements(&self, sheet: &mut Sheet<'_>, top: f64) -> f64 {
        let Some(large) = &self.outcome().large_conductors else { return top };
        let axes = [("length", &large.length), ("width", &large.width), ("depth", &large.depth)];
        if axes.iter().all(|(_, axis)| axis.requirements.is_empty()) {
            return top;
        }
        let mut y = self.heading(sheet, top, &self.messages.label("requirements"));
        for (name, axis) in axes {
            y = self.axis(sheet, name, axis, y);
        }
        y
    }

    fn axis(&self, sheet: &mut Sheet<'_>, name: &str, axis: &AxisSize, top: f64) -> f64 {
        let messages = self.messages;
        let mut y = top;
        for requirement in &axis.requirements {
            let (length, entries) = (figure_text(requirement.length), self.openings(&requirement.entries));
            let mut text = format!("{}: {length} · {entries}", messages.label(name));
            if requirement.governs {
                text.push_str(&format!(" · {}", messages.fixed("drawing-body-governs")));
            }
            y = row(sheet, y, 0.0, &text, &self.citation(requirement.rule));
        }
        y
    }

    /// How far openings must be apart, and how far they are, to one scale.
    pub(super) fn distances(&self, sheet: &mut Sheet<'_>, top: f64) -> f64 {
        let large = self.outcome().large_conductors.as_ref();
        let distances = large.map(|large| large.distances.as_slice()).unwrap_or_default();
        if distances.is_empty() {
            return top;
        }
        let gauges: Vec<Gauge> = distances.iter().map(|distance| self.distance(distance)).collect();
        let scale = Gauge::scale_of(&gauges, WIDTH);
        let mut y = self.heading(sheet, top, &self.messages.label("distances"));
        for (distance, gauge) in distances.iter().zip(&gauges) {
            y = row(sheet, y, 0.0, &self.openings(&distance.entries), "");
            y = gauge.draw(sheet, scale, y);
        }
        y
    }

    fn distance(&self, distance: &EntryDistanceOf) -> Gauge {
        let messages = self.messages;
        let mut required = Span::of(distance.required, "drawing-outlet-required", messages);
        required.and(&self.citation_named(distance.rule));
        let apart = distance.measured.map(|measured| Span::of(measured, "drawing-body-apart", messages));
        let balance = distance.measured.filter(|measured| measured.value < distance.required.value);
        let balance = balance.map(|_| {
            let short = self.counts_against(distance.rule);
            let key = if short { "drawing-body-too-close" } else { "drawing-body-by-mark" };
            Balance { text: messages.fixed(key).to_owned(), short }
        });
        comparison(apart, required, balance)
    }

    /// The cross-section, and how full each opening is.
    pub(super) fn small(&self, sheet: &mut Sheet<'_>, top: f64) -> f64 {
        let Some(small) = &self.outcome().small_conductors else { return top };
        let messages = self.messages;
        let mut y = top;
        if let Some(required) = small.required_cross_section {
            y = self.heading(sheet, y, messages.fixed("drawing-body-cross-section"));
            let mut taken = Span::of(required, "drawing-outlet-required", messages);
            taken.and(&self.citation(&AREA));
            let given = self.request.body.cross_section.map(|area| {
                let area = area.value();
                let unit = self.request.units.of(Measure::Area);
                let text = messages.sentence("drawing-outlet-available", [("figure", figure(area, unit))]);
                Span { size: approximate(area), text }
            });
            let balance = small.margin.map(|margin| Balance::of(margin, messages));
            let gauge = comparison(given, taken, balance);
            y = gauge.draw(sheet, Gauge::scale_of([&gauge], WIDTH), y);
        }
        if small.hubs.is_empty() {
            return y;
        }
        let gauges: Vec<Gauge> = small.hubs.iter().map(|hub| self.hub(hub)).collect();
        let scale = Gauge::scale_of(&gauges, WIDTH);
        y = self.heading(sheet, y, &messages.label("hubs"));
        for (hub, gauge) in small.hubs.iter().zip(&gauges) {
            y = row(sheet, y, 0.0, &self.hub_text(hub), "");
            y = gauge.draw(sheet, scale, y);
        }
        y
    }

    fn hub_text(&self, fill: &HubFill) -> String {
        let messages = self.messages;
        let hub = self.request.hubs.iter().find(|hub| hub.place == fill.place);
        let mut parts = vec![self.opening(fill.place)];
        parts.extend(hub.map(raceway_of));
        parts.push(messages.sentence("drawing-raceway-number", [("number", fill.number.value)]));
        parts.extend(fill.maximum.map(|most| figure_sentence("drawing-raceway-most", most, messages)));
        parts.join(" · ")
    }

    fn hub(&self, fill: &HubFill) -> Gauge {
        let messages = self.messages;
        let mut allowed = Span::of(fill.allowed_area, "drawing-raceway-allowed", messages);
        allowed.and(&self.citation(&CONDUCTORS));
        let taken = Span::of(fill.area, "drawing-raceway-taken", messages);
        let place = self.request.hubs.iter().position(|hub| hub.place == fill.place);
        let at = place.map(|place| Pointer::of(&"/hubs/#", place));
        let over = self.evaluation.findings.iter().any(|finding| {
            finding.status == Status::Violated
                && finding.rule.id == CONDUCTORS.id
                && at.is_some_and(|at| finding.at.contains(&at))
        });
        let balance =
            over.then(|| Balance { text: messages.fixed("drawing-body-overfull").to_owned(), short: true });
        comparison(Some(allowed), taken, balance)
    }

    /// What is spliced or connected in the body, of its marked volume.
    pub(super) fn splices(&self, sheet: &mut Sheet<'_>, top: f64) -> f64 {
        let Some(splices) = &self.outcome().splices else { return top };
        let messages = self.messages;
        let most =
            splices.available.map(|available| Span::of(available, "drawing-outlet-available", messages));
        let gauge = Gauge {
            whole: None,
            most,
            joint: None,
            taken: Span::of(splices.required, "drawing-outlet-required", messages),
            balance: splices.margin.map(|margin| Balance::of(margin, messages)),
            shares: shares(&splices.tally, self.request.edition, messages),
            bar: BAR,
        };
        let mut y = self.heading(sheet, top, &messages.label("splices"));
        y = gauge.draw(sheet, Gauge::scale_of([&gauge], WIDTH), y);
        y = gauge.legend(sheet, y);
        left_out(sheet, &splices.not_counted, y)
    }
}

/// `3 × 4/0 AWG THHN`.
fn group_text(group: &ConductorGroup, messages: &Catalogue) -> String {
    let insulation = group.insulation.map(|insulation| insulation.to_string());
    let bare = group.bare.then(|| messages.fixed("drawing-body-bare").to_owned());
    let compact = group.compact.then(|| messages.fixed("drawing-body-compact").to_owned());
    let parts = [Some(format!("{} × {}", group.number(), group.size)), insulation, bare, compact];
    parts.into_iter().flatten().collect::<Vec<_>>().join(" ")
}
