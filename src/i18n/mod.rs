//! Localization: every sentence that a person reads, from one message catalogue per language (Project Fluent).
//!
//! **Invariants:** the engine knows keys and arguments only; no figure, verdict or digest depends on the language; a missing
//! or unused message is a failing test.

pub mod summary;

mod citation;
mod language;
mod message;
mod message_arg;
mod wrap;

pub use language::Language;
pub use message_arg::MessageArg;
pub use wrap::wrap;

use crate::quantity::{Decimal, Unit};
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use message::Message;
use rustc_hash::FxHashMap;
use smallvec::SmallVec;
use std::borrow::Cow;
use std::fmt;
use std::sync::LazyLock;

/// The messages of one language.
pub struct Catalogue {
    language: Language,
    bundle: FluentBundle<FluentResource>,
    messages: FxHashMap<String, Message>,
    reasons: FxHashMap<String, String>,
    keys: Vec<String>,
    /// What stands in place of every sentence when the messages did not read.
    fault: Option<CatalogueFault>,
}

/// Why a catalogue cannot be read.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{0}")]
pub struct CatalogueFault(pub String);

impl fmt::Debug for Catalogue {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_struct("Catalogue").field("messages", &self.keys.len()).finish_non_exhaustive()
    }
}

impl Catalogue {
    /// Reads a catalogue from its messages as they are written.
    pub fn read(language: Language, texts: &[&str]) -> Result<Self, CatalogueFault> {
        let fault = |what: String| CatalogueFault(format!("message catalogue {}: {what}", language.tag()));
        let tag = language.tag().parse().map_err(|error| fault(format!("{error}")))?;
        let resource = FluentResource::try_new(texts.join("\n"))
            .map_err(|(_, errors)| fault(errors.first().map(ToString::to_string).unwrap_or_default()))?;
        let prepared = message::all(&resource);
        let mut bundle = FluentBundle::new_concurrent(vec![tag]);
        bundle.set_use_isolating(false);
        bundle
            .add_resource(resource)
            .map_err(|errors| fault(errors.first().map(ToString::to_string).unwrap_or_default()))?;
        let mut catalogue = Self { bundle, ..Self::empty(language) };
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

    fn empty(language: Language) -> Self {
        let (messages, reasons) = (FxHashMap::default(), FxHashMap::default());
        let bundle = FluentBundle::new_concurrent(Vec::new());
        Self { language, bundle, messages, reasons, keys: Vec::new(), fault: None }
    }

    /// The catalogue of a language, read when it is first asked for.
    ///
    /// The messages are part of the program and a test reads them all, so there is nothing to fail here. Should one be
    /// faulty all the same, every sentence is the fault; [`Catalogue::check`] reports it at the start.
    pub fn of(language: Language) -> &'static Self {
        static ENGLISH: LazyLock<Catalogue> = LazyLock::new(|| Catalogue::compiled_in(Language::English));
        static SPANISH: LazyLock<Catalogue> = LazyLock::new(|| Catalogue::compiled_in(Language::Spanish));
        match language {
            Language::English => &ENGLISH,
            Language::Spanish => &SPANISH,
        }
    }

    fn compiled_in(language: Language) -> Self {
        Self::read(language, language.texts())
            .unwrap_or_else(|fault| Self { fault: Some(fault), ..Self::empty(language) })
    }

    /// The English catalogue.
    pub fn english() -> &'static Self {
        Self::of(Language::English)
    }

    /// Whether the catalogues of all languages read whole, without a key that stands twice.
    pub fn check() -> Result<(), CatalogueFault> {
        let faults = |language| Self::of(language).fault.clone();
        Language::ALL.into_iter().find_map(faults).map_or(Ok(()), Err)
    }

    /// The language that it is in.
    pub const fn language(&self) -> Language {
        self.language
    }

    /// A sentence that names nothing; its key where the catalogue has none, which a test rules out.
    pub fn fixed<'a>(&'a self, key: &'a str) -> &'a str {
        match self.messages.get(key) {
            Some(Message::Fixed(text)) => text,
            _ => self.fault.as_ref().map_or(key, |fault| &fault.0),
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
        self.format(key, Some(&named), &mut Vec::new()).unwrap_or_else(|| self.fixed(key).to_owned())
    }

    /// A sentence about a number of things, whose form depends on the number.
    pub fn counted(&self, key: &str, name: &str, count: usize) -> String {
        let mut named = FluentArgs::new();
        named.set(name.to_owned(), count);
        self.format(key, Some(&named), &mut Vec::new()).unwrap_or_else(|| self.fixed(key).to_owned())
    }

    /// The label of a name, such as that of a member of an answer: `not_counted` is `Not counted`. In English the name says
    /// it; another language has a message for it.
    pub fn label<'a>(&'a self, name: &str) -> Cow<'a, str> {
        if let Some(Message::Fixed(label)) = self.messages.get(&format!("label-{name}")) {
            return Cow::Borrowed(label);
        }
        let spaced = name.replace('_', " ");
        let mut letters = spaced.chars();
        let label = letters.next().map(|first| first.to_uppercase().chain(letters).collect());
        Cow::Owned(label.unwrap_or_default())
    }

    /// Why a rule was left out.
    pub fn reason(&self, because: &str) -> &str {
        self.reasons.get(because).map_or(self.fixed(""), String::as_str)
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
/// assert_eq!(elbowroom::i18n::figure(Decimal::whole(18), Unit::CubicInch), "18 in³");
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
        let named = ["1", "12 AWG", "{ $not } a placeable", "\u{201c}é\u{201d}"];
        for catalogue in Language::ALL.map(Catalogue::of) {
            let mut pieces = 0;
            for (key, message) in &catalogue.messages {
                let Message::Pieces(_) = message else { continue };
                pieces += 1;
                let names = message.names();
                for given in [names.len(), names.len() - 1] {
                    let arguments: Vec<(&str, &str)> =
                        names.iter().copied().zip(named.into_iter().cycle()).take(given).collect();
                    let mut fluent = FluentArgs::new();
                    arguments
                        .iter()
                        .for_each(|(name, text)| fluent.set((*name).to_owned(), (*text).to_owned()));
                    let formatted = catalogue.format(key, Some(&fluent), &mut Vec::new()).unwrap();
                    assert_eq!(catalogue.sentence(key, arguments), formatted, "{key}");
                }
            }
            assert!(pieces > 20, "{pieces}");
        }
    }

    #[test]
    fn a_catalogue_that_does_not_read_says_so_in_place_of_every_sentence() {
        for texts in ["step-read = { $result", "text-yes = yes\ntext-yes = no"] {
            let fault = Catalogue::read(Language::Spanish, &[texts]).unwrap_err();
            let text = fault.to_string();
            assert!(text.starts_with("message catalogue es: "), "{text}");
            let broken = Catalogue { fault: Some(fault), ..Catalogue::empty(Language::Spanish) };
            assert_eq!(broken.fixed("text-yes"), text);
            assert_eq!(broken.sentence("step-read", [("result", "x")]), text);
            assert_eq!(broken.counted("problem-detail-invalid-request", "count", 2), text);
            assert_eq!(broken.reason("unmarked"), text);
        }
    }
}
