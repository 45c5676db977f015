//! Every sentence that a person reads, from one message catalogue per language (Project Fluent).
//!
//! **Invariants:** the engine knows keys and arguments only; a missing or unused message is a failing test.

pub mod summary;

use crate::quantity::{Decimal, Unit};
use fluent_bundle::concurrent::FluentBundle;
use fluent_bundle::{FluentArgs, FluentResource};
use std::collections::HashMap;
use std::fmt;
use std::sync::LazyLock;

/// The messages of one language.
pub struct Catalogue {
    bundle: FluentBundle<FluentResource>,
    fixed: HashMap<String, String>,
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
        f.debug_struct("Catalogue").field("fixed", &self.fixed.len()).finish_non_exhaustive()
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
);

impl Catalogue {
    /// Reads a catalogue.
    pub fn read(language: &str, text: &str) -> Result<Self, CatalogueFault> {
        let fault = |what: String| CatalogueFault(what);
        let language = language.parse().map_err(|error| fault(format!("{language}: {error}")))?;
        let resource = FluentResource::try_new(text.to_owned()).map_err(|(_, errors)| {
            fault(format!("{language}: {}", errors.first().map(ToString::to_string).unwrap_or_default()))
        })?;
        let keys: Vec<String> = keys(&resource);
        let mut bundle = FluentBundle::new_concurrent(vec![language]);
        bundle.set_use_isolating(false);
        bundle
            .add_resource(resource)
            .map_err(|errors| fault(errors.first().map(ToString::to_string).unwrap_or_default()))?;
        let mut catalogue = Self { bundle, fixed: HashMap::new(), keys };
        for key in &catalogue.keys {
            let mut errors = Vec::new();
            let text = catalogue.format(key, None, &mut errors);
            if let (Some(text), true) = (text, errors.is_empty()) {
                catalogue.fixed.insert(key.clone(), text);
            }
        }
        Ok(catalogue)
    }

    /// The English catalogue, read once.
    pub fn english() -> &'static Self {
        static ALL: LazyLock<Catalogue> = LazyLock::new(|| {
            Catalogue::read("en-US", ENGLISH).unwrap_or_else(|_| Catalogue {
                bundle: FluentBundle::new_concurrent(Vec::new()),
                fixed: HashMap::new(),
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
        self.fixed.get(key).map_or(key, String::as_str)
    }

    /// A sentence with what it names.
    pub fn sentence<'a>(&self, key: &str, arguments: impl Iterator<Item = (&'a str, String)>) -> String {
        if let Some(text) = self.fixed.get(key) {
            return text.clone();
        }
        let mut named = FluentArgs::new();
        for (name, text) in arguments {
            named.set(name.to_owned(), text);
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
        self.fixed.get(&format!("because-{because}")).map_or("", String::as_str)
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

/// The keys of a catalogue: messages, and attributes as `message.attribute`.
fn keys(resource: &FluentResource) -> Vec<String> {
    use fluent_syntax::ast::Entry;
    let mut keys = Vec::new();
    for entry in resource.entries() {
        if let Entry::Message(message) = entry {
            if message.value.is_some() {
                keys.push(message.id.name.to_owned());
            }
            for attribute in &message.attributes {
                keys.push(format!("{}.{}", message.id.name, attribute.id.name));
            }
        }
    }
    keys
}

/// A figure as a sentence writes it: `2.25 in³`, `4`.
///
/// ```
/// use elbowroom::quantity::{Decimal, Unit};
/// assert_eq!(elbowroom::words::figure(Decimal::whole(18), Unit::CubicInch), "18 in³");
/// ```
pub fn figure(value: Decimal, unit: Unit) -> String {
    match unit {
        Unit::One => value.to_string(),
        Unit::Percent => format!("{value}%"),
        other => format!("{value} {}", other.symbol()),
    }
}
