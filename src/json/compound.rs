//! Lists and objects, open while their items are written.

use super::{WriteFault, Writer};
use serde::ser::{
    Error, Serialize, SerializeMap, SerializeSeq, SerializeStruct, SerializeStructVariant, SerializeTuple,
    SerializeTupleStruct, SerializeTupleVariant,
};

/// A list or an object under way. Each item is written with a comma after it; closing takes the last one back.
#[derive(Debug)]
pub struct Compound<'o> {
    out: &'o mut Vec<u8>,
    close: &'static [u8],
}

impl<'o> Compound<'o> {
    pub(super) fn open(out: &'o mut Vec<u8>, open: u8, close: &'static [u8]) -> Self {
        out.push(open);
        Self { out, close }
    }

    #[inline]
    fn item<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), WriteFault> {
        value.serialize(Writer::new(self.out))?;
        self.out.push(b',');
        Ok(())
    }

    // the names stand in the program: inlined, they are written without a loop over their length
    #[inline(always)]
    fn member<T: Serialize + ?Sized>(&mut self, name: &'static str, value: &T) -> Result<(), WriteFault> {
        self.out.push(b'"');
        self.out.extend_from_slice(name.as_bytes());
        self.out.extend_from_slice(b"\":");
        self.item(value)
    }

    fn close(self) {
        if self.out.last() == Some(&b',') {
            self.out.pop();
        }
        self.out.extend_from_slice(self.close);
    }
}

/// The members that are the same for every kind of list and object.
macro_rules! closing {
    () => {
        type Ok = ();
        type Error = WriteFault;

        fn end(self) -> Result<(), WriteFault> {
            self.close();
            Ok(())
        }
    };
}

impl SerializeMap for Compound<'_> {
    closing!();

    fn serialize_key<T: Serialize + ?Sized>(&mut self, key: &T) -> Result<(), WriteFault> {
        let start = self.out.len();
        key.serialize(Writer::new(self.out))?;
        if self.out.get(start) != Some(&b'"') {
            return Err(WriteFault::custom("the key of a member is no text"));
        }
        self.out.push(b':');
        Ok(())
    }

    fn serialize_value<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), WriteFault> {
        self.item(value)
    }
}

macro_rules! items {
    ($($kind:ident by $method:ident),+) => {$(
        impl $kind for Compound<'_> {
            closing!();

            fn $method<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), WriteFault> {
                self.item(value)
            }
        }
    )+};
}

items!(
    SerializeSeq by serialize_element,
    SerializeTuple by serialize_element,
    SerializeTupleStruct by serialize_field,
    SerializeTupleVariant by serialize_field
);

macro_rules! members {
    ($($kind:ident),+) => {$(
        impl $kind for Compound<'_> {
            closing!();

            #[inline(always)]
            fn serialize_field<T: Serialize + ?Sized>(
                &mut self,
                name: &'static str,
                value: &T,
            ) -> Result<(), WriteFault> {
                self.member(name, value)
            }
        }
    )+};
}

members!(SerializeStruct, SerializeStructVariant);
