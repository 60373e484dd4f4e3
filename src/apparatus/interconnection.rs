//! The rules by which a source that follows the utility's grid leaves it and comes back.
//!
//! Each rule is a limit of volts or hertz and the time within which the source must be off once the limit is passed.
//! Times here are the longest that the standard allows with its default settings; a real device may be quicker.
//! It comes back when volts and hertz have been within a narrower window for a whole delay, and then in steps.
//! Timers are instants, not sums, so that looking more often changes no bit.
//! Not covered: settings that a utility chose, ride-through with reduced power, momentary cessation, rate of change of frequency.
//! Source: IEEE Std 1547-2018, Tables 4, 11, 12, 13 and 18 (checked in copies that quote them); IEEE Std 1547-2003, Tables 1 and 2 (from memory).

use crate::units::DrillTime;

/// Seconds within which a source must notice that it holds up an island alone: IEEE Std 1547-2018, 8.1; from memory, as in 2003.
pub const ISLAND_S: f64 = 2.0;

/// The most rules that a profile has.
const MOST_RULES: usize = 8;

/// Which edition and category an inverter was built to.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Profile {
    /// IEEE Std 1547-2018, abnormal operating performance category I.
    CategoryI,
    /// The same, category II.
    CategoryII,
    /// The same, category III: most rooftop inverters since 2020 or so.
    CategoryIII,
    /// IEEE Std 1547-2003, for 30 kW or less: rooftop inverters before that.
    Before2018,
}

/// What is seen at the terminals.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Grid {
    /// Volts, per unit of the rated.
    pub v_pu: f64,
    /// Hertz.
    pub hz: f64,
}

/// What a rule looks at, and on which side of its limit it acts.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Side {
    /// Volts above the limit.
    VoltsAbove,
    /// Volts below it.
    VoltsBelow,
    /// Hertz above it.
    HertzAbove,
    /// Hertz below it.
    HertzBelow,
}

/// One rule: past this limit, off within this time.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Rule {
    /// What it looks at.
    pub side: Side,
    /// The limit, per unit or hertz.
    pub limit: f64,
    /// Seconds within which the source must be off.
    pub clears_s: f64,
}

/// When a source may come back.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Return {
    /// Least and most volts, per unit.
    pub v_pu: (f64, f64),
    /// Least and most hertz.
    pub hz: (f64, f64),
    /// Seconds within them without a break.
    pub delay_s: f64,
    /// Seconds from nothing to full power.
    pub ramp_s: f64,
}

/// What a source has to do next by itself.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Due {
    /// Leave, by this rule.
    Leave(Rule),
    /// Come back.
    Return,
}

/// The timers of one source: since when each rule's limit is passed, and since when it could come back.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Watch {
    passed_since: [Option<DrillTime>; MOST_RULES],
    fit_since: Option<DrillTime>,
}

impl Profile {
    /// Its rules.
    pub fn rules(self) -> &'static [Rule] {
        match self {
            Self::CategoryI => CATEGORY_I,
            Self::CategoryII => CATEGORY_II,
            Self::CategoryIII => CATEGORY_III,
            Self::Before2018 => BEFORE_2018,
        }
    }

    /// When it may come back.
    ///
    /// IEEE Std 1547-2018, Table 4, defaults, checked in a copy that quotes the test of it (IEEE Std 1547.1-2020, Table 11).
    /// Before 2018: within the window of its trip limits, for five minutes (IEEE Std 1547-2003, 4.2.6; from memory), and at once at full power.
    pub fn comes_back(self) -> Return {
        match self {
            Self::CategoryI | Self::CategoryII | Self::CategoryIII => Return {
                v_pu: (0.917, 1.05),
                hz: (59.5, 60.1),
                delay_s: 300.0,
                ramp_s: 300.0,
            },
            Self::Before2018 => Return {
                v_pu: (0.88, 1.10),
                hz: (59.3, 60.5),
                delay_s: 300.0,
                ramp_s: 0.0,
            },
        }
    }

    /// Seconds until it must be off if the grid stays like this; `None` if it may stay.
    pub fn clearing_s(self, grid: Grid) -> Option<f64> {
        let passed = self.rules().iter().filter(|rule| rule.passed(grid));
        passed.map(|rule| rule.clears_s).reduce(f64::min)
    }
}

impl Rule {
    /// Whether the grid is past the limit.
    pub fn passed(&self, grid: Grid) -> bool {
        match self.side {
            Side::VoltsAbove => grid.v_pu > self.limit,
            Side::VoltsBelow => grid.v_pu < self.limit,
            Side::HertzAbove => grid.hz > self.limit,
            Side::HertzBelow => grid.hz < self.limit,
        }
    }
}

impl Return {
    /// Whether volts and hertz would let it come back.
    pub fn fits(&self, grid: Grid) -> bool {
        let within = |value: f64, (least, most): (f64, f64)| value >= least && value <= most;
        within(grid.v_pu, self.v_pu) && within(grid.hz, self.hz)
    }
}

impl Watch {
    /// Looks at the grid at an instant: starts the timers of limits newly passed and forgets those that are kept again.
    /// To be called whenever the grid changes; calling it in between changes nothing.
    pub fn see(&mut self, profile: Profile, grid: Grid, at: DrillTime) {
        for (since, rule) in self.passed_since.iter_mut().zip(profile.rules()) {
            *since = rule.passed(grid).then_some(since.unwrap_or(at));
        }
        let fits = profile.comes_back().fits(grid);
        self.fit_since = fits.then_some(self.fit_since.unwrap_or(at));
    }

    /// What it does next and when, if the grid stays as it was last seen.
    pub fn next(&self, profile: Profile, in_service: bool) -> Option<(DrillTime, Due)> {
        if !in_service {
            let since = self.fit_since?;
            return Some((since + after(profile.comes_back().delay_s), Due::Return));
        }
        let due = |(since, rule): (&Option<DrillTime>, &Rule)| {
            since.map(|since| (since + after(rule.clears_s), *rule))
        };
        let rules = self.passed_since.iter().zip(profile.rules());
        let first = rules.filter_map(due).min_by_key(|(at, _)| *at)?;
        Some((first.0, Due::Leave(first.1)))
    }

    /// Starts the wait for coming back anew, as after leaving.
    pub fn begin_waiting(&mut self) {
        self.fit_since = None;
    }

    /// Since when the grid has been fit to come back to.
    pub fn fit_since(&self) -> Option<DrillTime> {
        self.fit_since
    }
}

/// A time of the tables as drill time; all are whole hundredths of a second.
#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "the times of the tables are between 0.16 and 300 seconds"
)]
fn after(seconds: f64) -> DrillTime {
    DrillTime::from_millis((seconds * 1000.0 + 0.5) as u64)
}

const fn rule(side: Side, limit: f64, clears_s: f64) -> Rule {
    Rule {
        side,
        limit,
        clears_s,
    }
}

/// IEEE Std 1547-2018, Tables 11 and 18, defaults; checked in copies that quote them.
const CATEGORY_I: &[Rule] = &[
    rule(Side::VoltsAbove, 1.20, 0.16),
    rule(Side::VoltsAbove, 1.10, 2.0),
    rule(Side::VoltsBelow, 0.70, 2.0),
    rule(Side::VoltsBelow, 0.45, 0.16),
    rule(Side::HertzAbove, 62.0, 0.16),
    rule(Side::HertzAbove, 61.2, 300.0),
    rule(Side::HertzBelow, 58.5, 300.0),
    rule(Side::HertzBelow, 56.5, 0.16),
];

/// Tables 12 and 18.
const CATEGORY_II: &[Rule] = &[
    rule(Side::VoltsAbove, 1.20, 0.16),
    rule(Side::VoltsAbove, 1.10, 2.0),
    rule(Side::VoltsBelow, 0.70, 10.0),
    rule(Side::VoltsBelow, 0.45, 0.16),
    rule(Side::HertzAbove, 62.0, 0.16),
    rule(Side::HertzAbove, 61.2, 300.0),
    rule(Side::HertzBelow, 58.5, 300.0),
    rule(Side::HertzBelow, 56.5, 0.16),
];

/// Tables 13 and 18.
const CATEGORY_III: &[Rule] = &[
    rule(Side::VoltsAbove, 1.20, 0.16),
    rule(Side::VoltsAbove, 1.10, 13.0),
    rule(Side::VoltsBelow, 0.88, 21.0),
    rule(Side::VoltsBelow, 0.50, 2.0),
    rule(Side::HertzAbove, 62.0, 0.16),
    rule(Side::HertzAbove, 61.2, 300.0),
    rule(Side::HertzBelow, 58.5, 300.0),
    rule(Side::HertzBelow, 56.5, 0.16),
];

/// IEEE Std 1547-2003, Tables 1 and 2, for 30 kW or less; from memory.
const BEFORE_2018: &[Rule] = &[
    rule(Side::VoltsAbove, 1.20, 0.16),
    rule(Side::VoltsAbove, 1.10, 1.0),
    rule(Side::VoltsBelow, 0.88, 2.0),
    rule(Side::VoltsBelow, 0.50, 0.16),
    rule(Side::HertzAbove, 60.5, 0.16),
    rule(Side::HertzBelow, 59.3, 0.16),
];

#[cfg(test)]
mod tests {
    use super::*;

    const ALL: [Profile; 4] = [
        Profile::CategoryI,
        Profile::CategoryII,
        Profile::CategoryIII,
        Profile::Before2018,
    ];
    const GOOD: Grid = Grid {
        v_pu: 1.0,
        hz: 60.0,
    };
    const DEAD: Grid = Grid {
        v_pu: 0.0,
        hz: 60.0,
    };

    fn at(seconds: u64) -> DrillTime {
        DrillTime::from_secs(seconds)
    }

    #[test]
    fn farther_past_a_limit_never_lets_it_stay_longer() {
        for profile in ALL {
            assert_eq!(profile.clearing_s(GOOD), None, "{profile:?} on a good grid");
            for (down, grid_at) in [
                (false, (|x| Grid { v_pu: x, hz: 60.0 }) as fn(f64) -> Grid),
                (true, |x| Grid { v_pu: x, hz: 60.0 }),
                (false, |x| Grid {
                    v_pu: 1.0,
                    hz: 60.0 * x,
                }),
                (true, |x| Grid {
                    v_pu: 1.0,
                    hz: 60.0 * x,
                }),
            ] {
                let mut before = f64::INFINITY;
                for step in 0..400_i32 {
                    let far = f64::from(step) / 400.0;
                    let grid = grid_at(if down { 1.0 - far } else { 1.0 + far });
                    let clears = profile.clearing_s(grid).unwrap_or(f64::INFINITY);
                    assert!(
                        clears <= before,
                        "{profile:?} {grid:?}: {clears} s after {before} s"
                    );
                    before = clears;
                }
                assert!(before <= ISLAND_S, "{profile:?}: {before} s at the far end");
            }
        }
    }

    #[test]
    fn the_window_to_come_back_lies_within_the_window_to_stay() {
        for profile in ALL {
            let back = profile.comes_back();
            for v_pu in [back.v_pu.0, back.v_pu.1] {
                for hz in [back.hz.0, back.hz.1] {
                    assert!(back.fits(Grid { v_pu, hz }));
                    assert_eq!(profile.clearing_s(Grid { v_pu, hz }), None, "{profile:?}");
                }
            }
        }
    }

    #[test]
    fn looking_more_often_changes_nothing() {
        let profile = Profile::CategoryIII;
        let low = Grid {
            v_pu: 0.8,
            hz: 60.0,
        };
        let (mut seldom, mut often) = (Watch::default(), Watch::default());
        for watch in [&mut seldom, &mut often] {
            watch.see(profile, GOOD, at(0));
            watch.see(profile, low, at(7));
        }
        for second in 8..20 {
            often.see(profile, low, at(second));
        }
        assert_eq!(seldom, often);
        let (when, due) = seldom.next(profile, true).unwrap();
        assert_eq!(when, at(28), "21 s after it sagged");
        assert!(matches!(due, Due::Leave(rule) if rule.side == Side::VoltsBelow));
    }

    #[test]
    fn a_dip_starts_the_five_minutes_anew() {
        for profile in ALL {
            let mut watch = Watch::default();
            watch.see(profile, DEAD, at(0));
            assert_eq!(watch.next(profile, false), None, "nothing to come back to");
            watch.see(profile, GOOD, at(100));
            assert_eq!(watch.next(profile, false), Some((at(400), Due::Return)));
            watch.see(profile, DEAD, at(250));
            watch.see(profile, GOOD, at(251));
            assert_eq!(watch.next(profile, false), Some((at(551), Due::Return)));
        }
    }

    #[test]
    fn of_two_limits_passed_the_one_that_is_due_first_acts() {
        let profile = Profile::CategoryI;
        let mut watch = Watch::default();
        watch.see(
            profile,
            Grid {
                v_pu: 0.6,
                hz: 60.0,
            },
            at(10),
        );
        watch.see(profile, DEAD, at(11));
        let (when, due) = watch.next(profile, true).unwrap();
        assert_eq!(when, DrillTime::from_millis(11_160));
        assert!(matches!(due, Due::Leave(rule) if rule.limit < 0.5));
    }
}
