//! Long lines broken at their spaces.

/// Breaks a text into lines of at most `width` characters, those after the first indented by `hanging`. A word that is
/// longer than a line stands on its own.
///
/// ```
/// assert_eq!(elbowroom::i18n::wrap("one two three four", 9, 2), "one two\n  three\n  four");
/// ```
pub fn wrap(text: &str, width: usize, hanging: usize) -> String {
    let mut wrapped = String::with_capacity(text.len() + 16);
    let mut filled = 0;
    for (index, word) in text.split(' ').enumerate() {
        let length = word.chars().count();
        if index > 0 && filled + 1 + length > width && filled > hanging {
            wrapped.push('\n');
            wrapped.extend(std::iter::repeat_n(' ', hanging));
            filled = hanging;
        } else if index > 0 {
            wrapped.push(' ');
            filled += 1;
        }
        wrapped.push_str(word);
        filled += length;
    }
    wrapped
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
