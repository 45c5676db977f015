//! A bar that shows what there is, what of it may be taken, and what is taken, each thing with its share.

use super::head::MARGIN;
use super::sheet::{Anchor, Letters, Look, Sheet, approximate, at, letters_in};
use crate::derivation::Figure;
use crate::i18n::{Catalogue, figure, wrap};
use crate::quantity::Decimal;
use crate::rulebook::{Edition, Rule, rules};

/// How high a bar is.
pub(super) const BAR: f64 = 46.0;
const ROW: f64 = 20.0;
/// The most things that a legend lists one by one.
const MOST_LISTED: usize = 60;
/// The width that the fillings and numbers of a legend take, and the fillings alone.
const NUMBERS: f64 = 54.0;
const UNNUMBERED: f64 = 36.0;

/// A size along the bar, with what is said of it.
pub(super) struct Span {
    pub size: f64,
    pub text: String,
}

impl Span {
    /// A figure of an answer, in a sentence that names it as `figure`.
    pub fn of(figure: Figure, key: &str, messages: &Catalogue) -> Self {
        Self { size: approximate(figure.value), text: figure_sentence(key, figure, messages) }
    }

    /// Says something more of it.
    pub fn and(&mut self, more: &str) {
        self.text.push_str(" · ");
        self.text.push_str(more);
    }
}

/// What is between what may be taken and what is taken.
pub(super) struct Balance {
    pub text: String,
    pub short: bool,
}

impl Balance {
    /// What a margin of an answer says: left, or short where it is below zero.
    pub fn of(margin: Figure, messages: &Catalogue) -> Self {
        let short = margin.value < Decimal::ZERO;
        let size = if short { margin.value.negated() } else { margin.value };
        let key = if short { "drawing-short" } else { "drawing-left" };
        Self { text: messages.sentence(key, [("figure", figure(size, margin.unit))]), short }
    }
}

/// One thing that takes its share.
pub(super) struct Share {
    pub text: String,
    /// Where the rule stands that counts it; empty for a rule that the edition has not.
    pub citation: String,
    pub size: f64,
}

/// What there is and what is taken of it.
pub(super) struct Gauge {
    /// All that there is, where less of it may be taken.
    pub whole: Option<Span>,
    /// What may be taken; `None` where it is not known.
    pub most: Option<Span>,
    /// Where within it something ends and another thing begins: a box and its ring.
    pub joint: Option<f64>,
    pub taken: Span,
    pub balance: Option<Balance>,
    pub shares: Vec<Share>,
    /// How high the bar is.
    pub bar: f64,
}

impl Gauge {
    /// How much the bar must have room for.
    pub fn extent(&self) -> f64 {
        let spans = [self.whole.as_ref(), self.most.as_ref(), Some(&self.taken)];
        spans.into_iter().flatten().map(|span| span.size).fold(0.0, f64::max)
    }

    /// The scale by which the longest of several gauges just fits between the margins.
    pub fn scale_of<'a>(gauges: impl IntoIterator<Item = &'a Self>, width: f64) -> f64 {
        let longest = gauges.into_iter().map(Self::extent).fold(0.0, f64::max);
        // what is all zero has no scale
        (width - 2.0 * MARGIN) / if longest > 0.0 { longest } else { 1.0 }
    }

    /// Draws it from some height on, without its legend; returns where the next thing may begin.
    pub fn draw(&self, sheet: &mut Sheet<'_>, scale: f64, top: f64) -> f64 {
        let mut y = top + 20.0;
        for span in self.whole.iter().chain(&self.most) {
            let end = at(MARGIN + span.size * scale, y);
            sheet.described_dimension(at(MARGIN, y), end, Letters::Plain, &span.text);
            y += 24.0;
        }
        y -= 14.0;
        self.bar(sheet, scale, y);
        y += self.bar + 26.0;
        let taken = MARGIN + self.taken.size * scale;
        sheet.described_dimension(at(MARGIN, y), at(taken, y), Letters::Plain, &self.taken.text);
        if let (Some(balance), Some(most)) = (&self.balance, &self.most) {
            y += 24.0;
            let most = MARGIN + most.size * scale;
            let letters = if balance.short { Letters::Short } else { Letters::Plain };
            let (from, to) = (at(most.min(taken), y), at(most.max(taken), y));
            sheet.described_dimension(from, to, letters, &balance.text);
        }
        y + 18.0
    }

    fn bar(&self, sheet: &mut Sheet<'_>, scale: f64, y: f64) {
        let taken = MARGIN + self.taken.size * scale;
        let most = self.most.as_ref().map(|most| MARGIN + most.size * scale);
        if let Some(most) = most {
            sheet.rectangle(at(taken, y), most - taken, self.bar, Look::Free);
        }
        let mut x = MARGIN;
        for (place, share) in self.shares.iter().enumerate() {
            let long = share.size * scale;
            sheet.group(&share.text, |sheet| {
                sheet.rectangle(at(x, y), long, self.bar, Look::Filling(place));
            });
            x += long;
        }
        if let (Some(most), Some(Balance { text, short: true })) = (most, &self.balance) {
            sheet.group(text, |sheet| sheet.rectangle(at(most, y), taken - most, self.bar, Look::Short));
        }
        if let Some(all) = self.whole.as_ref().or(self.most.as_ref()) {
            sheet.rectangle(at(MARGIN, y - 4.0), all.size * scale, self.bar + 8.0, Look::Firm);
        }
        let limit = most.filter(|_| self.whole.is_some());
        for x in limit.into_iter().chain(self.joint.map(|joint| MARGIN + joint * scale)) {
            sheet.line(at(x, y - 8.0), at(x, y + self.bar + 8.0), Look::Firm);
        }
        self.numbers(sheet, scale, y);
    }

    /// The numbers of the shares, above all hatching.
    fn numbers(&self, sheet: &mut Sheet<'_>, scale: f64, y: f64) {
        if !self.is_numbered() {
            return;
        }
        let mut x = MARGIN;
        for (place, share) in self.shares.iter().enumerate().take(MOST_LISTED) {
            let long = share.size * scale;
            if long > 20.0 {
                sheet.number(at(x + long / 2.0, y + self.bar / 2.0), place + 1);
            }
            x += long;
        }
    }

    /// Whether shares bear numbers, which tell nothing where there is one only.
    const fn is_numbered(&self) -> bool {
        self.shares.len() > 1
    }

    /// What each share is, with its rule at the right edge.
    pub fn legend(&self, sheet: &mut Sheet<'_>, top: f64) -> f64 {
        let messages = sheet.messages();
        let mut y = top;
        for (place, share) in self.shares.iter().enumerate().take(MOST_LISTED) {
            sheet.rectangle(at(MARGIN, y), 26.0, 14.0, Look::Filling(place));
            if self.is_numbered() {
                let number = (place + 1).to_string();
                sheet.text(at(MARGIN + 46.0, y + 12.0), Anchor::End, Letters::Strong, &number);
            }
            let indent = if self.is_numbered() { NUMBERS } else { UNNUMBERED };
            y = row(sheet, y, indent, &share.text, &share.citation);
        }
        let more = self.shares.len().saturating_sub(MOST_LISTED);
        if more > 0 {
            let text = messages.sentence("drawing-more-lines", [("number", more)]);
            sheet.text(at(MARGIN + NUMBERS, y + 12.0), Anchor::Start, Letters::Small, &text);
            sheet.describe(text);
            y += ROW;
        }
        y + 6.0
    }
}

/// One row of a list: what is said, broken where it is long, and the rule at the right edge. Returns where the next row
/// begins.
pub(super) fn row(sheet: &mut Sheet<'_>, top: f64, indent: f64, text: &str, citation: &str) -> f64 {
    let right = sheet.width() - MARGIN;
    let room = right - MARGIN - indent - Letters::Small.width(citation) - 20.0;
    let letters = letters_in(room, Letters::Plain, text);
    sheet.text(at(right, top + 12.0), Anchor::End, Letters::Small, citation);
    let from = at(MARGIN + indent, top + 12.0);
    let y = sheet.paragraph(from, Letters::Plain, &wrap(text, letters, 0), 16.0);
    sheet.describe(if citation.is_empty() { format!("{text}.") } else { format!("{text} ({citation}).") });
    y - 12.0 + ROW - 16.0
}

/// Where a rule stands in an edition, in words; nothing where it does not.
pub(super) fn citation_of(rule: &Rule, edition: Edition, messages: &Catalogue) -> String {
    rule.citation(edition).map(|citation| messages.citation(&citation.to_string())).unwrap_or_default()
}

/// The same of the rule with a name.
pub(super) fn citation_named(id: &str, edition: Edition, messages: &Catalogue) -> String {
    rules().find(|rule| rule.id == id).map_or_else(String::new, |rule| citation_of(rule, edition, messages))
}

/// A figure with its unit.
pub(super) fn figure_text(of: Figure) -> String {
    figure(of.value, of.unit)
}

/// A sentence that names a figure.
pub(super) fn figure_sentence(key: &str, of: Figure, messages: &Catalogue) -> String {
    messages.sentence(key, [("figure", figure_text(of))])
}
