//! Canonical JSON (RFC 8785), and what is hashed over it.

use crate::service::problem::Problem;
use serde::Serialize;
use sha2::{Digest, Sha256};

/// A value as canonical JSON: members in order, nothing between them, numbers as ECMAScript writes them.
///
/// # Errors
///
/// A number that is no number; JSON that was read holds none.
pub fn canonical(value: &impl Serialize) -> Result<Vec<u8>, Problem> {
    serde_json_canonicalizer::to_vec(value).map_err(|_| Problem::internal())
}

/// SHA-256 of some bytes, as `sha256:` and hexadecimal digits.
pub fn sha256(bytes: &[u8]) -> String {
    format!("sha256:{:x}", Sha256::digest(bytes))
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::Value;

    fn written(text: &str) -> String {
        let value: Value = serde_json::from_str(text).unwrap();
        String::from_utf8(canonical(&value).unwrap()).unwrap()
    }

    /// Appendix B of RFC 8785 as remembered: the bits of a number, and how it is written.
    #[test]
    fn numbers_are_written_as_ecmascript_writes_them() {
        for (bits, text) in [
            (0x0000_0000_0000_0000, "0"),
            (0x8000_0000_0000_0000, "0"),
            (0x0000_0000_0000_0001, "5e-324"),
            (0x8000_0000_0000_0001, "-5e-324"),
            (0x7fef_ffff_ffff_ffff, "1.7976931348623157e+308"),
            (0xffef_ffff_ffff_ffff, "-1.7976931348623157e+308"),
            (0x4340_0000_0000_0000, "9007199254740992"),
            (0xc340_0000_0000_0000, "-9007199254740992"),
            (0x4430_0000_0000_0000, "295147905179352830000"),
            (0x44b5_2d02_c7e1_4af5, "9.999999999999997e+22"),
            (0x44b5_2d02_c7e1_4af6, "1e+23"),
            (0x44b5_2d02_c7e1_4af7, "1.0000000000000001e+23"),
            (0x444b_1ae4_d6e2_ef4e, "999999999999999700000"),
            (0x444b_1ae4_d6e2_ef4f, "999999999999999900000"),
            (0x444b_1ae4_d6e2_ef50, "1e+21"),
            (0x3eb0_c6f7_a0b5_ed8c, "9.999999999999997e-7"),
            (0x3eb0_c6f7_a0b5_ed8d, "0.000001"),
            (0x41b3_de43_5555_5553, "333333333.3333332"),
            (0x41b3_de43_5555_5554, "333333333.33333325"),
            (0x41b3_de43_5555_5555, "333333333.3333333"),
            (0x41b3_de43_5555_5556, "333333333.3333334"),
            (0x41b3_de43_5555_5557, "333333333.33333343"),
            (0xbecb_f647_612f_3696, "-0.0000033333333333333333"),
            (0x4314_3ff3_c1cb_0959, "1424953923781206.2"),
        ] {
            let number = f64::from_bits(bits);
            assert_eq!(String::from_utf8(canonical(&number).unwrap()).unwrap(), text, "{bits:x}");
            // and the same when it was read from text, whatever way it was written there
            assert_eq!(written(&format!("{number:e}")), text, "{bits:x}");
        }
        assert_eq!(written("[1.0, 1e0, 10e-1, 100, 2.50]"), "[1,1,1,100,2.5]");
    }

    /// The example of section 3.2.2 and the order of section 3.2.3 of RFC 8785, as remembered.
    #[test]
    fn members_stand_in_order_and_texts_are_escaped_no_more_than_they_must() {
        let text = r#"{"numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
            "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/", "literals": [null, true, false]}"#;
        assert_eq!(
            written(text),
            r#"{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}"#
        );
        let text =
            r#"{"\u20ac": 1, "\r": 2, "\ufb33": 3, "1": 4, "\ud83d\ude00": 5, "\u0080": 6, "\u00f6": 7}"#;
        assert_eq!(written(text), "{\"\\r\":2,\"1\":4,\"\u{80}\":6,\"ö\":7,\"€\":1,\"😀\":5,\"\u{fb33}\":3}");
    }

    #[test]
    fn the_hash_is_sha256_in_hexadecimal_digits() {
        let empty = "sha256:e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855";
        assert_eq!(sha256(b""), empty);
    }
}
