//! A certificate as a page to print: what was asked, what came out, why, and what it is known by. It holds the whole
//! certificate as data, so that a page which was saved can be verified.

mod figures;
mod request;

use super::form::Certificate;
use super::verification::cautions;
use crate::answers::Shown;
use crate::content_policy::policy_of;
use crate::drawing;
use crate::service::language;
use crate::service::openapi::text_body;
use crate::service::problem::Problem;
use crate::service::register::CheckEntry;
use axum::http::header;
use axum::response::{IntoResponse, Response};
use figures::Citations;
use maud::{DOCTYPE, Markup, PreEscaped, html};
use serde_json::Value;
use std::sync::LazyLock;

/// How a page looks, on letter and A4 paper alike.
pub const STYLE: &str = include_str!("page.css");

/// The most sentences of a proof that stand on a page; the certificate has every step.
const MOST_SENTENCES: usize = 16;

text_body!(
    CertificatePage,
    "CertificatePage",
    "The certificate as HTML, made for print; the certificate itself stands in it as JSON, in the element with the id \
     `certificate`."
);

/// A page as it is served. It has styles of its own, loads nothing and runs nothing.
pub fn served(page: Vec<u8>) -> Response {
    static POLICY: LazyLock<String> = LazyLock::new(|| policy_of(&[STYLE, drawing::style()]));
    let headers =
        [(header::CONTENT_TYPE, "text/html; charset=utf-8"), (header::CONTENT_SECURITY_POLICY, &POLICY)];
    (headers, language::headers(), page).into_response()
}

/// Writes the page of a certificate that was just issued, in the language that is spoken.
///
/// # Errors
///
/// The service failed.
pub fn write(check: &CheckEntry, certificate: &Certificate) -> Result<String, Problem> {
    let messages = language::messages();
    let request = serde_json::to_vec(&certificate.request).map_err(|_| Problem::internal())?;
    let drawing = check.draw.map(|draw| draw(&request)).transpose()?;
    let reasoning = (check.reasoning)(&request)?;
    let data = embedded(certificate)?;
    let answer = Value::Object(certificate.answer.clone());
    let shown = Shown { answer: &answer, messages };

    let page = html! {
        (DOCTYPE)
        html lang=(messages.language().tag()) {
            head {
                meta charset="utf-8";
                title {
                    (messages.fixed(check.title))
                    @if let Some(reference) = text(&answer, "/reference") { " · " (reference) }
                }
                meta name="viewport" content="width=device-width";
                style { (PreEscaped(STYLE)) }
            }
            body {
                main {
                    (head(check, shown))
                    div class="found" {
                        @if let Some(drawing) = &drawing { figure { (PreEscaped(drawing)) } }
                        (findings(shown))
                    }
                    (section(&shown.label("outcome"), "figures", figures::blocks(shown, &Citations::of(&answer))))
                    (interpretations(shown))
                    (section(
                        messages.fixed("text-certificate-request"),
                        "request",
                        request::lines(&certificate.request),
                    ))
                    (proof(shown, &reasoning))
                    (known_by(shown, certificate))
                    (notes(shown))
                }
                script type="application/json" id="certificate" { (PreEscaped(data)) }
            }
        }
    };
    Ok(page.into_string())
}

fn text<'a>(answer: &'a Value, pointer: &str) -> Option<&'a str> {
    answer.pointer(pointer).and_then(Value::as_str)
}

fn list<'a>(answer: &'a Value, pointer: &str) -> &'a [Value] {
    answer.pointer(pointer).and_then(Value::as_array).map_or(&[], Vec::as_slice)
}

fn section(title: &str, class: &str, content: Markup) -> Markup {
    html! { section class=(class) { h2 { (title) } (content) } }
}

/// The check, the edition, the caller's mark, and the verdict.
fn head(check: &CheckEntry, shown: Shown<'_>) -> Markup {
    let messages = shown.messages;
    let verdict = text(shown.answer, "/verdict").map(|verdict| shown.label(verdict));
    html! {
        header {
            div {
                p class="kind" { (messages.fixed("text-certificate-kind")) }
                h1 { (messages.fixed(check.title)) }
                p class="terms" {
                    "NFPA 70, " (text(shown.answer, "/ruleset/edition").unwrap_or_default())
                    @if let Some(reference) = text(shown.answer, "/reference") {
                        " · " (shown.label("reference")) ": " b { (reference) }
                    }
                }
            }
            p class="verdict" {
                (shown.label("verdict"))
                b { (verdict.as_deref().unwrap_or_else(|| messages.fixed("text-report-no-verdict"))) }
            }
        }
    }
}

fn findings(shown: Shown<'_>) -> Markup {
    let content = html! {
        ul {
            @for finding in list(shown.answer, "/findings") {
                li {
                    b { (shown.label(text(finding, "/status").unwrap_or_default())) "." }
                    " " (text(finding, "/message").unwrap_or_default())
                    @if let Some(citation) = text(finding, "/citation") {
                        " " i { (shown.messages.citation(citation)) }
                    }
                }
            }
        }
    };
    section(&shown.label("findings"), "findings", content)
}

/// Disputed points that mattered, the reading that was followed, and the verdict under the others.
fn interpretations(shown: Shown<'_>) -> Markup {
    let points = list(shown.answer, "/interpretations");
    if points.is_empty() {
        return Markup::default();
    }
    let label = |value: &Value, pointer: &str| text(value, pointer).map(|name| shown.label(name));
    let content = html! {
        ul {
            @for point in points {
                li {
                    (text(point, "/question").unwrap_or_default())
                    " " b { (label(point, "/reading").unwrap_or_default()) "." }
                    @for other in list(point, "/alternatives") {
                        " " (label(other, "/reading").unwrap_or_default())
                        ": " (label(other, "/verdict").unwrap_or_else(|| "–".to_owned())) "."
                    }
                }
            }
        }
    };
    section(&shown.label("interpretations"), "readings", content)
}

/// The steps that the findings rest on, as sentences.
fn proof(shown: Shown<'_>, sentences: &[String]) -> Markup {
    if sentences.is_empty() {
        return Markup::default();
    }
    let more = sentences.len().saturating_sub(MOST_SENTENCES);
    let content = html! {
        ol { @for sentence in sentences.iter().take(MOST_SENTENCES) { li { (sentence) } } }
        @if more > 0 { p { (shown.messages.counted("text-certificate-more-steps", "count", more)) } }
    };
    section(&shown.label("derivation"), "proof", content)
}

/// The ruleset, the fingerprints and the signature.
fn known_by(shown: Shown<'_>, certificate: &Certificate) -> Markup {
    let messages = shown.messages;
    let rules = certificate.rules();
    let parts = ["text-certificate-request", "text-certificate-answer", "text-certificate-whole"];
    let signature = certificate.signature.as_deref().unwrap_or(messages.fixed("text-certificate-unsigned"));
    let content = html! {
        table {
            tr { th { (shown.label("ruleset")) } td { (rules.version) " · " (rules.digest) } }
            @for (key, (_, fingerprint)) in parts.into_iter().zip(certificate.fingerprint.parts()) {
                tr { th { (messages.fixed(key)) } td { (fingerprint) } }
            }
            tr { th { (messages.fixed("text-certificate-signature")) } td { (signature) } }
        }
        p { (messages.fixed("text-certificate-how-to-verify")) }
    };
    section(messages.fixed("text-certificate-known-by"), "known", content)
}

/// The cautions of the answer, after what is to be known of a certificate.
fn notes(shown: Shown<'_>) -> Markup {
    let of_a_certificate = cautions().take(1).map(|key| shown.messages.fixed(key));
    let of_the_answer = list(shown.answer, "/cautions").iter().filter_map(Value::as_str);
    html! { footer { @for caution in of_a_certificate.chain(of_the_answer) { p { (caution) } } } }
}

/// The certificate as data: nothing in it ends the element or begins a comment. Outside of texts JSON has no angle brackets.
fn embedded(certificate: &Certificate) -> Result<String, Problem> {
    let json = serde_json::to_string(certificate).map_err(|_| Problem::internal())?;
    Ok(json.replace('<', "\\u003c"))
}
