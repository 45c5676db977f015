//! What stands at the top of every drawing, and its description in words.

use super::sheet::{Anchor, Letters, Sheet, at, short_text};
use crate::answers::message_of;
use crate::checks::{Check, Evaluation, Request as _, Status, Terms, Verdict};
use crate::i18n::Catalogue;
use serde::Serialize;

/// Where the drawing itself begins, below the head.
pub(super) const BELOW: f64 = 84.0;
/// The margin on every side.
pub(super) const MARGIN: f64 = 24.0;

/// Writes the head: what is drawn, the caller's mark and the edition, the verdict.
fn head(sheet: &mut Sheet<'_>, title: &str, terms: &Terms<'_>, verdict: Option<Verdict>) {
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

/// A whole drawing: its head, what `draw` draws below it, and the description. `draw` returns where the drawing ends.
pub(super) fn page<C: Check>(
    request: &C::Request,
    evaluation: &Evaluation<C::Outcome>,
    (title, width): (&str, f64),
    messages: &Catalogue,
    draw: impl FnOnce(&mut Sheet<'_>) -> f64,
) -> String {
    let mut sheet = Sheet::new(messages, width);
    head(&mut sheet, title, &request.terms(), evaluation.verdict);
    sheet.describe(format!("{}.", verdict_in_words(evaluation.verdict, messages)));
    let end = draw(&mut sheet);
    for finding in &evaluation.findings {
        if matches!(finding.status, Status::Violated | Status::NotDetermined) {
            sheet.describe(message_of(finding, messages));
        }
    }
    sheet.describe(messages.fixed("drawing-caution").to_owned());
    sheet.done(end, title)
}

/// The name of a variant, as answers write it.
pub(super) fn name_of(value: impl Serialize) -> String {
    match serde_json::to_value(value) {
        Ok(serde_json::Value::String(name)) => name,
        _ => String::new(),
    }
}
