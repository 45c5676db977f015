//! The language of what a person at a terminal reads.

use super::one_of;
use crate::i18n::Language;
use crate::service::language;
use clap::Args;
use std::env;

/// The language of sentences and labels.
#[derive(Clone, Copy, Debug, Args)]
pub struct LanguageArguments {
    /// The language of the sentences. Without it that of the environment (LC_ALL, LC_MESSAGES, LANG) where it is spoken
    /// here, otherwise English.
    #[arg(long, value_name = "LANGUAGE", value_parser = one_of(Language::ALL.map(Language::tag), Language::named))]
    language: Option<Language>,
}

impl LanguageArguments {
    /// The language that is asked for, or that of the environment.
    pub fn language(self) -> Language {
        self.language.or_else(|| of_environment(|name| env::var(name).ok())).unwrap_or_default()
    }

    /// Runs something in that language.
    pub fn speaking<T>(self, work: impl FnOnce() -> T) -> T {
        language::speaking(self.language(), work)
    }
}

/// The language of messages as POSIX has it: the first of the variables that is not empty decides.
fn of_environment(variable: impl Fn(&str) -> Option<String>) -> Option<Language> {
    let locale = ["LC_ALL", "LC_MESSAGES", "LANG"].into_iter().filter_map(variable);
    locale.into_iter().find(|locale| !locale.is_empty()).and_then(|locale| Language::named(&locale))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_first_variable_of_the_environment_that_says_something_decides() {
        let of = |set: &[(&str, &str)]| {
            of_environment(|name| {
                set.iter().find(|(known, _)| *known == name).map(|(_, locale)| (*locale).to_owned())
            })
        };
        assert_eq!(of(&[("LANG", "es_MX.UTF-8")]), Some(Language::Spanish));
        assert_eq!(
            of(&[("LC_ALL", ""), ("LC_MESSAGES", "es"), ("LANG", "en_US.UTF-8")]),
            Some(Language::Spanish)
        );
        assert_eq!(of(&[("LC_ALL", "C.UTF-8"), ("LANG", "es_MX.UTF-8")]), None);
        assert_eq!(of(&[]), None);
    }
}
