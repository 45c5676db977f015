//! The key that a service asks for: from a file, or from the environment.

use super::Fault;
use std::path::Path;
use std::{env, fs};

/// The environment variable that holds the key.
const VARIABLE: &str = "ELBOWROOM_KEY";

/// Reads the key, where there is one.
pub(super) fn read(file: Option<&Path>) -> Result<Option<String>, Fault> {
    let key = match file {
        Some(file) => fs::read_to_string(file).map_err(|error| {
            Fault::Key(format!("the key cannot be read from {}: {error}", file.display()))
        })?,
        None => match env::var(VARIABLE) {
            Ok(key) => key,
            Err(env::VarError::NotPresent) => return Ok(None),
            Err(env::VarError::NotUnicode(_)) => String::new(),
        },
    };
    let key = key.trim();
    if is_key(key) {
        return Ok(Some(key.to_owned()));
    }
    // what stands there may be nearly the key, and is not shown
    Err(Fault::Key("the key is not valid: a key is one word of printable ASCII characters".to_owned()))
}

fn is_key(text: &str) -> bool {
    !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_graphic())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_key_is_one_word() {
        assert!(is_key("elbowroom_0123"));
        for wrong in ["", "two words", "two\nlines", "\u{7f}", "é\u{0}"] {
            assert!(!is_key(wrong), "{wrong:?}");
        }
    }
}
