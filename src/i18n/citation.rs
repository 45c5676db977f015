//! Where a rule stands, as a sentence says it. A citation itself is a name and the same in every language.

use super::{Catalogue, Language};

/// The words that stand in citations, longer ones before those that they begin with, and the keys of their messages.
const WORDS: [(&str, &str); 10] = [
    ("location in 2026 unverified", "word-citation-unverified"),
    ("informational note", "word-citation-informational-note"),
    ("Article", "word-citation-article"),
    ("Chapter", "word-citation-chapter"),
    ("Exception", "word-citation-exception"),
    ("Location", "word-citation-location"),
    ("Note", "word-citation-note"),
    ("Table", "word-citation-table"),
    ("geometry", "word-citation-geometry"),
    (" and ", "word-citation-and"),
];

impl Catalogue {
    /// A citation as a sentence says it.
    ///
    /// ```
    /// use elbowroom::i18n::{Catalogue, Language};
    /// let spanish = Catalogue::of(Language::Spanish);
    /// assert_eq!(spanish.citation("Chapter 9, Tables 1 and 4"), "Capítulo 9, Tablas 1 y 4");
    /// ```
    pub fn citation(&self, citation: &str) -> String {
        if self.language() == Language::English {
            return citation.to_owned();
        }
        let mut translated = citation.to_owned();
        for (word, key) in WORDS.into_iter().filter(|(word, _)| citation.contains(word)) {
            let [before, after] =
                [word.starts_with(' '), word.ends_with(' ')].map(|space| if space { " " } else { "" });
            translated = translated.replace(word, &format!("{before}{}{after}", self.fixed(key)));
        }
        translated
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::rulebook::{Edition, rules};
    use std::collections::BTreeSet;

    fn citations() -> BTreeSet<String> {
        let of = |edition| rules().filter_map(move |rule| rule.citation(edition));
        Edition::ALL.into_iter().flat_map(of).map(|citation| citation.to_string()).collect()
    }

    /// The words of a text; letters of subsections and the name of the code are none.
    fn words_of(text: &str) -> BTreeSet<&str> {
        let words = text.split(|letter: char| !letter.is_alphabetic());
        words.filter(|word| word.chars().count() > 2 && *word != "NFPA").collect()
    }

    #[test]
    fn every_word_of_every_citation_is_translated_and_none_is_needless() {
        for words in Language::ALL.map(Catalogue::of) {
            for (word, key) in WORDS {
                assert!(words.has(key), "{key}");
                assert!(citations().iter().any(|citation| citation.contains(word)), "{word}");
                assert!(words.language() != Language::English || words.fixed(key) == word.trim(), "{key}");
            }
            for citation in citations() {
                let translated = words.citation(&citation);
                match words.language() {
                    Language::English => assert_eq!(translated, citation),
                    _ => assert!(
                        words_of(&translated).is_disjoint(&words_of(&citation)),
                        "{citation} is {translated}"
                    ),
                }
            }
        }
    }
}
