//! Dates and times as seconds since the beginning of 1970, UTC.

use std::time::{SystemTime, UNIX_EPOCH};
use toml::value::{Datetime, Offset};

const DAY: u64 = 86_400;

/// Now.
pub fn now() -> u64 {
    SystemTime::now().duration_since(UNIX_EPOCH).map_or(0, |since| since.as_secs())
}

/// A date (its beginning, UTC) or a date with time and offset: `2027-01-31`, `2027-01-31T12:00:00Z`.
pub fn read(text: &str) -> Option<u64> {
    let Datetime { date, time, offset } = text.parse().ok()?;
    let date = date?;
    let days = days(i64::from(date.year), i64::from(date.month), i64::from(date.day));
    let (seconds, west) = match (time, offset) {
        (None, None) => (0, 0),
        (Some(time), Some(offset)) => {
            let minutes = match offset {
                Offset::Z => 0,
                Offset::Custom { minutes } => i64::from(minutes),
            };
            let seconds = i64::from(time.hour) * 3600 + i64::from(time.minute) * 60;
            (seconds + i64::from(time.second.unwrap_or(0)), minutes * 60)
        }
        _ => return None,
    };
    u64::try_from(days * 86_400 + seconds - west).ok()
}

/// A moment as it is written in a file of keys.
pub fn write(moment: u64) -> String {
    let (year, month, day) = civil(moment / DAY);
    let second = moment % DAY;
    let (hour, minute) = (second / 3600, second / 60 % 60);
    format!("{year:04}-{month:02}-{day:02}T{hour:02}:{minute:02}:{:02}Z", second % 60)
}

/// Days from 1970-01-01 to a date of the Gregorian calendar; years are counted from March, so that a leap day is the last.
const fn days(year: i64, month: i64, day: i64) -> i64 {
    let year = if month <= 2 { year - 1 } else { year };
    let era = year.div_euclid(400);
    let year_of_era = year.rem_euclid(400);
    let day_of_year = (153 * ((month + 9) % 12) + 2) / 5 + day - 1;
    era * 146_097 + year_of_era * 365 + year_of_era / 4 - year_of_era / 100 + day_of_year - 719_468
}

/// The date that is so many days after 1970-01-01.
fn civil(since: u64) -> (u64, u64, u64) {
    let leap = |year: u64| year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400));
    let (mut year, mut rest) = (1970, since);
    while rest >= 365 + u64::from(leap(year)) {
        rest -= 365 + u64::from(leap(year));
        year += 1;
    }
    let lengths = [31, 28 + u64::from(leap(year)), 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    let mut month = 1;
    for length in lengths {
        if rest < length {
            break;
        }
        rest -= length;
        month += 1;
    }
    (year, month, rest + 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn known_moments_are_read() {
        // these are what `date -u -d … +%s` prints
        for (text, moment) in [
            ("1970-01-01", 0),
            ("2000-02-29", 951_782_400),
            ("2027-01-31T12:00:00Z", 1_801_396_800),
            ("2027-01-31T12:00:00+02:00", 1_801_389_600),
            ("2100-03-01", 4_107_542_400),
        ] {
            assert_eq!(read(text), Some(moment), "{text}");
        }
        for wrong in ["", "tomorrow", "2027-02-30", "2027-01-31T12:00:00", "12:00:00", "1969-12-31"] {
            assert_eq!(read(wrong), None, "{wrong}");
        }
    }

    #[test]
    fn what_is_written_is_read_as_the_same() {
        for day in (0..60_000).step_by(13) {
            let moment = day * DAY + day % DAY;
            assert_eq!(read(&write(moment)), Some(moment), "{}", write(moment));
        }
    }
}
