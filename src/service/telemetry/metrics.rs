//! Counts of what the service does. One atomic addition each; nothing is allocated while counting.

use crate::checks::Verdict;
use crate::service::register::CHECKS;
use axum::http::StatusCode;
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::Duration;

/// Upper bounds of the durations that are told apart, in microseconds.
pub const BOUNDS: [u64; 14] = [
    50,
    100,
    250,
    500,
    1_000,
    2_500,
    5_000,
    10_000,
    25_000,
    50_000,
    100_000,
    1_000_000,
    10_000_000,
    100_000_000,
];

/// The statuses that are counted apart; the last place is for all others.
pub const STATUSES: [u16; 18] =
    [200, 204, 304, 307, 400, 401, 403, 404, 405, 406, 408, 413, 415, 422, 429, 500, 503, 0];

/// The verdicts of a check; the last is that of a request which asks only for a size.
pub const VERDICTS: [&str; 4] = ["complies", "violates", "not_determined", "none"];

/// A number that only grows, or that goes up and down.
#[derive(Debug, Default)]
pub struct Count(AtomicU64);

impl Count {
    /// Adds to it.
    pub fn add(&self, number: u64) {
        self.0.fetch_add(number, Ordering::Relaxed);
    }

    /// Takes one away.
    pub fn take_one(&self) {
        self.0.fetch_sub(1, Ordering::Relaxed);
    }

    /// The number.
    pub fn get(&self) -> u64 {
        self.0.load(Ordering::Relaxed)
    }
}

/// The counts of one operation.
#[derive(Debug, Default)]
pub struct OperationCounts {
    /// Answers by status, as [`STATUSES`].
    pub statuses: [Count; STATUSES.len()],
    /// Durations by bound, as [`BOUNDS`]; the last is for those that are longer.
    pub durations: [Count; BOUNDS.len() + 1],
    /// All durations together, in microseconds.
    pub micros: Count,
}

/// Why something was turned away.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TurnedAway {
    /// Too many requests at once.
    Busy,
    /// Too many connections.
    Connections,
    /// The address asked too often.
    AddressRate,
    /// The quota of the key is used up.
    KeyQuota,
    /// No key, or none that is known and in force.
    Key,
    /// The key is for something else.
    Scope,
}

impl TurnedAway {
    /// Every reason with its name.
    pub const ALL: [(Self, &'static str); 6] = [
        (Self::Busy, "busy"),
        (Self::Connections, "connections"),
        (Self::AddressRate, "address_rate"),
        (Self::KeyQuota, "key_quota"),
        (Self::Key, "key"),
        (Self::Scope, "scope"),
    ];
}

/// How a line of a stream ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StreamLine {
    /// With an answer.
    Answered,
    /// With a problem.
    Refused,
}

/// All counts.
#[derive(Debug)]
pub struct Metrics {
    /// By operation, in the order of the operations.
    pub operations: Vec<OperationCounts>,
    /// By check, in the order of the register, and verdict.
    pub verdicts: Vec<[Count; VERDICTS.len()]>,
    /// Lines of streams: answered, refused.
    pub stream_lines: [Count; 2],
    /// By reason, as [`TurnedAway::ALL`].
    pub turned_away: [Count; TurnedAway::ALL.len()],
    /// Connections that are open.
    pub connections: Count,
    /// Reloads of keys and certificates: done, refused.
    pub reloads: [Count; 2],
    /// Spans that could not be sent.
    pub lost_spans: Count,
}

impl Metrics {
    /// All at zero, for so many operations.
    pub fn new(operations: usize) -> Self {
        Self {
            operations: (0..operations).map(|_| OperationCounts::default()).collect(),
            verdicts: CHECKS.iter().map(|_| Default::default()).collect(),
            stream_lines: Default::default(),
            turned_away: Default::default(),
            connections: Count::default(),
            reloads: Default::default(),
            lost_spans: Count::default(),
        }
    }

    /// Counts an answer of an operation.
    pub fn answered(&self, operation: usize, status: StatusCode, took: Duration) {
        let Some(counts) = self.operations.get(operation) else { return };
        let status = status.as_u16();
        let place = STATUSES.iter().position(|known| *known == status).unwrap_or(STATUSES.len() - 1);
        counts.statuses[place].add(1);
        let micros = u64::try_from(took.as_micros()).unwrap_or(u64::MAX);
        let bound = BOUNDS.iter().position(|bound| micros <= *bound).unwrap_or(BOUNDS.len());
        counts.durations[bound].add(1);
        counts.micros.add(micros);
    }

    /// Counts a verdict of a check, by its name.
    pub fn verdict(&self, check: &str, verdict: Option<Verdict>) {
        let place = match verdict {
            Some(Verdict::Complies) => 0,
            Some(Verdict::Violates) => 1,
            Some(Verdict::NotDetermined) => 2,
            None => 3,
        };
        let known = CHECKS.iter().position(|known| known.name == check);
        if let Some(verdicts) = known.and_then(|known| self.verdicts.get(known)) {
            verdicts[place].add(1);
        }
    }

    /// Counts a line of a stream.
    pub fn stream_line(&self, line: StreamLine) {
        self.stream_lines[usize::from(line == StreamLine::Refused)].add(1);
    }

    /// Counts what was turned away.
    pub fn turned_away(&self, reason: TurnedAway) {
        self.turned_away[reason as usize].add(1);
    }

    /// Counts a reload.
    pub fn reloaded(&self, done: bool) {
        self.reloads[usize::from(!done)].add(1);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_answer_is_counted_by_status_and_duration() {
        let metrics = Metrics::new(1);
        metrics.answered(0, StatusCode::OK, Duration::from_micros(50));
        metrics.answered(0, StatusCode::OK, Duration::from_micros(51));
        metrics.answered(0, StatusCode::IM_A_TEAPOT, Duration::from_secs(1000));
        let counts = &metrics.operations[0];
        assert_eq!((counts.statuses[0].get(), counts.statuses[17].get()), (2, 1));
        assert_eq!(
            counts.durations.each_ref().map(Count::get),
            [1, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1]
        );
        assert_eq!(counts.micros.get(), 1_000_000_101);
    }

    #[test]
    fn every_reason_has_its_own_place() {
        for (place, (reason, _)) in TurnedAway::ALL.into_iter().enumerate() {
            assert_eq!(reason as usize, place);
        }
    }
}
