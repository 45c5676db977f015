//! Client address: that of the other end, or the one in X-Forwarded-For of a trusted proxy.

use super::settings::values;
use axum::http::{HeaderMap, HeaderName};
use ipnet::IpNet;
use std::net::{IpAddr, Ipv4Addr, Ipv6Addr};

const FORWARDED_FOR: HeaderName = HeaderName::from_static("x-forwarded-for");

/// The address of the other end of the connection, as the listener leaves it with a request.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Peer(pub IpAddr);

/// Part of an address that one caller is taken to have: all of version 4; of version 6 the first half, for a caller with one
/// address has 2⁶⁴ of them.
pub fn of(peer: Option<Peer>, headers: &HeaderMap, trusted: &[IpNet]) -> IpAddr {
    let peer = peer.map_or(IpAddr::V4(Ipv4Addr::UNSPECIFIED), |peer| peer.0);
    let address = if trusted.is_empty() { peer } else { forwarded(peer, headers, trusted) };
    match address.to_canonical() {
        IpAddr::V6(address) => IpAddr::V6(Ipv6Addr::from_bits(address.to_bits() & !u128::from(u64::MAX))),
        address => address,
    }
}

/// The last address of the chain that no trusted proxy has. What stands before it is what the caller says of itself.
fn forwarded(peer: IpAddr, headers: &HeaderMap, trusted: &[IpNet]) -> IpAddr {
    let is_trusted = |address: IpAddr| trusted.iter().any(|network| values::contains(network, address));
    let mut address = peer;
    let lines = headers.get_all(FORWARDED_FOR).iter().collect::<Vec<_>>();
    let lines = lines.iter().rev().filter_map(|line| line.to_str().ok());
    let mut chain = lines.flat_map(|line| line.rsplit(',')).map_while(|hop| hop.trim().parse().ok());
    while is_trusted(address)
        && let Some(hop) = chain.next()
    {
        address = hop;
    }
    address
}

#[cfg(test)]
mod tests {
    use super::*;

    fn called(peer: &str, forwarded: &[&str], trusted: &[&str]) -> String {
        let lines = forwarded.iter().map(|line| (FORWARDED_FOR, line.parse().unwrap()));
        let trusted: Vec<IpNet> = trusted.iter().map(|network| values::network(network).unwrap()).collect();
        of(Some(Peer(peer.parse().unwrap())), &lines.collect(), &trusted).to_string()
    }

    #[test]
    fn only_trusted_proxies_are_believed_and_only_about_their_own_callers() {
        assert_eq!(called("10.0.0.1", &["192.0.2.1"], &[]), "10.0.0.1");
        assert_eq!(called("10.0.0.1", &["192.0.2.1"], &["10.0.0.0/8"]), "192.0.2.1");
        assert_eq!(called("192.0.2.9", &["192.0.2.1"], &["10.0.0.0/8"]), "192.0.2.9");
        assert_eq!(called("10.0.0.1", &["6.6.6.6, 192.0.2.1, 10.0.0.2"], &["10.0.0.0/8"]), "192.0.2.1");
        assert_eq!(called("10.0.0.1", &["6.6.6.6", "192.0.2.1"], &["10.0.0.0/8"]), "192.0.2.1");
        assert_eq!(called("10.0.0.1", &["192.0.2.1, nonsense"], &["10.0.0.0/8"]), "10.0.0.1");
        assert_eq!(called("10.0.0.1", &[], &["10.0.0.0/8"]), "10.0.0.1");
    }

    #[test]
    fn the_first_half_of_a_version_6_address_is_one_caller() {
        assert_eq!(called("2001:db8::1", &[], &[]), called("2001:db8::ffff:1", &[], &[]));
        assert_ne!(called("2001:db8::1", &[], &[]), called("2001:db8:0:1::1", &[], &[]));
        assert_eq!(called("::ffff:192.0.2.1", &[], &[]), "192.0.2.1");
    }
}
