//! A raceway seen end on: the conductors in it to scale, and a bar that shows how much of the inside they take.

use super::Drawn;
use super::cross_section::{Bundle, CrossSection};
use super::gauge::{
    BAR, Balance, Gauge, Share, Span, citation_named, citation_of, figure_sentence, figure_text,
};
use super::head::{self, BELOW, MARGIN, name_of};
use super::sheet::{Anchor, Letters, Look, Sheet, approximate, at, letters_in, short_text};
use super::traced::{operands_of, step_of};
use crate::checks::raceway_fill::{
    Fullness, RacewayFill, RacewayFillOutcome, RacewayFillRequest, RacewayTallyLine,
};
use crate::checks::{Evaluation, Status, Verdict};
use crate::derivation::{Derivation, Figure};
use crate::i18n::{Catalogue, figure, wrap};
use crate::quantity::{Decimal, Measure};
use crate::rulebook::Rule;
use crate::rulebook::raceway_fill::{JAMMING, SAME_SIZE, SINGLE};
use crate::tables::raceway_dimensions::{self, Dimension};
use std::f64::consts::PI;

const WIDTH: f64 = 720.0;
/// How wide a raceway is on paper, or the largest conductor where that is wider.
const ROUND: f64 = 280.0;
/// Where the column of facts begins.
const FACTS: f64 = MARGIN + ROUND + 36.0;
/// The most lines that the room left is text for.
const MOST_ROOMS: usize = 6;

impl Drawn for RacewayFill {
    fn draw(request: &Self::Request, evaluation: &Evaluation<Self::Outcome>, messages: &Catalogue) -> String {
        let title = messages.fixed("drawing-raceway-title");
        let page = Page { request, evaluation, raceway: Raceway::of(request, evaluation), messages };
        head::page::<Self>(request, evaluation, (title, WIDTH), messages, |sheet| {
            let y = page.section(sheet);
            let gauge = page.gauge();
            let y = gauge.draw(sheet, Gauge::scale_of([&gauge], WIDTH), y);
            gauge.legend(sheet, y) + MARGIN
        })
    }
}

/// The raceway that is drawn.
struct Raceway {
    name: String,
    /// Inside, in the unit of the request.
    radius: f64,
    inside: Option<Figure>,
    allowed: Figure,
    /// Whether the request did not give it: it is then the smallest that takes everything.
    assumed: bool,
}

impl Raceway {
    /// The raceway of the request, or the first of those that were sized; `None` where none takes everything.
    fn of(request: &RacewayFillRequest, evaluation: &Evaluation<RacewayFillOutcome>) -> Option<Self> {
        let outcome = &evaluation.outcome;
        if let Some(fill) = &outcome.fill {
            return Some(Self {
                name: format!("{} {}", fill.kind, fill.trade_size),
                radius: radius_of(fill.inside_area),
                inside: Some(fill.inside_area),
                allowed: fill.allowed_area,
                assumed: false,
            });
        }
        let found = outcome.fits.iter().find_map(|fit| Some((fit.kind, fit.trade_size?, fit.allowed_area?)));
        let (kind, size, allowed) = found?;
        let diameter = raceway_dimensions::of(kind, size, Dimension::Diameter, request.units)?;
        // the share of an inside area is a product with it, unless a share that is printed was looked up
        let area = request.units.of(Measure::Area);
        let factors = operands_of(&evaluation.proof, allowed);
        Some(Self {
            name: format!("{kind} {size}"),
            radius: approximate(diameter.value) / 2.0,
            inside: factors.into_iter().find(|factor| factor.unit == area),
            allowed,
            assumed: true,
        })
    }
}

/// The radius of a circle by its area.
fn radius_of(area: Figure) -> f64 {
    (approximate(area.value) / PI).max(0.0).sqrt()
}

struct Page<'a> {
    request: &'a RacewayFillRequest,
    evaluation: &'a Evaluation<RacewayFillOutcome>,
    raceway: Option<Raceway>,
    messages: &'a Catalogue,
}

impl Page<'_> {
    fn citation(&self, rule: &Rule) -> String {
        citation_of(rule, self.request.edition, self.messages)
    }

    const fn proof(&self) -> &Derivation {
        &self.evaluation.proof
    }

    fn bundles(&self) -> Vec<Bundle> {
        let bundle = |line: &RacewayTallyLine| {
            let measured = line.diameter.map(|diameter| approximate(diameter.value) / 2.0);
            Bundle {
                text: line_text(line, self.messages),
                count: approximate(line.count.value).max(0.0) as usize,
                radius: measured.unwrap_or_else(|| radius_of(line.each)),
            }
        };
        self.evaluation.outcome.tally.iter().map(bundle).collect()
    }

    /// Draws the raceway with the facts beside it, and below it what found no place; returns where the next begins.
    fn section(&self, sheet: &mut Sheet<'_>) -> f64 {
        let messages = self.messages;
        let bundles = self.bundles();
        let inside = self.raceway.as_ref().map_or(0.0, |raceway| raceway.radius);
        let section = CrossSection::new(&bundles, inside, ROUND);
        let mut y = BELOW + 8.0;
        let beside = self.facts(sheet, y + 14.0);
        if let Some(raceway) = &self.raceway {
            let centre = at(MARGIN + ROUND / 2.0, y + section.radius());
            let wall = if raceway.assumed { Look::Assumed } else { Look::Firm };
            section.draw(sheet, centre, wall);
            y += 2.0 * section.radius() + 22.0;
            if let Some(diameter) = raceway.inside.and_then(|inside| diameter_in(self.proof(), inside)) {
                let [from, to] = [-section.radius(), section.radius()].map(|side| at(centre.x + side, y));
                let text = figure_sentence("drawing-raceway-diameter", diameter, messages);
                sheet.described_dimension(from, to, Letters::Plain, &text);
                y += 18.0;
            }
        }
        for remark in self.remarks(&section) {
            y = sheet.paragraph(at(MARGIN, y), Letters::Small, &wrap(&remark, 50, 0), 15.0);
            sheet.describe(remark);
        }
        y = y.max(beside);
        if section.beside() > 0 {
            y = self.beside(sheet, &section, y);
        }
        y + 8.0
    }

    /// What must be said of a drawing that shows less than there is, or more.
    fn remarks(&self, section: &CrossSection<'_>) -> Vec<String> {
        let messages = self.messages;
        let mut remarks = Vec::new();
        match &self.raceway {
            None => remarks.push(messages.fixed("drawing-raceway-none").to_owned()),
            Some(raceway) if raceway.assumed => {
                let sized = self.request.raceway.is_some_and(|given| given.trade_size.is_some());
                let key = if sized { "drawing-raceway-without-figures" } else { "drawing-raceway-assumed" };
                remarks.push(messages.sentence(key, [("raceway", &raceway.name)]));
            }
            Some(_) => {}
        }
        if section.is_crowded() {
            let number = section.number();
            remarks.push(messages.sentence("drawing-raceway-as-areas", [("number", number)]));
        } else if self.raceway.is_some() {
            remarks.push(messages.fixed("drawing-raceway-lie").to_owned());
        }
        remarks
    }

    /// Draws what found no place.
    fn beside(&self, sheet: &mut Sheet<'_>, section: &CrossSection<'_>, top: f64) -> f64 {
        let messages = self.messages;
        let mut y = top + 10.0;
        let short = self.raceway.is_some();
        if short {
            let text = messages.sentence("drawing-raceway-no-place", [("number", section.beside())]);
            sheet.text(at(MARGIN, y), Anchor::Start, Letters::Short, &text);
            sheet.describe(text);
            y += 10.0;
        }
        let look = |line| if short { Look::Short } else { Look::Filling(line) };
        let (end, more) = section.draw_beside(sheet, y, look);
        y = end;
        if more > 0 {
            y += 18.0;
            let text = messages.sentence("drawing-raceway-more", [("number", more)]);
            sheet.text(at(MARGIN, y), Anchor::Start, Letters::Small, &text);
            sheet.describe(text);
        }
        y + 12.0
    }

    /// The column of facts; returns where it ends.
    fn facts(&self, sheet: &mut Sheet<'_>, top: f64) -> f64 {
        let messages = self.messages;
        let outcome = &self.evaluation.outcome;
        let mut column = Column { y: top };
        if let Some(raceway) = &self.raceway {
            column.line(sheet, Letters::Strong, &raceway.name);
        }
        let number = messages.sentence("drawing-raceway-number", [("number", outcome.number.value)]);
        column.line(sheet, Letters::Plain, &number);
        if let Some(fill) = &outcome.fill {
            self.of_fill(sheet, fill, &mut column);
        }
        self.fits(sheet, &mut column);
        column.y + 4.0
    }

    fn of_fill(&self, sheet: &mut Sheet<'_>, fill: &Fullness, column: &mut Column) {
        let messages = self.messages;
        let limit = [("limit", name_of(fill.limit)), ("percent", figure_text(fill.limit_percent))];
        column.line(sheet, Letters::Plain, &messages.sentence("drawing-raceway-limit", limit));
        if let Some(most) = fill.maximum {
            column.line(sheet, Letters::Plain, &figure_sentence("drawing-raceway-most", most, messages));
        } else {
            for room in fill.room_left.iter().take(MOST_ROOMS) {
                let what = room.name.as_ref().map(ToString::to_string).or(room.diameter.map(figure_text));
                let text = [("what", what.unwrap_or_default()), ("number", room.more.value.to_string())];
                column.line(sheet, Letters::Plain, &messages.sentence("drawing-raceway-room", text));
            }
            let more = fill.room_left.len().saturating_sub(MOST_ROOMS);
            if more > 0 {
                let text = messages.sentence("drawing-more-lines", [("number", more)]);
                column.line(sheet, Letters::Small, &text);
            }
        }
        if let Some(ratio) = fill.jam_ratio {
            column.line(sheet, Letters::Plain, &figure_sentence("drawing-raceway-jam", ratio, messages));
            column.line(sheet, Letters::Small, &self.citation(&JAMMING));
        }
    }

    /// The smallest trade size of each kind, as a small table.
    fn fits(&self, sheet: &mut Sheet<'_>, column: &mut Column) {
        let messages = self.messages;
        let fits = &self.evaluation.outcome.fits;
        if fits.is_empty() {
            return;
        }
        column.y += 8.0;
        column.line(sheet, Letters::Strong, messages.fixed("drawing-raceway-fits"));
        for fit in fits {
            let size = fit.trade_size.map(|size| size.name().to_owned());
            let size = size.unwrap_or_else(|| messages.fixed("drawing-raceway-no-size").to_owned());
            let sentence = |area| figure_sentence("drawing-raceway-allowed", area, messages);
            let allowed = fit.allowed_area.map(sentence).unwrap_or_default();
            sheet.describe(format!("{} {size} {allowed}.", fit.kind));
            let cells = [(0.0, fit.kind.name()), (74.0, size.as_str()), (130.0, allowed.as_str())];
            for (x, cell) in cells {
                sheet.text(at(FACTS + x, column.y), Anchor::Start, Letters::Plain, cell);
            }
            column.y += 16.0;
        }
    }

    fn gauge(&self) -> Gauge {
        let messages = self.messages;
        let outcome = &self.evaluation.outcome;
        let fill = outcome.fill.as_ref();
        let most = self.raceway.as_ref().map(|raceway| {
            let mut most = Span::of(raceway.allowed, "drawing-raceway-allowed", messages);
            if let Some(percent) = fill.map(|fill| fill.limit_percent) {
                most.and(&figure_text(percent));
            }
            if let Some(step) = step_of(self.proof(), raceway.allowed) {
                most.and(&self.citation(step.rule));
            }
            most
        });
        let mut taken = Span::of(outcome.total_area, "drawing-raceway-taken", messages);
        if let Some(fill) = fill {
            taken.and(&figure_text(fill.fill_percent));
        }
        let inside = self.raceway.as_ref().and_then(|raceway| raceway.inside);
        let share = |line: &RacewayTallyLine| Share {
            text: line_text(line, messages),
            citation: citation_named(line.rule, self.request.edition, messages),
            size: approximate(line.area.value),
        };
        Gauge {
            whole: inside.map(|inside| Span::of(inside, "drawing-raceway-inside", messages)),
            most,
            joint: None,
            taken,
            balance: fill.map(|fill| self.balance(fill)),
            shares: outcome.tally.iter().map(share).collect(),
            bar: BAR,
        }
    }

    /// What is left or short; or over, where the number is permitted all the same.
    fn balance(&self, fill: &Fullness) -> Balance {
        let balance = Balance::of(fill.margin, self.messages);
        if !balance.short || self.evaluation.verdict == Some(Verdict::Violates) {
            return balance;
        }
        let raises = |rule: &Rule| rule.id == SAME_SIZE.id || rule.id == SINGLE.id;
        let mut findings = self.evaluation.findings.iter();
        let raised = findings.find(|found| found.status == Status::Satisfied && raises(found.rule));
        let rule = raised.map(|found| self.citation(found.rule)).unwrap_or_default();
        let over: Decimal = fill.margin.value.negated();
        let text = [("figure", figure(over, fill.margin.unit)), ("rule", rule)];
        Balance { text: self.messages.sentence("drawing-raceway-raised", text), short: false }
    }
}

/// Lines below one another, each text in the description too.
struct Column {
    y: f64,
}

impl Column {
    fn line(&mut self, sheet: &mut Sheet<'_>, letters: Letters, text: &str) {
        let most = letters_in(WIDTH - MARGIN - FACTS, letters, text);
        for line in wrap(text, most, 0).lines() {
            sheet.text(at(FACTS, self.y), Anchor::Start, letters, &short_text(line, most + 4));
            self.y += 18.0;
        }
        sheet.describe(format!("{text}."));
    }
}

/// `Conductors, THHN 12 AWG: 4 × 0.0133 in² = 0.0532 in²`.
fn line_text(line: &RacewayTallyLine, messages: &Catalogue) -> String {
    let what = messages.label(&name_of(line.what));
    let of =
        line.name.as_ref().map(ToString::to_string).or(line.diameter.map(figure_text)).unwrap_or_default();
    let [each, area] = [line.each, line.area].map(figure_text);
    format!("{what}, {of}: {} × {each} = {area}", line.count.value)
}

/// The diameter that an inside area was computed from; `None` where the area was looked up.
fn diameter_in(proof: &Derivation, area: Figure) -> Option<Figure> {
    let length = proof.units().of(Measure::Length);
    let square = *operands_of(proof, area).first()?;
    operands_of(proof, square).into_iter().find(|factor| factor.unit == length)
}
