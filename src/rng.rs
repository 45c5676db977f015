//! The seeded pseudo-random generator of exercises and of the demo takeoff.
//!
//! Both are pinned to it: the same seed must give the same in every later version, so it is kept here rather than taken from
//! a crate whose sampling of ranges may change between releases.

/// `SplitMix64` (Steele, Lea and Flood, 2014): the same numbers from a seed on every machine.
#[derive(Clone, Debug)]
pub struct Rng(u64);

impl Rng {
    /// A generator that begins at a seed.
    pub const fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// A generator of its own for each of several numbers that belong together.
    pub fn of(parts: &[u64]) -> Self {
        let mut rng = Self(0);
        for part in parts {
            rng.0 ^= *part;
            rng.0 = rng.next();
        }
        rng
    }

    /// The next 64 bits.
    pub const fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        mixed ^ (mixed >> 31)
    }

    /// A whole number below another one.
    pub fn below(&mut self, number: u32) -> u32 {
        // the upper half of the product is spread evenly, but for less than one part in 2³²
        ((u128::from(self.next()) * u128::from(number)) >> 64) as u32
    }

    /// A whole number from one to another, both included.
    pub fn from(&mut self, least: u32, most: u32) -> u32 {
        least + self.below(most - least + 1)
    }

    /// One of several.
    pub fn pick<T: Copy, const N: usize>(&mut self, from: [T; N]) -> T {
        from[self.below(N as u32) as usize]
    }

    /// Whether something happens that has this chance in a hundred.
    pub fn chance(&mut self, percent: u32) -> bool {
        self.below(100) < percent
    }

    /// Puts things in another order.
    pub fn shuffle<T>(&mut self, things: &mut [T]) {
        for place in (1..things.len()).rev() {
            let other = self.below(place as u32 + 1) as usize;
            things.swap(place, other);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_numbers_are_those_that_the_generator_is_known_for() {
        let mut rng = Rng::new(1_234_567);
        let first: Vec<u64> = (0..5).map(|_| rng.next()).collect();
        assert_eq!(
            first,
            [
                6_457_827_717_110_365_317,
                3_203_168_211_198_807_973,
                9_817_491_932_198_370_423,
                4_593_380_528_125_082_431,
                16_408_922_859_458_223_821
            ]
        );
    }

    #[test]
    fn every_number_below_the_limit_comes_up_and_no_other() {
        let mut rng = Rng::new(7);
        let mut seen = [0; 6];
        (0..6_000).for_each(|_| seen[rng.below(6) as usize] += 1);
        assert!(seen.iter().all(|times| (800..1_200).contains(times)), "{seen:?}");
    }
}
