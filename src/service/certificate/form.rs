//! What a certificate is: a request, the answer to it, and what both are known by.

use super::canonical::{canonical, sha256};
use super::signing::SigningKeys;
use crate::answers::Explain;
use crate::rulebook::{Edition, digest};
use crate::service::language::{self, ChosenLanguage};
use crate::service::openapi::{described_text, one_of_names};
use crate::service::problem::Problem;
use crate::service::register::{Answered, CHECKS, CheckEntry, form_per_check};
use serde::{Deserialize, Serialize};
use serde_json::{Map, Value};
use utoipa::openapi::RefOr;
use utoipa::openapi::schema::{AdditionalProperties, ObjectBuilder, Schema};
use utoipa::{PartialSchema, ToSchema};

/// A certificate: a request, the answer to it with its whole proof, what both are known by, and a signature where the
/// operator has a key. Without a clock: the same request under the same rules gives the same bytes.
#[derive(Clone, Debug, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Certificate {
    /// The check that was made.
    #[schema(value_type = CheckName)]
    pub check: String,
    /// The language of the sentences, as a BCP 47 tag, so that they can be reproduced.
    pub language: ChosenLanguage,
    /// The request as it was sent.
    pub request: Map<String, Value>,
    /// The answer as the check gives it, with every step of its proof.
    #[schema(value_type = CertifiedAnswer)]
    pub answer: Map<String, Value>,
    /// What its parts are known by.
    pub fingerprint: Fingerprint,
    /// A detached JWS (RFC 7515, Appendix F) with Ed25519 over what `fingerprint.whole` is the hash of. Only where the operator
    /// has a key.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schema(max_length = 600, example = "eyJhbGciOiJFZERTQSIsImtpZCI6Im…")]
    pub signature: Option<String>,
}

/// What the parts of a certificate are known by: SHA-256 over their canonical JSON (RFC 8785).
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[serde(deny_unknown_fields)]
pub struct Fingerprint {
    /// Of the request.
    #[schema(
        min_length = 71,
        max_length = 71,
        example = "sha256:e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"
    )]
    pub request: String,
    /// Of the answer.
    #[schema(
        min_length = 71,
        max_length = 71,
        example = "sha256:e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"
    )]
    pub answer: String,
    /// Of the certificate without its fingerprint and its signature.
    #[schema(
        min_length = 71,
        max_length = 71,
        example = "sha256:e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"
    )]
    pub whole: String,
}

impl Fingerprint {
    /// Each part by its name.
    pub fn parts(&self) -> [(&'static str, &str); 3] {
        [("request", &self.request), ("answer", &self.answer), ("whole", &self.whole)]
    }
}

/// What is hashed as a whole, and signed.
#[derive(Serialize)]
struct Whole<'a> {
    check: &'a str,
    language: ChosenLanguage,
    request: &'a Map<String, Value>,
    answer: &'a Map<String, Value>,
}

/// The name of a check.
pub struct CheckName;

impl PartialSchema for CheckName {
    fn schema() -> RefOr<Schema> {
        let names = one_of_names(CHECKS.iter().map(|check| check.name));
        names.description(Some("The name of a check.")).build().into()
    }
}

impl ToSchema for CheckName {}

/// The answer of a check, of which only the ruleset is looked at before it is compared.
pub struct CertifiedAnswer;

impl PartialSchema for CertifiedAnswer {
    fn schema() -> RefOr<Schema> {
        let text = |description: &str| described_text(description).max_length(Some(100));
        let ruleset = ObjectBuilder::new()
            .description(Some("The rules that it was made under."))
            .property("version", text("The version of the service that wrote it."))
            .property("digest", text("SHA-256 over every table and the whole of every edition's rules."))
            .property(
                "check_digest",
                text("SHA-256 over what the check can read of the edition's rules and of the tables."),
            )
            .required("version")
            .required("digest")
            .additional_properties(Some(AdditionalProperties::FreeForm(true)));
        ObjectBuilder::new()
            .description(Some(
                "The answer of the check, with every step of its proof: what its own operation answers.",
            ))
            .property("ruleset", ruleset)
            .required("ruleset")
            .additional_properties(Some(AdditionalProperties::FreeForm(true)))
            .build()
            .into()
    }
}

impl ToSchema for CertifiedAnswer {}

/// The rules of an answer.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct CertifiedRules {
    /// The version of the service.
    #[schema(example = "0.1.0")]
    pub version: String,
    /// SHA-256 over every table and the whole of every edition's rules.
    #[schema(example = "sha256:0f…")]
    pub digest: String,
    /// SHA-256 over what the check can read of the edition's rules and of the tables; empty where a certificate names none.
    #[schema(example = "sha256:0f…")]
    pub check_digest: String,
}

impl CertifiedRules {
    /// Those of this service for a check, under the edition that a request names.
    pub fn of_this_service(check: &CheckEntry, request: &Map<String, Value>) -> Self {
        let edition = request.get("edition").map(Edition::deserialize);
        let edition = edition.and_then(Result::ok).unwrap_or_default();
        Self {
            version: env!("CARGO_PKG_VERSION").to_owned(),
            digest: digest::whole().to_owned(),
            check_digest: (check.reads)().digest(edition).to_owned(),
        }
    }

    /// Whether an answer is the same under others: by the same version, from the same tables and parts of the rules.
    pub fn answer_alike(&self, others: &Self) -> bool {
        self.version == others.version && self.check_digest == others.check_digest
    }
}

impl Certificate {
    /// Answers a request and certifies the answer, in the language that is spoken.
    ///
    /// # Errors
    ///
    /// The faults of the request, below `/request`.
    pub fn issue(
        check: &CheckEntry,
        request: Map<String, Value>,
        keys: &SigningKeys,
    ) -> Result<(Self, Answered), Problem> {
        let (answer, answered) = answer(check, &request).map_err(|problem| problem.below("/request"))?;
        let fingerprint = Fingerprint::default();
        let (check, language) = (check.name.to_owned(), language::spoken().into());
        let mut certificate = Self { check, language, request, answer, fingerprint, signature: None };
        let whole = certificate.whole()?;
        certificate.signature = keys.sign(&whole);
        certificate.fingerprint = certificate.fingerprint_over(&whole)?;
        Ok((certificate, answered))
    }

    /// The canonical JSON of everything but the fingerprint and the signature.
    pub fn whole(&self) -> Result<Vec<u8>, Problem> {
        let Self { check, language, request, answer, .. } = self;
        canonical(&Whole { check, language: *language, request, answer })
    }

    /// The fingerprint that fits what the certificate holds, whose whole is given.
    pub fn fingerprint_over(&self, whole: &[u8]) -> Result<Fingerprint, Problem> {
        Ok(Fingerprint {
            request: sha256(&canonical(&self.request)?),
            answer: sha256(&canonical(&self.answer)?),
            whole: sha256(whole),
        })
    }

    /// The rules that it says it was made under.
    pub fn rules(&self) -> CertifiedRules {
        let ruleset = self.answer.get("ruleset");
        let text = |member: &str| {
            let text = ruleset.and_then(|ruleset| ruleset.get(member)).and_then(Value::as_str);
            text.unwrap_or_default().to_owned()
        };
        let (version, digest, check_digest) = (text("version"), text("digest"), text("check_digest"));
        CertifiedRules { version, digest, check_digest }
    }
}

/// The answer to a request with its whole proof, as members.
pub fn answer(
    check: &CheckEntry,
    request: &Map<String, Value>,
) -> Result<(Map<String, Value>, Answered), Problem> {
    let request = serde_json::to_vec(request).map_err(|_| Problem::internal())?;
    let answered = (check.evaluate)(&request, Explain::Full)?;
    let answer = serde_json::from_slice(&answered.json).map_err(|_| Problem::internal())?;
    Ok((answer, answered))
}

/// What is to be certified: a check and its request.
#[derive(Clone, Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct CertifyRequest {
    /// The check.
    pub check: String,
    /// Its request.
    pub request: Map<String, Value>,
}

impl PartialSchema for CertifyRequest {
    fn schema() -> RefOr<Schema> {
        let description = "A check and its request, as its own operation takes it.";
        form_per_check("Certify", description, |form| form)
    }
}

impl ToSchema for CertifyRequest {}
