//! Messages in the form in which they are put together quickest. Project Fluent remains the form in which they are written.

use fluent_bundle::FluentResource;
use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use std::fmt::{self, Write};

/// One message of a catalogue, as far as it can be prepared.
pub(super) enum Message {
    /// A text that names nothing.
    Fixed(String),
    /// Texts and the names of arguments between them.
    Pieces(Vec<Piece>),
    /// One that Fluent formats each time: its form depends on a number.
    Formatted,
}

/// A piece of a message.
pub(super) enum Piece {
    /// A text.
    Text(String),
    /// What an argument with this name says.
    Argument(String),
}

/// The messages of a catalogue with their keys: `message`, and attributes as `message.attribute`.
pub(super) fn all(resource: &FluentResource) -> Vec<(String, Message)> {
    let mut all = Vec::new();
    for entry in resource.entries() {
        if let Entry::Message(message) = entry {
            let key = message.id.name;
            if let Some(pattern) = &message.value {
                all.push((key.to_owned(), Message::of(pattern)));
            }
            for attribute in &message.attributes {
                all.push((format!("{key}.{}", attribute.id.name), Message::of(&attribute.value)));
            }
        }
    }
    all
}

impl Message {
    fn of(pattern: &Pattern<&str>) -> Self {
        let piece = |element: &PatternElement<&str>| match element {
            PatternElement::TextElement { value } => Some(Piece::Text((*value).to_owned())),
            PatternElement::Placeable {
                expression: Expression::Inline(InlineExpression::VariableReference { id }),
            } => Some(Piece::Argument(id.name.to_owned())),
            PatternElement::Placeable { .. } => None,
        };
        let pieces: Option<Vec<Piece>> = pattern.elements.iter().map(piece).collect();
        pieces.map_or(Self::Formatted, Self::Pieces)
    }

    /// The names of the arguments between its texts.
    #[cfg(test)]
    pub(super) fn names(&self) -> Vec<&str> {
        let Self::Pieces(pieces) = self else { return Vec::new() };
        let name = |piece: &'_ Piece| matches!(piece, Piece::Argument(_));
        let mut names: Vec<&str> = pieces
            .iter()
            .filter(|piece| name(piece))
            .map(|piece| match piece {
                Piece::Text(text) | Piece::Argument(text) => text.as_str(),
            })
            .collect();
        names.sort_unstable();
        names.dedup();
        names
    }
}

/// The message that pieces make with some arguments. An argument that is missing is written as Fluent writes it.
pub(super) fn filled<A: fmt::Display>(pieces: &[Piece], arguments: &[(&str, A)]) -> String {
    /// Room for an argument of the usual length.
    const USUAL_ARGUMENT: usize = 16;
    let room = |piece: &Piece| match piece {
        Piece::Text(text) => text.len(),
        Piece::Argument(_) => USUAL_ARGUMENT,
    };
    let mut message = String::with_capacity(pieces.iter().map(room).sum());
    for piece in pieces {
        match piece {
            Piece::Text(text) => message.push_str(text),
            Piece::Argument(wanted) => {
                // writing into a text fails only where the argument itself does
                let _ = match arguments.iter().find(|(name, _)| name == wanted) {
                    Some((_, argument)) => write!(message, "{argument}"),
                    None => write!(message, "{{${wanted}}}"),
                };
            }
        }
    }
    message
}
