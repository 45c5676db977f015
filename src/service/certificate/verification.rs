//! Whether a certificate is what it says: computed again, compared, its signature judged.

use super::canonical::canonical;
use super::differences::{Difference, Differences, of_inputs};
use super::form::{Certificate, CertifiedRules, Fingerprint, answer};
use super::signing::{Judged, SigningKeys};
use crate::checks::{Caution, Verdict};
use crate::service::fault_list::FaultView;
use crate::service::language;
use crate::service::problem::{Problem, ProblemKind, is_zero};
use crate::service::register::CheckEntry;
use serde::Serialize;
use serde_json::{Map, Value};
use utoipa::ToSchema;

/// What is found about a certificate.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum CertificateFinding {
    /// The same request gives the same answer here, to the byte of the canonical form. Only `ruleset.digest` may be another: it covers
    /// rules that the check does not read, too.
    Reproduced,
    /// The certificate contradicts itself, or is not what is computed here under the very rules that it names.
    Altered,
    /// It was made by another version, or what the check reads of rules and tables has changed; whether it was altered can only its signature tell.
    OtherRuleset,
}

/// What a signature is worth.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[serde(rename_all = "snake_case")]
pub enum SignatureFinding {
    /// Made over this content with a key of this service.
    Valid,
    /// Not made over this content, or no signature.
    Invalid,
    /// Made with a key that is not known here.
    UnknownKey,
    /// There is none.
    None,
}

/// What the signature of a certificate is worth.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct SignatureView {
    /// What is found.
    finding: SignatureFinding,
    /// The key that it names.
    #[serde(skip_serializing_if = "Option::is_none")]
    kid: Option<String>,
    /// What that means, in a sentence.
    message: &'static str,
}

/// For each fingerprint whether it fits what the certificate holds.
#[derive(Clone, Copy, Debug, Serialize, ToSchema)]
pub struct FingerprintFits {
    /// That of the request.
    request: bool,
    /// That of the answer.
    answer: bool,
    /// That of the whole.
    whole: bool,
}

/// The rules of a certificate, and those of this service.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct RulesCompared {
    /// Those that the certificate names.
    certificate: CertifiedRules,
    /// Those of this service.
    here: CertifiedRules,
}

/// What this service answers today.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct AnswerToday {
    /// The verdict; null when only a size was asked for.
    #[schema(required = true)]
    verdict: Option<Verdict>,
    /// The whole answer.
    #[schema(value_type = Object)]
    answer: Map<String, Value>,
}

/// What was found about a certificate.
#[derive(Clone, Debug, Serialize, ToSchema)]
pub struct Verification {
    /// What is found.
    finding: CertificateFinding,
    /// What that means, in a sentence.
    message: &'static str,
    /// Why it is found altered, each reason in a sentence.
    reasons: Vec<&'static str>,
    /// The rules that it was made under, and those of this service.
    ruleset: RulesCompared,
    /// Whether each fingerprint fits.
    fingerprint: FingerprintFits,
    /// What the signature is worth.
    signature: SignatureView,
    /// Where the certificate and what is computed here differ, verdict and figures first; up to fifty places.
    differences: Vec<Difference>,
    /// How many more places there are; absent when there are none.
    #[serde(skip_serializing_if = "is_zero")]
    #[schema(minimum = 1, required = false)]
    more_differences: usize,
    /// The inputs that the proof of the certificate takes from its request otherwise than they stand there; up to fifty.
    inputs: Vec<Difference>,
    /// How many more inputs there are; absent when there are none.
    #[serde(skip_serializing_if = "is_zero")]
    #[schema(minimum = 1, required = false)]
    more_inputs: usize,
    /// Why its request is refused here, where it is: every fault, up to a hundred.
    faults: Vec<FaultView>,
    /// How many more faults there are; absent when there are none.
    #[serde(skip_serializing_if = "is_zero")]
    #[schema(minimum = 1, required = false)]
    more_faults: usize,
    /// What is answered under the rules of this service, where those of the certificate are others.
    #[serde(skip_serializing_if = "Option::is_none")]
    today: Option<AnswerToday>,
    /// What to know before relying on it.
    cautions: Vec<&'static str>,
}

/// What the same request is answered with here.
struct Again {
    answer: Map<String, Value>,
    verdict: Option<Verdict>,
    is_the_same: bool,
}

impl Verification {
    /// Computes a certificate of some check again and says what is found, in the language that is spoken.
    ///
    /// # Errors
    ///
    /// The service failed.
    pub fn of(check: &CheckEntry, certificate: &Certificate, keys: &SigningKeys) -> Result<Self, Problem> {
        let whole = certificate.whole()?;
        let computed = certificate.fingerprint_over(&whole)?;
        let (rules, here) =
            (certificate.rules(), CertifiedRules::of_this_service(check, &certificate.request));
        let is_same_ruleset = rules.answer_alike(&here);
        let judged = certificate.signature.as_deref().map(|signature| keys.judge(signature, &whole));

        let mut reasons = contradictions(&certificate.fingerprint, &computed);
        if judged == Some(Judged::Invalid) {
            reasons.push("text-certificate-wrong-signature");
        }
        // what holds together and rests on the same rules may name another digest of all the others
        let again = again(check, certificate, is_same_ruleset && reasons.is_empty())?;
        if is_same_ruleset {
            match &again {
                Err(_) => reasons.push("text-certificate-request-refused"),
                Ok(again) if !again.is_the_same => reasons.push("text-certificate-answered-otherwise"),
                Ok(_) => {}
            }
        }
        let finding = match (reasons.is_empty(), is_same_ruleset) {
            (false, _) => CertificateFinding::Altered,
            (true, true) => CertificateFinding::Reproduced,
            (true, false) => CertificateFinding::OtherRuleset,
        };
        let (differences, inputs) = compared(certificate, &computed, &again, judged.as_ref());
        let (faults, more_faults, today) = match again {
            Ok(Again { answer, verdict, .. }) => {
                (Vec::new(), 0, (!is_same_ruleset).then_some(AnswerToday { verdict, answer }))
            }
            Err(problem) => (problem.faults.kept().to_vec(), problem.faults.more(), None),
        };
        let messages = language::messages();
        Ok(Self {
            finding,
            message: messages.fixed(match finding {
                CertificateFinding::Reproduced => "text-certificate-reproduced",
                CertificateFinding::Altered => "text-certificate-altered",
                CertificateFinding::OtherRuleset => "text-certificate-other-ruleset",
            }),
            reasons: reasons.into_iter().map(|key| messages.fixed(key)).collect(),
            ruleset: RulesCompared { certificate: rules, here },
            fingerprint: fits(&certificate.fingerprint, &computed),
            signature: view_of(judged),
            differences: differences.listed,
            more_differences: differences.more,
            inputs: inputs.listed,
            more_inputs: inputs.more,
            faults,
            more_faults,
            today,
            cautions: cautions().map(|key| messages.fixed(key)).collect(),
        })
    }
}

/// What to know before relying on a certificate.
pub fn cautions() -> impl Iterator<Item = &'static str> {
    ["caution-certificate"].into_iter().chain(Caution::USUAL.map(Caution::key))
}

/// Answers the request again, in the language of the certificate; the faults of one that is refused are in the language of the
/// caller. The digest of the whole ruleset is taken from the certificate where it does not matter.
fn again(
    check: &CheckEntry,
    certificate: &Certificate,
    digest_matters_not: bool,
) -> Result<Result<Again, Problem>, Problem> {
    match language::speaking(certificate.language.into(), || answer(check, &certificate.request)) {
        Ok((mut answer, answered)) => {
            if digest_matters_not
                && let Some(digest) = answer.get_mut("ruleset").and_then(|rules| rules.get_mut("digest"))
            {
                *digest = certificate.rules().digest.into();
            }
            let is_the_same = canonical(&answer)? == canonical(&certificate.answer)?;
            Ok(Ok(Again { answer, verdict: answered.verdict, is_the_same }))
        }
        Err(_) => match answer(check, &certificate.request) {
            Err(problem) if problem.kind == ProblemKind::InternalError => Err(problem),
            Err(problem) => Ok(Err(problem.below("/request"))),
            Ok(_) => Err(Problem::internal()),
        },
    }
}

fn fits(stated: &Fingerprint, computed: &Fingerprint) -> FingerprintFits {
    FingerprintFits {
        request: stated.request == computed.request,
        answer: stated.answer == computed.answer,
        whole: stated.whole == computed.whole,
    }
}

/// How a certificate contradicts itself: the keys of sentences.
fn contradictions(stated: &Fingerprint, computed: &Fingerprint) -> Vec<&'static str> {
    let FingerprintFits { request, answer, whole } = fits(stated, computed);
    let contradictions = [
        (!request, "text-certificate-other-request"),
        (!answer, "text-certificate-other-answer"),
        (!whole && request && answer, "text-certificate-other-check-or-language"),
        (whole && !(request && answer), "text-certificate-other-fingerprints"),
    ];
    contradictions.into_iter().filter(|(is_so, _)| *is_so).map(|(_, key)| key).collect()
}

/// Where the certificate differs from what is computed here: its answer, its fingerprints, its signature; and its inputs.
fn compared(
    certificate: &Certificate,
    computed: &Fingerprint,
    again: &Result<Again, Problem>,
    judged: Option<&Judged>,
) -> (Differences, Differences) {
    let (mut differences, mut inputs) = (Differences::default(), Differences::default());
    let parts = certificate.fingerprint.parts().into_iter().zip(computed.parts());
    for ((part, stated), (_, computed)) in parts.filter(|((_, stated), (_, computed))| stated != computed) {
        differences.note(&format!("/fingerprint/{part}"), Some(&stated.into()), Some(&computed.into()));
    }
    if judged == Some(&Judged::Invalid) {
        differences.note("/signature", certificate.signature.clone().map(Value::String).as_ref(), None);
    }
    if let Ok(Again { answer, is_the_same: false, .. }) = again {
        differences.of_answers(&certificate.answer, answer);
        inputs = of_inputs(&certificate.answer, answer);
    }
    (differences, inputs)
}

fn view_of(judged: Option<Judged>) -> SignatureView {
    let (finding, kid, key) = match judged {
        None => (SignatureFinding::None, None, "text-signature-none"),
        Some(Judged::Invalid) => (SignatureFinding::Invalid, None, "text-signature-invalid"),
        Some(Judged::UnknownKey(kid)) => {
            (SignatureFinding::UnknownKey, Some(kid), "text-signature-unknown-key")
        }
        Some(Judged::Valid(kid)) => (SignatureFinding::Valid, Some(kid), "text-signature-valid"),
    };
    SignatureView { finding, kid, message: language::messages().fixed(key) }
}
