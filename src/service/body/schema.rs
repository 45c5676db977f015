//! The published schemas, as the failure path reads them.

use crate::checks::Check;
use crate::service::published;
use serde_json::{Map, Value};
use std::sync::LazyLock;
use utoipa::ToSchema;

/// A schema, with the components that its references name.
#[derive(Clone, Copy, Debug)]
pub struct Schema<'a> {
    /// The schema.
    pub root: &'a Value,
    /// The schemas by name.
    pub components: &'a Map<String, Value>,
}

static NO_COMPONENTS: LazyLock<Map<String, Value>> = LazyLock::new(Map::new);

impl<'a> Schema<'a> {
    /// A schema that refers to no other.
    pub fn alone(root: &'a Value) -> Self {
        Self { root, components: &NO_COMPONENTS }
    }

    /// What a reference such as `#/components/schemas/Cable` names.
    pub fn named(&self, reference: &str) -> Option<&'a Value> {
        self.components.get(reference.strip_prefix("#/components/schemas/")?)
    }
}

/// The schema that the operation of a check publishes for its request.
pub fn of_request<C: Check>() -> Schema<'static> {
    of::<C::Request>()
}

/// The schema that is published for a type.
pub fn of<T: ToSchema>() -> Schema<'static> {
    published(&T::name())
}

/// A schema that the document publishes under a name.
pub fn published(name: &str) -> Schema<'static> {
    static ANYTHING: Value = Value::Bool(true);
    Schema { root: published::schemas().get(name).unwrap_or(&ANYTHING), components: published::schemas() }
}
