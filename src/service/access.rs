//! Access control: the concurrency limit, authentication by API key, authorization by its scopes, the rate limit.

use super::client_address::{self, Peer};
use super::concurrency_limit::RequestPermit;
use super::ingress::Ingress;
use super::keys::{AuthenticationError, Key};
use super::operations::{Need, Operation};
use super::problem::{Problem, ProblemKind};
use super::rate_limit::Allowance;
use super::telemetry::metrics::TurnedAway;
use axum::extract::Request;
use axum::http::{HeaderMap, HeaderName, HeaderValue, header};
use axum::response::{IntoResponse, Response};
use std::sync::Arc;

/// What is left of a quota.
pub const RATE_LIMIT: HeaderName = HeaderName::from_static("ratelimit");
/// The quota.
pub const RATE_LIMIT_POLICY: HeaderName = HeaderName::from_static("ratelimit-policy");

/// A request that is granted access.
#[derive(Debug)]
pub struct Granted {
    /// Counts it among those that are answered.
    pub permit: RequestPermit,
    /// The key of its caller.
    pub key: Option<Arc<Key>>,
    /// The quota that it counted against.
    pub quota: Option<Quota>,
}

/// A quota and what is left of it.
#[derive(Clone, Copy, Debug)]
pub struct Quota {
    name: &'static str,
    per_minute: u32,
    left: Allowance,
}

impl Quota {
    /// Writes into the headers of an answer what is left (RateLimit header fields for HTTP, draft 10 of the IETF).
    pub fn write(self, headers: &mut HeaderMap) {
        let Self { name, per_minute, left } = self;
        // of both texts every byte is plain
        if let Ok(policy) = format!("\"{name}\";q={per_minute};w=60").try_into() {
            headers.insert(RATE_LIMIT_POLICY, policy);
        }
        if let Ok(limit) = format!("\"{name}\";r={};t={}", left.remaining, left.full_in).try_into() {
            headers.insert(RATE_LIMIT, limit);
        }
    }
}

/// Grants a request access, or answers it with the refusal.
pub fn check(ingress: &Ingress, request: &Request, operation: &Operation) -> Result<Granted, Box<Response>> {
    let turned_away = |reason| ingress.metrics.turned_away(reason);
    let Some(permit) = ingress.concurrency.acquire(operation.always) else {
        turned_away(TurnedAway::Busy);
        let problem = Problem::new(ProblemKind::Overloaded, "problem-detail-overloaded", []);
        return Err(Box::new(([(header::RETRY_AFTER, "1")], problem).into_response()));
    };
    let asked = ingress.keys.as_ref().filter(|_| operation.need != Need::Nothing);
    let key = asked.map(|keys| {
        keys.authenticate(request.headers().get(header::AUTHORIZATION).map(HeaderValue::as_bytes))
    });
    let quota = match &key {
        Some(Ok(key)) => {
            key.quota.map(|per_minute| Quota { name: "key", per_minute, left: key.bucket.take(per_minute) })
        }
        // callers without a key count by address, refused or not
        _ if operation.always => None,
        _ => ingress.addresses.as_ref().map(|buckets| {
            let peer = request.extensions().get::<Peer>().copied();
            let address = client_address::of(peer, request.headers(), &ingress.trusted_proxies);
            Quota { name: "address", per_minute: buckets.per_minute(), left: buckets.take(address) }
        }),
    };
    if let Some(quota) = quota.filter(|quota| !quota.left.passes) {
        turned_away(if quota.name == "key" { TurnedAway::KeyQuota } else { TurnedAway::AddressRate });
        return Err(Box::new(too_many(quota)));
    }
    let key = key.transpose().map_err(|error| {
        turned_away(TurnedAway::Key);
        Box::new(unauthorized(error))
    })?;
    if let Some(key) = key.as_ref().filter(|key| operation.need == Need::Scope && !key.covers(&operation.id))
    {
        turned_away(TurnedAway::Scope);
        return Err(Box::new(not_covered(key, &operation.id).into_response()));
    }
    Ok(Granted { permit, key, quota })
}

/// What the key of a request allows: for operations that evaluate checks of the caller's choice.
#[derive(Clone, Debug, Default)]
pub struct Authorization(Option<Arc<Key>>);

impl Authorization {
    /// That of a request which was granted access.
    pub fn of(request: &Request) -> Self {
        Self(request.extensions().get::<Arc<Key>>().cloned())
    }

    /// Requires that a check may be evaluated; where no keys are required, every one may.
    ///
    /// # Errors
    ///
    /// The problem `forbidden`.
    pub fn covers(&self, check: &str) -> Result<(), Problem> {
        match &self.0 {
            Some(key) if !key.covers(check) => Err(not_covered(key, check)),
            _ => Ok(()),
        }
    }
}

fn not_covered(key: &Key, scope: &str) -> Problem {
    let arguments = [("name", key.name.clone()), ("scope", scope.to_owned())];
    Problem::new(ProblemKind::Forbidden, "problem-detail-forbidden", arguments)
}

fn too_many(quota: Quota) -> Response {
    let wait = quota.left.wait.to_string();
    let arguments = [("most", quota.per_minute.to_string()), ("seconds", wait.clone())];
    let problem = Problem::new(ProblemKind::TooManyRequests, "problem-detail-too-many-requests", arguments);
    let mut response = ([(header::RETRY_AFTER, wait)], problem).into_response();
    quota.write(response.headers_mut());
    response
}

fn unauthorized(error: AuthenticationError) -> Response {
    const INVALID_TOKEN: &str = "Bearer realm=\"elbowroom\", error=\"invalid_token\"";
    let (detail, challenge) = match error {
        AuthenticationError::Missing => ("problem-detail-key-missing", "Bearer realm=\"elbowroom\""),
        AuthenticationError::Unknown => ("problem-detail-key-unknown", INVALID_TOKEN),
        AuthenticationError::Expired => ("problem-detail-key-expired", INVALID_TOKEN),
    };
    let problem = Problem::new(ProblemKind::Unauthorized, detail, []);
    ([(header::WWW_AUTHENTICATE, challenge)], problem).into_response()
}
