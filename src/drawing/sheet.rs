//! The paper that is drawn on: shapes, words, and dimensions, in a style of its own.

pub(super) use super::geometry::{Curve, Point, at};
use super::svg::Svg;
use crate::i18n::Catalogue;
use crate::quantity::Decimal;
use std::fmt::Write as _;

/// How drawings look: black on white, the other way round in the dark, and hatched where it matters.
const STYLE: &str = include_str!("drawing.css");

/// The style that stands in every drawing, for a content security policy.
pub const fn style() -> &'static str {
    STYLE
}

/// Where a text stands beside its point.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Anchor {
    Start,
    Middle,
    End,
}

/// How a shape looks; the style says it, by this name.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Look {
    /// What is looked at: walls, rims.
    Firm,
    /// Lines that explain.
    Thin,
    /// What is only assumed.
    Assumed,
    /// What is left over.
    Free,
    /// What is missing.
    Short,
    /// What is counted, in one of the fillings that take turns.
    Filling(usize),
    /// Conductors from one entry to another.
    Pull,
    /// A rim whose place is only assumed.
    AssumedRim,
    /// A small mark on a line.
    Mark,
}

/// How near to the edge of the paper the text of a dimension may come.
const EDGE: f64 = 20.0;

/// Half of the stroke that marks the end of a dimension.
const TICK: f64 = 4.0;

/// How many fillings the style tells apart.
const FILLINGS: usize = 9;

impl Look {
    fn class(self) -> String {
        match self {
            Self::Firm => "firm".to_owned(),
            Self::Thin => "thin".to_owned(),
            Self::Assumed => "assumed".to_owned(),
            Self::Free => "free".to_owned(),
            Self::Short => "short".to_owned(),
            Self::Filling(place) => format!("filling-{}", place % FILLINGS + 1),
            Self::Pull => "pull".to_owned(),
            Self::AssumedRim => "assumed-rim".to_owned(),
            Self::Mark => "mark".to_owned(),
        }
    }
}

/// How a text looks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Letters {
    /// The heading of the drawing or of a part of it.
    Heading,
    /// What is said of a thing.
    Plain,
    /// The ids of things.
    Strong,
    /// Rules and remarks.
    Small,
    /// What falls short.
    Short,
    /// The ids of things that lines may pass behind.
    Over,
    /// Remarks that lines may pass behind.
    SmallOver,
    /// What falls short, where lines may pass behind.
    ShortOver,
}

impl Letters {
    const fn class(self) -> &'static str {
        match self {
            Self::Heading => "heading",
            Self::Plain => "plain",
            Self::Strong => "strong",
            Self::Small => "small",
            Self::Short => "missing",
            Self::Over => "over",
            Self::SmallOver => "small-over",
            Self::ShortOver => "missing-over",
        }
    }

    /// About how long a text is on paper.
    pub fn width(self, text: &str) -> f64 {
        text_width(text)
            * match self {
                Self::Heading => 1.31,
                Self::Plain => 1.0,
                Self::Strong | Self::Short | Self::Over | Self::ShortOver => 1.14,
                Self::Small | Self::SmallOver => 0.85,
            }
    }
}

/// A drawing under construction. Its height is known when it is done.
pub(super) struct Sheet<'w> {
    body: Svg,
    messages: &'w Catalogue,
    width: f64,
    description: Vec<String>,
}

impl<'w> Sheet<'w> {
    /// An empty sheet of some width, in pixels.
    pub fn new(messages: &'w Catalogue, width: f64) -> Self {
        Self { body: Svg::default(), messages, width, description: Vec::new() }
    }

    pub const fn messages(&self) -> &'w Catalogue {
        self.messages
    }

    pub const fn width(&self) -> f64 {
        self.width
    }

    /// Adds a sentence to the description: what the drawing shows, for those who cannot see it.
    pub fn describe(&mut self, sentence: String) {
        self.description.push(sentence);
    }

    /// Shapes that are one thing, with what it is: text where a pointer rests on it.
    pub fn group(&mut self, title: &str, draw: impl FnOnce(&mut Self)) {
        self.body.raw("<g><title>").text(title).raw("</title>\n");
        draw(self);
        self.body.raw("</g>\n");
    }

    pub fn line(&mut self, from: Point, to: Point, look: Look) {
        let place = attributes(&[("x1", from.x), ("y1", from.y), ("x2", to.x), ("y2", to.y)]);
        self.shape("<line", &place, look);
    }

    /// A rectangle by its upper left corner.
    pub fn rectangle(&mut self, corner: Point, width: f64, height: f64, look: Look) {
        let size = [("x", corner.x), ("y", corner.y), ("width", width.max(0.0)), ("height", height.max(0.0))];
        self.shape("<rect", &attributes(&size), look);
    }

    pub fn circle(&mut self, centre: Point, radius: f64, look: Look) {
        let place = attributes(&[("cx", centre.x), ("cy", centre.y), ("r", radius.max(0.0))]);
        self.shape("<circle", &place, look);
    }

    /// A line through several points.
    pub fn path(&mut self, points: &[Point], look: Look) {
        let mut text = String::new();
        for (place, point) in points.iter().enumerate() {
            let _ = write!(text, "{}{} {}", if place == 0 { "M" } else { " L" }, px(point.x), px(point.y));
        }
        self.shape("<path", &format!(" d=\"{text}\" fill=\"none\""), look);
    }

    /// A curve between two points.
    pub fn curve(&mut self, &Curve { from, bend, to }: &Curve, look: Look) {
        let [from, bend, to] = [from, bend, to].map(|point| format!("{} {}", px(point.x), px(point.y)));
        self.shape("<path", &format!(" d=\"M{from} Q{bend} {to}\" fill=\"none\""), look);
    }

    fn shape(&mut self, open: &'static str, place: &str, look: Look) {
        self.body.raw(open).raw(" class=\"").text(&look.class()).raw("\"");
        // numbers and letters of this program only, which have nothing to escape
        self.body.written(place).raw("/>\n");
    }

    /// One line of text.
    pub fn text(&mut self, place: Point, anchor: Anchor, letters: Letters, text: &str) {
        let anchor = match anchor {
            Anchor::Start => "start",
            Anchor::Middle => "middle",
            Anchor::End => "end",
        };
        self.body.raw("<text class=\"").raw(letters.class()).raw("\" text-anchor=\"").raw(anchor).raw("\"");
        self.body.written(&attributes(&[("x", place.x), ("y", place.y)])).raw(">");
        self.body.text(text).raw("</text>\n");
    }

    /// Lines of text below one another, from a point on. Returns the height at which the next would stand.
    pub fn paragraph(&mut self, from: Point, letters: Letters, lines: &str, pitch: f64) -> f64 {
        let mut y = from.y;
        for line in lines.lines() {
            self.text(at(from.x, y), Anchor::Start, letters, line);
            y += pitch;
        }
        y
    }

    /// A dimension that the description names too.
    pub fn described_dimension(&mut self, from: Point, to: Point, letters: Letters, text: &str) {
        self.dimension(from, to, letters, text);
        self.describe(format!("{text}."));
    }

    /// A number that a legend explains, legible on any hatching.
    pub fn number(&mut self, centre: Point, number: usize) {
        self.circle(centre, 9.0, Look::Filling(8));
        // three digits are wider than the disc in the usual letters
        let letters = if number < 100 { Letters::Strong } else { Letters::Small };
        self.text(at(centre.x, centre.y + 4.5), Anchor::Middle, letters, &number.to_string());
    }

    /// A dimension along a straight line: the line with its ends marked, and the text beside the middle of it.
    pub fn dimension(&mut self, from: Point, to: Point, letters: Letters, text: &str) {
        let (dx, dy) = (to.x - from.x, to.y - from.y);
        let length = dx.hypot(dy);
        self.span(from, to, if letters == Letters::Short { Look::Short } else { Look::Thin });
        let middle = at((from.x + to.x) / 2.0, (from.y + to.y) / 2.0);
        if dx.abs() >= dy.abs() {
            // a short line may lie near the edge: its text stays on the paper
            let half = letters.width(text) / 2.0 + EDGE;
            let x = middle.x.min(self.width - half).max(half);
            // one that is wider than its line stands clear of the ends of the line
            let lift = if letters.width(text) > length { TICK + 4.0 } else { TICK + 1.0 };
            self.text(at(x, middle.y - lift), Anchor::Middle, letters, text);
        } else {
            self.text(at(middle.x + 6.0, middle.y + 4.0), Anchor::Start, letters, text);
        }
    }

    /// The line of a dimension, with its ends marked.
    pub fn span(&mut self, from: Point, to: Point, look: Look) {
        let (dx, dy) = (to.x - from.x, to.y - from.y);
        let length = dx.hypot(dy).max(0.01);
        // across the line
        let (ax, ay) = (-dy / length, dx / length);
        self.line(from, to, look);
        for end in [from, to] {
            self.line(
                at(end.x - ax * TICK, end.y - ay * TICK),
                at(end.x + ax * TICK, end.y + ay * TICK),
                look,
            );
        }
    }

    /// The whole drawing, of the height that it came to, with its title and its description.
    pub fn done(self, height: f64, title: &str) -> String {
        let (width, height) = (px(self.width), px(height));
        let mut whole = Svg::default();
        whole.raw("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing\" role=\"img\" lang=\"");
        whole.raw(self.messages.language().tag());
        whole.raw("\" aria-labelledby=\"drawing-title\" aria-describedby=\"drawing-description\"");
        whole.written(&format!(" viewBox=\"0 0 {width} {height}\" width=\"{width}\" height=\"{height}\">\n"));
        whole.raw("<title id=\"drawing-title\">").text(title);
        whole
            .raw("</title>\n<desc id=\"drawing-description\">")
            .text(&self.description.join(" "))
            .raw("</desc>\n<style>");
        whole.raw(STYLE).raw("</style>\n").raw(PATTERNS);
        whole.written(&format!("<rect class=\"paper\" width=\"{width}\" height=\"{height}\"/>\n"));
        whole.written(&self.body.done()).raw("</svg>\n");
        whole.done()
    }
}

/// The hatchings that the style refers to.
const PATTERNS: &str = include_str!("patterns.svg");

/// A length on paper, to a tenth of a pixel. What is no number is nowhere: at the edge.
fn px(length: f64) -> String {
    if !length.is_finite() {
        return "0".to_owned();
    }
    let tenths = (length * 10.0).round() / 10.0;
    // no minus before a zero
    format!("{}", if tenths == 0.0 { 0.0 } else { tenths })
}

fn attributes(pairs: &[(&str, f64)]) -> String {
    let mut text = String::new();
    for (name, value) in pairs {
        let _ = write!(text, " {name}=\"{}\"", px(*value));
    }
    text
}

/// About how long a text is on paper, in the plain letters of a wide typeface.
pub(super) fn text_width(text: &str) -> f64 {
    let of = |letter: char| match letter {
        ' ' | '.' | ',' | ':' | ';' | '·' | '\'' | '(' | ')' | '/' | '-' | '|' | 'f' | 'i' | 'j' | 'l'
        | 'r' | 't' => 4.7,
        '0'..='9' => 8.3,
        'm' | 'w' | 'M' | 'W' | '×' | '=' | '+' | '−' => 10.9,
        _ if letter.is_uppercase() => 8.9,
        _ => 7.8,
    };
    text.chars().map(of).sum()
}

/// How many letters of a text, which are as wide as they are on average, fit into a room.
pub(super) fn letters_in(room: f64, letters: Letters, text: &str) -> usize {
    let average = letters.width(text) / text.chars().count().max(1) as f64;
    (room / average.max(1.0)).max(8.0) as usize
}

/// A text that is cut where it would be longer than some number of letters.
pub(super) fn short_text(text: &str, most: usize) -> String {
    if text.chars().count() <= most {
        return text.to_owned();
    }
    let kept: String = text.chars().take(most.saturating_sub(1)).collect();
    format!("{}…", kept.trim_end())
}

/// A figure as a length on paper is made of it.
pub(super) fn approximate(value: Decimal) -> f64 {
    value.billionths() as f64 / 1e9
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lengths_on_paper_are_short_and_never_strange() {
        for (length, text) in [(1.0, "1"), (1.26, "1.3"), (-0.01, "0"), (f64::NAN, "0"), (f64::INFINITY, "0")]
        {
            assert_eq!(px(length), text);
        }
    }

    #[test]
    fn a_long_text_is_cut_at_a_letter() {
        assert_eq!(short_text("señal", 5), "señal");
        assert_eq!(short_text("señales", 4), "señ…");
    }

    #[test]
    fn every_look_is_in_the_style_and_every_hatching_that_it_names_is_there() {
        let looks = [Look::Firm, Look::Thin, Look::Assumed, Look::Free, Look::Short];
        let of_pulls = [Look::Pull, Look::AssumedRim, Look::Mark];
        for look in looks.into_iter().chain(of_pulls).chain((0..FILLINGS).map(Look::Filling)) {
            assert!(STYLE.contains(&format!(".{} ", look.class())), "{look:?}");
        }
        let named = STYLE.split("url(#").skip(1).map(|rest| rest.split(')').next().unwrap());
        assert!(named.clone().count() > 5);
        for pattern in named {
            assert!(PATTERNS.contains(&format!("id=\"{pattern}\"")), "{pattern}");
        }
        let letters = [Letters::Heading, Letters::Plain, Letters::Strong, Letters::Small, Letters::Short];
        for letters in letters.into_iter().chain([Letters::Over, Letters::SmallOver, Letters::ShortOver]) {
            assert!(STYLE.contains(&format!(".{} ", letters.class())), "{letters:?}");
        }
    }
}
