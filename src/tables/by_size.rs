//! Look-up by conductor size and system of units without a search.

use crate::quantity::Units;
use crate::trade::ConductorSize;

/// What a table has for each conductor size in one of the two systems.
pub(super) struct BySize<T>([[Option<T>; ConductorSize::COUNT]; 2]);

impl<T: Copy> BySize<T> {
    /// Looks up every size in both systems.
    pub(super) fn new(find: impl Fn(ConductorSize, Units) -> Option<T>) -> Self {
        let mut found = [[None; ConductorSize::COUNT]; 2];
        for size in ConductorSize::all() {
            for units in [Units::Us, Units::Si] {
                found[units as usize][size.index()] = find(size, units);
            }
        }
        Self(found)
    }

    /// What the table has for a size.
    pub(super) const fn of(&self, size: ConductorSize, units: Units) -> Option<T> {
        self.0[units as usize][size.index()]
    }
}
