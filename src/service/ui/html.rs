//! The page as HTML, in a language.

use crate::i18n::Catalogue;
use maud::{DOCTYPE, Markup, PreEscaped, html};
use serde_json::{Map, Value, json};

/// The page in a language; `version` keeps a browser from mixing files of two releases.
pub(super) fn page(messages: &Catalogue, version: &str) -> String {
    let word = |key: &'static str| messages.fixed(key);
    let file = |name: &str| format!("/ui/{name}?{version}");
    let page = html! {
        (DOCTYPE)
        html lang=(messages.language().tag()) {
            head {
                meta charset="utf-8";
                title { (word("ui-title")) }
                meta name="viewport" content="width=device-width, initial-scale=1";
                meta name="color-scheme" content="light dark";
                meta name="description" content=(word("ui-purpose"));
                link rel="icon" href=(file("mark.svg")) type="image/svg+xml";
                link rel="stylesheet" href=(file("ui.css"));
                script type="module" src=(file("main.js")) {}
                script type="application/json" id="words" { (PreEscaped(shared(messages))) }
            }
            body {
                a class="skip" href="#work" { (word("ui-skip")) }
                header class="plate" {
                    h1 { "elbowroom" }
                    p { (word("ui-purpose")) }
                    nav aria-label=(word("ui-views")) {
                        ul {
                            li { a href="#check" { (word("ui-view-check")) } }
                            li { a href="#certificate" { (word("ui-view-certificate")) } }
                            li { a href="#audit" { (word("ui-view-audit")) } }
                            li { a href="/docs/" { (word("ui-reference")) } }
                        }
                    }
                    p class="languages" {
                        a href="/?language=en" lang="en" hreflang="en" { "English" } " "
                        a href="/?language=es" lang="es" hreflang="es" { "Español" }
                    }
                }
                noscript { p class="note" { (word("ui-no-script")) } }
                main id="work" tabindex="-1" { (check(word)) (certificate(word)) (audit(word)) }
                footer {
                    p { (word("caution-de-energize")) }
                    p { (word("caution-authority")) }
                }
            }
        }
    };
    page.into_string()
}

/// The view of one check: its request as a form and as JSON, and its answer.
fn check<'w>(word: impl Fn(&'static str) -> &'w str + Copy) -> Markup {
    html! {
        section id="view-check" aria-labelledby="check-title" {
            h2 id="check-title" { (word("ui-view-check")) }
            div class="choice" {
                p { label for="check" { (word("ui-which-check")) } select id="check" {} }
                p { label for="example" { (word("ui-begin-with")) } select id="example" {} }
            }
            p id="purpose" class="purpose" {}
            div class="columns" {
                div class="column" {
                    h3 id="request-title" { (word("ui-request")) }
                    fieldset class="switch" id="editions" { legend { (word("ui-edition")) } }
                    div class="tabs" role="tablist" aria-labelledby="request-title" {
                        button type="button" role="tab" id="tab-form" aria-controls="panel-form"
                            aria-selected="true" { (word("ui-form")) }
                        button type="button" role="tab" id="tab-json" aria-controls="panel-json"
                            aria-selected="false" tabindex="-1" { (word("ui-json")) }
                    }
                    div id="problem" tabindex="-1" hidden {}
                    form id="request" novalidate {
                        div role="tabpanel" id="panel-form" aria-labelledby="tab-form" {}
                        div role="tabpanel" id="panel-json" aria-labelledby="tab-json" hidden {
                            label for="json" { (word("ui-json-label")) }
                            textarea id="json" rows="24" spellcheck="false" autocapitalize="off"
                                autocomplete="off" {}
                        }
                        p class="actions" {
                            button type="submit" class="main" { (word("ui-evaluate")) } " "
                            button type="button" id="copy-curl" { (word("ui-copy-curl")) } " "
                            button type="button" id="copy-json" { (word("ui-copy-json")) }
                        }
                    }
                    details id="key" {
                        summary { (word("ui-key")) }
                        p {
                            label for="token" { (word("ui-key-label")) }
                            input id="token" type="password" autocomplete="off";
                        }
                    }
                }
                div class="column" id="answer" tabindex="-1" aria-labelledby="answer-title" {
                    h3 id="answer-title" { (word("ui-answer")) }
                    p id="status" role="status" aria-live="polite" { (word("ui-no-answer")) }
                    div id="answer-body" {}
                }
            }
        }
    }
}

/// The view that verifies a certificate.
fn certificate<'w>(word: impl Fn(&'static str) -> &'w str + Copy) -> Markup {
    html! {
        section id="view-certificate" aria-labelledby="certificate-title" hidden {
            h2 id="certificate-title" { (word("ui-view-certificate")) }
            p { (word("ui-certificate-purpose")) }
            form id="verify" {
                p {
                    label for="certificate-file" { (word("ui-certificate-file")) }
                    input id="certificate-file" type="file" accept=".json,.html,application/json,text/html";
                }
                p {
                    label for="certificate-text" { (word("ui-certificate-text")) }
                    textarea id="certificate-text" rows="10" spellcheck="false" autocapitalize="off"
                        autocomplete="off" {}
                }
                p class="actions" { button type="submit" class="main" { (word("ui-verify")) } }
            }
            div id="verified" role="status" aria-live="polite" {}
        }
    }
}

/// The view that runs the conformance cases.
fn audit<'w>(word: impl Fn(&'static str) -> &'w str + Copy) -> Markup {
    html! {
        section id="view-audit" aria-labelledby="audit-title" hidden {
            h2 id="audit-title" { (word("ui-view-audit")) }
            p { (word("ui-audit-purpose")) }
            form id="audit" {
                p { label for="audit-check" { (word("ui-which-check")) } select id="audit-check" {} }
                p { label for="audit-basis" { (word("ui-audit-basis")) } select id="audit-basis" {} }
                p class="actions" { button type="submit" class="main" { (word("ui-audit-run")) } }
            }
            div id="audited" role="status" aria-live="polite" {}
            div id="audit-cases" {}
        }
    }
}

/// The words that the scripts of the page need, as JSON that cannot end the element that it stands in.
fn shared(messages: &Catalogue) -> String {
    let none: [(&str, &str); 0] = [];
    let named = |kind: &'static str| messages.keys().filter(move |key| key.starts_with(kind));
    let own: Map<String, Value> = named("ui-")
        .chain(["text-yes", "text-no"])
        .map(|key| (key.to_owned(), messages.sentence(key, none).into()))
        .collect();
    let label = |key: &str| Some((key.strip_prefix("label-")?.to_owned(), messages.fixed(key).into()));
    let labels: Map<String, Value> = named("label-").filter_map(label).collect();
    json!({"words": own, "labels": labels}).to_string().replace('<', "\\u003c")
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::i18n::Language;

    #[test]
    fn every_page_is_whole_and_its_words_can_be_read() {
        for language in Language::ALL {
            let page = page(Catalogue::of(language), "abc");
            assert!(page.contains(&format!("<html lang=\"{}\">", language.tag())));
            let words = page.split("id=\"words\">").nth(1).and_then(|rest| rest.split("</script>").next());
            let words: Value = serde_json::from_str(words.unwrap()).unwrap();
            assert!(words["words"].as_object().is_some_and(|words| words.len() > 50), "{words}");
            assert_eq!(words["labels"]["findings"].is_string(), language == Language::Spanish);
        }
    }
}
