//! How the values of settings are written: each reader says in its error what would be right.

use std::net::{IpAddr, Ipv6Addr, SocketAddr};
use std::time::Duration;

/// An address with a port: `127.0.0.1:8314`, `[::1]:0`.
pub fn address(text: &str) -> Result<SocketAddr, String> {
    text.parse().map_err(|_| "is not an address with a port, such as 127.0.0.1:8314".to_owned())
}

/// A span of time: `500ms`, `10s`, `2m`, `1h`; up to a day.
pub fn duration(text: &str) -> Result<Duration, String> {
    let wrong = || "is not a span of time up to a day, such as 500ms, 10s or 2m".to_owned();
    let digits = text.bytes().take_while(u8::is_ascii_digit).count();
    let (number, unit) = text.split_at(digits);
    let number: u64 = number.parse().map_err(|_| wrong())?;
    let millis = match unit {
        "ms" => Some(number),
        "s" => number.checked_mul(1_000),
        "m" => number.checked_mul(60_000),
        "h" => number.checked_mul(3_600_000),
        _ => None,
    };
    let day = 24 * 3_600_000;
    millis.filter(|millis| *millis <= day).map(Duration::from_millis).ok_or_else(wrong)
}

/// A span of time that is not zero.
pub fn wait(text: &str) -> Result<Duration, String> {
    match duration(text)? {
        Duration::ZERO => Err("must be longer than nothing".to_owned()),
        wait => Ok(wait),
    }
}

/// A size in bytes: `4096`, `512KiB`, `1MiB`; from 1 KiB to 64 MiB.
pub fn size(text: &str) -> Result<usize, String> {
    let wrong = || "is not a size from 1KiB to 64MiB".to_owned();
    let (number, scale) = match (text.strip_suffix("KiB"), text.strip_suffix("MiB")) {
        (Some(number), _) => (number, 1024),
        (_, Some(number)) => (number, 1024 * 1024),
        _ => (text, 1),
    };
    let bytes = number.parse::<usize>().ok().and_then(|number| number.checked_mul(scale));
    bytes.filter(|bytes| (1024..=64 * 1024 * 1024).contains(bytes)).ok_or_else(wrong)
}

/// A count from one to ten million.
pub fn count(text: &str) -> Result<u32, String> {
    let count = text.parse().ok().filter(|count| (1..=10_000_000).contains(count));
    count.ok_or_else(|| "is not a whole number from 1 to 10000000".to_owned())
}

/// A count, or `none`.
pub fn count_or_none(text: &str) -> Result<Option<u32>, String> {
    if text == "none" { Ok(None) } else { count(text).map(Some).map_err(|wrong| format!("{wrong}, or none")) }
}

/// Yes or no.
pub fn yes_or_no(text: &str) -> Result<bool, String> {
    match text {
        "true" => Ok(true),
        "false" => Ok(false),
        _ => Err("is neither true nor false".to_owned()),
    }
}

/// The members of a list, as an environment variable writes it: separated by commas.
pub fn list<T>(text: &str, member: impl Fn(&str) -> Result<T, String>) -> Result<Vec<T>, String> {
    let members = text.split(',').map(str::trim).filter(|text| !text.is_empty());
    members.map(|text| member(text).map_err(|wrong| format!("holds {text:?}, which {wrong}"))).collect()
}

/// An origin, as a browser sends it: scheme, host and port, nothing after it.
pub fn origin(text: &str) -> Result<String, String> {
    let host = text.strip_prefix("https://").or_else(|| text.strip_prefix("http://"));
    let plain = |host: &&str| {
        !host.is_empty() && host.bytes().all(|byte| byte.is_ascii_alphanumeric() || b".-:[]".contains(&byte))
    };
    match host.filter(plain) {
        Some(_) => Ok(text.to_ascii_lowercase()),
        None => Err("is not an origin, such as https://tools.example".to_owned()),
    }
}

/// Addresses that begin alike: `10.0.0.0/8`, `::1`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Network {
    first: u128,
    bits: u32,
}

impl Network {
    /// Reads an address, alone or with the number of bits that count.
    pub fn read(text: &str) -> Result<Self, String> {
        let wrong = || "is not an address or a network, such as 10.0.0.0/8".to_owned();
        let (address, bits) =
            text.split_once('/').map_or((text, None), |(address, bits)| (address, Some(bits)));
        let address: IpAddr = address.parse().map_err(|_| wrong())?;
        let (most, before) = if address.is_ipv4() { (32, 96) } else { (128, 0) };
        let bits = bits.map_or(Some(most), |bits| bits.parse().ok().filter(|bits| *bits <= most));
        let bits = bits.ok_or_else(wrong)? + before;
        Ok(Self { first: number(address) & mask(bits), bits })
    }

    /// Whether an address is in it.
    pub fn holds(self, address: IpAddr) -> bool {
        number(address) & mask(self.bits) == self.first
    }
}

fn mask(bits: u32) -> u128 {
    u128::MAX.checked_shl(128 - bits).unwrap_or(0)
}

/// An address as a number: version 4 as the part of version 6 that stands for it.
fn number(address: IpAddr) -> u128 {
    match address {
        IpAddr::V4(address) => address.to_ipv6_mapped().to_bits(),
        IpAddr::V6(address) => Ipv6Addr::to_bits(address),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn spans_sizes_and_counts_are_read_and_bounded() {
        assert_eq!(duration("500ms"), Ok(Duration::from_millis(500)));
        assert_eq!(duration("2m"), Ok(Duration::from_secs(120)));
        for wrong in ["", "s", "5", "-1s", "1.5s", "25h", "99999999999999999999s", "18446744073709551615h"] {
            assert!(duration(wrong).is_err(), "{wrong}");
        }
        assert!(wait("0s").is_err() && duration("0s").is_ok());
        assert_eq!(size("1MiB"), Ok(1_048_576));
        assert_eq!(size("2048"), Ok(2048));
        for wrong in ["", "1", "65MiB", "1MB", "18446744073709551615MiB"] {
            assert!(size(wrong).is_err(), "{wrong}");
        }
        assert_eq!(count_or_none("none"), Ok(None));
        assert_eq!(count_or_none("5"), Ok(Some(5)));
        assert!(count("0").is_err() && count("10000001").is_err() && count("many").is_err());
    }

    #[test]
    fn origins_are_taken_as_browsers_send_them() {
        assert_eq!(origin("https://Tools.example:8443").as_deref(), Ok("https://tools.example:8443"));
        for wrong in ["*", "null", "https://", "https://a/b", "tools.example", "ftp://a", "https://a b"] {
            assert!(origin(wrong).is_err(), "{wrong}");
        }
        assert_eq!(list("http://a, http://b,", origin).map(|list| list.len()), Ok(2));
        assert!(list("http://a,*", origin).unwrap_err().contains("\"*\""));
    }

    #[test]
    fn a_network_holds_the_addresses_that_begin_like_it() {
        let holds =
            |network: &str, address: &str| Network::read(network).unwrap().holds(address.parse().unwrap());
        assert!(holds("10.0.0.0/8", "10.200.3.4") && !holds("10.0.0.0/8", "11.0.0.1"));
        assert!(holds("127.0.0.1", "127.0.0.1") && !holds("127.0.0.1", "127.0.0.2"));
        assert!(holds("10.0.0.0/8", "::ffff:10.1.1.1"));
        assert!(holds("fd00::/8", "fd12::1") && !holds("fd00::/8", "fe80::1"));
        assert!(holds("0.0.0.0/0", "8.8.8.8") && !holds("0.0.0.0/0", "2001:db8::1"));
        assert!(holds("::/0", "8.8.8.8") && holds("::/0", "2001:db8::1"));
        for wrong in ["10.0.0.0/33", "::/129", "10.0.0", "a/8", "10.0.0.0/x"] {
            assert!(Network::read(wrong).is_err(), "{wrong}");
        }
    }
}
