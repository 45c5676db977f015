//! TLS: a certificate and its key, read again when their files change.

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::{Arc, PoisonError, RwLock};
use std::time::SystemTime;
use tokio_rustls::TlsAcceptor;
use tokio_rustls::rustls::ServerConfig;
use tokio_rustls::rustls::crypto::ring;
use tokio_rustls::rustls::pki_types::pem::PemObject;
use tokio_rustls::rustls::pki_types::{CertificateDer, PrivateKeyDer};

/// Certificate and key of TLS.
#[derive(Debug)]
pub struct Tls {
    files: Files,
    config: RwLock<Arc<ServerConfig>>,
    seen: RwLock<[Option<SystemTime>; 2]>,
}

#[derive(Debug)]
struct Files {
    certificate: PathBuf,
    key: PathBuf,
}

impl Tls {
    /// Reads certificate and key; or says what is wrong with them.
    pub fn open(certificate: PathBuf, key: PathBuf) -> Result<Self, String> {
        let files = Files { certificate, key };
        let seen = RwLock::new(stamps(&files));
        let config = RwLock::new(Arc::new(read(&files)?));
        Ok(Self { files, config, seen })
    }

    /// Reads the files again. With a fault in them, things stay as they are.
    pub fn reload(&self) -> Result<(), String> {
        let config = Arc::new(read(&self.files)?);
        *self.config.write().unwrap_or_else(PoisonError::into_inner) = config;
        Ok(())
    }

    /// Whether the files are others than when this was last asked.
    pub fn has_changed(&self) -> bool {
        let now = stamps(&self.files);
        let mut seen = self.seen.write().unwrap_or_else(PoisonError::into_inner);
        std::mem::replace(&mut *seen, now) != now
    }

    /// What a handshake is made with.
    pub fn acceptor(&self) -> TlsAcceptor {
        Arc::clone(&self.config.read().unwrap_or_else(PoisonError::into_inner)).into()
    }
}

fn stamps(files: &Files) -> [Option<SystemTime>; 2] {
    let stamp = |path: &Path| fs::metadata(path).and_then(|file| file.modified()).ok();
    [stamp(&files.certificate), stamp(&files.key)]
}

fn read(files: &Files) -> Result<ServerConfig, String> {
    let fault = |path: &Path, error: &dyn std::fmt::Display| format!("{}: {error}", path.display());
    let chain: Vec<CertificateDer<'static>> = CertificateDer::pem_file_iter(&files.certificate)
        .and_then(Iterator::collect)
        .map_err(|error| fault(&files.certificate, &error))?;
    if chain.is_empty() {
        return Err(fault(&files.certificate, &"holds no certificate"));
    }
    // the reason alone: nothing of a key is ever written out
    let key = PrivateKeyDer::from_pem_file(&files.key)
        .map_err(|_| fault(&files.key, &"holds no private key (PEM)"))?;
    let mut config = ServerConfig::builder_with_provider(Arc::new(ring::default_provider()))
        .with_safe_default_protocol_versions()
        .map_err(|error| error.to_string())?
        .with_no_client_auth()
        .with_single_cert(chain, key)
        .map_err(|error| fault(&files.certificate, &error))?;
    config.alpn_protocols = vec![b"h2".to_vec(), b"http/1.1".to_vec()];
    Ok(config)
}
