//! Choices between kinds of thing, told apart by one member that names the kind.

use utoipa::openapi::RefOr;
use utoipa::openapi::schema::{ObjectBuilder, OneOfBuilder, Schema, Type};

/// Declares a choice. Each kind is a struct that refuses unknown members; its published schema is that of the struct with
/// the member that names the kind, so that schema and reading accept the same.
macro_rules! tagged {
    ($(#[doc = $doc:literal])+ pub enum $name:ident by $tag:literal {
        $($(#[doc = $kind_doc:literal])+ $kind:literal => $variant:ident($of:ty)),+ $(,)?
    }) => {
        $(#[doc = $doc])+
        #[derive(Clone, Debug, PartialEq, Eq, serde::Serialize)]
        #[serde(tag = $tag)]
        pub enum $name { $($(#[doc = $kind_doc])+ #[serde(rename = $kind)] $variant($of)),+ }

        impl<'de> serde::Deserialize<'de> for $name {
            fn deserialize<D: serde::Deserializer<'de>>(reader: D) -> Result<Self, D::Error> {
                let (kind, members) = $crate::json::buffered::BufferedValue::by_kind(reader, $tag)?;
                match &*kind {
                    $($kind => members.read().map(Self::$variant),)+
                    other => Err(serde::de::Error::unknown_variant(other, &[$($kind),+])),
                }
            }
        }

        impl $crate::quantity::Convert for $name {
            fn convert(&mut self, by: &$crate::quantity::Conversion) {
                match self { $(Self::$variant(of) => $crate::quantity::Convert::convert(of, by)),+ }
            }
        }

        impl utoipa::PartialSchema for $name {
            fn schema() -> utoipa::openapi::RefOr<utoipa::openapi::Schema> {
                $crate::checks::tagged::schema(
                    $tag,
                    concat!($($doc),+).trim(),
                    [$(($kind, <$of as utoipa::PartialSchema>::schema())),+],
                )
            }
        }

        impl utoipa::ToSchema for $name {
            fn schemas(all: &mut Vec<(String, utoipa::openapi::RefOr<utoipa::openapi::Schema>)>) {
                $(<$of as utoipa::ToSchema>::schemas(all);)+
            }
        }
    };
}

pub(crate) use tagged;

/// One of several objects, each with the member `tag` fixed to its kind.
pub(crate) fn schema<const KINDS: usize>(
    tag: &str,
    description: &str,
    kinds: [(&str, RefOr<Schema>); KINDS],
) -> RefOr<Schema> {
    let mut either = OneOfBuilder::new().description(Some(description));
    for (kind, schema) in kinds {
        let RefOr::T(Schema::Object(members)) = schema else { continue };
        let name = ObjectBuilder::new()
            .schema_type(Type::String)
            .enum_values(Some([kind]))
            .description(Some("What kind of thing it is: the other members follow from it."));
        either = either.item(ObjectBuilder::from(members).property(tag, name).required(tag));
    }
    RefOr::T(Schema::OneOf(either.build()))
}

#[cfg(test)]
mod tests {
    use crate::json;
    use crate::quantity::converts;
    use serde::{Deserialize, Serialize};
    use utoipa::{PartialSchema, ToSchema};

    converts! { Paint {} Bare {} Part {} }

    /// Painted.
    #[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
    #[serde(deny_unknown_fields)]
    pub struct Paint {
        /// How many coats.
        coats: Option<u32>,
    }

    /// Left bare.
    #[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
    #[serde(deny_unknown_fields)]
    pub struct Bare {}

    /// Where it is.
    #[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
    #[serde(rename_all = "snake_case")]
    pub enum On {
        /// A wall.
        Wall,
    }

    tagged! {
        /// What a surface has.
        pub enum Finish by "kind" {
            /// Paint.
            "painted" => Painted(Paint),
            /// Nothing.
            "bare" => Left(Bare),
        }
    }

    /// A part of a surface.
    #[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
    #[serde(deny_unknown_fields)]
    pub struct Part {
        on: On,
        finish: Finish,
    }

    tagged! {
        /// Where a finish is.
        pub enum Place by "place" {
            /// On a part.
            "part" => Part(Part),
        }
    }

    #[test]
    fn within_a_kind_a_word_is_a_text_and_an_object_an_object() {
        let read = |text: &str| json::read::<Place>(text.as_bytes());
        let good = read(r#"{"on": "wall", "finish": {"kind": "bare"}, "place": "part"}"#).unwrap();
        assert_eq!(good, Place::Part(Part { on: On::Wall, finish: Finish::Left(Bare {}) }));
        for bad in [
            r#"{"place": "part", "on": 0, "finish": {"kind": "bare"}}"#,
            r#"{"place": "part", "on": {"wall": null}, "finish": {"kind": "bare"}}"#,
            r#"{"place": "part", "on": "wall", "finish": {"kind": 1}}"#,
            r#"{"place": "part", "on": "wall", "finish": ["bare"]}"#,
            r#"{"place": "part", "on": "wall", "finish": {"kind": "painted", "coats": [2]}}"#,
            r#"{"place": 0, "on": "wall", "finish": {"kind": "bare"}}"#,
        ] {
            assert!(read(bad).is_err(), "{bad}");
        }
    }

    #[test]
    fn reading_and_schema_accept_the_same() {
        let read = |text: &str| json::read::<Finish>(text.as_bytes());
        assert_eq!(
            read(r#"{"coats": 2, "kind": "painted"}"#).unwrap(),
            Finish::Painted(Paint { coats: Some(2) })
        );
        assert_eq!(read(r#"{"kind": "bare"}"#).unwrap(), Finish::Left(Bare {}));
        for bad in [
            r#"{"coats": 2}"#,
            r#"{"kind": "bare", "coats": 2}"#,
            r#"{"kind": "painted", "coats": null}"#,
            r#"{"kind": "painted", "coats": 1, "coats": 1}"#,
            r#"{"kind": "bare", "kind": "bare"}"#,
            r#"{"kind": 1}"#,
            r#"["bare"]"#,
        ] {
            assert!(read(bad).is_err(), "{bad}");
        }
        let schema = serde_json::to_value(Finish::schema()).unwrap();
        assert_eq!(schema["description"], "What a surface has.");
        for (place, kind) in [(0, "painted"), (1, "bare")] {
            let branch = &schema["oneOf"][place];
            assert_eq!(branch["properties"]["kind"]["enum"], serde_json::json!([kind]));
            assert_eq!(branch["required"], serde_json::json!(["kind"]));
            assert_eq!(branch["additionalProperties"], false);
        }
    }
}
