//! Rate limit: token buckets, one word each, without locks (the generic cell rate algorithm).
//!
//! A bucket is the time at which it is full again. It holds as many requests as a minute allows and fills steadily. A
//! bucket whose time has passed is full and says nothing, so its slot can be given to another caller: memory is bounded
//! without forgetting anyone who was limited, unless more than [`SLOTS`] callers are active within a minute.

use std::collections::hash_map::RandomState;
use std::hash::{BuildHasher, Hash};
use std::sync::LazyLock;
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::Instant;

/// The span that a quota is counted over, in nanoseconds.
const WINDOW: u64 = 60_000_000_000;
const SECOND: u64 = 1_000_000_000;

/// Nanoseconds since the first use of this clock.
fn now() -> u64 {
    static START: LazyLock<Instant> = LazyLock::new(Instant::now);
    u64::try_from(START.elapsed().as_nanos()).unwrap_or(u64::MAX)
}

/// What a bucket says of a request.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Allowance {
    /// Whether the request may pass.
    pub passes: bool,
    /// How many more may follow at once.
    pub remaining: u32,
    /// Seconds until the bucket is full again.
    pub full_in: u64,
    /// Seconds until the next request may pass; zero when one may now.
    pub wait: u64,
}

/// A bucket.
#[derive(Debug, Default)]
pub struct Bucket(AtomicU64);

impl Bucket {
    /// Takes one request out of a bucket that allows `per_minute` of them.
    pub fn take(&self, per_minute: u32) -> Allowance {
        self.take_at(per_minute, now())
    }

    fn take_at(&self, per_minute: u32, now: u64) -> Allowance {
        let each = WINDOW / u64::from(per_minute.max(1));
        let mut full_at = self.0.load(Ordering::Relaxed);
        loop {
            let next = full_at.max(now) + each;
            let ahead = next - now;
            if ahead > WINDOW {
                let wait = (ahead - WINDOW).div_ceil(SECOND).max(1);
                let full_in = (full_at.max(now) - now).div_ceil(SECOND);
                return Allowance { passes: false, remaining: 0, full_in, wait };
            }
            match self.0.compare_exchange_weak(full_at, next, Ordering::Relaxed, Ordering::Relaxed) {
                Ok(_) => {
                    let remaining = u32::try_from((WINDOW - ahead) / each).unwrap_or(u32::MAX);
                    return Allowance { passes: true, remaining, full_in: ahead.div_ceil(SECOND), wait: 0 };
                }
                Err(changed) => full_at = changed,
            }
        }
    }
}

const WAYS: usize = 4;
const SETS: usize = 4096;
/// The most callers that are counted apart.
pub const SLOTS: usize = WAYS * SETS;

#[derive(Debug, Default)]
struct Slot {
    caller: AtomicU64,
    bucket: Bucket,
}

/// Buckets of callers that are known by nothing but a hash.
#[derive(Debug)]
pub struct Buckets {
    per_minute: u32,
    hasher: RandomState,
    slots: Box<[[Slot; WAYS]]>,
}

impl Buckets {
    /// Buckets that allow `per_minute` requests each.
    pub fn new(per_minute: u32) -> Self {
        let slots = (0..SETS).map(|_| Default::default()).collect();
        // the hash has a secret of this process: a caller cannot choose addresses that share a slot
        Self { per_minute, hasher: RandomState::new(), slots }
    }

    /// How many requests a minute each allows.
    pub const fn per_minute(&self) -> u32 {
        self.per_minute
    }

    /// Takes one request out of the bucket of a caller.
    pub fn take(&self, caller: impl Hash) -> Allowance {
        self.take_at(self.hasher.hash_one(caller).max(1), now())
    }

    fn take_at(&self, caller: u64, now: u64) -> Allowance {
        let set = &self.slots[usize::try_from(caller).unwrap_or(0) % SETS];
        let known = set.iter().find(|slot| slot.caller.load(Ordering::Relaxed) == caller);
        let slot = known.unwrap_or_else(|| {
            let full_at = |slot: &&Slot| slot.bucket.0.load(Ordering::Relaxed);
            let oldest = set.iter().min_by_key(full_at).unwrap_or(&set[0]);
            oldest.caller.store(caller, Ordering::Relaxed);
            oldest.bucket.0.store(now, Ordering::Relaxed);
            oldest
        });
        slot.bucket.take_at(self.per_minute, now)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_bucket_holds_a_minute_and_fills_steadily() {
        let bucket = Bucket::default();
        let start = 5 * WINDOW;
        for left in (0..6).rev() {
            let allowed = bucket.take_at(6, start);
            assert!(allowed.passes);
            assert_eq!(allowed.remaining, left);
        }
        let refused = bucket.take_at(6, start);
        assert_eq!((refused.passes, refused.wait, refused.full_in), (false, 10, 60));
        assert!(!bucket.take_at(6, start + 9 * SECOND).passes);
        assert!(bucket.take_at(6, start + 10 * SECOND).passes);
        assert!(!bucket.take_at(6, start + 10 * SECOND).passes);
        assert_eq!(bucket.take_at(6, start + 10 * WINDOW).remaining, 5);
    }

    #[test]
    fn callers_have_buckets_of_their_own_and_a_full_one_is_given_away() {
        let buckets = Buckets::new(1);
        let start = WINDOW;
        let same_set = |number: u64| number * SETS as u64 + 7;
        for caller in 1..=4 {
            assert!(buckets.take_at(same_set(caller), start).passes);
            assert!(!buckets.take_at(same_set(caller), start).passes, "{caller}");
        }
        // after a minute all are full: a fifth caller takes a slot, and the others are as they would be anyway
        assert!(buckets.take_at(same_set(5), start + WINDOW).passes);
        assert!(!buckets.take_at(same_set(5), start + WINDOW).passes);
        assert!(buckets.take_at(same_set(1), start + WINDOW).passes);
    }

    #[test]
    fn many_threads_get_no_more_than_the_quota() {
        let bucket = Bucket::default();
        let passed: usize = std::thread::scope(|scope| {
            let take = || (0..1000).filter(|_| bucket.take_at(500, WINDOW).passes).count();
            let threads: Vec<_> = (0..4).map(|_| scope.spawn(take)).collect();
            threads.into_iter().map(|thread| thread.join().unwrap()).sum()
        });
        assert_eq!(passed, 500);
    }
}
