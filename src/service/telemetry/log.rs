//! Which requests are logged, and how a line is written.
//!
//! A line for every request costs more than answering it: only failures are logged unless more is asked for.

use std::sync::atomic::{AtomicU64, Ordering};
use std::time::Duration;
use tracing_subscriber::EnvFilter;

/// Failures that are logged in one second; under a flood the counts say the rest.
const MOST_FAILURES: u64 = 100;

/// How a log line is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LogFormat {
    /// For a person.
    Text,
    /// A JSON object a line.
    Json,
}

impl LogFormat {
    /// Reads the setting.
    pub fn read(text: &str) -> Result<Self, String> {
        match text {
            "text" => Ok(Self::Text),
            "json" => Ok(Self::Json),
            _ => Err("is neither text nor json".to_owned()),
        }
    }

    /// Reads a filter.
    pub fn filter(text: &str) -> Result<String, String> {
        match EnvFilter::try_new(text) {
            Ok(_) => Ok(text.to_owned()),
            Err(error) => Err(format!("is no filter, such as warn or elbowroom=info: {error}")),
        }
    }

    /// Begins to log to standard error. What cannot be written there is lost: a full disk must not stop the service.
    pub fn begin(self, filter: &str) {
        let filter = EnvFilter::try_new(filter).unwrap_or_else(|_| EnvFilter::new("warn"));
        let log = tracing_subscriber::fmt()
            .with_env_filter(filter)
            .with_writer(std::io::stderr)
            .with_ansi(false)
            .log_internal_errors(false);
        match self {
            Self::Text => log.init(),
            Self::Json => {
                log.json().flatten_event(true).with_current_span(false).with_span_list(false).init()
            }
        }
    }
}

/// Requests that are logged.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LogRequests {
    /// None.
    None,
    /// Every request.
    All,
    /// Answers of 500 and above, up to a limit each second.
    Failures,
    /// Failures, and one in `n` of the others.
    OneIn(u32),
}

impl LogRequests {
    /// Reads the setting.
    pub fn read(text: &str) -> Result<Self, String> {
        match text {
            "all" => Ok(Self::All),
            "none" => Ok(Self::None),
            "failures" => Ok(Self::Failures),
            _ => match text.parse() {
                Ok(count @ 1..) => Ok(Self::OneIn(count)),
                _ => Err("is not all, none, failures or a count".to_owned()),
            },
        }
    }
}

/// Decides which requests are logged.
#[derive(Debug)]
pub struct RequestLog {
    which: LogRequests,
    seen: AtomicU64,
    /// The second that failures are counted in, and how many there were.
    failures: AtomicU64,
}

impl RequestLog {
    /// Logs what the setting says.
    pub const fn new(which: LogRequests) -> Self {
        Self { which, seen: AtomicU64::new(0), failures: AtomicU64::new(0) }
    }

    /// Whether an answer is logged, by its status and the time since the service started.
    pub fn takes(&self, status: u16, since_start: Duration) -> bool {
        match self.which {
            LogRequests::None => false,
            LogRequests::All => true,
            LogRequests::Failures => status >= 500 && self.has_room(since_start),
            LogRequests::OneIn(count) if status < 500 => {
                self.seen.fetch_add(1, Ordering::Relaxed).is_multiple_of(count.into())
            }
            LogRequests::OneIn(_) => self.has_room(since_start),
        }
    }

    fn has_room(&self, since_start: Duration) -> bool {
        let second = since_start.as_secs() << 32;
        let before = self.failures.load(Ordering::Relaxed);
        let fresh = before >> 32 != second >> 32;
        // a race here lets a line more through, or one less
        if fresh {
            self.failures.store(second | 1, Ordering::Relaxed);
        } else {
            self.failures.fetch_add(1, Ordering::Relaxed);
        }
        fresh || before & u64::from(u32::MAX) < MOST_FAILURES
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn failures_are_logged_up_to_a_number_a_second() {
        let log = RequestLog::new(LogRequests::Failures);
        let at = |second| move |log: &RequestLog| log.takes(503, Duration::from_secs(second));
        assert!(!log.takes(422, Duration::ZERO));
        assert_eq!((0..500).filter(|_| at(7)(&log)).count(), 100);
        assert_eq!((0..500).filter(|_| at(8)(&log)).count(), 100);
    }

    #[test]
    fn one_in_n_is_logged_and_every_failure() {
        let log = RequestLog::new(LogRequests::read("10").unwrap());
        assert_eq!((0..100).filter(|_| log.takes(200, Duration::ZERO)).count(), 10);
        assert!(log.takes(500, Duration::from_secs(1)));
        assert!(RequestLog::new(LogRequests::All).takes(200, Duration::ZERO));
        assert!(!RequestLog::new(LogRequests::None).takes(500, Duration::ZERO));
        for wrong in ["0", "-1", "some"] {
            assert!(LogRequests::read(wrong).is_err(), "{wrong}");
        }
    }
}
