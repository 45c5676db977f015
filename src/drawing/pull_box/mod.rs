//! A pull box in plan: its walls folded out around its back, entries, pulls, and what the rules require of every
//! direction.
//!
//! [`view`] is a box as it is drawn, in its own units, with [`placement`] for entries without a position; [`frame`] puts
//! it on paper to scale. [`plan`], [`ids`] and [`dimensions`] draw it on the [`canvas`]; [`lists`] writes what stands below.

mod canvas;
mod dimensions;
mod facts;
mod frame;
mod ids;
mod lists;
mod occupied;
mod placement;
mod plan;
mod texts;
mod view;

use super::Drawn;
use super::head::{BELOW, MARGIN, page};
use super::sheet::{Anchor, Letters, Sheet, at, short_text};
use crate::checks::Evaluation;
use crate::checks::pull_box::{PullBox, SectionSize, Wall};
use crate::derivation::Pointer;
use crate::i18n::Catalogue;
use facts::{Amount, Facts};
use ids::Ids;
use lists::Lines;
use view::{BoxKind, BoxView, views};

/// The width of the paper, unless the ids above or below a wall need more.
const WIDTH: f64 = 900.0;

impl Drawn for PullBox {
    fn draw(request: &Self::Request, evaluation: &Evaluation<Self::Outcome>, messages: &Catalogue) -> String {
        let facts = Facts::of(request, &evaluation.proof, &evaluation.findings);
        let sections: Vec<(&SectionSize, Vec<BoxView<'_>>)> =
            evaluation.outcome.sections.iter().map(|size| (size, views(&facts, size))).collect();
        let widest = sections.iter().flat_map(|(_, views)| views).map(line_of_ids).fold(0.0, f64::max);
        let width = WIDTH.max(widest + 3.0 * MARGIN);
        let title = messages.fixed("drawing-pull-box-title");
        page::<Self>(request, evaluation, (title, width), messages, |sheet| {
            let draw =
                |y, (size, views): &(&SectionSize, Vec<BoxView<'_>>)| section(sheet, &facts, size, views, y);
            sections.iter().fold(BELOW, draw) + MARGIN
        })
    }
}

/// The width that the longest line of ids of a box needs.
fn line_of_ids(view: &BoxView<'_>) -> f64 {
    let ids = Ids::of(view);
    ids.line(view, Wall::Top).max(ids.line(view, Wall::Bottom))
}

/// Draws a section: each of its boxes, then the lists. Returns where the next begins.
fn section(
    sheet: &mut Sheet<'_>,
    facts: &Facts<'_>,
    size: &SectionSize,
    views: &[BoxView<'_>],
    top: f64,
) -> f64 {
    let messages = sheet.messages();
    let mut y = top;
    for (number, view) in views.iter().enumerate() {
        let ids = Ids::of(view);
        let title = title_of(size, view.kind, messages);
        y += 18.0;
        sheet.text(at(MARGIN, y), Anchor::Start, Letters::Strong, &title);
        sheet.describe(format!("{title}."));
        let (end, all_marked) = plan::draw(sheet, facts, view, &ids, y + 6.0);
        let mut lines = Lines { sheet, y: end };
        if !all_marked {
            lines.sentence(messages.fixed("drawing-ids-left-out"), 1);
        }
        lists::remarks(facts, view, &mut lines);
        if number == 0 {
            lists::requirements(facts, view, &mut lines);
            lists::pulls(view, &mut lines);
        }
        lists::distances(facts, view, &mut lines);
        lists::entries(view, &ids, &mut lines);
        y = lines.y + 20.0;
    }
    y
}

/// `Section left · The given box`.
fn title_of(size: &SectionSize, kind: BoxKind<'_>, messages: &Catalogue) -> String {
    let title = messages.fixed(match kind {
        BoxKind::Given => "drawing-box-given",
        BoxKind::LaidOut(layout) if layout.proven_smallest => "drawing-box-smallest",
        BoxKind::LaidOut(_) => "drawing-box-laid-out",
        BoxKind::Least => "drawing-box-least",
    });
    match &size.id {
        Some(id) => {
            let section = messages.sentence("drawing-section", [("section", id)]);
            format!("{} · {title}", short_text(&section, 60))
        }
        None => title.to_owned(),
    }
}

/// The room that a layout was asked to keep between entries, and from them to the walls.
fn clearances(facts: &Facts<'_>, view: &BoxView<'_>) -> (Option<Amount>, Option<Amount>) {
    if !matches!(view.kind, BoxKind::LaidOut(_)) {
        return (None, None);
    }
    let [between, to_wall] = [&"/layout/clearance", &"/layout/wall_clearance"].map(Pointer::to);
    (facts.at(between), facts.at(to_wall))
}
