//! An outlet box as a gauge: what it holds, each thing with its share of the volume, and what is left or missing.

use super::Drawn;
use super::head::{BELOW, MARGIN, description, head, name_of};
use super::sheet::{Anchor, Letters, Look, Sheet, approximate, at, short_text};
use crate::checks::outlet_fill::{
    NotCounted, OutletFill, OutletFillOutcome, OutletFillRequest, SpaceFill, TallyLine,
};
use crate::checks::{Check, Evaluation};
use crate::derivation::Figure;
use crate::quantity::Decimal;
use crate::words::{Catalogue, figure, wrap};

const WIDTH: f64 = 720.0;
const BAR: f64 = 46.0;
const ROW: f64 = 20.0;
/// About how many small letters fit in the width.
const LETTERS: usize = 112;

impl Drawn for OutletFill {
    fn draw(
        request: &OutletFillRequest,
        evaluation: &Evaluation<OutletFillOutcome>,
        words: &Catalogue,
    ) -> String {
        let mut sheet = Sheet::new(words, WIDTH);
        let title = words.fixed("drawing-outlet-title");
        head(&mut sheet, title, &Self::terms(request), evaluation.verdict);
        let spaces = &evaluation.outcome.spaces;
        // one scale for all spaces, so that they can be compared
        let fullest = spaces.iter().map(|space| approximate(space.required.value).max(volume_of(space)));
        let scale = (WIDTH - 2.0 * MARGIN) / fullest.fold(0.0, f64::max).max(0.1);
        let mut shown = Vec::new();
        let mut y = BELOW;
        for space in spaces {
            y = gauge(&mut sheet, space, scale, y, &mut shown);
        }
        let description = description(evaluation.verdict, &shown, &evaluation.findings, words);
        sheet.done(y + MARGIN / 2.0, title, &description)
    }
}

/// The volume that a space has; nothing where none is known.
fn volume_of(space: &SpaceFill) -> f64 {
    space.available.map_or(0.0, |available| approximate(available.value))
}

/// Draws one space from some height on; gives back where the next begins.
fn gauge(sheet: &mut Sheet<'_>, space: &SpaceFill, scale: f64, top: f64, shown: &mut Vec<String>) -> f64 {
    let words = sheet.words();
    let mut y = top;
    if let Some(id) = &space.id {
        y += 16.0;
        let named = words.sentence("drawing-space", [("space", id)]);
        sheet.text(at(MARGIN, y), Anchor::Start, Letters::Strong, &short_text(&named, 80));
        shown.push(format!("{named}:"));
    }
    y += 30.0;
    if let Some(available) = space.available {
        let told = told_of("drawing-outlet-available", available, words);
        let to = MARGIN + approximate(available.value) * scale;
        sheet.dimension(at(MARGIN, y - 10.0), at(to, y - 10.0), Letters::Plain, &told);
        shown.push(format!("{told}."));
    }
    segments(sheet, space, scale, y);
    y += BAR + 20.0;
    y = balance(sheet, space, scale, y, shown);
    y = legend(sheet, space, y, shown);
    y = left_out(sheet, &space.not_counted, y);
    y + 10.0
}

/// The bar: one stretch for each thing that is counted, and the outline of what the box has.
fn segments(sheet: &mut Sheet<'_>, space: &SpaceFill, scale: f64, y: f64) {
    let words = sheet.words();
    if space.available.is_some() {
        let free = (volume_of(space) - approximate(space.required.value)).max(0.0) * scale;
        let from = MARGIN + approximate(space.required.value) * scale;
        sheet.rectangle(at(from, y), free, BAR, Look::Free);
    }
    let mut x = MARGIN;
    for (place, line) in space.tally.iter().enumerate() {
        let long = approximate(line.volume.value) * scale;
        sheet.group(&told_of_line(line, words), |sheet| {
            sheet.rectangle(at(x, y), long, BAR, Look::Filling(place));
            if long > 20.0 {
                let middle = at(x + long / 2.0, y + BAR / 2.0);
                sheet.circle(middle, 9.0, Look::Filling(8));
                let number = (place + 1).to_string();
                sheet.text(at(middle.x, middle.y + 4.5), Anchor::Middle, Letters::Strong, &number);
            }
        });
        x += long;
    }
    if space.available.is_some() {
        sheet.rectangle(at(MARGIN, y - 4.0), volume_of(space) * scale, BAR + 8.0, Look::Firm);
    }
}

/// What is left, or what is missing, below the bar where it is.
fn balance(sheet: &mut Sheet<'_>, space: &SpaceFill, scale: f64, y: f64, shown: &mut Vec<String>) -> f64 {
    let words = sheet.words();
    let required = told_of("drawing-outlet-required", space.required, words);
    let to = MARGIN + approximate(space.required.value) * scale;
    sheet.dimension(at(MARGIN, y + 6.0), at(to, y + 6.0), Letters::Plain, &required);
    shown.push(format!("{required}."));
    let Some((margin, available)) = space.margin.zip(space.available) else { return y + 28.0 };
    let end = MARGIN + approximate(available.value) * scale;
    let is_short = margin.value < Decimal::ZERO;
    let size = if is_short { margin.value.negated() } else { margin.value };
    let key = if is_short { "drawing-short" } else { "drawing-left" };
    let told = words.sentence(key, [("figure", figure(size, margin.unit))]);
    shown.push(format!("{told}."));
    if is_short {
        sheet.rectangle(at(end, y - 18.0 - BAR), to - end, BAR, Look::Short);
    }
    let letters = if is_short { Letters::Short } else { Letters::Plain };
    let (from, to) = if end < to { (end, to) } else { (to, end) };
    sheet.dimension(at(from, y + 32.0), at(to, y + 32.0), letters, &told);
    y + 52.0
}

/// What each stretch is.
fn legend(sheet: &mut Sheet<'_>, space: &SpaceFill, top: f64, shown: &mut Vec<String>) -> f64 {
    let words = sheet.words();
    let mut y = top;
    for (place, line) in space.tally.iter().enumerate() {
        let told = told_of_line(line, words);
        sheet.rectangle(at(MARGIN, y), 26.0, 14.0, Look::Filling(place));
        let number = format!("{}", place + 1);
        sheet.text(at(MARGIN + 46.0, y + 12.0), Anchor::End, Letters::Strong, &number);
        sheet.text(at(MARGIN + 54.0, y + 12.0), Anchor::Start, Letters::Plain, &short_text(&told, 92));
        shown.push(format!("{told}."));
        y += ROW;
    }
    y + 6.0
}

/// What is not counted, and why.
fn left_out(sheet: &mut Sheet<'_>, not_counted: &[NotCounted], top: f64) -> f64 {
    let words = sheet.words();
    let mut y = top;
    let mut told: Vec<String> = Vec::new();
    for left_out in not_counted {
        let what = words.label(&name_of(left_out.what));
        let text = format!("{what}: {}", words.reason(left_out.because));
        if !told.contains(&text) {
            told.push(text);
        }
    }
    if !told.is_empty() {
        y += 12.0;
        sheet.text(at(MARGIN, y), Anchor::Start, Letters::Strong, &words.label("not_counted"));
    }
    for text in told {
        for line in wrap(&text, LETTERS, 0).lines() {
            y += 16.0;
            sheet.text(at(MARGIN, y), Anchor::Start, Letters::Small, line);
        }
    }
    y + 10.0
}

/// `Conductors, 12 AWG: 4 × 2.25 in³ = 9 in³`.
fn told_of_line(line: &TallyLine, words: &Catalogue) -> String {
    let what = words.label(&name_of(line.what));
    let TallyLine { size, allowances, each, volume, .. } = line;
    let ids: Vec<&str> = line.ids.iter().map(|id| id.as_str()).collect();
    let ids = if ids.is_empty() { String::new() } else { format!(" ({})", ids.join(", ")) };
    let [each, volume] = [each, volume].map(|part| figure(part.value, part.unit));
    format!("{what}, {size}{ids}: {} × {each} = {volume}", allowances.value)
}

fn told_of(key: &str, of: Figure, words: &Catalogue) -> String {
    words.sentence(key, [("figure", figure(of.value, of.unit))])
}
