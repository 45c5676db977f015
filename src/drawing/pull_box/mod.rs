//! A pull box in plan: its walls folded out around its back, entries, pulls, and what the rules ask of every direction.

mod dimensions;
mod facts;
mod frame;
mod ids;
mod lists;
mod plan;
mod spread;
mod stage;
mod taken;

use super::Drawn;
use super::head::{BELOW, MARGIN, description, head};
use super::sheet::{Anchor, Letters, Sheet, at, short_text};
use crate::checks::pull_box::{PullBox, PullBoxOutcome, PullBoxRequest, SectionSize, Wall};
use crate::checks::{Evaluation, Request as _};
use crate::derivation::Pointer;
use crate::i18n::Catalogue;
use facts::{Amount, Facts};
use ids::Ids;
use lists::Below;
use stage::{Stage, Which, stages};

/// The width of the paper, unless the ids above or below a wall need more.
const WIDTH: f64 = 900.0;

impl Drawn for PullBox {
    fn draw(
        request: &PullBoxRequest,
        evaluation: &Evaluation<PullBoxOutcome>,
        messages: &Catalogue,
    ) -> String {
        let facts = Facts::of(request, &evaluation.proof, &evaluation.findings);
        let sections: Vec<(&SectionSize, Vec<Stage<'_>>)> =
            evaluation.outcome.sections.iter().map(|size| (size, stages(&facts, size))).collect();
        let widest = sections.iter().flat_map(|(_, stages)| stages).map(line_of_ids).fold(0.0, f64::max);
        let mut sheet = Sheet::new(messages, WIDTH.max(widest + 3.0 * MARGIN));
        let title = messages.fixed("drawing-pull-box-title");
        head(&mut sheet, title, &request.terms(), evaluation.verdict);
        let mut shown = Vec::new();
        let mut y = BELOW;
        for (size, stages) in &sections {
            y = section(&mut sheet, &facts, size, stages, y, &mut shown);
        }
        let description = description(evaluation.verdict, &shown, &evaluation.findings, messages);
        sheet.done(y + MARGIN, title, &description)
    }
}

/// The width that the longest line of ids of a box needs.
fn line_of_ids(stage: &Stage<'_>) -> f64 {
    let ids = Ids::of(stage);
    ids.line(stage, Wall::Top).max(ids.line(stage, Wall::Bottom))
}

/// Draws a section: each of its boxes, then the lists; gives back where the next begins.
fn section(
    sheet: &mut Sheet<'_>,
    facts: &Facts<'_>,
    size: &SectionSize,
    stages: &[Stage<'_>],
    top: f64,
    shown: &mut Vec<String>,
) -> f64 {
    let messages = sheet.messages();
    let mut below = Below { y: top, shown };
    for (number, stage) in stages.iter().enumerate() {
        let ids = Ids::of(stage);
        let title = title_of(size, stage.which, messages);
        below.y += 18.0;
        sheet.text(at(MARGIN, below.y), Anchor::Start, Letters::Strong, &title);
        below.shown.push(format!("{title}."));
        let (end, all_marked) = plan::draw(sheet, facts, stage, &ids, below.y + 6.0);
        below.y = end;
        if !all_marked {
            below.told(sheet, messages.fixed("drawing-ids-left-out"), 1);
        }
        lists::remarks(sheet, facts, stage, &mut below);
        if number == 0 {
            lists::requirements(sheet, facts, stage, &mut below);
            lists::pulls(sheet, facts, stage, &mut below);
        }
        lists::distances(sheet, facts, stage, &mut below);
        lists::entries(sheet, stage, &ids, &mut below);
        below.y += 20.0;
    }
    below.y
}

/// `Section left · The given box`.
fn title_of(size: &SectionSize, which: Which<'_>, messages: &Catalogue) -> String {
    let title = messages.fixed(match which {
        Which::Given => "drawing-box-given",
        Which::LaidOut(layout) if layout.proven_smallest => "drawing-box-smallest",
        Which::LaidOut(_) => "drawing-box-laid-out",
        Which::Least => "drawing-box-least",
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
fn clearances(facts: &Facts<'_>, stage: &Stage<'_>) -> (Option<Amount>, Option<Amount>) {
    if !matches!(stage.which, Which::LaidOut(_)) {
        return (None, None);
    }
    let [between, to_wall] = [&"/layout/clearance", &"/layout/wall_clearance"].map(Pointer::to);
    (facts.at(between), facts.at(to_wall))
}
