//! A body seen from its cover and from its side, to one scale.

use super::super::gauge::figure_sentence;
use super::super::head::MARGIN;
use super::super::sheet::{Anchor, Letters, Look, Point, Sheet, approximate, at, letters_in};
use super::measures::{Extent, Known, Measures, Opening};
use super::{Page, WIDTH, raceway_of};
use crate::checks::conduit_body::HubPlace::{self, Back, End, OppositeEnd, OppositeSide, Side};
use crate::i18n::{figure, wrap};

/// Where the body begins, with room for the name of its end.
const LEFT: f64 = MARGIN + 104.0;
/// The longest, widest and deepest that a body is drawn.
const LONGEST: f64 = 330.0;
const WIDEST: f64 = 190.0;
const DEEPEST: f64 = 150.0;
/// How long a piece of raceway is drawn.
const STUB: f64 = 30.0;
/// The room for the name of the opposite end, and for that of a side.
const NAME: f64 = 92.0;
const NAME_HEIGHT: f64 = 18.0;
/// The height of the name of an end, above and below its middle.
const NAME_HALF: f64 = 27.0;
/// How near to the edge of the paper a dimension may be text.
const EDGE: f64 = 8.0;

/// How an opening lies in a view.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Facing {
    /// In the left or right wall.
    Across,
    /// In the upper or lower wall.
    Upright,
    /// Towards the viewer, or away.
    Seen,
}

/// One view: where it lies on paper, and what it shows.
pub(super) struct View<'v> {
    pub measures: &'v Measures<'v>,
    /// The direction from the upper to the lower wall.
    extent: &'v Extent,
    pub is_plan: bool,
    pub scale: f64,
    top: f64,
}

impl View<'_> {
    pub fn facing(&self, place: HubPlace) -> Facing {
        match (place, self.is_plan) {
            (End | OppositeEnd, _) => Facing::Across,
            (Side | OppositeSide, true) | (Back, false) => Facing::Upright,
            (Side | OppositeSide, false) | (Back, true) => Facing::Seen,
        }
    }

    fn right(&self) -> f64 {
        LEFT + self.measures.length.size * self.scale
    }

    fn bottom(&self) -> f64 {
        self.top + self.extent.size * self.scale
    }

    fn middle(&self) -> f64 {
        (self.top + self.bottom()) / 2.0
    }

    /// Where an opening is, moved along its wall.
    pub fn point(&self, opening: &Opening<'_>, moved: f64) -> Point {
        let along = LEFT + opening.along * self.scale;
        match (opening.hub.place, self.facing(opening.hub.place)) {
            (_, Facing::Across) => at(along, self.middle() + moved),
            (Side, Facing::Upright) => at(along + moved, self.top),
            (_, Facing::Upright) => at(along + moved, self.bottom()),
            (_, Facing::Seen) => at(along + moved, self.middle() + moved),
        }
    }

    /// Out of the body from an opening, as far as its raceway is drawn.
    pub fn outward(&self, place: HubPlace) -> Point {
        let beyond = |extent: &Extent| STUB + extent.missing * self.scale;
        match (place, self.facing(place)) {
            (End, _) => at(-STUB, 0.0),
            (OppositeEnd, _) => at(beyond(&self.measures.length), 0.0),
            (Side, Facing::Upright) => at(0.0, -STUB),
            (OppositeSide, Facing::Upright) => at(0.0, beyond(self.extent)),
            (_, Facing::Upright) => at(0.0, STUB),
            (_, Facing::Across | Facing::Seen) => at(0.0, 0.0),
        }
    }
}

impl Page<'_> {
    /// Draws both views with their dimensions; returns where the next part begins.
    pub(super) fn views(&self, sheet: &mut Sheet<'_>, measures: &Measures<'_>, top: f64) -> f64 {
        let Measures { length, width, depth, .. } = measures;
        let room = |most: f64, extent: &Extent, places: &[HubPlace]| {
            most / extent.whole().max(measures.widest(places)).max(f64::MIN_POSITIVE)
        };
        let scale = room(LONGEST, length, &[Side, OppositeSide, Back])
            .min(room(WIDEST, width, &[End, OppositeEnd, Back]))
            .min(room(DEEPEST, depth, &[End, OppositeEnd, Side, OppositeSide]));
        let plan = View { measures, extent: width, is_plan: true, scale, top };
        let mut y = self.view(sheet, plan, "drawing-body-from-cover");
        y = self.length(sheet, length, scale, y);
        if depth.known != Known::Assumed || measures.opening(Back).is_some() {
            let side = View { measures, extent: depth, is_plan: false, scale, top: y };
            y = self.view(sheet, side, "drawing-body-from-side");
        }
        let dashed = [length, width, depth].iter().any(|extent| extent.known != Known::Given);
        let scaled =
            if measures.is_to_scale() { "drawing-body-to-scale" } else { "drawing-body-not-to-scale" };
        y += 6.0;
        for remark in [Some(scaled), dashed.then_some("drawing-body-dashed")].into_iter().flatten() {
            let remark = self.messages.fixed(remark);
            sheet.text(at(MARGIN, y + 12.0), Anchor::Start, Letters::Small, remark);
            sheet.describe(remark.to_owned());
            y += 16.0;
        }
        y
    }

    /// Draws a view below its heading; returns where it ends.
    fn view(&self, sheet: &mut Sheet<'_>, mut view: View<'_>, title: &str) -> f64 {
        let messages = self.messages;
        let start = view.top;
        sheet.text(at(MARGIN, start + 16.0), Anchor::Start, Letters::Small, messages.fixed(title));
        let measures = view.measures;
        let upright = |place| measures.opening(place).filter(|_| view.facing(place) == Facing::Upright);
        let above = if upright(Side).is_some() { STUB + NAME_HEIGHT } else { 0.0 };
        let below = if upright(OppositeSide).or(upright(Back)).is_some() { STUB + NAME_HEIGHT } else { 0.0 };
        // what is missing of the depth lies beyond the cover, of the width beyond the lower wall
        let missing = view.extent.missing * view.scale;
        let (over, under) = if view.is_plan { (0.0, missing) } else { (missing, 0.0) };
        let seen: Vec<HubPlace> = [End, OppositeEnd, Side, OppositeSide, Back]
            .into_iter()
            .filter(|place| upright(*place).is_none())
            .collect();
        // an opening that is wider than the body stands out above and below
        let bulge = (measures.widest(&seen) - view.extent.size).max(0.0) * view.scale / 2.0;
        // so is a name that is higher than the body
        let named = (NAME_HALF - view.extent.size * view.scale / 2.0).max(0.0);
        let bulge = if view.is_plan { bulge.max(named) } else { bulge };
        view.top = start + 30.0 + above.max(over).max(bulge);
        self.walls(sheet, &view);
        for opening in &measures.openings {
            self.opening_of(sheet, &view, opening);
        }
        self.strands(sheet, &view);
        self.across(sheet, &view);
        view.bottom() + (below + under).max(bulge) + 4.0
    }

    fn walls(&self, sheet: &mut Sheet<'_>, view: &View<'_>) {
        let look = |extent: &Extent| if extent.known == Known::Given { Look::Firm } else { Look::Assumed };
        let (top, bottom, right) = (view.top, view.bottom(), view.right());
        let (length, across) = (&view.measures.length, view.extent);
        for (extent, corner, size) in [
            (length, at(right, top), (length.missing * view.scale, bottom - top)),
            (
                across,
                at(LEFT, if view.is_plan { bottom } else { top - across.missing * view.scale }),
                (right - LEFT, across.missing * view.scale),
            ),
        ] {
            if extent.missing > 0.0 {
                let look = if self.is_short(extent) { Look::Short } else { Look::Assumed };
                sheet.group(&self.missing_text(extent), |sheet| {
                    sheet.rectangle(corner, size.0, size.1, look);
                });
            }
        }
        for y in [top, bottom] {
            sheet.line(at(LEFT, y), at(right, y), look(across));
        }
        for x in [LEFT, right] {
            sheet.line(at(x, top), at(x, bottom), look(length));
        }
        if !view.is_plan {
            sheet.line(at(LEFT - 4.0, top - 4.0), at(right + 4.0, top - 4.0), Look::Thin);
        }
    }

    /// An opening with its piece of raceway and its name.
    fn opening_of(&self, sheet: &mut Sheet<'_>, view: &View<'_>, opening: &Opening<'_>) {
        let place = opening.hub.place;
        let (centre, outward) = (view.point(opening, 0.0), view.outward(place));
        let radius = opening.radius * view.scale;
        let (name, raceway) = (self.opening(place), raceway_of(opening.hub));
        let text = format!("{name} · {raceway}");
        let facing = view.facing(place);
        sheet.group(&text, |sheet| {
            if facing == Facing::Seen {
                sheet.circle(centre, radius, Look::Thin);
                return;
            }
            let sides = [-radius, radius].map(|side| match facing {
                Facing::Across => at(centre.x, centre.y + side),
                Facing::Upright | Facing::Seen => at(centre.x + side, centre.y),
            });
            for side in sides {
                sheet.line(side, at(side.x + outward.x, side.y + outward.y), Look::Thin);
            }
        });
        // each opening is named once: in the plan, or where only the side shows it
        match (facing, view.is_plan) {
            (Facing::Across, true) => {
                let x = if place == End { MARGIN } else { centre.x + outward.x + 8.0 };
                let lines = wrap(&name, 8, 0);
                let y = centre.y - 7.0 * lines.lines().count() as f64 + 4.0;
                let y = sheet.paragraph(at(x, y), Letters::Strong, &lines, 15.0);
                sheet.text(at(x, y), Anchor::Start, Letters::Small, &raceway);
            }
            (Facing::Upright, _) => {
                let y = centre.y + outward.y + if outward.y < 0.0 { -5.0 } else { 15.0 };
                sheet.text(at(centre.x, y), Anchor::Middle, Letters::Strong, &text);
            }
            (Facing::Across | Facing::Seen, _) => return,
        }
        sheet.describe(format!("{text}."));
    }

    /// The dimensions of the length, below the plan.
    fn length(&self, sheet: &mut Sheet<'_>, length: &Extent, scale: f64, top: f64) -> f64 {
        let messages = self.messages;
        let mut y = top;
        let mut dimension = |from: f64, to: f64, letters: Letters, text: String| {
            y += 24.0;
            let [from, to] = [from, to].map(|length| at(LEFT + length * scale, y));
            sheet.described_dimension(from, to, letters, &text);
        };
        if let Some(given) = &length.given {
            dimension(0.0, length.size, Letters::Plain, format!("{} {given}", messages.label(length.name)));
        }
        if let Some(minimum) = length.minimum {
            let least = approximate(minimum.value);
            dimension(0.0, least, Letters::Plain, self.minimum_text(length));
        }
        if length.missing > 0.0 {
            let letters = if self.is_short(length) { Letters::Short } else { Letters::Plain };
            dimension(length.size, length.whole(), letters, self.missing_text(length));
        }
        y + 12.0
    }

    /// The dimensions from the upper to the lower wall, at the right.
    fn across(&self, sheet: &mut Sheet<'_>, view: &View<'_>) {
        let extent = view.extent;
        if extent.known == Known::Assumed {
            return;
        }
        let messages = self.messages;
        let named = view.measures.opening(OppositeEnd).is_some();
        let end = LEFT + view.measures.length.whole() * view.scale;
        let x = end + if named { STUB + NAME } else { 24.0 };
        let (top, bottom, missing) = (view.top, view.bottom(), extent.missing * view.scale);
        sheet.dimension(at(x, top), at(x, bottom), Letters::Plain, "");
        let name = messages.label(extent.name);
        let given = extent.given.as_ref().map_or_else(|| name.to_string(), |given| format!("{name} {given}"));
        let mut lines = vec![(Letters::Plain, given)];
        if let Some(minimum) = extent.minimum {
            lines.push((Letters::Plain, figure_sentence("drawing-outlet-required", minimum, messages)));
            lines.extend(extent.rule.map(|rule| (Letters::Small, self.citation(rule))));
        }
        if extent.missing > 0.0 {
            let letters = if self.is_short(extent) { Letters::Short } else { Letters::Plain };
            let (from, to) = if view.is_plan { (bottom, bottom + missing) } else { (top - missing, top) };
            sheet.dimension(at(x, from), at(x, to), letters, "");
            lines.push((letters, self.missing_text(extent)));
        }
        for (_, text) in &lines {
            sheet.describe(format!("{text}."));
        }
        let room = WIDTH - EDGE - x - 10.0;
        let lines: Vec<(Letters, String)> = lines
            .into_iter()
            .flat_map(|(letters, text)| {
                let broken = wrap(&text, letters_in(room, letters, &text), 0);
                broken.lines().map(|line| (letters, line.to_owned())).collect::<Vec<_>>()
            })
            .collect();
        let mut y = view.middle() - 8.0 * (lines.len() as f64 - 1.0) + 4.0;
        for (letters, line) in lines {
            sheet.text(at(x + 10.0, y), Anchor::Start, letters, &line);
            y += 16.0;
        }
    }

    /// Whether what is missing counts against the body.
    fn is_short(&self, extent: &Extent) -> bool {
        extent.rule.is_some_and(|rule| self.counts_against(rule.id))
    }

    fn minimum_text(&self, extent: &Extent) -> String {
        let messages = self.messages;
        let text = extent.minimum.map(|least| figure_sentence("drawing-outlet-required", least, messages));
        let rule = extent.rule.map(|rule| self.citation(rule));
        [text, rule].into_iter().flatten().collect::<Vec<_>>().join(" · ")
    }

    /// What a margin below zero says.
    fn missing_text(&self, extent: &Extent) -> String {
        let Some(margin) = extent.margin else { return String::new() };
        let key = if self.is_short(extent) { "drawing-short" } else { "drawing-body-smaller" };
        self.messages.sentence(key, [("figure", figure(margin.value.negated(), margin.unit))])
    }
}
