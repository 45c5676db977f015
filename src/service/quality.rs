//! Quality values of Accept and Accept-Language (RFC 9110, 12.4.2).

/// A quality value in thousandths: `0.5` is 500. One that does not read is 1.
pub fn thousandths(quality: &str) -> u16 {
    let (whole, fraction) = quality.split_once('.').unwrap_or((quality, ""));
    let digits = format!("{fraction:0<3}");
    match (whole, digits.get(..3).and_then(|digits| digits.parse::<u16>().ok())) {
        ("0", Some(thousandths)) => thousandths,
        _ => 1000,
    }
}
