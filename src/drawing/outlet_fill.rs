//! An outlet box as a gauge: what it holds, each thing with its share of the volume, and what is left or missing.

use super::Drawn;
use super::gauge::{BAR, Balance, Gauge, Share, Span, citation_named, figure_sentence, figure_text};
use super::head::{BELOW, MARGIN, name_of, page};
use super::sheet::{Anchor, Letters, Sheet, approximate, at, letters_in, short_text};
use super::traced::made_by;
use crate::checks::Evaluation;
use crate::checks::outlet_fill::{NotCounted, OutletFill, SpaceFill, TallyLine};
use crate::derivation::{Derivation, Figure, Operation};
use crate::i18n::{Catalogue, wrap};
use crate::rulebook::Edition;
use crate::rulebook::outlet_volume::{ASSEMBLY, BARRIER};

const WIDTH: f64 = 720.0;

impl Drawn for OutletFill {
    fn draw(request: &Self::Request, evaluation: &Evaluation<Self::Outcome>, messages: &Catalogue) -> String {
        let of_space = |space| {
            let volume = Volume::of(&evaluation.proof, space);
            (space, volume, gauge(space, volume, request.edition, messages))
        };
        let spaces: Vec<(&SpaceFill, Volume, Gauge)> =
            evaluation.outcome.spaces.iter().map(of_space).collect();
        // one scale for all spaces, so that they can be compared
        let scale = Gauge::scale_of(spaces.iter().map(|(_, _, gauge)| gauge), WIDTH);
        let title = messages.fixed("drawing-outlet-title");
        page::<Self>(request, evaluation, (title, WIDTH), messages, |sheet| {
            let draw = |y, (space, volume, gauge): &(&SpaceFill, Volume, Gauge)| {
                draw_space(sheet, (space, *volume), gauge, scale, y)
            };
            spaces.iter().fold(BELOW, draw) + MARGIN / 2.0
        })
    }
}

/// Draws one space from some height on; returns where the next begins.
fn draw_space(
    sheet: &mut Sheet<'_>,
    (space, volume): (&SpaceFill, Volume),
    gauge: &Gauge,
    scale: f64,
    top: f64,
) -> f64 {
    let messages = sheet.messages();
    let mut y = top;
    if let Some(id) = &space.id {
        y += 16.0;
        let named = messages.sentence("drawing-space", [("space", id)]);
        sheet.text(at(MARGIN, y), Anchor::Start, Letters::Strong, &short_text(&named, 80));
        sheet.describe(format!("{named}:"));
    }
    let made_of = volume.text(messages);
    if !made_of.is_empty() {
        y += 16.0;
        sheet.text(at(MARGIN, y), Anchor::Start, Letters::Small, &made_of);
        sheet.describe(format!("{made_of}."));
        y += 8.0;
    }
    y = gauge.draw(sheet, scale, y);
    y = gauge.legend(sheet, y);
    left_out(sheet, &space.not_counted, y) + 10.0
}

/// What a space requires of what it has.
fn gauge(space: &SpaceFill, volume: Volume, edition: Edition, messages: &Catalogue) -> Gauge {
    let mut taken = Span::of(space.required, "drawing-outlet-required", messages);
    if let Some(percent) = space.percent_used {
        taken.and(&figure_sentence("drawing-used", percent, messages));
    }
    Gauge {
        whole: None,
        most: space.available.map(|available| Span::of(available, "drawing-outlet-available", messages)),
        joint: volume.joint(),
        taken,
        balance: space.margin.map(|margin| Balance::of(margin, messages)),
        shares: shares(&space.tally, edition, messages),
        bar: BAR,
    }
}

/// The shares of what is counted by volume.
pub(super) fn shares(tally: &[TallyLine], edition: Edition, messages: &Catalogue) -> Vec<Share> {
    let share = |line: &TallyLine| Share {
        text: line_text(line, messages),
        citation: citation_named(line.rule, edition, messages),
        size: approximate(line.volume.value),
    };
    tally.iter().map(share).collect()
}

/// `Conductors, 12 AWG: 4 × 2.25 in³ = 9 in³`.
fn line_text(line: &TallyLine, messages: &Catalogue) -> String {
    let what = messages.label(&name_of(line.what));
    let TallyLine { size, allowances, each, volume, .. } = line;
    let ids: Vec<&str> = line.ids.iter().map(|id| id.as_str()).collect();
    let ids = if ids.is_empty() { String::new() } else { format!(" ({})", ids.join(", ")) };
    let [each, volume] = [each, volume].map(|part| figure_text(*part));
    format!("{what}, {size}{ids}: {} × {each} = {volume}", allowances.value)
}

/// What the volume of a space is made of.
#[derive(Clone, Copy, Default)]
struct Volume {
    own: Option<Figure>,
    sections: Option<Figure>,
    barriers: Option<Figure>,
    /// The volume that several spaces share out.
    shared: Option<Figure>,
}

impl Volume {
    fn of(proof: &Derivation, space: &SpaceFill) -> Self {
        let mut volume = Self::default();
        let Some(mut left) = space.available else { return volume };
        if let Some([portion, _]) = made_by(proof, left, Operation::Quotient, &BARRIER)
            && let Some([all, _]) = made_by(proof, portion, Operation::Product, &BARRIER)
        {
            (volume.shared, left) = (Some(all), all);
        }
        if let Some([difference, _]) = made_by(proof, left, Operation::Largest, &BARRIER) {
            left = difference;
        }
        if let Some([assembled, taken]) = made_by(proof, left, Operation::Difference, &BARRIER) {
            (volume.barriers, left) = (Some(taken), assembled);
        }
        if let Some([own, added]) = made_by(proof, left, Operation::Sum, &ASSEMBLY) {
            (volume.sections, left) = (Some(added), own);
        }
        volume.own = Some(left);
        volume
    }

    /// Where on the bar the box ends and what is fitted to it begins: only where nothing is taken off or shared out.
    fn joint(self) -> Option<f64> {
        let plain = self.sections.is_some() && self.barriers.is_none() && self.shared.is_none();
        self.own.filter(|_| plain).map(|own| approximate(own.value))
    }

    /// What it is made of, where that is more than the box.
    fn text(self, messages: &Catalogue) -> String {
        let parts: Vec<String> = [
            ("drawing-outlet-own", self.own),
            ("drawing-outlet-sections", self.sections),
            ("drawing-outlet-barriers", self.barriers),
            ("drawing-outlet-shared", self.shared),
        ]
        .into_iter()
        .filter_map(|(key, part)| Some(figure_sentence(key, part?, messages)))
        .collect();
        if parts.len() > 1 { parts.join(" · ") } else { String::new() }
    }
}

/// What is not counted, and why.
pub(super) fn left_out(sheet: &mut Sheet<'_>, not_counted: &[NotCounted], top: f64) -> f64 {
    let messages = sheet.messages();
    let mut y = top;
    let mut texts: Vec<String> = Vec::new();
    for left_out in not_counted {
        let what = messages.label(&name_of(left_out.what));
        let text = format!("{what}: {}", messages.reason(left_out.because));
        if !texts.contains(&text) {
            texts.push(text);
        }
    }
    if !texts.is_empty() {
        y += 12.0;
        sheet.text(at(MARGIN, y), Anchor::Start, Letters::Strong, &messages.label("not_counted"));
        sheet.describe(format!("{}:", messages.label("not_counted")));
    }
    for text in texts {
        let letters = letters_in(WIDTH - 2.0 * MARGIN, Letters::Small, &text);
        y = sheet.paragraph(at(MARGIN, y + 16.0), Letters::Small, &wrap(&text, letters, 0), 16.0) - 16.0;
        sheet.describe(text);
    }
    y + 10.0
}
