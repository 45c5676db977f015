//! The validator of refused bodies: a value against a published JSON Schema, every fault with its place and what would be right.
//!
//! It knows the [`KEYWORDS`](super::vocabulary::KEYWORDS) that our schemas use, and no others; tests hold it against the schemas and
//! against an independent validator. It is our own because it must name the accepted values and the nearest name, descend into
//! the alternative that was meant, and stay cheap on a body that is nothing but faults.

use super::lenient::append;
use super::schema::Schema;
use super::vocabulary::{
    BOUNDS, Format, LENGTHS, Members, closed_set, in_words, list, plain, shortened, tag_of, tag_values,
    type_fits, type_in_words, type_of, types,
};
use crate::checks::FaultCode;
use crate::json::same;
use crate::quantity::has_at_most_decimals;
use crate::service::fault_list::{FaultList, FaultView};
use serde_json::{Map, Value};

/// Adds every fault of a value to the list, except at and below the places that are skipped.
pub(super) fn validate(schema: Schema<'_>, value: &Value, skipped: &[String], faults: &mut FaultList) {
    Validator { schema, skipped, pointer: String::new(), faults }.check(schema.root, value);
}

struct Validator<'a, 'f> {
    schema: Schema<'a>,
    skipped: &'a [String],
    pointer: String,
    faults: &'f mut FaultList,
}

impl<'a> Validator<'a, '_> {
    fn check(&mut self, schema: &'a Value, value: &Value) {
        let Some(schema) = schema.as_object() else {
            if schema == &Value::Bool(false) {
                self.add(FaultCode::NotAccepted, "fault-schema-not-accepted", &[]);
            }
            return;
        };
        if self.skipped.contains(&self.pointer) {
            return;
        }
        if let Some(named) = self.named(schema) {
            self.check(named, value);
        }
        for part in list(schema, "allOf") {
            self.check(part, value);
        }
        for alternatives in ["oneOf", "anyOf"] {
            if let Some(Value::Array(branches)) = schema.get(alternatives) {
                self.choose(branches, value);
            }
        }
        if !type_fits(schema, value) {
            self.wrong_type(&[schema], value);
            return;
        }
        let closed = closed_set(schema);
        if !closed.is_empty() && !closed.iter().any(|accepted| same(accepted, value)) {
            self.unknown_value(&closed, value);
            return;
        }
        match value {
            Value::String(text) => self.check_text(schema, text),
            Value::Number(_) => self.check_number(schema, value),
            Value::Array(items) => self.check_list(schema, items),
            Value::Object(members) => self.check_object(schema, members),
            Value::Null | Value::Bool(_) => {}
        }
    }

    fn named(&self, schema: &Members) -> Option<&'a Value> {
        self.schema.named(schema.get("$ref")?.as_str()?)
    }

    /// The schema that is meant after following references.
    fn resolved(&self, schema: &'a Value) -> Option<&'a Members> {
        let schema = schema.as_object()?;
        match self.named(schema) {
            Some(named) => self.resolved(named),
            None => Some(schema),
        }
    }

    fn add(&mut self, code: FaultCode, key: &'static str, named: &[(&'static str, String)]) {
        self.add_with(|pointer| FaultView::in_body(pointer, code, key, named.iter().cloned()));
    }

    fn add_with(&mut self, fault: impl FnOnce(String) -> FaultView) {
        if self.faults.is_full() {
            self.faults.count_one();
        } else {
            self.faults.push(fault(self.pointer.clone()));
        }
    }

    fn below(&mut self, segment: &str, check: impl FnOnce(&mut Self)) {
        let before = append(&mut self.pointer, segment);
        check(self);
        self.pointer.truncate(before);
    }

    fn wrong_type(&mut self, schemas: &[&Members], value: &Value) {
        let wanted: Vec<&str> = schemas.iter().flat_map(|schema| types(schema)).map(type_in_words).collect();
        let named = [("wanted", in_words(&wanted)), ("given", type_in_words(type_of(value)).to_owned())];
        let key = if value.is_null() { "fault-schema-null" } else { "fault-schema-wrong-type" };
        let closed: Vec<&Value> = schemas.iter().flat_map(|schema| closed_set(schema)).collect();
        let accepted: Vec<String> = closed.into_iter().map(plain).collect();
        self.add_with(|pointer| {
            FaultView::in_body(pointer, FaultCode::WrongType, key, named)
                .accepting(accepted.iter().map(String::as_str), None)
        });
    }

    fn unknown_value(&mut self, closed: &[&Value], value: &Value) {
        let accepted: Vec<String> = closed.iter().map(|value| plain(value)).collect();
        let given = plain(value);
        self.add_with(|pointer| {
            let named = [("given", shortened(&given))];
            FaultView::in_body(pointer, FaultCode::UnknownValue, "fault-schema-unknown-value", named)
                .accepting(accepted.iter().map(String::as_str), Some(&given))
        });
    }

    fn check_text(&mut self, schema: &Members, text: &str) {
        let format = schema.get("format").and_then(Value::as_str);
        if let Some(format) = format.and_then(Format::named)
            && !(format.reads)(text)
        {
            self.add_with(|pointer| {
                let named = [("given", shortened(text))];
                let near = format.has_nearest.then_some(text);
                FaultView::in_body(pointer, format.code, format.key, named)
                    .accepting((format.accepted)(), near)
            });
            return;
        }
        let length = text.chars().count() as u64;
        for (keyword, outside, key) in LENGTHS {
            if let Some(limit) = schema.get(*keyword).and_then(Value::as_u64)
                && outside(&length, &limit)
            {
                self.add(FaultCode::OutOfBounds, key, &[("limit", limit.to_string())]);
            }
        }
    }

    fn check_number(&mut self, schema: &Members, value: &Value) {
        let Some(number) = value.as_f64() else { return };
        for (keyword, outside, key) in BOUNDS {
            if let Some(limit) = schema.get(*keyword)
                && limit.as_f64().is_some_and(|limit| outside(&number, &limit))
            {
                self.add(FaultCode::OutOfBounds, key, &[("limit", plain(limit))]);
            }
        }
        // the decimals of a number over the limit are no further fault
        let is_over = schema.get("maximum").and_then(Value::as_f64).is_some_and(|limit| number > limit);
        if let Some(decimals) = schema.get("x-decimals").and_then(Value::as_u64)
            && !has_at_most_decimals(number, decimals as u32)
            && !is_over
        {
            self.add(FaultCode::TooManyDecimals, "fault-schema-decimals", &[("limit", decimals.to_string())]);
        }
    }

    fn check_list(&mut self, schema: &'a Members, items: &[Value]) {
        let bound = |keyword| schema.get(keyword).and_then(Value::as_u64).map(|bound| bound as usize);
        let mut looked_at = items;
        if let Some(most) = bound("maxItems").filter(|most| items.len() > *most) {
            let named = [("items", items.len().to_string()), ("most", most.to_string())];
            self.add(FaultCode::TooManyItems, "fault-too-many-items", &named);
            looked_at = items.get(..most).unwrap_or_default();
        }
        if let Some(least) = bound("minItems").filter(|least| items.len() < *least) {
            self.add(FaultCode::OutOfBounds, "fault-schema-too-few-items", &[("limit", least.to_string())]);
        }
        if let Some(schema) = schema.get("items") {
            for (index, item) in looked_at.iter().enumerate() {
                self.below(&index.to_string(), |validator| validator.check(schema, item));
            }
        }
    }

    fn check_object(&mut self, schema: &'a Members, members: &Members) {
        let known = schema.get("properties").and_then(Value::as_object);
        for (member, value) in members {
            let declared = known.and_then(|known| known.get(member));
            self.below(member, |validator| match declared.or_else(|| schema.get("additionalProperties")) {
                Some(Value::Bool(false)) if declared.is_none() => validator.unknown_member(member, known),
                Some(schema) => validator.check(schema, value),
                None => {}
            });
        }
        for member in list(schema, "required").iter().filter_map(Value::as_str) {
            if !members.contains_key(member) {
                self.below(member, |validator| validator.missing_member(member));
            }
        }
    }

    fn unknown_member(&mut self, member: &str, known: Option<&Members>) {
        self.add_with(|pointer| {
            let named = [("member", shortened(member))];
            FaultView::in_body(pointer, FaultCode::UnknownMember, "fault-schema-unknown-member", named)
                .accepting(known.into_iter().flat_map(Map::keys).map(String::as_str), Some(member))
        });
    }

    fn missing_member(&mut self, member: &str) {
        let named = [("member", member.to_owned())];
        self.add(FaultCode::MissingMember, "fault-schema-missing-member", &named);
    }

    /// Descends into the alternative that was meant: by type, then by the member that tells the alternatives apart.
    fn choose(&mut self, branches: &'a [Value], value: &Value) {
        let resolved = branches.iter().filter_map(|branch| Some((branch, self.resolved(branch)?)));
        let resolved: Vec<(&'a Value, &'a Members)> = resolved.collect();
        let of_type: Vec<_> =
            resolved.iter().copied().filter(|(_, schema)| type_fits(schema, value)).collect();
        match of_type.as_slice() {
            [] => {
                let schemas: Vec<&Members> = resolved.iter().map(|(_, schema)| *schema).collect();
                self.wrong_type(&schemas, value);
            }
            [(only, _)] => self.check(only, value),
            several => self.choose_among(several, value),
        }
    }

    fn choose_among(&mut self, several: &[(&'a Value, &'a Members)], value: &Value) {
        let closed: Vec<Vec<&Value>> = several.iter().map(|(_, schema)| closed_set(schema)).collect();
        if closed.iter().all(|set| !set.is_empty()) {
            let all: Vec<&Value> = closed.into_iter().flatten().collect();
            if !all.iter().any(|accepted| same(accepted, value)) {
                self.unknown_value(&all, value);
            }
            return;
        }
        if let (Some(tag), Some(members)) = (tag_of(several), value.as_object()) {
            let Some(given) = members.get(tag) else {
                return self.below(tag, |validator| validator.missing_member(tag));
            };
            let words: Vec<&Value> = several.iter().flat_map(|(_, schema)| tag_values(schema, tag)).collect();
            let means = |schema| tag_values(schema, tag).iter().any(|word| same(word, given));
            return match several.iter().find(|(_, schema)| means(schema)) {
                Some((branch, _)) => self.check(branch, value),
                None => self.below(tag, |validator| validator.unknown_value(&words, given)),
            };
        }
        if let Some(members) = value.as_object()
            && self.choose_by_name(several, members, value)
        {
            return;
        }
        // members that an alternative does not have, or lacks, say that another is meant: they count before all else
        let misfit = |faults: &FaultList| {
            let strange = |code| matches!(code, FaultCode::UnknownMember | FaultCode::MissingMember);
            (faults.kept().iter().filter(|fault| strange(fault.code)).count(), faults.len())
        };
        let mut fewest: Option<FaultList> = None;
        for (branch, _) in several {
            let mut faults = FaultList::default();
            let pointer = self.pointer.clone();
            Validator { pointer, faults: &mut faults, ..*self }.check(branch, value);
            if fewest.as_ref().is_none_or(|fewest| misfit(&faults) < misfit(fewest)) {
                fewest = Some(faults);
            }
        }
        for fault in fewest.iter().flat_map(FaultList::kept) {
            self.add_with(|_| fault.clone());
        }
    }

    /// Descends into the alternative that a member names, where several require a name of their own in it and others none;
    /// for a name that none of them has, the fault lists all of theirs. Returns whether that settled it.
    fn choose_by_name(
        &mut self,
        several: &[(&'a Value, &'a Members)],
        members: &Members,
        value: &Value,
    ) -> bool {
        for (member, given) in members {
            let named: Vec<(&'a Value, &'a Value)> = several
                .iter()
                .filter(|(_, schema)| list(schema, "required").iter().any(|required| required == member))
                .filter_map(|(branch, schema)| match tag_values(schema, member).as_slice() {
                    [name] => Some((*branch, *name)),
                    _ => None,
                })
                .collect();
            let mut meant = named.iter().filter(|(_, name)| same(name, given));
            match (named.len(), meant.next(), meant.next()) {
                (0 | 1, ..) | (_, Some(_), Some(_)) => {}
                (_, Some((branch, _)), None) => {
                    self.check(branch, value);
                    return true;
                }
                (_, None, _) => {
                    let names: Vec<&Value> = named.iter().map(|(_, name)| *name).collect();
                    self.below(member, |validator| validator.unknown_value(&names, given));
                    return true;
                }
            }
        }
        false
    }
}
