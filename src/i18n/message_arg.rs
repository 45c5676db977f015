//! Arguments of a message whose form depends on them.

use super::Catalogue;
use fluent_bundle::{FluentArgs, FluentValue};

/// An argument of a message.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum MessageArg {
    /// A count: the sentence may read differently for one and for several.
    Number(u32),
    /// A text that is the same in every language.
    Text(String),
    /// A word of the catalogue, by its key.
    Word(String),
}

impl Catalogue {
    /// A message with its arguments, formatted by Fluent: its form may depend on them.
    pub fn message(&self, key: &str, arguments: &[(&'static str, MessageArg)]) -> String {
        if arguments.is_empty() {
            return self.fixed(key).to_owned();
        }
        let mut named = FluentArgs::new();
        for (name, argument) in arguments {
            match argument {
                MessageArg::Number(number) => named.set(*name, *number),
                MessageArg::Text(text) => named.set(*name, FluentValue::from(text.clone())),
                MessageArg::Word(word) => named.set(*name, FluentValue::from(self.fixed(word).to_owned())),
            }
        }
        self.format(key, Some(&named), &mut Vec::new()).unwrap_or_else(|| key.to_owned())
    }
}
