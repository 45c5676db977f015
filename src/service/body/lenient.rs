//! A lenient JSON parser for bodies that were refused: where they break off, which members stand twice, what is nested too deep.

use super::super::fault_list::{FaultList, FaultView};
use super::super::problem::Problem;
use crate::checks::FaultCode;
use crate::service::language;
use serde::de::{self, DeserializeSeed, Deserializer, IgnoredAny, MapAccess, SeqAccess, Visitor};
use serde_json::{Map, Number, Value};
use std::fmt;

/// How deep objects and lists may be nested. No request comes near it.
pub const DEEPEST: usize = 32;

/// A body that is JSON.
#[derive(Clone, Debug)]
pub struct Read {
    /// The value; of members that stand twice, the first.
    pub value: Value,
    /// What is wrong with it as JSON that is exchanged: members that stand twice, values nested too deep.
    pub faults: FaultList,
    /// Where values were left unread because they are nested too deep: null stands for them.
    pub skipped: Vec<String>,
}

/// Reads a body; the problem says why it is no JSON.
pub fn read(body: &[u8]) -> Result<Read, Problem> {
    let malformed = |key, named: Vec<(&'static str, String)>| {
        Problem::malformed(FaultView::in_body(String::new(), FaultCode::MalformedJson, key, named))
    };
    if body.iter().all(u8::is_ascii_whitespace) {
        return Err(malformed("fault-json-empty", Vec::new()));
    }
    if body.starts_with(b"\xef\xbb\xbf") {
        return Err(malformed("fault-json-byte-order-mark", Vec::new()));
    }
    let text = std::str::from_utf8(body).map_err(|error| {
        malformed("fault-json-not-utf8", vec![("byte", (error.valid_up_to() + 1).to_string())])
    })?;
    let mut state = State::default();
    let mut reader = serde_json::Deserializer::from_str(text);
    let value = Node { state: &mut state, depth: 0 }
        .deserialize(&mut reader)
        .and_then(|value| reader.end().map(|()| value))
        .map_err(|error| {
            let (line, column) = (error.line(), error.column());
            let mut named = vec![("line", line.to_string()), ("column", column.to_string())];
            if error.is_eof() {
                return malformed("fault-json-ends-early", named);
            }
            named.push(("found", found(text, line, column)));
            malformed("fault-json-unexpected", named)
        })?;
    Ok(Read { value, faults: state.faults, skipped: state.skipped })
}

/// The character at a position of the text, as a person reads it.
fn found(text: &str, line: usize, column: usize) -> String {
    let at = |line: &str| line.get(column.saturating_sub(1)..).and_then(|rest| rest.chars().next());
    match text.split('\n').nth(line.saturating_sub(1)).and_then(at) {
        Some(character) => character.escape_debug().to_string(),
        None => language::messages().fixed("text-end-of-line").to_owned(),
    }
}

/// Appends a member or an index to a JSON Pointer, and gives back the length to cut it off again.
pub fn append(pointer: &mut String, segment: &str) -> usize {
    let before = pointer.len();
    pointer.push('/');
    pointer.push_str(&segment.replace('~', "~0").replace('/', "~1"));
    before
}

#[derive(Default)]
struct State {
    pointer: String,
    faults: FaultList,
    skipped: Vec<String>,
}

impl State {
    fn note(&mut self, code: FaultCode, key: &'static str, named: (&'static str, String)) {
        if self.faults.is_full() {
            self.faults.count_one();
        } else {
            self.faults.push(FaultView::in_body(self.pointer.clone(), code, key, [named]));
        }
    }

    fn too_deep(&mut self) {
        self.note(FaultCode::OutOfBounds, "fault-json-too-deep", ("most", DEEPEST.to_string()));
        if self.skipped.len() < super::super::fault_list::MOST_LISTED {
            self.skipped.push(self.pointer.clone());
        }
    }
}

struct Node<'s> {
    state: &'s mut State,
    depth: usize,
}

impl<'de> DeserializeSeed<'de> for Node<'_> {
    type Value = Value;

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<Value, D::Error> {
        deserializer.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Node<'_> {
    type Value = Value;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a JSON value")
    }

    fn visit_unit<E: de::Error>(self) -> Result<Value, E> {
        Ok(Value::Null)
    }

    fn visit_bool<E: de::Error>(self, truth: bool) -> Result<Value, E> {
        Ok(Value::Bool(truth))
    }

    fn visit_i64<E: de::Error>(self, number: i64) -> Result<Value, E> {
        Ok(Value::Number(number.into()))
    }

    fn visit_u64<E: de::Error>(self, number: u64) -> Result<Value, E> {
        Ok(Value::Number(number.into()))
    }

    fn visit_f64<E: de::Error>(self, number: f64) -> Result<Value, E> {
        Ok(Number::from_f64(number).map_or(Value::Null, Value::Number))
    }

    fn visit_str<E: de::Error>(self, text: &str) -> Result<Value, E> {
        Ok(Value::String(text.to_owned()))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<Value, A::Error> {
        let Node { state, depth } = self;
        if depth >= DEEPEST {
            state.too_deep();
            while items.next_element::<IgnoredAny>()?.is_some() {}
            return Ok(Value::Null);
        }
        let mut list = Vec::new();
        loop {
            let before = append(&mut state.pointer, &list.len().to_string());
            let item = items.next_element_seed(Node { state, depth: depth + 1 })?;
            state.pointer.truncate(before);
            match item {
                Some(item) => list.push(item),
                None => return Ok(Value::Array(list)),
            }
        }
    }

    fn visit_map<A: MapAccess<'de>>(self, mut members: A) -> Result<Value, A::Error> {
        let Node { state, depth } = self;
        if depth >= DEEPEST {
            state.too_deep();
            while members.next_entry::<IgnoredAny, IgnoredAny>()?.is_some() {}
            return Ok(Value::Null);
        }
        let mut object = Map::new();
        while let Some(member) = members.next_key::<String>()? {
            let before = append(&mut state.pointer, &member);
            if object.contains_key(&member) {
                state.note(FaultCode::DuplicateMember, "fault-json-duplicate", ("member", member));
                members.next_value::<IgnoredAny>()?;
            } else {
                let value = members.next_value_seed(Node { state, depth: depth + 1 })?;
                object.insert(member, value);
            }
            state.pointer.truncate(before);
        }
        Ok(Value::Object(object))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn good_text_reads_as_serde_json_reads_it() {
        for text in [r#"{"a": [1, -2, 3.5, "x", null, true, {}], "b~/": {"c": []}}"#, "4", "\"\""] {
            let read = read(text.as_bytes()).unwrap();
            assert_eq!(read.value, serde_json::from_str::<Value>(text).unwrap());
            assert!(read.faults.is_empty());
        }
    }

    #[test]
    fn every_member_that_stands_twice_is_named_with_its_place() {
        let read = read(br#"{"a": {"x/y": 1, "x/y": 2}, "b": [{"c": 1, "c": 1, "c": 2}], "a": 3}"#).unwrap();
        let places: Vec<_> = read.faults.kept().iter().map(|fault| fault.pointer.clone().unwrap()).collect();
        assert_eq!(places, ["/a/x~1y", "/b/0/c", "/b/0/c", "/a"]);
        assert_eq!(read.value["a"]["x/y"], 1);
    }

    #[test]
    fn nesting_is_read_to_its_limit_and_no_deeper() {
        let nested = |levels: usize| format!("{}{}", "[".repeat(levels), "]".repeat(levels));
        assert!(read(nested(DEEPEST).as_bytes()).unwrap().faults.is_empty());
        let over = read(nested(DEEPEST + 1).as_bytes()).unwrap();
        assert_eq!(over.skipped, ["/0".repeat(DEEPEST)]);
        assert_eq!(over.faults.kept()[0].code, FaultCode::OutOfBounds);
        assert!(read(nested(200_000).as_bytes()).is_ok());
    }

    #[test]
    fn what_is_no_json_says_where_it_breaks() {
        for (text, part) in [
            (&b""[..], "empty"),
            (b" \n", "empty"),
            (b"\xef\xbb\xbf{}", "byte-order mark"),
            (b"{\"a\": \"\xff\"}", "byte 8"),
            (b"{\"a\": 1", "too early"),
            (b"{\"a\": 1}\n x", "Line 2, column 2: x"),
            (b"{\"a\": 1,}", "}"),
            (b"{'a': 1}", "column 2"),
            (b"{\"a\": \"\\ud800\"}", "Line 1"),
            (b"{\"a\": NaN}", "N"),
            (b"{\"a\": 1e999}", "Line 1"),
        ] {
            let problem = read(text).unwrap_err();
            let [fault] = problem.faults.kept() else { panic!("{problem:?}") };
            assert_eq!(fault.code, FaultCode::MalformedJson);
            assert!(fault.detail.contains(part), "{part}: {}", fault.detail);
        }
    }
}
