//! The policy that lets a page look as it does and load nothing.

use sha2::{Digest, Sha256};

/// The content security policy of a page that has these styles of its own and nothing else.
///
/// ```
/// let policy = elbowroom::markup::policy_of(&["p { color: black }"]);
/// assert!(policy.starts_with("default-src 'none'; style-src 'sha256-"));
/// ```
pub fn policy_of(styles: &[&str]) -> String {
    let styles: Vec<String> = styles.iter().map(|style| digest_of(style)).collect();
    format!(
        "default-src 'none'; style-src {}; base-uri 'none'; form-action 'none'; frame-ancestors 'none'",
        styles.join(" ")
    )
}

/// A style or script as a content security policy names it: `'sha256-…'`.
pub fn digest_of(text: &str) -> String {
    format!("'sha256-{}'", base64(&Sha256::digest(text)))
}

/// Bytes in Base64 (RFC 4648), padded.
fn base64(bytes: &[u8]) -> String {
    const DIGITS: &[u8; 64] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    let mut text = String::with_capacity(bytes.len().div_ceil(3) * 4);
    for group in bytes.chunks(3) {
        let bits =
            group.iter().fold(0_u32, |bits, byte| bits << 8 | u32::from(*byte)) << (8 * (3 - group.len()));
        for place in 0..4 {
            let digit = DIGITS[(bits >> (18 - 6 * place)) as usize & 63];
            text.push(if place > group.len() { '=' } else { char::from(digit) });
        }
    }
    text
}

#[cfg(test)]
mod tests {
    use super::base64;

    #[test]
    fn base64_is_that_of_the_standard() {
        let known = [
            ("", ""),
            ("f", "Zg=="),
            ("fo", "Zm8="),
            ("foo", "Zm9v"),
            ("foob", "Zm9vYg=="),
            ("foobar", "Zm9vYmFy"),
        ];
        for (bytes, text) in known {
            assert_eq!(base64(bytes.as_bytes()), text);
        }
    }
}
