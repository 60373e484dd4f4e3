//! A rooftop inverter that follows the grid: it makes no voltage of its own, it pushes current into one that is there.
//!
//! Without a grid it must stop; what forms the grid it can't tell, so a generator whose volts and hertz fit its window passes for one.
//! An island that it holds up alone settles where watts and vars balance, in closed form; where that is tells how soon its rules see it.
//! Range: steady sun over a stretch; unity power factor; one inverter.
//! Accuracy: exact for a parallel resistance, inductance and capacitance; real inverters also shake the frequency on purpose and leave sooner, never later than two seconds.
//! Source of the islanding balance: the published non-detection zone of passive islanding protection (Ye and others, IEEE Transactions on Power Electronics, 2004; formula checked in a copy, figures from memory).
//! Source of the power given up at high frequency: IEEE Std 1547-2018, Table 24, defaults; from memory.
//! Not covered: shade, dirt, heat, reactive power, three phases.

use super::interconnection::Grid;
use super::interconnection::ISLAND_S;
use super::interconnection::Profile;

/// Stairs in which it comes back to full power; the standard allows steps of up to a fifth.
const STAIRS: u32 = 10;
/// Hertz above which it begins to give up power.
pub const ANSWERS_FROM_HZ: f64 = 60.036;
/// Share of 60 Hz over which all power is given up.
const DROOP: f64 = 0.05;

/// An inverter with its panels.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Solar {
    /// Watts that it delivers at most.
    pub rated_w: f64,
    /// Rated volts between the two hots.
    pub rated_v: f64,
    /// What it was built to.
    pub profile: Profile,
}

/// What stands beside it in an island: a resistance, an inductance and a capacitance, by what they take at rated volts and 60 Hz.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LocalLoad {
    /// Watts.
    pub watts: f64,
    /// Reactive volt-amperes of motors.
    pub inductive_var: f64,
    /// Reactive volt-amperes of capacitors.
    pub capacitive_var: f64,
}

impl Solar {
    /// Watts with this much sun on its panels, `in_service_s` after it came back, at a frequency.
    ///
    /// It comes back in equal stairs over the ramp of its profile.
    pub fn output_w(&self, sun_w: f64, in_service_s: f64, hz: f64) -> f64 {
        let most = sun_w.clamp(0.0, self.rated_w);
        let ramped = most.min(self.rated_w * self.ramp_share(in_service_s));
        (ramped - self.rated_w * self.given_up(hz)).max(0.0)
    }

    /// Share of its rating that it may deliver `in_service_s` after it came back.
    pub fn ramp_share(&self, in_service_s: f64) -> f64 {
        let ramp_s = self.profile.comes_back().ramp_s;
        if ramp_s <= 0.0 {
            return 1.0;
        }
        let stairs = f64::from(STAIRS);
        (in_service_s * stairs / ramp_s).floor().clamp(0.0, stairs) / stairs
    }

    /// Seconds from coming back until its next stair; `None` at the top.
    pub fn next_stair_s(&self, in_service_s: f64) -> Option<f64> {
        let ramp_s = self.profile.comes_back().ramp_s;
        let stair = (1..=STAIRS).map(|n| ramp_s * f64::from(n) / f64::from(STAIRS));
        stair.into_iter().find(|s| *s > in_service_s)
    }

    /// Share of its rating that it gives up because the frequency is high.
    /// Inverters before 2018 give up nothing; they leave.
    pub fn given_up(&self, hz: f64) -> f64 {
        match self.profile {
            Profile::Before2018 => 0.0,
            Profile::CategoryI | Profile::CategoryII | Profile::CategoryIII => {
                ((hz - ANSWERS_FROM_HZ) / (60.0 * DROOP)).clamp(0.0, 1.0)
            }
        }
    }

    /// Watts given up for each hertz within the band where it answers, 0 for one that doesn't.
    pub fn droop_w_per_hz(&self) -> f64 {
        match self.profile {
            Profile::Before2018 => 0.0,
            Profile::CategoryI | Profile::CategoryII | Profile::CategoryIII => {
                self.rated_w / (60.0 * DROOP)
            }
        }
    }

    /// Amps that it pushes into each leg at these watts and volts; at dead volts, what its bridge can carry.
    pub fn amps(&self, watts: f64, volts: f64) -> f64 {
        let most = 1.1 * self.rated_w / self.rated_v;
        if volts <= 0.0 {
            return most;
        }
        (watts / volts).min(most)
    }

    /// Seconds until it is off after it was left alone with this load: by the first rule that sees it, or as an island.
    pub fn alone_clears_s(&self, watts: f64, load: LocalLoad) -> f64 {
        let seen = island(watts, load).and_then(|grid| self.profile.clearing_s(grid));
        seen.map_or(ISLAND_S, |s| s.min(ISLAND_S))
    }
}

/// Where an island settles that is held up by `watts` of an inverter alone; `None` if nothing is there to take them.
///
/// Watts: *V*² goes with what is made over what is taken.
/// Vars: the inverter makes none, so the frequency goes to where inductance and capacitance cancel; without both it runs off and only the volts are told.
pub fn island(watts: f64, load: LocalLoad) -> Option<Grid> {
    if watts <= 0.0 || load.watts <= 0.0 {
        return None;
    }
    let v_pu = (watts / load.watts).sqrt();
    let hz = if load.capacitive_var > 0.0 && load.inductive_var > 0.0 {
        60.0 * (load.inductive_var / load.capacitive_var).sqrt()
    } else {
        60.0
    };
    Some(Grid { v_pu, hz })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn roof(profile: Profile) -> Solar {
        Solar {
            rated_w: 7600.0,
            rated_v: 240.0,
            profile,
        }
    }

    #[test]
    fn it_comes_back_in_stairs_that_reach_the_top_at_the_end_of_the_ramp() {
        let solar = roof(Profile::CategoryIII);
        let mut seconds = 0.0;
        let mut before = 0.0;
        let mut stairs = 0;
        assert!(solar.ramp_share(0.0).abs() < 1e-12);
        while let Some(next) = solar.next_stair_s(seconds) {
            let share = solar.ramp_share(next);
            assert!(
                share > before && share - before <= 0.2 + 1e-12,
                "{share} after {before}"
            );
            assert!((solar.ramp_share(next - 0.001) - before).abs() < 1e-12);
            (seconds, before) = (next, share);
            stairs += 1;
        }
        assert!(stairs == 10 && (seconds - 300.0).abs() < 1e-9 && (before - 1.0).abs() < 1e-12);
        let old = roof(Profile::Before2018);
        assert!(old.next_stair_s(0.0).is_none() && (old.ramp_share(0.0) - 1.0).abs() < 1e-12);
    }

    #[test]
    fn a_high_frequency_takes_power_from_it_and_an_older_one_leaves_instead() {
        let solar = roof(Profile::CategoryIII);
        assert!(
            (solar.output_w(9000.0, 1000.0, 60.0) - 7600.0).abs() < 1e-9,
            "no more than rated"
        );
        let high = solar.output_w(7600.0, 1000.0, 61.0);
        assert!(high < 7600.0 && high > 0.0, "{high} W");
        let slope = solar.output_w(7600.0, 1000.0, 60.5) - high;
        assert!(
            (slope / 0.5 - solar.droop_w_per_hz()).abs() < 1e-6,
            "{slope} W in half a hertz"
        );
        let old = roof(Profile::Before2018);
        let grid = Grid {
            v_pu: 1.0,
            hz: 61.0,
        };
        assert!(old.given_up(61.0) <= 0.0 && old.profile.clearing_s(grid) == Some(0.16));
    }

    #[test]
    fn alone_it_is_off_within_two_seconds_whatever_stands_beside_it() {
        for profile in [
            Profile::CategoryI,
            Profile::CategoryIII,
            Profile::Before2018,
        ] {
            let solar = roof(profile);
            for load_w in [0.0, 100.0, 3000.0, 5000.0, 6000.0, 50_000.0] {
                for (inductive_var, capacitive_var) in [(0.0, 0.0), (500.0, 500.0), (900.0, 100.0)]
                {
                    let load = LocalLoad {
                        watts: load_w,
                        inductive_var,
                        capacitive_var,
                    };
                    let off = solar.alone_clears_s(5000.0, load);
                    assert!(
                        off > 0.0 && off <= ISLAND_S,
                        "{profile:?} {load:?}: {off} s"
                    );
                }
            }
        }
    }

    #[test]
    fn an_island_balances_watts_and_vars() {
        let load = LocalLoad {
            watts: 4000.0,
            inductive_var: 700.0,
            capacitive_var: 650.0,
        };
        let grid = island(5000.0, load).unwrap();
        let taken = load.watts * grid.v_pu * grid.v_pu;
        assert!((taken - 5000.0).abs() < 1e-9, "{taken} W");
        let pu = grid.hz / 60.0;
        let vars = load.inductive_var / pu - load.capacitive_var * pu;
        assert!(vars.abs() < 1e-9, "{vars} var left over");
        assert!(island(5000.0, LocalLoad { watts: 0.0, ..load }).is_none());
    }

    #[test]
    fn its_current_is_held_by_its_bridge() {
        let solar = roof(Profile::CategoryIII);
        let short = solar.amps(7600.0, 1.0);
        assert!(
            (short - 1.1 * 7600.0 / 240.0).abs() < 1e-9,
            "{short} A into a short circuit"
        );
        assert!((solar.amps(2400.0, 240.0) - 10.0).abs() < 1e-12);
        assert!((solar.amps(2400.0, 0.0) - short).abs() < 1e-12);
    }
}
