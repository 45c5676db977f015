//! Reads the file of keys. A fault never holds a hash.
//!
//! ```toml
//! [[key]]
//! name = "estimating"
//! sha256 = "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08"
//! scopes = ["outlet_box_fill"]    # ["*"] for all
//! quota_per_minute = 600          # optional
//! expires = 2027-01-31T00:00:00Z  # optional
//! ```

use super::{EVERY_SCOPE, Key, timestamp};
use crate::service::fault_list::nearest;
use std::collections::HashSet;
use toml::{Table, Value};

/// Parses the keys, which may have the scopes given; or says everything that is wrong.
pub fn read(text: &str, scopes: &[String]) -> Result<Vec<Key>, Vec<String>> {
    // the message alone: the parser would show the line, and that may hold a hash
    let table: Table =
        text.parse().map_err(|error: toml::de::Error| vec![format!("keys file: {}", error.message())])?;
    let mut faults = Vec::new();
    for member in table.keys().filter(|member| *member != "key") {
        faults.push(format!("keys file: unknown member {member}; did you mean [[key]]?"));
    }
    let tables = table.get("key").and_then(Value::as_array).map_or(&[][..], Vec::as_slice);
    let mut keys = Vec::new();
    let (mut names, mut hashes) = (HashSet::new(), HashSet::new());
    for (index, value) in tables.iter().enumerate() {
        let empty = Table::new();
        let table = value.as_table().unwrap_or(&empty);
        let name = table.get("name").and_then(Value::as_str);
        let label = name.map_or_else(|| format!("key {}", index + 1), |name| format!("key {name:?}"));
        let mut fault = |what: &str| faults.push(format!("keys file: {label}: {what}"));
        let key = parse(table, scopes, &mut fault);
        if name.is_some_and(|name| !names.insert(name.to_owned())) {
            fault("the name is used twice");
        }
        if key.as_ref().is_some_and(|key| !hashes.insert(key.hash)) {
            fault("the hash is used twice");
        }
        keys.extend(key);
    }
    if tables.is_empty() {
        faults.push("keys file: there is no key".to_owned());
    }
    if faults.is_empty() { Ok(keys) } else { Err(faults) }
}

fn parse(table: &Table, scopes: &[String], fault: &mut impl FnMut(&str)) -> Option<Key> {
    const MEMBERS: [&str; 5] = ["name", "sha256", "scopes", "quota_per_minute", "expires"];
    for member in table.keys().filter(|member| !MEMBERS.contains(&member.as_str())) {
        let hint = nearest(member, MEMBERS.into_iter()).map(|near| format!("; did you mean {near}?"));
        fault(&format!("unknown member {member}{}", hint.unwrap_or_default()));
    }
    let name = table.get("name").and_then(Value::as_str).filter(|name| is_name(name));
    if name.is_none() {
        fault("name is 1 to 64 letters, digits, '.', '_' or '-'");
    }
    let hash = table.get("sha256").and_then(Value::as_str).and_then(hash);
    if hash.is_none() {
        fault("sha256 is 64 hexadecimal digits");
    }
    let quota = match table.get("quota_per_minute").map(Value::as_integer) {
        None => Some(None),
        Some(given) => given
            .and_then(|given| u32::try_from(given).ok())
            .filter(|quota| (1..=10_000_000).contains(quota))
            .map(Some),
    };
    if quota.is_none() {
        fault("quota_per_minute is a whole number from 1 to 10000000");
    }
    let expires = match table.get("expires") {
        None => Some(None),
        Some(Value::Datetime(date)) => timestamp::parse(&date.to_string()).map(Some),
        Some(_) => None,
    };
    if expires.is_none() {
        fault("expires is a date, or a date with time and offset, without quotes");
    }
    let given = table.get("scopes").and_then(Value::as_array).map_or(&[][..], Vec::as_slice);
    let given: Vec<&str> = given.iter().filter_map(Value::as_str).collect();
    if given.is_empty() {
        fault("scopes is a list of what the key is for; [\"*\"] for everything");
    }
    for scope in &given {
        if let Some(wrong) = scope_fault(scope, scopes) {
            fault(&wrong);
        }
    }
    Some(Key {
        name: name?.to_owned(),
        hash: hash?,
        scopes: given.into_iter().map(str::to_owned).collect(),
        quota: quota?,
        expires: expires?,
        bucket: Default::default(),
    })
}

/// Whether a key may have a name: it is logged, and stands in quotes.
pub fn is_name(name: &str) -> bool {
    let plain = |byte: u8| byte.is_ascii_alphanumeric() || b"._-".contains(&byte);
    (1..=64).contains(&name.len()) && name.bytes().all(plain)
}

/// What is wrong with a scope.
pub fn scope_fault(scope: &str, known: &[String]) -> Option<String> {
    if scope == EVERY_SCOPE || known.iter().any(|known| known == scope) {
        return None;
    }
    let near = nearest(scope, known.iter().map(String::as_str));
    let hint = near.map(|near| format!("; did you mean {near}?")).unwrap_or_default();
    Some(format!("unknown scope {scope:?}{hint}"))
}

fn hash(text: &str) -> Option<[u8; 32]> {
    if text.len() != 64 || !text.bytes().all(|byte| byte.is_ascii_hexdigit()) {
        return None;
    }
    let mut hash = [0; 32];
    for (index, byte) in hash.iter_mut().enumerate() {
        *byte = u8::from_str_radix(text.get(2 * index..2 * index + 2)?, 16).ok()?;
    }
    Some(hash)
}
