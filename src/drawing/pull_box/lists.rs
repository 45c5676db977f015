//! What stands below the box: what each rule asks, distances, pulls and entries, in words.

use super::dimensions::side_told;
use super::facts::{Amount, Facts};
use super::ids::Ids;
use super::stage::{Joined, Stage, Standing, Which, asked as asked_of};
use crate::checks::pull_box::{Axis, Cover, LengthRequirement, Pull, PullKind, Wall};
use crate::drawing::head::name_of;
use crate::drawing::sheet::{Anchor, Letters, Sheet, at, short_text};
use crate::i18n::{Catalogue, figure, summary, wrap};
use crate::rulebook::{Rule, rules};
use crate::trade::ConductorSize;

const MARGIN: f64 = super::MARGIN;
/// From one line of small letters to the next.
const LINE: f64 = 15.0;
/// About how wide a small letter is.
const LETTER: f64 = 6.5;
/// The most lines that the pulls of one kind take.
const MOST_LINES: usize = 24;
/// The most pairs of entries whose distance is listed.
const MOST_PAIRS: usize = 100;
/// Where the columns of what is asked begin: its length (which ends there), its sum, its citation.
const COLUMNS: [f64; 3] = [340.0, 360.0, 650.0];

/// Below what the next line is written, and all that was written so far.
pub(super) struct Below<'s> {
    pub y: f64,
    pub shown: &'s mut Vec<String>,
}

impl Below<'_> {
    fn heading(&mut self, sheet: &mut Sheet<'_>, key: &str) {
        self.y += 26.0;
        sheet.text(at(MARGIN, self.y), Anchor::Start, Letters::Strong, sheet.messages().fixed(key));
        self.y += 4.0;
    }

    /// A sentence or a list, in as many lines as it takes, up to some number.
    fn text(&mut self, sheet: &mut Sheet<'_>, text: &str, most: usize) {
        let wide = ((sheet.width() - 2.0 * MARGIN) / LETTER) as usize;
        let wrapped = wrap(text, wide, 4);
        let count = wrapped.lines().count();
        for (number, line) in wrapped.lines().enumerate().take(most) {
            self.y += LINE;
            let indented = line.starts_with(' ');
            let line = short_text(line.trim_start(), wide);
            let left = if indented { MARGIN + 4.0 * LETTER } else { MARGIN };
            let is_cut = number + 1 == most && count > most;
            let line = if is_cut { format!("{} …", short_text(&line, wide - 2)) } else { line };
            sheet.text(at(left, self.y), Anchor::Start, Letters::Small, &line);
        }
    }

    /// The same, told as a sentence too.
    pub fn told(&mut self, sheet: &mut Sheet<'_>, text: &str, most: usize) {
        self.text(sheet, text, most);
        self.shown.push(format!("{}.", text.trim_end_matches('.')));
    }

    /// Short texts in as many columns as they fit in.
    fn columns(&mut self, sheet: &mut Sheet<'_>, texts: &[(String, Letters)]) {
        const MOST_COLUMNS: usize = 4;
        let longest = texts.iter().map(|(text, _)| text.chars().count() + 2).max().unwrap_or(1);
        let wide = ((sheet.width() - 2.0 * MARGIN) / LETTER) as usize;
        let columns = (wide / longest.max(1)).clamp(1, MOST_COLUMNS);
        let rows = texts.len().div_ceil(columns).max(texts.len().min(3));
        let width = (sheet.width() - 2.0 * MARGIN) / columns as f64;
        for (number, (text, letters)) in texts.iter().enumerate() {
            let left = MARGIN + width * (number / rows) as f64;
            let y = self.y + LINE * (number % rows + 1) as f64;
            sheet.text(at(left, y), Anchor::Start, *letters, &short_text(text, wide / columns));
        }
        self.y += LINE * rows as f64;
    }
}

/// What the box is and what was assumed to draw it.
pub(super) fn remarks(sheet: &mut Sheet<'_>, facts: &Facts<'_>, stage: &Stage<'_>, below: &mut Below<'_>) {
    let messages = sheet.messages();
    for axis in Axis::ALL {
        let side = stage.side(axis);
        let mut told = Vec::new();
        told.extend(side.figure.map(|figure| side_told("drawing-side", axis, Amount::of(figure), messages)));
        told.extend(
            side.minimum.map(|least| side_told("drawing-side-least", axis, Amount::of(least), messages)),
        );
        told.extend(
            side.missing.map(|missing| messages.sentence("drawing-short", [("figure", missing.told())])),
        );
        if !told.is_empty() {
            below.shown.push(format!("{}.", told.join(", ")));
        }
    }
    let mut remarks = Vec::new();
    if stage.entries.iter().any(|standing| standing.measures.is_none()) {
        remarks.push(messages.fixed("drawing-places-assumed").to_owned());
    }
    for side in Axis::ALL.map(|axis| stage.side(axis)) {
        let hidden = side.axis == Axis::Depth && !stage.shows_walls();
        if side.assumed && !hidden {
            remarks.push(messages.sentence("drawing-side-assumed", [("axis", side.axis.name())]));
        }
    }
    if stage.entries.iter().any(|standing| standing.diameter.is_none()) {
        remarks.push(messages.fixed("drawing-rims-assumed").to_owned());
    }
    if stage.joined.iter().any(|joined| !joined.sized_by_length) {
        remarks.push(messages.fixed("drawing-pulls-thin").to_owned());
    }
    if stage.joined.iter().any(|joined| asked(facts, joined).is_some_and(|pull| pull.spliced)) {
        remarks.push(messages.fixed("drawing-splices").to_owned());
    }
    let (between, to_wall) = super::clearances(facts, stage);
    remarks.extend(between.map(|room| messages.sentence("drawing-room-between", [("figure", room.told())])));
    remarks.extend(to_wall.map(|room| messages.sentence("drawing-room-to-walls", [("figure", room.told())])));
    if facts.is_covered_by_mark() && matches!(stage.which, Which::Given) {
        remarks.push(messages.fixed("finding-mark-covers").to_owned());
    }
    remarks.push(of_the_box(facts, stage, messages));
    for remark in remarks.iter().filter(|remark| !remark.is_empty()) {
        below.told(sheet, remark, 3);
    }
}

/// The cover, the voltage and the blocks, in a word.
fn of_the_box(facts: &Facts<'_>, stage: &Stage<'_>, messages: &Catalogue) -> String {
    let request = facts.request;
    let mut told = Vec::new();
    if request.cover != Cover::Removable {
        told.push(messages.sentence("drawing-cover", [("cover", name_of(request.cover))]));
    }
    if request.over_1000_volts {
        told.push(messages.fixed("drawing-over-1000-volts").to_owned());
    }
    let of_section = |id: Option<&str>| id == stage.size.id.as_deref();
    let blocks = request.power_distribution_blocks.iter();
    let blocks = blocks.filter(|block| of_section(block.section.as_ref().map(|name| name.as_str()))).count();
    if blocks > 0 {
        told.push(messages.counted("drawing-blocks", "count", blocks));
    }
    told.join(" ")
}

/// What every rule asks, direction by direction.
pub(super) fn requirements(
    sheet: &mut Sheet<'_>,
    facts: &Facts<'_>,
    stage: &Stage<'_>,
    below: &mut Below<'_>,
) {
    let all = Axis::ALL.into_iter().flat_map(|axis| {
        asked_of(stage.size, axis).requirements.iter().map(move |requirement| (axis, requirement))
    });
    let all: Vec<(Axis, &LengthRequirement)> = all.collect();
    if all.is_empty() {
        return;
    }
    below.heading(sheet, "drawing-asked");
    for (axis, requirement) in all {
        let given = asked_of(stage.size, axis).given;
        let is_short = given.is_some_and(|given| given.value < requirement.length.value);
        self::requirement(sheet, facts, axis, requirement, is_short && !facts.is_covered_by_mark(), below);
    }
}

fn requirement(
    sheet: &mut Sheet<'_>,
    facts: &Facts<'_>,
    axis: Axis,
    requirement: &LengthRequirement,
    is_short: bool,
    below: &mut Below<'_>,
) {
    let messages = sheet.messages();
    let length = Amount::of(requirement.length).told();
    let place = where_asked(axis, requirement, messages);
    let letters = match (is_short, requirement.governs) {
        (true, _) => Letters::Short,
        (false, true) => Letters::Strong,
        (false, false) => Letters::Plain,
    };
    below.y += 19.0;
    let y = below.y;
    sheet.text(at(MARGIN, y), Anchor::Start, letters, &short_text(&place, 33));
    sheet.text(at(COLUMNS[0], y), Anchor::End, letters, &length);
    let sum = summary::computed(facts.proof, requirement.length.step).filter(|sum| sum.chars().count() <= 36);
    if let Some(sum) = &sum {
        sheet.text(at(COLUMNS[1], y), Anchor::Start, Letters::Plain, sum);
    }
    let citation = citation_of(facts, requirement.rule, messages).unwrap_or_default();
    sheet.text(at(COLUMNS[2], y), Anchor::Start, Letters::Plain, &short_text(&citation, 28));
    let title = messages.rule_title(requirement.rule.id);
    let counted = messages.sentence("drawing-counted", [("entries", requirement.entries.join(", "))]);
    let governs =
        if requirement.governs { format!("{}. ", messages.label("governs")) } else { String::new() };
    below.text(sheet, &format!("{governs}{title}. {counted}"), 2);
    let sum = sum.unwrap_or(length);
    below.shown.push(format!("{place}: {sum}, {citation}. {governs}{title}. {counted}."));
}

/// `Width, from the left wall, row 2`.
fn where_asked(axis: Axis, requirement: &LengthRequirement, messages: &Catalogue) -> String {
    let axis = messages.label(axis.name());
    match (requirement.wall, requirement.row) {
        (None, _) => axis.into_owned(),
        (Some(wall), None) => format!("{axis}, {}", wall_told(wall, messages)),
        (Some(wall), Some(row)) => format!("{axis}, {}", row_told(wall, row, messages)),
    }
}

fn wall_told(wall: Wall, messages: &Catalogue) -> String {
    messages.sentence("drawing-wall", [("wall", wall.name())])
}

fn row_told(wall: Wall, row: u32, messages: &Catalogue) -> String {
    messages.sentence("drawing-row", [("wall", wall_told(wall, messages)), ("row", row.to_string())])
}

/// Where a rule stands; the head says for the whole sheet where an edition is not verified.
pub(super) fn citation_of(facts: &Facts<'_>, rule: &Rule, messages: &Catalogue) -> Option<String> {
    let citation = rule.citation(facts.request.edition)?;
    Some(messages.citation(citation.parts()[0]))
}

/// How far entries with the same conductors must be apart, and are.
pub(super) fn distances(sheet: &mut Sheet<'_>, facts: &Facts<'_>, stage: &Stage<'_>, below: &mut Below<'_>) {
    let messages = sheet.messages();
    let id = |place: usize| stage.entries.get(place).map_or("", |standing| standing.entry.id.as_str());
    let Some(rule) = stage.apart.first().and_then(|apart| rules().find(|rule| rule.id == apart.rule)) else {
        return;
    };
    below.heading(sheet, "drawing-distances");
    let rule = [citation_of(facts, rule, messages), Some(messages.rule_title(rule.id))];
    below.told(sheet, &rule.into_iter().flatten().collect::<Vec<_>>().join(" · "), 1);
    let mut pairs = Vec::new();
    for apart in &stage.apart {
        let pair = apart.ends.map(id).join(" – ");
        let least = messages.sentence("drawing-least", [("figure", Amount::of(apart.required).told())]);
        let mut told = format!("{pair}: {least}");
        if let Some(measured) = apart.measured {
            let measured = messages.sentence("drawing-measured", [("figure", Amount::of(measured).told())]);
            told = format!("{told}, {measured}");
        }
        if apart.is_short() {
            told = format!("{told}, {}", messages.fixed("drawing-too-close"));
        }
        below.shown.push(format!("{told}."));
        pairs.push((told, if apart.is_short() { Letters::ShortOver } else { Letters::Small }));
    }
    let left_out = pairs.len().saturating_sub(MOST_PAIRS);
    pairs.truncate(MOST_PAIRS);
    if left_out > 0 {
        pairs.push((messages.counted("drawing-more", "count", left_out), Letters::Small));
    }
    below.columns(sheet, &pairs);
}

/// The pull that was asked about.
pub(super) fn asked<'a>(facts: &Facts<'a>, joined: &Joined) -> Option<&'a Pull> {
    facts.request.pulls.get(joined.pull)
}

/// The largest conductor that is said of a pull or of a cable at its ends.
pub(super) fn largest(facts: &Facts<'_>, stage: &Stage<'_>, joined: &Joined) -> Option<ConductorSize> {
    let ends = joined.ends.into_iter().filter_map(|end| stage.entries.get(end));
    let in_cables = ends.filter_map(|standing| standing.entry.cable.as_ref()?.largest());
    asked(facts, joined)?.largest_conductor.into_iter().chain(in_cables).max()
}

/// The pulls, kind by kind.
pub(super) fn pulls(sheet: &mut Sheet<'_>, facts: &Facts<'_>, stage: &Stage<'_>, below: &mut Below<'_>) {
    let messages = sheet.messages();
    if stage.joined.is_empty() {
        return;
    }
    below.heading(sheet, "drawing-pulls");
    for kind in [PullKind::Straight, PullKind::Angle, PullKind::U] {
        let of_kind = stage.joined.iter().filter(|joined| joined.kind == kind);
        let told: Vec<String> = of_kind.map(|joined| ends_told(facts, stage, joined, messages)).collect();
        if !told.is_empty() {
            below.told(sheet, &format!("{}: {}", kind_told(kind, messages), told.join("; ")), MOST_LINES);
        }
    }
}

fn kind_told(kind: PullKind, messages: &Catalogue) -> String {
    messages.sentence("drawing-pulls-of", [("kind", name_of(kind))])
}

/// `A – C 4/0 AWG, spliced`.
fn ends_told(facts: &Facts<'_>, stage: &Stage<'_>, joined: &Joined, messages: &Catalogue) -> String {
    let id = |place: usize| stage.entries.get(place).map_or("", |standing| standing.entry.id.as_str());
    let mut told = joined.ends.map(id).join(" – ");
    if let Some(size) = largest(facts, stage, joined) {
        told = format!("{told} {size}");
    }
    if asked(facts, joined).is_some_and(|pull| pull.spliced) {
        told = format!("{told}, {}", messages.fixed("drawing-spliced"));
    }
    if !joined.sized_by_length {
        told = format!("{told}, {}", messages.fixed("drawing-by-volume"));
    }
    told
}

/// A pull as the pointer that rests on it is told.
pub(super) fn pull_told(
    facts: &Facts<'_>,
    stage: &Stage<'_>,
    joined: &Joined,
    messages: &Catalogue,
) -> String {
    format!("{}: {}", kind_told(joined.kind, messages), ends_told(facts, stage, joined, messages))
}

/// The entries, one by one.
pub(super) fn entries(sheet: &mut Sheet<'_>, stage: &Stage<'_>, ids: &Ids, below: &mut Below<'_>) {
    let messages = sheet.messages();
    below.heading(sheet, "drawing-entries");
    let numbered = stage.entries.iter().zip(&ids.texts).map(|(standing, mark)| {
        let told = entry_told(standing, messages);
        if ids.numbered { format!("{mark} · {told}") } else { told }
    });
    let told: Vec<(String, Letters)> = numbered.map(|told| (told, Letters::Small)).collect();
    below.columns(sheet, &told);
    below.shown.extend(told.into_iter().map(|(told, _)| format!("{told}.")));
}

/// `A: left wall, row 1, Ø 3 in, 4 in from the bottom, 2 in from the back`.
pub(super) fn entry_told(standing: &Standing<'_>, messages: &Catalogue) -> String {
    let entry = standing.entry;
    let wall = match entry.row {
        Some(row) => row_told(entry.wall, row.get(), messages),
        None => wall_told(entry.wall, messages),
    };
    let mut parts = vec![format!("{}: {wall}", entry.id.as_str())];
    if let Some(Amount(value, unit)) = standing.diameter {
        parts.push(format!("Ø {}", figure(value, unit)));
    }
    for (axis, amount) in standing.measures.into_iter().flatten() {
        parts.push(side_told("drawing-from", axis, amount, messages));
    }
    parts.join(", ")
}
