//! Problems (RFC 9457): one table from kind to slug, status and words, and the document that a caller receives.

use super::language;
use crate::checks::FaultCode;
use crate::i18n::Catalogue;
use axum::http::{HeaderValue, StatusCode, header};
use axum::response::{IntoResponse, Response};
use serde::Serialize;
use utoipa::ToSchema;

use super::fault_list::{FaultList, FaultView};

/// The media type of every problem.
pub const MEDIA_TYPE: &str = "application/problem+json";

/// The table of problems: each kind with its slug, its status, the keys of its title and of what it means, and the fault
/// codes that it lists.
macro_rules! problem_kinds {
    ($($(#[$doc:meta])* $kind:ident: $slug:literal, $status:ident, $title:literal, $meaning:literal, $codes:expr;)*) => {
        /// The kinds of problem. Each has one status and one slug, and the slug is never renamed.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum ProblemKind {
            $($(#[$doc])* $kind,)*
        }

        impl ProblemKind {
            /// Every kind, by status.
            pub const ALL: [Self; [$($slug),*].len()] = [$(Self::$kind),*];

            /// The last part of the `type` link: `/v1/problems/{slug}`.
            pub const fn slug(self) -> &'static str {
                match self { $(Self::$kind => $slug,)* }
            }

            /// The HTTP status.
            pub const fn status(self) -> StatusCode {
                match self { $(Self::$kind => StatusCode::$status,)* }
            }

            /// The title, as a person reads it.
            pub fn title(self, messages: &Catalogue) -> &str {
                messages.fixed(match self { $(Self::$kind => $title,)* })
            }

            /// What the problem means and what to do about it.
            pub fn meaning(self, messages: &Catalogue) -> &str {
                messages.fixed(match self { $(Self::$kind => $meaning,)* })
            }

            /// The fault codes that such a problem lists.
            pub const fn codes(self) -> &'static [FaultCode] {
                match self { $(Self::$kind => $codes,)* }
            }
        }
    };
}

problem_kinds! {
    /// The body is no JSON.
    MalformedJson: "malformed-json", BAD_REQUEST, "problem-title-malformed-json", "problem-meaning-malformed-json", FaultCode::ALL.split_at(1).0;
    /// There is no key, or none that is known and in force.
    Unauthorized: "unauthorized", UNAUTHORIZED, "problem-title-unauthorized", "problem-meaning-unauthorized", &[];
    /// The key is for something else.
    Forbidden: "forbidden", FORBIDDEN, "problem-title-forbidden", "problem-meaning-forbidden", &[];
    /// The path, or what it names, is not served.
    NotFound: "not-found", NOT_FOUND, "problem-title-not-found", "problem-meaning-not-found", &[];
    /// The path is served with other methods.
    MethodNotAllowed: "method-not-allowed", METHOD_NOT_ALLOWED, "problem-title-method-not-allowed", "problem-meaning-method-not-allowed", &[];
    /// The caller takes no JSON.
    NotAcceptable: "not-acceptable", NOT_ACCEPTABLE, "problem-title-not-acceptable", "problem-meaning-not-acceptable", &[];
    /// The body did not arrive in time.
    RequestTimeout: "request-timeout", REQUEST_TIMEOUT, "problem-title-request-timeout", "problem-meaning-request-timeout", &[];
    /// The body is over the limit.
    BodyTooLarge: "body-too-large", PAYLOAD_TOO_LARGE, "problem-title-body-too-large", "problem-meaning-body-too-large", &[];
    /// The body is not said to be JSON.
    UnsupportedMediaType: "unsupported-media-type", UNSUPPORTED_MEDIA_TYPE, "problem-title-unsupported-media-type", "problem-meaning-unsupported-media-type", &[];
    /// The request has faults.
    InvalidRequest: "invalid-request", UNPROCESSABLE_ENTITY, "problem-title-invalid-request", "problem-meaning-invalid-request", FaultCode::ALL.split_at(1).1;
    /// A quota is used up.
    TooManyRequests: "too-many-requests", TOO_MANY_REQUESTS, "problem-title-too-many-requests", "problem-meaning-too-many-requests", &[];
    /// The service failed.
    InternalError: "internal-error", INTERNAL_SERVER_ERROR, "problem-title-internal-error", "problem-meaning-internal-error", &[];
    /// The service is shutting down.
    NotReady: "not-ready", SERVICE_UNAVAILABLE, "problem-title-not-ready", "problem-meaning-not-ready", &[];
    /// Too many requests at once.
    Overloaded: "overloaded", SERVICE_UNAVAILABLE, "problem-title-overloaded", "problem-meaning-overloaded", &[];
}

impl ProblemKind {
    /// The link that says what the problem is; the service answers it.
    pub fn link(self) -> String {
        format!("/v1/problems/{}", self.slug())
    }
}

/// What a caller gets when a request is not answered.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Problem {
    /// What kind of problem it is.
    pub kind: ProblemKind,
    /// What happened, in a sentence.
    pub detail: String,
    /// Every fault of the request.
    pub faults: FaultList,
    /// The nearest name that is known, where a name was not.
    pub nearest: Option<String>,
    /// The names that are known, where a name was not.
    pub accepted: Vec<String>,
}

impl Problem {
    /// A problem without faults, with the sentence of a message and what it names.
    pub fn new<'a>(
        kind: ProblemKind,
        key: &'static str,
        named: impl IntoIterator<Item = (&'a str, String)>,
    ) -> Self {
        let detail = language::messages().sentence(key, named);
        Self { kind, detail, faults: FaultList::default(), nearest: None, accepted: Vec::new() }
    }

    /// The same problem of something that stands below a place of the body.
    pub fn below(mut self, place: &str) -> Self {
        self.faults.move_below(place);
        self
    }

    /// The service failed; the caller learns nothing more.
    pub fn internal() -> Self {
        Self::new(ProblemKind::InternalError, "problem-detail-internal-error", [])
    }

    /// The body is no JSON, for the reason that a fault gives.
    pub fn malformed(fault: FaultView) -> Self {
        let problem = Self::new(ProblemKind::MalformedJson, "problem-detail-malformed-json", []);
        Self { faults: FaultList::of(fault), ..problem }
    }

    /// The request has faults.
    pub fn invalid(faults: FaultList) -> Self {
        let count = faults.len();
        let detail = language::messages().counted("problem-detail-invalid-request", "count", count);
        Self { kind: ProblemKind::InvalidRequest, detail, faults, nearest: None, accepted: Vec::new() }
    }

    /// The document.
    pub fn document(&self) -> ProblemDocument<'_> {
        ProblemDocument {
            link: self.kind.link(),
            title: self.kind.title(language::messages()),
            status: self.kind.status().as_u16(),
            detail: &self.detail,
            nearest: self.nearest.as_deref(),
            accepted: &self.accepted,
            errors: self.faults.kept(),
            more_errors: self.faults.more(),
        }
    }

    /// The document as JSON text.
    pub fn to_json(&self) -> Vec<u8> {
        serde_json::to_vec(&self.document()).unwrap_or_default()
    }
}

impl IntoResponse for Problem {
    fn into_response(self) -> Response {
        let media_type = HeaderValue::from_static(MEDIA_TYPE);
        let content_type = [(header::CONTENT_TYPE, media_type)];
        (self.kind.status(), content_type, language::headers(), self.to_json()).into_response()
    }
}

/// Why a request was not answered (RFC 9457). All faults are listed at once.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[schema(as = Problem)]
pub struct ProblemDocument<'a> {
    /// The kind of problem, as a link that this service answers with what it means.
    #[serde(rename = "type")]
    #[schema(format = "uri-reference", example = "/v1/problems/invalid-request")]
    link: String,
    /// The kind of problem in a few words: the same for every problem of the kind.
    #[schema(example = "The request is not valid")]
    title: &'a str,
    /// The HTTP status.
    #[schema(minimum = 400, maximum = 599, example = 422)]
    status: u16,
    /// What happened this time, in a sentence.
    #[schema(example = "2 faults.")]
    detail: &'a str,
    /// The nearest known name, where a path or a name in it was not known.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(example = "/v1/outlet-boxes/fill")]
    nearest: Option<&'a str>,
    /// The known names, where a name in the path was not one of them.
    #[serde(skip_serializing_if = "<[String]>::is_empty")]
    accepted: &'a [String],
    /// Every fault of the request, up to a hundred of them.
    #[serde(skip_serializing_if = "<[FaultView]>::is_empty")]
    errors: &'a [FaultView],
    /// How many faults there are beyond those listed; absent when there are none.
    #[serde(skip_serializing_if = "is_zero")]
    #[schema(minimum = 1, required = false)]
    more_errors: usize,
}

#[expect(clippy::trivially_copy_pass_by_ref, reason = "the form that serde asks for")]
pub(super) fn is_zero(count: &usize) -> bool {
    *count == 0
}

/// The key of the sentence that says what a fault code means.
pub const fn meaning_of(code: FaultCode) -> &'static str {
    match code {
        FaultCode::MalformedJson => "text-code-malformed-json",
        FaultCode::DuplicateMember => "text-code-duplicate-member",
        FaultCode::UnknownMember => "text-code-unknown-member",
        FaultCode::UnknownParameter => "text-code-unknown-parameter",
        FaultCode::MissingMember => "text-code-missing-member",
        FaultCode::WrongType => "text-code-wrong-type",
        FaultCode::UnknownValue => "text-code-unknown-value",
        FaultCode::UnknownConductorSize => "text-code-unknown-conductor-size",
        FaultCode::UnknownTradeSize => "text-code-unknown-trade-size",
        FaultCode::UnknownStandardBox => "text-code-unknown-standard-box",
        FaultCode::OutOfBounds => "text-code-out-of-bounds",
        FaultCode::TooManyDecimals => "text-code-too-many-decimals",
        FaultCode::TooManyItems => "text-code-too-many-items",
        FaultCode::DuplicateId => "text-code-duplicate-id",
        FaultCode::UnknownReference => "text-code-unknown-reference",
        FaultCode::Conflict => "text-code-conflict",
        FaultCode::Contradiction => "text-code-contradiction",
        FaultCode::UnverifiedEdition => "text-code-unverified-edition",
        FaultCode::Ambiguous => "text-code-ambiguous",
        FaultCode::NotAccepted => "text-code-not-accepted",
    }
}
