//! A certificate as a page to print: what was asked, what came out, why, and what it is known by. It holds the whole
//! certificate as data, so that a page which was saved can be verified.

mod figures;
mod request;

use super::form::Certificate;
use super::verification::cautions;
use crate::answers::Shown;
use crate::drawing;
use crate::markup::{Markup, policy_of};
use crate::service::language;
use crate::service::problem::Problem;
use crate::service::register::CheckEntry;
use axum::http::{HeaderValue, header};
use axum::response::{IntoResponse, Response};
use figures::Citations;
use serde_json::Value;
use std::borrow::Cow;
use std::sync::LazyLock;
use utoipa::openapi::RefOr;
use utoipa::openapi::schema::{ObjectBuilder, Schema, Type};
use utoipa::{PartialSchema, ToSchema};

/// How a page looks, on letter and A4 paper alike.
pub const STYLE: &str = include_str!("page.css");

/// The most sentences of a proof that stand on a page; the certificate has every step.
const MOST_SENTENCES: usize = 16;

/// A certificate as a page.
#[derive(Clone, Copy, Debug)]
pub struct CertificatePage;

impl PartialSchema for CertificatePage {
    fn schema() -> RefOr<Schema> {
        let text = ObjectBuilder::new().schema_type(Type::String);
        let description = "The certificate as HTML, made for print; the certificate itself stands in it as JSON, in the \
                           element with the id `certificate`.";
        text.description(Some(description)).build().into()
    }
}

impl ToSchema for CertificatePage {}

/// A page as it is served. It has styles of its own, loads nothing and runs nothing.
pub fn served(page: Vec<u8>) -> Response {
    static POLICY: LazyLock<HeaderValue> = LazyLock::new(|| {
        HeaderValue::try_from(policy_of(&[STYLE, drawing::style()]))
            .unwrap_or_else(|_| HeaderValue::from_static("default-src 'none'"))
    });
    let headers = [
        (header::CONTENT_TYPE, HeaderValue::from_static("text/html; charset=utf-8")),
        (header::CONTENT_SECURITY_POLICY, POLICY.clone()),
    ];
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
    let answer = Value::Object(certificate.answer.clone());
    let shown = Shown { answer: &answer, messages };

    let mut page = Markup::new(messages);
    page.raw("<!DOCTYPE html>\n<html lang=\"").text(messages.language().tag());
    page.raw("\">\n<head>\n<meta charset=\"utf-8\">\n<title>").word(check.title);
    if let Some(reference) = text(&answer, "/reference") {
        page.raw(" · ").text(reference);
    }
    page.raw("</title>\n<meta name=\"viewport\" content=\"width=device-width\">\n<style>");
    page.raw(STYLE).raw("</style>\n</head>\n<body>\n<main>\n");
    head(&mut page, check, shown);
    page.raw("<div class=\"found\">\n");
    if let Some(drawing) = &drawing {
        page.raw("<figure>\n").written(drawing).raw("</figure>\n");
    }
    findings(&mut page, shown);
    page.raw("</div>\n");
    section(&mut page, &shown.label("outcome"), "figures", |page| {
        figures::write(page, shown, &Citations::of(&answer));
    });
    interpretations(&mut page, shown);
    section(&mut page, messages.fixed("text-certificate-request"), "request", |page| {
        request::write(page, &certificate.request);
    });
    proof(&mut page, shown, &reasoning);
    known_by(&mut page, shown, certificate);
    notes(&mut page, shown);
    page.raw("</main>\n");
    embed(&mut page, certificate)?;
    page.raw("</body>\n</html>\n");
    Ok(page.done())
}

fn text<'a>(answer: &'a Value, pointer: &str) -> Option<&'a str> {
    answer.pointer(pointer).and_then(Value::as_str)
}

fn list<'a>(answer: &'a Value, pointer: &str) -> &'a [Value] {
    answer.pointer(pointer).and_then(Value::as_array).map_or(&[], Vec::as_slice)
}

fn section(page: &mut Markup<'_>, title: &str, class: &'static str, write: impl FnOnce(&mut Markup<'_>)) {
    page.raw("<section class=\"").raw(class).raw("\">\n<h2>").text(title).raw("</h2>\n");
    write(page);
    page.raw("</section>\n");
}

/// The check, the edition, the caller's mark, and the verdict.
fn head(page: &mut Markup<'_>, check: &CheckEntry, shown: Shown<'_>) {
    let verdict = text(shown.answer, "/verdict");
    page.raw("<header>\n<div>\n<p class=\"kind\">").word("text-certificate-kind");
    page.raw("</p>\n<h1>").word(check.title).raw("</h1>\n<p class=\"terms\">NFPA 70, ");
    page.text(text(shown.answer, "/ruleset/edition").unwrap_or_default());
    if let Some(reference) = text(shown.answer, "/reference") {
        page.raw(" · ").text(&shown.label("reference")).raw(": <b>").text(reference).raw("</b>");
    }
    page.raw("</p>\n</div>\n<p class=\"verdict\">").text(&shown.label("verdict")).raw("<b>");
    match verdict {
        Some(verdict) => page.text(&shown.label(verdict)),
        None => page.word("text-report-no-verdict"),
    };
    page.raw("</b></p>\n</header>\n");
}

fn findings(page: &mut Markup<'_>, shown: Shown<'_>) {
    section(page, &shown.label("findings"), "findings", |page| {
        page.raw("<ul>\n");
        for finding in list(shown.answer, "/findings") {
            let [status, message] = ["status", "message"]
                .map(|member| finding.get(member).and_then(Value::as_str).unwrap_or_default());
            page.raw("<li><b>").text(&shown.label(status)).raw(".</b> ").text(message);
            if let Some(citation) = finding.get("citation").and_then(Value::as_str) {
                page.raw(" <i>").text(&shown.messages.citation(citation)).raw("</i>");
            }
            page.raw("</li>\n");
        }
        page.raw("</ul>\n");
    });
}

/// Disputed points that mattered, the reading that was followed, and the verdict under the others.
fn interpretations(page: &mut Markup<'_>, shown: Shown<'_>) {
    let points = list(shown.answer, "/interpretations");
    if points.is_empty() {
        return;
    }
    section(page, &shown.label("interpretations"), "readings", |page| {
        page.raw("<ul>\n");
        for point in points {
            let text = |member: &str| point.get(member).and_then(Value::as_str).unwrap_or_default();
            page.raw("<li>").text(text("question"));
            page.raw(" <b>").text(&shown.label(text("reading"))).raw(".</b>");
            for other in list(point, "/alternatives") {
                let told =
                    |member: &str| other.get(member).and_then(Value::as_str).map(|name| shown.label(name));
                page.raw(" ").text(&told("reading").unwrap_or_default()).raw(": ");
                page.text(&told("verdict").unwrap_or_else(|| "–".to_owned())).raw(".");
            }
            page.raw("</li>\n");
        }
        page.raw("</ul>\n");
    });
}

/// The steps that the findings rest on, as sentences.
fn proof(page: &mut Markup<'_>, shown: Shown<'_>, sentences: &[String]) {
    if sentences.is_empty() {
        return;
    }
    section(page, &shown.label("derivation"), "proof", |page| {
        page.raw("<ol>\n");
        for sentence in sentences.iter().take(MOST_SENTENCES) {
            page.raw("<li>").text(sentence).raw("</li>\n");
        }
        page.raw("</ol>\n");
        let more = sentences.len().saturating_sub(MOST_SENTENCES);
        if more > 0 {
            let told = shown.messages.counted("text-certificate-more-steps", "count", more);
            page.raw("<p>").text(&told).raw("</p>\n");
        }
    });
}

/// The ruleset, the fingerprints and the signature.
fn known_by(page: &mut Markup<'_>, shown: Shown<'_>, certificate: &Certificate) {
    let messages = shown.messages;
    let rules = certificate.rules();
    let version = format!("{} · {}", rules.version, rules.digest);
    let row = |page: &mut Markup<'_>, label: &str, text: &str| {
        page.raw("<tr><th>").text(label).raw("</th><td>").text(text).raw("</td></tr>\n");
    };
    section(page, messages.fixed("text-certificate-known-by"), "known", |page| {
        page.raw("<table>\n");
        row(page, &shown.label("ruleset"), &version);
        let parts = ["text-certificate-request", "text-certificate-answer", "text-certificate-whole"];
        for (key, (_, fingerprint)) in parts.into_iter().zip(certificate.fingerprint.parts()) {
            row(page, messages.fixed(key), fingerprint);
        }
        let signature =
            certificate.signature.as_deref().unwrap_or(messages.fixed("text-certificate-unsigned"));
        row(page, messages.fixed("text-certificate-signature"), signature);
        page.raw("</table>\n<p>").word("text-certificate-how-to-verify").raw("</p>\n");
    });
}

/// The cautions of the answer, after what is to be known of a certificate.
fn notes(page: &mut Markup<'_>, shown: Shown<'_>) {
    page.raw("<footer>\n");
    let of_a_certificate = cautions().take(1).map(|key| shown.messages.fixed(key));
    let of_the_answer = list(shown.answer, "/cautions").iter().filter_map(Value::as_str);
    for caution in of_a_certificate.chain(of_the_answer) {
        page.raw("<p>").text(caution).raw("</p>\n");
    }
    page.raw("</footer>\n");
}

/// The certificate as data: nothing in it ends the element or begins a comment.
fn embed(page: &mut Markup<'_>, certificate: &Certificate) -> Result<(), Problem> {
    let json = serde_json::to_string(certificate).map_err(|_| Problem::internal())?;
    // outside of texts JSON has no angle brackets
    let json: Cow<'_, str> =
        if json.contains('<') { json.replace('<', "\\u003c").into() } else { json.into() };
    page.raw("<script type=\"application/json\" id=\"certificate\">").written(&json).raw("</script>\n");
    Ok(())
}
