//! The key that a service asks for: from a file, or from the environment.

use super::Fault;
use reqwest::header::HeaderValue;
use std::path::Path;
use std::{env, fs};

/// The environment variable that is the key.
const VARIABLE: &str = "ELBOWROOM_KEY";

/// The value of the Authorization header; none without a key.
pub(super) fn of(file: Option<&Path>) -> Result<Option<HeaderValue>, Fault> {
    let key = match file {
        Some(file) => fs::read_to_string(file).map_err(|error| {
            Fault::Key(format!("the key cannot be read from {}: {error}", file.display()))
        })?,
        None => match env::var(VARIABLE) {
            Ok(key) => key,
            Err(env::VarError::NotPresent) => return Ok(None),
            Err(env::VarError::NotUnicode(_)) => return Err(no_key()),
        },
    };
    header(key.trim()).map(Some).ok_or_else(no_key)
}

/// What the key is, is not told.
fn no_key() -> Fault {
    Fault::Key("what stands for the key is none".to_owned())
}

fn header(key: &str) -> Option<HeaderValue> {
    if key.is_empty() || key.contains(char::is_whitespace) {
        return None;
    }
    let mut value = HeaderValue::try_from(format!("Bearer {key}")).ok()?;
    value.set_sensitive(true);
    Some(value)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_key_is_one_word_and_never_shown() {
        let value = header("elbowroom_0123").unwrap();
        assert_eq!(value.as_bytes(), b"Bearer elbowroom_0123");
        assert!(!format!("{value:?}").contains("0123"));
        for wrong in ["", "two words", "two\nlines", "\u{7f}", "é\u{0}"] {
            assert!(header(wrong).is_none(), "{wrong:?}");
        }
    }
}
