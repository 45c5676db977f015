//! Values of an answer as a person reads them: a figure with its unit, a rule by its title, a name as a label.

use crate::i18n::Catalogue;
use serde_json::{Map, Value};

type Members = Map<String, Value>;

/// An answer, and the messages that put its values in words.
#[derive(Clone, Copy, Debug)]
pub struct Shown<'a> {
    /// The answer.
    pub answer: &'a Value,
    /// The messages of the language.
    pub messages: &'a Catalogue,
}

impl Shown<'_> {
    /// A member or a word as a label.
    pub fn label(&self, name: &str) -> String {
        self.messages.label(name).into_owned()
    }

    /// A value on one line, by the member that it is.
    ///
    /// ```
    /// use elbowroom::{answers::Shown, i18n::Catalogue};
    /// let answer = serde_json::json!({"required": {"value": 23.0, "unit": "in3", "step": "s4"}});
    /// let shown = Shown { answer: &answer, messages: Catalogue::english() };
    /// assert_eq!(shown.plain("required", &answer["required"]), "23 in³");
    /// ```
    pub fn plain(&self, name: &str, value: &Value) -> String {
        match value {
            Value::Null => "–".to_owned(),
            Value::Bool(truth) => self.messages.fixed(if *truth { "text-yes" } else { "text-no" }).to_owned(),
            Value::Number(_) => plain_number(value),
            Value::String(text) => match name {
                "rule" => self.messages.rule_title(text),
                "because" => self.reason(text),
                "what" | "kind" | "verdict" | "status" => self.label(text),
                _ => text.clone(),
            },
            Value::Array(items) => {
                items.iter().map(|item| self.plain(name, item)).collect::<Vec<_>>().join(", ")
            }
            Value::Object(members) => figure(members).unwrap_or_default(),
        }
    }

    fn reason(&self, because: &str) -> String {
        let reasons = self.answer.get("reasons").and_then(Value::as_array);
        let reason = reasons
            .into_iter()
            .flatten()
            .find(|reason| reason.get("because").and_then(Value::as_str) == Some(because));
        reason.and_then(|reason| reason.get("message")?.as_str()).unwrap_or(because).to_owned()
    }
}

/// Whether a value fits on one line: no table and no group of members.
pub fn is_plain(value: &Value) -> bool {
    match value {
        Value::Object(members) => figure(members).is_some(),
        Value::Array(items) => items.iter().all(|item| !item.is_object() && !item.is_array()),
        _ => true,
    }
}

/// Whether a value says nothing: a null, or a list of nothing.
pub fn is_empty(value: &Value) -> bool {
    value.is_null() || value.as_array().is_some_and(Vec::is_empty)
}

/// The members that some objects have, each once, without those that are not shown.
pub fn columns<'a>(objects: &[&'a Members], hidden: &[&str]) -> Vec<&'a str> {
    let mut columns: Vec<&str> = Vec::new();
    for member in objects.iter().flat_map(|object| object.keys()) {
        if !hidden.contains(&member.as_str()) && !columns.contains(&member.as_str()) {
            columns.push(member);
        }
    }
    columns
}

/// A figure: its value and its unit.
fn figure(members: &Members) -> Option<String> {
    let value = members.get("value")?;
    let unit = match members.get("unit")?.as_str()? {
        "1" => "",
        "%" => "%",
        "in2" => " in²",
        "in3" => " in³",
        "mm2" => " mm²",
        "cm3" => " cm³",
        "in" => " in",
        other => return Some(format!("{} {other}", plain_number(value))),
    };
    Some(format!("{}{unit}", plain_number(value)))
}

fn plain_number(value: &Value) -> String {
    let text = value.to_string();
    text.strip_suffix(".0").map(str::to_owned).unwrap_or(text)
}
