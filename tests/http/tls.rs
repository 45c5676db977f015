//! TLS with both versions of HTTP, and a certificate that is changed while the service runs.

use crate::access::TestFile;
use crate::process::Served;
use axum::body::Body;
use axum::http::{Request, StatusCode};
use hyper_util::rt::{TokioExecutor, TokioIo};
use std::fs;
use std::net::SocketAddr;
use std::sync::Arc;
use std::time::Duration;
use tokio::net::TcpStream;
use tokio_rustls::TlsConnector;
use tokio_rustls::client::TlsStream;
use tokio_rustls::rustls::crypto::ring;
use tokio_rustls::rustls::pki_types::{CertificateDer, ServerName};
use tokio_rustls::rustls::{ClientConfig, RootCertStore};

fn certificate() -> (CertificateDer<'static>, String, String) {
    let made = rcgen::generate_simple_self_signed(["localhost".to_owned()]).unwrap();
    (made.cert.der().clone(), made.cert.pem(), made.signing_key.serialize_pem())
}

async fn connect(
    address: SocketAddr,
    trusted: &CertificateDer<'static>,
    protocol: &[u8],
) -> std::io::Result<TlsStream<TcpStream>> {
    let mut roots = RootCertStore::empty();
    roots.add(trusted.clone()).unwrap();
    let mut config = ClientConfig::builder_with_provider(Arc::new(ring::default_provider()))
        .with_safe_default_protocol_versions()
        .unwrap()
        .with_root_certificates(roots)
        .with_no_client_auth();
    config.alpn_protocols = vec![protocol.to_vec()];
    let stream = TcpStream::connect(address).await?;
    let name = ServerName::try_from("localhost").unwrap();
    TlsConnector::from(Arc::new(config)).connect(name, stream).await
}

fn request(address: SocketAddr) -> Request<Body> {
    Request::get(format!("https://localhost:{}/v1/editions", address.port())).body(Body::empty()).unwrap()
}

#[tokio::test]
async fn both_versions_of_http_are_spoken_and_a_new_certificate_is_taken_up() {
    let (der, pem, key) = certificate();
    let (certificate_file, key_file) = (TestFile::new("chain.pem", &pem), TestFile::new("key.pem", &key));
    let files = ["--tls-certificate", certificate_file.path(), "--tls-key", key_file.path()];
    let served = Served::start(&[&["--bind", "127.0.0.1:0", "--header-timeout", "1s"], &files[..]].concat());
    assert!(served.line.contains("https://"), "{}", served.line);
    let address = served.address;

    let stream = connect(address, &der, b"h2").await.unwrap();
    let (mut sender, connection) =
        hyper::client::conn::http2::handshake(TokioExecutor::new(), TokioIo::new(stream)).await.unwrap();
    tokio::spawn(connection);
    let response = sender.send_request(request(address)).await.unwrap();
    assert_eq!((response.status(), response.version()), (StatusCode::OK, axum::http::Version::HTTP_2));
    assert!(response.headers().contains_key("strict-transport-security"));

    let stream = connect(address, &der, b"http/1.1").await.unwrap();
    let (mut sender, connection) = hyper::client::conn::http1::handshake(TokioIo::new(stream)).await.unwrap();
    tokio::spawn(connection);
    assert_eq!(sender.send_request(request(address)).await.unwrap().status(), StatusCode::OK);

    // a caller that does not go on with the handshake is cut off
    let mut silent = TcpStream::connect(address).await.unwrap();
    let mut byte = [0];
    let end =
        tokio::time::timeout(Duration::from_secs(4), tokio::io::AsyncReadExt::read(&mut silent, &mut byte));
    assert_eq!(end.await.expect("the connection is still open").unwrap_or(0), 0);

    let (new_der, new_pem, new_key) = certificate();
    fs::write(&certificate_file.0, "nonsense").unwrap();
    served.signal("HUP");
    tokio::time::sleep(Duration::from_millis(200)).await;
    assert!(connect(address, &der, b"h2").await.is_ok(), "a certificate with a fault is not taken up");
    fs::write(&certificate_file.0, new_pem).unwrap();
    fs::write(&key_file.0, new_key).unwrap();
    served.signal("HUP");
    tokio::time::sleep(Duration::from_millis(200)).await;
    assert!(connect(address, &new_der, b"h2").await.is_ok());
    assert!(connect(address, &der, b"h2").await.is_err());
}
