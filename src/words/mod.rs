//! Every sentence that a person reads, from one message catalogue per language (Project Fluent).
//!
//! **Invariants:** the engine knows keys and arguments only; a missing or unused message is a failing test.

pub mod summary;

mod message;
mod said;

pub use said::Said;

use crate::quantity::{Decimal, Unit};
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use message::Message;
use rustc_hash::FxHashMap;
use smallvec::SmallVec;
use std::fmt;
use std::sync::LazyLock;

/// The messages of one language.
pub struct Catalogue {
    bundle: FluentBundle<FluentResource>,
    messages: FxHashMap<String, Message>,
    reasons: FxHashMap<String, String>,
    keys: Vec<String>,
}

/// Why a catalogue cannot be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CatalogueFault(pub String);

impl fmt::Display for CatalogueFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "message catalogue: {}", self.0)
    }
}

impl std::error::Error for CatalogueFault {}

impl fmt::Debug for Catalogue {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Catalogue").field("messages", &self.keys.len()).finish_non_exhaustive()
    }
}

/// The English messages, one file a subject.
const ENGLISH: &str = concat!(
    include_str!("en/common.ftl"),
    "\n",
    include_str!("en/outlet-boxes.ftl"),
    "\n",
    include_str!("en/free-conductors.ftl"),
    "\n",
    include_str!("en/pull-boxes.ftl"),
    "\n",
    include_str!("en/conduit-bodies.ftl"),
    "\n",
    include_str!("en/raceways.ftl"),
    "\n",
    include_str!("en/box-depths.ftl"),
    "\n",
    include_str!("en/box-construction.ftl"),
    "\n",
    include_str!("en/box-mounting.ftl"),
    "\n",
    include_str!("en/box-supports.ftl"),
    "\n",
    include_str!("en/luminaire-and-fan-outlets.ftl"),
    "\n",
    include_str!("en/enclosure-types.ftl"),
    "\n",
    include_str!("en/service.ftl"),
    "\n",
    include_str!("en/takeoffs.ftl"),
    "\n",
    include_str!("en/training-misconceptions.ftl"),
    "\n",
    include_str!("en/training-grading.ftl"),
    "\n",
    include_str!("en/training-exercises.ftl"),
    "\n",
    include_str!("en/training-worksheets.ftl"),
);

impl Catalogue {
    /// Reads a catalogue.
    pub fn read(language: &str, text: &str) -> Result<Self, CatalogueFault> {
        let fault = |what: String| CatalogueFault(what);
        let language = language.parse().map_err(|error| fault(format!("{language}: {error}")))?;
        let resource = FluentResource::try_new(text.to_owned()).map_err(|(_, errors)| {
            fault(format!("{language}: {}", errors.first().map(ToString::to_string).unwrap_or_default()))
        })?;
        let prepared = message::all(&resource);
        let mut bundle = FluentBundle::new_concurrent(vec![language]);
        bundle.set_use_isolating(false);
        bundle
            .add_resource(resource)
            .map_err(|errors| fault(errors.first().map(ToString::to_string).unwrap_or_default()))?;
        let (messages, reasons) = (FxHashMap::default(), FxHashMap::default());
        let mut catalogue = Self { bundle, messages, reasons, keys: Vec::new() };
        for (key, message) in prepared {
            let mut errors = Vec::new();
            let message = match catalogue.format(&key, None, &mut errors) {
                Some(text) if errors.is_empty() => {
                    if let Some(reason) = key.strip_prefix("because-") {
                        catalogue.reasons.insert(reason.to_owned(), text.clone());
                    }
                    Message::Fixed(text)
                }
                _ => message,
            };
            catalogue.keys.push(key.clone());
            catalogue.messages.insert(key, message);
        }
        Ok(catalogue)
    }

    /// The English catalogue, read once.
    pub fn english() -> &'static Self {
        static ALL: LazyLock<Catalogue> = LazyLock::new(|| {
            Catalogue::read("en-US", ENGLISH).unwrap_or_else(|_| Catalogue {
                bundle: FluentBundle::new_concurrent(Vec::new()),
                messages: FxHashMap::default(),
                reasons: FxHashMap::default(),
                keys: Vec::new(),
            })
        });
        &ALL
    }

    /// Whether the English catalogue reads.
    pub fn check_english() -> Result<(), CatalogueFault> {
        Self::read("en-US", ENGLISH).map(|_| ())
    }

    /// A sentence that names nothing; its key where the catalogue has none, which a test rules out.
    pub fn fixed<'a>(&'a self, key: &'a str) -> &'a str {
        match self.messages.get(key) {
            Some(Message::Fixed(text)) => text,
            _ => key,
        }
    }

    /// A sentence with what it names.
    pub fn sentence<'a, A: fmt::Display>(
        &self,
        key: &str,
        arguments: impl IntoIterator<Item = (&'a str, A)>,
    ) -> String {
        let message = self.messages.get(key);
        if let Some(Message::Fixed(text)) = message {
            return text.clone();
        }
        let arguments: SmallVec<[(&str, A); 4]> = arguments.into_iter().collect();
        if let Some(Message::Pieces(pieces)) = message {
            return message::filled(pieces, &arguments);
        }
        let mut named = FluentArgs::new();
        for (name, argument) in &arguments {
            named.set((*name).to_owned(), argument.to_string());
        }
        self.format(key, Some(&named), &mut Vec::new()).unwrap_or_else(|| key.to_owned())
    }

    /// A sentence about a number of things, whose form depends on the number.
    pub fn counted(&self, key: &str, name: &str, count: usize) -> String {
        let mut named = FluentArgs::new();
        named.set(name.to_owned(), count);
        self.format(key, Some(&named), &mut Vec::new()).unwrap_or_else(|| key.to_owned())
    }

    /// Why a rule was left out.
    pub fn reason(&self, because: &str) -> &str {
        self.reasons.get(because).map_or("", String::as_str)
    }

    /// Whether there is a message with this key; `key.attribute` for one of its attributes.
    pub fn has(&self, key: &str) -> bool {
        let (message, attribute) = split(key);
        self.bundle.get_message(message).is_some_and(|message| match attribute {
            None => message.value().is_some(),
            Some(attribute) => message.get_attribute(attribute).is_some(),
        })
    }

    /// The keys of all messages: those that name something and those that do not.
    pub fn keys(&self) -> impl Iterator<Item = &str> {
        self.keys.iter().map(String::as_str)
    }

    /// The title of a rule.
    pub fn rule_title(&self, id: &str) -> String {
        self.fixed(&format!("{}.title", rule_key(id))).to_owned()
    }

    /// What a rule asks, in our own words.
    pub fn rule_statement(&self, id: &str) -> String {
        self.fixed(&rule_key(id)).to_owned()
    }

    fn format(
        &self,
        key: &str,
        arguments: Option<&FluentArgs<'_>>,
        errors: &mut Vec<fluent_bundle::FluentError>,
    ) -> Option<String> {
        let (message, attribute) = split(key);
        let message = self.bundle.get_message(message)?;
        let pattern = match attribute {
            None => message.value()?,
            Some(attribute) => message.get_attribute(attribute)?.value(),
        };
        Some(self.bundle.format_pattern(pattern, arguments, errors).into_owned())
    }
}

fn split(key: &str) -> (&str, Option<&str>) {
    key.split_once('.').map_or((key, None), |(message, attribute)| (message, Some(attribute)))
}

/// The key of a rule's words: `rule-` and its id with dashes for points.
pub fn rule_key(id: &str) -> String {
    format!("rule-{}", id.replace('.', "-"))
}

/// A figure as a sentence writes it: `2.25 in³`, `4`.
///
/// ```
/// use elbowroom::quantity::{Decimal, Unit};
/// assert_eq!(elbowroom::words::figure(Decimal::whole(18), Unit::CubicInch), "18 in³");
/// ```
pub fn figure(value: Decimal, unit: Unit) -> String {
    FigureText(value, unit).to_string()
}

/// A figure that is displayed as a sentence writes it.
#[derive(Clone, Copy, Debug)]
pub struct FigureText(pub Decimal, pub Unit);

impl fmt::Display for FigureText {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self(value, unit) = self;
        value.fmt(f)?;
        match unit {
            Unit::One => Ok(()),
            Unit::Percent => f.write_str("%"),
            other => {
                f.write_str(" ")?;
                f.write_str(other.symbol())
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Whatever is filled in from pieces reads as Fluent itself would have it, in every message of the catalogue.
    #[test]
    fn every_message_reads_as_fluent_formats_it() {
        let words = Catalogue::english();
        let named = ["1", "12 AWG", "{ $not } a placeable", "\u{201c}é\u{201d}"];
        let mut pieces = 0;
        for (key, message) in &words.messages {
            let Message::Pieces(_) = message else { continue };
            pieces += 1;
            let names = message.names();
            for given in [names.len(), names.len() - 1] {
                let arguments: Vec<(&str, &str)> =
                    names.iter().copied().zip(named.into_iter().cycle()).take(given).collect();
                let mut fluent = FluentArgs::new();
                arguments.iter().for_each(|(name, text)| fluent.set((*name).to_owned(), (*text).to_owned()));
                let formatted = words.format(key, Some(&fluent), &mut Vec::new()).unwrap();
                assert_eq!(words.sentence(key, arguments), formatted, "{key}");
            }
        }
        assert!(pieces > 20, "{pieces}");
    }
}
