//! API keys: authentication by token, authorization by scope, and a rate limit for each.
//!
//! A token is 256 random bits, so it is kept as its plain SHA-256: there is nothing to guess, and a slow hash — which
//! protects words that people choose — would only make every request expensive. A reader of the file cannot call the service.
//!
//! | module | what it is for |
//! |---|---|
//! | [`file`] | reading the file of keys, with every fault |
//! | [`token`] | making a key |
//! | [`timestamp`] | when a key expires |

pub mod file;
pub mod timestamp;
pub mod token;

use super::rate_limit::Bucket;
use jiff::Timestamp;
use sha2::{Digest, Sha256};
use std::collections::HashMap;
use std::path::{Path, PathBuf};
use std::sync::{Arc, PoisonError, RwLock};
use std::time::SystemTime;
use std::{fs, io};
use subtle::ConstantTimeEq;

/// The scope that stands for every other.
pub const EVERY_SCOPE: &str = "*";

/// A key, without its token.
#[derive(Debug)]
pub struct Key {
    /// The name that is logged.
    pub name: String,
    /// SHA-256 of the token.
    pub hash: [u8; 32],
    /// What it may be used for.
    pub scopes: Vec<String>,
    /// Requests a minute; any number when absent.
    pub quota: Option<u32>,
    /// When it expires.
    pub expires: Option<Timestamp>,
    /// What is left of the quota.
    pub bucket: Arc<Bucket>,
}

impl Key {
    /// Whether it may be used for something.
    pub fn covers(&self, scope: &str) -> bool {
        self.scopes.iter().any(|known| known == scope || known == EVERY_SCOPE)
    }
}

/// Why authentication fails.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum AuthenticationError {
    /// There is no key.
    Missing,
    /// It is none of the keys.
    Unknown,
    /// It has expired.
    Expired,
}

/// The keys of a file.
#[derive(Debug, Default)]
pub struct Keys {
    by_hash: HashMap<[u8; 8], Vec<Arc<Key>>>,
    count: usize,
}

impl Keys {
    /// Takes up keys; one that was there before, by its name, goes on with what is left of its quota.
    fn new(keys: Vec<Key>, before: &Self) -> Self {
        let known: HashMap<&str, &Arc<Key>> =
            before.by_hash.values().flatten().map(|key| (key.name.as_str(), key)).collect();
        let mut taken = Self { count: keys.len(), ..Self::default() };
        for mut key in keys {
            if let Some(before) = known.get(key.name.as_str()) {
                key.bucket = Arc::clone(&before.bucket);
            }
            taken.by_hash.entry(start(&key.hash)).or_default().push(Arc::new(key));
        }
        taken
    }

    /// The key of a token.
    ///
    /// The table is entered by the beginning of a hash. How long that takes tells nothing of a token: a caller cannot
    /// choose hashes, only tokens. The whole hash is then compared in constant time.
    fn find(&self, token: &[u8]) -> Option<&Arc<Key>> {
        let hash: [u8; 32] = Sha256::digest(token).into();
        let near = self.by_hash.get(&start(&hash))?;
        near.iter().find(|key| bool::from(key.hash.ct_eq(&hash)))
    }
}

fn start(hash: &[u8; 32]) -> [u8; 8] {
    let mut start = [0; 8];
    start.copy_from_slice(&hash[..8]);
    start
}

/// The keys that are in force, read again when their file changes.
#[derive(Debug)]
pub struct KeyRing {
    path: PathBuf,
    scopes: Vec<String>,
    keys: RwLock<Arc<Keys>>,
    seen: RwLock<Option<(SystemTime, u64)>>,
}

impl KeyRing {
    /// Reads the keys of a file, which may have the scopes given; or says every fault.
    pub fn open(path: &Path, scopes: Vec<String>) -> Result<Self, Vec<String>> {
        let seen = RwLock::new(stamp(path).ok());
        let ring = Self { path: path.to_owned(), scopes, keys: RwLock::default(), seen };
        ring.reload()?;
        Ok(ring)
    }

    /// Reads the file again. With a fault in it, the keys stay as they are.
    pub fn reload(&self) -> Result<usize, Vec<String>> {
        let text = fs::read_to_string(&self.path)
            .map_err(|error| vec![format!("keys file: {}: {error}", self.path.display())])?;
        let read = file::read(&text, &self.scopes)?;
        let mut keys = self.keys.write().unwrap_or_else(PoisonError::into_inner);
        *keys = Arc::new(Keys::new(read, &keys));
        Ok(keys.count)
    }

    /// Whether the file is another than when this was last asked.
    pub fn has_changed(&self) -> bool {
        let Ok(now) = stamp(&self.path) else { return false };
        let mut seen = self.seen.write().unwrap_or_else(PoisonError::into_inner);
        seen.replace(now) != Some(now)
    }

    /// The key of a caller, by the value of its Authorization header.
    pub fn authenticate(&self, authorization: Option<&[u8]>) -> Result<Arc<Key>, AuthenticationError> {
        let token = authorization.ok_or(AuthenticationError::Missing)?;
        let (scheme, token) = token.split_at_checked(7).ok_or(AuthenticationError::Missing)?;
        if !scheme.eq_ignore_ascii_case(b"bearer ") {
            return Err(AuthenticationError::Missing);
        }
        let keys = Arc::clone(&self.keys.read().unwrap_or_else(PoisonError::into_inner));
        let key = keys.find(token.trim_ascii()).ok_or(AuthenticationError::Unknown)?;
        match key.expires {
            Some(end) if Timestamp::now() >= end => Err(AuthenticationError::Expired),
            _ => Ok(Arc::clone(key)),
        }
    }
}

fn stamp(path: &Path) -> io::Result<(SystemTime, u64)> {
    let file = fs::metadata(path)?;
    Ok((file.modified()?, file.len()))
}
