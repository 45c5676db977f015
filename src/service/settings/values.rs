//! How the values of settings are written. Each parser says in its error what would be right.

use axum::http::HeaderValue;
use bytesize::ByteSize;
use ipnet::IpNet;
use jiff::SignedDuration;
use std::net::{IpAddr, SocketAddr};
use std::time::Duration;

const DAY: Duration = Duration::from_secs(24 * 60 * 60);

/// An address with a port: `127.0.0.1:8314`, `[::1]:0`.
pub fn address(text: &str) -> Result<SocketAddr, String> {
    text.parse().map_err(|_| "is not an address with a port, such as 127.0.0.1:8314".to_owned())
}

/// A duration up to a day: `500ms`, `10s`, `1m 30s`.
pub fn duration(text: &str) -> Result<Duration, String> {
    let duration = text.parse::<SignedDuration>().ok().and_then(|duration| duration.try_into().ok());
    duration
        .filter(|duration| *duration <= DAY)
        .ok_or_else(|| "is not a duration up to 24h, such as 500ms, 10s or 2m".to_owned())
}

/// A duration that is not zero.
pub fn timeout(text: &str) -> Result<Duration, String> {
    match duration(text)? {
        Duration::ZERO => Err("must be longer than zero".to_owned()),
        timeout => Ok(timeout),
    }
}

/// A size in bytes from 1 KiB to 64 MiB: `4096`, `512KiB`, `1MiB`.
pub fn size(text: &str) -> Result<usize, String> {
    let size = text.parse::<ByteSize>().ok().and_then(|size| usize::try_from(size.as_u64()).ok());
    size.filter(|bytes| (1024..=64 * 1024 * 1024).contains(bytes))
        .ok_or_else(|| "is not a size from 1KiB to 64MiB".to_owned())
}

/// A count from one to ten million.
pub fn count(text: &str) -> Result<u32, String> {
    let count = text.parse().ok().filter(|count| (1..=10_000_000).contains(count));
    count.ok_or_else(|| "is not a whole number from 1 to 10000000".to_owned())
}

/// A count, or `none`.
pub fn count_or_none(text: &str) -> Result<Option<u32>, String> {
    if text == "none" { Ok(None) } else { count(text).map(Some).map_err(|fault| format!("{fault}, or none")) }
}

/// An origin, as a browser sends it: scheme, host and port, nothing after it.
pub fn origin(text: &str) -> Result<HeaderValue, String> {
    let host = text.strip_prefix("https://").or_else(|| text.strip_prefix("http://"));
    let plain = |host: &&str| {
        !host.is_empty() && host.bytes().all(|byte| byte.is_ascii_alphanumeric() || b".-:[]".contains(&byte))
    };
    let origin = host.filter(plain).and_then(|_| text.to_ascii_lowercase().try_into().ok());
    origin.ok_or_else(|| "is not an origin, such as https://tools.example".to_owned())
}

/// A network, or one address: `10.0.0.0/8`, `::1`.
pub fn network(text: &str) -> Result<IpNet, String> {
    let network = text.parse().or_else(|_| text.parse::<IpAddr>().map(IpNet::from));
    network.map_err(|_| "is not an address or a network, such as 10.0.0.0/8".to_owned())
}

/// Whether an address is in a network, whichever way an address of version 4 is written.
pub fn contains(network: &IpNet, address: IpAddr) -> bool {
    let mapped = match address.to_canonical() {
        IpAddr::V4(address) => address.to_ipv6_mapped(),
        IpAddr::V6(address) => address,
    };
    network.contains(&address.to_canonical()) || network.contains(&IpAddr::V6(mapped))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn durations_sizes_and_counts_are_parsed_and_bounded() {
        assert_eq!(duration("500ms"), Ok(Duration::from_millis(500)));
        assert_eq!(duration("2m"), Ok(Duration::from_secs(120)));
        assert_eq!(duration("24h"), Ok(DAY));
        assert_eq!(duration("1.5s"), Ok(Duration::from_millis(1500)));
        for wrong in ["", "s", "5", "-1s", "25h", "99999999999999999999s", "18446744073709551615h"] {
            assert!(duration(wrong).is_err(), "{wrong}");
        }
        assert!(timeout("0s").is_err() && duration("0s").is_ok());
        assert_eq!(size("1MiB"), Ok(1_048_576));
        assert_eq!(size("2048"), Ok(2048));
        for wrong in ["", "1", "65MiB", "1 mile", "18446744073709551615MiB"] {
            assert!(size(wrong).is_err(), "{wrong}");
        }
        assert_eq!(count_or_none("none"), Ok(None));
        assert_eq!(count_or_none("5"), Ok(Some(5)));
        assert!(count("0").is_err() && count("10000001").is_err() && count("many").is_err());
    }

    #[test]
    fn origins_are_taken_as_browsers_send_them() {
        assert_eq!(origin("https://Tools.example:8443").unwrap(), "https://tools.example:8443");
        for wrong in ["*", "null", "https://", "https://a/b", "tools.example", "ftp://a", "https://a b"] {
            assert!(origin(wrong).is_err(), "{wrong}");
        }
    }

    #[test]
    fn a_network_contains_the_addresses_that_begin_like_it() {
        let holds = |text: &str, address: &str| contains(&network(text).unwrap(), address.parse().unwrap());
        assert!(holds("10.0.0.0/8", "10.200.3.4") && !holds("10.0.0.0/8", "11.0.0.1"));
        assert!(holds("127.0.0.1", "127.0.0.1") && !holds("127.0.0.1", "127.0.0.2"));
        assert!(holds("10.0.0.0/8", "::ffff:10.1.1.1"));
        assert!(holds("fd00::/8", "fd12::1") && !holds("fd00::/8", "fe80::1"));
        assert!(holds("0.0.0.0/0", "8.8.8.8") && !holds("0.0.0.0/0", "2001:db8::1"));
        assert!(holds("::/0", "8.8.8.8") && holds("::/0", "2001:db8::1"));
        for wrong in ["10.0.0.0/33", "::/129", "10.0.0", "a/8", "10.0.0.0/x"] {
            assert!(network(wrong).is_err(), "{wrong}");
        }
    }
}
