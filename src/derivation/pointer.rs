//! Where in the request something stands.

use serde::{Serialize, Serializer};
use std::fmt;
use utoipa::openapi::RefOr;
use utoipa::openapi::schema::{ObjectBuilder, Schema, SchemaFormat, Type};
use utoipa::{PartialSchema, ToSchema};

/// Text of a pointer, fixed in the program. Kept by one thin reference, as proofs hold a great many pointers.
pub type Pattern = &'static &'static str;

/// A JSON Pointer (RFC 6901) into the request, kept as two fixed patterns with one index each.
///
/// ```
/// use elbowroom::derivation::Pointer;
/// let cable = Pointer::of(&"/contents/cables/#", 3);
/// assert_eq!(cable.to_string(), "/contents/cables/3");
/// assert_eq!(cable.under(&"/spaces/#", 1).member(&"/size").to_string(), "/spaces/1/contents/cables/3/size");
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Pointer {
    above: Pattern,
    pattern: Pattern,
    member: Pattern,
    above_index: u32,
    index: u32,
}

impl Pointer {
    /// The whole request.
    pub const ROOT: Self = Self::to(&"");

    /// A fixed place.
    pub const fn to(place: Pattern) -> Self {
        Self { above: &"", pattern: place, member: &"", above_index: 0, index: 0 }
    }

    /// One item of a list: `#` in the pattern stands for its index, counted from 0.
    pub const fn of(pattern: Pattern, index: usize) -> Self {
        Self { above: &"", pattern, member: &"", above_index: 0, index: index as u32 }
    }

    /// The same place below an item of an outer list.
    pub const fn under(self, above: Pattern, index: usize) -> Self {
        Self { above, above_index: index as u32, ..self }
    }

    /// A member of this place, written with its slash: `/size`.
    pub const fn member(self, member: Pattern) -> Self {
        Self { member, ..self }
    }
}

impl fmt::Display for Pointer {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let mut written = Ok(());
        self.put(|piece| written = written.and_then(|()| f.write_str(piece)));
        written
    }
}

impl Pointer {
    /// Hands out the pointer piece by piece. Its patterns hold nothing that JSON would escape, which a test holds them to.
    pub(super) fn put(&self, mut piece: impl FnMut(&str)) {
        put_pattern(self.above, self.above_index, &mut piece);
        put_pattern(self.pattern, self.index, &mut piece);
        piece(self.member);
    }
}

fn put_pattern(pattern: &'static str, index: u32, mut piece: impl FnMut(&str)) {
    // the index stands at the end nearly always, and looking there costs nothing
    let at_end = pattern.strip_suffix('#').map(|before| (before, ""));
    match at_end.or_else(|| pattern.split_once('#')) {
        None => piece(pattern),
        Some((before, after)) => {
            piece(before);
            piece(itoa::Buffer::new().format(index));
            piece(after);
        }
    }
}

impl Serialize for Pointer {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_str(self)
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
