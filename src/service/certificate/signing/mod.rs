//! Signatures: detached JWS (RFC 7515, Appendix F) with Ed25519 (RFC 8037), and the set of public keys (RFC 7517).

use base64::Engine as _;
use base64::prelude::BASE64_URL_SAFE_NO_PAD as BASE64;
use ring::signature::{ED25519, Ed25519KeyPair, KeyPair as _, UnparsedPublicKey};
use serde::{Deserialize, Serialize};
use sha2::{Digest, Sha256};
use std::path::Path;
use std::{fmt, fs};
use tokio_rustls::rustls::pki_types::pem::{PemObject, SectionKind};
use utoipa::ToSchema;

/// The algorithm, as the header of a signature names it.
const ALGORITHM: &str = "EdDSA";

/// What stands before the 32 bytes of an Ed25519 key in its SubjectPublicKeyInfo (RFC 8410).
const PUBLIC_KEY_HEAD: [u8; 12] = [0x30, 0x2a, 0x30, 0x05, 0x06, 0x03, 0x2b, 0x65, 0x70, 0x03, 0x21, 0x00];

/// The keys of an operator: one that signs, and former ones that still verify. Without any, nothing is signed.
#[derive(Default)]
pub struct SigningKeys {
    signer: Option<Ed25519KeyPair>,
    /// Every public key, that of the signer first.
    known: Vec<PublicKey>,
}

impl fmt::Debug for SigningKeys {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let known: Vec<&str> = self.known.iter().map(|key| key.kid.as_str()).collect();
        f.debug_struct("SigningKeys").field("known", &known).finish_non_exhaustive()
    }
}

#[derive(Clone, Debug, PartialEq, Eq)]
struct PublicKey {
    bytes: Vec<u8>,
    kid: String,
}

impl PublicKey {
    fn of(bytes: &[u8]) -> Self {
        Self { bytes: bytes.to_owned(), kid: thumbprint(bytes) }
    }
}

/// The name of a key: its thumbprint (RFC 7638).
fn thumbprint(key: &[u8]) -> String {
    // the required members in order, nothing between them
    let members = format!(r#"{{"crv":"Ed25519","kty":"OKP","x":"{}"}}"#, BASE64.encode(key));
    BASE64.encode(Sha256::digest(members))
}

/// The protected header of a signature. Nothing else is understood in it.
#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Header {
    alg: String,
    kid: String,
}

/// What a signature is worth here.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Judged {
    /// It was made over this payload with a known key.
    Valid(String),
    /// It was not made over this payload with the key that it names, or is no signature.
    Invalid,
    /// It names a key that is not known here.
    UnknownKey(String),
}

impl SigningKeys {
    /// Reads the file of keys.
    ///
    /// # Errors
    ///
    /// Everything that is wrong with it. Nothing of a key is ever written out.
    pub fn open(path: &Path) -> Result<Self, Vec<String>> {
        let fault = |what: &dyn fmt::Display| format!("{}: {what}", path.display());
        let text = fs::read(path).map_err(|error| vec![fault(&error)])?;
        Self::read(&text).map_err(|faults| faults.iter().map(|what| fault(what)).collect())
    }

    /// Reads keys from PEM: one `PRIVATE KEY` (PKCS #8) that signs, and any number of `PUBLIC KEY` that only verify.
    ///
    /// # Errors
    ///
    /// Everything that is wrong: no private key or several, a key that is not an Ed25519 key, one that stands twice, a section
    /// that is no key.
    pub fn read(pem: &[u8]) -> Result<Self, Vec<String>> {
        let (mut signer, mut retired, mut faults) = (None::<Ed25519KeyPair>, Vec::new(), Vec::new());
        for (index, section) in <(SectionKind, Vec<u8>)>::pem_slice_iter(pem).enumerate() {
            let mut fault = |what: &str| faults.push(format!("section {}: {what}", index + 1));
            match section {
                Ok((SectionKind::PrivateKey, _)) if signer.is_some() => {
                    fault("a second private key; one signs")
                }
                Ok((SectionKind::PrivateKey, der)) => {
                    match Ed25519KeyPair::from_pkcs8_maybe_unchecked(&der) {
                        Ok(pair) => signer = Some(pair),
                        Err(_) => fault("the private key is not an Ed25519 key"),
                    }
                }
                Ok((SectionKind::PublicKey, der)) => match der.strip_prefix(&PUBLIC_KEY_HEAD) {
                    Some(key) if key.len() == 32 => retired.push(PublicKey::of(key)),
                    _ => fault("the public key is not an Ed25519 key"),
                },
                Ok(_) => fault("neither PRIVATE KEY (PKCS #8) nor PUBLIC KEY"),
                Err(_) => {
                    fault("cannot be read as PEM");
                    break;
                }
            }
        }
        let of_the_signer = signer.iter().map(|pair| PublicKey::of(pair.public_key().as_ref()));
        let mut known: Vec<PublicKey> = of_the_signer.collect();
        for key in retired {
            if known.contains(&key) {
                faults.push(format!("the key {} is there twice", key.kid));
            } else {
                known.push(key);
            }
        }
        if signer.is_none() && faults.is_empty() {
            faults.push("has no PRIVATE KEY (PKCS #8, Ed25519)".to_owned());
        }
        if faults.is_empty() { Ok(Self { signer, known }) } else { Err(faults) }
    }

    /// The signature of a payload, as a compact JWS whose payload is left out; `None` without a key.
    pub fn sign(&self, payload: &[u8]) -> Option<String> {
        let (pair, key) = self.signer.as_ref().zip(self.known.first())?;
        let header = Header { alg: ALGORITHM.to_owned(), kid: key.kid.clone() };
        let header = BASE64.encode(serde_json::to_vec(&header).ok()?);
        let signature = pair.sign(&signing_input(&header, payload));
        Some(format!("{header}..{}", BASE64.encode(signature)))
    }

    /// What a signature is worth for a payload.
    pub fn judge(&self, signature: &str, payload: &[u8]) -> Judged {
        let Some((header, signature, kid)) = parts(signature) else { return Judged::Invalid };
        let Some(key) = self.known.iter().find(|key| key.kid == kid) else { return Judged::UnknownKey(kid) };
        let input = signing_input(header, payload);
        let verified = UnparsedPublicKey::new(&ED25519, &key.bytes).verify(&input, &signature);
        verified.map_or(Judged::Invalid, |()| Judged::Valid(kid))
    }

    /// The public keys.
    pub fn jwk_set(&self) -> JwkSet {
        let jwk = |key: &PublicKey| Jwk {
            kty: "OKP",
            crv: "Ed25519",
            alg: ALGORITHM,
            usage: "sig",
            kid: key.kid.clone(),
            x: BASE64.encode(&key.bytes),
        };
        JwkSet { keys: self.known.iter().map(jwk).collect() }
    }
}

/// The header, the bytes of the signature and the name of the key; `None` for what is no detached JWS of ours.
fn parts(signature: &str) -> Option<(&str, Vec<u8>, String)> {
    let (header, bytes) = signature.split_once("..")?;
    let Header { alg, kid } = serde_json::from_slice(&BASE64.decode(header).ok()?).ok()?;
    let bytes = BASE64.decode(bytes).ok()?;
    (alg == ALGORITHM && bytes.len() == 64).then_some((header, bytes, kid))
}

fn signing_input(header: &str, payload: &[u8]) -> Vec<u8> {
    format!("{header}.{}", BASE64.encode(payload)).into_bytes()
}

/// A set of public keys (RFC 7517): that which signs first, then former ones. Empty when certificates are not signed.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct JwkSet {
    /// The keys.
    keys: Vec<Jwk>,
}

/// A public key (RFC 8037).
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct Jwk {
    /// The kind of key.
    #[schema(value_type = String, example = "OKP")]
    kty: &'static str,
    /// The curve.
    #[schema(value_type = String, example = "Ed25519")]
    crv: &'static str,
    /// The algorithm.
    #[schema(value_type = String, example = "EdDSA")]
    alg: &'static str,
    /// What it is for: signatures.
    #[serde(rename = "use")]
    #[schema(value_type = String, example = "sig")]
    usage: &'static str,
    /// Its name: its thumbprint (RFC 7638).
    #[schema(example = "kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k")]
    kid: String,
    /// The key, in base64url.
    #[schema(example = "11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo")]
    x: String,
}

#[cfg(test)]
mod tests;
