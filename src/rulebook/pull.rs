//! Boxes that hold 4 AWG and larger, which are sized by length.

use super::{Basis, Rule};

/// Conductors of 4 AWG and larger are answered by the pull-box rules, not by volume.
pub static APPLIES: Rule = Rule::everywhere(
    "pull.applies",
    "314.28(A)",
    Basis::Published,
    "2011 text of the section, later editions recalled; Electrical Contractor, 15 Apr 2015",
);

/// The rules of this part.
pub static RULES: [&Rule; 1] = [&APPLIES];
