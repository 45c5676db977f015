//! Certificates: a request and its answer in one document that a stranger can check.
//!
//! Nothing is kept and there is no clock: the holder of a certificate sends it back, and it is computed again.

mod canonical;
mod differences;
mod form;
mod page;
pub mod signing;
mod verification;

pub use canonical::{canonical, sha256};
pub use form::{Certificate, CertifyRequest, Fingerprint};
pub use page::STYLE as PAGE_STYLE;
pub use signing::SigningKeys;
pub use verification::Verification;

use super::access::Authorization;
use super::body;
use super::check_route::{answered, receive};
use super::document::Document;
use super::fault_list::{FaultList, FaultView};
use super::media;
use super::problem::{Problem, ProblemKind};
use super::query;
use super::register::{CHECKS, CheckEntry};
use super::state::Service;
use crate::checks::FaultCode;
use axum::body::Bytes;
use axum::extract::{Request, State};
use axum::http::{HeaderValue, header};
use axum::response::Response;
use page::CertificatePage;
use serde::de::DeserializeOwned;
use signing::JwkSet;
use std::sync::Arc;
use utoipa::ToSchema;
use utoipa_axum::router::OpenApiRouter;
use utoipa_axum::routes;

/// The routes.
pub fn routes() -> OpenApiRouter<Arc<Service>> {
    OpenApiRouter::default().routes(routes!(certify)).routes(routes!(verify)).routes(routes!(signing_keys))
}

/// The body of a request to one of these operations, and what its caller may ask.
async fn received(service: &Service, request: Request) -> Result<(Authorization, Bytes), Problem> {
    query::none(request.uri().query())?;
    let authorization = Authorization::of(&request);
    let (parts, body) = request.into_parts();
    media::sends_json(&parts.headers)?;
    Ok((authorization, receive(body, service.limits).await?))
}

/// A body that was read, and the check that it names and that may be made.
fn read<T: DeserializeOwned + ToSchema>(
    bytes: &[u8],
    authorization: &Authorization,
    named: impl Fn(&T) -> &str,
) -> Result<(T, &'static CheckEntry), Problem> {
    let read = body::read_as::<T>(bytes)?;
    let Some(check) = CheckEntry::named(named(&read)) else {
        let fault =
            FaultView::in_body("/check".to_owned(), FaultCode::UnknownReference, "fault-unknown-check", []);
        let known = CHECKS.iter().map(|check| check.name);
        return Err(Problem::invalid(FaultList::of(fault.accepting(known, Some(named(&read))))));
    };
    authorization.covers(check.name)?;
    Ok((read, check))
}

/// Runs some work in the worker pool: a body of the largest size takes time and memory, so only a few run at a time.
async fn in_worker_pool<T: Send + 'static>(
    service: Arc<Service>,
    work: impl FnOnce(&Service) -> Result<T, Problem> + Send + 'static,
) -> Result<T, Problem> {
    let pool = service.worker_pool.clone();
    let running = pool.spawn(move || work(&service)).await.ok_or_else(Problem::internal)?;
    running.await.map_err(|_| Problem::internal())?
}

/// A result with its certificate
///
/// Answers a request of any check and certifies the answer: the request, the answer with its whole proof, and the
/// fingerprints of both, signed where the operator has a key. The same request under the same rules gives the same bytes, so
/// that anyone can have it verified later. As `text/html` it is a page to print that holds the certificate as well. A
/// certificate says how figures were computed. It approves nothing.
#[utoipa::path(
    post, path = "/v1/results/certify", tag = "Certificates", operation_id = "certify",
    request_body(content = CertifyRequest, description = "The check and its request."),
    responses((status = 200, description = "The certificate, whatever the verdict.", content(
        (Certificate = "application/json"),
        (CertificatePage = "text/html"),
    ))),
)]
async fn certify(State(service): State<Arc<Service>>, request: Request) -> Result<Response, Problem> {
    let offered = [media::JSON, media::HTML];
    let form = media::chosen(request.headers(), &offered, "problem-detail-not-acceptable-page")?;
    let (authorization, bytes) = received(&service, request).await?;
    let issued = in_worker_pool(service, move |service| {
        let (CertifyRequest { request, .. }, check) =
            read(&bytes, &authorization, |asked: &CertifyRequest| &asked.check)?;
        let (certificate, answered) = Certificate::issue(check, request, &service.signing_keys)?;
        service.metrics().verdict(check.name, answered.verdict);
        let json = serde_json::to_vec(&certificate).map_err(|_| Problem::internal())?;
        let most = service.limits.max_body_size;
        if json.len() > most {
            // it could not be sent back to be verified
            let (key, named) = ("problem-detail-certificate-too-large", [("most", most.to_string())]);
            return Err(Problem::new(ProblemKind::BodyTooLarge, key, named));
        }
        if form == 0 { Ok(json) } else { page::write(check, &certificate).map(String::into_bytes) }
    });
    let text = issued.await?;
    let mut response = if form == 0 { answered(text) } else { page::served(text) };
    response.headers_mut().insert(header::VARY, HeaderValue::from_static("accept, accept-language"));
    Ok(response)
}

/// Whether a certificate is what it says
///
/// Computes a certificate again. `reproduced`: this service gives the same answer to the same request, to the byte of the
/// canonical form. `altered`: it does not, or the certificate contradicts itself, and it is said where. `other_ruleset`: it was
/// made under other rules, and it is said what today's answer is and where the two differ. What the signature is worth is
/// told beside it: without a valid one a certificate under other rules cannot be told from one that was made up.
#[utoipa::path(
    post, path = "/v1/results/verify", tag = "Certificates", operation_id = "verify",
    request_body(content = Certificate, description = "The certificate."),
    responses((status = 200, description = "What was found.", body = Verification)),
)]
async fn verify(State(service): State<Arc<Service>>, request: Request) -> Result<Response, Problem> {
    media::takes_json(request.headers())?;
    let (authorization, bytes) = received(&service, request).await?;
    let text = in_worker_pool(service, move |service| {
        let (certificate, check) =
            read(&bytes, &authorization, |certificate: &Certificate| &certificate.check)?;
        let found = Verification::of(check, &certificate, &service.signing_keys)?;
        serde_json::to_vec(&found).map_err(|_| Problem::internal())
    });
    text.await.map(answered)
}

/// The public keys of signatures
///
/// A JWK Set (RFC 7517) with the key that signs certificates, and former keys which still verify them; empty where
/// certificates are not signed. A caller that meets the name of a key that is not in a copy asks again.
#[utoipa::path(
    get, path = "/v1/signing-keys", tag = "Certificates", operation_id = "signing_keys",
    responses((status = 200, description = "The keys.", body = JwkSet)),
)]
async fn signing_keys(State(service): State<Arc<Service>>, request: Request) -> Result<Response, Problem> {
    query::none(request.uri().query())?;
    let document = Document::new(&service.signing_keys.jwk_set()).map_err(|_| Problem::internal())?;
    document.respond(request.headers())
}
