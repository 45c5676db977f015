//! What pull boxes and conduit bodies share: pulls between walls, the lengths that the rules require of them, and the
//! distances between their entries.
//!
//! Neither request is known here. Each check resolves its own entries ([`entry`]) and pulls ([`pull`]); from these,
//! [`Resolved`], follow the length that each direction requires ([`lengths`]), how far apart entries must be
//! ([`distances`]), and whether given dimensions are enough ([`comparison`]).

pub mod comparison;
mod conductor_group;
pub mod distances;
pub mod entry;
pub mod lengths;
mod marking;
mod outcome;
pub mod pull;
mod resolved;
pub mod rows;
mod wall;

pub use conductor_group::ConductorGroup;
pub use marking::{Held, Marking};
pub use outcome::{AxisSize, EntryDistanceOf, LengthRequirement, PullKindOf};
pub use pull::PullKind;
pub use resolved::{AxisRequirement, Resolved};
pub use wall::{Axis, Cover, EntryPosition, PerAxis, Wall};
