//! The nouns of the trade: conductor sizes, trade sizes, cables, boxes.

mod conductor_size;
mod insulation;
mod raceway_kind;
mod size_set;
mod trade_size;

pub use conductor_size::ConductorSize;
pub use insulation::{Covering, Insulation};
pub use raceway_kind::RacewayKind;
pub use size_set::SizeSet;
pub use trade_size::TradeSize;

use utoipa::openapi::RefOr;
use utoipa::openapi::schema::{ObjectBuilder, Schema, SchemaFormat, Type};

/// The schema of a text that has a format of our own, which the service enforces.
pub(crate) fn text_schema(description: &str, format: &str, example: &str) -> RefOr<Schema> {
    ObjectBuilder::new()
        .schema_type(Type::String)
        .format(Some(SchemaFormat::Custom(format.to_owned())))
        .description(Some(description))
        .min_length(Some(1))
        .max_length(Some(40))
        .examples([example])
        .build()
        .into()
}
