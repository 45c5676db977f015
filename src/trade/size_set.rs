//! Conductor sizes, each once.

use super::ConductorSize;

/// A set of conductor sizes.
///
/// ```
/// use elbowroom::trade::{ConductorSize, SizeSet};
/// let sizes: SizeSet = [ConductorSize::AWG_6, ConductorSize::AWG_14, ConductorSize::AWG_6].into_iter().collect();
/// assert!(sizes.iter().eq([ConductorSize::AWG_14, ConductorSize::AWG_6]));
/// assert_eq!(sizes.largest(), Some(ConductorSize::AWG_6));
/// ```
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct SizeSet(u64);

const _: () = assert!(ConductorSize::COUNT <= u64::BITS as usize, "a set has a bit for every size");

impl SizeSet {
    /// Adds a size.
    pub const fn insert(&mut self, size: ConductorSize) {
        self.0 |= 1 << size.index();
    }

    /// The sizes that both sets have.
    #[must_use]
    pub const fn and(self, other: Self) -> Self {
        Self(self.0 & other.0)
    }

    /// The largest size.
    pub const fn largest(self) -> Option<ConductorSize> {
        match self.0.checked_ilog2() {
            Some(place) => Some(ConductorSize::at(place as u8)),
            None => None,
        }
    }

    /// The sizes, smallest first.
    pub fn iter(self) -> impl Iterator<Item = ConductorSize> {
        let mut rest = self.0;
        std::iter::from_fn(move || {
            let place = (rest != 0).then(|| rest.trailing_zeros())?;
            rest &= rest - 1;
            Some(ConductorSize::at(place as u8))
        })
    }
}

impl FromIterator<ConductorSize> for SizeSet {
    fn from_iter<I: IntoIterator<Item = ConductorSize>>(sizes: I) -> Self {
        let mut set = Self::default();
        sizes.into_iter().for_each(|size| set.insert(size));
        set
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_size_has_a_place_of_its_own() {
        let all: SizeSet = ConductorSize::all().collect();
        assert!(all.iter().eq(ConductorSize::all()));
        assert_eq!(all.largest(), ConductorSize::all().last());
        assert_eq!(SizeSet::default().largest(), None);
        assert!(SizeSet::default().and(all).iter().next().is_none());
    }
}
