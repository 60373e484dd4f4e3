//! A day of the calendar, for what is kept between drills; within a drill time is [`super::DrillTime`].
//!
//! The Gregorian calendar, counted in days from 1970-01-01; the arithmetic is that of the published civil-day algorithms, from memory, and is held to known days.

use core::fmt;

/// A day.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Day(i64);

/// Days in 400 years.
const ERA: i64 = 146_097;
/// Days from 0000-03-01 to 1970-01-01.
const EPOCH: i64 = 719_468;

impl Day {
    /// The day this many days after 1970-01-01.
    pub const fn since_epoch(days: i64) -> Self {
        Self(days)
    }

    /// The day of a text like `2026-03-01`; none for any other text or a day that isn't in the calendar.
    pub fn parse(text: &str) -> Option<Self> {
        let is_form = text.len() == 10 && text.bytes().all(|b| b.is_ascii_digit() || b == b'-');
        let mut parts = text.split('-').map(|part| part.parse::<i64>().ok());
        let (year, month, day) = (parts.next()??, parts.next()??, parts.next()??);
        let is_near = (1..=12).contains(&month) && (1..=31).contains(&day);
        let counted = Self(days_from(year, month, day));
        // A day that isn't in its month comes out as one of the next.
        (is_form && is_near && counted.to_string() == text).then_some(counted)
    }

    /// The day this many days later.
    #[must_use]
    pub const fn plus(self, days: i64) -> Self {
        Self(self.0 + days)
    }

    /// Days from another to this one; negative if the other is later.
    pub const fn since(self, other: Self) -> i64 {
        self.0 - other.0
    }
}

fn days_from(year: i64, month: i64, day: i64) -> i64 {
    let year = if month <= 2 { year - 1 } else { year };
    let era = year.div_euclid(400);
    let year_of_era = year.rem_euclid(400);
    let day_of_year = (153 * ((month + 9) % 12) + 2) / 5 + day - 1;
    let day_of_era = year_of_era * 365 + year_of_era / 4 - year_of_era / 100 + day_of_year;
    era * ERA + day_of_era - EPOCH
}

impl fmt::Display for Day {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let days = self.0 + EPOCH;
        let era = days.div_euclid(ERA);
        let day_of_era = days.rem_euclid(ERA);
        let year_of_era =
            (day_of_era - day_of_era / 1460 + day_of_era / 36_524 - day_of_era / 146_096) / 365;
        let day_of_year = day_of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
        let from_march = (5 * day_of_year + 2) / 153;
        let day = day_of_year - (153 * from_march + 2) / 5 + 1;
        let month = if from_march < 10 {
            from_march + 3
        } else {
            from_march - 9
        };
        let year = year_of_era + era * 400 + i64::from(month <= 2);
        write!(f, "{year:04}-{month:02}-{day:02}")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_are_read_written_and_counted_as_the_calendar_has_them() {
        for (text, days) in [
            ("1970-01-01", 0),
            ("1972-02-29", 789),
            ("2000-03-01", 11_017),
            ("2026-11-26", 20_783),
        ] {
            assert_eq!(Day::parse(text), Some(Day::since_epoch(days)), "{text}");
            assert_eq!(Day::since_epoch(days).to_string(), text);
        }
        for wrong in [
            "2026-02-29",
            "2026-13-01",
            "2026-1-1",
            "1900-02-29",
            "2026-04-31",
            "today",
            "2026-00-10",
        ] {
            assert_eq!(Day::parse(wrong), None, "{wrong}");
        }
        let mut day = Day::parse("1999-12-31").unwrap();
        for _ in 0..800 {
            let next = day.plus(1);
            assert_eq!(Day::parse(&next.to_string()), Some(next));
            assert_eq!(next.since(day), 1);
            day = next;
        }
    }
}
