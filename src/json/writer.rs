//! The serializer: one method for each kind of value that `serde` knows.

use super::compound::Compound;
use super::{number, text};
use serde::ser::{Error, Serialize, Serializer};
use std::fmt;

/// Why a value is not written.
#[derive(Clone, Debug, PartialEq, Eq, thiserror::Error)]
#[error("{0}")]
pub struct WriteFault(String);

impl Error for WriteFault {
    fn custom<T: fmt::Display>(what: T) -> Self {
        Self(what.to_string())
    }
}

/// Writes one value after what a buffer holds.
#[derive(Debug)]
pub struct Writer<'o> {
    out: &'o mut Vec<u8>,
}

impl<'o> Writer<'o> {
    /// A writer into a buffer.
    pub const fn new(out: &'o mut Vec<u8>) -> Self {
        Self { out }
    }

    fn ready(self, text: &str) -> Result<(), WriteFault> {
        self.out.extend_from_slice(text.as_bytes());
        Ok(())
    }

    fn integer(self, number: impl itoa::Integer) -> Result<(), WriteFault> {
        self.ready(itoa::Buffer::new().format(number))
    }

    /// Begins an object with one member, a variant of an enum.
    fn variant(&mut self, name: &str) {
        self.out.push(b'{');
        text::name(name, self.out);
        self.out.push(b':');
    }
}

macro_rules! integers {
    ($($method:ident: $kind:ty),+) => {
        $(fn $method(self, number: $kind) -> Result<(), WriteFault> {
            self.integer(number)
        })+
    };
}

macro_rules! compounds {
    ($($method:ident($($ignored:ty),+): $open:literal, $close:literal;)+) => {
        $(fn $method(self, $(_: $ignored),+) -> Result<Compound<'o>, WriteFault> {
            Ok(Compound::open(self.out, $open, $close))
        })+
    };
}

impl<'o> Serializer for Writer<'o> {
    type Ok = ();
    type Error = WriteFault;
    type SerializeSeq = Compound<'o>;
    type SerializeTuple = Compound<'o>;
    type SerializeTupleStruct = Compound<'o>;
    type SerializeTupleVariant = Compound<'o>;
    type SerializeMap = Compound<'o>;
    type SerializeStruct = Compound<'o>;
    type SerializeStructVariant = Compound<'o>;

    fn serialize_bool(self, truth: bool) -> Result<(), WriteFault> {
        self.ready(if truth { "true" } else { "false" })
    }

    integers! {
        serialize_i8: i8, serialize_i16: i16, serialize_i32: i32, serialize_i64: i64,
        serialize_u8: u8, serialize_u16: u16, serialize_u32: u32, serialize_u64: u64
    }

    fn serialize_f32(self, single: f32) -> Result<(), WriteFault> {
        if single.is_finite() {
            self.ready(zmij::Buffer::new().format_finite(single))
        } else {
            self.serialize_unit()
        }
    }

    fn serialize_f64(self, double: f64) -> Result<(), WriteFault> {
        number(double, self.out);
        Ok(())
    }

    fn serialize_char(self, character: char) -> Result<(), WriteFault> {
        self.serialize_str(character.encode_utf8(&mut [0; 4]))
    }

    fn serialize_str(self, given: &str) -> Result<(), WriteFault> {
        text::text(given, self.out);
        Ok(())
    }

    fn collect_str<T: fmt::Display + ?Sized>(self, value: &T) -> Result<(), WriteFault> {
        text::displayed(value, self.out).map_err(WriteFault::custom)
    }

    fn serialize_bytes(self, bytes: &[u8]) -> Result<(), WriteFault> {
        self.collect_seq(bytes)
    }

    fn serialize_none(self) -> Result<(), WriteFault> {
        self.serialize_unit()
    }

    fn serialize_some<T: Serialize + ?Sized>(self, value: &T) -> Result<(), WriteFault> {
        value.serialize(self)
    }

    fn serialize_unit(self) -> Result<(), WriteFault> {
        self.ready("null")
    }

    fn serialize_unit_struct(self, _: &'static str) -> Result<(), WriteFault> {
        self.serialize_unit()
    }

    fn serialize_unit_variant(self, _: &'static str, _: u32, name: &'static str) -> Result<(), WriteFault> {
        text::name(name, self.out);
        Ok(())
    }

    fn serialize_newtype_struct<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        value: &T,
    ) -> Result<(), WriteFault> {
        value.serialize(self)
    }

    fn serialize_newtype_variant<T: Serialize + ?Sized>(
        mut self,
        _: &'static str,
        _: u32,
        name: &'static str,
        value: &T,
    ) -> Result<(), WriteFault> {
        self.variant(name);
        value.serialize(Writer::new(self.out))?;
        self.ready("}")
    }

    compounds! {
        serialize_seq(Option<usize>): b'[', b"]";
        serialize_tuple(usize): b'[', b"]";
        serialize_tuple_struct(&'static str, usize): b'[', b"]";
        serialize_map(Option<usize>): b'{', b"}";
        serialize_struct(&'static str, usize): b'{', b"}";
    }

    fn serialize_tuple_variant(
        mut self,
        _: &'static str,
        _: u32,
        name: &'static str,
        _: usize,
    ) -> Result<Compound<'o>, WriteFault> {
        self.variant(name);
        Ok(Compound::open(self.out, b'[', b"]}"))
    }

    fn serialize_struct_variant(
        mut self,
        _: &'static str,
        _: u32,
        name: &'static str,
        _: usize,
    ) -> Result<Compound<'o>, WriteFault> {
        self.variant(name);
        Ok(Compound::open(self.out, b'{', b"}}"))
    }
}
