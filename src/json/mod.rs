//! JSON text, written fast: what `serde_json` writes, byte for byte. And the strict deserializer that reads requests.
//!
//! Answers are mostly names that stand in the program, short texts and numbers. This writer does not look through names for
//! characters to escape, and looks through texts eight bytes at a time; that is all its advantage, and it is the larger
//! part of what an answer costs. `serde_json` remains the measure of what is right: tests hold every answer against it.

pub(crate) mod buffered;
mod compound;
mod strict;
mod text;
mod writer;

pub use strict::{read, read_value};
pub use text::{name, text};
pub use writer::{WriteFault, Writer};

use serde::Serialize;
use serde_json::Value;

/// Writes a value after what `out` holds.
///
/// ```
/// let mut out = Vec::new();
/// elbowroom::json::write(&("a \"box\"", [1, 2], Some(2.0), None::<u8>), &mut out).unwrap();
/// assert_eq!(out, br#"["a \"box\"",[1,2],2.0,null]"#);
/// ```
///
/// # Errors
///
/// A value that has no form in JSON: a map whose keys are no texts, or one whose own `Serialize` fails.
pub fn write<T: Serialize + ?Sized>(value: &T, out: &mut Vec<u8>) -> Result<(), WriteFault> {
    value.serialize(Writer::new(out))
}

/// Whether two values are the same as JSON Schema has it: 4 and 4.0 are the same number, however they are written.
///
/// ```
/// use serde_json::json;
/// assert!(elbowroom::json::same(&json!(4), &json!(4.0)));
/// assert!(!elbowroom::json::same(&json!(4), &json!("4")));
/// ```
pub fn same(left: &Value, right: &Value) -> bool {
    match (left, right) {
        (Value::Number(_), Value::Number(_)) => left.as_f64() == right.as_f64(),
        _ => left == right,
    }
}

/// Writes a number.
pub(crate) fn number(number: f64, out: &mut Vec<u8>) {
    // most figures are whole, and a whole number needs no search for its shortest text; -0.0 is none
    let whole = number as i64;
    if whole.unsigned_abs() < 1_000_000_000_000_000 && (whole as f64).to_bits() == number.to_bits() {
        out.extend_from_slice(itoa::Buffer::new().format(whole).as_bytes());
        out.extend_from_slice(b".0");
    } else if number.is_finite() {
        out.extend_from_slice(zmij::Buffer::new().format_finite(number).as_bytes());
    } else {
        out.extend_from_slice(b"null");
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn any_number_is_written_as_serde_json_does(
            number in prop_oneof![any::<f64>(), (-1e17..1e17).prop_map(f64::trunc), Just(-0.0), -1e6..1e6],
        ) {
            let mut out = Vec::new();
            super::number(number, &mut out);
            prop_assert_eq!(String::from_utf8(out).unwrap(), serde_json::to_string(&number).unwrap());
        }
    }
}
