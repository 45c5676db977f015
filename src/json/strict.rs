//! The strict deserializer: objects for structs, texts for words, no null for what may be left out.
//!
//! serde by itself also reads a struct from a list of its members in order, a word from `{"word": null}`, and an optional
//! member from null. The published schemas allow none of it, so whatever reads a request reads it through this.

use serde::Deserialize;
use serde::de::value::StrDeserializer;
use serde::de::{self, DeserializeSeed, Deserializer, MapAccess, SeqAccess, Visitor};
use serde::de::{DeserializeOwned, Unexpected};
use serde_json::Value;
use std::fmt;

/// Reads JSON text as a caller sends it: strictly.
///
/// # Errors
///
/// Text that is no JSON, goes on after the value, or does not have the form of the type; null for an optional member too.
///
/// ```
/// use elbowroom::checks::box_mounting::BoxMountingRequest;
/// assert!(elbowroom::json::read::<BoxMountingRequest>(br#"{"reference": "hall-3"}"#).is_ok());
/// assert!(elbowroom::json::read::<BoxMountingRequest>(br#"{"reference": null}"#).is_err());
/// ```
pub fn read<'t, T: Deserialize<'t>>(text: &'t [u8]) -> Result<T, serde_json::Error> {
    let mut deserializer = serde_json::Deserializer::from_slice(text);
    let read = T::deserialize(StrictDeserializer(&mut deserializer))?;
    deserializer.end()?;
    Ok(read)
}

/// Reads a JSON value as strictly as [`read`] reads text.
///
/// # Errors
///
/// A value that does not have the form of the type.
pub fn read_value<T: DeserializeOwned>(value: Value) -> Result<T, serde_json::Error> {
    T::deserialize(StrictDeserializer(value))
}

/// Null stands where a member may be left out.
pub(super) fn null_refused<E: de::Error>() -> E {
    E::invalid_type(Unexpected::Other("null"), &"a value, or no such member")
}

/// Wraps a deserializer, a visitor, an access or a seed, so that everything below is wrapped too.
struct StrictDeserializer<T>(T);

macro_rules! forward {
    ($($method:ident($($argument:ident: $kind:ty),*))+) => {
        $(fn $method<V: Visitor<'de>>(self, $($argument: $kind,)* visitor: V) -> Result<V::Value, D::Error> {
            self.0.$method($($argument,)* StrictDeserializer(visitor))
        })+
    };
}

impl<'de, D: Deserializer<'de>> Deserializer<'de> for StrictDeserializer<D> {
    type Error = D::Error;

    forward! {
        deserialize_any() deserialize_bool() deserialize_i8() deserialize_i16() deserialize_i32() deserialize_i64()
        deserialize_i128() deserialize_u8() deserialize_u16() deserialize_u32() deserialize_u64() deserialize_u128()
        deserialize_f32() deserialize_f64() deserialize_char() deserialize_str() deserialize_string()
        deserialize_bytes() deserialize_byte_buf() deserialize_option() deserialize_unit() deserialize_seq()
        deserialize_map() deserialize_identifier() deserialize_ignored_any()
        deserialize_unit_struct(name: &'static str)
        deserialize_newtype_struct(name: &'static str)
        deserialize_tuple(length: usize)
        deserialize_tuple_struct(name: &'static str, length: usize)
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, D::Error> {
        self.0.deserialize_map(StrictDeserializer(visitor))
    }

    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, D::Error> {
        self.0.deserialize_str(Word(visitor))
    }

    fn is_human_readable(&self) -> bool {
        self.0.is_human_readable()
    }
}

/// Reads one of several words.
struct Word<V>(V);

impl<'de, V: Visitor<'de>> Visitor<'de> for Word<V> {
    type Value = V::Value;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.expecting(f)
    }

    fn visit_str<E: de::Error>(self, text: &str) -> Result<V::Value, E> {
        self.0.visit_enum(StrDeserializer::new(text))
    }
}

macro_rules! visit {
    ($($method:ident: $kind:ty),+) => {
        $(fn $method<E: de::Error>(self, value: $kind) -> Result<V::Value, E> {
            self.0.$method(value)
        })+
    };
}

impl<'de, V: Visitor<'de>> Visitor<'de> for StrictDeserializer<V> {
    type Value = V::Value;

    visit! {
        visit_bool: bool, visit_i64: i64, visit_i128: i128, visit_u64: u64, visit_u128: u128, visit_f64: f64,
        visit_char: char, visit_str: &str, visit_borrowed_str: &'de str, visit_string: String,
        visit_bytes: &[u8], visit_borrowed_bytes: &'de [u8], visit_byte_buf: Vec<u8>
    }

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0.expecting(f)
    }

    fn visit_none<E: de::Error>(self) -> Result<V::Value, E> {
        Err(null_refused())
    }

    fn visit_unit<E: de::Error>(self) -> Result<V::Value, E> {
        self.0.visit_unit()
    }

    fn visit_some<D: Deserializer<'de>>(self, deserializer: D) -> Result<V::Value, D::Error> {
        self.0.visit_some(StrictDeserializer(deserializer))
    }

    fn visit_newtype_struct<D: Deserializer<'de>>(self, deserializer: D) -> Result<V::Value, D::Error> {
        self.0.visit_newtype_struct(StrictDeserializer(deserializer))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, items: A) -> Result<V::Value, A::Error> {
        self.0.visit_seq(StrictDeserializer(items))
    }

    fn visit_map<A: MapAccess<'de>>(self, members: A) -> Result<V::Value, A::Error> {
        self.0.visit_map(StrictDeserializer(members))
    }
}

impl<'de, A: SeqAccess<'de>> SeqAccess<'de> for StrictDeserializer<A> {
    type Error = A::Error;

    fn next_element_seed<S: DeserializeSeed<'de>>(&mut self, seed: S) -> Result<Option<S::Value>, A::Error> {
        self.0.next_element_seed(StrictDeserializer(seed))
    }

    fn size_hint(&self) -> Option<usize> {
        self.0.size_hint()
    }
}

impl<'de, A: MapAccess<'de>> MapAccess<'de> for StrictDeserializer<A> {
    type Error = A::Error;

    fn next_key_seed<S: DeserializeSeed<'de>>(&mut self, seed: S) -> Result<Option<S::Value>, A::Error> {
        self.0.next_key_seed(seed)
    }

    fn next_value_seed<S: DeserializeSeed<'de>>(&mut self, seed: S) -> Result<S::Value, A::Error> {
        self.0.next_value_seed(StrictDeserializer(seed))
    }

    fn size_hint(&self) -> Option<usize> {
        self.0.size_hint()
    }
}

impl<'de, S: DeserializeSeed<'de>> DeserializeSeed<'de> for StrictDeserializer<S> {
    type Value = S::Value;

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<S::Value, D::Error> {
        self.0.deserialize(StrictDeserializer(deserializer))
    }
}
