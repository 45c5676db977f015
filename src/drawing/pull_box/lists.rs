//! What stands below the box: what each rule requires, distances, pulls and entries, in words.

use super::facts::{Amount, Facts};
use super::ids::Ids;
use super::texts::{SideTexts, citation_of, ends_text, entry_text, kind_text, row_text, wall_text};
use super::view::{BoxKind, BoxView};
use crate::checks::pull_box::{Axis, Cover, LengthRequirement, PullKind};
use crate::drawing::head::name_of;
use crate::drawing::sheet::{Anchor, Letters, Sheet, at, short_text};
use crate::i18n::{Catalogue, summary, wrap};
use crate::rulebook::rules;

const MARGIN: f64 = super::MARGIN;
/// From one line of small letters to the next.
const LINE: f64 = 15.0;
/// About how wide a small letter is.
const LETTER: f64 = 6.5;
/// The most lines that the pulls of one kind take.
const MOST_LINES: usize = 24;
/// The most pairs of entries whose distance is listed.
const MOST_PAIRS: usize = 100;
/// Where the columns of requirements begin: its length (which ends there), its sum, its citation.
const COLUMNS: [f64; 3] = [340.0, 360.0, 650.0];

/// Lines of text below one another.
pub(super) struct Lines<'s, 'w> {
    pub sheet: &'s mut Sheet<'w>,
    /// Where the last line stands.
    pub y: f64,
}

impl Lines<'_, '_> {
    fn heading(&mut self, key: &str) {
        self.y += 26.0;
        self.sheet.text(at(MARGIN, self.y), Anchor::Start, Letters::Strong, self.sheet.messages().fixed(key));
        self.y += 4.0;
    }

    /// A sentence or a list, in as many lines as it takes, up to some number.
    fn text(&mut self, text: &str, most: usize) {
        let wide = ((self.sheet.width() - 2.0 * MARGIN) / LETTER) as usize;
        let wrapped = wrap(text, wide, 4);
        let count = wrapped.lines().count();
        for (number, line) in wrapped.lines().enumerate().take(most) {
            self.y += LINE;
            let indented = line.starts_with(' ');
            let line = short_text(line.trim_start(), wide);
            let left = if indented { MARGIN + 4.0 * LETTER } else { MARGIN };
            let is_cut = number + 1 == most && count > most;
            let line = if is_cut { format!("{} …", short_text(&line, wide - 2)) } else { line };
            self.sheet.text(at(left, self.y), Anchor::Start, Letters::Small, &line);
        }
    }

    /// The same, as a sentence of the description too.
    pub fn sentence(&mut self, text: &str, most: usize) {
        self.text(text, most);
        self.sheet.describe(format!("{}.", text.trim_end_matches('.')));
    }

    /// Short texts in as many columns as they fit in.
    fn columns(&mut self, texts: &[(String, Letters)]) {
        const MOST_COLUMNS: usize = 4;
        let longest = texts.iter().map(|(text, _)| text.chars().count() + 2).max().unwrap_or(1);
        let wide = ((self.sheet.width() - 2.0 * MARGIN) / LETTER) as usize;
        let columns = (wide / longest.max(1)).clamp(1, MOST_COLUMNS);
        let rows = texts.len().div_ceil(columns).max(texts.len().min(3));
        let width = (self.sheet.width() - 2.0 * MARGIN) / columns as f64;
        for (number, (text, letters)) in texts.iter().enumerate() {
            let left = MARGIN + width * (number / rows) as f64;
            let y = self.y + LINE * (number % rows + 1) as f64;
            self.sheet.text(at(left, y), Anchor::Start, *letters, &short_text(text, wide / columns));
        }
        self.y += LINE * rows as f64;
    }
}

/// What the box is and what was assumed to draw it.
pub(super) fn remarks(facts: &Facts<'_>, view: &BoxView<'_>, lines: &mut Lines<'_, '_>) {
    let messages = lines.sheet.messages();
    for side in Axis::ALL.map(|axis| &view.sides[axis]) {
        let SideTexts { has, least, missing, .. } = SideTexts::of(facts, view, side, messages);
        let texts: Vec<String> = [has, least, missing].into_iter().flatten().collect();
        if !texts.is_empty() {
            lines.sheet.describe(format!("{}.", texts.join(", ")));
        }
    }
    let mut remarks = Vec::new();
    if view.entries.iter().any(|placed| placed.measures.is_none()) {
        remarks.push(messages.fixed("drawing-places-assumed").to_owned());
    }
    for side in Axis::ALL.map(|axis| &view.sides[axis]) {
        let hidden = side.axis == Axis::Depth && !view.shows_walls();
        if side.assumed && !hidden {
            remarks.push(messages.sentence("drawing-side-assumed", [("axis", side.axis.name())]));
        }
    }
    for (applies, key) in [
        (view.entries.iter().any(|placed| placed.diameter.is_none()), "drawing-rims-assumed"),
        (view.pulls.iter().any(|pull| !pull.sized_by_length), "drawing-pulls-thin"),
        (view.pulls.iter().any(|pull| pull.spliced), "drawing-splices"),
    ] {
        if applies {
            remarks.push(messages.fixed(key).to_owned());
        }
    }
    let (between, to_wall) = super::clearances(facts, view);
    remarks.extend(between.map(|room| messages.sentence("drawing-room-between", [("figure", room.text())])));
    remarks.extend(to_wall.map(|room| messages.sentence("drawing-room-to-walls", [("figure", room.text())])));
    if facts.is_covered_by_mark() && matches!(view.kind, BoxKind::Given) {
        remarks.push(messages.fixed("finding-mark-covers").to_owned());
    }
    remarks.push(of_the_box(facts, view, messages));
    for remark in remarks.iter().filter(|remark| !remark.is_empty()) {
        lines.sentence(remark, 3);
    }
}

/// The cover, the voltage and the blocks, in a word.
fn of_the_box(facts: &Facts<'_>, view: &BoxView<'_>, messages: &Catalogue) -> String {
    let request = facts.request;
    let mut texts = Vec::new();
    if let Some(cover) = request.cover.filter(|cover| *cover != Cover::Removable) {
        texts.push(messages.sentence("drawing-cover", [("cover", name_of(cover))]));
    }
    if request.over_1000_volts {
        texts.push(messages.fixed("drawing-over-1000-volts").to_owned());
    }
    let of_section = |id: Option<&str>| id == view.size.id.as_deref();
    let blocks = request.power_distribution_blocks.iter();
    let blocks = blocks.filter(|block| of_section(block.section.as_ref().map(|name| name.as_str()))).count();
    if blocks > 0 {
        texts.push(messages.counted("drawing-blocks", "count", blocks));
    }
    texts.join(" ")
}

/// What every rule requires, direction by direction.
pub(super) fn requirements(facts: &Facts<'_>, view: &BoxView<'_>, lines: &mut Lines<'_, '_>) {
    let all = Axis::ALL.into_iter().flat_map(|axis| {
        view.size.side(axis).requirements.iter().map(move |requirement| (axis, requirement))
    });
    let all: Vec<(Axis, &LengthRequirement)> = all.collect();
    if all.is_empty() {
        return;
    }
    lines.heading("drawing-asked");
    for (axis, requirement) in all {
        let given = view.size.side(axis).given;
        let is_short = given.is_some_and(|given| given.value < requirement.length.value);
        self::requirement(facts, axis, requirement, is_short && !facts.is_covered_by_mark(), lines);
    }
}

fn requirement(
    facts: &Facts<'_>,
    axis: Axis,
    requirement: &LengthRequirement,
    is_short: bool,
    lines: &mut Lines<'_, '_>,
) {
    let messages = lines.sheet.messages();
    let length = Amount::of(requirement.length).text();
    let place = where_asked(axis, requirement, messages);
    let letters = match (is_short, requirement.governs) {
        (true, _) => Letters::Short,
        (false, true) => Letters::Strong,
        (false, false) => Letters::Plain,
    };
    lines.y += 19.0;
    let y = lines.y;
    lines.sheet.text(at(MARGIN, y), Anchor::Start, letters, &short_text(&place, 33));
    lines.sheet.text(at(COLUMNS[0], y), Anchor::End, letters, &length);
    let sum = summary::computed(facts.proof, requirement.length.step).filter(|sum| sum.chars().count() <= 36);
    if let Some(sum) = &sum {
        lines.sheet.text(at(COLUMNS[1], y), Anchor::Start, Letters::Plain, sum);
    }
    let citation = citation_of(facts, requirement.rule, messages).unwrap_or_default();
    lines.sheet.text(at(COLUMNS[2], y), Anchor::Start, Letters::Plain, &short_text(&citation, 28));
    let title = messages.rule_title(requirement.rule.id);
    let counted = messages.sentence("drawing-counted", [("entries", requirement.entries.join(", "))]);
    let governs =
        if requirement.governs { format!("{}. ", messages.label("governs")) } else { String::new() };
    lines.text(&format!("{governs}{title}. {counted}"), 2);
    let sum = sum.unwrap_or(length);
    lines.sheet.describe(format!("{place}: {sum}, {citation}. {governs}{title}. {counted}."));
}

/// `Width, from the left wall, row 2`.
fn where_asked(axis: Axis, requirement: &LengthRequirement, messages: &Catalogue) -> String {
    let axis = messages.label(axis.name());
    match (requirement.wall, requirement.row) {
        (None, _) => axis.into_owned(),
        (Some(wall), None) => format!("{axis}, {}", wall_text(wall, messages)),
        (Some(wall), Some(row)) => format!("{axis}, {}", row_text(wall, row, messages)),
    }
}

/// How far entries with the same conductors must be apart, and are.
pub(super) fn distances(facts: &Facts<'_>, view: &BoxView<'_>, lines: &mut Lines<'_, '_>) {
    let messages = lines.sheet.messages();
    let Some(rule) =
        view.distances.first().and_then(|distance| rules().find(|rule| rule.id == distance.rule))
    else {
        return;
    };
    lines.heading("drawing-distances");
    let rule = [citation_of(facts, rule, messages), Some(messages.rule_title(rule.id))];
    lines.sentence(&rule.into_iter().flatten().collect::<Vec<_>>().join(" · "), 1);
    let mut pairs = Vec::new();
    for distance in &view.distances {
        let pair = distance.ends.map(|end| view.id(end)).join(" – ");
        let least = messages.sentence("drawing-least", [("figure", Amount::of(distance.required).text())]);
        let mut text = format!("{pair}: {least}");
        if let Some(measured) = distance.measured {
            let measured = messages.sentence("drawing-measured", [("figure", Amount::of(measured).text())]);
            text = format!("{text}, {measured}");
        }
        if distance.is_short() {
            text = format!("{text}, {}", messages.fixed("drawing-too-close"));
        }
        lines.sheet.describe(format!("{text}."));
        pairs.push((text, if distance.is_short() { Letters::ShortOver } else { Letters::Small }));
    }
    let left_out = pairs.len().saturating_sub(MOST_PAIRS);
    pairs.truncate(MOST_PAIRS);
    if left_out > 0 {
        pairs.push((messages.counted("drawing-more", "count", left_out), Letters::Small));
    }
    lines.columns(&pairs);
}

/// The pulls, kind by kind.
pub(super) fn pulls(view: &BoxView<'_>, lines: &mut Lines<'_, '_>) {
    let messages = lines.sheet.messages();
    if view.pulls.is_empty() {
        return;
    }
    lines.heading("drawing-pulls");
    for kind in [PullKind::Straight, PullKind::Angle, PullKind::U] {
        let of_kind = view.pulls.iter().filter(|pull| pull.kind == kind);
        let texts: Vec<String> = of_kind.map(|pull| ends_text(view, pull, messages)).collect();
        if !texts.is_empty() {
            lines.sentence(&format!("{}: {}", kind_text(kind, messages), texts.join("; ")), MOST_LINES);
        }
    }
}

/// The entries, one by one.
pub(super) fn entries(view: &BoxView<'_>, ids: &Ids, lines: &mut Lines<'_, '_>) {
    let messages = lines.sheet.messages();
    lines.heading("drawing-entries");
    let numbered = view.entries.iter().zip(&ids.texts).map(|(placed, mark)| {
        let text = entry_text(placed, messages);
        if ids.numbered { format!("{mark} · {text}") } else { text }
    });
    let texts: Vec<(String, Letters)> = numbered.map(|text| (text, Letters::Small)).collect();
    lines.columns(&texts);
    for (text, _) in texts {
        lines.sheet.describe(format!("{text}."));
    }
}
