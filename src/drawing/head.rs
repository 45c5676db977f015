//! What stands at the top of every drawing, and what is told of it to whoever cannot see it.

use super::sheet::{Anchor, Letters, Sheet, at, short_text};
use crate::answers::message_of;
use crate::checks::{Finding, Status, Terms, Verdict};
use crate::i18n::Catalogue;
use serde::Serialize;

/// Where the drawing itself begins, below the head.
pub(super) const BELOW: f64 = 84.0;
/// The margin on every side.
pub(super) const MARGIN: f64 = 24.0;

/// Writes the head: what is drawn, the caller's mark and the edition, the verdict.
pub(super) fn head(sheet: &mut Sheet<'_>, title: &str, terms: &Terms<'_>, verdict: Option<Verdict>) {
    let messages = sheet.messages();
    sheet.text(at(MARGIN, 30.0), Anchor::Start, Letters::Heading, title);
    let below = match terms.reference {
        Some(reference) => format!("{} · {}", short_text(reference, 60), of_edition(terms, messages)),
        None => of_edition(terms, messages),
    };
    sheet.text(at(MARGIN, 48.0), Anchor::Start, Letters::Small, &below);
    let letters = if verdict == Some(Verdict::Violates) { Letters::Short } else { Letters::Strong };
    sheet.text(at(MARGIN, 68.0), Anchor::Start, letters, &verdict_in_words(verdict, messages));
}

fn of_edition(terms: &Terms<'_>, messages: &Catalogue) -> String {
    let key = if terms.edition.is_verified() { "drawing-edition" } else { "drawing-edition-unverified" };
    messages.sentence(key, [("edition", terms.edition.year())])
}

fn verdict_in_words(verdict: Option<Verdict>, messages: &Catalogue) -> String {
    match verdict {
        Some(verdict) => messages.label(&name_of(verdict)).into_owned(),
        None => messages.fixed("drawing-no-verdict").to_owned(),
    }
}

/// What a drawing says in sentences: the verdict, what it shows, and what was found against it.
pub(super) fn description(
    verdict: Option<Verdict>,
    shown: &[String],
    findings: &[Finding],
    messages: &Catalogue,
) -> String {
    let grave = |finding: &&Finding| matches!(finding.status, Status::Violated | Status::NotDetermined);
    let mut sentences = vec![format!("{}.", verdict_in_words(verdict, messages))];
    sentences.extend(shown.iter().cloned());
    sentences.extend(findings.iter().filter(grave).map(|finding| message_of(finding, messages)));
    sentences.push(messages.fixed("drawing-caution").to_owned());
    sentences.join(" ")
}

/// The name of a variant, as answers write it.
pub(super) fn name_of(value: impl Serialize) -> String {
    match serde_json::to_value(value) {
        Ok(serde_json::Value::String(name)) => name,
        _ => String::new(),
    }
}
