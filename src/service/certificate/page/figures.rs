//! The figures of an answer, each with where the code asks for it.

use crate::answers::{Shown, columns, is_empty, is_plain};
use crate::markup::Markup;
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

/// Writes the outcome.
pub(super) fn write(page: &mut Markup<'_>, shown: Shown<'_>, citations: &Citations<'_>) {
    page.raw("<div class=\"blocks\">\n");
    if let Some(Value::Object(outcome)) = shown.answer.get("outcome") {
        members(page, shown, citations, None, outcome);
    }
    page.raw("</div>\n");
}

/// The members of an object: those of one line in a table, lists and groups as blocks of their own.
fn members(
    page: &mut Markup<'_>,
    shown: Shown<'_>,
    citations: &Citations<'_>,
    title: Option<&str>,
    object: &Members,
) {
    let said = object.iter().filter(|(name, value)| !HIDDEN.contains(&name.as_str()) && !is_empty(value));
    let (plain, groups): (Vec<_>, Vec<_>) = said.partition(|(_, value)| is_plain(value));
    if !plain.is_empty() {
        page.raw("<table>\n");
        caption(page, title);
        for (name, value) in plain {
            page.raw("<tr><th>").text(&shown.label(name)).raw("</th><td>").text(&shown.plain(name, value));
            page.raw("</td><td>");
            cite(page, shown, citations.find(value));
            page.raw("</td></tr>\n");
        }
        page.raw("</table>\n");
    }
    for (name, value) in groups {
        let title = shown.label(name);
        match (told(shown, name, value), value) {
            (Some(told), _) => {
                page.raw("<p><b>").text(&title).raw(".</b> ").text(&told).raw("</p>\n");
            }
            (None, Value::Array(items)) => list(page, shown, citations, &title, items),
            (None, Value::Object(object)) => members(page, shown, citations, Some(&title), object),
            _ => {}
        }
    }
}

/// A value in a line: a plain one, or a list of things that have one or two members: `18 AWG: 7 · 16 AWG: 6`.
fn told(shown: Shown<'_>, name: &str, value: &Value) -> Option<String> {
    if is_plain(value) {
        return Some(shown.plain(name, value));
    }
    let things = value.as_array()?.iter().map(|thing| {
        let said = thing.as_object()?.iter().filter(|(name, _)| !HIDDEN.contains(&name.as_str()));
        let said: Vec<(&String, &Value)> = said.collect();
        let is_short = said.len() <= 2 && said.iter().all(|(_, value)| is_plain(value));
        let told = said.into_iter().map(|(name, value)| shown.plain(name, value));
        is_short.then(|| told.collect::<Vec<_>>().join(": "))
    });
    things.collect::<Option<Vec<String>>>().map(|things| things.join(" · "))
}

/// A list: like things in a table, anything else one below the other.
fn list(page: &mut Markup<'_>, shown: Shown<'_>, citations: &Citations<'_>, title: &str, items: &[Value]) {
    let objects: Vec<&Members> = items.iter().filter_map(Value::as_object).collect();
    let is_line = |object: &&Members| object.iter().all(|(name, value)| told(shown, name, value).is_some());
    if !objects.iter().all(is_line) {
        if let [only] = objects[..] {
            return members(page, shown, citations, Some(title), only);
        }
        for (index, object) in objects.iter().enumerate() {
            let id = object.get("id").and_then(Value::as_str).map(|id| format!(": {id}")).unwrap_or_default();
            page.raw("<h3>").text(&format!("{title} {}{id}", index + 1)).raw("</h3>\n");
            members(page, shown, citations, None, object);
        }
        return;
    }
    let columns = columns(&objects, &HIDDEN);
    page.raw("<table>\n");
    caption(page, Some(title));
    page.raw("<tr>");
    for column in &columns {
        page.raw("<th>").text(&shown.label(column)).raw("</th>");
    }
    page.raw("<th></th></tr>\n");
    for (object, whole) in objects.iter().zip(items) {
        page.raw("<tr>");
        for column in &columns {
            let told = object.get(*column).and_then(|value| told(shown, column, value)).unwrap_or_default();
            page.raw("<td>").text(&told).raw("</td>");
        }
        page.raw("<td>");
        cite(page, shown, citations.of_row(object, whole));
        page.raw("</td></tr>\n");
    }
    page.raw("</table>\n");
}

fn caption(page: &mut Markup<'_>, title: Option<&str>) {
    if let Some(title) = title {
        page.raw("<caption>").text(title).raw("</caption>\n");
    }
}

fn cite(page: &mut Markup<'_>, shown: Shown<'_>, citation: Option<&str>) {
    if let Some(citation) = citation {
        page.raw("<i>").text(&shown.messages.citation(citation)).raw("</i>");
    }
}
