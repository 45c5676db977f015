//! Sides, walls, pulls and entries in words, as they are written on the drawing and below it.

use super::facts::{Amount, Facts};
use super::placement::{PlacedEntry, PullView};
use super::view::{BoxView, Side};
use crate::checks::pull_box::{Axis, PullKind, Wall};
use crate::drawing::head::name_of;
use crate::i18n::{Catalogue, figure};
use crate::rulebook::Rule;

/// `Width 24 in`.
fn side_text(key: &str, axis: Axis, amount: Amount, messages: &Catalogue) -> String {
    messages.sentence(key, [("axis", axis.name()), ("figure", &amount.text())])
}

/// What is written at one side, line by line.
pub(super) struct SideTexts {
    pub has: Option<String>,
    pub least: Option<String>,
    /// Where the rule stands that governs.
    pub by: Option<String>,
    pub missing: Option<String>,
}

impl SideTexts {
    pub fn of(facts: &Facts<'_>, view: &BoxView<'_>, side: &Side, messages: &Catalogue) -> Self {
        let text = |key, figure| side_text(key, side.axis, Amount::of(figure), messages);
        let requirements = &view.size.side(side.axis).requirements;
        let governing = requirements.iter().find(|requirement| requirement.governs);
        Self {
            has: side.figure.map(|figure| text("drawing-side", figure)),
            least: side.minimum.map(|figure| text("drawing-side-least", figure)),
            by: governing.and_then(|requirement| citation_of(facts, requirement.rule, messages)),
            missing: side
                .missing
                .map(|missing| messages.sentence("drawing-short", [("figure", missing.text())])),
        }
    }
}

pub(super) fn wall_text(wall: Wall, messages: &Catalogue) -> String {
    messages.sentence("drawing-wall", [("wall", wall.name())])
}

pub(super) fn row_text(wall: Wall, row: u32, messages: &Catalogue) -> String {
    messages.sentence("drawing-row", [("wall", wall_text(wall, messages)), ("row", row.to_string())])
}

/// Where a rule stands; the head says for the whole sheet where an edition is not verified.
pub(super) fn citation_of(facts: &Facts<'_>, rule: &Rule, messages: &Catalogue) -> Option<String> {
    let citation = rule.citation(facts.request.edition)?;
    Some(messages.citation(citation.parts()[0]))
}

pub(super) fn kind_text(kind: PullKind, messages: &Catalogue) -> String {
    messages.sentence("drawing-pulls-of", [("kind", name_of(kind))])
}

/// `A – C 4/0 AWG, spliced`.
pub(super) fn ends_text(view: &BoxView<'_>, pull: &PullView, messages: &Catalogue) -> String {
    let mut text = pull.ends.map(|end| view.id(end)).join(" – ");
    if let Some(size) = pull.largest {
        text = format!("{text} {size}");
    }
    for (is, key) in [(pull.spliced, "drawing-spliced"), (!pull.sized_by_length, "drawing-by-volume")] {
        if is {
            text = format!("{text}, {}", messages.fixed(key));
        }
    }
    text
}

/// A pull, for the pointer that rests on it.
pub(super) fn pull_text(view: &BoxView<'_>, pull: &PullView, messages: &Catalogue) -> String {
    format!("{}: {}", kind_text(pull.kind, messages), ends_text(view, pull, messages))
}

/// `A: left wall, row 1, Ø 3 in, 4 in from the bottom, 2 in from the back`.
pub(super) fn entry_text(placed: &PlacedEntry<'_>, messages: &Catalogue) -> String {
    let entry = placed.entry;
    let wall = match entry.row {
        Some(row) => row_text(entry.wall, row.get(), messages),
        None => wall_text(entry.wall, messages),
    };
    let mut parts = vec![format!("{}: {wall}", entry.id.as_str())];
    if let Some(Amount(value, unit)) = placed.diameter {
        parts.push(format!("Ø {}", figure(value, unit)));
    }
    for (axis, amount) in placed.measures.into_iter().flatten() {
        parts.push(side_text("drawing-from", axis, amount, messages));
    }
    parts.join(", ")
}
