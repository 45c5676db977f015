//! A request on paper: one line for each thing in it, with the place that steps of the proof name.

use crate::service::body::lenient::append;
use maud::{Markup, html};
use serde_json::{Map, Value};

/// A request. Members are called as the request calls them, in every language.
pub(super) fn lines(request: &Map<String, Value>) -> Markup {
    html! { ul { (thing(&mut String::new(), request)) } }
}

fn thing(at: &mut String, members: &Map<String, Value>) -> Markup {
    let (plain, groups): (Vec<_>, Vec<_>) = members.iter().partition(|(_, value)| is_plain(value));
    html! {
        @if !plain.is_empty() {
            li {
                code { (if at.is_empty() { "/" } else { at.as_str() }) } " "
                @for (index, (name, value)) in plain.into_iter().enumerate() {
                    @if index > 0 { " · " }
                    (name) " " b { (shown(value)) }
                }
            }
        }
        @for (name, value) in groups { (below(at, name, value)) }
    }
}

/// What stands at a member or an index of the place.
fn below(at: &mut String, name: &str, value: &Value) -> Markup {
    let before = append(at, name);
    let markup = match value {
        Value::Object(members) => thing(at, members),
        Value::Array(items) => html! {
            @for (index, item) in items.iter().enumerate() { (below(at, &index.to_string(), item)) }
        },
        plain => html! { li { code { (at) } " " b { (shown(plain)) } } },
    };
    at.truncate(before);
    markup
}

/// Whether a value stands on the line of the thing that has it.
fn is_plain(value: &Value) -> bool {
    match value {
        Value::Object(_) => false,
        Value::Array(items) => items.iter().all(|item| !item.is_object() && !item.is_array()),
        _ => true,
    }
}

fn shown(value: &Value) -> String {
    match value {
        Value::String(text) => text.clone(),
        Value::Array(items) => items.iter().map(shown).collect::<Vec<_>>().join(", "),
        other => other.to_string(),
    }
}
