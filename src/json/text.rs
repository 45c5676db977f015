//! Texts between quotes.

use std::fmt;

/// Writes a name of the program between quotes: it holds nothing that JSON escapes.
pub fn name(name: &str, out: &mut Vec<u8>) {
    debug_assert!(is_plain(name.as_bytes()), "{name}");
    out.push(b'"');
    out.extend_from_slice(name.as_bytes());
    out.push(b'"');
}

/// Writes any text between quotes.
pub fn text(text: &str, out: &mut Vec<u8>) {
    out.push(b'"');
    inside(text, out);
    out.push(b'"');
}

/// Writes what something displays between quotes.
pub(super) fn displayed<T: fmt::Display + ?Sized>(value: &T, out: &mut Vec<u8>) -> fmt::Result {
    struct Inside<'o>(&'o mut Vec<u8>);
    impl fmt::Write for Inside<'_> {
        fn write_str(&mut self, part: &str) -> fmt::Result {
            inside(part, self.0);
            Ok(())
        }
    }
    out.push(b'"');
    fmt::write(&mut Inside(out), format_args!("{value}"))?;
    out.push(b'"');
    Ok(())
}

fn inside(text: &str, out: &mut Vec<u8>) {
    let bytes = text.as_bytes();
    if is_plain(bytes) {
        out.extend_from_slice(bytes);
        return;
    }
    for byte in bytes {
        match byte {
            b'"' => out.extend_from_slice(b"\\\""),
            b'\\' => out.extend_from_slice(b"\\\\"),
            b'\n' => out.extend_from_slice(b"\\n"),
            b'\r' => out.extend_from_slice(b"\\r"),
            b'\t' => out.extend_from_slice(b"\\t"),
            0x08 => out.extend_from_slice(b"\\b"),
            0x0c => out.extend_from_slice(b"\\f"),
            0..0x20 => out.extend_from_slice(&[b'\\', b'u', b'0', b'0', hex(byte >> 4), hex(byte & 15)]),
            _ => out.push(*byte),
        }
    }
}

const fn hex(digit: u8) -> u8 {
    if digit < 10 { b'0' + digit } else { b'a' + digit - 10 }
}

/// Whether JSON writes a text as it stands: no quote, no backslash, nothing below a space.
fn is_plain(bytes: &[u8]) -> bool {
    let (words, rest) = bytes.as_chunks::<8>();
    if words.iter().any(|word| asks_escape(u64::from_le_bytes(*word))) {
        return false;
    }
    match (bytes.last_chunk::<8>(), rest.is_empty()) {
        (_, true) => true,
        // the last eight bytes once more, so that what is left over needs no loop
        (Some(last), false) => !asks_escape(u64::from_le_bytes(*last)),
        (None, false) => !rest.iter().any(|byte| matches!(byte, b'"' | b'\\' | 0..0x20)),
    }
}

/// Whether any of eight bytes is a quote, a backslash or below a space. Subtracting from all bytes at once borrows into the
/// high bit of those that are below; that of bytes past ASCII is masked out.
const fn asks_escape(word: u64) -> bool {
    const ONES: u64 = 0x0101_0101_0101_0101;
    const HIGH: u64 = 0x8080_8080_8080_8080;
    const fn below(word: u64, bound: u64) -> u64 {
        word.wrapping_sub(ONES * bound) & !word
    }
    let quote = below(word ^ (ONES * b'"' as u64), 1);
    let backslash = below(word ^ (ONES * b'\\' as u64), 1);
    (below(word, 0x20) | quote | backslash) & HIGH != 0
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn every_character_of_ascii_is_escaped_as_serde_json_does_at_every_place() {
        for character in (0..0x80_u8).map(char::from).chain(['é', '\u{7ff}', '€', '😀', '\u{2028}']) {
            for before in 0..18 {
                for after in [0, 1, 7, 8, 9] {
                    let sample = format!("{}{character}{}", "a".repeat(before), "z".repeat(after));
                    let mut out = Vec::new();
                    text(&sample, &mut out);
                    assert_eq!(String::from_utf8(out).unwrap(), serde_json::to_string(&sample).unwrap());
                }
            }
        }
    }

    proptest! {
        #[test]
        fn any_text_is_written_as_serde_json_does(sample in any::<String>()) {
            let mut out = Vec::new();
            text(&sample, &mut out);
            prop_assert_eq!(String::from_utf8(out).unwrap(), serde_json::to_string(&sample).unwrap());
        }
    }
}
