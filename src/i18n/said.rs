//! What a sentence names, where the form of the sentence depends on it.

use super::Catalogue;
use fluent_bundle::{FluentArgs, FluentValue};

/// Something that a sentence names.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Said {
    /// So many: the sentence may read differently for one and for several.
    Number(u32),
    /// A text that is the same in every language.
    Text(String),
    /// A word of the catalogue, by its key.
    Word(String),
}

impl Catalogue {
    /// A sentence whose form depends on what it names.
    pub fn told(&self, key: &str, said: &[(&'static str, Said)]) -> String {
        if said.is_empty() {
            return self.fixed(key).to_owned();
        }
        let mut named = FluentArgs::new();
        for (name, said) in said {
            match said {
                Said::Number(number) => named.set(*name, *number),
                Said::Text(text) => named.set(*name, FluentValue::from(text.clone())),
                Said::Word(word) => named.set(*name, FluentValue::from(self.fixed(word).to_owned())),
            }
        }
        self.format(key, Some(&named), &mut Vec::new()).unwrap_or_else(|| key.to_owned())
    }
}
