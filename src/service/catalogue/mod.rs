//! What every answer is made from, as documents: editions, tables, rules, disputed points, problems.
//!
//! Written once when the service starts; served with an entity tag.

pub mod amendments;
pub mod checks;
pub mod documents;
pub mod editions;
mod evidence;
pub mod interpretations;
pub mod misconceptions;
pub mod problems;
mod routes;
pub mod rules;
pub mod tables;

pub use routes::routes;
