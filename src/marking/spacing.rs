//! What a learner still recalls, and when to practice again.
//!
//! Forgetting with a half-life: recall after `d` days is 2^(−d/h).
//! The form is that of half-life regression (Settles and Meeder, "A Trainable Spaced Repetition Model", ACL 2016; from memory).
//! Not fitted to anybody: the half-life doubles after each day of unaided passes and halves after each day with a fail, as common practice has it.
//! Assumptions: the half-life begins at a week; it stays between a day and 274 days; a day counts once, and a fail on it outweighs its passes.
//! Whoever failed last has nothing to recall, and is due at once.

use crate::units::{Day, portable};

/// The recall that is wanted.
pub const WANTED: f64 = 0.9;
/// Half-life before anything was shown, days.
const FIRST_DAYS: f64 = 7.0;
/// Shortest half-life, days.
const LEAST_DAYS: f64 = 1.0;
/// How far ahead a refresher is looked for, days: longer than recall stays as wanted at the longest half-life.
const DAYS_AHEAD: i64 = 60;
/// Longest half-life, days.
const MOST_DAYS: f64 = 274.0;

/// What is left of a skill.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Memory {
    /// The last day on which it was tried.
    pub last: Day,
    /// Whether it was shown then.
    pub shown: bool,
    /// Days after which half is forgotten.
    pub half_life_days: f64,
}

impl Memory {
    /// What these tries leave, in any order: the day, and whether it was shown; none without a try.
    pub fn of(tries: &[(Day, bool)]) -> Option<Self> {
        let mut tries = tries.to_vec();
        tries.sort_unstable();
        let mut memory: Option<Self> = None;
        for day in tries.chunk_by(|a, b| a.0 == b.0) {
            let Some((last, _)) = day.first() else {
                continue;
            };
            let shown = day.iter().all(|(_, passed)| *passed);
            let half_life_days = memory.map_or(FIRST_DAYS, |m| m.half_life_days);
            memory = Some(Self {
                last: *last,
                shown,
                half_life_days: next(half_life_days, shown),
            });
        }
        memory
    }

    /// What is recalled on a day, 0 to 1.
    pub fn recall(&self, on: Day) -> f64 {
        if !self.shown {
            return 0.0;
        }
        let days = u32::try_from(on.since(self.last)).unwrap_or_default();
        portable::power(2.0, -f64::from(days) / self.half_life_days)
    }

    /// The last day on which recall is as wanted: that of the next refresher.
    pub fn due(&self) -> Day {
        if self.shown {
            self.last.plus(lasts(self.half_life_days))
        } else {
            self.last
        }
    }

    /// The first day from `today` on at which a pass keeps recall as wanted until a later day; none if it is so without one.
    pub fn refresh_for(&self, later: Day, today: Day) -> Option<Day> {
        let holds = self.recall(later) >= WANTED;
        let first = later.plus(-lasts(next(self.half_life_days, true)));
        (!holds).then(|| first.max(today))
    }
}

/// The half-life after a day of passes, or after one with a fail.
fn next(half_life_days: f64, shown: bool) -> f64 {
    let factor = if shown { 2.0 } else { 0.5 };
    (half_life_days * factor).clamp(LEAST_DAYS, MOST_DAYS)
}

/// Whole days for which recall stays as wanted.
fn lasts(half_life_days: f64) -> i64 {
    let stays = |days: &i64| {
        let days = u32::try_from(*days).unwrap_or(u32::MAX);
        portable::power(2.0, -f64::from(days) / half_life_days) >= WANTED
    };
    (1..=DAYS_AHEAD)
        .take_while(stays)
        .last()
        .unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> Day {
        Day::parse(text).unwrap()
    }

    #[test]
    fn half_is_forgotten_after_a_half_life_that_doubles_with_each_pass_and_halves_with_each_fail() {
        let first = day("2026-03-01");
        let once = Memory::of(&[(first, true)]).unwrap();
        assert!((once.half_life_days - 14.0).abs() < 1e-12);
        assert!((once.recall(first) - 1.0).abs() < 1e-12);
        assert!((once.recall(first.plus(14)) - 0.5).abs() < 1e-12);
        assert!((once.recall(first.plus(28)) - 0.25).abs() < 1e-12);
        let twice = Memory::of(&[(first.plus(9), true), (first, true)]).unwrap();
        assert!((twice.half_life_days - 28.0).abs() < 1e-12);
        assert_eq!(twice.last, first.plus(9));
        let failed = Memory::of(&[(first, true), (first.plus(9), false)]).unwrap();
        assert!((failed.half_life_days - 7.0).abs() < 1e-12);
        assert!(failed.recall(first.plus(9)) < 1e-12);
        assert_eq!(failed.due(), first.plus(9));
    }

    #[test]
    fn a_day_counts_once_and_a_fail_on_it_outweighs_its_passes() {
        let on = day("2026-03-01");
        assert_eq!(
            Memory::of(&[(on, true), (on, true), (on, true)]),
            Memory::of(&[(on, true)])
        );
        assert_eq!(
            Memory::of(&[(on, true), (on, false)]),
            Memory::of(&[(on, false)])
        );
        assert_eq!(Memory::of(&[]), None);
    }

    #[test]
    fn a_refresher_is_due_on_the_last_day_with_recall_as_wanted() {
        let mut tries = Vec::new();
        let mut on = day("2026-01-01");
        for _ in 0..12 {
            tries.push((on, true));
            let memory = Memory::of(&tries).unwrap();
            let due = memory.due();
            assert!(memory.recall(due) >= WANTED && memory.recall(due.plus(1)) < WANTED);
            assert!(due > on && memory.half_life_days <= MOST_DAYS);
            on = due;
        }
    }

    #[test]
    fn a_pass_on_the_day_named_for_a_season_holds_until_it_and_one_a_day_earlier_does_not() {
        let today = day("2026-04-20");
        let season = day("2026-06-01");
        for tries in [
            vec![(day("2026-04-01"), true)],
            vec![(day("2026-04-01"), true), (day("2026-04-10"), true)],
            vec![(day("2026-04-01"), false)],
        ] {
            let memory = Memory::of(&tries).unwrap();
            let refresh = memory.refresh_for(season, today).unwrap();
            let after = |on: Day| {
                let tries = [tries.clone(), vec![(on, true)]].concat();
                Memory::of(&tries).unwrap().recall(season)
            };
            assert!(refresh >= today && after(refresh) >= WANTED);
            assert!(after(refresh.plus(-1)) < WANTED, "{refresh}");
        }
        let fresh = Memory::of(&[(today, true)]).unwrap();
        assert_eq!(fresh.refresh_for(today.plus(1), today), None);
    }
}
