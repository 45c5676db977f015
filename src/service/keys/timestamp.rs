//! Timestamps of keys: when one expires, read from a date or a date with time and offset, and written in UTC.

use jiff::Timestamp;
use jiff::civil::Date;
use jiff::tz::TimeZone;

/// Parses a date (its beginning, UTC) or a date with time and offset: `2027-01-31`, `2027-01-31T12:00:00Z`; none before 1970.
pub fn parse(text: &str) -> Option<Timestamp> {
    let timestamp = match Date::strptime("%Y-%m-%d", text) {
        Ok(date) => TimeZone::UTC.to_timestamp(date.into()).ok()?,
        Err(_) => text.parse().ok()?,
    };
    (timestamp >= Timestamp::UNIX_EPOCH).then_some(timestamp)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn known_timestamps_are_parsed() {
        // these are what `date -u -d … +%s` prints
        for (text, seconds) in [
            ("1970-01-01", 0),
            ("2000-02-29", 951_782_400),
            ("2027-01-31T12:00:00Z", 1_801_396_800),
            ("2027-01-31T12:00:00+02:00", 1_801_389_600),
            ("2100-03-01", 4_107_542_400),
        ] {
            assert_eq!(parse(text).map(Timestamp::as_second), Some(seconds), "{text}");
        }
        for wrong in ["", "tomorrow", "2027-02-30", "2027-01-31T12:00:00", "12:00:00", "1969-12-31"] {
            assert_eq!(parse(wrong), None, "{wrong}");
        }
    }

    #[test]
    fn what_is_written_is_parsed_as_the_same() {
        for day in (0..60_000).step_by(13) {
            let timestamp = Timestamp::from_second(day * 86_400 + day).unwrap();
            assert_eq!(parse(&timestamp.to_string()), Some(timestamp), "{timestamp}");
        }
        assert_eq!(parse("2027-01-31").unwrap().to_string(), "2027-01-31T00:00:00Z");
    }
}
