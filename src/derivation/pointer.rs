//! Where in the request something stands.

use serde::{Serialize, Serializer};
use smallvec::SmallVec;
use std::fmt;
use utoipa::openapi::RefOr;
use utoipa::openapi::schema::{ObjectBuilder, Schema, SchemaFormat, Type};
use utoipa::{PartialSchema, ToSchema};

/// A JSON Pointer (RFC 6901) into the request, kept as two fixed patterns with one index each.
///
/// ```
/// use elbowroom::derivation::Pointer;
/// let cable = Pointer::of("/contents/cables/#", 3);
/// assert_eq!(cable.to_string(), "/contents/cables/3");
/// assert_eq!(cable.under("/spaces/#", 1).member("/size").to_string(), "/spaces/1/contents/cables/3/size");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Pointer {
    above: &'static str,
    pattern: &'static str,
    member: &'static str,
    above_index: u32,
    index: u32,
}

impl Pointer {
    /// The whole request.
    pub const ROOT: Self = Self::to("");

    /// A fixed place.
    pub const fn to(place: &'static str) -> Self {
        Self { above: "", pattern: place, member: "", above_index: 0, index: 0 }
    }

    /// One item of a list: `#` in the pattern stands for its index, counted from 0.
    pub const fn of(pattern: &'static str, index: usize) -> Self {
        Self { above: "", pattern, member: "", above_index: 0, index: index as u32 }
    }

    /// The same place below an item of an outer list.
    pub const fn under(self, above: &'static str, index: usize) -> Self {
        Self { above, above_index: index as u32, ..self }
    }

    /// A member of this place, written with its slash: `/size`.
    pub const fn member(self, member: &'static str) -> Self {
        Self { member, ..self }
    }
}

fn write_pattern(f: &mut fmt::Formatter<'_>, pattern: &str, index: u32) -> fmt::Result {
    match pattern.split_once('#') {
        None => f.write_str(pattern),
        Some((before, after)) => write!(f, "{before}{index}{after}"),
    }
}

impl fmt::Display for Pointer {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write_pattern(f, self.above, self.above_index)?;
        write_pattern(f, self.pattern, self.index)?;
        f.write_str(self.member)
    }
}

impl Pointer {
    /// Writes the pointer. Its patterns hold nothing that JSON would escape, which a test holds them to.
    pub(super) fn write(&self, out: &mut impl Extend<u8>) {
        write_bytes(out, self.above, self.above_index);
        write_bytes(out, self.pattern, self.index);
        out.extend(self.member.bytes());
    }
}

fn write_bytes(out: &mut impl Extend<u8>, pattern: &str, index: u32) {
    match pattern.split_once('#') {
        None => out.extend(pattern.bytes()),
        Some((before, after)) => {
            out.extend(before.bytes());
            out.extend(itoa::Buffer::new().format(index).bytes());
            out.extend(after.bytes());
        }
    }
}

impl Serialize for Pointer {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut text = SmallVec::<[u8; 96]>::new();
        self.write(&mut text);
        serializer.serialize_str(std::str::from_utf8(&text).unwrap_or_default())
    }
}

impl PartialSchema for Pointer {
    fn schema() -> RefOr<Schema> {
        ObjectBuilder::new()
            .schema_type(Type::String)
            .format(Some(SchemaFormat::Custom("json-pointer".to_owned())))
            .description(Some("A place in the request, as a JSON Pointer (RFC 6901)."))
            .examples(["/contents/cables/0"])
            .build()
            .into()
    }
}

impl ToSchema for Pointer {}
