//! How well a learner foretells, and how well they know it: kept apart from the verdict, which no prediction touches.
//!
//! A number is right within a quarter of the truth; what is too small to measure is right when the answer is too.
//! The score is the mean of (p - o)², with p how sure the learner was to be right and o whether they were, 1 or 0: 0 is best, and 0.25 is what a guess at 50 % always gets.
//! That is the score of one outcome of two; the original adds both and comes to twice as much.
//! Source: G. W. Brier, "Verification of forecasts expressed in terms of probability", Monthly Weather Review 78, 1950 (from memory).

use crate::scenario::prediction::{Foretold, Truth};

/// How sure a learner can say to be, percent.
pub const SURE: [u8; 3] = [50, 70, 90];
/// What a guess at 50 % always scores.
pub const GUESS: f64 = 0.25;
/// How far a number may be off, as a share of the truth.
const OFF: f64 = 0.25;
/// Below this a number is as good as none, in any of the units asked.
const NOTHING: f64 = 1.0;

/// An answer that has been given: how sure, and whether it was right.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Forecast {
    /// How sure the learner was, percent.
    pub sure: u8,
    /// Whether it was right.
    pub right: bool,
}

/// What a session's forecasts come to.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Calibration {
    /// How many.
    pub n: usize,
    /// How many were right.
    pub n_right: usize,
    /// How sure on average, percent.
    pub sure: f64,
    /// The mean score, 0 best to 1.
    pub brier: f64,
}

/// How sureness and success go together.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Lean {
    /// More sure than right.
    TooSure,
    /// More right than sure.
    TooShy,
    /// As sure as right, within ten in a hundred.
    Fits,
}

impl Calibration {
    /// How sureness and success go together; nothing is said of fewer than five.
    pub fn lean(&self) -> Option<Lean> {
        const FEWEST: usize = 5;
        const WITHIN_PCT: f64 = 10.0;
        let over = self.sure - 100.0 * count(self.n_right) / count(self.n);
        let lean = if over > WITHIN_PCT {
            Lean::TooSure
        } else if over < -WITHIN_PCT {
            Lean::TooShy
        } else {
            Lean::Fits
        };
        (self.n >= FEWEST).then_some(lean)
    }
}

/// Whether an answer is right; none if it can't be read as one.
pub fn is_right(about: &Foretold, answer: &str, truth: &Truth) -> Option<bool> {
    match truth {
        Truth::Choice(so) => Some(answer == so),
        Truth::Number(so) => {
            let said = answer.parse::<f64>().ok();
            let said = said.filter(|n| n.is_finite() && *n >= 0.0)?;
            about.unit()?;
            let none = so.abs() < NOTHING && said < NOTHING;
            Some(none || (said - so).abs() <= OFF * so.abs())
        }
    }
}

/// What forecasts come to; none if there are none.
pub fn calibration(forecasts: &[Forecast]) -> Option<Calibration> {
    let n = forecasts.len();
    let score = |f: &Forecast| {
        let off = f64::from(f.sure) / 100.0 - f64::from(u8::from(f.right));
        off * off
    };
    let mean = |sum: f64| sum / count(n);
    (n > 0).then(|| Calibration {
        n,
        n_right: forecasts.iter().filter(|f| f.right).count(),
        sure: mean(forecasts.iter().map(|f| f64::from(f.sure)).sum()),
        brier: mean(forecasts.iter().map(score).sum()),
    })
}

fn count(n: usize) -> f64 {
    u32::try_from(n).map_or(f64::INFINITY, f64::from)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn forecast(sure: u8, right: bool) -> Forecast {
        Forecast { sure, right }
    }

    #[test]
    fn the_score_is_that_worked_by_hand() {
        // (0.9-1)² + (0.7-0)² + (0.5-1)² = 0.01 + 0.49 + 0.25 = 0.75, over three.
        let three = [forecast(90, true), forecast(70, false), forecast(50, true)];
        let found = calibration(&three).unwrap();
        assert!((found.brier - 0.25).abs() < 1e-12, "{found:?}");
        assert!((found.sure - 70.0).abs() < 1e-12, "{found:?}");
        assert_eq!((found.n, found.n_right), (3, 2));
        assert_eq!(calibration(&[]), None);
    }

    #[test]
    fn to_be_sure_and_wrong_costs_most_and_to_be_sure_and_right_least() {
        let brier = |sure, right| calibration(&[forecast(sure, right)]).unwrap().brier;
        let rising = [
            brier(90, true),
            brier(70, true),
            brier(50, true),
            brier(70, false),
            brier(90, false),
        ];
        assert!(rising.is_sorted(), "{rising:?}");
        assert!((brier(90, false) - 0.81).abs() < 1e-12);
        assert!((brier(50, true) - brier(50, false)).abs() < 1e-12);
    }

    #[test]
    fn who_is_more_sure_than_right_is_told_from_five_answers_on() {
        let lean = |n_right: usize, n: usize, sure| {
            let answers: Vec<_> = (0..n).map(|i| forecast(sure, i < n_right)).collect();
            calibration(&answers).unwrap().lean()
        };
        assert_eq!(lean(2, 5, 90), Some(Lean::TooSure));
        assert_eq!(lean(5, 5, 70), Some(Lean::TooShy));
        assert_eq!(lean(3, 5, 70), Some(Lean::Fits));
        assert_eq!(lean(0, 4, 90), None);
    }

    #[test]
    fn a_number_is_right_within_a_quarter_and_nothing_is_as_good_as_nothing() {
        let right = |said: &str, truth| is_right(&Foretold::Watts, said, &Truth::Number(truth));
        for (said, truth, wanted) in [
            ("90", 120.0, Some(true)),
            ("89", 120.0, Some(false)),
            ("150", 120.0, Some(true)),
            ("151", 120.0, Some(false)),
            ("0", 0.4, Some(true)),
            ("1", 0.0, Some(false)),
            ("-3", 0.0, None),
            ("inf", 120.0, None),
            ("many", 120.0, None),
        ] {
            assert_eq!(right(said, truth), wanted, "{said} of {truth}");
        }
    }
}
