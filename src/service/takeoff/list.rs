//! A takeoff that is one JSON document: where each of its items stands in the text.

use crate::checks::FaultCode;
use crate::json;
use crate::service::body::{self, schema::Schema};
use crate::service::fault_list::{FaultList, FaultView};
use crate::service::problem::Problem;
use serde::Deserialize;
use serde::de::{Deserializer, SeqAccess, Visitor};
use serde_json::json;
use serde_json::value::RawValue;
use std::fmt;
use std::ops::Range;

/// The most items that one JSON document may have. A stream may have any number of lines.
pub const MOST_ITEMS: usize = 50_000;

/// The items of a JSON document, as parts of its text.
pub struct List {
    /// Where each item stands in the text.
    pub items: Vec<Range<usize>>,
    /// The list as a JSON Pointer.
    pub above: &'static str,
}

impl List {
    /// Reads `{"items": […]}`, or the list alone.
    pub fn read(body: &[u8]) -> Result<Self, Problem> {
        #[derive(Deserialize)]
        #[serde(deny_unknown_fields)]
        struct Document<'a> {
            #[serde(borrow)]
            items: Items<'a>,
        }
        let alone = body.iter().find(|byte| !byte.is_ascii_whitespace()) == Some(&b'[');
        let (read, above) = match alone {
            true => (json::read::<Items<'_>>(body), ""),
            false => (json::read::<Document<'_>>(body).map(|document| document.items), "/items"),
        };
        match read {
            Ok(Items { texts, more: 0 }) => {
                let start = body.as_ptr() as usize;
                let range = |text: &str| {
                    let from = text.as_ptr() as usize - start;
                    from..from + text.len()
                };
                Ok(Self { items: texts.into_iter().map(range).collect(), above })
            }
            Ok(Items { texts, more }) => {
                let named = [("items", (texts.len() + more).to_string()), ("most", MOST_ITEMS.to_string())];
                let (code, key) = (FaultCode::TooManyItems, "fault-too-many-items");
                let fault = FaultView::in_body(above.to_owned(), code, key, named);
                Err(Problem::invalid(FaultList::of(fault)))
            }
            Err(error) => {
                // only what surrounds the items is looked at: each of them is answered on its own
                let list = json!({"type": "array"});
                let document = json!({
                    "type": "object",
                    "properties": {"items": list},
                    "required": ["items"],
                    "additionalProperties": false
                });
                Err(body::refuse(body, &error, Schema::alone(&json!({"oneOf": [document, list]}))))
            }
        }
    }
}

/// The texts of a list's items, and how many more there are than are read.
struct Items<'a> {
    texts: Vec<&'a str>,
    more: usize,
}

impl<'de: 'a, 'a> Deserialize<'de> for Items<'a> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        struct Texts;
        impl<'de> Visitor<'de> for Texts {
            type Value = Items<'de>;
            fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
                f.write_str("a list of items")
            }
            fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<Items<'de>, A::Error> {
                let (mut texts, mut more) = (Vec::new(), 0);
                while let Some(item) = items.next_element::<&'de RawValue>()? {
                    if texts.len() < MOST_ITEMS { texts.push(item.get()) } else { more += 1 }
                }
                Ok(Items { texts, more })
            }
        }
        deserializer.deserialize_seq(Texts)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn both_forms_of_a_document_are_read_and_anything_else_is_refused() {
        let items = |text: &str| List::read(text.as_bytes()).map(|list| (list.items.len(), list.above));
        assert_eq!(items(r#"{"items": [1, {"a": []}]}"#).unwrap(), (2, "/items"));
        assert_eq!(items(" [1, 2, 3]").unwrap(), (3, ""));
        for bad in
            [r#"{"items": 1}"#, r#"{"itms": []}"#, r#"{"items": [], "more": 1}"#, "1", "[1", "", "[1] 2"]
        {
            assert!(items(bad).is_err(), "{bad}");
        }
        let many = format!("[{}1]", "1,".repeat(MOST_ITEMS));
        let problem = items(&many).unwrap_err();
        assert_eq!(problem.faults.kept()[0].code, FaultCode::TooManyItems);
    }
}
