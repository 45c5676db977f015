//! Content security policies (CSP) that let a page look as it does and load nothing.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use sha2::{Digest, Sha256};

/// The content security policy of a page that has these styles of its own and nothing else.
///
/// ```
/// let policy = elbowroom::content_policy::policy_of(&["p { color: black }"]);
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
///
/// ```
/// // of nothing, as FIPS 180-4 has it
/// assert_eq!(elbowroom::content_policy::digest_of(""), "'sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU='");
/// ```
pub fn digest_of(text: &str) -> String {
    format!("'sha256-{}'", STANDARD.encode(Sha256::digest(text)))
}
