//! Drill time: whole milliseconds since the drill began.
//!
//! An integer, so that advancing by *a* and then by *b* lands on the same instant as *a + b*.

use core::fmt;
use core::ops::{Add, Sub};

/// An instant of the drill, or a length of drill time, in milliseconds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct DrillTime(u64);

impl DrillTime {
    /// The start of the drill.
    pub const ZERO: Self = Self(0);

    /// From whole milliseconds.
    pub const fn from_millis(millis: u64) -> Self {
        Self(millis)
    }

    /// From whole seconds.
    pub const fn from_secs(seconds: u64) -> Self {
        Self(seconds * 1000)
    }

    /// From hours, rounded down to seconds; `None` for what isn't a length from 0 to a thousand years.
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "within 0 and a thousand years"
    )]
    pub fn from_hours(hours: f64) -> Option<Self> {
        const THOUSAND_YEARS: f64 = 8_766_000.0;
        (0.0..THOUSAND_YEARS)
            .contains(&hours)
            .then(|| Self::from_secs((hours * 3600.0) as u64))
    }

    /// Whole milliseconds.
    pub const fn millis(self) -> u64 {
        self.0
    }

    /// Seconds, for the models.
    /// Exact for every length below 285 000 years.
    #[expect(
        clippy::cast_precision_loss,
        reason = "below 2^53 ms the conversion is exact"
    )]
    pub fn seconds(self) -> f64 {
        self.0 as f64 / 1000.0
    }

    /// The time since `earlier`, zero if `earlier` is later.
    #[must_use]
    pub const fn since(self, earlier: Self) -> Self {
        Self(self.0.saturating_sub(earlier.0))
    }
}

impl Add for DrillTime {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0.saturating_add(other.0))
    }
}

impl Sub for DrillTime {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        self.since(other)
    }
}

/// Minutes and seconds as a clock shows them, with milliseconds only when there are any: `12:05`, `12:05.250`.
impl fmt::Display for DrillTime {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (minutes, seconds, millis) = (self.0 / 60_000, self.0 / 1000 % 60, self.0 % 1000);
        if millis == 0 {
            write!(f, "{minutes}:{seconds:02}")
        } else {
            write!(f, "{minutes}:{seconds:02}.{millis:03}")
        }
    }
}
