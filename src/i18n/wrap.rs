//! Long lines broken at their spaces.

use textwrap::{Options, WordSeparator, WordSplitter, WrapAlgorithm};

/// Breaks a text into lines of at most `width` columns, those after the first indented by `hanging`. A word that is
/// longer than a line stands on its own.
///
/// ```
/// assert_eq!(elbowroom::i18n::wrap("one two three four", 9, 2), "one two\n  three\n  four");
/// ```
pub fn wrap(text: &str, width: usize, hanging: usize) -> String {
    let indent = " ".repeat(hanging);
    let options = Options::new(width)
        .subsequent_indent(&indent)
        .break_words(false)
        .word_separator(WordSeparator::AsciiSpace)
        .word_splitter(WordSplitter::NoHyphenation)
        .wrap_algorithm(WrapAlgorithm::FirstFit);
    textwrap::fill(text, options)
}

#[cfg(test)]
mod tests {
    use super::wrap;

    #[test]
    fn lines_break_at_spaces_and_hang_below_their_beginning() {
        assert_eq!(wrap("one two three", 20, 2), "one two three");
        assert_eq!(wrap("Fits  aaa, bbb, ccc", 11, 6), "Fits  aaa,\n      bbb,\n      ccc");
        assert_eq!(wrap("overlong", 3, 2), "overlong");
    }
}
