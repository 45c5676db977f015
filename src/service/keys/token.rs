//! Makes a key.

use jiff::Timestamp;
use sha2::digest::Output;
use sha2::{Digest, Sha256};
use std::fmt::Write as _;
use tokio_rustls::rustls::crypto::ring;

/// What a new key is to have.
#[derive(Clone, Debug)]
pub struct NewKey {
    /// The name.
    pub name: String,
    /// What it may be used for.
    pub scopes: Vec<String>,
    /// Requests a minute.
    pub quota: Option<u32>,
    /// When it expires.
    pub expires: Option<Timestamp>,
}

/// A token that was just made, and what the file says of it.
pub struct MadeKey {
    /// The token: it is shown once and kept nowhere.
    pub token: String,
    /// The lines for the file.
    pub lines: String,
}

/// Makes a token of 256 random bits; `None` when the operating system gives none.
pub fn make(key: &NewKey) -> Option<MadeKey> {
    let mut bits = Output::<Sha256>::default();
    ring::default_provider().secure_random.fill(&mut bits).ok()?;
    let token = format!("elbowroom_{bits:x}");
    let quoted = |text: &String| toml::Value::String(text.clone()).to_string();
    let scopes: Vec<String> = key.scopes.iter().map(quoted).collect();
    let mut lines = format!(
        "[[key]]\nname = {}\nsha256 = \"{:x}\"\nscopes = [{}]\n",
        quoted(&key.name),
        Sha256::digest(&token),
        scopes.join(", ")
    );
    // writing to a String cannot fail
    if let Some(quota) = key.quota {
        let _ = writeln!(lines, "quota_per_minute = {quota}");
    }
    if let Some(expires) = key.expires {
        let _ = writeln!(lines, "expires = {expires}");
    }
    Some(MadeKey { token, lines })
}
