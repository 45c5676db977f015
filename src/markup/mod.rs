//! HTML and SVG text under construction: whatever is not markup is escaped.

mod policy;

pub use policy::{digest_of, policy_of};

use crate::i18n::Catalogue;

/// HTML or SVG under construction.
///
/// ```
/// use elbowroom::{markup::Markup, i18n::Catalogue};
/// let mut markup = Markup::new(Catalogue::english());
/// markup.raw("<p>").text("4 < 6").raw("</p>");
/// assert_eq!(markup.done(), "<p>4 &lt; 6</p>");
/// ```
pub struct Markup<'w> {
    text: String,
    messages: &'w Catalogue,
}

impl<'w> Markup<'w> {
    /// Nothing yet; its sentences come from a catalogue.
    pub fn new(messages: &'w Catalogue) -> Self {
        Self { text: String::with_capacity(16 * 1024), messages }
    }

    /// Markup, as it stands in this program.
    pub fn raw(&mut self, markup: &'static str) -> &mut Self {
        self.text.push_str(markup);
        self
    }

    /// Markup that was written by another of these.
    pub fn written(&mut self, markup: &str) -> &mut Self {
        self.text.push_str(markup);
        self
    }

    /// Text of any origin.
    pub fn text(&mut self, text: &str) -> &mut Self {
        for character in text.chars() {
            match character {
                '&' => self.text.push_str("&amp;"),
                '<' => self.text.push_str("&lt;"),
                '>' => self.text.push_str("&gt;"),
                '"' => self.text.push_str("&quot;"),
                '\'' => self.text.push_str("&#39;"),
                other => self.text.push(other),
            }
        }
        self
    }

    /// A sentence of the catalogue.
    pub fn word(&mut self, key: &str) -> &mut Self {
        let messages = self.messages;
        self.text(messages.fixed(key))
    }

    /// The catalogue of its sentences.
    pub const fn messages(&self) -> &'w Catalogue {
        self.messages
    }

    /// The text.
    pub fn done(self) -> String {
        self.text
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn text_is_never_markup() {
        let mut markup = Markup::new(Catalogue::english());
        markup.raw("<p>").text("<script>alert('1 & 2')</script> \"é\"").raw("</p>");
        assert_eq!(
            markup.done(),
            "<p>&lt;script&gt;alert(&#39;1 &amp; 2&#39;)&lt;/script&gt; &quot;é&quot;</p>"
        );
    }
}
