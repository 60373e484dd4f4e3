//! What a generator does with power that something else pushes into its house: an inverter that took it for the grid.
//!
//! A governed engine slows down its fuel and speeds up along its droop; past what its own friction swallows, nothing holds it and it runs away.
//! An inverter set can't take power back at all: its inner bus rises and its electronics shut off at once, often for good.
//! Both sides' frequency laws are straight lines, so the frequency at which they meet is a closed form.
//! Range: steady watts; one set, one inverter. The figures for friction and flywheel are typical, from memory, with their range.
//! Not covered: the governor's dynamics, volts, harmonics, two sets.

use super::conventional::FLYWHEEL_S;
use super::generator::GeneratorKind;
use super::generator::GeneratorSpec;
use super::solar::ANSWERS_FROM_HZ;
use super::solar::Solar;

/// Share of its rating that an engine swallows when it is driven without fuel; from memory, 0.05 to 0.25 for piston engines.
const FRICTION: f64 = 0.15;

/// How a set keeps its frequency.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Speed {
    /// An engine that turns the machine, on a governor with droop.
    Governed {
        /// Rated watts.
        rated_w: f64,
        /// Hertz without load.
        no_load_hz: f64,
        /// Hertz at rated load.
        full_load_hz: f64,
        /// Energy in the flywheel at 60 Hz, as seconds of rated power.
        flywheel_s: f64,
    },
    /// Electronics that make a fixed frequency whatever the load.
    Electronic {
        /// That frequency.
        hz: f64,
    },
}

impl Speed {
    /// Of a set by its plate.
    pub fn of(spec: &GeneratorSpec) -> Self {
        match spec.kind {
            GeneratorKind::Inverter(_) => Self::Electronic {
                hz: spec.frequency_hz(0.0),
            },
            GeneratorKind::Conventional(_) | GeneratorKind::Standby(_) => Self::Governed {
                rated_w: spec.rated_w,
                no_load_hz: spec.no_load_hz,
                full_load_hz: spec.full_load_hz,
                flywheel_s: FLYWHEEL_S,
            },
        }
    }
}

/// How generator and inverter share a house.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shared {
    /// Frequency of the house, hertz.
    pub hz: f64,
    /// Watts from the sun.
    pub solar_w: f64,
    /// Watts from the generator; negative when it is pushed.
    pub set_w: f64,
    /// What the generator does.
    pub set: Pushed,
}

/// What a generator does that may be pushed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Pushed {
    /// It still delivers.
    Delivers,
    /// It is turned like a motor, and its friction swallows what is pushed.
    Motored,
    /// Nothing swallows the rest: its speed rises by this many hertz a second at first.
    RunsAway {
        /// Hertz per second.
        hz_per_s: f64,
    },
    /// Its electronics shut off.
    ShutsOff,
}

/// Where generator and inverter settle with `load_w` in the house, `sun_w` on the panels and the inverter `in_service_s` after it came back.
pub fn share(speed: Speed, solar: &Solar, load_w: f64, sun_w: f64, in_service_s: f64) -> Shared {
    match speed {
        Speed::Governed {
            rated_w,
            no_load_hz,
            full_load_hz,
            flywheel_s,
        } => {
            let per_w = (no_load_hz - full_load_hz) / rated_w;
            let offered = solar.output_w(sun_w, in_service_s, 60.0);
            let hz = meet(
                solar,
                no_load_hz - per_w * (load_w - offered),
                per_w,
                offered,
            );
            let solar_w = solar.output_w(sun_w, in_service_s, hz);
            let set_w = load_w - solar_w;
            let beyond_w = -set_w - FRICTION * rated_w;
            let set = if set_w >= 0.0 {
                Pushed::Delivers
            } else if beyond_w <= 0.0 {
                Pushed::Motored
            } else {
                // d/dt of the flywheel's energy, flywheel_s * rated * (f/60)^2, is the power left over.
                let hz_per_s = beyond_w * 60.0 * 60.0 / (2.0 * flywheel_s * rated_w * hz);
                Pushed::RunsAway { hz_per_s }
            };
            Shared {
                hz,
                solar_w,
                set_w,
                set,
            }
        }
        Speed::Electronic { hz } => {
            let solar_w = solar.output_w(sun_w, in_service_s, hz);
            let set_w = load_w - solar_w;
            let set = if set_w < 0.0 {
                Pushed::ShutsOff
            } else {
                Pushed::Delivers
            };
            Shared {
                hz,
                solar_w,
                set_w,
                set,
            }
        }
    }
}

/// Seconds until a set that runs away passes a frequency.
pub fn seconds_to_hz(speed: Speed, shared: &Shared, hz: f64) -> Option<f64> {
    let (
        Speed::Governed {
            rated_w,
            flywheel_s,
            ..
        },
        Pushed::RunsAway { .. },
    ) = (speed, shared.set)
    else {
        return None;
    };
    let beyond_w = -shared.set_w - FRICTION * rated_w;
    let energy_ws = flywheel_s * rated_w * (hz * hz - shared.hz * shared.hz) / 3600.0;
    Some((energy_ws / beyond_w).max(0.0))
}

/// The frequency where the droop of the engine and what the inverter gives up meet; `undisturbed` is that without giving up.
fn meet(solar: &Solar, undisturbed_hz: f64, per_w: f64, offered_w: f64) -> f64 {
    let from = ANSWERS_FROM_HZ;
    if undisturbed_hz <= from {
        return undisturbed_hz;
    }
    let gain = per_w * solar.droop_w_per_hz();
    let met = (undisturbed_hz + gain * from) / (1.0 + gain);
    if solar.droop_w_per_hz() * (met - from) <= offered_w {
        met
    } else {
        // It has given up everything it had.
        undisturbed_hz - per_w * offered_w
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::apparatus::interconnection::Grid;
    use crate::apparatus::interconnection::Profile;

    const ENGINE: Speed = Speed::Governed {
        rated_w: 7200.0,
        no_load_hz: 62.5,
        full_load_hz: 59.5,
        flywheel_s: 0.8,
    };

    fn roof(profile: Profile) -> Solar {
        Solar {
            rated_w: 6000.0,
            rated_v: 240.0,
            profile,
        }
    }

    /// Long in service.
    const LONG_S: f64 = 1000.0;

    #[test]
    fn what_both_deliver_is_what_the_house_takes_and_each_keeps_to_its_own_line() {
        for profile in [Profile::CategoryIII, Profile::Before2018] {
            let solar = roof(profile);
            for load in 0..15_i32 {
                for sun in 0..8_i32 {
                    let (load_w, sun_w) = (f64::from(load) * 500.0, f64::from(sun) * 1000.0);
                    let s = share(ENGINE, &solar, load_w, sun_w, LONG_S);
                    assert!((s.set_w + s.solar_w - load_w).abs() < 1e-9);
                    let engine_hz = 62.5 - 3.0 * s.set_w / 7200.0;
                    assert!(
                        (engine_hz - s.hz).abs() < 1e-9,
                        "{load_w} W, {sun_w} W: {s:?}"
                    );
                    let own = solar.output_w(sun_w, LONG_S, s.hz);
                    assert!((own - s.solar_w).abs() < 1e-9);
                }
            }
        }
    }

    #[test]
    fn more_sun_takes_load_off_the_engine_and_speeds_it_up() {
        let solar = roof(Profile::Before2018);
        let mut before = share(ENGINE, &solar, 5000.0, 0.0, LONG_S);
        for sun in 1..6_i32 {
            let now = share(ENGINE, &solar, 5000.0, f64::from(sun) * 1000.0, LONG_S);
            assert!(now.hz > before.hz && now.set_w < before.set_w);
            before = now;
        }
    }

    #[test]
    fn an_engine_is_first_relieved_then_turned_like_a_motor_and_then_runs_away() {
        let solar = roof(Profile::Before2018);
        let at = |load_w: f64| share(ENGINE, &solar, load_w, 6000.0, LONG_S).set;
        assert_eq!(at(6000.0), Pushed::Delivers);
        assert_eq!(at(5500.0), Pushed::Motored);
        let Pushed::RunsAway { hz_per_s } = at(3000.0) else {
            panic!("{:?}", at(3000.0));
        };
        assert!(hz_per_s > 5.0, "{hz_per_s} Hz/s");
    }

    #[test]
    fn a_governed_set_lets_an_inverter_in_only_when_it_is_nearly_fully_loaded() {
        let solar = roof(Profile::CategoryIII);
        let back = solar.profile.comes_back();
        let lets_in = |load_w: f64| {
            let s = share(ENGINE, &solar, load_w, 0.0, 0.0);
            back.fits(Grid {
                v_pu: 1.0,
                hz: s.hz,
            })
        };
        assert!(!lets_in(2000.0) && !lets_in(5000.0), "it spins too fast");
        assert!(lets_in(6500.0) && lets_in(7200.0));
        let electronic = share(Speed::Electronic { hz: 60.0 }, &solar, 500.0, 0.0, 0.0);
        assert!(
            back.fits(Grid {
                v_pu: 1.0,
                hz: electronic.hz
            }),
            "an inverter set fits at any load"
        );
    }

    #[test]
    fn an_inverter_set_shuts_off_as_soon_as_the_sun_exceeds_the_load() {
        let solar = roof(Profile::CategoryIII);
        let set = Speed::Electronic { hz: 60.0 };
        assert_eq!(
            share(set, &solar, 3000.0, 2000.0, LONG_S).set,
            Pushed::Delivers
        );
        assert_eq!(
            share(set, &solar, 1500.0, 2000.0, LONG_S).set,
            Pushed::ShutsOff
        );
    }

    #[test]
    fn the_speed_of_a_runaway_agrees_with_small_steps() {
        let solar = roof(Profile::Before2018);
        let s = share(ENGINE, &solar, 1000.0, 6000.0, LONG_S);
        let closed = seconds_to_hz(ENGINE, &s, 70.0).unwrap();
        let beyond_w = -s.set_w - FRICTION * 7200.0;
        let (mut hz, mut steps) = (s.hz, 0.0);
        while hz < 70.0 {
            hz += 1e-5 * beyond_w * 3600.0 / (2.0 * 0.8 * 7200.0 * hz);
            steps += 1e-5;
        }
        assert!(
            (closed - steps).abs() < 1e-3,
            "{closed} s, by steps {steps} s"
        );
    }
}
