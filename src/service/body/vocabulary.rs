//! What the keywords of a published schema say: types, closed sets, limits, formats of our own.

use crate::checks::FaultCode;
use crate::service::language;
use crate::tables::standard_boxes::StandardBox;
use crate::trade::{ConductorSize, TradeSize};
use serde_json::{Map, Value};

/// A JSON object.
pub(super) type Members = Map<String, Value>;

/// The keywords that are understood; the second half only annotates.
pub const KEYWORDS: &[&str] = &[
    "$ref",
    "additionalProperties",
    "allOf",
    "anyOf",
    "const",
    "enum",
    "exclusiveMaximum",
    "exclusiveMinimum",
    "format",
    "items",
    "maxItems",
    "maxLength",
    "maximum",
    "minItems",
    "minLength",
    "minimum",
    "oneOf",
    "properties",
    "required",
    "type",
    "x-decimals",
    // annotations
    "default",
    "deprecated",
    "description",
    "discriminator",
    "example",
    "examples",
    "title",
    "x-role",
];

/// A format of our own: how it is read, and what is said of a text that is not.
pub(super) struct Format {
    pub reads: fn(&str) -> bool,
    pub accepted: fn() -> Vec<&'static str>,
    pub has_nearest: bool,
    pub code: FaultCode,
    pub key: &'static str,
}

impl Format {
    pub(super) fn named(name: &str) -> Option<Self> {
        Some(match name {
            "conductor-size" => Self {
                reads: |text| ConductorSize::read(text).is_some(),
                accepted: || ConductorSize::all().map(ConductorSize::name).collect(),
                has_nearest: false,
                code: FaultCode::UnknownConductorSize,
                key: "fault-schema-conductor-size",
            },
            "trade-size" => Self {
                reads: |text| TradeSize::read(text).is_some(),
                accepted: || TradeSize::all().map(TradeSize::name).collect(),
                has_nearest: false,
                code: FaultCode::UnknownTradeSize,
                key: "fault-schema-trade-size",
            },
            "standard-box" => Self {
                reads: |text| StandardBox::read(text).is_some(),
                accepted: || StandardBox::all().map(StandardBox::key).collect(),
                has_nearest: true,
                code: FaultCode::UnknownStandardBox,
                key: "fault-schema-standard-box",
            },
            _ => return None,
        })
    }
}

/// Whether a number is outside a limit.
pub(super) type Outside<N> = fn(&N, &N) -> bool;

/// Each limit to the length of a text: what is outside it, and what is said then.
pub(super) const LENGTHS: &[(&str, Outside<u64>, &str)] = &[
    ("minLength", PartialOrd::lt, "fault-schema-too-short"),
    ("maxLength", PartialOrd::gt, "fault-schema-too-long"),
];

/// Each bound of a number: what is outside it, and what is said then.
pub(super) const BOUNDS: &[(&str, Outside<f64>, &str)] = &[
    ("minimum", PartialOrd::lt, "fault-schema-at-least"),
    ("maximum", PartialOrd::gt, "fault-schema-at-most"),
    ("exclusiveMinimum", PartialOrd::le, "fault-schema-above"),
    ("exclusiveMaximum", PartialOrd::ge, "fault-schema-below"),
];

/// The list that a keyword holds.
pub(super) fn list<'a>(schema: &'a Members, keyword: &str) -> &'a [Value] {
    schema.get(keyword).and_then(Value::as_array).map_or(&[], Vec::as_slice)
}

/// The types that a schema names; none when it takes any.
pub(super) fn types(schema: &Members) -> Vec<&str> {
    match schema.get("type") {
        Some(Value::String(one)) => vec![one],
        Some(Value::Array(several)) => several.iter().filter_map(Value::as_str).collect(),
        _ => Vec::new(),
    }
}

/// The JSON type of a value.
pub(super) fn type_of(value: &Value) -> &'static str {
    match value {
        Value::Null => "null",
        Value::Bool(_) => "boolean",
        Value::Number(_) => "number",
        Value::String(_) => "string",
        Value::Array(_) => "array",
        Value::Object(_) => "object",
    }
}

/// Whether a value is of a type that a schema takes.
pub(super) fn type_fits(schema: &Members, value: &Value) -> bool {
    let types = types(schema);
    let whole = || value.as_f64().is_some_and(|number| number.fract() == 0.0);
    types.is_empty()
        || types.contains(&type_of(value))
        || (types.contains(&"integer") && value.is_number() && whole())
}

/// A type as a sentence writes it.
pub(super) fn type_in_words(name: &str) -> &'static str {
    let messages = language::messages();
    messages.fixed(match name {
        "object" => "text-type-object",
        "array" => "text-type-array",
        "string" => "text-type-string",
        "integer" => "text-type-integer",
        "boolean" => "text-type-boolean",
        "null" => "text-type-null",
        _ => "text-type-number",
    })
}

/// Alternatives as a sentence writes them, each once.
pub(super) fn in_words(alternatives: &[&str]) -> String {
    let is_first = |(index, alternative): &(usize, &&str)| !alternatives[..*index].contains(alternative);
    let once: Vec<&str> = alternatives.iter().enumerate().filter(is_first).map(|(_, one)| *one).collect();
    once.join(" / ")
}

/// The values of a closed set.
pub(super) fn closed_set(schema: &Members) -> Vec<&Value> {
    match schema.get("const") {
        Some(only) => vec![only],
        None => list(schema, "enum").iter().collect(),
    }
}

/// The member that every alternative requires and fixes to values of its own.
pub(super) fn tag_of<'a>(several: &[(&'a Value, &'a Members)]) -> Option<&'a str> {
    let (_, first) = several.first()?;
    list(first, "required")
        .iter()
        .filter_map(Value::as_str)
        .find(|member| several.iter().all(|(_, schema)| !tag_values(schema, member).is_empty()))
}

/// The values that an alternative fixes a member to.
pub(super) fn tag_values<'a>(schema: &'a Members, member: &str) -> Vec<&'a Value> {
    let declared = schema.get("properties").and_then(|properties| properties.get(member));
    declared.and_then(Value::as_object).map_or_else(Vec::new, closed_set)
}

/// A value as a sentence or a list of accepted values writes it.
pub(super) fn plain(value: &Value) -> String {
    match value {
        Value::String(text) => text.clone(),
        other => shortened(&other.to_string()),
    }
}

/// A text cut to a length that a sentence can hold.
pub(super) fn shortened(text: &str) -> String {
    const MOST: usize = 60;
    match text.char_indices().nth(MOST) {
        Some((end, _)) => format!("{}…", text.get(..end).unwrap_or_default()),
        None => text.to_owned(),
    }
}
