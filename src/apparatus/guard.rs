//! What guards a circuit against too much current: a breaker or a fuse, asked alike.
//!
//! A breaker opens all its poles and is reset when it has cooled; a fuse melts once and is replaced by a cold one.
//! Covers what both have in common; ranges, sources and accuracy are those of `breaker` and `fuse`.

use super::breaker::Breaker;
use super::fuse::Fuse;

/// A breaker or a fuse.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Guard {
    /// A breaker.
    Breaker(Breaker),
    /// A fuse.
    Fuse(Fuse),
}

impl Guard {
    /// Amps written on it.
    pub fn rating_a(self) -> f64 {
        match self {
            Self::Breaker(breaker) => breaker.rating_a,
            Self::Fuse(fuse) => fuse.rating_a,
        }
    }

    /// Amps from which the usual device opens at once.
    pub fn at_once_a(self) -> f64 {
        match self {
            Self::Breaker(breaker) => breaker.instantaneous_a(),
            Self::Fuse(fuse) => fuse.at_once_a(),
        }
    }

    /// Heat at which the usual device opens.
    pub fn opening_heat(self) -> f64 {
        match self {
            Self::Breaker(breaker) => breaker.trip_heat(),
            Self::Fuse(fuse) => fuse.melting_heat(),
        }
    }

    /// Heat after `seconds` at `amps`, from `heat`.
    pub fn heat_after(self, heat: f64, amps: f64, seconds: f64) -> f64 {
        match self {
            Self::Breaker(breaker) => breaker.heat_after(heat, amps, seconds),
            Self::Fuse(fuse) => fuse.heat_after(heat, amps, seconds),
        }
    }

    /// Seconds until the usual device opens if `amps` stay as they are; `None` if it holds.
    pub fn seconds_to_open(self, heat: f64, amps: f64) -> Option<f64> {
        match self {
            Self::Breaker(breaker) => breaker.seconds_to_trip(heat, amps),
            Self::Fuse(fuse) => fuse.seconds_to_open(heat, amps),
        }
    }

    /// Whether it can be closed at this heat: a breaker whose bimetal is hot doesn't latch, a new fuse is cold.
    pub fn closes(self, heat: f64) -> bool {
        match self {
            Self::Breaker(breaker) => breaker.latches(heat),
            Self::Fuse(_) => true,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::apparatus::fuse::Delay;

    #[test]
    fn it_opens_when_its_heat_is_the_opening_heat() {
        let rating_a = 15.0;
        let fuse = Fuse {
            rating_a,
            delay: Delay::TimeDelay,
        };
        for guard in [Guard::Breaker(Breaker { rating_a }), Guard::Fuse(fuse)] {
            let seconds = guard.seconds_to_open(0.2, 30.0).unwrap();
            let heat = guard.heat_after(0.2, 30.0, seconds);
            assert!((heat - guard.opening_heat()).abs() < 1e-12, "{guard:?}");
            assert!(guard.seconds_to_open(0.0, guard.at_once_a()).unwrap() < 0.02);
        }
    }

    #[test]
    fn a_hot_breaker_has_to_wait_and_a_new_fuse_has_not() {
        let rating_a = 15.0;
        let breaker = Guard::Breaker(Breaker { rating_a });
        let fuse = Guard::Fuse(Fuse {
            rating_a,
            delay: Delay::Fast,
        });
        assert!(!breaker.closes(breaker.opening_heat()) && breaker.closes(0.0));
        assert!(fuse.closes(fuse.opening_heat()));
    }
}
