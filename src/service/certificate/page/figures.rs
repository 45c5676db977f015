//! The figures of an answer, each with where the code asks for it.

use crate::answers::{Shown, columns, is_empty, is_plain};
use maud::{Markup, html};
use serde_json::{Map, Value};
use std::collections::HashMap;

type Members = Map<String, Value>;

/// Members that say where something stands, not what it is.
const HIDDEN: [&str; 3] = ["at", "rule", "step"];

/// Where the edition has the rules of an answer: by step of the proof and by rule.
pub(super) struct Citations<'a>(HashMap<&'a str, &'a str>);

impl<'a> Citations<'a> {
    /// Those of an answer with its whole proof.
    pub(super) fn of(answer: &'a Value) -> Self {
        let steps = answer.pointer("/derivation/steps").and_then(Value::as_array);
        let mut citations = HashMap::new();
        for step in steps.into_iter().flatten() {
            let text = |member: &str| step.get(member).and_then(Value::as_str);
            let Some(citation) = text("citation") else { continue };
            for name in [text("id"), text("rule")].into_iter().flatten() {
                citations.insert(name, citation);
            }
        }
        Self(citations)
    }

    /// Of a figure, or of anything that names its rule or its step.
    fn find(&self, value: &Value) -> Option<&'a str> {
        let named = ["rule", "step"].into_iter().filter_map(|member| value.get(member)?.as_str());
        named.filter_map(|name| self.0.get(name)).copied().next()
    }

    /// Of a row: its own, or that of the last of its figures that has one.
    fn of_row(&self, row: &Members, whole: &Value) -> Option<&'a str> {
        self.find(whole).or_else(|| row.values().rev().find_map(|value| self.find(value)))
    }
}

/// The outcome as tables.
pub(super) fn blocks(shown: Shown<'_>, citations: &Citations<'_>) -> Markup {
    html! {
        div class="blocks" {
            @if let Some(Value::Object(outcome)) = shown.answer.get("outcome") {
                (members(shown, citations, None, outcome))
            }
        }
    }
}

/// The members of an object: those of one line in a table, lists and groups as blocks of their own.
fn members(shown: Shown<'_>, citations: &Citations<'_>, title: Option<&str>, object: &Members) -> Markup {
    let visible = object.iter().filter(|(name, value)| !HIDDEN.contains(&name.as_str()) && !is_empty(value));
    let (plain, groups): (Vec<_>, Vec<_>) = visible.partition(|(_, value)| is_plain(value));
    html! {
        @if !plain.is_empty() {
            table {
                @if let Some(title) = title { caption { (title) } }
                @for (name, value) in plain {
                    tr {
                        th { (shown.label(name)) }
                        td { (shown.plain(name, value)) }
                        td { (cited(shown, citations.find(value))) }
                    }
                }
            }
        }
        @for (name, value) in groups {
            @let title = shown.label(name);
            @match (in_line(shown, name, value), value) {
                (Some(line), _) => { p { b { (title) "." } " " (line) } }
                (None, Value::Array(items)) => { (list(shown, citations, &title, items)) }
                (None, Value::Object(object)) => { (members(shown, citations, Some(&title), object)) }
                _ => {}
            }
        }
    }
}

/// A value in a line: a plain one, or a list of things that have one or two members: `18 AWG: 7 · 16 AWG: 6`.
fn in_line(shown: Shown<'_>, name: &str, value: &Value) -> Option<String> {
    if is_plain(value) {
        return Some(shown.plain(name, value));
    }
    let things = value.as_array()?.iter().map(|thing| {
        let visible = thing.as_object()?.iter().filter(|(name, _)| !HIDDEN.contains(&name.as_str()));
        let visible: Vec<(&String, &Value)> = visible.collect();
        let is_short = visible.len() <= 2 && visible.iter().all(|(_, value)| is_plain(value));
        let texts = visible.into_iter().map(|(name, value)| shown.plain(name, value));
        is_short.then(|| texts.collect::<Vec<_>>().join(": "))
    });
    things.collect::<Option<Vec<String>>>().map(|things| things.join(" · "))
}

/// A list: like things in a table, anything else one below the other.
fn list(shown: Shown<'_>, citations: &Citations<'_>, title: &str, items: &[Value]) -> Markup {
    let objects: Vec<&Members> = items.iter().filter_map(Value::as_object).collect();
    let is_line =
        |object: &&Members| object.iter().all(|(name, value)| in_line(shown, name, value).is_some());
    if !objects.iter().all(is_line) {
        if let [only] = objects[..] {
            return members(shown, citations, Some(title), only);
        }
        let id = |object: &Members| object.get("id").and_then(Value::as_str).map(|id| format!(": {id}"));
        return html! {
            @for (index, object) in objects.iter().enumerate() {
                h3 { (title) " " (index + 1) (id(object).unwrap_or_default()) }
                (members(shown, citations, None, object))
            }
        };
    }
    let columns = columns(&objects, &HIDDEN);
    let cell = |object: &Members, column: &str| in_line(shown, column, object.get(column)?);
    html! {
        table {
            caption { (title) }
            tr {
                @for column in &columns { th { (shown.label(column)) } }
                th {}
            }
            @for (object, whole) in objects.iter().zip(items) {
                tr {
                    @for column in &columns { td { (cell(object, column).unwrap_or_default()) } }
                    td { (cited(shown, citations.of_row(object, whole))) }
                }
            }
        }
    }
}

fn cited(shown: Shown<'_>, citation: Option<&str>) -> Markup {
    html! { @if let Some(citation) = citation { i { (shown.messages.citation(citation)) } } }
}
