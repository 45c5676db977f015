//! Placement.
use serde::Serialize;
use utoipa::ToSchema;
/// x
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
pub struct Layout {}
