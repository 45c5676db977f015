//! What pull boxes and conduit bodies share: pulls between walls, the lengths that the rules require of them, and the
//! distances between their entries.
//!
//! Nothing here knows either request. Each check reads its own into entries and pulls: [`entry`] is what an entry counts
//! as, [`pull`] what each pull is by the walls of its entries, [`lengths`] what the rules require of each direction, and
//! [`distances`] how far apart entries must be.

pub mod conductor_group;
pub mod distances;
pub mod entry;
pub mod lengths;
pub mod marking;
pub mod outcome;
pub mod pull;
pub mod rows;
pub mod wall;

pub use conductor_group::ConductorGroup;
pub use marking::Marking;
pub use outcome::{AxisSize, EntryDistanceOf, LengthRequirement, PullKind, PullKindOf};
pub use wall::{Axis, Cover, EntryPosition, Wall};

#[expect(clippy::trivially_copy_pass_by_ref, reason = "the form that serde calls")]
pub fn is_false(flag: &bool) -> bool {
    !flag
}
