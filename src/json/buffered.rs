//! A value buffered while it is not known yet what it has to be: the members of an object whose kind comes later.
//!
//! serde's own buffer for tagged enums also reads a struct from a list, a word from its number and an optional member from
//! null, none of which a published schema allows. Deserializing from this one is as strict as `StrictDeserializer`.

use super::strict::null_refused;
use serde::de::value::{MapDeserializer, SeqDeserializer, StrDeserializer};
use serde::de::{
    self, Deserialize, Deserializer, IntoDeserializer, MapAccess, SeqAccess, Unexpected, Visitor,
};
use std::borrow::Cow;
use std::fmt;
use std::marker::PhantomData;

/// A JSON value. Members of an object stand as they came, twice where they came twice.
pub(crate) enum BufferedValue<'de> {
    Null,
    Truth(bool),
    Signed(i64),
    Unsigned(u64),
    Float(f64),
    Text(Cow<'de, str>),
    List(Vec<Self>),
    Object(Vec<(Cow<'de, str>, Self)>),
}

impl<'de> BufferedValue<'de> {
    /// Reads an object and takes out the member that names its kind.
    pub(crate) fn by_kind<D: Deserializer<'de>>(
        reader: D,
        tag: &'static str,
    ) -> Result<(Cow<'de, str>, Self), D::Error> {
        let mut members = reader.deserialize_map(MembersVisitor)?;
        let position = members.iter().position(|(name, _)| name == tag);
        let (_, kind) = members.remove(position.ok_or_else(|| de::Error::missing_field(tag))?);
        if members.iter().any(|(name, _)| name == tag) {
            return Err(de::Error::duplicate_field(tag));
        }
        match kind {
            Self::Text(kind) => Ok((kind, Self::Object(members))),
            other => Err(de::Error::invalid_type(other.unexpected(), &"a word")),
        }
    }

    /// Reads something from it.
    pub(crate) fn read<T: Deserialize<'de>, E: de::Error>(self) -> Result<T, E> {
        T::deserialize(Reader(self, PhantomData))
    }

    fn unexpected(&self) -> Unexpected<'_> {
        match self {
            Self::Null => Unexpected::Unit,
            Self::Truth(truth) => Unexpected::Bool(*truth),
            Self::Signed(number) => Unexpected::Signed(*number),
            Self::Unsigned(number) => Unexpected::Unsigned(*number),
            Self::Float(number) => Unexpected::Float(*number),
            Self::Text(text) => Unexpected::Str(text),
            Self::List(_) => Unexpected::Seq,
            Self::Object(_) => Unexpected::Map,
        }
    }
}

impl<'de> Deserialize<'de> for BufferedValue<'de> {
    fn deserialize<D: Deserializer<'de>>(reader: D) -> Result<Self, D::Error> {
        reader.deserialize_any(BufferVisitor)
    }
}

struct BufferVisitor;

macro_rules! buffer {
    ($($method:ident($value:ident: $kind:ty) => $buffered:expr;)+) => {
        $(fn $method<E>(self, $value: $kind) -> Result<Self::Value, E> {
            Ok($buffered)
        })+
    };
}

impl<'de> Visitor<'de> for BufferVisitor {
    type Value = BufferedValue<'de>;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a value")
    }

    buffer! {
        visit_bool(truth: bool) => BufferedValue::Truth(truth);
        visit_i64(number: i64) => BufferedValue::Signed(number);
        visit_u64(number: u64) => BufferedValue::Unsigned(number);
        visit_f64(number: f64) => BufferedValue::Float(number);
        visit_borrowed_str(text: &'de str) => BufferedValue::Text(Cow::Borrowed(text));
        visit_str(text: &str) => BufferedValue::Text(Cow::Owned(text.to_owned()));
    }

    fn visit_unit<E>(self) -> Result<Self::Value, E> {
        Ok(BufferedValue::Null)
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<Self::Value, A::Error> {
        let mut list = Vec::new();
        while let Some(item) = items.next_element()? {
            list.push(item);
        }
        Ok(BufferedValue::List(list))
    }

    fn visit_map<A: MapAccess<'de>>(self, members: A) -> Result<Self::Value, A::Error> {
        MembersVisitor.visit_map(members).map(BufferedValue::Object)
    }
}

struct MembersVisitor;

impl<'de> Visitor<'de> for MembersVisitor {
    type Value = Vec<(Cow<'de, str>, BufferedValue<'de>)>;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("an object")
    }

    fn visit_map<A: MapAccess<'de>>(self, mut members: A) -> Result<Self::Value, A::Error> {
        let mut buffered = Vec::new();
        while let Some((Name(name), value)) = members.next_entry()? {
            buffered.push((name, value));
        }
        Ok(buffered)
    }
}

/// The name of a member, borrowed where that is possible.
struct Name<'de>(Cow<'de, str>);

impl<'de> Deserialize<'de> for Name<'de> {
    fn deserialize<D: Deserializer<'de>>(reader: D) -> Result<Self, D::Error> {
        match reader.deserialize_str(BufferVisitor)? {
            BufferedValue::Text(name) => Ok(Self(name)),
            other => Err(de::Error::invalid_type(other.unexpected(), &"a name")),
        }
    }
}

/// Deserializes from what is buffered.
pub(crate) struct Reader<'de, E>(BufferedValue<'de>, PhantomData<E>);

impl<'de, E: de::Error> IntoDeserializer<'de, E> for BufferedValue<'de> {
    type Deserializer = Reader<'de, E>;

    fn into_deserializer(self) -> Self::Deserializer {
        Reader(self, PhantomData)
    }
}

impl<'de, E: de::Error> Deserializer<'de> for Reader<'de, E> {
    type Error = E;

    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, E> {
        match self.0 {
            BufferedValue::Null => visitor.visit_unit(),
            BufferedValue::Truth(truth) => visitor.visit_bool(truth),
            BufferedValue::Signed(number) => visitor.visit_i64(number),
            BufferedValue::Unsigned(number) => visitor.visit_u64(number),
            BufferedValue::Float(number) => visitor.visit_f64(number),
            BufferedValue::Text(Cow::Borrowed(text)) => visitor.visit_borrowed_str(text),
            BufferedValue::Text(Cow::Owned(text)) => visitor.visit_string(text),
            BufferedValue::List(items) => {
                let mut items = SeqDeserializer::new(items.into_iter());
                let read = visitor.visit_seq(&mut items)?;
                items.end().map(|()| read)
            }
            BufferedValue::Object(members) => {
                let mut members = MapDeserializer::new(members.into_iter());
                let read = visitor.visit_map(&mut members)?;
                members.end().map(|()| read)
            }
        }
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, E> {
        match self.0 {
            BufferedValue::Null => Err(null_refused()),
            _ => visitor.visit_some(self),
        }
    }

    fn deserialize_newtype_struct<V: Visitor<'de>>(self, _: &'static str, visitor: V) -> Result<V::Value, E> {
        visitor.visit_newtype_struct(self)
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, E> {
        match self.0 {
            BufferedValue::Object(_) => self.deserialize_any(visitor),
            other => Err(E::invalid_type(other.unexpected(), &visitor)),
        }
    }

    fn deserialize_enum<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, E> {
        match self.0 {
            BufferedValue::Text(word) => visitor.visit_enum(StrDeserializer::new(&word)),
            other => Err(E::invalid_type(other.unexpected(), &visitor)),
        }
    }

    serde::forward_to_deserialize_any! {
        bool i8 i16 i32 i64 i128 u8 u16 u32 u64 u128 f32 f64 char str string bytes byte_buf unit unit_struct seq tuple
        tuple_struct map identifier ignored_any
    }
}
