//! The situation of an exercise in plain trade language, written from its request: words and numbers cannot disagree.

mod lengths;
mod outlet_boxes;
mod outlet_enclosures;
mod pull_boxes;
mod raceways;

pub use lengths::{of_depths, of_free_conductors};
pub use outlet_boxes::of_outlet_box;
pub use pull_boxes::of_pull_box;
pub use raceways::{of_conduit_body, of_raceway};

use crate::checks::Reference;
use crate::checks::outlet_fill::Many;
use crate::i18n::{Catalogue, MessageArg, figure};
use crate::quantity::{Decimal, Measure, Units};
use crate::trade::{ConductorSize, TradeSize};

/// One sentence, before it is put in a language.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sentence {
    key: &'static str,
    arguments: Vec<(&'static str, MessageArg)>,
}

impl Sentence {
    /// A sentence that names nothing.
    pub const fn new(key: &'static str) -> Self {
        Self { key, arguments: Vec::new() }
    }

    /// With how many there are.
    pub fn count(mut self, count: u32) -> Self {
        self.arguments.push(("count", MessageArg::Number(count)));
        self
    }

    /// With a text that is the same in every language.
    pub fn text(mut self, name: &'static str, text: impl Into<String>) -> Self {
        self.arguments.push((name, MessageArg::Text(text.into())));
        self
    }

    /// With a text, where there is one.
    fn text_of(self, name: &'static str, text: Option<impl Into<String>>) -> Self {
        match text {
            Some(text) => self.text(name, text),
            None => self,
        }
    }

    /// With a word of the catalogue.
    pub fn word(mut self, name: &'static str, key: impl Into<String>) -> Self {
        self.arguments.push((name, MessageArg::Word(key.into())));
        self
    }

    fn size(self, size: ConductorSize) -> Self {
        self.text("size", size.name())
    }

    /// The sentence in a language.
    pub fn message(&self, messages: &Catalogue) -> String {
        messages.message(self.key, &self.arguments)
    }
}

/// A sentence about things alike; one, where no number is given.
fn counted(key: &'static str, count: Option<Many>) -> Sentence {
    Sentence::new(key).count(count.map_or(1, Many::get))
}

/// A trade size as it is named in the units.
fn trade_size(size: TradeSize, units: Units) -> String {
    match units {
        Units::Us => size.name().to_owned(),
        Units::Si => size.metric_designator().to_string(),
    }
}

/// A size with its unit.
fn measured(value: Decimal, measure: Measure, units: Units) -> String {
    figure(value, units.of(measure))
}

/// Where the box is, by the caller's mark, where that is one of the places that exercises know.
fn place(reference: Option<&Reference>) -> Option<Sentence> {
    let key = match reference?.as_str() {
        "kitchen" => "situation-in-kitchen",
        "garage" => "situation-in-garage",
        "workshop" => "situation-in-workshop",
        "hallway" => "situation-in-hallway",
        "office" => "situation-in-office",
        "basement" => "situation-in-basement",
        "laundry" => "situation-in-laundry",
        "living-room" => "situation-in-living-room",
        _ => return None,
    };
    Some(Sentence::new(key))
}
