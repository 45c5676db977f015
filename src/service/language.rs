//! The language of what a caller reads: chosen from the Accept-Language header, once for each request.
//!
//! Everything that is put in words while a request is answered, down to the last fault, asks [`i18n`]. Outside of any
//! request the language is English. Work that is handed to another task or thread is done [`within`] the language, or
//! [`speaking`] it.

use super::quality::thousandths;
use crate::i18n::{Catalogue, Language};
use axum::http::{HeaderMap, HeaderName, HeaderValue, header};
use fluent_langneg::{NegotiationStrategy, negotiate_languages};
use serde::{Deserialize, Serialize};
use std::future::Future;
use unic_langid::LanguageIdentifier;
use utoipa::ToSchema;

tokio::task_local! {
    static SPOKEN: Language;
}

/// The language of the request that is being answered.
pub fn spoken() -> Language {
    SPOKEN.try_with(|language| *language).unwrap_or_default()
}

/// The messages in the language of the request that is being answered.
pub fn messages() -> &'static Catalogue {
    Catalogue::of(spoken())
}

/// A language, as a request names it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(rename_all = "lowercase")]
pub enum ChosenLanguage {
    /// English.
    En,
    /// Spanish, in the words of the trade as used in the United States and Mexico.
    Es,
}

impl From<ChosenLanguage> for Language {
    fn from(language: ChosenLanguage) -> Self {
        match language {
            ChosenLanguage::En => Self::English,
            ChosenLanguage::Es => Self::Spanish,
        }
    }
}

impl From<Language> for ChosenLanguage {
    fn from(language: Language) -> Self {
        match language {
            Language::English => Self::En,
            Language::Spanish => Self::Es,
        }
    }
}

/// Runs a future in a language.
pub fn within<F: Future>(language: Language, work: F) -> impl Future<Output = F::Output> {
    SPOKEN.scope(language, work)
}

/// Runs a function in a language.
pub fn speaking<T>(language: Language, work: impl FnOnce() -> T) -> T {
    SPOKEN.sync_scope(language, work)
}

/// What an answer that holds words says of them: their language, and that another caller may get others.
pub fn headers() -> [(HeaderName, HeaderValue); 2] {
    [
        (header::CONTENT_LANGUAGE, HeaderValue::from_static(spoken().tag())),
        (header::VARY, HeaderValue::from_static("accept-language")),
    ]
}

/// The language that a caller asks for; English where the header is missing, cannot be read or asks for no language that
/// is spoken here. An answer in a language that was not asked for is of more use than none (RFC 9110, 12.5.4).
pub fn asked(headers: &HeaderMap) -> Language {
    let mut values =
        headers.get_all(header::ACCEPT_LANGUAGE).iter().filter_map(|value| value.to_str().ok()).peekable();
    if values.peek().is_none() {
        return Language::default();
    }
    best(values.flat_map(|value| value.split(',')))
}

/// The best language for a list of language ranges with their weights.
fn best<'a>(ranges: impl Iterator<Item = &'a str>) -> Language {
    /// More ranges than any browser sends are not looked at.
    const MOST_RANGES: usize = 64;
    let spoken = Language::ALL.map(identifier);
    let (mut wanted, mut refused): (Vec<(LanguageIdentifier, u16)>, Vec<LanguageIdentifier>) =
        (vec![], vec![]);
    let mut any = 0;
    for (range, weight) in ranges.take(MOST_RANGES).map(weighted) {
        match (range.as_str(), weight) {
            ("*", weight) => any = weight,
            (range, weight) => match (range.parse(), weight) {
                (Ok(range), 0) => refused.push(range),
                (Ok(range), weight) => wanted.push((range, weight)),
                (Err(_), _) => {}
            },
        }
    }
    // the asterisk stands for every language that no other range names
    let named = |language: &LanguageIdentifier| {
        let mut all = wanted.iter().map(|(range, _)| range).chain(&refused);
        all.any(|range| range.language == language.language)
    };
    let unnamed: Vec<_> = spoken.iter().filter(|language| any > 0 && !named(language)).cloned().collect();
    wanted.extend(unnamed.into_iter().map(|language| (language, any)));
    // a stable sort: of ranges with the same weight the first that was named is preferred
    wanted.sort_by_key(|(_, weight)| std::cmp::Reverse(*weight));
    let wanted: Vec<LanguageIdentifier> = wanted.into_iter().map(|(range, _)| range).collect();
    let default = identifier(Language::default());
    let found = negotiate_languages(&wanted, &spoken, Some(&default), NegotiationStrategy::Lookup);
    found
        .first()
        .and_then(|found| Language::ALL.into_iter().find(|language| identifier(*language) == **found))
        .unwrap_or_default()
}

/// A range of Accept-Language and its weight in thousandths.
fn weighted(text: &str) -> (String, u16) {
    let (range, parameter) = text.split_once(';').unwrap_or((text, ""));
    let quality = parameter.split_once('=').filter(|(name, _)| name.trim().eq_ignore_ascii_case("q"));
    (range.trim().to_ascii_lowercase(), quality.map_or(1000, |(_, quality)| thousandths(quality.trim())))
}

fn identifier(language: Language) -> LanguageIdentifier {
    language.tag().parse().unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_language_is_the_best_of_those_asked_for_and_english_where_none_is_spoken() {
        use Language::{English, Spanish};
        for (asked, language) in [
            ("es", Spanish),
            ("ES-mx", Spanish),
            ("es-US,es;q=0.9,en;q=0.8", Spanish),
            ("es-419", Spanish),
            ("en", English),
            ("en-GB, es;q=0.9", English),
            ("es;q=0.4, en;q=0.5", English),
            ("es;q=0.001, fr;q=1", Spanish),
            ("fr, es", Spanish),
            ("es, en", Spanish),
            ("en, es", English),
            ("*", English),
            ("es, *;q=0.1", Spanish),
            ("es;q=0.5, *", English),
            ("en;q=0, *", Spanish),
            ("en;q=0", English),
            ("es;q=0", English),
            ("es;q=0, *", English),
            ("fr", English),
            ("", English),
            (",,;;", English),
            ("es;q=many", Spanish),
            ("not a language!, es;q=0.1", Spanish),
            ("español", English),
        ] {
            assert_eq!(best(asked.split(',')), language, "{asked:?}");
        }
        assert_eq!(best(std::iter::repeat_n("fr", 1000).chain(["es"])), English);
    }

    #[test]
    fn a_missing_or_unreadable_header_is_english_and_several_are_one_list() {
        let mut headers = HeaderMap::new();
        assert_eq!(asked(&headers), Language::English);
        headers.insert(header::ACCEPT_LANGUAGE, HeaderValue::from_bytes(b"es\xff").unwrap());
        assert_eq!(asked(&headers), Language::English);
        headers.insert(header::ACCEPT_LANGUAGE, HeaderValue::from_static("en;q=0.1"));
        headers.append(header::ACCEPT_LANGUAGE, HeaderValue::from_static("es-MX"));
        assert_eq!(asked(&headers), Language::Spanish);
    }

    #[test]
    fn outside_of_any_request_the_language_is_english() {
        assert_eq!(spoken(), Language::English);
        assert_eq!(speaking(Language::Spanish, messages).language(), Language::Spanish);
        assert_eq!(spoken(), Language::English);
    }
}
