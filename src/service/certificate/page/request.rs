//! A request on paper: one line for each thing in it, with the place that steps of the proof name.

use crate::markup::Markup;
use crate::service::body::lenient::append;
use serde_json::{Map, Value};

/// Writes a request. Members are called as the request calls them, in every language.
pub(super) fn write(page: &mut Markup<'_>, request: &Map<String, Value>) {
    page.raw("<ul>\n");
    thing(page, &mut String::new(), request);
    page.raw("</ul>\n");
}

fn thing(page: &mut Markup<'_>, at: &mut String, members: &Map<String, Value>) {
    let (plain, groups): (Vec<_>, Vec<_>) = members.iter().partition(|(_, value)| is_plain(value));
    if !plain.is_empty() {
        page.raw("<li><code>").text(if at.is_empty() { "/" } else { at }).raw("</code> ");
        for (index, (name, value)) in plain.into_iter().enumerate() {
            page.raw(if index == 0 { "" } else { " · " })
                .text(name)
                .raw(" <b>")
                .text(&told(value))
                .raw("</b>");
        }
        page.raw("</li>\n");
    }
    for (name, value) in groups {
        let before = append(at, name);
        group(page, at, value);
        at.truncate(before);
    }
}

fn group(page: &mut Markup<'_>, at: &mut String, value: &Value) {
    match value {
        Value::Object(members) => thing(page, at, members),
        Value::Array(items) => {
            for (index, item) in items.iter().enumerate() {
                let before = append(at, &index.to_string());
                group(page, at, item);
                at.truncate(before);
            }
        }
        plain => {
            page.raw("<li><code>").text(at).raw("</code> <b>").text(&told(plain)).raw("</b></li>\n");
        }
    }
}

/// Whether a value stands on the line of the thing that has it.
fn is_plain(value: &Value) -> bool {
    match value {
        Value::Object(_) => false,
        Value::Array(items) => items.iter().all(|item| !item.is_object() && !item.is_array()),
        _ => true,
    }
}

fn told(value: &Value) -> String {
    match value {
        Value::String(text) => text.clone(),
        Value::Array(items) => items.iter().map(told).collect::<Vec<_>>().join(", "),
        other => other.to_string(),
    }
}
