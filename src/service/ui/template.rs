//! The page as HTML: its template with the words of a language in it.

use crate::i18n::Catalogue;
use crate::markup::Markup;
use serde_json::{Map, Value, json};

const TEMPLATE: &str = include_str!("page/index.html");

/// The page in a language. `{{key}}` in the template is a message; `language`, `version` and `words` are what they say.
pub(super) fn filled(messages: &Catalogue, version: &str) -> String {
    let mut page = Markup::new(messages);
    for (place, part) in TEMPLATE.split("{{").enumerate() {
        match part.split_once("}}").filter(|_| place > 0) {
            None => page.raw(part),
            Some((key, rest)) => {
                match key {
                    "language" => page.text(messages.language().tag()),
                    "version" => page.text(version),
                    "words" => page.written(&shared(messages)),
                    key => page.word(key),
                };
                page.raw(rest)
            }
        };
    }
    page.done()
}

/// The words that the scripts of the page need, as JSON that cannot end the element that it stands in.
fn shared(messages: &Catalogue) -> String {
    let none: [(&str, &str); 0] = [];
    let named = |kind: &'static str| messages.keys().filter(move |key| key.starts_with(kind));
    let own: Map<String, Value> = named("ui-")
        .chain(["text-yes", "text-no"])
        .map(|key| (key.to_owned(), messages.sentence(key, none).into()))
        .collect();
    let label = |key: &str| Some((key.strip_prefix("label-")?.to_owned(), messages.fixed(key).into()));
    let labels: Map<String, Value> = named("label-").filter_map(label).collect();
    json!({"words": own, "labels": labels}).to_string().replace('<', "\\u003c")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::i18n::Language;

    #[test]
    fn every_page_is_whole_and_its_words_can_be_read() {
        for language in Language::ALL {
            let page = filled(Catalogue::of(language), "abc");
            assert!(!page.contains("{{"), "{language:?}");
            assert!(page.contains(&format!("<html lang=\"{}\">", language.tag())));
            let words = page.split("id=\"words\">").nth(1).and_then(|rest| rest.split("</script>").next());
            let words: Value = serde_json::from_str(words.unwrap()).unwrap();
            assert!(words["words"].as_object().is_some_and(|words| words.len() > 50), "{words}");
            assert_eq!(words["labels"]["findings"].is_string(), language == Language::Spanish);
        }
    }
}
