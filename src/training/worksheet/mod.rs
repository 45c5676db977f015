//! A sheet of exercises made for print: HTML with its own style, numbered, with room for working, and the key on a page of
//! its own.

use super::exercises::{Exercise, ExerciseView, Spec, make};
use crate::checks::Caution;
use crate::content_policy::policy_of;
use crate::i18n::{Catalogue, FigureText, MessageArg};
use crate::quantity::Units;
use maud::{DOCTYPE, Markup, PreEscaped, html};
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
    let foot = foot(sheet, messages);
    let page = html! {
        (DOCTYPE)
        html lang=(messages.language().tag()) {
            head {
                meta charset="utf-8";
                title { (title) }
                meta name="viewport" content="width=device-width";
                style { (PreEscaped(STYLE)) }
            }
            body {
                main {
                    (head(sheet, title, messages))
                    ol class="exercises" { @for view in &views { (exercise(view, messages)) } }
                    (foot)
                }
                @if sheet.key {
                    section class="key" {
                        h1 { (messages.fixed("text-sheet-key")) }
                        p class="terms" { (title) }
                        ol { @for view in &views { (key(view, messages)) } }
                        (foot)
                    }
                }
            }
        }
    };
    Some(page.into_string())
}

fn head(sheet: &Sheet<'_>, title: &str, messages: &Catalogue) -> Markup {
    let Spec { topic, difficulty, .. } = sheet.spec;
    html! {
        header {
            h1 { (title) }
            p class="terms" {
                (messages.fixed(topic.title())) " · " (messages.fixed(difficulty.title())) " · " (edition(sheet, messages))
            }
            p class="fields" {
                @for field in ["text-sheet-name", "text-sheet-date", "text-sheet-score"] {
                    span { (messages.fixed(field)) }
                }
            }
            p class="task" { (messages.fixed("text-sheet-task")) }
        }
    }
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

fn exercise(view: &ExerciseView, messages: &Catalogue) -> Markup {
    html! {
        li {
            ul class="situation" { @for sentence in &view.situation { li { (sentence) } } }
            p class="question" { (view.question) }
            ul class="choices" {
                @for choice in &view.choices {
                    li { b { (choice.letter) } " " (FigureText(choice.value, choice.unit).to_string()) }
                }
            }
            div class="working" { (messages.fixed("text-sheet-working")) }
        }
    }
}

/// The right choice with its solution, and why each wrong one is wrong.
fn key(view: &ExerciseView, messages: &Catalogue) -> Markup {
    let Some(key) = &view.key else { return Markup::default() };
    let value_of = |letter: &str| {
        let choice = view.choices.iter().find(|choice| choice.letter == letter);
        choice.map(|choice| FigureText(choice.value, choice.unit).to_string()).unwrap_or_default()
    };
    let others: Vec<String> = key
        .editions
        .iter()
        .filter_map(|other| Some((other.edition.year(), other.value.filter(|value| *value != key.value)?)))
        .map(|(year, value)| format!("{year}: {}", FigureText(value, key.unit)))
        .collect();
    html! {
        li {
            p class="right" { b { (key.letter) } " " (FigureText(key.value, key.unit).to_string()) }
            ul class="steps" { @for step in &key.solution { li { (step) } } }
            table {
                @for wrong in &key.wrong {
                    @let rules = wrong.misconception.rules.iter();
                    @let cited: Vec<&str> = rules.filter_map(|rule| rule.citation.as_deref()).collect();
                    tr {
                        th { (wrong.letter) }
                        td { (value_of(wrong.letter)) }
                        td {
                            b { (wrong.misconception.title) "." } " " (wrong.misconception.why)
                            " " i { (cited.join(", ")) }
                        }
                    }
                }
            }
            @if !others.is_empty() {
                p class="editions" { (messages.fixed("text-sheet-other-editions")) " " (others.join(" · ")) }
            }
        }
    }
}

/// The edition and the cautions.
fn foot(sheet: &Sheet<'_>, messages: &Catalogue) -> Markup {
    let Spec { seed, version, .. } = sheet.spec;
    let unverified = (!sheet.spec.edition.is_verified()).then_some(Caution::UnverifiedEdition);
    html! {
        footer {
            p { (edition(sheet, messages)) " · " (seed) "/" (version) }
            @for caution in unverified.into_iter().chain(Caution::USUAL) { p { (messages.fixed(caution.key())) } }
        }
    }
}
