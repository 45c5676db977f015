//! SVG text under construction: whatever is not markup is escaped.

/// SVG under construction.
#[derive(Debug, Default)]
pub(super) struct Svg(String);

impl Svg {
    /// Markup, as it stands in this program.
    pub fn raw(&mut self, markup: &'static str) -> &mut Self {
        self.0.push_str(markup);
        self
    }

    /// Markup that was written by another of these, or has nothing to escape.
    pub fn written(&mut self, markup: &str) -> &mut Self {
        self.0.push_str(markup);
        self
    }

    /// Text of any origin.
    pub fn text(&mut self, text: &str) -> &mut Self {
        for character in text.chars() {
            match character {
                '&' => self.0.push_str("&amp;"),
                '<' => self.0.push_str("&lt;"),
                '>' => self.0.push_str("&gt;"),
                '"' => self.0.push_str("&quot;"),
                '\'' => self.0.push_str("&#39;"),
                other => self.0.push(other),
            }
        }
        self
    }

    /// The text.
    pub fn done(self) -> String {
        self.0
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn text_is_never_markup() {
        let mut svg = Svg::default();
        svg.raw("<p>").text("<script>alert('1 & 2')</script> \"é\"").raw("</p>");
        assert_eq!(
            svg.done(),
            "<p>&lt;script&gt;alert(&#39;1 &amp; 2&#39;)&lt;/script&gt; &quot;é&quot;</p>"
        );
    }
}
