//! A sheet of exercises made for print: HTML with its own style, numbered, with room for working, and the key on a page of
//! its own.

use super::exercises::{Exercise, ExerciseView, Spec, make};
use crate::checks::Caution;
use crate::i18n::{Catalogue, FigureText, MessageArg};
use crate::markup::{Markup, policy_of};
use crate::quantity::{Unit, Units};
use std::sync::LazyLock;

/// How a sheet looks, on letter and A4 paper alike.
const STYLE: &str = include_str!("sheet.css");

/// The content security policy of a sheet: its own style and nothing else.
pub fn content_security_policy() -> &'static str {
    static POLICY: LazyLock<String> = LazyLock::new(|| policy_of(&[STYLE]));
    &POLICY
}

/// What stands on a sheet.
#[derive(Clone, Debug)]
pub struct Sheet<'a> {
    /// Which exercises.
    pub spec: Spec,
    /// How many.
    pub count: u32,
    /// The title; that of the topic, where none is given.
    pub title: Option<&'a str>,
    /// Whether the key follows, on pages of its own.
    pub key: bool,
}

/// The sheet as HTML; `None` where an exercise could not be made.
pub fn write(sheet: &Sheet<'_>, messages: &Catalogue) -> Option<String> {
    let exercises =
        (1..=sheet.count).map(|number| make(&sheet.spec, number)).collect::<Option<Vec<Exercise>>>()?;
    let views = exercises.iter().map(|exercise| exercise.view(sheet.spec.edition, sheet.key, messages));
    let views: Vec<ExerciseView> = views.collect();
    let title = sheet.title.unwrap_or_else(|| messages.fixed(sheet.spec.topic.title()));
    let mut page = Markup::new(messages);
    page.raw("<!DOCTYPE html>\n<html lang=\"")
        .text(messages.language().tag())
        .raw("\">\n<head>\n<meta charset=\"utf-8\">\n<title>");
    page.text(title).raw("</title>\n");
    page.raw("<meta name=\"viewport\" content=\"width=device-width\">\n<style>")
        .raw(STYLE)
        .raw("</style>\n</head>\n<body>\n");
    page.raw("<main>\n");
    head(&mut page, sheet, title);
    page.raw("<ol class=\"exercises\">\n");
    views.iter().for_each(|view| exercise(&mut page, view));
    page.raw("</ol>\n");
    foot(&mut page, sheet);
    page.raw("</main>\n");
    if sheet.key {
        page.raw("<section class=\"key\">\n<h1>")
            .word("text-sheet-key")
            .raw("</h1>\n<p class=\"terms\">")
            .text(title)
            .raw("</p>\n<ol>\n");
        views.iter().for_each(|view| key(&mut page, view));
        page.raw("</ol>\n");
        foot(&mut page, sheet);
        page.raw("</section>\n");
    }
    page.raw("</body>\n</html>\n");
    Some(page.done())
}

fn head(page: &mut Markup<'_>, sheet: &Sheet<'_>, title: &str) {
    let Spec { topic, difficulty, .. } = sheet.spec;
    let terms = edition(sheet, page.messages());
    page.raw("<header>\n<h1>").text(title).raw("</h1>\n<p class=\"terms\">");
    page.word(topic.title()).raw(" · ").word(difficulty.title()).raw(" · ").text(&terms).raw("</p>\n");
    page.raw("<p class=\"fields\">");
    for field in ["text-sheet-name", "text-sheet-date", "text-sheet-score"] {
        page.raw("<span>").word(field).raw("</span>");
    }
    page.raw("</p>\n<p class=\"task\">").word("text-sheet-task").raw("</p>\n</header>\n");
}

/// The edition, and whether its text was at hand.
fn edition(sheet: &Sheet<'_>, messages: &Catalogue) -> String {
    let units = match sheet.spec.units {
        Units::Us => "text-sheet-us",
        Units::Si => "text-sheet-si",
    };
    let edition = MessageArg::Text(sheet.spec.edition.year().to_owned());
    messages
        .message("text-sheet-edition", &[("edition", edition), ("units", MessageArg::Word(units.to_owned()))])
}

fn exercise(page: &mut Markup<'_>, view: &ExerciseView) {
    page.raw("<li>\n<ul class=\"situation\">\n");
    view.situation.iter().for_each(|sentence| {
        page.raw("<li>").text(sentence).raw("</li>\n");
    });
    page.raw("</ul>\n<p class=\"question\">").text(&view.question);
    page.raw("</p>\n<ul class=\"choices\">\n");
    for choice in &view.choices {
        page.raw("<li><b>")
            .text(choice.letter)
            .raw("</b> ")
            .text(&shown(choice.value, choice.unit))
            .raw("</li>\n");
    }
    page.raw("</ul>\n<div class=\"working\">").word("text-sheet-working").raw("</div>\n</li>\n");
}

fn shown(value: crate::quantity::Decimal, unit: Unit) -> String {
    FigureText(value, unit).to_string()
}

fn key(page: &mut Markup<'_>, view: &ExerciseView) {
    let Some(key) = &view.key else { return };
    page.raw("<li>\n<p class=\"right\"><b>")
        .text(key.letter)
        .raw("</b> ")
        .text(&shown(key.value, key.unit))
        .raw("</p>\n");
    page.raw("<ul class=\"steps\">\n");
    key.solution.iter().for_each(|step| {
        page.raw("<li>").text(step).raw("</li>\n");
    });
    page.raw("</ul>\n<table>\n");
    for wrong in &key.wrong {
        let cited: Vec<&str> =
            wrong.misconception.rules.iter().filter_map(|rule| rule.citation.as_deref()).collect();
        let value = view.choices.iter().find(|choice| choice.letter == wrong.letter);
        page.raw("<tr><th>").text(wrong.letter).raw("</th><td>");
        page.text(&value.map(|choice| shown(choice.value, choice.unit)).unwrap_or_default());
        page.raw("</td><td><b>")
            .text(&wrong.misconception.title)
            .raw(".</b> ")
            .text(&wrong.misconception.why);
        page.raw(" <i>").text(&cited.join(", ")).raw("</i></td></tr>\n");
    }
    page.raw("</table>\n");
    let others: Vec<String> = key
        .editions
        .iter()
        .filter(|other| other.value.is_some_and(|value| value != key.value))
        .filter_map(|other| Some(format!("{}: {}", other.edition.year(), shown(other.value?, key.unit))))
        .collect();
    if !others.is_empty() {
        page.raw("<p class=\"editions\">")
            .word("text-sheet-other-editions")
            .raw(" ")
            .text(&others.join(" · "))
            .raw("</p>\n");
    }
    page.raw("</li>\n");
}

/// The edition and the cautions.
fn foot(page: &mut Markup<'_>, sheet: &Sheet<'_>) {
    let Spec { seed, version, .. } = sheet.spec;
    let terms = edition(sheet, page.messages());
    page.raw("<footer>\n<p>").text(&terms).raw(" · ");
    page.text(&format!("{seed}/{version}")).raw("</p>\n");
    let unverified = (!sheet.spec.edition.is_verified()).then_some(Caution::UnverifiedEdition);
    for caution in unverified.into_iter().chain(Caution::USUAL) {
        page.raw("<p>").word(caution.key()).raw("</p>\n");
    }
    page.raw("</footer>\n");
}
