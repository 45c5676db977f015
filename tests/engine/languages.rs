//! The catalogues of all languages say the same: the same messages with the same arguments, choices and figures.

#![expect(clippy::panic, reason = "a catalogue that does not read fails where it stands")]

use elbowroom::i18n::Language;
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement, VariantKey};
use fluent_syntax::parser;
use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::Path;

/// What a message holds beside its words.
#[derive(Debug, Default, PartialEq, Eq)]
struct Content {
    /// The names of its arguments.
    arguments: BTreeSet<String>,
    /// For each argument that it chooses by, what it tells apart.
    choices: BTreeMap<String, BTreeSet<String>>,
    /// Its texts, one after the other.
    text: String,
}

impl Content {
    fn of(pattern: &Pattern<&str>) -> Self {
        let mut content = Self::default();
        content.add(pattern);
        content
    }

    fn add(&mut self, pattern: &Pattern<&str>) {
        for element in &pattern.elements {
            match element {
                PatternElement::TextElement { value } => self.text.push_str(value),
                PatternElement::Placeable { expression: Expression::Inline(inline) } => {
                    self.argument(inline);
                    self.text.push('\u{1}');
                }
                PatternElement::Placeable { expression: Expression::Select { selector, variants } } => {
                    let chosen = self.argument(selector);
                    for variant in variants {
                        let (VariantKey::Identifier { name } | VariantKey::NumberLiteral { value: name }) =
                            variant.key;
                        self.choices.entry(chosen.clone()).or_default().insert(name.to_owned());
                        self.add(&variant.value);
                        self.text.push('\u{1}');
                    }
                }
            }
        }
    }

    fn argument(&mut self, inline: &InlineExpression<&str>) -> String {
        let InlineExpression::VariableReference { id } = inline else {
            panic!("only arguments are named: {inline:?}")
        };
        self.arguments.insert(id.name.to_owned());
        id.name.to_owned()
    }

    /// The figures of its texts: `1-7/8`, `0.0625`, `314.16`. Digits only, so that a full stop behind one is none.
    fn figures(&self) -> Vec<&str> {
        let mut figures: Vec<&str> = self
            .text
            .split(|letter: char| !letter.is_ascii_digit())
            .filter(|figure| !figure.is_empty())
            .collect();
        figures.sort_unstable();
        figures
    }
}

/// Every message and attribute of a language, with the file that it is in.
fn messages(language: Language) -> BTreeMap<String, (String, Content)> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("src/i18n").join(language.tag());
    let mut messages = BTreeMap::new();
    for entry in fs::read_dir(folder).expect("a folder for each language") {
        let path = entry.expect("an entry").path();
        let file = path.file_name().expect("a name").to_string_lossy().into_owned();
        let text = fs::read_to_string(&path).expect("a file of messages");
        let resource =
            parser::parse(text.as_str()).unwrap_or_else(|(_, errors)| panic!("{file}: {errors:?}"));
        for entry in &resource.body {
            let Entry::Message(message) = entry else { continue };
            let key = message.id.name;
            let value = message.value.iter().map(|pattern| (key.to_owned(), pattern));
            let attributes = message.attributes.iter();
            let attributes = attributes.map(|one| (format!("{key}.{}", one.id.name), &one.value));
            for (key, pattern) in value.chain(attributes) {
                let earlier = messages.insert(key.clone(), (file.clone(), Content::of(pattern)));
                assert!(earlier.is_none(), "{key} stands twice in {language:?}");
            }
        }
    }
    assert!(messages.len() > 1000, "{}", messages.len());
    messages
}

/// The labels of names: in English a name is its own.
fn is_label(key: &str) -> bool {
    key.starts_with("label-")
}

#[test]
fn every_language_has_the_same_messages_in_the_same_files() {
    let places = |language| -> BTreeMap<String, String> {
        let messages = messages(language).into_iter().filter(|(key, _)| !is_label(key));
        messages.map(|(key, (file, _))| (key, file)).collect()
    };
    assert_eq!(places(Language::Spanish), places(Language::English));
    assert!(!messages(Language::English).keys().any(|key| is_label(key)));
}

#[test]
fn a_message_has_the_same_arguments_in_every_language() {
    let spanish = messages(Language::Spanish);
    for (key, (_, english)) in messages(Language::English) {
        let (_, other) = &spanish[&key];
        assert_eq!(other.arguments, english.arguments, "{key}");
    }
}

/// One language may choose its words where another does not, but what one tells apart the other does not lump together.
#[test]
fn a_message_that_chooses_in_one_language_tells_the_same_apart_in_every_other() {
    let spanish = messages(Language::Spanish);
    let mut chosen = 0;
    for (key, (_, english)) in messages(Language::English) {
        for (argument, choices) in &english.choices {
            assert_eq!(spanish[&key].1.choices.get(argument), Some(choices), "{key} by {argument}");
            chosen += 1;
        }
    }
    assert!(chosen >= 8, "{chosen}");
}

#[test]
fn a_message_states_the_same_figures_in_every_language() {
    let spanish = messages(Language::Spanish);
    for (key, (_, english)) in messages(Language::English) {
        let other = &spanish[&key].1;
        // choices that only one of them makes repeat no figure
        assert_eq!(other.figures(), english.figures(), "{key}");
    }
}

#[test]
fn no_message_is_left_in_another_language() {
    /// Those that hold no word, and those whose words are the same.
    const SAME: [&str; 4] = ["situation-shape-octagonal", "step-computed", "text-no", "text-type-null"];
    let spanish = messages(Language::Spanish);
    let same: Vec<String> = messages(Language::English)
        .into_iter()
        .filter(|(key, (_, english))| spanish[key].1.text == english.text)
        .map(|(key, _)| key)
        .collect();
    assert_eq!(same, SAME);
}
