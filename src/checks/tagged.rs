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
        #[derive(Clone, Debug, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
        #[serde(tag = $tag)]
        pub enum $name { $($(#[doc = $kind_doc])+ #[serde(rename = $kind)] $variant($of)),+ }

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
    use crate::checks::present;
    use serde::{Deserialize, Serialize};
    use utoipa::{PartialSchema, ToSchema};

    /// Painted.
    #[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
    #[serde(deny_unknown_fields)]
    pub struct Paint {
        /// How many coats.
        #[serde(default, deserialize_with = "present", skip_serializing_if = "Option::is_none")]
        #[schema(nullable = false)]
        coats: Option<u32>,
    }

    /// Left bare.
    #[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
    #[serde(deny_unknown_fields)]
    pub struct Bare {}

    tagged! {
        /// What a surface has.
        pub enum Finish by "kind" {
            /// Paint.
            "painted" => Painted(Paint),
            /// Nothing.
            "bare" => Left(Bare),
        }
    }

    #[test]
    fn reading_and_schema_accept_the_same() {
        let read = |text: &str| serde_json::from_str::<Finish>(text);
        assert_eq!(
            read(r#"{"coats": 2, "kind": "painted"}"#).unwrap(),
            Finish::Painted(Paint { coats: Some(2) })
        );
        assert_eq!(read(r#"{"kind": "bare"}"#).unwrap(), Finish::Left(Bare {}));
        for bad in
            [r#"{"coats": 2}"#, r#"{"kind": "bare", "coats": 2}"#, r#"{"kind": "painted", "coats": null}"#]
        {
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
